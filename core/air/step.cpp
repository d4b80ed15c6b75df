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
/// So far outside its cell a level may be while a change is looked for; and on the way to a solution.
constexpr double near_mm = 2;
constexpr double far_mm = 100;

bool joinsLiquid(Mode mode)
{
    return mode == Mode::weir || mode == Mode::pool || mode == Mode::sealed || mode == Mode::bubbling ||
           mode == Mode::surging;
}

} // namespace

double Stepper::pressureOf(const Task& task, std::size_t region) const
{
    if (task.joined.open[region])
        return 0;
    const std::size_t at = task.joined.pressure_at[region];
    return at == Joined::none ? -open_mm_ : unknown_[at];
}

void Stepper::firstGuess(const Task& task)
{
    const Joined& joined = task.joined;
    const double open_before_mm = task.start.open_pressure_mm;
    open_mm_ = open_before_mm + task.push.open_mm * amount_;
    unknown_.assign(joined.unknowns, 0);
    for (std::size_t i = network_.cells.size(); i-- > 0;) {
        if (!joined.live[i])
            continue;
        const CellState& cell = task.start.cells[i];
        const std::size_t pressure = joined.pressure_at[joined.region[i]];
        if (pressure != Joined::none)
            unknown_[pressure] =
                (cell.full ? cell.head_mm - cell.level_mm : cell.pressure_mm) - open_before_mm;
        const std::size_t head = joined.head_at[joined.reach[i]];
        if (head != Joined::none && (!cell.full || unknown_[head] == 0))
            unknown_[head] = cell.head_mm - open_before_mm;
    }
    for (const std::size_t pressure : joined.pressure_at) {
        if (pressure != Joined::none)
            unknown_[pressure] = std::max(unknown_[pressure], -0.999 * task.start.atmosphere_mm - open_mm_);
    }
}

void Stepper::setSources(const Task& task)
{
    const std::size_t size = network_.cells.size();
    source_.assign(size, 0);
    gas_source_.assign(size, 0);
    const Push& push = task.push;
    source_[push.feed] += push.pour_ml * amount_;
    if (push.valve_ml != 0 || push.valve_gas != 0) {
        const Throat& valve = network_.throats[push.valve];
        const bool to_right = task.start.throats[push.valve].to_right;
        const std::size_t from = to_right ? valve.left : valve.right;
        const std::size_t to = to_right ? valve.right : valve.left;
        source_[from] -= push.valve_ml * amount_;
        source_[to] += push.valve_ml * amount_;
        gas_source_[from] -= push.valve_gas * amount_;
        gas_source_[to] += push.valve_gas * amount_;
    }
    if (push.shrink == 0 && push.gas_leaves == nullptr)
        return;
    for (std::size_t i = 0; i < size; ++i) {
        // One step or many: exponentials of the parts multiply, as do shares of what is left.
        if (push.shrink != 0 && task.joined.holds[task.joined.body[i]])
            source_[i] += std::expm1(-push.shrink * amount_) * task.start.cells[i].liquid_ml;
        if (push.gas_leaves != nullptr && (*push.gas_leaves)[i])
            gas_source_[i] -= amount_ / push.gas_left * task.start.cells[i].gas;
    }
}

/// Levels, liquid and gas volumes that belong to the unknowns.
void Stepper::findVolumes(const Task& task)
{
    if (task.isToMark()) {
        amount_ = unknown_.back();
        open_mm_ = task.start.open_pressure_mm + task.push.open_mm * amount_;
        setSources(task);
    }
    gas_volume_ = resting_gas_;
    for (const Joined::Moving& moving : task.joined.moving) {
        const std::size_t i = moving.cell;
        const double pressure = moving.open                       ? 0
                                : moving.pressure == Joined::none ? -open_mm_
                                                                  : unknown_[moving.pressure];
        level_[i] = unknown_[moving.head] - pressure;
        liquid_[i] = network_.cells[i].volume.under(level_[i], near_[i]);
        gas_volume_[task.joined.region[i]] += network_.cells[i].capacity_ml - liquid_[i].liquid_ml;
    }
}

