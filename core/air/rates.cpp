#include "core/air/step.h"

#include <algorithm>
#include <cmath>

/// How a state changes with the push at its start, and where that leads.
namespace siphonwright {

/// What a cell is given from outside with the push.
void Stepper::give(const Task& task, std::size_t cell, double liquid_ml, double gas)
{
    const std::size_t row = task.joined.cells[cell].row;
    const std::size_t pressure = task.joined.cells[cell].pressure;
    source_rate_[cell] += liquid_ml;
    gas_source_rate_[cell] += gas;
    if (row != Joined::none)
        given_ml_rate_[row] += liquid_ml;
    if (pressure != Joined::none)
        given_gas_rate_[pressure] += gas;
}

void Stepper::setSourceRates(const Task& task)
{
    const std::size_t size = network_.cells.size();
    const Push& push = task.push;
    setZero(source_rate_, size);
    setZero(gas_source_rate_, size);
    setZero(given_ml_rate_, task.joined.bodies);
    setZero(given_gas_rate_, task.joined.closed.size());
    if (push.pour_ml != 0)
        give(task, push.feed, push.pour_ml, 0);
    if (push.valve_ml != 0 || push.valve_gas != 0) {
        const Throat& valve = network_.throats[push.valve];
        const bool to_right = task.start.throats[push.valve].to_right;
        give(task, to_right ? valve.left : valve.right, -push.valve_ml, -push.valve_gas);
        give(task, to_right ? valve.right : valve.left, push.valve_ml, push.valve_gas);
    }
    if (push.shrink == 0 && push.gas_leaves == nullptr)
        return;
    for (std::size_t i = 0; i < size; ++i) {
        const CellState& cell = task.start.cells[i];
        const bool leaves = push.gas_leaves != nullptr && (*push.gas_leaves)[i];
        give(task, i, task.joined.cells[i].holds ? -push.shrink * cell.liquid_ml : 0,
             leaves ? -cell.gas / push.gas_left : 0);
    }
}

/// So much of the push. One step or many: exponentials of the parts multiply, as do shares of what is left.
void Stepper::setAmount(const Task& task, double amount)
{
    const double shrink = task.push.shrink;
    amount_ = amount;
    liquid_amount_ = shrink == 0 ? amount : -std::expm1(-shrink * amount) / shrink;
    open_mm_ = task.start.open_pressure_mm + task.push.open_mm * amount;
}

bool Stepper::findRates(const FillState& start, const Joined& joined, const Push& push)
{
    const Task task{start, joined, push};
    ++effort_;
    bend_amount_ = 0;
    setSourceRates(task);
    setAmount(task, 0);
    firstGuess(task);
    const std::size_t unknowns = unknown_.size();
    const std::size_t pressures = pressure_.size();
    setZero(unknown_rate_, unknowns + pressures);
    if (!joined.isSquare())
        return false;
    setResting(task);
    findVolumes(task);
    setZero(residual_, unknowns);
    for (std::size_t body = 0; body < joined.bodies; ++body)
        residual_[body] = given_ml_rate_[body];
    gas_missing_.resize(pressures);
    for (std::size_t k = 0; k < pressures; ++k)
        gas_missing_[k] = -gasMissingRate(task, k);
    if (!findChange(task))
        return false;
    std::copy(change_.begin(), change_.end(), unknown_rate_.begin());
    std::copy(pressure_change_.begin(), pressure_change_.end(),
              unknown_rate_.begin() + static_cast<std::ptrdiff_t>(unknowns));
    setCellRates(task);
    return std::all_of(unknown_rate_.begin(), unknown_rate_.end(),
                       [](double rate) { return std::isfinite(rate); });
}

/// Of cells and throats, from those of the unknowns.
void Stepper::setCellRates(const Task& task)
{
    const Joined& joined = task.joined;
    const std::size_t size = network_.cells.size();
    setZero(liquid_rate_, size);
    setZero(level_rate_, size);
    pressure_rate_.resize(size);
    gained_.resize(size);
    for (std::size_t i = 0; i < size; ++i) {
        const std::size_t pressure = joined.cells[i].pressure;
        pressure_rate_[i] =
            task.push.open_mm + (pressure != Joined::none ? unknown_rate_[unknown_.size() + pressure] : 0);
        gained_[i] = -source_rate_[i];
    }
    for (const Joined::Moving& moving : joined.moving) {
        const std::size_t i = moving.cell;
        level_rate_[i] = unknown_rate_[moving.head] - pressure_rate_[i] + task.push.open_mm;
        liquid_rate_[i] = liquid_[i].ml_per_mm * level_rate_[i];
        gained_[i] += liquid_rate_[i];
    }
    setZero(through_rate_, network_.throats.size());
    for (const Joined::GasThroat& gas : joined.gas_throats)
        through_rate_[gas.throat] = unknown_rate_[gas.gas];
    findGains(task, gained_, through_rate_);
}

/// What the last solution is off the rates by.
void Stepper::keepBend(const Task& task)
{
    if (!(amount_ > 0))
        return;
    bend_ = unknown_;
    bend_.insert(bend_.end(), pressure_.begin(), pressure_.end());
    firstGuess(task);
    bend_amount_ = amount_;
    for (std::size_t k = 0; k < bend_.size(); ++k) {
        const double before = k < unknown_.size() ? unknown_[k] : pressure_[k - unknown_.size()];
        bend_[k] = (bend_[k] - before - amount_ * unknown_rate_[k]) / (amount_ * amount_);
    }
}

/// Goes along the rates and, no farther than twice as far as the last solution, along what bent away from
/// them there; a cell whose liquid is joined to no other holds just what it is given.
void Stepper::followRates(const Task& task)
{
    const Joined& joined = task.joined;
    const double bent = amount_ <= 2 * bend_amount_ ? amount_ * amount_ : 0;
    const auto ahead = [&](std::size_t k) {
        return amount_ * unknown_rate_[k] + (bent > 0 ? bent * bend_[k] : 0);
    };
    for (std::size_t k = 0; k < unknown_.size(); ++k)
        unknown_[k] += ahead(k);
    for (std::size_t k = 0; k < pressure_.size(); ++k)
        pressure_[k] =
            std::max(pressure_[k] + ahead(unknown_.size() + k), -0.999 * task.start.atmosphere_mm - open_mm_);
    for (const Joined::Moving& moving : joined.moving) {
        const std::size_t i = moving.cell;
        if (!moving.alone || liquid_rate_[i] == 0)
            continue;
        const Cell& cell = network_.cells[i];
        const double liquid_ml = task.start.cells[i].liquid_ml + amount_ * liquid_rate_[i];
        unknown_[moving.head] = pressureOf(task, i) + std::clamp(cell.volume.levelOf(liquid_ml),
                                                                 cell.floor_mm - 1, cell.top_mm + 1);
    }
}

} // namespace siphonwright
