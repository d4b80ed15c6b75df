#include "app/commissioning/diagnosis_view.h"

#include "app/commissioning/targets.h"
#include "app/commissioning/words.h"
#include "app/language/in_words.h"
#include "app/panels/text_size.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <cmath>

namespace siphonwright::commissioning {
namespace {

QString percent(double share)
{
    // Only the faults listed are weighed: never all of it.
    return share > 0.99 ? QStringLiteral("> 99 %") : QStringLiteral("%1 %").arg(std::round(100 * share));
}

} // namespace

DiagnosisView::DiagnosisView(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      limits_(new QLabel(this)),
      state_(new QLabel(this)),
      next_(new QLabel(this)),
      groups_(new QVBoxLayout)
{
    limits_->setObjectName(QStringLiteral("diagnosis-limits"));
    state_->setObjectName(QStringLiteral("diagnosis-state"));
    next_->setObjectName(QStringLiteral("diagnosis-next"));
    for (QLabel* one : {limits_, state_, next_}) {
        one->setWordWrap(true);
        one->setTextFormat(Qt::PlainText);
        panels::setTextSize(*one, 15);
    }
    for (QLabel* one : {limits_, next_}) {
        panels::setTextSize(*one, 16, true);
        one->setStyleSheet(QStringLiteral("border: 2px solid palette(text); padding: 8px;"));
    }
    auto* inside = new QWidget(this);
    auto* stack = new QVBoxLayout(inside);
    stack->setContentsMargins(8, 6, 8, 6);
    stack->setSpacing(8);
    stack->addWidget(limits_);
    stack->addWidget(state_);
    stack->addWidget(next_);
    stack->addLayout(groups_);
    stack->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(inside);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(scroll);
    show(nullptr, false, UnitSystem::metric);
}

QLabel* DiagnosisView::label(const QString& words, int text_px, bool strong)
{
    auto* out = new QLabel(words, this);
    out->setWordWrap(true);
    out->setTextFormat(Qt::PlainText);
    panels::setTextSize(*out, text_px, strong);
    return out;
}

void DiagnosisView::clear()
{
    while (QLayoutItem* item = groups_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

void DiagnosisView::showLimits(const std::vector<Message>& broken, UnitSystem units)
{
    QStringList lines;
    for (const Message& one : broken)
        lines << markOf(Fit::over_limit) + u' ' + text(one, units);
    limits_->setText(lines.join(u'\n'));
    limits_->setVisible(!lines.isEmpty());
}

QString DiagnosisView::stateOf(const Diagnosis& found) const
{
    if (!found.missing.empty())
        return tr("Not diagnosed: %1.").arg(inWords(found.missing));
    if (found.nothing_fits)
        return tr("▲ None of the faults listed explains these readings well.");
    return tr("What would give these readings, by simulation of each fault on this drawing. Estimates: "
              "make sure before a part is replaced.");
}

void DiagnosisView::show(const Outcome* outcome, bool computing, UnitSystem units)
{
    clear();
    next_->setVisible(false);
    showLimits(outcome ? outcome->judged.evidence.broken_limits : std::vector<Message>(), units);
    if (!outcome || !outcome->diagnosed) {
        state_->setText(computing || outcome ? tr("The faults are being simulated…")
                                             : tr("A diagnosis appears when there are readings."));
        return;
    }
    const Diagnosis& found = outcome->diagnosis;
    state_->setText(computing ? tr("Of the readings as they were. ") + stateOf(found) : stateOf(found));
    if (found.next) {
        next_->setText(tr("Next: %1").arg(text(found.next->words, units)));
        next_->setVisible(true);
    }
    if (found.nothing_fits)
        groups_->addWidget(label(tr("The nearest of those listed:"), 15));
    constexpr double worth_showing = 0.01;
    for (const SuspectGroup& group : found.groups)
        if (group.probability >= worth_showing)
            addGroup(group, found.shareOf(group), units);
}

QWidget* DiagnosisView::lineFor(const Suspect& suspect, bool first, UnitSystem units)
{
    auto* line = new QWidget(this);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(0, 0, 0, 0);
    const QString title = text(suspect.fault.title, units);
    row->addWidget(first ? label(title, 17, true) : label(tr("or: %1").arg(title), 14), 1);
    if (suspect.fault.part.kind == PartKind::nothing)
        return line;
    auto* button = new QPushButton(first ? tr("Show on the\ndrawing") : tr("Show"), line);
    button->setObjectName(QStringLiteral("show:") + QString::fromStdString(suspect.fault.id));
    button->setAccessibleName(tr("Show on the drawing: %1").arg(title));
    button->setMinimumSize(first ? 104 : 64, least_target_px);
    connect(button, &QPushButton::clicked, this, [this, part = suspect.fault.part, at = suspect.fault.at] {
        selection_.select(part);
        if (at)
            Q_EMIT placeWanted({at->x, at->z});
    });
    row->addWidget(button);
    return line;
}

QLayout* DiagnosisView::chanceOf(double share)
{
    auto* chance = new QHBoxLayout;
    auto* bar = new QProgressBar(this);
    bar->setRange(0, 1000);
    bar->setValue(static_cast<int>(std::lround(1000 * share)));
    bar->setTextVisible(false);
    bar->setFixedHeight(14);
    bar->setAccessibleName(tr("Probability %1").arg(percent(share)));
    auto* figure = label(percent(share), 20, true);
    figure->setObjectName(QStringLiteral("share"));
    figure->setMinimumWidth(64);
    figure->setWordWrap(false);
    chance->addWidget(figure);
    chance->addWidget(bar, 1);
    return chance;
}

void DiagnosisView::addGroup(const SuspectGroup& group, std::optional<double> share, UnitSystem units)
{
    auto* frame = new QFrame(this);
    frame->setObjectName(QStringLiteral("suspects"));
    auto* stack = new QVBoxLayout(frame);
    stack->setContentsMargins(0, 6, 0, 6);
    if (share)
        stack->addLayout(chanceOf(*share));
    const Suspect& first = group.members.front();
    stack->addWidget(lineFor(first, true, units));
    constexpr int words_px = 14;
    stack->addWidget(label(tr("Why: %1").arg(text(first.why, units)), words_px));
    stack->addWidget(label(tr("Make sure: %1").arg(text(first.check, units)), words_px));
    stack->addWidget(label(tr("Then: %1").arg(text(first.fix, units)), words_px));
    if (group.members.size() > 1)
        stack->addWidget(label(tr("These readings cannot tell it from:"), words_px));
    for (std::size_t i = 1; i < group.members.size(); ++i)
        stack->addWidget(lineFor(group.members[i], false, units));
    groups_->addWidget(frame);
}

} // namespace siphonwright::commissioning
