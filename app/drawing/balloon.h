#pragma once

#include "app/drawing/elevation.h"

/// The numbered mark of a finding, the same on the drawing and in lists.
namespace siphonwright::drawing {

QColor severityColour(const Palette& palette, Severity severity);

/// A mark without a number.
void paintMark(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
               double line_width);

/// A balloon's radius, of the height of the number in it.
constexpr double balloon_of_lettering = 1.15;

/// Severity by shape: octagon for a stop, triangle for a caution, circle for an advice. Sizes in painter
/// units.
void paintBalloon(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
                  int number, double line_width);

/// The number in it alone.
void paintFigure(QPainter& painter, const Palette& palette, QPointF centre, double radius, Severity severity,
                 int number);

} // namespace siphonwright::drawing
