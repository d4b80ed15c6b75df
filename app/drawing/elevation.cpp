#include "app/drawing/elevation.h"

#include "app/drawing/balloon_places.h"
#include "app/drawing/dimension_shape.h"
#include "app/drawing/hose_layer.h"
#include "app/drawing/ink.h"
#include "app/drawing/seen.h"

#include <QPicture>

#include <algorithm>
#include <cmath>

namespace siphonwright::drawing {

namespace {

void include(QRectF& box, const QRectF& more)
{
    box = box.isNull() ? more : box.united(more);
}

void include(QRectF& box, const std::vector<Vec2>& outline)
{
    QPolygonF polygon;
    for (const Vec2 corner : outline)
        polygon << toPage(corner);
    if (!polygon.isEmpty())
        include(box, polygon.boundingRect());
}

/// Balloons come last but keep their places free of text from the start.
void reserveBalloons(Ink& ink, const Balloons& balloons)
{
    const double reach = 1.5 * balloonRadius(ink.style);
    for (const QPointF& at : balloons.places) {
        if (!std::isnan(at.x()))
            ink.reserveText(QRectF(at - QPointF(reach, reach), at + QPointF(reach, reach)));
    }
    reserveBalloonLines(ink, balloons);
}

void paintGuides(Ink& ink)
{
    if (!ink.style.page)
        return;
    ink.painter.setPen(ink.pen(ink.palette.faint, hairline_mm));
    for (const QLineF& guide : ink.style.page->guides) {
        ink.line(guide.p1(), guide.p2());
        ink.avoidAcross(QPolygonF({guide.p1(), guide.p2()}));
    }
}

PlacedNames paintAll(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Style& style,
                     HoseLayer* layer, const Balloons* placed)
{
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    // A moment has figures of its own, and how a loop runs tells what is hidden.
    Style own = style;
    own.running = own.running && own.findings && !own.contents;
    own.tint = own.tint && own.findings && !own.contents;
    Ink ink(painter, sketch, analysis, own);
    Balloons balloons;
    if (style.balloons)
        balloons = placed ? *placed : balloonsOf(analysis, own, ink.visible);
    reserveBalloons(ink, balloons);
    reserveDimensions(ink);
    if (!ink.style.view.isEnd())
        paintPhoto(ink);
    paintGroundAndDatum(ink);
    paintEngine(ink);
    // Over the engine, whatever their depth: a hazard that is hidden is one that is met.
    paintKeepClear(ink);
    paintLevels(ink);
    paintTank(ink);
    paintHeaters(ink);
    paintPorts(ink);
    if (layer)
        layer->paint(ink);
    paintHoses(ink);
    if (style.contents)
        paintBoreContents(ink);
    else if (style.findings)
        paintPockets(ink);
    if (style.findings)
        paintUndersized(ink);
    paintHoseParts(ink);
    if (style.findings && !style.contents)
        paintSagMargins(ink);
    if (style.contents)
        labelTemperatures(ink);
    paintGuides(ink);
    paintPlumbArrow(ink);
    paintTemperatureScale(ink);
    if (!style.contents) // at a moment of a demonstration the steady figures would be another story
        paintRunningFigures(ink);
    labelEngine(ink);
    if (style.page)
        labelSlopes(ink);
    ink.writeLabels();
    paintDimensions(ink);
    paintBalloons(ink, balloons);
    painter.restore();
    return ink.placed();
}

} // namespace

void paintElevation(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Style& style,
                    HoseLayer* layer, const Balloons* placed)
{
    paintAll(painter, sketch, analysis, style, layer, placed);
}

PlacedNames placeNames(const Sketch& sketch, const Analysis& analysis, const Style& style)
{
    QPicture nowhere;
    QPainter painter(&nowhere);
    painter.scale(style.scale, style.scale);
    return paintAll(painter, sketch, analysis, style, nullptr, nullptr);
}

QRectF boundsOf(const Sketch& sketch, const Analysis& analysis, const Projection& view)
{
    QRectF box;
    if (sketch.engine) {
        include(box, engineSeen(*sketch.engine, view));
        include(box, jacketSeen(*sketch.engine, view));
    }
    for (const Shared<Area>& area : sketch.areas)
        include(box, areaSeen(*area, view));
    if (sketch.tank)
        include(box, tankBody(*sketch.tank, view).adjusted(0, -44, 0, 0));
    for (const Heater& heater : sketch.heaters)
        include(box, heaterBody(heater, view).boundingRect());
    for (const Port& port : sketch.ports) {
        const QPointF at = toPage(port.position, view);
        include(box, QRectF(at - QPointF(20, 20), at + QPointF(20, 20)));
    }
    for (const ResolvedHose& hose : analysis.layout.hoses) {
        const double half = hose->outsideDiameter() / 2 + hose->hose->insulation_mm;
        const QPolygonF line = trace(hose->path.line, 0, hose->path.line.length(), view);
        if (!line.isEmpty())
            include(box, line.boundingRect().adjusted(-half, -half, half, half));
    }
    for (const Dimension& dimension : view.isEnd() ? std::vector<Dimension>() : sketch.dimensions)
        include(box, dimensionLine(measure(dimension, sketch, analysis.layout)).boundingRect());
    // Datum and ground belong to a drawing that has anything on it.
    if (!box.isNull()) {
        include(box, QRectF(box.left(), -1, box.width(), 2));
        if (sketch.ground_z_mm)
            include(box, QRectF(box.left(), -*sketch.ground_z_mm - 1, box.width(), 2));
    }
    return box;
}

} // namespace siphonwright::drawing
