#pragma once

#include "app/headless/commands.h"

#include <nlohmann/json.hpp>

#include <optional>

/// The parts of a check in their machine-readable form. Keys may be added; these stay. What does not apply is
/// null, and so is a number that is not finite.
namespace siphonwright::headless {

using Json = nlohmann::ordered_json;

Json number(const std::optional<double>& value);
/// The id of what has one, else the word for what there is only one of.
Json partName(const PartRef& part);

Json findingJson(const Finding& finding);
Json unconfirmedJson(const std::vector<Unconfirmed>& facts);
Json hoseJson(const ResolvedHose& hose, const std::optional<Proof>& proof);

/// Of an analysis that is proved: how each loop runs, the warm-up, the table by bore; and which assumed
/// figures the sketch has replaced.
Json loopsJson(const Checked& file);
Json warmUpJson(const Checked& file);
Json byBoreJson(const Checked& file);
Json assumptionsChangedJson(const Sketch& sketch);

} // namespace siphonwright::headless
