#pragma once

#include "app/sheet/sheet.h"

#include "core/analysis/analysis.h"

#include <optional>
#include <vector>

class QString;

/// The pages of a job: drawing, what is needed to cut and fit, checklist with readings, parts, estimate,
/// assumptions. Any of them can be left out.
namespace siphonwright::paper {

struct SheetSet {
    bool drawing = true;
    bool fitting = false;
    bool checklist = false;
    bool parts = false;
    bool estimate = false; ///< only where prices are there
    bool assumptions = false;
};

/// "drawing,fitting" as typed, any case, or "all"; nothing if a word is none of them.
std::optional<SheetSet> setByNames(const QString& names);

/// Has anybody entered a price?
bool isPriced(const Sketch& sketch);

/// The pages behind the drawing, upright. Sketch and analysis are kept by value.
std::vector<sheet::FurtherPage> pagesBehind(const Sketch& sketch, const Analysis& analysis,
                                            const SheetSet& set, sheet::Paper paper);

} // namespace siphonwright::paper
