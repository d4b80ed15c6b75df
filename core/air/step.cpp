#include "core/air/step.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace siphonwright {
namespace {

constexpr int most_newton_rounds = 60;
constexpr int rounds_to_halve = 4;
/// Residuals are in ml and mm; what is left is lost or won at every step.
constexpr double close_enough = 1e-10;
/// What rounding leaves of a residual, as parts of the largest number in it.
constexpr double rounding = 16 * std::numeric_limits<double>::epsilon();
/// A little over the ends of its cell is where a change of a level is looked for; far over them there is no
/// such state, even on the way to a solution.
constexpr double near_mm = 2;
constexpr double far_mm = 100;

bool joinsLiquid(Mode mode)
{
    return mode == Mode::weir || mode == Mode::pool || mode == Mode::sealed || mode == Mode::bubbling ||
           mode == Mode::surging;
}

} // namespace

double beyondEnds(const Cell& cell, double level_mm)
{
    return std::max(level_mm - cell.top_mm, cell.floor_mm - level_mm);
}

/// Of a cell's gas.
double Stepper::pressureOf(const Task& task, std::size_t cell) const
{
    const Joined::OfCell& of = task.joined.cells[cell];
    if (of.open)
        return 0;
    return of.pressure == Joined::none ? -open_mm_ : pressure_[of.pressure];
}

void Stepper::firstGuess(const Task& task)
{
    const Joined& joined = task.joined;
    const double open_before_mm = task.start.open_pressure_mm;
    const double least_mm = -0.999 * task.start.atmosphere_mm - open_mm_;
    pressure_.resize(joined.closed.size());
    for (std::size_t k = 0; k < pressure_.size(); ++k) {
        const CellState& cell = task.start.cells[joined.closed[k]];
        const double pressure_mm = cell.full ? cell.head_mm - cell.level_mm : cell.pressure_mm;
        pressure_[k] = std::max(pressure_mm - open_before_mm, least_mm);
    }
    setZero(unknown_, joined.unknowns);
    for (std::size_t k = joined.moving.size(); k-- > 0;) {
        const CellState& cell = task.start.cells[joined.moving[k].cell];
        double& head = unknown_[joined.moving[k].head];
        if (!cell.full || head == 0)
            head = cell.head_mm - open_before_mm;
    }
}

/// Levels, liquid and gas volumes that belong to the unknowns.
void Stepper::findVolumes(const Task& task)
{
    if (task.isToMark())
        setAmount(task, unknown_.back());
    gas_volume_ = resting_gas_;
    for (const Joined::Moving& moving : task.joined.moving) {
        const std::size_t i = moving.cell;
        const Cell& cell = network_.cells[i];
        const double pressure = moving.pressure == Joined::none ? 0 : pressure_[moving.pressure];
        const double level_mm = unknown_[moving.head] - pressure;
        const LiquidUnder liquid = cell.volume.under(level_mm, near_[i]);
        level_[i] = level_mm;
        liquid_[i] = liquid;
        if (moving.pressure != Joined::none)
            gas_volume_[moving.pressure] += cell.capacity_ml - liquid.liquid_ml;
    }
}

/// What the unknowns do not change.
void Stepper::setResting(const Task& task)
{
    const std::size_t size = network_.cells.size();
    near_.resize(size);
    level_.resize(size);
    liquid_.resize(size);
    setZero(resting_gas_, task.joined.closed.size());
    resting_ml_ = 0;
    resting_outside_mm_ = -HUGE_VAL;
    for (const std::size_t i : task.joined.resting) {
        const CellState& cell = task.start.cells[i];
        const std::size_t pressure = task.joined.cells[i].pressure;
        level_[i] = cell.level_mm;
        liquid_[i] = {cell.liquid_ml, 0};
        if (pressure != Joined::none)
            resting_gas_[pressure] += network_.cells[i].capacity_ml - cell.liquid_ml;
        resting_ml_ = std::max(resting_ml_, std::abs(cell.liquid_ml));
        if (task.joined.cells[i].live)
            resting_outside_mm_ = std::max(resting_outside_mm_, beyondEnds(network_.cells[i], cell.level_mm));
    }
}

