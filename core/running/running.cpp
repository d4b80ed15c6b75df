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

Running runSteady(const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    Running out;
    out.block_degC = assumed[Assumed::shown_block];
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
            CirculationOptions options;
            const double head_mm =
                layout.levels.cold_min_mm ? *layout.levels.cold_min_mm - loop.heights->outlet_mm : 0;
            options.boiling_degC =
                boilingPoint_degC(sketch, std::max(0.0, head_mm)).value_or(options.boiling_degC);
            run.circulation = steadyCirculation(elements, LoopResistance(elements.elements), *table, options);
        }
        out.loops.push_back(std::move(run));
    }
    return out;
}

} // namespace siphonwright
