#include "core/layout/wording.h"
#include "core/proposing/cures.h"
#include "core/proposing/hose_search.h"
#include "core/proposing/lay.h"
#include "core/proposing/sites.h"
#include "core/sketch/find.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

/// Cures of a hose's route.
namespace siphonwright {
namespace {

constexpr double near_stretch_mm = 60; ///< a bend so far outside a hump still shapes it

PartRef pointRef(const Id& hose, std::size_t index)
{
    return {PartKind::hose_point, hose, index};
}

/// Places of a hose's own bends along its path.
struct Placed {
    std::size_t point;
    double along_mm;
};
std::vector<Placed> placedPoints(const Route& route)
{
    std::vector<Placed> out;
    for (std::size_t i = 0; i < route.bends.size(); ++i)
        if (route.bend_points[i] != Route::no_point)
            out.push_back({route.bend_points[i], route.bends[i].s});
    return out;
}

/// Bends in and next to the finding's stretch; without one, the nearest to its place.
std::vector<std::size_t> pointsAt(const CureCase& of, const Route& route)
{
    const Finding& finding = of.finding;
    std::vector<Placed> placed = placedPoints(route);
    std::vector<std::size_t> out;
    if (finding.from_mm && finding.to_mm)
        for (const Placed& point : placed)
            if (point.along_mm >= *finding.from_mm - near_stretch_mm &&
                point.along_mm <= *finding.to_mm + near_stretch_mm)
                out.push_back(point.point);
    if (!out.empty() || !finding.along_mm || placed.empty())
        return out;
    const auto nearest =
        std::min_element(placed.begin(), placed.end(), [&](const Placed& a, const Placed& b) {
            return std::abs(a.along_mm - *finding.along_mm) < std::abs(b.along_mm - *finding.along_mm);
        });
    return {nearest->point};
}

/// Lower all of these bends to one height under the highest of them (sign -1), or raise them over the lowest
/// (sign 1).
CureChange levelled(const CureCase& of, const Id& hose, std::vector<std::size_t> points, double sign)
{
    const Vec3 up = of.analysis.layout.plumb.up();
    return [=](Sketch& sketch, double amount_mm, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        if (!shared || points.empty())
            return false;
        double extreme_mm = -std::numeric_limits<double>::infinity();
        for (const std::size_t i : points)
            extreme_mm = std::max(extreme_mm, -sign * dot((*shared)->points[i].at, up));
        const double bound_mm = extreme_mm - amount_mm;
        std::size_t moved = 0;
        shared->edit([&](Hose& changed) {
            for (const std::size_t i : points) {
                Vec3& at = changed.points[i].at;
                const double over_mm = -sign * dot(at, up) - bound_mm;
                if (over_mm <= 0)
                    continue;
                at = at + up * (sign * over_mm);
                ++moved;
            }
        });
        words = {sign < 0 ? "Lower this bend of {a} by {0}." : "Raise this bend of {a} by {0}.",
                 {{amount_mm, Unit::mm}},
                 {nameOfHose(**shared)}};
        if (moved > 1) {
            words.pattern = sign < 0 ? "Lower {1} bends of {a}, the highest by {0}."
                                     : "Raise {1} bends of {a}, the lowest by {0}.";
            words.quantities.push_back({static_cast<double>(moved), Unit::none});
        }
        return true;
    };
}

/// Give a whole hose at least this rise (or fall) per length from end to end, by the least moves of its
/// bends.
CureChange allTheWay(const CureCase& of, const ResolvedHose& hose)
{
    const Plumb plumb = of.analysis.layout.plumb;
    const Id id = hose.id();
    const double sign = hose.role() == HoseRole::return_ ? 1 : -1;
    const Vec3 from = hose->from.stop;
    const Vec3 to = hose->to.stop;
    return [=](Sketch& sketch, double slope, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, id);
        if (!shared || (*shared)->points.empty())
            return false;
        double most_mm = 0;
        std::size_t moved = 0;
        shared->edit([&](Hose& changed) {
            std::vector<double> along = {0};
            Vec3 before = from;
            for (const RoutePoint& point : changed.points) {
                const Vec3 away = point.at - before;
                along.push_back(along.back() + length(away - plumb.up() * plumb.height(away)));
                before = point.at;
            }
            const double end = along.back() + length(to - before - plumb.up() * plumb.height(to - before));
            double least_mm = sign * plumb.height(from);
            for (std::size_t i = 0; i < changed.points.size(); ++i) {
                const double flat_mm = along[i + 1] - along[i];
                const double most_here_mm = sign * plumb.height(to) - slope * (end - along[i + 1]);
                const double own_mm = sign * plumb.height(changed.points[i].at);
                const double new_mm = std::min(std::max(own_mm, least_mm + slope * flat_mm), most_here_mm);
                const double by_mm = new_mm - own_mm;
                least_mm = new_mm;
                if (std::abs(by_mm) < 1e-6)
                    continue;
                changed.points[i].at = changed.points[i].at + plumb.up() * (sign * by_mm);
                most_mm = std::max(most_mm, std::abs(by_mm));
                ++moved;
            }
        });
        words = {sign > 0
                     ? "Lead {a} so that it rises all the way: move {1} of its bends, the farthest by {0}."
                     : "Lead {a} so that it falls all the way: move {1} of its bends, the farthest by {0}.",
                 {{most_mm, Unit::mm}, {static_cast<double>(moved), Unit::none}},
                 {nameOfHose(**shared)}};
        return moved > 0;
    };
}

CureChange leftOut(const Id& hose)
{
    return [=](Sketch& sketch, double index, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        const std::size_t i = static_cast<std::size_t>(index);
        if (!shared || i >= (*shared)->points.size())
            return false;
        shared->edit([&](Hose& changed) {
            changed.points.erase(changed.points.begin() + static_cast<std::ptrdiff_t>(i));
        });
        words = {"Leave out bend {0} of {a}.", {{index + 1, Unit::none}}, {nameOfHose(**shared)}};
        return true;
    };
}

struct Towards {
    Vec3 way;
    const char* words;
};
std::vector<Towards> sixWays()
{
    return {{{0, 0, 1}, "Move this bend of {a} up by {0}."},
            {{0, 0, -1}, "Move this bend of {a} down by {0}."},
            {{1, 0, 0}, "Move this bend of {a} to the right by {0}."},
            {{-1, 0, 0}, "Move this bend of {a} to the left by {0}."},
            {{0, 1, 0}, "Move this bend of {a} away from you by {0}."},
            {{0, -1, 0}, "Move this bend of {a} towards you by {0}."}};
}

CureChange moved(const Id& hose, std::size_t point, const Towards& towards)
{
    return [=](Sketch& sketch, double amount_mm, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        if (!shared || point >= (*shared)->points.size())
            return false;
        shared->edit([&](Hose& changed) {
            changed.points[point].at = changed.points[point].at + towards.way * amount_mm;
        });
        words = {towards.words, {{amount_mm, Unit::mm}}, {nameOfHose(**shared)}};
        return true;
    };
}

CureChange radiusOf(const Id& hose, std::size_t point)
{
    return [=](Sketch& sketch, double, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        if (!shared || point >= (*shared)->points.size())
            return false;
        const double radius_mm = leastRadius(sketch, **shared);
        const bool wider = radius_mm > (*shared)->points[point].radius_mm;
        shared->edit([&](Hose& changed) { changed.points[point].radius_mm = radius_mm; });
        words = {wider ? "Open this bend of {a} to a radius of {0}."
                       : "Bend {a} tighter here, to a radius of {0}.",
                 {{radius_mm, Unit::mm}},
                 {nameOfHose(**shared)}};
        return true;
    };
}

CureChange mouldedElbow(const Id& hose, std::size_t point)
{
    return [=](Sketch& sketch, double, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        if (!shared || point >= (*shared)->points.size())
            return false;
        shared->edit([&](Hose& changed) { changed.points[point].bend = BendKind::moulded_elbow; });
        words = {"Use a moulded elbow for this bend of {a}.", {}, {nameOfHose(**shared)}};
        return true;
    };
}

/// The hose straight out of one of its ends for a length: its first (or last) bend moves onto the stub's
/// axis.
CureChange straightOut(const CureCase& of, const Id& hose, bool at_start)
{
    const double end_radius_mm = leastRadius(of.sketch, *of.sketch.hose(hose));
    return [=](Sketch& sketch, double leg_mm, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, hose);
        if (!shared)
            return false;
        const auto end = routeEnd(sketch, at_start ? (*shared)->from : (*shared)->to);
        if (!end)
            return false;
        RoutePoint point;
        point.at = end->stop + end->outward * leg_mm;
        point.radius_mm = end_radius_mm;
        shared->edit([&](Hose& changed) {
            changed.points.insert(at_start ? changed.points.begin() : changed.points.end(), point);
        });
        words = {"Lead {a} straight out of its end for {0} before it bends.",
                 {{leg_mm, Unit::mm}},
                 {nameOfHose(**shared)}};
        return true;
    };
}

