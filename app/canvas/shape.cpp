#include "app/canvas/shape.h"

#include "app/canvas/new_part.h"
#include "app/canvas/part_names.h"
#include "app/canvas/plane.h"
#include "app/canvas/sockets.h"
#include "app/language/tr.h"

#include "core/sketch/edits.h"

#include <algorithm>
#include <limits>

namespace siphonwright {
namespace {

/// In space: in a view other parts of the hose may lie over it.
double nearestInSpace(const Centreline& line, Vec3 p)
{
    constexpr double step_mm = 1;
    double best = 0;
    for (double s = 0; s <= line.length(); s += step_mm)
        if (distance(line.at(s), p) < distance(line.at(best), p))
            best = s;
    return best;
}

/// Path place of each route point: the bend's middle, or the nearest place where the run is straight on.
std::vector<double> pointPlaces(const Route& route)
{
    const auto& points = route.hose->points;
    std::vector<double> out;
    for (std::size_t i = 0; i < points.size(); ++i) {
        double s = nearestInSpace(route.path.line, points[i].at);
        for (std::size_t k = 0; k < route.bend_points.size(); ++k)
            if (route.bend_points[k] == i)
                s = route.path.line.bends()[k].s;
        out.push_back(s);
    }
    return out;
}

std::vector<Vec2>* outlineToChange(Sketch& sketch, const PartRef& owner)
{
    if (!sketch.engine)
        return nullptr;
    return owner.kind == PartKind::engine ? &sketch.engine->outline : &sketch.engine->jacket;
}

} // namespace

PartRef insertHosePoint(Canvas& canvas, const Id& hose, double path_mm)
{
    const ResolvedHose* resolved = canvas.layout().hose(hose);
    if (!resolved || (*resolved)->path.line.empty())
        return {};
    const Route& route = **resolved;
    const double s = std::clamp(path_mm, route.hose_from_mm, route.hose_to_mm);
    std::size_t before = 0;
    for (const double place : pointPlaces(route))
        if (place < s)
            ++before;
    RoutePoint point;
    point.at = route.path.line.at(s);
    if (!route.hose->points.empty())
        point.radius_mm = route.hose->points[std::min(before, route.hose->points.size() - 1)].radius_mm;
    const bool added =
        canvas.apply(tr("Insert a point in %1").arg(nameOfPart(canvas.sketch(), {PartKind::hose, hose, 0})),
                     [&](Sketch& sketch) { insertPoint(sketch, hose, before, point); });
    return added ? PartRef{PartKind::hose_point, hose, before} : PartRef{};
}

PartRef insertCorner(Canvas& canvas, const PartRef& part, Vec2 at)
{
    const PartRef owner = ownerOf(part);
    const std::vector<Vec2>* outline = outlineOf(canvas.sketch(), owner);
    if (!outline || outline->size() < 2)
        return {};
    const NearestEdge edge = nearestEdge(*outline, at);
    const std::size_t index = edge.before == 0 ? outline->size() : edge.before;
    const auto insert = [&](std::vector<Vec2>& corners) {
        corners.insert(corners.begin() + static_cast<std::ptrdiff_t>(index), edge.at);
    };
    const bool added =
        canvas.apply(tr("Add a corner to %1").arg(nameOfPart(canvas.sketch(), owner)), [&](Sketch& sketch) {
            if (owner.kind != PartKind::area) {
                if (std::vector<Vec2>* corners = outlineToChange(sketch, owner))
                    insert(*corners);
                return;
            }
            for (Shared<Area>& area : sketch.areas)
                if (area->id == owner.id)
                    area.edit([&](Area& changed) { insert(changed.outline); });
        });
    if (!added)
        return {};
    const PartKind kind = owner.kind == PartKind::engine   ? PartKind::engine_corner
                          : owner.kind == PartKind::jacket ? PartKind::jacket_corner
                                                           : PartKind::area_corner;
    return {kind, owner.id, index};
}

bool connectToNextSocket(Canvas& canvas, const PartRef& end)
{
    const ResolvedHose* resolved = canvas.layout().hose(end.id);
    if (end.kind != PartKind::hose_end || !resolved)
        return false;
    const Hose& hose = *(*resolved)->hose;
    const HoseEnd& now = end.index == 0 ? hose.from : hose.to;
    const HoseEnd& other = end.index == 0 ? hose.to : hose.from;
    // Distances are taken from the place next to this end, which stays where it is while the end jumps.
    Vec3 from = end.index == 0 ? (*resolved)->to.stop : (*resolved)->from.stop;
    if (!hose.points.empty())
        from = end.index == 0 ? hose.points.front().at : hose.points.back().at;
    std::vector<Socket> sockets = socketsOf(canvas.sketch());
    std::erase_if(sockets, [&](const Socket& s) { return other.connected() && s.sameAs(other); });
    if (sockets.empty())
        return false;
    std::stable_sort(sockets.begin(), sockets.end(), [&](const Socket& a, const Socket& b) {
        return distance(a.stop, from) < distance(b.stop, from);
    });
    const auto on =
        std::find_if(sockets.begin(), sockets.end(), [&](const Socket& s) { return s.sameAs(now); });
    const bool further = now.connected() && on != sockets.end() && on + 1 != sockets.end();
    const Socket& next = further ? *(on + 1) : sockets.front();
    return canvas.apply(tr("Connect %1 to %2").arg(nameOfPart(canvas.sketch(), end), next.name),
                        [&](Sketch& sketch) { connect(sketch, end.id, end.index, next.end); });
}

PartRef putOnHose(Canvas& canvas, ToolKind kind, const Id& id, double along_mm)
{
    const Hose* hose = canvas.sketch().hose(id);
    if (!hose)
        return {};
    if (kind == ToolKind::clip) {
        const PartRef part = {PartKind::clip, id, hose->clips_mm.size()};
        canvas.apply(tr("Place a clip"), [&](Sketch& sketch) { addClip(sketch, id, along_mm); });
        return part;
    }
    InlinePart put = newInlinePart(
        *hose, kind == ToolKind::bleed ? InlineKind::bleed : InlineKind::isolation_valve, along_mm);
    // All of it lies in the hose, clear of the hose ends where there is room for that.
    if (const ResolvedHose* laid = canvas.layout().hose(id)) {
        const double length_mm = (*laid)->hose_to_mm - (*laid)->hose_from_mm;
        const double from_mm = put.length_mm / 2 + hose->from.engagement_mm;
        const double to_mm = length_mm - put.length_mm / 2 - hose->to.engagement_mm;
        put.along_mm = from_mm < to_mm ? std::clamp(put.along_mm, from_mm, to_mm) : length_mm / 2;
    }
    const PartRef part = {PartKind::inline_part, id, hose->parts.size()};
    canvas.apply(tr("Place a part in a hose: %1").arg(nameOfInline(put.kind)),
                 [&](Sketch& sketch) { addInlinePart(sketch, id, put); });
    return part;
}

} // namespace siphonwright
