#include "app/sheet/lay_out.h"

#include "app/sheet/end_view.h"

#include <algorithm>
#include <array>
#include <memory>
#include <numeric>
#include <optional>
#include <utility>

namespace siphonwright::sheet {

namespace {

/// Air over and under what is drawn, for its labels, as multiples of their lettering: as much as lets all
/// insets come in, or as many as can.
constexpr std::array airs = {10.0, 8.0, 6.5};
constexpr double least_air = 4.5;

struct Job {
    const Sketch& sketch;
    const Analysis& analysis;
    const Options& options;
    Known& known;
    double largest_mm = normal_mm; ///< of the notes' lettering
};

std::vector<std::size_t> allOf(const std::vector<Inset>& insets)
{
    std::vector<std::size_t> all(insets.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return all;
}

/// As in the notes: large paper can have the larger.
std::vector<double> letteringsOf(const Plan& plan)
{
    if (plan.lettering_mm > small_mm)
        return {normal_mm, small_mm};
    return {small_mm};
}

/// Put what goes there into a box of a sheet.
void fill(LaidSheet& sheet, std::vector<std::size_t>& waiting, const std::vector<Inset>& insets,
          const QRectF& box, double lettering_mm, PackWish wish = PackWish::low)
{
    const Packed more = packed(insets, waiting, box.width(), box.height(), lettering_mm, wish);
    for (const PlacedInset& one : movedTo(more.placed, box.topLeft()))
        sheet.insets.push_back(one);
    waiting = without(waiting, more.placed);
}

/// Beside the title block, between the bars and the square: one inset, as high as the room is.
void fillFoot(LaidSheet& sheet, std::vector<std::size_t>& waiting, const std::vector<Inset>& insets)
{
    const QRectF& room = sheet.plan.foot_free;
    for (const std::size_t index : waiting) {
        const Inset& inset = insets[index];
        if (!inset.needed || inset.least_width_mm > room.width() || !inset.heading.isEmpty() ||
            inset.height_mm(room.width(), small_mm) > room.height())
            continue;
        sheet.insets.push_back({index, room, small_mm});
        waiting = without(waiting, sheet.insets);
        return;
    }
}

std::vector<std::size_t> neededOf(const std::vector<Inset>& insets, std::vector<std::size_t> waiting)
{
    waiting.erase(std::remove_if(waiting.begin(), waiting.end(),
                                 [&](std::size_t index) { return !insets[index].needed; }),
                  waiting.end());
    return waiting;
}

/// How high the views and what stands under them may be, and what of it goes to insets under them.
Packed bestUnder(const Job& job, const Plan& plan, double views_mm, double room_mm,
                 const std::vector<std::size_t>& waiting)
{
    Packed best;
    for (const double lettering_mm : letteringsOf(plan))
        for (const double air : airs) {
            const double most = room_mm - views_mm - 2 * air * plan.lettering_mm;
            Packed one = packed(job.options.insets, waiting, plan.under.width(), most, lettering_mm);
            if (holdsMore(one, best))
                best = std::move(one);
            if (best.placed.size() == waiting.size())
                return best;
        }
    if (neededOf(job.options.insets, without(waiting, best.placed)).empty())
        return best;
    // What belongs to the drawing's sheet comes before air.
    const double most = room_mm - views_mm - 2 * least_air * plan.lettering_mm;
    Packed needed = packed(job.options.insets, neededOf(job.options.insets, waiting), plan.under.width(),
                           most, plan.lettering_mm);
    return holdsMore(needed, best) ? needed : best;
}

/// The narrowest notes beside the views into which all words go, if the views stay as large as they are.
Beside chosenBeside(const Job& job, const Drawn& drawn, Beside least)
{
    const auto planFor = [&](const Beside& beside) {
        return planWith(job.sketch, job.options, drawn, beside);
    };
    const Plan first = planFor(least);
    const auto kept = std::make_pair(first.denominator, job.largest_mm);
    if (const auto found = job.known.widths.find(kept); found != job.known.widths.end())
        return found->second;
    std::vector<Beside> ways = {least};
    constexpr double widest_share = 0.6;
    constexpr double step_mm = 12;
    constexpr double widest_column = 115;
    constexpr double narrowest_column = 50;
    for (double wide = least.width_mm + step_mm; wide < widest_share * first.frame.width(); wide += step_mm) {
        const Plan wider = planFor({wide, 1});
        if (wider.denominator != first.denominator || wider.end_left_out != first.end_left_out)
            break;
        // Short lines leave less room empty in two columns.
        for (int columns = 1; columns <= 2; ++columns)
            if (wide / columns >= narrowest_column && wide / columns <= widest_column)
                ways.push_back({wide, columns});
    }
    const std::vector<Section> sections =
        sectionsOf(job.sketch, job.analysis, job.options, first.end_left_out);
    const auto fits = [&](const Beside& way, double lettering_mm) {
        const Columns columns{planFor(way).notes, way.columns};
        return !SetText(sections, columns.width_mm(), lettering_mm)
                    .laid(columns, wholeOf(sections), job.options)
                    .empty();
    };
    for (const double lettering_mm : {normal_mm, small_mm}) {
        if (lettering_mm > job.largest_mm)
            continue;
        // Where even the widest are too small, no other needs to be tried: text takes time to set.
        const std::size_t widest = ways.size() - std::min<std::size_t>(ways.size(), 2);
        const auto goes_in = [&](const Beside& way) { return fits(way, lettering_mm); };
        if (std::any_of(ways.begin() + std::ptrdiff_t(widest), ways.end(), goes_in))
            return job.known.widths[kept] = *std::find_if(ways.begin(), ways.end(), goes_in);
    }
    return job.known.widths[kept] = ways.back();
}

/// What is left over may go under the notes.
void setNotes(LaidSheet& sheet, Notes notes, std::vector<std::size_t>& waiting, const Options& options)
{
    for (const QRectF& free : freeIn(sheet.columns, notes.blocks, 0, notes.lettering_mm))
        fill(sheet, waiting, options.insets, free, std::min(notes.lettering_mm, sheet.plan.lettering_mm));
    sheet.notes = std::move(notes.blocks);
    sheet.lettering_mm = notes.lettering_mm;
}

/// The first sheet, and what has no room on it.
struct First {
    LaidSheet sheet;
    std::vector<Section> cut;
    std::vector<std::size_t> waiting;
};

First finished(const Job& job, LaidSheet sheet, std::vector<std::size_t> waiting)
{
    Notes notes =
        notesIn(sheet.columns, sectionsOf(job.sketch, job.analysis, job.options, sheet.plan.end_left_out),
                job.options, job.largest_mm);
    std::vector<Section> cut = cutShort(notes);
    setNotes(sheet, std::move(notes), waiting, job.options);
    return {std::move(sheet), std::move(cut), std::move(waiting)};
}

/// What has to be on the drawing's sheet and has no room under the views stands at the foot of the notes.
void fillFootOfNotes(LaidSheet& sheet, std::vector<std::size_t>& waiting, const std::vector<Inset>& insets)
{
    const QRectF& notes = sheet.plan.notes;
    const Packed foot =
        packed(insets, neededOf(insets, waiting), notes.width(), notes.height() / 2, small_mm);
    for (const PlacedInset& one : movedTo(foot.placed, notes.bottomLeft() - QPointF(0, foot.height_mm)))
        sheet.insets.push_back(one);
    waiting = without(waiting, foot.placed);
    sheet.columns.box.setBottom(notes.bottom() - foot.height_mm);
}

First besideAt(const Job& job, const Drawn& drawn, const Beside& beside)
{
    LaidSheet sheet;
    constexpr double some_mm = 1; // to know how broad it is
    sheet.plan = planWith(job.sketch, job.options, drawn, beside, {some_mm, std::nullopt});
    std::vector<std::size_t> waiting = allOf(job.options.insets);
    fillFoot(sheet, waiting, job.options.insets);
    const Plan& plan = sheet.plan;
    const Packed under = bestUnder(job, plan, heightOfViews(plan, drawn), plan.notes.height(), waiting);
    sheet.plan = planWith(job.sketch, job.options, drawn, beside, {under.height_mm, std::nullopt});
    for (const PlacedInset& one : movedTo(under.placed, sheet.plan.under.topLeft()))
        sheet.insets.push_back(one);
    waiting = without(waiting, under.placed);
    sheet.columns = {sheet.plan.notes, sheet.plan.columns};
    fillFootOfNotes(sheet, waiting, job.options.insets);
    return finished(job, std::move(sheet), std::move(waiting));
}

/// As usual; with room for insets beside the notes; or nothing where the views would be smaller by that.
std::optional<First> besideWith(const Job& job, const Drawn& drawn, const Beside& least, double more_mm)
{
    Beside beside = chosenBeside(job, drawn, least);
    if (more_mm > 0) {
        const Plan plan = planWith(job.sketch, job.options, drawn, beside);
        beside = {beside.width_mm + more_mm, 2};
        const Plan wider = planWith(job.sketch, job.options, drawn, beside);
        if (wider.denominator != plan.denominator || wider.end_left_out != plan.end_left_out)
            return std::nullopt;
    }
    return besideAt(job, drawn, beside);
}

/// Smaller notes, and then a smaller drawing, where all the insets come in by that.
First besideViews(const Job& job, const Drawn& drawn, const Beside& least)
{
    First first = *besideWith(job, drawn, least, 0);
    if (first.waiting.empty() || first.sheet.plan.lettering_mm <= small_mm)
        return first;
    constexpr int smallest = 20; // own choice, as where there is an end view
    Options smaller = job.options;
    smaller.scale = smallest;
    const bool can_shrink = !job.options.scale && first.sheet.plan.denominator < smallest;
    const std::array<const Options*, 2> ways{&job.options, can_shrink ? &smaller : nullptr};
    constexpr std::array<std::pair<double, double>, 5> tries{
        {{normal_mm, 0}, {normal_mm, 24}, {small_mm, 0}, {small_mm, 36}, {small_mm, 60}}};
    for (const Options* options : ways)
        for (const auto& [lettering_mm, more_mm] : tries) {
            if (!options || (options == &job.options && lettering_mm == normal_mm && more_mm == 0))
                continue;
            std::optional<First> other = besideWith(
                {job.sketch, job.analysis, *options, job.known, lettering_mm}, drawn, least, more_mm);
            if (other && other->waiting.empty() && other->cut.empty())
                return std::move(*other);
        }
    return first;
}

/// One way to share the height of an upright page.
struct Stacked {
    Packed under;
    double notes_mm = 0;
};

/// Views, insets and notes under each other, with all words in the notes; nothing where that takes too much.
std::optional<Stacked> allNotes(const Job& job, const Plan& plan, double views_mm, double room_mm,
                                const std::vector<std::size_t>& waiting)
{
    std::optional<Stacked> best;
    const std::vector<Section> sections =
        sectionsOf(job.sketch, job.analysis, job.options, plan.end_left_out);
    for (const double lettering_mm : {normal_mm, small_mm}) {
        const Columns columns{plan.notes, plan.columns};
        const double most = room_mm - views_mm - 2 * airs.back() * plan.lettering_mm;
        const SetText set(sections, columns.width_mm(), lettering_mm);
        const auto notes = leastHeight(set, columns, most, wholeOf(sections), job.options);
        if (!notes)
            continue;
        const Packed under = bestUnder(job, plan, views_mm, room_mm - *notes, waiting);
        if (!best || holdsMore(under, best->under))
            best = {under, *notes};
        if (under.placed.size() == waiting.size())
            break;
    }
    const bool lacks = best && !neededOf(job.options.insets, without(waiting, best->under.placed)).empty();
    return lacks ? std::nullopt : best;
}

First underViews(const Job& job, const Drawn& drawn)
{
    LaidSheet sheet;
    constexpr double some_mm = 1;
    sheet.plan = planWith(job.sketch, job.options, drawn, std::nullopt);
    std::vector<std::size_t> waiting = allOf(job.options.insets);
    sheet.columns = {sheet.plan.notes, sheet.plan.columns};
    if (waiting.empty())
        return finished(job, std::move(sheet), {});
    fillFoot(sheet, waiting, job.options.insets);
    const double room = sheet.plan.notes.bottom() - sheet.plan.frame.top();
    const Plan wide = planWith(job.sketch, job.options, drawn, std::nullopt, {some_mm, std::nullopt});
    const double views = heightOfViews(wide, drawn);
    std::optional<Stacked> shares = allNotes(job, wide, views, room, waiting);
    if (!shares) {
        // Notes have sheets of their own, but what is signed and how hoses run belong to the drawing.
        shares = Stacked{bestUnder(job, wide, views, room, neededOf(job.options.insets, waiting)), 0};
        shares->notes_mm = room - views - 2 * least_air * wide.lettering_mm - shares->under.height_mm;
    }
    sheet.plan =
        planWith(job.sketch, job.options, drawn, std::nullopt, {shares->under.height_mm, shares->notes_mm});
    for (const PlacedInset& one : movedTo(shares->under.placed, sheet.plan.under.topLeft()))
        sheet.insets.push_back(one);
    waiting = without(waiting, shares->under.placed);
    sheet.columns = {sheet.plan.notes, sheet.plan.columns};
    return finished(job, std::move(sheet), std::move(waiting));
}

} // namespace

LaidSheet emptySheet(const Options& options)
{
    constexpr double least_mm = 75;
    LaidSheet sheet;
    sheet.plan = notesSheetOf(options);
    const int count = std::max(1, static_cast<int>(sheet.plan.notes.width() / least_mm));
    sheet.columns = {sheet.plan.notes, count, 1};
    return sheet;
}

namespace {

/// The words that were cut short, on as many sheets as they take.
std::vector<LaidSheet> sheetsOfNotes(const std::vector<Section>& cut, const Options& options)
{
    if (cut.empty())
        return {};
    LaidSheet one = emptySheet(options);
    Columns all = one.columns;
    const SetText set(cut, all.width_mm(), normal_mm);
    std::vector<Block> blocks;
    for (all.pages = 1; blocks.empty() && all.pages < most_notes_sheets; ++all.pages)
        blocks = set.laid(all, wholeOf(cut), options);
    int last = 0;
    for (const Block& block : blocks)
        last = std::max(last, block.page);
    std::vector<LaidSheet> sheets(std::size_t(last) + 1, one);
    for (Block& block : blocks)
        sheets[std::size_t(block.page)].notes.push_back(block);
    return sheets;
}

/// One of those that have no room on a whole sheet, however high it is: nothing is left out.
void force(LaidSheet& sheet, std::vector<std::size_t>& waiting, const std::vector<Inset>& insets,
           double lettering_mm)
{
    fill(sheet, waiting, insets, sheet.plan.notes, lettering_mm);
    if (!sheet.insets.empty())
        return;
    sheet.insets.push_back({waiting.front(), sheet.plan.notes.adjusted(3, 3, -3, -3), lettering_mm});
    waiting.erase(waiting.begin());
}

std::vector<LaidSheet> behindDrawing(const std::vector<Section>& cut, std::vector<std::size_t> waiting,
                                     const Options& options, double lettering_mm)
{
    // Behind the drawing hoses may stand on different sheets.
    std::vector<Inset> insets = options.insets;
    for (std::size_t i = 0; i < insets.size(); ++i)
        insets[i].group = static_cast<int>(i);
    std::vector<LaidSheet> sheets = sheetsOfNotes(cut, options);
    if (!sheets.empty()) {
        LaidSheet& last = sheets.back();
        for (const QRectF& free : freeIn(last.columns, last.notes, last.notes.back().page, last.lettering_mm))
            fill(last, waiting, insets, free, lettering_mm);
    }
    while (!waiting.empty() && sheets.size() < most_notes_sheets) {
        LaidSheet sheet = emptySheet(options);
        fill(sheet, waiting, insets, sheet.plan.notes, lettering_mm, PackWish::broad);
        if (sheet.insets.empty())
            force(sheet, waiting, insets, lettering_mm);
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace

namespace {

/// As in the plan before, if this one leaves the views the same room.
void nameViews(const Job& job, const Drawn& drawn, LaidSheet& sheet)
{
    if (drawn.box.isNull())
        return;
    const Plan& plan = sheet.plan;
    auto& named = job.known.named;
    if (!named || !sameViews(named->first, plan))
        named = {plan, placeNames(job.sketch, job.analysis, job.options, plan)};
    sheet.names = named->second;
}

/// Does a key have to hold more than it has been given room for?
bool needsKeys(const ViewNames& names, const Known& known)
{
    const bool more =
        names.elevation.rows_wanted > known.key.rows || names.end.rows_wanted > known.end_key.rows;
    return more && (!known.no_more_keys || names.elevation.unsaid > 0);
}

KeyNeed widened(KeyNeed need, const drawing::PlacedNames& names)
{
    if (names.rows_wanted > 0)
        need = {std::max(need.rows, names.rows_wanted), std::max(need.row_mm, names.row_mm)};
    return need;
}

/// Would one sheet become several, or the drawing smaller?
bool holdsLess(const First& one, const First& other)
{
    const auto all_on_one = [](const First& first) { return first.waiting.empty() && first.cut.empty(); };
    return (all_on_one(other) && !all_on_one(one)) ||
           one.sheet.plan.denominator > other.sheet.plan.denominator;
}

} // namespace

std::vector<LaidSheet> layOut(const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    Known known;
    return layOut(sketch, analysis, options, known);
}

std::vector<LaidSheet> layOut(const Sketch& sketch, const Analysis& analysis, const Options& options,
                              Known& known)
{
    const Job job{sketch, analysis, options, known};
    Drawn drawn = drawnOf(sketch, analysis, options);
    const std::optional<Beside> least = leastBeside(options);
    const auto with_keys = [&](KeyNeed key, KeyNeed end_key) {
        drawn.key = key;
        drawn.end_key = end_key;
        First first = least ? besideViews(job, drawn, *least) : underViews(job, drawn);
        nameViews(job, drawn, first.sheet);
        return first;
    };
    First first = with_keys(known.key, known.end_key);
    // A key takes room from the views, by which more names may have none.
    constexpr int tries = 3;
    for (int i = 0; i < tries && needsKeys(first.sheet.names, known); ++i) {
        const KeyNeed key = widened(known.key, first.sheet.names.elevation);
        const KeyNeed end_key = widened(known.end_key, first.sheet.names.end);
        First other = with_keys(key, end_key);
        // Only for a name that is said nowhere else something has to give way to a key.
        if (first.sheet.names.elevation.unsaid == 0 && holdsLess(other, first)) {
            known.no_more_keys = true;
            break;
        }
        first = std::move(other);
        known.key = key;
        known.end_key = end_key;
    }
    std::vector<LaidSheet> sheets =
        behindDrawing(first.cut, first.waiting, options, first.sheet.plan.lettering_mm);
    sheets.insert(sheets.begin(), std::move(first.sheet));
    return sheets;
}

Plan planOf(const Sketch& sketch, const Analysis& analysis, const Options& options)
{
    return layOut(sketch, analysis, options).front().plan;
}

} // namespace siphonwright::sheet
