#pragma once

#include "core/running/filling.h"
#include "core/sketch/sketch.h"

#include <nlohmann/json.hpp>

/// Filling and the air that stays, machine-readable. Keys may be added; these stay.
namespace siphonwright::headless {

/// One entry a pocket; null where filling is not computed.
nlohmann::ordered_json airJson(const Filling& filling);

/// Level, covered chambers, what is to be poured, flow with the engine running; `missing` says what kept it
/// from being computed.
nlohmann::ordered_json fillJson(const Filling& filling);

} // namespace siphonwright::headless
