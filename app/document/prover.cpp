#include "app/document/prover.h"

#include <utility>

namespace siphonwright {

Prover::Prover(QObject* parent)
    : QObject(parent),
      worker_(
          [](Job job, const Worker<Job, Answer>::Tell& tell, const std::stop_token& stop) {
              ProofOptions options;
              options.bands = true;
              options.powers = true;
              options.so_far = [&](const Proof& proof) { tell({job.revision, proof}); };
              prove(job.sketch, job.level, options, stop);
          },
          [this] { Q_EMIT ready(); })
{}

} // namespace siphonwright
