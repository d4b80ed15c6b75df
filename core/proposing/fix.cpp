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
    clean,  ///< no new stop, no new caution; a cured advice brings no advice
    as_said ///< nothing as severe as what it cures
};

/// Looks at changed drawings.
class CureProof {
public:
    CureProof(const Analysis& analysis, const Finding& finding)
        : finding_(finding), before_(apart(analysis.findings)), has_proof_(analysis.proof.has_value())
    {
        const Rule* rule = ruleById(finding.rule);
        needs_proof_ = finding.only_on_grade || !rule || rule->needs == Needs::filling ||
                       rule->needs == Needs::warm_up;
    }

    bool quick(const Sketch& changed, Bar bar, const std::stop_token& stop) const
    {
        return needs_proof_ ? proven(changed, bar, stop) : holds(apart(analyse(changed).findings), bar);
    }

    /// As far as the drawing's own analysis went.
    bool whole(const Sketch& changed, Bar bar, const std::stop_token& stop) const
    {
        return needs_proof_ || !has_proof_ || proven(changed, bar, stop);
    }

private:
    bool proven(const Sketch& changed, Bar bar, const std::stop_token& stop) const
    {
        Analysis level = analyse(changed);
        std::optional<Proof> proof = prove(changed, level, {}, stop);
        return proof && holds(apart(withProof(std::move(level), std::move(*proof)).findings), bar);
    }

    bool holds(const std::vector<Finding>& after, Bar bar) const
    {
        if (countOf(after, finding_, Severity::advice) >= countOf(before_, finding_, Severity::advice))
            return false;
        const Severity least =
            bar == Bar::clean ? std::min(finding_.severity, Severity::caution) : finding_.severity;
        return std::none_of(after.begin(), after.end(), [&](const Finding& kind) {
            if (kind.severity < least)
                return false;
            const std::size_t cured =
                sameKind(kind, finding_) && finding_.severity >= least ? std::size_t{1} : std::size_t{0};
            return countOf(after, kind, least) + cured > countOf(before_, kind, least);
        });
    }

    const Finding& finding_;
    std::vector<Finding> before_;
    bool has_proof_ = false;
    bool needs_proof_ = false;
};

/// Tries one cure.
class Trial {
public:
    Trial(const Case& of, const Cure& cure, const CureProof& proof, Bar bar)
        : case_(of), cure_(cure), proof_(proof), bar_(bar)
    {}

    std::optional<Fix> run()
    {
        const std::optional<double> amount = cure_.amounts.empty() ? smallest() : firstOf(cure_.amounts);
        std::optional<Fix> fix = amount ? changed(*amount) : std::nullopt;
        if (!fix || !proof_.whole(fix->sketch, bar_, case_.stop))
            return std::nullopt;
        return fix;
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

    const Case& case_;
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
    const Case of{sketch, analysis, finding, stop};
    std::vector<Cure> cures;
    addPartCures(of, cures);
    addHoseCures(of, cures);
    addHeaterCures(of, cures);
    addPortCures(of, cures);
    const CureProof proof(analysis, finding);
    for (const Bar bar : {Bar::clean, Bar::as_said}) {
        if (bar == Bar::as_said && finding.severity < Severity::stop)
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