CureChange toTheSide(const CureCase& of, const ResolvedHose& hose, Vec3 way)
{
    const Id id = hose.id();
    const Vec3 middle = hose->path.line.at((hose->hose_from_mm + hose->hose_to_mm) / 2);
    const double radius_mm = leastRadius(of.sketch, *hose->hose);
    return [=](Sketch& sketch, double amount_mm, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, id);
        if (!shared || !(*shared)->points.empty())
            return false;
        RoutePoint point;
        point.at = middle + way * amount_mm;
        point.radius_mm = radius_mm;
        shared->edit([&](Hose& changed) { changed.points = {point}; });
        words = {"Lead {a} round a bend {0} to the side.", {{amount_mm, Unit::mm}}, {nameOfHose(**shared)}};
        return true;
    };
}

CureChange anew(const CureCase& of, const Id& hose)
{
    const Ways ways = of.finding.severity == Severity::advice ? Ways::short_list : Ways::grid_too;
    return [hose, ways, stop = of.stop](Sketch& sketch, double, Message& words) {
        if (!layAnew(sketch, hose, ways, stop))
            return false;
        const Hose& laid = *sketch.hose(hose);
        words = {"Lay {a} anew: straight out of both ends, with {0} bends.",
                 {{static_cast<double>(laid.points.size()), Unit::none}},
                 {nameOfHose(laid)}};
        return true;
    };
}

