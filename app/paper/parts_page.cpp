#include "app/paper/parts_page.h"

#include "app/paper/cut_bars.h"
#include "app/paper/roll_form.h"

#include <QHeaderView>
#include <QLabel>
#include <QScrollArea>
#include <QSplitter>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::paper {

namespace {

struct PartColumn {
    enum { number, part, size, quantity, used, remark, count };
};

QString remarksOf(const PartRow& part, UnitSystem units)
{
    QStringList said;
    if (!part.missing.empty())
        said << QStringLiteral("▲ ") + words(part.missing);
    for (const Message& note : part.notes)
        said << words(note, units);
    return said.join(QStringLiteral("  "));
}

} // namespace

PartsPage::PartsPage(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      table_(new QTableWidget(0, PartColumn::count, this)),
      remark_(new QLabel(this)),
      rolls_(new RollForm(document, this)),
      bars_(new CutBars(this))
{
    table_->setObjectName(QStringLiteral("parts-table"));
    table_->setAccessibleName(tr("Parts list"));
    table_->setHorizontalHeaderLabels(
        {tr("Item"), tr("Part"), tr("Size"), tr("Quantity"), tr("Where used"), tr("Remarks")});
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    for (const int column : {PartColumn::number, PartColumn::part, PartColumn::quantity})
        table_->horizontalHeader()->setSectionResizeMode(column, QHeaderView::ResizeToContents);
    for (const int column : {PartColumn::size, PartColumn::used, PartColumn::remark})
        table_->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    table_->setStyleSheet(
        QStringLiteral("QTableView { gridline-color: palette(mid); }")); // on dark ground too
    table_->setWordWrap(true);
    remark_->setObjectName(QStringLiteral("parts-remark"));
    remark_->setProperty("role", QStringLiteral("faint"));
    remark_->setWordWrap(true);
    auto* below = new QWidget(this);
    auto* column = new QVBoxLayout(below);
    column->setContentsMargins(0, 4, 0, 0);
    auto* heading = new QLabel(tr("Hose cuts, all vehicles together"), below);
    heading->setProperty("role", QStringLiteral("heading"));
    auto* area = new QScrollArea(below);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidget(bars_);
    column->addWidget(heading);
    column->addWidget(rolls_);
    column->addWidget(area, 1);
    auto* splitter = new QSplitter(Qt::Vertical, this);
    splitter->addWidget(table_);
    splitter->addWidget(below);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setChildrenCollapsible(false);
    auto* page = new QVBoxLayout(this);
    page->addWidget(remark_);
    page->addWidget(splitter, 1);
    connect(table_, &QTableWidget::cellClicked, this, [this](int row) { selectNext(row); });
    connect(table_, &QTableWidget::cellActivated, this, [this](int row) { selectNext(row); });
}

void PartsPage::fill(int row, const PartRow& part, const PartsList& parts)
{
    const UnitSystem units = unitsOf(document_.sketch());
    const QStringList cells{QString::number(part.number),
                            words(nameOf(part.kind)),
                            words(part.size, units),
                            quantityText(part, units),
                            whereUsed(part, parts, units).join(QStringLiteral("; ")),
                            remarksOf(part, units)};
    for (int column = 0; column < PartColumn::count; ++column) {
        QTableWidgetItem* item = table_->item(row, column);
        if (!item) {
            item = new QTableWidgetItem;
            table_->setItem(row, column, item);
        }
        item->setText(cells[column]);
        item->setToolTip(part.used.empty() ? cells[column]
                                           : tr("%1\nClick to select it on the drawing.").arg(cells[column]));
        if (column == PartColumn::number || column == PartColumn::quantity)
            item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
        QFont font; // as large as the table's own
        font.setBold(!part.missing.empty() && (column == PartColumn::part || column == PartColumn::remark));
        item->setFont(font);
    }
}

void PartsPage::show(const Paperwork& paperwork)
{
    rows_ = paperwork.parts.rows;
    table_->setRowCount(static_cast<int>(rows_.size()));
    for (std::size_t i = 0; i < rows_.size(); ++i)
        fill(static_cast<int>(i), rows_[i], paperwork.parts);
    const UnitSystem units = unitsOf(document_.sketch());
    QStringList said;
    if (rows_.empty())
        said << tr("Nothing is drawn that takes parts.");
    else
        said << tr("For one vehicle, as drawn. Check it against the heater's manual before you order.");
    for (const Message& left_out : paperwork.parts.not_counted)
        said << QStringLiteral("▲ ") + words(left_out, units);
    remark_->setText(said.join(QLatin1Char('\n')));
    rolls_->show(paperwork);
    bars_->show(paperwork.plans, units);
}

void PartsPage::selectNext(int row)
{
    if (row < 0 || static_cast<std::size_t>(row) >= rows_.size())
        return;
    const std::vector<UsedAt>& used = rows_[static_cast<std::size_t>(row)].used;
    if (used.empty())
        return;
    const auto now = std::find_if(used.begin(), used.end(),
                                  [&](const UsedAt& at) { return at.part == selection_.part(); });
    // Places may share a part (a heater's two nozzles): the next is the next other part.
    auto next = now == used.end() ? used.begin() : now;
    while (next != used.end() && next->part == selection_.part())
        ++next;
    selection_.select(next == used.end() ? used.front().part : next->part);
}

} // namespace siphonwright::paper
