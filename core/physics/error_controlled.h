#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>
#include <span>
#include <utility>
#include <vector>

/// Ordinary differential equations: steps whose size the error decides, whatever method makes them.
namespace siphonwright {

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

/// What one-step methods of fifth order with an estimate of fourth have in common: memory, and step control
/// of proportional-integral kind (Hairer, Norsett and Wanner 1993, Solving Ordinary Differential Equations I,
/// II.4; beta = 0.04, safety 0.95, a step between a fifth and ten times the last).
///
/// Method has, for its base:
///   rows, row_end_rate                      how many rows it needs; which holds the rate at the step's end
///   double tryStep(system, h)               computes row_end; returns the error over the tolerance
///   void finishStep(system, h)              after acceptance: row_end_rate, and what at() needs
///
/// The right-hand side is any callable (double time, std::span<const double> state, std::span<double> rate).
/// Memory is taken once, at construction; no step takes more.
template <typename Method>
class ErrorControlled {
public:
    /// Begins at a time and state. \param first_step 0 lets it choose one
    template <typename System>
    void begin(System&& system, double time, std::span<const double> state, double first_step = 0)
    {
        step_end_ = step_start_ = time;
        std::copy(state.begin(), state.end(), row(row_end).begin());
        std::copy(state.begin(), state.end(), row(row_start).begin());
        system(time, std::span<const double>(row(row_end)), row(row_rate));
        ++evaluation_count_;
        started_ = true;
        next_step_ = first_step > 0 ? first_step : firstStep();
        last_ln_error_ = ln_least_error;
    }

    /// One step that meets the tolerance, and ends at `latest` at the latest.
    template <typename System>
    StepStatus step(System&& system, double latest)
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
            const double error = self().tryStep(system, h);
            ++attempt_count_;
            if (!std::isfinite(error)) {
                next_step_ = h / 10;
                if (next_step_ < 1e-12 * std::max(1.0, std::abs(step_start_)))
                    return StepStatus::not_finite;
                rejected = true;
                continue;
            }
            if (error <= 1) {
                self().finishStep(system, h);
                acceptStep(h, error, to_end, rejected, latest);
                return StepStatus::done;
            }
            next_step_ = h * std::max(0.2, 0.95 * std::pow(error, -exponent));
            rejected = true;
        }
    }

    /// Makes the last step shorter, to end at a time within it: what it found by the dense output, to the
    /// accuracy of the step itself.
    template <typename System>
    void shorten(System&& system, double time)
    {
        const double h = time - step_start_;
        if (h > 0 && std::isfinite(self().tryStep(system, h))) {
            self().finishStep(system, h);
            step_end_ = time;
        }
    }

    /// Continues from the end of the last step, as after an event that changed the right-hand side there.
    template <typename System>
    void restart(System&& system)
    {
        const std::span<double> state = row(row_work), end = row(row_end);
        std::copy(end.begin(), end.end(), state.begin());
        const double before = next_step_;
        begin(system, step_end_, state);
        next_step_ = std::min(before, restart_factor * next_step_);
    }

    double from() const { return step_start_; } ///< start of the last step
    std::span<const double> stateFrom() const { return {memory_.data() + row_start * count_, count_}; }
    double time() const { return step_end_; } ///< its end
    std::span<const double> state() const { return {memory_.data() + row_end * count_, count_}; }
    double nextStep() const { return next_step_; } ///< that errors so far let one expect

    std::size_t evaluations() const { return evaluation_count_; }
    std::size_t attempts() const { return attempt_count_; } ///< steps tried, those not accepted included

protected:
    static constexpr std::size_t row_start = 0, row_end = 1, row_work = 2, row_rate = 3, first_own_row = 4;

    explicit ErrorControlled(IntegratorTolerance wanted)
        : tolerance_(std::move(wanted)), count_(tolerance_.absolute.size()), memory_(count_ * Method::rows)
    {}

    IntegratorTolerance tolerance_;
    std::size_t count_ = 0;
    std::vector<double> memory_; ///< rows of `count`
    double step_start_ = 0;
    double step_end_ = 0;
    std::size_t evaluation_count_ = 0;
    bool started_ = false; ///< the state at the start is another than in the last step tried

    std::span<double> row(std::size_t r) { return {memory_.data() + r * count_, count_}; }

    bool counts(std::size_t i) const
    {
        return tolerance_.absolute[i] < std::numeric_limits<double>::infinity();
    }

    /// Root mean square, over the states that count, of an error over its tolerance.
    template <typename Error>
    double errorOver(Error&& error) const
    {
        const double* const m = memory_.data();
        double total = 0;
        std::size_t counted = 0;
        for (std::size_t i = 0; i < count_; ++i) {
            if (!counts(i))
                continue;
            const double e = error(i) / weight(i, m[row_start * count_ + i], m[row_end * count_ + i]);
            total += e * e;
            ++counted;
        }
        return std::sqrt(total / static_cast<double>(std::max<std::size_t>(1, counted)));
    }

private:
    static constexpr double beta = 0.04;
    static constexpr double exponent = 0.2 - 0.75 * beta;
    /// First step after a restart over one chosen with no knowledge. Own choice, by counting evaluations.
    static constexpr double restart_factor = 1.4;
    static constexpr double ln_least_error = -9.2; ///< of 1e-4: a lucky step says no more than that

    double next_step_ = 0;
    double last_ln_error_ = ln_least_error;
    std::size_t attempt_count_ = 0;

    Method& self() { return static_cast<Method&>(*this); }

    double weight(std::size_t i, double a, double b) const
    {
        return tolerance_.absolute[i] + tolerance_.relative * std::max(std::abs(a), std::abs(b));
    }

    /// A step over which the fastest state would change by a hundredth of its scale (Hairer et al., II.4).
    double firstStep() const
    {
        double size = 0, speed = 0;
        for (std::size_t i = 0; i < count_; ++i) {
            const double y = memory_[row_end * count_ + i];
            const double w = weight(i, y, y);
            if (!std::isfinite(w))
                continue;
            const double rate = memory_[row_rate * count_ + i];
            size += (y / w) * (y / w);
            speed += (rate / w) * (rate / w);
        }
        return size > 1e-10 && speed > 1e-10 ? 0.01 * std::sqrt(size / speed) : 1e-6;
    }

    /// The end of the last step becomes the start of the next.
    void advance()
    {
        if (step_end_ == step_start_)
            return;
        const std::span<double> end = row(row_end), end_rate = row(Method::row_end_rate);
        std::copy(end.begin(), end.end(), row(row_start).begin());
        std::copy(end_rate.begin(), end_rate.end(), row(row_rate).begin());
        step_start_ = step_end_;
        started_ = true;
    }

    void acceptStep(double h, double error, bool to_end, bool rejected, double latest)
    {
        step_end_ = to_end ? latest : step_start_ + h;
        const double ln_error = std::log(std::max(error, 1e-10));
        double factor = 0.95 * std::exp(beta * last_ln_error_ - exponent * ln_error);
        factor = std::clamp(factor, 0.2, rejected ? 1.0 : 10.0);
        // A step cut short by `latest` says little of what the next can be.
        next_step_ = to_end && !rejected ? std::max(next_step_, h * factor) : h * factor;
        last_ln_error_ = std::max(ln_error, ln_least_error);
    }
};

} // namespace siphonwright
