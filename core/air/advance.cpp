#include "core/air/run.h"

#include <algorithm>
#include <cmath>

/// How far a run can go in the present modes.
namespace siphonwright {
namespace {

constexpr long most_effort = 120'000; ///< in all runs; ten times what usual loops take
constexpr long effort_in_vain = 10;   ///< of a step without a solution; of any other 1
constexpr int most_halvings = 40;
constexpr double finest_push = 1e-13;
/// Of the push: what changes by less does not.
constexpr double no_rate = 1e-9;
/// So far along the push, of its scale, a goal's change is looked at.
constexpr double glance = 1e-7;
/// Of the scale: longer steps are looked at again for flows that have turned on the way.
constexpr double sure_share = 1.0 / 8;
/// Of the scale: a flow that turns on a shorter way turns at once.
constexpr double shortest = 1e-6;

} // namespace

/// What is joined now, and how it changes with the push.
void FillRun::prepare()
{
    if (!joined_known_) {
        throats_before_ = state_.throats;
        join(network_, state_, push_, newest_, joined_);
        for (std::size_t j = 0; j < throats_before_.size(); ++j) {
            if (throats_before_[j] != state_.throats[j])
                recordChange(j, throats_before_[j], state_.throats[j]);
        }
        joined_known_ = true;
        rates_ = Rates::unknown;
    }
    if (rates_ == Rates::unknown)
        rates_ = stepper_.findRates(state_, joined_, push_) ? Rates::known : Rates::none;
}

bool FillRun::solve(double amount)
{
    prepare();
    if (effort_ > most_effort)
        return false;
    const bool solved = stepper_.solve(state_, joined_, push_, amount, rates_ == Rates::known, trial_);
    effort_ += solved ? 1 : effort_in_vain;
    return solved;
}

/// As much of `amount` as has a solution; 0 if none has.
double FillRun::trySolve(double amount)
{
    for (int halving = 0; halving < most_halvings; ++halving) {
        if (solve(amount))
            return amount;
        amount /= 2;
    }
    return 0;
}

void FillRun::marginsOf(const FillState& state, std::vector<double>& margins) const
{
    findMargins(network_, state, covered_, margins);
    margins.push_back(goal_ != nullptr && *goal_ ? (*goal_)(state) : HUGE_VAL);
}

bool FillRun::broken(const std::vector<double>& margins) const
{
    return std::any_of(margins.begin(), margins.end(), [](double m) { return m < -at_level_mm; });
}

std::size_t FillRun::leastOf(const std::vector<double>& margins) const
{
    return static_cast<std::size_t>(std::min_element(margins.begin(), margins.end()) - margins.begin());
}

/// Where along the step, which has broken margins at `amount`, the first margin is used up. Leaves the state
/// there in trial_. Nothing found (amount 0, no margin): there is no solution somewhere between.
FillRun::Trial FillRun::locate(double amount)
{
    double low = 0;
    double high = amount;
    margins_low_ = margins_before_;
    for (int round = 0; round < 80; ++round) {
        double first = high;
        for (std::size_t i = 0; i < margins_high_.size(); ++i) {
            if (margins_high_[i] >= -at_level_mm)
                continue;
            if (margins_low_[i] <= at_level_mm && low == 0)
                return {0, i};
            const double share =
                std::isfinite(margins_low_[i]) ? margins_low_[i] / (margins_low_[i] - margins_high_[i]) : 0.5;
            first = std::min(first, low + (high - low) * std::clamp(share, 0.0, 1.0));
        }
        if (round % 3 == 2 || !(first > low && first < high))
            first = (low + high) / 2;
        if (high - low <= finest_push * scale_)
            return solve(high) ? Trial{high, leastOf(margins_high_)} : Trial{};
        if (!solve(first))
            return {};
        std::vector<double>& now = margins_now_;
        marginsOf(trial_, now);
        if (broken(now)) {
            high = first;
            margins_high_.swap(now);
            continue;
        }
        const std::size_t least = leastOf(now);
        for (std::size_t i = 0; i < now.size(); ++i) {
            if (margins_high_[i] < -at_level_mm && now[i] <= at_level_mm)
                return {first, now[least] <= now[i] && margins_high_[least] < -at_level_mm ? least : i};
        }
        low = first;
        margins_low_.swap(now);
    }
    return solve(high) ? Trial{high, leastOf(margins_high_)} : Trial{};
}

/// The margin that is used up first if all goes on as it begins, and what takes it there; the goal is the
/// last.
FillRun::Ahead FillRun::lookAhead()
{
    Ahead ahead;
    findMarks(network_, state_, covered_, marks_);
    for (std::size_t i = 0; i < marks_.size(); ++i) {
        const Mark& mark = marks_[i];
        if (mark.cell == Mark::none)
            continue;
        const double rate = stepper_.liquidRate(mark.cell);
        if (!(std::abs(rate) > no_rate) || (rate > 0) != mark.rising || !std::isfinite(margins_before_[i]))
            continue;
        const LevelTable& volume = network_.cells[mark.cell].volume;
        double amount = 0;
        if (margins_before_[i] > at_level_mm) {
            amount = (volume.under(mark.level_mm).liquid_ml - state_.cells[mark.cell].liquid_ml) / rate;
            if (!(amount > 0))
                amount = margins_before_[i] / std::abs(stepper_.levelRate(mark.cell));
        }
        if (amount < ahead.amount)
            ahead = {amount, i};
    }
    const double goal = margins_before_.back();
    if (!std::isfinite(goal))
        return ahead;
    glanced_ = state_;
    const double along = glance * scale_;
    for (std::size_t i = 0; i < glanced_.cells.size(); ++i) {
        CellState& cell = glanced_.cells[i];
        cell.level_mm += along * stepper_.levelRate(i);
        cell.liquid_ml += along * stepper_.liquidRate(i);
        cell.pressure_mm += along * stepper_.pressureRate(i);
        cell.head_mm += along * (stepper_.levelRate(i) + stepper_.pressureRate(i));
    }
    const double fall = goal - (*goal_)(glanced_);
    const double amount = goal > at_level_mm ? goal / fall * along : 0;
    if (fall > 0 && amount < ahead.amount)
        ahead = {amount, margins_before_.size() - 1};
    return ahead;
}

/// Whether a weir or bubbling that begins its way has run back all in all by the end of the step in trial_.
bool FillRun::runsBackLater() const
{
    for (std::size_t j = 0; j < state_.throats.size(); ++j) {
        const Mode mode = state_.throats[j].mode;
        if ((mode == Mode::weir || mode == Mode::bubbling) && flow_rates_[j] > no_rate &&
            stepper_.through(j) < 0)
            return true;
    }
    return false;
}

/// Whether a weir or bubbling that runs its way all in all has turned at the end of the step in trial_.
bool FillRun::turnsOnTheWay()
{
    bool any = false;
    for (const ThroatState& throat : state_.throats)
        any = any || throat.mode == Mode::weir || throat.mode == Mode::bubbling;
    if (!any)
        return false;
    rates_ = Rates::unknown;
    if (!stepper_.findRates(trial_, joined_, push_))
        return true;
    for (std::size_t j = 0; j < state_.throats.size(); ++j) {
        const Mode mode = state_.throats[j].mode;
        if ((mode == Mode::weir || mode == Mode::bubbling) && stepper_.throughRate(j) < -no_rate)
            return true;
    }
    return false;
}

/// Solves as far as `most`, or to where the first margin is used up.
FillRun::Trial FillRun::advance(double most)
{
    prepare();
    marginsOf(state_, margins_before_);
    Trial found;
    const Ahead ahead = rates_ == Rates::known ? lookAhead() : Ahead{};
    if (ahead.amount <= 0)
        return {0, ahead.margin};
    if (rates_ == Rates::known)
        stepper_.copyThroughRates(flow_rates_);
    const double sure = sure_share * scale_;
    double reach = std::min({most, ahead.amount, rates_ == Rates::known ? most : sure});
    if (reach == ahead.amount && ahead.margin + 1 < margins_before_.size() && effort_ <= most_effort) {
        const Mark& mark = marks_[ahead.margin];
        found.amount = ahead.amount;
        ++effort_;
        if (stepper_.solveTo(state_, joined_, push_, mark.cell, mark.level_mm, found.amount, trial_) &&
            found.amount > 0 && found.amount <= most) {
            found.used_up = ahead.margin;
            reach = found.amount;
        }
    }
    if (found.used_up == none)
        reach = trySolve(reach);
    if (!(reach > 0))
        return {};
    if (rates_ == Rates::known && reach > shortest * scale_ && runsBackLater())
        return {0, none, reach / 4};
    if (reach > sure && turnsOnTheWay())
        return {0, none, std::max(sure, reach / 2)};
    marginsOf(trial_, margins_high_);
    if (broken(margins_high_)) {
        found = locate(reach);
        return found.used_up == none ? Trial{0, none, reach / 2} : found;
    }
    if (found.used_up == none && reach == ahead.amount && margins_high_[ahead.margin] <= at_level_mm)
        found.used_up = ahead.margin;
    found.amount = reach;
    return found;
}

} // namespace siphonwright
