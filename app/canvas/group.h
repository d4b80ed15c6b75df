#pragma once

#include "app/canvas/hit.h"

/// Several parts at once: which ones a band catches, and what they are called together.
namespace siphonwright {

/// The parts that lie wholly between two corners. A hose that lies there wholly is caught as one, of others
/// the points, open ends and parts in it.
std::vector<PartRef> partsWithin(const Canvas& canvas, Vec2 corner, Vec2 opposite);

/// The one part's name, or how many there are.
QString nameOfParts(const Sketch& sketch, const std::vector<PartRef>& parts);

/// Places that a moving group may line up with: openings that do not move along.
std::vector<Vec2> stillNeighbours(const Sketch& start, const std::vector<PartRef>& moving);

} // namespace siphonwright
