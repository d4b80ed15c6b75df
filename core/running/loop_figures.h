#pragma once

#include "core/running/running.h"

#include <vector>

/// Figures of a running loop as people read them.
namespace siphonwright {

/// Flow by volume as the coolant enters the heater, l/min, signed as the flow; 0 where nothing flows.
double flowByVolume_l_per_min(const Circulation& found);

/// The coolant's temperature at one place along a hose.
struct HoseTemperature {
    double along_mm = 0; ///< from the path's start, in the hose's own direction
    double degC = 0;
};

/// Temperatures along a hose of the loop, at the ends of its stretches; between them they change nearly in
/// a straight line. Empty when nothing flows.
std::vector<HoseTemperature> temperaturesAlong(const LoopRun& run, HoseRole role);

/// Temperature at a place along the hose; what is beyond an end has that end's. NaN from an empty list.
double temperatureAt(const std::vector<HoseTemperature>& along, double along_mm);

/// One part's share of what a loop loses, as circulation found it.
struct NamedLoss {
    const CircuitPart* part = nullptr;
    double share = 0;
};

/// The parts that take most of the loop's head, largest first; at most so many.
std::vector<NamedLoss> largestLosses(const LoopRun& run, std::size_t most);

} // namespace siphonwright
