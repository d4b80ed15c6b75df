#include "app/sheet/notes.h"

#include "app/language/tr.h"
#include "app/sheet/end_view.h"

#include <algorithm>

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
        // Beyond what should stay, whatever is longest gives way, then the cuts, findings and cautions last:
        // nothing is ever cut in the middle.
        constexpr int most_kept = 3;
        for (int keeps = 0; keeps <= most_kept && best == sections.size(); ++keeps)
            for (std::size_t i = 0; i < sections.size(); ++i)
                if (sections[i].keeps == keeps && shown[i] > 0 &&
                    (best == sections.size() || shown[i] > shown[best]))
                    best = i;
        if (best == sections.size())
            return false;
    }
    --shown[best];
    return true;
}

/// Put back what there is room for after all: what gave way may have been longer than what was wanted.
void lengthen(const SetText& set, const Columns& columns, const Options& options, Notes& notes)
{
    for (const bool whole : {false, true})
        for (std::size_t i = 0; i < notes.sections.size(); ++i) {
            const std::size_t all = notes.sections[i].items.size();
            const std::size_t most = whole ? all : std::min(all, notes.sections[i].at_least);
            while (notes.shown[i] < most) {
                ++notes.shown[i];
                std::vector<Block> more = set.laid(columns, notes.shown, options);
                if (more.empty()) {
                    --notes.shown[i];
                    break;
                }
                notes.blocks = std::move(more);
            }
        }
}

} // namespace

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
            behindSection(options),
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

Notes notesIn(const Columns& columns, std::vector<Section> sections, const Options& options,
              double largest_mm)
{
    Notes notes;
    notes.sections = std::move(sections);
    notes.shown = wholeOf(notes.sections);
    for (const double lettering_mm : {normal_mm, small_mm}) {
        if (lettering_mm > largest_mm)
            continue;
        const SetText set(notes.sections, columns.width_mm(), lettering_mm);
        notes.lettering_mm = lettering_mm;
        notes.blocks = set.laid(columns, notes.shown, options);
        while (lettering_mm == small_mm && notes.blocks.empty() && shorten(notes.sections, notes.shown))
            notes.blocks = set.laid(columns, notes.shown, options);
        if (notes.blocks.empty())
            continue;
        lengthen(set, columns, options, notes);
        break;
    }
    return notes;
}

std::vector<Section> cutShort(const Notes& notes)
{
    std::vector<Section> cut;
    for (std::size_t i = 0; i < notes.sections.size(); ++i) {
        if (notes.shown[i] >= notes.sections[i].items.size())
            continue;
        Section& rest = cut.emplace_back(notes.sections[i]);
        if (notes.shown[i] > 0)
            rest.heading = tr("%1, continued").arg(rest.heading);
        rest.items.erase(rest.items.begin(), rest.items.begin() + std::ptrdiff_t(notes.shown[i]));
    }
    return cut;
}

std::vector<QRectF> freeIn(const Columns& columns, const std::vector<Block>& blocks, int page,
                           double lettering_mm)
{
    const double step = columns.width_mm() + 2 * Columns::inset_mm;
    int begun = -1;
    double floor = columns.box.top();
    for (const Block& block : blocks) {
        if (block.page != page)
            continue;
        const int column = static_cast<int>((block.at.x() - columns.box.left()) / step);
        const double under = block.at.y() + heightOf(block, lettering_mm) - block.before_mm;
        floor = column > begun ? under : std::max(floor, under);
        begun = std::max(begun, column);
    }
    std::vector<QRectF> free;
    const QRectF& box = columns.box;
    if (begun >= 0)
        free.emplace_back(QPointF(box.left() + begun * step, floor),
                          QPointF(box.left() + (begun + 1) * step, box.bottom()));
    if (begun + 1 < columns.count)
        free.emplace_back(QPointF(box.left() + (begun + 1) * step, box.top()), box.bottomRight());
    return free;
}

} // namespace siphonwright::sheet
