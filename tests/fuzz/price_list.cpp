// A price list from a CSV file: what is read stays within its limits, and written it reads back as the same.

#include "tests/fuzz/require.h"

#include "core/paperwork/price_list.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

using namespace siphonwright;
using fuzz::require;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto read = readPriceList(text);
    if (const auto* problem = std::get_if<CsvProblem>(&read)) {
        require(problem->line >= 1 && problem->column >= 1 && !problem->what.empty(), "where, and what");
        return 0;
    }
    const auto& file = std::get<PriceListFile>(read);
    require(!file.list.items.empty() && !file.currency.code.empty(), "prices in a currency");
    const std::string written = writePriceList(file.list, file.currency);
    const auto again = readPriceList(written);
    const auto* same = std::get_if<PriceListFile>(&again);
    require(same != nullptr && same->list == file.list && same->currency == file.currency,
            "a written list reads back");
    require(writePriceList(same->list, same->currency) == written, "and is written alike");
    Sketch sketch;
    require(takePrices(sketch, file, "prices").empty(), "an empty sketch takes any list");
    return 0;
}
