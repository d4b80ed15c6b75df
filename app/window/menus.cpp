#include "app/commissioning/commissioning_panel.h"
#include "app/language/language.h"
#include "app/proposing/layouts_panel.h"
#include "app/sizing/sizing_panel.h"
#include "app/warming/bore_table.h"
#include "app/warming/chart_view.h"
#include "app/warming/grade_table.h"
#include "app/warming/warm_up_panel.h"
#include "app/window/checklist_commands.h"
#include "app/window/end_view_commands.h"
#include "app/window/file_commands.h"
#include "app/window/file_dialog.h"
#include "app/window/insertions.h"
#include "app/window/language_menu.h"
#include "app/window/main_window.h"
#include "app/window/paper_commands.h"
#include "app/window/part_menu.h"
#include "app/window/photo_commands.h"
#include "app/window/settings.h"
#include "app/window/sheet_commands.h"
#include "app/window/snap_menu.h"
#include "app/window/survey_commands.h"

#include <QActionGroup>
#include <QDockWidget>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMenuBar>
#include <QTimer>
#include <QToolBar>
#include <QToolButton>

/// The window's menus and tools, and what each action does.
namespace siphonwright {

namespace {

struct ToolAction {
    const char* id;
    ToolKind kind;
};
constexpr ToolAction tool_actions[] = {
    {"select", ToolKind::select},
    {"supply-hose", ToolKind::supply_hose},
    {"return-hose", ToolKind::return_hose},
    {"port", ToolKind::port},
    {"heater", ToolKind::heater},
    {"valve", ToolKind::valve},
    {"bleed", ToolKind::bleed},
    {"clip", ToolKind::clip},
    {"area", ToolKind::area},
    {"tank", ToolKind::tank},
    {"dimension", ToolKind::dimension},
};

} // namespace

QMenu* MainWindow::addMenu(const QString& title, const QStringList& ids)
{
    QMenu* menu = menuBar()->addMenu(title);
    menu->setToolTipsVisible(true);
    for (const QString& id : ids) {
        if (id.isEmpty())
            menu->addSeparator();
        else
            menu->addAction((*actions_)[id]);
    }
    return menu;
}

void MainWindow::buildMenus()
{
    buildFileMenu();
    buildEditMenu();
    buildViewMenu();
    buildInsertMenu();
    buildJobMenu();
    addMenu(tr("&Demonstrate"), {QStringLiteral("demonstrate"), QString(), QStringLiteral("demo-findings"),
                                 QStringLiteral("demo-ask"), QStringLiteral("demo-beside"),
                                 QStringLiteral("demo-full-screen"), QString(), QStringLiteral("demo-moment"),
                                 QStringLiteral("demo-sequence"), QStringLiteral("demo-handout")});
    buildHelpMenu();
}

void MainWindow::buildFileMenu()
{
    QMenu* menu = addMenu(tr("&File"), {QStringLiteral("new")});
    menu->addAction((*actions_)[QStringLiteral("new-from-template")]);
    menu->addAction((*actions_)[QStringLiteral("open")]);
    QMenu* recent = menu->addMenu(tr("Open &recent"));
    menu->addAction((*actions_)[QStringLiteral("recover")]);
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
    menu->addSeparator();
    for (const char* id : {"save", "save-as", "export", "preview", "print"})
        menu->addAction((*actions_)[QString::fromLatin1(id)]);
    QMenu* pages = menu->addMenu(tr("Sheet pa&ges"));
    for (const char* id : {"sheet-checklist", "sheet-parts", "sheet-estimate", "sheet-assumptions",
                           "sheet-photo", "sheet-logo", "sheet-student"})
        pages->addAction((*actions_)[QString::fromLatin1(id)]);
    QMenu* paper = menu->addMenu(tr("Sheet &paper"));
    const QStringList names = {tr("After the units"), QStringLiteral("A4"), QStringLiteral("A3"),
                               tr("Letter"), tr("Tabloid")};
    addChoices(*paper, names, settings::paper.get() + 1,
               [](qsizetype i) { settings::paper.set(int(i) - 1); });
    paper->addSeparator();
    QAction* upright = paper->addAction(tr("&Upright"));
    upright->setCheckable(true);
    upright->setChecked(settings::upright.get());
    connect(upright, &QAction::toggled, this, [](bool on) { settings::upright.set(on); });
    fillScales(*paper->addMenu(tr("Sca&le")));
    paper->addAction((*actions_)[QStringLiteral("sheet-colour")]);
    menu->addSeparator();
    menu->addAction((*actions_)[QStringLiteral("quit")]);
}

/// Those that ISO 5455 recommends; at one too large for the paper the drawing goes over several pages.
void MainWindow::fillScales(QMenu& menu)
{
    const QList<int> reductions = {0, 1, 2, 5, 10, 20, 50, 100};
    QStringList names = {tr("The largest that fits on one page")};
    for (const int n : reductions.mid(1))
        names << QStringLiteral("1:%1").arg(n);
    addChoices(menu, names, reductions.indexOf(settings::scale.get()),
               [reductions](qsizetype i) { settings::scale.set(reductions[i]); });
}

void MainWindow::addChoices(QMenu& menu, const QStringList& names, qsizetype chosen,
                            const std::function<void(qsizetype)>& choose)
{
    auto* group = new QActionGroup(this);
    for (qsizetype i = 0; i < names.size(); ++i) {
        QAction* action = menu.addAction(names[i]);
        action->setCheckable(true);
        action->setChecked(i == chosen);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [choose, i] { choose(i); });
    }
}

