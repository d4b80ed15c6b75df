#include "core/sketch/edits.h"
#include "core/sketch/find.h"
#include "core/sketch/pose.h"

#include <algorithm>

namespace siphonwright {
namespace {

std::optional<Vec3> cornerOf(const std::vector<Vec2>& outline, std::size_t index)
{
    if (index >= outline.size())
        return std::nullopt;
    return Vec3{outline[index].x, 0, outline[index].z};
}

/// Middle of the box round an outline.
std::optional<Vec3> middleOf(const std::vector<Vec2>& outline)
{
    if (outline.empty())
        return std::nullopt;
    const auto [left, right] =
        std::minmax_element(outline.begin(), outline.end(), [](Vec2 a, Vec2 b) { return a.x < b.x; });
    const auto [low, high] =
        std::minmax_element(outline.begin(), outline.end(), [](Vec2 a, Vec2 b) { return a.z < b.z; });
    return Vec3{(left->x + right->x) / 2, 0, (low->z + high->z) / 2};
}

std::optional<Vec3> positionOnEngine(const Engine& engine, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::engine:
        return middleOf(engine.outline);
    case PartKind::engine_corner:
        return cornerOf(engine.outline, part.index);
    case PartKind::jacket:
        return middleOf(engine.jacket);
    case PartKind::jacket_corner:
        return cornerOf(engine.jacket, part.index);
    case PartKind::thermostat:
        return engine.thermostat ? std::optional<Vec3>(engine.thermostat->position) : std::nullopt;
    default:
        return std::nullopt;
    }
}

std::optional<Vec3> positionOnHose(const Sketch& sketch, const Hose& hose, const PartRef& part)
{
    if (part.kind == PartKind::hose_point && part.index < hose.points.size())
        return hose.points[part.index].at;
    if (part.kind == PartKind::hose_end && part.index < 2)
        return hoseEndPosition(sketch, part.index == 0 ? hose.from : hose.to);
    return std::nullopt;
}

bool existsOnHose(const Hose& hose, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::hose:
        return true;
    case PartKind::hose_point:
        return part.index < hose.points.size();
    case PartKind::hose_end:
        return part.index < 2;
    case PartKind::inline_part:
        return part.index < hose.parts.size();
    case PartKind::clip:
        return part.index < hose.clips_mm.size();
    default:
        return false;
    }
}

void shift(Vec2& point, Vec3 delta)
{
    point = {point.x + delta.x, point.z + delta.z};
}

void shift(std::vector<Vec2>& outline, Vec3 delta)
{
    for (Vec2& corner : outline)
        shift(corner, delta);
}

void shiftJacket(Engine& engine, Vec3 delta)
{
    shift(engine.jacket, delta);
    engine.jacket_y_from_mm += delta.y;
    engine.jacket_y_to_mm += delta.y;
}

void moveOnEngine(Sketch& sketch, const PartRef& part, Vec3 delta)
{
    Engine& engine = *sketch.engine;
    switch (part.kind) {
    case PartKind::engine:
        shift(engine.outline, delta);
        shiftJacket(engine, delta);
        for (Port& port : sketch.ports)
            port.position = port.position + delta;
        if (engine.thermostat)
            engine.thermostat->position = engine.thermostat->position + delta;
        break;
    case PartKind::engine_corner:
        shift(engine.outline[part.index], delta);
        break;
    case PartKind::jacket:
        shiftJacket(engine, delta);
        break;
    case PartKind::jacket_corner:
        shift(engine.jacket[part.index], delta);
        break;
    default:
        engine.thermostat->position = engine.thermostat->position + delta;
    }
}

void moveOnHose(Hose& hose, const PartRef& part, Vec3 delta)
{
    switch (part.kind) {
    case PartKind::hose:
        for (RoutePoint& point : hose.points)
            point.at = point.at + delta;
        for (HoseEnd* end : {&hose.from, &hose.to})
            if (!end->connected())
                end->open_at = end->open_at + delta;
        break;
    case PartKind::hose_point:
        hose.points[part.index].at = hose.points[part.index].at + delta;
        break;
    case PartKind::hose_end: {
        HoseEnd& end = part.index == 0 ? hose.from : hose.to;
        end.open_at = end.open_at + delta;
        break;
    }
    case PartKind::inline_part:
        hose.parts[part.index].along_mm = std::max(0.0, hose.parts[part.index].along_mm + delta.x);
        break;
    default:
        hose.clips_mm[part.index] = std::max(0.0, hose.clips_mm[part.index] + delta.x);
    }
}

void moveArea(Area& area, const PartRef& part, Vec3 delta)
{
    if (part.kind == PartKind::area_corner) {
        shift(area.outline[part.index], delta);
        return;
    }
    shift(area.outline, delta);
    if (area.y_from_mm)
        *area.y_from_mm += delta.y;
    if (area.y_to_mm)
        *area.y_to_mm += delta.y;
}

