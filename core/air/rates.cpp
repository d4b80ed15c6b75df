#include "core/air/step.h"

#include <algorithm>
#include <cmath>

/// How a state changes with the push at its start, and where that leads.
namespace siphonwright {

/// What setSources() gives for a small amount, per unit of it.
void Stepper::setSourceRates(const Task& task)
{
    const std::size_t size = network_.cells.size();
    source_rate_.assign(size, 0);
    gas_rate_.assign(size, 0);
    const Push& push = task.push;
    source_rate_[push.feed] += push.pour_ml;
    if (push.valve_ml != 0 || push.valve_gas != 0) {
        const Throat& valve = network_.throats[push.valve];
        const bool to_right = task.start.throats[push.valve].to_right;
        const std::size_t from = to_right ? valve.left : valve.right;
        const std::size_t to = to_right ? valve.right : valve.left;
        source_rate_[from] -= push.valve_ml;
        source_rate_[to] += push.valve_ml;
        gas_rate_[from] -= push.valve_gas;
        gas_rate_[to] += push.valve_gas;
    }
    for (std::size_t i = 0; i < size; ++i) {
        if (push.shrink != 0 && task.joined.holds[task.joined.body[i]])
            source_rate_[i] -= push.shrink * task.start.cells[i].liquid_ml;
        if (push.gas_leaves != nullptr && (*push.gas_leaves)[i])
            gas_rate_[i] -= task.start.cells[i].gas / push.gas_left;
    }
}

bool Stepper::findRates(const FillState& start, const Joined& joined, const Push& push)
{
    const Task task{start, joined, push};
    const std::size_t size = network_.cells.size();
    amount_ = 0;
    setSources(task);
    setSourceRates(task);
    firstGuess(task);
    setResting(task);
    findVolumes(task);
    findResiduals(task);
    const std::size_t unknowns = unknown_.size();
    bend_amount_ = 0;
    unknown_rate_.assign(unknowns, 0);
    if (residual_.size() != unknowns)
        return false;
    if (unknowns > 0) {
        setMatrix(task);
        findAmountColumn(task);
        residual_ = amount_column_;
        if (!eliminate())
            return false;
        for (std::size_t k = 0; k < unknowns; ++k)
            unknown_rate_[k] = -change_[k];
    }
    liquid_rate_.assign(size, 0);
    level_rate_.assign(size, 0);
    pressure_rate_.assign(size, 0);
    gained_.resize(size);
    alone_.assign(unknowns, 1);
    for (std::size_t i = 0; i < size; ++i) {
        const std::size_t head = joined.head_at[joined.reach[i]];
        const std::size_t pressure = joined.pressure_at[joined.region[i]];
        pressure_rate_[i] = push.open_mm + (pressure != Joined::none ? unknown_rate_[pressure] : 0);
        if (joined.live[i] && head != Joined::none) {
            level_rate_[i] = unknown_rate_[head] - pressure_rate_[i] + push.open_mm;
            liquid_rate_[i] = liquid_[i].ml_per_mm * level_rate_[i];
            if (joined.reach[i] != i)
                alone_[head] = 0;
        }
        gained_[i] = liquid_rate_[i] - source_rate_[i];
    }
    through_rate_.assign(network_.throats.size(), 0);
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        if (joined.gas_at[j] != Joined::none)
            through_rate_[j] = unknown_rate_[joined.gas_at[j]];
    }
    findGains(task, gained_, through_rate_);
    return std::all_of(unknown_rate_.begin(), unknown_rate_.end(),
                       [](double rate) { return std::isfinite(rate); });
}

/// What the last solution is off the rates by.
void Stepper::keepBend(const Task& task)
{
    if (!(amount_ > 0))
        return;
    change_ = unknown_;
    firstGuess(task);
    bend_amount_ = amount_;
    bend_.resize(unknown_.size());
    for (std::size_t k = 0; k < unknown_.size(); ++k)
        bend_[k] = (change_[k] - unknown_[k] - amount_ * unknown_rate_[k]) / (amount_ * amount_);
}

/// Goes along the rates and, no farther than twice as far as the last solution, along what bent away from
/// them there; a cell whose liquid is joined to no other holds just what it is given.
void Stepper::followRates(const Task& task)
{
    const Joined& joined = task.joined;
    const double bent = amount_ <= 2 * bend_amount_ ? amount_ * amount_ : 0;
    for (std::size_t k = 0; k < unknown_rate_.size(); ++k)
        unknown_[k] += amount_ * unknown_rate_[k] + (bent > 0 ? bent * bend_[k] : 0);
    for (const std::size_t region : joined.closed) {
        double& pressure = unknown_[joined.pressure_at[region]];
        pressure = std::max(pressure, -0.999 * task.start.atmosphere_mm - open_mm_);
    }
    for (const Joined::Moving& moving : joined.moving) {
        const std::size_t i = moving.cell;
        if (!alone_[moving.head] || liquid_rate_[i] == 0)
            continue;
        const Cell& cell = network_.cells[i];
        const double liquid_ml = task.start.cells[i].liquid_ml + amount_ * liquid_rate_[i];
        unknown_[moving.head] =
            pressureOf(task, joined.region[i]) +
            std::clamp(cell.volume.levelOf(liquid_ml), cell.floor_mm - 1, cell.top_mm + 1);
    }
}

} // namespace siphonwright
