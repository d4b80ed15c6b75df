#include "core/proposing/fix.h"

#include "core/checks/rules.h"
#include "core/proposing/cures.h"
#include "core/proposing/lay.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

struct NotCurable {
    std::string_view rule;
    std::string_view why;
};
constexpr std::array not_curable = {
    NotCurable{"antifreeze-over-60", "the coolant has to be mixed anew"},
    NotCurable{"freeze-margin", "the coolant has to be mixed anew"},
    NotCurable{"antifreeze-kind-unknown", "what is in the engine has to be found out"},
    NotCurable{"low-coolant", "the tank has to be larger or filled higher"},
    NotCurable{"much-power", "it takes another kind of heater"},
    NotCurable{"target-not-reached", "it takes a larger heater or less wind, or is not to be had"},
};

/// Findings each by itself, without those under their headings.
std::vector<Finding> apart(const std::vector<Finding>& faults)
{
    std::vector<Finding> out;
    for (const Finding& fault : faults) {
        out.push_back(fault);
        out.back().details.clear();
        out.insert(out.end(), fault.details.begin(), fault.details.end());
    }
    return out;
}

/// One kind of finding on one part, wherever on it.
bool sameKind(const Finding& a, const Finding& b)
{
    return a.rule == b.rule && a.part.kind == b.part.kind && a.part.id == b.part.id && a.hose == b.hose;
}

std::size_t countOf(const std::vector<Finding>& list, const Finding& kind, Severity least)
{
    return static_cast<std::size_t>(std::count_if(list.begin(), list.end(), [&](const Finding& finding) {
        return finding.severity >= least && sameKind(finding, kind);
    }));
}

/// How much a cure may bring with it.
enum class Bar {
    clean,  ///< no new stop, no new caution; a cured advice brings no advice; nothing of its kind is left
    as_said ///< nothing as severe as what it cures; of a stop or caution an advice may be left
};

/// Faults as they are headed: what goes under a fault that was there before is no new one.
std::vector<Finding> heads(std::vector<Finding> faults)
{
    for (Finding& fault : faults)
        fault.details.clear();
    return faults;
}

/// Grades of a sketch's envelope in 5 x 3, and the one on which it usually stands.
std::vector<Grade> envelopeOf(const Site& site)
{
    std::vector<Grade> out = {{site.grade_along_percent, site.grade_across_percent}};
    for (const double across : {-1.0, 0.0, 1.0})
        for (const double along : {-1.0, -0.5, 0.0, 0.5, 1.0})
            out.push_back({along * site.envelope_along_percent, across * site.envelope_across_percent});
    return out;
}

/// Looks at changed drawings.
class CureProof {
public:
    CureProof(const Analysis& analysis, const Finding& finding)
        : finding_(finding),
          before_(apart(analysis.findings)),
          heads_before_(heads(analysis.findings)),
          has_proof_(analysis.proof.has_value())
    {
        const Rule* rule = ruleById(finding.rule);
        by_proof_ = !rule || rule->needs == Needs::filling || rule->needs == Needs::warm_up;
        on_grade_ = finding.only_on_grade.has_value();
    }

    /// What each amount is tried by: the live analysis, with geometry alone on the grades.
    bool quick(const Sketch& changed, Bar bar, const std::stop_token& stop) const
    {
        if (by_proof_)
            return proven(changed, bar, stop);
        const Analysis level = analyse(changed);
        if (!on_grade_)
            return gone(level, bar) && nothingCame(level, bar);
        return nothingCame(level, bar) && goneOnGrades(changed, level, stop);
    }

    /// As far as the drawing's own analysis went.
    bool whole(const Sketch& changed, Bar bar, const std::stop_token& stop) const
    {
        return by_proof_ || (!has_proof_ && !on_grade_) || proven(changed, bar, stop);
    }

private:
    bool proven(const Sketch& changed, Bar bar, const std::stop_token& stop) const
    {
        Analysis level = analyse(changed);
        std::optional<Proof> proof = prove(changed, level, {}, stop);
        if (!proof)
            return false;
        level = withProof(std::move(level), std::move(*proof));
        return gone(level, bar) && nothingCame(level, bar);
    }

    /// A stop or caution may leave an advice of its kind: a larger hose on a smaller port steps down there.
    bool gone(const Analysis& after, Bar bar) const
    {
        const Severity least =
            bar == Bar::clean ? Severity::advice : std::min(finding_.severity, Severity::caution);
        return countOf(apart(after.findings), finding_, least) < countOf(before_, finding_, least);
    }

