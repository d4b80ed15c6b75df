#pragma once

#include "core/air/fill.h"
#include "core/layout/heater_loop.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <vector>

namespace siphonwright::demonstration {

/// What a person would say who sees an event through clear hoses: "Coolant spills over the hump in Supply
/// hose; the air behind it is sealed." Nothing for what is not worth a word.
std::optional<Message> wordsFor(const FillEvent& event, const FillNetwork& network, const FillFrame& then,
                                const std::vector<HeaterLoop>& loops);

} // namespace siphonwright::demonstration
