#pragma once

#include "app/drawing/elevation.h"

#include <vector>

/// A layout that is not there yet.
namespace siphonwright::drawing {

/// Its heater, ports and hoses with what sits on them, and the outline of the area in which the heater may
/// hang (empty: none). To be laid translucent over the elevation, which shows the rest.
struct Ghost {
    Sketch sketch;
    Layout layout;
    std::vector<Vec2> space;
};
/// One heater of a sketch with the hoses and ports that are its own.
Ghost ghostOf(const Sketch& sketch, const Id& heater);
/// With the elevation's own ink, outlines in dashes.
void paintGhost(QPainter& painter, const Ghost& ghost, const Style& style);
/// Bounding box of what paintGhost draws, painter axes; null where it draws nothing.
QRectF boundsOf(const Ghost& ghost);

} // namespace siphonwright::drawing
