#include "core/layout/wording.h"
#include "core/physics/heat_loss.h"
#include "core/running/running.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// A box round the engine is wider than its jacket by so much on each side (own estimate).
constexpr double beside_jacket_mm = 100;

Thermostat thermostatOf(const Heater& heater, const Assumptions& assumed)
{
    Thermostat out;
    switch (heater.thermostat) {
    case HeaterThermostat::inlet:
        out.place = ThermostatPlace::chamber_inlet;
        break;
    case HeaterThermostat::outlet:
        out.place = ThermostatPlace::chamber_outlet;
        break;
    case HeaterThermostat::remote:
        out.place = ThermostatPlace::remote;
        break;
    }
    out.on_degC = heater.on_degC.value.value_or(assumed[Assumed::thermostat_on]);
    out.off_degC = heater.off_degC.value.value_or(assumed[Assumed::thermostat_off]);
    out.sensing_fraction = assumed[Assumed::sensing_share];
    out.lag_s = assumed[Assumed::thermostat_lag];
    return out;
}

WarmUpHeater heaterOf(const Heater& heater, const Assumptions& assumed)
{
    WarmUpHeater out;
    out.rated_W = *heater.power_W.value;
    out.rated_V = heater.rated_V.value.value_or(1);
    out.supply_V = heater.actual_V.value.value_or(out.rated_V);
    out.thermostat = thermostatOf(heater, assumed);
    if (heater.cut_out) {
        out.cut_out.reset = heater.cut_out->manual_reset ? CutOutReset::manual : CutOutReset::self;
        out.cut_out.trip_degC = heater.cut_out->trip_degC;
        constexpr double falls_by_K = 20; // usual for a disc (common practice)
        out.cut_out.reset_degC = out.cut_out.trip_degC - falls_by_K;
    }
    out.coolant_L = chamberLitres(heater);
    out.metal_J_per_K = assumed[Assumed::chamber_metal];
    out.own_convection_W_per_K = assumed[Assumed::chamber_convection];
    return out;
}

WarmUpLoop loopOf(const LoopRun& run, const Heater& heater, const Assumptions& assumed)
{
    WarmUpLoop out;
    out.heater = heaterOf(heater, assumed);
    out.chamber = run.circuit.chamber;
    out.return_hose = run.circuit.return_hose;
    out.jacket = run.circuit.jacket;
    out.supply_hose = run.circuit.supply_hose;
    out.return_wall_J_per_K = run.circuit.return_wall_J_per_K;
    out.supply_wall_J_per_K = run.circuit.supply_wall_J_per_K;
    out.return_surface_share = run.circuit.return_surface_share;
    out.swept_share = run.circuit.swept_share;
    return out;
}

/// Loops share the engine: together they cannot reach more than all but a little of it.
void shareEngine(std::vector<WarmUpLoop>& loops)
{
    constexpr double most = 0.95;
    double sum = 0;
    for (const WarmUpLoop& loop : loops)
        sum += loop.swept_share;
    if (sum > most)
        for (WarmUpLoop& loop : loops)
            loop.swept_share *= most / sum;
}

/// The loops that can be computed; of the others what is missing.
void addLoops(EngineWarmUp& out, WarmUpInputs& inputs, const Sketch& sketch, const Running& running,
              const Assumptions& assumed)
{
    for (const LoopRun& run : running.loops) {
        if (run.missing.empty()) {
            inputs.loops.push_back(loopOf(run, *sketch.heater(run.heater), assumed));
            out.heaters.push_back(run.heater);
        } else if (out.missing.empty()) {
            out.missing = run.missing;
            out.missing_of = run.missing_of;
        }
    }
    shareEngine(inputs.loops);
    if (!inputs.loops.empty())
        out.missing.clear();
    else if (out.missing.empty())
        out.missing = "there is no loop with a heater yet";
}

} // namespace

double chamberLitres(const Heater& heater)
{
    const double cylinder_ml = std::numbers::pi / 4 * heater.chamber_bore_mm * heater.chamber_bore_mm *
                               (heater.chamber_top_mm - heater.chamber_bottom_mm) / 1000;
    return heater.chamber_volume_ml.value.value_or(cylinder_ml) / 1000;
}

