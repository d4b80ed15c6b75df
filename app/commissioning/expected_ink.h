#pragma once

#include "core/analysis/analysis.h"

#include <QRectF>
#include <QString>

class QPainter;

/// What readings are to be held against, on the printed table: limits, and what was computed with its band.
namespace siphonwright::commissioning {

/// "Limits: outlet under 82 degC ..., expected: ..."; what is not computed is said.
QString limitsText(const Sketch& sketch, const Analysis& analysis, const Id& heater);

/// Is there a warm-up to draw?
bool hasExpected(const Analysis& analysis, const Id& heater);

/// Outlet (line) and engine (dashes) over the hours, the limit, and the band of the outlet's peak as a bar at
/// the right. mm.
void paintExpected(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Id& heater,
                   const QRectF& box);

} // namespace siphonwright::commissioning
