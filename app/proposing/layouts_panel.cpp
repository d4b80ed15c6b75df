#include "app/proposing/layouts_panel.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/proposing/layout_choices.h"
#include "app/proposing/layout_words.h"

#include "core/layout/wording.h"

#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace siphonwright::proposing {
namespace {

constexpr int rule_role = Qt::UserRole;

/// The same drawing, whatever units it is shown in?
bool sameDrawing(const Sketch& a, const Sketch& b)
{
    if (a.units == b.units)
        return a == b;
    Sketch other = b;
    other.units = a.units;
    return a == other;
}

/// Of all its rows: what it does not need is left to the details.
int heightOf(const QListWidget& list)
{
    int height_px = 2 * list.frameWidth() + list.spacing();
    for (int row = 0; row < list.count(); ++row)
        height_px += list.visualItemRect(list.item(row)).height() + 2 * list.spacing();
    return std::max(height_px, list.minimumHeight());
}

} // namespace

LayoutsPanel::LayoutsPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      choices_(new LayoutChoices(document, this)),
      propose_(new QPushButton(tr("&Propose"), this)),
      stop_(new QPushButton(tr("S&top"), this)),
      progress_(new QProgressBar(this)),
      state_(new QLabel(this)),
      list_(new QListWidget(this)),
      split_(new QSplitter(Qt::Vertical, this)),
      details_(new QLabel(this)),
      take_(new QPushButton(tr("T&ake this layout"), this)),
      proposer_(new Proposer(this))
{
    build();
    connect(proposer_, &Proposer::ready, this, &LayoutsPanel::takeAnswer, Qt::QueuedConnection);
    connect(propose_, &QPushButton::clicked, this, &LayoutsPanel::start);
    connect(stop_, &QPushButton::clicked, this, [this] { stop(tr("Stopped. The drawing is as it was.")); });
    connect(take_, &QPushButton::clicked, this, &LayoutsPanel::takeLayout);
    connect(choices_, &LayoutChoices::changed, this, &LayoutsPanel::choicesChanged);
    connect(choices_, &LayoutChoices::areaWanted, this, &LayoutsPanel::areaWanted);
    connect(list_, &QListWidget::currentRowChanged, this, &LayoutsPanel::rowChosen);
    connect(list_, &QListWidget::itemActivated, this, &LayoutsPanel::activate);
    connect(&document_, &Document::changed, this, &LayoutsPanel::documentChanged);
    refresh();
}

void LayoutsPanel::build()
{
    propose_->setObjectName(QStringLiteral("layout-propose"));
    propose_->setToolTip(tr("Look for layouts that break no rule"));
    stop_->setObjectName(QStringLiteral("layout-stop"));
    stop_->setToolTip(tr("Stop looking (Escape)"));
    progress_->setObjectName(QStringLiteral("layout-progress"));
    progress_->setAccessibleName(tr("Search for layouts"));
    progress_->setTextVisible(false);
    progress_->setMaximumHeight(14);
    state_->setObjectName(QStringLiteral("layout-state"));
    state_->setWordWrap(true);
    state_->setTextFormat(Qt::PlainText);
    list_->setObjectName(QStringLiteral("layout-list"));
    list_->setAccessibleName(tr("Proposed layouts"));
    list_->setWordWrap(true);
    list_->setFrameShape(QFrame::NoFrame);
    list_->setSpacing(2);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setMinimumHeight(60);
    list_->setResizeMode(QListView::Adjust);
    list_->setTextElideMode(Qt::ElideNone);
    details_->setObjectName(QStringLiteral("layout-details"));
    details_->setWordWrap(true);
    details_->setTextFormat(Qt::PlainText);
    details_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    details_->setContentsMargins(4, 2, 4, 2);
    take_->setObjectName(QStringLiteral("layout-take"));
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumHeight(40);
    scroll->setAccessibleName(tr("What it changes and what is left"));
    scroll->setWidget(details_);
    split_->setChildrenCollapsible(false);
    split_->addWidget(list_);
    split_->addWidget(scroll);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(propose_, 1);
    buttons->addWidget(stop_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 4);
    column->setSpacing(4);
    column->addWidget(choices_);
    column->addLayout(buttons);
    column->addWidget(progress_);
    column->addWidget(state_);
    column->addWidget(split_, 1);
    column->addWidget(take_);
}

