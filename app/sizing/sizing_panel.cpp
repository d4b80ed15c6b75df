#include "app/sizing/sizing_panel.h"

#include "app/panels/form_view.h"
#include "app/sizing/entries.h"
#include "app/sizing/figure_table.h"
#include "app/sizing/season_edit.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPoint>
#include <QRect>
#include <QResizeEvent>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTabBar>

#include <algorithm>

namespace siphonwright::sizing {

namespace {

constexpr int entries_px = 312;
constexpr int side_by_side_px = 640; ///< from this width on entries stand beside the results

QLabel* caution(const QString& text, const QString& object_name)
{
    auto* label = new QLabel(text);
    label->setObjectName(object_name);
    label->setWordWrap(true);
    label->setContentsMargins(4, 2, 4, 2);
    QFont bold = label->font();
    bold.setBold(true);
    label->setFont(bold);
    return label;
}

QScrollArea* scrolled(QVBoxLayout*& column)
{
    auto* page = new QWidget;
    column = new QVBoxLayout(page);
    column->setContentsMargins(4, 2, 6, 2);
    column->setSpacing(4);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setMinimumHeight(20);
    scroll->setWidget(page);
    return scroll;
}

} // namespace

SizingPanel::SizingPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      subjects_(new QTabBar(this)),
      pages_(new QStackedWidget(this)),
      needs_(new FigureBlock(selection, tr("Power needed"), QStringLiteral("sizing-needs"))),
      powers_(new FigureBlock(selection, tr("By heater power"), QStringLiteral("sizing-powers"))),
      powers_state_(new QLabel),
      load_(new FigureBlock(selection, tr("Electrical load"), QStringLiteral("sizing-load"))),
      mix_(new FigureBlock(selection, tr("Coolant"), QStringLiteral("sizing-mix"))),
      water_(new FigureBlock(selection, tr("Water to mix with"), QStringLiteral("sizing-water")))
{
    subjects_->setObjectName(QStringLiteral("sizing-subjects"));
    subjects_->setAccessibleName(tr("Subject"));
    subjects_->setDrawBase(false);
    subjects_->setExpanding(false);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(2, 2, 2, 0);
    column->setSpacing(2);
    column->addWidget(subjects_);
    column->addWidget(pages_, 1);

    size_ = addPage(tr("Heater size"), sizeEntries());
    size_.entry_column->addWidget(new SeasonEdit(document_));
    powers_state_->setObjectName(QStringLiteral("sizing-powers-state"));
    powers_state_->setProperty("role", QStringLiteral("faint"));
    powers_state_->setContentsMargins(4, 0, 4, 0);
    powers_state_->setWordWrap(true);
    size_.results->addWidget(needs_);
    size_.results->addWidget(powers_state_);
    size_.results->addWidget(powers_);

    supply_ = addPage(tr("Electrical supply"), supplyEntries(document_.sketch()));
    supply_.results->addWidget(caution(
        tr("Load figures only. A licensed electrician and the local electrical code decide on circuit, "
           "conductors, protection and grounding; the heater's manual rules. Disconnect and lock out "
           "before any work."),
        QStringLiteral("sizing-electrical-caution")));
    supply_.results->addWidget(load_);

    coolant_ = addPage(tr("Coolant"), coolantEntries());
    coolant_.results->addWidget(
        caution(tr("Antifreeze is poisonous: catch and dispose of it properly. Open the cap only cold."),
                QStringLiteral("sizing-coolant-caution")));
    coolant_.results->addWidget(mix_);
    coolant_.results->addWidget(water_);

    for (const Page* page : {&size_, &supply_, &coolant_}) {
        page->entry_column->addStretch(1);
        page->results->addStretch(1);
    }
    connect(subjects_, &QTabBar::currentChanged, pages_, &QStackedWidget::setCurrentIndex);
    connect(&document_, &Document::changed, this, &SizingPanel::refresh);
    connect(&document_, &Document::analysed, this, &SizingPanel::refreshPowers);
    refresh();
}

SizingPanel::Page SizingPanel::addPage(const QString& title, panels::Form form)
{
    Page page;
    auto* whole = new QWidget;
    page.sides = new QBoxLayout(QBoxLayout::LeftToRight, whole);
    page.sides->setContentsMargins(0, 0, 0, 0);
    page.sides->setSpacing(4);
    page.entries = scrolled(page.entry_column);
    page.form = new panels::FormView(document_, std::move(form));
    connect(page.form, &panels::FormView::partWanted, &selection_, &Selection::select);
    page.entry_column->addWidget(page.form);
    page.sides->addWidget(page.entries);
    page.sides->addWidget(scrolled(page.results), 1);
    subjects_->addTab(title);
    pages_->addWidget(whole);
    return page;
}

/// Entries beside the results where there is room, else over them.
void SizingPanel::fitPages()
{
    const bool wide = width() >= side_by_side_px;
    for (const Page* page : {&size_, &supply_, &coolant_}) {
        page->sides->setDirection(wide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
        constexpr int scroll_bar_px = 20;
        const int needed_px = page->entries->widget()->minimumSizeHint().width() + scroll_bar_px;
        page->entries->setMinimumWidth(wide ? std::max(entries_px, needed_px) : needed_px);
        page->entries->setMaximumWidth(wide ? std::max(entries_px, needed_px) : QWIDGETSIZE_MAX);
        page->sides->setStretch(0, wide ? 0 : 2);
        page->sides->setStretch(1, wide ? 1 : 3);
    }
}

void SizingPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitPages();
    if (event->oldSize().isEmpty() && isSeen())
        refreshFigures();
}

void SizingPanel::showEvent(QShowEvent* event)
{
    QWidget::showEvent(event);
    refresh();
}

void SizingPanel::refresh()
{
    const Sketch& sketch = document_.sketch();
    // The choice of conductors hangs on the sketch; the other forms never change their rows.
    panels::Form supply = supplyEntries(sketch);
    if (supply_.form->fits(supply)) {
        supply_.form->show(std::move(supply));
    } else {
        auto* fresh = new panels::FormView(document_, std::move(supply));
        delete supply_.entry_column->replaceWidget(supply_.form, fresh);
        // The old form may be the one whose edit led here.
        supply_.form->setParent(nullptr);
        supply_.form->deleteLater();
        supply_.form = fresh;
    }
    size_.form->show(sizeEntries());
    coolant_.form->show(coolantEntries());
    if (isSeen())
        refreshFigures();
}

/// Qt takes a panel behind the tab of another for visible: it stands off the window's edge.
bool SizingPanel::isSeen() const
{
    return isVisible() && window()->rect().intersects(QRect(mapTo(window(), QPoint()), size()));
}

void SizingPanel::comeIntoSight()
{
    refreshFigures();
}

void SizingPanel::refreshFigures()
{
    const Sketch& sketch = document_.sketch();
    const Layout& layout = document_.analysis().layout;
    needs_->show(sizeFigures(sketch, layout));
    load_->show(supplyFigures(sketch));
    mix_->show(coolantFigures(sketch, layout));
    water_->show(waterFigures(sketch));
    showPowers();
}

void SizingPanel::refreshPowers()
{
    if (isSeen())
        showPowers();
}

void SizingPanel::showPowers()
{
    const std::optional<Proof>& proof = document_.proof();
    const bool in = proof && proof->powers_in && document_.proofIsCurrent();
    if (proof && !proof->by_power.empty())
        powers_->show(powerFigures(document_.sketch(), proof->running, proof->by_power));
    else if (in)
        powers_->show({});
    powers_->setEnabled(in);
    const bool empty = in && proof->by_power.empty();
    if (proof && !proof->by_power.empty())
        powers_state_->setText(tr("Being computed; the table is of the drawing as it was."));
    else
        powers_state_->setText(tr("The table by heater power is being computed."));
    powers_state_->setVisible(!in);
    powers_->setVisible(!empty);
}

} // namespace siphonwright::sizing
