#pragma once

#include "core/layout/layout.h"

#include <vector>

namespace siphonwright {

/// A stretch of a hose that nothing holds, mm along its path.
struct HoseSpan {
    double from_mm = 0;
    double to_mm = 0;

    double length() const { return to_mm - from_mm; }
};

/// The stretches of the hose itself within 30 degrees of level, where a hose hangs more than it spans, from
/// clip to clip.
std::vector<HoseSpan> spansNearLevel(const Route& route, const Plumb& plumb);

} // namespace siphonwright
