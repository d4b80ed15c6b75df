#pragma once

#include "core/paperwork/csv.h"
#include "core/sketch/sketch.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

/// A price list as a CSV file. Its first line names the columns, in any order; others are passed over:
///
///     item         key of the parts list ("clamp-27"), or its kind alone ("clamp") for one of any size
///     description  in words
///     unit         what the price is for: each, m, ft, l, qt (US), gal (US)
///     price        decimal with a point, without a sign for thousands; empty: not priced
///     currency     ISO 4217, the same in every line
namespace siphonwright {

constexpr std::size_t most_prices = 5000;
constexpr std::int64_t dearest_minor_units = 1'000'000'000'000;

struct PriceListFile {
    PriceList list;
    Currency currency; ///< its code; decimals as ISO 4217 has them, two where the code is not known here
};

/// Read a whole list, or say what is wrong with its first bad field and give nothing.
std::variant<PriceListFile, CsvProblem> readPriceList(std::string_view text);

/// Put a list into the sketch, with its currency. Money that was entered in another currency is not taken for
/// this one: then the sketch stays as it is.
/// \return why it was not done; empty: done
std::string takePrices(Sketch& sketch, const PriceListFile& file, const std::string& name);

std::string writePriceList(const PriceList& list, const Currency& currency);

/// Decimals of a currency's minor unit after ISO 4217 (from memory): 0 for JPY and its like, 3 for KWD and
/// its like, 4 for CLF and UYW, else 2.
int minorDigitsOf(std::string_view currency_code);

} // namespace siphonwright
