#pragma once

#include "core/checks/rules.h"
#include "core/layout/layout.h"
#include "core/sketch/sketch.h"

#include <string>
#include <vector>

namespace siphonwright {

/// Everything computed from a sketch. Pure: the same sketch gives the same analysis.
struct Analysis {
    Layout layout;                 ///< with the vehicle level
    std::vector<Finding> findings; ///< stops first
    std::vector<NotJudged> not_judged;

    bool stopped() const; ///< at least one stop
    std::size_t count(Severity severity) const;
};

/// Live analysis, under 1 ms for a usual sketch. `previous` only saves time: results do not depend on it.
Analysis analyse(const Sketch& sketch, const Analysis* previous = nullptr);

} // namespace siphonwright
