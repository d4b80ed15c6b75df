#include "core/air/step.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// Less is no pivot.
constexpr double no_pivot = 1e-14;

} // namespace

/// By P G = n of each closed region, its pressure by the other unknowns, and what is missing of it. False if
/// one has nothing to hold it.
bool Stepper::setPressures(const Task& task)
{
    const Joined& joined = task.joined;
    const std::size_t closed = joined.closed.size();
    const double per_mm = 1 / task.start.atmosphere_mm;
    setZero(pressure_by_, closed * width());
    pressure_pull_.resize(closed);
    for (std::size_t k = 0; k < closed; ++k)
        pressure_pull_[k] = gas_volume_[k] * per_mm;
    for (const Joined::Moving& moving : joined.moving) {
        if (moving.pressure == Joined::none)
            continue;
        const double share = 1 + (pressure_[moving.pressure] + open_mm_) * per_mm;
        const double pull = share * liquid_[moving.cell].ml_per_mm;
        pressure_pull_[moving.pressure] += pull;
        pressureBy(moving.pressure)[moving.head] -= pull;
    }
    for (const Joined::GasThroat& throat : joined.gas_throats) {
        if (throat.from_pressure != Joined::none)
            pressureBy(throat.from_pressure)[throat.gas] += 1;
        if (throat.to_pressure != Joined::none)
            pressureBy(throat.to_pressure)[throat.gas] -= 1;
    }
    for (std::size_t k = 0; k < closed; ++k) {
        if (!(std::abs(pressure_pull_[k]) > no_pivot))
            return false;
        double* const by = pressureBy(k);
        if (task.isToMark())
            by[width() - 2] += gasMissingRate(task, k);
        by[width() - 1] = gas_missing_[k];
        const double give = 1 / pressure_pull_[k];
        for (std::size_t c = 0; c < width(); ++c)
            by[c] *= give;
    }
    return true;
}

/// Gauss elimination with row exchange; the solution becomes change_.
bool Stepper::eliminate()
{
    const std::size_t size = unknown_.size();
    rows_.resize(size);
    for (std::size_t row = 0; row < size; ++row)
        rows_[row] = &matrix_[row * width()];
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
        const double* const pivot = rows[column];
        for (std::size_t row = column + 1; row < size; ++row) {
            double* const other = rows[row];
            if (other[column] == 0)
                continue;
            const double factor = other[column] / pivot[column];
            for (std::size_t k = column + 1; k <= size; ++k)
                other[k] -= factor * pivot[k];
        }
    }
    change_.resize(size);
    for (std::size_t row = size; row-- > 0;) {
        const double* const own = rows[row];
        double sum = own[size];
        for (std::size_t k = row + 1; k < size; ++k)
            sum -= own[k] * change_[k];
        change_[row] = sum / own[row];
    }
    return true;
}

/// What takes residual_ and gas_missing_ to nothing, as change_ and pressure_change_. False if nothing does.
bool Stepper::findChange(const Task& task)
{
    if (!setPressures(task))
        return false;
    setMatrix(task);
    if (!eliminate())
        return false;
    const std::size_t size = unknown_.size();
    pressure_change_.resize(task.joined.closed.size());
    for (std::size_t k = 0; k < pressure_change_.size(); ++k) {
        const double* const by = pressureBy(k);
        double change = by[size];
        for (std::size_t c = 0; c < size; ++c)
            change -= by[c] * change_[c];
        pressure_change_[k] = change;
    }
    return true;
}

} // namespace siphonwright
