#include "app/warming/bore_table.h"

#include "app/panels/field.h"
#include "app/warming/words.h"

#include "core/running/coolant_of.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace siphonwright::warming {
namespace {

enum Column { bore_column, flow_column, steady_column, peak_column, cycles_column, target_column, columns };

std::optional<double> exceeded(const char* rule, const Sketch& sketch, double measured)
{
    const Rule* found = ruleById(rule);
    if (!found || switchedOff(rule, sketch))
        return std::nullopt;
    const auto over = verdict(measured, found->sense, limitsOf(*found, sketch));
    return over ? std::optional(over->limit) : std::nullopt;
}

/// "▲ 88.1 °C over 82.2 °C": sign and word, not colour alone.
QString judged(const QString& text, std::optional<double> limit, const QString& limit_text)
{
    return limit ? BoreTable::tr("▲ %1, over %2").arg(text, limit_text) : text;
}

} // namespace

BoreTable::BoreTable(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      remark_(new QLabel(this)),
      table_(new QTableWidget(0, columns, this)),
      use_(new QPushButton(tr("Use this bore"), this))
{
    table_->setObjectName(QStringLiteral("bore-table"));
    table_->setAccessibleName(tr("By bore of hose"));
    table_->setHorizontalHeaderLabels({tr("Hose bore"), tr("Flow, warm"), tr("Outlet, warm"),
                                       tr("Peak outlet"), tr("Cycles an hour"), tr("Target reached")});
    table_->verticalHeader()->hide();
    table_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table_->horizontalHeader()->setStretchLastSection(true);
    table_->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft);
    table_->setSelectionBehavior(QAbstractItemView::SelectRows);
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setFrameShape(QFrame::NoFrame);
    table_->setShowGrid(false);
    table_->setTabKeyNavigation(false);
    remark_->setObjectName(QStringLiteral("bore-remark"));
    remark_->setProperty("role", QStringLiteral("faint"));
    use_->setObjectName(QStringLiteral("use-bore"));
    use_->setToolTip(tr("Put every hose on the selected bore, hose ends and in-line parts in proportion"));
    auto* row = new QHBoxLayout;
    row->setContentsMargins(8, 0, 4, 0);
    row->addWidget(remark_, 1);
    row->addWidget(use_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 2, 0, 0);
    column->setSpacing(2);
    column->addLayout(row);
    column->addWidget(table_, 1);
    connect(table_, &QTableWidget::itemSelectionChanged, this, &BoreTable::follow);
    connect(table_, &QTableWidget::cellActivated, this, &BoreTable::useRow);
    connect(use_, &QPushButton::clicked, this, [this] { useRow(table_->currentRow()); });
    connect(&document_, &Document::changed, this, &BoreTable::refresh);
    connect(&document_, &Document::analysed, this, &BoreTable::refresh);
    refresh();
}

void BoreTable::refresh()
{
    const std::optional<Proof>& proof = document_.proof();
    const int current = table_->currentRow();
    const std::size_t rows = proof ? proof->by_bore.size() : 0;
    table_->setRowCount(static_cast<int>(rows));
    for (std::size_t i = 0; i < rows; ++i)
        fill(static_cast<int>(i), proof->by_bore[i]);
    if (current >= 0 && current < table_->rowCount())
        table_->selectRow(current);
    table_->setEnabled(document_.proofIsCurrent());
    remark_->setText(rows == 0                    ? tr("The table comes when a loop can be computed.")
                     : document_.proofIsCurrent() ? tr("Every hose on one bore, hose ends and in-line parts "
                                                       "with it")
                                                  : tr("of the drawing as it was"));
    follow();
}

void BoreTable::fill(int row, const BoreRow& bore)
{
    const Sketch& sketch = document_.sketch();
    const UnitSystem units = panels::unitsOf(sketch);
    const CoolantOf coolant = coolantOf(sketch, Assumptions(sketch));
    const double kg_per_l =
        coolant.fluid ? coolant.fluid->at(bore.steady_outlet_degC).density_kg_per_m3 / 1000 : 1;
    const auto degC = [units](double value) { return valueText(value, Unit::degC, units); };
    QStringList cells;
    const QString size = valueText(bore.bore_mm, Unit::mm, units);
    cells << (bore.drawn ? tr("● %1, as drawn").arg(size) : size);
    const QString flow = valueText(bore.flow_kg_per_s * 60 / kg_per_l, Unit::l_per_min, units);
    cells << (bore.runs ? flow : tr("▲ %1, does not run forward").arg(flow));
    const auto outlet = [&](double value) {
        const auto limit = exceeded("outlet-over-limit", sketch, value);
        return judged(degC(value), limit, degC(limit.value_or(0)));
    };
    cells << outlet(bore.steady_outlet_degC);
    cells << (bore.peak_outlet_degC ? outlet(*bore.peak_outlet_degC) : tr("–"));
    const auto cycles = exceeded("cycles-over-4", sketch, bore.cycles_per_hour);
    cells << judged(QString::number(bore.cycles_per_hour), cycles, QString::number(cycles.value_or(0)));
    cells << (bore.target_h ? tr("after %1").arg(timeText(*bore.target_h))
                            : tr("▲ not in %1").arg(timeText(sketch.plan.hours)));
    for (int column = 0; column < columns; ++column) {
        auto* item = new QTableWidgetItem(cells[column]);
        QFont font = table_->font();
        font.setBold(bore.drawn || cells[column].startsWith(QStringLiteral("▲")));
        item->setFont(font);
        item->setToolTip(tr("Double-click to use this bore"));
        table_->setItem(row, column, item);
    }
}

void BoreTable::follow()
{
    const std::optional<Proof>& proof = document_.proof();
    const int row = table_->currentRow();
    const bool chosen = proof && row >= 0 && static_cast<std::size_t>(row) < proof->by_bore.size() &&
                        !table_->selectedItems().isEmpty();
    use_->setEnabled(chosen && document_.proofIsCurrent());
}

void BoreTable::useRow(int row)
{
    const std::optional<Proof>& proof = document_.proof();
    if (!proof || row < 0 || static_cast<std::size_t>(row) >= proof->by_bore.size())
        return;
    const double bore_mm = proof->by_bore[static_cast<std::size_t>(row)].bore_mm;
    document_.apply(
        tr("Use hose of %1").arg(valueText(bore_mm, Unit::mm, panels::unitsOf(document_.sketch()))),
        [bore_mm](Sketch& sketch) { sketch = onBore(std::move(sketch), bore_mm); });
}

} // namespace siphonwright::warming
