#include "app/window/elided_label.h"

#include <QPainter>
#include <QStyle>

namespace siphonwright {

void ElidedLabel::paintEvent(QPaintEvent*)
{
    const QRect room = contentsRect();
    const QString shown = fontMetrics().elidedText(text(), Qt::ElideRight, room.width());
    setToolTip(shown == text() ? QString() : text());
    QPainter painter(this);
    style()->drawItemText(&painter, room, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextHideMnemonic, palette(),
                          isEnabled(), shown, foregroundRole());
}

} // namespace siphonwright
