#include "app/canvas/new_part.h"

#include "core/quantity/constants.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

bool hasRole(const Sketch& sketch, PortRole role)
{
    return std::any_of(sketch.ports.begin(), sketch.ports.end(),
                       [role](const Port& port) { return port.role == role; });
}

/// Lowest and highest z and middle x of the jacket.
struct JacketBox {
    double low = 0;
    double high = 0;
    double middle_x = 0;
};
std::optional<JacketBox> jacketBox(const Sketch& sketch)
{
    if (!sketch.engine || sketch.engine->jacket.empty())
        return std::nullopt;
    const auto& jacket = sketch.engine->jacket;
    const auto [low, high] =
        std::minmax_element(jacket.begin(), jacket.end(), [](Vec2 a, Vec2 b) { return a.z < b.z; });
    const auto [left, right] =
        std::minmax_element(jacket.begin(), jacket.end(), [](Vec2 a, Vec2 b) { return a.x < b.x; });
    return JacketBox{low->z, high->z, (left->x + right->x) / 2};
}

} // namespace

std::optional<NearestEdge> nearestWall(const Sketch& sketch, Vec2 at, double reach_mm)
{
    std::optional<NearestEdge> best;
    if (!sketch.engine)
        return best;
    for (const std::vector<Vec2>* outline : {&sketch.engine->jacket, &sketch.engine->outline}) {
        if (outline->size() < 3)
            continue;
        const NearestEdge edge = nearestEdge(*outline, at);
        if (edge.distance_mm <= reach_mm && (!best || edge.distance_mm < best->distance_mm))
            best = edge;
    }
    return best;
}

Port newPort(const Sketch& sketch, Vec2 at, Vec2 outward)
{
    const std::optional<JacketBox> jacket = jacketBox(sketch);
    if (outward == Vec2{})
        outward = {jacket && at.x < jacket->middle_x ? -1.0 : 1.0, 0};
    Port port;
    port.position = {at.x, 0, at.z};
    port.axis = {outward.x < 0 ? 180.0 : 0.0, std::atan2(outward.z, std::abs(outward.x)) / rad_per_deg};
    const bool low = jacket && at.z < (jacket->low + jacket->high) / 2;
    port.kind = low ? PortKind::drain_port : PortKind::head_port;
    if (low && !hasRole(sketch, PortRole::supply))
        port.role = PortRole::supply;
    else if (jacket && !low && !hasRole(sketch, PortRole::return_))
        port.role = PortRole::return_;
    return port;
}

Heater newHeater(const std::string& template_id, Vec2 at)
{
    const std::vector<HeaterTemplate>& templates = heaterTemplates();
    const auto chosen = std::find_if(templates.begin(), templates.end(),
                                     [&](const HeaterTemplate& t) { return t.id == template_id; });
    Heater heater = (chosen == templates.end() ? templates.front() : *chosen).heater;
    heater.position = {at.x, heater.position.y, at.z};
    return heater;
}

SurgeTank newTank(const Sketch& sketch, Vec2 at)
{
    SurgeTank tank;
    if (sketch.tank) {
        tank = *sketch.tank;
        for (Fact<double>* mark : {&tank.cold_min_mm, &tank.cold_full_mm, &tank.hot_mm})
            if (mark->value)
                *mark->value += at.z - tank.position.z;
    } else {
        constexpr double mark_spacing_mm = 40;
        tank.cold_min_mm = {at.z - mark_spacing_mm, Source::typical};
        tank.cold_full_mm = {at.z, Source::typical};
        tank.hot_mm = {at.z + mark_spacing_mm, Source::typical};
    }
    tank.position = {at.x, tank.position.y, at.z};
    return tank;
}

InlinePart newInlinePart(const Hose& hose, InlineKind kind, double along_mm)
{
    constexpr double usual_bore_mm = 19.05;
    InlinePart part;
    part.kind = kind;
    part.along_mm = along_mm;
    // A full-bore valve: anything narrower is the user's to say.
    part.bore_mm = hose.bore_mm.value.value_or(usual_bore_mm);
    part.open = kind != InlineKind::bleed;
    return part;
}

bool canOpen(InlineKind kind)
{
    return kind == InlineKind::isolation_valve || kind == InlineKind::bleed || kind == InlineKind::drain;
}

} // namespace siphonwright
