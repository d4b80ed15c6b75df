#pragma once

#include "core/physics/error_controlled.h"
#include "core/physics/root.h"

#include <array>
#include <cmath>
#include <cstddef>
#include <optional>
#include <span>
#include <type_traits>
#include <utility>

/// Ordinary differential equations, stepped with control of the error, with states between steps and events.
namespace siphonwright {

/// Coefficients of Dormand and Prince 1980, J. Comput. Appl. Math. 6:19-26, and of the dense output that
/// Hairer, Norsett and Wanner 1993 (Solving Ordinary Differential Equations I, II.6) give for it.
namespace dormand_prince {
constexpr std::array<double, 7> node = {0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1};
/// Row s makes stage s + 1 from stages 0..s; the last row is the solution of fifth order.
constexpr std::array<std::array<double, 6>, 6> stage = {
    {{1.0 / 5},
     {3.0 / 40, 9.0 / 40},
     {44.0 / 45, -56.0 / 15, 32.0 / 9},
     {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
     {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
     {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}}};
/// Fifth order less fourth.
constexpr std::array<double, 7> error = {71.0 / 57600,      0,          -71.0 / 16695, 71.0 / 1920,
                                         -17253.0 / 339200, 22.0 / 525, -1.0 / 40};
constexpr std::array<double, 7> dense = {-12715105075.0 / 11282082432.0,  0,
                                         87487479700.0 / 32700410799.0,   -10690763975.0 / 1880347072.0,
                                         701980252875.0 / 199316789632.0, -1453857185.0 / 822651844.0,
                                         69997945.0 / 29380423.0};
} // namespace dormand_prince

/// The embedded Dormand-Prince method of orders 5 and 4, and its dense output of order 4.
///
/// Sums of states with constant weights that the right-hand side conserves (energy) are conserved to
/// rounding, in the steps and in the dense output between them.
class DormandPrince : public ErrorControlled<DormandPrince> {
public:
    explicit DormandPrince(IntegratorTolerance wanted) : ErrorControlled(std::move(wanted)) {}

    /// State i at a time within the last step.
    double at(double time, std::size_t i) const
    {
        const double h = step_end_ - step_start_;
        if (!(h > 0))
            return memory_[row_end * count_ + i];
        const double x = (time - step_start_) / h;
        const auto r = [&](std::size_t k) { return memory_[(row_dense + k) * count_ + i]; };
        return memory_[row_start * count_ + i] + x * (r(0) + (1 - x) * (r(1) + x * (r(2) + (1 - x) * r(3))));
    }

    /// How far state i can stray, within the last step, from between its values at the step's ends; at most.
    double straying(std::size_t i) const
    {
        // x(1 - x), x^2(1 - x) and x^2(1 - x)^2 at their highest.
        const auto r = [&](std::size_t k) { return std::abs(memory_[(row_dense + k) * count_ + i]); };
        return r(1) / 4 + r(2) * (4.0 / 27) + r(3) / 16;
    }

    /// Length of the last step times the size of the eigenvalue that rules the difference of its last two
    /// stages, which both stand at its end (Hairer and Wanner 1996, Solving Ordinary Differential Equations
    /// II, IV.2). The method is stable up to 3.3 on the negative real axis: there it is stability and not
    /// accuracy that keeps steps short.
    double stiffness() const
    {
        const double* const m = memory_.data();
        double slopes = 0, states = 0;
        for (std::size_t i = 0; i < count_; ++i) {
            if (!counts(i))
                continue;
            const double slope = m[row_end_rate * count_ + i] - m[(row_end_rate - 1) * count_ + i];
            const double state = m[row_end * count_ + i] - m[row_work * count_ + i];
            slopes += slope * slope;
            states += state * state;
        }
        return states > 0 ? (step_end_ - step_start_) * std::sqrt(slopes / states) : 0;
    }

private:
    friend ErrorControlled<DormandPrince>;

    /// Slopes of the seven stages; the first is the rate at the step's start.
    static constexpr std::size_t row_stage = row_rate, row_end_rate = row_stage + 6,
                                 row_dense = row_end_rate + 1, rows = row_dense + 4;

    /// Computes all stages and row_end for a step h; returns its error over the tolerance.
    template <typename System>
    double tryStep(System&& rhs, double h)
    {
        const auto evaluate = [&]<std::size_t s>(std::integral_constant<std::size_t, s>) {
            constexpr std::size_t to = s == 5 ? row_end : row_work;
            addSlopes<s>(h, to);
            rhs(step_start_ + dormand_prince::node[s + 1] * h, std::span<const double>(row(to)),
                row(row_stage + s + 1));
        };
        [&]<std::size_t... s>(std::index_sequence<s...>)
        {
            (evaluate(std::integral_constant<std::size_t, s>{}), ...);
        }
        (std::make_index_sequence<6>{});
        evaluation_count_ += 6;
        return errorOver([&](std::size_t i) { return h * weightedSlope(dormand_prince::error, i); });
    }

    /// State at the start and h times the weighted slopes of stages 0 to s, in a row.
    template <std::size_t s>
    void addSlopes(double h, std::size_t to)
    {
        double* const m = memory_.data();
        const double* const k = m + row_stage * count_;
        constexpr std::array<double, 6> a = dormand_prince::stage[s];
        for (std::size_t i = 0; i < count_; ++i) {
            double slope = a[0] * k[i];
            for (std::size_t j = 1; j <= s; ++j)
                slope += a[j] * k[j * count_ + i];
            m[to * count_ + i] = m[row_start * count_ + i] + h * slope;
        }
    }

    double weightedSlope(const std::array<double, 7>& weights, std::size_t i) const
    {
        const double* const k = memory_.data() + row_stage * count_ + i;
        double slope = 0;
        for (std::size_t j = 0; j < weights.size(); ++j)
            slope += weights[j] * k[j * count_];
        return slope;
    }

    template <typename System>
    void finishStep(System&&, double h)
    {
        double* const m = memory_.data();
        const std::size_t n = count_;
        for (std::size_t i = 0; i < n; ++i) {
            const double change = m[row_end * n + i] - m[row_start * n + i];
            const double bend = h * m[row_rate * n + i] - change;
            m[(row_dense + 0) * n + i] = change;
            m[(row_dense + 1) * n + i] = bend;
            m[(row_dense + 2) * n + i] = change - h * m[row_end_rate * n + i] - bend;
            m[(row_dense + 3) * n + i] = h * weightedSlope(dormand_prince::dense, i);
        }
    }
};

/// When g first rises from under 0 to 0 or over between two times, to within `tolerance`; the time given is
/// on the far side, so that g is not under 0 there. g(t) reads a solution's dense output. A rise that is
/// undone within a quarter of the interval can pass unseen. Nothing where g is not under 0 at the start.
template <typename Function>
std::optional<double> firstRise(Function&& g, double from, double to, double tolerance)
{
    double low = from;
    double at_low = g(from);
    if (!(at_low < 0))
        return std::nullopt;
    for (int quarter = 1; quarter <= 4; ++quarter) {
        const double high = quarter == 4 ? to : from + (to - from) * quarter / 4;
        const double at_high = g(high);
        if (at_high >= 0)
            return narrowRoot(g, low, high, at_low, at_high, tolerance).high;
        low = high;
        at_low = at_high;
    }
    return std::nullopt;
}

} // namespace siphonwright
