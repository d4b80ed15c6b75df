#pragma once

#include "app/canvas/elevation_view.h"
#include "app/document/document.h"
#include "app/window/actions.h"
#include "app/window/late_panel.h"

#include <QMainWindow>

#include <functional>

class QLabel;

namespace siphonwright {

namespace panels {
class DetailsPanel;
class FindingsPanel;
class GradeStrip;
class ProfilePanel;
} // namespace panels
namespace proposing {
class LayoutsPanel;
}
namespace sizing {
class SizingPanel;
}
namespace warming {
class BoreTable;
class GradeTable;
class WarmUpPanel;
} // namespace warming
namespace commissioning {
class CommissioningPanel;
}
namespace rules {
class RuleBrowser;
}
namespace assumptions {
class AssumptionWindow;
}
class ChecklistCommands;
class DemonstrationCommands;
class EditCommands;
class EndViewCommands;
class FileCommands;
class FileStrip;
class FirstSteps;
class Keys;
class PaperCommands;
class PhotoCommands;
class Safekeeping;
class SheetCommands;
class Shelf;
class SurveyCommands;
class TemplateGallery;
enum class TemplateKind;

/// Puts the parts together: the elevation in the middle, panels around it, menus and tools over it.
class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    explicit MainWindow(QWidget* parent = nullptr);
    ~MainWindow() override;

    Document& document() { return document_; }
    Selection& selection() { return selection_; }
    ElevationView& view() { return *view_; }
    EndViewCommands& endView() { return *end_view_; }
    FileCommands& files() { return *files_; }
    /// Keep unsaved work in a folder from now on, write crash reports there, and offer what it holds already.
    void keepSafe(const QString& folder);
    Actions& actions() { return *actions_; }
    PaperCommands& paper() { return *paper_; }
    SurveyCommands& survey() { return *survey_; }
    EditCommands& edits() { return *edits_; }
    PhotoCommands& photo() { return *photo_; }
    DemonstrationCommands& demonstration() { return *demonstration_; }
    Keys& keys() { return *keys_; }
    drawing::Look look() const;
    /// How many times the usual text is: 1 to 2.
    static double textScale();

protected:
    void closeEvent(QCloseEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    QMenu* addMenu(const QString& title, const QStringList& ids);
    void buildMenus();
    void buildFileMenu();
    void buildEditMenu();
    void buildViewMenu();
    void buildInsertMenu();
    void buildJobMenu();
    void buildHelpMenu();
    void buildTools();
    void buildPanels();
    commissioning::CommissioningPanel* buildCommissioning(QWidget* parent);
    proposing::LayoutsPanel* buildLayouts(QWidget* parent);
    void buildStatusLine();
    QDockWidget* addPanel(const QString& title, const QString& name, Qt::DockWidgetArea area, QWidget* panel);
    template <class Panel>
    QDockWidget* addLatePanel(const QString& title, const QString& name, Qt::DockWidgetArea area,
                              LatePanel<Panel>* panel);
    void connectFileActions();
    void connectEditActions();
    void connectViewActions();
    void connectJobActions();
    void connectInsertActions();
    void offerRecovery();
    void exportWarmUp();
    void fillRecent(QMenu& menu);
    void fillScales(QMenu& menu);
    /// One of several; what is chosen is told by its place.
    void addChoices(QMenu& menu, const QStringList& names, qsizetype chosen,
                    const std::function<void(qsizetype)>& choose);
    void connectAppearance();
    void connectGuidance();
    TemplateGallery* showGallery(TemplateKind kind, const QString& title);
    void insert(const QString& what, const std::function<PartRef(Sketch&)>& edit);
    void stepThroughParts(int step);
    void showNextFinding();
    void showRules(const QString& rule = {});
    void showRuleOfFinding();
    void showAssumptions();
    void setUnits(UnitChoice units);
    void chooseLook(const QString& name);
    MainWindow(drawing::Look desktop_look, QWidget* parent);
    static drawing::Look dressProgram();
    void applyLook();
    void arrangeTools();
    void writeOnTools(bool words);
    void sizePanels();
    void refresh();
    void refreshTitle();
    void restoreLayout();
    void keepOnScreen();
    void rememberLayout() const;
    void useDefaultLayout();

    drawing::Look desktop_look_; ///< what the desktop asked for when the window was made
    Document document_;
    Selection selection_;
    Actions* actions_;
    ElevationView* view_;
    FileCommands* files_;
    SheetCommands* sheet_;
    PaperCommands* paper_;
    ChecklistCommands* checklist_;
    SurveyCommands* survey_;
    PhotoCommands* photo_;
    DemonstrationCommands* demonstration_;
    EditCommands* edits_ = nullptr;
    EndViewCommands* end_view_;
    panels::FindingsPanel* findings_ = nullptr;
    panels::DetailsPanel* details_ = nullptr;
    panels::ProfilePanel* profile_ = nullptr;
    panels::GradeStrip* grade_ = nullptr;
    warming::WarmUpPanel* warm_up_ = nullptr;
    LatePanel<warming::BoreTable>* by_bore_ = nullptr;
    LatePanel<warming::GradeTable>* on_grades_ = nullptr;
    LatePanel<sizing::SizingPanel>* sizing_ = nullptr;
    LatePanel<proposing::LayoutsPanel>* layouts_ = nullptr;
    LatePanel<commissioning::CommissioningPanel>* commissioning_ = nullptr;
    Shelf* shelf_ = nullptr;
    rules::RuleBrowser* rules_ = nullptr;                  ///< made when it is first wanted
    assumptions::AssumptionWindow* assumptions_ = nullptr; ///< likewise
    FirstSteps* first_steps_ = nullptr;
    FileStrip* file_strip_ = nullptr;
    Safekeeping* safekeeping_ = nullptr; ///< from keepSafe() on
    Keys* keys_ = nullptr;
    QMenu* panels_menu_;
    QByteArray default_layout_;
    QLabel* hint_ = nullptr;
    QLabel* place_ = nullptr;
    QLabel* verdict_ = nullptr;
    int tools_with_words_px_ = 0; ///< width of the tool bar with words; 0: not known yet
    bool closing_ = false;
};

} // namespace siphonwright
