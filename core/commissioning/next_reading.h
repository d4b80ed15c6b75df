#pragma once

#include "core/commissioning/diagnosis.h"

namespace siphonwright {

/// Wait times after the last reading that a next one is looked for at, s.
constexpr std::array<double, 2> next_waits_s = {600, 3600};

/// The reading that would best tell two suspects apart; where none would by more than its own spread, what
/// has to be looked at instead. \param readings how many times of the courses were read
NextReading nextReading(const Suspect& first, const Suspect& second, std::size_t readings);

/// Which reading speaks most for a fault against the job as drawn.
Message whyOf(const Fault& fault, const Course& course, const Course& as_drawn, const Evidence& evidence);

} // namespace siphonwright
