#include "core/layout/dimensioning.h"

#include "core/quantity/constants.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace siphonwright {
namespace {

DimensionPlace heldAt(Vec3 at, bool has_depth = true)
{
    DimensionPlace place;
    place.at = at;
    place.held = true;
    place.has_depth = has_depth;
    return place;
}

std::optional<DimensionPlace> onPort(const Port& port, const DimensionEnd& end, const Sketch& sketch)
{
    if (end.index == static_cast<std::int64_t>(PortPlace::opening))
        return heldAt(port.position);
    HoseEnd on;
    on.port = port.id;
    const std::optional<Attachment> place = attachment(sketch, on);
    if (end.index != static_cast<std::int64_t>(PortPlace::stop) || !place || place->stub.empty())
        return std::nullopt;
    return heldAt(place->stub.back().at);
}

std::optional<DimensionPlace> onHeater(const Heater& heater, std::int64_t index)
{
    switch (static_cast<HeaterPlace>(index)) {
    case HeaterPlace::centre:
        return heldAt(heater.position);
    case HeaterPlace::inlet:
        return heldAt(nozzleOpening(heater, NozzleKind::inlet).at);
    case HeaterPlace::outlet:
        return heldAt(nozzleOpening(heater, NozzleKind::outlet).at);
    case HeaterPlace::top:
        return heldAt(heaterPoint(heater, {0, 0, heater.length_mm / 2}));
    case HeaterPlace::foot:
        return heldAt(heaterPoint(heater, {0, 0, -heater.length_mm / 2}));
    }
    return std::nullopt;
}

/// A mark stands for the coolant's level there: the level's place over or under where it is seen from.
std::optional<DimensionPlace> onTank(const SurgeTank& tank, std::int64_t index, const Plumb& plumb,
                                     Vec3 seen_from)
{
    const auto mark = [&](const Fact<double>& z) -> std::optional<DimensionPlace> {
        constexpr double least_up = 0.2; // flatter than this a level has no line across the drawing
        if (!z.known())
            return std::nullopt;
        const Vec3 at = {tank.position.x, tank.position.y, *z.value};
        if (std::abs(plumb.up().z) < least_up)
            return heldAt(at);
        const Vec3 under = {seen_from.x, 0, 0};
        return heldAt({under.x, 0, (plumb.height(at) - plumb.height(under)) / plumb.up().z}, false);
    };
    switch (static_cast<TankPlace>(index)) {
    case TankPlace::middle:
        return heldAt(tank.position);
    case TankPlace::cold_min:
        return mark(tank.cold_min_mm);
    case TankPlace::cold_full:
        return mark(tank.cold_full_mm);
    case TankPlace::hot:
        return mark(tank.hot_mm);
    }
    return std::nullopt;
}

/// The jacket's highest or lowest place; of a level edge the place that is nearest to where it is seen from.
std::optional<DimensionPlace> onJacket(const Engine& engine, std::int64_t index, const Plumb& plumb,
                                       Vec3 seen_from)
{
    constexpr double same_mm = 0.01;
    if (engine.jacket.empty() || index < 0 || index > static_cast<std::int64_t>(JacketPlace::highest))
        return std::nullopt;
    const double sign = index == static_cast<std::int64_t>(JacketPlace::highest) ? 1 : -1;
    const auto over = [&](Vec2 corner) { return sign * plumb.height({corner.x, 0, corner.z}); };
    double most = -std::numeric_limits<double>::infinity();
    for (const Vec2& corner : engine.jacket)
        most = std::max(most, over(corner));
    std::optional<Vec2> left;
    std::optional<Vec2> right;
    for (const Vec2& corner : engine.jacket) {
        if (over(corner) < most - same_mm)
            continue;
        if (!left || corner.x < left->x)
            left = corner;
        if (!right || corner.x > right->x)
            right = corner;
    }
    const double wide = right->x - left->x;
    const double share = wide > 0 ? std::clamp((seen_from.x - left->x) / wide, 0.0, 1.0) : 0;
    return heldAt({left->x + share * wide, 0, left->z + share * (right->z - left->z)}, false);
}

std::optional<DimensionPlace> onOutline(const std::vector<Vec2>& outline, Vec3 seen_from)
{
    std::optional<DimensionPlace> best;
    double best_mm = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Vec2 a = outline[i];
        const Vec2 b = outline[(i + 1) % outline.size()];
        const double dx = b.x - a.x;
        const double dz = b.z - a.z;
        const double square = dx * dx + dz * dz;
        const double t =
            square > 0 ? std::clamp(((seen_from.x - a.x) * dx + (seen_from.z - a.z) * dz) / square, 0.0, 1.0)
                       : 0;
        const Vec3 at = {a.x + t * dx, 0, a.z + t * dz};
        const double mm = std::hypot(seen_from.x - at.x, seen_from.z - at.z);
        if (mm < best_mm) {
            best = heldAt(at, false);
            best_mm = mm;
        }
    }
    return best;
}

