#pragma once

#include "app/sheet/notes.h"
#include "app/sheet/place_insets.h"
#include "app/sheet/plan.h"
#include "app/sheet/views.h"

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
    ViewNames names; ///< on the drawing's sheet
};

/// The drawing first. What has no room on it stands on sheets behind it, as many as that takes; the words
/// that refer to them take their number from options.notes_sheets.
std::vector<LaidSheet> layOut(const Sketch& sketch, const Analysis& analysis, const Options& options);

/// What is found once, for words that differ a little.
struct Known {
    /// How broad notes beside the views are, by the drawing's scale and their largest lettering.
    std::map<std::pair<int, double>, Beside> widths;
    /// What the keys of the views have to hold, and the places of the names in the plan that came of it.
    KeyNeed key;
    KeyNeed end_key;
    std::optional<std::pair<Plan, ViewNames>> named;
    bool no_more_keys = false; ///< they would take room from something else
};
std::vector<LaidSheet> layOut(const Sketch& sketch, const Analysis& analysis, const Options& options,
                              Known& known);

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
