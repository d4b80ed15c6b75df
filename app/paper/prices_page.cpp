#include "app/paper/prices_page.h"

#include "app/paper/edit_table.h"
#include "app/window/file_dialog.h"
#include "app/window/settings.h"

#include "core/paperwork/money.h"
#include "core/paperwork/parts_csv.h"
#include "core/paperwork/price_list.h"
#include "core/sketch/words.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace siphonwright::paper {

namespace {

struct PriceColumn {
    enum { number, part, key, quantity, list, price, amount, count };
};
constexpr std::int64_t largest_price = 1'000'000'000'000;

} // namespace

PricesPage::PricesPage(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      table_(new EditTable(
          {tr("Item"), tr("Part"), tr("Price key"), tr("Quantity"), tr("List price"), tr("Price"),
           tr("Amount")},
          [this](int row, int /*column*/, const QString& typed) { return takePrice(row, typed); }, this)),
      list_(new QLabel(this)),
      problem_(new QLabel(this))
{
    table_->setObjectName(QStringLiteral("prices-table"));
    table_->setAccessibleName(tr("Prices of materials"));
    QHeaderView* header = table_->horizontalHeader();
    for (int column = 0; column < PriceColumn::count; ++column)
        header->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    header->setSectionResizeMode(PriceColumn::part, QHeaderView::Stretch);
    list_->setObjectName(QStringLiteral("price-list-name"));
    list_->setWordWrap(true);
    problem_->setObjectName(QStringLiteral("price-problem"));
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    auto* load = new QPushButton(tr("&Load a price list…"), this);
    load->setObjectName(QStringLiteral("load-prices"));
    load->setToolTip(tr("A CSV file with the columns item, description, unit, price and currency"));
    auto* wanted = new QPushButton(tr("&Write what is not priced…"), this);
    wanted->setObjectName(QStringLiteral("write-wanted"));
    wanted->setToolTip(tr("A price list to be filled in, as CSV"));
    auto* row = new QHBoxLayout;
    row->addWidget(list_, 1);
    row->addWidget(wanted);
    row->addWidget(load);
    auto* page = new QVBoxLayout(this);
    page->addLayout(row);
    page->addWidget(problem_);
    page->addWidget(table_, 1);
    connect(load, &QPushButton::clicked, this, &PricesPage::chooseList);
    connect(wanted, &QPushButton::clicked, this, &PricesPage::chooseWanted);
    connect(table_, &EditTable::problemChanged, this, &PricesPage::tell);
}

void PricesPage::tell(const QString& problem)
{
    problem_->setText(problem);
    problem_->setVisible(!problem.isEmpty());
}

void PricesPage::show(const Paperwork& paperwork)
{
    parts_ = paperwork.parts;
    lines_.clear();
    for (const EstimateLine& line : paperwork.estimate.lines)
        if (line.group == LineGroup::materials)
            lines_.push_back(line);
    const Sketch& sketch = document_.sketch();
    const Quote& quote = quoteOf(sketch);
    const UnitSystem units = unitsOf(sketch);
    table_->setRowCount(static_cast<int>(lines_.size()));
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const EstimateLine& line = lines_[i];
        const int row = static_cast<int>(i);
        QString part = words(line.text, units);
        if (!line.size.pattern.empty())
            part += QStringLiteral(", ") + words(line.size, units);
        const auto amount = [&](const std::optional<std::int64_t>& minor) {
            return minor ? decimalWords(*minor, quote.currency.minor_digits, Grouping::thousands) : QString();
        };
        table_->put(row, PriceColumn::number, QString::number(line.number), EditTable::Kind::shown,
                    EditTable::figures);
        table_->put(row, PriceColumn::part, part);
        table_->put(row, PriceColumn::key, words(line.item));
        table_->put(row, PriceColumn::quantity, quantityText(line), EditTable::Kind::shown,
                    EditTable::figures);
        table_->put(row, PriceColumn::list,
                    line.list_minor ? decimalWords(*line.list_minor, quote.currency.minor_digits) : QString(),
                    line.item.empty() ? EditTable::Kind::shown : EditTable::Kind::typed, EditTable::figures);
        table_->put(row, PriceColumn::price, amount(line.price_minor), EditTable::Kind::shown,
                    EditTable::figures);
        table_->put(row, PriceColumn::amount,
                    line.amount_minor ? amount(line.amount_minor)
                                      : QStringLiteral("▲ ") + words(line.missing),
                    EditTable::Kind::shown, EditTable::figures);
        table_->embolden(row, PriceColumn::amount, !line.amount_minor);
    }
    const QString currency =
        quote.currency.code.empty() ? tr("currency not entered") : words(quote.currency.code);
    const QString list = quote.prices.name.empty() ? tr("No price list is loaded") : words(quote.prices.name);
    list_->setText(tr("%1; %2. Quantities for %3. The price is the list price with the mark-up.")
                       .arg(list, currency,
                            quote.vehicles == 1 ? tr("one vehicle") : tr("%1 vehicles").arg(quote.vehicles)));
}

