#include "core/proposing/routes.h"

#include "core/checks/clearance.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace siphonwright {
namespace {

/// Straight out of a stub, in bend radii: 1.02 lets a square bend follow at once.
constexpr std::array legs_in_radii = {0.45, 0.6, 0.8, 1.02, 1.25, 1.6, 2.1, 2.8, 4.2, 6.5};
constexpr std::array fine_legs_in_radii = {0.45, 0.6, 0.8, 1.02, 1.25, 1.55, 1.9, 2.3, 2.8, 3.5, 4.5, 6.5};

std::span<const double> legsOf(const RouteWish& wish)
{
    return wish.fine ? std::span<const double>(fine_legs_in_radii) : std::span<const double>(legs_in_radii);
}
constexpr double slope_of_level_legs = 1.0 / 12; ///< own choice: over a grade of 3 % and the rule's 1 in 50
constexpr double round_area_mm = 15;             ///< past an area's clearance, own choice
/// How far off its stub a hose may start: less than the 15 degrees from which on it kinks.
constexpr double in_line = 0.975;
constexpr double level_mm = 1e-6;

/// Corners from stop to stop.
struct Corners {
    std::array<Vec3, 5> at;
    std::size_t count = 0;
    void add(Vec3 p) { at[count++] = p; }
};

/// Do the bends find room on their straights?
bool bendsFit(const Corners& corners, double radius_mm)
{
    double taken_before_mm = 0;
    Vec3 before = corners.at[1] - corners.at[0];
    double before_mm = length(before);
    for (std::size_t i = 1; i + 1 < corners.count; ++i) {
        const Vec3 next = corners.at[i + 1] - corners.at[i];
        const double next_mm = length(next);
        if (before_mm < 1 || next_mm < 1)
            return false;
        const double cosine = std::clamp(dot(before, next) / (before_mm * next_mm), -1.0, 1.0);
        if (cosine < -0.99)
            return false;
        const double take_mm = radius_mm * std::sqrt((1 - cosine) / (1 + cosine)); // r tan(angle / 2)
        if (taken_before_mm + take_mm > before_mm)
            return false;
        taken_before_mm = take_mm;
        before = next;
        before_mm = next_mm;
    }
    return taken_before_mm <= before_mm;
}

bool leavesInLine(const Corners& corners, const RouteEnd& from, const RouteEnd& to)
{
    const Vec3 first = unit(corners.at[1] - corners.at[0]);
    const Vec3 last = unit(corners.at[corners.count - 2] - corners.at[corners.count - 1]);
    return dot(first, from.outward) >= in_line && dot(last, to.outward) >= in_line;
}

bool rightWay(const Corners& corners, const RouteWish& wish)
{
    bool risen = false;
    for (std::size_t i = 1; i < corners.count; ++i) {
        const double rise_mm = dot(corners.at[i] - corners.at[i - 1], wish.up);
        if (rise_mm < -level_mm && (wish.role == HoseRole::return_ || risen))
            return false;
        risen = risen || rise_mm > level_mm;
    }
    return true;
}

/// A place over or under a point in plan, at a height along plumb.
Vec3 atHeight(Vec3 p, double height_mm, Vec3 up)
{
    return p + up * (height_mm - dot(p, up));
}

double flatDistance(Vec3 a, Vec3 b, Vec3 up)
{
    const Vec3 away = b - a;
    return length(away - up * dot(away, up));
}

/// Square round between the outer points: along, across and up in every order.
void addSquare(Vec3 p, Vec3 q, const RouteWish& wish, std::vector<Vec3>& out)
{
    const double p_mm = dot(p, wish.up);
    const double q_mm = dot(q, wish.up);
    const double sign = wish.role == HoseRole::return_ ? 1 : -1;
    for (const double x : {p.x, q.x})
        for (const double y : {p.y, q.y}) {
            const Vec3 plan{x, y, p.z};
            const double from_p_mm = p_mm + sign * slope_of_level_legs * flatDistance(p, plan, wish.up);
            const double from_q_mm = q_mm - sign * slope_of_level_legs * flatDistance(plan, q, wish.up);
            for (const double height_mm : {from_p_mm, from_q_mm, (p_mm + q_mm) / 2})
                out.push_back(atHeight(plan, height_mm, wish.up));
        }
}

/// Past an area: over, under and beside it, before and behind it.
void addPastArea(const Area& area, Vec3 p, Vec3 q, const RouteWish& wish, std::vector<Vec3>& out)
{
    if (area.outline.empty())
        return;
    Vec2 least = area.outline.front();
    Vec2 most = least;
    for (const Vec2& corner : area.outline) {
        least = {std::min(least.x, corner.x), std::min(least.z, corner.z)};
        most = {std::max(most.x, corner.x), std::max(most.z, corner.z)};
    }
    const double off_mm =
        area.clearance_mm.value_or(usualClearance(area.what)) + wish.half_outside_mm + round_area_mm;
    for (const double x : {least.x - off_mm, most.x + off_mm})
        for (const double z : {least.z - off_mm, most.z + off_mm})
            for (const double y : {p.y, q.y})
                out.push_back({x, y, z});
    if (!area.y_from_mm || !area.y_to_mm)
        return;
    const double middle_mm = (dot(p, wish.up) + dot(q, wish.up)) / 2;
    for (const double y : {std::min(*area.y_from_mm, *area.y_to_mm) - off_mm,
                           std::max(*area.y_from_mm, *area.y_to_mm) + off_mm})
        for (const double x : {p.x, q.x, (least.x + most.x) / 2})
            out.push_back(atHeight({x, y, 0}, middle_mm, wish.up));
}

void addGrid(Vec3 p, Vec3 q, const RouteWish& wish, std::vector<Vec3>& out)
{
    constexpr double beyond_mm = 300;
    constexpr int along = 8;
    constexpr int across = 5;
    constexpr int steps_up = 5;
    const Vec3 least{std::min(p.x, q.x) - beyond_mm, std::min(p.y, q.y) - beyond_mm, 0};
    const Vec3 most{std::max(p.x, q.x) + beyond_mm, std::max(p.y, q.y) + beyond_mm, 0};
    const double p_mm = dot(p, wish.up);
    const double q_mm = dot(q, wish.up);
    for (int i = 0; i <= along; ++i)
        for (int j = 0; j <= across; ++j)
            for (int k = 0; k <= steps_up; ++k) {
                const Vec3 plan{least.x + (most.x - least.x) * i / along,
                                least.y + (most.y - least.y) * j / across, 0};
                out.push_back(atHeight(plan, p_mm + (q_mm - p_mm) * k / steps_up, wish.up));
            }
}

/// Collects what holds.
struct Gathering {
    const RouteEnd& from;
    const RouteEnd& to;
    const RouteWish& wish;
    WaysLeftOut& left_out;
    std::vector<HoseWay> ways;

