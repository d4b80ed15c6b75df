#pragma once

#include "core/analysis/analysis.h"

#include <QObject>

#include <condition_variable>
#include <cstdint>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>

namespace siphonwright {

/// Proves sketches beside the window: one thread, and one slot in which the latest job wins. A job that is
/// running when a newer one comes is stopped.
class Prover : public QObject {
    Q_OBJECT
public:
    explicit Prover(QObject* parent = nullptr);
    ~Prover() override;

    struct Job {
        std::uint64_t revision = 0; ///< of the sketch, given back with the answer
        Sketch sketch;
        Analysis level;
    };
    struct Answer {
        std::uint64_t revision = 0;
        Proof proof;
    };
    void ask(Job job);
    /// The newest answer that was not taken yet.
    std::optional<Answer> take();

Q_SIGNALS:
    void ready(); ///< sent from the thread: there is an answer to take

private:
    void work(const std::stop_token& end);

    std::mutex mutex_;
    std::condition_variable_any wake_;
    std::optional<Job> waiting_;
    std::optional<Answer> answer_;
    std::stop_source running_{std::nostopstate};
    std::jthread thread_; ///< last: it starts when all else is there, and ends first
};

} // namespace siphonwright
