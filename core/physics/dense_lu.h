#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace siphonwright {

/// Linear equations of a few unknowns: elimination with partial pivoting (Golub and Van Loan 1996, Matrix
/// Computations, 3.4), which passes by what is zero already. Memory is taken once, at construction.
class DenseLu {
public:
    explicit DenseLu(std::size_t unknowns) : count_(unknowns), matrix_(unknowns * unknowns), pivots_(unknowns)
    {}

    /// Row by row; to be filled, then factored in place.
    std::span<double> matrix() { return matrix_; }

    /// False where the matrix is singular, or not of numbers; then solve() is not to be called.
    bool factor()
    {
        for (std::size_t k = 0; k < count_; ++k) {
            const std::size_t pivot = pivotOf(k);
            pivots_[k] = pivot;
            double* const top = rowOf(k);
            if (pivot != k)
                std::swap_ranges(top, top + count_, rowOf(pivot));
            if (!(std::abs(top[k]) > 0 && std::isfinite(top[k])))
                return false;
            top[k] = 1 / top[k];
            for (std::size_t i = k + 1; i < count_; ++i) {
                double* const row = rowOf(i);
                if (row[k] == 0)
                    continue;
                row[k] *= top[k];
                for (std::size_t j = k + 1; j < count_; ++j)
                    row[j] -= row[k] * top[j];
            }
        }
        return true;
    }

    /// The right-hand side becomes the solution.
    void solve(std::span<double> x) const
    {
        for (std::size_t k = 0; k < count_; ++k)
            std::swap(x[k], x[pivots_[k]]);
        for (std::size_t i = 1; i < count_; ++i) {
            const double* const row = matrix_.data() + i * count_;
            double sum = x[i];
            for (std::size_t j = 0; j < i; ++j)
                sum -= row[j] * x[j];
            x[i] = sum;
        }
        for (std::size_t i = count_; i-- > 0;) {
            const double* const row = matrix_.data() + i * count_;
            double sum = x[i];
            for (std::size_t j = i + 1; j < count_; ++j)
                sum -= row[j] * x[j];
            x[i] = sum * row[i];
        }
    }

private:
    std::size_t count_ = 0;
    std::vector<double> matrix_; ///< both factors; the inverse of each pivot on the diagonal
    std::vector<std::size_t> pivots_;

    double* rowOf(std::size_t i) { return matrix_.data() + i * count_; }

    std::size_t pivotOf(std::size_t k) const
    {
        std::size_t best = k;
        for (std::size_t i = k + 1; i < count_; ++i) {
            if (std::abs(matrix_[i * count_ + k]) > std::abs(matrix_[best * count_ + k]))
                best = i;
        }
        return best;
    }
};

} // namespace siphonwright
