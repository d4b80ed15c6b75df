// A typed quantity: what is read is a number, what is printed of it reads back as the same to within what
// printing rounds away, and prints the same again. The first byte chooses unit and unit system.

#include "tests/fuzz/require.h"

#include "core/quantity/constants.h"
#include "core/quantity/number.h"
#include "core/quantity/quantity.h"
#include "core/quantity/units.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

using namespace siphonwright;
using fuzz::require;

namespace {

constexpr unsigned unit_count = static_cast<unsigned>(Unit::W_per_K) + 1;
constexpr double printed_to_the_last_digit = 1e12; ///< larger ones have digits that a double does not hold

/// Half of the last step that is printed.
double roundedAway(Unit unit, UnitSystem system)
{
    if (unit == Unit::mm && system == UnitSystem::inch)
        return mm_per_inch / 32;
    const Shown& shown = shownIn(unit, system);
    return shown.size * std::pow(10, -shown.decimals) / 2;
}

void judgeReadBack(double value, Unit unit, UnitSystem system)
{
    const std::string printed = format(value, unit, system);
    require(!printed.empty(), "something is printed");
    if (printed.size() > longest_typed_bytes || !(std::abs(value) < printed_to_the_last_digit))
        return;
    const auto again = parse(printed, unit, system);
    if (unit == Unit::slope) { // in words where it is steep, and one in n is rounded in n
        if (again)
            require(format(*again, unit, system) == printed, "it prints as itself", printed);
        return;
    }
    require(again.has_value(), "it reads back", printed);
    const double rounding = roundedAway(unit, system) * (1 + 1e-9) + 1e-12 * std::abs(value);
    require(std::abs(*again - value) <= rounding, "it reads back as what it was", printed);
    require(format(*again, unit, system) == printed, "it prints as itself", printed);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0)
        return 0;
    const Unit unit = static_cast<Unit>(data[0] % unit_count);
    const UnitSystem system = data[0] / unit_count % 2 == 0 ? UnitSystem::metric : UnitSystem::inch;
    const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
    std::string problem;
    const auto value = parse(text, unit, system, &problem);
    require(value.has_value() == problem.empty(), "a value, or why there is none");
    if (!value)
        return 0;
    require(std::isfinite(*value), "what was read is finite");
    require(*value != 0 || !std::signbit(*value), "no negative zero");
    judgeReadBack(*value, unit, system);
    return 0;
}
