#include "app/drawing/dimension_shape.h"

#include "app/drawing/ink.h"
#include "app/drawing/text.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include <QTransform>

#include <algorithm>
#include <cmath>
#include <limits>

namespace siphonwright::drawing {

namespace {

// Millimetres on the device.
constexpr double arrow_mm = 2.2;
constexpr double extension_gap_mm = 0.8; ///< between what is measured and its extension line
constexpr double beyond_mm = 1.2;        ///< of the extension line over the dimension line
constexpr double tail_mm = 4.5;          ///< of an arrow that points from outside
constexpr double over_mm = 0.9;          ///< text over its line

double lengthOf(const QPolygonF& line)
{
    double sum = 0;
    for (qsizetype i = 0; i + 1 < line.size(); ++i)
        sum += QLineF(line[i], line[i + 1]).length();
    return sum;
}

double distanceTo(const QPolygonF& line, QPointF p)
{
    double best = std::numeric_limits<double>::infinity();
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const double square = QPointF::dotProduct(way, way);
        const double t =
            square > 0 ? std::clamp(QPointF::dotProduct(p - line[i], way) / square, 0.0, 1.0) : 0;
        best = std::min(best, QLineF(p, line[i] + way * t).length());
    }
    return best;
}

/// A hose's stretch moved aside, without the loops that a bend tighter than that would make.
QPolygonF besideStretch(const HoseStretch& stretch, double aside_mm)
{
    constexpr double slack_mm = 0.5;
    const QPolygonF on = trace(stretch.route->path.line, stretch.from_mm, stretch.to_mm);
    QPolygonF out;
    for (qsizetype i = 0; i + 1 < on.size(); ++i) {
        const QPointF way = unitOf(on[i + 1] - on[i]);
        const QPointF left(way.y(), -way.x()); // of the flow: page y is down
        for (const QPointF& p : {on[i] + left * aside_mm, on[i + 1] + left * aside_mm})
            if (out.isEmpty() || (QLineF(out.last(), p).length() > slack_mm / 10 &&
                                  distanceTo(on, p) > std::abs(aside_mm) - slack_mm))
                out << p;
    }
    return out;
}

/// The two places that extension lines come from.
std::pair<QPointF, QPointF> measuredPlaces(const MeasuredDimension& measured)
{
    if (!measured.stretch)
        return {toPage(measured.from.at), toPage(measured.to.at)};
    const Centreline& line = measured.stretch->route->path.line;
    return {toPage(line.at(measured.stretch->from_mm)), toPage(line.at(measured.stretch->to_mm))};
}

QLineF extension(QPointF from, QPointF to, const Style& style)
{
    const QPointF way = unitOf(to - from);
    return {from + way * (extension_gap_mm / style.scale), to + way * (beyond_mm / style.scale)};
}

/// Middle of a line by its length, and the direction there.
std::pair<QPointF, QPointF> middleOf(const QPolygonF& line)
{
    double left = lengthOf(line) / 2;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const double piece = QLineF(line[i], line[i + 1]).length();
        if (piece > 0 && left <= piece)
            return {line[i] + (line[i + 1] - line[i]) * (left / piece), line[i + 1] - line[i]};
        left -= piece;
    }
    return {line.isEmpty() ? QPointF() : line.first(), QPointF(1, 0)};
}

/// Over the middle of its line; where that is too short, beyond the end that is read last.
void placeText(DimensionShape& shape, const Style& style)
{
    const double k = 1 / style.scale;
    const double high = style.lettering_mm * k;
    const double wide = textWidth(shape.text, style.lettering_mm) * k;
    const double room = lengthOf(shape.line);
    const auto [middle, way] = middleOf(shape.line);
    shape.angle_deg = readableAngle(way);
    shape.arrows_inside = room >= (2 * arrow_mm + 1) * k;
    const double angle = shape.angle_deg * 3.14159265358979323846 / 180;
    const QPointF reading(std::cos(angle), std::sin(angle));
    const QPointF up(reading.y(), -reading.x());
    if (room >= wide + (shape.arrows_inside ? 1 : 0) * k) {
        shape.text_at = middle - reading * (wide / 2) + up * (over_mm * k);
    } else {
        const bool last = QPointF::dotProduct(shape.line.last() - shape.line.first(), reading) >= 0;
        const QPointF end = last ? shape.line.last() : shape.line.first();
        const double away = (shape.arrows_inside ? 0 : tail_mm) + 1.2;
        shape.text_at = end + reading * (away * k) - up * (high / 2);
    }
    QTransform place;
    place.translate(shape.text_at.x(), shape.text_at.y());
    place.rotate(shape.angle_deg);
    shape.text_box = place.map(QPolygonF(QRectF(-0.2 * high, -1.15 * high, wide + 0.4 * high, 1.45 * high)));
}

} // namespace

