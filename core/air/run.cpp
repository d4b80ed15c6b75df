#include "core/air/run.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

constexpr int most_rounds = 4000;         ///< in one run
constexpr long most_effort = 120'000;     ///< in all runs; ten times what usual loops take
constexpr long effort_in_vain = 10;       ///< of a step without a solution; of any other 1
constexpr std::size_t most_changes = 400; ///< at one place
constexpr int most_halvings = 40;
constexpr double same_place = 1e-9; ///< of the scale
constexpr double stepped_over = 2e-7;
constexpr double most_stepped_over = 1e-3;
constexpr int few_turns = 20;
constexpr int most_doublings = few_turns + 11;
constexpr double finest = 1e-13;
constexpr double tried = 1e-6;
/// Flow against its direction: rounding up to this, ml, and this share of the step.
constexpr double rounding_ml = 1e-9;

} // namespace

FillRun::FillRun(const FillNetwork& network, FillState state)
    : network_(network), state_(std::move(state)), stepper_(network)
{
    covered_.assign(network.elements.size(), 0);
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

bool FillRun::solve(double amount)
{
    if (!joined_known_) {
        const std::vector<ThroatState> before = state_.throats;
        join(network_, state_, push_, newest_, joined_);
        for (std::size_t j = 0; j < before.size(); ++j) {
            if (before[j] != state_.throats[j])
                recordChange(j, before[j], state_.throats[j]);
        }
        joined_known_ = true;
    }
    if (effort_ > most_effort)
        return false;
    const bool solved = stepper_.solve(state_, joined_, push_, amount, trial_);
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
        if (high - low <= finest * scale_)
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

bool FillRun::guarded(std::size_t throat, ThroatState next) const
{
    for (std::size_t i = changes_.size(); i-- > 0;) {
        if (changes_[i].throat != throat)
            return false;
        if (changes_[i].left == next)
            return true;
    }
    return false;
}

void FillRun::change(std::size_t throat, ThroatState next)
{
    changes_.push_back({throat, state_.throats[throat]});
    const Mode before = state_.throats[throat].mode;
    setMode(throat, next);
    if (before == Mode::dry)
        stopOtherWeirs(throat);
}

/// Whether the rest runs on without this weir: then all others run their way, and its level does not rise.
bool FillRun::canStopAlone(std::size_t weir)
{
    const FillState before = state_;
    const Throat& throat = network_.throats[weir];
    const std::size_t upper = state_.throats[weir].to_right ? throat.left : throat.right;
    state_.throats[weir] = {Mode::dry, true};
    joined_known_ = false;
    bool can = solve(tried * scale_) && trial_.cells[upper].level_mm <= throat.floor_mm + at_level_mm;
    for (std::size_t j = 0; j < network_.throats.size() && can; ++j)
        can = state_.throats[j].mode != Mode::weir || stepper_.through(j) >= -rounding_ml;
    state_ = before;
    joined_known_ = false;
    return can;
}

/// A throat that newly joins liquid all the way round its loop stops the weirs of the other stream, which ran
/// the other way round: one of them, if the rest then runs on, else all of them; those that still run are
/// opened again by their levels. A pool stops all.
void FillRun::stopOtherWeirs(std::size_t throat)
{
    const auto joins = [this](std::size_t j) {
        const Mode mode = state_.throats[j].mode;
        return mode == Mode::weir || mode == Mode::pool || mode == Mode::sealed || mode == Mode::bubbling ||
               mode == Mode::surging;
    };
    if (!joins(throat))
        return;
    std::vector<char> reached(network_.cells.size(), 0);
    reached[network_.throats[throat].left] = 1;
    for (bool grows = true; grows;) {
        grows = false;
        for (std::size_t j = 0; j < network_.throats.size(); ++j) {
            const Throat& other = network_.throats[j];
            if (j == throat || !joins(j) || reached[other.left] == reached[other.right])
                continue;
            reached[other.left] = reached[other.right] = 1;
            grows = true;
        }
    }
    if (!reached[network_.throats[throat].right])
        return;
    std::vector<std::size_t> others;
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const bool against = state_.throats[throat].mode != Mode::weir ||
                             state_.throats[j].to_right != state_.throats[throat].to_right;
        if (j != throat && against && state_.throats[j].mode == Mode::weir &&
            network_.throats[j].loop == network_.throats[throat].loop)
            others.push_back(j);
    }
    newest_ = throat;
    for (const std::size_t j : others) {
        if (others.size() > 1 && canStopAlone(j)) {
            others = {j};
            break;
        }
    }
    for (const std::size_t j : others) {
        changes_.push_back({j, state_.throats[j]});
        setMode(j, {Mode::dry, true});
    }
    newest_ = throat;
}

void FillRun::commit(double amount)
{
    std::swap(state_, trial_);
    at_ += amount;
    sumGas(state_, joined_);
    if (watch_)
        watch_(state_);
    if (at_ - last_change_at_ > same_place * scale_)
        changes_.clear();
}

/// Where no step is possible at all: bubbling whose level has come to stand over the crown, or a weir's under
/// its floor, cannot go on. True if one was ended.
bool FillRun::endWithoutRoom()
{
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const ThroatState now = state_.throats[j];
        const Throat& throat = network_.throats[j];
        const double level = state_.cells[now.to_right ? throat.left : throat.right].level_mm;
        if ((now.mode == Mode::bubbling && level > throat.crown_mm + at_level_mm) ||
            (now.mode == Mode::weir && level < throat.floor_mm - at_level_mm)) {
            change(j, turnedMode(now));
            last_change_at_ = at_;
            return true;
        }
    }
    return false;
}

