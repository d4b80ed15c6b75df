#include "app/demonstration/phases.h"

#include "core/running/coolant_of.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::demonstration {

namespace {

constexpr int running_moments = 24;
constexpr int standing_moments = 12;
constexpr int top_up_moments = 30;
constexpr double drift_per_moment = 0.12;

std::vector<PumpFlow> flowsOf(const Job& job)
{
    std::vector<PumpFlow> flows;
    for (const HeaterLoop& loop : job.loops) {
        const LoopRun* run = job.running.loopOf(loop.heater->id);
        PumpFlow flow;
        if (run && run->missing.empty() && job.running.coolant)
            flow = pumpFlow(job.sketch, loop, *run, *job.running.coolant, job.assumed);
        flows.push_back(flow);
    }
    return flows;
}

Message flowWords(const Job& job, std::size_t loop, const PumpFlow& flow)
{
    if (flow.flow_l_per_min <= 0)
        return {"The engine runs; its pump drives nothing through {a}.", {}, {job.heaterName(loop)}};
    const Quantity per_minute{flow.flow_l_per_min, Unit::litre};
    return flow.sense == FlowSense::reverse
               ? Message{"The engine runs: its pump draws {0} a minute backward through {a}.",
                         {per_minute},
                         {job.heaterName(loop)}}
               : Message{"The engine runs: its pump drives {0} a minute through {a}.",
                         {per_minute},
                         {job.heaterName(loop)}};
}

Message pocketWords(const Job& job, const PurgedPocket& one)
{
    const std::string place = job.hoseName(one.pocket.loop, one.pocket.part);
    const std::vector<Quantity> numbers = {{one.pocket.gas_ml, Unit::ml},
                                           {one.velocity_m_per_s, Unit::m_per_s},
                                           {one.clears.least_m_per_s, Unit::m_per_s}};
    if (one.pocket.part == LoopPart::chamber)
        return {
            "{0} of air in {a} stays: no flow through a hose takes it out of a chamber.", numbers, {place}};
    switch (one.verdict) {
    case Clearing::cleared:
        return {"{0} of air in {a} goes: coolant at {1} carries it down and out.", numbers, {place}};
    case Clearing::may_clear:
        return {"{0} of air in {a} may go or stay: coolant at {1} is about what it takes. Here it stays.",
                numbers,
                {place}};
    case Clearing::stays:
        break;
    }
    return {"{0} of air in {a} stays: coolant runs at {1}, and it takes {2} at least to carry it down.",
            numbers,
            {place}};
}

void drift(Moment& moment, const std::vector<PumpFlow>& flows, int step)
{
    for (std::size_t i = 0; i < flows.size() && i < moment.contents.loops.size(); ++i) {
        const double sense = flows[i].sense == FlowSense::reverse ? -1 : 1;
        moment.contents.loops[i].flow = sense * flows[i].flow_l_per_min;
        moment.contents.loops[i].drift = sense * drift_per_moment * step;
    }
}

/// Lets go what is cleared, keeping a frame whenever a few per cent more of it have gone.
void letGo(Job& job, const std::vector<char>& cleared, const std::vector<PumpFlow>& flows, int& step)
{
    constexpr double all_gone = 36; // as a power of e
    const FillNetwork& network = *job.filled.network;
    FillRun run(network, job.filled.state);
    const auto gasIn = [&](const FillState& state) {
        double gas_ml = 0;
        for (std::size_t i = 1; i < cleared.size(); ++i)
            if (cleared[i])
                gas_ml += network.cells[i].capacity_ml - state.cells[i].liquid_ml;
        return gas_ml;
    };
    const double step_ml = std::max(0.05, gasIn(job.filled.state) / 40);
    double kept_ml = gasIn(job.filled.state);
    Push push;
    push.gas_leaves = &cleared;
    std::vector<FillRun::Step> steps;
    run.keepSteps(&steps);
    if (run.run(push, all_gone, 8) == RunEnd::failed)
        return;
    for (const FillRun::Step& taken : steps) {
        if (kept_ml - gasIn(taken.start) < step_ml)
            continue;
        kept_ml = gasIn(taken.start);
        drift(
            job.add(PhaseKind::engine_runs, std::make_shared<const FillFrame>(frameOf(network, taken.start))),
            flows, step++);
    }
    job.filled.state = run.state();
}

} // namespace

void showEngineRunning(Job& job)
{
    job.begin(PhaseKind::engine_runs, shown_moment_s);
    PurgeRequest request;
    request.flows = flowsOf(job);
    request.top_up_level_mm = job.level_mm;
    const PurgeResult purged = purge(job.filled, request);
    const auto now = [&] {
        return std::make_shared<const FillFrame>(frameOf(*job.filled.network, job.filled.state));
    };
    int step = 0;
    const auto show = [&](std::optional<Message> words) {
        const auto frame = now();
        for (int i = 0; i < running_moments; ++i)
            drift(job.add(PhaseKind::engine_runs, frame, i == 0 ? std::move(words) : std::nullopt),
                  request.flows, step++);
    };
    for (std::size_t i = 0; i < job.loops.size(); ++i)
        show(flowWords(job, i, request.flows[i]));
    std::vector<char> cleared(job.filled.network->cells.size(), 0);
    constexpr double worth_saying_ml = 1;
    double goes_ml = 0;
    for (const PurgedPocket& one : purged.pockets) {
        if (one.pocket.gas_ml >= worth_saying_ml)
            show(pocketWords(job, one));
        if (one.verdict != Clearing::cleared)
            continue;
        goes_ml += one.pocket.gas_ml;
        for (const std::size_t cell : one.pocket.cells)
            cleared[cell] = 1;
    }
    if (std::find(cleared.begin(), cleared.end(), 1) == cleared.end() || purged.status != FillStatus::filled)
        return;
    letGo(job, cleared, request.flows, step);
    if (goes_ml >= worth_saying_ml)
        show(Message{"What could be carried off is gone; the level has fallen by as much.", {}, {}});
}

void showToppingUp(Job& job)
{
    job.begin(PhaseKind::topped_up, shown_moment_s);
    const FillNetwork& network = *job.filled.network;
    FillRun run(network, job.filled.state);
    const auto now = [&] { return std::make_shared<const FillFrame>(frameOf(network, run.state())); };
    const double low_mm = run.state().cells[0].level_mm;
    const double before_ml = run.state().poured_ml;
    const auto before = now();
    for (int i = 0; i < standing_moments; ++i)
        job.add(PhaseKind::topped_up, before,
                i == 0 ? std::optional(Message{"The engine is stopped and has cooled down.", {}, {}})
                       : std::nullopt);
    for (int i = 1; i <= top_up_moments; ++i) {
        if (pourTo(network, run, low_mm + (job.level_mm - low_mm) * i / top_up_moments) == RunEnd::failed)
            break;
        job.add(PhaseKind::topped_up, now());
    }
    job.filled.state = run.state();
    const double topped_ml = run.state().poured_ml - before_ml;
    const auto after = now();
    const Message words = topped_ml < 1 ? Message{"The level stands where it was: nothing to top up.", {}, {}}
                                        : Message{"Topped up with {0}.", {{topped_ml, Unit::ml}}, {}};
    for (int i = 0; i < standing_moments; ++i)
        job.add(PhaseKind::topped_up, after, i == 0 ? std::optional(words) : std::nullopt);
}

} // namespace siphonwright::demonstration
