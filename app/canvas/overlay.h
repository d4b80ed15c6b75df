#pragma once

#include "app/canvas/hit.h"

class QPainter;

/// Screen aids on top of the drawing, in widget pixels; none of them reaches paper.
namespace siphonwright::overlay {

void paintHandle(QPainter& painter, const Canvas& canvas, const Handle& handle, bool selected, bool hovered);
/// Handles of what is selected and of what is pointed at, and the outline of both.
void paintSelection(QPainter& painter, const Canvas& canvas, const PartRef& hovered);
/// A band being drawn from a place to the pointer, and the contours of what it holds.
void paintBand(QPainter& painter, const Canvas& canvas, Vec2 from, QPointF to,
               const std::vector<PartRef>& held);
void paintGuides(QPainter& painter, const Canvas& canvas, const std::vector<Guide>& guides);
/// "Snapped: level, plumb"; nothing without guides.
QStringList guideWords(const std::vector<Guide>& guides);
/// Lines of text in a box beside a place, kept inside the drawing's area.
void paintDimensions(QPainter& painter, const Canvas& canvas, QPointF beside, const QStringList& lines);
void paintCrosshair(QPainter& painter, const Canvas& canvas, Vec2 at);
/// A ring on a port or nozzle that a click or drop would connect to.
void paintTarget(QPainter& painter, const Canvas& canvas, Vec3 at);
/// A hose's course as a band of its outside diameter, for what is not there yet.
void paintGhostHose(QPainter& painter, const Canvas& canvas, const Centreline& line, double outside_mm);
void paintGhostOutline(QPainter& painter, const Canvas& canvas, const std::vector<Vec2>& outline,
                       bool closed);
/// A centreline as widget pixels.
QPolygonF traceOf(const Viewport& viewport, const Centreline& line);

} // namespace siphonwright::overlay
