#include "app/window/actions.h"

#include "app/window/look.h"
#include "app/window/when.h"

#include <QCoreApplication>

namespace siphonwright {

namespace {

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
    {"new-from-template", QT_TRANSLATE_NOOP("Actions", "New from &template…"), "Ctrl+Shift+N",
     QT_TRANSLATE_NOOP("Actions", "Choose an engine by its picture and start a drawing with it")},
    {"open", QT_TRANSLATE_NOOP("Actions", "&Open…"), "Ctrl+O",
     QT_TRANSLATE_NOOP("Actions", "Open a sketch file")},
    {"save", QT_TRANSLATE_NOOP("Actions", "&Save"), "Ctrl+S",
     QT_TRANSLATE_NOOP("Actions", "Save the sketch")},
    {"save-as", QT_TRANSLATE_NOOP("Actions", "Save &as…"), "Ctrl+Shift+S",
     QT_TRANSLATE_NOOP("Actions", "Save the sketch under another name")},
    {"recover", QT_TRANSLATE_NOOP("Actions", "Recover &drawings…"), "",
     QT_TRANSLATE_NOOP("Actions",
                       "See what was not saved when the program ended unexpectedly, or was put aside")},
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
    {"sheet-checklist", QT_TRANSLATE_NOOP("Actions", "&Checklist behind the sheet"), "",
     QT_TRANSLATE_NOOP("Actions",
                       "Print and export the checklist and the table of readings after the drawing"),
     When::always, true},
    {"sheet-estimate", QT_TRANSLATE_NOOP("Actions", "&Estimate behind the sheet"), "",
     QT_TRANSLATE_NOOP("Actions", "Print and export the estimate after the drawing, where prices are there"),
     When::always, true},
    {"sheet-assumptions", QT_TRANSLATE_NOOP("Actions", "&Assumptions behind the sheet"), "",
     QT_TRANSLATE_NOOP("Actions", "Print and export what the figures rest on, after the drawing"),
     When::always, true},
    {"sheet-logo", QT_TRANSLATE_NOOP("Actions", "&Logo on the sheet…"), "",
     QT_TRANSLATE_NOOP("Actions", "Choose a picture for the title block; chosen again, it comes off")},
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

