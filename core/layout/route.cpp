#include "core/layout/route.h"

#include "core/sketch/sketch.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

PathEnd pathEnd(const Sketch& sketch, const HoseEnd& end)
{
    PathEnd out;
    out.attached = attachment(sketch, end);
    out.connected = out.attached.has_value();
    if (out.attached) {
        out.opening = out.attached->opening;
        out.stop = out.attached->stub.back().at;
        out.bore_mm = std::min(out.attached->bore_mm, end.bore_mm);
    } else {
        out.opening = end.open_at;
        out.stop = end.open_at;
        out.bore_mm = end.bore_mm;
    }
    return out;
}

std::vector<Corner> stubOf(const PathEnd& end)
{
    return end.attached ? end.attached->stub : std::vector<Corner>{{end.stop, 0}};
}

/// The path's corners, and for each the route point it is.
struct Corners {
    std::vector<Corner> corners;
    std::vector<std::size_t> points;
    std::size_t first_in_hose = 0; ///< the stop at the start
    std::size_t last_in_hose = 0;
};

Corners cornersOf(const Hose& hose, const PathEnd& from, const PathEnd& to)
{
    Corners out;
    out.corners = stubOf(from);
    out.first_in_hose = out.corners.size() - 1;
    out.points.assign(out.corners.size(), Route::no_point);
    for (std::size_t i = 0; i < hose.points.size(); ++i) {
        out.corners.push_back({hose.points[i].at, hose.points[i].radius_mm});
        out.points.push_back(i);
    }
    std::vector<Corner> end = stubOf(to);
    std::reverse(end.begin(), end.end());
    out.last_in_hose = out.corners.size();
    out.corners.insert(out.corners.end(), end.begin(), end.end());
    out.points.resize(out.corners.size(), Route::no_point);
    return out;
}

/// Bends of part of the path laid out by itself, counted by the path's corners.
std::vector<Bend> bendsOfPart(const std::vector<Corner>& corners, std::size_t first, std::size_t last)
{
    const auto at = [&](std::size_t i) { return corners.begin() + static_cast<std::ptrdiff_t>(i); };
    std::vector<Bend> bends = Centreline::bendsThrough(std::vector<Corner>(at(first), at(last + 1)));
    for (Bend& bend : bends)
        bend.corner += first;
    return bends;
}

/// The centreline and its bends. Stubs are rigid: hose and stubs are fitted each by itself first, then
/// joined, so that no bend of the hose takes room from a stub in line with it.
void layCentreline(Route& route, const Corners& joined)
{
    std::vector<Corner> corners = joined.corners;
    std::vector<Bend> fitted = bendsOfPart(corners, 0, joined.first_in_hose);
    for (const auto& [first, last] : {std::pair(joined.first_in_hose, joined.last_in_hose),
                                      std::pair(joined.last_in_hose, corners.size() - 1)}) {
        const std::vector<Bend> part = bendsOfPart(corners, first, last);
        fitted.insert(fitted.end(), part.begin(), part.end());
    }
    for (const Bend& bend : fitted)
        corners[bend.corner].radius_mm = bend.radius_mm;
    route.path.line = Centreline(corners);
    route.bends = route.path.line.bends();
    // Both are in order along the path.
    auto own = fitted.begin();
    for (Bend& bend : route.bends) {
        while (own != fitted.end() && own->corner < bend.corner)
            ++own;
        if (own == fitted.end() || own->corner != bend.corner)
            continue; // where a hose leaves its stub at an angle
        bend.asked_mm = own->asked_mm;
        bend.fits = own->fits;
    }
}

void nameBends(Route& route, const Corners& corners)
{
    for (const Bend& bend : route.bends) {
        const std::size_t point = corners.points[bend.corner];
        const bool in_stub = bend.corner < corners.first_in_hose || bend.corner > corners.last_in_hose;
        route.bend_points.push_back(point);
        if (point != Route::no_point)
            route.bend_kinds.push_back(route.hose->points[point].bend);
        else
            route.bend_kinds.push_back(in_stub ? BendKind::metal_elbow : BendKind::hose);
    }
}

