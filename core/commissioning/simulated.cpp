#include "core/commissioning/simulated.h"

#include "core/physics/latin_hypercube.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double longest_s = 48 * s_per_h;
constexpr double least_A = 1e-3; ///< under it a heater counts as off

/// The nominal assumptions, and a Latin hypercube over those that have a range.
std::vector<Assumptions> sampledAssumptions(const Sketch& sketch, std::size_t samples)
{
    const Assumptions nominal(sketch);
    std::vector<Assumed> uncertain;
    for (std::size_t i = 0; i < assumed_count; ++i) {
        const auto which = static_cast<Assumed>(i);
        if (!nominal.changed(which) && assumptionOf(which).high > assumptionOf(which).low)
            uncertain.push_back(which);
    }
    constexpr std::uint64_t seed = 20261125; // any will do; fixed so that results repeat
    std::vector<Assumptions> out = {nominal};
    for (const std::vector<double>& point : latinHypercube(samples, uncertain.size(), seed)) {
        Assumptions assumed = nominal;
        for (std::size_t i = 0; i < uncertain.size(); ++i) {
            const Assumption& row = assumptionOf(uncertain[i]);
            assumed.set(uncertain[i], row.low + point[i] * (row.high - row.low));
        }
        out.push_back(assumed);
    }
    return out;
}

/// The loops' circuits alone: their steady circulation is not asked for.
Running circuitsAlone(const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    Running out;
    for (const HeaterLoop& loop : loopsOf(sketch, layout)) {
        LoopRun run;
        run.heater = loop.heater->id;
        CircuitOf circuit = circuitOf(sketch, layout, loop, assumed);
        run.missing = circuit.missing;
        run.missing_of = circuit.missing_of;
        if (circuit.circuit)
            run.circuit = std::move(*circuit.circuit);
        out.loops.push_back(std::move(run));
    }
    return out;
}

/// A loop's sample at a time, straight between the two beside it. Power is that of the earlier one: it jumps.
LoopSample sampleAt(const WarmUp& warm, std::size_t loop, double time_s)
{
    const auto after = std::upper_bound(warm.series.begin(), warm.series.end(), time_s,
                                        [](double t, const WarmUpSample& one) { return t < one.time_s; });
    if (after == warm.series.begin())
        return warm.series.front().loops[loop];
    const WarmUpSample& low = *std::prev(after);
    if (after == warm.series.end())
        return low.loops[loop];
    LoopSample out = low.loops[loop];
    const LoopSample& next = after->loops[loop];
    const double share = (time_s - low.time_s) / (after->time_s - low.time_s);
    const auto between = [share](double& value, double to) { value += share * (to - value); };
    between(out.outlet_degC, next.outlet_degC);
    between(out.inlet_degC, next.inlet_degC);
    between(out.return_degC, next.return_degC);
    between(out.return_surface_degC, next.return_surface_degC);
    between(out.swept_degC, next.swept_degC);
    return out;
}

Instant instantOf(const LoopSample& sample, const Heater& heater, const FaultChange& change)
{
    const double drawn_V = heater.actual_V.value.value_or(heater.rated_V.value.value_or(0));
    const double volts = drawn_V * change.voltage_factor;
    const double phases = heater.phases == 3 ? std::sqrt(3.0) : 1.0;
    Instant out{};
    const auto put = [&out](Channel channel, double value) {
        out[static_cast<std::size_t>(channel)] = value;
    };
    put(Channel::inlet, sample.inlet_degC);
    put(Channel::outlet, sample.outlet_degC);
    put(Channel::hose_surface, sample.return_surface_degC);
    put(Channel::engine, sample.swept_degC);
    put(Channel::current, volts > 0 ? sample.power_W / (phases * volts) * change.current_factor : 0);
    put(Channel::voltage, change.supplied ? volts : 0);
    put(Channel::coolant_level, change.level_mm);
    if (change.hoses_exchanged_at_heater) {
        put(Channel::outlet, sample.inlet_degC);
        put(Channel::inlet, sample.return_degC);
    }
    return out;
}

} // namespace

double Course::meanOf(std::size_t time, Channel channel) const
{
    double sum = 0;
    for (const std::vector<Instant>& member : members)
        sum += member[time][static_cast<std::size_t>(channel)];
    return sum / double(members.size());
}

