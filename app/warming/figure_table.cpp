#include "app/warming/figure_table.h"

#include "app/language/in_words.h"
#include "app/language/tr.h"
#include "app/panels/field.h"
#include "app/warming/words.h"

#include "core/checks/rules.h"

#include <QHeaderView>
#include <QTableWidget>

namespace siphonwright::warming {
namespace {

std::optional<double> exceeded(const char* rule, const Sketch& sketch, double measured)
{
    const Rule* found = ruleById(rule);
    if (!found || switchedOff(rule, sketch))
        return std::nullopt;
    const auto over = verdict(measured, found->sense, limitsOf(*found, sketch));
    return over ? std::optional(over->limit) : std::nullopt;
}

/// "▲ 88.1 °C, over 82.2 °C": sign and word, not colour alone.
QString judged(const QString& text, std::optional<double> limit, const QString& limit_text)
{
    return limit ? tr("▲ %1, over %2").arg(text, limit_text) : text;
}

} // namespace

QTableWidget* figureTable(const QStringList& headings, QWidget* parent)
{
    auto* table = new QTableWidget(0, static_cast<int>(headings.size()), parent);
    table->setHorizontalHeaderLabels(headings);
    table->verticalHeader()->hide();
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setStretchLastSection(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setFrameShape(QFrame::NoFrame);
    table->setShowGrid(false);
    table->setTabKeyNavigation(false);
    return table;
}

void showRow(QTableWidget& table, int row, const QStringList& cells, bool stands_out, const QString& tip)
{
    for (int column = 0; column < table.columnCount(); ++column) {
        QFont font; // as large as the table's own
        font.setBold(stands_out || cells[column].startsWith(QStringLiteral("▲")));
        // A proof comes in parts, and most of them change nothing here; a new item lays the table out anew.
        if (const QTableWidgetItem* there = table.item(row, column);
            there && there->text() == cells[column] && there->font() == font && there->toolTip() == tip)
            continue;
        auto* item = new QTableWidgetItem(cells[column]);
        item->setFont(font);
        item->setToolTip(tip);
        table.setItem(row, column, item);
    }
}

FigureWords::FigureWords(const Sketch& sketch) : sketch_(sketch), units_(panels::unitsOf(sketch)) {}

QString FigureWords::flow(double flow_l_per_min, bool runs_forward) const
{
    const QString text = valueText(flow_l_per_min, Unit::l_per_min, units_);
    return runs_forward ? text : tr("▲ %1, does not run forward").arg(text);
}

QString FigureWords::outlet(const std::optional<double>& degC) const
{
    if (!degC)
        return tr("–");
    const auto limit = exceeded("outlet-over-limit", sketch_, *degC);
    return judged(valueText(*degC, Unit::degC, units_), limit,
                  valueText(limit.value_or(0), Unit::degC, units_));
}

QString FigureWords::cycles(double per_hour) const
{
    const auto limit = exceeded("cycles-over-4", sketch_, per_hour);
    return judged(withDecimalSign(QString::number(per_hour)), limit,
                  withDecimalSign(QString::number(limit.value_or(0))));
}

QString FigureWords::target(const std::optional<double>& hours) const
{
    return hours ? tr("after %1").arg(timeText(*hours)) : tr("▲ not in %1").arg(timeText(sketch_.plan.hours));
}

} // namespace siphonwright::warming
