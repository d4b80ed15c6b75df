#include "app/drawing/text.h"
#include "app/language/tr.h"
#include "app/sheet/columns.h"
#include "app/sheet/end_view.h"

#include <QPainter>

#include <algorithm>

/// The words beside the drawing, and those without room there on sheets of their own behind it.
namespace siphonwright::sheet {

namespace {

/// Leave out one more item: of the section that can best spare it. False: none can.
bool shorten(const std::vector<Section>& sections, std::vector<std::size_t>& shown)
{
    std::size_t best = sections.size();
    for (std::size_t i = 0; i < sections.size(); ++i) {
        if (shown[i] > sections[i].at_least &&
            (best == sections.size() ||
             shown[i] - sections[i].at_least > shown[best] - sections[best].at_least))
            best = i;
    }
    if (best == sections.size()) {
        // Beyond what should stay, whatever is longest gives way, cautions last: nothing is ever cut in the
        // middle.
        for (const bool kept : {false, true})
            for (std::size_t i = 0; i < sections.size(); ++i)
                if (sections[i].kept == kept && shown[i] > 0 &&
                    (best == sections.size() || (sections[best].kept == kept && shown[i] > shown[best])))
                    best = i;
        if (best == sections.size())
            return false;
    }
    --shown[best];
    return true;
}

std::vector<Section> sectionsOf(const Sketch& sketch, const Analysis& analysis, const Options& options,
                                bool end_left_out)
{
    if (options.student)
        return {complaintSection(sketch), questionsSection(), viewsSection(end_left_out), cautionsSection()};
    return {findingsSection(sketch, analysis),
            notJudgedSection(analysis),
            resultsSection(sketch, analysis),
            marginsSection(sketch, analysis),
            choicesSection(sketch),
            assumptionsSection(sketch),
            partsSection(sketch, analysis),
            supplySection(sketch, analysis),
            behindSection(options.behind),
            viewsSection(end_left_out),
            cautionsSection()};
}

std::vector<std::size_t> wholeOf(const std::vector<Section>& sections)
{
    std::vector<std::size_t> shown;
    for (const Section& section : sections)
        shown.push_back(section.items.size());
    return shown;
}

/// What of each section stands beside the drawing.
struct BesideIt {
    std::vector<Section> sections;
    std::vector<std::size_t> shown;
    std::vector<Block> blocks;
    double lettering_mm = normal_mm;
};

BesideIt besideDrawing(const Sketch& sketch, const Analysis& analysis, const Options& options,
                       bool end_left_out, const Columns& columns)
{
    BesideIt beside;
    beside.sections = sectionsOf(sketch, analysis, options, end_left_out);
    beside.shown = wholeOf(beside.sections);
    for (const double lettering_mm : {normal_mm, small_mm}) {
        beside.lettering_mm = lettering_mm;
        beside.blocks =
            SetText(beside.sections, columns.width_mm(), lettering_mm).laid(columns, beside.shown, options);
        if (!beside.blocks.empty())
            return beside;
    }
    const SetText set(beside.sections, columns.width_mm(), small_mm);
    while (beside.blocks.empty() && shorten(beside.sections, beside.shown))
        beside.blocks = set.laid(columns, beside.shown, options);
    return beside;
}

/// The sections that are cut short beside the drawing, whole: nobody has to put two halves together.
std::vector<Section> cutShort(const Sketch& sketch, const Analysis& analysis, const Options& options,
                              const Plan& plan)
{
    BesideIt beside = besideDrawing(sketch, analysis, options, plan.end_left_out, {plan.notes, plan.columns});
    std::vector<Section> cut;
    for (std::size_t i = 0; i < beside.sections.size(); ++i)
        if (beside.shown[i] < beside.sections[i].items.size())
            cut.push_back(std::move(beside.sections[i]));
    return cut;
}

Columns columnsOf(const Plan& notes_sheet, int pages)
{
    constexpr double least_mm = 75;
    const int count = std::max(1, static_cast<int>(notes_sheet.notes.width() / least_mm));
    return {notes_sheet.notes, count, pages};
}

} // namespace

bool notesFit(const Sketch& sketch, const Analysis& analysis, const Options& options, const Plan& plan,
              double lettering_mm)
{
    const std::vector<Section> sections = sectionsOf(sketch, analysis, options, plan.end_left_out);
    const Columns columns{plan.notes, plan.columns};
    return !SetText(sections, columns.width_mm(), lettering_mm)
                .laid(columns, wholeOf(sections), options)
                .empty();
}

void paintNotes(const Page& page, const QRectF& box, int columns)
{
    page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
    const Columns within{box, columns};
    const BesideIt beside =
        besideDrawing(page.sketch, page.analysis, page.options, page.end_left_out, within);
    paintBlocks(page, beside.blocks, 0, within.width_mm(), beside.lettering_mm);
}

int notesSheets(const Sketch& sketch, const Analysis& analysis, Options options)
{
    const Plan plan = planOf(sketch, analysis, options);
    const Plan sheet = notesSheetOf(options);
    // What has to move behind the drawing depends a little on the words that refer to it.
    for (options.notes_sheets = 1; options.notes_sheets < most_notes_sheets; ++options.notes_sheets) {
        const std::vector<Section> cut = cutShort(sketch, analysis, options, plan);
        if (cut.empty())
            return 0;
        const Columns columns = columnsOf(sheet, options.notes_sheets);
        if (!SetText(cut, columns.width_mm(), normal_mm).laid(columns, wholeOf(cut), options).empty())
            break;
    }
    return options.notes_sheets;
}

void paintRestOfNotes(const Page& page, const Plan& notes_sheet)
{
    const std::vector<Section> cut =
        cutShort(page.sketch, page.analysis, page.options, planOf(page.sketch, page.analysis, page.options));
    const Columns columns = columnsOf(notes_sheet, page.options.notes_sheets);
    std::vector<std::size_t> shown = wholeOf(cut);
    const SetText set(cut, columns.width_mm(), normal_mm);
    std::vector<Block> blocks = set.laid(columns, shown, page.options);
    while (blocks.empty() && shorten(cut, shown))
        blocks = set.laid(columns, shown, page.options);
    paintBlocks(page, blocks, page.number - 2, columns.width_mm(), normal_mm);
}

} // namespace siphonwright::sheet
