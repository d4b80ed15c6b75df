#pragma once

#include "core/commissioning/instruments.h"
#include "core/layout/layout.h"
#include "core/running/running.h"
#include "core/sketch/sketch.h"

#include <array>
#include <functional>
#include <string>
#include <vector>

/// What the instruments would read at given times, on the job as drawn or with something wrong with it: the
/// warm-up's own equations, over a sample of all that is assumed.
namespace siphonwright {

/// What a fault changes. Everything not set stays as drawn.
struct FaultChange {
    std::function<void(Sketch&)> sketch;    ///< what is built or set otherwise than drawn
    std::function<void(WarmUpLoop&)> loop;  ///< the heater's own loop
    std::function<void(WarmUpInputs&)> job; ///< the engine that all loops share
    double current_factor = 1; ///< on power over voltage, where one conductor carries another share
    double voltage_factor = 1; ///< at the heater
    double level_mm = 0;       ///< coolant level over the cold full mark
    bool supplied = true;      ///< power is there at the heater's supply
    bool hoses_exchanged_at_heater = false; ///< what is read at its metal is of the other hose
};

/// What all instruments would read at one moment.
using Instant = std::array<double, channel_count>;

/// The job over time, as often as what is assumed was sampled.
struct Course {
    std::string missing; ///< why it was not computed; empty when it was
    /// By member and time. A member is one sample of what is assumed, a little before, at or a little after
    /// the time: where a thermostat stands in its cycle nobody can foretell.
    std::vector<std::vector<Instant>> members;
    std::vector<double> starts; ///< of the heater within the watched time, by sample
    bool supplied = true;       ///< power is there at the heater's supply

    double meanOf(std::size_t time, Channel channel) const;
    double spreadOf(std::size_t time, Channel channel) const; ///< standard deviation over the members
    /// Share of the members in which the heater draws current.
    double shareOn(std::size_t time) const;
};

/// What is to be simulated.
struct CourseRequest {
    Id heater;
    std::vector<double> times_s; ///< after energising, each 0 or more; over 48 h counts as 48 h
    double watched_from_s = 0;   ///< switchings are counted between these
    double watched_to_s = 0;
    std::optional<double> air_degC; ///< as read; nothing: the sketch's
    std::size_t samples = 8;        ///< of what is assumed, beside the nominal figures
};

/// A job with its layout and assumptions at hand, ready to be run with one fault after another.
class SimulatedJob {
public:
    SimulatedJob(const Sketch& sketch, CourseRequest request);

    const CourseRequest& request() const { return request_; }
    /// Some tens of milliseconds. The same every time.
    Course run(const FaultChange& change) const;

private:
    std::string runOnce(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                        const FaultChange& change, Course& out) const;
    void readOff(const WarmUp& warm, std::size_t loop, const Heater& heater, const FaultChange& change,
                 Course& out) const;

    Sketch sketch_;
    CourseRequest request_;
    Layout layout_;
    std::vector<Assumptions> assumed_; ///< the nominal ones first
};

} // namespace siphonwright
