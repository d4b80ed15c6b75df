#pragma once

#include "core/sketch/edits.h"

/// Where the ends of stubs lie, which is where hoses stop.
namespace siphonwright {

Vec3 stubTip(const Port& port);
Vec3 stubTip(const Heater& heater, NozzleKind nozzle);
/// Where a hose's end lies; nothing when it is on a part that is not there.
std::optional<Vec3> hoseEndPosition(const Sketch& sketch, const HoseEnd& end);

} // namespace siphonwright
