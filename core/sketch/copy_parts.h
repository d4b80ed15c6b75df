#pragma once

#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

/// Parts taken out of a sketch as a sketch of their own, and put into another.
namespace siphonwright {

/// The parts as a whole each: a corner stands for its outline's owner, a point, end, valve or clip for its
/// hose. An engine brings its ports. A hose's end on a port or heater that is not taken along becomes open
/// where it was. Ground line and photograph are left.
Sketch copyOf(const Sketch& sketch, const std::vector<PartRef>& parts);

struct Pasted {
    std::vector<PartRef> parts;   ///< what was put down, to be selected
    bool engine_left_out = false; ///< there is one already; with it go its ports that no pasted hose is on
    bool tank_left_out = false;   ///< likewise
};
/// Put a copy into a sketch, moved by delta: with fresh ids, and names that nothing there has yet.
Pasted paste(Sketch& sketch, Sketch copied, Vec3 delta);

/// Everything of a sketch that can be selected as a whole.
std::vector<PartRef> wholesOf(const Sketch& sketch);

/// By how much a copy has to be moved so that none of it lies exactly on what is there: steps to the right
/// and down.
Vec3 besideOthers(const Sketch& sketch, const Sketch& copied);

} // namespace siphonwright
