#pragma once

#include "tests/sound_loop.h"

#include "core/checks/rules.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

/// Rules on the air that stays, on a sound loop that is filled and then spoiled.
namespace siphonwright::test {

struct AirResults {
    Running running; ///< past the air
    Filling filling;
    LoopRun& run() { return running.loops.at(0); }
    LoopAir& air() { return filling.loops.at(0); }
    /// A pocket that takes so much head in the middle of the supply hose.
    PocketFound& addPocket(double height_mm);
};

struct AirCase {
    std::string rule;
    std::string name;
    std::optional<Severity> expected;
    std::function<void(Sketch&)> spoil;             ///< before filling
    std::function<void(AirResults&)> spoil_results; ///< after it
    bool not_judged = false;                        ///< a fact is missing, and the rule says so
};

std::vector<AirCase> airCases();
Judgement judgeCase(const AirCase& one);

/// The sound loop with all that filling and circulation need.
Sketch filledLoop();

} // namespace siphonwright::test
