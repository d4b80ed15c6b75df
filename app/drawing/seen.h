#pragma once

#include "core/geometry/projection.h"
#include "core/sketch/sketch.h"

#include <QPolygonF>

#include <vector>

/// What is drawn as an outline in the side elevation, as any view shows it: in an end view by its heights and
/// its depth range.
namespace siphonwright::drawing {

/// Engine: its outline, or from the end what is known of it, its heights and the jacket's depth range, in the
/// shape of its arrangement (two banks for a vee, low and wide for a horizontal one). The shape between is
/// our own choice; nothing is judged by it.
std::vector<Vec2> engineSeen(const Engine& engine, const Projection& view);
/// Jacket: its outline, or from the end the box of its heights and its depth range.
std::vector<Vec2> jacketSeen(const Engine& engine, const Projection& view);
/// Area: its outline, or from the end the box of its heights and depth; empty where the depth is not known.
std::vector<Vec2> areaSeen(const Area& area, const Projection& view);

/// Is the depth of an area entered?
inline bool depthKnown(const Area& area)
{
    return area.y_from_mm && area.y_to_mm;
}

/// Which of the engine's ends a view looks at.
enum class EndSeen { front, rear };
EndSeen endSeen(const Engine& engine, const Projection& view);

/// In painter axes.
QPolygonF pageOf(const std::vector<Vec2>& outline);

} // namespace siphonwright::drawing