/// The largest move of a level that the change asks for.
double Stepper::largestMove(const Task& task) const
{
    double largest = 0;
    for (const Joined::Moving& moving : task.joined.moving) {
        const double pressure = moving.pressure == Joined::none ? 0 : pressure_change_[moving.pressure];
        largest = std::max(largest, std::abs(change_[moving.head] - pressure));
    }
    return largest;
}

/// Takes so much of the change that was found.
void Stepper::change(double share)
{
    for (std::size_t i = 0; i < unknown_.size(); ++i)
        unknown_[i] -= share * change_[i];
    for (std::size_t k = 0; k < pressure_.size(); ++k)
        pressure_[k] -= share * pressure_change_[k];
}

/// Whether gas has its pressure and its room.
bool Stepper::isSound(const Task& task, double residual) const
{
    constexpr double most_overfull_ml = 1;
    bool sound = std::isfinite(residual);
    for (std::size_t k = 0; k < pressure_.size(); ++k)
        sound = sound && pressure_[k] + open_mm_ > -task.start.atmosphere_mm &&
                gas_volume_[k] > -most_overfull_ml;
    return sound;
}

/// Takes the change, or as much of it as leaves gas its pressure and brings the residual down. Levels move
/// by no more than a bore or two at once: a surface that is nearly nothing at a floor asks for any distance.
bool Stepper::retreat(const Task& task, double& residual)
{
    constexpr double most_move_mm = 40;
    double share = std::min(1.0, most_move_mm / std::max(most_move_mm, largestMove(task)));
    change(share);
    for (int halving = 0; halving < 12; ++halving) {
        findVolumes(task);
        settleGas(task);
        const double now = findResiduals(task);
        if (isSound(task, now) && (now < residual || now <= closeEnough() || halving == 11)) {
            residual = now;
            return true;
        }
        share /= 2;
        change(-share);
    }
    return false;
}

/// The residual that is as good as none: a large jacket cannot be reckoned as finely as a hose.
double Stepper::closeEnough() const
{
    return std::max(close_enough, rounding * largest_ml_);
}

bool Stepper::newton(const Task& task)
{
    const std::size_t equations = task.joined.unknowns + (task.isToMark() ? 1 : 0);
    if (!task.joined.isSquare() || unknown_.size() != equations)
        return false;
    findVolumes(task);
    settleGas(task);
    double residual = findResiduals(task);
    double looked_at = HUGE_VAL;
    for (int round = 0; round < most_newton_rounds; ++round) {
        if (unknown_.empty() && pressure_.empty())
            return true;
        // A mark may be out of reach, and there are other ways to look for it.
        if (task.isToMark() && round % rounds_to_halve == 0) {
            if (!(residual < looked_at / 2))
                return false;
            looked_at = residual;
        }
        const bool was_close = residual <= closeEnough();
        if (!findChange(task) || !retreat(task, residual) || outside_mm_ > far_mm)
            return false;
        // No round brings it under its last digit.
        if (was_close || residual <= std::max(1e-3 * close_enough, rounding / 16 * largest_ml_))
            return residual <= closeEnough();
    }
    return residual <= closeEnough();
}

void Stepper::writeCell(const Task& task, std::size_t i, FillState& end) const
{
    const Joined::OfCell& of = task.joined.cells[i];
    const CellState& before = task.start.cells[i];
    CellState& cell = end.cells[i];
    cell.level_mm = level_[i];
    cell.liquid_ml = liquid_[i].liquid_ml;
    cell.full = !of.live;
    cell.pressure_mm = of.live ? pressureOf(task, i) + open_mm_ : 0;
    cell.head_mm = of.head != Joined::none ? unknown_[of.head] + open_mm_
                   : of.live               ? cell.level_mm + cell.pressure_mm
                                           : before.head_mm;
    // Not clipped at 0: what rounding puts over the top comes back with the next gas.
    if (i > 0 && !cell.full)
        cell.gas = (cell.pressure_mm + end.atmosphere_mm) * (network_.cells[i].capacity_ml - cell.liquid_ml);
    if (i > 0 && of.open)
        end.gas_out +=
            (end.atmosphere_mm + cell.pressure_mm) * (cell.liquid_ml - before.liquid_ml) -
            (cell.pressure_mm - before.pressure_mm) * (network_.cells[i].capacity_ml - before.liquid_ml);
}

