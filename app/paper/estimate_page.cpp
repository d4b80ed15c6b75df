#include "app/paper/estimate_page.h"

#include "app/language/in_words.h"
#include "app/panels/wrapped_row.h"
#include "app/paper/edit_table.h"
#include "app/paper/quote_form.h"

#include "core/paperwork/money.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::paper {

namespace {

/// The rows of the sums: first those of another heater that are typed, then what is reckoned.
enum Row {
    name_row,
    power_row,
    price_row,
    list_row,
    mark_up_row,
    materials_row,
    labour_row,
    other_row,
    subtotal_row,
    tax_row,
    total_row,
    rows
};
constexpr int first_alternate = 2; ///< column, after the names and "as drawn"
constexpr std::size_t most_alternates = 6;

QStringList rowNames()
{
    return {siphonwright::paper::EstimatePage::tr("Heater"),
            siphonwright::paper::EstimatePage::tr("Power"),
            siphonwright::paper::EstimatePage::tr("Heater's list price"),
            siphonwright::paper::EstimatePage::tr("Materials at list price"),
            siphonwright::paper::EstimatePage::tr("Mark-up"),
            siphonwright::paper::EstimatePage::tr("Materials"),
            siphonwright::paper::EstimatePage::tr("Labour"),
            siphonwright::paper::EstimatePage::tr("Travel, consumables, disposal"),
            siphonwright::paper::EstimatePage::tr("Subtotal"),
            siphonwright::paper::EstimatePage::tr("Tax"),
            siphonwright::paper::EstimatePage::tr("Total")};
}

} // namespace

