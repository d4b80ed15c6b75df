#pragma once

#include "core/physics/integrator.h"
#include "core/physics/rosenbrock.h"

#include <algorithm>
#include <cstddef>
#include <span>

namespace siphonwright {

/// Steps by DormandPrince while accuracy decides the step, by Rosenbrock while stability would.
///
/// It changes over after some steps in a row that the explicit method's own measure calls stiff (Hairer and
/// Wanner 1996, Solving Ordinary Differential Equations II, IV.2), and back when the step that accuracy
/// asks for falls under what the explicit method last did. After a restart it begins explicitly: an event
/// wakes what had died away.
///
/// The system is as Rosenbrock asks for it.
class SwitchingIntegrator {
public:
    explicit SwitchingIntegrator(const IntegratorTolerance& wanted) : explicit_(wanted), implicit_(wanted) {}

    template <typename System>
    void begin(System&& system, double time, std::span<const double> state, double first_step = 0)
    {
        beginExplicitly();
        explicit_.begin(system, time, state, first_step);
    }

    /// One step that meets the tolerance, and ends at `latest` at the latest.
    template <typename System>
    StepStatus step(System&& system, double latest)
    {
        changeOver(system);
        if (stiff_)
            return implicit_.step(system, latest);
        const StepStatus status = explicit_.step(system, latest);
        stiff_steps_ = explicit_.stiffness() > stiff_from ? stiff_steps_ + 1 : 0;
        return status;
    }

    /// Makes the last step shorter, to end at a time within it.
    template <typename System>
    void shorten(System&& system, double time)
    {
        stiff_ ? implicit_.shorten(system, time) : explicit_.shorten(system, time);
    }

    /// Continues from the end of the last step, as after an event that changed the right-hand side there.
    template <typename System>
    void restart(System&& system)
    {
        if (stiff_) {
            implicit_.restart(system);
            explicit_.begin(system, implicit_.time(), implicit_.state(),
                            std::min(implicit_.nextStep(), explicit_.nextStep()));
        } else {
            explicit_.restart(system);
        }
        beginExplicitly();
    }

    double from() const { return stiff_ ? implicit_.from() : explicit_.from(); }
    double time() const { return stiff_ ? implicit_.time() : explicit_.time(); }
    std::span<const double> state() const { return stiff_ ? implicit_.state() : explicit_.state(); }
    double at(double time, std::size_t i) const
    {
        return stiff_ ? implicit_.at(time, i) : explicit_.at(time, i);
    }

    /// Highest that state i can have been within the last step, or higher.
    double most(std::size_t i) const
    {
        const double from = stiff_ ? implicit_.stateFrom()[i] : explicit_.stateFrom()[i];
        return std::max(from, state()[i]) + straying(i);
    }
    /// Lowest, or lower.
    double least(std::size_t i) const
    {
        const double from = stiff_ ? implicit_.stateFrom()[i] : explicit_.stateFrom()[i];
        return std::min(from, state()[i]) - straying(i);
    }

    std::size_t evaluations() const { return explicit_.evaluations() + implicit_.evaluations(); }
    std::size_t attempts() const { return explicit_.attempts() + implicit_.attempts(); }

private:
    static constexpr double stiff_from = 2;
    static constexpr int most_stiff_steps = 2;

    DormandPrince explicit_;
    Rosenbrock implicit_;
    bool stiff_ = false;
    int stiff_steps_ = 0; ///< in a row

    double straying(std::size_t i) const { return stiff_ ? implicit_.straying(i) : explicit_.straying(i); }

    void beginExplicitly()
    {
        stiff_ = false;
        stiff_steps_ = 0;
    }

    /// Between steps, so that the last one can still be asked about until the next is made.
    template <typename System>
    void changeOver(System&& system)
    {
        if (!stiff_ && stiff_steps_ >= most_stiff_steps) {
            implicit_.begin(system, explicit_.time(), explicit_.state(), explicit_.nextStep());
            stiff_ = true;
        } else if (stiff_ && implicit_.nextStep() < explicit_.nextStep()) {
            explicit_.begin(system, implicit_.time(), implicit_.state(), implicit_.nextStep());
            beginExplicitly();
        }
    }
};

} // namespace siphonwright
