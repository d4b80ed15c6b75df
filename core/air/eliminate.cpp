#include "core/air/step.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// Less is no pivot.
constexpr double no_pivot = 1e-14;

} // namespace

/// By P G = n of each closed region, its pressure by the other unknowns. False if one has nothing to hold it.
bool Stepper::setPressures(const Task& task)
{
    const Joined& joined = task.joined;
    const std::size_t size = unknown_.size();
    const double per_mm = 1 / task.start.atmosphere_mm;
    pressure_by_.assign(joined.closed.size() * size, 0);
    pressure_pull_.resize(joined.closed.size());
    for (std::size_t k = 0; k < joined.closed.size(); ++k)
        pressure_pull_[k] = gas_volume_[k] * per_mm;
    for (const Joined::Moving& moving : joined.moving) {
        if (moving.pressure == Joined::none)
            continue;
        const double share = 1 + (pressure_[moving.pressure] + open_mm_) * per_mm;
        const double pull = share * liquid_[moving.cell].ml_per_mm;
        pressure_pull_[moving.pressure] += pull;
        pressure_by_[moving.pressure * size + moving.head] -= pull;
    }
    for (const Joined::GasThroat& throat : joined.gas_throats) {
        if (throat.from_pressure != Joined::none)
            pressure_by_[throat.from_pressure * size + throat.gas] += 1;
        if (throat.to_pressure != Joined::none)
            pressure_by_[throat.to_pressure * size + throat.gas] -= 1;
    }
    pressure_change_.resize(joined.closed.size());
    for (std::size_t k = 0; k < joined.closed.size(); ++k) {
        if (!(std::abs(pressure_pull_[k]) > no_pivot))
            return false;
        double* const by = &pressure_by_[k * size];
        if (task.isToMark())
            by[size - 1] += gasMissingRate(task, k);
        const double give = 1 / pressure_pull_[k];
        for (std::size_t c = 0; c < size; ++c)
            by[c] *= give;
        pressure_change_[k] = gas_missing_[k] * give;
    }
    return true;
}

/// Gauss elimination with row exchange; the solution replaces change_.
bool Stepper::eliminate()
{
    const std::size_t size = unknown_.size();
    rows_.resize(size);
    for (std::size_t row = 0; row < size; ++row)
        rows_[row] = &matrix_[row * size];
    double* const change = change_.data();
    double** const rows = rows_.data();
    for (std::size_t column = 0; column < size; ++column) {
        std::size_t best = column;
        double largest = std::abs(rows[column][column]);
        for (std::size_t row = column + 1; row < size; ++row) {
            const double here = std::abs(rows[row][column]);
            best = here > largest ? row : best;
            largest = std::max(largest, here);
        }
        if (!(largest > no_pivot))
            return false;
        std::swap(rows[best], rows[column]);
        std::swap(change[best], change[column]);
        const double* const pivot = rows[column];
        for (std::size_t row = column + 1; row < size; ++row) {
            double* const other = rows[row];
            const double factor = other[column] / pivot[column];
            for (std::size_t k = column + 1; k < size; ++k)
                other[k] -= factor * pivot[k];
            change[row] -= factor * change[column];
        }
    }
    for (std::size_t row = size; row-- > 0;) {
        const double* const own = rows[row];
        double sum = change[row];
        for (std::size_t k = row + 1; k < size; ++k)
            sum -= own[k] * change[k];
        change[row] = sum / own[row];
    }
    return true;
}

/// What takes residual_ and gas_missing_ to nothing, as change_ and pressure_change_. False if nothing does.
bool Stepper::findChange(const Task& task)
{
    const std::size_t size = unknown_.size();
    if (!setPressures(task))
        return false;
    change_ = residual_;
    setMatrix(task);
    if (!eliminate())
        return false;
    for (std::size_t k = 0; k < pressure_change_.size(); ++k) {
        for (std::size_t c = 0; c < size; ++c)
            pressure_change_[k] -= pressure_by_[k * size + c] * change_[c];
    }
    return true;
}

} // namespace siphonwright
