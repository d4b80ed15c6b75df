#include "app/rules/pencil.h"

#include "app/drawing/ink.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace siphonwright::rules {

namespace {

using namespace drawing;

constexpr double lettering_mm = 2.1;

QColor washed(const QColor& ground, const QColor& colour, double share)
{
    return QColor::fromRgbF(float(ground.redF() + (colour.redF() - ground.redF()) * share),
                            float(ground.greenF() + (colour.greenF() - ground.greenF()) * share),
                            float(ground.blueF() + (colour.blueF() - ground.blueF()) * share));
}

/// A line through corners, each rounded as far as its neighbours leave room.
QPainterPath rounded(const QPolygonF& corners, double radius)
{
    QPainterPath path(corners.first());
    for (qsizetype i = 1; i + 1 < corners.size(); ++i) {
        const QPointF in = corners[i - 1] - corners[i];
        const QPointF out = corners[i + 1] - corners[i];
        const double reach =
            std::min({radius, std::hypot(in.x(), in.y()) / 2, std::hypot(out.x(), out.y()) / 2});
        path.lineTo(corners[i] + unitOf(in) * reach);
        path.quadTo(corners[i], corners[i] + unitOf(out) * reach);
    }
    path.lineTo(corners.last());
    return path;
}

} // namespace

QPen Pencil::pen(const QColor& colour, double width_mm, Qt::PenStyle style) const
{
    return QPen(colour, width_mm, style, Qt::FlatCap, Qt::RoundJoin);
}

void Pencil::head(QPointF tip, QPointF direction, const QColor& colour)
{
    const QPointF d = unitOf(direction) * 2;
    const QPointF side = turned(d) * 0.36;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(colour);
    painter_.drawPolygon(QPolygonF({tip, tip - d + side, tip - d * 0.8, tip - d - side}));
}

void Pencil::text(At at, const char* words, Anchor anchor)
{
    paintWeightedText(painter_, page(at), tr(words), anchor, palette_.text, lettering_mm, Weight::regular);
}

void Pencil::engine(At low, At high)
{
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.setBrush(palette_.engine_fill);
    painter_.drawRoundedRect(box(low, high), 1.5, 1.5);
    painter_.setPen(pen(palette_.ink, hairline_mm, Qt::DashLine));
    painter_.setBrush(palette_.jacket_fill);
    painter_.drawRect(box({low.x + 3, low.z + 3}, {high.x - 3, high.z - 3}));
}

void Pencil::port(At at)
{
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.setBrush(palette_.ground);
    painter_.drawEllipse(page(at), 1.7, 1.7);
    painter_.setBrush(palette_.ink);
    painter_.drawEllipse(page(at), 0.5, 0.5);
}

void Pencil::thermostat(At at, const char* caption)
{
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.setBrush(palette_.engine_fill);
    painter_.drawRect(box({at.x - 3, at.z - 2.5}, {at.x + 3, at.z + 2.5}));
    painter_.drawLine(page({at.x - 3, at.z}), page({at.x + 3, at.z}));
    painter_.setBrush(palette_.ink);
    painter_.drawEllipse(page(at), 1, 1);
    if (caption)
        text({at.x + 4.5, at.z - 0.9}, caption);
}

void Pencil::sensor(At at, const char* caption)
{
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.setBrush(palette_.ground);
    painter_.drawRect(box({at.x - 1.6, at.z - 1.6}, {at.x + 1.6, at.z + 1.6}));
    painter_.drawLine(page({at.x - 1.6, at.z - 1.6}), page({at.x + 1.6, at.z + 1.6}));
    if (caption)
        text({at.x, at.z - 5.2}, caption, Anchor::centre);
}

void Pencil::tank(At low, double width, double level_z)
{
    const double high = low.z + 9;
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(palette_.jacket_fill);
    painter_.drawRect(box(low, {low.x + width, level_z}));
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawRoundedRect(box(low, {low.x + width, high}), 1.5, 1.5);
}

void Pencil::heater(At centre, double turned_deg, double size)
{
    painter_.save();
    painter_.translate(page(centre));
    painter_.rotate(turned_deg);
    painter_.scale(size, size);
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.setBrush(palette_.heater_fill);
    painter_.drawRect(QRectF(-1.5, -11, 3, 3)); // outlet
    painter_.drawRect(QRectF(-8, 4.5, 4, 3));   // inlet
    painter_.setPen(pen(palette_.ink, thick_mm));
    painter_.drawRoundedRect(QRectF(-5, -9, 10, 18), 1.8, 1.8);
    painter_.setBrush(Qt::NoBrush);
    QPainterPath element(QPointF(-1.6, 9));
    element.lineTo(-1.6, -1.5);
    element.cubicTo(-1.6, -3.6, 1.6, -3.6, 1.6, -1.5);
    element.lineTo(1.6, 9);
    painter_.setPen(pen(palette_.return_, medium_mm));
    painter_.drawPath(element);
    painter_.restore();
}

