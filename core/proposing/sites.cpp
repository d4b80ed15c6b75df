#include "core/proposing/sites.h"

#include "core/checks/rules.h"
#include "core/layout/route.h"
#include "core/proposing/hose_search.h"
#include "core/proposing/lay.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double degrees = 180 / 3.14159265358979323846;
constexpr double unpriced_last = 1e12; ///< minor units: over what any hose costs

bool onHeater(const Hose& hose, const Id& heater)
{
    return hose.from.heater == heater || hose.to.heater == heater;
}

bool carriesHose(const Sketch& sketch, const Id& port)
{
    return std::any_of(sketch.hoses.begin(), sketch.hoses.end(), [&](const Shared<Hose>& hose) {
        return hose->from.port == port || hose->to.port == port;
    });
}

/// Does a port serve a hose of this role, or could it?
bool mayServe(const Port& port, PortRole role, bool spare_too)
{
    return port.role == role || (spare_too && port.role == PortRole::spare);
}

/// A pair of ports in a sketch whose only hoses are those of other heaters.
Sketch withRoles(const Sketch& cleared, const Id& supply, const Id& return_)
{
    Sketch out = cleared;
    byId(out.ports, supply)->role = PortRole::supply;
    byId(out.ports, return_)->role = PortRole::return_;
    for (Port& port : out.ports)
        if (port.id != supply && port.id != return_ && !carriesHose(out, port.id) &&
            (port.role == PortRole::supply || port.role == PortRole::return_))
            port.role = PortRole::spare;
    return out;
}

void pairUp(const Sketch& cleared, bool spare_too, std::vector<PortPair>& pairs,
            std::vector<RemovedBy>& removed)
{
    const Vec3 up = plumbOf(cleared).up();
    for (const Port& supply : cleared.ports)
        for (const Port& back : cleared.ports) {
            if (supply.id == back.id || !mayServe(supply, PortRole::supply, spare_too) ||
                !mayServe(back, PortRole::return_, spare_too) || carriesHose(cleared, supply.id) ||
                carriesHose(cleared, back.id))
                continue;
            Sketch tried = withRoles(cleared, supply.id, back.id);
            // Rules on pairs look at single ports before there are hoses, so other heaters' ports step aside.
            std::erase_if(tried.ports, [&](const Port& port) {
                return port.id != supply.id && port.id != back.id && port.role != PortRole::sensor;
            });
            tried.hoses.clear();
            tried.heaters.clear();
            if (const std::optional<RemovedBy> by = PartRules::portsBreak(tried)) {
                removed.push_back(*by);
                continue;
            }
            for (const std::optional<Direction>& supply_elbow : elbowTurns(supply, up))
                for (const std::optional<Direction>& return_elbow : elbowTurns(back, up))
                    pairs.push_back({supply.id, back.id, supply_elbow, return_elbow});
        }
}

/// A vector turned about a unit axis (Rodrigues, 1840).
Vec3 turnedAbout(Vec3 v, Vec3 axis, double angle_rad)
{
    return v * std::cos(angle_rad) + cross(axis, v) * std::sin(angle_rad) +
           axis * (dot(axis, v) * (1 - std::cos(angle_rad)));
}

Direction directionOf(Vec3 v)
{
    constexpr double to_rad = degrees;
    const double flat = std::hypot(v.x, v.y);
    const double azimuth = flat > 1e-9 ? std::atan2(v.y, v.x) * to_rad : 0;
    return {std::round(azimuth * 10) / 10, std::round(std::atan2(v.z, flat) * to_rad * 10) / 10};
}

/// The hose that a proposed one takes after: the heater's own of that role.
Hose hoseLike(const Sketch& drawn, const Id& heater, HoseRole role)
{
    for (const Shared<Hose>& hose : drawn.hoses)
        if (hose->role == role && onHeater(*hose, heater))
            return *hose;
    Hose hose;
    hose.name = role == HoseRole::supply ? "Supply hose" : "Return hose";
    hose.role = role;
    return hose;
}

HoseEnd onPort(HoseEnd end, const Id& port)
{
    end.heater.clear();
    end.port = port;
    return end;
}

HoseEnd onNozzle(HoseEnd end, const Id& heater, NozzleKind nozzle)
{
    end.port.clear();
    end.heater = heater;
    end.nozzle = nozzle;
    return end;
}

double straightLength(const Sketch& sketch, const Hose& hose)
{
    const std::optional<RouteEnd> from = routeEnd(sketch, hose.from);
    const std::optional<RouteEnd> to = routeEnd(sketch, hose.to);
    return from && to ? distance(from->stop, to->stop) : 0;
}

/// Ends of hoses that were drawn the wrong way round keep their sizes.
void putEnds(HeaterSite& site, const Id& heater, const PortPair& ports)
{
    site.supply.from = onPort(site.supply.from, ports.supply);
    site.supply.to = onNozzle(site.supply.to, heater, NozzleKind::inlet);
    site.return_.from = onNozzle(site.return_.from, heater, NozzleKind::outlet);
    site.return_.to = onPort(site.return_.to, ports.return_);
}

struct Grid {
    Vec3 step;
    int x = 1;
    int y = 1;
};

