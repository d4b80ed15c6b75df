#include "app/demonstration/phases.h"

#include "core/running/running.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

namespace {

constexpr double sample_s = 20;
constexpr double shown_h = 8;
constexpr double least_flow_kg_per_s = 2e-4; ///< less is called nothing
constexpr double said_for_s = 600;           ///< how long an event's words stay

std::string minutes(double s)
{
    const long whole = std::lround(s / 60);
    return whole < 60 ? std::to_string(whole) + " min"
                      : std::to_string(whole / 60) + " h " + std::to_string(whole % 60) + " min";
}

std::string nameOf(const Job& job, const Id& heater)
{
    for (std::size_t i = 0; i < job.loops.size(); ++i)
        if (job.loops[i].heater->id == heater)
            return job.heaterName(i);
    return heater;
}

Quantity perMinute(const Job& job, double flow_kg_per_s, double at_degC)
{
    const double density = job.running.coolant ? job.running.coolant->density(at_degC) : 1000;
    return {std::abs(flow_kg_per_s) / density * 1000 * 60, Unit::litre};
}

/// What the loop does at a moment of the series.
Message stateWords(const Job& job, const std::string& name, const LoopSample& now, double block_degC)
{
    const Quantity block{std::round(block_degC), Unit::degC};
    const Quantity back{std::round(now.return_degC), Unit::degC};
    const Quantity outlet{std::round(now.outlet_degC), Unit::degC};
    const bool flows = std::abs(now.flow_kg_per_s) >= least_flow_kg_per_s;
    if (!flows)
        return {"Nothing goes round: {a} is at {0}, the return at the engine at {1}, the block at {2}.",
                {outlet, back, block},
                {name}};
    if (now.flow_kg_per_s < 0)
        return {"Coolant goes round backward, {0} a minute; {a} is at {1}, the block at {2}.",
                {perMinute(job, now.flow_kg_per_s, now.outlet_degC), outlet, block},
                {name}};
    return {
        "Coolant goes round, {0} a minute: it leaves {a} at {1} and comes to the engine at {2}; the block is "
        "at {3}.",
        {perMinute(job, now.flow_kg_per_s, now.outlet_degC), outlet, back, block},
        {name}};
}

/// The same where several heaters have to be told of in one breath.
Message shortWords(const Job& job, const std::string& name, const LoopSample& now)
{
    const Quantity outlet{std::round(now.outlet_degC), Unit::degC};
    const Quantity back{std::round(now.return_degC), Unit::degC};
    if (std::abs(now.flow_kg_per_s) < least_flow_kg_per_s)
        return {"{a}: nothing goes round, it is at {0}, its return at {1}.", {outlet, back}, {name}};
    const Quantity flow = perMinute(job, now.flow_kg_per_s, now.outlet_degC);
    if (now.flow_kg_per_s < 0)
        return {"{a}: {0} a minute backward, it is at {1}.", {flow, outlet}, {name}};
    return {"{a}: {0} a minute, out at {1}, to the engine at {2}.", {flow, outlet, back}, {name}};
}

struct Happening {
    double at_s = 0;
    Message words;
};

std::vector<Happening> happeningsOf(const Job& job, const EngineWarmUp& warm)
{
    std::vector<Happening> out;
    for (std::size_t i = 0; i < warm.heaters.size() && i < warm.result.loops.size(); ++i) {
        const LoopOutcome& loop = warm.result.loops[i];
        const std::string name = nameOf(job, warm.heaters[i]);
        int by_thermostat = 0;
        for (const HeaterSwitch& one : loop.switches) {
            // Off and on again is told once; after that it only goes on so.
            if (one.cause == SwitchCause::thermostat && ++by_thermostat > 2)
                continue;
            const char* words = one.cause == SwitchCause::cut_out   ? "The cut-out of {a} trips."
                                : one.cause == SwitchCause::boiling ? "The coolant in {a} boils."
                                : one.cause == SwitchCause::supply
                                    ? (one.on ? "{a} is switched on." : "The supply of {a} is off.")
                                : one.on ? "The thermostat switches {a} on."
                                         : "The thermostat switches {a} off.";
            out.push_back({one.time_s, {words, {}, {name}}});
        }
        if (loop.return_warm_s)
            out.push_back({*loop.return_warm_s,
                           {"The return of {a} is warm to the hand, after {b}.",
                            {},
                            {name, minutes(*loop.return_warm_s)}}});
    }
    if (warm.result.target_s)
        out.push_back({*warm.result.target_s,
                       {"The block has reached its target of {0}, after {a}.",
                        {{warm.inputs->target_degC, Unit::degC}},
                        {minutes(*warm.result.target_s)}}});
    std::stable_sort(out.begin(), out.end(),
                     [](const Happening& a, const Happening& b) { return a.at_s < b.at_s; });
    return out;
}

/// Temperatures and flow of one moment into what is painted.
void fillIn(Moment& moment, const EngineWarmUp& warm, const WarmUpSample& sample, double cold_degC,
            double hot_degC, std::vector<double>& drift)
{
    moment.contents.jacket_degC = sample.block_degC;
    moment.contents.cold_degC = cold_degC;
    moment.contents.hot_degC = hot_degC;
    for (std::size_t i = 0; i < warm.heaters.size() && i < sample.loops.size(); ++i) {
        const LoopSample& now = sample.loops[i];
        for (drawing::LoopContents& loop : moment.contents.loops) {
            if (loop.heater != warm.heaters[i])
                continue;
            const bool flows = std::abs(now.flow_kg_per_s) >= least_flow_kg_per_s;
            constexpr double drift_per_kg_per_s = 3;
            drift[i] += std::clamp(drift_per_kg_per_s * now.flow_kg_per_s, -0.2, 0.2);
            loop.flow = flows ? now.flow_kg_per_s : 0;
            loop.drift = drift[i];
            loop.energised = now.power_W > 0;
            loop.temperatures =
                drawing::LoopTemperatures{now.swept_degC, now.inlet_degC, now.outlet_degC, now.return_degC};
        }
    }
}

double hottest(const std::vector<WarmUpSample>& series, double at_least_degC)
{
    for (const WarmUpSample& sample : series)
        for (const LoopSample& loop : sample.loops)
            at_least_degC = std::max(at_least_degC, loop.outlet_degC);
    return at_least_degC;
}

/// Whether one loop circulates; `who` is "It", or the heater's name where there are several.
Message verdictOn(const Job& job, const Running& past_air, const LoopRun& run, const EngineWarmUp& warm,
                  const std::string& who)
{
    const Circulation& steady = run.circulation;
    if (!run.missing.empty())
        return {"{a}: it cannot be said, {b}.", {}, {who, run.missing}};
    if (steady.status == CirculationStatus::circulates) {
        const LoopOutcome* outcome = warm.loopOf(run.heater);
        const Quantity flow = perMinute(job, steady.flow_kg_per_s, past_air.block_degC);
        if (outcome && outcome->return_warm_s)
            return {"{a} circulates: about {0} a minute, and the return is warm after {b}.",
                    {flow},
                    {who, minutes(*outcome->return_warm_s)}};
        return {"{a} circulates: about {0} a minute.", {flow}, {who}};
    }
    if (run.without_air && run.without_air->status == CirculationStatus::circulates)
        return {"{a} does not circulate: the air that stays locks it.", {}, {who}};
    if (steady.status == CirculationStatus::reverse)
        return {"{a} runs backward.", {}, {who}};
    if (steady.status == CirculationStatus::closed)
        return {"{a} does not circulate: a valve is shut.", {}, {who}};
    return {"{a} does not circulate.", {}, {who}};
}

/// Every loop; what does not circulate first.
void judge(Job& job, const Running& past_air, const EngineWarmUp& warm)
{
    job.out.circulates = !past_air.loops.empty();
    const bool several = past_air.loops.size() > 1;
    std::vector<Message> sound;
    for (const LoopRun& run : past_air.loops) {
        const bool circulates =
            run.missing.empty() && run.circulation.status == CirculationStatus::circulates;
        job.out.circulates = job.out.circulates && circulates;
        (circulates ? sound : job.out.verdict)
            .push_back(verdictOn(job, past_air, run, warm, several ? nameOf(job, run.heater) : "It"));
    }
    job.out.verdict.insert(job.out.verdict.end(), sound.begin(), sound.end());
    // What only the engine's run has freed is locked again after the next draining.
    if (job.filled_first.network) {
        Running before = job.running;
        passAir(before, job.sketch, job.layout, airIn(job.filled_first, job.plan));
        for (const LoopRun& run : before.loops) {
            const LoopRun* after = past_air.loopOf(run.heater);
            if (run.circulation.status != CirculationStatus::circulates && after &&
                after->circulation.status == CirculationStatus::circulates)
                job.out.verdict.push_back({"Without the engine's run air would lock {a}.",
                                           {},
                                           {several ? nameOf(job, run.heater) : "it"}});
        }
    }
}

/// What every loop does, in the warm-up's order; of several shortly, by the heater's name.
std::vector<Message> statesOf(const Job& job, const EngineWarmUp& warm, const WarmUpSample& sample)
{
    std::vector<Message> states;
    const std::size_t count = std::min(warm.heaters.size(), sample.loops.size());
    for (std::size_t i = 0; i < count; ++i) {
        const std::string name = nameOf(job, warm.heaters[i]);
        states.push_back(count > 1 ? shortWords(job, name, sample.loops[i])
                                   : stateWords(job, name, sample.loops[i], sample.block_degC));
    }
    if (count > 1)
        states.push_back({"The block is at {0}.", {{std::round(sample.block_degC), Unit::degC}}, {}});
    return states;
}

} // namespace

