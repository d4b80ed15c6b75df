#include "core/air/step.h"

#include <algorithm>
#include <cmath>

/// The equations of a step and their slopes. Rows stand in one order in both: bodies, weirs, gas through
/// throats, the mark; P G = n of the closed regions stands apart.
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
    const std::size_t head = task.joined.cells[cell].head;
    if (!task.joined.cells[cell].live)
        return head != Joined::none ? unknown_[head]
                                    : task.start.cells[cell].head_mm - task.start.open_pressure_mm;
    return std::max(level_[cell], throat.floor_mm) + pressureOf(task, cell);
}

double Stepper::offMark(const Task& task) const
{
    if (task.mark->isLevel())
        return level_[task.mark->cell] - task.mark->level_mm;
    const Throat& valve = network_.throats[task.push.valve];
    if (task.mark->what == Mark::What::one_head)
        return headAt(task, valve, valve.left) - headAt(task, valve, valve.right);
    return pressureOf(task, valve.left) - pressureOf(task, valve.right);
}

void Stepper::findGasMissing(const Task& task)
{
    const Joined& joined = task.joined;
    const double atmosphere = task.start.atmosphere_mm;
    gas_missing_.resize(joined.closed.size());
    for (std::size_t k = 0; k < joined.closed.size(); ++k) {
        const double gas = joined.cells[joined.closed[k]].gas + amount_ * given_gas_rate_[k];
        gas_missing_[k] = ((pressure_[k] + open_mm_ + atmosphere) * gas_volume_[k] - gas) / atmosphere;
    }
    for (const Joined::GasThroat& throat : joined.gas_throats) {
        if (throat.from_pressure != Joined::none)
            gas_missing_[throat.from_pressure] += unknown_[throat.gas];
        if (throat.to_pressure != Joined::none)
            gas_missing_[throat.to_pressure] -= unknown_[throat.gas];
    }
}

/// Returns the largest residual.
double Stepper::findResiduals(const Task& task)
{
    ++effort_;
    const Joined& joined = task.joined;
    residual_.resize(unknown_.size());
    std::size_t row = joined.bodies;
    for (std::size_t body = 0; body < row; ++body)
        residual_[body] = -liquid_amount_ * given_ml_rate_[body];
    largest_ml_ = resting_ml_;
    outside_mm_ = resting_outside_mm_;
    for (const Joined::Moving& moving : joined.moving) {
        const LiquidUnder& liquid = liquid_[moving.cell];
        const double level_mm = level_[moving.cell];
        residual_[moving.row] += liquid.liquid_ml - task.start.cells[moving.cell].liquid_ml;
        largest_ml_ =
            std::max(largest_ml_, std::abs(liquid.liquid_ml) + std::abs(liquid.ml_per_mm * level_mm));
        outside_mm_ = std::max(outside_mm_, beyondEnds(network_.cells[moving.cell], level_mm));
    }
    for (const std::size_t j : joined.weirs) {
        const Throat& throat = network_.throats[j];
        const bool to_right = task.start.throats[j].to_right;
        residual_[row++] = level_[to_right ? throat.left : throat.right] - throat.floor_mm;
    }
    for (const Joined::GasThroat& gas : joined.gas_throats) {
        const Throat& throat = network_.throats[gas.throat];
        const Mode mode = task.start.throats[gas.throat].mode;
        residual_[row++] = mode == Mode::bubbling ? level_[gas.from] - throat.crown_mm
                           : mode == Mode::blowing
                               ? level_[gas.from] - letsGasUnder(network_, throat, gas.from)
                               : headAt(task, throat, throat.left) - headAt(task, throat, throat.right);
    }
    if (task.isToMark())
        residual_[row] = offMark(task);
    findGasMissing(task);
    double largest = 0;
    for (const std::vector<double>* residuals : {&residual_, &gas_missing_})
        for (const double residual : *residuals)
            largest = std::isfinite(residual) ? std::max(largest, std::abs(residual)) : HUGE_VAL;
    return largest;
}

/// The pressure of a region, as P G = n gives it.
void Stepper::addPressure(std::size_t row, std::size_t pressure, double factor)
{
    if (pressure == Joined::none)
        return;
    const double* const by = pressureBy(pressure);
    double* const own = &at(row, 0);
    const std::size_t end = width();
    for (std::size_t c = 0; c < end; ++c)
        own[c] -= factor * by[c];
}

/// The level of a cell is its reach's head less its region's pressure.
void Stepper::addLevel(const Task& task, std::size_t row, std::size_t cell)
{
    const Joined::OfCell& of = task.joined.cells[cell];
    if (!of.live || of.head == Joined::none)
        return;
    at(row, of.head) += 1;
    addPressure(row, of.pressure, -1);
}

void Stepper::addHeads(const Task& task, std::size_t row, const Throat& throat)
{
    for (const std::size_t i : {throat.left, throat.right}) {
        const double sign = i == throat.left ? 1 : -1;
        const Joined::OfCell& of = task.joined.cells[i];
        if (of.live && level_[i] < throat.floor_mm)
            addPressure(row, of.pressure, sign);
        else if (of.head != Joined::none)
            at(row, of.head) += sign;
    }
}

void Stepper::addMark(const Task& task, std::size_t row)
{
    // A jacket alone has no throats, and marks of its level only.
    if (task.mark->isLevel()) {
        addLevel(task, row, task.mark->cell);
        return;
    }
    const Throat& valve = network_.throats[task.push.valve];
    if (task.mark->what == Mark::What::one_head) {
        addHeads(task, row, valve);
    } else {
        addPressure(row, task.joined.cells[valve.left].pressure, 1);
        addPressure(row, task.joined.cells[valve.right].pressure, -1);
    }
}

/// The slopes of all equations but P G = n, in which setPressures() has put the pressures.
void Stepper::setMatrix(const Task& task)
{
    const Joined& joined = task.joined;
    setZero(matrix_, unknown_.size() * width());
    for (std::size_t i = 0; i < unknown_.size(); ++i)
        at(i, unknown_.size()) = residual_[i];
    for (const Joined::Moving& moving : joined.moving) {
        const double slope = liquid_[moving.cell].ml_per_mm;
        at(moving.row, moving.head) += slope;
        addPressure(moving.row, moving.pressure, -slope);
    }
    std::size_t row = joined.bodies;
    for (const std::size_t j : joined.weirs) {
        const bool to_right = task.start.throats[j].to_right;
        addLevel(task, row++, to_right ? network_.throats[j].left : network_.throats[j].right);
    }
    for (const Joined::GasThroat& gas : joined.gas_throats) {
        const Mode mode = task.start.throats[gas.throat].mode;
        if (mode == Mode::bubbling || mode == Mode::blowing)
            addLevel(task, row++, gas.from);
        else
            addHeads(task, row++, network_.throats[gas.throat]);
    }
    if (!task.isToMark())
        return;
    addMark(task, row);
    for (std::size_t body = 0; body < joined.bodies; ++body)
        at(body, unknown_.size() - 1) -= given_ml_rate_[body];
}

/// How much more gas is missing in a closed region with the amount of the push.
double Stepper::gasMissingRate(const Task& task, std::size_t pressure) const
{
    return (task.push.open_mm * gas_volume_[pressure] - given_gas_rate_[pressure]) / task.start.atmosphere_mm;
}

} // namespace siphonwright
