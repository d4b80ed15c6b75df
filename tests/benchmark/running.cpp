#include "tests/benchmark/timing.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/sketch/file.h"

#include <cstdio>
#include <string>
#include <variant>

/// How long it takes to compute how a drawn job runs: live, in the proof's stages, and as a batch.
namespace {

using namespace siphonwright;
using timing::line;
using timing::median_us;

/// The sound loop with a second heater, ports and hoses beside the first.
Sketch twoHeaters()
{
    Sketch sketch = test::soundLoop();
    sketch.ports.push_back(sketch.ports[0]);
    sketch.ports.push_back(sketch.ports[1]);
    sketch.ports[2].id = "port-3";
    sketch.ports[3].id = "port-4";
    sketch.heaters.push_back(sketch.heaters[0]);
    sketch.heaters[1].id = "heater-2";
    for (std::size_t i = 0; i < 2; ++i) {
        Hose hose = *sketch.hoses[i];
        hose.id += "-b";
        for (HoseEnd* end : {&hose.from, &hose.to}) {
            if (!end->port.empty())
                end->port = end->port == "port-1" ? "port-3" : "port-4";
            if (!end->heater.empty())
                end->heater = "heater-2";
        }
        sketch.hoses.push_back(Shared<Hose>(hose));
    }
    return sketch;
}

double live(const char* name, const Sketch& sketch, double reference_us)
{
    const Analysis before = analyse(sketch);
    const Assumptions assumed(sketch);
    double sum = 0; // printed, so that no call is left out
    std::printf("%s\n", name);
    line("  steady circulation, first time",
         median_us(300, [&] { sum += runSteady(sketch, before.layout, assumed).block_degC; }), reference_us);
    line(
        "  the same after an analysis",
        median_us(300, [&] { sum += runSteady(sketch, before.layout, assumed, &before.running).block_degC; }),
        reference_us);
    line("  analyse, first time", median_us(300, [&] { sum += analyse(sketch).running.block_degC; }),
         reference_us);
    Sketch changed = sketch;
    line("  analyse, one hose changed since",
         median_us(300,
                   [&] {
                       changed.hoses[0].edit([](Hose& h) { h.points[0].at.z += 0.01; });
                       sum += analyse(changed, &before).running.block_degC;
                   }),
         reference_us);
    return sum;
}

double stages(const char* name, const Sketch& sketch, double reference_us)
{
    const Analysis level = analyse(sketch);
    const Assumptions assumed(sketch);
    const std::stop_token never;
    double sum = 0;
    std::printf("%s\n", name);
    line("  warm-up of a day, with its series",
         median_us(20,
                   [&] { sum += runWarmUp(sketch, level.layout, level.running, assumed).result.energy_J; }),
         reference_us);
    line("  findings over the envelope",
         median_us(10, [&] { sum += double(findingsOnEnvelope(sketch, level.layout, never).size()); }),
         reference_us);
    line("  sound grades",
         median_us(10,
                   [&] {
                       const auto sound = soundGrades(sketch, level.layout, never);
                       sum += sound ? sound->high_percent : 0;
                   }),
         reference_us);
    line("  table by bore", median_us(5, [&] { sum += double(byBore(sketch).size()); }), reference_us);
    const Filling clean;
    line("  bands of 200 samples",
         median_us(3, [&] { sum += double(runningBands(sketch, level.layout, clean).size()); }),
         reference_us);
    ProofOptions without;
    without.bands = false;
    line("  prove without bands",
         median_us(5, [&] { sum += double(prove(sketch, level, without)->sag.size()); }), reference_us);
    ProofOptions with_bands;
    with_bands.bands = true;
    line("  prove with bands",
         median_us(3, [&] { sum += double(prove(sketch, level, with_bands)->sag.size()); }), reference_us);
    return sum;
}

/// A thousand different files read, checked on level and grades, and warmed up for a day.
double batch(double reference_us)
{
    constexpr int sketches = 1000;
    ProofOptions options;
    options.bands = false;
    double sum = 0;
    const double took_us = median_us(1, [&] {
        for (int i = 0; i < sketches; ++i) {
            Sketch sketch = test::soundLoop();
            sketch.hoses[test::return_hose].edit([&](Hose& h) { h.points[0].at.z -= 0.1 * i; });
            const auto text = writeSketch(sketch);
            const auto read = readSketch(std::get<std::string>(text));
            sum += double(proved(std::get<Sketch>(read), options).findings.size());
        }
    });
    line("check of 1,000 sketches", took_us, reference_us);
    return sum;
}

} // namespace

int main()
{
    const double reference_us = timing::reference_us();
    double sum = live("sound loop", test::soundLoop(), reference_us);
    sum += live("two heaters", twoHeaters(), reference_us);
    sum += stages("proof: sound loop", test::soundLoop(), reference_us);
    sum += stages("proof: two heaters", twoHeaters(), reference_us);
    sum += batch(reference_us);
    std::printf("sum of results: %g\n", sum);
    return 0;
}
