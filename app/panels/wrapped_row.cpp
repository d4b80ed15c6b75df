#include "app/panels/wrapped_row.h"

#include <QSpacerItem>
#include <QStyle>
#include <QWidget>

#include <algorithm>

namespace siphonwright::panels {

namespace {

bool takesMore(const QLayoutItem& item)
{
    return item.expandingDirections().testFlag(Qt::Horizontal);
}

} // namespace

WrappedRow::~WrappedRow()
{
    qDeleteAll(items_);
}

void WrappedRow::addStretch()
{
    addItem(new QSpacerItem(0, 0, QSizePolicy::Expanding, QSizePolicy::Minimum));
}

QLayoutItem* WrappedRow::takeAt(int index)
{
    return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr;
}

int WrappedRow::gap() const
{
    if (spacing() >= 0)
        return spacing();
    const QWidget* parent = parentWidget();
    return parent ? parent->style()->pixelMetric(QStyle::PM_LayoutHorizontalSpacing, nullptr, parent) : 6;
}

QList<WrappedRow::Line> WrappedRow::lines(int width) const
{
    QList<Line> out;
    int left = 0;
    for (QLayoutItem* item : items_) {
        if (item->widget() && item->isEmpty())
            continue;
        const int wanted = item->sizeHint().width();
        if (out.isEmpty() || (wanted > left && !out.last().isEmpty())) {
            out.append(Line());
            left = width;
        }
        out.last().append(item);
        left -= wanted + gap();
    }
    return out;
}

int WrappedRow::heightOf(const Line& line) const
{
    int out = 0;
    for (const QLayoutItem* item : line)
        out = std::max(out, item->sizeHint().height());
    return out;
}

int WrappedRow::heightForWidth(int width) const
{
    const QMargins edge = contentsMargins();
    int out = edge.top() + edge.bottom();
    const QList<Line> all = lines(width - edge.left() - edge.right());
    for (const Line& line : all)
        out += heightOf(line);
    return out + int(std::max<qsizetype>(0, all.size() - 1)) * gap();
}

QSize WrappedRow::sizeHint() const
{
    QSize out;
    for (const QLayoutItem* item : items_)
        if (!item->widget() || !item->isEmpty())
            out = {out.width() + item->sizeHint().width() + gap(),
                   std::max(out.height(), item->sizeHint().height())};
    const QMargins edge = contentsMargins();
    return out + QSize(edge.left() + edge.right() - gap(), edge.top() + edge.bottom());
}

QSize WrappedRow::minimumSize() const
{
    QSize out;
    for (const QLayoutItem* item : items_)
        if (!item->widget() || !item->isEmpty())
            out = out.expandedTo(item->minimumSize());
    const QMargins edge = contentsMargins();
    return out + QSize(edge.left() + edge.right(), edge.top() + edge.bottom());
}

void WrappedRow::layOut(const Line& line, const QRect& room) const
{
    int left = room.width() - int(line.size() - 1) * gap();
    int takers = 0;
    for (const QLayoutItem* item : line) {
        left -= item->sizeHint().width();
        takers += takesMore(*item) ? 1 : 0;
    }
    int x = room.x();
    for (QLayoutItem* item : line) {
        int width = item->sizeHint().width();
        if (takesMore(*item) && left > 0) {
            const int share = left / takers;
            width += share;
            left -= share;
            --takers;
        }
        width = std::min(width, room.width());
        const QRect place(x, room.y(), width, room.height());
        item->setGeometry(QStyle::visualRect(
            parentWidget() ? parentWidget()->layoutDirection() : Qt::LeftToRight, room, place));
        x += width + gap();
    }
}

void WrappedRow::setGeometry(const QRect& room)
{
    QLayout::setGeometry(room);
    QRect inside = room.marginsRemoved(contentsMargins());
    for (const Line& line : lines(inside.width())) {
        inside.setHeight(heightOf(line));
        layOut(line, inside);
        inside.moveTop(inside.bottom() + 1 + gap());
    }
}

} // namespace siphonwright::panels
