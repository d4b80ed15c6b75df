#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace siphonwright {

/// Linear equations of a few unknowns: elimination with partial pivoting over rows scaled by their largest
/// entry (Golub and Van Loan 1996, Matrix Computations, 3.4-3.5), which passes by what is zero already.
///
/// A pivot on the diagonal is kept unless another is a thousand times larger, as KLU does (Davis and
/// Natarajan 2010, ACM Trans. Math. Softw. 37:36): so what is zero stays zero, and parts of a system that are
/// alike get solutions alike to the last bit. Memory is taken once, at construction.
class DenseLu {
public:
    explicit DenseLu(std::size_t unknowns)
        : count_(unknowns), matrix_(unknowns * unknowns), per_largest_(unknowns), pivots_(unknowns)
    {}

    /// Row by row; to be filled, then factored in place.
    std::span<double> matrix() { return matrix_; }

    /// False where the matrix is singular, or not of numbers; then solve() is not to be called.
    bool factor()
    {
        for (std::size_t i = 0; i < count_; ++i)
            per_largest_[i] = 1 / largestIn(i);
        for (std::size_t k = 0; k < count_; ++k) {
            const std::size_t pivot = pivotOf(k);
            pivots_[k] = pivot;
            double* const top = rowOf(k);
            if (pivot != k) {
                std::swap_ranges(top, top + count_, rowOf(pivot));
                std::swap(per_largest_[k], per_largest_[pivot]);
            }
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
    std::vector<double> matrix_;      ///< both factors; the inverse of each pivot on the diagonal
    std::vector<double> per_largest_; ///< one over the largest entry of each row
    std::vector<std::size_t> pivots_;

    double* rowOf(std::size_t i) { return matrix_.data() + i * count_; }

    double largestIn(std::size_t i) const
    {
        double largest = 0;
        for (std::size_t j = 0; j < count_; ++j)
            largest = std::max(largest, std::abs(matrix_[i * count_ + j]));
        return largest;
    }

    std::size_t pivotOf(std::size_t k) const
    {
        constexpr double diagonal_counts = 1000;
        std::size_t best = k;
        double most = diagonal_counts * std::abs(matrix_[k * count_ + k]) * per_largest_[k];
        for (std::size_t i = k + 1; i < count_; ++i) {
            const double size = std::abs(matrix_[i * count_ + k]) * per_largest_[i];
            if (size > most) {
                best = i;
                most = size;
            }
        }
        return best;
    }
};

} // namespace siphonwright
