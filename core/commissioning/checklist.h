#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/record.h"

#include <array>
#include <cstddef>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// The work at the vehicle in order: what each step is, its caution, and what makes it safe.
///
/// Order and cautions: common practice, no published source. The heater's and the engine's own manuals rule
/// over it. What a step says about one drawing is in checklist_text.h.
namespace siphonwright {

constexpr std::size_t most_needs = 5;

/// One step, the same for every job.
struct WorkStep {
    std::string_view id; ///< stable, used in files and --json
    std::string_view title;
    std::string_view caution;
    std::array<std::string_view, most_needs> needs; ///< ids of steps before it; empty ones are none
};

/// All steps in the order of the work.
std::span<const WorkStep> checklistSteps();
const WorkStep* stepById(std::string_view id);

const Tick* tickOf(const Checklist& checklist, std::string_view step);

/// Steps that have to be done before this one and are not ticked, in the order of the work.
std::vector<const WorkStep*> lackingFor(const Checklist& checklist, std::string_view step);
/// Ticked steps that rest on this one, directly or through others, in the order of the work.
std::vector<const WorkStep*> restingOn(const Checklist& checklist, std::string_view step);

/// What came of ticking or unticking.
struct Ticked {
    bool done = false;
    Message message; ///< why not; of what is done against the order, what that means; else empty
};

/// Ticks a step at the tick's own time. It is refused while a step that makes it safe is open, unless a
/// reason is given for doing it all the same, which is kept with the tick. A step that was ticked before gets
/// the new tick.
Ticked tick(Checklist& checklist, const Tick& step);

/// Takes a tick back. Steps that rest on it stay ticked; the message names them.
Ticked untick(Checklist& checklist, std::string_view step);

/// How far the work is.
struct Progress {
    std::size_t done = 0;
    std::size_t total = 0;
    const WorkStep* next = nullptr;         ///< the first that is open; null when all is done
    std::vector<const Tick*> against_order; ///< ticked with a reason, or before what makes them safe
};
Progress progressOf(const Checklist& checklist);

} // namespace siphonwright