    void look(const Corners& corners)
    {
        if (!leavesInLine(corners, from, to))
            return;
        if (!rightWay(corners, wish)) {
            ++left_out.wrong_way;
            return;
        }
        if (!bendsFit(corners, wish.radius_mm)) {
            ++left_out.no_room_for_bend;
            return;
        }
        HoseWay way;
        for (std::size_t i = 1; i + 1 < corners.count; ++i)
            way.points.push_back(corners.at[i]);
        for (std::size_t i = 1; i < corners.count; ++i)
            way.length_mm += distance(corners.at[i - 1], corners.at[i]);
        ways.push_back(std::move(way));
    }
};

Corners cornersOf(std::initializer_list<Vec3> points)
{
    Corners out;
    for (const Vec3& point : points)
        out.add(point);
    return out;
}

/// Points between the outer ones, without those the short list has when only the grid is asked for.
std::vector<Vec3> pointsBetween(Vec3 p, Vec3 q, const RouteWish& wish)
{
    std::vector<Vec3> out;
    addSquare(p, q, wish, out);
    if (wish.areas)
        for (const Shared<Area>& area : *wish.areas)
            addPastArea(*area, p, q, wish, out);
    if (wish.fine)
        addGrid(p, q, wish, out);
    return out;
}

} // namespace

std::vector<HoseWay> waysBetween(const RouteEnd& from, const RouteEnd& to, const RouteWish& wish,
                                 WaysLeftOut& left_out, const std::stop_token& stop)
{
    Gathering gathering{from, to, wish, left_out, {}};
    for (const double radii : legsOf(wish)) {
        const double leg_mm = radii * wish.radius_mm;
        gathering.look(cornersOf({from.stop, from.stop + from.outward * leg_mm, to.stop}));
        gathering.look(cornersOf({from.stop, to.stop + to.outward * leg_mm, to.stop}));
    }
    for (const double from_radii : legsOf(wish))
        for (const double to_radii : legsOf(wish)) {
            if (stop.stop_requested())
                return {};
            const Vec3 p = from.stop + from.outward * (from_radii * wish.radius_mm);
            const Vec3 q = to.stop + to.outward * (to_radii * wish.radius_mm);
            gathering.look(cornersOf({from.stop, p, q, to.stop}));
            if (!rightWay(cornersOf({from.stop, p}), wish) || !rightWay(cornersOf({q, to.stop}), wish))
                if (wish.role == HoseRole::return_)
                    continue; // nothing between mends that
            for (const Vec3& between : pointsBetween(p, q, wish))
                gathering.look(cornersOf({from.stop, p, between, q, to.stop}));
        }
    std::stable_sort(gathering.ways.begin(), gathering.ways.end(),
                     [](const HoseWay& a, const HoseWay& b) { return a.length_mm < b.length_mm; });
    return std::move(gathering.ways);
}

} // namespace siphonwright
