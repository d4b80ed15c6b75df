#include "app/warming/warm_up_panel.h"

#include "app/language/in_words.h"
#include "app/panels/field.h"
#include "app/panels/wrapped_row.h"
#include "app/warming/chart_view.h"
#include "app/warming/files.h"
#include "app/warming/plan_form.h"
#include "app/warming/words.h"

#include "core/layout/wording.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QScrollArea>
#include <QSignalBlocker>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::warming {

WarmUpPanel::WarmUpPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      heaters_(new QComboBox(this)),
      line_(new QLabel(this)),
      drivers_(new QLabel(this)),
      keep_(new QToolButton(this)),
      drop_(new QToolButton(this)),
      export_(new QToolButton(this)),
      kept_menu_(new QMenu(this)),
      chart_(new ChartView(this)),
      plan_(new PlanForm(document, this))
{
    layOut();
    connect(heaters_, &QComboBox::currentIndexChanged, this, &WarmUpPanel::refresh);
    connect(keep_, &QToolButton::clicked, this, &WarmUpPanel::keep);
    connect(export_, &QToolButton::clicked, this, &WarmUpPanel::exportWanted);
    connect(chart_, &ChartView::sentenceClicked, this, &WarmUpPanel::goToMissing);
    connect(&document_, &Document::changed, this, &WarmUpPanel::refresh);
    connect(&document_, &Document::analysed, this, &WarmUpPanel::refresh);
    refresh();
    refreshKept();
}

void WarmUpPanel::layOut()
{
    heaters_->setObjectName(QStringLiteral("warm-up-heater"));
    heaters_->setAccessibleName(tr("Heater"));
    heaters_->setToolTip(tr("Whose warm-up is shown"));
    line_->setObjectName(QStringLiteral("warm-up-result"));
    line_->setWordWrap(true);
    line_->setMinimumWidth(120);
    drivers_->setObjectName(QStringLiteral("warm-up-drivers"));
    drivers_->setProperty("role", QStringLiteral("faint"));
    drivers_->setWordWrap(true);
    keep_->setObjectName(QStringLiteral("warm-up-keep"));
    keep_->setText(tr("Keep this curve"));
    drop_->setObjectName(QStringLiteral("warm-up-kept"));
    drop_->setText(tr("Kept"));
    drop_->setToolTip(tr("Take kept curves away"));
    drop_->setMenu(kept_menu_);
    drop_->setPopupMode(QToolButton::InstantPopup);
    export_->setObjectName(QStringLiteral("warm-up-export"));
    export_->setText(tr("Export…"));
    export_->setToolTip(tr("Write the warm-up as CSV, PNG or SVG"));

    auto* side = new QWidget(this);
    auto* buttons = new panels::WrappedRow;
    buttons->setSpacing(2);
    buttons->addWidget(keep_);
    buttons->addWidget(drop_);
    buttons->addWidget(export_);
    auto* stack = new QVBoxLayout(side);
    stack->setContentsMargins(0, 0, 0, 0);
    stack->setSpacing(2);
    stack->addWidget(heaters_);
    stack->addWidget(plan_);
    stack->addLayout(buttons);
    stack->addWidget(drivers_);
    stack->addStretch(1);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidget(side);
    scroll->setMinimumHeight(20);
    constexpr int side_px = 292;
    constexpr int scroll_bar_px = 24;
    scroll->setFixedWidth(std::max(side_px, side->minimumSizeHint().width() + scroll_bar_px));

    auto* left = new QVBoxLayout;
    left->setSpacing(2);
    line_->setContentsMargins(6, 0, 6, 0);
    left->addWidget(line_);
    left->addWidget(chart_, 1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(2, 2, 2, 2);
    row->setSpacing(6);
    row->addLayout(left, 1);
    row->addWidget(scroll);
}

void WarmUpPanel::setLook(drawing::Look look)
{
    chart_->setLook(look);
}

Id WarmUpPanel::heater() const
{
    return heaters_->currentData().toString().toStdString();
}

bool WarmUpPanel::hasResult() const
{
    return chart_->result().has_value();
}

void WarmUpPanel::refreshHeaters()
{
    const QSignalBlocker quiet(heaters_);
    const QString chosen = heaters_->currentData().toString();
    heaters_->clear();
    for (const Heater& heater : document_.sketch().heaters)
        heaters_->addItem(inWords(nameOfHeater(heater)), QString::fromStdString(heater.id));
    heaters_->setCurrentIndex(std::max(heaters_->findData(chosen), heaters_->count() > 0 ? 0 : -1));
    heaters_->setVisible(heaters_->count() > 1);
}

void WarmUpPanel::refresh()
{
    refreshHeaters();
    const UnitSystem units = panels::unitsOf(document_.sketch());
    chart_->setUnits(units);
    const std::optional<Proof>& proof = document_.proof();
    std::optional<Result> result = proof ? resultOf(document_.sketch(), *proof, heater()) : std::nullopt;
    const bool of_before = !document_.proofIsCurrent();
    if (result) {
        QString line = resultLine(*result, units);
        if (!result->remark.pattern.empty())
            line += tr(" · %1").arg(inWords(result->remark, units));
        if (of_before)
            line = tr("Of the drawing as it was: %1").arg(line);
        else if (result->bands_follow)
            line += tr(" · bands follow");
        result_ = line;
        drivers_->setText(driversLine(*result));
        chart_->show(std::move(result), of_before);
    } else {
        result_.clear();
        sayMissing();
    }
    fitLine();
    line_->setEnabled(!of_before);
    line_->setVisible(hasResult());
    drivers_->setVisible(hasResult() && !drivers_->text().isEmpty());
    refreshKept();
}

void WarmUpPanel::sayMissing()
{
    const std::optional<Proof>& proof = document_.proof();
    missing_ = {};
    if (document_.sketch().heaters.empty())
        missing_.sentence = tr("The warm-up appears when a loop with a heater is drawn.");
    else if (!proof || !document_.proofIsCurrent())
        missing_.sentence = tr("The warm-up is being computed.");
    else
        missing_ =
            missingFor(document_.analysis().running, *proof, heater(), panels::unitsOf(document_.sketch()));
    const bool leads = proof && document_.proofIsCurrent() && !document_.sketch().heaters.empty();
    drivers_->clear();
    chart_->showSentence(missing_.sentence, leads);
}

void WarmUpPanel::goToMissing()
{
    // What belongs to no part belongs to the site, and the site's figures show when nothing is selected.
    selection_.select(missing_.part);
    if (missing_.part.kind == PartKind::nothing && !document_.sketch().site.ambient_degC.known())
        plan_->askForAmbient();
}

/// In a flat panel the chart needs the height: one line, the whole of it as a tooltip.
void WarmUpPanel::fitLine()
{
    constexpr int flat_px = 150;
    const bool flat = height() < flat_px;
    line_->setWordWrap(!flat);
    line_->setToolTip(result_);
    const int room = chart_->width() - 12;
    line_->setText(flat ? line_->fontMetrics().elidedText(result_, Qt::ElideRight, room) : result_);
}

void WarmUpPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    layout()->activate();
    fitLine();
}

