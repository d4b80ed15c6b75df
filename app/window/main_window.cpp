#include "app/window/main_window.h"

#include "app/assumptions/assumption_window.h"
#include "app/commissioning/commissioning_panel.h"
#include "app/language/in_words.h"
#include "app/panels/details_panel.h"
#include "app/panels/field.h"
#include "app/panels/findings_panel.h"
#include "app/panels/grade_strip.h"
#include "app/panels/profile_panel.h"
#include "app/proposing/layouts_panel.h"
#include "app/rules/rule_browser.h"
#include "app/sizing/sizing_panel.h"
#include "app/warming/bore_table.h"
#include "app/warming/grade_table.h"
#include "app/warming/warm_up_panel.h"
#include "app/window/about.h"
#include "app/window/checklist_commands.h"
#include "app/window/demonstration_commands.h"
#include "app/window/edit_commands.h"
#include "app/window/elided_label.h"
#include "app/window/end_view_commands.h"
#include "app/window/file_commands.h"
#include "app/window/file_strip.h"
#include "app/window/first_steps.h"
#include "app/window/insertions.h"
#include "app/window/keys.h"
#include "app/window/look.h"
#include "app/window/paper_commands.h"
#include "app/window/photo_commands.h"
#include "app/window/safekeeping.h"
#include "app/window/settings.h"
#include "app/window/sheet_commands.h"
#include "app/window/shelf.h"
#include "app/window/side_title.h"
#include "app/window/survey_commands.h"

#include <QCloseEvent>
#include <QDockWidget>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QSplitter>
#include <QStatusBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace siphonwright {

MainWindow::MainWindow(QWidget* parent) : MainWindow(dressProgram(), parent) {}

MainWindow::MainWindow(drawing::Look desktop_look, QWidget* parent)
    : QMainWindow(parent),
      desktop_look_(desktop_look),
      actions_(new Actions(this)),
      view_(new ElevationView(document_, selection_, this)),
      files_(new FileCommands(document_, *this)),
      sheet_(new SheetCommands(document_, *files_, *this)),
      paper_(new PaperCommands(document_, selection_, *files_, *sheet_, *this)),
      checklist_(new ChecklistCommands(document_, *sheet_, *files_, *this)),
      survey_(new SurveyCommands(document_, *files_, *this)),
      photo_(new PhotoCommands(document_, selection_, *view_, *files_, *actions_, *this)),
      demonstration_(new DemonstrationCommands(document_, *view_, *files_, *actions_, *this)),
      end_view_(new EndViewCommands(document_, selection_, *view_, *actions_, demonstration_->stage())),
      panels_menu_(new QMenu(tr("&Panels"), this))
{
    setAcceptDrops(true);
    buildPanels();
    buildMenus();
    buildTools();
    buildStatusLine();
    auto* centre = new QWidget(this);
    grade_ = new panels::GradeStrip(document_, centre);
    first_steps_ = new FirstSteps(document_, selection_, *actions_, centre);
    auto* column = new QVBoxLayout(centre);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    file_strip_ = new FileStrip(document_, *files_, centre);
    column->addWidget(file_strip_);
    column->addWidget(first_steps_);
    column->addWidget(&demonstration_->stage(), 1);
    column->addWidget(grade_);
    demonstration_->standInFor(*grade_);
    setCentralWidget(centre);
    edits_ = new EditCommands(*view_, *details_, *shelf_, *actions_, *files_, *this);
    connectFileActions();
    connectEditActions();
    connectViewActions();
    connectJobActions();
    connectInsertActions();
    connectAppearance();
    connectGuidance();
    keys_ = new Keys(*actions_, this);
    connect(&document_, &Document::changed, this, &MainWindow::refresh);
    connect(&document_, &Document::analysed, this, &MainWindow::refresh);
    connect(&document_, &Document::fileChanged, this, &MainWindow::refreshTitle);
    connect(&selection_, &Selection::partChanged, this, &MainWindow::refresh);
    connect(&selection_, &Selection::findingChanged, this, &MainWindow::refresh);
    connect(demonstration_, &DemonstrationCommands::activeChanged, this, &MainWindow::refresh);
    connect(files_, &FileCommands::opened, this, [this] {
        demonstration_->leave();
        selection_.select({});
        selection_.selectFinding(-1);
        first_steps_->restart();
        if (commissioning_->built())
            commissioning_->built()->restart();
        view_->zoomToFit();
    });
    connect(files_, &FileCommands::welcomed, first_steps_, &FirstSteps::invite);
    applyLook();
    restoreLayout();
    refresh();
    refreshTitle();
    constexpr int first_painted_ms = 50; // until then the window has the machine to itself
    QTimer::singleShot(first_painted_ms, this, [this] { document_.startProving(); });
}

