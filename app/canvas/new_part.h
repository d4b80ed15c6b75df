#pragma once

#include "app/canvas/plane.h"

#include "core/sketch/sketch.h"

#include <optional>
#include <string>

/// Parts as they are first put down, with typical values to be confirmed.
namespace siphonwright {

/// The edge of jacket or block nearest to a place, within reach.
std::optional<NearestEdge> nearestWall(const Sketch& sketch, Vec2 at, double reach_mm);

/// A port that points out of the wall (zero: away from the middle of the jacket). It takes the role that its
/// height suits and that no port has yet.
Port newPort(const Sketch& sketch, Vec2 at, Vec2 outward);
/// A heater after a template; without such a one, after the first.
Heater newHeater(const std::string& template_id, Vec2 at);
/// A tank at a place: the one there is, moved with its marks, or a new one with typical marks.
SurgeTank newTank(const Sketch& sketch, Vec2 at);
/// A part for a hose, of its bore.
InlinePart newInlinePart(const Hose& hose, InlineKind kind, double along_mm);

/// Whether such a part can be open or closed.
bool canOpen(InlineKind kind);

} // namespace siphonwright
