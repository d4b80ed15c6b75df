#include "core/physics/warm_up_run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace siphonwright {
namespace {

/// After this a heater's flow counts as established, s.
constexpr double settling_s = 600;

/// A pocket this near to the drive decides whether a loop runs.
constexpr double edge_share = 0.2;

IntegratorTolerance toleranceOf(const WarmUpOptions& options, const WarmUpModel& model)
{
    IntegratorTolerance tolerance{options.relative_tolerance, {}};
    tolerance.absolute.assign(model.size(), options.absolute_tolerance_K);
    tolerance.absolute[model.lost()] = std::numeric_limits<double>::infinity();
    return tolerance;
}

} // namespace

WarmUpRun::WarmUpRun(const WarmUpInputs& given, const WarmUpOptions& wanted, const Fluid& liquid)
    : inputs(given),
      options(wanted),
      fluid(liquid),
      model(given, wanted, liquid),
      solver(toleranceOf(wanted, model)),
      controls(given.loops.size()),
      drives_Pa(given.loops.size()),
      edge_s(given.loops.size()),
      heatings(given.loops.size()),
      sampled_state(model.size())
{}

WarmUp WarmUpRun::result() &&
{
    begin();
    run();
    finish();
    return std::move(out);
}

void WarmUpRun::begin()
{
    out.status = WarmUpStatus::done;
    out.loops.resize(inputs.loops.size());
    if (options.sample_every_s > 0)
        out.series.reserve(
            static_cast<std::size_t>(std::min(1e7, inputs.duration_s / options.sample_every_s + 2)));
    for (std::size_t i = 0; i < controls.size(); ++i) {
        const Thermostat& thermostat = inputs.loops[i].heater.thermostat;
        const CutOut& cut_out = inputs.loops[i].heater.cut_out;
        if (thermostat.place != ThermostatPlace::none)
            controls[i].contacts_closed =
                inputs.start_degC <= thermostat.on_degC ||
                (inputs.start_degC < thermostat.off_degC && thermostat.closed_between_points_at_start);
        controls[i].tripped =
            cut_out.reset != CutOutReset::not_fitted && inputs.start_degC >= cut_out.trip_degC;
    }
    supplied = supplyAt(0);
    for (std::size_t i = 0; i < controls.size(); ++i)
        setPower(i, 0, SwitchCause::supply);
    if (inputs.start_degC >= inputs.target_degC)
        out.target_s = 0;
    solver.begin(model, 0, model.start());
    recordSamples(0);
}

double WarmUpRun::nextBoundary() const
{
    double next = inputs.duration_s;
    for (const double boundary : {inputs.supply_on_s, inputs.supply_off_s}) {
        if (boundary > solver.time())
            next = std::min(next, boundary);
    }
    return next;
}

void WarmUpRun::run()
{
    while (solver.time() < inputs.duration_s) {
        if (solver.attempts() >= options.most_steps) {
            out.status = WarmUpStatus::not_followed;
            out.message = {"The warm-up was given up: it took more steps than allowed.", {}, {}};
            return;
        }
        if (!advance(nextBoundary()))
            return;
    }
}

/// One step, cut at the first switch within it. False ends the run.
bool WarmUpRun::advance(double latest)
{
    if (solver.step(model, latest) != StepStatus::done) {
        out.status = WarmUpStatus::not_followed;
        out.message = {"The warm-up could not be followed past {0} s.", {{solver.time(), Unit::none}}, {}};
        return false;
    }
    const std::optional<double> switch_s = firstChange();
    const std::optional<double> reversal_s = firstReversal(switch_s.value_or(solver.time()));
    const double until_s = reversal_s.value_or(switch_s.value_or(solver.time()));
    recordUntil(until_s);
    bool changed = reversal_s || (switch_s && changeAll(until_s));
    if (supplyAt(until_s) != supplied) {
        supplied = !supplied;
        for (std::size_t i = 0; i < controls.size(); ++i)
            setPower(i, until_s, SwitchCause::supply);
        changed = true;
    }
    if (changed) {
        solver.restart(model, until_s);
        for (std::size_t i = 0; i < drives_Pa.size(); ++i)
            drives_Pa[i] = model.lastDrive(i).drive_Pa;
    }
    if (!frozen())
        return true;
    out.status = WarmUpStatus::slush;
    out.message = {"After {0} s coolant is under its freezing point, {1}.",
                   {{solver.time(), Unit::none}, {fluid.lowest_degC(), Unit::degC}},
                   {}};
    return false;
}

