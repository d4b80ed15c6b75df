#pragma once

#include <QString>

class QFileDialog;
class QWidget;

namespace siphonwright {

/// A dialog that asks for a file: it begins where one was opened or saved last (usualFolder()), has room for
/// names in whatever type size, and is gone when it is closed. Mode and kinds are set by who asks.
QFileDialog* newFileDialog(QWidget* over, const QString& title);
QFileDialog* newFileDialog(QWidget* over, const QString& title, const QString& folder);

} // namespace siphonwright
