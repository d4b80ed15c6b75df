#include "core/physics/warm_up_run.h"

#include <algorithm>
#include <cmath>
#include <utility>

/// What a run writes down as it goes, and what it makes of that at the end.
namespace siphonwright {
namespace {

/// After this a heater's flow counts as established, s.
constexpr double settling_s = 600;

/// A pocket this near to the drive decides whether a loop runs.
constexpr double edge_share = 0.2;

} // namespace

void WarmUpRun::recordUntil(double until_s)
{
    recordPassive(until_s);
    for (std::size_t i = 0; i < controls_.size(); ++i)
        recordLoop(i, until_s);
    recordSamples(until_s);
    out_.end_s = until_s;
}

/// Moments that change nothing: the target reached, a return grown warm.
void WarmUpRun::recordPassive(double until_s)
{
    if (!out_.target_s && model_.blockMean_degC(solver_.state()) >= inputs_.target_degC) {
        const auto over = [&](double time_s) {
            return model_.blockMean_degC(stateAt(time_s)) - inputs_.target_degC;
        };
        out_.target_s = firstRise(over, solver_.from(), until_s, options_.event_tolerance_s);
    }
    const double warm_degC = inputs_.start_degC + inputs_.return_warm_rise_K;
    for (std::size_t i = 0; i < controls_.size(); ++i) {
        if (out_.loops[i].return_warm_s)
            continue;
        const std::size_t end = model_.statesOf(i).return_end;
        const auto over = [&](double time_s) { return solver_.at(time_s, end) - warm_degC; };
        out_.loops[i].return_warm_s = firstRise(over, solver_.from(), until_s, options_.event_tolerance_s);
    }
}

void WarmUpRun::recordLoop(std::size_t loop, double until_s)
{
    if (!(model_.power_W(loop) > 0))
        return;
    LoopOutcome& outcome = out_.loops[loop];
    const double from_s = solver_.from();
    outcome.energised_s += until_s - from_s;
    outcome.energy_J += (until_s - from_s) * model_.power_W(loop);
    out_.energy_J += (until_s - from_s) * model_.power_W(loop);
    constexpr int parts = 4;
    const std::size_t chamber = model_.statesOf(loop).chamber;
    const bool may_peak = !outcome.peak_outlet_degC || solver_.most(chamber) > *outcome.peak_outlet_degC;
    for (int part = 0; may_peak && part <= parts; ++part) {
        const double time_s = from_s + (until_s - from_s) * part / parts;
        const double outlet = solver_.at(time_s, chamber);
        if (!outcome.peak_outlet_degC || outlet > *outcome.peak_outlet_degC) {
            outcome.peak_outlet_degC = outlet;
            outcome.peak_outlet_s = time_s;
        }
    }
    // Of the step's end, where the right-hand side was asked last.
    const WarmUpModel::Drive& drive = model_.lastDrive(loop);
    if (drive.pockets_Pa > 0 &&
        std::abs(std::abs(drive.drive_Pa) - drive.pockets_Pa) <= edge_share * std::abs(drive.drive_Pa))
        edge_s_[loop] += until_s - from_s;
    if (outcome.energised_s < settling_s)
        return;
    const bool first = outcome.energised_s - (until_s - from_s) < settling_s;
    outcome.least_flow_kg_per_s =
        first ? drive.flow_kg_per_s : std::min(outcome.least_flow_kg_per_s, drive.flow_kg_per_s);
    outcome.most_flow_kg_per_s =
        first ? drive.flow_kg_per_s : std::max(outcome.most_flow_kg_per_s, drive.flow_kg_per_s);
}

void WarmUpRun::recordSamples(double until_s)
{
    if (!(options_.sample_every_s > 0))
        return;
    for (;;) {
        const double time_s = static_cast<double>(samples_) * options_.sample_every_s;
        if (time_s > until_s || samples_ > 10000000)
            return;
        sample(time_s, until_s);
        ++samples_;
    }
}

LoopSample WarmUpRun::loopSample(std::size_t loop, std::span<const double> state)
{
    const LoopStates& at = model_.statesOf(loop);
    LoopSample sample;
    sample.outlet_degC = state[at.chamber];
    sample.flow_kg_per_s = model_.flow_kg_per_s(loop, state);
    sample.inlet_degC = model_.endOf_degC(loop, at.supply_end, state);
    sample.return_degC = model_.endOf_degC(loop, at.return_end, state);
    sample.return_surface_degC =
        inputs_.air_degC + inputs_.loops[loop].return_surface_share * (sample.return_degC - inputs_.air_degC);
    sample.sensed_degC = state[at.sensor];
    sample.swept_degC = state[at.swept];
    sample.power_W = model_.power_W(loop);
    return sample;
}

void WarmUpRun::sample(double time_s, double counted_until_s)
{
    stateAt(time_s);
    WarmUpSample now;
    now.time_s = time_s;
    now.block_degC = model_.blockMean_degC(sampled_state_);
    now.rest_degC = sampled_state_[model_.rest()];
    now.loops.reserve(controls_.size());
    for (std::size_t i = 0; i < controls_.size(); ++i) {
        now.loops.push_back(loopSample(i, sampled_state_));
        now.power_W += model_.power_W(i);
    }
    now.energy_J = out_.energy_J - now.power_W * (counted_until_s - time_s);
    out_.series.push_back(std::move(now));
}

namespace {

/// Most switchings-on within an hour, among those after the first switching-off.
double cyclesPerHour(const std::vector<HeaterSwitch>& switches)
{
    constexpr double hour_s = 3600;
    std::vector<double> on_s;
    bool was_off = false;
    for (const HeaterSwitch& s : switches) {
        was_off = was_off || !s.on;
        if (s.on && was_off)
            on_s.push_back(s.time_s);
    }
    std::size_t most = 0;
    for (std::size_t first = 0, last = 0; first < on_s.size(); ++first) {
        while (last < on_s.size() && on_s[last] < on_s[first] + hour_s)
            ++last;
        most = std::max(most, last - first);
    }
    return static_cast<double>(most);
}

} // namespace

void WarmUpRun::finishLoop(std::size_t loop)
{
    LoopOutcome& outcome = out_.loops[loop];
    outcome.at_end = loopSample(loop, sampled_state_);
    outcome.cycles_per_hour = cyclesPerHour(outcome.switches);
    outcome.on_the_edge = (edge_s_[loop] > 0 && edge_s_[loop] >= outcome.energised_s / 10) ||
                          (heatings_[loop].circulated > 0 && heatings_[loop].stalled > 0);
    if (outcome.boiled_s && out_.status == WarmUpStatus::done) {
        out_.status = WarmUpStatus::boiling;
        out_.message = {"After {0} s the heater's chamber boils, at {1}; the heater was stopped.",
                        {{std::round(*outcome.boiled_s), Unit::none}, {inputs_.boiling_degC, Unit::degC}},
                        {}};
    }
    if (!outcome.peak_outlet_degC)
        return;
    outcome.boiling_margin_K = inputs_.boiling_degC - *outcome.peak_outlet_degC;
    outcome.element = elementSurface(fluid_, inputs_.loops[loop].heater.element, *outcome.peak_outlet_degC,
                                     inputs_.boiling_degC);
}

void WarmUpRun::finish()
{
    stateAt(out_.end_s);
    out_.block_at_end_degC = model_.blockMean_degC(sampled_state_);
    out_.rest_at_end_degC = sampled_state_[model_.rest()];
    out_.lost_J = sampled_state_[model_.lost()];
    out_.stored_J = model_.stored_J(sampled_state_);
    const double largest = std::max({out_.energy_J, std::abs(out_.lost_J), std::abs(out_.stored_J), 1.0});
    out_.balance_error = std::abs(out_.energy_J - out_.lost_J - out_.stored_J) / largest;
    out_.steps = solver_.attempts();
    out_.evaluations = solver_.evaluations();
    for (std::size_t i = 0; i < controls_.size(); ++i)
        finishLoop(i);
    if (out_.message.pattern.empty())
        out_.message = {"The engine is at {0} after {1} s.",
                        {{out_.block_at_end_degC, Unit::degC}, {out_.end_s, Unit::none}},
                        {}};
}

} // namespace siphonwright
