#pragma once
#include "core/quantity/constants.h"

/// Air round hoses and engine.
namespace siphonwright {

constexpr double standard_pressure_Pa = 101325;

/// Dry air at one temperature and pressure.
struct AirState {
    double density_kg_per_m3 = 0;
    double viscosity_Pa_s = 0; ///< dynamic
    double conductivity_W_per_m_K = 0;
    double specific_heat_J_per_kg_K = 1006; ///< taken constant: within 0.5 % from -70 to 120 degC

    double kinematic_m2_per_s() const { return viscosity_Pa_s / density_kg_per_m3; }
    double prandtl() const { return viscosity_Pa_s * specific_heat_J_per_kg_K / conductivity_W_per_m_K; }
};

/// Air as an ideal gas of 287.05 J/kg K; viscosity 1.458e-6 T^1.5 / (T + 110.4) and conductivity
/// 2.64638e-3 T^1.5 / (T + 245.4 * 10^(-12/T)), T in kelvin: U.S. Standard Atmosphere 1976.
/// Range: 200 to 400 K; outside it the formulas simply go on, down to 1 K.
AirState airAt(double temperature_degC, double pressure_Pa = standard_pressure_Pa);

} // namespace siphonwright
