#pragma once

#include <QLabel>
#include <QMessageBox>

namespace siphonwright {

/// What a box says of files and drawings is shown as it is written there and never followed as markup. Call
/// it when the box has its texts.
inline void showPlainText(QMessageBox& box)
{
    for (QLabel* words : box.findChildren<QLabel*>())
        words->setTextFormat(Qt::PlainText);
}

} // namespace siphonwright
