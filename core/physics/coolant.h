#pragma once

#include <optional>

/// Properties of coolant.
namespace siphonwright {

enum class CoolantBase { ethylene_glycol, propylene_glycol };

/// Largest volume percent of glycol for which a freezing temperature is given: the published tables of the
/// fit end there.
constexpr double largest_known_glycol_percent = 60;

/// Temperature at which ice begins to form in glycol and water.
///
/// Method: T = exp(sum c_j (phi - 0.35)^j) kelvin, phi the volume fraction of glycol: the fit that the open
/// property library CoolProp (fluids AEG and APG) gives for the tables of the ASHRAE Handbook Fundamentals,
/// 2001, secondary coolants.
///
/// Range: 0 (plain water, 0 degC by definition of the scale) and up to 60 % by
/// volume; under 10 %, where the tables begin, the fit runs to within 0.1 K of 0 degC and is held at 0 degC
/// where it would lie over it.
///
/// Error: 0.34 K against the handbook's own rows for pure glycol in water;
/// against others, the fit less the row: Lange's Handbook of Chemistry (pure propylene glycol) -1.4 to -0.3
/// K, data sheets of coolants with inhibitors -0.5 to +1.7 K (ethylene) and -0.8 to +0.6 K (propylene).
/// Margins under 2 K mean nothing.
///
/// Outside the range, and for what is not a number: nothing.
std::optional<double> freezingPoint(CoolantBase base, double volume_percent);

} // namespace siphonwright