/// The elbow on the hose's port turned, and the hose laid anew from there.
CureChange elbowTurned(const CureCase& of, const Id& hose, const Id& port, const Direction& to)
{
    return [=, stop = of.stop](Sketch& sketch, double, Message& words) {
        Port* turned = byId(sketch.ports, port);
        if (!turned || !turned->stub.elbow)
            return false;
        turned->stub.elbow->direction = to;
        if (!layAnew(sketch, hose, Ways::short_list, stop))
            return false;
        words = {"Turn the elbow on {a} so that it leads down by {0}, and lay {b} anew from there.",
                 {{-to.elevation_deg, Unit::degree}},
                 {nameOfPort(*turned), nameOfHose(*sketch.hose(hose))}};
        return true;
    };
}

void addTrapCures(const CureCase& of, const ResolvedHose& hose, std::vector<Cure>& cures)
{
    const Id id = hose.id();
    const std::vector<std::size_t> points = pointsAt(of, *hose);
    const bool hump =
        isOneOf(of.finding.rule, {"supply-high-point", "return-high-point", "above-coolant-level",
                                  "air-locked", "air-weakens-flow", "not-cleared-by-running"});
    const double sign = hump ? -1 : 1;
    if (!points.empty()) {
        addCure(cures, pointRef(id, points.front()), levelled(of, id, points, sign), {}, 600);
        std::vector<double> indices(points.begin(), points.end());
        addCure(cures, pointRef(id, points.front()), leftOut(id), indices);
    }
    addCure(cures, {PartKind::hose, id, 0}, allTheWay(of, hose), {0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12});
}

