#include "app/canvas/plane.h"

#include <limits>

namespace siphonwright {

NearestEdge nearestEdge(const std::vector<Vec2>& outline, Vec2 p)
{
    NearestEdge best;
    best.distance_mm = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const std::size_t next = (i + 1) % outline.size();
        const QPointF a(outline[i].x, outline[i].z);
        const QPointF b(outline[next].x, outline[next].z);
        const QPointF at = a + (b - a) * nearestOnSegment({p.x, p.z}, a, b);
        const double distance_mm = distanceBetween({p.x, p.z}, at);
        const double edge_mm = distanceBetween(a, b);
        if (distance_mm >= best.distance_mm || edge_mm <= 0)
            continue;
        best = {next, {at.x(), at.y()}, {(b.y() - a.y()) / edge_mm, (a.x() - b.x()) / edge_mm}, distance_mm};
    }
    // The outline may run either way round: a short step along the normal tells which side is out.
    constexpr double step_mm = 0.5;
    const Vec2 probe = {best.at.x + best.outward.x * step_mm, best.at.z + best.outward.z * step_mm};
    if (isInside(outline, probe))
        best.outward = {-best.outward.x, -best.outward.z};
    return best;
}

bool isInside(const std::vector<Vec2>& outline, Vec2 p)
{
    bool inside = false;
    for (std::size_t i = 0, k = outline.size() - 1; i < outline.size(); k = i++) {
        const Vec2& a = outline[i];
        const Vec2& b = outline[k];
        const bool crosses =
            (a.z > p.z) != (b.z > p.z) && p.x < (b.x - a.x) * (p.z - a.z) / (b.z - a.z) + a.x;
        inside = inside != crosses;
    }
    return inside;
}

} // namespace siphonwright
