#pragma once

#include "core/geometry/profile.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <vector>

namespace siphonwright {

/// How far a hose may sag before it holds air or coolant.
struct Droop {
    /// The least sag of one corner that makes a trap, mm along plumb; none when one of the next two holds.
    std::optional<double> margin_mm;
    bool already_trapped = false; ///< there is a trap without any sag
    bool already_humps = false;   ///< and one of them is a high point, which holds air
    bool more_than_150 = false;   ///< no corner makes one by sagging droop_limit_mm
    double along_mm = 0;          ///< the corner that makes it, mm along the path as drawn
    std::size_t corner = 0;       ///< its index
};
constexpr double droop_limit_mm = 150;

/// Makes the path again, bends refitted and bores laid, from corners of which one has been moved.
using PathOfCorners = std::function<Path(const std::vector<Corner>&)>;

/// Let each corner from `first` to before `end` sag by itself (those that hang free: no stubs, no vessels)
/// until a high point or dip of at least least_mm appears. A trap can come and go as a corner sinks, so the
/// sag grows in steps of 1 mm up to the limit before the step is halved down to 0.01 mm.
Droop droopMargin(const std::vector<Corner>& corners, std::size_t first, std::size_t end, const Plumb& plumb,
                  const PathOfCorners& path_of, double least_mm = tape_accuracy_mm);

/// The same for a hose of one bore whose inner corners all hang free.
Droop droopMargin(const std::vector<Corner>& corners, double bore_mm, const Plumb& plumb,
                  double least_mm = tape_accuracy_mm);

} // namespace siphonwright
