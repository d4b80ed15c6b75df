#include "core/physics/water.h"

#include <array>
#include <cmath>

namespace siphonwright {
namespace {

template <std::size_t count>
double polynomial(const std::array<double, count>& coefficients, double x)
{
    double sum = 0;
    for (std::size_t i = count; i-- > 0;)
        sum = sum * x + coefficients[i];
    return sum;
}

/// Kell (1975).
double density(double t)
{
    constexpr std::array<double, 6> above = {999.83952,     16.945176,    -7.9870401e-3,
                                             -46.170461e-6, 105.56302e-9, -280.54253e-12};
    return polynomial(above, t) / (1 + 16.879850e-3 * t);
}

/// IAPWS SR6-08(2011); `t` is in 300 K.
double viscosity(double t)
{
    return 1e-6 * (280.68 * std::pow(t, -1.9) + 511.45 * std::pow(t, -7.7) + 61.131 * std::pow(t, -19.6) +
                   0.45903 * std::pow(t, -40.0));
}

/// IAPWS SR6-08(2011); `t` is in 300 K.
double conductivity(double t)
{
    return 1.663 * std::pow(t, -1.15) - 1.7781 * std::pow(t, -3.4) + 1.1567 * std::pow(t, -6.0) -
           0.432115 * std::pow(t, -7.6);
}

/// Own fit; `t` is in 100 degC.
double specificHeat(double t)
{
    constexpr std::array<double, 7> fit = {4218.67, -314.89, 1021.32, -1854.63, 2019.86, -1125.09, 251.294};
    return polynomial(fit, t);
}

} // namespace

FluidState liquidWater(double temperature_degC)
{
    const double in_300_K = (temperature_degC + 273.15) / 300;
    FluidState state;
    state.density_kg_per_m3 = density(temperature_degC);
    state.viscosity_Pa_s = viscosity(in_300_K);
    state.specific_heat_J_per_kg_K = specificHeat(temperature_degC / 100);
    state.conductivity_W_per_m_K = conductivity(in_300_K);
    return state;
}

} // namespace siphonwright
