#include "core/physics/warm_up_run.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace siphonwright {
namespace {

constexpr double least_drive_Pa = 0.01; // under it flow carries nothing, whichever way

IntegratorTolerance toleranceOf(const WarmUpOptions& options, const WarmUpModel& model)
{
    IntegratorTolerance tolerance{options.relative_tolerance, {}};
    tolerance.absolute.assign(model.size(), options.absolute_tolerance_K);
    tolerance.absolute[model.lost()] = std::numeric_limits<double>::infinity();
    return tolerance;
}

} // namespace

WarmUpRun::WarmUpRun(const WarmUpInputs& given, const WarmUpOptions& wanted, const Fluid& liquid)
    : inputs_(given),
      options_(wanted),
      fluid_(liquid),
      model_(given, wanted, liquid),
      solver_(toleranceOf(wanted, model_)),
      controls_(given.loops.size()),
      drives_Pa_(given.loops.size()),
      edge_s_(given.loops.size()),
      heatings_(given.loops.size()),
      sampled_state_(model_.size())
{}

WarmUp WarmUpRun::result() &&
{
    begin();
    run();
    finish();
    return std::move(out_);
}

void WarmUpRun::begin()
{
    out_.status = WarmUpStatus::done;
    out_.loops.resize(inputs_.loops.size());
    if (options_.sample_every_s > 0)
        out_.series.reserve(
            static_cast<std::size_t>(std::min(1e7, inputs_.duration_s / options_.sample_every_s + 2)));
    for (std::size_t i = 0; i < controls_.size(); ++i) {
        const Thermostat& thermostat = inputs_.loops[i].heater.thermostat;
        const CutOutSwitch& cut_out = inputs_.loops[i].heater.cut_out;
        if (thermostat.place != ThermostatPlace::none)
            controls_[i].contacts_closed =
                inputs_.start_degC <= thermostat.on_degC ||
                (inputs_.start_degC < thermostat.off_degC && thermostat.closed_between_points_at_start);
        controls_[i].tripped =
            cut_out.reset != CutOutReset::not_fitted && inputs_.start_degC >= cut_out.trip_degC;
    }
    supplied_ = supplyAt(0);
    for (std::size_t i = 0; i < controls_.size(); ++i)
        setPower(i, 0, SwitchCause::supply);
    if (inputs_.start_degC >= inputs_.target_degC)
        out_.target_s = 0;
    solver_.begin(model_, 0, model_.start());
    recordSamples(0);
}

double WarmUpRun::nextBoundary() const
{
    double next = inputs_.duration_s;
    for (const double boundary : {inputs_.supply_on_s, inputs_.supply_off_s}) {
        if (boundary > solver_.time())
            next = std::min(next, boundary);
    }
    return next;
}

void WarmUpRun::run()
{
    while (solver_.time() < inputs_.duration_s) {
        if (solver_.attempts() >= options_.most_steps) {
            out_.status = WarmUpStatus::not_followed;
            out_.message = {"The warm-up was given up: it took more steps than allowed.", {}, {}};
            return;
        }
        if (!advance(nextBoundary()))
            return;
    }
}

/// One step, cut at the first switch within it. False ends the run.
bool WarmUpRun::advance(double latest)
{
    if (solver_.step(model_, latest) != StepStatus::done) {
        out_.status = WarmUpStatus::not_followed;
        out_.message = {"The warm-up could not be followed past {0} s.", {{solver_.time(), Unit::none}}, {}};
        return false;
    }
    const std::optional<double> switch_s = firstChange();
    const std::optional<double> reversal_s = firstReversal(switch_s.value_or(solver_.time()));
    const double until_s = reversal_s.value_or(switch_s.value_or(solver_.time()));
    bool changed = switch_s || reversal_s;
    if (changed) {
        findDue(until_s); // before the end is made more exact, which may lift it off its threshold again
        solver_.shorten(model_, until_s);
    }
    recordUntil(until_s);
    for (const DueChange& due : due_)
        change(due.loop, due.change, until_s);
    due_.clear();
    if (supplyAt(until_s) != supplied_) {
        supplied_ = !supplied_;
        for (std::size_t i = 0; i < controls_.size(); ++i)
            setPower(i, until_s, SwitchCause::supply);
        changed = true;
    }
    if (changed) {
        solver_.restart(model_);
        for (std::size_t i = 0; i < drives_Pa_.size(); ++i) {
            // So near nothing it has just turned, whatever rounding says: what it turned to stands.
            const double drive_Pa = model_.lastDrive(i).drive_Pa;
            drives_Pa_[i] = std::abs(drive_Pa) < least_drive_Pa ? drives_Pa_[i] : drive_Pa;
        }
    }
    if (!frozen())
        return true;
    out_.status = WarmUpStatus::slush;
    out_.message = {"After {0} s coolant is under its freezing point, {1}.",
                    {{solver_.time(), Unit::none}, {fluid_.lowest_degC(), Unit::degC}},
                    {}};
    return false;
}

std::span<const double> WarmUpRun::stateAt(double time_s)
{
    for (std::size_t k = 0; k < sampled_state_.size(); ++k)
        sampled_state_[k] = solver_.at(time_s, k);
    return sampled_state_;
}

