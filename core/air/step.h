#pragma once

#include "core/air/joined.h"
#include "core/air/modes.h"
#include "core/air/state.h"

#include <algorithm>
#include <cstddef>
#include <vector>

namespace siphonwright {

/// How far a level is beyond the ends of its cell, mm.
double beyondEnds(const Cell& cell, double level_mm);

/// So many zeros, in the room that is there.
inline void setZero(std::vector<double>& numbers, std::size_t size)
{
    if (numbers.size() != size)
        numbers.resize(size);
    std::fill(numbers.begin(), numbers.end(), 0.0);
}

/// One quasi-static step for fixed modes: from `start`, `push` times `amount`.
///
/// Method: damped Newton on heads, region pressures and bubbled gas; equations are z = b per weir, z = c per
/// bubbling throat, P G = n per closed region and one conservation of liquid per body. It is the minimum of a
/// convex energy (liquid lifted, less n ln G), so the answer is unique where it exists: a level over a cell's
/// top has none, and then the caller takes less.
///
/// P G = n of a region holds no other pressure than its own, and what it changes by P is over zero. So each
/// region gives its pressure by the other unknowns, of which there are few, and only they are eliminated.
class Stepper {
public:
    explicit Stepper(const FillNetwork& network) : network_(network) {}

    /// Returns false, with `end` undefined, if there is no solution near. `end` keeps start's modes.
    /// findRates() was called for the same; `with_rates`: it found them, and the search starts where they and
    /// the last solution since then lead.
    bool solve(const FillState& start, const Joined& joined, const Push& push, double amount, bool with_rates,
               FillState& end);

    /// Likewise, to a mark; `amount`, a guess, becomes what takes it there.
    bool solveTo(const FillState& start, const Joined& joined, const Push& push, const Mark& mark,
                 double& amount, FillState& end);

    /// How all changes with the push at its start. False if that is not known.
    bool findRates(const FillState& start, const Joined& joined, const Push& push);
    /// Of a cell's liquid, ml, and its level, mm, per unit of the push.
    double liquidRate(std::size_t cell) const { return liquid_rate_[cell]; }
    double levelRate(std::size_t cell) const { return level_rate_[cell]; }
    /// Of its gas's pressure, mm.
    double pressureRate(std::size_t cell) const { return pressure_rate_[cell]; }
    /// Of through().
    double throughRate(std::size_t throat) const { return through_rate_[throat]; }
    void copyThroughRates(std::vector<double>& rates) const { rates = through_rate_; }

    /// Liquid that ran through a weir, ml, in its direction, in the last step solved; gas for a bubbling one.
    double through(std::size_t throat) const { return through_[throat]; }

    /// How often the equations were set up, in all steps so far: what time is spent on.
    long effort() const { return effort_; }

private:
    /// What a step starts from and is asked for.
    struct Task {
        const FillState& start;
        const Joined& joined;
        const Push& push;
        const Mark* mark = nullptr; ///< to be reached; the amount is then unknown, too

        bool isToMark() const { return mark != nullptr; }
    };
    void firstGuess(const Task& task);
    void followRates(const Task& task);
    void keepBend(const Task& task);
    void setAmount(const Task& task, double amount);
    void give(const Task& task, std::size_t cell, double liquid_ml, double gas);
    void setSourceRates(const Task& task);
    void setCellRates(const Task& task);
    void setResting(const Task& task);
    void findVolumes(const Task& task);
    void settleGas(const Task& task);
    void settlePocket(const Task& task, std::size_t pocket);
    double offMark(const Task& task) const;
    void findGasMissing(const Task& task);
    double findResiduals(const Task& task);
    void addLevel(const Task& task, std::size_t row, std::size_t cell);
    void addPressure(std::size_t row, std::size_t pressure, double factor);
    void addHeads(const Task& task, std::size_t row, const Throat& throat);
    void addMark(const Task& task, std::size_t row);
    bool setPressures(const Task& task);
    void setMatrix(const Task& task);
    bool findChange(const Task& task);
    bool eliminate();
    double gasMissingRate(const Task& task, std::size_t pressure) const;
    void change(double share);
    double closeEnough() const;
    bool newton(const Task& task);
    double largestMove(const Task& task) const;
    bool isSound(const Task& task, double residual) const;
    bool retreat(const Task& task, double& residual);
    bool gasIsThere(const Task& task) const;
    void write(const Task& task, FillState& end);
    void writeCell(const Task& task, std::size_t i, FillState& end) const;
    void findGains(const Task& task, const std::vector<double>& liquid_ml, std::vector<double>& through);
    bool finish(const Task& task, FillState& end);
    double headAt(const Task& task, const Throat& throat, std::size_t cell) const;
    double pressureOf(const Task& task, std::size_t cell) const;
    /// Of an equation: a slope each unknown, and what is to be taken to nothing.
    std::size_t width() const { return unknown_.size() + 1; }
    double& at(std::size_t row, std::size_t column) { return matrix_[row * width() + column]; }
    double* pressureBy(std::size_t pressure) { return &pressure_by_[pressure * width()]; }

    const FillNetwork& network_;
    long effort_ = 0;
    double amount_ = 0;        ///< of the push
    double liquid_amount_ = 0; ///< what the rates of liquid that is given are times
    double open_mm_ = 0;       ///< pressure of what is open, after the step
    /// Heads over the pressure of what is open, gas through throats, and, to a mark, the amount. Under vacuum
    /// little would be left of the digits of heads and pressures themselves.
    std::vector<double> unknown_;
    std::vector<double> pressure_; ///< of the closed regions, over that of what is open
    std::vector<double> residual_;
    std::vector<double> gas_missing_; ///< per closed region: of P G = n, as a volume at the atmosphere
    std::vector<double> change_;
    std::vector<double> pressure_change_;
    std::vector<double> matrix_;        ///< of the equations but P G = n, without the pressures
    std::vector<double*> rows_;         ///< of the matrix, exchanged
    std::vector<double> pressure_by_;   ///< how each pressure falls with each unknown, by P G = n
    std::vector<double> pressure_pull_; ///< how P G grows with its P
    std::vector<double> level_;
    std::vector<LiquidUnder> liquid_;
    std::vector<double> gas_volume_;  ///< per closed region
    std::vector<double> resting_gas_; ///< of it, over liquid that stays
    double resting_ml_ = 0;           ///< the most liquid of a cell that keeps its own
    double largest_ml_ = 0;           ///< what the residuals are reckoned from
    double resting_outside_mm_ = 0;
    double outside_mm_ = 0; ///< the farthest that a level is beyond the ends of its cell
    std::vector<char> seen_;
    std::vector<double> through_;
    std::vector<double> gained_;          ///< liquid of each cell beside what it is given
    std::vector<std::size_t> near_;       ///< where in its table each cell's level was last
    std::vector<double> source_rate_;     ///< liquid that each cell is given from outside
    std::vector<double> gas_source_rate_; ///< gas likewise
    std::vector<double> given_ml_rate_;   ///< liquid that each body is given
    std::vector<double> given_gas_rate_;  ///< gas that each closed region is given
    std::vector<double> unknown_rate_;    ///< of the unknowns, then of the pressures
    std::vector<double> bend_; ///< likewise: how far from the rates the last solution lay, per amount^2
    double bend_amount_ = 0;   ///< of the push, of that solution; 0: none yet
    std::vector<double> liquid_rate_;
    std::vector<double> level_rate_;
    std::vector<double> pressure_rate_;
    std::vector<double> through_rate_;
};

} // namespace siphonwright