std::span<const double> WarmUpRun::stateAt(double time_s)
{
    for (std::size_t k = 0; k < sampled_state.size(); ++k)
        sampled_state[k] = solver.at(time_s, k);
    return sampled_state;
}

bool WarmUpRun::frozen() const
{
    const std::span<const double> state = solver.state();
    for (std::size_t i = 0; i < model.loopCount(); ++i) {
        const LoopStates& at = model.statesOf(i);
        for (std::size_t k = at.chamber; k <= at.supply_end; ++k) {
            if (state[k] < fluid.lowest_degC())
                return true;
        }
    }
    return false;
}

std::optional<double> WarmUpRun::past(std::size_t loop, Change change, double time_s) const
{
    const HeaterControl& control = controls[loop];
    const WarmUpHeater& heater = inputs.loops[loop].heater;
    const LoopStates& at = model.statesOf(loop);
    const bool senses = heater.thermostat.place != ThermostatPlace::none;
    switch (change) {
    case Change::opens:
        if (senses && control.contacts_closed)
            return solver.at(time_s, at.sensor) - heater.thermostat.off_degC;
        break;
    case Change::closes:
        if (senses && !control.contacts_closed)
            return heater.thermostat.on_degC - solver.at(time_s, at.sensor);
        break;
    case Change::trips:
        if (heater.cut_out.reset != CutOutReset::not_fitted && !control.tripped)
            return solver.at(time_s, at.chamber) - heater.cut_out.trip_degC;
        break;
    case Change::resets:
        if (heater.cut_out.reset == CutOutReset::self && control.tripped)
            return heater.cut_out.reset_degC - solver.at(time_s, at.chamber);
        break;
    case Change::boils:
        if (!control.boiled)
            return solver.at(time_s, at.chamber) - inputs.boiling_degC;
        break;
    }
    return std::nullopt;
}

namespace {
/// In the order in which changes of one moment take place.
template <typename Change>
constexpr std::array<Change, 5> all_changes = {Change::boils, Change::trips, Change::resets, Change::opens,
                                               Change::closes};
} // namespace

std::optional<double> WarmUpRun::firstChange() const
{
    std::optional<double> first;
    for (std::size_t loop = 0; loop < controls.size(); ++loop) {
        for (const Change change : all_changes<Change>) {
            if (!past(loop, change, solver.time()))
                continue;
            const auto g = [&](double time_s) { return *past(loop, change, time_s); };
            const auto at =
                firstRise(g, solver.from(), first.value_or(solver.time()), options.event_tolerance_s);
            if (at)
                first = at;
        }
    }
    return first;
}

std::optional<double> WarmUpRun::firstReversal(double until_s)
{
    constexpr double least_Pa = 0.01; // under it flow carries nothing, whichever way
    constexpr double tolerance_s = 1e-3;
    std::optional<double> first;
    for (std::size_t loop = 0; loop < drives_Pa.size(); ++loop) {
        const double before_Pa = drives_Pa[loop];
        const double after_Pa = model.lastDrive(loop).drive_Pa; // where the right-hand side was asked last
        drives_Pa[loop] = after_Pa;
        if (!(before_Pa * after_Pa < 0) || std::max(std::abs(before_Pa), std::abs(after_Pa)) < least_Pa)
            continue;
        const auto turned = [&](double time_s) {
            const double drive_Pa = model.drive_Pa(loop, stateAt(time_s));
            return before_Pa > 0 ? -drive_Pa : drive_Pa;
        };
        const auto at = firstRise(turned, solver.from(), first.value_or(until_s), tolerance_s);
        if (at)
            first = at;
    }
    return first;
}