void MainWindow::fillRecent(QMenu& menu)
{
    menu.clear();
    for (const QString& path : recentFiles()) {
        QAction* action = menu.addAction(QFileInfo(path).fileName());
        action->setToolTip(path);
        connect(action, &QAction::triggered, this, [this, path] { files_->open(path); });
    }
    if (menu.isEmpty())
        menu.addAction(tr("No file yet"))->setEnabled(false);
}

void MainWindow::buildEditMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = document_.undoStack().createUndoAction(this, tr("&Undo"));
    QAction* redo = document_.undoStack().createRedoAction(this, tr("&Redo"));
    undo->setShortcut(QKeySequence::Undo);
    redo->setShortcuts({QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), QKeySequence(Qt::CTRL | Qt::Key_Y)});
    undo->setObjectName(QStringLiteral("undo"));
    redo->setObjectName(QStringLiteral("redo"));
    actions_->takeIn(*undo);
    actions_->takeIn(*redo);
    menu->addActions({undo, redo});
    menu->addSeparator();
    addEditing(*menu, *actions_);
    for (const char* id : {"next-finding", "fix-finding", "about-rule"})
        menu->addAction((*actions_)[QString::fromLatin1(id)]);
}

void MainWindow::buildViewMenu()
{
    QMenu* menu =
        addMenu(tr("&View"),
                {QStringLiteral("fit"), QStringLiteral("fit-selection"), QStringLiteral("zoom-in"),
                 QStringLiteral("zoom-out"), QString(), QStringLiteral("grid"), QStringLiteral("snapping"),
                 QString(), QStringLiteral("running-figures"), QStringLiteral("tint-hoses"), QString(),
                 QStringLiteral("metric"), QStringLiteral("inch"), QString(), QStringLiteral("rules"),
                 QStringLiteral("assumptions"), QString()});
    QMenu* look = menu->addMenu(tr("&Look"));
    for (const char* id : {"look-of-desktop", "light", "dark", "high-contrast", "high-contrast-dark"})
        look->addAction((*actions_)[QString::fromLatin1(id)]);
    QMenu* text = menu->addMenu(tr("Te&xt size"));
    for (const char* id : {"text-100", "text-125", "text-150", "text-175", "text-200"})
        text->addAction((*actions_)[QString::fromLatin1(id)]);
    fillLanguageMenu(*menu->addMenu(tr("Lan&guage")), *actions_, *this);
    auto* snap_to = new QMenu(tr("Snap &to"), menu);
    fillSnapMenu(*snap_to, *actions_, *view_);
    const QList<QAction*> listed = menu->actions();
    menu->insertMenu(listed.value(listed.indexOf((*actions_)[QStringLiteral("snapping")]) + 1), snap_to);
    menu->addMenu(panels_menu_);
    menu->addSeparator();
    for (const char* id : {"end-view", "end-view-level", "third-angle"})
        menu->addAction((*actions_)[QString::fromLatin1(id)]);
    menu->addAction((*actions_)[QStringLiteral("default-layout")]);
}

