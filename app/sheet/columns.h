#pragma once

#include "app/drawing/text.h"
#include "app/sheet/words.h"

#include <QPointF>
#include <QRectF>
#include <QStringList>

#include <optional>
#include <vector>

/// Sections of words set into columns, so that all of a line is always readable.
namespace siphonwright::sheet {

/// Boxes of one size, one a page, each of so many columns.
struct Columns {
    QRectF box; ///< mm on the page
    int count = 1;
    int pages = 1;

    static constexpr double inset_mm = 3;
    double width_mm() const { return box.width() / count - 2 * inset_mm; }
};

/// One paragraph, set.
struct Block {
    QStringList lines;
    drawing::Weight weight = drawing::Weight::regular;
    std::optional<Severity> severity;
    int number = 0;
    double before_mm = 0;
    double indent_mm = 0;
    bool ruled = false;   ///< empty lines to write on
    bool closing = false; ///< stays under the block before it
    int page = 0;
    QPointF at = {}; ///< of its first line's top left corner
};

/// With the room before it.
double heightOf(const Block& block, double lettering_mm);

/// Sections with their lines broken for one width and lettering: that takes time and is done once, however
/// many of their items are then tried.
class SetText {
public:
    SetText(const std::vector<Section>& sections, double width_mm, double lettering_mm);

    /// The first `shown` items of each section, and what is said of the others: "and 3 more".
    /// @return empty if they do not all go into the columns.
    std::vector<Block> laid(const Columns& columns, const std::vector<std::size_t>& shown,
                            const Options& options) const;

private:
    struct Set {
        QString title;
        Block heading;
        std::vector<std::vector<Block>> items;
    };
    std::vector<Set> sections_;
    double width_mm_;
    double lettering_mm_;
};

/// The least height of columns, up to a most, into which all goes; nothing if that is too little.
std::optional<double> leastHeight(const SetText& text, Columns columns, double most_mm,
                                  const std::vector<std::size_t>& shown, const Options& options);

void paintBlocks(const Page& page, const std::vector<Block>& blocks, double width_mm, double lettering_mm);

} // namespace siphonwright::sheet
