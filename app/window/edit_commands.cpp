#include "app/window/edit_commands.h"

#include "app/canvas/clipboard.h"
#include "app/canvas/drag.h"
#include "app/panels/details_panel.h"
#include "app/window/actions.h"
#include "app/window/file_commands.h"
#include "app/window/find_bar.h"
#include "app/window/main_window.h"
#include "app/window/part_menu.h"
#include "app/window/photo_commands.h"
#include "app/window/shelf.h"

#include <QClipboard>
#include <QDockWidget>
#include <QGuiApplication>
#include <QMenu>
#include <QMimeData>
#include <QStatusBar>

namespace siphonwright {
namespace {

constexpr int told_ms = 6000;

} // namespace

EditCommands::EditCommands(ElevationView& view, panels::DetailsPanel& details, Shelf& shelf, Actions& actions,
                           FileCommands& files, MainWindow& window)
    : QObject(&window),
      view_(view),
      details_(details),
      actions_(actions),
      files_(files),
      window_(window),
      find_(new FindBar(view))
{
    connectGroups();
    connectHere();
    connect(&shelf, &Shelf::wanted, &view_, &ElevationView::placeInMiddle);
    connect(actions_[QStringLiteral("shelf")], &QAction::triggered, this, [this, &shelf] {
        bringUp(shelf);
        shelf.setFocus(Qt::ShortcutFocusReason);
    });
    connect(&view_, &ElevationView::told, this,
            [this](const QString& text) { window_.statusBar()->showMessage(text, told_ms); });
    connect(&view_, &ElevationView::refused, this,
            [this](const QString& sentence, const QStringList& why) { files_.tell(sentence, why); });
    connect(&view_, &ElevationView::detailsWanted, this, [this] { showDetails(false); });
    connect(&view_, &ElevationView::contextMenuWanted, this,
            [this](const PartRef&, const QPoint& global) { showMenu(global); });
}

void EditCommands::connectGroups()
{
    const auto on = [this](const char* id, auto act) {
        connect(actions_[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    on("select-all", [this] { view_.selectEverything(); });
    on("cut", [this] { view_.cut(); });
    on("copy", [this] { view_.copy(); });
    on("paste", [this] {
        const QMimeData* data = QGuiApplication::clipboard()->mimeData();
        if (data && !data->hasFormat(QLatin1String(parts_mime_type)) && PhotoCommands::offersPicture(*data))
            window_.photo().paste();
        else
            view_.paste();
    });
    on("duplicate", [this] { view_.duplicate(); });
    on("delete", [this] { view_.deleteSelected(); });
    const struct {
        const char* id;
        Alignment alignment;
    } edges[] = {{"align-left", Alignment::left},         {"align-right", Alignment::right},
                 {"align-top", Alignment::top},           {"align-bottom", Alignment::bottom},
                 {"align-middle-x", Alignment::middle_x}, {"align-middle-z", Alignment::middle_z}};
    for (const auto& edge : edges)
        on(edge.id, [this, alignment = edge.alignment] { view_.alignSelected(alignment); });
    on("spread-x", [this] { view_.distributeSelected(SpreadAlong::x); });
    on("spread-z", [this] { view_.distributeSelected(SpreadAlong::z); });
}

void EditCommands::connectHere()
{
    const auto on = [this](const char* id, auto act) {
        connect(actions_[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    on("find", [this] { find_->open(); });
    on("go-to-drawing", [this] { view_.setFocus(Qt::ShortcutFocusReason); });
    on("details", [this] { showDetails(false); });
    on("rename", [this] { showDetails(true); });
    on("keep-selected", [this] { view_.keepSelected(); });
    on("corners", [this] { view_.enterOutline(); });
    on("connect", [this] { view_.connectSelected(); });
    on("turn", [this] { view_.turnSelected(turn_step_deg); });
    on("turn-back", [this] { view_.turnSelected(-turn_step_deg); });
    on("open-or-close", [this] { view_.openOrCloseSelected(); });
    on("point-here", [this] { view_.addPointHere(); });
    on("valve-here", [this] { view_.addHere(ToolKind::valve); });
    on("bleed-here", [this] { view_.addHere(ToolKind::bleed); });
    on("clip-here", [this] { view_.addHere(ToolKind::clip); });
}

void EditCommands::bringUp(QWidget& panel)
{
    auto* dock = qobject_cast<QDockWidget*>(panel.parentWidget());
    if (!dock)
        return;
    dock->show();
    dock->raise();
}

/// Bring the details to the front and the keyboard into them.
void EditCommands::showDetails(bool name)
{
    bringUp(details_);
    details_.focusField(name);
}

void EditCommands::showMenu(const QPoint& global)
{
    // The menu key comes as a key and, on some systems, as a wish for a menu too.
    if (menu_ && menu_->isVisible())
        return;
    menu_ = partMenu(actions_, view_.document(), view_.selection(), &window_);
    menu_->setAttribute(Qt::WA_DeleteOnClose);
    menu_->setObjectName(QStringLiteral("part-menu"));
    menu_->popup(global);
    if (!menu_->actions().isEmpty())
        menu_->setActiveAction(menu_->actions().constFirst());
}

} // namespace siphonwright