EstimatePage::EstimatePage(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      form_(new QuoteForm(document, this)),
      table_(new EditTable(
          {QString(), tr("As drawn")},
          [this](int row, int column, const QString& typed) { return takeAlternate(row, column, typed); },
          this)),
      verdict_(new QLabel(this)),
      missing_(new QListWidget(this)),
      problem_(new QLabel(this)),
      remove_(new QPushButton(tr("&Remove it"), this))
{
    auto* area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(form_);
    constexpr int scroll_bar_px = 20;
    area->setFixedWidth(std::max(380, form_->minimumSizeHint().width() + scroll_bar_px));
    table_->setObjectName(QStringLiteral("sums-table"));
    table_->setAccessibleName(tr("Sums"));
    table_->setRowCount(rows);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    verdict_->setObjectName(QStringLiteral("estimate-verdict"));
    verdict_->setProperty("role", QStringLiteral("page-title"));
    verdict_->setWordWrap(true);
    missing_->setObjectName(QStringLiteral("estimate-missing"));
    missing_->setAccessibleName(tr("What is missing"));
    missing_->setWordWrap(true);
    problem_->setObjectName(QStringLiteral("estimate-problem"));
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* add = new QPushButton(tr("&Another heater beside it"), this);
    add->setObjectName(QStringLiteral("add-alternate"));
    remove_->setObjectName(QStringLiteral("remove-alternate"));
    auto* caution = new QLabel(tr("Each line is rounded before it is added, so the printed lines add up to "
                                  "the printed total. The figures are estimates: they are as good as the "
                                  "drawing, the prices and the hours."),
                               this);
    caution->setWordWrap(true);
    caution->setProperty("role", QStringLiteral("faint"));
    auto* buttons = new panels::WrappedRow;
    buttons->addWidget(add);
    buttons->addWidget(remove_);
    auto* sums = new QVBoxLayout;
    sums->addWidget(verdict_);
    sums->addWidget(table_, 3);
    sums->addWidget(problem_);
    sums->addLayout(buttons);
    sums->addWidget(missing_, 2);
    sums->addWidget(caution);
    auto* page = new QHBoxLayout(this);
    page->addWidget(area);
    page->addLayout(sums, 1);
    connect(add, &QPushButton::clicked, this, &EstimatePage::addAlternate);
    connect(remove_, &QPushButton::clicked, this, &EstimatePage::removeAlternate);
    connect(table_, &QTableWidget::currentCellChanged, this,
            [this](int /*row*/, int column) { remove_->setEnabled(column >= first_alternate); });
    connect(table_, &EditTable::problemChanged, this, [this](const QString& problem) {
        problem_->setText(problem);
        problem_->setVisible(!problem.isEmpty());
    });
}

void EstimatePage::fillColumn(int column, const QString& title, const Estimate& estimate)
{
    const Quote& quote = quoteOf(document_.sketch());
    table_->setHorizontalHeaderItem(column, new QTableWidgetItem(title));
    constexpr std::pair<Row, Sum> sums[] = {
        {list_row, Sum::list},     {mark_up_row, Sum::mark_up}, {materials_row, Sum::materials},
        {labour_row, Sum::labour}, {other_row, Sum::other},     {subtotal_row, Sum::subtotal},
        {tax_row, Sum::tax},       {total_row, Sum::total}};
    for (const auto& [row, sum] : sums)
        table_->put(row, column, sumText(estimate, sum, quote), EditTable::Kind::shown, EditTable::figures);
    table_->embolden(total_row, column, true);
}

void EstimatePage::fillDrawn(const Paperwork& paperwork)
{
    fillColumn(1, tr("As drawn"), paperwork.estimate);
    const std::vector<Heater>& heaters = document_.sketch().heaters;
    const UnitSystem units = unitsOf(document_.sketch());
    const QString name = heaters.empty()       ? tr("none drawn")
                         : heaters.size() == 1 ? words(heaters[0].name)
                                               : tr("%1 heaters").arg(heaters.size());
    QStringList powers;
    for (const Heater& heater : heaters)
        powers << (heater.power_W.known() ? inWords(*heater.power_W.value, Unit::watt, units)
                                          : tr("not entered"));
    powers.removeDuplicates();
    QStringList prices;
    for (const PartRow& row : paperwork.parts.rows)
        for (const EstimateLine& line : paperwork.estimate.lines)
            if (row.kind == ItemKind::heater && line.number == row.number)
                prices << (line.list_minor ? decimalWords(*line.list_minor,
                                                          quoteOf(document_.sketch()).currency.minor_digits)
                                           : words(line.missing));
    table_->put(name_row, 1, name);
    table_->put(power_row, 1, powers.join(QStringLiteral(", ")), EditTable::Kind::shown, EditTable::figures);
    table_->put(price_row, 1, prices.join(QStringLiteral(", ")), EditTable::Kind::shown, EditTable::figures);
}

void EstimatePage::fillAlternates(const Paperwork& paperwork)
{
    const Quote& quote = quoteOf(document_.sketch());
    const UnitSystem units = unitsOf(document_.sketch());
    for (std::size_t i = 0; i < paperwork.others.size(); ++i) {
        const Alternate& other = quote.alternates[i];
        const int column = first_alternate + static_cast<int>(i);
        fillColumn(column, tr("Other heater %1").arg(i + 1), paperwork.others[i]);
        table_->put(name_row, column, words(other.name), EditTable::Kind::typed);
        table_->put(power_row, column, other.power_W ? inWords(*other.power_W, Unit::watt, units) : QString(),
                    EditTable::Kind::typed, EditTable::figures);
        table_->put(price_row, column,
                    other.price_minor ? decimalWords(*other.price_minor, quote.currency.minor_digits)
                                      : QString(),
                    EditTable::Kind::typed, EditTable::figures);
    }
}

void EstimatePage::show(const Paperwork& paperwork)
{
    form_->refresh();
    table_->setColumnCount(first_alternate + static_cast<int>(paperwork.others.size()));
    const QStringList names = rowNames();
    for (int row = 0; row < rows; ++row) {
        table_->put(row, 0, names[row]);
        table_->embolden(row, 0, row == total_row || row == subtotal_row);
    }
    fillDrawn(paperwork);
    fillAlternates(paperwork);
    remove_->setEnabled(table_->currentColumn() >= first_alternate);
    const Estimate& estimate = paperwork.estimate;
    const QString total = sumText(estimate, Sum::total, quoteOf(document_.sketch()));
    verdict_->setText(estimate.status == EstimateStatus::refused    ? words(estimate.message)
                      : estimate.status == EstimateStatus::complete ? tr("Total %1").arg(total)
                                                                    : tr("Incomplete: %1").arg(total));
    showMissing(paperwork);
}

void EstimatePage::showMissing(const Paperwork& paperwork)
{
    const std::vector<std::string>& drawn = paperwork.estimate.missing;
    missing_->clear();
    for (const std::string& missing : drawn)
        missing_->addItem(QStringLiteral("▲ ") + words(missing));
    for (std::size_t i = 0; i < paperwork.others.size(); ++i)
        for (const std::string& missing : paperwork.others[i].missing)
            if (std::find(drawn.begin(), drawn.end(), missing) == drawn.end())
                missing_->addItem(tr("▲ Other heater %1: %2").arg(i + 1).arg(words(missing)));
    missing_->setVisible(missing_->count() > 0);
}

QString EstimatePage::takeAlternate(int row, int column, const QString& typed)
{
    const auto index = static_cast<std::size_t>(column - first_alternate);
    const Quote& now = quoteOf(document_.sketch());
    if (column < first_alternate || index >= now.alternates.size())
        return {};
    Alternate other = now.alternates[index];
    if (row == name_row) {
        if (typed.size() > 200)
            return tr("At most 200 characters.");
        other.name = typed.trimmed().toStdString();
    } else if (row == power_row) {
        std::string why;
        const auto power =
            parse(typedQuantity(typed, Unit::watt), Unit::watt, unitsOf(document_.sketch()), &why);
        if (!typed.trimmed().isEmpty() && !(power && *power >= 0 && *power <= 1e6))
            return power ? tr("A power is from 0 to 1000 kW.") : words(why);
        other.power_W = typed.trimmed().isEmpty() ? std::nullopt : power;
    } else {
        const QString refused =
            takeDecimal(typed, now.currency.minor_digits, 0, 1'000'000'000'000, other.price_minor);
        if (!refused.isEmpty())
            return refused;
    }
    changeQuote(document_, tr("Change the other heater"),
                [&](Quote& quote) { quote.alternates[index] = other; });
    return {};
}

void EstimatePage::addAlternate()
{
    changeQuote(document_, tr("Add another heater beside it"), [](Quote& quote) {
        if (quote.alternates.size() >= most_alternates)
            return;
        Alternate other;
        other.name = siphonwright::paper::EstimatePage::tr("Other heater").toStdString();
        quote.alternates.push_back(other);
    });
    table_->setCurrentCell(power_row, table_->columnCount() - 1);
    table_->setFocus();
}

void EstimatePage::removeAlternate()
{
    const auto index = static_cast<std::size_t>(table_->currentColumn() - first_alternate);
    changeQuote(document_, tr("Remove the other heater"), [index](Quote& quote) {
        if (index < quote.alternates.size())
            quote.alternates.erase(quote.alternates.begin() + static_cast<std::ptrdiff_t>(index));
    });
}

} // namespace siphonwright::paper
