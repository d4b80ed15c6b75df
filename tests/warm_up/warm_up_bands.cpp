#include "tests/warm_up/warm_up_bands.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

double valueOf(const std::vector<double>& values, WarmUpAssumption which)
{
    return values[static_cast<std::size_t>(which)];
}

void scaleExchange(std::vector<LoopElement>& run, double factor)
{
    for (LoopElement& element : run)
        element.heat.exchange_W_per_K *= factor;
}

void vary(WarmUpLoop& loop, const std::vector<double>& values)
{
    const auto value = [&](WarmUpAssumption which) { return valueOf(values, which); };
    for (auto* run : {&loop.chamber, &loop.return_hose, &loop.supply_hose})
        scaleExchange(*run, value(WarmUpAssumption::hose_loss));
    scaleExchange(loop.jacket,
                  value(WarmUpAssumption::jacket_exchange) * value(WarmUpAssumption::swept_share));
    for (LoopElement& element : loop.chamber) {
        if (element.share_at_outlet)
            element.share_at_outlet = std::clamp(value(WarmUpAssumption::share_at_outlet), 0.0, 1.0);
    }
    loop.loss_factor *= value(WarmUpAssumption::pressure_loss);
    loop.swept_share = std::clamp(loop.swept_share * value(WarmUpAssumption::swept_share), 0.02, 0.98);
    WarmUpHeater& heater = loop.heater;
    heater.own_convection_W_per_K *= value(WarmUpAssumption::own_convection);
    heater.thermostat.sensing_fraction = std::clamp(value(WarmUpAssumption::sensing_fraction), 0.0, 1.0);
    heater.thermostat.lag_s *= value(WarmUpAssumption::thermostat_lag);
}

/// The extreme of what each heater has; nothing when none has any.
template <typename Of, typename Better>
std::optional<double> over(const WarmUp& warm, Of&& of, Better&& better)
{
    std::optional<double> best;
    for (const LoopOutcome& loop : warm.loops) {
        const std::optional<double> one = of(loop);
        if (one && (!best || better(*one, *best)))
            best = one;
    }
    return best;
}

Outputs outputsOf(const WarmUp& warm)
{
    Outputs outputs(static_cast<std::size_t>(WarmUpOutput::count));
    if (warm.status != WarmUpStatus::done && warm.status != WarmUpStatus::boiling)
        return outputs;
    const auto put = [&](WarmUpOutput which, std::optional<double> value) {
        outputs[static_cast<std::size_t>(which)] = value;
    };
    const auto more = [](double a, double b) { return a > b; };
    const auto less = [](double a, double b) { return a < b; };
    using Loop = LoopOutcome;
    put(WarmUpOutput::peak_outlet_degC, over(
                                            warm, [](const Loop& l) { return l.peak_outlet_degC; }, more));
    put(WarmUpOutput::cycles_per_hour,
        over(
            warm, [](const Loop& l) { return std::optional(l.cycles_per_hour); }, more));
    put(WarmUpOutput::target_s, warm.target_s);
    put(WarmUpOutput::block_at_end_degC, warm.block_at_end_degC);
    put(WarmUpOutput::energy_joules, warm.energy_J);
    put(WarmUpOutput::boiling_margin_kelvin,
        over(
            warm, [](const Loop& l) { return l.boiling_margin_K; }, less));
    put(WarmUpOutput::return_warm_s, over(
                                         warm, [](const Loop& l) { return l.return_warm_s; }, more));
    put(WarmUpOutput::most_flow_kg_per_s,
        over(
            warm, [](const Loop& l) { return std::optional(l.most_flow_kg_per_s); }, less));
    return outputs;
}

} // namespace