Grid gridOf(const HangingSpace& space)
{
    constexpr double coarse_mm = 150;
    constexpr double height_step_mm = 80;
    const auto places = [](double width_mm, int most) {
        return std::clamp(static_cast<int>(std::ceil(width_mm / coarse_mm - 1e-9)) + 1, 1, most);
    };
    const Vec3 wide = space.most - space.least;
    Grid grid;
    grid.x = wide.x > 1 ? places(wide.x, 6) : 1;
    grid.y = wide.y > 1 ? places(wide.y, 3) : 1;
    grid.step = {wide.x / std::max(1, grid.x - 1), wide.y / std::max(1, grid.y - 1), height_step_mm};
    return grid;
}

struct Heights {
    double least_mm = 0;
    double most_mm = 0;
};

/// Heights of the heater's centre over a point in plan that the rules leave on some grades, within the
/// space's.
Heights heightsLeft(const Sketch& sketch, const Heater& heater, Vec3 plan, const HangingSpace& space,
                    const std::vector<Grade>& grades)
{
    Sketch placed;
    placed.engine = sketch.engine;
    placed.heaters = {heater};
    placed.heaters.front().position = plan;
    constexpr double far_from_plumb = 0.2;
    const std::optional<double> drop_mm = heater.manual_min_drop_mm.known()
                                              ? heater.manual_min_drop_mm.value
                                              : cautionOf("heater-drop", sketch);
    const std::optional<double> over_mm = cautionOf("ground-clearance", sketch);
    Heights out{space.least.z, space.most.z};
    for (const Grade grade : grades) {
        const Plumb plumb = plumbOf(sketch, grade);
        if (plumb.up().z < far_from_plumb)
            continue;
        const Layout layout = resolve(placed, plumb);
        const HeaterHeights& own = layout.heaters.front();
        if (layout.jacket && drop_mm && !switchedOff("heater-drop", sketch))
            out.most_mm = std::min(
                out.most_mm, plan.z + (layout.jacket->lowest_mm - *drop_mm - own.body_top_mm) / plumb.up().z);
        if (over_mm && sketch.ground_z_mm && grade == Grade{}) // the ground tilts with the vehicle
            out.least_mm = std::max(out.least_mm, plan.z + (plumb.height({0, 0, *sketch.ground_z_mm}) +
                                                            *over_mm - own.body_bottom_mm) /
                                                               plumb.up().z);
    }
    return out;
}

/// Heights to try: off both limits by the building margin where there is room, every 80 mm or less.
std::vector<double> heightsIn(Heights left)
{
    constexpr double apart_mm = 80;
    constexpr int most = 4;
    const double wide_mm = left.most_mm - left.least_mm;
    const double off_mm = std::min(building_margin_mm, wide_mm / 2);
    const double room_mm = wide_mm - 2 * off_mm;
    const int count =
        room_mm > 1 ? std::clamp(static_cast<int>(std::ceil(room_mm / apart_mm)) + 1, 2, most) : 1;
    std::vector<double> out;
    out.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        out.push_back(left.least_mm + off_mm + (count > 1 ? room_mm * i / (count - 1) : room_mm / 2));
    return out;
}

bool inside(const HangingSpace& space, Vec3 p)
{
    return p.x >= space.least.x && p.x <= space.most.x && p.y >= space.least.y && p.y <= space.most.y &&
           p.z >= space.least.z && p.z <= space.most.z;
}

} // namespace

std::vector<std::optional<Direction>> elbowTurns(const Port& port, Vec3 up)
{
    std::vector<std::optional<Direction>> out = {std::nullopt};
    if (!port.stub.elbow)
        return out;
    const Direction& own = port.stub.elbow->direction;
    const Vec3 leads = direction(own.azimuth_deg, own.elevation_deg);
    constexpr double downwards = -0.1;
    if (dot(leads, up) < downwards)
        return out;
    const Vec3 axis = direction(port.axis.azimuth_deg, port.axis.elevation_deg);
    for (int eighth = 1; eighth < 8; ++eighth) {
        const Vec3 turned = turnedAbout(leads, axis, eighth * 45 / degrees);
        if (dot(turned, up) < downwards)
            out.push_back(directionOf(turned));
    }
    return out;
}

std::vector<PortPair> portPairs(const Sketch& sketch, const Id& heater, std::vector<RemovedBy>& removed)
{
    const Sketch start = cleared(sketch, heater);
    std::vector<PortPair> pairs;
    pairUp(start, false, pairs, removed);
    if (pairs.empty())
        pairUp(start, true, pairs, removed);
    return pairs;
}

std::vector<double> boresFor(const Sketch& sketch, const ProposeOptions& options, const Heater& heater)
{
    std::vector<double> bores = options.stock_bores_mm;
    if (bores.empty()) {
        bores = {15.875, 19.05, 25.4};
        for (const Shared<Hose>& hose : sketch.hoses)
            if (onHeater(*hose, heater.id) && hose->bore_mm.known())
                bores.push_back(*hose->bore_mm.value);
    }
    constexpr double equal_share = 1e-6; // as the rules have it: a size worked out from inches is that size
    const double least_mm = heater.manual_min_bore_mm.value.value_or(0) * (1 - equal_share);
    std::erase_if(bores, [&](double bore_mm) {
        return !(std::isfinite(bore_mm) && bore_mm > 0) || bore_mm < least_mm;
    });
    std::sort(bores.begin(), bores.end());
    constexpr double same_mm = 0.3;
    bores.erase(std::unique(bores.begin(), bores.end(), [](double a, double b) { return b - a < same_mm; }),
                bores.end());
    return bores;
}

