#include "core/physics/air.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

AirState airAt(double temperature_degC, double pressure_Pa)
{
    const double T = std::max(1.0, temperature_degC + zero_degC_in_K);
    const double T_to_1_5 = T * std::sqrt(T);
    AirState air;
    air.density_kg_per_m3 = pressure_Pa / (287.05 * T);
    air.viscosity_Pa_s = 1.458e-6 * T_to_1_5 / (T + 110.4);
    air.conductivity_W_per_m_K = 2.64638e-3 * T_to_1_5 / (T + 245.4 * std::pow(10.0, -12 / T));
    return air;
}

} // namespace siphonwright
