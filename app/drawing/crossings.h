#pragma once

#include "core/geometry/projection.h"
#include "core/layout/layout.h"

#include <cstddef>
#include <functional>
#include <memory>
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

class SeenRun;

/// Where the hoses of a layout run in a view, to look crossings up in. Kept from one frame to the next, only
/// what changed is looked at again.
class SeenRuns {
public:
    /// Take up a layout. Hoses whose route and view are as before stay as they are.
    void follow(const Layout& layout, const Projection& view);
    const std::vector<std::shared_ptr<const SeenRun>>& runs() const { return runs_; }

private:
    Projection view_;
    std::vector<std::shared_ptr<const SeenRun>> runs_; ///< in the order of the layout's hoses
};

/// Every crossing of hose centrelines, the farthest first. Where two hoses meet at one depth (within 1 mm)
/// neither is nearer and there is none. The stretch reaches `gap_mm` past the farther hose on both sides.
std::vector<Crossing> crossingsOf(const Layout& layout, const Projection& view, double gap_mm);
/// The same with runs that are kept, between those hoses (their places in the layout) that are wanted.
std::vector<Crossing> crossingsOf(const Layout& layout, const Projection& view, double gap_mm, SeenRuns& kept,
                                  const std::function<bool(std::size_t, std::size_t)>& wanted);

/// Indices of the layout's hoses, those farther away on the whole first; in their own order where equal.
/// @param left_out  by index, those that are not asked for; empty: none
std::vector<std::size_t> farToNear(const Layout& layout, const Projection& view,
                                   const std::vector<bool>& left_out = {});

} // namespace siphonwright::drawing