/// Makes every change that is due at a time: two heaters alike switch at the same moment.
bool WarmUpRun::changeAll(double time_s)
{
    bool changed = false;
    for (std::size_t loop = 0; loop < controls.size(); ++loop) {
        for (const Change kind : all_changes<Change>) {
            const std::optional<double> by = past(loop, kind, time_s);
            if (!by || !(*by >= 0))
                continue;
            change(loop, kind, time_s);
            changed = true;
        }
    }
    return changed;
}

void WarmUpRun::change(std::size_t loop, Change kind, double time_s)
{
    HeaterControl& control = controls[loop];
    SwitchCause cause = SwitchCause::thermostat;
    switch (kind) {
    case Change::opens:
        control.contacts_closed = false;
        break;
    case Change::closes:
        control.contacts_closed = true;
        break;
    case Change::trips:
        control.tripped = true;
        cause = SwitchCause::cut_out;
        if (!out.loops[loop].tripped_s)
            out.loops[loop].tripped_s = time_s;
        break;
    case Change::resets:
        control.tripped = false;
        cause = SwitchCause::cut_out;
        break;
    case Change::boils:
        control.boiled = true;
        cause = SwitchCause::boiling;
        out.loops[loop].boiled_s = time_s;
        break;
    }
    setPower(loop, time_s, cause);
}

void WarmUpRun::setPower(std::size_t loop, double time_s, SwitchCause cause)
{
    const double power_W = inputs.loops[loop].heater.power_W();
    const bool on = supplied && controls[loop].allows() && power_W > 0;
    if (on == (model.power_W(loop) > 0))
        return;
    model.setPower(loop, on ? power_W : 0);
    LoopOutcome& outcome = out.loops[loop];
    outcome.switches.push_back({time_s, on, cause});
    if (on)
        return;
    if (!outcome.first_switch_off_s)
        outcome.first_switch_off_s = time_s;
    const bool circulates = model.flow_kg_per_s(loop, stateAt(time_s)) != 0;
    ++(circulates ? heatings[loop].circulated : heatings[loop].stalled);
}

void WarmUpRun::recordUntil(double until_s)
{
    recordPassive(until_s);
    for (std::size_t i = 0; i < controls.size(); ++i)
        recordLoop(i, until_s);
    recordSamples(until_s);
    out.end_s = until_s;
}

/// Moments that change nothing: the target reached, a return grown warm.
void WarmUpRun::recordPassive(double until_s)
{
    if (!out.target_s && model.blockMean_degC(solver.state()) >= inputs.target_degC) {
        const auto over = [&](double time_s) {
            return model.blockMean_degC(stateAt(time_s)) - inputs.target_degC;
        };
        out.target_s = firstRise(over, solver.from(), until_s, options.event_tolerance_s);
    }
    const double warm_degC = inputs.start_degC + inputs.return_warm_rise_K;
    for (std::size_t i = 0; i < controls.size(); ++i) {
        if (out.loops[i].return_warm_s)
            continue;
        const std::size_t end = model.statesOf(i).return_end;
        const auto over = [&](double time_s) { return solver.at(time_s, end) - warm_degC; };
        out.loops[i].return_warm_s = firstRise(over, solver.from(), until_s, options.event_tolerance_s);
    }
}

void WarmUpRun::recordLoop(std::size_t loop, double until_s)
{
    if (!(model.power_W(loop) > 0))
        return;
    LoopOutcome& outcome = out.loops[loop];
    const double from_s = solver.from();
    outcome.energised_s += until_s - from_s;
    outcome.energy_J += (until_s - from_s) * model.power_W(loop);
    out.energy_J += (until_s - from_s) * model.power_W(loop);
    constexpr int parts = 4;
    for (int part = 0; part <= parts; ++part) {
        const double time_s = from_s + (until_s - from_s) * part / parts;
        const double outlet = solver.at(time_s, model.statesOf(loop).chamber);
        if (!outcome.peak_outlet_degC || outlet > *outcome.peak_outlet_degC) {
            outcome.peak_outlet_degC = outlet;
            outcome.peak_outlet_s = time_s;
        }
    }
    // Of the step's end, where the right-hand side was asked last.
    const WarmUpModel::Drive& drive = model.lastDrive(loop);
    if (drive.pockets_Pa > 0 &&
        std::abs(std::abs(drive.drive_Pa) - drive.pockets_Pa) <= edge_share * std::abs(drive.drive_Pa))
        edge_s[loop] += until_s - from_s;
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
    if (!(options.sample_every_s > 0))
        return;
    for (;;) {
        const double time_s = static_cast<double>(samples) * options.sample_every_s;
        if (time_s > until_s || samples > 10000000)
            return;
        sample(time_s, until_s);
        ++samples;
    }
}

