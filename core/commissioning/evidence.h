#pragma once

#include "core/commissioning/simulated.h"
#include "core/sketch/sketch.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace siphonwright {

/// One heater's readings, with times counted from when it was energised.
struct Evidence {
    std::string missing; ///< why nothing can be judged; empty when it can
    Id heater;
    double energised_s = 0;             ///< since 1970, see secondsOf()
    std::vector<std::size_t> of_sketch; ///< index in Sketch::readings, by time
    std::vector<Reading> readings;      ///< the same, copied
    std::vector<double> times_s;        ///< after energising
    std::optional<double> air_degC;     ///< mean of what was read
    std::vector<std::size_t> left_out;  ///< index of readings whose time is not understood or is too early

    /// Switchings-on seen between the first and the last switching seen, both counted; nothing where fewer
    /// than two were seen.
    std::optional<double> starts;
    double watched_from_s = 0; ///< after energising
    double watched_to_s = 0;
    std::vector<double> starts_s; ///< when, after energising

    std::vector<Message> broken_limits; ///< what was read past what is allowed, and what to do first

    /// For SimulatedJob: the readings' times.
    CourseRequest request() const;
};

/// At most so many readings of one heater are taken, the last ones: own choice.
constexpr std::size_t most_readings = 40;

/// Energised: the heater's first switching-on that was seen, else the tick of "energise", else nothing can be
/// judged. \param heater empty: the first heater; readings that name no heater are its
Evidence evidenceOf(const Sketch& sketch, const Id& heater = {});

/// Most switchings-on within an hour, from the first switching-off seen on; nothing where none was seen to go
/// off.
std::optional<double> cyclesPerHour(const Sketch& sketch, const Id& heater);

} // namespace siphonwright
