#include "core/layout/layout.h"

#include "core/geometry/relief.h"
#include "core/layout/chamber.h"
#include "core/layout/route.h"
#include "core/sketch/edits.h"
#include "core/sketch/sketch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// Where in a piece the tangent is level; the crown has its extremes there and at the piece's ends.
std::vector<double> levelPlaces(const Piece& piece, const Plumb& plumb)
{
    std::vector<double> out = {piece.s, piece.s + piece.length_mm};
    if (piece.radius_mm <= 0)
        return out;
    // On an arc the tangent's plumb part is u cos a + n sin a.
    const double first = std::atan2(-dot(piece.u, plumb.up()), dot(piece.n, plumb.up()));
    for (const double angle : {first, first + std::numbers::pi, first + 2 * std::numbers::pi}) {
        const double t = angle * piece.radius_mm;
        if (t > 0 && t < piece.length_mm)
            out.push_back(piece.s + t);
    }
    return out;
}

/// Height of each piece's start and of the path's end.
std::vector<double> startHeights(const Centreline& line, const Plumb& plumb)
{
    std::vector<double> out;
    out.reserve(line.pieces().size() + 1);
    for (const Piece& piece : line.pieces())
        out.push_back(plumb.height(piece.start));
    out.push_back(plumb.height(line.at(line.length())));
    return out;
}

/// No crown lies farther over its centreline than this: half a bore, and where it is held at a bend's own, as
/// far again as the centreline can climb until there.
double mostOverCentre(const Path& path)
{
    double bore_mm = 0;
    for (const BoreSpan& span : path.bores)
        bore_mm = std::isfinite(span.bore_mm) ? std::max(bore_mm, span.bore_mm) : HUGE_VAL;
    constexpr double rounding_mm = 1;
    return 2 * bore_mm + rounding_mm;
}

void findHighestCrown(ResolvedHose& hose, const Plumb& plumb)
{
    const Path& path = hose->path;
    bool found = false;
    const auto consider = [&](double s) {
        const double crown_mm = crownAt(path, plumb.up(), s);
        if (found && crown_mm <= hose.highest_crown_mm)
            return;
        hose.highest_crown_mm = crown_mm;
        hose.highest_at_mm = s;
        found = true;
    };
    // Pieces that stay under another's centreline, their own crown and all, need not be looked at.
    const std::vector<double> heights_mm = startHeights(path.line, plumb);
    const double highest_mm = *std::max_element(heights_mm.begin(), heights_mm.end());
    const double over_mm = mostOverCentre(path);
    for (std::size_t i = 0; i < path.line.pieces().size(); ++i) {
        const Piece& piece = path.line.pieces()[i];
        if ((heights_mm[i] + heights_mm[i + 1] + piece.length_mm) / 2 + over_mm < highest_mm)
            continue;
        for (const double s : levelPlaces(piece, plumb))
            consider(s);
    }
    // At a step the smaller bore counts, so the wider side is looked at just beside it.
    constexpr double beside_mm = 1e-6;
    for (const BoreSpan& span : path.bores) {
        consider(span.from_mm + beside_mm);
        consider(span.to_mm - beside_mm);
    }
}

/// The hose as it was resolved before; most often it is at the same place in the sketch.
const ResolvedHose* resolvedBefore(const Layout* previous, const Hose& hose, std::size_t place)
{
    if (!previous)
        return nullptr;
    if (place < previous->hoses.size() && previous->hoses[place].route->hose->id == hose.id)
        return &previous->hoses[place];
    return previous->hose(hose.id);
}

ResolvedHose resolveHose(const Sketch& sketch, const Shared<Hose>& hose, const Plumb& plumb,
                         const Layout* previous, std::size_t place)
{
    const ResolvedHose* before = resolvedBefore(previous, *hose, place);
    ResolvedHose out;
    const bool holds = before && stillHolds(*before->route, sketch, hose);
    out.route = holds ? before->route : routeOf(sketch, hose);
    if (holds && previous->plumb.up() == plumb.up())
        return *before;
    if (!out->path.line.empty()) {
        out.profile = profileOf(out->path, plumb);
        findHighestCrown(out, plumb);
    }
    out.rise_mm = plumb.height(out->to.opening) - plumb.height(out->from.opening);
    return out;
}

/// A level plane through the tank at a z given over the tank's own place.
std::optional<double> levelHeight(const SurgeTank& tank, const Fact<double>& z_mm, const Plumb& plumb)
{
    if (!z_mm.known())
        return std::nullopt;
    return plumb.height({tank.position.x, tank.position.y, *z_mm.value});
}

