#pragma once

#include <QPageLayout>

#include <functional>

class QObject;
class QPrinter;
class QWidget;

/// The dialogs of printing. Each has a printer of its own, full pages of the layout given, and is gone with
/// it when it is closed.
namespace siphonwright::printing {

/// \param paint is called as long as context lives
using Paint = std::function<void(QPrinter&)>;

void preview(QWidget& over, const QPageLayout& layout, const QObject& context, const Paint& paint);
void print(QWidget& over, const QPageLayout& layout, const QObject& context, const Paint& paint);

} // namespace siphonwright::printing
