#pragma once

#include "core/analysis/analysis.h"

#include <QString>
#include <QStringList>

/// What a loop does, in the few words that stand beside its heater.
namespace siphonwright::drawing {

/// Flow or state, temperatures, heads, and the block's temperature that they are for: a line each. Empty
/// where the loop could not be computed.
QStringList runningLines(const LoopRun& run, double block_degC, UnitSystem units);

/// "stalled", "runs backward", ...; empty where it circulates as it should.
QString stateWords(CirculationStatus status);

/// Length of a flow arrow on the device: grows with the root of the flow, so that a trickle is still seen.
double arrowSize_mm(double flow_l_per_min);

} // namespace siphonwright::drawing
