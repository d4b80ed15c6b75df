#include "app/drawing/balloon.h"

#include "app/drawing/text.h"

#include <QPainter>
#include <QPolygonF>

#include <cmath>

namespace siphonwright::drawing {

namespace {

QPolygonF shapeOf(Severity severity, QPointF centre, double radius)
{
    const int corners = severity == Severity::stop ? 8 : severity == Severity::caution ? 3 : 36;
    const double start = severity == Severity::stop ? 22.5 : -90;
    const double reach = severity == Severity::caution ? 1.45 : severity == Severity::stop ? 1.08 : 1.0;
    QPolygonF shape;
    for (int i = 0; i < corners; ++i) {
        const double a = (start + 360.0 * i / corners) * 3.14159265358979323846 / 180;
        shape << centre + QPointF(std::cos(a), std::sin(a)) * radius * reach;
    }
    return shape;
}

} // namespace

QColor severityColour(const Palette& palette, Severity severity)
{
    return severity == Severity::stop      ? palette.stop
           : severity == Severity::caution ? palette.caution
                                           : palette.advice;
}

void paintMark(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
               double line_width)
{
    const QColor colour = severityColour(palette, severity);
    painter.setPen(QPen(colour, line_width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(severity == Severity::stop ? colour : palette.ground);
    painter.drawPolygon(shapeOf(severity, centre, radius));
}

void paintBalloon(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
                  int number, double line_width)
{
    paintMark(painter, palette, centre, radius, severity, line_width);
    paintFigure(painter, palette, centre, radius, severity, number);
}

void paintFigure(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
                 int number)
{
    const bool solid = severity == Severity::stop;
    const double height = radius / balloon_of_lettering;
    paintWeightedText(painter, centre + QPointF(0, height * 0.5), QString::number(number), Anchor::centre,
                      solid ? palette.ground : palette.ink, height, Weight::strong);
}

} // namespace siphonwright::drawing
