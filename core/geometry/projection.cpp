#include "core/geometry/projection.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace siphonwright {

namespace {

double gapAt(const Projection& view, const Piece& piece, double t, Vec2 p)
{
    const Vec2 at = view.flat(piece.at(t));
    return std::hypot(at.x - p.x, at.z - p.z);
}

double nearestOnStraight(const Projection& view, const Piece& piece, Vec2 p)
{
    const Vec2 from = view.flat(piece.start);
    const Vec2 way = view.flat(piece.u);
    const double square = way.x * way.x + way.z * way.z;
    // Seen end-on the whole piece is one point.
    if (!(square > 0))
        return 0;
    const double t = ((p.x - from.x) * way.x + (p.z - from.z) * way.z) / square;
    return std::clamp(t, 0.0, piece.length_mm);
}

/// The best of places a few degrees apart, then between its neighbours by thirds.
double nearestOnArc(const Projection& view, const Piece& piece, Vec2 p)
{
    constexpr double step_rad = 0.05;
    constexpr int halvings = 40;
    const int count = std::max(2, int(std::ceil(piece.length_mm / piece.radius_mm / step_rad)));
    int best = 0;
    double least = std::numeric_limits<double>::infinity();
    for (int i = 0; i <= count; ++i) {
        const double gap = gapAt(view, piece, piece.length_mm * i / count, p);
        if (gap < least) {
            least = gap;
            best = i;
        }
    }
    double low = piece.length_mm * std::max(0, best - 1) / count;
    double high = piece.length_mm * std::min(count, best + 1) / count;
    for (int i = 0; i < halvings; ++i) {
        const double a = low + (high - low) / 3;
        const double b = high - (high - low) / 3;
        if (gapAt(view, piece, a, p) <= gapAt(view, piece, b, p))
            high = b;
        else
            low = a;
    }
    return (low + high) / 2;
}

} // namespace

double nearestSeen(const Projection& view, const Piece& piece, Vec2 p)
{
    if (!view.isEnd())
        return piece.nearestInElevation(p);
    return piece.radius_mm > 0 ? nearestOnArc(view, piece, p) : nearestOnStraight(view, piece, p);
}

Centreline::Nearest nearestSeen(const Projection& view, const Centreline& line, Vec2 p)
{
    if (!view.isEnd())
        return line.nearestInElevation(p);
    Centreline::Nearest best;
    best.distance_mm = std::numeric_limits<double>::infinity();
    for (const Piece& piece : line.pieces()) {
        // No point of a piece is farther from its middle than half its length.
        const double half = piece.length_mm / 2;
        if (gapAt(view, piece, half, p) - half > best.distance_mm)
            continue;
        const double t = nearestSeen(view, piece, p);
        const double gap = gapAt(view, piece, t, p);
        if (gap < best.distance_mm)
            best = {piece.s + t, gap};
    }
    return line.empty() ? Centreline::Nearest{} : best;
}

} // namespace siphonwright
