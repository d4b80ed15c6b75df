#pragma once

#include "core/geometry/plumb.h"
#include "core/geometry/vec.h"

#include <QString>

namespace siphonwright::drawing {

/// How a straight rises or falls on the way along a unit vector: "1:12 up" is rise over run, "level", from
/// 45 degrees on the angle over the level, "plumb up". Empty for no direction.
QString slopeWords(Vec3 along, const Plumb& plumb);

} // namespace siphonwright::drawing
