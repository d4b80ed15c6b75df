#include "app/window/find_bar.h"

#include "app/canvas/part_names.h"
#include "app/canvas/rulers.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright {

FindBar::FindBar(ElevationView& view)
    : QFrame(&view),
      view_(view),
      line_(new QLineEdit(this)),
      list_(new QListWidget(this)),
      none_(new QLabel(tr("No part has such a name."), this))
{
    setObjectName(QStringLiteral("find-bar"));
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setCursor(Qt::ArrowCursor);
    setAttribute(Qt::WA_NoMousePropagation); // the drawing lies under it
    line_->setPlaceholderText(tr("Find by name"));
    line_->setAccessibleName(tr("Find by name"));
    line_->setClearButtonEnabled(true);
    list_->setAccessibleName(tr("Parts that match"));
    list_->setUniformItemSizes(true);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(6, 6, 6, 6);
    column->setSpacing(4);
    column->addWidget(line_);
    column->addWidget(list_);
    column->addWidget(none_);
    line_->installEventFilter(this);
    list_->installEventFilter(this);
    view_.installEventFilter(this);
    connect(line_, &QLineEdit::textChanged, this, &FindBar::fill);
    connect(list_, &QListWidget::itemActivated, this, &FindBar::choose);
    connect(list_, &QListWidget::itemClicked, this, &FindBar::choose);
    connect(&view_.document(), &Document::changed, this, [this] {
        if (isVisible())
            fill();
    });
    hide();
}

void FindBar::open()
{
    show();
    raise();
    fill();
    line_->selectAll();
    line_->setFocus(Qt::ShortcutFocusReason);
}

/// Names that hold every word that was typed, wherever in them.
void FindBar::fill()
{
    const QStringList words = line_->text().split(u' ', Qt::SkipEmptyParts);
    const Sketch& sketch = view_.document().sketch();
    found_.clear();
    list_->clear();
    for (const PartRef& part : view_.things()) {
        const QString name = spokenName(sketch, part);
        const bool fits = std::all_of(words.begin(), words.end(), [&](const QString& word) {
            return name.contains(word, Qt::CaseInsensitive);
        });
        if (!fits)
            continue;
        found_.push_back(part);
        list_->addItem(name);
    }
    list_->setCurrentRow(found_.empty() ? -1 : 0);
    list_->setVisible(!found_.empty());
    none_->setVisible(found_.empty());
    place();
}

void FindBar::choose()
{
    const int row = list_->currentRow();
    if (row < 0 || static_cast<std::size_t>(row) >= found_.size())
        return;
    const PartRef part = found_[static_cast<std::size_t>(row)];
    close();
    view_.setTool(ToolKind::select);
    view_.selection().select(part);
    view_.bringToMiddle(part);
}

void FindBar::close()
{
    hide();
    view_.setFocus(Qt::OtherFocusReason);
}

/// In the upper right corner, as high as its list needs but not over the whole drawing.
void FindBar::place()
{
    constexpr int width_px = 260;
    constexpr int most_rows = 8;
    constexpr int margin_px = 10;
    const int rows = std::min(most_rows, list_->count());
    if (rows > 0)
        list_->setFixedHeight(rows * list_->sizeHintForRow(0) + 2 * list_->frameWidth());
    layout()->activate();
    resize(width_px, layout()->sizeHint().height());
    move(view_.width() - width() - margin_px,
         static_cast<int>(usual_ruler_px * drawing::textScale(font())) + margin_px);
}

/// From line to list and back: the drawing, which the bar lies on, has its own way with Tab.
bool FindBar::focusNextPrevChild(bool)
{
    QWidget* other = line_->hasFocus() && list_->isVisible() ? static_cast<QWidget*>(list_) : line_;
    other->setFocus(Qt::TabFocusReason);
    return true;
}

bool FindBar::keyIn(int key)
{
    const int row = list_->currentRow();
    switch (key) {
    case Qt::Key_Escape:
        close();
        return true;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        choose();
        return true;
    case Qt::Key_Down:
        list_->setCurrentRow(std::min(row + 1, list_->count() - 1));
        return true;
    case Qt::Key_Up:
        list_->setCurrentRow(std::max(row - 1, 0));
        return true;
    default:
        return false;
    }
}

bool FindBar::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == &view_) {
        if (event->type() == QEvent::Resize && isVisible())
            place();
        return false;
    }
    if (event->type() == QEvent::ShortcutOverride &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        event->accept();
        return true;
    }
    if (event->type() == QEvent::KeyPress && keyIn(static_cast<QKeyEvent*>(event)->key()))
        return true;
    return QFrame::eventFilter(watched, event);
}

} // namespace siphonwright
