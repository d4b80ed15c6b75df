#include "core/air/frames.h"

#include "core/air/step.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double least_frame_ml = 1e-6;

FillFrame viewOf(const FillNetwork& network, const FillState& state, const Joined& joined)
{
    FillFrame frame;
    frame.jacket_level_mm = state.cells[0].level_mm;
    frame.poured_ml = state.poured_ml;
    frame.cells.resize(state.cells.size());
    for (std::size_t i = 0; i < state.cells.size(); ++i) {
        const CellState& cell = state.cells[i];
        CellView& view = frame.cells[i];
        view.level_mm = cell.level_mm;
        view.liquid_ml = cell.liquid_ml;
        view.gas_ml = i > 0 && !cell.full ? network.cells[i].capacity_ml - cell.liquid_ml : 0;
        view.pressure_mm = cell.pressure_mm;
        view.sealed = joined.cells[i].has_gas;
    }
    return frame;
}

/// Looks between the ends of steps.
class Between {
public:
    Between(const FillNetwork& network, std::size_t count) : network_(network), stepper_(network)
    {
        frames_.reserve(count + count / 4 + 16);
    }

    void state(const FillState& state, std::size_t events)
    {
        frames_.push_back(frameOf(network_, state));
        frames_.back().events = events;
    }

    void begin(const FillRun::Step& step)
    {
        step_ = &step;
        start_ = step.start;
        join(network_, start_, step.push, Joined::none, joined_);
        with_rates_ = stepper_.findRates(start_, joined_, step.push);
    }

    void at(double amount)
    {
        if (!stepper_.solve(start_, joined_, step_->push, amount, with_rates_, state_))
            return;
        frames_.push_back(viewOf(network_, state_, joined_));
        frames_.back().events = step_->events;
    }

    std::vector<FillFrame> take() { return std::move(frames_); }

private:
    const FillNetwork& network_;
    Stepper stepper_;
    Joined joined_;
    const FillRun::Step* step_ = nullptr;
    bool with_rates_ = false;
    FillState start_;
    FillState state_;
    std::vector<FillFrame> frames_;
};

bool pours(const FillRun::Step& step)
{
    return step.push.pour_ml != 0;
}

} // namespace

FillFrame frameOf(const FillNetwork& network, const FillState& state)
{
    Joined joined;
    FillState copy = state;
    join(network, copy, {}, Joined::none, joined);
    return viewOf(network, state, joined);
}

std::vector<FillFrame> framesAlong(const FillNetwork& network, const std::vector<FillRun::Step>& steps,
                                   const FillState& end, std::size_t count)
{
    Between between(network, count);
    const double poured_ml = end.poured_ml - (steps.empty() ? end : steps.front().start).poured_ml;
    const double frame_ml = std::max(least_frame_ml, poured_ml / static_cast<double>(count));
    between.state(steps.empty() ? end : steps.front().start, 0);
    const double first_ml = end.poured_ml - poured_ml;
    double kept_ml = 0; // frames of pouring, in units of frame_ml
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const FillRun::Step& step = steps[i];
        const FillState& after = i + 1 < steps.size() ? steps[i + 1].start : end;
        if (i > 0 && pours(step) != pours(steps[i - 1]))
            between.state(step.start, steps[i - 1].events);
        const double moved_ml = std::abs(after.cells[0].liquid_ml - step.start.cells[0].liquid_ml);
        const double from = (step.start.poured_ml - first_ml) / frame_ml;
        const double to = (after.poured_ml - first_ml) / frame_ml;
        between.begin(step);
        if (pours(step)) {
            for (; kept_ml + 1 <= to + 1e-9; ++kept_ml)
                between.at(std::max(0.0, kept_ml + 1 - from) * frame_ml / step.push.pour_ml);
        } else {
            const int parts = static_cast<int>(std::min(1000.0, moved_ml / frame_ml));
            for (int k = 1; k <= parts; ++k)
                between.at(step.amount * k / (parts + 1));
        }
    }
    between.state(end, steps.empty() ? 0 : steps.back().events);
    return between.take();
}

} // namespace siphonwright
