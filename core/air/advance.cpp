#include "core/air/run.h"

#include <algorithm>
#include <cmath>

/// How far a run can go in the present modes.
namespace siphonwright {
namespace {

/// Equations set up in all runs: many times what most loops take,
/// and more than any of 9000 random fills that settle (64 306).
constexpr long most_effort = 70'000;
constexpr int most_halvings = 40;
constexpr double finest_push = 1e-13;
/// Of the scale: longer steps are looked at again for flows that have turned on the way.
constexpr double sure_share = 1.0 / 8;
/// Of the scale: a flow that turns on a shorter way turns at once.
constexpr double shortest = 1e-6;

/// Secant after Illinois (Dowell and Jarratt, BIT 11, 1971): an end of the bracket that stays while the other
/// moves again counts half.
struct EndCounts {
    double low = 1;
    double high = 1;
    bool high_moved = false;
    bool low_moved = false;

    void highMoves()
    {
        low = high_moved ? low / 2 : 1;
        high = 1;
        high_moved = true;
        low_moved = false;
    }
    void lowMoves()
    {
        high = low_moved ? high / 2 : 1;
        low = 1;
        low_moved = true;
        high_moved = false;
    }
};

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
    return !isSpent() && stepper_.solve(state_, joined_, push_, amount, rates_ == Rates::known, trial_);
}

bool FillRun::isSpent() const
{
    return stepper_.effort() > most_effort;
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

/// Whether the step to trial_ has gone past a mark.
bool FillRun::isPast(const Mark& mark) const
{
    if (mark.isLevel()) {
        const double over_mm = trial_.cells[mark.cell].level_mm - mark.level_mm;
        return (mark.rising ? over_mm : -over_mm) > at_level_mm;
    }
    if (!mark.isAny())
        return false;
    const Throat& valve = network_.throats[push_.valve];
    return apart(mark, state_.cells[valve.left], state_.cells[valve.right]) *
               apart(mark, trial_.cells[valve.left], trial_.cells[valve.right]) <
           0;
}

/// The mark that the broken margin which secants find first has gone past in trial_; nothing if there is
/// none.
const Mark* FillRun::markPast(std::size_t margin) const
{
    if (margin + 1 < margins_high_.size())
        return margin < marks_.size() && isPast(marks_[margin]) ? &marks_[margin] : nullptr;
    const auto past = std::find_if(goal_marks_->begin(), goal_marks_->end(),
                                   [this](const Mark& mark) { return isPast(mark); });
    return past == goal_marks_->end() ? nullptr : &*past;
}

/// Where the first of the margins that trial_ has broken is used up, if that can be solved for: else amount
/// 0.
FillRun::Trial FillRun::solveForFirst(double amount)
{
    Trial first{amount, none};
    for (std::size_t i = 0; i < margins_high_.size(); ++i) {
        if (margins_high_[i] >= -at_level_mm)
            continue;
        const double share = margins_before_[i] / (margins_before_[i] - margins_high_[i]);
        const double guess = std::isfinite(share) ? share * amount : amount / 2;
        if (first.used_up == none || guess < first.amount)
            first = {guess, i};
    }
    const Mark* const mark = rates_ == Rates::known && !isSpent() ? markPast(first.used_up) : nullptr;
    if (mark == nullptr || !(first.amount > 0) ||
        !stepper_.solveTo(state_, joined_, push_, *mark, first.amount, trial_) ||
        !(first.amount > 0 && first.amount < amount))
        return {};
    marginsOf(trial_, margins_now_);
    return broken(margins_now_) || margins_now_[first.used_up] > at_level_mm ? Trial{} : first;
}

/// Where along the step, which has broken margins at `amount`, the first margin is used up. Leaves the state
/// there in trial_. Nothing found (amount 0, no margin): there is no solution somewhere between.
FillRun::Trial FillRun::locate(double amount)
{
    if (const Trial first = solveForFirst(amount); first.amount > 0)
        return first;
    double low = 0;
    double high = amount;
    margins_low_ = margins_before_;
    EndCounts counts;
    double width_before = HUGE_VAL;
    for (int round = 0; round < 80; ++round) {
        double first = high;
        for (std::size_t i = 0; i < margins_high_.size(); ++i) {
            if (margins_high_[i] >= -at_level_mm)
                continue;
            if (margins_low_[i] <= at_level_mm && low == 0)
                return {0, i};
            const double at_low = counts.low * margins_low_[i];
            const double share =
                std::isfinite(at_low) ? at_low / (at_low - counts.high * margins_high_[i]) : 0.5;
            first = std::min(first, low + (high - low) * std::clamp(share, 0.0, 1.0));
        }
        const bool slow = round % 3 == 2 && high - low > width_before / 2;
        if (round % 3 == 2)
            width_before = high - low;
        if (slow || !(first > low && first < high))
            first = (low + high) / 2;
        if (high - low <= finest_push * scale_)
            return solve(high) ? Trial{high, leastOf(margins_high_)} : Trial{};
        if (!solve(first))
            return {};
        std::vector<double>& now = margins_now_;
        marginsOf(trial_, now);
        if (broken(now)) {
            counts.highMoves();
            high = first;
            margins_high_.swap(now);
            continue;
        }
        const std::size_t least = leastOf(now);
        for (std::size_t i = 0; i < now.size(); ++i) {
            if (margins_high_[i] < -at_level_mm && now[i] <= at_level_mm)
                return {first, now[least] <= now[i] && margins_high_[least] < -at_level_mm ? least : i};
        }
        counts.lowMoves();
        low = first;
        margins_low_.swap(now);
    }
    return solve(high) ? Trial{high, leastOf(margins_high_)} : Trial{};
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
    if (rates_ == Rates::known && turnsAtOnce())
        return {0, none, most};
    if (rates_ == Rates::known)
        stepper_.copyThroughRates(flow_rates_);
    const double sure = sure_share * scale_;
    double reach = std::min({most, ahead.amount, rates_ == Rates::known ? most : sure});
    if (reach == ahead.amount && ahead.mark.isAny() && !isSpent()) {
        found.amount = ahead.amount;
        if (stepper_.solveTo(state_, joined_, push_, ahead.mark, found.amount, trial_) && found.amount > 0 &&
            found.amount <= most) {
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