MainWindow::~MainWindow()
{
    delete paper_;
    delete safekeeping_; // before the document it keeps
}

void MainWindow::keepSafe(const QString& folder)
{
    if (safekeeping_)
        return;
    safekeeping_ = new Safekeeping(document_, *files_, *file_strip_, *this, folder);
    safekeeping_->offerAtStart();
}

void MainWindow::offerRecovery()
{
    if (safekeeping_)
        safekeeping_->offer();
}

QDockWidget* MainWindow::addPanel(const QString& title, const QString& name, Qt::DockWidgetArea area,
                                  QWidget* panel)
{
    auto* dock = new QDockWidget(title, this);
    dock->setObjectName(name);
    dock->setWidget(panel);
    addDockWidget(area, dock);
    panels_menu_->addAction(dock->toggleViewAction());
    return dock;
}

template <class Panel>
QDockWidget* MainWindow::addLatePanel(const QString& title, const QString& name, Qt::DockWidgetArea area,
                                      LatePanel<Panel>* panel)
{
    QDockWidget* dock = addPanel(title, name, area, panel);
    connect(dock, &QDockWidget::visibilityChanged, panel, [panel](bool seen) {
        if (seen)
            panel->panel();
    });
    return dock;
}

void MainWindow::buildPanels()
{
    findings_ = new panels::FindingsPanel(document_, selection_);
    details_ = new panels::DetailsPanel(document_, selection_);
    profile_ = new panels::ProfilePanel(document_, selection_);
    profile_->setExaggeration(settings::profile_heights.get());
    connect(profile_, &panels::ProfilePanel::exaggerationChanged, this,
            [](int times) { settings::profile_heights.set(times); });
    setCorner(Qt::BottomRightCorner, Qt::RightDockWidgetArea);
    auto* findings = addPanel(tr("Findings"), QStringLiteral("findings"), Qt::RightDockWidgetArea, findings_);
    auto* details = addPanel(tr("Details"), QStringLiteral("details"), Qt::RightDockWidgetArea, details_);
    auto* profile =
        addPanel(tr("Run profile"), QStringLiteral("profile"), Qt::BottomDockWidgetArea, profile_);
    warm_up_ = new warming::WarmUpPanel(document_, selection_);
    auto* warm_up = addPanel(tr("Warm-up"), QStringLiteral("warm-up"), Qt::BottomDockWidgetArea, warm_up_);
    by_bore_ = new LatePanel<warming::BoreTable>(
        [this](QWidget* parent) { return new warming::BoreTable(document_, parent); });
    auto* by_bore =
        addLatePanel(tr("By bore"), QStringLiteral("by-bore"), Qt::BottomDockWidgetArea, by_bore_);
    on_grades_ = new LatePanel<warming::GradeTable>(
        [this](QWidget* parent) { return new warming::GradeTable(document_, parent); });
    auto* on_grades =
        addLatePanel(tr("On grades"), QStringLiteral("on-grades"), Qt::BottomDockWidgetArea, on_grades_);
    tabifyDockWidget(profile, warm_up);
    tabifyDockWidget(warm_up, by_bore);
    tabifyDockWidget(by_bore, on_grades);
    sizing_ = new LatePanel<sizing::SizingPanel>(
        [this](QWidget* parent) { return new sizing::SizingPanel(document_, selection_, parent); });
    auto* sizing = addLatePanel(tr("Heater size and supply"), QStringLiteral("sizing"),
                                Qt::BottomDockWidgetArea, sizing_);
    connect(sizing, &QDockWidget::visibilityChanged, sizing_, [this](bool seen) {
        if (seen)
            sizing_->panel().comeIntoSight();
    });
    tabifyDockWidget(on_grades, sizing);
    // Their names stand on the tabs: a title at the side leaves its height to the elevation.
    for (QDockWidget* dock : {profile, warm_up, by_bore, on_grades, sizing})
        putTitleAtSide(*dock);
    profile->raise();
    // As high as the window, and away until it is wanted: the elevation needs the room while one draws.
    commissioning_ = new LatePanel<commissioning::CommissioningPanel>(
        [this](QWidget* parent) { return buildCommissioning(parent); }, {400, 600});
    setCorner(Qt::BottomLeftCorner, Qt::LeftDockWidgetArea);
    addLatePanel(tr("Commissioning"), QStringLiteral("commissioning"), Qt::LeftDockWidgetArea, commissioning_)
        ->hide();
    shelf_ = new Shelf;
    addPanel(tr("Shelf"), QStringLiteral("shelf"), Qt::LeftDockWidgetArea, shelf_)->hide();
    layouts_ =
        new LatePanel<proposing::LayoutsPanel>([this](QWidget* parent) { return buildLayouts(parent); });
    auto* layouts = addLatePanel(tr("Layouts"), QStringLiteral("layouts"), Qt::RightDockWidgetArea, layouts_);
    // Behind the details, so that findings and elevation stay in sight.
    tabifyDockWidget(details, layouts);
    layouts->hide();
    sizePanels();
    for (QDockWidget* dock : {findings, details, profile, warm_up, by_bore, on_grades, sizing, layouts})
        demonstration_->addTelltale(*dock);
    connect(findings_, &panels::FindingsPanel::findingChosen, view_, &ElevationView::showFinding);
    connect(findings_, &panels::FindingsPanel::ruleWanted, this, &MainWindow::showRules);
}

