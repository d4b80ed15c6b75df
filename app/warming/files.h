#pragma once

#include "app/document/disk.h"
#include "app/warming/result.h"

#include <QByteArray>
#include <QStringList>

namespace siphonwright::warming {

/// One line for each moment: hours, temperatures, flow by mass and volume, power, energy. Header with units;
/// always metric, exact numbers with a decimal point, lines ending in CRLF (RFC 4180).
QByteArray csvOf(const Result& result);

/// Write as .csv, .png or .svg by the path's suffix; a file that was there is replaced only when the new one
/// is complete. Empty when done, else what went wrong.
QStringList exportTo(const QString& path, const Result& result, const std::vector<Result>& kept,
                     UnitSystem units, const PutFile& put = putFile);

} // namespace siphonwright::warming
