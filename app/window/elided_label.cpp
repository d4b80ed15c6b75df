#include "app/window/elided_label.h"

#include <QPainter>
#include <QStyle>
#include <QTextDocument>

namespace siphonwright {

void ElidedLabel::paintEvent(QPaintEvent*)
{
    const QRect room = contentsRect();
    const QString shown = fontMetrics().elidedText(text(), Qt::ElideRight, room.width());
    // A text of a file may look like markup, which a tool tip would follow.
    const QString whole = Qt::mightBeRichText(text()) ? Qt::convertFromPlainText(text()) : text();
    setToolTip(shown == text() ? QString() : whole);
    QPainter painter(this);
    style()->drawItemText(&painter, room, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextHideMnemonic, palette(),
                          isEnabled(), shown, foregroundRole());
}

} // namespace siphonwright
