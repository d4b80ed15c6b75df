#include "app/canvas/dimension_ends.h"

#include "app/canvas/hit.h"
#include "app/canvas/part_names.h"
#include "app/canvas/plane.h"
#include "app/drawing/dimension_shape.h"
#include "app/language/tr.h"

#include "core/sketch/find.h"

#include <QPainter>

#include <cmath>

namespace siphonwright {
namespace {

constexpr double end_reach_px = 10;
constexpr double line_reach_px = 6;

template <class Place>
DimensionEnd endOn(PartKind part, const Id& id, Place index)
{
    DimensionEnd end;
    end.part = part;
    end.id = id;
    end.index = static_cast<std::int64_t>(index);
    return end;
}

void addOutline(PartKind corner, const Id& id, const std::vector<Vec2>& outline,
                std::vector<DimensionEnd>& out)
{
    for (std::size_t i = 0; i < outline.size(); ++i)
        out.push_back(endOn(corner, id, i));
}

void addHose(const Hose& hose, std::vector<DimensionEnd>& out)
{
    for (std::size_t i = 0; i < hose.points.size(); ++i)
        out.push_back(endOn(PartKind::hose_point, hose.id, i));
    for (std::size_t i = 0; i < hose.parts.size(); ++i)
        out.push_back(endOn(PartKind::inline_part, hose.id, i));
    for (std::size_t i = 0; i < hose.clips_mm.size(); ++i)
        out.push_back(endOn(PartKind::clip, hose.id, i));
    out.push_back(endOn(PartKind::hose_end, hose.id, 0));
    out.push_back(endOn(PartKind::hose_end, hose.id, 1));
}

/// In the order of preference where two are in one place.
std::vector<DimensionEnd> allEnds(const Sketch& sketch)
{
    std::vector<DimensionEnd> out;
    for (const Port& port : sketch.ports)
        out.push_back(endOn(PartKind::port, port.id, PortPlace::opening));
    for (const Heater& heater : sketch.heaters)
        for (const HeaterPlace place : {HeaterPlace::inlet, HeaterPlace::outlet, HeaterPlace::centre,
                                        HeaterPlace::top, HeaterPlace::foot})
            out.push_back(endOn(PartKind::heater, heater.id, place));
    for (const Shared<Hose>& hose : sketch.hoses)
        addHose(*hose, out);
    if (sketch.engine) {
        if (sketch.engine->thermostat)
            out.push_back(endOn(PartKind::thermostat, Id(), 0));
        addOutline(PartKind::jacket_corner, Id(), sketch.engine->jacket, out);
        addOutline(PartKind::engine_corner, Id(), sketch.engine->outline, out);
    }
    for (const Shared<Area>& area : sketch.areas)
        addOutline(PartKind::area_corner, area->id, area->outline, out);
    if (sketch.engine) {
        out.push_back(endOn(PartKind::jacket, Id(), JacketPlace::lowest));
        out.push_back(endOn(PartKind::jacket, Id(), JacketPlace::highest));
    }
    if (sketch.tank)
        for (const TankPlace place :
             {TankPlace::middle, TankPlace::cold_min, TankPlace::cold_full, TankPlace::hot})
            out.push_back(endOn(PartKind::tank, Id(), place));
    return out;
}

/// What hit testing finds where there is no place to hold exactly: the whole thing.
std::optional<DimensionEnd> wholeThing(const Canvas& canvas, const Pointer& pointer)
{
    const Hit hit = hitTest(canvas, pointer.screen);
    switch (hit.part.kind) {
    case PartKind::hose: {
        const ResolvedHose* hose = canvas.layout().hose(hit.part.id);
        if (!hose || !hit.along_mm)
            return std::nullopt;
        const double along_mm = std::clamp(*hit.along_mm - (*hose)->hose_from_mm, 0.0, (*hose)->length_mm);
        return endOn(PartKind::hose, hit.part.id, std::llround(along_mm));
    }
    case PartKind::heater:
        return endOn(PartKind::heater, hit.part.id, HeaterPlace::centre);
    case PartKind::tank:
        return endOn(PartKind::tank, Id(), TankPlace::middle);
    case PartKind::area:
    case PartKind::ground:
        return endOn(hit.part.kind, hit.part.id, 0);
    case PartKind::engine: {
        // Inside the engine is not at the engine: there is much to measure to in front of it.
        const double reach_mm = line_reach_px / canvas.viewport.zoom();
        if (nearestEdge(canvas.sketch().engine->outline, pointer.at).distance_mm > reach_mm)
            return std::nullopt;
        return endOn(PartKind::engine, Id(), 0);
    }
    default:
        return std::nullopt;
    }
}

NamedEnd heldBy(const Canvas& canvas, const DimensionEnd& end, Vec2 seen_from)
{
    const DimensionPlace place =
        placeOfEnd(end, canvas.sketch(), canvas.layout(), {seen_from.x, 0, seen_from.z});
    NamedEnd out{end, {place.at.x, place.at.z}};
    out.end.at = place.at;
    return out;
}

drawing::DimensionShape shapeOnScreen(const Canvas& canvas, const Dimension& dimension)
{
    drawing::DimensionShape shape =
        drawing::shapeOf(measure(dimension, canvas.sketch(), canvas.layout()), canvas.style());
    const QTransform to_screen = canvas.viewport.transform();
    shape.line = to_screen.map(shape.line);
    shape.text_box = to_screen.map(shape.text_box);
    for (QLineF& line : shape.extensions)
        line = to_screen.map(line);
    return shape;
}

QString nameOnHeater(const QString& name, HeaterPlace place)
{
    switch (place) {
    case HeaterPlace::centre:
        return tr("the middle of %1").arg(name);
    case HeaterPlace::inlet:
        return tr("the inlet of %1").arg(name);
    case HeaterPlace::outlet:
        return tr("the outlet of %1").arg(name);
    case HeaterPlace::top:
        return tr("the top of %1").arg(name);
    case HeaterPlace::foot:
        return tr("the foot of %1").arg(name);
    }
    return name;
}

} // namespace

std::vector<NamedEnd> dimensionEnds(const Sketch& sketch, const Layout& layout, Vec2 seen_from)
{
    std::vector<NamedEnd> out;
    for (const DimensionEnd& end : allEnds(sketch)) {
        const DimensionPlace place = placeOfEnd(end, sketch, layout, {seen_from.x, 0, seen_from.z});
        if (!place.held)
            continue; // a mark that is not entered
        NamedEnd named{end, {place.at.x, place.at.z}};
        named.end.at = place.at;
        out.push_back(named);
    }
    return out;
}

NamedEnd dimensionEndAt(const Canvas& canvas, const Pointer& pointer)
{
    std::optional<NamedEnd> best;
    double best_px = end_reach_px;
    for (const NamedEnd& one : dimensionEnds(canvas.sketch(), canvas.layout(), pointer.at)) {
        // A level is near all along its line, so it gives way to what is a place.
        const double handicap_px = isLevel(one.end) ? end_reach_px / 2 : 0;
        const double px = distanceBetween(canvas.viewport.toScreen(one.at), pointer.screen) + handicap_px;
        if (px < best_px) {
            best = one;
            best_px = px;
        }
    }
    if (best)
        return *best;
    if (const std::optional<DimensionEnd> whole = wholeThing(canvas, pointer))
        return heldBy(canvas, *whole, pointer.at);
    NamedEnd free;
    free.at = canvas.snap(pointer.at, SnapScene(), pointer).at;
    free.end.at = {free.at.x, 0, free.at.z};
    return free;
}

QString nameOfEnd(const Sketch& sketch, const DimensionEnd& end)
{
    const PartRef part = {end.part, end.id, static_cast<std::size_t>(end.index)};
    switch (end.part) {
    case PartKind::nothing:
        return tr("a free place");
    case PartKind::heater:
        return nameOnHeater(nameOfPart(sketch, part), static_cast<HeaterPlace>(end.index));
    case PartKind::jacket:
        return end.index == static_cast<std::int64_t>(JacketPlace::lowest) ? tr("the jacket's lowest level")
                                                                           : tr("the jacket's highest level");
    case PartKind::tank:
        switch (static_cast<TankPlace>(end.index)) {
        case TankPlace::middle:
            return nameOfPart(sketch, part);
        case TankPlace::cold_min:
            return tr("the level cold minimum");
        case TankPlace::cold_full:
            return tr("the level cold full");
        case TankPlace::hot:
            return tr("the level hot");
        }
        return nameOfPart(sketch, part);
    case PartKind::hose:
        return tr("a place on %1").arg(nameOfPart(sketch, part));
    case PartKind::engine:
    case PartKind::area:
        return tr("the outline of %1").arg(nameOfPart(sketch, part));
    default:
        return nameOfPart(sketch, part);
    }
}

std::optional<PartRef> dimensionAt(const Canvas& canvas, QPointF screen)
{
    for (const Dimension& dimension : canvas.sketch().dimensions) {
        const drawing::DimensionShape shape = shapeOnScreen(canvas, dimension);
        bool near = shape.text_box.containsPoint(screen, Qt::OddEvenFill);
        for (qsizetype i = 0; i + 1 < shape.line.size() && !near; ++i)
            near = distanceToSegment(screen, shape.line[i], shape.line[i + 1]) <= line_reach_px;
        if (near)
            return PartRef{PartKind::dimension, dimension.id, 0};
    }
    return std::nullopt;
}

std::optional<Vec2> placeOfDimension(const Canvas& canvas, const Id& id)
{
    const Dimension* dimension = byId(canvas.sketch().dimensions, id);
    if (!dimension)
        return std::nullopt;
    const QPolygonF line = drawing::dimensionLine(measure(*dimension, canvas.sketch(), canvas.layout()));
    const qsizetype half = (line.size() - 1) / 2;
    return drawing::fromPage((line[half] + line[half + 1]) / 2);
}

double asideOfArrow(const Canvas& canvas, const Id& id, Vec2 arrow)
{
    constexpr double least = 0.25; // an arrow along the line means nothing
    const Dimension* dimension = byId(canvas.sketch().dimensions, id);
    const std::optional<Vec2> at = placeOfDimension(canvas, id);
    if (!dimension || !at)
        return 0;
    const MeasuredDimension measured = measure(*dimension, canvas.sketch(), canvas.layout());
    const double by =
        asideThrough(measured, {at->x + arrow.x, at->z + arrow.z}) - asideThrough(measured, *at);
    return by > least ? 1 : by < -least ? -1 : 0;
}

bool moveDimensionThrough(Sketch& sketch, const Layout& layout, const Id& id, Vec2 place, double grid_mm)
{
    Dimension* dimension = byId(sketch.dimensions, id);
    if (!dimension)
        return false;
    const double aside_mm = asideThrough(measure(*dimension, sketch, layout), place);
    dimension->aside_mm = grid_mm > 0 ? std::round(aside_mm / grid_mm) * grid_mm : aside_mm;
    return true;
}

void paintDimensionContour(QPainter& painter, const Canvas& canvas, const Id& id, const QColor& colour,
                           double width)
{
    const Dimension* dimension = byId(canvas.sketch().dimensions, id);
    if (!dimension)
        return;
    const drawing::DimensionShape shape = shapeOnScreen(canvas, *dimension);
    painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(shape.line);
    painter.drawPolygon(shape.text_box);
}

} // namespace siphonwright
