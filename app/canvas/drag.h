#pragma once

#include "app/canvas/canvas.h"

namespace siphonwright {

/// One drag of one part, or of all that are selected with it, from press to release. Each step starts from
/// the sketch as it was, so that nothing adds up and coming back to the start is no change.
struct Drag {
    PartRef part;               ///< the one taken hold of
    std::vector<PartRef> parts; ///< all that move; empty for one alone
    bool turns = false;         ///< turn it about its own place instead of moving it
    Sketch start;
    BoxesOfHoses hose_boxes;            ///< boxesOf(start)
    Vec2 grabbed;                       ///< where the pointer took hold
    Vec2 anchor;                        ///< the part's own place then: what snaps
    std::optional<double> anchor_along; ///< in-line parts and clips: distance along the hose then
    int gesture = 0;
};

Drag beginDrag(Canvas& canvas, const PartRef& part, bool turns, Vec2 grabbed);

/// Apply the step that puts the part where the pointer is. @return the guides it snapped to.
std::vector<Guide> dragTo(Canvas& canvas, const Drag& drag, const Pointer& pointer);

/// Turn a heater or a port's axis in the elevation so that it points along (dx, dz), in steps of step_deg
/// (0: freely).
bool pointPart(Sketch& sketch, const PartRef& part, double dx, double dz, double step_deg);
/// Turn a heater or a port clockwise by an angle.
bool turnPart(Sketch& sketch, const PartRef& part, double clockwise_deg);

constexpr double turn_step_deg = 15;

} // namespace siphonwright