std::vector<Vec3> placesIn(const Sketch& sketch, const ProposeOptions& options, const Heater& heater)
{
    if (!options.space)
        return {heater.position};
    const HangingSpace& space = *options.space;
    const Grid grid = gridOf(space);
    std::vector<Vec3> places;
    std::vector<Grade> grades = cornersOf(sketch.site);
    grades.push_back({});
    if (inside(space, heater.position))
        places.push_back(heater.position);
    for (int i = 0; i < grid.x; ++i)
        for (int j = 0; j < grid.y; ++j) {
            const Vec3 plan = space.least + Vec3{grid.step.x * i, grid.step.y * j, 0};
            Heights left = heightsLeft(sketch, heater, plan, space, grades);
            if (left.least_mm > left.most_mm)
                left = heightsLeft(sketch, heater, plan, space, {Grade{}});
            if (left.least_mm > left.most_mm)
                left = {space.least.z, space.most.z};
            for (const double z : heightsIn(left))
                places.push_back({plan.x, plan.y, z});
        }
    return places;
}

std::vector<Vec3> placesRound(const ProposeOptions& options, Vec3 place)
{
    std::vector<Vec3> out;
    if (!options.space)
        return out;
    const Vec3 half = gridOf(*options.space).step * 0.5;
    for (const Vec3& off : {Vec3{half.x, 0, 0}, Vec3{-half.x, 0, 0}, Vec3{0, half.y, 0}, Vec3{0, -half.y, 0},
                            Vec3{0, 0, half.z}, Vec3{0, 0, -half.z}})
        if (inside(*options.space, place + off) && length(off) > 1)
            out.push_back(place + off);
    return out;
}

Sketch cleared(const Sketch& sketch, const Id& heater)
{
    Sketch out = sketch;
    std::erase_if(out.hoses, [&](const Shared<Hose>& hose) { return onHeater(*hose, heater); });
    return out;
}

double priceWeight(const ProposeOptions& options, double bore_mm)
{
    return options.price_weight_per_mm_bore * bore_mm;
}

HeaterSite siteAt(const Sketch& cleared, const Sketch& drawn, const Id& heater, Vec3 place, double turned_deg,
                  const PortPair& ports, double bore_mm, const ProposeOptions& options)
{
    HeaterSite site;
    site.sketch = withRoles(cleared, ports.supply, ports.return_);
    Heater& moved = *byId(site.sketch.heaters, heater);
    moved.position = place;
    moved.turn_deg = std::remainder(moved.turn_deg + turned_deg, 360);
    if (ports.supply_elbow)
        byId(site.sketch.ports, ports.supply)->stub.elbow->direction = *ports.supply_elbow;
    if (ports.return_elbow)
        byId(site.sketch.ports, ports.return_)->stub.elbow->direction = *ports.return_elbow;
    site.turned_deg = turned_deg;
    site.bore_mm = bore_mm;
    site.supply = hoseLike(drawn, heater, HoseRole::supply);
    site.return_ = hoseLike(drawn, heater, HoseRole::return_);
    putEnds(site, heater, ports);
    if (site.supply.id.empty())
        site.supply.id = freshId(drawn, "hose");
    if (site.return_.id.empty()) {
        Sketch with_supply = drawn;
        with_supply.hoses.push_back(Shared<Hose>(site.supply));
        site.return_.id = freshId(with_supply, "hose");
    }
    putOnBore(site.supply, bore_mm);
    putOnBore(site.return_, bore_mm);
    site.straight_mm = straightLength(site.sketch, site.supply) + straightLength(site.sketch, site.return_);
    site.promise = promiseOf(drawn, site, options);
    return site;
}

double promiseOf(const Sketch& drawn, const HeaterSite& site, const ProposeOptions& options)
{
    const double weighed = priceWeight(options, site.bore_mm) * site.straight_mm / 1000;
    switch (options.rank_by) {
    case RankBy::balance:
        return weighed;
    case RankBy::length:
        return site.straight_mm;
    case RankBy::price:
        if (const std::optional<double> metre = priceOfMetre(drawn, site.bore_mm))
            return *metre * site.straight_mm / 1000;
        return unpriced_last + weighed;
    case RankBy::flow: {
        const Port* back = site.sketch.port(site.return_.to.port);
        const Heater* heater = site.sketch.heater(site.supply.to.heater);
        constexpr double least_mm = 1;
        const double column_mm =
            std::max(least_mm, dot(back->position - heater->position, plumbOf(drawn).up()));
        return site.straight_mm / (column_mm * std::pow(site.bore_mm, 4));
    }
    }
    return weighed;
}

} // namespace siphonwright
