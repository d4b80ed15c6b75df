#include "app/sheet/plan.h"

#include "app/drawing/text.h"
#include "app/sheet/end_view.h"
#include "app/sheet/lay_out.h"

#include <QPageSize>

#include <algorithm>
#include <array>
#include <cmath>

namespace siphonwright::sheet {

namespace {

constexpr double title_width_mm = 180; // ISO 7200
constexpr double title_height_mm = 40;
constexpr double foot_height_mm = 28;
constexpr double foot_bars_mm = 64;   // scale bar and what marks mean, at the left
constexpr double foot_square_mm = 35; // to measure by, at the right
constexpr double foot_air_mm = 1.5;
constexpr double caption_height_mm = 7;
constexpr double spacing_height_mm = 7;
constexpr double drop_column_mm = 8;
constexpr double air_across_mm = 13; // round the drawing: labels, the front arrow
constexpr double air_along_mm = 6;
constexpr double least_notes_mm = 62;

/// An elevation with an end view beside it is drawn no smaller than this: own choice.
constexpr int least_with_end = 20;

// ISO 5455 recommends these reductions; beyond 1:100 its series goes on by tens.
constexpr std::array reductions = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000};

QPageSize paperOf(Paper paper)
{
    switch (paper) {
    case Paper::a4:
        return QPageSize(QPageSize::A4);
    case Paper::a3:
        return QPageSize(QPageSize::A3);
    case Paper::letter:
        return QPageSize(QPageSize::Letter);
    case Paper::tabloid:
        return QPageSize(QPageSize::Tabloid);
    }
    return QPageSize(QPageSize::A4);
}

/// Large paper has larger lettering.
double letteringOn(const QSizeF& page)
{
    constexpr double large_paper_mm = 350;
    return page.width() > large_paper_mm ? normal_mm : small_mm;
}

double heightColumnWidth(const Sketch& sketch, const Analysis& analysis, double lettering_mm)
{
    double width = 0;
    for (const Height& height : heightsOf(sketch, analysis))
        width = std::max(width, drawing::textWidth(height.text, lettering_mm));
    return width > 0 ? std::min(width, 31 * lettering_mm) + 9 : 0;
}

/// Frame, title block and foot: the same on every sheet of a paper.
Plan frameOf(const QSizeF& page)
{
    Plan plan;
    // ISO 5457: 20 mm for binding on the left, 10 mm elsewhere.
    plan.frame = QRectF(20, 10, page.width() - 30, page.height() - 20);
    plan.border = plan.frame.adjusted(-5, -5, 5, 5);
    const double left_over = plan.frame.width() - title_width_mm;
    const double width = left_over < 60 ? plan.frame.width() : title_width_mm;
    plan.title =
        QRectF(plan.frame.right() - width, plan.frame.bottom() - title_height_mm, width, title_height_mm);
    if (left_over < 60)
        plan.foot = QRectF(plan.frame.left(), plan.title.top() - foot_height_mm, width, foot_height_mm);
    else
        plan.foot = QRectF(plan.frame.left(), plan.title.top(), left_over, title_height_mm);
    plan.foot_free = plan.foot.adjusted(foot_bars_mm, foot_air_mm, -foot_square_mm, -foot_air_mm);
    return plan;
}

/// The largest of the series at which a drawing goes in; 1:10 for an empty one.
int largestScale(const QSizeF& drawn, const QSizeF& room)
{
    if (!(drawn.width() > 0))
        return 10;
    const auto fits = [&](int n) {
        return drawn.width() / n <= room.width() && drawn.height() / n <= room.height();
    };
    const auto found = std::find_if(reductions.begin(), reductions.end(), fits);
    return found == reductions.end() ? reductions.back() : *found;
}

} // namespace

drawing::Palette paletteOf(const Options& options)
{
    return options.colour ? drawing::Palette::light() : drawing::Palette::paper();
}

UnitSystem unitsOf(const Sketch& sketch)
{
    return sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
}

QSizeF paperSize(const Options& options)
{
    const QSizeF upright = paperOf(options.paper).size(QPageSize::Millimeter);
    return options.orientation == QPageLayout::Landscape ? upright.transposed() : upright;
}

QSizeF pageSize(const Options& options)
{
    const QSizeF paper = paperSize(options);
    if (options.across <= 1 && options.down <= 1)
        return paper;
    return {(paper.width() - 2 * tile_margin_mm) * options.across,
            (paper.height() - 2 * tile_margin_mm) * options.down};
}

Options tiled(Options options, const Sketch& sketch, const Analysis& analysis)
{
    options.across = 1;
    options.down = 1;
    if (!options.scale)
        return options;
    // One more page where it is needed more: the way in which the sheet is shorter.
    Options found = options;
    found.scale = std::nullopt;
    while (scaleDenominator(sketch, analysis, found) > *options.scale) {
        const QSizeF size = pageSize(found);
        const bool wider = size.width() <= 1.3 * size.height();
        int& count = wider ? found.across : found.down;
        if (count >= most_tiles)
            break;
        ++count;
    }
    options.across = found.across;
    options.down = found.down;
    return options;
}

