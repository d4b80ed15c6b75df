#pragma once

#include "core/commissioning/evidence.h"

#include <optional>
#include <string>
#include <vector>

/// Readings judged one by one: against the limits of the trade or the manual, against rated power, and
/// against what the drawing would give.
namespace siphonwright {

enum class Fit {
    fits,
    doubtful,   ///< outside the computed band, by no more than two of the instrument's standard deviations
    off,        ///< farther outside
    over_limit, ///< past what is allowed, whatever was computed
    not_judged,
};
std::string_view nameOf(Fit fit); ///< "fits", "doubtful", "off", "over_limit", "not_judged"

/// What a value should be: P5 to P95 over what is assumed, and the middle.
struct ExpectedRange {
    double low = 0;
    double middle = 0;
    double high = 0;
};

/// The verdict on one value of one reading.
struct ReadingVerdict {
    std::size_t reading = 0; ///< index in Sketch::readings
    Channel channel = Channel::inlet;
    double read = 0;
    std::optional<ExpectedRange> expected;
    Fit fit = Fit::not_judged;
    Message words;
};

/// All of one heater's readings.
struct JudgedReadings {
    std::string missing; ///< why they are not judged against the drawing; limits are all the same
    Evidence evidence;
    std::vector<ReadingVerdict> verdicts; ///< by time, then channel
    std::optional<double> cycles_per_hour;
    Fit cycles_fit = Fit::not_judged;
    Message cycles_words;
};

/// \param heater empty: the first. Some tens of milliseconds.
JudgedReadings judgeReadings(const Sketch& sketch, const Id& heater = {});

/// What a channel should read, from a course.
ExpectedRange expectedRange(const Course& course, std::size_t time, Channel channel);

} // namespace siphonwright
