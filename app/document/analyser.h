#pragma once

#include "app/document/worker.h"

#include "core/analysis/analysis.h"

#include <QObject>

#include <cstdint>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace siphonwright {

/// What is shown of an analysis on the level where that is not itself: seen on a grade, or with a proof, of
/// this sketch (`proven`) or of one before it, which may speak of what has been deleted since. Pure: `tables`
/// only save time, and are of the thread that calls.
std::optional<Analysis> shownOf(const Sketch& sketch, const Analysis& level,
                                const std::optional<Proof>& proof, bool proven, Grade grade,
                                LevelTables& tables);

/// Whether judging a sketch takes so long that a drag should not wait for it.
bool isLarge(const Sketch& sketch);
/// Whether two sketches have the same parts, however they lie: what was found of one speaks of the other's.
bool sameParts(const Sketch& a, const Sketch& b);

/// Analyses large sketches beside the window while they are dragged. One that is asked is let finish, so that
/// figures come even while the pointer never rests.
class Analyser : public QObject {
    Q_OBJECT
public:
    explicit Analyser(QObject* parent = nullptr);

    struct Job {
        std::uint64_t revision = 0; ///< of the sketch, given back with the answer
        Sketch sketch;
        Analysis before; ///< layout, circulation and what was judged: only saves time
        std::shared_ptr<const std::optional<Proof>> proof;
        bool proven = false; ///< the proof is of this sketch
        Grade grade;
        std::vector<Analysis> done_with; ///< thousands of findings are freed here, not in the window's time
    };
    struct Answer {
        std::uint64_t revision = 0;
        Analysis level;
        std::optional<Analysis> shown;
        std::shared_ptr<const std::optional<Proof>> proof; ///< that it is shown with
        Grade grade;
    };
    bool isIdle() const { return !asked_; }
    void ask(Job job);
    /// The answer, once there is one.
    std::optional<Answer> take();

Q_SIGNALS:
    void ready(); ///< sent from the thread: there is an answer to take

private:
    bool asked_ = false;
    Worker<Job, Answer> worker_;
};

} // namespace siphonwright
