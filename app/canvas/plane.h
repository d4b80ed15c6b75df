#pragma once

#include "core/geometry/vec.h"

#include <QPointF>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

/// Plane geometry of the screen and the side elevation.
namespace siphonwright {

/// Places nearer to each other are one.
constexpr double same_place_mm = 0.01;

inline Vec2 flatInElevation(Vec3 p)
{
    return {p.x, p.z};
}

inline double distanceBetween(QPointF a, QPointF b)
{
    return std::hypot(b.x() - a.x(), b.y() - a.y());
}

/// Where on the segment a-b the point nearest to p lies, from 0 at a to 1 at b.
inline double nearestOnSegment(QPointF p, QPointF a, QPointF b)
{
    const QPointF d = b - a;
    const double square = QPointF::dotProduct(d, d);
    return square > 0 ? std::clamp(QPointF::dotProduct(p - a, d) / square, 0.0, 1.0) : 0.0;
}

inline double distanceToSegment(QPointF p, QPointF a, QPointF b)
{
    return distanceBetween(p, a + (b - a) * nearestOnSegment(p, a, b));
}

/// The edge of a closed outline nearest to a point of the elevation.
struct NearestEdge {
    std::size_t before = 0; ///< the corner that ends the edge
    Vec2 at;
    Vec2 outward; ///< unit normal, out of the outline
    double distance_mm = 0;
};
/// The outline has at least two corners.
NearestEdge nearestEdge(const std::vector<Vec2>& outline, Vec2 p);

bool isInside(const std::vector<Vec2>& outline, Vec2 p);

} // namespace siphonwright
