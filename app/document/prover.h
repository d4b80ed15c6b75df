#pragma once

#include "app/document/worker.h"

#include "core/analysis/analysis.h"

#include <QObject>

#include <cstdint>
#include <optional>
#include <utility>

namespace siphonwright {

/// Proves sketches beside the window; the latest job wins.
class Prover : public QObject {
    Q_OBJECT
public:
    explicit Prover(QObject* parent = nullptr);

    struct Job {
        std::uint64_t revision = 0; ///< of the sketch, given back with the answer
        Sketch sketch;
        Analysis level;
    };
    struct Answer {
        std::uint64_t revision = 0;
        Proof proof;
    };
    void ask(Job job) { worker_.ask(std::move(job)); }
    /// Let the other threads have the processor: what is proven now will not be wanted.
    void halt() { worker_.halt(); }
    /// The newest answer that was not taken yet.
    std::optional<Answer> take() { return worker_.take(); }

Q_SIGNALS:
    void ready(); ///< sent from the thread: there is an answer to take

private:
    Worker<Job, Answer> worker_;
};

} // namespace siphonwright
