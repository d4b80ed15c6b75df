#include "app/window/insertions.h"

#include "core/sketch/edits.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

namespace {

constexpr double usual_drop_mm = 200; // heater's top under the jacket: over the 152.4 mm that rules ask for

struct Box {
    double left = -300;
    double right = 300;
    double bottom = 300; // where a highway engine has it, over the frame rail
    double top = 800;
};

Box jacketBox(const Sketch& sketch)
{
    Box box;
    if (!sketch.engine || sketch.engine->jacket.empty())
        return box;
    const auto& outline = sketch.engine->jacket;
    const auto [left, right] =
        std::minmax_element(outline.begin(), outline.end(), [](Vec2 a, Vec2 b) { return a.x < b.x; });
    const auto [low, high] =
        std::minmax_element(outline.begin(), outline.end(), [](Vec2 a, Vec2 b) { return a.z < b.z; });
    box.left = left->x;
    box.right = right->x;
    box.bottom = low->z;
    box.top = high->z;
    return box;
}

bool frontIsLeft(const Sketch& sketch)
{
    return !sketch.engine || sketch.engine->front == EngineEnd::left;
}

/// A tenth of the jacket in from its front or rear end.
double nearEnd(const Sketch& sketch, bool front)
{
    const Box box = jacketBox(sketch);
    const double inset = 0.1 * (box.right - box.left);
    return front == frontIsLeft(sketch) ? box.left + inset : box.right - inset;
}

bool used(const Sketch& sketch, const Id& port)
{
    return std::any_of(sketch.hoses.begin(), sketch.hoses.end(), [&](const Shared<Hose>& hose) {
        return hose->from.port == port || hose->to.port == port;
    });
}

bool hasHose(const Sketch& sketch, const Id& heater, HoseRole role)
{
    return std::any_of(sketch.hoses.begin(), sketch.hoses.end(), [&](const Shared<Hose>& hose) {
        return hose->role == role && (hose->from.heater == heater || hose->to.heater == heater);
    });
}

} // namespace

PartRef insertEngine(Sketch& sketch, const std::string& template_id)
{
    for (const EngineTemplate& candidate : engineTemplates()) {
        if (candidate.id != template_id)
            continue;
        placeEngine(sketch, candidate, {});
        return {PartKind::engine, {}, 0};
    }
    return {};
}

PartRef insertHeater(Sketch& sketch, const std::string& template_id)
{
    const auto& templates = heaterTemplates();
    const auto chosen = std::find_if(templates.begin(), templates.end(),
                                     [&](const HeaterTemplate& t) { return t.id == template_id; });
    if (chosen == templates.end())
        return {};
    Heater heater = chosen->heater;
    const auto port = std::find_if(sketch.ports.begin(), sketch.ports.end(),
                                   [](const Port& p) { return p.role == PortRole::return_; });
    const bool has_port = port != sketch.ports.end();
    const Box box = jacketBox(sketch);
    heater.position = {has_port ? port->position.x : nearEnd(sketch, false), has_port ? port->position.y : 0,
                       box.bottom - usual_drop_mm - heater.length_mm / 2};
    // A second heater stands beside the first, not in it.
    for (const Heater& other : sketch.heaters)
        if (std::abs(other.position.x - heater.position.x) < heater.diameter_mm + 20)
            heater.position.x =
                other.position.x + (frontIsLeft(sketch) ? -1 : 1) * (2 * heater.diameter_mm + 60);
    return {PartKind::heater, addHeater(sketch, std::move(heater)), 0};
}

PartRef insertPort(Sketch& sketch, PortRole role)
{
    const bool supply = role == PortRole::supply;
    const Box box = jacketBox(sketch);
    const double height = box.top - box.bottom;
    Port port;
    port.role = role;
    port.kind = supply ? PortKind::drain_port : PortKind::head_port;
    port.position = {nearEnd(sketch, supply), sketch.engine ? sketch.engine->jacket_y_from_mm : 0,
                     supply ? box.bottom + 0.05 * height : box.top - 0.15 * height};
    // Out of the side that the viewer sees, turned down for the supply and along the engine for the return.
    port.axis.azimuth_deg = -90;
    StubElbow elbow;
    elbow.direction.azimuth_deg = -90;
    elbow.direction.elevation_deg = -90;
    port.stub.elbow = elbow;
    port.bore_mm.value = 19;
    port.bore_mm.source = Source::typical;
    return {PartKind::port, addPort(sketch, std::move(port)), 0};
}

PartRef insertHose(Sketch& sketch, HoseRole role)
{
    const bool supply = role == HoseRole::supply;
    const PortRole wanted = supply ? PortRole::supply : PortRole::return_;
    const auto port = std::find_if(sketch.ports.begin(), sketch.ports.end(),
                                   [&](const Port& p) { return p.role == wanted && !used(sketch, p.id); });
    const auto heater = std::find_if(sketch.heaters.begin(), sketch.heaters.end(),
                                     [&](const Heater& h) { return !hasHose(sketch, h.id, role); });
    if (port == sketch.ports.end() || heater == sketch.heaters.end())
        return {};
    HoseEnd at_port;
    at_port.port = port->id;
    HoseEnd at_heater;
    at_heater.heater = heater->id;
    at_heater.nozzle = supply ? NozzleKind::inlet : NozzleKind::outlet;
    const Id id = supply ? addHose(sketch, role, at_port, at_heater, {})
                         : addHose(sketch, role, at_heater, at_port, {});
    return id.empty() ? PartRef() : PartRef{PartKind::hose, id, 0};
}

