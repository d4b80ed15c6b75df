#pragma once

#include "core/geometry/plumb.h"

namespace siphonwright {

/// A round body with flat ends: a heater's shell or chamber.
struct Cylinder {
    Vec3 bottom; ///< centre of one flat end
    Vec3 top;    ///< centre of the other
    double diameter_mm = 0;
};

/// Height along plumb of its highest and lowest point, exact at any tilt.
double highestOf(const Cylinder& cylinder, const Plumb& plumb);
double lowestOf(const Cylinder& cylinder, const Plumb& plumb);

/// Volume over a level plane, ml. Exact: the elementary circular segment integrated along the axis in closed
/// form.
double volumeOver(const Cylinder& cylinder, const Plumb& plumb, double height_mm);

} // namespace siphonwright
