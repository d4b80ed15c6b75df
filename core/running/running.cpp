#include "core/running/running.h"

#include "core/layout/wording.h"
#include "core/running/narrowing.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

const LoopRun* Running::loopOf(const Id& heater) const
{
    const auto found =
        std::find_if(loops.begin(), loops.end(), [&](const LoopRun& run) { return run.heater == heater; });
    return found == loops.end() ? nullptr : &*found;
}

std::optional<double> actualPower_W(const Heater& heater)
{
    if (!heater.power_W.known())
        return std::nullopt;
    const double rated_V = heater.rated_V.value.value_or(1);
    const double actual_V = heater.actual_V.value.value_or(rated_V);
    return rated_V > 0 ? *heater.power_W.value * (actual_V / rated_V) * (actual_V / rated_V)
                       : *heater.power_W.value;
}

namespace {

/// What steadyCirculation() is asked with for a loop.
CirculationOptions optionsFor(const Sketch& sketch, const Layout& layout, const HeaterLoop& loop,
                              CirculationOptions options = {})
{
    const double head_mm =
        layout.levels.cold_min_mm ? *layout.levels.cold_min_mm - loop.heights->outlet_mm : 0;
    options.boiling_degC = boilingPoint_degC(sketch, std::max(0.0, head_mm)).value_or(options.boiling_degC);
    return options;
}

} // namespace

Running runSteady(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                  const Running* previous, const CirculationOptions& options)
{
    Running out;
    out.block_degC = assumed[Assumed::shown_block];
    if (previous)
        out.tables = previous->tables;
    out.tables.age();
    const CoolantOf coolant = coolantOf(sketch, assumed);
    if (const std::optional<FluidTable> table = coolant.fluid ? FluidTable::of(*coolant.fluid) : std::nullopt)
        out.coolant = std::make_shared<const FluidTable>(*table);
    for (const HeaterLoop& loop : loopsOf(sketch, layout)) {
        LoopRun run;
        run.heater = loop.heater->id;
        CircuitOf circuit = circuitOf(sketch, layout, loop, assumed);
        run.missing = circuit.missing;
        run.missing_of = circuit.missing_of;
        if (run.missing.empty() && !out.coolant)
            run.missing =
                coolant.missing.empty() ? "the coolant's properties are not known" : coolant.missing;
        if (run.missing.empty()) {
            run.circuit = std::move(*circuit.circuit);
            const Loop elements = run.circuit.loop(*actualPower_W(*loop.heater), out.block_degC);
            run.resistance = std::make_shared<const LoopResistance>(elements.elements, out.tables);
            run.circulation = steadyCirculation(elements, *run.resistance, *out.coolant,
                                                optionsFor(sketch, layout, loop, options));
        }
        out.loops.push_back(std::move(run));
    }
    out.tables.dropOld();
    return out;
}

void passAir(Running& running, const Sketch& sketch, const Layout& layout, const Filling& filling)
{
    for (const HeaterLoop& loop : loopsOf(sketch, layout)) {
        const auto run = std::find_if(running.loops.begin(), running.loops.end(),
                                      [&](const LoopRun& one) { return one.heater == loop.heater->id; });
        if (run == running.loops.end() || !run->missing.empty())
            continue;
        double forward_mm = 0;
        double reverse_mm = 0;
        for (const PocketFound& pocket : filling.pockets)
            if (pocket.heater == run->heater) {
                const double narrowed_mm =
                    narrowingHead_mm(pocket.bore_mm, pocket.open_share, run->circulation.flow_kg_per_s,
                                     filling.density_kg_per_m3);
                forward_mm += pocket.height_mm + narrowed_mm;
                reverse_mm += pocket.reverse_mm + narrowed_mm;
            }
        if (forward_mm <= 0 && reverse_mm <= 0)
            continue;
        run->circuit.return_hose.front().pocket_forward_m = forward_mm / 1000;
        run->circuit.return_hose.front().pocket_backward_m = reverse_mm / 1000;
        const Loop elements = run->circuit.loop(*actualPower_W(*loop.heater), running.block_degC);
        run->without_air = std::move(run->circulation);
        run->resistance = std::make_shared<const LoopResistance>(elements.elements, running.tables);
        run->circulation =
            steadyCirculation(elements, *run->resistance, *running.coolant, optionsFor(sketch, layout, loop));
    }
}

} // namespace siphonwright
