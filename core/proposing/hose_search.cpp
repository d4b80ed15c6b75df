#include "core/proposing/hose_search.h"

#include "core/layout/route.h"
#include "core/proposing/lay.h"
#include "core/proposing/shortcut.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

std::vector<RoutePoint> pointsOf(const HoseWay& way, double radius_mm)
{
    std::vector<RoutePoint> points;
    for (const Vec3& at : way.points) {
        RoutePoint point;
        point.at = at;
        point.radius_mm = radius_mm;
        points.push_back(point);
    }
    return points;
}

void count(std::vector<FoundHoses::Tally>& list, const RemovedBy& removed, std::size_t ways = 1)
{
    const auto known = std::find_if(list.begin(), list.end(), [&](const FoundHoses::Tally& tally) {
        return tally.removed.rule == removed.rule && tally.removed.by == removed.by;
    });
    if (known != list.end())
        known->ways += ways;
    else
        list.push_back({removed, ways});
}

/// Ways that were left out before any rule was asked, under the rules that would have removed them.
void countLeftOut(FoundHoses& found, const WaysLeftOut& left_out, HoseRole role)
{
    if (left_out.no_room_for_bend > 0)
        count(found.removed, {"bend-does-not-fit", -1, {}}, left_out.no_room_for_bend);
    if (left_out.wrong_way > 0)
        count(found.removed, {role == HoseRole::supply ? "supply-high-point" : "return-high-point", -1, {}},
              left_out.wrong_way);
}

/// A hose that leaves a level stub starts a little downwards from a port and upwards from a heater, so that
/// neither a clip nor the ground a vehicle stands on makes it fall the wrong way. Own choice: 4 degrees,
/// which a hose takes up at its stub.
RouteEnd leaning(RouteEnd end, bool at_port, Vec3 up)
{
    constexpr double level = 0.1;
    const double lean = std::tan(4 / 57.29577951308232);
    if (std::abs(dot(end.outward, up)) < level)
        end.outward = unit(end.outward + up * (at_port ? -lean : lean));
    return end;
}

} // namespace

std::optional<RouteEnd> routeEnd(const Sketch& sketch, const HoseEnd& end)
{
    const std::optional<Attachment> attached = attachment(sketch, end);
    if (!attached || attached->stub.size() < 2)
        return std::nullopt;
    const Vec3 stop = attached->stub.back().at;
    return RouteEnd{stop, unit(stop - attached->stub[attached->stub.size() - 2].at)};
}

FoundHoses soundHoses(const Sketch& sketch, const Hose& like, PartRules& rules, const HoseWish& wish,
                      const std::stop_token& stop)
{
    FoundHoses out;
    std::optional<RouteEnd> from = routeEnd(sketch, like.from);
    std::optional<RouteEnd> to = routeEnd(sketch, like.to);
    if (!from || !to)
        return out;
    from = leaning(*from, !like.from.port.empty(), rules.plumb().up());
    to = leaning(*to, !like.to.port.empty(), rules.plumb().up());
    RouteWish route;
    route.role = like.role;
    route.radius_mm = leastRadius(sketch, like);
    route.half_outside_mm =
        like.bore_mm.value.value_or(usual_bore_mm) / 2 + like.wall_mm + like.insulation_mm;
    route.up = rules.plumb().up();
    route.areas = &sketch.areas;
    route.fine = wish.fine;
    WaysLeftOut left_out;
    const std::vector<HoseWay> ways = waysBetween(*from, *to, route, left_out, stop);
    const Shortcut shortcut(sketch, like, *from, *to, route.radius_mm);
    double last_mm = 0;
    for (const HoseWay& way : ways) {
        if (out.hoses.size() >= wish.how_many || stop.stop_requested() ||
            (wish.diagnose && out.looked_at >= *wish.diagnose))
            break;
        if (way.length_mm < last_mm * (1 + wish.apart_share) && last_mm > 0)
            continue;
        if (!wish.diagnose && shortcut.breaks(way))
            continue;
        ++out.looked_at;
        Hose hose = like;
        hose.points = pointsOf(way, route.radius_mm);
        hose.parts.clear();
        hose.clips_mm.clear();
        if (const std::optional<RemovedBy> removed = rules.hoseBreaks(Shared<Hose>(hose))) {
            if (wish.diagnose)
                count(out.removed, *removed);
            continue;
        }
        last_mm = way.length_mm;
        out.hoses.push_back(laidThrough(sketch, hose, hose.points));
        out.lengths_mm.push_back(routeOf(sketch, Shared<Hose>(out.hoses.back()))->length_mm);
    }
    if (wish.diagnose)
        countLeftOut(out, left_out, like.role);
    std::stable_sort(out.removed.begin(), out.removed.end(),
                     [](const auto& a, const auto& b) { return a.removed.depth > b.removed.depth; });
    return out;
}

} // namespace siphonwright