/// In-line parts of a hose in order along it, by their index.
std::vector<std::size_t> inOrder(const std::vector<InlinePart>& parts)
{
    std::vector<std::size_t> order(parts.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return parts[a].along_mm < parts[b].along_mm; });
    return order;
}

void addSpan(std::vector<BoreSpan>& spans, double from_mm, double to_mm, double bore_mm)
{
    if (to_mm > from_mm)
        spans.push_back({from_mm, to_mm, bore_mm});
}

/// Stubs with the bore of what they open into, the hose with its own and with that after each reducer.
void layBores(Route& route)
{
    const double end_mm = route.path.line.length();
    std::vector<BoreSpan>& spans = route.path.bores;
    const auto opening_bore = [&](const PathEnd& end) {
        return end.attached ? end.attached->bore_mm : route.bore_mm;
    };
    addSpan(spans, 0, route.hose_from_mm, opening_bore(route.from));
    double bore_mm = route.bore_mm;
    double from_mm = route.hose_from_mm;
    for (const std::size_t i : inOrder(route.hose->parts)) {
        const InlinePart& part = route.hose->parts[i];
        if (part.kind != InlineKind::reducer)
            continue;
        const double at_mm =
            std::clamp(route.hose_from_mm + part.along_mm, route.hose_from_mm, route.hose_to_mm);
        addSpan(spans, from_mm, at_mm, bore_mm);
        from_mm = at_mm;
        bore_mm = part.bore_mm;
    }
    addSpan(spans, from_mm, route.hose_to_mm, bore_mm);
    addSpan(spans, route.hose_to_mm, end_mm, opening_bore(route.to));
}

/// The stretch of the path that is the hose itself. A stub keeps its own bends whatever follows: the corner
/// at the stop takes nothing from it.
void layStretch(Route& route)
{
    const double end_mm = route.path.line.length();
    route.hose_from_mm = std::min(Centreline(stubOf(route.from)).length(), end_mm);
    route.hose_to_mm = std::max(route.hose_from_mm, end_mm - Centreline(stubOf(route.to)).length());
}

/// What an end is on: a port or heater, else the hose end itself.
PartRef partAt(const HoseEnd& end, const Id& hose, std::size_t index)
{
    if (!end.port.empty())
        return {PartKind::port, end.port, 0};
    if (!end.heater.empty())
        return {PartKind::heater, end.heater, end.nozzle == NozzleKind::inlet ? 0U : 1U};
    return {PartKind::hose_end, hose, index};
}

void listConstrictions(Route& route)
{
    const Hose& hose = *route.hose;
    std::vector<Constriction>& list = route.constrictions;
    const double end_mm = route.path.line.length();
    // A hose end reaches from the stop back into what it is screwed into.
    const double from_end_mm = std::max(0.0, route.hose_from_mm - hose.from.engagement_mm);
    const double to_end_mm = std::min(end_mm, route.hose_to_mm + hose.to.engagement_mm);
    if (route.from.attached)
        list.push_back({partAt(hose.from, hose.id, 0), 0, route.hose_from_mm, route.from.attached->bore_mm});
    list.push_back({{PartKind::hose_end, hose.id, 0}, from_end_mm, route.hose_from_mm, hose.from.bore_mm});
    for (const std::size_t i : inOrder(hose.parts)) {
        const InlinePart& part = hose.parts[i];
        const double at_mm =
            std::clamp(route.hose_from_mm + part.along_mm, route.hose_from_mm, route.hose_to_mm);
        const bool on_from_here = part.kind == InlineKind::reducer;
        const double half_mm = on_from_here ? 0 : part.length_mm / 2;
        list.push_back({{PartKind::inline_part, hose.id, i},
                        std::max(route.hose_from_mm, at_mm - half_mm),
                        on_from_here ? route.hose_to_mm : std::min(route.hose_to_mm, at_mm + half_mm),
                        part.bore_mm});
    }
    list.push_back({{PartKind::hose_end, hose.id, 1}, route.hose_to_mm, to_end_mm, hose.to.bore_mm});
    if (route.to.attached)
        list.push_back({partAt(hose.to, hose.id, 1), route.hose_to_mm, end_mm, route.to.attached->bore_mm});
}