LoopSample WarmUpRun::loopSample(std::size_t loop, std::span<const double> state)
{
    const LoopStates& at = model.statesOf(loop);
    LoopSample sample;
    sample.outlet_degC = state[at.chamber];
    sample.flow_kg_per_s = model.flow_kg_per_s(loop, state);
    sample.inlet_degC = model.endOf_degC(loop, at.supply_end, state);
    sample.return_degC = model.endOf_degC(loop, at.return_end, state);
    sample.return_surface_degC =
        inputs.air_degC + inputs.loops[loop].return_surface_share * (sample.return_degC - inputs.air_degC);
    sample.sensed_degC = state[at.sensor];
    sample.swept_degC = state[at.swept];
    sample.power_W = model.power_W(loop);
    return sample;
}

void WarmUpRun::sample(double time_s, double counted_until_s)
{
    stateAt(time_s);
    WarmUpSample now;
    now.time_s = time_s;
    now.block_degC = model.blockMean_degC(sampled_state);
    now.rest_degC = sampled_state[model.rest()];
    now.loops.reserve(controls.size());
    for (std::size_t i = 0; i < controls.size(); ++i) {
        now.loops.push_back(loopSample(i, sampled_state));
        now.power_W += model.power_W(i);
    }
    now.energy_J = out.energy_J - now.power_W * (counted_until_s - time_s);
    out.series.push_back(now);
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
    LoopOutcome& outcome = out.loops[loop];
    outcome.at_end = loopSample(loop, sampled_state);
    outcome.cycles_per_hour = cyclesPerHour(outcome.switches);
    outcome.on_the_edge = (edge_s[loop] > 0 && edge_s[loop] >= outcome.energised_s / 10) ||
                          (heatings[loop].circulated > 0 && heatings[loop].stalled > 0);
    if (outcome.boiled_s && out.status == WarmUpStatus::done) {
        out.status = WarmUpStatus::boiling;
        out.message = {"After {0} s the heater's chamber boils, at {1}; the heater was stopped.",
                       {{std::round(*outcome.boiled_s), Unit::none}, {inputs.boiling_degC, Unit::degC}},
                       {}};
    }
    if (!outcome.peak_outlet_degC)
        return;
    outcome.boiling_margin_K = inputs.boiling_degC - *outcome.peak_outlet_degC;
    outcome.element = elementSurface(fluid, inputs.loops[loop].heater.element, *outcome.peak_outlet_degC,
                                     inputs.boiling_degC);
}

void WarmUpRun::finish()
{
    stateAt(out.end_s);
    out.block_at_end_degC = model.blockMean_degC(sampled_state);
    out.rest_at_end_degC = sampled_state[model.rest()];
    out.lost_J = sampled_state[model.lost()];
    out.stored_J = model.stored_J(sampled_state);
    const double largest = std::max({out.energy_J, std::abs(out.lost_J), std::abs(out.stored_J), 1.0});
    out.balance_error = std::abs(out.energy_J - out.lost_J - out.stored_J) / largest;
    out.steps = solver.attempts();
    out.evaluations = solver.evaluations();
    for (std::size_t i = 0; i < controls.size(); ++i)
        finishLoop(i);
    if (out.message.pattern.empty())
        out.message = {"The engine is at {0} after {1} s.",
                       {{out.block_at_end_degC, Unit::degC}, {out.end_s, Unit::none}},
                       {}};
}

} // namespace siphonwright
