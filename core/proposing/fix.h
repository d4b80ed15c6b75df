#pragma once

#include "core/analysis/analysis.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <stop_token>
#include <string_view>

/// Single fixes: for one finding, the smallest change of the drawing that cures it.
namespace siphonwright {

/// A changed drawing that cures a finding.
struct Fix {
    Sketch sketch; ///< whole: putting it in the place of the drawn one is one edit
    PartRef part;  ///< what is changed: the bend, heater, port, hose or in-line part
    Message text;  ///< "Lower this bend of Return hose by 38 mm."
};

/// Can a rule be cured on the drawing? Where not, why.
struct Curable {
    bool on_drawing = true;
    std::string_view why_not; ///< empty where it can
};
Curable curable(std::string_view rule);

/// The first of the rule's cures, the least change of the drawing first, that is proven by analysing its
/// result: there is one finding of this kind less on this part, and no fault as severe or worse has come
/// (what goes under the heading of a fault that stays is none). Cures that leave nothing of the kind and
/// bring no new stop and no new caution come first; of a stop or caution an advice may be left. Where the
/// finding needs filling, warm-up or grades, or the analysis holds a proof, the result is proved. Some
/// milliseconds to tenths of a second; seconds where every amount has to be filled and warmed up.
///
/// Amounts are the smallest, found by halving to 1 mm, rounded up to whole mm, and building_margin_mm more
/// where that holds too (own choice: nobody builds within 5 mm). \param analysis of the sketch, with the
/// finding in it \return nothing where no cure is known or none holds, or when stopped
std::optional<Fix> fixFor(const Sketch& sketch, const Analysis& analysis, const Finding& finding,
                          const std::stop_token& stop = {});

} // namespace siphonwright
