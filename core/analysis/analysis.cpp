#include "core/analysis/analysis.h"

#include "core/checks/faults.h"
#include "core/layout/route.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace siphonwright {
namespace {

/// Single findings again, as they were before they were put under headings.
std::vector<Finding> apart(std::vector<Finding> faults)
{
    std::vector<Finding> out;
    for (Finding& fault : faults) {
        std::vector<Finding> details = std::move(fault.details);
        fault.details.clear();
        out.push_back(std::move(fault));
        std::move(details.begin(), details.end(), std::back_inserter(out));
    }
    return out;
}

} // namespace

const Droop* Proof::sagOf(const Id& hose) const
{
    const auto found =
        std::find_if(sag.begin(), sag.end(), [&](const SagMargin& one) { return one.hose == hose; });
    return found == sag.end() ? nullptr : &found->droop;
}

bool Analysis::stopped() const
{
    return count(Severity::stop) > 0;
}

std::size_t Analysis::count(Severity severity) const
{
    return static_cast<std::size_t>(
        std::count_if(findings.begin(), findings.end(),
                      [&](const Finding& finding) { return finding.severity == severity; }));
}

Analysis analyse(const Sketch& sketch, const Analysis* previous, Grade grade)
{
    Analysis out;
    out.grade = grade;
    out.layout = resolve(sketch, plumbOf(sketch, grade), previous ? &previous->layout : nullptr);
    const bool level = grade == Grade{};
    const Layout on_level = level ? Layout{} : resolve(sketch, plumbOf(sketch), &out.layout);
    Judgement judgement = judge(sketch, level ? out.layout : on_level);
    if (!level) {
        std::vector<Finding> tilted = findingsOn(sketch, grade, on_level);
        std::move(tilted.begin(), tilted.end(), std::back_inserter(judgement.findings));
    }
    out.findings = faultsOf(std::move(judgement.findings));
    out.not_judged = std::move(judgement.not_judged);
    out.margins = std::move(judgement.margins);
    out.unconfirmed = std::move(judgement.unconfirmed);
    return out;
}

std::optional<Proof> prove(const Sketch& sketch, const Analysis& level, const std::stop_token& stop)
{
    Proof out;
    out.on_grade = findingsOnEnvelope(sketch, level.layout, stop);
    out.sound = soundGrades(sketch, level.layout, stop);
    for (const ResolvedHose& hose : level.layout.hoses) {
        if (stop.stop_requested())
            return std::nullopt;
        if (const std::optional<Droop> droop = sagMargin(*hose, level.layout.plumb))
            out.sag.push_back({hose.id(), *droop});
    }
    if (stop.stop_requested())
        return std::nullopt;
    return out;
}

Analysis proved(const Sketch& sketch)
{
    Analysis level = analyse(sketch);
    std::optional<Proof> proof = prove(sketch, level);
    return proof ? withProof(std::move(level), std::move(*proof)) : level;
}

Analysis withProof(Analysis level, Proof proof)
{
    std::vector<Finding> all = apart(std::move(level.findings));
    all.insert(all.end(), proof.on_grade.begin(), proof.on_grade.end());
    level.findings = faultsOf(std::move(all));
    level.proof = std::move(proof);
    return level;
}

} // namespace siphonwright
