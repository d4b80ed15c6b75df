#pragma once

#include "core/analysis/analysis.h"
#include "core/commissioning/checklist.h"
#include "core/sketch/sketch.h"

#include <string_view>
#include <vector>

namespace siphonwright {

/// What one step means on this drawing, in short sentences with its numbers: coolant to pour, valves by name,
/// crests to bleed and where, target, limits, what outlet and cycles are expected to be. What is not entered
/// or not computed is said. \param analysis with a proof, for what hangs on filling and warm-up; heights are
/// along plumb from the drawing's zero
std::vector<Message> textOf(const WorkStep& step, const Sketch& sketch, const Analysis& analysis);

} // namespace siphonwright
