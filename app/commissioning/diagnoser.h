#pragma once

#include "app/document/worker.h"

#include "core/commissioning/diagnosis.h"
#include "core/commissioning/readings.h"

#include <QObject>

#include <optional>
#include <utility>
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

/// Judges and diagnoses beside the window; the latest job wins.
class Diagnoser : public QObject {
    Q_OBJECT
public:
    explicit Diagnoser(QObject* parent = nullptr);

    void ask(Sketch sketch, Id heater) { worker_.ask({std::move(sketch), std::move(heater)}); }
    /// The newest answer that was not taken yet.
    std::optional<Outcome> take() { return worker_.take(); }

Q_SIGNALS:
    void ready(); ///< sent from the thread: there is an answer to take

private:
    struct Job {
        Sketch sketch;
        Id heater;
    };
    static void work(Job job, const Worker<Job, Outcome>::Tell& tell, const std::stop_token& stop);

    Worker<Job, Outcome> worker_;
};

} // namespace siphonwright::commissioning