/// Path place of a route point: its bend's middle, or the nearest place where the run goes straight on.
double pathPlaceOf(const Route& route, std::size_t point)
{
    for (std::size_t k = 0; k < route.bend_points.size() && k < route.path.line.bends().size(); ++k)
        if (route.bend_points[k] == point)
            return route.path.line.bends()[k].s;
    const Vec3 at = route.hose->points[point].at;
    return route.path.line.nearestInElevation({at.x, at.z}).s;
}

std::optional<DimensionPlace> onHose(const ResolvedHose& hose, const DimensionEnd& end)
{
    const Route& route = *hose;
    const Hose& drawn = *route.hose;
    const auto index = static_cast<std::size_t>(end.index);
    if (route.path.line.empty() || end.index < 0)
        return std::nullopt;
    const auto along = [&](double along_mm) {
        DimensionPlace place = heldAt(alongHose(route, along_mm));
        place.along_mm = std::clamp(route.hose_from_mm + along_mm, route.hose_from_mm, route.hose_to_mm);
        return place;
    };
    switch (end.part) {
    case PartKind::hose:
        return along(static_cast<double>(end.index));
    case PartKind::hose_end: {
        if (index > 1)
            return std::nullopt;
        DimensionPlace place = heldAt(index == 0 ? route.from.stop : route.to.stop);
        place.along_mm = index == 0 ? route.hose_from_mm : route.hose_to_mm;
        return place;
    }
    case PartKind::hose_point: {
        if (index >= drawn.points.size())
            return std::nullopt;
        DimensionPlace place = heldAt(drawn.points[index].at);
        place.along_mm = pathPlaceOf(route, index);
        return place;
    }
    case PartKind::inline_part:
        return index < drawn.parts.size() ? std::optional(along(drawn.parts[index].along_mm)) : std::nullopt;
    case PartKind::clip:
        return index < drawn.clips_mm.size() ? std::optional(along(drawn.clips_mm[index])) : std::nullopt;
    default:
        return std::nullopt;
    }
}

std::optional<DimensionPlace> onCorner(const Sketch& sketch, const DimensionEnd& end)
{
    const std::optional<Vec3> at =
        positionOf(sketch, {end.part, end.id, static_cast<std::size_t>(end.index)});
    return at ? std::optional(heldAt(*at, end.part == PartKind::thermostat)) : std::nullopt;
}

std::optional<DimensionPlace> onPart(const DimensionEnd& end, const Sketch& sketch, const Layout& layout,
                                     Vec3 seen_from)
{
    switch (end.part) {
    case PartKind::port:
        if (const Port* port = sketch.port(end.id))
            return onPort(*port, end, sketch);
        break;
    case PartKind::heater:
        if (const Heater* heater = sketch.heater(end.id))
            return onHeater(*heater, end.index);
        break;
    case PartKind::tank:
        if (sketch.tank)
            return onTank(*sketch.tank, end.index, layout.plumb, seen_from);
        break;
    case PartKind::engine:
        if (sketch.engine)
            return onOutline(sketch.engine->outline, seen_from);
        break;
    case PartKind::jacket:
        if (sketch.engine)
            return onJacket(*sketch.engine, end.index, layout.plumb, seen_from);
        break;
    case PartKind::area:
        if (const Area* area = sketch.area(end.id))
            return onOutline(area->outline, seen_from);
        break;
    case PartKind::ground:
        if (sketch.ground_z_mm)
            return heldAt({seen_from.x, 0, *sketch.ground_z_mm}, false);
        break;
    case PartKind::hose:
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::inline_part:
    case PartKind::clip:
        if (const ResolvedHose* hose = layout.hose(end.id))
            return onHose(*hose, end);
        break;
    case PartKind::engine_corner:
    case PartKind::jacket_corner:
    case PartKind::area_corner:
    case PartKind::thermostat:
        return onCorner(sketch, end);
    case PartKind::nothing:
    case PartKind::photo:
    case PartKind::dimension:
        break;
    }
    return std::nullopt;
}

