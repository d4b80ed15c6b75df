#include "app/commissioning/commissioning_panel.h"

#include "app/commissioning/diagnosis_view.h"
#include "app/commissioning/readings_view.h"
#include "app/commissioning/step_list.h"
#include "app/commissioning/step_view.h"
#include "app/commissioning/words.h"
#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/text_size.h"
#include "app/panels/wrapped_row.h"

#include "core/layout/wording.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace siphonwright::commissioning {
namespace {

/// Whether what readings come to can differ: units and ticks do not count.
bool sameForReadings(Sketch a, Sketch b)
{
    for (Sketch* one : {&a, &b}) {
        one->units = UnitChoice::metric;
        one->sheet = {};
        one->notes.clear();
        one->photo.reset();
        std::erase_if(one->checklist.ticks, [](const Tick& tick) { return tick.step != "energise"; });
    }
    return a == b;
}

} // namespace

CommissioningPanel::CommissioningPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      heaters_(new QComboBox(this)),
      pages_(new QStackedWidget(this)),
      step_(new StepView(document, this)),
      steps_(new StepList(document, this)),
      readings_(new ReadingsView(document, this)),
      diagnosis_(new DiagnosisView(document, selection, this)),
      diagnoser_(new Diagnoser(this))
{
    layOut();
    connect(diagnoser_, &Diagnoser::ready, this, &CommissioningPanel::takeOutcome, Qt::QueuedConnection);
    connect(heaters_, &QComboBox::currentIndexChanged, this, &CommissioningPanel::refresh);
    connect(&document_, &Document::changed, this, &CommissioningPanel::refresh);
    connect(steps_, &StepList::printWanted, this, &CommissioningPanel::printWanted);
    connect(steps_, &StepList::exportWanted, this, &CommissioningPanel::exportWanted);
    connect(diagnosis_, &DiagnosisView::placeWanted, this, &CommissioningPanel::placeWanted);
    connect(steps_, &StepList::stepWanted, this, [this](const QString& id) {
        if (const WorkStep* step = stepById(id.toStdString())) {
            step_->show(*step);
            open(Page::step);
        }
    });
    open(Page::step);
    refresh();
}

void CommissioningPanel::layOut()
{
    heaters_->setObjectName(QStringLiteral("commissioning-heater"));
    heaters_->setAccessibleName(tr("Heater"));
    heaters_->setMinimumHeight(40);
    auto* group = new QButtonGroup(this);
    auto* row = new panels::WrappedRow;
    row->setSpacing(2);
    const std::array names = {tr("Step"), tr("List"), tr("Readings"), tr("Diagnosis")};
    const std::array<QWidget*, 4> widgets = {step_, steps_, readings_, diagnosis_};
    for (std::size_t i = 0; i < widgets.size(); ++i) {
        auto* tab = new QToolButton(this);
        tab->setObjectName(QStringLiteral("commissioning-tab-%1").arg(i));
        tab->setText(names.at(i));
        tab->setCheckable(true);
        tab->setMinimumHeight(44);
        tab->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        panels::setTextSize(*tab, 15);
        tab->setStyleSheet(QStringLiteral("QToolButton { border: 1px solid palette(mid); }"
                                          "QToolButton:checked { font-weight: 600; border: 2px solid "
                                          "palette(highlight); }"));
        group->addButton(tab);
        row->addWidget(tab);
        pages_->addWidget(widgets.at(i));
        tabs_.push_back(tab);
        connect(tab, &QToolButton::clicked, this, [this, i] { open(static_cast<Page>(i)); });
    }
    auto* stack = new QVBoxLayout(this);
    stack->setContentsMargins(4, 4, 4, 4);
    stack->setSpacing(4);
    stack->addLayout(row);
    stack->addWidget(heaters_);
    stack->addWidget(pages_, 1);
}

void CommissioningPanel::open(Page page)
{
    const auto index = static_cast<std::size_t>(page);
    tabs_.at(index)->setChecked(true);
    pages_->setCurrentIndex(static_cast<int>(index));
    const bool of_heater = page == Page::readings || page == Page::diagnosis;
    heaters_->setVisible(of_heater && heaters_->count() > 1);
}

void CommissioningPanel::restart()
{
    step_->showNext();
}

void CommissioningPanel::setLook(drawing::Look look)
{
    readings_->setLook(look);
}

Id CommissioningPanel::heater() const
{
    return heaters_->currentData().toString().toStdString();
}

void CommissioningPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
}

void CommissioningPanel::refresh()
{
    {
        const QSignalBlocker quiet(heaters_);
        const QString chosen = heaters_->currentData().toString();
        heaters_->clear();
        for (const Heater& one : document_.sketch().heaters)
            heaters_->addItem(inWords(nameOfHeater(one)), QString::fromStdString(one.id));
        heaters_->setCurrentIndex(std::max(heaters_->findData(chosen), heaters_->count() > 0 ? 0 : -1));
    }
    open(static_cast<Page>(pages_->currentIndex()));
    readings_->setHeater(heater());
    const bool wanted = isVisible() && !document_.sketch().readings.empty();
    const bool same = asked_ && asked_heater_ == heater() && sameForReadings(*asked_, document_.sketch());
    if (wanted && !same) {
        asked_ = document_.sketch();
        asked_heater_ = heater();
        diagnoser_->ask(*asked_, asked_heater_);
    }
    const bool of_heater = outcome_ && outcome_->heater == heater() && !document_.sketch().readings.empty();
    const bool of_before = of_heater && !sameForReadings(outcome_->sketch, document_.sketch());
    const Outcome* shown = of_heater ? &*outcome_ : nullptr;
    readings_->show(shown, of_before);
    diagnosis_->show(shown, wanted && (!shown || of_before), panels::unitsOf(document_.sketch()));
}

void CommissioningPanel::takeOutcome()
{
    if (std::optional<Outcome> fresh = diagnoser_->take()) {
        outcome_ = std::move(fresh);
        refresh();
    }
}

} // namespace siphonwright::commissioning
