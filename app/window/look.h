#pragma once

#include <QIcon>
#include <QString>

namespace siphonwright::look {

/// Paper and ink for every widget of the program: palette, lettering and style sheet.
void apply(bool dark);

/// One of the program's line icons, in the ink of the look.
QIcon icon(const QString& name, bool dark);

} // namespace siphonwright::look
