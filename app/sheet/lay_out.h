#pragma once

#include "app/sheet/notes.h"
#include "app/sheet/place_insets.h"
#include "app/sheet/plan.h"

#include <map>
#include <utility>
#include <vector>

/// Page 1: the drawing, with all its notes and insets, on as many sheets as they take.
namespace siphonwright::sheet {

/// What stands where on one sheet.
struct LaidSheet {
    Plan plan;
    Columns columns; ///< of the notes
    std::vector<Block> notes;
    double lettering_mm = normal_mm; ///< of the notes
    std::vector<PlacedInset> insets;
};

/// The drawing first. What has no room on it stands on sheets behind it, as many as that takes; the words
/// that refer to them take their number from options.notes_sheets.
std::vector<LaidSheet> layOut(const Sketch& sketch, const Analysis& analysis, const Options& options);

/// How broad notes beside the views are, by the drawing's scale and their largest lettering: found once, for
/// words that differ a little.
using KnownWidth = std::map<std::pair<int, double>, Beside>;
std::vector<LaidSheet> layOut(const Sketch& sketch, const Analysis& analysis, const Options& options,
                              KnownWidth& known);

/// One of them. \param number  1: the drawing's
void paintSheet(QPainter& painter, const Sketch& sketch, const Analysis& analysis, const Options& options,
                const LaidSheet& laid, int number);

/// Behind the drawing, with columns as broad as words are easily read in.
LaidSheet emptySheet(const Options& options);

struct LaidSheets {
    std::vector<LaidSheet> sheets;
};
constexpr int most_notes_sheets = 20;

} // namespace siphonwright::sheet