PartRef insertRoutePoint(Sketch& sketch, const Layout& layout, const Id& hose)
{
    const ResolvedHose* resolved = layout.hose(hose);
    const Hose* drawn = sketch.hose(hose);
    if (!resolved || !drawn)
        return {};
    const std::size_t before = drawn->points.size() / 2;
    const auto height = [&](std::size_t end) { return positionOf(sketch, {PartKind::hose_end, hose, end}); };
    Vec3 at = alongHose(**resolved, (*resolved)->length_mm / 2);
    // Between its two neighbours, whatever the hose's own middle is.
    const auto first = before == 0 ? height(0) : std::optional(drawn->points[before - 1].at);
    const auto second = before == drawn->points.size() ? height(1) : std::optional(drawn->points[before].at);
    if (first && second)
        at = (*first + *second) * 0.5;
    RoutePoint point;
    point.at = at;
    if (!insertPoint(sketch, hose, before, point))
        return {};
    return {PartKind::hose_point, hose, before};
}

PartRef insertValve(Sketch& sketch, const Id& hose)
{
    InlinePart valve;
    valve.along_mm = 60;
    if (const Hose* drawn = sketch.hose(hose))
        valve.bore_mm = drawn->bore_mm.value.value_or(valve.bore_mm);
    if (!addInlinePart(sketch, hose, valve))
        return {};
    return {PartKind::hose, hose, 0};
}

PartRef insertBleed(Sketch& sketch, const Layout& layout, const Id& hose)
{
    const ResolvedHose* resolved = layout.hose(hose);
    const Hose* drawn = sketch.hose(hose);
    if (!resolved || !drawn)
        return {};
    const auto& crests = resolved->profile.high_points;
    const auto highest =
        std::max_element(crests.begin(), crests.end(),
                         [](const HighPoint& a, const HighPoint& b) { return a.height_mm < b.height_mm; });
    InlinePart bleed;
    bleed.kind = InlineKind::bleed;
    bleed.bore_mm = drawn->bore_mm.value.value_or(bleed.bore_mm);
    const double along =
        highest == crests.end() ? (*resolved)->hose_from_mm + (*resolved)->length_mm / 2 : highest->along_mm;
    bleed.along_mm = std::clamp(along - (*resolved)->hose_from_mm, 0.0, (*resolved)->length_mm);
    if (!addInlinePart(sketch, hose, bleed))
        return {};
    return {PartKind::hose, hose, 0};
}

PartRef insertTank(Sketch& sketch)
{
    const Box box = jacketBox(sketch);
    SurgeTank tank;
    tank.position = {nearEnd(sketch, true), 0, box.top + 200};
    const auto level = [](Fact<double>& fact, double z) {
        fact.value = z;
        fact.source = Source::assumed;
    };
    level(tank.cold_min_mm, box.top + 150);
    level(tank.cold_full_mm, box.top + 190);
    level(tank.hot_mm, box.top + 220);
    sketch.tank = tank;
    return {PartKind::tank, {}, 0};
}

PartRef insertArea(Sketch& sketch)
{
    const Box box = jacketBox(sketch);
    const double x = (box.left + box.right) / 2;
    const double z = box.bottom - 100;
    Area area;
    area.outline = {{x - 60, z - 60}, {x + 60, z - 60}, {x + 60, z + 60}, {x - 60, z + 60}};
    return {PartKind::area, addArea(sketch, std::move(area)), 0};
}

std::vector<PartRef> allParts(const Sketch& sketch)
{
    std::vector<PartRef> parts;
    const auto add = [&parts](PartKind kind, const Id& id, std::size_t index) {
        PartRef part;
        part.kind = kind;
        part.id = id;
        part.index = index;
        parts.push_back(part);
    };
    if (sketch.engine) {
        add(PartKind::engine, {}, 0);
        if (sketch.engine->thermostat)
            add(PartKind::thermostat, {}, 0);
    }
    if (sketch.tank)
        add(PartKind::tank, {}, 0);
    for (const Port& port : sketch.ports)
        add(PartKind::port, port.id, 0);
    for (const Heater& heater : sketch.heaters)
        add(PartKind::heater, heater.id, 0);
    for (const Shared<Hose>& hose : sketch.hoses) {
        add(PartKind::hose, hose->id, 0);
        for (std::size_t i = 0; i < hose->points.size(); ++i)
            add(PartKind::hose_point, hose->id, i);
        for (std::size_t i = 0; i < hose->parts.size(); ++i)
            add(PartKind::inline_part, hose->id, i);
        for (std::size_t i = 0; i < hose->clips_mm.size(); ++i)
            add(PartKind::clip, hose->id, i);
    }
    for (const Shared<Area>& area : sketch.areas)
        add(PartKind::area, area->id, 0);
    for (const Dimension& dimension : sketch.dimensions)
        add(PartKind::dimension, dimension.id, 0);
    if (sketch.photo)
        add(PartKind::photo, {}, 0);
    return parts;
}

} // namespace siphonwright
