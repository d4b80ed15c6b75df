#include "core/air/step.h"

#include <algorithm>
#include <cmath>

/// The equations of a step and their slopes. Rows stand in one order in both: bodies, weirs, regions,
/// bubbling.
namespace siphonwright {

std::size_t gasFrom(const Throat& throat, const ThroatState& state)
{
    // Gurgling gas goes against the liquid.
    const bool to_right = state.to_right == (state.mode != Mode::gurgling);
    return to_right ? throat.left : throat.right;
}

std::size_t gasTo(const Throat& throat, const ThroatState& state)
{
    return gasFrom(throat, state) == throat.left ? throat.right : throat.left;
}

/// At a throat: of the cell's liquid, or of its gas where no liquid reaches up there.
double Stepper::headAt(const Task& task, const Throat& throat, std::size_t cell) const
{
    return std::max(level_[cell], throat.floor_mm) + pressureOf(task, task.joined.region[cell]);
}

/// Conservation of liquid, one row a body that moves.
void Stepper::addBodies(const Task& task)
{
    residual_.clear();
    row_.assign(network_.cells.size(), Joined::none);
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        const std::size_t body = task.joined.body[i];
        if (!task.joined.moves[body])
            continue;
        if (row_[body] == Joined::none) {
            row_[body] = residual_.size();
            residual_.push_back(0);
        }
        residual_[row_[body]] += liquid_[i].liquid_ml - task.start.cells[i].liquid_ml - source_[i];
    }
}

/// What is missing from P G = n in a region, as a volume at the atmosphere.
double Stepper::gasMissing(const Task& task, std::size_t region) const
{
    const double atmosphere = task.start.atmosphere_mm;
    double gas = task.joined.gas[region];
    for (std::size_t i = region; i < network_.cells.size(); ++i)
        gas += task.joined.region[i] == region ? gas_source_[i] : 0;
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        if (task.joined.gas_at[j] == Joined::none)
            continue;
        const double passed = unknown_[task.joined.gas_at[j]] * atmosphere;
        const ThroatState& state = task.start.throats[j];
        if (task.joined.region[gasFrom(network_.throats[j], state)] == region)
            gas -= passed;
        if (task.joined.region[gasTo(network_.throats[j], state)] == region)
            gas += passed;
    }
    const double pressure = unknown_[task.joined.pressure_at[region]] + open_mm_ + atmosphere;
    return (pressure * gas_volume_[region] - gas) / atmosphere;
}

/// Returns the largest residual.
double Stepper::findResiduals(const Task& task)
{
    ++effort_;
    addBodies(task);
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const Throat& throat = network_.throats[j];
        const ThroatState& state = task.start.throats[j];
        if (state.mode == Mode::weir)
            residual_.push_back(level_[state.to_right ? throat.left : throat.right] - throat.floor_mm);
    }
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        if (task.joined.has_gas[i])
            residual_.push_back(gasMissing(task, i));
    }
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const Throat& throat = network_.throats[j];
        const ThroatState& state = task.start.throats[j];
        if (state.mode == Mode::bubbling)
            residual_.push_back(level_[gasFrom(throat, state)] - throat.crown_mm);
        else if (state.mode == Mode::blowing)
            residual_.push_back(level_[gasFrom(throat, state)] -
                                letsGasUnder(network_, throat, gasFrom(throat, state)));
        else if (state.mode == Mode::gurgling)
            residual_.push_back(headAt(task, throat, throat.left) - headAt(task, throat, throat.right));
    }
    if (task.isToLevel())
        residual_.push_back(level_[task.cell] - task.level_mm);
    double largest = 0;
    for (const double residual : residual_)
        largest = std::isfinite(residual) ? std::max(largest, std::abs(residual)) : HUGE_VAL;
    return largest;
}

void Stepper::add(std::size_t row, std::size_t column, double value)
{
    if (column != Joined::none)
        at(row, column) += value;
}

