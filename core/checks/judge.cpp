#include "core/checks/rules.h"
#include "core/sketch/sketch.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

std::string_view nameOf(Severity severity)
{
    switch (severity) {
    case Severity::advice:
        return "advice";
    case Severity::caution:
        return "caution";
    case Severity::stop:
        return "stop";
    }
    return "";
}

Limits limitsOf(const Rule& rule, const Sketch& sketch)
{
    Limits out = rule.limits;
    for (const LimitChange& change : sketch.limits) {
        if (change.rule != rule.id)
            continue;
        out.advice = change.advice ? change.advice : out.advice;
        out.caution = change.caution ? change.caution : out.caution;
        out.stop = change.stop ? change.stop : out.stop;
    }
    return out;
}

std::optional<Verdict> verdict(double measured, Sense sense, const Limits& limits)
{
    const auto broken = [&](const std::optional<double>& limit) {
        if (!limit)
            return false;
        const double tolerance = 1e-6 * std::abs(*limit) + 1e-9;
        return sense == Sense::over ? measured > *limit + tolerance : measured < *limit - tolerance;
    };
    if (broken(limits.stop))
        return Verdict{Severity::stop, *limits.stop};
    if (broken(limits.caution))
        return Verdict{Severity::caution, *limits.caution};
    if (broken(limits.advice))
        return Verdict{Severity::advice, *limits.advice};
    return std::nullopt;
}

Judge::Judge(const Rule& of_rule, const Sketch& of_sketch, const Layout& of_layout,
             std::vector<Finding>& findings, std::vector<NotJudged>& not_judged)
    : rule(of_rule),
      sketch(of_sketch),
      layout(of_layout),
      limits(limitsOf(of_rule, of_sketch)),
      findings_(findings),
      not_judged_(not_judged)
{}

Finding& Judge::report(Severity severity, PartRef part, Message text)
{
    Finding finding;
    finding.rule = std::string(rule.id);
    finding.severity = severity;
    finding.part = std::move(part);
    finding.unit = rule.unit;
    finding.text = std::move(text);
    finding.fix.pattern = std::string(rule.fix);
    findings_.push_back(std::move(finding));
    return findings_.back();
}

void Judge::notJudged(PartRef part, std::string missing)
{
    NotJudged entry;
    entry.rule = std::string(rule.id);
    entry.missing = std::move(missing);
    entry.part = std::move(part);
    not_judged_.push_back(std::move(entry));
}

Judgement judge(const Sketch& sketch, const Layout& layout)
{
    Judgement out;
    for (const Rule& rule : ruleBook()) {
        Judge judge(rule, sketch, layout, out.findings, out.not_judged);
        rule.judge(judge);
    }
    std::stable_sort(out.findings.begin(), out.findings.end(),
                     [](const Finding& a, const Finding& b) { return a.severity > b.severity; });
    return out;
}

} // namespace siphonwright
