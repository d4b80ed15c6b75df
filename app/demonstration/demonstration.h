#pragma once

#include "app/demonstration/moment.h"

#include "core/analysis/analysis.h"

#include <string>
#include <vector>

/// A job from the empty hoses to the morning after, as a list of moments. No clock, no widgets: the same
/// sketch gives the same moments.
namespace siphonwright::demonstration {

struct Phase {
    PhaseKind kind = PhaseKind::fill;
    std::size_t first = 0; ///< of Demonstration::moments
    std::size_t count = 0; ///< at least 1
    double hold_s = 0; ///< how long a moment is shown at single speed; the process's own time when energised
};

/// A place that means the same in two demonstrations: of one drawing before and after an edit, or of two
/// drawings side by side.
struct Place {
    PhaseKind phase = PhaseKind::fill;
    double share = 0;   ///< of the phase
    double clock_s = 0; ///< counts instead when energised
};

struct Demonstration {
    std::string missing; ///< what cannot be shown and why; all else is empty if filling cannot be
    std::vector<Phase> phases;
    std::vector<Moment> moments;
    std::vector<Message> verdict; ///< whether it circulates; of several heaters, by name, one after the other
    bool circulates = false;      ///< every loop of it

    std::size_t phaseAt(std::size_t moment) const;
    Place placeOf(std::size_t moment) const;
    /// The nearest moment; the last one there is where the phase is missing.
    std::size_t momentAt(const Place& place) const;
    /// The next moment at which something happens or a phase begins, or the one before.
    std::size_t nextEvent(std::size_t moment) const;
    std::size_t previousEvent(std::size_t moment) const;
};

/// Some tens of milliseconds. `layout` on the grade that is looked at. Without the engine's run the heater is
/// switched on with all the air that filling leaves.
Demonstration demonstrate(const Sketch& sketch, const Layout& layout, bool engine_runs = true);

} // namespace siphonwright::demonstration
