#pragma once

#include "core/physics/root.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <limits>
#include <optional>
#include <span>
#include <type_traits>
#include <utility>
#include <vector>

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

enum class StepStatus {
    done,
    too_small, ///< the step that the tolerance asks for vanishes against the time: the equations jump or blow
               ///< up
    not_finite, ///< a derivative is no number, however small the step
};

/// How closely a solution is followed. The local error of state i per step is held to
/// absolute[i] + relative * |y_i|, as a root mean square over the states.
struct IntegratorTolerance {
    double relative = 1e-6;
    /// One per state, in its unit. Infinite leaves a state out, as one that only adds something up.
    std::vector<double> absolute;
};

/// The embedded Dormand-Prince method of orders 5 and 4, its dense output of order 4, and step control of
/// proportional-integral kind (Hairer, Norsett and Wanner 1993, II.4-6; beta = 0.04, safety 0.9, a step
/// between a fifth and ten times the last).
///
/// Sums of states with constant weights that the right-hand side conserves (energy) are conserved to
/// rounding, in the steps and in the dense output between them.
///
/// The right-hand side is any callable (double time, std::span<const double> state, std::span<double> rate).
/// Memory is taken once, at construction; no step takes more.
class DormandPrince {
public:
    explicit DormandPrince(IntegratorTolerance wanted)
        : tolerance_(std::move(wanted)), count_(tolerance_.absolute.size()), memory_(count_ * rows)
    {}

    /// Begins at a time and state. \param first_step 0 lets it choose one
    template <typename RightHandSide>
    void begin(RightHandSide&& rhs, double time, std::span<const double> state, double first_step = 0)
    {
        step_end_ = step_start_ = time;
        std::copy(state.begin(), state.end(), row(row_end).begin());
        std::copy(state.begin(), state.end(), row(row_start).begin());
        rhs(time, std::span<const double>(row(row_end)), row(row_stage));
        ++evaluation_count_;
        next_step_ = first_step > 0 ? first_step : firstStep();
        last_ln_error_ = ln_least_error;
    }

    /// One step that meets the tolerance, and ends at `latest` at the latest.
    template <typename RightHandSide>
    StepStatus step(RightHandSide&& rhs, double latest)
    {
        advance();
        bool rejected = false;
        for (;;) {
            const double room = latest - step_start_;
            const bool to_end = next_step_ >= room * (1 - 1e-10);
            const double h = to_end ? room : next_step_;
            // What is left until `latest` may be as little as it likes; a step that errors ask for may not.
            const double least = 4 * std::numeric_limits<double>::epsilon() * std::abs(step_start_);
            if (!(h > (to_end ? 0 : least)))
                return StepStatus::too_small;
            const double error = tryStep(rhs, h);
            ++attempt_count_;
            if (!std::isfinite(error)) {
                next_step_ = h / 10;
                if (next_step_ < 1e-12 * std::max(1.0, std::abs(step_start_)))
                    return StepStatus::not_finite;
                rejected = true;
                continue;
            }
            if (error <= 1) {
                acceptStep(h, error, to_end, rejected, latest);
                return StepStatus::done;
            }
            next_step_ = h * std::max(0.2, 0.9 * std::pow(error, -exponent));
            rejected = true;
        }
    }

    /// Goes back to a time within the last step and continues from there, as after an event that changed the
    /// right-hand side.
    template <typename RightHandSide>
    void restart(RightHandSide&& rhs, double time)
    {
        const std::span<double> state = row(row_work);
        for (std::size_t i = 0; i < count_; ++i)
            state[i] = at(time, i);
        begin(rhs, time, state, next_step_);
    }

    double from() const { return step_start_; } ///< start of the last step
    double time() const { return step_end_; }   ///< its end
    std::span<const double> state() const { return {memory_.data() + row_end * count_, count_}; }

    /// State i at a time within the last step.
    double at(double time, std::size_t i) const
    {
        const double h = step_end_ - step_start_;
        const double x = h > 0 ? (time - step_start_) / h : 1;
        const auto r = [&](std::size_t k) { return memory_[(row_dense + k) * count_ + i]; };
        if (!(h > 0))
            return memory_[row_end * count_ + i];
        return memory_[row_start * count_ + i] + x * (r(0) + (1 - x) * (r(1) + x * (r(2) + (1 - x) * r(3))));
    }

