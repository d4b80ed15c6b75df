#pragma once

#include "core/geometry/projection.h"
#include "core/layout/layout.h"

#include <cstddef>
#include <vector>

/// Which hose lies over which where they cross in a view.
namespace siphonwright::drawing {

/// A stretch of the nearer hose that is drawn once more, over a gap in the farther one.
struct Crossing {
    std::size_t near_hose = 0; ///< index into the layout's hoses
    std::size_t far_hose = 0;  ///< the same index where a hose crosses itself
    double from_mm = 0;        ///< along the nearer hose's path
    double to_mm = 0;
    double depth_mm = 0; ///< of the nearer hose there, as Projection::depth
};

/// Every crossing of hose centrelines, the farthest first. Where two hoses meet at one depth (within 1 mm)
/// neither is nearer and there is none. The stretch reaches `gap_mm` past the farther hose on both sides.
std::vector<Crossing> crossingsOf(const Layout& layout, const Projection& view, double gap_mm);

/// Indices of the layout's hoses, those farther away on the whole first; in their own order where equal.
std::vector<std::size_t> farToNear(const Layout& layout, const Projection& view);

} // namespace siphonwright::drawing
