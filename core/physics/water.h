#pragma once

#include "core/physics/fluid.h"

namespace siphonwright {

/// Water as a liquid, at the pressure of a cooling system.
///
/// Density: Kell, G. S. (1975), J. Chemical and Engineering Data 20(1), 97-105. Viscosity and conductivity:
/// IAPWS SR6-08(2011), stated to 110 degC, used to 120. Specific heat: own least-squares fit to IAPWS-IF97
/// (0.101 MPa, 0.3 MPa over 98 degC).
///
/// Range: 0 to 130 degC; a few tenths under 0 degC is harmless. Largest deviations from IAPWS-IF97, R12-08
/// and R15-11 over 0 to 120 degC: density 0.01 %, viscosity 0.06 %, specific heat 0.02 %, conductivity 0.08
/// %.
FluidState liquidWater(double temperature_degC);

} // namespace siphonwright