void LayoutsPanel::begin()
{
    if (!busy() && !isCurrent() && choices_->options())
        start();
    if (busy())
        stop_->setFocus();
    else
        (list_->count() > 0 ? static_cast<QWidget*>(list_) : propose_)->setFocus();
}

void LayoutsPanel::setArea(Vec2 least, Vec2 most)
{
    choices_->setArea(least, most);
    start();
    stop_->setFocus();
}

void LayoutsPanel::start()
{
    std::optional<ProposeOptions> options = choices_->options();
    if (!options)
        return refresh();
    found_.reset();
    taken_.reset();
    stopped_.clear();
    asked_for_ = document_.sketch();
    choices_as_asked_ = true;
    search_ = proposer_->ask(*asked_for_, std::move(*options));
    progress_->setRange(0, 0);
    const bool by_button = propose_->hasFocus();
    showProposals();
    if (by_button)
        stop_->setFocus();
}

void LayoutsPanel::stop(const QString& why)
{
    if (!busy())
        return;
    proposer_->cancel();
    search_ = 0;
    stopped_ = why;
    refresh();
}

void LayoutsPanel::takeAnswer()
{
    std::optional<Proposer::Answer> answer = proposer_->take();
    if (!answer || answer->search != search_)
        return;
    if (!answer->proposals) {
        progress_->setRange(0, static_cast<int>(answer->progress.of));
        progress_->setValue(static_cast<int>(answer->progress.tried));
        state_->setText(tr("Looking for layouts: %1 of %2 places tried, %3 found…")
                            .arg(answer->progress.tried)
                            .arg(answer->progress.of)
                            .arg(answer->progress.found));
        return;
    }
    search_ = 0;
    found_ = std::move(answer->proposals);
    showProposals();
}

/// Proposals, or the rules in the way of any.
void LayoutsPanel::showProposals()
{
    list_->clear();
    if (found_) {
        const UnitSystem units = panels::unitsOf(document_.sketch());
        std::size_t number = 0;
        for (const Proposal& proposal : found_->best_first)
            new QListWidgetItem(rowText(++number, proposal, units), list_);
        for (const RuleInWay& rule : found_->in_conflict) {
            auto* item = new QListWidgetItem(QStringLiteral("■ ") + inWords(rule.text, units), list_);
            item->setData(rule_role, QString::fromStdString(rule.rule));
            item->setToolTip(tr("Press Enter to read the rule"));
        }
        if (!found_->best_first.empty())
            list_->setCurrentRow(0);
    }
    refresh();
    divide();
}

/// The list gets what its rows need, and no more than three fifths where the details need room too.
void LayoutsPanel::divide()
{
    const int all_px = split_->height();
    const int wanted_px = heightOf(*list_);
    const int list_px = chosen() ? std::min(wanted_px, all_px * 3 / 5) : all_px;
    split_->setSizes({list_px, all_px - list_px});
}

void LayoutsPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    divide();
}

bool LayoutsPanel::isCurrent() const
{
    return found_ && choices_as_asked_ && asked_for_ && sameDrawing(*asked_for_, document_.sketch());
}

const Proposal* LayoutsPanel::chosen() const
{
    const int row = list_->currentRow();
    if (!found_ || row < 0 || static_cast<std::size_t>(row) >= found_->best_first.size())
        return nullptr;
    return &found_->best_first[static_cast<std::size_t>(row)];
}

void LayoutsPanel::documentChanged()
{
    stop(tr("The drawing was changed meanwhile. Propose again."));
    if (found_ && taken_ && *taken_ < found_->best_first.size() &&
        !sameDrawing(found_->best_first[*taken_].sketch, document_.sketch()))
        taken_.reset();
    const int row = list_->currentRow();
    showProposals();
    list_->setCurrentRow(row);
}

void LayoutsPanel::choicesChanged()
{
    stop(tr("The choices were changed meanwhile. Propose again."));
    choices_as_asked_ = false;
    refresh();
}

void LayoutsPanel::rowChosen()
{
    refresh();
    if (!found_ || list_->currentRow() < 0)
        return;
    const auto row = static_cast<std::size_t>(list_->currentRow());
    if (found_->best_first.empty() && row < found_->in_conflict.size() && list_->hasFocus())
        selection_.select(found_->in_conflict[row].part);
}

