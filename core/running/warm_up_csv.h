#pragma once

#include "core/running/running.h"

#include <string>

namespace siphonwright {

/// A warm-up's series as CSV after RFC 4180: a line of names with their units, then a line for each moment;
/// numbers to a millionth, with a point. Columns: time_s, block_degC, rest_degC, power_W, energy_kWh, then
/// for each heater, before a dot its id: outlet_degC, inlet_degC, return_degC, return_surface_degC,
/// sensed_degC, swept_degC, flow_kg_per_s, power_W. Names alone where nothing was computed.
std::string csvOf(const EngineWarmUp& warm);

} // namespace siphonwright