/// What the unknowns do not change.
void Stepper::setResting(const Task& task)
{
    const std::size_t size = network_.cells.size();
    near_.resize(size);
    level_.resize(size);
    liquid_.resize(size);
    resting_gas_.assign(size, 0);
    resting_ml_ = 0;
    for (const std::size_t i : task.joined.resting) {
        const CellState& cell = task.start.cells[i];
        level_[i] = cell.level_mm;
        liquid_[i] = {cell.liquid_ml, 0};
        resting_gas_[task.joined.region[i]] += network_.cells[i].capacity_ml - cell.liquid_ml;
        resting_ml_ = std::max(resting_ml_, std::abs(cell.liquid_ml));
    }
}

/// The largest move of a level that the change asks for.
double Stepper::largestMove(const Task& task) const
{
    double largest = 0;
    for (const Joined::Moving& moving : task.joined.moving) {
        const double pressure = moving.pressure == Joined::none ? 0 : change_[moving.pressure];
        largest = std::max(largest, std::abs(change_[moving.head] - pressure));
    }
    return largest;
}

/// Takes the change, or as much of it as leaves gas its pressure and brings the residual down. Levels move
/// by no more than a bore or two at once: a surface that is nearly nothing at a floor asks for any distance.
bool Stepper::retreat(const Task& task, double& residual)
{
    constexpr double most_move_mm = 40;
    constexpr double most_overfull_ml = 1;
    double share = std::min(1.0, most_move_mm / std::max(most_move_mm, largestMove(task)));
    for (std::size_t i = 0; i < unknown_.size(); ++i)
        unknown_[i] -= share * change_[i];
    for (int halving = 0; halving < 12; ++halving) {
        findVolumes(task);
        const double now = findResiduals(task);
        bool sound = std::isfinite(now);
        for (const std::size_t region : task.joined.closed)
            sound = sound &&
                    unknown_[task.joined.pressure_at[region]] + open_mm_ > -task.start.atmosphere_mm &&
                    gas_volume_[region] > -most_overfull_ml;
        if (sound && (now <= closeEnough(task) || now < residual || halving == 11)) {
            residual = now;
            return true;
        }
        share /= 2;
        for (std::size_t i = 0; i < unknown_.size(); ++i)
            unknown_[i] += share * change_[i];
    }
    return false;
}

/// What the residuals are reckoned from.
double Stepper::largestVolume(const Task& task) const
{
    double largest_ml = resting_ml_;
    for (const Joined::Moving& moving : task.joined.moving) {
        const LiquidUnder& liquid = liquid_[moving.cell];
        largest_ml = std::max(largest_ml,
                              std::abs(liquid.liquid_ml) + std::abs(liquid.ml_per_mm * level_[moving.cell]));
    }
    return largest_ml;
}

/// The residual that is as good as none: a large jacket cannot be reckoned as finely as a hose.
double Stepper::closeEnough(const Task& task) const
{
    return std::max(close_enough, rounding * largestVolume(task));
}

bool Stepper::newton(const Task& task)
{
    setResting(task);
    findVolumes(task);
    double residual = findResiduals(task);
    if (residual_.size() != unknown_.size())
        return false;
    double looked_at = HUGE_VAL;
    for (int round = 0; round < most_newton_rounds; ++round) {
        if (unknown_.empty())
            return true;
        // A mark may be out of reach, and there are other ways to look for it.
        if (task.isToMark() && round % rounds_to_halve == 0) {
            if (!(residual < looked_at / 2))
                return false;
            looked_at = residual;
        }
        const bool was_close = residual <= closeEnough(task);
        setMatrix(task);
        if (!eliminate() || !retreat(task, residual) || !levelsAreInside(task, far_mm))
            return false;
        // No round brings it under its last digit.
        if (was_close || residual <= std::max(1e-3 * close_enough, rounding / 16 * largestVolume(task)))
            return residual <= closeEnough(task);
    }
    return residual <= closeEnough(task);
}