/// Signed distance from a hose's stretch, left of its flow as the elevation shows it positive.
double asideOfStretch(const HoseStretch& stretch, Vec2 place)
{
    const Centreline& line = stretch.route->path.line;
    const double s = std::clamp(line.nearestInElevation(place).s, stretch.from_mm, stretch.to_mm);
    const Vec3 at = line.at(s);
    const Vec3 way = line.tangent(s);
    const double side = way.x * (place.z - at.z) - way.z * (place.x - at.x);
    const double mm = std::hypot(place.x - at.x, place.z - at.z);
    return side < 0 ? -mm : mm;
}

void measureValue(MeasuredDimension& measured, const Plumb& plumb)
{
    const Vec3 line = measured.to.at - measured.from.at;
    const double rise_mm = std::abs(dot(line, plumb.up()));
    const double run_mm = length(line - plumb.up() * dot(line, plumb.up()));
    measured.angle_deg = rise_mm > 0 || run_mm > 0 ? std::atan2(rise_mm, run_mm) / rad_per_deg : 0;
    switch (measured.kind) {
    case DimensionKind::horizontal:
        measured.value = std::abs(line.x);
        break;
    case DimensionKind::vertical:
        measured.value = std::abs(line.z);
        break;
    case DimensionKind::along:
        measured.value =
            measured.stretch ? measured.stretch->to_mm - measured.stretch->from_mm : length(line);
        break;
    case DimensionKind::slope:
        measured.value = run_mm > 0    ? rise_mm / run_mm
                         : rise_mm > 0 ? std::numeric_limits<double>::infinity()
                                       : 0;
        break;
    }
}

} // namespace

DimensionPlace placeOfEnd(const DimensionEnd& end, const Sketch& sketch, const Layout& layout, Vec3 seen_from)
{
    if (const std::optional<DimensionPlace> place = onPart(end, sketch, layout, seen_from))
        return *place;
    DimensionPlace free;
    free.at = end.at;
    free.has_depth = end.part != PartKind::nothing || end.at.y != 0;
    return free;
}

MeasuredDimension measure(const Dimension& dimension, const Sketch& sketch, const Layout& layout)
{
    constexpr int looks = 4; // two outlines find their nearest places by looking at each other
    MeasuredDimension out;
    out.kind = dimension.kind;
    out.aside_mm = dimension.aside_mm;
    out.from.at = dimension.from.at;
    out.to.at = dimension.to.at;
    for (int i = 0; i < looks; ++i) {
        out.from = placeOfEnd(dimension.from, sketch, layout, out.to.at);
        out.to = placeOfEnd(dimension.to, sketch, layout, out.from.at);
    }
    if (!out.from.has_depth)
        out.from.at.y = out.to.has_depth ? out.to.at.y : 0;
    if (!out.to.has_depth)
        out.to.at.y = out.from.at.y;
    const bool one_hose = out.from.along_mm && out.to.along_mm && dimension.from.id == dimension.to.id;
    if (dimension.kind == DimensionKind::along && one_hose) {
        const auto [low, high] = std::minmax(*out.from.along_mm, *out.to.along_mm);
        out.stretch = HoseStretch{layout.hose(dimension.from.id)->route, low, high};
    }
    measureValue(out, layout.plumb);
    return out;
}

bool isLevel(const DimensionEnd& end)
{
    const bool mark = end.part == PartKind::tank && end.index != static_cast<std::int64_t>(TankPlace::middle);
    return mark || end.part == PartKind::jacket || end.part == PartKind::ground;
}

DimensionKind kindAt(Vec2 from, Vec2 to, Vec2 pointer)
{
    const auto [left, right] = std::minmax(from.x, to.x);
    const auto [low, high] = std::minmax(from.z, to.z);
    const bool beside = pointer.x < left || pointer.x > right;
    const bool over_or_under = pointer.z < low || pointer.z > high;
    if (over_or_under && !beside)
        return DimensionKind::horizontal;
    if (beside && !over_or_under)
        return DimensionKind::vertical;
    return DimensionKind::along;
}

Vec2 asideWay(const MeasuredDimension& measured)
{
    if (measured.kind == DimensionKind::horizontal)
        return {0, 1};
    if (measured.kind == DimensionKind::vertical)
        return {1, 0};
    const double dx = measured.to.at.x - measured.from.at.x;
    const double dz = measured.to.at.z - measured.from.at.z;
    const double mm = std::hypot(dx, dz);
    return mm > 0 ? Vec2{-dz / mm, dx / mm} : Vec2{0, 1};
}

double asideThrough(const MeasuredDimension& measured, Vec2 place)
{
    if (measured.stretch)
        return asideOfStretch(*measured.stretch, place);
    const Vec2 way = asideWay(measured);
    const Vec3 middle = (measured.from.at + measured.to.at) * 0.5;
    return (place.x - middle.x) * way.x + (place.z - middle.z) * way.z;
}

} // namespace siphonwright
