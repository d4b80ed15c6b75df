#include "core/running/running_bands.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <thread>
#include <utility>

namespace siphonwright {
namespace {

/// The assumptions that have a spread in this sketch.
std::vector<Assumed> uncertainIn(const Assumptions& assumed)
{
    std::vector<Assumed> out;
    for (std::size_t i = 0; i < assumed_count; ++i) {
        const auto which = static_cast<Assumed>(i);
        if (!assumed.changed(which) && assumptionOf(which).high > assumptionOf(which).low)
            out.push_back(which);
    }
    return out;
}

std::vector<UncertainFigure> figuresOf(const std::vector<Assumed>& uncertain)
{
    std::vector<UncertainFigure> out;
    for (const Assumed which : uncertain) {
        const Assumption& row = assumptionOf(which);
        UncertainFigure figure;
        figure.name = std::string(row.id);
        figure.basis = std::string(row.basis);
        figure.low = row.low;
        figure.high = row.high;
        out.push_back(std::move(figure));
    }
    return out;
}

/// One sample: flow of each loop at the shown block temperature, then the warm-up's results.
Outputs sampleOf(const Sketch& sketch, const Layout& layout, const Filling& filling,
                 const Assumptions& assumed, const std::vector<Id>& heaters, const Running& nominal)
{
    Outputs out(heaters.size() * banded_count);
    CirculationOptions flow_alone;
    flow_alone.details = false;
    flow_alone.look_for_others = false;
    Running running = runSteady(sketch, layout, assumed, &nominal, flow_alone);
    passAir(running, sketch, layout, filling);
    // Loose beside what is assumed, and quicker than what the nominal result takes.
    WarmUpOptions options;
    options.sample_every_s = 0;
    options.relative_tolerance = 1e-4;
    options.absolute_tolerance_K = 1e-2;
    const EngineWarmUp warm = runWarmUp(sketch, layout, running, assumed, options);
    for (std::size_t i = 0; i < heaters.size(); ++i) {
        const auto set = [&](Banded which, std::optional<double> value) {
            out[i * banded_count + static_cast<std::size_t>(which)] = value;
        };
        const LoopRun* run = running.loopOf(heaters[i]);
        if (run && run->missing.empty())
            set(Banded::flow_kg_per_s, run->circulation.flow_kg_per_s);
        if (const LoopOutcome* outcome = warm.loopOf(heaters[i])) {
            set(Banded::peak_outlet_degC, outcome->peak_outlet_degC);
            set(Banded::cycles_per_hour, outcome->cycles_per_hour);
            set(Banded::energy_kWh, outcome->energy_J / J_per_kWh);
            set(Banded::block_at_end_degC, warm.result.block_at_end_degC);
        }
        if (warm.result.target_s)
            set(Banded::target_h, *warm.result.target_s / 3600);
    }
    return out;
}

std::optional<ResultBand> resultOf(const Band& band, const std::vector<Assumed>& uncertain,
                                   std::size_t samples)
{
    if (band.samples == 0)
        return std::nullopt;
    ResultBand out{band.p5, band.p50, band.p95, double(band.samples) / double(samples), {}};
    // One in a thousand figures that have nothing to do with the result gets so far by chance: some hundred
    // and sixty are compared.
    const double chance = 3.3 / std::sqrt(double(band.samples));
    for (const Driver& driver : band.drivers)
        if (std::abs(driver.rank_correlation) > chance)
            out.drivers.push_back(uncertain[driver.assumption]);
    return out;
}

/// Each sample of several heaters takes that much longer; half as many still say where the bands end, and
/// come in time to be looked at.
std::size_t samplesFor(std::size_t heaters, std::size_t of_one_heater)
{
    return heaters == 1 ? of_one_heater : (of_one_heater + 1) / 2;
}

} // namespace

std::vector<HeaterBands> runningBands(const Sketch& sketch, const Layout& layout, const Filling& filling,
                                      const std::stop_token& stop, std::size_t samples)
{
    const Assumptions nominal(sketch);
    std::vector<Id> heaters;
    const Running running = runSteady(sketch, layout, nominal);
    for (const LoopRun& run : running.loops)
        if (run.missing.empty())
            heaters.push_back(run.heater);
    if (heaters.empty())
        return {};
    const std::vector<Assumed> uncertain = uncertainIn(nominal);
    const auto sample = [&](const std::vector<double>& values) {
        Assumptions assumed = nominal;
        for (std::size_t i = 0; i < uncertain.size(); ++i)
            assumed.set(uncertain[i], values[i]);
        return sampleOf(sketch, layout, filling, assumed, heaters, running);
    };
    BandOptions options;
    options.samples = samplesFor(heaters.size(), samples);
    constexpr unsigned most_threads = 4;
    options.threads = std::clamp(std::thread::hardware_concurrency(), 1U, most_threads);
    const Bands bands = bandsOf(figuresOf(uncertain), sample, options, stop);
    if (bands.status != BandStatus::done)
        return {};
    std::vector<HeaterBands> out;
    for (std::size_t i = 0; i < heaters.size(); ++i) {
        HeaterBands of_heater;
        of_heater.heater = heaters[i];
        for (std::size_t k = 0; k < banded_count; ++k)
            of_heater.results[k] = resultOf(bands.outputs[i * banded_count + k], uncertain, options.samples);
        out.push_back(std::move(of_heater));
    }
    return out;
}

} // namespace siphonwright
