#pragma once

#include "core/analysis/air_verdicts.h"
#include "core/analysis/grades.h"
#include "core/checks/rules.h"
#include "core/geometry/droop.h"
#include "core/layout/layout.h"
#include "core/paperwork/power_table.h"
#include "core/sketch/sketch.h"

#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace siphonwright {

/// How far a hose may sag: the least sag of one of its inner points that makes a trap.
struct SagMargin {
    Id hose;
    Droop droop;
};

/// What takes longer than a pointer move: warm-up, grades, margins, the table by bore, bands.
struct Proof {
    bool graded = false;   ///< grades, sag and table are in
    bool complete = false; ///< and the bands, where they were asked for
    Filling filling;
    Running running;               ///< steady circulation past the air that stays
    std::vector<Id> filled_clean;  ///< hoses whose humps the planned fill empties, whatever the grade
    std::vector<BleedCure> bleeds; ///< that would each cure a loop
    EngineWarmUp warm_up;
    std::vector<BoreRow> by_bore;
    std::vector<PowerRow> by_power; ///< where it was asked for
    bool powers_in = false;         ///< by_power is as full as it gets
    std::vector<HeaterBands> bands; ///< empty until there are any
    std::vector<Finding> found;     ///< by the rules that need filling or warm-up, each by itself
    std::vector<NotJudged> not_judged;
    std::vector<Margin> margins;
    std::vector<Unconfirmed> unconfirmed;
    std::vector<GradeRun> at_ends; ///< of the grade envelope
    std::vector<Finding> on_grade; ///< found on a grade alone, each by itself
    std::optional<SoundGrades> sound;
    std::vector<SagMargin> sag; ///< of hoses with inner points, in the sketch's order

    const Droop* sagOf(const Id& hose) const;
};

/// Everything computed from a sketch. Pure: the same sketch gives the same analysis.
struct Analysis {
    Grade grade;                   ///< on which the vehicle stands in `layout`
    Layout layout;                 ///< on that grade
    Running running;               ///< steady circulation on that grade
    std::vector<Finding> findings; ///< faults, stops first
    std::vector<NotJudged> not_judged;
    std::vector<Margin> margins;          ///< what is left, rule by rule
    std::vector<Unconfirmed> unconfirmed; ///< what the verdicts hang on and nobody has confirmed
    std::optional<Proof> proof;           ///< once there is one
    /// What was said of each hose by itself, for the next analysis; null where nobody looks again.
    std::shared_ptr<const JudgedHoses> judged;

    bool stopped() const;                       ///< at least one stop
    bool connected() const;                     ///< every hose and heater is part of a loop
    std::size_t count(Severity severity) const; ///< of faults
};

/// Live analysis, under 1 ms for a usual sketch: on the level, or as seen with the vehicle on one grade,
/// where what is found on that grade alone is one severity lower. `previous` only saves time: results do not
/// depend on it.
Analysis analyse(const Sketch& sketch, const Analysis* previous = nullptr, Grade grade = {});

struct ProofOptions {
    bool bands = false;
    bool powers = false; ///< the table over stock powers, some tenths of a second
    /// Called with the proof as far as it is, each time a part of it is done: warm-up first, then table and
    /// grades, bands last.
    std::function<void(const Proof&)> so_far;
};

/// Proof of a sketch, from its analysis on the level. Tens of milliseconds, with bands about a second; can be
/// stopped, and gives nothing then.
std::optional<Proof> prove(const Sketch& sketch, const Analysis& level, const ProofOptions& options = {},
                           const std::stop_token& stop = {});

/// Both at once: what the sheet and the command line say.
Analysis proved(const Sketch& sketch, const ProofOptions& options = {});

/// An analysis on the level with a proof: faults found on a grade take their place among the others.
Analysis withProof(Analysis level, Proof proof);

} // namespace siphonwright