/// Goes on a little in the present modes, whatever is broken. Where two sets of modes take turns all along,
/// the little doubles from turn to turn, up to a limit.
bool FillRun::stepOver()
{
    turns_ = at_ - last_over_at_ < most_stepped_over * scale_ ? std::min(turns_ + 1, most_doublings) : 0;
    const double amount = trySolve(std::ldexp(stepped_over, std::max(0, turns_ - few_turns)) * scale_);
    if (!(amount > 0))
        return false;
    commit(amount);
    last_over_at_ = at_;
    changes_.clear();
    return true;
}

/// Weirs and bubbling that would run backwards in the last step solved change at its start.
FillRun::Turn FillRun::turnFlows(double amount)
{
    Turn turn = Turn::none;
    const double allowed = rounding_ml + 1e-6 * std::min(1.0, amount / scale_);
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const ThroatState now = state_.throats[j];
        const bool has_sense =
            now.mode == Mode::weir || now.mode == Mode::bubbling || now.mode == Mode::blowing;
        if (!has_sense || stepper_.through(j) >= -allowed)
            continue;
        const ThroatState next = turnedMode(now);
        if (guarded(j, next)) {
            turn = Turn::blocked;
            continue;
        }
        change(j, next);
        last_change_at_ = at_;
        return Turn::changed;
    }
    return turn;
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

RunEnd FillRun::run(const Push& push, double limit, double scale, const Goal& goal)
{
    push_ = push;
    goal_ = &goal;
    scale_ = scale;
    at_ = 0;
    last_change_at_ = 0;
    last_over_at_ = -scale;
    changes_.clear();
    joined_known_ = false;
    double most = HUGE_VAL;
    for (int round = 0; round < most_rounds; ++round) {
        if (!(limit - at_ > finest * scale_))
            return RunEnd::limit;
        const double amount = trySolve(std::min({limit - at_, scale_ / 8, most}));
        most = HUGE_VAL;
        if (!(amount > 0) && (surge() || endWithoutRoom()))
            continue;
        if (!(amount > 0) || changes_.size() > most_changes)
            return RunEnd::failed;
        marginsOf(state_, margins_before_);
        marginsOf(trial_, margins_high_);
        Trial found{amount, none};
        if (broken(margins_high_)) {
            found = locate(amount);
            if (found.used_up == none) {
                most = amount / 2;
                continue;
            }
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
