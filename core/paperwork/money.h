#pragma once

#include "core/sketch/quote.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

/// Whole numbers of minor units and of decimal steps: checked, rounded in one stated way, printed and read.
/// Nothing here passes through a double, so that what is printed adds up on paper.
namespace siphonwright {

/// Sum and product; nothing where 64 bits do not hold them.
std::optional<std::int64_t> sumOf(std::int64_t a, std::int64_t b);
std::optional<std::int64_t> productOf(std::int64_t a, std::int64_t b);

/// amount * numerator / denominator, rounded half away from zero (2.5 to 3, -2.5 to -3), which is how
/// invoices are usually rounded. \param denominator over 0 \return nothing where 64 bits do not hold the
/// product
std::optional<std::int64_t> shareOf(std::int64_t amount, std::int64_t numerator, std::int64_t denominator);

/// A decimal from a whole number of its last step: decimalText(12345, 2) is "123.45". `group` sets thousands
/// apart by a thin space; with `shorten` zeros at the end are left out ("1.5").
enum class Grouping { none, thousands };
std::string decimalText(std::int64_t steps, int decimals, Grouping group = Grouping::none,
                        bool shorten = false);

/// Read "12", "12.5", "-3.25" as a whole number of steps of the last decimal. A comma for the point is taken
/// only with `comma_too`; thousands set apart, exponents and more decimals than there are steps for are
/// refused, never rounded away.
/// \param problem if given, says what was not understood
enum class DecimalMark { point, point_or_comma };
std::optional<std::int64_t> readDecimal(std::string_view text, int decimals,
                                        DecimalMark mark = DecimalMark::point,
                                        std::string* problem = nullptr);

/// An amount as people read it: "$1 234.50", "1 234.50 USD".
std::string moneyText(std::int64_t minor, const Currency& currency);

} // namespace siphonwright