commissioning::CommissioningPanel* MainWindow::buildCommissioning(QWidget* parent)
{
    using commissioning::CommissioningPanel;
    auto* panel = new CommissioningPanel(document_, selection_, parent);
    panel->setLook(look());
    connect(panel, &CommissioningPanel::printWanted, checklist_, &ChecklistCommands::print);
    connect(panel, &CommissioningPanel::exportWanted, checklist_, &ChecklistCommands::exportPages);
    connect(panel, &CommissioningPanel::placeWanted, view_, &ElevationView::showPlace);
    return panel;
}

proposing::LayoutsPanel* MainWindow::buildLayouts(QWidget* parent)
{
    using proposing::LayoutsPanel;
    auto* panel = new LayoutsPanel(document_, selection_, parent);
    connect(panel, &LayoutsPanel::ghostChanged, view_, &ElevationView::setGhost);
    connect(panel, &LayoutsPanel::ruleWanted, this, &MainWindow::showRules);
    connect(panel, &LayoutsPanel::areaWanted, this, [this, panel] {
        view_->askForBox(tr("Drag a rectangle in which the heater may hang, or click two opposite corners."),
                         [panel](Vec2 least, Vec2 most) { panel->setArea(least, most); });
        view_->setFocus();
    });
    return panel;
}

void MainWindow::buildStatusLine()
{
    hint_ = new ElidedLabel(this);
    place_ = new QLabel(this);
    verdict_ = new QLabel(this);
    statusBar()->addWidget(hint_, 1);
    statusBar()->addPermanentWidget(place_);
    statusBar()->addPermanentWidget(verdict_);
    demonstration_->addTelltale(*verdict_);
    connect(view_, &ElevationView::hint, hint_, &QLabel::setText);
    connect(&end_view_->view(), &ElevationView::hint, hint_, &QLabel::setText);
    connect(&end_view_->view(), &ElevationView::pointerAt, this, [this](Vec2 at) {
        const UnitSystem units = panels::unitsOf(document_.sketch());
        const double y_mm = end_view_->view().view().ruler(at.x);
        place_->setText(
            tr("across %1, height %2").arg(inWords(y_mm, Unit::mm, units), inWords(at.z, Unit::mm, units)));
    });
    connect(photo_, &PhotoCommands::told, hint_, &QLabel::setText);
    connect(&document_, &Document::undoForgotten, this, [this] {
        hint_->setText(tr("The oldest undo steps are forgotten: together they took more than %1 MB.")
                           .arg(undo_ceiling_bytes >> 20));
    });
    connect(view_, &ElevationView::pointerAt, this, [this](Vec2 at) {
        const UnitSystem units = panels::unitsOf(document_.sketch());
        place_->setText(
            tr("along %1, height %2").arg(inWords(at.x, Unit::mm, units), inWords(at.z, Unit::mm, units)));
    });
}

