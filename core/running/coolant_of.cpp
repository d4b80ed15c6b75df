#include "core/running/coolant_of.h"

#include "core/physics/boiling.h"

#include <utility>

namespace siphonwright {
namespace {

CoolantBase baseOf(Glycol glycol)
{
    return glycol == Glycol::propylene ? CoolantBase::propylene_glycol : CoolantBase::ethylene_glycol;
}

/// Share of antifreeze, percent: none in plain water.
std::optional<double> shareOf(const Coolant& coolant)
{
    return coolant.glycol == Glycol::none ? 0.0 : coolant.volume_percent.value;
}

} // namespace

AssumedCoolant::AssumedCoolant(GlycolWater coolant, double viscosity_factor, double buoyancy_factor)
    : coolant_(std::move(coolant)),
      viscosity_factor_(viscosity_factor),
      buoyancy_factor_(buoyancy_factor),
      density_at_20_(coolant_.at(20).density_kg_per_m3)
{}

FluidState AssumedCoolant::at(double temperature_degC) const
{
    FluidState state = coolant_.at(temperature_degC);
    state.viscosity_Pa_s *= viscosity_factor_;
    state.density_kg_per_m3 = density_at_20_ + buoyancy_factor_ * (state.density_kg_per_m3 - density_at_20_);
    return state;
}

CoolantOf coolantOf(const Sketch& sketch, const Assumptions& assumed)
{
    const Coolant& coolant = sketch.coolant;
    if (coolant.glycol == Glycol::unknown)
        return {std::nullopt, "the kind of antifreeze is not entered"};
    const std::optional<double> percent = shareOf(coolant);
    if (!percent)
        return {std::nullopt, "the share of antifreeze in the coolant is not entered"};
    std::optional<GlycolWater> mixture = GlycolWater::ofVolume(baseOf(coolant.glycol), *percent);
    if (!mixture)
        return {std::nullopt, "properties of coolant are known only up to 60 % of antifreeze"};
    return {AssumedCoolant(std::move(*mixture), assumed[Assumed::viscosity], assumed[Assumed::buoyancy]), {}};
}

std::optional<double> boilingPoint_degC(const Sketch& sketch, double head_mm)
{
    const std::optional<double> percent = shareOf(sketch.coolant);
    if (!percent)
        return std::nullopt;
    CoolingSystem system;
    system.altitude_m = sketch.site.altitude_m.value.value_or(0);
    system.cap_gauge_Pa = sketch.coolant.cap_pressure_kPa.value.value_or(0) * 1000;
    system.head_m = head_mm / 1000;
    system.density_kg_per_m3 = 1000; // of the standing column: near enough for a head under 2 m
    const std::optional<double> pressure_Pa = coolantPressure_Pa(system);
    if (!pressure_Pa)
        return std::nullopt;
    return boilingPoint_degC(baseOf(sketch.coolant.glycol), *percent, *pressure_Pa);
}

} // namespace siphonwright
