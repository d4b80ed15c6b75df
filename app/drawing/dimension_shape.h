#pragma once

#include "app/drawing/elevation.h"

#include "core/layout/dimensioning.h"

#include <QLineF>
#include <QPolygonF>

#include <vector>

/// A dimension as lines and text, after ISO 129-1: what painter, pointer and preview share.
namespace siphonwright::drawing {

/// All in painter axes, mm of the drawing.
struct DimensionShape {
    QPolygonF line; ///< from end to end
    std::vector<QLineF> extensions;
    bool arrows_inside = true; ///< no room: they point at the line from outside
    QString text;
    QPointF text_at; ///< left end of its baseline
    double angle_deg = 0;
    QPolygonF text_box;
};

/// "320 mm", "1 in 50 (1.1°)", "plumb".
QString dimensionText(const MeasuredDimension& measured, UnitSystem units);
DimensionShape shapeOf(const MeasuredDimension& measured, const Style& style);
/// The points that its lines go through, whatever the style: what has to be on the page.
QPolygonF dimensionLine(const MeasuredDimension& measured);
/// Draw it in one colour.
void paintDimension(QPainter& painter, const DimensionShape& shape, const Style& style, const QColor& colour);

} // namespace siphonwright::drawing