/// A hose's end on a port or nozzle stays where that is, a locked photograph where it lies.
bool heldElsewhere(const Sketch& sketch, const PartRef& part)
{
    if (part.kind == PartKind::photo)
        return (*sketch.photo)->locked;
    if (part.kind != PartKind::hose_end)
        return false;
    const Hose& hose = **byId(sketch.hoses, part.id);
    return part.index == 0 ? hose.from.connected() : hose.to.connected();
}

} // namespace

bool exists(const Sketch& sketch, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::nothing:
        return false;
    case PartKind::engine:
    case PartKind::jacket:
        return sketch.engine.has_value();
    case PartKind::engine_corner:
    case PartKind::jacket_corner:
    case PartKind::thermostat:
        return sketch.engine && positionOnEngine(*sketch.engine, part);
    case PartKind::tank:
        return sketch.tank.has_value();
    case PartKind::port:
        return byId(sketch.ports, part.id) != nullptr;
    case PartKind::heater:
        return byId(sketch.heaters, part.id) != nullptr;
    case PartKind::hose:
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::inline_part:
    case PartKind::clip: {
        const Shared<Hose>* hose = byId(sketch.hoses, part.id);
        return hose && existsOnHose(**hose, part);
    }
    case PartKind::area:
        return byId(sketch.areas, part.id) != nullptr;
    case PartKind::area_corner: {
        const Shared<Area>* area = byId(sketch.areas, part.id);
        return area && part.index < (*area)->outline.size();
    }
    case PartKind::ground:
        return sketch.ground_z_mm.has_value();
    case PartKind::photo:
        return sketch.photo.has_value();
    case PartKind::dimension:
        return byId(sketch.dimensions, part.id) != nullptr;
    }
    return false;
}

std::optional<Vec3> positionOf(const Sketch& sketch, const PartRef& part)
{
    if (!exists(sketch, part))
        return std::nullopt;
    switch (part.kind) {
    case PartKind::tank:
        return sketch.tank->position;
    case PartKind::port:
        return byId(sketch.ports, part.id)->position;
    case PartKind::heater:
        return byId(sketch.heaters, part.id)->position;
    case PartKind::hose_point:
    case PartKind::hose_end:
        return positionOnHose(sketch, **byId(sketch.hoses, part.id), part);
    case PartKind::area:
        return middleOf((*byId(sketch.areas, part.id))->outline);
    case PartKind::area_corner:
        return cornerOf((*byId(sketch.areas, part.id))->outline, part.index);
    case PartKind::ground:
        return Vec3{0, 0, *sketch.ground_z_mm};
    case PartKind::photo:
        return Vec3{(*sketch.photo)->top_left.x, 0, (*sketch.photo)->top_left.z};
    case PartKind::dimension:
        return std::nullopt;
    default:
        return sketch.engine ? positionOnEngine(*sketch.engine, part) : std::nullopt;
    }
}

namespace {

void moveTank(SurgeTank& tank, Vec3 delta)
{
    tank.position = tank.position + delta;
    for (Fact<double>* mark : {&tank.cold_min_mm, &tank.cold_full_mm, &tank.hot_mm})
        if (mark->known())
            *mark->value += delta.z;
}

} // namespace

bool move(Sketch& sketch, const PartRef& part, Vec3 delta)
{
    const bool finite = std::isfinite(delta.x) && std::isfinite(delta.y) && std::isfinite(delta.z);
    if (!finite || !exists(sketch, part) || heldElsewhere(sketch, part))
        return false;
    switch (part.kind) {
    case PartKind::tank:
        moveTank(*sketch.tank, delta);
        break;
    case PartKind::port: {
        Port& port = *byId(sketch.ports, part.id);
        port.position = port.position + delta;
        break;
    }
    case PartKind::heater: {
        Heater& heater = *byId(sketch.heaters, part.id);
        heater.position = heater.position + delta;
        break;
    }
    case PartKind::hose:
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::inline_part:
    case PartKind::clip:
        byId(sketch.hoses, part.id)->edit([&](Hose& hose) { moveOnHose(hose, part, delta); });
        break;
    case PartKind::area:
    case PartKind::area_corner:
        byId(sketch.areas, part.id)->edit([&](Area& area) { moveArea(area, part, delta); });
        break;
    case PartKind::ground:
        *sketch.ground_z_mm += delta.z;
        break;
    case PartKind::photo:
        sketch.photo->edit([&](Photo& photo) { shift(photo.top_left, delta); });
        break;
    case PartKind::dimension:
        byId(sketch.dimensions, part.id)->aside_mm += delta.x;
        break;
    default:
        moveOnEngine(sketch, part, delta);
    }
    return true;
}

} // namespace siphonwright
