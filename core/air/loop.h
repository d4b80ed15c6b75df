#pragma once

#include "core/geometry/plumb.h"
#include "core/geometry/profile.h"

#include <optional>
#include <vector>

/// What is filled: loops of hose and heater chamber that share one engine jacket.
namespace siphonwright {

/// Where in a loop something lies. Distances run along the part's own path, in mm.
enum class LoopPart { jacket, supply, chamber, return_hose };

/// A port or nozzle: a round hole that a hose leaves through. Its lowest and highest points lie d/2 k under
/// and over its centre, k the level part of its axis; without an axis (zero) it faces sideways, k = 1.
struct LoopOpening {
    double bore_mm = 0;
    Vec3 axis;
};

struct LoopValve {
    LoopPart on = LoopPart::supply; ///< supply or return_hose
    double along_mm = 0;
    bool open = true; ///< at the start
};

/// A vent to the open air at the crown of a hose. It lets gas out until coolant reaches it, then it is shut
/// for good.
struct LoopBleed {
    LoopPart on = LoopPart::return_hose; ///< supply or return_hose
    double along_mm = 0;
    bool open = true;
};

/// A heater's chamber: a round body with flat ends.
struct LoopChamber {
    Vec3 bottom; ///< centre of one flat end
    Vec3 top;    ///< centre of the other
    double bore_mm = 0;
};

/// One loop. The supply path runs from its port's opening in the jacket to the chamber's inlet, the return
/// path from the chamber's outlet to its port.
struct FillLoop {
    Path supply;
    LoopChamber chamber;
    Path return_hose;
    LoopOpening supply_port;
    LoopOpening inlet;
    LoopOpening outlet;
    LoopOpening return_port;
    std::vector<LoopValve> valves;
    std::vector<LoopBleed> bleeds;
    std::optional<double> element_top_mm; ///< height of the element's highest point, along plumb
};

/// How much coolant the jacket holds at a height: straight between the points given, and on beyond the first
/// and the last. At least two points, both columns strictly rising.
struct JacketVolume {
    double level_mm = 0;
    double volume_ml = 0;
};

} // namespace siphonwright