void addElbowCures(const CureCase& of, const ResolvedHose& hose, std::vector<Cure>& cures)
{
    const Hose& drawn = *hose->hose;
    for (const HoseEnd* end : {&drawn.from, &drawn.to})
        if (const Port* port = of.sketch.port(end->port))
            for (const std::optional<Direction>& turn : elbowTurns(*port, of.analysis.layout.plumb.up()))
                if (turn)
                    addCure(cures, refOf(*port), elbowTurned(of, drawn.id, port->id, *turn), {0});
}

void addMoves(const CureCase& of, const ResolvedHose& hose, std::vector<Cure>& cures)
{
    for (const std::size_t point : pointsAt(of, *hose))
        for (const Towards& towards : sixWays())
            addCure(cures, pointRef(hose.id(), point), moved(hose.id(), point, towards), {}, 300);
}

void addBendCures(const CureCase& of, const ResolvedHose& hose, std::vector<Cure>& cures)
{
    const Id id = hose.id();
    if (of.finding.part.kind == PartKind::hose_point) {
        const std::size_t point = of.finding.part.index;
        addCure(cures, of.finding.part, radiusOf(id, point), {0});
        for (const Towards& towards : sixWays())
            addCure(cures, of.finding.part, moved(id, point, towards), {}, 300);
        addCure(cures, of.finding.part, leftOut(id), {static_cast<double>(point)});
        if (of.finding.rule == "bend-too-tight")
            addCure(cures, of.finding.part, mouldedElbow(id, point), {0});
    } else {
        const bool at_start = of.finding.along_mm.value_or(0) < hose->path.line.length() / 2;
        addCure(cures, {PartKind::hose_end, id, at_start ? std::size_t{0} : std::size_t{1}},
                straightOut(of, id, at_start), {40, 60, 80, 100, 130, 160, 200, 250});
    }
}

} // namespace

void addHoseCures(const CureCase& of, std::vector<Cure>& cures)
{
    const ResolvedHose* hose = of.hose();
    if (!hose || (*hose)->path.line.empty())
        return;
    const std::string& rule = of.finding.rule;
    const bool traps = isOneOf(rule, {"supply-high-point", "return-high-point", "return-dip", "supply-dip",
                                      "return-slope", "above-coolant-level", "ground-clearance", "air-locked",
                                      "air-weakens-flow", "not-cleared-by-running", "supply-rises"});
    if (traps)
        addTrapCures(of, *hose, cures);
    if (rule == "keep-clear")
        addMoves(of, *hose, cures);
    if (isOneOf(rule, {"bend-too-tight", "bend-does-not-fit"}))
        addBendCures(of, *hose, cures);
    if (rule == "hose-long") {
        std::vector<double> indices;
        for (std::size_t i = 0; i < (*hose)->hose->points.size(); ++i)
            indices.push_back(static_cast<double>(i));
        addCure(cures, refOf(*(*hose)->hose), leftOut(hose->id()), indices);
    }
    if (rule == "no-slack")
        for (const Vec3 way : {Vec3{0, -1, 0}, Vec3{0, 1, 0}, Vec3{1, 0, 0}, Vec3{-1, 0, 0}})
            addCure(cures, refOf(*(*hose)->hose), toTheSide(of, *hose, way), {}, 300);
    if (traps ||
        isOneOf(rule, {"keep-clear", "bend-too-tight", "bend-does-not-fit", "hose-long", "no-slack"})) {
        addCure(cures, refOf(*(*hose)->hose), anew(of, hose->id()), {0});
        addElbowCures(of, *hose, cures);
    }
}

} // namespace siphonwright
