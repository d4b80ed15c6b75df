#include "app/drawing/ink.h"
#include "app/language/in_words.h"

#include "core/layout/wording.h"
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
    QPointF along;     ///< per mm; shorter than 1 when the heater leans towards the viewer
    QPointF across;    ///< unit
    double end_on = 0; ///< how round its ends look: 0 from the side, 1 from the end
};

Frame frameOf(const Heater& heater, const Projection& view)
{
    const Vec3 middle = heaterPoint(heater, {});
    const Vec3 axis = heaterPoint(heater, {0, 0, 1}) - middle;
    const QPointF along = toPage(axis, view);
    const double seen = std::hypot(along.x(), along.y());
    const QPointF across = seen < 1e-6 ? QPointF(-1, 0) : -turned(along / seen);
    return {toPage(middle, view), along, across, std::min(1.0, std::abs(view.depth(axis)))};
}

QPointF at(const Frame& frame, double across_mm, double along_mm)
{
    return frame.centre + frame.across * across_mm + frame.along * along_mm;
}

/// A round body between two places along the heater's axis, flat ends: what of it is seen from outside.
QPolygonF roundBody(const Frame& frame, double radius, double low, double high)
{
    constexpr int steps = 18;
    const QPointF along = turned(frame.across) * frame.end_on;
    QPolygonF outline;
    for (int i = 0; i <= steps; ++i) {
        const double a = i * 3.14159265358979323846 / steps;
        outline << at(frame, radius * std::cos(a), high) + along * (radius * std::sin(a));
    }
    for (int i = 0; i <= steps; ++i) {
        const double a = 3.14159265358979323846 * (1 + double(i) / steps);
        outline << at(frame, radius * std::cos(a), low) + along * (radius * std::sin(a));
    }
    return outline;
}

/// From this on its round ends are seen.
constexpr double ends_show = 0.05;
/// From this on its length is no longer seen well enough to draw what is in it.
constexpr double length_hides = 0.95;

/// A metal tube of a bore: its wall is drawn, not entered.
void paintTube(Ink& ink, const QPolygonF& line, double bore_mm)
{
    if (line.size() < 2)
        return;
    const double outside = bore_mm + 5;
    const QRectF seen = line.boundingRect();
    if (std::max(seen.width(), seen.height()) < outside / 4) {
        // It points at the viewer, or away.
        ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
        ink.painter.setBrush(ink.style.fills ? ink.palette.engine_fill : ink.palette.ground);
        ink.painter.drawEllipse(line.last(), outside / 2, outside / 2);
        return;
    }
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
    const QPolygonF seen = trace(line, 0, line.length(), ink.style.view);
    paintTube(ink, seen, seat->bore_mm);
    ink.avoid(seen, seat->bore_mm / 2 + 2.5 + ink.paper(0.2));
}

void paintBody(Ink& ink, const Heater& heater)
{
    const QPolygonF body = heaterBody(heater, ink.style.view);
    QPainterPath shape;
    shape.addPolygon(body);
    shape.closeSubpath();
    ink.painter.setPen(ink.pen(ink.palette.ink, thick_mm));
    ink.painter.setBrush(ink.fill(ink.palette.heater_fill));
    ink.painter.drawPath(shape);

    ink.painter.setPen(ink.pen(ink.palette.ink, thin_mm, Qt::DashLine));
    ink.painter.setBrush(ink.fill(ink.palette.ground));
    ink.painter.drawPolygon(heaterChamber(heater, ink.style.view));
    if (ink.style.contents)
        paintChamberContents(ink, heater);
}

