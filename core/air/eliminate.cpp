#include "core/air/step.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

/// Gauss elimination with row exchange; the solution replaces change_.
bool Stepper::eliminate()
{
    const std::size_t size = unknown_.size();
    change_.assign(residual_.begin(), residual_.end());
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
        std::swap(rows[best], rows[column]);
        std::swap(change[best], change[column]);
        const double* const pivot = rows[column];
        if (!(largest > 1e-14))
            return false;
        for (std::size_t row = column + 1; row < size; ++row) {
            double* const other = rows[row];
            if (other[column] == 0)
                continue;
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

} // namespace siphonwright