void LayoutsPanel::activate(QListWidgetItem* item)
{
    const QString rule = item->data(rule_role).toString();
    if (rule.isEmpty())
        takeLayout();
    else
        Q_EMIT ruleWanted(rule);
}

void LayoutsPanel::takeLayout()
{
    const Proposal* proposal = chosen();
    if (!proposal || !isCurrent())
        return;
    const UnitSystem units = panels::unitsOf(document_.sketch());
    const QString what = tr("Take a layout: %1").arg(inWords(proposal->text, units));
    taken_ = static_cast<std::size_t>(list_->currentRow());
    document_.apply(what, [layout = proposal->sketch](Sketch& sketch) {
        const UnitChoice units_now = sketch.units;
        sketch = layout;
        sketch.units = units_now;
    });
    refresh();
}

QString LayoutsPanel::stateText() const
{
    if (busy())
        return tr("Looking for layouts…");
    if (!stopped_.isEmpty() && !found_)
        return stopped_;
    if (const QString lacking = choices_->lacking(); !lacking.isEmpty())
        return lacking;
    if (!found_)
        return tr("Proposes heater place, hoses, bore, valves and clips that break no rule, on every grade "
                  "that is judged.");
    if (!found_->missing.empty())
        return tr("Nothing can be proposed: %1.").arg(inWords(found_->missing));
    if (taken_)
        return tr("Layout %1 was taken; one undo takes it back. Propose again for the drawing as it is now.")
            .arg(*taken_ + 1);
    if (!isCurrent())
        return choices_as_asked_ ? tr("▲ This list is for an earlier drawing. Propose again to take one.")
                                 : tr("▲ This list is for other choices. Propose again to take one.");
    if (found_->best_first.empty())
        return tr(
            "Every layout breaks a rule. In the way of those that came farthest (Enter opens the rule):");
    if (!found_->best_first.front().sound_over_envelope)
        return tr("▲ No layout holds on every grade that is judged. These break no rule on the level:");
    return found_->best_first.size() == 1
               ? tr("One layout breaks no rule.")
               : tr("%1 layouts break no rule, the best first.").arg(found_->best_first.size());
}

void LayoutsPanel::refresh()
{
    const bool current = isCurrent();
    const Proposal* proposal = chosen();
    const bool was_on_stop = stop_->hasFocus();
    progress_->setVisible(busy());
    propose_->setEnabled(!busy() && choices_->lacking().isEmpty());
    propose_->setText(found_ ? tr("&Propose again") : tr("&Propose"));
    state_->setText(stateText());
    state_->setToolTip(state_->text());
    state_->setProperty("role", found_ && !current && !taken_ ? QStringLiteral("problem") : QString());
    state_->style()->polish(state_);
    list_->setVisible(list_->count() > 0);
    stop_->setVisible(busy());
    if (was_on_stop && !busy())
        (list_->count() > 0 ? static_cast<QWidget*>(list_) : propose_)->setFocus();
    details_->parentWidget()->parentWidget()->setVisible(proposal != nullptr);
    details_->setText(proposal ? detailsText(*proposal, found_->beside, panels::unitsOf(document_.sketch()))
                               : QString());
    take_->setVisible(proposal != nullptr);
    take_->setEnabled(proposal && current);
    take_->setToolTip(!proposal ? QString()
                      : current
                          ? tr("Draw it in place of the hoses there are (Enter). One undo takes it back.")
                          : tr("The list has to be renewed first"));
    showGhost();
}

void LayoutsPanel::showGhost()
{
    std::shared_ptr<drawing::Ghost> ghost;
    if (isVisible()) {
        const Proposal* proposal = isCurrent() ? chosen() : nullptr;
        const std::vector<Vec2> outline = taken_ ? std::vector<Vec2>() : choices_->outline();
        if (proposal || !outline.empty())
            ghost = std::make_shared<drawing::Ghost>();
        if (proposal)
            *ghost = drawing::ghostOf(proposal->sketch, proposal->heater);
        if (ghost)
            ghost->space = outline;
    }
    Q_EMIT ghostChanged(ghost);
}

void LayoutsPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    showGhost();
}

void LayoutsPanel::hideEvent(QHideEvent* event)
{
    QWidget::hideEvent(event);
    Q_EMIT ghostChanged(nullptr);
}

void LayoutsPanel::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && busy())
        stop(tr("Stopped. The drawing is as it was."));
    else
        QWidget::keyPressEvent(event);
}

} // namespace siphonwright::proposing
