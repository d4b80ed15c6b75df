#include "app/paper/quote_form.h"

#include "app/language/language.h"

#include "core/paperwork/money.h"
#include "core/paperwork/price_list.h"

#include <QFormLayout>
#include <QLabel>

#include <algorithm>

namespace siphonwright::paper {

namespace {

constexpr int of_currency = -1;
constexpr std::int64_t most_money = 1'000'000'000'000;
constexpr std::int64_t most_percent = 1'000'000; ///< thousandths
constexpr int percent_decimals = 3;

int decimalsOf(const Quote& quote, int decimals)
{
    return decimals == of_currency ? quote.currency.minor_digits : decimals;
}

bool hasAmounts(const Quote& quote)
{
    const auto priced = [](const auto& item) { return item.price_minor.has_value(); };
    return quote.travel_minor || quote.consumables_minor || quote.disposal_minor || quote.labour_rate_minor ||
           std::any_of(quote.prices.items.begin(), quote.prices.items.end(), priced) ||
           std::any_of(quote.alternates.begin(), quote.alternates.end(), priced);
}

} // namespace

QuoteForm::QuoteForm(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), form_(new QFormLayout(this)), problem_(new QLabel(this))
{
    form_->setContentsMargins(0, 0, 8, 0);
    form_->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form_->setRowWrapPolicy(QFormLayout::DontWrapRows);
    problem_->setObjectName(QStringLiteral("quote-problem"));
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    form_->addRow(problem_);
    addHeading(tr("Rates and sums"));
    addCurrency();
    addWhole(tr("Identical vehicles"), QStringLiteral("vehicles"), &Quote::vehicles, 1, 10'000);
    addSteps(tr("Mark-up, %"), QStringLiteral("mark-up"), &Quote::mark_up_thousandths, percent_decimals,
             most_percent);
    addSteps(tr("Labour, an hour"), QStringLiteral("labour-rate"), &Quote::labour_rate_minor, of_currency,
             most_money);
    addSteps(tr("Travel"), QStringLiteral("travel"), &Quote::travel_minor, of_currency, most_money);
    addSteps(tr("Consumables, a vehicle"), QStringLiteral("consumables"), &Quote::consumables_minor,
             of_currency, most_money);
    addSteps(tr("Coolant disposal, a vehicle"), QStringLiteral("disposal"), &Quote::disposal_minor,
             of_currency, most_money);
    addSteps(tr("Tax, %"), QStringLiteral("tax"), &Quote::tax_thousandths, percent_decimals, most_percent);
    addHeading(tr("On paper"));
    addWords(tr("Number"), QStringLiteral("number"), &Quote::number);
    addWords(tr("Revision"), QStringLiteral("revision"), &Quote::revision);
    addWords(tr("Date"), QStringLiteral("date"), &Quote::date);
    addWhole(tr("Valid for, days"), QStringLiteral("validity"), &Quote::validity_days, 0, 3650);
    addText(tr("From"), QStringLiteral("company"), &Quote::company);
    addText(tr("For"), QStringLiteral("customer"), &Quote::customer);
    addText(tr("Not included"), QStringLiteral("exclusions"), &Quote::exclusions);
    refresh();
}

void QuoteForm::addHeading(const QString& text)
{
    auto* heading = new QLabel(text, this);
    heading->setWordWrap(true);
    heading->setProperty("role", QStringLiteral("heading"));
    form_->addRow(heading);
}

void QuoteForm::addLine(const QString& label, const QString& name, Read read, EntryLine::Take take,
                        const QString& placeholder)
{
    auto* line = new EntryLine(label, std::move(take), this);
    line->setObjectName(QStringLiteral("quote-%1").arg(name));
    line->setPlaceholderText(placeholder);
    form_->addRow(label, line);
    shows_.push_back([line, read = std::move(read)](const Quote& quote) { line->showText(read(quote)); });
    connect(line, &EntryLine::problemChanged, this, [this](const QString& why) {
        problem_->setText(why);
        problem_->setVisible(!why.isEmpty());
    });
}

void QuoteForm::addWords(const QString& label, const QString& name, std::string Quote::*member)
{
    constexpr qsizetype longest = 200;
    addLine(
        label, name, [member](const Quote& quote) { return words(quote.*member); },
        [this, label, member](const QString& typed) {
            if (typed.size() > longest)
                return tr("At most 200 characters.");
            changeQuote(document_, tr("Change %1").arg(language::withinSentence(label)),
                        [&](Quote& quote) { quote.*member = typed.trimmed().toStdString(); });
            return QString();
        });
}

void QuoteForm::addText(const QString& label, const QString& name, std::string Quote::*member)
{
    constexpr qsizetype longest = 2000;
    auto* text = new EntryText(
        label,
        [this, label, member](const QString& typed) {
            changeQuote(document_, tr("Change %1").arg(language::withinSentence(label)),
                        [&](Quote& quote) { quote.*member = typed.left(longest).toStdString(); });
        },
        this);
    text->setObjectName(QStringLiteral("quote-%1").arg(name));
    form_->addRow(label, text);
    shows_.push_back([text, member](const Quote& quote) { text->showText(words(quote.*member)); });
}

void QuoteForm::addSteps(const QString& label, const QString& name,
                         std::optional<std::int64_t> Quote::*member, int decimals, std::int64_t most)
{
    addLine(
        label, name,
        [member, decimals](const Quote& quote) {
            const bool percent = decimals != of_currency;
            return quote.*member
                       ? decimalWords(*(quote.*member), decimalsOf(quote, decimals), Grouping::none, percent)
                       : QString();
        },
        [this, label, member, decimals, most](const QString& typed) {
            std::optional<std::int64_t> steps;
            const QString refused =
                takeDecimal(typed, decimalsOf(quoteOf(document_.sketch()), decimals), 0, most, steps);
            if (refused.isEmpty())
                changeQuote(document_, tr("Change %1").arg(language::withinSentence(label)),
                            [&](Quote& quote) { quote.*member = steps; });
            return refused;
        },
        tr("not entered"));
}

void QuoteForm::addWhole(const QString& label, const QString& name, std::int64_t Quote::*member,
                         std::int64_t least, std::int64_t most)
{
    addLine(
        label, name, [member](const Quote& quote) { return QString::number(quote.*member); },
        [this, label, member, least, most](const QString& typed) {
            std::optional<std::int64_t> number;
            const QString refused = takeDecimal(typed, 0, least, most, number);
            if (!refused.isEmpty() || !number)
                return refused.isEmpty() ? tr("A number is wanted here.") : refused;
            changeQuote(document_, tr("Change %1").arg(language::withinSentence(label)),
                        [&](Quote& quote) { quote.*member = *number; });
            return QString();
        });
}

void QuoteForm::addCurrency()
{
    addLine(
        tr("Currency"), QStringLiteral("currency"),
        [](const Quote& quote) { return words(quote.currency.code); },
        [this](const QString& typed) { return takeCurrency(typed); }, tr("USD, CAD, EUR …"));
    addLine(
        tr("Its sign"), QStringLiteral("symbol"),
        [](const Quote& quote) { return words(quote.currency.symbol); },
        [this](const QString& typed) {
            if (typed.trimmed().size() > 5)
                return tr("At most 5 characters.");
            changeQuote(document_, tr("Change the currency's sign"),
                        [&](Quote& quote) { quote.currency.symbol = typed.trimmed().toStdString(); });
            return QString();
        },
        tr("none: the code is written"));
}

/// Amounts count steps of the currency's decimals, so those cannot change under them.
QString QuoteForm::takeCurrency(const QString& typed)
{
    const QString code = typed.trimmed().toUpper();
    const bool letters =
        std::all_of(code.begin(), code.end(), [](QChar c) { return c >= u'A' && c <= u'Z'; });
    if (!code.isEmpty() && (code.size() != 3 || !letters))
        return tr("A currency is three letters, such as USD.");
    const Quote& now = quoteOf(document_.sketch());
    const int digits = minorDigitsOf(code.toStdString());
    if (digits != now.currency.minor_digits && hasAmounts(now))
        return tr("%1 has %2 decimals, and amounts are entered with %3. Take them out first.")
            .arg(code)
            .arg(digits)
            .arg(now.currency.minor_digits);
    changeQuote(document_, tr("Change the currency"), [&](Quote& quote) {
        quote.currency.code = code.toStdString();
        quote.currency.minor_digits = digits;
    });
    return {};
}

void QuoteForm::refresh()
{
    const Quote& quote = quoteOf(document_.sketch());
    for (const auto& show : shows_)
        show(quote);
}

} // namespace siphonwright::paper