void showEnergised(Job& job)
{
    Running past_air = job.running;
    passAir(past_air, job.sketch, job.layout, airIn(job.filled, job.plan));
    WarmUpOptions options;
    options.sample_every_s = sample_s;
    Sketch shown = job.sketch;
    shown.plan.hours = std::min(shown.plan.hours, shown_h);
    const EngineWarmUp warm = runWarmUp(shown, job.layout, past_air, job.assumed, options);
    judge(job, past_air, warm);
    const std::vector<WarmUpSample>& series = warm.result.series;
    if (series.empty()) {
        job.out.missing = warm.missing.empty() ? "the warm-up could not be computed" : warm.missing;
        return;
    }
    job.begin(PhaseKind::energised, sample_s);
    const auto frame = std::make_shared<const FillFrame>(frameOf(*job.filled.network, job.filled.state));
    const double cold_degC = warm.inputs->start_degC;
    const double hot_degC = hottest(series, std::max(cold_degC + 30, warm.inputs->target_degC));
    const std::vector<Happening> happenings = happeningsOf(job, warm);
    std::vector<double> drift(warm.heaters.size(), 0);
    std::size_t next = 0;
    double said_until_s = -1;
    Message said;
    for (const WarmUpSample& sample : series) {
        bool event = false;
        for (; next < happenings.size() && happenings[next].at_s <= sample.time_s; ++next) {
            said = happenings[next].words;
            said_until_s = happenings[next].at_s + said_for_s;
            event = true;
        }
        Moment& moment = job.add(PhaseKind::energised, frame);
        moment.clock_s = sample.time_s;
        moment.event = event;
        moment.words = sample.time_s < said_until_s ? said : Message{};
        moment.more = statesOf(job, warm, sample);
        fillIn(moment, warm, sample, cold_degC, hot_degC, drift);
    }
}

} // namespace siphonwright::demonstration
