#include "app/panels/details_panel.h"

#include "app/language/in_words.h"
#include "app/language/margin_words.h"
#include "app/panels/access.h"
#include "app/panels/field.h"
#include "app/panels/form_view.h"
#include "app/panels/running_text.h"

#include "core/analysis/margin_text.h"

#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright::panels {

DetailsPanel::DetailsPanel(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent),
      document_(document),
      selection_(selection),
      title_(new QLabel(this)),
      scroll_(new QScrollArea(this))
{
    title_->setProperty("role", QStringLiteral("title"));
    title_->setObjectName(QStringLiteral("details-title"));
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 6, 4, 6);
    column->setSpacing(4);
    column->addWidget(title_);
    column->addWidget(scroll_, 1);
    connect(&document_, &Document::changed, this, &DetailsPanel::refresh);
    connect(&document_, &Document::analysed, this, &DetailsPanel::refresh);
    connect(&selection_, &Selection::partChanged, this, &DetailsPanel::refresh);
    refresh();
}

void DetailsPanel::refresh()
{
    PartForm wanted = formFor(document_.sketch(), selection_.part());
    const auto others = selection_.parts().size() - 1;
    title_->setText(selection_.parts().size() > 1
                        ? tr("%1, and %n more selected", nullptr, static_cast<int>(others)).arg(wanted.title)
                        : wanted.title);
    if (form_ && shown_ == selection_.part() && form_->fits(wanted.form)) {
        form_->show(std::move(wanted.form));
        showRunning();
        showMargins();
        return;
    }
    shown_ = selection_.part();
    auto* fresh = new FormView(document_, std::move(wanted.form));
    connect(fresh, &FormView::partWanted, &selection_, &Selection::select);
    // The old form may be the one whose edit led here, so it goes only when control is back in the loop.
    if (QWidget* old = scroll_->takeWidget()) {
        old->hide();
        old->deleteLater();
    }
    form_ = fresh;
    scroll_->setWidget(pageOf(*fresh));
    showRunning();
    showMargins();
    // As wide as its form, so that nobody has to scroll sideways; but with the largest text on a small screen
    // the drawing and the panels on its other side need room too.
    constexpr int a_third_of_a_small_screen_px = 426;
    scroll_->setMinimumWidth(
        std::min(a_third_of_a_small_screen_px,
                 fresh->minimumSizeHint().width() + scroll_->verticalScrollBar()->sizeHint().width()));
}

void DetailsPanel::focusField(bool name)
{
    QWidget* field = nullptr;
    for (auto* child : form_->findChildren<QWidget*>()) {
        const bool takes_keys = child->focusPolicy() & Qt::TabFocus && child->isEnabled();
        if (!takes_keys || !form_->isAncestorOf(child) || child->accessibleName().isEmpty())
            continue;
        if (!field || (name && child->accessibleName() == FormText::tr("Name")))
            field = child;
    }
    if (!field)
        return;
    field->setFocus(Qt::ShortcutFocusReason);
    if (auto* line = qobject_cast<QLineEdit*>(field))
        line->selectAll();
    scroll_->ensureWidgetVisible(field);
}

/// The form with what is computed of the part over and under it: all scroll together, since beside the form
/// they would leave little of it on a small screen.
QWidget* DetailsPanel::pageOf(FormView& form)
{
    auto* page = new QWidget;
    running_ = new QLabel(page);
    running_->setObjectName(QStringLiteral("details-running"));
    margins_ = new QLabel(page);
    margins_->setObjectName(QStringLiteral("details-margins"));
    margins_->setProperty("role", QStringLiteral("remark"));
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (QLabel* label : {running_, margins_}) {
        label->setWordWrap(true);
        label->setContentsMargins(2, 2, 8, 4);
    }
    column->addWidget(running_);
    column->addWidget(&form, 1);
    column->addWidget(margins_);
    return page;
}

void DetailsPanel::showRunning()
{
    const PartRef& part = selection_.part();
    QStringList lines;
    if (part.kind == PartKind::heater)
        lines = runningText(document_.sketch(), document_.analysis(), part.id);
    // Warm-up and bands lag behind a drag; what they say must not pass for the drawing as it is now.
    if (!lines.isEmpty() && document_.proof() && !document_.proofIsCurrent())
        lines << tr("The warm-up is of the drawing a moment ago.");
    running_->setText(lines.join(u'\n'));
    running_->setVisible(!lines.isEmpty());
}

/// For a hose how far it may sag, for any part what its rules leave.
void DetailsPanel::showMargins()
{
    const UnitSystem units = unitsOf(document_.sketch());
    const Analysis& analysis = document_.analysis();
    const PartRef& part = selection_.part();
    QStringList lines;
    if (analysis.proof)
        for (const SagMargin& margin : analysis.proof->sag)
            if (part.id == margin.hose)
                lines << inWords(textOf(margin, document_.sketch()), units);
    for (const Margin& margin : analysis.margins)
        if (part.kind != PartKind::nothing && margin.part == part)
            lines << tr("%1: %2.").arg(inWords(ruleById(margin.rule)->title), marginWords(margin, units));
    margins_->setText(lines.join(u'\n'));
    margins_->setVisible(!lines.isEmpty());
}

} // namespace siphonwright::panels
