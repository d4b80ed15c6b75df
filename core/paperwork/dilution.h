#pragma once

#include "core/quantity/quantity.h"

#include <optional>
#include <vector>

/// From the coolant that is in to the one that is wanted, by draining and adding antifreeze or water.
///
/// Volumes are those before mixing, as they are poured from cans; antifreeze counts as 100 %. A mixture
/// shrinks by up to 1 % (core/physics/glycol.h), which is topped up. What is drained is taken as well mixed:
/// between rounds the engine has to run until its thermostat opens.
namespace siphonwright {

/// Most antifreeze by volume that is planned for: over it coolant carries less heat and freezes earlier again
/// (common practice; the published freezing points end there too).
constexpr double most_glycol_percent = 60;

struct MixRequest {
    double present_l = 0;              ///< coolant that is in
    double present_percent = 0;        ///< antifreeze in it, 0 to 100
    double empty_l = 0;                ///< new hoses and chambers, to be filled
    double wanted_percent = 0;         ///< 0 to most_glycol_percent
    std::optional<double> drainable_l; ///< what runs out in one go; nothing: taken as all, and said
};

/// One going over it: drain, then add.
struct MixRound {
    double drain_l = 0;
    double antifreeze_l = 0;
    double water_l = 0;
    double percent_after = 0;
};

enum class MixOutcome {
    nothing_to_do,
    fill,        ///< filling the empty part right is enough
    drain,       ///< one draining
    rounds,      ///< several, since only a part runs out
    unreachable, ///< the message says why
    invalid,     ///< the message names the value
};

struct MixPlan {
    MixOutcome outcome = MixOutcome::invalid;
    Message message;
    std::vector<MixRound> rounds;
    double drain_l = 0;      ///< in all: to be caught and disposed of
    double antifreeze_l = 0; ///< in all: to be bought
    double water_l = 0;
    double percent = 0; ///< in the end
    double filled_l = 0;
};

/// Rounds that anybody is asked to go: own choice. After as many, flushing with water and filling afresh is
/// less work.
constexpr int most_rounds = 6;

/// With V in at share p, N empty, T = V + N, wanted w: without draining, the N have to be at (w T - p V)/N.
/// Where that is over 1, drain D = (w T - p V - N)/(1 - p) and add antifreeze; where it is under 0, drain D =
/// V - w T/p and add water. Where less than D runs out at once, each round takes what runs out, d, and
/// leaves 1 - s' = (1 - s)(1 - d/T) with antifreeze, or s' = s (1 - d/T) with water, until the rest fits.
MixPlan planMix(const MixRequest& request);

} // namespace siphonwright
