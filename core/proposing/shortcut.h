#pragma once

#include "core/geometry/plumb.h"
#include "core/proposing/routes.h"

#include <optional>

/// Ways left out by what their straights alone show: most of those between areas.
namespace siphonwright {

/// What a hose keeps off, taken once for all ways between two stubs.
class Shortcut {
public:
    Shortcut(const Sketch& sketch, const Hose& hose, const RouteEnd& from, const RouteEnd& to,
             double radius_mm);

    /// Does a place on one of the straights, which the hose passes through whatever its bends, break the rule
    /// on ground, level or areas? No tells nothing.
    bool breaks(const HoseWay& way) const;

private:
    bool breaksAt(Vec3 p, double steep) const;

    struct Near {
        const Area* area = nullptr;
        double clearance_mm = 0; ///< to the centreline
        Vec2 least;              ///< box of the outline, with the clearance
        Vec2 most;
    };
    std::vector<Near> near_;
    std::optional<double> lowest_mm_;  ///< of the hose's outside
    std::optional<double> highest_mm_; ///< of the crown
    Plumb plumb_;
    RouteEnd from_;
    RouteEnd to_;
    double radius_mm_ = 0;
    double half_outside_mm_ = 0;
    double half_bore_mm_ = 0;
};

} // namespace siphonwright
