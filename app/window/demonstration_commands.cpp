#include "app/window/demonstration_commands.h"

#include "app/demonstration/export.h"
#include "app/demonstration/votes.h"
#include "app/window/actions.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/settings.h"

#include <QDockWidget>
#include <QFileDialog>
#include <QMainWindow>
#include <QMenuBar>
#include <QSplitter>
#include <QStatusBar>
#include <QToolBar>

#include <optional>
#include <utility>
#include <variant>

namespace siphonwright {

namespace {

constexpr double large_lettering = 1.9;
constexpr std::size_t sequence_step = 3;

/// Hide what is in sight of these and remember it.
QList<QPointer<QWidget>> putAway(const QList<QWidget*>& widgets)
{
    QList<QPointer<QWidget>> hidden;
    for (QWidget* widget : widgets) {
        if (widget->isHidden())
            continue;
        widget->hide();
        hidden.append(widget);
    }
    return hidden;
}

void bringBack(QList<QPointer<QWidget>>& widgets)
{
    for (const QPointer<QWidget>& widget : widgets)
        if (widget)
            widget->show();
    widgets.clear();
}

} // namespace

DemonstrationCommands::DemonstrationCommands(Document& document, ElevationView& view, FileCommands& files,
                                             Actions& actions, QMainWindow& window)
    : QObject(&window),
      document_(document),
      view_(view),
      files_(files),
      actions_(actions),
      window_(window),
      player_(new demonstration::Player(document, this)),
      stage_(new QSplitter(Qt::Horizontal, &window))
{
    stage_->setChildrenCollapsible(false);
    stage_->addWidget(&view_);
    connect(player_, &demonstration::Player::moved, this, &DemonstrationCommands::show);
    connectActions();
}

demonstration::DemonstrationBar& DemonstrationCommands::bar()
{
    if (bar_)
        return *bar_;
    QWidget* column = replaced_->parentWidget();
    bar_ = new demonstration::DemonstrationBar(*player_, document_, column);
    bar_->hide();
    bar_->takeKeysOf(view_);
    column->layout()->addWidget(bar_);
    connect(bar_, &demonstration::DemonstrationBar::findingsHiddenChanged, this,
            &DemonstrationCommands::hideFindings);
    connect(bar_, &demonstration::DemonstrationBar::leaveWanted, this, [this] {
        if (full_screen_)
            setFullScreen(false);
        else
            leave();
    });
    connect(bar_, &demonstration::DemonstrationBar::fullScreenWanted, this,
            [this] { setFullScreen(!full_screen_); });
    return *bar_;
}

bool DemonstrationCommands::findingsHidden() const
{
    return bar_ && bar_->findingsHidden();
}

void DemonstrationCommands::connectActions()
{
    const auto on = [this](const char* id, auto act) {
        QAction* action = actions_[QString::fromLatin1(id)];
        window_.addAction(action); // so that its key works while the menus are hidden
        connect(action, &QAction::triggered, this, act);
    };
    on("demonstrate", [this] { player_->active() ? leave() : begin(); });
    on("demo-findings", [this] { bar().setFindingsHidden(!findingsHidden()); });
    on("demo-ask", [this] { bar().ask(true); });
    on("demo-full-screen", [this] { setFullScreen(!full_screen_); });
    on("demo-beside", [this] {
        if (beside_) {
            closeBeside();
            return;
        }
        QFileDialog* dialog = newFileDialog(&window_, tr("Show a second drawing beside"));
        dialog->setNameFilter(tr("Sketches (*.siphon)"));
        connect(dialog, &QFileDialog::fileSelected, this, &DemonstrationCommands::openBeside);
        dialog->open();
    });
    on("demo-moment", [this] {
        askForFile(tr("Export this moment"), {tr("PNG (*.png)"), tr("SVG (*.svg)")},
                   &DemonstrationCommands::exportMomentTo);
    });
    on("demo-handout", [this] {
        askForFile(tr("Export the handout"), {tr("PDF (*.pdf)")}, &DemonstrationCommands::exportHandoutTo);
    });
    on("demo-sequence", [this] {
        QFileDialog* dialog = newFileDialog(&window_, tr("Folder for the pictures"));
        dialog->setFileMode(QFileDialog::Directory);
        connect(dialog, &QFileDialog::fileSelected, this, &DemonstrationCommands::exportSequenceTo);
        dialog->open();
    });
}

void DemonstrationCommands::begin()
{
    if (player_->active())
        return;
    replaced_->hide();
    bar().votes().startAgain();
    bar().show();
    player_->begin();
    view_.setFocus();
    QMetaObject::invokeMethod(&view_, &ElevationView::zoomToFit, Qt::QueuedConnection);
    Q_EMIT activeChanged();
}

void DemonstrationCommands::leave()
{
    if (!player_->active())
        return;
    setFullScreen(false);
    closeBeside();
    bar_->setFindingsHidden(false);
    bar_->ask(false);
    player_->end();
    view_.setContents(nullptr);
    bar_->hide();
    replaced_->show();
    view_.setFocus();
    Q_EMIT activeChanged();
}

void DemonstrationCommands::show()
{
    const demonstration::Moment* moment = player_->moment();
    view_.setContents(moment ? std::make_shared<const drawing::Contents>(moment->contents) : nullptr);
}

void DemonstrationCommands::hideFindings(bool hidden)
{
    view_.setFindingsShown(!hidden);
    if (beside_)
        beside_->setFindingsShown(!hidden);
    actions_[QStringLiteral("demo-findings")]->setChecked(hidden);
    if (hidden)
        put_away_ = putAway(telltales_);
    else
        bringBack(put_away_);
    // Panels come and go with the findings; the drawing takes the room that is left.
    QMetaObject::invokeMethod(&view_, &ElevationView::zoomToFit, Qt::QueuedConnection);
}

void DemonstrationCommands::setFullScreen(bool on)
{
    if (on == full_screen_ || (on && !player_->active()))
        return;
    full_screen_ = on;
    actions_[QStringLiteral("demo-full-screen")]->setChecked(on);
    if (on) {
        QList<QWidget*> around = {window_.menuBar(), window_.statusBar()};
        for (QToolBar* tools : window_.findChildren<QToolBar*>())
            around.append(tools);
        for (QDockWidget* dock : window_.findChildren<QDockWidget*>())
            around.append(dock);
        off_stage_ = putAway(around);
        window_.setWindowState(window_.windowState() | Qt::WindowFullScreen);
    } else {
        window_.setWindowState(window_.windowState() & ~Qt::WindowFullScreen);
        bringBack(off_stage_);
        // What was hidden for the full screen may tell the findings.
        if (findingsHidden())
            for (const QPointer<QWidget>& more : putAway(telltales_))
                if (!put_away_.contains(more))
                    put_away_.append(more);
    }
    bar_->setLarge(on);
    for (ElevationView* view : {&view_, beside_ ? &beside_->view() : nullptr}) {
        if (!view)
            continue;
        view->setLettering(on ? large_lettering : 1);
        QMetaObject::invokeMethod(view, &ElevationView::zoomToFit, Qt::QueuedConnection);
    }
}

void DemonstrationCommands::setLook(drawing::Look look)
{
    look_ = look;
    if (beside_)
        beside_->view().setLook(look);
}

void DemonstrationCommands::closeBeside()
{
    if (!beside_)
        return;
    delete beside_;
    actions_[QStringLiteral("demo-beside")]->setChecked(false);
    QMetaObject::invokeMethod(&view_, &ElevationView::zoomToFit, Qt::QueuedConnection);
}

void DemonstrationCommands::openBeside(const QString& path)
{
    std::optional<FileRead> found = files_.readDrawing(path);
    if (!found)
        return;
    if (const auto* problems = std::get_if<QStringList>(&*found)) {
        tell(tr("The second drawing could not be opened."), *problems);
        return;
    }
    begin();
    closeBeside();
    beside_ = new demonstration::Beside(*player_);
    beside_->take(std::move(std::get<SketchFile>(*found)));
    beside_->setFindingsShown(!findingsHidden());
    beside_->view().setLook(look_);
    beside_->view().setLettering(full_screen_ ? large_lettering : 1);
    stage_->addWidget(beside_);
    stage_->setSizes(QList<int>(stage_->count(), stage_->width()));
    actions_[QStringLiteral("demo-beside")]->setChecked(true);
    QMetaObject::invokeMethod(&view_, &ElevationView::zoomToFit, Qt::QueuedConnection);
}

drawing::Style DemonstrationCommands::style() const
{
    drawing::Style style;
    style.units = document_.sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    style.balloons = !findingsHidden();
    style.findings = !findingsHidden();
    return style;
}

void DemonstrationCommands::tell(const QString& sentence, const QStringList& problems)
{
    if (!problems.isEmpty())
        files_.tell(sentence, problems);
}

void DemonstrationCommands::askForFile(const QString& title, const QStringList& filters,
                                       void (DemonstrationCommands::*then)(const QString&))
{
    QFileDialog* dialog = newFileDialog(&window_, title);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters(filters);
    const auto suffixOf = [](const QString& filter) {
        return filter.mid(filter.indexOf(QLatin1String("*.")) + 2, 3);
    };
    dialog->setDefaultSuffix(suffixOf(filters.first()));
    dialog->selectFile(QFileInfo(displayName(document_)).completeBaseName());
    connect(dialog, &QFileDialog::filterSelected, dialog,
            [dialog, suffixOf](const QString& filter) { dialog->setDefaultSuffix(suffixOf(filter)); });
    connect(dialog, &QFileDialog::fileSelected, this, then);
    dialog->open();
}

void DemonstrationCommands::exportMomentTo(const QString& path)
{
    if (const demonstration::Moment* moment = player_->moment())
        tell(tr("The moment could not be written."),
             demonstration::exportMoment(path, document_.sketch(), document_.analysis(), *moment, style(),
                                         files_.put()));
}

void DemonstrationCommands::exportSequenceTo(const QString& folder)
{
    const QString failed = tr("The pictures could not be written.");
    const auto problems = files_.read<QStringList>(
        folder, [folder] { return demonstration::makeFolder(folder); }, SlowCall::What::writing);
    if (!problems || !problems->isEmpty()) {
        tell(failed, problems.value_or(QStringList()));
        return;
    }
    // While a picture is written what they are made of may be judged anew: they are all of one state.
    const Analysis analysis = document_.analysis();
    const demonstration::Demonstration shown = player_->demonstration();
    tell(failed, demonstration::exportSequence(folder, document_.sketch(), analysis, shown, style(),
                                               sequence_step, files_.put()));
}

void DemonstrationCommands::exportHandoutTo(const QString& path)
{
    tell(tr("The handout could not be written."),
         demonstration::exportHandout(path, document_.sketch(), document_.analysis(),
                                      player_->demonstration(), files_.put()));
}

} // namespace siphonwright
