#pragma once

#include "app/canvas/hit.h"

namespace siphonwright {

/// Add a point to a hose at a place along its path. @return the new point, or nothing where none fits.
PartRef insertHosePoint(Canvas& canvas, const Id& hose, double path_mm);

/// Add a corner to the outline of a part, on the edge nearest to `at`. @return the new corner.
PartRef insertCorner(Canvas& canvas, const PartRef& part, Vec2 at);

/// Connect a hose's end to the nearest port or nozzle; when on one already, to the next further away.
bool connectToNextSocket(Canvas& canvas, const PartRef& end);

} // namespace siphonwright
