#include "app/commissioning/step_view.h"

#include "app/commissioning/words.h"
#include "app/panels/field.h"
#include "app/panels/text_size.h"
#include "app/panels/wrapped_row.h"

#include "core/commissioning/checklist_text.h"

#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSettings>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::commissioning {
namespace {

constexpr int gloved_px = 48; ///< for a gloved finger
const char* const by_key = "commissioning/by";

int indexOf(const WorkStep& step)
{
    return static_cast<int>(&step - checklistSteps().data());
}

} // namespace

StepView::StepView(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      step_(&checklistSteps().front()),
      progress_(new QProgressBar(this)),
      place_(new QLabel(this)),
      title_(new QLabel(this)),
      caution_(new QLabel(this)),
      numbers_(new QLabel(this)),
      state_(new QLabel(this)),
      by_(new QLineEdit(this)),
      reason_(new QLineEdit(this)),
      all_the_same_(button(QStringLiteral("step-all-the-same"), tr("Done all the same"))),
      untick_(button(QStringLiteral("step-untick"), tr("Not done after all"))),
      back_(button(QStringLiteral("step-back"), tr("◀ Back"))),
      next_(button(QStringLiteral("step-next"), tr("Next ▶"))),
      done_(button(QStringLiteral("step-done"), tr("✓ Done")))
{
    layOut();
    by_->setText(QSettings().value(QLatin1String(by_key)).toString());
    connect(by_, &QLineEdit::editingFinished, this,
            [this] { QSettings().setValue(QLatin1String(by_key), by_->text()); });
    connect(reason_, &QLineEdit::textChanged, this,
            [this](const QString& reason) { all_the_same_->setEnabled(!reason.trimmed().isEmpty()); });
    connect(done_, &QPushButton::clicked, this, &StepView::done);
    connect(all_the_same_, &QPushButton::clicked, this, &StepView::doneAllTheSame);
    connect(untick_, &QPushButton::clicked, this, &StepView::takeBack);
    connect(back_, &QPushButton::clicked, this, [this] { move(-1); });
    connect(next_, &QPushButton::clicked, this, [this] { move(1); });
    connect(&document_, &Document::changed, this, &StepView::refresh);
    connect(&document_, &Document::analysed, this, &StepView::refresh);
    showNext();
}

QPushButton* StepView::button(const QString& name, const QString& words)
{
    auto* out = new QPushButton(words, this);
    out->setObjectName(name);
    out->setMinimumHeight(gloved_px);
    panels::setTextSize(*out, 16, true);
    return out;
}

void StepView::layOut()
{
    const auto words = [](QLabel* label, const char* name, int px, bool strong = false) {
        label->setObjectName(QString::fromLatin1(name));
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
        panels::setTextSize(*label, px, strong);
    };
    words(place_, "step-place", 14);
    words(title_, "step-title", 24, true);
    words(caution_, "step-caution", 16, true);
    caution_->setStyleSheet(QStringLiteral("border: 2px solid palette(text); padding: 8px;"));
    words(numbers_, "step-numbers", 16);
    words(state_, "step-state", 15);
    progress_->setObjectName(QStringLiteral("step-progress"));
    progress_->setAccessibleName(tr("Steps done"));
    progress_->setTextVisible(false);
    progress_->setFixedHeight(8);
    for (QLineEdit* line : {by_, reason_}) {
        line->setMinimumHeight(gloved_px - 4);
        panels::setTextSize(*line, 15);
    }
    by_->setObjectName(QStringLiteral("step-by"));
    by_->setPlaceholderText(tr("Done by"));
    by_->setAccessibleName(tr("Done by"));
    reason_->setObjectName(QStringLiteral("step-reason"));
    reason_->setPlaceholderText(tr("Why it is done before its turn"));
    reason_->setAccessibleName(tr("Why it is done before its turn"));

    auto* middle = new QWidget(this);
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(8, 4, 8, 4);
    column->setSpacing(10);
    for (QWidget* one :
         std::initializer_list<QWidget*>{title_, caution_, state_, numbers_, reason_, all_the_same_, untick_})
        column->addWidget(one);
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(middle);

    auto* ways = new panels::WrappedRow;
    for (QPushButton* way : {back_, next_})
        way->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    ways->addWidget(back_);
    ways->addWidget(next_);
    auto* stack = new QVBoxLayout(this);
    stack->setContentsMargins(4, 4, 4, 4);
    stack->setSpacing(6);
    stack->addWidget(progress_);
    stack->addWidget(place_);
    stack->addWidget(scroll, 1);
    stack->addWidget(by_);
    stack->addWidget(done_);
    stack->addLayout(ways);
}

void StepView::show(const WorkStep& step)
{
    step_ = &step;
    remark_.clear();
    reason_->clear();
    refresh();
    Q_EMIT stepChanged();
}

void StepView::showNext()
{
    const Progress progress = progressOf(document_.sketch().checklist);
    show(progress.next ? *progress.next : checklistSteps().back());
}

void StepView::move(int by)
{
    const int count = static_cast<int>(checklistSteps().size());
    const int to = std::clamp(indexOf(*step_) + by, 0, count - 1);
    show(checklistSteps()[static_cast<std::size_t>(to)]);
}

void StepView::sayNumbers()
{
    const UnitSystem units = panels::unitsOf(document_.sketch());
    QStringList lines;
    for (const Message& line : textOf(*step_, document_.sketch(), document_.analysis()))
        lines << tr("• %1").arg(text(line, units));
    numbers_->setText(lines.join(QStringLiteral("\n")));
    numbers_->setVisible(!lines.isEmpty());
}

void StepView::refresh()
{
    const Checklist& list = document_.sketch().checklist;
    const Progress progress = progressOf(list);
    const Tick* tick = tickOf(list, step_->id);
    const std::vector<const WorkStep*> lacking = lackingFor(list, step_->id);
    progress_->setRange(0, static_cast<int>(progress.total));
    progress_->setValue(static_cast<int>(progress.done));
    place_->setText(
        tr("Step %1 of %2 · %3 done").arg(indexOf(*step_) + 1).arg(progress.total).arg(progress.done));
    title_->setText(text(step_->title));
    caution_->setText(tr("⚠ %1").arg(text(step_->caution)));
    sayNumbers();

    QStringList state;
    if (tick) {
        state << (tick->by.empty()
                      ? tr("✓ Done %1").arg(shownTime(tick->time))
                      : tr("✓ Done %1 by %2").arg(shownTime(tick->time), QString::fromStdString(tick->by)));
        if (!tick->override_reason.empty())
            state << tr("Out of order: %1").arg(QString::fromStdString(tick->override_reason));
    } else if (!lacking.empty()) {
        QStringList names;
        for (const WorkStep* one : lacking)
            names << tr("• %1").arg(text(one->title));
        state << tr("Not yet. First:") << names;
    }
    if (!remark_.isEmpty())
        state << remark_;
    state_->setText(state.join(u'\n'));
    state_->setVisible(!state.isEmpty());
    const bool blocked = !tick && !lacking.empty();
    reason_->setVisible(blocked);
    all_the_same_->setVisible(blocked);
    all_the_same_->setEnabled(!reason_->text().trimmed().isEmpty());
    untick_->setVisible(tick != nullptr);
    done_->setEnabled(!tick && lacking.empty());
    back_->setEnabled(indexOf(*step_) > 0);
    next_->setEnabled(indexOf(*step_) + 1 < static_cast<int>(progress.total));
}

void StepView::tickWith(const QString& reason)
{
    Tick wanted;
    wanted.step = std::string(step_->id);
    wanted.time = isoTime(QDateTime::currentDateTime());
    wanted.by = by_->text().trimmed().toStdString();
    wanted.override_reason = reason.trimmed().toStdString();
    Ticked ticked;
    document_.apply(tr("Tick \"%1\"").arg(text(step_->title)),
                    [&](Sketch& sketch) { ticked = tick(sketch.checklist, wanted); });
    if (!ticked.done) {
        remark_ = text(ticked.message, panels::unitsOf(document_.sketch()));
        refresh();
        return;
    }
    if (indexOf(*step_) + 1 < static_cast<int>(checklistSteps().size()))
        move(1);
    else
        refresh();
}

void StepView::done()
{
    tickWith({});
}

void StepView::doneAllTheSame()
{
    tickWith(reason_->text());
}

void StepView::takeBack()
{
    Ticked ticked;
    document_.apply(tr("Take \"%1\" back").arg(text(step_->title)),
                    [&](Sketch& sketch) { ticked = untick(sketch.checklist, step_->id); });
    remark_ = text(ticked.message, panels::unitsOf(document_.sketch()));
    refresh();
}

} // namespace siphonwright::commissioning
