#pragma once

#include "core/commissioning/evidence.h"

#include <optional>
#include <vector>

/// What readings must not pass, whatever was computed: the limits of the trade, or the manual's in their
/// place.
namespace siphonwright {

/// Nothing where no limit is known.
struct Allowed {
    std::optional<double> outlet_degC;
    std::optional<double> least_level_mm; ///< the cold minimum, over the cold full mark: 0 or less
    std::optional<double> cycles_per_hour;
};

Allowed allowedIn(const Sketch& sketch);

/// One message for each limit that is broken, with the worst figure read and what to do first.
std::vector<Message> brokenLimits(const Sketch& sketch, const Evidence& evidence);

} // namespace siphonwright
