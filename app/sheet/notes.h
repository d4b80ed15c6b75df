#pragma once

#include "app/sheet/columns.h"
#include "app/sheet/words.h"

#include <vector>

/// The words beside the drawing, and what of them has no room there.
namespace siphonwright::sheet {

/// What of each section stands beside the drawing.
struct Notes {
    std::vector<Section> sections;
    std::vector<std::size_t> shown;
    std::vector<Block> blocks;
    double lettering_mm = normal_mm;
};

std::vector<Section> sectionsOf(const Sketch& sketch, const Analysis& analysis, const Options& options,
                                bool end_left_out);
/// How many items each section has.
std::vector<std::size_t> wholeOf(const std::vector<Section>& sections);

/// In the larger lettering where all goes in, else in the smaller; cut short where that is too much as well.
Notes notesIn(const Columns& columns, std::vector<Section> sections, const Options& options,
              double largest_mm = normal_mm);

/// What of the sections has no room there: no row is printed twice.
std::vector<Section> cutShort(const Notes& notes);

/// What is free in the columns of a page under what is set in them: the rest of the column that is begun, and
/// those that are empty.
std::vector<QRectF> freeIn(const Columns& columns, const std::vector<Block>& blocks, int page,
                           double lettering_mm);

} // namespace siphonwright::sheet
