#pragma once

#include "core/quantity/constants.h"
#include "core/quantity/quantity.h"

#include <optional>
#include <string_view>

/// The units behind printing and parsing, as two tables. Exact factors: inch 25.4 mm, pound 0.45359237 kg
/// (international yard and pound agreement, 1959); US gallon 231 cubic inches; psi from the standard gravity
/// 9.80665 m/s2; degF = degC * 9/5 + 32 (NIST SP 811, appendix B).
namespace siphonwright {

/// How a unit is shown in one system: value = (shown + offset) * size.
struct Shown {
    std::string_view symbol; ///< with its leading space where it has one
    double size = 1;
    double offset = 0;
    int decimals = 1; ///< at most; trailing zeros are left out
};

struct UnitForm {
    Unit unit;
    std::string_view name; ///< in files
    Shown metric;
    Shown inch;
    std::string_view example; ///< what may be typed, for messages
};

const UnitForm& formOf(Unit unit);
const Shown& shownIn(Unit unit, UnitSystem system);

/// A typed unit word: value = (typed + offset) * size.
struct UnitWord {
    double size = 1;
    double offset = 0;
};
/// Find a lower-case word without spaces among those understood for this unit.
std::optional<UnitWord> findUnitWord(Unit unit, std::string_view word);

} // namespace siphonwright
