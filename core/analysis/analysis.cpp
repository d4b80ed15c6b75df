#include "core/analysis/analysis.h"

#include <algorithm>
#include <utility>

namespace siphonwright {

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

Analysis analyse(const Sketch& sketch, const Analysis* previous)
{
    Analysis out;
    out.layout = resolve(sketch, plumbOf(sketch), previous ? &previous->layout : nullptr);
    Judgement judgement = judge(sketch, out.layout);
    out.findings = std::move(judgement.findings);
    out.not_judged = std::move(judgement.not_judged);
    return out;
}

} // namespace siphonwright
