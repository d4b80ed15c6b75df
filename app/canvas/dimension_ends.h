#pragma once

#include "app/canvas/canvas.h"

#include "core/layout/dimensioning.h"

#include <optional>
#include <vector>

/// What a dimension can hold on to, and the dimensions that are there, as the pointer finds them.
namespace siphonwright {

struct NamedEnd {
    DimensionEnd end;
    Vec2 at;
};

/// Every place that a dimension can hold on to exactly: points, corners, openings, marks. Levels where they
/// are nearest to `seen_from`.
std::vector<NamedEnd> dimensionEnds(const Sketch& sketch, const Layout& layout, Vec2 seen_from);
/// The thing under a place on the widget; an empty place is held as such, snapped.
NamedEnd dimensionEndAt(const Canvas& canvas, const Pointer& pointer);
/// "the outlet of Heater", "point 2 of Supply hose", "a free place".
QString nameOfEnd(const Sketch& sketch, const DimensionEnd& end);

/// The dimension whose line or text is under a place on the widget.
std::optional<PartRef> dimensionAt(const Canvas& canvas, QPointF screen);
/// Middle of its line.
std::optional<Vec2> placeOfDimension(const Canvas& canvas, const Id& id);
/// How far one step of an arrow key moves it aside, as a share of the step: towards the arrow.
double asideOfArrow(const Canvas& canvas, const Id& id, Vec2 arrow);
/// Move its line through a place, the distance aside in whole steps of a grid (0: exactly there).
bool moveDimensionThrough(Sketch& sketch, const Layout& layout, const Id& id, Vec2 place, double grid_mm);
void paintDimensionContour(QPainter& painter, const Canvas& canvas, const Id& id, const QColor& colour,
                           double width);

} // namespace siphonwright
