#pragma once

#include "core/geometry/plumb.h"
#include "core/quantity/quantity.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

namespace siphonwright {

enum class Severity { advice, caution, stop };
std::string_view nameOf(Severity severity); ///< "advice", "caution", "stop"

/// A fact that a verdict hangs on and that nobody has confirmed: typical of its kind, or assumed.
struct Unconfirmed {
    std::string fact; ///< "the water jacket's outline"
    PartRef part;     ///< whose fact it is
    Source source = Source::assumed;
    friend bool operator==(const Unconfirmed&, const Unconfirmed&) = default;
};

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
    Message text;                      ///< one plain sentence: what, where, how much
    Message fix;                       ///< what to do about it
    std::vector<Unconfirmed> rests_on; ///< what the verdict hangs on and nobody has confirmed
    /// Nothing: found on the level too. Else the grade from which on it is found; its severity is already one
    /// lower than on the level.
    std::optional<Grade> only_on_grade;
    std::vector<Finding> details; ///< the other findings of the same fault; they have none of their own
    friend bool operator==(const Finding&, const Finding&) = default;
};

/// A rule that could not be judged, and the fact it lacks.
struct NotJudged {
    std::string rule;
    std::string missing; ///< "the coolant level at cold minimum is not entered"
    PartRef part;
    friend bool operator==(const NotJudged&, const NotJudged&) = default;
};

/// How much is left before a rule is broken, where it holds: its tightest place.
struct Margin {
    std::string rule;
    PartRef part;
    double measured = 0;
    double limit = 0; ///< the first limit that would be broken
    double left = 0;  ///< between the two, never negative
    Unit unit = Unit::none;
    friend bool operator==(const Margin&, const Margin&) = default;
};

} // namespace siphonwright
