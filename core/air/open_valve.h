#pragma once

#include "core/air/run.h"

namespace siphonwright {

/// Opens a shut valve. That is a finite jump: between unequal heads a volume of liquid passes at once, while
/// what was poured stays the same, and the jacket's level falls.
///
/// First, where no liquid covers the valve, gas passes until its pressure is one. Then liquid runs from the
/// higher head until the equation of pool, weir or sealed holds. Liquid that covers the valve from one side
/// over gas that has nowhere else to go gurgles: gas comes up against it, heads staying equal, until the
/// lower level reaches the crown. Returns false if no state of rest was found.
bool openValve(const FillNetwork& network, FillRun& run, std::size_t throat);

} // namespace siphonwright
