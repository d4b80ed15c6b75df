#pragma once

#include "app/document/worker.h"

#include "core/proposing/propose.h"

#include <QObject>

#include <cstdint>
#include <optional>
#include <utility>

namespace siphonwright::proposing {

/// Proposes layouts beside the window; the latest job wins.
class Proposer : public QObject {
    Q_OBJECT
public:
    explicit Proposer(QObject* parent = nullptr);

    struct Answer {
        std::uint64_t search = 0; ///< what ask() gave
        ProposeProgress progress;
        std::optional<Proposals> proposals; ///< when it is done
    };
    /// \return the number of the search
    std::uint64_t ask(Sketch sketch, ProposeOptions options);
    void cancel() { worker_.ask({}); }
    /// The newest answer that was not taken yet.
    std::optional<Answer> take() { return worker_.take(); }

Q_SIGNALS:
    void ready(); ///< sent from the thread: there is an answer to take

private:
    struct Job {
        std::uint64_t search = 0; ///< 0: nothing to do, but to leave what was asked before
        Sketch sketch;
        ProposeOptions options;
    };
    static void work(Job job, const Worker<Job, Answer>::Tell& tell, const std::stop_token& stop);

    std::uint64_t searches_ = 0;
    Worker<Job, Answer> worker_;
};

} // namespace siphonwright::proposing
