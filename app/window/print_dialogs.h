#pragma once

#include "app/document/disk.h"

#include <QPageLayout>
#include <QStringList>

#include <functional>

class QObject;
class QPrinter;
class QWidget;

namespace siphonwright {
class FileCommands;
}

/// The dialogs of printing. Each has a printer of its own, full pages of the layout given, and is gone with
/// it when it is closed.
namespace siphonwright::printing {

/// \param paint is called as long as context lives
using Paint = std::function<void(QPrinter&)>;

void preview(QWidget& over, const QPageLayout& layout, const QObject& context, const Paint& paint);
/// \param files puts what is printed into a file in its place
void print(QWidget& over, const QPageLayout& layout, const QObject& context, FileCommands& files,
           const Paint& paint);
/// On the printer; or, where it prints into a file, painted aside and put there whole. \return as `put` does
QStringList paintOn(QPrinter& printer, const Paint& paint, const PutFile& put);

} // namespace siphonwright::printing