QPageLayout pageLayout(const Options& options)
{
    QPageLayout layout(paperOf(options.paper), options.orientation, QMarginsF(), QPageLayout::Millimeter);
    layout.setMode(QPageLayout::FullPageMode);
    return layout;
}

namespace {

/// The scale, and whether there is an end view.
void scaleViews(Plan& plan, Drawn& drawn, const QSizeF& room, const Options& options)
{
    const QSizeF alone(room.width() - drawn.left_mm - drawn.drops_mm - 2 * air_across_mm,
                       room.height() - drawn.over_view_mm - 2 * air_along_mm);
    plan.denominator = largestScale(drawn.box.size(), alone);
    if (!drawn.end.isNull()) {
        const QSizeF both(drawn.box.width() + drawn.end.width(),
                          std::max(drawn.box.height(), drawn.end.height()));
        const int n = largestScale(both, {alone.width() - 2 * air_across_mm, alone.height()});
        plan.end_left_out = n > std::max(least_with_end, plan.denominator);
        if (plan.end_left_out)
            drawn.end = QRectF();
        else
            plan.denominator = n;
    }
    if (options.scale && *options.scale > plan.denominator)
        plan.denominator = *options.scale;
}

constexpr double key_air_mm = 3; // between the columns of a key, and round it

/// What a key takes in this width. @return its height; 0: none is needed.
double setKey(PlannedKey& key, const KeyNeed& need, double width_mm, double lettering_mm)
{
    if (need.rows == 0)
        return 0;
    constexpr double most_row_mm = 75; // longer ones are cut
    constexpr double most_rows = 10;   // the drawing comes first
    const double room = width_mm - 2 * key_air_mm;
    const double columns =
        std::max(1.0, std::floor(room / (std::min(need.row_mm, most_row_mm) + key_air_mm)));
    const double rows = std::min(most_rows, std::ceil(double(need.rows) / columns));
    key.column_mm = room / columns;
    key.box = QRectF(0, 0, room, rows * drawing::key_row * lettering_mm);
    return key.box.height() + key_air_mm;
}

/// What the end view takes of the width of all. What is left over is shared, so that neither view is pressed
/// to an edge.
double endWidth(const Plan& plan, const Drawn& drawn, double width_mm)
{
    const double width = drawn.end.width() / plan.denominator + 2 * air_across_mm;
    const double taken =
        drawn.left_mm + drawn.drops_mm + 2 * air_across_mm + drawn.box.width() / plan.denominator + width;
    return width + std::max(0.0, width_mm - taken) / 2;
}

/// How high both keys are under the views.
double keyHeight(Plan& plan, const Drawn& drawn, double width_mm)
{
    plan.key = {};
    plan.end_key = {};
    double height = 0;
    double end_mm = 0;
    if (!drawn.end.isNull()) { // what stands under it is taken for its key
        end_mm = endWidth(plan, drawn, width_mm);
        height = setKey(plan.end_key, drawn.end_key, end_mm, plan.lettering_mm);
    }
    return std::max(height, setKey(plan.key, drawn.key, width_mm - end_mm, plan.lettering_mm));
}

/// Each as wide and high as it was found to be.
void placeKeys(Plan& plan, QPointF corner)
{
    if (!plan.key.box.isNull())
        plan.key.box.moveTopLeft(corner + QPointF(key_air_mm, 0));
    if (!plan.end_key.box.isNull())
        plan.end_key.box.moveTopLeft({plan.end.left() + key_air_mm, corner.y()});
}

/// The ports' distance close over what is drawn, which stays in the middle.
/// @return the middle's height.
double placeSpacing(Plan& plan, QRectF& area, const Drawn& drawn)
{
    constexpr double air_mm = 17; // labels over the drawing
    area.setTop(area.top() + spacing_height_mm);
    const double middle = area.center().y();
    const double spare = area.height() - drawn.box.height() / plan.denominator - 2 * air_mm;
    area.setTop(area.top() + std::max(0.0, spare / 2));
    plan.spacing = QRectF(area.left(), area.top() - spacing_height_mm, area.width(), spacing_height_mm);
    return middle;
}

void placeViews(Plan& plan, QRectF area, const Drawn& drawn, bool with_spacing)
{
    const double n = plan.denominator;
    const double middle = with_spacing ? placeSpacing(plan, area, drawn) : area.center().y();
    plan.heights = QRectF(area.left(), area.top(), drawn.left_mm, area.height());
    if (!drawn.end.isNull()) {
        const double width = endWidth(plan, drawn, area.width());
        plan.end = QRectF(area.right() - width, area.top(), width, area.height());
        area.setRight(plan.end.left());
    }
    plan.drops = QRectF(area.right() - drawn.drops_mm, area.top(), drawn.drops_mm, area.height());
    plan.view = QRectF(plan.heights.topRight(), plan.drops.bottomLeft());
    plan.origin = QPointF(plan.view.center().x(), middle) - drawn.box.center() / n;
    // One height stands at one place on both.
    plan.end_origin = {plan.end.center().x() - drawn.end.center().x() / n, plan.origin.y()};
}

} // namespace