    std::size_t evaluations() const { return evaluation_count_; }
    std::size_t attempts() const { return attempt_count_; } ///< steps tried, those not accepted included

private:
    static constexpr std::size_t row_start = 0, row_end = 1, row_work = 2, row_dense = 3, row_stage = 7,
                                 rows = 14;
    static constexpr double beta = 0.04;
    static constexpr double exponent = 0.2 - 0.75 * beta;
    static constexpr double ln_least_error = -9.2; ///< of 1e-4: a lucky step says no more than that

    IntegratorTolerance tolerance_;
    std::size_t count_ = 0;
    std::vector<double> memory_; ///< `rows` rows of `count`
    double step_start_ = 0;
    double step_end_ = 0;
    double next_step_ = 0;
    double last_ln_error_ = ln_least_error;
    std::size_t evaluation_count_ = 0;
    std::size_t attempt_count_ = 0;

    std::span<double> row(std::size_t r) { return {memory_.data() + r * count_, count_}; }

    double weight(std::size_t i, double a, double b) const
    {
        return tolerance_.absolute[i] + tolerance_.relative * std::max(std::abs(a), std::abs(b));
    }

    /// A step over which the fastest state would change by a hundredth of its scale (Hairer et al., II.4).
    double firstStep()
    {
        double size = 0, speed = 0;
        for (std::size_t i = 0; i < count_; ++i) {
            const double y = memory_[row_end * count_ + i];
            const double w = weight(i, y, y);
            if (!std::isfinite(w))
                continue;
            size += (y / w) * (y / w);
            speed += (memory_[row_stage * count_ + i] / w) * (memory_[row_stage * count_ + i] / w);
        }
        return size > 1e-10 && speed > 1e-10 ? 0.01 * std::sqrt(size / speed) : 1e-6;
    }

    /// The end of the last step becomes the start of the next.
    void advance()
    {
        if (step_end_ == step_start_)
            return;
        std::copy_n(memory_.begin() + offset(row_end), count_, memory_.begin() + offset(row_start));
        std::copy_n(memory_.begin() + offset(row_stage + 6), count_, memory_.begin() + offset(row_stage));
        step_start_ = step_end_;
    }

    std::ptrdiff_t offset(std::size_t r) const { return static_cast<std::ptrdiff_t>(r * count_); }

    /// Computes all stages and row_end for a step h; returns its error over the tolerance.
    template <typename RightHandSide>
    double tryStep(RightHandSide&& rhs, double h)
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
        return errorOver(h);
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

    /// Error of the step just computed, over the tolerance: root mean square over the states that count.
    double errorOver(double h) const
    {
        const double* const m = memory_.data();
        const double* const k = m + row_stage * count_;
        double total = 0;
        std::size_t counted = 0;
        for (std::size_t i = 0; i < count_; ++i) {
            const double w = weight(i, m[row_start * count_ + i], m[row_end * count_ + i]);
            if (w == std::numeric_limits<double>::infinity())
                continue;
            double slope = 0;
            for (std::size_t j = 0; j < 7; ++j)
                slope += dormand_prince::error[j] * k[j * count_ + i];
            total += (h * slope / w) * (h * slope / w);
            ++counted;
        }
        return std::sqrt(total / static_cast<double>(std::max<std::size_t>(1, counted)));
    }

    void acceptStep(double h, double error, bool to_end, bool rejected, double latest)
    {
        prepareDense(h);
        step_end_ = to_end ? latest : step_start_ + h;
        const double floor_error = std::max(error, 1e-10);
        const double ln_error = std::log(floor_error);
        double factor = 0.9 * std::exp(beta * last_ln_error_ - exponent * ln_error);
        factor = std::clamp(factor, 0.2, rejected ? 1.0 : 10.0);
        // A step cut short by `latest` says little of what the next can be.
        next_step_ = to_end && !rejected ? std::max(next_step_, h * factor) : h * factor;
        last_ln_error_ = std::max(ln_error, ln_least_error);
    }

    void prepareDense(double h)
    {
        double* const m = memory_.data();
        const std::size_t n = count_;
        const double* const k = m + row_stage * n;
        for (std::size_t i = 0; i < n; ++i) {
            const double change = m[row_end * n + i] - m[row_start * n + i];
            const double bend = h * k[i] - change;
            double slope = 0;
            for (std::size_t j = 0; j < 7; ++j)
                slope += dormand_prince::dense[j] * k[j * n + i];
            m[(row_dense + 0) * n + i] = change;
            m[(row_dense + 1) * n + i] = bend;
            m[(row_dense + 2) * n + i] = change - h * k[6 * n + i] - bend;
            m[(row_dense + 3) * n + i] = h * slope;
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
