#pragma once

#include "core/layout/layout.h"
#include "core/paperwork/one_lump.h"
#include "core/running/assumptions.h"
#include "core/running/running.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

/// Power needed to hold an engine at its target and to reach it in the time allowed.
///
/// Method: the engine as one lump (core/paperwork/one_lump.h) with the heat loss, mass and coolant that the
/// warm-up uses (engineBlockOf()), hoses and chambers with it as far as they are drawn. Hoses, chamber and
/// the coolant in the jacket run warmer than the block: what they lose and hold on top is taken from the
/// steady circulation at that power with the block at its target, the part that the loops reach as much
/// warmer than the mean as the rest needs to follow. Thermostats are left out: a heater that is to reach a
/// target must not be turned off on the way.
///
/// Error: time to target within 2 % and power to hold it within 0.5 % of the warm-up solver's, thermostats
/// out of the way (tests/paperwork/test_sizing.cpp). As a prediction of a real engine it hangs on the block's
/// heat loss, known to some 30 %: hold_low_W and hold_high_W show that range.
namespace siphonwright {

/// Power needed in one temperature of the air. W.
struct PowerNeed {
    double air_degC = 0;
    double start_degC = 0;
    double hold_W = 0;     ///< 0: the air is as warm as the target
    double hold_low_W = 0; ///< with the block's heat loss at either end of what is assumed of it
    double hold_high_W = 0;
    double block_W = 0;                    ///< of hold_W what the engine itself loses
    double hoses_W = 0;                    ///< and what hoses and chambers lose
    std::optional<double> reach_W;         ///< nothing: no time is entered
    std::optional<double> reaches_after_h; ///< with the heaters as drawn; nothing: never, or none drawn
};

/// Watts per litre of displacement that people take for diesel engines down to some -30 degC: 750 W for 5
/// litre, 1000 W for 7, 1500 W for 8 to 13 (common practice, no published source; from memory).
constexpr double practice_low_W_per_l = 100;
constexpr double practice_high_W_per_l = 200;

/// Over this in all a heater with a pump wants considering: natural circulation through one pair of hoses
/// carries no more without getting hot (own limit).
constexpr double most_without_pump_W = 5000;

struct Sizing {
    PartRef missing_of;
    std::string missing; ///< empty: computed
    OneLump lump;        ///< engine, its coolant, and drawn hoses and chambers
    double block_loss_W_per_K = 0;
    double target_degC = 0;
    bool hoses_counted = false; ///< at least one loop is drawn closed
    bool circulates = true;     ///< every such loop runs forward at its power
    PowerNeed usual;
    std::optional<PowerNeed> coldest;
    std::optional<double> drawn_W;     ///< all heaters at their actual voltage; nothing: one is not entered
    std::optional<double> W_per_litre; ///< of what is drawn
    bool wants_pump = false;
};

/// Under a millisecond.
Sizing sizingOf(const Sketch& sketch, const Layout& layout, const Assumptions& assumed);

/// The sketch with air of another temperature, and the same start as planned.
Sketch inAir(Sketch sketch, double air_degC);

} // namespace siphonwright
