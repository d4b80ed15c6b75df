#pragma once

#include "core/sketch/edits.h"

/// Edits on several parts at once. Each moves, removes or lines up every part once, however the parts named
/// hang together.
namespace siphonwright {

/// The parts that are there, each once, without those that another part of the list takes along: a point of
/// a hose whose hose is in the list, a port beside its engine. The order is kept.
std::vector<PartRef> withoutRiders(const Sketch& sketch, const std::vector<PartRef>& parts);

/// Move all by delta. In-line parts and clips ride on their hose; alone among themselves they move along it
/// by delta.x. @return whether anything moved.
bool move(Sketch& sketch, const std::vector<PartRef>& parts, Vec3 delta);
/// Remove all, with what cannot be without them. Outlines keep three corners. @return whether anything went.
bool remove(Sketch& sketch, const std::vector<PartRef>& parts);

/// What a part covers in the elevation, mm: its body or outline, or the place of what is drawn as a point.
struct PartBox {
    Vec2 low;
    Vec2 high;
    Vec2 middle() const { return {(low.x + high.x) / 2, (low.z + high.z) / 2}; }
};
/// Nothing for what lies along a hose, is held by something else, or is not there.
std::optional<PartBox> boxOf(const Sketch& sketch, const PartRef& part);
/// Round all that have a box.
std::optional<PartBox> boxOf(const Sketch& sketch, const std::vector<PartRef>& parts);

enum class Alignment {
    left,
    right,
    top,
    bottom,
    middle_x, ///< middles above each other
    middle_z  ///< middles at one height
};
/// Line up with the outermost of them, or with the middle of all. @return whether anything moved.
bool align(Sketch& sketch, const std::vector<PartRef>& parts, Alignment alignment);

enum class SpreadAlong { x, z };
/// Space the middles evenly between the first and the last, which stay. Needs three. @return whether
/// anything moved.
bool distribute(Sketch& sketch, const std::vector<PartRef>& parts, SpreadAlong spread);

} // namespace siphonwright