void MainWindow::buildInsertMenu()
{
    QMenu* menu = menuBar()->addMenu(tr("&Insert"));
    menu->addAction((*actions_)[QStringLiteral("shelf")]);
    menu->addAction((*actions_)[QStringLiteral("insert-engine")]);
    menu->addAction((*actions_)[QStringLiteral("insert-heater")]);
    menu->addSeparator();
    photo_->addTo(*menu);
    menu->addSeparator();
    for (const char* id :
         {"insert-supply-port", "insert-return-port", "insert-supply-hose", "insert-return-hose",
          "insert-point", "insert-valve", "insert-bleed", "insert-tank", "insert-area"})
        menu->addAction((*actions_)[QString::fromLatin1(id)]);
    menu->addSeparator();
    menu->addAction((*actions_)[QStringLiteral("dimension")]);
}

/// In the order of the work: survey, size, proof, paper, commissioning.
void MainWindow::buildJobMenu()
{
    addMenu(tr("&Job"),
            {QStringLiteral("survey"), QStringLiteral("survey-form"), QString(), QStringLiteral("sizing"),
             QStringLiteral("propose-layouts"), QString(), QStringLiteral("warm-up"),
             QStringLiteral("by-bore"), QStringLiteral("on-grades"), QStringLiteral("keep-curve"),
             QStringLiteral("drop-curves"), QStringLiteral("export-warm-up"), QString(),
             QStringLiteral("parts"), QStringLiteral("estimate"), QString(), QStringLiteral("commissioning"),
             QStringLiteral("print-checklist"), QStringLiteral("export-checklist")});
}

void MainWindow::buildHelpMenu()
{
    addMenu(tr("&Help"), {QStringLiteral("find-command"), QStringLiteral("shortcuts"), QString(),
                          QStringLiteral("first-steps"), QStringLiteral("teaching"),
                          QStringLiteral("cautions"), QString(), QStringLiteral("about")});
}

void MainWindow::buildTools()
{
    QToolBar* bar = addToolBar(tr("Tools"));
    bar->setObjectName(QStringLiteral("tools"));
    auto* group = new QActionGroup(this);
    for (const ToolAction& tool : tool_actions) {
        QAction* action = (*actions_)[QString::fromLatin1(tool.id)];
        group->addAction(action);
        bar->addAction(action);
        connect(action, &QAction::triggered, this, [this, kind = tool.kind] {
            view_->setTool(kind);
            view_->setFocus();
        });
    }
    bar->addSeparator();
    for (const char* id : {"undo", "redo", "fit"}) {
        auto* action = findChild<QAction*>(QString::fromLatin1(id));
        bar->addAction(action);
    }
    const auto follow = [this] {
        for (const ToolAction& tool : tool_actions)
            if (tool.kind == view_->tool())
                (*actions_)[QString::fromLatin1(tool.id)]->setChecked(true);
    };
    connect(view_, &ElevationView::toolChanged, this, follow);
    follow();
}

