#include "core/running/running.h"

#include "core/layout/wording.h"

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

/// Where a heater's coolant boils; nothing is known of a mixture past the tables, whose end then limits.
double boilingAt(const HeaterLoop& loop, const Sketch& sketch, const Layout& layout, double otherwise)
{
    const double head_mm =
        layout.levels.cold_min_mm ? *layout.levels.cold_min_mm - loop.heights->outlet_mm : 0;
    return boilingPoint_degC(sketch, std::max(0.0, head_mm)).value_or(otherwise);
}

void circulate(LoopRun& run, const Loop& elements, const FluidTable& coolant, LossTables& tables,
               const CirculationOptions& options)
{
    constexpr double l_per_m3 = 1000, s_per_min = 60;
    run.circulation =
        steadyCirculation(elements, LoopResistance(elements.elements, tables), coolant, options);
    if (run.circulation.flow_kg_per_s != 0)
        run.flow_l_per_min = run.circulation.flow_kg_per_s /
                             coolant.density(run.circulation.heater_inlet_degC) * l_per_m3 * s_per_min;
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
    const std::optional<FluidTable> table = coolant.fluid ? FluidTable::of(*coolant.fluid) : std::nullopt;
    for (const HeaterLoop& loop : loopsOf(sketch, layout)) {
        LoopRun run;
        run.heater = loop.heater->id;
        CircuitOf circuit = circuitOf(sketch, layout, loop, assumed);
        run.missing = circuit.missing;
        run.missing_of = circuit.missing_of;
        if (run.missing.empty() && !table)
            run.missing =
                coolant.missing.empty() ? "the coolant's properties are not known" : coolant.missing;
        if (run.missing.empty()) {
            run.circuit = std::move(*circuit.circuit);
            const Loop elements = run.circuit.loop(*actualPower_W(*loop.heater), out.block_degC);
            CirculationOptions with_boiling = options;
            with_boiling.boiling_degC = boilingAt(loop, sketch, layout, options.boiling_degC);
            circulate(run, elements, *table, out.tables, with_boiling);
        }
        out.loops.push_back(std::move(run));
    }
    out.tables.dropOld();
    return out;
}

} // namespace siphonwright
