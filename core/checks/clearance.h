#pragma once

#include "core/checks/rules.h"

namespace siphonwright {

/// What a hose or heater keeps off an area whose clearance is not entered, mm. Own choice, after common
/// practice: what is hot and what moves with the engine or the wheels.
double usualClearance(Hazard what);

/// The clearance of an area in a sketch, mm: its own, the rule's changed limit, or the usual one.
double clearanceOf(const Area& area, const Limits& keep_clear);

} // namespace siphonwright
