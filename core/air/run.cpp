#include "core/air/run.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

constexpr int most_rounds = 20'000;       ///< in one run
constexpr std::size_t most_changes = 400; ///< at one place
constexpr double stepped_over = 2e-7;
constexpr double most_stepped_over = 1e-3;
constexpr double finest = 1e-13;
/// Steps of less of the scale creep up to where no solution is left; so many one after the other are enough.
constexpr double creeping = 1e-7;
constexpr int most_creeps = 20;
constexpr int few_turns = 20;
constexpr int most_doublings = few_turns + 11;

} // namespace

FillRun::FillRun(const FillNetwork& network, FillState state)
    : network_(network), state_(std::move(state)), stepper_(network)
{
    covered_.assign(network.elements.size(), 0);
    for (std::size_t i = 0; i < covered_.size(); ++i) {
        const ElementTop& element = network.elements[i];
        if (element.height_mm - state_.cells[element.cell].level_mm > at_level_mm)
            continue;
        covered_[i] = 1;
        record(FillEventKind::element_covered, i);
    }
}

void FillRun::record(FillEventKind kind, std::size_t place, bool to_right)
{
    FillEvent event;
    event.kind = kind;
    event.throat = place;
    event.to_right = to_right;
    event.level_mm = state_.cells[0].level_mm;
    event.poured_ml = state_.poured_ml;
    event.order = events_.size();
    events_.push_back(event);
}

void FillRun::recordChange(std::size_t throat, ThroatState from, ThroatState to)
{
    const auto closed = [](Mode mode) {
        return mode == Mode::sealed || mode == Mode::bubbling || mode == Mode::surging;
    };
    if (from.mode == Mode::weir)
        record(FillEventKind::stops_spilling, throat, from.to_right);
    if (from.mode == Mode::bubbling)
        record(FillEventKind::stops_bubbling, throat, from.to_right);
    if (closed(from.mode) && !closed(to.mode))
        record(FillEventKind::opens, throat);
    if (to.mode == Mode::weir)
        record(FillEventKind::spills, throat, to.to_right);
    if (to.mode == Mode::sealed && !closed(from.mode))
        record(FillEventKind::seals, throat);
    if (to.mode == Mode::bubbling)
        record(FillEventKind::bubbles, throat, to.to_right);
}

void FillRun::setMode(std::size_t throat, ThroatState mode)
{
    recordChange(throat, state_.throats[throat], mode);
    state_.throats[throat] = mode;
    newest_ = throat;
    joined_known_ = false;
}

void FillRun::commit(double amount)
{
    if (steps_ != nullptr)
        steps_->push_back(Step{state_, push_, amount, events_.size()});
    std::swap(state_, trial_);
    rates_ = Rates::unknown;
    at_ += amount;
    if (push_.gas_leaves != nullptr)
        push_.gas_left -= amount;
    sumGas(state_, joined_);
    if (at_ - last_change_at_ > same_place * scale_)
        changes_.clear();
}

/// Goes on a little in the present modes, whatever is broken. Where two sets of modes take turns all along,
/// the little doubles from turn to turn, up to a limit.
bool FillRun::stepOver()
{
    turns_ = at_ - last_over_at_ < most_stepped_over * scale_ ? std::min(turns_ + 1, most_doublings) : 0;
    const double little = std::ldexp(stepped_over, std::max(0, turns_ - few_turns)) * scale_;
    const double amount = trySolve(std::min(little, limit_ - at_));
    if (!(amount > 0))
        return false;
    commit(amount);
    last_over_at_ = at_;
    changes_.clear();
    return true;
}

/// What follows when a margin is used up. False if the guard forbids it.
bool FillRun::useUp(std::size_t margin)
{
    const std::size_t throats = network_.throats.size();
    if (margin < 2 * throats) {
        const std::size_t throat = margin / 2;
        const ThroatState next = nextMode(network_, state_, throat, margin % 2);
        if (guarded(throat, next))
            return false;
        change(throat, next);
    } else if (margin < 2 * throats + network_.bleeds.size()) {
        state_.bleed_open[margin - 2 * throats] = 0;
        record(FillEventKind::bleed_closes, margin - 2 * throats);
        joined_known_ = false;
        changes_.clear();
    } else {
        covered_[margin - 2 * throats - network_.bleeds.size()] = 1;
        record(FillEventKind::element_covered, margin - 2 * throats - network_.bleeds.size());
    }
    last_change_at_ = at_;
    return true;
}

RunEnd FillRun::run(const Push& push, double limit, double scale, const Goal& goal,
                    const std::vector<Mark>& goal_marks)
{
    push_ = push;
    goal_ = &goal;
    goal_marks_ = &goal_marks;
    limit_ = limit;
    scale_ = scale;
    at_ = 0;
    last_change_at_ = 0;
    last_over_at_ = -scale;
    last_surge_at_ = -scale;
    changes_.clear();
    joined_known_ = false;
    double most = HUGE_VAL;
    int creeps = 0;
    for (int round = 0; round < most_rounds; ++round) {
        if (!(limit - at_ > finest * scale_))
            return RunEnd::limit;
        if (isSpent())
            return RunEnd::failed;
        const Trial found = advance(std::min(limit - at_, most));
        most = HUGE_VAL;
        if (changes_.size() > most_changes)
            return RunEnd::failed;
        if (found.at_most > 0) {
            most = found.at_most;
            continue;
        }
        creeps = found.used_up == none && found.amount < creeping * scale_ ? creeps + 1 : 0;
        if (found.used_up == none && (!(found.amount > 0) || creeps > most_creeps)) {
            creeps = 0;
            if (surge() || endWithoutRoom() || giveWay())
                continue;
            return RunEnd::failed;
        }
        if (found.amount > 0) {
            const Turn turn = turnFlows(found.amount);
            if (turn == Turn::blocked && !surge() && !stepOver())
                return RunEnd::failed;
            if (turn != Turn::none)
                continue;
            commit(found.amount);
        }
        if (found.used_up == none)
            continue;
        if (found.used_up + 1 == margins_before_.size())
            return RunEnd::goal;
        if (!useUp(found.used_up) && !surge() && !stepOver())
            return RunEnd::failed;
    }
    return RunEnd::failed;
}

} // namespace siphonwright