Plan planWith(const Sketch& sketch, const Options& options, const Drawn& all,
              const std::optional<Beside>& beside, const Shares& shares)
{
    Plan plan = frameOf(pageSize(options));
    plan.lettering_mm = letteringOn(pageSize(options));
    Drawn drawn = all;
    const bool with_spacing = portsOfLoop(sketch).has_value();
    const double floor = std::min(plan.title.top(), plan.foot.top());
    QRectF area(plan.frame.topLeft(), QPointF(plan.frame.right(), floor));
    if (beside) {
        plan.notes = QRectF(area.right() - beside->width_mm, area.top(), beside->width_mm, area.height());
        plan.columns = beside->columns;
        area.setRight(plan.notes.left());
    }
    const double room_mm = area.height() - (beside ? 0 : least_notes_mm);
    scaleViews(plan, drawn, {area.width(), room_mm}, options);
    const double keys_mm = keyHeight(plan, drawn, area.width());
    if (keys_mm > 0)
        scaleViews(plan, drawn, {area.width(), room_mm - keys_mm}, options);
    plan.keys_mm = keyHeight(plan, drawn, area.width());
    if (!beside) {
        const double room = heightOfViews(plan, drawn) + 2 * air_along_mm;
        const double taken = std::max(room, area.height() / 3);
        const double notes = shares.notes_mm.value_or(area.height() - taken);
        plan.notes = QRectF(area.left(), area.bottom() - notes, area.width(), notes);
        plan.columns = area.width() > 240 ? 3 : 2;
        area.setBottom(plan.notes.top());
    }
    if (shares.under_mm > 0) {
        plan.under = QRectF(area.left(), area.bottom() - shares.under_mm, area.width(), shares.under_mm);
        constexpr double air_mm = 2;
        area.setBottom(plan.under.top() - air_mm);
    }
    area.setBottom(area.bottom() - plan.keys_mm);
    const QPointF keys_at = area.bottomLeft();
    plan.caption = QRectF(area.left(), area.top(), area.width(), caption_height_mm);
    area.setTop(plan.caption.bottom());
    placeViews(plan, area, drawn, with_spacing);
    placeKeys(plan, keys_at);
    return plan;
}

bool sameViews(const Plan& a, const Plan& b)
{
    return a.view == b.view && a.end == b.end && a.denominator == b.denominator && a.origin == b.origin &&
           a.heights == b.heights && a.drops == b.drops && a.key.box == b.key.box &&
           a.end_key.box == b.end_key.box && a.lettering_mm == b.lettering_mm;
}

int scaleDenominator(const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    if (options.laid)
        return options.laid->sheets.front().plan.denominator;
    // Wider notes take no more of it (chosenBeside).
    return planWith(sketch, options, drawnOf(sketch, analysis, options), leastBeside(options)).denominator;
}

std::optional<Beside> leastBeside(const Options& options)
{
    constexpr double narrow_mm = 76; // the drawing comes first: notes have sheets of their own
    const QSizeF page = pageSize(options);
    return page.width() <= page.height() ? std::nullopt : std::optional(Beside{narrow_mm, 1});
}

Drawn drawnOf(const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    return {drawing::boundsOf(sketch, analysis),
            depthMatters(sketch, analysis) ? drawing::boundsOf(sketch, analysis, endOf(options)) : QRectF(),
            heightColumnWidth(sketch, analysis, letteringOn(pageSize(options))),
            drop_column_mm * double(std::min<std::size_t>(sketch.heaters.size(), 3)),
            caption_height_mm + (portsOfLoop(sketch) ? spacing_height_mm : 0)};
}

double heightOfViews(const Plan& plan, const Drawn& drawn)
{
    const double most = std::max(drawn.box.height(), plan.end.isNull() ? 0 : drawn.end.height());
    return drawn.over_view_mm + most / plan.denominator + plan.keys_mm;
}

Plan notesSheetOf(const Options& options)
{
    Plan plan = frameOf(paperSize(options));
    plan.denominator = 0;
    plan.foot = QRectF();
    plan.foot_free = QRectF();
    plan.caption = QRectF(plan.frame.left(), plan.frame.top(), plan.frame.width(), caption_height_mm);
    plan.notes = QRectF(plan.caption.bottomLeft(), QPointF(plan.frame.right(), plan.title.top()));
    return plan;
}

std::optional<Paper> paperByName(const QString& name)
{
    const QString word = name.trimmed().toLower();
    if (word == QLatin1String("a4"))
        return Paper::a4;
    if (word == QLatin1String("a3"))
        return Paper::a3;
    if (word == QLatin1String("letter"))
        return Paper::letter;
    if (word == QLatin1String("tabloid"))
        return Paper::tabloid;
    return std::nullopt;
}

} // namespace siphonwright::sheet