CoolantLevels levelsOf(const Sketch& sketch, const Plumb& plumb)
{
    if (!sketch.tank)
        return {};
    const SurgeTank& tank = *sketch.tank;
    return {levelHeight(tank, tank.cold_min_mm, plumb), levelHeight(tank, tank.cold_full_mm, plumb),
            levelHeight(tank, tank.hot_mm, plumb)};
}

std::optional<JacketHeights> jacketOf(const Sketch& sketch, const Plumb& plumb)
{
    if (!sketch.engine || sketch.engine->jacket.empty())
        return std::nullopt;
    const Engine& engine = *sketch.engine;
    const Vec2 first = engine.jacket.front();
    Vec2 least = first;
    Vec2 most = first;
    const double first_mm = plumb.height({first.x, engine.jacket_y_from_mm, first.z});
    JacketHeights out{first_mm, first_mm, 0};
    for (const Vec2& corner : engine.jacket) {
        for (const double y : {engine.jacket_y_from_mm, engine.jacket_y_to_mm}) {
            const double height_mm = plumb.height({corner.x, y, corner.z});
            out.lowest_mm = std::min(out.lowest_mm, height_mm);
            out.highest_mm = std::max(out.highest_mm, height_mm);
        }
        least = {std::min(least.x, corner.x), std::min(least.z, corner.z)};
        most = {std::max(most.x, corner.x), std::max(most.z, corner.z)};
    }
    out.diagonal_mm =
        distance({least.x, engine.jacket_y_from_mm, least.z}, {most.x, engine.jacket_y_to_mm, most.z});
    return out;
}

HeaterHeights heightsOf(const Heater& heater, const Plumb& plumb)
{
    const auto on_axis = [&](double t) { return heaterPoint(heater, {0, 0, t}); };
    const Cylinder body{on_axis(-heater.length_mm / 2), on_axis(heater.length_mm / 2), heater.diameter_mm};
    const Cylinder chamber{on_axis(heater.chamber_bottom_mm), on_axis(heater.chamber_top_mm),
                           heater.chamber_bore_mm};
    const Opening outlet = nozzleOpening(heater, NozzleKind::outlet);
    const double along = dot(outlet.axis, plumb.up());
    const double reach = std::sqrt(std::max(0.0, 1 - along * along));

    HeaterHeights out;
    out.id = heater.id;
    out.body_top_mm = highestOf(body, plumb);
    out.body_bottom_mm = lowestOf(body, plumb);
    out.chamber_top_mm = highestOf(chamber, plumb);
    out.chamber_bottom_mm = lowestOf(chamber, plumb);
    out.outlet_mm = plumb.height(outlet.at);
    out.outlet_crown_mm = out.outlet_mm + heater.outlet.bore_mm.value.value_or(0) / 2 * reach;
    out.inlet_mm = plumb.height(nozzleOpening(heater, NozzleKind::inlet).at);
    // The element reaches from the chamber's bottom up to its top along the axis; upside down its foot is
    // the higher end.
    if (heater.element_top_mm.known())
        out.element_top_mm = std::max(plumb.height(on_axis(*heater.element_top_mm.value)),
                                      plumb.height(on_axis(heater.chamber_bottom_mm)));
    out.over_crown_ml = volumeOver(chamber, plumb, out.outlet_crown_mm);
    return out;
}

} // namespace

const ResolvedHose* Layout::hose(const Id& id) const
{
    const auto found = std::find_if(hoses.begin(), hoses.end(),
                                    [&](const ResolvedHose& hose) { return hose->hose->id == id; });
    return found == hoses.end() ? nullptr : &*found;
}

Plumb plumbOf(const Sketch& sketch, Grade grade)
{
    Attitude attitude;
    attitude.grade = grade;
    if (sketch.engine) {
        attitude.front_at_left = sketch.engine->front == EngineEnd::left;
        attitude.heading_deg = sketch.engine->heading_deg;
        attitude.mount_angle_deg = sketch.engine->mount_angle_deg;
        attitude.lean_deg = sketch.engine->lean_deg;
    }
    return Plumb(attitude);
}

Layout resolve(const Sketch& sketch, const Plumb& plumb, const Layout* previous)
{
    Layout out;
    out.plumb = plumb;
    out.hoses.reserve(sketch.hoses.size());
    for (const Shared<Hose>& hose : sketch.hoses)
        out.hoses.push_back(resolveHose(sketch, hose, plumb, previous, out.hoses.size()));
    out.levels = levelsOf(sketch, plumb);
    out.jacket = jacketOf(sketch, plumb);
    out.heaters.reserve(sketch.heaters.size());
    for (const Heater& heater : sketch.heaters)
        out.heaters.push_back(heightsOf(heater, plumb));
    return out;
}

Vec3 alongHose(const Route& route, double along_mm)
{
    return route.path.line.at(route.hose_from_mm + along_mm);
}

} // namespace siphonwright
