#pragma once

#include "core/analysis/analysis.h"

/// How a job runs in one sentence each, for screen, sheet and command line alike.
namespace siphonwright {

/// "Tank heater: 0.93 l/min, 38.9 °C in, 64.4 °C out, 8.9 mm drives", or why it does not run, or what is
/// missing for computing it.
Message textOf(const LoopRun& run, const Sketch& sketch);

/// "Warm-up: 20 °C after 4.1 h, 47.4 °C after 24 h, 35.2 kWh", or what is missing for computing it.
Message textOf(const EngineWarmUp& warm);

/// "Tank heater: coolant leaves at 73.8 °C at most, on 2 times in the worst hour, 54.7 K under boiling"
Message textOf(const LoopOutcome& outcome, const Heater& heater);

/// "Tank heater: 0.8 to 1.05 ...": where nine in ten results lie over what is assumed.
Message textOf(const HeaterBands& bands, const Sketch& sketch);

/// "At the ends of the grades judged: flow 1.9 to 2.3 l/min, outlet 71.2 °C at most, cycles an hour 2 at
/// most, 32 °C after 6.1 to 6.4 h", of the loop that does worst; nothing where no warm-up is computed.
std::optional<Message> textOf(const std::vector<GradeRun>& ends);

} // namespace siphonwright
