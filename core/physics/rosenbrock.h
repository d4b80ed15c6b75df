#pragma once

#include "core/physics/dense_lu.h"
#include "core/physics/error_controlled.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <limits>
#include <span>
#include <type_traits>
#include <utility>
#include <vector>

/// A method for stiff equations: fast states that have died away leave the step as long as the slow ones
/// allow.
namespace siphonwright {

/// Coefficients of Rodas5P (Steinebach 2023, BIT Numer. Math. 63:27), in the form in which each stage solves
/// (I/(gamma h) - J) u = rate + (sum of couplings times earlier u)/h (Hairer and Wanner 1996, Solving
/// Ordinary Differential Equations II, IV.7).
namespace rodas5p {
constexpr double gamma = 0.21193756319429014;
/// Row s makes the state of stage s + 1 from u of stages 0..s. Those of the last two stages, and the
/// solution, each add the u before to the state before.
constexpr std::array<std::array<double, 5>, 5> stage = {
    {{3.0},
     {2.849394379747939, 0.45842242204463923},
     {-6.954028509809101, 2.489845061869568, -10.358996098473584},
     {2.8029986275628964, 0.5072464736228206, -0.3988312541770524, -0.04721187230404641},
     {-7.502846399306121, 2.561846144803919, -11.627539656261098, -0.18268767659942256,
      0.030198172008377946}}};
constexpr std::array<std::array<double, 7>, 8> coupling = {
    {{},
     {-14.155112264123755},
     {-17.97296035885952, -2.859693295451294},
     {147.12150275711716, -1.41221402718213, 71.68940251302358},
     {165.43517024871676, -0.4592823456491126, 42.90938336958603, -5.961986721573306},
     {24.854864614690072, -3.0009227002832186, 47.4931110020768, 5.5814197821558125, -0.6610691825249471},
     {30.91273214028599, -3.1208243349937974, 77.79954646070892, 34.28646028294783, -19.097331116725623,
      -28.087943162872662},
     {37.80277123390563, -3.2571969029072276, 112.26918849496327, 66.9347231244047, -40.06618937091002,
      -54.66780262877968, -9.48861652309627}}};
constexpr std::array<std::array<double, 8>, 3> dense = {
    {{25.948786856663858, -2.5579724845846235, 10.433815404888879, -2.3679251022685204, 0.524948541321073,
      1.1241088310450404, 0.4272876194431874, -0.17202221070155493},
     {-9.91568850695171, -0.9689944594115154, 3.0438037242978453, -24.495224566215796, 20.176138334709044,
      15.98066361424651, -6.789040303419874, -6.710236069923372},
     {11.419903575922262, 2.8879645146136994, 72.92137995996029, 80.12511834622643, -52.072871366152654,
      -59.78993625266729, -0.15582684282751913, 4.883087185713722}}};
} // namespace rodas5p

/// The Rosenbrock method Rodas5P: order 5 with an estimate of order 4, dense output of order 4, L-stable, so
/// that its steps do not hang on how fast the fastest state is. It solves linear equations with the
/// Jacobian of the right-hand side, once a step factored, and iterates nothing.
///
/// Where the Jacobian conserves a sum of states as the right-hand side does, so do steps and dense output, to
/// rounding.
///
/// The system is a right-hand side whose rates do not hang on time, with
/// void jacobian(std::span<const double> state, std::span<double> row_by_row), exact to rounding. A
/// Jacobian counts as one evaluation.
class Rosenbrock : public ErrorControlled<Rosenbrock> {
public:
    explicit Rosenbrock(IntegratorTolerance wanted)
        : ErrorControlled(std::move(wanted)), jacobian_(count_ * count_), equations_(count_)
    {}

    /// State i at a time within the last step.
    double at(double time, std::size_t i) const
    {
        const double h = step_end_ - step_start_;
        if (!(h > 0))
            return memory_[row_end * count_ + i];
        const double x = (time - step_start_) / h;
        const auto r = [&](std::size_t k) { return memory_[(row_dense + k) * count_ + i]; };
        const double start = memory_[row_start * count_ + i], end = memory_[row_end * count_ + i];
        return start + x * (end - start + (1 - x) * (r(0) + x * (r(1) + x * r(2))));
    }

