#include "core/geometry/prism.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

namespace siphonwright {
namespace {

Vec2 nearestOnEdge(Vec2 a, Vec2 b, Vec2 p)
{
    const Vec2 along{b.x - a.x, b.z - a.z};
    const double square = along.x * along.x + along.z * along.z;
    if (!(square > 0))
        return a;
    const double t = std::clamp(((p.x - a.x) * along.x + (p.z - a.z) * along.z) / square, 0.0, 1.0);
    return {a.x + along.x * t, a.z + along.z * t};
}

Vec2 nearestInOutline(std::span<const Vec2> outline, Vec2 p)
{
    bool inside = false;
    Vec2 best = outline.front();
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0, before = outline.size() - 1; i < outline.size(); before = i++) {
        const Vec2 a = outline[before];
        const Vec2 b = outline[i];
        if ((a.z > p.z) != (b.z > p.z) && p.x < a.x + (b.x - a.x) * (p.z - a.z) / (b.z - a.z))
            inside = !inside;
        const Vec2 q = nearestOnEdge(a, b, p);
        const double square = (q.x - p.x) * (q.x - p.x) + (q.z - p.z) * (q.z - p.z);
        if (square < least) {
            least = square;
            best = q;
        }
    }
    return inside ? p : best;
}

struct Sample {
    double s = 0;
    Vec3 at;
    double distance_mm = 0;
};

/// What is outside the balls round the ends of a straight has at least this distance from the straight.
double leastBetween(const Sample& a, const Sample& b)
{
    const double apart_mm = distance(a.at, b.at);
    const double ends_mm = std::min(a.distance_mm, b.distance_mm);
    if (!(apart_mm > 0))
        return ends_mm;
    const double a2 = a.distance_mm * a.distance_mm;
    const double b2 = b.distance_mm * b.distance_mm;
    // Where both balls' surfaces meet, seen along the straight; nearest to it there or at an end.
    const double meet_mm = std::clamp((a2 - b2 + apart_mm * apart_mm) / (2 * apart_mm), 0.0, apart_mm);
    const double rest_mm = apart_mm - meet_mm;
    const double between2 = std::max(a2 - meet_mm * meet_mm, b2 - rest_mm * rest_mm);
    return std::min(ends_mm, std::sqrt(std::max(0.0, between2)));
}

struct Interval {
    Sample a;
    Sample b;
};

} // namespace

Vec3 nearestIn(const Prism& prism, Vec3 p)
{
    const Vec2 q = nearestInOutline(prism.outline, {p.x, p.z});
    return {q.x, std::clamp(p.y, prism.y_from_mm, prism.y_to_mm), q.z};
}

Approach approach(const Centreline& line, double from_mm, double to_mm, const Prism& prism)
{
    const auto sample = [&](const Piece& piece, double s) {
        const Vec3 at = piece.at(s - piece.s);
        return Sample{s, at, distance(at, nearestIn(prism, at))};
    };
    Approach best{from_mm, std::numeric_limits<double>::infinity()};
    const auto note = [&](const Sample& one) {
        if (one.distance_mm < best.distance_mm)
            best = {one.s, one.distance_mm};
    };
    std::vector<Interval> open;
    for (const Piece& piece : line.pieces()) {
        const double first_mm = std::max(from_mm, piece.s);
        const double last_mm = std::min(to_mm, piece.s + piece.length_mm);
        if (!(last_mm > first_mm))
            continue;
        open.push_back({sample(piece, first_mm), sample(piece, last_mm)});
        note(open.back().a);
        note(open.back().b);
        while (!open.empty()) {
            const Interval now = open.back();
            open.pop_back();
            const double length_mm = now.b.s - now.a.s;
            const double bulge_mm = piece.radius_mm > 0 ? length_mm * length_mm / (8 * piece.radius_mm) : 0;
            if (leastBetween(now.a, now.b) - bulge_mm >= best.distance_mm - approach_error_mm)
                continue;
            const Sample middle = sample(piece, (now.a.s + now.b.s) / 2);
            note(middle);
            open.push_back({middle, now.b});
            open.push_back({now.a, middle});
        }
    }
    return best;
}

Vec3 nearestIn(const RoundBody& cylinder, Vec3 p)
{
    const Vec3 axis = cylinder.top - cylinder.bottom;
    const double long_mm = length(axis);
    const Vec3 u = unit(axis);
    const double along_mm = dot(p - cylinder.bottom, u);
    const Vec3 out = p - cylinder.bottom - u * along_mm;
    const double out_mm = length(out);
    const double share = out_mm > cylinder.radius_mm ? cylinder.radius_mm / out_mm : 1;
    return cylinder.bottom + u * std::clamp(along_mm, 0.0, long_mm) + out * share;
}

double distance(const RoundBody& cylinder, const Prism& prism)
{
    double least = std::numeric_limits<double>::infinity();
    const auto seek = [&](Vec3 p) {
        constexpr int turns = 60;
        constexpr double still_mm = 1e-3;
        double before_mm = std::numeric_limits<double>::infinity();
        for (int turn = 0; turn < turns; ++turn) {
            const Vec3 q = nearestIn(prism, p);
            p = nearestIn(cylinder, q);
            const double now_mm = distance(p, q);
            least = std::min(least, now_mm);
            if (before_mm - now_mm < still_mm)
                return;
            before_mm = now_mm;
        }
    };
    constexpr int starts = 9;
    const Vec3 axis = cylinder.top - cylinder.bottom;
    for (int i = 0; i < starts; ++i)
        seek(cylinder.bottom + axis * (static_cast<double>(i) / (starts - 1)));
    const double depth_mm = (cylinder.bottom.y + cylinder.top.y) / 2;
    for (const Vec2 corner : prism.outline)
        seek(nearestIn(cylinder, {corner.x, depth_mm, corner.z}));
    return least;
}

} // namespace siphonwright
