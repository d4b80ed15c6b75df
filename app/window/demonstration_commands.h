#pragma once

#include "app/demonstration/bar.h"
#include "app/demonstration/beside.h"
#include "app/demonstration/player.h"
#include "app/drawing/look.h"

#include <QPointer>

class QMainWindow;
class QSplitter;

namespace siphonwright {

class Actions;
class FileCommands;

/// The demonstration in the window: begins and ends it, shows its moments on the elevation, clears the stage
/// for a class, writes files.
class DemonstrationCommands : public QObject {
    Q_OBJECT
public:
    DemonstrationCommands(Document& document, ElevationView& view, FileCommands& files, Actions& actions,
                          QMainWindow& window);

    /// The elevation with room for a second drawing.
    QSplitter& stage() { return *stage_; }
    /// Under them; made when it is first wanted.
    demonstration::DemonstrationBar& bar();
    demonstration::Player& player() { return *player_; }
    demonstration::Beside* beside() { return beside_; }
    /// What the bar takes the place of, in its layout; to be said before a demonstration begins.
    void standInFor(QWidget& widget) { replaced_ = &widget; }
    /// What tells the findings, and goes while they are hidden.
    void addTelltale(QWidget& widget) { telltales_.append(&widget); }

    void begin();
    void leave();
    void setFullScreen(bool on);
    void setLook(drawing::Look look);
    void openBeside(const QString& path);
    void exportMomentTo(const QString& path);
    void exportSequenceTo(const QString& folder);
    void exportHandoutTo(const QString& path);

Q_SIGNALS:
    void activeChanged();

private:
    void connectActions();
    bool findingsHidden() const;
    void show();
    void hideFindings(bool hidden);
    void closeBeside();
    void tell(const QString& sentence, const QStringList& problems);
    void askForFile(const QString& title, const QStringList& filters,
                    void (DemonstrationCommands::*then)(const QString&));
    drawing::Style style() const;

    Document& document_;
    ElevationView& view_;
    FileCommands& files_;
    Actions& actions_;
    QMainWindow& window_;
    demonstration::Player* player_;
    demonstration::DemonstrationBar* bar_ = nullptr; ///< made for the first demonstration
    QSplitter* stage_;
    QPointer<demonstration::Beside> beside_;
    QWidget* replaced_ = nullptr;
    QList<QWidget*> telltales_;
    QList<QPointer<QWidget>> put_away_;  ///< for hidden findings
    QList<QPointer<QWidget>> off_stage_; ///< for the full screen
    bool full_screen_ = false;
    drawing::Look look_ = drawing::Look::light;
};

} // namespace siphonwright
