#include "app/window/actions.h"

#include "app/window/look.h"

#include "core/sketch/edits.h"

#include <QCoreApplication>

namespace siphonwright {

namespace {

enum class When {
    always,
    selected,
    hose_selected,
    engine,
    photo,
    loop_ends,
    findings,
    finding_selected,
    warm_up,
    keepable,
    kept,
    demonstrating
};

struct Row {
    const char* id;
    const char* text;
    const char* shortcut;
    const char* tip;
    When when = When::always;
    bool checkable = false;
    const char* icon = nullptr;
};

// Tools have one letter each; what stands in every program has the shortcut people know.
constexpr Row table[] = {
    {"new", QT_TRANSLATE_NOOP("Actions", "&New"), "Ctrl+N",
     QT_TRANSLATE_NOOP("Actions", "Start an empty drawing")},
    {"open", QT_TRANSLATE_NOOP("Actions", "&Open…"), "Ctrl+O",
     QT_TRANSLATE_NOOP("Actions", "Open a sketch file")},
    {"save", QT_TRANSLATE_NOOP("Actions", "&Save"), "Ctrl+S",
     QT_TRANSLATE_NOOP("Actions", "Save the sketch")},
    {"save-as", QT_TRANSLATE_NOOP("Actions", "Save &as…"), "Ctrl+Shift+S",
     QT_TRANSLATE_NOOP("Actions", "Save the sketch under another name")},
    {"export", QT_TRANSLATE_NOOP("Actions", "&Export sheet…"), "Ctrl+E",
     QT_TRANSLATE_NOOP("Actions", "Write the sheet as PDF, SVG or PNG")},
    {"export-warm-up", QT_TRANSLATE_NOOP("Actions", "Export &warm-up…"), "Ctrl+Shift+E",
     QT_TRANSLATE_NOOP("Actions", "Write the warm-up as CSV, PNG or SVG"), When::warm_up},
    {"preview", QT_TRANSLATE_NOOP("Actions", "Print pre&view…"), "Ctrl+Shift+P",
     QT_TRANSLATE_NOOP("Actions", "See the sheet as it will be printed")},
    {"print", QT_TRANSLATE_NOOP("Actions", "&Print…"), "Ctrl+P",
     QT_TRANSLATE_NOOP("Actions", "Print the sheet at true scale")},
    {"sheet-colour", QT_TRANSLATE_NOOP("Actions", "Sheet in &colour"), "",
     QT_TRANSLATE_NOOP("Actions", "Print and export in colour instead of black and white"), When::always,
     true},
    {"sheet-parts", QT_TRANSLATE_NOOP("Actions", "Parts &list behind the sheet"), "",
     QT_TRANSLATE_NOOP("Actions", "Print and export the parts list and the cuts on pages after the drawing"),
     When::always, true},
    {"sheet-student", QT_TRANSLATE_NOOP("Actions", "Student sheet: no &findings"), "",
     QT_TRANSLATE_NOOP("Actions",
                       "Print and export without findings, pockets and margins, with lines for answers; "
                       "off: the answer sheet"),
     When::always, true},
    {"sheet-photo", QT_TRANSLATE_NOOP("Actions", "P&hoto on the sheet"), "",
     QT_TRANSLATE_NOOP("Actions",
                       "Print and export the photo under the drawing too, as faded as on the screen"),
     When::always, true},
    {"survey-form", QT_TRANSLATE_NOOP("Actions", "&Blank survey form…"), "",
     QT_TRANSLATE_NOOP("Actions", "A page to be filled in with a pen at the vehicle, as PDF")},
    {"quit", QT_TRANSLATE_NOOP("Actions", "&Quit"), "Ctrl+Q",
     QT_TRANSLATE_NOOP("Actions", "Close the program")},

    {"delete", QT_TRANSLATE_NOOP("Actions", "&Delete"), "Del",
     QT_TRANSLATE_NOOP("Actions", "Remove what is selected"), When::selected},
    {"select-next", QT_TRANSLATE_NOOP("Actions", "Select &next part"), "Ctrl+Right",
     QT_TRANSLATE_NOOP("Actions", "Go through all parts of the drawing")},
    {"select-previous", QT_TRANSLATE_NOOP("Actions", "Select &previous part"), "Ctrl+Left",
     QT_TRANSLATE_NOOP("Actions", "Go back through all parts of the drawing")},
    {"next-finding", QT_TRANSLATE_NOOP("Actions", "Next &finding"), "F8",
     QT_TRANSLATE_NOOP("Actions", "Go to the next finding on the drawing"), When::findings},
    {"about-rule", QT_TRANSLATE_NOOP("Actions", "About this &rule…"), "Ctrl+Shift+R",
     QT_TRANSLATE_NOOP("Actions", "Read what the selected finding's rule rests on, and its limits"),
     When::finding_selected},

    {"fit", QT_TRANSLATE_NOOP("Actions", "Zoom to &fit"), "F",
     QT_TRANSLATE_NOOP("Actions", "Show the whole drawing"), When::always, false, "fit"},
    {"fit-selection", QT_TRANSLATE_NOOP("Actions", "Zoom to &selection"), "Shift+F",
     QT_TRANSLATE_NOOP("Actions", "Show what is selected"), When::selected},
    {"zoom-in", QT_TRANSLATE_NOOP("Actions", "Zoom &in"), "Ctrl++", QT_TRANSLATE_NOOP("Actions", "Closer")},
    {"zoom-out", QT_TRANSLATE_NOOP("Actions", "Zoom &out"), "Ctrl+-",
     QT_TRANSLATE_NOOP("Actions", "Farther")},
    {"grid", QT_TRANSLATE_NOOP("Actions", "&Grid"), "G", QT_TRANSLATE_NOOP("Actions", "Show the grid"),
     When::always, true},
    {"snapping", QT_TRANSLATE_NOOP("Actions", "S&napping"), "N",
     QT_TRANSLATE_NOOP("Actions", "Points snap to the grid and to level and plumb"), When::always, true},
    {"running-figures", QT_TRANSLATE_NOOP("Actions", "Running fig&ures"), "U",
     QT_TRANSLATE_NOOP("Actions", "Show flow, temperatures and heads beside each heater"), When::always,
     true},
    {"tint-hoses", QT_TRANSLATE_NOOP("Actions", "&Tint hoses by temperature"), "Shift+U",
     QT_TRANSLATE_NOOP("Actions", "Colour the hoses by the coolant's temperature in them"), When::always,
     true},
    {"metric", QT_TRANSLATE_NOOP("Actions", "&mm and °C"), "", QT_TRANSLATE_NOOP("Actions", "Metric units"),
     When::always, true},
    {"inch", QT_TRANSLATE_NOOP("Actions", "&inch and °F"), "", QT_TRANSLATE_NOOP("Actions", "Inch units"),
     When::always, true},
    {"dark", QT_TRANSLATE_NOOP("Actions", "&Dark"), "Ctrl+D",
     QT_TRANSLATE_NOOP("Actions", "Light lines on dark ground"), When::always, true},
    {"warm-up", QT_TRANSLATE_NOOP("Actions", "&Warm-up"), "W",
     QT_TRANSLATE_NOOP("Actions", "Show temperatures, flow and power over the hours")},
    {"by-bore", QT_TRANSLATE_NOOP("Actions", "Table by &bore"), "Shift+W",
     QT_TRANSLATE_NOOP("Actions", "Show what each stock bore of hose would do")},
    {"on-grades", QT_TRANSLATE_NOOP("Actions", "Table on &grades"), "Shift+G",
     QT_TRANSLATE_NOOP("Actions", "Show how the job runs parked at the ends of the grades judged")},
    {"sizing", QT_TRANSLATE_NOOP("Actions", "Heater si&ze and supply"), "E",
     QT_TRANSLATE_NOOP("Actions", "Show power needed, electrical load, cost of a night, and coolant to mix")},
    {"commissioning", QT_TRANSLATE_NOOP("Actions", "C&ommissioning"), "Shift+C",
     QT_TRANSLATE_NOOP("Actions", "Work through the checklist, judge readings, find what is wrong")},
    {"print-checklist", QT_TRANSLATE_NOOP("Actions", "Print the chec&klist…"), "",
     QT_TRANSLATE_NOOP("Actions", "Steps, cautions and a table for readings, to be filled in by hand")},
    {"export-checklist", QT_TRANSLATE_NOOP("Actions", "Save the checklist as PD&F…"), "",
     QT_TRANSLATE_NOOP("Actions", "Write the checklist's pages to a file")},
    {"keep-curve", QT_TRANSLATE_NOOP("Actions", "&Keep this curve"), "Ctrl+K",
     QT_TRANSLATE_NOOP("Actions", "Lay the warm-up as it is now under those to come"), When::keepable},
    {"drop-curves", QT_TRANSLATE_NOOP("Actions", "Take kept &curves away"), "",
     QT_TRANSLATE_NOOP("Actions", "Show the present warm-up alone"), When::kept},
    {"parts", QT_TRANSLATE_NOOP("Actions", "&Parts and cuts…"), "Ctrl+L",
     QT_TRANSLATE_NOOP("Actions", "List what the drawing takes, and how the hose is cut")},
    {"estimate", QT_TRANSLATE_NOOP("Actions", "&Estimate…"), "Ctrl+Shift+L",
     QT_TRANSLATE_NOOP("Actions", "Reckon what the job costs, with prices, hours and other heaters")},
    {"rules", QT_TRANSLATE_NOOP("Actions", "&Rules…"), "Ctrl+R",
     QT_TRANSLATE_NOOP("Actions", "Read every rule, and change its limits for this drawing")},
    {"assumptions", QT_TRANSLATE_NOOP("Actions", "&Assumptions…"), "Ctrl+Shift+A",
     QT_TRANSLATE_NOOP("Actions", "See every figure that is assumed, and change it for this drawing")},

    {"select", QT_TRANSLATE_NOOP("Actions", "Select"), "V",
     QT_TRANSLATE_NOOP("Actions", "Select and drag parts"), When::always, true, "select"},
    {"supply-hose", QT_TRANSLATE_NOOP("Actions", "Supply hose"), "S",
     QT_TRANSLATE_NOOP("Actions", "Draw the hose from the engine to the heater"), When::always, true,
     "supply-hose"},
    {"return-hose", QT_TRANSLATE_NOOP("Actions", "Return hose"), "R",
     QT_TRANSLATE_NOOP("Actions", "Draw the hose from the heater to the engine"), When::always, true,
     "return-hose"},
    {"port", QT_TRANSLATE_NOOP("Actions", "Port"), "P",
     QT_TRANSLATE_NOOP("Actions", "Mark an opening into the water jacket"), When::always, true, "port"},
    {"heater", QT_TRANSLATE_NOOP("Actions", "Heater"), "H",
     QT_TRANSLATE_NOOP("Actions", "Place a tank heater"), When::always, true, "heater"},
    {"valve", QT_TRANSLATE_NOOP("Actions", "Valve"), "I",
     QT_TRANSLATE_NOOP("Actions", "Put an isolation valve into a hose"), When::always, true, "valve"},
    {"bleed", QT_TRANSLATE_NOOP("Actions", "Bleed"), "B",
     QT_TRANSLATE_NOOP("Actions", "Put a bleed point into a hose"), When::always, true, "bleed"},
    {"clip", QT_TRANSLATE_NOOP("Actions", "Clip"), "C",
     QT_TRANSLATE_NOOP("Actions", "Clip a hose to the frame"), When::always, true, "clip"},
    {"area", QT_TRANSLATE_NOOP("Actions", "Keep-clear area"), "K",
     QT_TRANSLATE_NOOP("Actions", "Outline something hot or moving"), When::always, true, "area"},
    {"tank", QT_TRANSLATE_NOOP("Actions", "Tank"), "T",
     QT_TRANSLATE_NOOP("Actions", "Place the surge tank with the coolant levels"), When::always, true,
     "tank"},

    {"survey", QT_TRANSLATE_NOOP("Actions", "S&urvey…"), "Ctrl+M",
     QT_TRANSLATE_NOOP("Actions", "Type what was measured at the vehicle and draw the engine from it")},

    {"insert-photo", QT_TRANSLATE_NOOP("Actions", "&Photo…"), "Ctrl+I",
     QT_TRANSLATE_NOOP("Actions", "Put a photo of the engine under the drawing, to draw over")},
    {"paste-photo", QT_TRANSLATE_NOOP("Actions", "Photo from the &clipboard"), "Ctrl+Shift+V",
     QT_TRANSLATE_NOOP("Actions", "Put the picture that was copied elsewhere under the drawing")},
    {"photo-straighten", QT_TRANSLATE_NOOP("Actions", "&Straighten by a rectangle…"), "Alt+1",
     QT_TRANSLATE_NOOP("Actions",
                       "Click the corners of a rectangle of known size in a photo taken at an angle"),
     When::photo},
    {"photo-scale", QT_TRANSLATE_NOOP("Actions", "S&cale by two points…"), "Alt+2",
     QT_TRANSLATE_NOOP("Actions", "Click two points in the photo and type how far apart they are"),
     When::photo},
    {"photo-level", QT_TRANSLATE_NOOP("Actions", "&Level by two points"), "Alt+3",
     QT_TRANSLATE_NOOP("Actions", "Click two points along something level in the photo"), When::photo},
    {"photo-lock", QT_TRANSLATE_NOOP("Actions", "Loc&k the photo"), "Alt+4",
     QT_TRANSLATE_NOOP("Actions", "Keep the photo where it is while you draw over it"), When::photo, true},
    {"photo-details", QT_TRANSLATE_NOOP("Actions", "Select the &photo"), "Alt+5",
     QT_TRANSLATE_NOOP("Actions", "Show place, scale, turn and fade of the photo in the details"),
     When::photo},

    {"insert-supply-port", QT_TRANSLATE_NOOP("Actions", "Supply port, low at the front"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a port at the jacket's lowest level"), When::engine},
    {"insert-return-port", QT_TRANSLATE_NOOP("Actions", "Return port, high at the rear"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a port near the jacket's highest level"), When::engine},
    {"insert-supply-hose", QT_TRANSLATE_NOOP("Actions", "Supply hose, port to heater"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a straight hose to be shaped"), When::loop_ends},
    {"insert-return-hose", QT_TRANSLATE_NOOP("Actions", "Return hose, heater to port"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a straight hose to be shaped"), When::loop_ends},
    {"insert-point", QT_TRANSLATE_NOOP("Actions", "Point in the selected hose"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a route point in the middle of the hose"), When::hose_selected},
    {"insert-valve", QT_TRANSLATE_NOOP("Actions", "Isolation valve in the selected hose"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a valve near the hose's start"), When::hose_selected},
    {"insert-bleed", QT_TRANSLATE_NOOP("Actions", "Bleed at the selected hose's crest"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a bleed point where the hose is highest"), When::hose_selected},
    {"insert-tank", QT_TRANSLATE_NOOP("Actions", "Surge tank over the engine"), "",
     QT_TRANSLATE_NOOP("Actions", "Add the tank with its coolant levels"), When::engine},
    {"insert-area", QT_TRANSLATE_NOOP("Actions", "Keep-clear area"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a square area to be shaped")},

    {"teaching", QT_TRANSLATE_NOOP("Actions", "&Teaching air locks"), "",
     QT_TRANSLATE_NOOP("Actions", "Lessons, faults to find and their answers, for a trainer")},
    {"demonstrate", QT_TRANSLATE_NOOP("Actions", "&Demonstrate"), "F5",
     QT_TRANSLATE_NOOP("Actions", "Play filling, engine run and warm-up on the drawing"), When::always, true},
    {"demo-findings", QT_TRANSLATE_NOOP("Actions", "&Hide findings"), "",
     QT_TRANSLATE_NOOP("Actions", "Let the class guess first"), When::demonstrating, true},
    {"demo-ask", QT_TRANSLATE_NOOP("Actions", "&Ask the class"), "",
     QT_TRANSLATE_NOOP("Actions", "Count hands, then reveal whether it circulates"), When::demonstrating},
    {"demo-beside", QT_TRANSLATE_NOOP("Actions", "&Second drawing beside…"), "",
     QT_TRANSLATE_NOOP("Actions", "Play a drawing from a file by the same clock"), When::demonstrating, true},
    {"demo-full-screen", QT_TRANSLATE_NOOP("Actions", "&Full screen"), "F11",
     QT_TRANSLATE_NOOP("Actions", "Large, to be read from the back of the room"), When::demonstrating, true},
    {"demo-moment", QT_TRANSLATE_NOOP("Actions", "Export this &moment…"), "",
     QT_TRANSLATE_NOOP("Actions", "Write what is shown now as PNG or SVG"), When::demonstrating},
    {"demo-sequence", QT_TRANSLATE_NOOP("Actions", "Export all &pictures…"), "",
     QT_TRANSLATE_NOOP("Actions", "Write the demonstration as numbered PNG pictures"), When::demonstrating},
    {"demo-handout", QT_TRANSLATE_NOOP("Actions", "Hand&out…"), "",
     QT_TRANSLATE_NOOP("Actions", "Write one page with six moments and their captions as PDF"),
     When::demonstrating},

    {"cautions", QT_TRANSLATE_NOOP("Actions", "&Cautions"), "F1",
     QT_TRANSLATE_NOOP("Actions", "What to heed before and during the work")},
    {"first-steps", QT_TRANSLATE_NOOP("Actions", "&First steps"), "",
     QT_TRANSLATE_NOOP("Actions", "Show the steps of a first drawing")},
    {"about", QT_TRANSLATE_NOOP("Actions", "&About Siphonwright"), "",
     QT_TRANSLATE_NOOP("Actions", "Version, licences and what the figures are")},
};

bool possible(When when, const Situation& now)
{
    switch (when) {
    case When::always:
        return true;
    case When::selected:
        return now.selected;
    case When::hose_selected:
        return now.hose_selected;
    case When::engine:
        return now.engine;
    case When::photo:
        return now.photo;
    case When::loop_ends:
        return now.loop_ends;
    case When::findings:
        return now.findings;
    case When::finding_selected:
        return now.finding_selected;
    case When::warm_up:
        return now.warm_up;
    case When::keepable:
        return now.may_keep_curve;
    case When::kept:
        return now.kept_curves;
    case When::demonstrating:
        return now.demonstrating;
    }
    return false;
}

} // namespace

Situation situationOf(const Document& document, const Selection& selection)
{
    const Sketch& sketch = document.sketch();
    Situation now;
    now.selected = selection.part().kind != PartKind::nothing && exists(sketch, selection.part());
    now.hose_selected = sketch.hose(selection.part().id) != nullptr;
    now.engine = sketch.engine.has_value();
    now.photo = sketch.photo.has_value();
    now.loop_ends = !sketch.ports.empty() && !sketch.heaters.empty();
    now.findings = !document.analysis().findings.empty();
    now.finding_selected = selection.finding() >= 0 && static_cast<std::size_t>(selection.finding()) <
                                                           document.analysis().findings.size();
    return now;
}

Actions::Actions(QObject* parent) : QObject(parent)
{
    for (const Row& row : table) {
        auto* action = new QAction(QCoreApplication::translate("Actions", row.text), this);
        const QString tip = QCoreApplication::translate("Actions", row.tip);
        const QKeySequence shortcut{QString::fromLatin1(row.shortcut)};
        action->setShortcut(shortcut);
        action->setToolTip(
            shortcut.isEmpty() ? tip : tr("%1 (%2)").arg(tip, shortcut.toString(QKeySequence::NativeText)));
        action->setStatusTip(tip);
        action->setCheckable(row.checkable);
        action->setObjectName(QString::fromLatin1(row.id));
        by_id_.insert(QString::fromLatin1(row.id), action);
    }
}

QAction* Actions::operator[](const QString& id) const
{
    QAction* action = by_id_.value(id);
    Q_ASSERT(action);
    return action;
}

void Actions::setDark(bool dark)
{
    for (const Row& row : table)
        if (row.icon)
            by_id_.value(QString::fromLatin1(row.id))
                ->setIcon(look::icon(QString::fromLatin1(row.icon), dark));
}

void Actions::update(const Situation& situation)
{
    for (const Row& row : table)
        by_id_.value(QString::fromLatin1(row.id))->setEnabled(possible(row.when, situation));
}

} // namespace siphonwright