QString dimensionText(const MeasuredDimension& measured, UnitSystem units)
{
    const auto text = [units](double value, Unit unit) { return inWords(value, unit, units); };
    if (measured.kind != DimensionKind::slope)
        return text(measured.value, Unit::mm);
    constexpr double level = 0.001; // as core/quantity writes slopes
    if (!std::isfinite(measured.value))
        return tr("plumb");
    if (measured.value < level)
        return tr("level");
    if (measured.value >= 1)
        return tr("rises at %1").arg(text(measured.angle_deg, Unit::degree));
    return tr("%1 (%2)").arg(text(measured.value, Unit::slope), text(measured.angle_deg, Unit::degree));
}

QPolygonF dimensionLine(const MeasuredDimension& measured)
{
    const auto [from, to] = measuredPlaces(measured);
    const QPointF middle = (from + to) / 2;
    switch (measured.kind) {
    case DimensionKind::horizontal: {
        const double y = middle.y() - measured.aside_mm;
        return QPolygonF(QList<QPointF>{{from.x(), y}, {to.x(), y}});
    }
    case DimensionKind::vertical: {
        const double x = middle.x() + measured.aside_mm;
        return QPolygonF(QList<QPointF>{{x, from.y()}, {x, to.y()}});
    }
    default:
        break;
    }
    if (measured.stretch) {
        const QPolygonF beside = besideStretch(*measured.stretch, measured.aside_mm);
        if (beside.size() > 1)
            return beside;
    }
    const Vec2 way = asideWay(measured);
    const QPointF aside = QPointF(way.x, -way.z) * measured.aside_mm;
    return QPolygonF({from + aside, to + aside});
}

DimensionShape shapeOf(const MeasuredDimension& measured, const Style& style)
{
    DimensionShape shape;
    shape.line = dimensionLine(measured);
    shape.text = dimensionText(measured, style.units);
    const auto [from, to] = measuredPlaces(measured);
    const double gap = extension_gap_mm / style.scale;
    for (const QLineF line : {QLineF(from, shape.line.first()), QLineF(to, shape.line.last())})
        if (line.length() > gap)
            shape.extensions.push_back(extension(line.p1(), line.p2(), style));
    placeText(shape, style);
    return shape;
}

void paintDimension(QPainter& painter, const DimensionShape& shape, const Style& style, const QColor& colour)
{
    const double k = 1 / style.scale;
    const auto head = [&](QPointF tip, QPointF towards) {
        const QPointF d = unitOf(towards) * (arrow_mm * k);
        const QPointF side = turned(d) * 0.17; // 20 degrees wide
        painter.setPen(Qt::NoPen);
        painter.setBrush(colour);
        painter.drawPolygon(QPolygonF({tip, tip - d + side, tip - d - side}));
    };
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(colour, thin_mm * k, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
    for (const QLineF& line : shape.extensions)
        painter.drawLine(line);
    painter.drawPolyline(shape.line);
    const qsizetype n = shape.line.size();
    const QPointF begins = unitOf(shape.line[0] - shape.line[1]); // out of the line at either end
    const QPointF ends = unitOf(shape.line[n - 1] - shape.line[n - 2]);
    if (!shape.arrows_inside) {
        painter.drawLine(shape.line.first(), shape.line.first() + begins * (tail_mm * k));
        painter.drawLine(shape.line.last(), shape.line.last() + ends * (tail_mm * k));
    }
    const double way = shape.arrows_inside ? 1 : -1;
    head(shape.line.first(), begins * way);
    head(shape.line.last(), ends * way);
    QColor ground = style.palette.ground;
    if (!style.page)
        ground.setAlphaF(0.85F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawPolygon(shape.text_box);
    paintText(painter, style, shape.text_at, shape.text, Anchor::left, colour, shape.angle_deg);
}

} // namespace siphonwright::drawing
