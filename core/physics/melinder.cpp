#include "core/physics/melinder.h"

#include <cmath>

namespace siphonwright {
namespace {

/// Coefficients c_ij: a row for each power i of (x - x0), in it the powers j of (T - T0). Missing ones are 0.
using Surface = std::array<std::array<double, 4>, 6>;

struct Mixtures {
    double centre_mass_percent;
    double centre_degC;
    Surface density;               ///< kg/m3
    Surface specific_heat;         ///< J/(kg K)
    Surface conductivity;          ///< W/(m K)
    Surface ln_viscosity_in_mPa_s; ///< its exponential is in mPa s
};

constexpr Mixtures ethylene = {
    30.8462,
    31.728,
    {{{1034, -0.4781, -0.002692, 4.725e-06},
      {1.311, -0.006876, 4.805e-05, 1.69e-08},
      {7.49e-05, 7.855e-05, -3.995e-07, 4.982e-09},
      {-0.0001062, 1.229e-06, -1.153e-08},
      {-9.623e-07, -7.211e-08},
      {4.891e-08}}},
    {{{3737, 2.93, -0.004675, -1.389e-05},
      {-17.99, 0.1046, -0.0004147, 1.847e-07},
      {-0.09933, 0.0003516, 5.109e-06, -7.138e-08},
      {0.00261, -1.189e-06, -1.643e-07},
      {1.537e-05, -4.272e-07},
      {-1.618e-06}}},
    {{{0.472, 0.0008903, -1.058e-06, -2.789e-09},
      {-0.004286, -1.473e-05, 1.059e-07, -1.142e-10},
      {1.747e-05, 6.814e-08, -3.612e-09, 2.365e-12},
      {3.017e-08, -2.412e-09, 4.004e-11},
      {-1.322e-09, 2.555e-11},
      {2.678e-11}}},
    {{{0.4705, -0.0255, 0.0001782, -7.669e-07},
      {0.02471, -0.0001171, 1.052e-06, -1.634e-08},
      {3.328e-06, 1.086e-06, 1.051e-08, -6.475e-10},
      {1.659e-06, 3.157e-09, 4.063e-10},
      {3.089e-08, 1.831e-10},
      {-1.865e-09}}},
};

constexpr Mixtures propylene = {
    30.7031,
    32.7083,
    {{{1018, -0.5406, -0.002666, 1.347e-05},
      {0.7604, -0.00945, 5.541e-05, -1.343e-07},
      {-0.002498, 2.7e-05, -4.018e-07, 3.376e-09},
      {-0.000155, 2.829e-06, -7.175e-09},
      {-1.131e-06, -2.221e-08},
      {2.342e-08}}},
    {{{3882, 2.699, -0.001659, -1.032e-05},
      {-13.04, 0.0507, -4.752e-05, 1.522e-06},
      {-0.1598, 9.534e-05, 1.167e-05, -4.87e-08},
      {0.0003539, 3.102e-05, -2.95e-07},
      {5e-05, -7.135e-07},
      {-4.959e-07}}},
    {{{0.4513, 0.0007955, 3.482e-08, -5.966e-09},
      {-0.004795, -1.678e-05, 8.941e-08, 1.493e-10},
      {2.076e-05, 1.563e-07, -4.615e-09, 9.897e-12},
      {-9.083e-08, -2.518e-09, 6.543e-11},
      {-5.952e-10, -3.605e-11},
      {2.104e-11}}},
    {{{0.6837, -0.03045, 0.0002525, -1.399e-06},
      {0.03328, -0.0003984, 4.332e-06, -1.86e-08},
      {5.453e-05, -8.6e-08, -1.593e-08, -4.465e-11},
      {-3.9e-06, 1.054e-07, -1.589e-09},
      {-1.587e-08, 4.475e-10},
      {3.564e-09}}},
};

/// The surface at one concentration.
std::array<double, 4> section(const Surface& surface, double from_centre)
{
    std::array<double, 4> cubic{};
    for (std::size_t i = surface.size(); i-- > 0;)
        for (std::size_t j = 0; j < cubic.size(); ++j)
            cubic[j] = cubic[j] * from_centre + surface[i][j];
    return cubic;
}

double value(const std::array<double, 4>& c, double t)
{
    return ((c[3] * t + c[2]) * t + c[1]) * t + c[0];
}

} // namespace

MelinderMix::MelinderMix(CoolantBase base, double mass_percent)
{
    const Mixtures& mixtures = base == CoolantBase::ethylene_glycol ? ethylene : propylene;
    const double from_centre = mass_percent - mixtures.centre_mass_percent;
    centre_degC_ = mixtures.centre_degC;
    density_ = section(mixtures.density, from_centre);
    specific_heat_ = section(mixtures.specific_heat, from_centre);
    conductivity_ = section(mixtures.conductivity, from_centre);
    ln_viscosity_ = section(mixtures.ln_viscosity_in_mPa_s, from_centre);
}

FluidState MelinderMix::at(double temperature_degC) const
{
    const double t = temperature_degC - centre_degC_;
    FluidState state;
    state.density_kg_per_m3 = value(density_, t);
    state.viscosity_Pa_s = 1e-3 * std::exp(value(ln_viscosity_, t));
    state.specific_heat_J_per_kg_K = value(specific_heat_, t);
    state.conductivity_W_per_m_K = value(conductivity_, t);
    return state;
}

} // namespace siphonwright
