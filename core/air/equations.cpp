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
    const std::size_t head = task.joined.head_at[task.joined.reach[cell]];
    if (!task.joined.live[cell])
        return head != Joined::none ? unknown_[head]
                                    : task.start.cells[cell].head_mm - task.start.open_pressure_mm;
    return std::max(level_[cell], throat.floor_mm) + pressureOf(task, task.joined.region[cell]);
}

double Stepper::offMark(const Task& task) const
{
    if (task.mark->isLevel())
        return level_[task.mark->cell] - task.mark->level_mm;
    const Throat& valve = network_.throats[task.push.valve];
    if (task.mark->what == Mark::What::one_head)
        return headAt(task, valve, valve.left) - headAt(task, valve, valve.right);
    return pressureOf(task, task.joined.region[valve.left]) -
           pressureOf(task, task.joined.region[valve.right]);
}

/// Conservation of liquid, one row a body that moves.
void Stepper::addBodies(const Task& task)
{
    residual_.assign(task.joined.bodies, 0);
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        const std::size_t row = task.joined.row_of[i];
        if (row != Joined::none)
            residual_[row] += liquid_[i].liquid_ml - task.start.cells[i].liquid_ml - source_[i];
    }
}

/// What is missing from P G = n in a region, as a volume at the atmosphere.
double Stepper::gasMissing(const Task& task, std::size_t region) const
{
    const double atmosphere = task.start.atmosphere_mm;
    double gas = task.joined.gas[region];
    for (std::size_t i = region; i != Joined::none; i = task.joined.next_in_region[i])
        gas += gas_source_[i];
    for (const std::size_t j : task.joined.gas_throats) {
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
    for (const std::size_t j : task.joined.weirs) {
        const Throat& throat = network_.throats[j];
        const bool to_right = task.start.throats[j].to_right;
        residual_.push_back(level_[to_right ? throat.left : throat.right] - throat.floor_mm);
    }
    for (const std::size_t region : task.joined.closed)
        residual_.push_back(gasMissing(task, region));
    for (const std::size_t j : task.joined.gas_throats) {
        const Throat& throat = network_.throats[j];
        const ThroatState& state = task.start.throats[j];
        if (state.mode == Mode::bubbling)
            residual_.push_back(level_[gasFrom(throat, state)] - throat.crown_mm);
        else if (state.mode == Mode::blowing)
            residual_.push_back(level_[gasFrom(throat, state)] -
                                letsGasUnder(network_, throat, gasFrom(throat, state)));
        else
            residual_.push_back(headAt(task, throat, throat.left) - headAt(task, throat, throat.right));
    }
    if (task.isToMark())
        residual_.push_back(offMark(task));
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
    for (std::size_t i = region; i != Joined::none; i = joined.next_in_region[i])
        addLevel(task, row, i, -share * liquid_[i].ml_per_mm);
    for (const std::size_t j : joined.gas_throats) {
        const ThroatState& state = task.start.throats[j];
        if (joined.region[gasFrom(network_.throats[j], state)] == region)
            add(row, joined.gas_at[j], 1);
        if (joined.region[gasTo(network_.throats[j], state)] == region)
            add(row, joined.gas_at[j], -1);
    }
}

void Stepper::addHeads(const Task& task, std::size_t row, const Throat& throat)
{
    for (const std::size_t i : {throat.left, throat.right}) {
        const double sign = i == throat.left ? 1 : -1;
        if (!task.joined.live[i] || level_[i] >= throat.floor_mm)
            add(row, task.joined.head_at[task.joined.reach[i]], sign);
        else
            add(row, task.joined.pressure_at[task.joined.region[i]], sign);
    }
}

void Stepper::setMatrix(const Task& task)
{
    matrix_.assign(unknown_.size() * unknown_.size(), 0);
    const Joined& joined = task.joined;
    for (const Joined::Moving& moving : joined.moving) {
        const std::size_t row = joined.row_of[moving.cell];
        const double slope = liquid_[moving.cell].ml_per_mm;
        at(row, moving.head) += slope;
        add(row, moving.pressure, -slope);
    }
    std::size_t row = joined.bodies;
    for (const std::size_t j : joined.weirs) {
        const bool to_right = task.start.throats[j].to_right;
        addLevel(task, row++, to_right ? network_.throats[j].left : network_.throats[j].right, 1);
    }
    for (const std::size_t region : joined.closed)
        addRegion(task, row++, region);
    for (const std::size_t j : joined.gas_throats) {
        const Throat& throat = network_.throats[j];
        const ThroatState& state = task.start.throats[j];
        if (state.mode == Mode::bubbling || state.mode == Mode::blowing)
            addLevel(task, row++, gasFrom(throat, state), 1);
        else
            addHeads(task, row++, throat);
    }
    if (task.isToMark()) {
        // A jacket alone has no throats, and marks of its level only.
        const Throat* valve = task.mark->isLevel() ? nullptr : &network_.throats[task.push.valve];
        if (!valve) {
            addLevel(task, row, task.mark->cell, 1);
        } else if (task.mark->what == Mark::What::one_head) {
            addHeads(task, row, *valve);
        } else {
            add(row, joined.pressure_at[joined.region[valve->left]], 1);
            add(row, joined.pressure_at[joined.region[valve->right]], -1);
        }
        findAmountColumn(task);
        for (std::size_t i = 0; i < unknown_.size(); ++i)
            at(i, unknown_.size() - 1) += amount_column_[i];
    }
}

/// How the residuals change with the amount of the push.
void Stepper::findAmountColumn(const Task& task)
{
    amount_column_.assign(unknown_.size(), 0);
    const Joined& joined = task.joined;
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        if (joined.row_of[i] != Joined::none)
            amount_column_[joined.row_of[i]] -= source_rate_[i];
    }
    std::size_t row = joined.bodies + joined.weirs.size();
    for (const std::size_t region : joined.closed) {
        double rate = task.push.open_mm * gas_volume_[region];
        for (std::size_t k = region; k != Joined::none; k = joined.next_in_region[k])
            rate -= gas_rate_[k];
        amount_column_[row++] += rate / task.start.atmosphere_mm;
    }
}

} // namespace siphonwright
