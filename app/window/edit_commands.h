#pragma once

#include "app/canvas/elevation_view.h"
#include "app/document/document.h"

#include <QObject>
#include <QPointer>

class QMenu;

namespace siphonwright {

namespace panels {
class DetailsPanel;
}
class Actions;
class FileCommands;
class FindBar;
class MainWindow;
class Shelf;

/// What is done to the parts of the drawing from menus, keys and context menus.
class EditCommands : public QObject {
    Q_OBJECT
public:
    EditCommands(ElevationView& view, panels::DetailsPanel& details, Shelf& shelf, Actions& actions,
                 FileCommands& files, MainWindow& window);

    FindBar& findBar() { return *find_; }

private:
    void connectGroups();
    void connectHere();
    void bringUp(QWidget& panel);
    void showDetails(bool name);
    void showMenu(const QPoint& global);

    ElevationView& view_;
    panels::DetailsPanel& details_;
    Actions& actions_;
    FileCommands& files_;
    MainWindow& window_;
    FindBar* find_;
    QPointer<QMenu> menu_; ///< while it is open
};

} // namespace siphonwright