BlockOf engineBlockOf(const Sketch& sketch, const Assumptions& assumed)
{
    if (!sketch.engine)
        return {std::nullopt, "there is no engine yet"};
    const Engine& engine = *sketch.engine;
    EngineBlock out;
    if (!engine.mass_kg.known() && !engine.displacement_l.known()) {
        return {std::nullopt, "neither the engine's mass nor its displacement is entered"};
    }
    const double mass_kg = engine.mass_kg.known()
                               ? *engine.mass_kg.value
                               : *engine.displacement_l.value * assumed[Assumed::mass_per_litre];
    const bool aluminium = engine.material.value == Material::aluminium;
    out.metal_J_per_K = mass_kg * assumed[aluminium ? Assumed::aluminium_heat : Assumed::iron_heat];
    const std::optional<double> litres = litresInEngine(sketch, assumed);
    if (!litres)
        return {std::nullopt, "neither the engine's coolant volume nor its displacement is entered"};
    out.coolant_L = *litres;
    if (engine.outline.size() < 3) {
        return {std::nullopt, "the engine's outline is not entered"};
    }
    const auto [left, right] = std::minmax_element(engine.outline.begin(), engine.outline.end(),
                                                   [](Vec2 a, Vec2 b) { return a.x < b.x; });
    const auto [low, high] = std::minmax_element(engine.outline.begin(), engine.outline.end(),
                                                 [](Vec2 a, Vec2 b) { return a.z < b.z; });
    const double wind = sketch.site.wind_m_per_s.value.value_or(0) * assumed[Assumed::engine_wind_share];
    const double width_mm = std::abs(engine.jacket_y_to_mm - engine.jacket_y_from_mm) + 2 * beside_jacket_mm;
    const std::optional<double> loss_W_per_K =
        blockLoss_W_per_K(right->x - left->x, width_mm, high->z - low->z, std::max(0.0, wind));
    if (!loss_W_per_K) {
        return {std::nullopt, "the engine's outline has no size"};
    }
    out.loss_W_per_K = *loss_W_per_K * assumed[Assumed::block_loss];
    out.conduction_W_per_K = assumed[Assumed::block_conduction];
    return {out, {}};
}

const LoopOutcome* EngineWarmUp::loopOf(const Id& heater) const
{
    const auto found = std::find(heaters.begin(), heaters.end(), heater);
    const auto index = static_cast<std::size_t>(found - heaters.begin());
    return index < result.loops.size() ? &result.loops[index] : nullptr;
}

EngineWarmUp prepareWarmUp(const Sketch& sketch, const Layout& layout, const Running& running,
                           const Assumptions& assumed)
{
    EngineWarmUp out;
    WarmUpInputs inputs;
    addLoops(out, inputs, sketch, running, assumed);
    if (!out.missing.empty())
        return out;
    if (!sketch.site.ambient_degC.known()) {
        out.missing = "the ambient temperature is not entered";
        return out;
    }
    const BlockOf block = engineBlockOf(sketch, assumed);
    if (!block.block) {
        out.missing = block.missing;
        out.missing_of = {PartKind::engine, {}, 0};
        return out;
    }
    inputs.block = *block.block;
    inputs.air_degC = *sketch.site.ambient_degC.value;
    inputs.start_degC = sketch.plan.start_degC.value_or(inputs.air_degC);
    inputs.target_degC = sketch.plan.target_degC;
    inputs.duration_s = sketch.plan.hours * 3600;
    const double head_mm = layout.levels.cold_min_mm && !layout.heaters.empty()
                               ? *layout.levels.cold_min_mm - layout.heaters.front().outlet_mm
                               : 0;
    inputs.boiling_degC = boilingPoint_degC(sketch, std::max(0.0, head_mm)).value_or(inputs.boiling_degC);
    out.inputs = std::move(inputs);
    return out;
}

EngineWarmUp runWarmUp(const Sketch& sketch, const Layout& layout, const Running& running,
                       const Assumptions& assumed, const WarmUpOptions& options)
{
    EngineWarmUp out = prepareWarmUp(sketch, layout, running, assumed);
    const CoolantOf coolant = coolantOf(sketch, assumed);
    if (out.inputs && coolant.fluid)
        out.result = warmUp(*out.inputs, *coolant.fluid, options);
    return out;
}

} // namespace siphonwright
