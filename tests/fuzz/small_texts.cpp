// The short texts that are read besides quantities: amounts of money, times, tables of any kind, patterns of
// messages. The first byte chooses which.

#include "tests/fuzz/require.h"

#include "core/commissioning/iso_time.h"
#include "core/paperwork/csv.h"
#include "core/paperwork/money.h"
#include "core/quantity/quantity.h"

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

using namespace siphonwright;
using fuzz::require;

namespace {

void judgeMoney(std::string_view text, unsigned choice)
{
    const int decimals = static_cast<int>(choice % 5);
    const DecimalMark mark = choice % 2 == 0 ? DecimalMark::point : DecimalMark::point_or_comma;
    const auto steps = readDecimal(text, decimals, mark);
    if (!steps)
        return;
    const auto again = readDecimal(decimalText(*steps, decimals), decimals);
    require(again == steps, "an amount reads back");
    require(readDecimal(decimalText(*steps, decimals, Grouping::none, true), decimals) == steps,
            "a shortened amount reads back");
}

void judgeTime(std::string_view text)
{
    const auto seconds = secondsOf(text);
    require(!seconds || (std::isfinite(*seconds) && std::abs(*seconds) < 1e12), "a time is a finite one");
}

void judgeTable(std::string_view text)
{
    const auto read = readCsv(text);
    const auto* rows = std::get_if<std::vector<CsvRow>>(&read);
    if (rows == nullptr || rows->empty())
        return;
    std::string written;
    for (const CsvRow& row : *rows) {
        std::vector<std::string> fields;
        for (const CsvField& field : row)
            fields.push_back(field.text);
        written += csvLine(fields);
    }
    const auto again = readCsv(written);
    const auto* same = std::get_if<std::vector<CsvRow>>(&again);
    require(same != nullptr && same->size() == rows->size(), "a written table reads back");
    for (std::size_t i = 0; i < rows->size(); ++i)
        for (std::size_t k = 0; k < (*rows)[i].size(); ++k)
            require((*same)[i][k].text == (*rows)[i][k].text, "field by field");
}

void judgeMessage(std::string_view text)
{
    Message message;
    message.pattern = std::string(text);
    message.quantities = {{12.7, Unit::mm}, {1e300, Unit::degC}};
    message.words = {"the supply hose", "{0}"};
    const std::size_t longest = 2 * 400 + 4; // a range of the largest numbers
    for (const UnitSystem system : {UnitSystem::metric, UnitSystem::inch})
        require(format(message, system).size() <= text.size() * longest,
                "a message is no longer than it says");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0)
        return 0;
    const std::string_view text(reinterpret_cast<const char*>(data) + 1, size - 1);
    switch (data[0] % 4) {
    case 0:
        judgeMoney(text, data[0] / 4U);
        break;
    case 1:
        judgeTime(text);
        break;
    case 2:
        judgeTable(text);
        break;
    default:
        judgeMessage(text);
    }
    return 0;
}
