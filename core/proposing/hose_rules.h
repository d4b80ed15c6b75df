#pragma once

#include "core/checks/rules.h"
#include "core/layout/layout.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string_view>
#include <vector>

/// The rule book, rule by rule, on one hose or one heater, so that what fails is known before the rest of the
/// loop is drawn. The rules are the rule book's own.
namespace siphonwright {

/// What removed a candidate.
struct RemovedBy {
    std::string_view rule;
    int depth = 0; ///< how far it came: rules are asked in one order
    PartRef by;    ///< the area it is too near to; else nothing
};

/// Stops and cautions of single rules for one heater in its place, without hoses.
class PartRules {
public:
    /// \param sketch with the heater in its place; its other heaters and hoses are left out
    PartRules(const Sketch& sketch, const Id& heater);

    /// The first rule that a heater's place breaks; nothing where it is sound.
    std::optional<RemovedBy> heaterBreaks() const;
    /// Does the place hold on every corner of the grade envelope too, without a caution there?
    bool heaterHoldsOnGrades() const;
    /// The first rule that a hose on this heater breaks on the level, in the order: room for its bends,
    /// humps, dips, rise, levels, slack, ground, bores, areas. Rules on clips and valves are not asked.
    std::optional<RemovedBy> hoseBreaks(const Shared<Hose>& hose);
    /// The same for pairs of ports: height, place, distance and what they are part of.
    static std::optional<RemovedBy> portsBreak(const Sketch& sketch);

    const Plumb& plumb() const { return plumb_; }

private:
    Sketch sketch_; ///< with the heater alone
    Sketch bare_;   ///< without heaters, for rules that ask hoses and heaters at once
    Plumb plumb_;
};

/// The four grades that are steepest both ways.
std::vector<Grade> cornersOf(const Site& site);

/// How many rules hoseBreaks() asks.
int hoseRuleCount();

} // namespace siphonwright