    {"cut", QT_TRANSLATE_NOOP("Actions", "Cu&t"), "Ctrl+X",
     QT_TRANSLATE_NOOP("Actions", "Take what is selected away, to be put down elsewhere"), When::selected},
    {"copy", QT_TRANSLATE_NOOP("Actions", "&Copy"), "Ctrl+C",
     QT_TRANSLATE_NOOP("Actions", "Take a copy of what is selected, for this or another window"),
     When::selected},
    {"paste", QT_TRANSLATE_NOOP("Actions", "&Paste"), "Ctrl+V",
     QT_TRANSLATE_NOOP("Actions", "Put parts down where the pointer is, else beside what is there")},
    {"duplicate", QT_TRANSLATE_NOOP("Actions", "D&uplicate"), "Ctrl+D",
     QT_TRANSLATE_NOOP("Actions", "Put what is selected down once more, beside it"), When::selected},
    {"delete", QT_TRANSLATE_NOOP("Actions", "&Delete"), "Del",
     QT_TRANSLATE_NOOP("Actions", "Remove what is selected"), When::selected},
    {"select-all", QT_TRANSLATE_NOOP("Actions", "Select &all"), "Ctrl+A",
     QT_TRANSLATE_NOOP("Actions", "Select every part of the drawing")},
    {"keep-selected", QT_TRANSLATE_NOOP("Actions", "&Keep selected"), "M",
     QT_TRANSLATE_NOOP("Actions", "Keep the part selected while Tab goes on to the next; again: no longer"),
     When::selected},
    {"find", QT_TRANSLATE_NOOP("Actions", "&Find by name…"), "Ctrl+F",
     QT_TRANSLATE_NOOP("Actions", "Find a part of the drawing by its name")},
    {"go-to-drawing", QT_TRANSLATE_NOOP("Actions", "&Go to the drawing"), "F6",
     QT_TRANSLATE_NOOP("Actions", "Put the keyboard on the elevation, from wherever it is")},
    {"details", QT_TRANSLATE_NOOP("Actions", "Detai&ls"), "",
     QT_TRANSLATE_NOOP("Actions",
                       "Show and change what is known of the selected part (Enter on the drawing)")},
    {"rename", QT_TRANSLATE_NOOP("Actions", "Re&name"), "F2",
     QT_TRANSLATE_NOOP("Actions", "Go to the name of the selected part"), When::selected},
    {"corners", QT_TRANSLATE_NOOP("Actions", "Go to its c&orners"), "Ctrl+Return",
     QT_TRANSLATE_NOOP("Actions",
                       "Select the first corner of the outline; Tab goes from corner to corner, Escape back"),
     When::outlined},
    {"point-here", QT_TRANSLATE_NOOP("Actions", "Add a &point here"), "",
     QT_TRANSLATE_NOOP("Actions", "Add a point to the hose, or a corner to the outline"), When::point_fits},
    {"valve-here", QT_TRANSLATE_NOOP("Actions", "Add a &valve here"), "",
     QT_TRANSLATE_NOOP("Actions", "Put an isolation valve into the hose"), When::hose_selected},
    {"bleed-here", QT_TRANSLATE_NOOP("Actions", "Add a &bleed here"), "",
     QT_TRANSLATE_NOOP("Actions", "Put a bleed point into the hose"), When::hose_selected},
    {"clip-here", QT_TRANSLATE_NOOP("Actions", "Add a cl&ip here"), "",
     QT_TRANSLATE_NOOP("Actions", "Clip the hose to the frame"), When::hose_selected},
    {"open-or-close", QT_TRANSLATE_NOOP("Actions", "&Open or close"), "O",
     QT_TRANSLATE_NOOP("Actions", "Open or close the selected valve, bleed or drain"), When::can_open},
    {"connect", QT_TRANSLATE_NOOP("Actions", "Conn&ect to the next opening"), "J",
     QT_TRANSLATE_NOOP("Actions", "Connect the hose's end to the nearest port or nozzle, again: to the next"),
     When::end_selected},
    {"turn", QT_TRANSLATE_NOOP("Actions", "Turn c&lockwise"), ".",
     QT_TRANSLATE_NOOP("Actions", "Turn a heater or port by 15 degrees"), When::turnable},
    {"turn-back", QT_TRANSLATE_NOOP("Actions", "Turn &back"), ",",
     QT_TRANSLATE_NOOP("Actions", "Turn a heater or port by 15 degrees the other way"), When::turnable},
    {"align-left", QT_TRANSLATE_NOOP("Actions", "&Left edges"), "Ctrl+Shift+Left",
     QT_TRANSLATE_NOOP("Actions", "Line up with the leftmost"), When::several},
    {"align-middle-x", QT_TRANSLATE_NOOP("Actions", "&Middles above each other"), "Ctrl+Shift+M",
     QT_TRANSLATE_NOOP("Actions", "Line up on one plumb line of the drawing"), When::several},
    {"align-right", QT_TRANSLATE_NOOP("Actions", "&Right edges"), "Ctrl+Shift+Right",
     QT_TRANSLATE_NOOP("Actions", "Line up with the rightmost"), When::several},
    {"align-top", QT_TRANSLATE_NOOP("Actions", "&Top edges"), "Ctrl+Shift+Up",
     QT_TRANSLATE_NOOP("Actions", "Line up with the highest"), When::several},
    {"align-middle-z", QT_TRANSLATE_NOOP("Actions", "M&iddles at one height"), "Ctrl+Shift+H",
     QT_TRANSLATE_NOOP("Actions", "Line up at one height"), When::several},
    {"align-bottom", QT_TRANSLATE_NOOP("Actions", "&Bottom edges"), "Ctrl+Shift+Down",
     QT_TRANSLATE_NOOP("Actions", "Line up with the lowest"), When::several},
    {"spread-x", QT_TRANSLATE_NOOP("Actions", "Space evenly &along"), "",
     QT_TRANSLATE_NOOP("Actions", "Even distances along the engine between the outermost"), When::spreadable},
    {"spread-z", QT_TRANSLATE_NOOP("Actions", "Space evenly &up"), "",
     QT_TRANSLATE_NOOP("Actions", "Even distances in height between lowest and highest"), When::spreadable},
    {"select-next", QT_TRANSLATE_NOOP("Actions", "Select &next part"), "Ctrl+Right",
     QT_TRANSLATE_NOOP("Actions", "Go through all parts of the drawing")},
    {"select-previous", QT_TRANSLATE_NOOP("Actions", "Select &previous part"), "Ctrl+Left",
     QT_TRANSLATE_NOOP("Actions", "Go back through all parts of the drawing")},
    {"next-finding", QT_TRANSLATE_NOOP("Actions", "Next &finding"), "F8",
     QT_TRANSLATE_NOOP("Actions", "Go to the next finding on the drawing"), When::findings},
    {"fix-finding", QT_TRANSLATE_NOOP("Actions", "Fi&x the finding"), "Shift+F8",
     QT_TRANSLATE_NOOP("Actions", "Change the drawing as is offered under the list of findings"),
     When::finding_selected},
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
    {"snap-grid", QT_TRANSLATE_NOOP("Actions", "&Grid"), "",
     QT_TRANSLATE_NOOP("Actions", "Points go to the lines of the grid"), When::always, true},
    {"snap-points", QT_TRANSLATE_NOOP("Actions", "&Points"), "",
     QT_TRANSLATE_NOOP("Actions", "Points go onto ports, nozzles, route points and corners"), When::always,
     true},
    {"snap-level", QT_TRANSLATE_NOOP("Actions", "&Level"), "",
     QT_TRANSLATE_NOOP("Actions", "Points go level with their neighbours"), When::always, true},
    {"snap-plumb", QT_TRANSLATE_NOOP("Actions", "P&lumb"), "",
     QT_TRANSLATE_NOOP("Actions", "Points go plumb over or under their neighbours, on a grade too"),
     When::always, true},
    {"snap-rise", QT_TRANSLATE_NOOP("Actions", "Constant &rise"), "",
     QT_TRANSLATE_NOOP("Actions", "Pieces of a hose take the slope chosen below"), When::always, true},
    {"snap-radius", QT_TRANSLATE_NOOP("Actions", "&Bend radius"), "",
     QT_TRANSLATE_NOOP("Actions", "Points stop where the bends still take the hose's least radius"),
     When::always, true},
    {"snap-tangent", QT_TRANSLATE_NOOP("Actions", "&In line with the last piece"), "",
     QT_TRANSLATE_NOOP("Actions", "Pieces of a hose go straight on"), When::always, true},
    {"snap-limits", QT_TRANSLATE_NOOP("Actions", "Li&mits"), "",
     QT_TRANSLATE_NOOP("Actions", "Parts stop where a rule's limit is just kept: level, hump, ground, area"),
     When::always, true},
    {"snap-slope", QT_TRANSLATE_NOOP("Actions", "&Slope to snap to…"), "",
     QT_TRANSLATE_NOOP("Actions", "Choose the slope of the constant rise")},
    {"running-figures", QT_TRANSLATE_NOOP("Actions", "Running fig&ures"), "U",
     QT_TRANSLATE_NOOP("Actions", "Show flow, temperatures and heads beside each heater"), When::always,
     true},
    {"tint-hoses", QT_TRANSLATE_NOOP("Actions", "&Tint hoses by temperature"), "Shift+U",
     QT_TRANSLATE_NOOP("Actions", "Colour the hoses by the coolant's temperature in them"), When::always,
     true},
    {"end-view", QT_TRANSLATE_NOOP("Actions", "&End view"), "Y",
     QT_TRANSLATE_NOOP("Actions", "Show the drawing along the engine too, beside the elevation"),
     When::always, true},
    {"end-view-level", QT_TRANSLATE_NOOP("Actions", "End view at the same &heights"), "Shift+Y",
     QT_TRANSLATE_NOOP("Actions", "Zoom and heights of the elevation and the end view go together"),
     When::always, true},
    {"third-angle", QT_TRANSLATE_NOOP("Actions", "Third-angle &projection"), "",
     QT_TRANSLATE_NOOP("Actions",
                       "The end view shows the end it stands beside, on the sheet too; off: first-angle "
                       "projection, which shows the other end"),
     When::always, true},
    {"metric", QT_TRANSLATE_NOOP("Actions", "&mm and °C"), "", QT_TRANSLATE_NOOP("Actions", "Metric units"),
     When::always, true},
    {"inch", QT_TRANSLATE_NOOP("Actions", "&inch and °F"), "", QT_TRANSLATE_NOOP("Actions", "Inch units"),
     When::always, true},
    {"look-of-desktop", QT_TRANSLATE_NOOP("Actions", "As the des&ktop"), "",
     QT_TRANSLATE_NOOP("Actions", "Light, dark or high contrast, as the desktop has it"), When::always, true},
    {"light", QT_TRANSLATE_NOOP("Actions", "&Light"), "",
     QT_TRANSLATE_NOOP("Actions", "Dark lines on light ground"), When::always, true},
    {"dark", QT_TRANSLATE_NOOP("Actions", "&Dark"), "Ctrl+Shift+D",
     QT_TRANSLATE_NOOP("Actions", "Light lines on dark ground"), When::always, true},
    {"high-contrast", QT_TRANSLATE_NOOP("Actions", "&High contrast"), "",
     QT_TRANSLATE_NOOP("Actions", "Black on white, for bright sun and weak eyes"), When::always, true},
    {"high-contrast-dark", QT_TRANSLATE_NOOP("Actions", "High contrast, &white on black"), "",
     QT_TRANSLATE_NOOP("Actions", "White on black, for eyes that a bright ground blinds"), When::always,
     true},
    {"text-100", QT_TRANSLATE_NOOP("Actions", "Text 100 %"), "",
     QT_TRANSLATE_NOOP("Actions", "Text of the usual size"), When::always, true},
    {"text-125", QT_TRANSLATE_NOOP("Actions", "Text 125 %"), "", QT_TRANSLATE_NOOP("Actions", "Larger text"),
     When::always, true},
    {"text-150", QT_TRANSLATE_NOOP("Actions", "Text 150 %"), "", QT_TRANSLATE_NOOP("Actions", "Larger text"),
     When::always, true},
    {"text-175", QT_TRANSLATE_NOOP("Actions", "Text 175 %"), "", QT_TRANSLATE_NOOP("Actions", "Larger text"),
     When::always, true},
    {"text-200", QT_TRANSLATE_NOOP("Actions", "Text 200 %"), "",
     QT_TRANSLATE_NOOP("Actions", "Text twice as large"), When::always, true},
    {"language-of-system", QT_TRANSLATE_NOOP("Actions", "As the &system"), "",
     QT_TRANSLATE_NOOP("Actions", "Texts, numbers and dates as the system has them, from the next start on"),
     When::always, true},
    {"language-en", "&English", "", QT_TRANSLATE_NOOP("Actions", "English texts, from the next start on"),
     When::always, true},
    {"language-es", "E&spañol", "", QT_TRANSLATE_NOOP("Actions", "Spanish texts, from the next start on"),
     When::always, true},
    {"language-fr", "&Français", "", QT_TRANSLATE_NOOP("Actions", "French texts, from the next start on"),
     When::always, true},
    {"language-de", "&Deutsch", "", QT_TRANSLATE_NOOP("Actions", "German texts, from the next start on"),
     When::always, true},
    {"default-layout", QT_TRANSLATE_NOOP("Actions", "Default la&yout"), "",
     QT_TRANSLATE_NOOP("Actions", "Put window, panels and tools back where they were at first")},
    {"warm-up", QT_TRANSLATE_NOOP("Actions", "&Warm-up"), "W",
     QT_TRANSLATE_NOOP("Actions", "Show temperatures, flow and power over the hours")},
    {"by-bore", QT_TRANSLATE_NOOP("Actions", "Table by &bore"), "Shift+W",
     QT_TRANSLATE_NOOP("Actions", "Show what each stock bore of hose would do")},
    {"on-grades", QT_TRANSLATE_NOOP("Actions", "Table on &grades"), "Shift+G",
     QT_TRANSLATE_NOOP("Actions", "Show how the job runs parked at the ends of the grades judged")},
    {"sizing", QT_TRANSLATE_NOOP("Actions", "Heater si&ze and supply"), "E",
     QT_TRANSLATE_NOOP("Actions", "Show power needed, electrical load, cost of a night, and coolant to mix")},
    {"propose-layouts", QT_TRANSLATE_NOOP("Actions", "Propose la&youts"), "Shift+L",
     QT_TRANSLATE_NOOP("Actions", "Let the program lay heater and hoses so that no rule is broken")},
    {"commissioning", QT_TRANSLATE_NOOP("Actions", "C&ommissioning"), "Shift+C",
     QT_TRANSLATE_NOOP("Actions", "Work through the checklist, judge readings, diagnose what is wrong")},
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
    {"dimension", QT_TRANSLATE_NOOP("Actions", "Dimension"), "D",
     QT_TRANSLATE_NOOP("Actions", "Measure between any two things; it follows them and prints"), When::always,
     true, "dimension"},

