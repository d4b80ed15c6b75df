#include "core/paperwork/price_list.h"

#include "core/paperwork/money.h"
#include "core/sketch/words.h"

#include <algorithm>
#include <array>
#include <optional>
#include <set>

namespace siphonwright {
namespace {

constexpr std::array<std::string_view, 5> columns{"item", "description", "unit", "price", "currency"};
enum Column : std::size_t { item_column, description_column, unit_column, price_column, currency_column };
using Places = std::array<std::size_t, columns.size()>;

CsvProblem at(const CsvField& field, std::string what)
{
    return {field.line, field.column, std::move(what)};
}

std::optional<CsvProblem> findColumns(const CsvRow& names, Places& places)
{
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const auto is_it = [&](const CsvField& field) { return field.text == columns[i]; };
        const auto found = std::find_if(names.begin(), names.end(), is_it);
        if (found == names.end()) {
            const bool semicolons = names.front().text.find(';') != std::string::npos;
            return at(names.front(),
                      "no column named \"" + std::string(columns[i]) + "\"" +
                          (semicolons ? "; fields have to be set apart by commas, not by semicolons" : ""));
        }
        if (const auto again = std::find_if(found + 1, names.end(), is_it); again != names.end())
            return at(*again, "a second column named \"" + std::string(columns[i]) + "\"");
        places[i] = static_cast<std::size_t>(found - names.begin());
    }
    return std::nullopt;
}

std::string unitWords()
{
    std::string all;
    for (const std::string_view word : Words<PriceUnit>::list)
        all += (all.empty() ? "" : ", ") + std::string(word);
    return all;
}

std::optional<CsvProblem> readPrice(const CsvField& field, int decimals, std::optional<std::int64_t>& into)
{
    if (field.text.empty())
        return std::nullopt;
    std::string problem;
    into = readDecimal(field.text, decimals, DecimalMark::point, &problem);
    if (!into)
        return at(field, "the price \"" + field.text + "\" was not understood: " + problem);
    if (*into < 0)
        return at(field, "a price under nothing");
    if (*into > dearest_minor_units)
        return at(field, "too large a price");
    return std::nullopt;
}

/// Reads the lines after the names into one list.
class ListReader {
public:
    explicit ListReader(const Places& places) : places_(places) {}

    std::optional<CsvProblem> read(const CsvRow& row)
    {
        const CsvField& code = row[places_[currency_column]];
        if (file_.list.items.empty()) {
            if (code.text.empty() || code.text.size() > 20)
                return at(code, "no currency");
            file_.currency.code = code.text;
            file_.currency.minor_digits = minorDigitsOf(code.text);
        }
        if (code.text != file_.currency.code)
            return at(code, "the currency \"" + code.text + "\" in a list of " + file_.currency.code);
        const CsvField& key = row[places_[item_column]];
        if (key.text.empty() || key.text.size() > 200)
            return at(key, "an item without a key of 1 to 200 bytes");
        if (!seen_.insert(key.text).second)
            return at(key, "a second line for the item \"" + key.text + "\"");
        const CsvField& words = row[places_[description_column]];
        if (words.text.size() > 500)
            return at(words, "a description of more than 500 bytes");
        return readAmount(row);
    }
    PriceListFile take() { return std::move(file_); }

private:
    std::optional<CsvProblem> readAmount(const CsvRow& row)
    {
        PricedItem priced;
        priced.item = row[places_[item_column]].text;
        priced.description = row[places_[description_column]].text;
        const CsvField& unit = row[places_[unit_column]];
        const std::optional<PriceUnit> known = fromWord<PriceUnit>(unit.text);
        if (!known)
            return at(unit, "the unit \"" + unit.text + "\" is none of " + unitWords());
        priced.unit = *known;
        if (auto problem =
                readPrice(row[places_[price_column]], file_.currency.minor_digits, priced.price_minor))
            return problem;
        file_.list.items.push_back(std::move(priced));
        return std::nullopt;
    }

    const Places& places_;
    PriceListFile file_;
    std::set<std::string> seen_;
};

} // namespace

int minorDigitsOf(std::string_view currency_code)
{
    constexpr std::array<std::string_view, 16> none{"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW",
                                                    "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"};
    constexpr std::array<std::string_view, 7> three{"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"};
    if (std::find(none.begin(), none.end(), currency_code) != none.end())
        return 0;
    if (std::find(three.begin(), three.end(), currency_code) != three.end())
        return 3;
    return currency_code == "CLF" || currency_code == "UYW" ? 4 : 2;
}

std::variant<PriceListFile, CsvProblem> readPriceList(std::string_view text)
{
    auto table = readCsv(text);
    if (auto* problem = std::get_if<CsvProblem>(&table))
        return *problem;
    const auto& rows = std::get<std::vector<CsvRow>>(table);
    if (rows.empty())
        return CsvProblem{1, 1, "an empty file"};
    if (rows.size() - 1 > most_prices)
        return CsvProblem{rows[most_prices + 1].front().line, 1,
                          "more than " + std::to_string(most_prices) + " prices"};
    Places places{};
    if (auto problem = findColumns(rows.front(), places))
        return *problem;
    ListReader reader(places);
    for (std::size_t i = 1; i < rows.size(); ++i)
        if (auto problem = reader.read(rows[i]))
            return *problem;
    PriceListFile file = reader.take();
    if (file.list.items.empty())
        return CsvProblem{1, 1, "a list without a price"};
    return file;
}

std::string takePrices(Sketch& sketch, const PriceListFile& file, const std::string& name)
{
    Quote quote = sketch.quote ? **sketch.quote : Quote{};
    const bool same = quote.currency.code == file.currency.code;
    if (!quote.currency.code.empty() && !same)
        return "The list is in " + file.currency.code + ", the estimate in " + quote.currency.code + ".";
    const bool entered = quote.travel_minor || quote.consumables_minor || quote.disposal_minor ||
                         quote.labour_rate_minor ||
                         std::any_of(quote.alternates.begin(), quote.alternates.end(),
                                     [](const Alternate& other) { return other.price_minor.has_value(); });
    if (entered && quote.currency.minor_digits != file.currency.minor_digits)
        return "Amounts are entered with " + std::to_string(quote.currency.minor_digits) + " decimals, and " +
               file.currency.code + " has " + std::to_string(file.currency.minor_digits) + ".";
    quote.currency.code = file.currency.code;
    quote.currency.minor_digits = file.currency.minor_digits;
    quote.prices = file.list;
    quote.prices.name = name;
    sketch.quote = Shared<Quote>(std::move(quote));
    return {};
}

std::string writePriceList(const PriceList& list, const Currency& currency)
{
    std::string text = csvLine({columns.begin(), columns.end()});
    for (const PricedItem& priced : list.items)
        text += csvLine({priced.item, priced.description, std::string(wordFor(priced.unit)),
                         priced.price_minor ? decimalText(*priced.price_minor, currency.minor_digits) : "",
                         currency.code});
    return text;
}

} // namespace siphonwright
