#pragma once

#include "core/checks/rules.h"

/// What the rule book's rows call, one per rule, grouped by the files that hold them.
namespace siphonwright::judges {

// elevation.cpp: humps and dips
void supplyHighPoint(Judge& judge);
void returnHighPoint(Judge& judge);
void returnDip(Judge& judge);
void supplyDip(Judge& judge);
void supplyRises(Judge& judge);
// slope.cpp
void returnSlope(Judge& judge);
// levels.cpp
void aboveCoolantLevel(Judge& judge);
// heater_place.cpp
void heaterDrop(Judge& judge);
void heaterUnderReturn(Judge& judge);
void heaterChamberTrapsAir(Judge& judge);
void heaterPosition(Judge& judge);
void mountedOnEngine(Judge& judge);
// ports.cpp
void supplyPortLow(Judge& judge);
void returnPortHigh(Judge& judge);
void supplyPortFront(Judge& judge);
void returnPortRear(Judge& judge);
void portsTooClose(Judge& judge);
void returnNearThermostat(Judge& judge);
void sensorNearReturn(Judge& judge);
// circuit.cpp
void supplyCutOffByThermostat(Judge& judge);
void parallelPath(Judge& judge);
void sharedPort(Judge& judge);
void bankNotCrossed(Judge& judge);
// bores.cpp
void boreUnderManual(Judge& judge);
void boreRestriction(Judge& judge);
// bends.cpp
void bendTooTight(Judge& judge);
void bendDoesNotFit(Judge& judge);
// support.cpp
void unsupportedSpan(Judge& judge);
void noSlack(Judge& judge);
// clearance.cpp
void groundClearance(Judge& judge);
void keepClear(Judge& judge);
// connections.cpp
void hoseLong(Judge& judge);
void hoseOpenEnd(Judge& judge);
void hoseNotConnected(Judge& judge);
// valves.cpp
void valveMissing(Judge& judge);
void valveClosed(Judge& judge);
void checkValveStaysShut(Judge& judge);
// coolant.cpp
void antifreezeOver60(Judge& judge);
void freezeMargin(Judge& judge);
void antifreezeKindUnknown(Judge& judge);

// running.cpp: steady circulation
void stalled(Judge& judge);
void reverseCirculation(Judge& judge);
void partTakesLoss(Judge& judge);
void muchPower(Judge& judge);
// air.cpp: what stays after filling
void airLocked(Judge& judge);
void airWeakensFlow(Judge& judge);
void chamberNotFull(Judge& judge);
void notClearedByRunning(Judge& judge);
void lowCoolant(Judge& judge);
// warming.cpp: warm-up and cycling
void outletOverLimit(Judge& judge);
void boilingMargin(Judge& judge);
void boreStarvesFlow(Judge& judge);
void cyclesOver4(Judge& judge);
void targetNotReached(Judge& judge);

} // namespace siphonwright::judges

namespace siphonwright {

/// The rows of the rule book that rest on how the job runs.
std::span<const Rule> runningRules();

} // namespace siphonwright