bool WarmUpRun::frozen() const
{
    const std::span<const double> state = solver_.state();
    const double freezing_degC = fluid_.lowest_degC();
    for (std::size_t i = 0; i < model_.loopCount(); ++i) {
        const LoopStates& at = model_.statesOf(i);
        for (std::size_t k = at.chamber; k <= at.supply_end; ++k) {
            if (state[k] < freezing_degC)
                return true;
        }
    }
    return false;
}

std::optional<WarmUpRun::Threshold> WarmUpRun::thresholdOf(std::size_t loop, Change change) const
{
    const HeaterControl& control = controls_[loop];
    const WarmUpHeater& heater = inputs_.loops[loop].heater;
    const LoopStates& at = model_.statesOf(loop);
    const bool senses = heater.thermostat.place != ThermostatPlace::none;
    switch (change) {
    case Change::opens:
        if (senses && control.contacts_closed)
            return Threshold{at.sensor, heater.thermostat.off_degC, true};
        break;
    case Change::closes:
        if (senses && !control.contacts_closed)
            return Threshold{at.sensor, heater.thermostat.on_degC, false};
        break;
    case Change::trips:
        if (heater.cut_out.reset != CutOutReset::not_fitted && !control.tripped)
            return Threshold{at.chamber, heater.cut_out.trip_degC, true};
        break;
    case Change::resets:
        if (heater.cut_out.reset == CutOutReset::self && control.tripped)
            return Threshold{at.chamber, heater.cut_out.reset_degC, false};
        break;
    case Change::boils:
        if (!control.boiled)
            return Threshold{at.chamber, inputs_.boiling_degC, true};
        break;
    }
    return std::nullopt;
}

double WarmUpRun::past(const Threshold& threshold, double time_s) const
{
    const double over_K = solver_.at(time_s, threshold.state) - threshold.degC;
    return threshold.rising ? over_K : -over_K;
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
    for (std::size_t loop = 0; loop < controls_.size(); ++loop) {
        for (const Change change : all_changes<Change>) {
            const std::optional<Threshold> threshold = thresholdOf(loop, change);
            if (!threshold || (threshold->rising ? solver_.most(threshold->state) < threshold->degC
                                                 : solver_.least(threshold->state) > threshold->degC))
                continue;
            const auto g = [&](double time_s) { return past(*threshold, time_s); };
            if (g(solver_.from()) >= 0) // due already: every change undoes its own cause
                return solver_.from();
            const auto at =
                firstRise(g, solver_.from(), first.value_or(solver_.time()), options_.event_tolerance_s);
            if (at)
                first = at;
        }
    }
    return first;
}

std::optional<double> WarmUpRun::firstReversal(double until_s)
{
    constexpr double tolerance_s = 1e-3;
    std::optional<double> first;
    for (std::size_t loop = 0; loop < drives_Pa_.size(); ++loop) {
        const double before_Pa = drives_Pa_[loop];
        const double after_Pa = model_.lastDrive(loop).drive_Pa; // where the right-hand side was asked last
        drives_Pa_[loop] = after_Pa;
        if (!(before_Pa * after_Pa < 0) || std::max(std::abs(before_Pa), std::abs(after_Pa)) < least_drive_Pa)
            continue;
        const auto turned = [&](double time_s) {
            const double drive_Pa = model_.drive_Pa(loop, stateAt(time_s));
            return before_Pa > 0 ? -drive_Pa : drive_Pa;
        };
        const auto at = firstRise(turned, solver_.from(), first.value_or(until_s), tolerance_s);
        if (at)
            first = at;
    }
    return first;
}

/// Every change that is due at a time: two heaters alike switch at the same moment.
void WarmUpRun::findDue(double time_s)
{
    for (std::size_t loop = 0; loop < controls_.size(); ++loop) {
        for (const Change kind : all_changes<Change>) {
            const std::optional<Threshold> threshold = thresholdOf(loop, kind);
            if (threshold && past(*threshold, time_s) >= 0)
                due_.push_back({loop, kind});
        }
    }
}

void WarmUpRun::change(std::size_t loop, Change kind, double time_s)
{
    HeaterControl& control = controls_[loop];
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
        if (!out_.loops[loop].tripped_s)
            out_.loops[loop].tripped_s = time_s;
        break;
    case Change::resets:
        control.tripped = false;
        cause = SwitchCause::cut_out;
        break;
    case Change::boils:
        control.boiled = true;
        cause = SwitchCause::boiling;
        out_.loops[loop].boiled_s = time_s;
        break;
    }
    setPower(loop, time_s, cause);
}

void WarmUpRun::setPower(std::size_t loop, double time_s, SwitchCause cause)
{
    const double power_W = inputs_.loops[loop].heater.power_W();
    const bool on = supplied_ && controls_[loop].allows() && power_W > 0;
    if (on == (model_.power_W(loop) > 0))
        return;
    model_.setPower(loop, on ? power_W : 0);
    LoopOutcome& outcome = out_.loops[loop];
    outcome.switches.push_back({time_s, on, cause});
    if (on)
        return;
    if (!outcome.first_switch_off_s)
        outcome.first_switch_off_s = time_s;
    const bool circulates = model_.flow_kg_per_s(loop, stateAt(time_s)) != 0;
    ++(circulates ? heatings_[loop].circulated : heatings_[loop].stalled);
}

} // namespace siphonwright
