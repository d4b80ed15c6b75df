#pragma once

#include "core/geometry/projection.h"
#include "core/layout/layout.h"
#include "core/quantity/quantity.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <vector>

namespace siphonwright {

/// A line that shows what a point has snapped to.
struct Guide {
    Vec2 from;
    Vec2 to;
};

struct Snapped {
    Vec2 at;
    std::vector<Guide> guides;
};

/// The grid's spacing at a zoom, mm: fine enough to be of use, coarse enough to be seen apart.
double gridSpacing(double zoom, UnitSystem units);
/// What points snap to: the grid's spacing, but never coarser than 50 mm or 1 in.
double snapSpacing(double zoom, UnitSystem units);

/// Snap a point level and plumb with the nearest of `neighbours` within `reach_mm`, else to the grid. A grid
/// of 0 leaves the point where it is.
Snapped snapTo(Vec2 raw, const std::vector<Vec2>& neighbours, double grid_mm, double reach_mm);

/// What a part lines up with: the points before and after it on its hose, ports, nozzles.
std::vector<Vec2> snapNeighbours(const Sketch& sketch, const Layout& layout, const PartRef& part,
                                 const Projection& view = {});

} // namespace siphonwright
