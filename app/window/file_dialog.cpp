#include "app/window/file_dialog.h"

#include "app/window/settings.h"

#include <QFileDialog>
#include <QFontMetrics>
#include <QHeaderView>
#include <QScreen>
#include <QSplitter>
#include <QTreeView>

namespace siphonwright {
namespace {

/// In Qt's own dialog; a desktop's has no such parts.
void giveNamesTheRoom(const QFileDialog& dialog)
{
    const auto* files = dialog.findChild<QTreeView*>(QStringLiteral("treeView"));
    auto* parts = dialog.findChild<QSplitter*>(QStringLiteral("splitter"));
    if (!files || !parts)
        return;
    files->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    files->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    const int places_px = dialog.fontMetrics().averageCharWidth() * 16;
    parts->setSizes({places_px, dialog.width() - places_px});
}

} // namespace

QFileDialog* newFileDialog(QWidget* over, const QString& title)
{
    return newFileDialog(over, title, usualFolder());
}

QFileDialog* newFileDialog(QWidget* over, const QString& title, const QString& folder)
{
    auto* dialog = new QFileDialog(over, title, folder);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    const QFontMetrics type = dialog->fontMetrics();
    const QSize wanted(type.averageCharWidth() * 100, type.height() * 28);
    const QSize most = dialog->screen()->availableSize() * 9 / 10;
    dialog->resize(dialog->size().expandedTo(wanted).boundedTo(most));
    giveNamesTheRoom(*dialog);
    return dialog;
}

} // namespace siphonwright
