#include "core/air/run.h"

#include <algorithm>
#include <cmath>

/// The modes of throats that change on the way.
namespace siphonwright {
namespace {

constexpr double tried = 1e-6;
/// Flow against its direction: rounding up to this, ml, and this share of the step.
constexpr double rounding_ml = 1e-9;

} // namespace

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

/// Goes on a little, with a throat in another mode, and looks at what is then in trial_.
template <typename Look>
bool FillRun::tryWith(std::size_t throat, ThroatState mode, Look isRight)
{
    const FillState before = state_;
    const std::size_t events_before = events_.size();
    state_.throats[throat] = mode;
    joined_known_ = false;
    const bool right = solve(tried * scale_) && isRight();
    state_ = before;
    events_.resize(events_before);
    joined_known_ = false;
    return right;
}

/// Whether what runs in a mode ran its way in the last step solved.
bool FillRun::allRun(Mode mode) const
{
    for (std::size_t j = 0; j < network_.throats.size(); ++j)
        if (state_.throats[j].mode == mode && stepper_.through(j) < -rounding_ml)
            return false;
    return true;
}

/// Whether the rest runs on without this weir: then all others run their way, and its level does not rise.
bool FillRun::canStopAlone(std::size_t weir)
{
    const Throat& throat = network_.throats[weir];
    const std::size_t upper = state_.throats[weir].to_right ? throat.left : throat.right;
    return tryWith(weir, {Mode::dry, true}, [&] {
        return trial_.cells[upper].level_mm <= throat.floor_mm + at_level_mm && allRun(Mode::weir);
    });
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

/// Weirs and bubbling each hold a level or a head, and a chain of them may hold both ends of what lies
/// between: what is pushed in there then has nowhere to go. One of them ends: the first whose end lets all
/// others run on; if there is none, the first with whose end a step can be taken at all. True if one did.
bool FillRun::giveWay()
{
    const auto allGoesOn = [this] {
        marginsOf(trial_, margins_high_);
        return !broken(margins_high_) && allRun(Mode::weir) && allRun(Mode::bubbling);
    };
    for (const bool all : {true, false}) {
        for (std::size_t j = 0; j < network_.throats.size(); ++j) {
            const ThroatState next = turnedMode(state_.throats[j]);
            if (next == state_.throats[j] || guarded(j, next) ||
                !tryWith(j, next, [&] { return !all || allGoesOn(); }))
                continue;
            change(j, next);
            last_change_at_ = at_;
            return true;
        }
    }
    return false;
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

} // namespace siphonwright