    {"shelf", QT_TRANSLATE_NOOP("Actions", "S&helf of parts"), "L",
     QT_TRANSLATE_NOOP("Actions", "Parts to drag onto the drawing; Enter puts one in the middle")},
    {"survey", QT_TRANSLATE_NOOP("Actions", "S&urvey…"), "Ctrl+M",
     QT_TRANSLATE_NOOP("Actions", "Type what was measured at the vehicle and draw the engine from it")},

    {"insert-engine", QT_TRANSLATE_NOOP("Actions", "&Engine…"), "",
     QT_TRANSLATE_NOOP("Actions", "Choose an engine by its picture and place it")},
    {"insert-heater", QT_TRANSLATE_NOOP("Actions", "&Heater…"), "",
     QT_TRANSLATE_NOOP("Actions", "Choose a heater by its picture and place it under the jacket")},
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

    {"find-command", QT_TRANSLATE_NOOP("Actions", "Find a co&mmand…"), "Ctrl+Shift+F",
     QT_TRANSLATE_NOOP("Actions", "Search all commands by their words, and run one")},
    {"shortcuts", QT_TRANSLATE_NOOP("Actions", "&Shortcuts…"), "",
     QT_TRANSLATE_NOOP("Actions", "See the keys of every command, and change them")},
    {"cautions", QT_TRANSLATE_NOOP("Actions", "&Cautions"), "F1",
     QT_TRANSLATE_NOOP("Actions", "What to heed before and during the work")},
    {"first-steps", QT_TRANSLATE_NOOP("Actions", "&First sketch, step by step"), "",
     QT_TRANSLATE_NOOP("Actions", "Be led through a first drawing, from the engine to the saved file")},
    {"about", QT_TRANSLATE_NOOP("Actions", "&About Siphonwright"), "",
     QT_TRANSLATE_NOOP("Actions", "Version, licences and what the figures are")},
};

} // namespace

