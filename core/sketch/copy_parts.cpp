#include "core/sketch/copy_parts.h"

#include "core/quantity/quantity.h"
#include "core/sketch/find.h"
#include "core/sketch/group_edits.h"
#include "core/sketch/names.h"
#include "core/sketch/pose.h"

#include <algorithm>
#include <map>

namespace siphonwright {
namespace {

PartRef wholeOf(const PartRef& part)
{
    switch (part.kind) {
    case PartKind::engine_corner:
    case PartKind::jacket:
    case PartKind::jacket_corner:
    case PartKind::thermostat:
        return {PartKind::engine, {}, 0};
    case PartKind::area_corner:
        return {PartKind::area, part.id, 0};
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::inline_part:
    case PartKind::clip:
        return {PartKind::hose, part.id, 0};
    default:
        return part;
    }
}

/// An end that leads to nothing in the copy lies open where it was in the sketch.
HoseEnd endIn(const Sketch& copied, const Sketch& sketch, HoseEnd end)
{
    const bool along =
        (end.port.empty() || copied.port(end.port)) && (end.heater.empty() || copied.heater(end.heater));
    if (along)
        return end;
    end.open_at = hoseEndPosition(sketch, end).value_or(end.open_at);
    end.port.clear();
    end.heater.clear();
    return end;
}

using NewIds = std::map<Id, Id>;

void renameEnd(HoseEnd& end, const NewIds& ports, const NewIds& heaters)
{
    if (const auto port = ports.find(end.port); port != ports.end())
        end.port = port->second;
    if (const auto heater = heaters.find(end.heater); heater != heaters.end())
        end.heater = heater->second;
}

NewIds pastePorts(Sketch& sketch, const Sketch& copied, Pasted& out)
{
    NewIds ids;
    for (Port port : copied.ports) {
        const bool held =
            std::any_of(copied.hoses.begin(), copied.hoses.end(), [&](const Shared<Hose>& hose) {
                return hose->from.port == port.id || hose->to.port == port.id;
            });
        if (out.engine_left_out && !held)
            continue;
        const Id old = port.id;
        port.name = nameFree(sketch.ports, port.name);
        ids[old] = addPort(sketch, std::move(port));
        out.parts.push_back({PartKind::port, ids[old], 0});
    }
    return ids;
}

NewIds pasteHeaters(Sketch& sketch, const Sketch& copied, Pasted& out)
{
    NewIds ids;
    for (Heater heater : copied.heaters) {
        const Id old = heater.id;
        heater.name = nameFree(sketch.heaters, heater.name);
        heater.serial_number.clear(); // another one of its kind
        ids[old] = addHeater(sketch, std::move(heater));
        out.parts.push_back({PartKind::heater, ids[old], 0});
    }
    return ids;
}

/// Is a part of the copy exactly where one of its kind is already?
bool liesOnAnother(const Sketch& sketch, const Sketch& moved)
{
    const auto same = [](const auto& a, const auto& b) {
        return std::any_of(a.begin(), a.end(), [&](const auto& one) {
            return std::any_of(b.begin(), b.end(),
                               [&](const auto& other) { return one.position == other.position; });
        });
    };
    if (same(moved.heaters, sketch.heaters) || same(moved.ports, sketch.ports))
        return true;
    for (const Shared<Hose>& hose : moved.hoses)
        for (const Shared<Hose>& other : sketch.hoses) {
            const bool points = !hose->points.empty() && hose->points == other->points;
            const bool ends = hoseEndPosition(moved, hose->from) == hoseEndPosition(sketch, other->from) &&
                              hoseEndPosition(moved, hose->to) == hoseEndPosition(sketch, other->to);
            if (points || ends)
                return true;
        }
    for (const Shared<Area>& area : moved.areas)
        for (const Shared<Area>& other : sketch.areas)
            if (area->outline == other->outline)
                return true;
    return false;
}

} // namespace

std::vector<PartRef> wholesOf(const Sketch& sketch)
{
    std::vector<PartRef> out;
    if (sketch.engine)
        out.push_back({PartKind::engine, {}, 0});
    if (sketch.tank)
        out.push_back({PartKind::tank, {}, 0});
    for (const Port& port : sketch.ports)
        out.push_back({PartKind::port, port.id, 0});
    for (const Heater& heater : sketch.heaters)
        out.push_back({PartKind::heater, heater.id, 0});
    for (const Shared<Hose>& hose : sketch.hoses)
        out.push_back({PartKind::hose, hose->id, 0});
    for (const Shared<Area>& area : sketch.areas)
        out.push_back({PartKind::area, area->id, 0});
    return out;
}

Sketch copyOf(const Sketch& sketch, const std::vector<PartRef>& parts)
{
    std::vector<PartRef> wholes;
    wholes.reserve(parts.size());
    for (const PartRef& part : parts)
        wholes.push_back(wholeOf(part));
    Sketch out;
    out.units = sketch.units;
    const bool with_engine = sketch.engine && contains(wholes, {PartKind::engine, {}, 0});
    if (with_engine)
        out.engine = sketch.engine;
    if (contains(wholes, {PartKind::tank, {}, 0}))
        out.tank = sketch.tank;
    for (const Port& port : sketch.ports)
        if (with_engine || contains(wholes, {PartKind::port, port.id, 0}))
            out.ports.push_back(port);
    for (const Heater& heater : sketch.heaters)
        if (contains(wholes, {PartKind::heater, heater.id, 0}))
            out.heaters.push_back(heater);
    for (const Shared<Area>& area : sketch.areas)
        if (contains(wholes, {PartKind::area, area->id, 0}))
            out.areas.push_back(area);
    for (Shared<Hose> hose : sketch.hoses) {
        if (!contains(wholes, {PartKind::hose, hose->id, 0}))
            continue;
        hose.edit([&](Hose& changed) {
            changed.from = endIn(out, sketch, changed.from);
            changed.to = endIn(out, sketch, changed.to);
        });
        out.hoses.push_back(std::move(hose));
    }
    return out;
}

Pasted paste(Sketch& sketch, Sketch copied, Vec3 delta)
{
    Pasted out;
    move(copied, wholesOf(copied), delta);
    out.engine_left_out = copied.engine && sketch.engine;
    out.tank_left_out = copied.tank && sketch.tank;
    if (copied.engine && !sketch.engine) {
        sketch.engine = copied.engine;
        out.parts.push_back({PartKind::engine, {}, 0});
    }
    if (copied.tank && !sketch.tank) {
        sketch.tank = copied.tank;
        out.parts.push_back({PartKind::tank, {}, 0});
    }
    const NewIds ports = pastePorts(sketch, copied, out);
    const NewIds heaters = pasteHeaters(sketch, copied, out);
    for (Shared<Hose> hose : copied.hoses) {
        hose.edit([&](Hose& changed) {
            changed.id = freshId(sketch, "hose");
            changed.name = nameFree(sketch.hoses, changed.name);
            renameEnd(changed.from, ports, heaters);
            renameEnd(changed.to, ports, heaters);
        });
        out.parts.push_back({PartKind::hose, hose->id, 0});
        sketch.hoses.push_back(std::move(hose));
    }
    for (const Shared<Area>& shared : copied.areas) {
        Area area = *shared;
        area.name = nameFree(sketch.areas, area.name);
        out.parts.push_back({PartKind::area, addArea(sketch, std::move(area)), 0});
    }
    return out;
}

Vec3 besideOthers(const Sketch& sketch, const Sketch& copied)
{
    constexpr double step_mm = 50;
    constexpr int most_steps = 200; // of copies of one place: beyond it they may as well lie on each other
    for (int n = 0; n < most_steps; ++n) {
        const Vec3 delta = {n * step_mm, 0, -n * step_mm};
        Sketch moved = copied;
        move(moved, wholesOf(moved), delta);
        if (!liesOnAnother(sketch, moved))
            return delta;
    }
    return {};
}

} // namespace siphonwright
