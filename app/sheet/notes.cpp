#include "app/drawing/balloon.h"
#include "app/drawing/text.h"
#include "app/sheet/end_view.h"

#include <QPainter>

#include <algorithm>

/// The words of the sheet, set into columns so that all of a line is always readable.
namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

constexpr double inset_mm = 3;

/// One paragraph, set.
struct Block {
    QStringList lines;
    Weight weight = Weight::regular;
    std::optional<Severity> severity;
    int number = 0;
    double before_mm = 0;
    double indent_mm = 0;
    bool ruled = false; ///< empty lines to write on
};

double lineHeight(double lettering_mm)
{
    return 1.62 * lettering_mm;
}

double heightOf(const Block& block, double lettering_mm)
{
    return block.before_mm + double(block.lines.size()) * lineHeight(lettering_mm);
}

std::vector<Block> setIn(const std::vector<Section>& sections, const std::vector<std::size_t>& shown,
                         double width_mm, double lettering_mm)
{
    std::vector<Block> blocks;
    const double indent = 3.1 * lettering_mm;
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const Section& section = sections[i];
        if (section.items.empty())
            continue;
        blocks.push_back({drawing::wrapped(section.heading, width_mm, lettering_mm, Weight::strong),
                          Weight::strong, std::nullopt, 0, blocks.empty() ? 0 : 1.1 * lettering_mm, 0});
        for (std::size_t k = 0; k < shown[i]; ++k) {
            const Item& item = section.items[k];
            const double in = item.severity ? indent : 1.4 * lettering_mm;
            blocks.push_back({drawing::wrapped(item.text, width_mm - in, lettering_mm), Weight::regular,
                              item.severity, item.number, (item.severity ? 0.9 : 0.2) * lettering_mm, in});
            // Room for a hand, whatever the lettering.
            constexpr double written_line_mm = 8;
            for (int line = 0; line < item.blank_lines; ++line)
                blocks.push_back({{QString()},
                                  Weight::regular,
                                  std::nullopt,
                                  0,
                                  written_line_mm - lineHeight(lettering_mm),
                                  0,
                                  true});
        }
        if (shown[i] < section.items.size())
            blocks.push_back(
                {drawing::wrapped(section.more.arg(section.items.size() - shown[i]), width_mm, lettering_mm),
                 Weight::strong, std::nullopt, 0, 0.3 * lettering_mm, 0});
    }
    return blocks;
}

/// Where each block's first line starts: column and height in it. Empty if they do not all fit.
std::vector<QPointF> flow(const std::vector<Block>& blocks, const QRectF& box, int columns, double column_mm,
                          double lettering_mm)
{
    std::vector<QPointF> places;
    int column = 0;
    double y = 0;
    const double room = box.height() - 2 * inset_mm;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        const bool heading = blocks[i].weight == Weight::strong && i + 1 < blocks.size();
        // A heading stays with what it is over.
        const double need =
            heightOf(blocks[i], lettering_mm) + (heading ? heightOf(blocks[i + 1], lettering_mm) : 0);
        if (y + need > room && y > 0) {
            ++column;
            y = 0;
        }
        if (column >= columns || y + need > room)
            return {};
        const double before = y > 0 ? blocks[i].before_mm : 0;
        places.emplace_back(box.left() + inset_mm + column * (column_mm + 2 * inset_mm),
                            box.top() + inset_mm + y + before);
        y += before + heightOf(blocks[i], lettering_mm) - blocks[i].before_mm;
    }
    return places;
}

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

void paintBlock(const Page& page, const Block& block, QPointF at, double width_mm, double lettering_mm)
{
    double baseline = at.y() + 1.25 * lettering_mm;
    if (block.ruled) {
        page.painter.setPen(QPen(page.palette.faint, drawing::thin_mm));
        page.painter.drawLine(QPointF(at.x(), baseline), QPointF(at.x() + width_mm, baseline));
        return;
    }
    if (block.severity)
        drawing::paintBalloon(
            page.painter, page.palette, {at.x() + 1.25 * lettering_mm, baseline - lettering_mm / 2},
            drawing::balloon_of_lettering * lettering_mm, *block.severity, block.number, drawing::medium_mm);
    else if (block.indent_mm > 0) {
        page.painter.setPen(QPen(page.palette.ink, drawing::medium_mm));
        page.painter.drawLine(QPointF(at.x(), baseline - lettering_mm / 2),
                              QPointF(at.x() + 0.8 * lettering_mm, baseline - lettering_mm / 2));
    }
    for (const QString& line : block.lines) {
        drawing::paintWeightedText(page.painter, {at.x() + block.indent_mm, baseline}, line, Anchor::left,
                                   page.palette.ink, lettering_mm, block.weight);
        baseline += lineHeight(lettering_mm);
    }
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

double columnWidth(const QRectF& box, int columns)
{
    return box.width() / columns - 2 * inset_mm;
}

} // namespace

bool notesFit(const Sketch& sketch, const Analysis& analysis, const Options& options, const Plan& plan,
              double lettering_mm)
{
    const std::vector<Section> sections = sectionsOf(sketch, analysis, options, plan.end_left_out);
    const double column_mm = columnWidth(plan.notes, plan.columns);
    const std::vector<Block> blocks = setIn(sections, wholeOf(sections), column_mm, lettering_mm);
    return !flow(blocks, plan.notes, plan.columns, column_mm, lettering_mm).empty();
}

void paintNotes(const Page& page, const QRectF& box, int columns)
{
    page.painter.setPen(QPen(page.palette.ink, drawing::edge_mm));
    page.painter.setBrush(Qt::NoBrush);
    page.painter.drawRect(box);
    const std::vector<Section> sections =
        sectionsOf(page.sketch, page.analysis, page.options, page.end_left_out);
    std::vector<std::size_t> shown = wholeOf(sections);
    const double column_mm = columnWidth(box, columns);
    double lettering_mm = normal_mm;
    std::vector<Block> blocks = setIn(sections, shown, column_mm, lettering_mm);
    std::vector<QPointF> places = flow(blocks, box, columns, column_mm, lettering_mm);
    while (places.empty()) {
        if (lettering_mm > small_mm)
            lettering_mm = small_mm;
        else if (!shorten(sections, shown))
            return;
        blocks = setIn(sections, shown, column_mm, lettering_mm);
        places = flow(blocks, box, columns, column_mm, lettering_mm);
    }
    for (std::size_t i = 0; i < blocks.size(); ++i)
        paintBlock(page, blocks[i], places[i], column_mm, lettering_mm);
}

} // namespace siphonwright::sheet
