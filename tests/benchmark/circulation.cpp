#include "tests/benchmark/timing.h"
#include "tests/circulation/random_loops.h"

#include "core/physics/circulation.h"
#include "core/physics/fluid_table.h"

#include <cstdio>

/// How long the steady circulation of a loop of 40 elements takes. circulation.py solves the same loop in a
/// straightforward way.
namespace {

using namespace siphonwright;
using namespace siphonwright::test;
using timing::line;
using timing::median_us;

/// Two hoses of 19 pieces each, chamber and jacket.
Loop loopOfForty()
{
    SoundLoop sound;
    sound.pieces = 19;
    return sound.loop();
}

} // namespace

int main()
{
    const double reference_us = timing::reference_us();
    const HalfGlycol liquid;
    line("coolant table", median_us(300, [&] { (void)FluidTable::of(liquid); }), reference_us);
    const FluidTable coolant = FluidTable::of(liquid).value();
    const Loop loop = loopOfForty();
    std::printf("%zu elements\n", loop.elements.size());
    line("resistance tables", median_us(300, [&] { (void)LoopResistance(loop.elements); }), reference_us);
    const LoopResistance resistance(loop.elements);
    double sum = 0; // printed, so that no call is left out
    CirculationOptions options;
    const Circulation found = steadyCirculation(loop, resistance, coolant, options);
    std::printf("%.6f kg/s, outlet %.3f degC, %d evaluations\n", found.flow_kg_per_s,
                found.heater_outlet_degC, found.iterations);
    const auto solve = [&] { sum += steadyCirculation(loop, resistance, coolant, options).flow_kg_per_s; };
    line("search, both directions", median_us(1000, solve), reference_us);
    options.look_for_others = false;
    line("search, the forward state alone", median_us(1000, solve), reference_us);
    options.details = false;
    line("the same without details", median_us(1000, solve), reference_us);
    for (const double off : {1.001, 1.02, 1.2}) {
        options.start_flow_kg_per_s = off * found.flow_kg_per_s;
        char what[64];
        std::snprintf(what, sizeof what, "start %.1f %% off, %d evaluations", 100 * (off - 1),
                      steadyCirculation(loop, resistance, coolant, options).iterations);
        line(what, median_us(3000, solve), reference_us);
    }
    const std::vector<FluidState> states(loop.elements.size(), liquid.at(30));
    line("flow for a drive, start 2 % off",
         median_us(3000, [&] { sum += resistance.flowFor(100, states, 0.0102).flow_kg_per_s; }),
         reference_us);
    std::printf("flows added up: %g\n", sum);
    return 0;
}
