#pragma once

#include "app/sheet/sheet.h"

#include "core/analysis/analysis.h"

#include <optional>
#include <vector>

class QString;

/// The pages of a job: 1 the drawing, 2 the checklist with readings, 3 parts and estimate, 4 assumptions. Any
/// of them can be left out.
namespace siphonwright::paper {

struct SheetSet {
    bool drawing = true;  ///< with all that is needed to cut and fit
    bool fitting = false; ///< that alone, upright, where there is no drawing
    bool checklist = false;
    bool parts = false;
    bool estimate = false; ///< only where prices are there
    bool assumptions = false;
};

/// "drawing,fitting" as typed, any case, or "all"; nothing if a word is none of them.
std::optional<SheetSet> setByNames(const QString& names);

/// Has anybody entered a price?
bool isPriced(const Sketch& sketch);

/// All that is printed, in order, each page with its name and number: page 1, the drawing, on as many sheets
/// as it takes, then those behind it. What page 1 holds is not printed once more as pages to fit by. \param
/// options  comes back with what they came to. The pages refer to sketch and analysis.
std::vector<sheet::FurtherPage> pagesOf(const Sketch& sketch, const Analysis& analysis, SheetSet set,
                                        sheet::Options& options);

/// The pages behind the drawing, upright. Sketch and analysis are kept by value.
std::vector<sheet::FurtherPage> pagesBehind(const Sketch& sketch, const Analysis& analysis,
                                            const SheetSet& set, sheet::Paper paper);

} // namespace siphonwright::paper
