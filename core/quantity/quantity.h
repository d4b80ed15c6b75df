#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Quantities as people read and type them: the one place where units are converted, printed and parsed.
///
/// Everything is stored and computed in the units of `Unit`; only text differs by unit system. Printing and
/// parsing never look at the locale; the decimal sign is a point, and a comma is accepted as one when typed.
namespace siphonwright {

enum class Unit {
    none,
    mm,
    head, ///< of coolant, mm: a few of them drive a loop, so it is shown more finely than a length
    ml,
    litre,
    kg,
    degC,
    kelvin, ///< a temperature difference
    watt,
    kWh,
    volt,
    ampere,
    kPa,
    Pa,
    m_per_s,
    percent,
    degree,
    metre, ///< altitude
    bores, ///< a length as a multiple of the bore
    ratio, ///< 0.7 prints as "70 %"
    slope, ///< rise over length: 0.02 prints as "1 in 50"
    hour,
    l_per_min, ///< a flow by volume
    ohm,
    ohm_per_km, ///< resistance of a conductor by its length
    mm2,        ///< section of a conductor: square millimetres in either system
    ppm,        ///< parts by mass in a million; of what is dissolved in water: mg/l
    W_per_K,    ///< heat lost for each kelvin over the air
};

enum class UnitSystem { metric, inch };

/// What is being measured decides the rounding: 0.1 mm or 1/16 in (exact stock fractions such as 5/8 in
/// print as such), whole ml (less of it finer), 0.1 K, ... Lengths from 24 in up print as feet and inches.
/// Negative zero prints as zero. Not finite prints as "–".
std::string format(double value, Unit unit, UnitSystem system);

/// A length in inches only, without a unit: "27 1/2" where format() gives "2 ft 3 1/2 in".
std::string inchesAlone(double value_mm);

/// Read a typed quantity such as "19", "19 mm", "1.9 cm", "3/4 in", "1-1/8\"", "2' 3 1/2\"", "180 F", "82
/// degC", "1:50", "15 psi", "2 qt". Without a unit the unit system decides (mm or inch, degC or degF, ...).
/// @return the value in `unit`, or nothing with `problem` (if given) saying what was not understood and
///         what would be.
std::optional<double> parse(std::string_view text, Unit unit, UnitSystem system,
                            std::string* problem = nullptr);

/// Stable name of a unit in files and --json: "mm", "ml", "degC", "K", "W", "%", "bore", "ratio", "slope",
/// ...
std::string_view nameOf(Unit unit);

/// A number with its unit.
struct Quantity {
    double value = 0;
    Unit unit = Unit::none;
    friend bool operator==(const Quantity&, const Quantity&) = default;
};

/// A sentence with quantities in it, so that one finding reads in either unit system and can be translated.
/// The pattern holds {0}, {1}, ... for the quantities and {a}, {b} for words (part names). {0-1} is a range:
/// "2 to 3 mm", or one figure where both read alike.
struct Message {
    std::string pattern;
    std::vector<Quantity> quantities;
    std::vector<std::string> words;
    friend bool operator==(const Message&, const Message&) = default;
};
std::string format(const Message& message, UnitSystem system);

/// Shortest text that reads back to the same double ("19.05"); never locale-dependent.
std::string exactText(double value);
/// Likewise of the value to a millionth: for columns of results, whose last digits are rounding.
std::string toAMillionth(double value);

} // namespace siphonwright
