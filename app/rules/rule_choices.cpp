#include "app/rules/rule_choices.h"

#include <algorithm>

namespace siphonwright::rules {

const LimitChange* changeOf(const Sketch& sketch, std::string_view rule)
{
    const auto found = std::find_if(sketch.limits.begin(), sketch.limits.end(),
                                    [rule](const LimitChange& change) { return change.rule == rule; });
    return found == sketch.limits.end() ? nullptr : &*found;
}

void keepChange(Document& document, const QString& step, const LimitChange& change)
{
    document.apply(step, [&change](Sketch& sketch) {
        auto& all = sketch.limits;
        const auto of_rule = [&change](const LimitChange& one) { return one.rule == change.rule; };
        const auto place = std::find_if(all.begin(), all.end(), of_rule) - all.begin();
        all.erase(std::remove_if(all.begin(), all.end(), of_rule), all.end());
        if (change.off || change.advice || change.caution || change.stop)
            all.insert(all.begin() + std::min<std::ptrdiff_t>(place, std::ptrdiff_t(all.size())), change);
    });
}

std::vector<const Finding*> findingsOf(const Analysis& analysis, std::string_view rule)
{
    std::vector<const Finding*> found;
    for (const Finding& finding : analysis.findings) {
        if (finding.rule == rule)
            found.push_back(&finding);
        for (const Finding& detail : finding.details)
            if (detail.rule == rule)
                found.push_back(&detail);
    }
    return found;
}

std::optional<Severity> worstOf(const Analysis& analysis, std::string_view rule)
{
    std::optional<Severity> worst;
    for (const Finding* finding : findingsOf(analysis, rule))
        if (!worst || finding->severity > *worst)
            worst = finding->severity;
    return worst;
}

bool lacksAFact(const Analysis& analysis, std::string_view rule)
{
    return std::any_of(analysis.not_judged.begin(), analysis.not_judged.end(),
                       [rule](const NotJudged& one) { return one.rule == rule; });
}

} // namespace siphonwright::rules
