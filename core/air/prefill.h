#pragma once

#include "core/air/fill.h"

/// Hoses and chambers that were filled with coolant before they are connected to a full jacket.
///
/// Assumed: they come without air, but for what gets in at each hose's engine end while it is pushed on; as
/// much coolant runs out there and is lost. A port under the coolant level is connected under liquid and
/// nothing moves; one over it lets air in, and what is over the level runs out.
namespace siphonwright {

/// Everything full and shut off from the jacket where its port lies over the level; the jacket so far under
/// the target level as coolant is lost. `empty` is where a fill from nothing starts.
FillState prefilledState(const FillRequest& request, const FillNetwork& network, FillState empty);

/// Lets the air in, and opens what is still shut at the engine. Nothing is poured but a drop that makes the
/// state settle. False if no state of rest was found.
bool connectPrefilled(const FillRequest& request, const FillNetwork& network, FillRun& run);

} // namespace siphonwright