void Stepper::write(const Task& task, FillState& end)
{
    end = task.start;
    end.open_pressure_mm = open_mm_;
    end.poured_ml += task.push.pour_ml * amount_;
    setZero(through_, network_.throats.size());
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        writeCell(task, i, end);
        if (task.joined.cells[i].open)
            end.gas_out += amount_ * gas_source_rate_[i];
        else if (task.push.gas_leaves != nullptr)
            end.gas_out -= amount_ * gas_source_rate_[i];
    }
    for (const Joined::GasThroat& gas : task.joined.gas_throats) {
        const double passed = unknown_[gas.gas];
        through_[gas.throat] = passed;
        if (task.joined.cells[gas.to].open)
            end.gas_out += passed * end.atmosphere_mm;
        if (task.joined.cells[gas.from].open)
            end.gas_out -= passed * end.atmosphere_mm;
    }
    gained_.resize(network_.cells.size());
    for (std::size_t i = 0; i < network_.cells.size(); ++i)
        gained_[i] =
            end.cells[i].liquid_ml - task.start.cells[i].liquid_ml - liquid_amount_ * source_rate_[i];
    findGains(task, gained_, through_);
}

/// What ran over a weir is what has come to be on its lower side: the joined liquid is a tree there.
void Stepper::findGains(const Task& task, const std::vector<double>& liquid_ml, std::vector<double>& through)
{
    for (const std::size_t j : task.joined.weirs) {
        const Throat& weir = network_.throats[j];
        seen_.assign(network_.cells.size(), 0);
        seen_[task.start.throats[j].to_right ? weir.right : weir.left] = 1;
        for (bool grows = true; grows;) {
            grows = false;
            for (std::size_t k = 0; k < network_.throats.size(); ++k) {
                const Throat& other = network_.throats[k];
                if (k == j || !joinsLiquid(task.start.throats[k].mode) ||
                    seen_[other.left] == seen_[other.right])
                    continue;
                seen_[other.left] = seen_[other.right] = 1;
                grows = true;
            }
        }
        double gained = 0;
        for (std::size_t i = 0; i < network_.cells.size(); ++i)
            gained += seen_[i] ? liquid_ml[i] : 0;
        through[j] = gained;
    }
}

/// Gas let through by force is there to be let through.
bool Stepper::gasIsThere(const Task& task) const
{
    constexpr double rounding_ml = 1e-7;
    if (task.push.valve_gas == 0)
        return true;
    const Throat& throat = network_.throats[task.push.valve];
    const std::size_t from = task.start.throats[task.push.valve].to_right ? throat.left : throat.right;
    const std::size_t pressure = task.joined.cells[from].pressure;
    return pressure == Joined::none || gas_volume_[pressure] > -rounding_ml;
}

bool Stepper::finish(const Task& task, FillState& end)
{
    if (!newton(task) || outside_mm_ > near_mm || !gasIsThere(task))
        return false;
    if (task.isToMark())
        unknown_.pop_back();
    write(task, end);
    return true;
}

bool Stepper::solve(const FillState& start, const Joined& joined, const Push& push, double amount,
                    bool with_rates, FillState& end)
{
    const Task task{start, joined, push};
    setAmount(task, amount);
    firstGuess(task);
    if (with_rates)
        followRates(task);
    if (!finish(task, end))
        return false;
    if (with_rates)
        keepBend(task);
    return true;
}

bool Stepper::solveTo(const FillState& start, const Joined& joined, const Push& push, const Mark& mark,
                      double& amount, FillState& end)
{
    const Task task{start, joined, push, &mark};
    setAmount(task, amount);
    firstGuess(task);
    followRates(task);
    const std::size_t head = mark.isLevel() ? joined.cells[mark.cell].head : Joined::none;
    if (head != Joined::none)
        unknown_[head] = mark.level_mm + pressureOf(task, mark.cell);
    unknown_.push_back(amount);
    const bool found = finish(task, end);
    amount = amount_;
    return found;
}

} // namespace siphonwright
