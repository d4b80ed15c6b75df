#pragma once

#include "core/commissioning/diagnosis.h"
#include "core/commissioning/readings.h"

#include <QObject>

#include <condition_variable>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <vector>

namespace siphonwright::commissioning {

/// What the readings of one heater come to.
struct Outcome {
    Sketch sketch; ///< that it was computed for
    Id heater;
    JudgedReadings judged;
    bool diagnosed = false; ///< the judgement comes first
    Diagnosis diagnosis;
    std::vector<double> hours; ///< of the curves, after energising
    Course as_drawn;           ///< at those hours
};

/// Judges and diagnoses beside the window: one thread, and one slot in which the latest job wins.
class Diagnoser : public QObject {
    Q_OBJECT
public:
    explicit Diagnoser(QObject* parent = nullptr);
    ~Diagnoser() override;

    void ask(Sketch sketch, Id heater);
    /// The newest answer that was not taken yet.
    std::optional<Outcome> take();

Q_SIGNALS:
    void ready(); ///< sent from the thread: there is an answer to take

private:
    struct Job {
        Sketch sketch;
        Id heater;
    };
    void work(const std::stop_token& end);
    void answer(Outcome outcome);

    std::mutex mutex_;
    std::condition_variable_any wake_;
    std::optional<Job> waiting_;
    std::optional<Outcome> answer_;
    std::stop_source running_{std::nostopstate};
    std::jthread thread_; ///< last: it starts when all else is there, and ends first
};

} // namespace siphonwright::commissioning