void MainWindow::refresh()
{
    Situation situation = situationOf(document_, selection_);
    situation.warm_up = warm_up_->hasResult();
    situation.may_keep_curve = warm_up_->mayKeep();
    situation.kept_curves = !warm_up_->kept().empty();
    situation.demonstrating = demonstration_->player().active();
    actions_->update(situation);
    (*actions_)[QStringLiteral("demonstrate")]->setChecked(situation.demonstrating);
    const bool inch = document_.sketch().units == UnitChoice::inch;
    photo_->refresh();
    (*actions_)[QStringLiteral("inch")]->setChecked(inch);
    (*actions_)[QStringLiteral("metric")]->setChecked(!inch);
    verdict_->setText(findings_->summary());
}

void MainWindow::refreshTitle()
{
    setWindowTitle(tr("%1[*] – Siphonwright").arg(displayName(document_)));
    setWindowModified(document_.isModified());
}

void MainWindow::setUnits(UnitChoice units)
{
    settings::units.set(units == UnitChoice::inch ? QStringLiteral("inch") : QStringLiteral("metric"));
    document_.apply(tr("Change units"), [units](Sketch& sketch) { sketch.units = units; });
    refresh();
}

void MainWindow::insert(const QString& what, const std::function<PartRef(Sketch&)>& edit)
{
    PartRef placed;
    document_.apply(what, [&](Sketch& sketch) { placed = edit(sketch); });
    if (placed.kind == PartKind::nothing) {
        hint_->setText(tr("There is no free port, heater or hose for this yet."));
        return;
    }
    selection_.select(placed);
    view_->setFocus();
}

void MainWindow::stepThroughParts(int step)
{
    const std::vector<PartRef> parts = allParts(document_.sketch());
    if (parts.empty())
        return;
    const auto count = static_cast<int>(parts.size());
    const auto found = std::find(parts.begin(), parts.end(), selection_.part());
    int next = found == parts.end() ? (step > 0 ? 0 : count - 1)
                                    : (static_cast<int>(found - parts.begin()) + step + count) % count;
    selection_.select(parts[static_cast<std::size_t>(next)]);
    view_->setFocus();
}

void MainWindow::showNextFinding()
{
    const auto count = static_cast<int>(document_.analysis().findings.size());
    if (count == 0)
        return;
    const int next = (selection_.finding() + 1) % count;
    selection_.select(document_.analysis().findings[static_cast<std::size_t>(next)].part);
    selection_.selectFinding(next);
    view_->showFinding(next);
}

void MainWindow::showRules(const QString& rule)
{
    if (!rules_) {
        rules_ = new rules::RuleBrowser(document_, this);
        rules_->setLook(look());
        for (const char* id : {"undo", "redo"})
            rules_->addAction(findChild<QAction*>(QString::fromLatin1(id)));
    }
    if (!rule.isEmpty())
        rules_->showRule(rule);
    rules_->show();
    rules_->raise();
    rules_->activateWindow();
}

void MainWindow::showAssumptions()
{
    if (!assumptions_) {
        assumptions_ = new assumptions::AssumptionWindow(document_, this);
        for (const char* id : {"undo", "redo"})
            assumptions_->addAction(findChild<QAction*>(QString::fromLatin1(id)));
    }
    assumptions_->show();
    assumptions_->raise();
    assumptions_->activateWindow();
}

void MainWindow::showRuleOfFinding()
{
    const auto& findings = document_.analysis().findings;
    const int finding = selection_.finding();
    if (finding >= 0 && static_cast<std::size_t>(finding) < findings.size())
        showRules(QString::fromStdString(findings[static_cast<std::size_t>(finding)].rule));
}

void MainWindow::closeEvent(QCloseEvent* event)
{
    if (!closing_ && document_.isModified()) {
        event->ignore();
        files_->whenSafe([this] {
            closing_ = true;
            close();
        });
        return;
    }
    rememberLayout();
    event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event)
{
    const QList<QUrl> urls = event->mimeData()->urls();
    if (PhotoCommands::offersPicture(*event->mimeData()))
        event->acceptProposedAction();
    if (urls.size() == 1 && urls.first().isLocalFile() &&
        urls.first().fileName().endsWith(QStringLiteral(".siphon"), Qt::CaseInsensitive))
        event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event)
{
    event->acceptProposedAction();
    if (PhotoCommands::offersPicture(*event->mimeData())) {
        photo_->insertFrom(*event->mimeData(),
                           view_->toDrawing(view_->mapFrom(this, event->position().toPoint())));
        return;
    }
    files_->open(event->mimeData()->urls().first().toLocalFile());
}

} // namespace siphonwright
