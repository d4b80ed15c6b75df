#pragma once

#include "core/geometry/centreline.h"
#include "core/geometry/vec.h"

#include <span>

/// How far hoses and cylinders are from things that are drawn in the elevation and have a depth.
namespace siphonwright {

/// An outline in the elevation (closed polygon, at least one corner) and a depth range; an infinite range is
/// distance in the side view. The outline is only looked at.
struct Prism {
    std::span<const Vec2> outline;
    double y_from_mm = 0;
    double y_to_mm = 0;
};

/// The point of the prism nearest to p; p itself inside it.
Vec3 nearestIn(const Prism& prism, Vec3 p);

/// Where a run comes nearest to a prism, and how near, mm; 0 inside.
struct Approach {
    double along_mm = 0;
    double distance_mm = 0;
};
/// Between two places of a centreline. Places are tried closer and closer, as far as the balls round two
/// neighbours that are known to be empty leave room for something nearer: never too near, and too far by at
/// most approach_error_mm.
constexpr double approach_error_mm = 0.5;
Approach approach(const Centreline& line, double from_mm, double to_mm, const Prism& prism);

/// A solid cylinder with flat ends.
struct RoundBody {
    Vec3 bottom; ///< middle of one end
    Vec3 top;    ///< of the other
    double radius_mm = 0;
};
Vec3 nearestIn(const RoundBody& cylinder, Vec3 p);

/// Distance between the two, mm; 0 where they meet. From nine places along the axis and the corners of the
/// outline, the nearest points are sought in turn, one on each body, until neither moves (alternating
/// projections, Cheney and Goldstein 1959). Checked against sampling to 1 mm.
double distance(const RoundBody& cylinder, const Prism& prism);

} // namespace siphonwright
