#include "app/commissioning/step_list.h"

#include "app/commissioning/words.h"
#include "app/panels/text_size.h"
#include "app/panels/wrapped_row.h"

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace siphonwright::commissioning {

StepList::StepList(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), progress_(new QLabel(this)), list_(new QListWidget(this))
{
    progress_->setObjectName(QStringLiteral("list-progress"));
    panels::setTextSize(*progress_, 16, true);
    list_->setObjectName(QStringLiteral("step-list"));
    list_->setAccessibleName(tr("Steps of the work"));
    list_->setWordWrap(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setStyleSheet(QStringLiteral("QListWidget::item { min-height: 44px; padding: 0 6px; }"));
    panels::setTextSize(*list_, 14);
    auto* print = new QPushButton(tr("Print…"), this);
    print->setObjectName(QStringLiteral("checklist-print"));
    auto* save = new QPushButton(tr("Save as PDF…"), this);
    save->setObjectName(QStringLiteral("checklist-export"));
    auto* row = new panels::WrappedRow;
    for (QPushButton* one : {print, save}) {
        one->setMinimumHeight(44);
        one->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        row->addWidget(one);
    }
    auto* stack = new QVBoxLayout(this);
    stack->setContentsMargins(4, 4, 4, 4);
    stack->addWidget(progress_);
    stack->addWidget(list_, 1);
    stack->addLayout(row);
    connect(print, &QPushButton::clicked, this, &StepList::printWanted);
    connect(save, &QPushButton::clicked, this, &StepList::exportWanted);
    const auto open = [this](const QListWidgetItem* item) {
        Q_EMIT stepWanted(item->data(Qt::UserRole).toString());
    };
    connect(list_, &QListWidget::itemClicked, this, open);
    connect(list_, &QListWidget::itemActivated, this, open);
    connect(&document_, &Document::changed, this, &StepList::refresh);
    refresh();
}

void StepList::refresh()
{
    const Checklist& checklist = document_.sketch().checklist;
    const Progress progress = progressOf(checklist);
    progress_->setText(tr("%1 of %2 steps done").arg(progress.done).arg(progress.total));
    const int row = list_->currentRow();
    list_->clear();
    for (const WorkStep& step : checklistSteps()) {
        const Tick* tick = tickOf(checklist, step.id);
        QString words = (tick ? tr("☑  %1") : tr("☐  %1")).arg(text(step.title));
        if (tick && !tick->by.empty())
            words += tr("\n      %1, %2").arg(shownTime(tick->time), QString::fromStdString(tick->by));
        else if (tick)
            words += tr("\n      %1").arg(shownTime(tick->time));
        if (tick && !tick->override_reason.empty())
            words += tr("\n      ▲ out of order: %1").arg(QString::fromStdString(tick->override_reason));
        else if (tick && !lackingFor(checklist, step.id).empty())
            words += tr("\n      ▲ what it rests on is open again");
        else if (!tick && !lackingFor(checklist, step.id).empty())
            words += tr("\n      waits for steps before it");
        auto* item = new QListWidgetItem(words, list_);
        item->setData(Qt::UserRole, text(step.id));
        QFont font; // as large as the list's own
        font.setBold(progress.next == &step);
        item->setFont(font);
    }
    list_->setCurrentRow(row);
}

} // namespace siphonwright::commissioning
