#include "app/sheet/columns.h"

#include "app/drawing/balloon.h"
#include "app/drawing/text.h"
#include "app/language/tr.h"

#include <QPainter>

namespace siphonwright::sheet {

namespace {

using drawing::Anchor;
using drawing::Weight;

double lineHeight(double lettering_mm)
{
    return 1.62 * lettering_mm;
}

QString sheetsBehind(const Options& options)
{
    return options.notes_sheets == 1 ? tr("sheet 2") : tr("sheets 2 to %1").arg(1 + options.notes_sheets);
}

QString moreWords(std::size_t left_out, const Options& options)
{
    if (options.notes_sheets <= 0)
        return tr("and %1 more").arg(left_out);
    return tr("and %1 more on %2").arg(left_out).arg(sheetsBehind(options));
}

QString elsewhereWords(const QStringList& sections, const Options& options)
{
    return tr("On %1: %2.").arg(sheetsBehind(options), sections.join(QStringLiteral("; ")));
}

Block headingOf(const Section& section, double width_mm, double lettering_mm)
{
    return {drawing::wrapped(section.heading, width_mm, lettering_mm, Weight::strong), Weight::strong,
            std::nullopt, 0, 1.1 * lettering_mm};
}

std::vector<Block> blocksOf(const Item& item, double width_mm, double lettering_mm)
{
    const double in = (item.severity ? 3.1 : 1.4) * lettering_mm;
    std::vector<Block> blocks;
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
    return blocks;
}

/// Give each block its place. @return whether they all fit
bool flow(std::vector<Block>& blocks, const Columns& columns, double lettering_mm)
{
    int column = 0;
    double y = 0;
    const double room = columns.box.height() - 2 * Columns::inset_mm;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        Block& block = blocks[i];
        // A heading stays with what it is over, what closes a list with the list.
        const bool with_next = i + 1 < blocks.size() &&
                               ((block.weight == Weight::strong && !block.closing) || blocks[i + 1].closing);
        const double need =
            heightOf(block, lettering_mm) + (with_next ? heightOf(blocks[i + 1], lettering_mm) : 0);
        if (y + need > room && y > 0) {
            ++column;
            y = 0;
        }
        if (column >= columns.count * columns.pages || y + need > room)
            return false;
        const double before = y > 0 ? block.before_mm : 0;
        const double step = columns.width_mm() + 2 * Columns::inset_mm;
        block.page = column / columns.count;
        block.at = columns.box.topLeft() + QPointF(Columns::inset_mm + (column % columns.count) * step,
                                                   Columns::inset_mm + y + before);
        y += before + heightOf(block, lettering_mm) - block.before_mm;
    }
    return true;
}

void paintBlock(const Page& page, const Block& block, double width_mm, double lettering_mm)
{
    const QPointF at = block.at;
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

} // namespace

double heightOf(const Block& block, double lettering_mm)
{
    return block.before_mm + double(block.lines.size()) * lineHeight(lettering_mm);
}

SetText::SetText(const std::vector<Section>& sections, double width_mm, double lettering_mm)
    : width_mm_(width_mm), lettering_mm_(lettering_mm)
{
    for (const Section& section : sections) {
        Set& set = sections_.emplace_back();
        set.title = section.heading;
        set.heading = headingOf(section, width_mm, lettering_mm);
        for (const Item& item : section.items)
            set.items.push_back(blocksOf(item, width_mm, lettering_mm));
    }
}

std::vector<Block> SetText::laid(const Columns& columns, const std::vector<std::size_t>& shown,
                                 const Options& options) const
{
    std::vector<Block> blocks;
    QStringList elsewhere; // of these there is nothing here
    for (std::size_t i = 0; i < sections_.size(); ++i) {
        const Set& set = sections_[i];
        if (set.items.empty())
            continue;
        if (shown[i] == 0 && options.notes_sheets > 0) {
            elsewhere << set.title;
            continue;
        }
        blocks.push_back(set.heading);
        for (std::size_t k = 0; k < shown[i]; ++k)
            blocks.insert(blocks.end(), set.items[k].begin(), set.items[k].end());
        if (shown[i] < set.items.size())
            blocks.push_back(
                {drawing::wrapped(moreWords(set.items.size() - shown[i], options), width_mm_, lettering_mm_),
                 Weight::strong, std::nullopt, 0, 0.3 * lettering_mm_, 0, false, true});
    }
    if (!elsewhere.isEmpty())
        blocks.push_back({drawing::wrapped(elsewhereWords(elsewhere, options), width_mm_, lettering_mm_),
                          Weight::regular, std::nullopt, 0, 1.1 * lettering_mm_});
    return flow(blocks, columns, lettering_mm_) ? blocks : std::vector<Block>{};
}

std::optional<double> leastHeight(const SetText& text, Columns columns, double most_mm,
                                  const std::vector<std::size_t>& shown, const Options& options)
{
    const auto fits = [&](double height_mm) {
        columns.box.setHeight(height_mm);
        return !text.laid(columns, shown, options).empty();
    };
    double high = most_mm;
    if (!(high > 0) || !fits(high))
        return std::nullopt;
    constexpr double close_mm = 0.5;
    for (double low = 0; high - low > close_mm;) {
        const double middle = (low + high) / 2;
        (fits(middle) ? high : low) = middle;
    }
    return high;
}

void paintBlocks(const Page& page, const std::vector<Block>& blocks, double width_mm, double lettering_mm)
{
    for (const Block& block : blocks)
        paintBlock(page, block, width_mm, lettering_mm);
}

} // namespace siphonwright::sheet