void Pencil::tube(const QPainterPath& path, const QColor& colour, bool chained, double bore)
{
    painter_.setBrush(Qt::NoBrush);
    painter_.setPen(pen(colour, bore + 1));
    painter_.drawPath(path);
    painter_.setPen(pen(washed(palette_.ground, colour, 0.2), bore + 0.3));
    painter_.drawPath(path);
    if (!chained)
        return;
    QPen chain = pen(colour, thin_mm);
    chain.setDashPattern({10, 4, 2, 4});
    painter_.setPen(chain);
    painter_.drawPath(path);
}

void Pencil::hose(Points points, const QColor& colour, bool chained, double bore, double corner)
{
    QPolygonF corners;
    for (const At& at : points)
        corners << page(at);
    const QPainterPath path = rounded(corners, corner);
    tube(path, colour, chained, bore);
    // The flow's arrow stands in the middle of the longest straight piece.
    qsizetype longest = 1;
    const auto length = [&corners](qsizetype i) {
        const QPointF way = corners[i] - corners[i - 1];
        return std::hypot(way.x(), way.y());
    };
    for (qsizetype i = 2; i < corners.size(); ++i)
        if (length(i) > length(longest))
            longest = i;
    const QPointF way = corners[longest] - corners[longest - 1];
    head((corners[longest] + corners[longest - 1]) / 2 + unitOf(way), way, colour);
}

void Pencil::valve(At at, bool upright, bool open)
{
    painter_.save();
    painter_.translate(page(at));
    painter_.rotate(upright ? 90 : 0);
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.setBrush(open ? palette_.ground : palette_.ink);
    painter_.drawPolygon(QPolygonF({{-3, -2}, {3, 2}, {3, -2}, {-3, 2}}));
    // The lever lies along the pipe when it is open and across it when it is closed.
    painter_.drawLine(QPointF(0, 0), QPointF(0, -3.4));
    painter_.drawLine(open ? QPointF(0, -3.4) : QPointF(-1.6, -3.4), QPointF(open ? 3.4 : 1.6, -3.4));
    painter_.restore();
}

void Pencil::checkValve(At at, bool upright)
{
    painter_.save();
    painter_.translate(page(at));
    painter_.rotate(upright ? -90 : 0);
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.setBrush(palette_.ground);
    painter_.drawRect(QRectF(-3.4, -2.2, 6.8, 4.4));
    painter_.setBrush(palette_.ink);
    painter_.drawPolygon(QPolygonF({{-1.6, -1.5}, {1.4, 0}, {-1.6, 1.5}}));
    painter_.drawLine(QPointF(1.6, -1.6), QPointF(1.6, 1.6));
    painter_.restore();
}

void Pencil::clip(At at, double hangs_from_z)
{
    painter_.setPen(pen(palette_.ink, edge_mm));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawRect(box({at.x - 0.8, at.z - 1.9}, {at.x + 0.8, at.z + 1.9}));
    painter_.drawLine(page({at.x, at.z + 1.9}), page({at.x, hangs_from_z}));
}

void Pencil::drain(At at)
{
    painter_.setPen(pen(palette_.ink, medium_mm));
    painter_.setBrush(palette_.ground);
    painter_.drawRect(box({at.x - 1, at.z - 3.4}, {at.x + 1, at.z - 1}));
    painter_.drawLine(page({at.x - 2, at.z - 3.4}), page({at.x + 2, at.z - 3.4}));
}

void Pencil::verdict(bool right)
{
    const QColor colour = right ? palette_.supply : palette_.stop;
    const QPointF centre = page({4.4, 55.8});
    painter_.setPen(QPen(colour, 0.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter_.setBrush(Qt::NoBrush);
    if (right) {
        painter_.drawPolyline(
            QPolygonF({centre + QPointF(-2, 0.1), centre + QPointF(-0.6, 1.7), centre + QPointF(2.2, -1.9)}));
    } else {
        painter_.drawLine(centre + QPointF(-1.8, -1.8), centre + QPointF(1.8, 1.8));
        painter_.drawLine(centre + QPointF(-1.8, 1.8), centre + QPointF(1.8, -1.8));
    }
    paintWeightedText(painter_, centre + QPointF(4, 1.25), right ? tr("Right") : tr("Wrong"), Anchor::left,
                      colour, 2.5, Weight::strong);
}

} // namespace siphonwright::rules
