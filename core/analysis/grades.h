#pragma once

#include "core/checks/finding.h"
#include "core/layout/layout.h"
#include "core/running/by_grade.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <stop_token>
#include <vector>

/// The rules that turn with plumb, over the grades on which a vehicle is parked.
namespace siphonwright {

/// Grades lengthways, the vehicle level across, on which no rule on what holds air or coolant up gives a
/// stop or a caution. Nose-down is negative.
struct SoundGrades {
    double low_percent = 0;
    double high_percent = 0;
    bool low_open = false; ///< sound at least that far: nothing beyond searched_grade_percent is looked at
    bool high_open = false;
    friend bool operator==(const SoundGrades&, const SoundGrades&) = default;
};
constexpr double searched_grade_percent = 15;

/// What is found on one grade and not, or less severely, on the level: one severity lower, so that what would
/// be advice is none. `on_level` only saves time.
std::vector<Finding> findingsOn(const Sketch& sketch, Grade grade, const Layout& level,
                                const Running* on_level = nullptr);

/// The same over the sketch's envelope and the grade on which it usually stands. The envelope is judged in
/// 5 x 3 grades (a verdict can differ inside it and agree at its ends); where a fault first appears between
/// two of them is found by halving, to 0.01 %. Figures are those at the far end of that way.
/// Empty when stopped. `kept` only saves time, too.
std::vector<Finding> findingsOnEnvelope(const Sketch& sketch, const Layout& level,
                                        const std::stop_token& stop, const Running* on_level = nullptr,
                                        LevelTables* kept = nullptr);

/// What the rules on the warm-up find at an end of the envelope and not, or less severely, among `on_level`:
/// one severity lower, the first end that shows it.
std::vector<Finding> warmingAtEnds(const Sketch& sketch, const Layout& level,
                                   const std::vector<GradeRun>& ends, const std::vector<Finding>& on_level);

/// Looked for outwards from the level in steps of 0.25 %, the last step halved to 0.01 %. Nothing where the
/// level itself is not sound, or when stopped.
std::optional<SoundGrades> soundGrades(const Sketch& sketch, const Layout& level,
                                       const std::stop_token& stop);

} // namespace siphonwright