std::vector<UncertainFigure> warmUpAssumptions()
{
    const Spread log = Spread::logarithmic, peaked = Spread::peaked;
    return {
        {"block_loss", "own estimate: a box's area for an engine's, film after McAdams 1954 within 25 %", log,
         0.7, 1.4, 1},
        {"block_capacity", "iron 460-540 J/kg K (memory); weight as stated within 10 %", peaked, 0.85, 1.15,
         1},
        {"hose_loss", "Churchill and Chu 1975, Churchill and Bernstein 1977: 10-25 %", log, 0.75, 1.33, 1},
        {"pressure_loss", "hose ends put +-15 % on the flow, small fittings +-35 % on their loss", log, 0.75,
         1.35, 1},
        {"swept_share", "own choice", peaked, 0.75, 1.25, 1},
        {"jacket_exchange", "own estimate of film and wetted area", log, 0.5, 2, 1},
        {"conduction", "own estimate", log, 0.5, 2, 1},
        {"share_at_outlet", "own choice: between cold until its top and mixed", peaked, 0, 1,
         default_share_at_outlet},
        {"own_convection", "own estimate", log, 0.5, 2, 1},
        {"sensing_fraction", "own choice", peaked, 0.15, 0.5, Thermostat{}.sensing_fraction},
        {"thermostat_lag", "own estimate: 20 to 60 s", log, 0.67, 2, 1},
        {"viscosity", "published tables differ by 15 %, at -30 degC by more", log, 0.87, 1.15, 1},
        {"expansion", "published densities differ by under 1 %, their slopes by some 5 %", peaked, 0.95, 1.05,
         1},
        {"specific_heat", "published tables differ by 2 %", peaked, 0.98, 1.02, 1},
    };
}

FactoredFluid::FactoredFluid(const Fluid& of, double viscosity, double expansion, double specific_heat)
    : fluid_(of),
      viscosity_factor_(viscosity),
      expansion_factor_(expansion),
      specific_heat_factor_(specific_heat),
      middle_kg_per_m3_(of.at(20).density_kg_per_m3)
{}

FluidState FactoredFluid::at(double temperature_degC) const
{
    FluidState state = fluid_.at(temperature_degC);
    state.density_kg_per_m3 =
        middle_kg_per_m3_ + expansion_factor_ * (state.density_kg_per_m3 - middle_kg_per_m3_);
    state.viscosity_Pa_s *= viscosity_factor_;
    state.specific_heat_J_per_kg_K *= specific_heat_factor_;
    return state;
}

WarmUpInputs varied(const WarmUpInputs& inputs, const std::vector<double>& values)
{
    WarmUpInputs sample = inputs;
    if (values.size() != static_cast<std::size_t>(WarmUpAssumption::count))
        return sample;
    sample.block.loss_W_per_K *= valueOf(values, WarmUpAssumption::block_loss);
    sample.block.metal_J_per_K *= valueOf(values, WarmUpAssumption::block_capacity);
    sample.block.conduction_W_per_K *= valueOf(values, WarmUpAssumption::conduction);
    double swept = 0;
    for (WarmUpLoop& loop : sample.loops) {
        vary(loop, values);
        swept += loop.swept_share;
    }
    constexpr double most_swept = 0.98;
    if (swept > most_swept) {
        for (WarmUpLoop& loop : sample.loops)
            loop.swept_share *= most_swept / swept;
    }
    return sample;
}

Bands warmUpBands(const WarmUpInputs& inputs, const Fluid& fluid,
                  const std::vector<UncertainFigure>& assumptions, const WarmUpOptions& options,
                  const BandOptions& band_options, const std::stop_token& stop)
{
    Bands refused;
    refused.message = problemIn(inputs, options);
    if (refused.message.pattern.empty() &&
        assumptions.size() != static_cast<std::size_t>(WarmUpAssumption::count))
        refused.message.pattern = "A warm-up's bands take one range for each of its assumptions.";
    if (!refused.message.pattern.empty())
        return refused;
    WarmUpOptions without_series = options;
    without_series.sample_every_s = 0;
    const auto sample = [&](const std::vector<double>& values) {
        const FactoredFluid factored(fluid, valueOf(values, WarmUpAssumption::viscosity),
                                     valueOf(values, WarmUpAssumption::expansion),
                                     valueOf(values, WarmUpAssumption::specific_heat));
        return outputsOf(warmUp(varied(inputs, values), factored, without_series));
    };
    return bandsOf(assumptions, sample, band_options, stop);
}

} // namespace siphonwright
