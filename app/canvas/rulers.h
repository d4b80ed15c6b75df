#pragma once

#include "app/canvas/canvas.h"

class QPainter;

namespace siphonwright {

constexpr double usual_ruler_px = 26; ///< with text of the usual size
/// Width of both rulers, px.
double rulerWidth(const Canvas& canvas);

void paintGrid(QPainter& painter, const Canvas& canvas);
/// Rulers along the top and the left, in the user's units, with marks at the pointer.
void paintRulers(QPainter& painter, const Canvas& canvas, QSizeF widget,
                 const std::optional<QPointF>& pointer);
/// Distance between two numbered marks, mm.
double rulerSpacing(double zoom, UnitSystem units);

} // namespace siphonwright
