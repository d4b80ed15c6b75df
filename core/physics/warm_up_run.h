#pragma once

#include "core/physics/switching_integrator.h"
#include "core/physics/warm_up.h"
#include "core/physics/warm_up_model.h"

#include <cstddef>
#include <optional>
#include <vector>

/// One run of the equations with its switches: the inside of warmUp().
namespace siphonwright {

/// What a heater's power hangs on.
struct HeaterControl {
    bool contacts_closed = true; ///< of the thermostat
    bool tripped = false;
    bool boiled = false;

    bool allows() const { return contacts_closed && !tripped && !boiled; }
};

class WarmUpRun {
public:
    /// The inputs and options have to be good (problemIn()) and to outlive the run.
    WarmUpRun(const WarmUpInputs& inputs, const WarmUpOptions& options, const Fluid& fluid);

    WarmUp result() &&;

private:
    /// A change of a heater's control that a temperature brings about.
    enum class Change { opens, closes, trips, resets, boils };
    struct DueChange {
        std::size_t loop = 0;
        Change change = Change::opens;
    };

    const WarmUpInputs& inputs_;
    const WarmUpOptions& options_;
    const Fluid& fluid_;
    WarmUpModel model_;
    SwitchingIntegrator solver_;
    WarmUp out_;
    std::vector<HeaterControl> controls_;
    std::vector<double> drives_Pa_; ///< per loop, at the last step's start
    std::vector<double> edge_s_;    ///< per loop: energised time on the edge
    /// How a loop's heatings ended: with flow, or without.
    struct Heatings {
        int circulated = 0;
        int stalled = 0;
    };
    std::vector<Heatings> heatings_;
    std::vector<DueChange> due_; ///< at the end of this step
    std::vector<double> sampled_state_;
    std::size_t samples_ = 0;
    bool supplied_ = false;

    void begin();
    void run();
    bool advance(double latest);
    double nextBoundary() const;
    bool supplyAt(double time_s) const
    {
        return time_s >= inputs_.supply_on_s && time_s < inputs_.supply_off_s;
    }

    /// What a change waits for: a state that rises or falls to a temperature.
    struct Threshold {
        std::size_t state = 0;
        double degC = 0;
        bool rising = true;
    };
    /// Nothing where the change cannot happen now.
    std::optional<Threshold> thresholdOf(std::size_t loop, Change change) const;
    /// How far a threshold is passed at a time in the last step.
    double past(const Threshold& threshold, double time_s) const;
    std::optional<double> firstChange() const;
    /// When a loop's drive changes sign: there the rates have a kink that no step should lie across.
    std::optional<double> firstReversal(double until_s);
    void change(std::size_t loop, Change change, double time_s);
    void findDue(double time_s);
    void setPower(std::size_t loop, double time_s, SwitchCause cause);

    void recordUntil(double until_s);
    void recordPassive(double until_s);
    void recordSamples(double until_s);
    void recordLoop(std::size_t loop, double until_s);
    /// \param counted_until_s to when energy is added up already, in the same step
    void sample(double time_s, double counted_until_s);
    LoopSample loopSample(std::size_t loop, std::span<const double> state);
    std::span<const double> stateAt(double time_s);
    bool frozen() const;
    void finish();
    void finishLoop(std::size_t loop);
};

} // namespace siphonwright
