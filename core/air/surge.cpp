#include "core/air/run.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

/// Over the crown so far a level is back.
constexpr double back_mm = 1e-6;
/// Of the whole: less is no surge.
constexpr double least_surge_share = 1e-9;

} // namespace

/// Lets gas surge through a throat that began to bubble at the present place, if that is why nothing goes on.
bool FillRun::surge()
{
    for (std::size_t i = changes_.size(); i-- > 0;) {
        const std::size_t throat = changes_[i].throat;
        if (state_.throats[throat].mode == Mode::bubbling && surge(throat))
            return true;
    }
    return false;
}

/// Gas passes, nothing being poured, until the level that it comes from is back at the crown. False, with
/// nothing changed, if that level does not sink first.
bool FillRun::surge(std::size_t throat)
{
    const Push push_before = push_;
    const Goal* const goal_before = goal_;
    const std::vector<Mark>* const goal_marks_before = goal_marks_;
    const double limit_before = limit_;
    const double scale_before = scale_;
    const double at_before = at_;
    const double last_surge_before = last_surge_at_;
    const FillState state_before = state_;
    const std::vector<Change> changes_before = changes_;
    const std::size_t events_before = events_.size();

    const bool to_right = state_.throats[throat].to_right;
    const std::size_t from = to_right ? network_.throats[throat].left : network_.throats[throat].right;
    const double crown_mm = network_.throats[throat].crown_mm;
    // A cell that ends at the crown is back when it is as good as full.
    const double back_at_mm = std::min(crown_mm + back_mm, network_.cells[from].top_mm - back_mm);
    state_.throats[throat].mode = Mode::surging;
    Push gas;
    gas.valve = throat;
    gas.valve_gas = state_.atmosphere_mm;
    const double scale = std::max(1.0, network_.hoses_and_chambers_ml);
    // Gas that bubbles on from where it comes to needs no more room there.
    const std::size_t to = to_right ? network_.throats[throat].right : network_.throats[throat].left;
    const auto goesOn = [this, throat, to](const FillState& state) {
        for (std::size_t j = 0; j < network_.throats.size(); ++j) {
            const Throat& other = network_.throats[j];
            if (j != throat && state.throats[j].mode == Mode::bubbling &&
                (state.throats[j].to_right ? other.left : other.right) == to)
                return true;
        }
        return false;
    };
    const bool went_on = goesOn(state_);
    const Goal back = [&](const FillState& state) {
        return !went_on && goesOn(state) ? -1 : back_at_mm - state.cells[from].level_mm;
    };
    const bool ended = run(gas, scale, scale, back, {Mark::level(from, back_at_mm, true)}) == RunEnd::goal;
    const bool goes_on = !went_on && goesOn(state_);
    const bool surged = ended && (goes_on || at_ > least_surge_share * scale);

    push_ = push_before;
    goal_ = goal_before;
    goal_marks_ = goal_marks_before;
    limit_ = limit_before;
    scale_ = scale_before;
    at_ = at_before;
    last_surge_at_ = last_surge_before;
    joined_known_ = false;
    if (surged) {
        setMode(throat, {goes_on ? Mode::bubbling : Mode::sealed, to_right});
        changes_.clear();
        last_change_at_ = at_;
        last_surge_at_ = at_;
        return true;
    }
    state_ = state_before;
    changes_ = changes_before;
    events_.resize(events_before);
    return false;
}

} // namespace siphonwright