    /// How far state i can stray, within the last step, from between its values at the step's ends; at most.
    double straying(std::size_t i) const
    {
        // x(1 - x), x^2(1 - x) and x^3(1 - x) at their highest.
        const auto r = [&](std::size_t k) { return std::abs(memory_[(row_dense + k) * count_ + i]); };
        return r(0) / 4 + r(1) * (4.0 / 27) + r(2) * (27.0 / 256);
    }

private:
    friend ErrorControlled<Rosenbrock>;

    static constexpr std::size_t stages = 8;
    static constexpr std::size_t row_end_rate = first_own_row, row_u = row_end_rate + 1,
                                 row_dense = row_u + stages, rows = row_dense + 3;

    std::vector<double> jacobian_; ///< at the step's start
    DenseLu equations_;

    template <typename System>
    double tryStep(System&& system, double h)
    {
        if (started_) {
            system.jacobian(std::span<const double>(row(row_start)), std::span<double>(jacobian_));
            ++evaluation_count_;
            started_ = false;
        }
        if (!factor(h))
            return std::numeric_limits<double>::quiet_NaN();
        const auto solve = [&]<std::size_t s>(std::integral_constant<std::size_t, s>) {
            const std::span<double> u = row(row_u + s);
            if constexpr (s == 0) {
                const std::span<double> rate = row(row_rate);
                std::copy(rate.begin(), rate.end(), u.begin());
            } else {
                makeState<s>();
                system(step_start_, std::span<const double>(row(row_work)), u);
                couple<s>(1 / h);
            }
            equations_.solve(u);
        };
        [&]<std::size_t... s>(std::index_sequence<s...>)
        {
            (solve(std::integral_constant<std::size_t, s>{}), ...);
        }
        (std::make_index_sequence<stages>{});
        evaluation_count_ += stages - 1;
        // The last u is the solution less the embedded one.
        double* const m = memory_.data();
        const double* const error = m + (row_u + stages - 1) * count_;
        for (std::size_t i = 0; i < count_; ++i)
            m[row_end * count_ + i] = m[row_work * count_ + i] + error[i];
        return errorOver([&](std::size_t i) { return error[i]; });
    }

    bool factor(double h)
    {
        const std::span<double> matrix = equations_.matrix();
        for (std::size_t k = 0; k < matrix.size(); ++k)
            matrix[k] = -jacobian_[k];
        for (std::size_t i = 0; i < count_; ++i)
            matrix[i * count_ + i] += 1 / (rodas5p::gamma * h);
        return equations_.factor();
    }

    /// The state of stage s > 0, in row_work.
    template <std::size_t s>
    void makeState()
    {
        double* const m = memory_.data();
        const double* const u = m + row_u * count_;
        double* const state = m + row_work * count_;
        for (std::size_t i = 0; i < count_; ++i) {
            if constexpr (s > 5) {
                state[i] += u[(s - 1) * count_ + i];
            } else {
                double sum = m[row_start * count_ + i];
                for (std::size_t j = 0; j < s; ++j)
                    sum += rodas5p::stage[s - 1][j] * u[j * count_ + i];
                state[i] = sum;
            }
        }
    }

    /// Adds what earlier stages give to the right-hand side of stage s.
    template <std::size_t s>
    void couple(double per_h)
    {
        double* const u = memory_.data() + row_u * count_;
        for (std::size_t i = 0; i < count_; ++i) {
            double sum = 0;
            for (std::size_t j = 0; j < s; ++j)
                sum += rodas5p::coupling[s][j] * u[j * count_ + i];
            u[s * count_ + i] += sum * per_h;
        }
    }

    template <typename System>
    void finishStep(System&& system, double h)
    {
        // Asked last at the step's end, as the explicit method does.
        system(step_start_ + h, std::span<const double>(row(row_end)), row(row_end_rate));
        ++evaluation_count_;
        double* const m = memory_.data();
        const double* const u = m + row_u * count_;
        for (std::size_t k = 0; k < rodas5p::dense.size(); ++k) {
            for (std::size_t i = 0; i < count_; ++i) {
                double sum = 0;
                for (std::size_t j = 0; j < stages; ++j)
                    sum += rodas5p::dense[k][j] * u[j * count_ + i];
                m[(row_dense + k) * count_ + i] = sum;
            }
        }
    }
};

} // namespace siphonwright