void Stepper::writeCell(const Task& task, std::size_t i, FillState& end) const
{
    const Joined& joined = task.joined;
    const CellState& before = task.start.cells[i];
    CellState& cell = end.cells[i];
    const std::size_t region = joined.region[i];
    const std::size_t head = joined.head_at[joined.reach[i]];
    cell.level_mm = level_[i];
    cell.liquid_ml = liquid_[i].liquid_ml;
    cell.full = !joined.live[i];
    cell.pressure_mm = joined.live[i] ? pressureOf(task, region) + open_mm_ : 0;
    cell.head_mm = head != Joined::none ? unknown_[head] + open_mm_
                   : joined.live[i]     ? cell.level_mm + cell.pressure_mm
                                        : before.head_mm;
    // Not clipped at 0: what rounding puts over the top comes back with the next gas.
    if (i > 0 && !cell.full)
        cell.gas = (cell.pressure_mm + end.atmosphere_mm) * (network_.cells[i].capacity_ml - cell.liquid_ml);
    if (i > 0 && joined.open[region])
        end.gas_out +=
            (end.atmosphere_mm + cell.pressure_mm) * (cell.liquid_ml - before.liquid_ml) -
            (cell.pressure_mm - before.pressure_mm) * (network_.cells[i].capacity_ml - before.liquid_ml);
}

void Stepper::write(const Task& task, FillState& end)
{
    end = task.start;
    end.open_pressure_mm = open_mm_;
    end.poured_ml += task.push.pour_ml * amount_;
    through_.assign(network_.throats.size(), 0);
    for (std::size_t i = 0; i < network_.cells.size(); ++i) {
        writeCell(task, i, end);
        if (task.joined.open[task.joined.region[i]])
            end.gas_out += gas_source_[i];
        else if (task.push.gas_leaves != nullptr)
            end.gas_out -= gas_source_[i];
    }
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        if (task.joined.gas_at[j] == Joined::none)
            continue;
        const double passed = unknown_[task.joined.gas_at[j]];
        const ThroatState& state = task.start.throats[j];
        through_[j] = passed;
        if (task.joined.open[task.joined.region[gasTo(network_.throats[j], state)]])
            end.gas_out += passed * end.atmosphere_mm;
        if (task.joined.open[task.joined.region[gasFrom(network_.throats[j], state)]])
            end.gas_out -= passed * end.atmosphere_mm;
    }
    gained_.resize(network_.cells.size());
    for (std::size_t i = 0; i < network_.cells.size(); ++i)
        gained_[i] = end.cells[i].liquid_ml - task.start.cells[i].liquid_ml - source_[i];
    findGains(task, gained_, through_);
}

/// What ran over a weir is what has come to be on its lower side: the joined liquid is a tree there.
void Stepper::findGains(const Task& task, const std::vector<double>& liquid_ml, std::vector<double>& through)
{
    for (std::size_t j = 0; j < network_.throats.size(); ++j) {
        if (task.start.throats[j].mode != Mode::weir)
            continue;
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

/// A little over the ends is where a change is looked for; far over them there is no such state.
bool Stepper::levelsAreInside(const Task& task, double beyond_mm) const
{
    const auto isInside = [&](std::size_t i) {
        return i == 0 || !task.joined.live[i] ||
               (level_[i] <= network_.cells[i].top_mm + beyond_mm &&
                level_[i] >= network_.cells[i].floor_mm - beyond_mm);
    };
    return std::all_of(task.joined.moving.begin(), task.joined.moving.end(),
                       [&](const Joined::Moving& moving) { return isInside(moving.cell); }) &&
           std::all_of(task.joined.resting.begin(), task.joined.resting.end(), isInside);
}

/// Gas let through by force is there to be let through.
bool Stepper::gasIsThere(const Task& task) const
{
    constexpr double rounding_ml = 1e-7;
    if (task.push.valve_gas == 0)
        return true;
    const Throat& throat = network_.throats[task.push.valve];
    const std::size_t from = task.start.throats[task.push.valve].to_right ? throat.left : throat.right;
    const std::size_t region = task.joined.region[from];
    return !task.joined.has_gas[region] || gas_volume_[region] > -rounding_ml;
}

bool Stepper::finish(const Task& task, FillState& end)
{
    if (!newton(task) || !levelsAreInside(task, near_mm) || !gasIsThere(task))
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
    amount_ = amount;
    setSources(task);
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
    amount_ = amount;
    firstGuess(task);
    followRates(task);
    const std::size_t head = mark.isLevel() ? joined.head_at[joined.reach[mark.cell]] : Joined::none;
    if (head != Joined::none)
        unknown_[head] = mark.level_mm + pressureOf(task, joined.region[mark.cell]);
    unknown_.push_back(amount);
    const bool found = finish(task, end);
    amount = amount_;
    return found;
}

} // namespace siphonwright
