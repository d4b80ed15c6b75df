#pragma once

#include "app/warming/result.h"

#include <QStringList>

/// A warm-up's result in words.
namespace siphonwright::warming {

/// "3 min", "2 h 20 min", "22 h": to the minute under an hour, to ten under ten hours, else whole hours.
QString timeText(double hours);
/// "2 h 20 min" to the minute, for reading a chart.
QString clockText(double hours);
QString valueText(double value, Unit unit, UnitSystem units);

/// What bears on the outcome first: "peak 58.7 °C (55–66 °C), 0 cycles an hour, 32 °C after 22 h, ...".
QString resultLine(const Result& result, UnitSystem units);
/// "Hangs most on: loss of hose ends, heat loss of the engine"; empty without bands.
QString driversLine(const Result& result);
/// Every value at one moment, for screen readers and tests.
QString readingAt(const Result& result, double hour, UnitSystem units);

} // namespace siphonwright::warming
