#include "core/paperwork/parts_csv.h"

#include "core/paperwork/csv.h"
#include "core/paperwork/money.h"
#include "core/sketch/words.h"

#include <algorithm>

namespace siphonwright {
namespace {

std::string joined(std::string text, const std::string& next)
{
    return text.empty() ? next : std::move(text) + "; " + next;
}

std::string csvRow(const PartRow& row, const EstimateLine* line, const Quote& quote, UnitSystem units)
{
    const auto money = [&](const std::optional<std::int64_t>& minor) {
        return minor ? decimalText(*minor, quote.currency.minor_digits) : std::string();
    };
    std::string quantity;
    if (line && line->thousandths)
        quantity = decimalText(*line->thousandths, 3, Grouping::none, true);
    else if (!line && row.thousandths)
        quantity = decimalText(*row.thousandths, 3, Grouping::none, true); // none are drawn
    std::string used;
    for (const UsedAt& at : row.used)
        used = joined(std::move(used), format(at.name, units));
    std::string notes;
    for (const Message& note : row.notes)
        notes = joined(std::move(notes), format(note, units));
    return csvLine({std::to_string(row.number), row.item, std::string(nameOf(row.kind)),
                    format(row.size, units), quantity, line ? line->unit : std::string(wordFor(row.unit)),
                    line ? money(line->list_minor) : "", line ? money(line->list_amount_minor) : "",
                    quote.currency.code, line ? line->missing : row.missing, used, notes});
}

} // namespace

std::string csvOf(const PartsList& parts, const Sketch& sketch, UnitSystem units)
{
    const Estimate estimate = estimateOf(sketch, parts);
    std::string text = csvLine({"number", "item", "name", "size", "quantity", "unit", "price", "amount",
                                "currency", "missing", "used", "notes"});
    for (const PartRow& row : parts.rows) {
        const auto line = std::find_if(estimate.lines.begin(), estimate.lines.end(),
                                       [&](const EstimateLine& other) { return other.number == row.number; });
        text += csvRow(row, line == estimate.lines.end() ? nullptr : &*line, quoteOf(sketch), units);
    }
    return text;
}

PriceList pricesWanted(const PartsList& parts, const PriceList& known)
{
    PriceList wanted;
    for (const PartRow& row : parts.rows) {
        const PricedItem* priced = priceOf(known, row);
        const bool asked = std::any_of(wanted.items.begin(), wanted.items.end(),
                                       [&](const PricedItem& other) { return other.item == row.item; });
        if (row.item.empty() || asked || (priced && priced->price_minor))
            continue;
        PricedItem item;
        item.item = row.item;
        item.description = std::string(nameOf(row.kind));
        if (!row.size.pattern.empty())
            item.description += ", " + format(row.size, UnitSystem::metric);
        item.unit = row.unit;
        wanted.items.push_back(std::move(item));
    }
    return wanted;
}

} // namespace siphonwright