double Course::spreadOf(std::size_t time, Channel channel) const
{
    const double mean = meanOf(time, channel);
    double sum = 0;
    for (const std::vector<Instant>& member : members) {
        const double off = member[time][static_cast<std::size_t>(channel)] - mean;
        sum += off * off;
    }
    return members.size() > 1 ? std::sqrt(sum / double(members.size() - 1)) : 0;
}

double Course::shareOn(std::size_t time) const
{
    const auto on = std::count_if(members.begin(), members.end(), [&](const std::vector<Instant>& member) {
        return member[time][static_cast<std::size_t>(Channel::current)] > least_A;
    });
    return double(on) / double(members.size());
}

SimulatedJob::SimulatedJob(const Sketch& sketch, CourseRequest request)
    : sketch_(sketch), request_(std::move(request))
{
    if (request_.air_degC)
        sketch_.site.ambient_degC = {*request_.air_degC, Source::measured};
    layout_ = resolve(sketch_, plumbOf(sketch_));
    assumed_ = sampledAssumptions(sketch_, request_.samples);
}

Course SimulatedJob::run(const FaultChange& change) const
{
    Course out;
    out.supplied = change.supplied;
    Sketch sketch = sketch_;
    if (change.sketch)
        change.sketch(sketch);
    const Layout layout = change.sketch ? resolve(sketch, plumbOf(sketch), &layout_) : layout_;
    for (const Assumptions& assumed : assumed_) {
        out.missing = runOnce(sketch, layout, assumed, change, out);
        if (!out.missing.empty())
            break;
    }
    return out;
}

std::string SimulatedJob::runOnce(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                                  const FaultChange& change, Course& out) const
{
    EngineWarmUp warm = prepareWarmUp(sketch, layout, circuitsAlone(sketch, layout, assumed), assumed);
    if (!warm.inputs)
        return warm.missing;
    const auto found = std::find(warm.heaters.begin(), warm.heaters.end(), request_.heater);
    const Heater* heater = sketch.heater(request_.heater);
    if (found == warm.heaters.end() || !heater)
        return "the loop of this heater is not computed";
    const CoolantOf coolant = coolantOf(sketch, assumed);
    if (!coolant.fluid)
        return coolant.missing.empty() ? "the coolant's properties are not known" : coolant.missing;
    const auto loop = static_cast<std::size_t>(found - warm.heaters.begin());
    WarmUpInputs& inputs = *warm.inputs;
    if (change.loop)
        change.loop(inputs.loops[loop]);
    if (change.job)
        change.job(inputs);
    double last_s = request_.watched_to_s;
    for (const double time_s : request_.times_s)
        last_s = std::max(last_s, time_s);
    inputs.duration_s = std::clamp(last_s * 1.05, 600.0, longest_s);
    WarmUpOptions options; // as loose as bands are computed with
    options.sample_every_s = 60;
    options.relative_tolerance = 1e-4;
    options.absolute_tolerance_K = 1e-2;
    const WarmUp result = warmUp(inputs, *coolant.fluid, options);
    if (result.series.empty() || result.status == WarmUpStatus::invalid_input)
        return format(result.message, UnitSystem::metric);
    readOff(result, loop, *heater, change, out);
    return {};
}

/// Three members: a little before, at, and a little after the times.
void SimulatedJob::readOff(const WarmUp& warm, std::size_t loop, const Heater& heater,
                           const FaultChange& change, Course& out) const
{
    for (const double side : {-1.0, 0.0, 1.0}) {
        std::vector<Instant> member;
        for (const double time_s : request_.times_s) {
            const double about_s = std::min(time_s, longest_s);
            const double off_s = side * std::max(60.0, 0.03 * about_s); // own choice
            member.push_back(instantOf(sampleAt(warm, loop, std::max(0.0, about_s + off_s)), heater, change));
        }
        out.members.push_back(std::move(member));
    }
    double starts = 0;
    for (const HeaterSwitch& one : warm.loops[loop].switches)
        if (one.on && one.time_s >= request_.watched_from_s && one.time_s <= request_.watched_to_s)
            ++starts;
    out.starts.push_back(starts);
}

} // namespace siphonwright
