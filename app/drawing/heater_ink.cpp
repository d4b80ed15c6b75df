#include "app/drawing/ink.h"

#include "core/sketch/edits.h"

#include <QCoreApplication>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

/// Heaters, and the metal that hoses are pushed onto: ports, nozzles and their stubs.
namespace siphonwright::drawing {

namespace {

/// The heater's own axes on the page: origin, along its axis, and across it.
struct Frame {
    QPointF centre;
    QPointF along;  ///< per mm; shorter than 1 when the heater leans towards the viewer
    QPointF across; ///< unit
};

Frame frameOf(const Heater& heater)
{
    const QPointF centre = toPage(heaterPoint(heater, {}));
    const QPointF along = toPage(heaterPoint(heater, {0, 0, 1})) - centre;
    const QPointF direction = unitOf(along);
    return {centre, along, direction.isNull() ? QPointF(1, 0) : -turned(direction)};
}

QPointF at(const Frame& frame, double across_mm, double along_mm)
{
    return frame.centre + frame.across * across_mm + frame.along * along_mm;
}

/// A metal tube of a bore: its wall is drawn, not entered.
void paintTube(Ink& ink, const QPolygonF& line, double bore_mm)
{
    if (line.size() < 2)
        return;
    const double outside = bore_mm + 5;
    const double wall = std::min(ink.paper(edge_mm), outside / 4);
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(QPen(ink.palette.ink, outside, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    ink.painter.drawPolyline(line);
    ink.painter.setPen(QPen(ink.style.fills ? ink.palette.engine_fill : ink.palette.ground,
                            outside - 2 * wall, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    ink.painter.drawPolyline(line);
    ink.painter.setPen(ink.chainPen(ink.palette.faint, hairline_mm));
    ink.painter.drawPolyline(line);
}

void paintStub(Ink& ink, const HoseEnd& end)
{
    const std::optional<Attachment> seat = attachment(ink.sketch, end);
    if (!seat)
        return;
    std::vector<Corner> corners = seat->stub;
    if (corners.empty() || distance(corners.front().at, seat->opening) > 0.01)
        corners.insert(corners.begin(), Corner{seat->opening, 0});
    const Centreline line(corners);
    paintTube(ink, trace(line, 0, line.length()), seat->bore_mm);
}

void paintBody(Ink& ink, const Heater& heater)
{
    const QPolygonF body = heaterBody(heater);
    QPainterPath shape;
    shape.addPolygon(body);
    shape.closeSubpath();
    ink.painter.setPen(ink.pen(ink.palette.ink, thick_mm));
    ink.painter.setBrush(ink.fill(ink.palette.heater_fill));
    ink.painter.drawPath(shape);

    ink.painter.setPen(ink.pen(ink.palette.ink, thin_mm, Qt::DashLine));
    ink.painter.setBrush(ink.fill(ink.palette.ground));
    ink.painter.drawPolygon(heaterChamber(heater));
    if (ink.style.contents)
        paintChamberContents(ink, heater);
}

/// A hairpin up to the level that coolant must stand over.
void paintElement(Ink& ink, const Heater& heater, const Frame& frame)
{
    const double bottom = heater.chamber_bottom_mm;
    const double top = heater.element_top_mm.value.value_or(bottom + 0.7 * (heater.chamber_top_mm - bottom));
    const double r = heater.chamber_bore_mm * 0.26;
    QPainterPath pin(at(frame, -r, -heater.length_mm / 2));
    pin.lineTo(at(frame, -r, top - r));
    pin.cubicTo(at(frame, -r, top + r / 3), at(frame, r, top + r / 3), at(frame, r, top - r));
    pin.lineTo(at(frame, r, -heater.length_mm / 2));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(ink.pen(ink.palette.return_, medium_mm));
    ink.painter.drawPath(pin);
    if (heater.element_top_mm.known()) {
        ink.painter.setPen(ink.pen(ink.palette.return_, hairline_mm, Qt::DashLine));
        ink.line(at(frame, -heater.chamber_bore_mm / 2, top), at(frame, heater.chamber_bore_mm / 2, top));
    }
}

/// "This end up": the arrow that stands on the body.
void paintUpArrow(Ink& ink, const Heater& heater, const Frame& frame)
{
    const double reach = std::min(heater.length_mm * 0.28, ink.paper(9));
    const QPointF tip = at(frame, 0, reach);
    ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
    ink.line(at(frame, 0, -reach), tip);
    ink.arrowhead(tip, frame.along, std::min(2.6, reach * ink.style.scale * 0.6), ink.palette.ink);
    const double bar = ink.paper(1.2);
    ink.line(at(frame, -bar, -reach), at(frame, bar, -reach));
}

void paintPortMark(Ink& ink, const Port& port)
{
    const QPointF place = toPage(port.position);
    const Vec3 axis = direction(port.axis.azimuth_deg, port.axis.elevation_deg);
    const double r = std::max(port.bore_mm.value.value_or(15) / 2 + 6, ink.paper(0.9));
    ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
    ink.painter.setBrush(ink.palette.ground);
    ink.painter.drawEllipse(place, r, r);
    const bool across = std::abs(axis.y) > 0.8;
    ink.painter.setBrush(ink.palette.ink);
    if (across && axis.y < 0) { // towards the viewer: an arrow's point
        ink.painter.drawEllipse(place, r * 0.3, r * 0.3);
    } else if (across) { // away: its feathers
        const double d = r * 0.7;
        ink.line(place + QPointF(-d, -d), place + QPointF(d, d));
        ink.line(place + QPointF(-d, d), place + QPointF(d, -d));
    } else {
        const QPointF out = unitOf(toPage(axis));
        ink.painter.drawEllipse(place, r * 0.3, r * 0.3);
        // Without a hose the thread direction shows where one would leave.
        if (port.role == PortRole::sensor || port.role == PortRole::spare)
            ink.arrowhead(place + out * (r + ink.paper(3)), out, 2, ink.palette.ink);
    }
    ink.reserve(QRectF(place - QPointF(r, r), place + QPointF(r, r)));
}

} // namespace

QPolygonF heaterBody(const Heater& heater)
{
    const Frame frame = frameOf(heater);
    const double half = heater.length_mm / 2;
    const double r = heater.diameter_mm / 2;
    const double seen = std::hypot(frame.along.x(), frame.along.y());
    QPolygonF body;
    if (seen < 0.05) {
        for (int i = 0; i < 36; ++i) {
            const double a = i * 3.14159265358979323846 / 18;
            body << frame.centre + QPointF(r * std::cos(a), r * std::sin(a));
        }
        return body;
    }
    // Rounded shoulders at both ends.
    const double shoulder = std::min(0.3 * r, 0.2 * half);
    for (int quarter = 0; quarter < 4; ++quarter) {
        const double across = quarter == 0 || quarter == 3 ? 1 : -1;
        const double along = quarter < 2 ? 1 : -1;
        for (int i = 0; i <= 6; ++i) {
            const double a = (quarter % 2 == 0 ? i : 6 - i) * 3.14159265358979323846 / 12;
            body << at(frame, across * (r - shoulder + shoulder * std::cos(a)),
                       along * (half - shoulder + shoulder * std::sin(a)));
        }
    }
    return body;
}

QPolygonF heaterChamber(const Heater& heater)
{
    const Frame frame = frameOf(heater);
    const double r = heater.chamber_bore_mm / 2;
    return QPolygonF({at(frame, -r, heater.chamber_bottom_mm), at(frame, r, heater.chamber_bottom_mm),
                      at(frame, r, heater.chamber_top_mm), at(frame, -r, heater.chamber_top_mm)});
}

void paintHeaters(Ink& ink)
{
    for (const Heater& heater : ink.sketch.heaters) {
        const Frame frame = frameOf(heater);
        for (const NozzleKind kind : {NozzleKind::inlet, NozzleKind::outlet}) {
            HoseEnd end;
            end.heater = heater.id;
            end.nozzle = kind;
            paintStub(ink, end);
        }
        paintBody(ink, heater);
        paintElement(ink, heater, frame);
        paintUpArrow(ink, heater, frame);
        const QRectF box = heaterBody(heater).boundingRect();
        ink.reserve(box);
        const double gap = ink.paper(1.5);
        const double h = ink.paper(ink.style.lettering_mm);
        ink.label({{{box.center().x(), box.bottom() + gap + h}, Anchor::centre},
                   {{box.right() + gap, box.center().y()}, Anchor::left},
                   {{box.left() - gap, box.center().y()}, Anchor::right},
                   {{box.center().x(), box.top() - gap}, Anchor::centre}},
                  QString::fromStdString(heater.name), ink.palette.ink);
    }
}

void paintPorts(Ink& ink)
{
    for (const Port& port : ink.sketch.ports) {
        HoseEnd end;
        end.port = port.id;
        paintStub(ink, end);
        paintPortMark(ink, port);
    }
    for (const Port& port : ink.sketch.ports) {
        const QPointF place = toPage(port.position);
        const double gap = ink.paper(2) + port.bore_mm.value.value_or(15) / 2;
        const double h = ink.paper(ink.style.lettering_mm);
        ink.label({{place + QPointF(0, -gap), Anchor::centre},
                   {place + QPointF(0, gap + h), Anchor::centre},
                   {place + QPointF(gap, -gap / 2), Anchor::left},
                   {place + QPointF(-gap, -gap / 2), Anchor::right},
                   {place + QPointF(gap, gap + h), Anchor::left},
                   {place + QPointF(-gap, gap + h), Anchor::right}},
                  QString::fromStdString(port.name), ink.palette.ink);
    }
}

} // namespace siphonwright::drawing
