#pragma once

#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <string>
#include <vector>

/// Edits: small functions on a sketch. Each leaves the sketch unchanged when what it speaks of is not there,
/// and says so by returning false (or an empty id).
namespace siphonwright {

/// A new id such as "port-3" that the sketch does not use yet.
Id freshId(const Sketch& sketch, const std::string& stem);

/// Is there such a part?
bool exists(const Sketch& sketch, const PartRef& part);
/// Where a part's handle is: a port's opening, a heater's centre, a route point, an outline's corner (y 0).
/// For an in-line part or clip this is nothing: it lies along a resolved hose; nor for a dimension, which
/// lies between two resolved places.
std::optional<Vec3> positionOf(const Sketch& sketch, const PartRef& part);

/// Move by delta. The engine takes its jacket, ports and thermostat with it, the tank its level marks;
/// in-line parts and clips move along their hose by delta.x taken as distance, a dimension aside by it. A
/// locked photograph stays.
bool move(Sketch& sketch, const PartRef& part, Vec3 delta);
/// Remove it and what cannot be without it: hose ends on a removed port or nozzle become open where they
/// were. What dimensions held on to is settled by core/layout/follow_dimensions.h.
bool remove(Sketch& sketch, const PartRef& part);

bool connect(Sketch& sketch, const Id& hose, std::size_t end, const HoseEnd& to); ///< keeps bore, engagement
/// A hose between two ends, its bore and wall after `like` (another hose) or typical; returns its id.
Id addHose(Sketch& sketch, HoseRole role, const HoseEnd& from, const HoseEnd& to,
           std::vector<RoutePoint> points);
bool insertPoint(Sketch& sketch, const Id& hose, std::size_t before, const RoutePoint& point);
bool addInlinePart(Sketch& sketch, const Id& hose, const InlinePart& part);
bool addClip(Sketch& sketch, const Id& hose, double along_mm);
Id addPort(Sketch& sketch, Port port); ///< gives it an id and, if empty, a name
Id addHeater(Sketch& sketch, Heater heater);
Id addArea(Sketch& sketch, Area area);
Id addDimension(Sketch& sketch, Dimension dimension); ///< gives it an id

/// Stretch the jacket's outline so that its lowest and highest levels become these z.
bool setJacketLevels(Sketch& sketch, double lowest_z, double highest_z);

/// Where a nozzle opens into the chamber and which way it points, in drawing axes.
struct Opening {
    Vec3 at;
    Vec3 axis;
};
Opening nozzleOpening(const Heater& heater, NozzleKind nozzle);
/// A point of the heater's own axes in drawing axes.
Vec3 heaterPoint(const Heater& heater, Vec3 own);

enum class Orientation { vertical, horizontal, inclined, inverted };
/// Within 5 degrees of upright, of level, or neither; inverted past 95 degrees.
Orientation orientationOf(const Heater& heater);

} // namespace siphonwright
