#pragma once

#include "core/analysis/analysis.h"

/// Margins in one sentence each, for screen, sheet and command line alike.
namespace siphonwright {

/// "Free of traps from 2.1 % nose-down to 4.7 % nose-up."; where there is none, that the level is not. Of the
/// rules that tilting changes, since others may stop a job that no grade does.
Message textOf(const std::optional<SoundGrades>& sound);
/// "Supply hose may sag 6 mm before it holds air or coolant."
Message textOf(const SagMargin& margin, const Sketch& sketch);
/// "the place of Drain port (typical)"
std::string textOf(const Unconfirmed& fact);
/// Each fact once, whatever hangs on it: "the place of Drain port (typical), ..."
std::string listOf(const std::vector<Unconfirmed>& facts);

} // namespace siphonwright
