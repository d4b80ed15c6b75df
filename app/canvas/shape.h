#pragma once

#include "app/canvas/elevation_view.h"
#include "app/canvas/hit.h"

namespace siphonwright {

/// Add a point to a hose at a place along its path. @return the new point, or nothing where none fits.
PartRef insertHosePoint(Canvas& canvas, const Id& hose, double path_mm);

/// Add a corner to the outline of a part, on the edge nearest to `at`. @return the new corner.
PartRef insertCorner(Canvas& canvas, const PartRef& part, Vec2 at);

/// Connect a hose's end to the nearest port or nozzle; when on one already, to the next further away.
bool connectToNextSocket(Canvas& canvas, const PartRef& end);

/// Put a valve, bleed or clip into a hose at a distance along the hose itself. @return the new part.
PartRef putOnHose(Canvas& canvas, ToolKind kind, const Id& hose, double along_mm);

} // namespace siphonwright
