#pragma once

#include <optional>
#include <string_view>

namespace siphonwright {

/// Seconds since 1970-01-01T00:00:00 of a time as ISO 8601 writes it: "2026-11-25T06:30", with seconds and a
/// zone ("Z", "+01:00") if wanted; a space may stand for the T. Without a zone it counts as UTC, so that
/// differences are right among times of one place. Nothing for anything else, and for dates that do not
/// exist. Days by the proleptic Gregorian calendar (elementary).
std::optional<double> secondsOf(std::string_view iso_8601);

} // namespace siphonwright
