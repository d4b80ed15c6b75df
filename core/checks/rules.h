#pragma once

#include "core/checks/finding.h"
#include "core/layout/layout.h"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

/// The rule book: what is checked, on what basis, from which limit on.
namespace siphonwright {

/// Whether a rule is broken by being over its limit or by being under it. Being equal passes (1e-6 relative).
enum class Sense { over, under };

/// From where on each severity applies; nothing: that severity is not given by a limit.
struct Limits {
    std::optional<double> advice;
    std::optional<double> caution;
    std::optional<double> stop;
    friend bool operator==(const Limits&, const Limits&) = default;
};

class Judge;

/// One row of the rule book.
struct Rule {
    std::string_view id;    ///< stable, used in files and --json
    std::string_view title; ///< a few words for people
    std::string_view basis; ///< the source, "common practice", or "own choice: ..."
    std::string_view why;   ///< one line
    std::string_view fix;   ///< plain words
    Sense sense;
    Unit unit;
    Limits limits;         ///< where the rule has numbers
    void (*judge)(Judge&); ///< looks at the layout and reports
};

/// All rules in the order in which they are listed to people.
std::span<const Rule> ruleBook();
const Rule* ruleById(std::string_view id);

/// The limits in force for a rule in a sketch: the rule's own, with the sketch's changes over them.
Limits limitsOf(const Rule& rule, const Sketch& sketch);

/// The severity of a measured value, and the limit that it passed; nothing if it passes all.
struct Verdict {
    Severity severity;
    double limit;
};
std::optional<Verdict> verdict(double measured, Sense sense, const Limits& limits);

/// What a rule sees while judging, and where it reports. One per rule and sketch.
class Judge {
public:
    Judge(const Rule& rule, const Sketch& sketch, const Layout& layout, std::vector<Finding>& findings,
          std::vector<NotJudged>& not_judged);

    const Rule& rule;
    const Sketch& sketch;
    const Layout& layout;
    const Limits limits;

    /// The verdict on a measured value by this rule's limits.
    std::optional<Verdict> verdictOn(double measured) const { return verdict(measured, rule.sense, limits); }
    /// Add a finding; its rule id, unit and (if empty) fix are filled in from the rule. Returns it for more.
    Finding& report(Severity severity, PartRef part, Message text);
    void notJudged(PartRef part, std::string missing);

private:
    std::vector<Finding>& findings_;
    std::vector<NotJudged>& not_judged_;
};

/// Every rule on a resolved sketch, findings sorted by severity (stop first), then along the rule book.
struct Judgement {
    std::vector<Finding> findings;
    std::vector<NotJudged> not_judged;
};
Judgement judge(const Sketch& sketch, const Layout& layout);

} // namespace siphonwright