QString PricesPage::takePrice(int row, const QString& typed)
{
    if (row < 0 || static_cast<std::size_t>(row) >= lines_.size())
        return {};
    const EstimateLine line = lines_[static_cast<std::size_t>(row)];
    std::optional<std::int64_t> price;
    const QString refused =
        takeDecimal(typed, quoteOf(document_.sketch()).currency.minor_digits, 0, largest_price, price);
    if (!refused.isEmpty())
        return refused;
    const std::string what = format(line.text, UnitSystem::metric);
    changeQuote(document_, tr("Change the price of %1").arg(words(what)), [&](Quote& quote) {
        setPrice(quote, line.item, what, fromWord<PriceUnit>(line.unit).value_or(PriceUnit::each), price);
    });
    return {};
}

FileBytes PricesPage::read(const QString& path)
{
    return readFile(path, qint64(largest_csv_bytes) + 1);
}

QString PricesPage::take(const QString& path, const FileBytes& file)
{
    if (!file.error.isEmpty())
        return tr("%1 cannot be read: %2.").arg(path, file.error);
    const auto read = readPriceList(file.bytes.toStdString());
    const QString name = QFileInfo(path).completeBaseName();
    if (const auto* problem = std::get_if<CsvProblem>(&read))
        return tr("%1 was not loaded. %2").arg(name, words(problem->text()));
    std::string refused;
    document_.apply(tr("Load price list"), [&](Sketch& sketch) {
        refused = takePrices(sketch, std::get<PriceListFile>(read), name.toStdString());
    });
    return refused.empty() ? QString() : tr("%1 was not loaded. %2").arg(name, words(refused));
}

QString PricesPage::writeWanted(const QString& path, const PutFile& put) const
{
    const Quote& quote = quoteOf(document_.sketch());
    const std::string text = writePriceList(pricesWanted(parts_, quote.prices), quote.currency);
    return put(path, QByteArray::fromStdString(text)).join(QLatin1Char(' '));
}

void PricesPage::chooseList()
{
    QFileDialog* dialog = newFileDialog(this, tr("Load a price list"));
    dialog->setFileMode(QFileDialog::ExistingFile);
    dialog->setNameFilter(tr("Price lists (*.csv)"));
    connect(dialog, &QFileDialog::fileSelected, this, &PricesPage::listChosen);
    dialog->open();
}

void PricesPage::chooseWanted()
{
    QFileDialog* dialog = newFileDialog(this, tr("Write what is not priced"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilter(tr("CSV (*.csv)"));
    dialog->setDefaultSuffix(QStringLiteral("csv"));
    connect(dialog, &QFileDialog::fileSelected, this, &PricesPage::wantedChosen);
    dialog->open();
}

} // namespace siphonwright::paper
