#include "core/sketch/edits.h"
#include "core/sketch/find.h"
#include "core/sketch/pose.h"

namespace siphonwright {
namespace {

constexpr std::size_t fewest_corners = 3;

/// Let go of every hose end that fits, leaving it open where it is. Hoses that do not change keep their
/// shared value.
template <class Fits>
void openEnds(Sketch& sketch, const Fits& fits)
{
    for (Shared<Hose>& hose : sketch.hoses) {
        if (!fits(hose->from) && !fits(hose->to))
            continue;
        hose.edit([&](Hose& changed) {
            for (HoseEnd* end : {&changed.from, &changed.to}) {
                if (!fits(*end))
                    continue;
                end->open_at = hoseEndPosition(sketch, *end).value_or(end->open_at);
                end->port.clear();
                end->heater.clear();
            }
        });
    }
}

template <class List>
void eraseId(List& list, const Id& id)
{
    list.erase(list.begin() + (byId(list, id) - list.data()));
}

template <class Item>
void eraseAt(std::vector<Item>& items, std::size_t index)
{
    items.erase(items.begin() + static_cast<std::ptrdiff_t>(index));
}

bool eraseCorner(std::vector<Vec2>& outline, std::size_t index)
{
    if (outline.size() <= fewest_corners)
        return false;
    eraseAt(outline, index);
    return true;
}

/// Ports are openings of the engine, so they go with it.
void removeEngine(Sketch& sketch)
{
    openEnds(sketch, [](const HoseEnd& end) { return !end.port.empty(); });
    sketch.ports.clear();
    sketch.engine.reset();
}

bool removeOnHose(Sketch& sketch, const PartRef& part)
{
    Shared<Hose>& shared = *byId(sketch.hoses, part.id);
    if (part.kind == PartKind::hose_end) {
        const HoseEnd end = part.index == 0 ? shared->from : shared->to;
        if (!end.connected())
            return false;
        HoseEnd open = end;
        open.port.clear();
        open.heater.clear();
        open.open_at = hoseEndPosition(sketch, end).value_or(end.open_at);
        shared.edit([&](Hose& hose) { (part.index == 0 ? hose.from : hose.to) = open; });
        return true;
    }
    shared.edit([&](Hose& hose) {
        if (part.kind == PartKind::hose_point)
            eraseAt(hose.points, part.index);
        else if (part.kind == PartKind::inline_part)
            eraseAt(hose.parts, part.index);
        else
            eraseAt(hose.clips_mm, part.index);
    });
    return true;
}

bool removeAreaCorner(Sketch& sketch, const PartRef& part)
{
    Shared<Area>& area = *byId(sketch.areas, part.id);
    if (area->outline.size() <= fewest_corners)
        return false;
    area.edit([&](Area& changed) { eraseAt(changed.outline, part.index); });
    return true;
}

} // namespace

bool remove(Sketch& sketch, const PartRef& part)
{
    if (!exists(sketch, part))
        return false;
    switch (part.kind) {
    case PartKind::nothing:
    case PartKind::jacket: // an engine is never without one
        return false;
    case PartKind::engine:
        removeEngine(sketch);
        return true;
    case PartKind::engine_corner:
        return eraseCorner(sketch.engine->outline, part.index);
    case PartKind::jacket_corner:
        return eraseCorner(sketch.engine->jacket, part.index);
    case PartKind::thermostat:
        sketch.engine->thermostat.reset();
        return true;
    case PartKind::tank:
        sketch.tank.reset();
        return true;
    case PartKind::port:
        openEnds(sketch, [&](const HoseEnd& end) { return end.port == part.id; });
        eraseId(sketch.ports, part.id);
        return true;
    case PartKind::heater:
        openEnds(sketch, [&](const HoseEnd& end) { return end.heater == part.id; });
        eraseId(sketch.heaters, part.id);
        return true;
    case PartKind::hose:
        eraseId(sketch.hoses, part.id);
        return true;
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::inline_part:
    case PartKind::clip:
        return removeOnHose(sketch, part);
    case PartKind::area:
        eraseId(sketch.areas, part.id);
        return true;
    case PartKind::area_corner:
        return removeAreaCorner(sketch, part);
    case PartKind::ground:
        sketch.ground_z_mm.reset();
        return true;
    case PartKind::photo:
        sketch.photo.reset();
        return true;
    case PartKind::dimension:
        eraseId(sketch.dimensions, part.id);
        return true;
    }
    return false;
}

} // namespace siphonwright
