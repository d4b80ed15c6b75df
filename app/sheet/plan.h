#pragma once

#include "app/drawing/elevation.h"
#include "app/drawing/line_table.h"
#include "app/sheet/sheet.h"

#include <QLineF>

#include <optional>
#include <utility>
#include <vector>

/// Where everything stands on the page, mm from its top left corner.
namespace siphonwright::sheet {

/// What the parts of a page share while it is painted.
struct Page {
    QPainter& painter;
    const Sketch& sketch;
    const Analysis& analysis;
    const Options& options;
    UnitSystem units;
    drawing::Palette palette;
    bool end_left_out = false; ///< depth matters, but there is no room for an end view
    drawing::OnPage on_page;   ///< of the elevation
    int number = 1;            ///< of this sheet in the set
};

/// A height over the datum that the sheet states.
struct Height {
    QPointF at; ///< the feature, painter axes of the elevation
    QString text;
    bool led_to = true; ///< by a thin line across the view; not where a line is already
};
std::vector<Height> heightsOf(const Sketch& sketch, const Analysis& analysis);

struct Plan {
    QRectF frame;
    QRectF border; ///< round the frame, with the letters and figures of its zones
    QRectF title;
    QRectF foot;    ///< scale bars
    QRectF caption; ///< over the view: what is seen, from which side
    QRectF spacing; ///< dimension over the view; null where there is none
    QRectF heights; ///< column left of the view
    QRectF view;    ///< the elevation
    QRectF drops;   ///< dimensions right of the view
    QRectF notes;   ///< findings, parts, cautions
    int columns = 1;
    double lettering_mm = drawing::small_text_mm; ///< of what is written in and beside the views
    int denominator = 10;
    QPointF origin; ///< of the elevation's axes, on the page
    QRectF end;     ///< the end view; null where there is none
    QPointF end_origin;
    bool end_left_out = false;
};
Plan planOf(const Sketch& sketch, const Analysis& analysis, const Options& options);
/// A sheet of notes behind the drawing: frame, border, title block and room for the notes; no scale.
Plan notesSheetOf(const Options& options);

constexpr double small_mm = drawing::small_text_mm;
constexpr double normal_mm = drawing::text_mm;
constexpr double large_mm = drawing::heading_text_mm;

UnitSystem unitsOf(const Sketch& sketch);

/// \param denominator 0: nothing on this sheet is to scale
void paintTitleBlock(const Page& page, const QRectF& box, int denominator);
/// Scale bar, what marks mean, and at the right a square to measure a print by.
void paintFoot(const Page& page, const QRectF& box, int denominator);
/// Of that square, mm on paper whatever the scale.
double measureMeSide(UnitSystem units);
/// What a view's box on the page shows of the drawing, painter axes.
inline QRectF seenOn(const QRectF& box, QPointF origin, int denominator)
{
    return {(box.topLeft() - origin) * denominator, box.size() * denominator};
}
/// Lines from the heights' and drops' columns across the view to what they are of.
std::vector<QLineF> guidesOf(const Sketch& sketch, const Analysis& analysis, const Plan& plan);
/// Item numbers of the parts list, by what is drawn.
std::vector<std::pair<PartRef, std::size_t>> itemNumbers(const Sketch& sketch, const Analysis& analysis);
/// The supply and the return port of the first loop that has both.
std::optional<std::pair<QPointF, QPointF>> portsOfLoop(const Sketch& sketch);
/// Are there heights, marked with a star, that nobody has measured?
bool anyUnmeasured(const Sketch& sketch, const Analysis& analysis);
void paintSpacing(const Page& page, const Plan& plan);
void paintBorder(const Page& page, const Plan& plan);
void paintHeights(const Page& page, const Plan& plan);
void paintDrops(const Page& page, const Plan& plan);
void paintNotes(const Page& page, const QRectF& box, int columns);
/// On a sheet of its own, what has no room beside the drawing.
void paintRestOfNotes(const Page& page, const Plan& notes_sheet);
/// How many sheets that takes; 0: all notes stand beside the drawing.
int notesSheets(const Sketch& sketch, const Analysis& analysis, Options options);
constexpr int most_notes_sheets = 20;
/// Is there room for all that the notes say, in this lettering?
bool notesFit(const Sketch& sketch, const Analysis& analysis, const Options& options, const Plan& plan,
              double lettering_mm);

} // namespace siphonwright::sheet
