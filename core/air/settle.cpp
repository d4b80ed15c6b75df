#include "core/air/step.h"

#include <algorithm>
#include <cmath>

/// Gas brought to rest under heads that are only guessed: what is left to search for is the heads.
namespace siphonwright {
namespace {

/// Gas amiss by less is left to the search, ml.
constexpr double not_worth_it_ml = 1e-2;
/// So nearly is a pocket brought to rest, as a share of what was amiss.
constexpr double settled_share = 1e-4;
constexpr int most_tries = 20;
/// A level is looked for so far beyond the ends of its cell.
constexpr double beyond_mm = 1;

} // namespace

/// The pressure of each closed region that no gas passes into or out of, from its P G = n.
void Stepper::settleGas(const Task& task)
{
    const Joined& joined = task.joined;
    findGasMissing(task);
    for (std::size_t k = 0; k < joined.closed.size(); ++k) {
        const bool passes = std::any_of(
            joined.gas_throats.begin(), joined.gas_throats.end(),
            [k](const Joined::GasThroat& gas) { return gas.from_pressure == k || gas.to_pressure == k; });
        if (!passes && std::abs(gas_missing_[k]) > not_worth_it_ml)
            settlePocket(task, k);
    }
}

/// Newton on one pressure, between the pressures that leave its cells full and empty: P G rises with P.
void Stepper::settlePocket(const Task& task, std::size_t pocket)
{
    const double atmosphere = task.start.atmosphere_mm;
    const double gas = task.joined.cells[task.joined.closed[pocket]].gas + amount_ * given_gas_rate_[pocket];
    double low = HUGE_VAL;
    double high = -HUGE_VAL;
    for (const Joined::Moving& moving : task.joined.moving) {
        if (moving.pressure != pocket)
            continue;
        const Cell& cell = network_.cells[moving.cell];
        low = std::min(low, unknown_[moving.head] - cell.top_mm - beyond_mm);
        high = std::max(high, unknown_[moving.head] - cell.floor_mm + beyond_mm);
    }
    low = std::max(low, -0.999 * atmosphere - open_mm_);
    double next = pressure_[pocket];
    const double amiss = std::abs(gas_missing_[pocket]);
    for (int i = 0; i < most_tries && low < high; ++i) {
        const double pressure = next > low && next < high ? next : (low + high) / 2;
        double volume = resting_gas_[pocket];
        double slope = 0;
        for (const Joined::Moving& moving : task.joined.moving) {
            if (moving.pressure != pocket)
                continue;
            const Cell& cell = network_.cells[moving.cell];
            const double level_mm = unknown_[moving.head] - pressure;
            const LiquidUnder liquid = cell.volume.under(level_mm, near_[moving.cell]);
            level_[moving.cell] = level_mm;
            liquid_[moving.cell] = liquid;
            volume += cell.capacity_ml - liquid.liquid_ml;
            slope += liquid.ml_per_mm;
        }
        pressure_[pocket] = pressure;
        gas_volume_[pocket] = volume;
        const double whole = pressure + open_mm_ + atmosphere;
        const double missing = whole * volume - gas;
        (missing < 0 ? low : high) = pressure;
        next = pressure - missing / (volume + whole * slope);
        if (std::abs(missing) <= settled_share * amiss * atmosphere)
            return;
    }
}

} // namespace siphonwright
