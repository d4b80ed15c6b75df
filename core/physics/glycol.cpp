#include "core/physics/glycol.h"

#include "core/physics/water.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double water_at_20_kg_per_m3 = 998.2;
constexpr double least_polynomial_mass_percent = 1;
constexpr double data_end_degC = 100; ///< of Melinder's polynomials
constexpr double slope_from_degC = 80;

double kelvin(double degC)
{
    return degC + 273.15;
}

double glycolAt20(CoolantBase base)
{
    return base == CoolantBase::ethylene_glycol ? 1113.2 : 1036.2;
}

FluidState blend(const FluidState& water, const FluidState& mix, double water_share)
{
    const auto between = [water_share](double from, double to) { return to + water_share * (from - to); };
    FluidState state;
    state.density_kg_per_m3 = between(water.density_kg_per_m3, mix.density_kg_per_m3);
    state.viscosity_Pa_s = std::exp(between(std::log(water.viscosity_Pa_s), std::log(mix.viscosity_Pa_s)));
    state.specific_heat_J_per_kg_K = between(water.specific_heat_J_per_kg_K, mix.specific_heat_J_per_kg_K);
    state.conductivity_W_per_m_K = between(water.conductivity_W_per_m_K, mix.conductivity_W_per_m_K);
    return state;
}

} // namespace

double glycolMassPercent(CoolantBase base, double volume_percent)
{
    const double glycol = volume_percent * glycolAt20(base);
    return 100 * glycol / (glycol + (100 - volume_percent) * water_at_20_kg_per_m3);
}

double glycolVolumePercent(CoolantBase base, double mass_percent)
{
    const double glycol = mass_percent / glycolAt20(base);
    return 100 * glycol / (glycol + (100 - mass_percent) / water_at_20_kg_per_m3);
}

std::optional<GlycolWater> GlycolWater::ofVolume(CoolantBase base, double volume_percent)
{
    const std::optional<double> freezing_degC = freezingPoint(base, volume_percent);
    if (!freezing_degC)
        return std::nullopt;
    return GlycolWater(base, volume_percent, *freezing_degC);
}

std::optional<GlycolWater> GlycolWater::ofMass(CoolantBase base, double mass_percent)
{
    return ofVolume(base, glycolVolumePercent(base, mass_percent));
}

GlycolWater GlycolWater::water()
{
    return GlycolWater(CoolantBase::ethylene_glycol, 0, 0);
}

GlycolWater::GlycolWater(CoolantBase base, double volume_percent, double freezing_degC)
    : base_(base),
      volume_percent_(volume_percent),
      freezing_degC_(freezing_degC),
      water_share_(
          std::max(0.0, 1 - glycolMassPercent(base, volume_percent) / least_polynomial_mass_percent)),
      mix_(base, std::max(glycolMassPercent(base, volume_percent), least_polynomial_mass_percent)),
      viscosity_at_100_Pa_s_(mix_.at(data_end_degC).viscosity_Pa_s),
      ln_viscosity_slope_K_(std::log(mix_.at(slope_from_degC).viscosity_Pa_s / viscosity_at_100_Pa_s_) /
                            (1 / kelvin(slope_from_degC) - 1 / kelvin(data_end_degC)))
{}

FluidState GlycolWater::mixture(double temperature_degC) const
{
    FluidState state = mix_.at(temperature_degC);
    if (temperature_degC <= data_end_degC)
        return state;
    const double from_100 = 1 / kelvin(temperature_degC) - 1 / kelvin(data_end_degC);
    state.viscosity_Pa_s = viscosity_at_100_Pa_s_ * std::exp(ln_viscosity_slope_K_ * from_100);
    state.conductivity_W_per_m_K = mix_.at(data_end_degC).conductivity_W_per_m_K;
    return state;
}

FluidState GlycolWater::at(double temperature_degC) const
{
    // Written so that what is not a number becomes the lower end.
    const double t =
        temperature_degC > freezing_degC_ ? std::min(temperature_degC, highest_coolant_degC) : freezing_degC_;
    if (water_share_ == 1)
        return liquidWater(t);
    if (water_share_ == 0)
        return mixture(t);
    return blend(liquidWater(t), mixture(t), water_share_);
}

double expansion(const Fluid& fluid, double from_degC, double to_degC)
{
    return fluid.at(from_degC).density_kg_per_m3 / fluid.at(to_degC).density_kg_per_m3 - 1;
}

} // namespace siphonwright