/// The flat end that is turned to the viewer, and its centre lines.
void paintNearEnd(Ink& ink, const Heater& heater, const Frame& frame)
{
    const Projection& view = ink.style.view;
    const double half = heater.length_mm / 2;
    const bool top =
        view.depth(heaterPoint(heater, {0, 0, half})) < view.depth(heaterPoint(heater, {0, 0, -half}));
    const double end = top ? half : -half;
    const double r = heater.diameter_mm / 2;
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.setPen(ink.pen(ink.palette.ink, thin_mm));
    ink.painter.drawPolygon(roundBody(frame, r, end, end));
    const QPointF middle = at(frame, 0, end);
    const QPointF along = turned(frame.across) * frame.end_on;
    ink.painter.setPen(ink.chainPen(ink.palette.faint, hairline_mm));
    ink.line(middle - frame.across * r * 0.6, middle + frame.across * r * 0.6);
    ink.line(middle - along * r * 0.6, middle + along * r * 0.6);
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
    const QPointF place = ink.page(port.position);
    const Vec3 axis = direction(port.axis.azimuth_deg, port.axis.elevation_deg);
    const double r = std::max(port.bore_mm.value.value_or(15) / 2 + 6, ink.paper(0.9));
    ink.painter.setPen(ink.pen(ink.palette.ink, medium_mm));
    ink.painter.setBrush(ink.palette.ground);
    ink.painter.drawEllipse(place, r, r);
    const bool across = std::abs(ink.style.view.depth(axis)) > 0.8;
    ink.painter.setBrush(ink.palette.ink);
    if (across && ink.style.view.depth(axis) < 0) { // towards the viewer: an arrow's point
        ink.painter.drawEllipse(place, r * 0.3, r * 0.3);
    } else if (across) { // away: its feathers
        const double d = r * 0.7;
        ink.line(place + QPointF(-d, -d), place + QPointF(d, d));
        ink.line(place + QPointF(-d, d), place + QPointF(d, -d));
    } else {
        const QPointF out = unitOf(ink.page(axis));
        ink.painter.drawEllipse(place, r * 0.3, r * 0.3);
        // Without a hose the thread direction shows where one would leave.
        if (port.role == PortRole::sensor || port.role == PortRole::spare)
            ink.arrowhead(place + out * (r + ink.paper(3)), out, 2, ink.palette.ink);
    }
    ink.reserve(QRectF(place - QPointF(r, r), place + QPointF(r, r)));
}

} // namespace

QPolygonF heaterBody(const Heater& heater, const Projection& view)
{
    const Frame frame = frameOf(heater, view);
    const double half = heater.length_mm / 2;
    const double r = heater.diameter_mm / 2;
    if (frame.end_on > ends_show)
        return roundBody(frame, r, -half, half);
    QPolygonF body;
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

QPolygonF heaterChamber(const Heater& heater, const Projection& view)
{
    const Frame frame = frameOf(heater, view);
    const double r = heater.chamber_bore_mm / 2;
    if (frame.end_on > ends_show)
        return roundBody(frame, r, heater.chamber_bottom_mm, heater.chamber_top_mm);
    return QPolygonF({at(frame, -r, heater.chamber_bottom_mm), at(frame, r, heater.chamber_bottom_mm),
                      at(frame, r, heater.chamber_top_mm), at(frame, -r, heater.chamber_top_mm)});
}

void paintHeaters(Ink& ink)
{
    for (const Heater& heater : ink.sketch.heaters) {
        const Frame frame = frameOf(heater, ink.style.view);
        for (const NozzleKind kind : {NozzleKind::inlet, NozzleKind::outlet}) {
            HoseEnd end;
            end.heater = heater.id;
            end.nozzle = kind;
            paintStub(ink, end);
        }
        paintBody(ink, heater);
        if (frame.end_on > ends_show)
            paintNearEnd(ink, heater, frame);
        if (frame.end_on < length_hides) {
            paintElement(ink, heater, frame);
            paintUpArrow(ink, heater, frame);
        }
        const QRectF box = heaterBody(heater, ink.style.view).boundingRect();
        ink.reserve(box);
        ink.cover(heaterBody(heater, ink.style.view));
        const double gap = ink.paper(1.5);
        const double h = ink.paper(ink.style.lettering_mm);
        ink.label({{{box.center().x(), box.bottom() + gap + h}, Anchor::centre},
                   {{box.right() + gap, box.center().y()}, Anchor::left},
                   {{box.left() - gap, box.center().y()}, Anchor::right},
                   {{box.center().x(), box.top() - gap}, Anchor::centre}},
                  ink.numbered(inWords(heater.name), refOf(heater)), ink.palette.ink,
                  ledTo(ink, heaterBody(heater, ink.style.view)));
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
        const QPointF place = ink.page(port.position);
        const double gap = ink.paper(2) + port.bore_mm.value.value_or(15) / 2;
        const double h = ink.paper(ink.style.lettering_mm);
        ink.label({{place + QPointF(0, -gap), Anchor::centre},
                   {place + QPointF(0, gap + h), Anchor::centre},
                   {place + QPointF(gap, -gap / 2), Anchor::left},
                   {place + QPointF(-gap, -gap / 2), Anchor::right},
                   {place + QPointF(gap, gap + h), Anchor::left},
                   {place + QPointF(-gap, gap + h), Anchor::right}},
                  ink.numbered(inWords(port.name), refOf(port)), ink.palette.ink,
                  Led{place, gap + ink.paper(0.6)});
    }
}

} // namespace siphonwright::drawing