Actions::Actions(QObject* parent) : QObject(parent)
{
    for (const Row& row : table) {
        auto* action = new QAction(QCoreApplication::translate("Actions", row.text), this);
        action->setStatusTip(QCoreApplication::translate("Actions", row.tip));
        action->setCheckable(row.checkable);
        action->setIconVisibleInMenu(!row.checkable); // its place is the check mark's
        action->setObjectName(QString::fromLatin1(row.id));
        action->setShortcut(QKeySequence(QString::fromLatin1(row.shortcut)));
        takeIn(*action);
    }
}

void Actions::takeIn(QAction& action)
{
    by_id_.insert(action.objectName(), &action);
    ids_.append(action.objectName());
    setKeys(action.objectName(), action.shortcuts());
}

void Actions::setKeys(const QString& id, const QList<QKeySequence>& keys)
{
    QAction* action = (*this)[id];
    action->setShortcuts(keys);
    const QString tip = action->statusTip();
    const QString first = action->shortcut().toString(QKeySequence::NativeText);
    if (!tip.isEmpty()) // undo and redo say by themselves what they would take back
        action->setToolTip(first.isEmpty() ? tip : tr("%1 (%2)").arg(tip, first));
}

QString Actions::whyNot(const QString& id) const
{
    if ((*this)[id]->isEnabled())
        return {};
    for (const Row& row : table)
        if (id == QLatin1String(row.id))
            return missingFor(row.when);
    return {};
}

QAction* Actions::operator[](const QString& id) const
{
    QAction* action = by_id_.value(id);
    Q_ASSERT(action);
    return action;
}

void Actions::setLook(drawing::Look look)
{
    for (const Row& row : table)
        by_id_.value(QString::fromLatin1(row.id))
            ->setIcon(look::icon(QString::fromLatin1(row.icon ? row.icon : row.id), look));
    for (const char* id : {"undo", "redo"})
        if (QAction* action = by_id_.value(QString::fromLatin1(id)))
            action->setIcon(look::icon(QString::fromLatin1(id), look));
}

void Actions::update(const Situation& situation)
{
    for (const Row& row : table)
        by_id_.value(QString::fromLatin1(row.id))->setEnabled(possible(row.when, situation));
}

} // namespace siphonwright
