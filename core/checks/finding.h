#pragma once

#include "core/geometry/vec.h"
#include "core/quantity/quantity.h"
#include "core/sketch/part.h"

#include <optional>
#include <string>
#include <vector>

namespace siphonwright {

enum class Severity { advice, caution, stop };
std::string_view nameOf(Severity severity); ///< "advice", "caution", "stop"

/// What a rule found, where, and against which limit.
struct Finding {
    std::string rule; ///< the rule's stable id
    Severity severity = Severity::advice;
    PartRef part;                   ///< what it concerns
    Id hose;                        ///< the hose it lies on; empty if none
    std::optional<double> along_mm; ///< along that hose's path from its start, stub included
    std::optional<double> from_mm;  ///< the stretch concerned, on the same scale
    std::optional<double> to_mm;
    std::optional<Vec3> at; ///< where its balloon points to
    std::optional<double> measured;
    std::optional<double> limit; ///< the limit that was passed
    Unit unit = Unit::none;
    Message text; ///< one plain sentence: what, where, how much
    Message fix;  ///< what to do about it
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// A rule that could not be judged, and the fact it lacks.
struct NotJudged {
    std::string rule;
    std::string missing; ///< "the coolant level at cold minimum is not entered"
    PartRef part;
    friend bool operator==(const NotJudged&, const NotJudged&) = default;
};

} // namespace siphonwright
