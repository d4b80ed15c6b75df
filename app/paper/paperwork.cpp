#include "app/paper/paperwork.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/sheet/words.h"

#include "core/paperwork/money.h"

#include <QLatin1String>
#include <QLocale>

#include <algorithm>

namespace siphonwright::paper {

namespace {

std::int64_t minorOf(const Estimate& estimate, Sum sum)
{
    switch (sum) {
    case Sum::list:
        return estimate.list_minor;
    case Sum::mark_up:
        return estimate.markUpMinor();
    case Sum::materials:
        return estimate.materials_minor;
    case Sum::labour:
        return estimate.labour_minor;
    case Sum::other:
        return estimate.other_minor;
    case Sum::subtotal:
        return estimate.subtotal_minor;
    case Sum::tax:
        return estimate.tax_minor;
    case Sum::total:
        return estimate.total_minor;
    }
    return 0;
}

/// Whether a line goes into a sum.
bool countsIn(const EstimateLine& line, Sum sum)
{
    switch (sum) {
    case Sum::list:
    case Sum::mark_up:
    case Sum::materials:
        return line.group == LineGroup::materials;
    case Sum::labour:
        return line.group == LineGroup::labour;
    case Sum::other:
        return line.group == LineGroup::other;
    default:
        return true;
    }
}

/// What a sum rests on besides its lines was not entered.
bool lacksRate(Sum sum, const Quote& quote)
{
    const bool no_mark_up = !quote.mark_up_thousandths;
    const bool no_tax = !quote.tax_thousandths;
    return (no_mark_up && sum != Sum::list && sum != Sum::labour && sum != Sum::other) ||
           (no_tax && (sum == Sum::tax || sum == Sum::total));
}

} // namespace

QString sumText(const Estimate& estimate, Sum sum, const Quote& quote)
{
    std::size_t counted = 0;
    std::size_t priced = 0;
    for (const EstimateLine& line : estimate.lines) {
        counted += countsIn(line, sum) ? 1 : 0;
        priced += countsIn(line, sum) && line.amount_minor ? 1 : 0;
    }
    if (estimate.status == EstimateStatus::refused)
        return QStringLiteral("–");
    if ((sum == Sum::mark_up && !quote.mark_up_thousandths) || (sum == Sum::tax && !quote.tax_thousandths))
        return tr("not entered");
    if (counted > 0 && priced == 0)
        return sum == Sum::labour || sum == Sum::other ? tr("not entered") : tr("not priced");
    const QString text = money(minorOf(estimate, sum), quote);
    return priced < counted || lacksRate(sum, quote) ? QStringLiteral("▲ ") + text : text;
}

Paperwork paperworkOf(const Sketch& sketch)
{
    Paperwork out;
    out.parts = partsOf(sketch, resolve(sketch, plumbOf(sketch)));
    out.plans = cutPlansOf(sketch, out.parts);
    out.estimate = estimateOf(sketch, out.parts);
    for (const Alternate& other : quoteOf(sketch).alternates)
        out.others.push_back(estimateOf(sketch, out.parts, &other));
    return out;
}

UnitSystem unitsOf(const Sketch& sketch)
{
    return sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
}

QString words(const std::string& text)
{
    return inWords(text);
}

QString words(std::string_view text)
{
    return inWords(text);
}

QString words(const Message& text, UnitSystem units)
{
    return inWords(text, units);
}

QString decimalWords(std::int64_t steps, int decimals, Grouping group, bool shorten)
{
    return withDecimalSign(QString::fromStdString(decimalText(steps, decimals, group, shorten)));
}

QString money(std::int64_t minor, const Quote& quote)
{
    return withDecimalSign(QString::fromStdString(moneyText(minor, quote.currency)));
}

QString quantityText(const EstimateLine& line)
{
    if (!line.thousandths)
        return tr("not known");
    const QString number = decimalWords(*line.thousandths, 3, Grouping::thousands, true);
    return line.unit == "each" ? number : number + QLatin1Char(' ') + words(line.unit);
}

QString quantityText(const PartRow& row, UnitSystem units)
{
    if (!row.thousandths)
        return tr("not known");
    constexpr double litre_ml = 1000;
    const auto thousandths = static_cast<double>(*row.thousandths);
    switch (row.unit) {
    case PriceUnit::metre:
        return inWords(thousandths, Unit::mm, units);
    case PriceUnit::litre:
        return thousandths < litre_ml ? inWords(thousandths, Unit::ml, units)
                                      : inWords(thousandths / litre_ml, Unit::litre, units);
    default:
        return decimalWords(*row.thousandths, 3, Grouping::none, true);
    }
}

QStringList whereUsed(const PartRow& row, const PartsList& parts, UnitSystem units)
{
    QStringList places;
    for (const UsedAt& used : row.used) {
        QString place = words(used.name, units);
        const auto cut = std::find_if(parts.cuts.begin(), parts.cuts.end(), [&](const HoseCut& one) {
            return row.kind == ItemKind::hose && one.hose == used.part.id && !one.parts.empty() &&
                   used.name.quantities == std::vector<Quantity>{{one.length_mm, Unit::mm}};
        });
        if (cut != parts.cuts.end())
            place += QStringLiteral(" (%1)").arg(sheet::piecesWords(*cut, units));
        places << place;
    }
    return places;
}

void changeQuote(Document& document, const QString& what, const std::function<void(Quote&)>& change)
{
    document.apply(what, [&change](Sketch& sketch) {
        Quote quote = quoteOf(sketch);
        change(quote);
        if (!(quote == quoteOf(sketch)))
            sketch.quote = Shared<Quote>(std::move(quote));
    });
}

void setPrice(Quote& quote, const std::string& item, const std::string& description, PriceUnit unit,
              std::optional<std::int64_t> price_minor)
{
    std::vector<PricedItem>& items = quote.prices.items;
    const auto found = std::find_if(items.begin(), items.end(),
                                    [&](const PricedItem& priced) { return priced.item == item; });
    if (found != items.end()) {
        found->price_minor = price_minor;
        return;
    }
    PricedItem fresh;
    fresh.item = item;
    fresh.description = description;
    fresh.unit = unit;
    fresh.price_minor = price_minor;
    items.push_back(std::move(fresh));
}

QString takeDecimal(const QString& typed, int decimals, std::int64_t least, std::int64_t most,
                    std::optional<std::int64_t>& into)
{
    into.reset();
    if (typed.trimmed().isEmpty())
        return {};
    std::string problem;
    // With three decimals a comma could also set thousands apart, where it is not the decimal sign.
    const bool may_group = decimals == 3 && QLocale().decimalPoint() == QLatin1String(".");
    const DecimalMark mark = may_group ? DecimalMark::point : DecimalMark::point_or_comma;
    const auto read = readDecimal(typed.toStdString(), decimals, mark, &problem);
    if (!read)
        return tr("\"%1\": %2.").arg(typed.trimmed(), words(problem));
    if (*read < least || *read > most)
        return tr("\"%1\" is not from %2 to %3.")
            .arg(typed.trimmed(), decimalWords(least, decimals, Grouping::none, true),
                 decimalWords(most, decimals, Grouping::none, true));
    into = read;
    return {};
}

} // namespace siphonwright::paper
