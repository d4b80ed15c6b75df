#pragma once

#include "core/quantity/quantity.h"

#include <QString>

#include <string>
#include <string_view>

/// What core says, as people read it: in the program's language, figures with the decimal sign of its locale.
/// The one way from core to the screen and to paper. Files, CSV and JSON do not go this way: they take core's
/// own format(), the same everywhere.
namespace siphonwright {

/// A title, a name, a sentence of core's.
QString inWords(std::string_view text);
QString inWords(double value, Unit unit, UnitSystem units);
QString inWords(const Message& message, UnitSystem units);

/// "12.5", "2 ft 3.5 in" as the locale writes figures.
QString withDecimalSign(QString figures);

/// A length on a tape that is in inches only: "27 1/2", however many feet these are, without a unit.
QString inchesInWords(double length_mm);

/// A number with so many decimals; thousands are not set apart.
QString numberInWords(double value, int decimals);

/// What was typed as a quantity in the words that inWords() shows, for core's parse(), which knows English
/// and takes a point as well as a comma.
std::string typedQuantity(const QString& typed, Unit unit);

} // namespace siphonwright
