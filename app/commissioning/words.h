#pragma once

#include "core/commissioning/readings.h"

#include <QColor>
#include <QDateTime>
#include <QString>

#include <string_view>

/// Words and marks of commissioning on screen and paper.
namespace siphonwright::commissioning {

QString text(std::string_view words);
QString text(const Message& message, UnitSystem units);
QString text(double value, Unit unit, UnitSystem units);

/// A moment as the file keeps it: ISO 8601 with the zone.
std::string isoTime(const QDateTime& moment);
/// "25 Nov 07:30", in the reader's own zone; what is no time is shown as it stands.
/// How the locale writes a time of a reading, for QLocale: "25 Nov 07:30".
QString shownTimeFormat();
QString shownTime(const std::string& iso);

/// A mark beside a verdict, apart by shape: check mark, question mark, triangle.
QString markOf(Fit fit);
QString nameFor(Fit fit);

} // namespace siphonwright::commissioning
