#pragma once

#include "core/geometry/projection.h"
#include "core/layout/layout.h"

#include <QPolygonF>

#include <vector>

/// The partly filled bore as a view shows it.
namespace siphonwright::drawing {

/// Which part of the bore a level cuts off: over it (air) or under it (coolant).
enum class Side { over, under };

/// The cut-off parts of the bore between two places along a path, painter axes; several where the bore dips
/// through the level.
std::vector<QPolygonF> boreCut(const Route& route, const Plumb& plumb, double from_mm, double to_mm,
                               double level_mm, Side side, const Projection& view = {});

/// What of an outline lies under a level, seen at one distance from the viewer.
QPolygonF outlineUnder(const QPolygonF& outline, const Plumb& plumb, double level_mm, double depth_mm = 0,
                       const Projection& view = {});

} // namespace siphonwright::drawing
