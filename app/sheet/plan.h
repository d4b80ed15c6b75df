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
    int number = 1; ///< of this sheet in the set
};

/// A height over the datum that the sheet states.
struct Height {
    QPointF at; ///< the feature, painter axes of the elevation
    QString text;
    bool led_to = true; ///< by a thin line across the view; not where a line is already
};
std::vector<Height> heightsOf(const Sketch& sketch, const Analysis& analysis);

/// Room under a view for the names that have none in it.
struct PlannedKey {
    QRectF box; ///< null: not needed
    double column_mm = 0;
};

struct Plan {
    QRectF frame;
    QRectF border; ///< round the frame, with the letters and figures of its zones
    QRectF title;
    QRectF foot;      ///< scale bars
    QRectF foot_free; ///< between them and the square to measure by
    QRectF caption;   ///< over the view: what is seen, from which side
    QRectF spacing;   ///< dimension over the view; null where there is none
    QRectF heights;   ///< column left of the view
    QRectF view;      ///< the elevation
    QRectF drops;     ///< dimensions right of the view
    QRectF under;     ///< insets under the views; null where there are none
    QRectF notes;     ///< findings, parts, cautions
    int columns = 1;
    double lettering_mm = drawing::small_text_mm; ///< of what is written in and beside the views
    int denominator = 10;
    QPointF origin; ///< of the elevation's axes, on the page
    QRectF end;     ///< the end view; null where there is none
    QPointF end_origin;
    bool end_left_out = false;
    PlannedKey key; ///< under the elevation
    PlannedKey end_key;
    double keys_mm = 0; ///< what they take of the height
};
/// Are the views the same in both, with the same room?
bool sameViews(const Plan& a, const Plan& b);
Plan planOf(const Sketch& sketch, const Analysis& analysis, const Options& options);

/// What a view's key has to hold: rows, and the broadest of them.
struct KeyNeed {
    std::size_t rows = 0;
    double row_mm = 0;
};

/// What is drawn, painter axes, and how wide the columns beside it are.
struct Drawn {
    QRectF box;
    QRectF end; ///< null: no end view
    double left_mm = 0;
    double drops_mm = 0;
    double over_view_mm = 0;
    KeyNeed key = {};
    KeyNeed end_key = {};
};
Drawn drawnOf(const Sketch& sketch, const Analysis& analysis, const Options& options);
/// Notes beside the views: how wide, in how many columns.
struct Beside {
    double width_mm = 0;
    int columns = 1;
};
/// The narrowest on a page that is broader than high; nothing: they stand under the views.
std::optional<Beside> leastBeside(const Options& options);
/// How much of the height insets take under the views, and notes under them where they are not beside.
struct Shares {
    double under_mm = 0;
    std::optional<double> notes_mm;
};
/// The page with its notes beside the views, or under them.
Plan planWith(const Sketch& sketch, const Options& options, const Drawn& all,
              const std::optional<Beside>& beside, const Shares& shares = {});
/// What the views of a plan take at its scale, with what stands over them but without air.
double heightOfViews(const Plan& plan, const Drawn& drawn);
/// A sheet of notes behind the drawing: frame, border, title block and room for the notes; no scale.
Plan notesSheetOf(const Options& options);

constexpr double small_mm = drawing::small_text_mm;
constexpr double normal_mm = drawing::text_mm;
constexpr double large_mm = drawing::heading_text_mm;

UnitSystem unitsOf(const Sketch& sketch);
drawing::Palette paletteOf(const Options& options);

/// \param denominator 0: nothing on this sheet is to scale
void paintTitleBlock(const Page& page, const QRectF& box, int denominator);
/// Scale bar, what marks mean, and at the right a square to measure a print by.
void paintFoot(const Page& page, const Plan& plan);
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
} // namespace siphonwright::sheet
