#include "app/warming/bore_table.h"

#include "app/panels/field.h"
#include "app/warming/figure_table.h"
#include "app/warming/words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

namespace siphonwright::warming {
BoreTable::BoreTable(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      remark_(new QLabel(this)),
      table_(figureTable({tr("Hose bore"), tr("Flow, warm"), tr("Outlet, warm"), tr("Peak outlet"),
                          tr("Cycles an hour"), tr("Target reached")},
                         this)),
      use_(new QPushButton(tr("Use this bore"), this))
{
    table_->setObjectName(QStringLiteral("bore-table"));
    table_->setAccessibleName(tr("By bore of hose"));
    remark_->setObjectName(QStringLiteral("bore-remark"));
    remark_->setWordWrap(true);
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
    QStringList cells;
    const QString size = valueText(bore.bore_mm, Unit::mm, units);
    cells << (bore.drawn ? tr("● %1, as drawn").arg(size) : size);
    const FigureWords words(sketch);
    cells << words.flow(bore.flow_l_per_min, bore.runs) << words.outlet(bore.steady_outlet_degC)
          << words.outlet(bore.peak_outlet_degC) << words.cycles(bore.cycles_per_hour)
          << words.target(bore.target_h);
    showRow(*table_, row, cells, bore.drawn, tr("Double-click to use this bore"));
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
