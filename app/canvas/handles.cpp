#include "app/canvas/hit.h"
#include "app/drawing/ink.h"
#include "app/drawing/seen.h"

#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double ring_px = 34; ///< from a part's edge to its turning ring

void addCorners(const Sketch& sketch, const PartRef& owner, PartKind corner, std::vector<Handle>& out)
{
    const std::vector<Vec2>* outline = outlineOf(sketch, owner);
    for (std::size_t i = 0; outline && i < outline->size(); ++i)
        out.push_back({{corner, owner.id, i}, (*outline)[i], HandleShape::square, false});
}

void addTurningRing(const Canvas& canvas, std::vector<Handle>& out)
{
    const PartRef& selected = canvas.selection.part();
    // Tilt is an angle in the side elevation: it is turned there.
    if (canvas.view().isEnd())
        return;
    const double away_mm = ring_px / canvas.viewport.zoom();
    const auto add = [&](Vec2 foot, Vec3 along) {
        const double across = std::hypot(along.x, along.z);
        const Vec2 way = across > 1e-6 ? Vec2{along.x / across, along.z / across} : Vec2{0, 1};
        out.push_back(
            {selected, {foot.x + way.x * away_mm, foot.z + way.z * away_mm}, HandleShape::ring, true});
    };
    if (selected.kind == PartKind::heater) {
        if (const Heater* heater = canvas.sketch().heater(selected.id)) {
            const Vec3 top = heaterPoint(*heater, {0, 0, heater->length_mm / 2});
            add(canvas.view().flat(top), top - heater->position);
        }
    } else if (selected.kind == PartKind::port) {
        HoseEnd end;
        end.port = selected.id;
        if (const auto place = attachment(canvas.sketch(), end))
            add(canvas.view().flat(place->stub.back().at), place->stub[1].at - place->opening);
    }
}

void addHoseHandles(const ResolvedHose& hose, const Projection& view, const HandleWish& wish,
                    std::vector<Handle>& out)
{
    const Hose& drawn = *hose->hose;
    if (wish.hose && !wish.hose(drawn))
        return;
    const auto add = [&](PartKind kind, std::size_t index, Vec3 at, HandleShape shape) {
        const Vec2 seen = view.flat(at);
        if (!wish.place || wish.place(seen))
            out.push_back({{kind, drawn.id, index}, seen, shape, false});
    };
    for (std::size_t i = 0; i < drawn.points.size(); ++i)
        add(PartKind::hose_point, i, drawn.points[i].at, HandleShape::square);
    add(PartKind::hose_end, 0, hose->from.stop, HandleShape::round);
    add(PartKind::hose_end, 1, hose->to.stop, HandleShape::round);
    if (hose->path.line.empty())
        return;
    for (std::size_t i = 0; i < drawn.parts.size(); ++i)
        add(PartKind::inline_part, i, alongHose(*hose, drawn.parts[i].along_mm), HandleShape::diamond);
    for (std::size_t i = 0; i < drawn.clips_mm.size(); ++i)
        add(PartKind::clip, i, alongHose(*hose, drawn.clips_mm[i]), HandleShape::diamond);
}

} // namespace

std::vector<Handle> handlesOf(const Canvas& canvas, const HandleWish& wish)
{
    const Sketch& sketch = canvas.sketch();
    std::vector<Handle> out;
    addTurningRing(canvas, out);
    for (const ResolvedHose& hose : canvas.layout().hoses)
        addHoseHandles(hose, canvas.view(), wish, out);
    for (const Port& port : sketch.ports)
        out.push_back(
            {{PartKind::port, port.id, 0}, canvas.view().flat(port.position), HandleShape::round, false});
    if (sketch.engine && sketch.engine->thermostat)
        out.push_back({{PartKind::thermostat, Id(), 0},
                       canvas.view().flat(sketch.engine->thermostat->position),
                       HandleShape::diamond,
                       false});
    const PartRef owner = ownerOf(canvas.selection.part());
    if (canvas.view().isEnd()) // outlines are drawn, and so shaped, in the side elevation
        return out;
    if (owner.kind == PartKind::engine)
        addCorners(sketch, owner, PartKind::engine_corner, out);
    if (owner.kind == PartKind::jacket)
        addCorners(sketch, owner, PartKind::jacket_corner, out);
    if (owner.kind == PartKind::area)
        addCorners(sketch, owner, PartKind::area_corner, out);
    return out;
}

PartRef ownerOf(const PartRef& part)
{
    switch (part.kind) {
    case PartKind::engine_corner:
        return {PartKind::engine, {}, 0};
    case PartKind::jacket_corner:
        return {PartKind::jacket, {}, 0};
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

bool hasCorners(PartKind kind)
{
    return kind == PartKind::engine || kind == PartKind::jacket || kind == PartKind::area;
}

bool belongTogether(const PartRef& a, const PartRef& b)
{
    return a.kind != PartKind::nothing && ownerOf(a) == ownerOf(b);
}

const std::vector<Vec2>* outlineOf(const Sketch& sketch, const PartRef& part)
{
    const PartRef owner = ownerOf(part);
    if (owner.kind == PartKind::engine && sketch.engine)
        return &sketch.engine->outline;
    if (owner.kind == PartKind::jacket && sketch.engine)
        return &sketch.engine->jacket;
    if (owner.kind == PartKind::area)
        if (const Area* area = sketch.area(owner.id))
            return &area->outline;
    return nullptr;
}

std::vector<Vec2> outlineSeen(const Canvas& canvas, const PartRef& part)
{
    const Sketch& sketch = canvas.sketch();
    const PartRef owner = ownerOf(part);
    if (owner.kind == PartKind::engine && sketch.engine)
        return drawing::engineSeen(*sketch.engine, canvas.view());
    if (owner.kind == PartKind::jacket && sketch.engine)
        return drawing::jacketSeen(*sketch.engine, canvas.view());
    if (const Area* area = owner.kind == PartKind::area ? sketch.area(owner.id) : nullptr)
        return drawing::areaSeen(*area, canvas.view());
    return {};
}

std::vector<Vec2> bodyOf(const Heater& heater, const Projection& view)
{
    std::vector<Vec2> out;
    for (const QPointF& corner : drawing::heaterBody(heater, view))
        out.push_back(drawing::fromPage(corner));
    return out;
}

std::vector<Vec2> bodyOf(const SurgeTank& tank, const Projection& view)
{
    // The document knows a tank by its place and levels alone: its body is the painter's own size.
    constexpr double half_width_mm = 110;
    constexpr double over_mm = 60;
    constexpr double under_mm = 90;
    double low = tank.position.z;
    double high = tank.position.z;
    for (const Fact<double>* level : {&tank.cold_min_mm, &tank.cold_full_mm, &tank.hot_mm}) {
        low = std::min(low, level->value.value_or(low));
        high = std::max(high, level->value.value_or(high));
    }
    const double x = view.flat(tank.position).x;
    low -= under_mm;
    high += over_mm;
    return {{x - half_width_mm, low},
            {x + half_width_mm, low},
            {x + half_width_mm, high},
            {x - half_width_mm, high}};
}

} // namespace siphonwright