void findSmallest(Route& route)
{
    route.smallest_bore_mm = route.bore_mm;
    route.smallest_at_mm = (route.hose_from_mm + route.hose_to_mm) / 2;
    for (const Constriction& c : route.constrictions) {
        if (c.bore_mm < route.smallest_bore_mm) {
            route.smallest_bore_mm = c.bore_mm;
            route.smallest_at_mm = (c.from_mm + c.to_mm) / 2;
        }
    }
}

bool sameAttachment(const std::optional<Attachment>& a, const std::optional<Attachment>& b)
{
    if (!a || !b)
        return !a && !b;
    const auto same_corner = [](const Corner& p, const Corner& q) {
        return p.at == q.at && p.radius_mm == q.radius_mm;
    };
    return a->opening == b->opening && a->bore_mm == b->bore_mm &&
           std::equal(a->stub.begin(), a->stub.end(), b->stub.begin(), b->stub.end(), same_corner);
}

} // namespace

double cutLength(double length_mm, UnitChoice units)
{
    constexpr double rounding_mm = 1e-6; // so that a length on the mark stays on it
    const double step_mm = units == UnitChoice::inch ? 6.35 : 5;
    return std::ceil((length_mm - rounding_mm) / step_mm) * step_mm;
}

std::shared_ptr<const Route> routeOf(const Sketch& sketch, const Shared<Hose>& hose)
{
    Route route;
    route.hose = hose;
    route.units = sketch.units;
    route.from = pathEnd(sketch, hose->from);
    route.to = pathEnd(sketch, hose->to);
    route.bore_known = hose->bore_mm.known();
    route.bore_mm = hose->bore_mm.value.value_or(usual_bore_mm);
    const Corners corners = cornersOf(*hose, route.from, route.to);
    layCentreline(route, corners);
    nameBends(route, corners);
    layStretch(route);
    layBores(route);
    listConstrictions(route);
    findSmallest(route);
    route.length_mm = route.hose_to_mm - route.hose_from_mm;
    route.cut_length_mm =
        cutLength(route.length_mm + hose->from.engagement_mm + hose->to.engagement_mm, sketch.units);
    if (!route.path.line.empty())
        route.volume_ml = boreVolume(route.path, route.hose_from_mm, route.hose_to_mm);
    return std::make_shared<const Route>(std::move(route));
}

std::optional<Droop> sagMargin(const Route& route, const Plumb& plumb)
{
    if (route.hose->points.empty() || route.path.line.empty())
        return std::nullopt;
    const Corners joined = cornersOf(*route.hose, route.from, route.to);
    const auto path_of = [&](const std::vector<Corner>& corners) {
        Route sagged;
        sagged.hose = route.hose;
        sagged.from = route.from;
        sagged.to = route.to;
        sagged.bore_mm = route.bore_mm;
        Corners moved = joined;
        moved.corners = corners;
        layCentreline(sagged, moved);
        layStretch(sagged);
        layBores(sagged);
        return sagged.path;
    };
    return droopMargin(joined.corners, joined.first_in_hose + 1, joined.last_in_hose, plumb, path_of);
}

bool stillHolds(const Route& route, const Sketch& sketch, const Shared<Hose>& hose)
{
    return route.hose.same(hose) && route.units == sketch.units &&
           sameAttachment(route.from.attached, attachment(sketch, hose->from)) &&
           sameAttachment(route.to.attached, attachment(sketch, hose->to));
}

} // namespace siphonwright