void MainWindow::connectFileActions()
{
    const auto on = [this](const char* id, auto act) {
        connect((*actions_)[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    on("new", [this] { files_->startNew(); });
    on("open", [this] { files_->choose(); });
    on("save", [this] { files_->save(); });
    on("save-as", [this] { files_->saveAs(); });
    on("recover", [this] { offerRecovery(); });
    on("export", [this] { sheet_->exportSheet(); });
    on("preview", [this] { sheet_->preview(); });
    on("print", [this] { sheet_->print(); });
    on("quit", [this] { close(); });
    connect((*actions_)[QStringLiteral("sheet-student")], &QAction::toggled, this,
            [this](bool students) { sheet_->setForStudents(students); });
    on("sheet-logo", [this] { sheet_->chooseLogo(); });
    for (const auto& [id, setting] : {std::pair{"sheet-checklist", &settings::checklist_behind},
                                      std::pair{"sheet-parts", &settings::parts_behind},
                                      std::pair{"sheet-estimate", &settings::estimate_behind},
                                      std::pair{"sheet-assumptions", &settings::assumptions_behind}}) {
        QAction* behind = (*actions_)[QString::fromLatin1(id)];
        behind->setChecked(setting->get());
        connect(behind, &QAction::toggled, this, [kept = setting](bool on_paper) { kept->set(on_paper); });
    }
    QAction* photo = (*actions_)[QStringLiteral("sheet-photo")];
    photo->setChecked(settings::photo_on_sheet.get());
    connect(photo, &QAction::toggled, this, [](bool under) { settings::photo_on_sheet.set(under); });
    QAction* colour = (*actions_)[QStringLiteral("sheet-colour")];
    colour->setChecked(settings::colour.get());
    connect(colour, &QAction::toggled, this, [](bool on_paper) { settings::colour.set(on_paper); });
}

void MainWindow::connectEditActions()
{
    const auto on = [this](const char* id, auto act) {
        connect((*actions_)[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    on("select-next", [this] { stepThroughParts(1); });
    on("select-previous", [this] { stepThroughParts(-1); });
    on("next-finding", [this] { showNextFinding(); });
    on("fix-finding", [this] { findings_->fix(); });
    on("about-rule", [this] { showRuleOfFinding(); });
}

void MainWindow::connectViewActions()
{
    const auto on = [this](const char* id, auto act) {
        connect((*actions_)[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    on("fit", [this] { view_->zoomToFit(); });
    on("rules", [this] { showRules(); });
    on("assumptions", [this] { showAssumptions(); });
    on("fit-selection", [this] { view_->zoomToSelection(); });
    on("zoom-in", [this] { view_->zoomIn(); });
    on("zoom-out", [this] { view_->zoomOut(); });
    on("metric", [this] { setUnits(UnitChoice::metric); });
    on("inch", [this] { setUnits(UnitChoice::inch); });
    const auto toggle = [this](const char* id, const Setting<bool>& setting,
                               void (ElevationView::*set)(bool)) {
        QAction* action = (*actions_)[QString::fromLatin1(id)];
        action->setChecked(setting.get());
        (view_->*set)(setting.get());
        connect(action, &QAction::toggled, this, [this, &setting, set](bool on_now) {
            setting.set(on_now);
            (view_->*set)(on_now);
        });
    };
    toggle("grid", settings::grid, &ElevationView::setGridShown);
    toggle("snapping", settings::snapping, &ElevationView::setSnapping);
    toggle("running-figures", settings::running, &ElevationView::setRunningShown);
    toggle("tint-hoses", settings::tint, &ElevationView::setTinted);
}

void MainWindow::connectJobActions()
{
    const auto on = [this](const char* id, auto act) {
        connect((*actions_)[QString::fromLatin1(id)], &QAction::triggered, this, act);
    };
    const auto raise = [](QWidget* panel) {
        auto* dock = static_cast<QDockWidget*>(panel->parentWidget());
        dock->show();
        dock->raise();
    };
    connect(survey_, &SurveyCommands::drawn, view_, &ElevationView::zoomToFit);
    on("survey", [this] { survey_->show(); });
    on("survey-form", [this] { survey_->exportForm(); });
    on("parts", [this] { paper_->show(paper::PaperWindow::Tab::parts); });
    on("estimate", [this] { paper_->show(paper::PaperWindow::Tab::estimate); });
    // Forms and tables want more height than a profile; whoever has made the panel higher keeps it.
    const auto raise_high = [this, raise](QWidget* panel, int readable_px) {
        raise(panel);
        if (panel->height() < readable_px)
            resizeDocks({static_cast<QDockWidget*>(panel->parentWidget())}, {readable_px}, Qt::Vertical);
    };
    on("warm-up", [this, raise_high] {
        raise_high(warm_up_, 230);
        warm_up_->chart().setFocus();
    });
    on("by-bore", [this, raise_high] { raise_high(by_bore_, 180); });
    on("on-grades", [this, raise_high] { raise_high(on_grades_, 170); });
    on("sizing", [this, raise_high] { raise_high(sizing_, 300); });
    on("propose-layouts", [this, raise_high] {
        raise_high(layouts_, 470);
        layouts_->panel().begin();
        // A panel that was closed has its place only when the window has been laid out anew.
        QTimer::singleShot(0, this, [this, raise_high] { raise_high(layouts_, 470); });
    });
    on("commissioning", [this, raise] { raise(commissioning_); });
    on("print-checklist", [this] { checklist_->print(); });
    on("export-checklist", [this] { checklist_->exportPages(); });
    on("keep-curve", [this] { warm_up_->keep(); });
    on("drop-curves", [this] { warm_up_->dropAll(); });
    on("export-warm-up", [this] { exportWarmUp(); });
    connect(warm_up_, &warming::WarmUpPanel::exportWanted, this, &MainWindow::exportWarmUp);
    connect(warm_up_, &warming::WarmUpPanel::stateChanged, this, &MainWindow::refresh);
}

void MainWindow::exportWarmUp()
{
    QFileDialog* dialog = newFileDialog(this, tr("Export the warm-up"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({tr("CSV (*.csv)"), tr("PNG (*.png)"), tr("SVG (*.svg)")});
    dialog->setDefaultSuffix(QStringLiteral("csv"));
    dialog->selectFile(tr("%1 warm-up").arg(QFileInfo(displayName(document_)).completeBaseName()));
    connect(dialog, &QFileDialog::filterSelected, dialog, [dialog](const QString& filter) {
        const auto from = filter.indexOf(QLatin1String("*.")) + 2;
        dialog->setDefaultSuffix(filter.mid(from, 3));
    });
    connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& path) {
        const QStringList problems = warm_up_->exportTo(path, files_->put());
        if (!problems.isEmpty())
            files_->tell(tr("The warm-up could not be written."), problems);
    });
    dialog->open();
}

void MainWindow::connectInsertActions()
{
    const auto on = [this](const char* id, const std::function<PartRef(Sketch&)>& edit) {
        QAction* action = (*actions_)[QString::fromLatin1(id)];
        connect(action, &QAction::triggered, this, [this, action, edit] {
            insert(tr("Add %1").arg(language::withinSentence(action->text().remove(QLatin1Char('&')))), edit);
        });
    };
    on("insert-supply-port", [](Sketch& sketch) { return insertPort(sketch, PortRole::supply); });
    on("insert-return-port", [](Sketch& sketch) { return insertPort(sketch, PortRole::return_); });
    on("insert-supply-hose", [](Sketch& sketch) { return insertHose(sketch, HoseRole::supply); });
    on("insert-return-hose", [](Sketch& sketch) { return insertHose(sketch, HoseRole::return_); });
    on("insert-tank", &insertTank);
    on("insert-area", &insertArea);
    on("insert-point", [this](Sketch& sketch) {
        return insertRoutePoint(sketch, document_.analysis().layout, selection_.part().id);
    });
    on("insert-valve", [this](Sketch& sketch) { return insertValve(sketch, selection_.part().id); });
    on("insert-bleed", [this](Sketch& sketch) {
        return insertBleed(sketch, document_.analysis().layout, selection_.part().id);
    });
}

} // namespace siphonwright