/// The level of a cell is its reach's head less its region's pressure.
void Stepper::addLevel(const Task& task, std::size_t row, std::size_t cell, double factor)
{
    const std::size_t head = task.joined.head_at[task.joined.reach[cell]];
    if (!task.joined.live[cell] || head == Joined::none)
        return;
    add(row, head, factor);
    add(row, task.joined.pressure_at[task.joined.region[cell]], -factor);
}

void Stepper::addRegion(const Task& task, std::size_t row, std::size_t region)
{
    const Joined& joined = task.joined;
    const double atmosphere = task.start.atmosphere_mm;
    const double share = (unknown_[joined.pressure_at[region]] + open_mm_ + atmosphere) / atmosphere;
    add(row, joined.pressure_at[region], gas_volume_[region] / atmosphere);
    for (std::size_t i = region; i < network_.cells.size(); ++i) {
        if (joined.region[i] == region)
            addLevel(task, row, i, -share * liquid_[i].ml_per_mm);
    }
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        if (joined.gas_at[j] == Joined::none)
            continue;
        const ThroatState& state = task.start.throats[j];
        if (joined.region[gasFrom(network_.throats[j], state)] == region)
            add(row, joined.gas_at[j], 1);
        if (joined.region[gasTo(network_.throats[j], state)] == region)
            add(row, joined.gas_at[j], -1);
    }
}

void Stepper::addGurgling(const Task& task, std::size_t row, const Throat& throat)
{
    for (const std::size_t i : {throat.left, throat.right}) {
        const double sign = i == throat.left ? 1 : -1;
        if (level_[i] >= throat.floor_mm)
            add(row, task.joined.head_at[task.joined.reach[i]], sign);
        else
            add(row, task.joined.pressure_at[task.joined.region[i]], sign);
    }
}

void Stepper::setMatrix(const Task& task)
{
    matrix_.assign(unknown_.size() * unknown_.size(), 0);
    std::size_t row = 0;
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        const std::size_t body_row = row_[task.joined.body[i]];
        if (body_row == Joined::none)
            continue;
        addLevel(task, body_row, i, liquid_[i].ml_per_mm);
        row = std::max(row, body_row + 1);
    }
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const ThroatState& state = task.start.throats[j];
        if (state.mode == Mode::weir)
            addLevel(task, row++, state.to_right ? network_.throats[j].left : network_.throats[j].right, 1);
    }
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        if (task.joined.has_gas[i])
            addRegion(task, row++, i);
    }
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        const Throat& throat = network_.throats[j];
        const ThroatState& state = task.start.throats[j];
        if (state.mode == Mode::bubbling || state.mode == Mode::blowing)
            addLevel(task, row++, gasFrom(throat, state), 1);
        else if (state.mode == Mode::gurgling)
            addGurgling(task, row++, throat);
    }
    if (task.isToLevel()) {
        addLevel(task, row, task.cell, 1);
        findAmountColumn(task);
        for (std::size_t i = 0; i < unknown_.size(); ++i)
            at(i, unknown_.size() - 1) += amount_column_[i];
    }
}

/// How the residuals change with the amount of the push.
void Stepper::findAmountColumn(const Task& task)
{
    amount_column_.assign(unknown_.size(), 0);
    std::size_t row = 0;
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        const std::size_t body_row = row_[task.joined.body[i]];
        if (body_row == Joined::none)
            continue;
        amount_column_[body_row] -= source_rate_[i];
        row = std::max(row, body_row + 1);
    }
    for (const ThroatState& throat : task.start.throats)
        row += throat.mode == Mode::weir ? 1 : 0;
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        if (!task.joined.has_gas[i])
            continue;
        double rate = task.push.open_mm * gas_volume_[i];
        for (std::size_t k = i; k < network_.cells.size(); ++k)
            rate -= task.joined.region[k] == i ? gas_rate_[k] : 0;
        amount_column_[row++] += rate / task.start.atmosphere_mm;
    }
}

} // namespace siphonwright
