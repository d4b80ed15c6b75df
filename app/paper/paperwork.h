#pragma once

#include "app/document/document.h"

#include "core/paperwork/estimate.h"
#include "core/paperwork/money.h"

#include <QString>

#include <functional>
#include <vector>

/// What the pages of parts and estimate show, and how they change the sketch.
namespace siphonwright::paper {

struct Paperwork {
    PartsList parts;
    std::vector<BorePlan> plans;
    Estimate estimate;            ///< as drawn
    std::vector<Estimate> others; ///< with each of the alternates
};
Paperwork paperworkOf(const Sketch& sketch);

UnitSystem unitsOf(const Sketch& sketch);
QString words(const std::string& text);
QString words(std::string_view text);
QString words(const Message& text, UnitSystem units);
/// As decimalText(), with the decimal sign of the locale.
QString decimalWords(std::int64_t steps, int decimals, Grouping group = Grouping::none, bool shorten = false);
QString money(std::int64_t minor, const Quote& quote);
enum class Sum { list, mark_up, materials, labour, other, subtotal, tax, total };
/// A sum as people read it. What is not entered or not priced is no zero: it is said in words, and a sum that
/// lacks something is marked.
QString sumText(const Estimate& estimate, Sum sum, const Quote& quote);
/// "2.48 m"; "not known".
QString quantityText(const EstimateLine& line);
/// A row's quantity on one vehicle, in the units people see.
QString quantityText(const PartRow& row, UnitSystem units);
/// Where a part is used; of hose with the pieces that each length is parted into.
QStringList whereUsed(const PartRow& row, const PartsList& parts, UnitSystem units);

/// One undo step that changes what is entered for the estimate.
void changeQuote(Document& document, const QString& what, const std::function<void(Quote&)>& change);
/// Put in the list price of an item, or take it out; `unit` is what it is for unless the list says so
/// already.
void setPrice(Quote& quote, const std::string& item, const std::string& description, PriceUnit unit,
              std::optional<std::int64_t> price_minor);

/// A typed amount, percentage (3 decimals) or number of hours (2) as whole steps. \return why it was refused;
/// empty: taken. An empty text is nothing.
QString takeDecimal(const QString& typed, int decimals, std::int64_t least, std::int64_t most,
                    std::optional<std::int64_t>& into);

} // namespace siphonwright::paper
