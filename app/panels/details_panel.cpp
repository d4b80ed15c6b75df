#include "app/panels/details_panel.h"

#include "app/panels/field.h"
#include "app/panels/form_view.h"

#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

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
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
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
    title_->setText(wanted.title);
    if (form_ && shown_ == selection_.part() && form_->fits(wanted.form)) {
        form_->show(std::move(wanted.form));
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
    scroll_->setWidget(fresh);
    // There is no sideways scrolling, so the panel is never narrower than its form.
    scroll_->setMinimumWidth(fresh->minimumSizeHint().width() +
                             scroll_->verticalScrollBar()->sizeHint().width());
}

} // namespace siphonwright::panels
