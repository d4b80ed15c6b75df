#include "core/air/run.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

/// Where a run leads in the present modes, by its rates.
namespace siphonwright {
namespace {

/// Of the push: what changes by less does not.
constexpr double no_rate = 1e-9;
/// So far along the push, of its scale, a goal's change is looked at.
constexpr double glance = 1e-7;

} // namespace

void FillRun::Ahead::take(double other_amount, std::size_t other_margin, const Mark& other_mark)
{
    if (other_amount < amount)
        *this = {other_amount, other_margin, other_mark};
}

/// How much of the push takes a level to a mark if all goes on as it begins.
double FillRun::amountTo(const Mark& mark, double margin) const
{
    if (!(margin > at_level_mm))
        return 0;
    // Cells that share the level take their share.
    const Joined::OfCell& of = joined_.cells[mark.cell];
    double wanted_ml = 0;
    double together = 0;
    for (const Joined::Moving& moving : joined_.moving) {
        const std::size_t i = moving.cell;
        if (joined_.cells[i].reach != of.reach || joined_.cells[i].region != of.region)
            continue;
        wanted_ml += network_.cells[i].volume.under(mark.level_mm).liquid_ml - state_.cells[i].liquid_ml;
        together += stepper_.liquidRate(i);
    }
    const double amount = wanted_ml / together;
    return amount > 0 ? amount : margin / std::abs(stepper_.levelRate(mark.cell));
}

/// Whether a level goes to a mark, if all goes on as it begins.
bool FillRun::goesTo(const Mark& mark) const
{
    if (!mark.isLevel())
        return false;
    const double rate = stepper_.liquidRate(mark.cell);
    return std::abs(rate) > no_rate && (rate > 0) == mark.rising;
}

/// What is full has no margin to its crown before gas comes in; where gas does so now, it is from its top on.
double FillRun::marginAhead(std::size_t i, const Mark& mark) const
{
    const bool fills_with_gas = mark.isLevel() && !mark.rising && joined_.cells[mark.cell].live &&
                                state_.cells[mark.cell].full && !std::isfinite(margins_before_[i]);
    return fills_with_gas ? std::max(0.0, state_.cells[mark.cell].level_mm - mark.level_mm)
                          : margins_before_[i];
}

/// What a mark at a valve wants to be nothing.
double FillRun::apart(const Mark& mark, const CellState& left, const CellState& right) const
{
    const Throat& valve = network_.throats[push_.valve];
    return mark.what == Mark::What::one_head ? headAt(valve, left) - headAt(valve, right)
                                             : left.pressure_mm - right.pressure_mm;
}

/// A cell a little along the push if all goes on as it begins.
CellState FillRun::glanceAtCell(std::size_t i) const
{
    const double along = glance * scale_;
    CellState cell = state_.cells[i];
    cell.level_mm += along * stepper_.levelRate(i);
    cell.liquid_ml += along * stepper_.liquidRate(i);
    cell.pressure_mm += along * stepper_.pressureRate(i);
    cell.head_mm += along * (stepper_.levelRate(i) + stepper_.pressureRate(i));
    return cell;
}

/// How much of the push leads to where a margin is none that a little along the push is another.
double FillRun::amountToNone(double margin, double glanced_margin) const
{
    if (!(margin > at_level_mm))
        return 0;
    const double fall = margin - glanced_margin;
    return fall > 0 ? margin / fall * glance * scale_ : HUGE_VAL;
}

/// How much of the push leads to the goal if its margin goes on to fall as it begins to.
double FillRun::amountToGoal()
{
    const double margin = (*goal_)(state_);
    if (!(margin > at_level_mm))
        return 0;
    glanced_ = state_;
    for (std::size_t i = 0; i < glanced_.cells.size(); ++i)
        glanced_.cells[i] = glanceAtCell(i);
    return amountToNone(margin, (*goal_)(glanced_));
}

/// The same to what a mark at a valve wants to be nothing.
double FillRun::amountAtValve(const Mark& mark) const
{
    const Throat& valve = network_.throats[push_.valve];
    return amountToNone(std::abs(apart(mark, state_.cells[valve.left], state_.cells[valve.right])),
                        std::abs(apart(mark, glanceAtCell(valve.left), glanceAtCell(valve.right))));
}

/// The margin that is used up first if all goes on as it begins, and what takes it there; the goal is the
/// last.
FillRun::Ahead FillRun::lookAhead()
{
    Ahead ahead;
    findMarks(network_, state_, covered_, marks_);
    for (std::size_t i = 0; i < marks_.size(); ++i) {
        if (!goesTo(marks_[i]))
            continue;
        const double margin = marginAhead(i, marks_[i]);
        if (std::isfinite(margin))
            ahead.take(amountTo(marks_[i], margin), i, marks_[i]);
    }
    const std::size_t last = margins_before_.size() - 1;
    const double goal = margins_before_[last];
    if (!std::isfinite(goal))
        return ahead;
    for (const Mark& mark : *goal_marks_) {
        const double to = !mark.isLevel() ? amountAtValve(mark)
                          : goesTo(mark)  ? amountTo(mark, goal)
                                          : HUGE_VAL;
        ahead.take(to, last, mark);
    }
    if (goal_marks_->empty() || !(goal > at_level_mm))
        ahead.take(amountToGoal(), last, {});
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

/// Changes the first weir, bubbling or blowing that runs against its direction from the start, once at a
/// place: what comes back to it there, or after a surge, is looked at step by step. True if one did.
bool FillRun::turnsAtOnce()
{
    if (at_ - last_surge_at_ <= same_place * scale_)
        return false;
    for (std::size_t j = 0; j < state_.throats.size(); ++j) {
        const ThroatState next = turnedMode(state_.throats[j]);
        const auto came_back = [j, next](const Change& other) {
            return other.throat == j && other.left == next;
        };
        if (next == state_.throats[j] || stepper_.throughRate(j) >= -no_rate ||
            std::any_of(changes_.begin(), changes_.end(), came_back))
            continue;
        change(j, next);
        last_change_at_ = at_;
        return true;
    }
    return false;
}

} // namespace siphonwright
