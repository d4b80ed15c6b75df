#include "app/warming/plan_form.h"

#include "app/language/language.h"
#include "app/panels/field.h"

#include <QGridLayout>
#include <QLabel>

namespace siphonwright::warming {
namespace {

constexpr double coldest_degC = -80;
constexpr double hottest_degC = 150;
constexpr double most_wind_m_per_s = 100;
constexpr double least_h = 0.1; // as in the file
constexpr double most_h = 240;
constexpr int edit_width_px = 84;

/// A fact typed here is somebody's own figure, no longer a template's.
void enter(Fact<double>& fact, std::optional<double> value)
{
    fact.value = value;
    if (fact.source == Source::typical)
        fact.source = Source::assumed;
}

} // namespace

PlanForm::PlanForm(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), problem_(new QLabel(this))
{
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(4, 2, 4, 2);
    grid->setHorizontalSpacing(6);
    grid->setVerticalSpacing(3);
    auto* ambient = add(
        tr("Air"), "plan-ambient", tr("Temperature of the air around the engine"), Unit::degC,
        [](const Sketch& s) { return s.site.ambient_degC.value; },
        [](Sketch& s, std::optional<double> value) { enter(s.site.ambient_degC, value); });
    ambient->setRange(coldest_degC, hottest_degC);
    ambient->setMayBeEmpty(true);
    auto* wind = add(
        tr("Wind"), "plan-wind", tr("Speed of the wind; nothing entered counts as still air"), Unit::m_per_s,
        [](const Sketch& s) { return s.site.wind_m_per_s.value; },
        [](Sketch& s, std::optional<double> value) { enter(s.site.wind_m_per_s, value); });
    wind->setRange(0, most_wind_m_per_s);
    wind->setMayBeEmpty(true);
    wind->setPlaceholderText(tr("still"));
    auto* start = add(
        tr("Start"), "plan-start", tr("Of engine and coolant; nothing entered: as cold as the air"),
        Unit::degC, [](const Sketch& s) { return s.plan.start_degC; },
        [](Sketch& s, std::optional<double> value) { s.plan.start_degC = value; });
    start->setRange(coldest_degC, hottest_degC);
    start->setMayBeEmpty(true);
    start->setPlaceholderText(tr("as the air"));
    add(
        tr("Target"), "plan-target", tr("Wanted temperature of the engine block"), Unit::degC,
        [](const Sketch& s) { return std::optional(s.plan.target_degC); },
        [](Sketch& s, std::optional<double> value) { s.plan.target_degC = *value; })
        ->setRange(coldest_degC, hottest_degC);
    add(
        tr("Over"), "plan-hours", tr("How long the warm-up is followed"), Unit::hour,
        [](const Sketch& s) { return std::optional(s.plan.hours); },
        [](Sketch& s, std::optional<double> value) { s.plan.hours = *value; })
        ->setRange(least_h, most_h);
    problem_->setProperty("role", QStringLiteral("problem"));
    problem_->setWordWrap(true);
    problem_->hide();
    grid->addWidget(problem_, 3, 0, 1, 4);
    grid->setRowStretch(4, 1);
    grid->setColumnStretch(4, 1);
    connect(&document_, &Document::changed, this, &PlanForm::refresh);
    refresh();
}

panels::QuantityEdit* PlanForm::add(const QString& label, const char* name, const QString& tip, Unit unit,
                                    std::function<std::optional<double>(const Sketch&)> get,
                                    std::function<void(Sketch&, std::optional<double>)> set)
{
    auto* edit = new panels::QuantityEdit(unit, this);
    edit->setObjectName(QLatin1String(name));
    edit->setAccessibleName(label);
    edit->setToolTip(tip);
    edit->setFixedWidth(edit_width_px);
    auto* title = new QLabel(label, this);
    title->setBuddy(edit);
    title->setToolTip(tip);
    auto* grid = static_cast<QGridLayout*>(layout());
    const int index = static_cast<int>(rows_.size());
    grid->addWidget(title, index / 2, index % 2 * 2);
    grid->addWidget(edit, index / 2, index % 2 * 2 + 1);
    connect(edit, &panels::QuantityEdit::committed, this, [this, edit, label, set] {
        document_.apply(tr("Change %1").arg(language::withinSentence(label)),
                        [&](Sketch& sketch) { set(sketch, edit->value()); });
    });
    connect(edit, &panels::QuantityEdit::problemChanged, this, [this](const QString& sentence) {
        problem_->setText(sentence);
        problem_->setVisible(!sentence.isEmpty());
    });
    rows_.push_back({edit, std::move(get)});
    return edit;
}

void PlanForm::askForAmbient()
{
    rows_.front().edit->setFocus();
    rows_.front().edit->selectAll();
}

void PlanForm::refresh()
{
    for (const Row& row : rows_) {
        row.edit->setUnits(panels::unitsOf(document_.sketch()));
        row.edit->setValue(row.get(document_.sketch()));
    }
}

} // namespace siphonwright::warming
