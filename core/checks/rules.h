#pragma once

#include "core/checks/finding.h"
#include "core/layout/layout.h"
#include "core/running/by_bore.h"
#include "core/running/running.h"
#include "core/running/running_bands.h"

#include <functional>
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

/// What the grade on which the vehicle stands does to a rule.
enum class Tilt {
    same,   ///< nothing
    shifts, ///< its figures change, and it is judged over the grades
    traps   ///< the same, and it decides in which grades air and coolant still find their way
};

/// What has to be computed before a rule can be judged.
enum class Needs { layout, circulation, filling, warm_up };

/// What is known of how the job runs; null where it has not been computed.
struct Results {
    const Running* running = nullptr;
    const Filling* filling = nullptr; ///< with it `running` is past the air that stays
    const EngineWarmUp* warm_up = nullptr;
    const std::vector<HeaterBands>* bands = nullptr;
    const std::vector<BoreRow>* by_bore = nullptr;
};

/// One row of the rule book.
struct Rule {
    std::string_view id;    ///< stable, used in files and --json
    std::string_view title; ///< a few words for people
    std::string_view basis; ///< the source, "common practice", or "own choice: ..."
    std::string_view why;   ///< one line
    std::string_view fix;   ///< plain words
    Sense sense;
    Unit unit;
    Limits limits; ///< where the rule has numbers
    Tilt tilt;
    void (*judge)(Judge&); ///< looks at layout and results, and reports
    Needs needs = Needs::layout;
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

/// Which rules are judged together.
enum class RuleSet {
    live,        ///< all that need neither filling nor warm-up
    over_grades, ///< those that the grade changes, without warm-up
    proven       ///< those that need filling or warm-up
};

/// What judging the rules gives.
struct Judgement {
    std::vector<Finding> findings;
    std::vector<NotJudged> not_judged;
    std::vector<Margin> margins;          ///< one for each rule that measured something sound, in their order
    std::vector<Unconfirmed> unconfirmed; ///< every fact that some verdict hangs on, each once
};

struct HoseVerdict;
class JudgedHoses;
class OnceEach;

/// What a rule sees while judging, and where it reports. One per rule and sketch.
class Judge {
public:
    /// @param judged  what was said of hoses by themselves before and is remembered; null: nothing is
    /// @param facts   gathers judgement.unconfirmed where there are many; null: looked through one by one
    Judge(const Rule& rule, const Sketch& sketch, const Layout& layout, const Results& results,
          Judgement& judgement, JudgedHoses* judged = nullptr, OnceEach* facts = nullptr);

    const Rule& rule;
    const Sketch& sketch;
    const Layout& layout;
    const Results& results;
    const Limits limits;

    /// Look at each hose in the layout's order by itself: what is said of it may depend on the hose, on the
    /// sketch and the layout without their other hoses and on this rule's limits, on nothing else. So it is
    /// said again, without looking, of a hose of which that is known from before.
    void eachHose(const std::function<void(const ResolvedHose&)>& look);

    /// Turn to the next part: facts, margins and findings from here on are about it.
    void about(PartRef part);
    /// The verdict hangs on a fact of this part. Unless it is measured or from a manual, findings say so.
    void restsOn(Source source, const PartRef& owner, std::string_view fact);
    template <class T>
    void restsOn(const Fact<T>& fact, const PartRef& owner, std::string_view name)
    {
        if (fact.known())
            restsOn(fact.source, owner, name);
    }

    /// The verdict on a measured value by this rule's limits, or by others in their place; where it passes,
    /// how much is left is noted.
    std::optional<Verdict> verdictOn(double measured) { return verdictOn(measured, limits); }
    std::optional<Verdict> verdictOn(double measured, const Limits& by);
    /// Add a finding; its rule id, unit and (if empty) fix are filled in from the rule. Returns it for more.
    Finding& report(Severity severity, PartRef part, Message text);
    void notJudged(PartRef part, std::string missing);

private:
    void noteMargin(double measured, const Limits& by);
    HoseVerdict lookAt(const ResolvedHose& hose, const std::function<void(const ResolvedHose&)>& look);
    template <class Verdict>
    void say(Verdict&& said);
    void addFact(const Unconfirmed& fact);

    Judgement* judgement_; ///< never null
    JudgedHoses* judged_;
    OnceEach* facts_;
    PartRef part_;
    std::vector<Unconfirmed> rests_on_;
    std::optional<Margin> margin_;

    friend Judgement judge(const Sketch&, const Layout&, const Results&, RuleSet, JudgedHoses*);
};

/// Those rules of a set that are not switched off and for which `results` has what they need, on a resolved
/// sketch. Findings are as judged, each by itself, in the rule book's order; see faults.h. `judged`, begun
/// with this sketch and layout, lends what it remembers and remembers what is said now; null: nothing.
Judgement judge(const Sketch& sketch, const Layout& layout, const Results& results = {},
                RuleSet set = RuleSet::live, JudgedHoses* judged = nullptr);

/// Is a rule switched off in a sketch? Says why.
const LimitChange* switchedOff(std::string_view rule, const Sketch& sketch);

/// The limit at which a rule begins to warn: its caution, else its stop; nothing when it is switched off.
std::optional<double> cautionOf(std::string_view rule, const Sketch& sketch);

} // namespace siphonwright
