#include "app/warming/grade_table.h"

#include "app/panels/field.h"
#include "app/warming/figure_table.h"
#include "app/warming/words.h"

#include "core/quantity/constants.h"
#include "core/running/loop_figures.h"

#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace siphonwright::warming {
namespace {

QString wordsOf(Grade grade, UnitSystem units)
{
    const auto percent = [units](double value) { return valueText(std::abs(value), Unit::percent, units); };
    if (grade.along_percent != 0)
        return grade.along_percent > 0 ? GradeTable::tr("Nose up %1").arg(percent(grade.along_percent))
                                       : GradeTable::tr("Nose down %1").arg(percent(grade.along_percent));
    if (grade.across_percent != 0)
        return grade.across_percent > 0
                   ? GradeTable::tr("Right side up %1").arg(percent(grade.across_percent))
                   : GradeTable::tr("Left side up %1").arg(percent(grade.across_percent));
    return GradeTable::tr("Level");
}

/// Of the loops that can be computed: the least flow, the hottest outlet.
struct Steady {
    double flow_l_per_min = 0;
    double outlet_degC = 0;
    bool runs = false;
};
std::optional<Steady> steadyOf(const Running& running)
{
    std::optional<Steady> out;
    for (const LoopRun& run : running.loops) {
        if (!run.missing.empty())
            continue;
        const Circulation& found = run.circulation;
        const bool runs = found.status == CirculationStatus::circulates;
        if (!out)
            out = Steady{flowByVolume_l_per_min(found), found.heater_outlet_degC, runs};
        out->flow_l_per_min = std::min(out->flow_l_per_min, flowByVolume_l_per_min(found));
        out->outlet_degC = std::max(out->outlet_degC, found.heater_outlet_degC);
        out->runs = out->runs && runs;
    }
    return out;
}

} // namespace

GradeTable::GradeTable(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      remark_(new QLabel(this)),
      table_(figureTable({tr("Parked"), tr("Flow, warm"), tr("Outlet, warm"), tr("Peak outlet"),
                          tr("Cycles an hour"), tr("Target reached")},
                         this))
{
    table_->setObjectName(QStringLiteral("grade-table"));
    table_->setAccessibleName(tr("On grades"));
    remark_->setObjectName(QStringLiteral("grade-remark"));
    remark_->setWordWrap(true);
    remark_->setProperty("role", QStringLiteral("faint"));
    remark_->setContentsMargins(8, 0, 4, 0);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 2, 0, 0);
    column->setSpacing(2);
    column->addWidget(remark_);
    column->addWidget(table_, 1);
    connect(table_, &QTableWidget::cellActivated, this, &GradeTable::showGrade);
    connect(&document_, &Document::changed, this, &GradeTable::refresh);
    connect(&document_, &Document::analysed, this, &GradeTable::refresh);
    refresh();
}

void GradeTable::refresh()
{
    const std::optional<Proof>& proof = document_.proof();
    const bool computed = proof && proof->graded && !proof->warm_up.result.loops.empty();
    table_->setRowCount(computed ? static_cast<int>(proof->at_ends.size()) + 1 : 0);
    table_->setEnabled(document_.proofIsCurrent());
    remark_->setText(!computed                    ? tr("The table comes when a warm-up can be computed.")
                     : document_.proofIsCurrent() ? tr("Filled and turned on where it is parked, at the ends "
                                                       "of the grades judged")
                                                  : tr("of the drawing as it was"));
    if (!computed)
        return;
    fill(0, {}, proof->running, proof->warm_up);
    for (std::size_t i = 0; i < proof->at_ends.size(); ++i) {
        const GradeRun& end = proof->at_ends[i];
        fill(static_cast<int>(i) + 1, end.grade, end.running, end.warm_up);
    }
}

void GradeTable::fill(int row, Grade grade, const Running& running, const EngineWarmUp& warm)
{
    const Sketch& sketch = document_.sketch();
    const FigureWords words(sketch);
    std::optional<double> peak_degC;
    double cycles = 0;
    for (const LoopOutcome& outcome : warm.result.loops) {
        if (outcome.peak_outlet_degC)
            peak_degC = std::max(peak_degC.value_or(*outcome.peak_outlet_degC), *outcome.peak_outlet_degC);
        cycles = std::max(cycles, outcome.cycles_per_hour);
    }
    const std::optional<Steady> steady = steadyOf(running);
    QStringList cells{wordsOf(grade, panels::unitsOf(sketch))};
    cells << (steady ? words.flow(steady->flow_l_per_min, steady->runs) : tr("–"))
          << words.outlet(steady && steady->runs ? std::optional(steady->outlet_degC) : std::nullopt)
          << words.outlet(peak_degC) << words.cycles(cycles)
          << words.target(warm.result.target_s ? std::optional(*warm.result.target_s / s_per_h)
                                               : std::nullopt);
    showRow(*table_, row, cells, row == 0, tr("Double-click to see the drawing parked like this"));
}

void GradeTable::showGrade(int row)
{
    const std::optional<Proof>& proof = document_.proof();
    if (!proof || row < 0 || static_cast<std::size_t>(row) > proof->at_ends.size())
        return;
    document_.setGrade(row == 0 ? Grade{} : proof->at_ends[static_cast<std::size_t>(row) - 1].grade);
}

} // namespace siphonwright::warming