bool WarmUpPanel::mayKeep() const
{
    return hasResult() && kept_.size() < most_kept && document_.proofIsCurrent();
}

void WarmUpPanel::keep()
{
    if (!mayKeep())
        return;
    kept_.push_back(*chart_->result());
    refreshKept();
}

void WarmUpPanel::drop(std::size_t index)
{
    if (index >= kept_.size())
        return;
    kept_.erase(kept_.begin() + static_cast<std::ptrdiff_t>(index));
    refreshKept();
}

void WarmUpPanel::dropAll()
{
    kept_.clear();
    refreshKept();
}

void WarmUpPanel::refreshKept()
{
    chart_->setKept(kept_);
    keep_->setEnabled(mayKeep());
    keep_->setToolTip(kept_.size() < most_kept ? tr("Lay the curves as they are now under those to come")
                                               : tr("Three are kept: take one away first"));
    drop_->setVisible(!kept_.empty());
    export_->setEnabled(hasResult());
    kept_menu_->clear();
    const UnitSystem units = panels::unitsOf(document_.sketch());
    for (std::size_t i = 0; i < kept_.size(); ++i) {
        const QString peak = kept_[i].outcome.peak_outlet_degC
                                 ? valueText(*kept_[i].outcome.peak_outlet_degC, Unit::degC, units)
                                 : tr("never on");
        connect(
            kept_menu_->addAction(tr("Take away %1, peak %2").arg(nameOfKept(kept_, i), peak)),
            &QAction::triggered, this, [this, i] { drop(i); }, Qt::QueuedConnection);
    }
    kept_menu_->addSeparator();
    connect(kept_menu_->addAction(tr("Take all away")), &QAction::triggered, this, &WarmUpPanel::dropAll,
            Qt::QueuedConnection);
    Q_EMIT stateChanged();
}

QStringList WarmUpPanel::exportTo(const QString& path, const PutFile& put) const
{
    if (!hasResult())
        return {tr("There is no warm-up to write.")};
    return warming::exportTo(path, *chart_->result(), kept_, panels::unitsOf(document_.sketch()), put);
}

} // namespace siphonwright::warming