    bool goneOnGrades(const Sketch& changed, const Analysis& level, const std::stop_token& stop) const
    {
        const std::vector<Grade> grades = envelopeOf(changed.site);
        return std::none_of(grades.begin(), grades.end(), [&](Grade grade) {
            if (stop.stop_requested())
                return true;
            const Layout tilted = resolve(changed, plumbOf(changed, grade), &level.layout);
            const std::vector<Finding> found = judge(changed, tilted, {}, RuleSet::over_grades).findings;
            // On a grade a finding is one severity lower, so that advice is none.
            return countOf(found, finding_, Severity::caution) > 0;
        });
    }

    bool nothingCame(const Analysis& analysis, Bar bar) const
    {
        const std::vector<Finding> after = heads(analysis.findings);
        const Severity least =
            bar == Bar::clean ? std::min(finding_.severity, Severity::caution) : finding_.severity;
        return std::none_of(after.begin(), after.end(), [&](const Finding& kind) {
            if (kind.severity < least)
                return false;
            // What became more severe has come too, so each is counted at its own severity.
            const bool cured = !on_grade_ && sameKind(kind, finding_) && finding_.severity >= kind.severity &&
                               countOf(heads_before_, finding_, kind.severity) > 0;
            return countOf(after, kind, kind.severity) + (cured ? 1 : 0) >
                   countOf(heads_before_, kind, kind.severity);
        });
    }

    const Finding& finding_;
    std::vector<Finding> before_;
    std::vector<Finding> heads_before_;
    bool has_proof_ = false;
    bool by_proof_ = false;
    bool on_grade_ = false;
};

/// Tries one cure.
class Trial {
public:
    Trial(const CureCase& of, const Cure& cure, const CureProof& proof, Bar bar)
        : case_(of), cure_(cure), proof_(proof), bar_(bar)
    {}

    std::optional<Fix> run()
    {
        const bool graded = cure_.amounts.empty();
        const std::optional<double> amount = graded ? smallest() : firstOf(cure_.amounts);
        if (!amount)
            return std::nullopt;
        // What is enough for the drawing may be too little once it is filled and tilted.
        for (const double more : {1.0, 1.5, 2.5}) {
            if (more > 1 && (!graded || !works(std::ceil(*amount * more))))
                break;
            std::optional<Fix> fix = changed(more > 1 ? std::ceil(*amount * more) : *amount);
            if (fix && proof_.whole(fix->sketch, bar_, case_.stop))
                return fix;
        }
        return std::nullopt;
    }

private:
    std::optional<Fix> changed(double amount) const
    {
        Fix fix{case_.sketch, cure_.part, {}};
        if (!cure_.change(fix.sketch, amount, fix.text) || fix.sketch == case_.sketch)
            return std::nullopt;
        return fix;
    }

    bool works(double amount) const
    {
        if (case_.stop.stop_requested())
            return false;
        const std::optional<Fix> fix = changed(amount);
        return fix && proof_.quick(fix->sketch, bar_, case_.stop);
    }

    std::optional<double> firstOf(const std::vector<double>& amounts) const
    {
        for (const double amount : amounts)
            if (works(amount))
                return amount;
        return std::nullopt;
    }

    /// Growing amounts until one holds, then halved; a margin where it holds with it.
    std::optional<double> smallest() const
    {
        constexpr double growth = 1.6;
        double without = 0;
        double with = 2;
        while (with <= cure_.most_mm && !works(with)) {
            without = with;
            with *= growth;
        }
        if (with > cure_.most_mm)
            return std::nullopt;
        while (with - without > 1) {
            const double middle = (with + without) / 2;
            (works(middle) ? with : without) = middle;
        }
        for (const double amount : {std::ceil(with) + building_margin_mm, std::ceil(with)})
            if (works(amount))
                return amount;
        return with;
    }

    const CureCase& case_;
    const Cure& cure_;
    const CureProof& proof_;
    Bar bar_;
};

} // namespace

Curable curable(std::string_view rule)
{
    const auto found = std::find_if(not_curable.begin(), not_curable.end(),
                                    [&](const NotCurable& row) { return row.rule == rule; });
    return found == not_curable.end() ? Curable{} : Curable{false, found->why};
}

std::optional<Fix> fixFor(const Sketch& sketch, const Analysis& analysis, const Finding& finding,
                          const std::stop_token& stop)
{
    if (!curable(finding.rule).on_drawing)
        return std::nullopt;
    const CureCase of{sketch, analysis, finding, stop};
    std::vector<Cure> cures;
    addPartCures(of, cures);
    addHoseCures(of, cures);
    addHeaterCures(of, cures);
    addPortCures(of, cures);
    const CureProof proof(analysis, finding);
    for (const Bar bar : {Bar::clean, Bar::as_said}) {
        if (bar == Bar::as_said && finding.severity == Severity::advice)
            break; // the two bars are one
        for (const Cure& cure : cures) {
            if (stop.stop_requested())
                return std::nullopt;
            if (std::optional<Fix> fix = Trial(of, cure, proof, bar).run())
                return fix;
        }
    }
    return std::nullopt;
}

} // namespace siphonwright
