#include "app/proposing/proposer.h"

namespace siphonwright::proposing {

Proposer::Proposer(QObject* parent) : QObject(parent), worker_(&Proposer::work, [this] { Q_EMIT ready(); }) {}

std::uint64_t Proposer::ask(Sketch sketch, ProposeOptions options)
{
    Job job;
    job.search = ++searches_;
    job.sketch = std::move(sketch);
    job.options = std::move(options);
    worker_.ask(std::move(job));
    return searches_;
}

void Proposer::work(Job job, const Worker<Job, Answer>::Tell& tell, const std::stop_token& stop)
{
    if (job.search == 0)
        return;
    job.options.progress = [&](const ProposeProgress& progress) {
        tell({job.search, progress, std::nullopt});
    };
    Answer done;
    done.search = job.search;
    done.proposals = propose(job.sketch, job.options, stop);
    tell(std::move(done));
}

} // namespace siphonwright::proposing
