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

const LimitChange* switchedOff(std::string_view rule, const Sketch& sketch)
{
    const auto off = std::find_if(sketch.limits.begin(), sketch.limits.end(), [&](const LimitChange& change) {
        return change.off && change.rule == rule;
    });
    return off == sketch.limits.end() ? nullptr : &*off;
}

std::optional<double> cautionOf(std::string_view rule, const Sketch& sketch)
{
    if (switchedOff(rule, sketch))
        return std::nullopt;
    const Limits limits = limitsOf(*ruleById(rule), sketch);
    return limits.caution ? limits.caution : limits.stop;
}

Judge::Judge(const Rule& of_rule, const Sketch& of_sketch, const Layout& of_layout, const Results& of_results,
             Judgement& judgement)
    : rule(of_rule),
      sketch(of_sketch),
      layout(of_layout),
      results(of_results),
      limits(limitsOf(of_rule, of_sketch)),
      judgement_(judgement)
{}

void Judge::about(PartRef part)
{
    part_ = std::move(part);
    rests_on_.clear();
}

void Judge::restsOn(Source source, const PartRef& owner, std::string_view fact)
{
    if (isConfirmed(source))
        return;
    Unconfirmed entry{std::string(fact), owner, source};
    const auto add = [&entry](std::vector<Unconfirmed>& list) {
        if (std::find(list.begin(), list.end(), entry) == list.end())
            list.push_back(entry);
    };
    add(judgement_.unconfirmed);
    add(rests_on_);
}

std::optional<Verdict> Judge::verdictOn(double measured, const Limits& by)
{
    const std::optional<Verdict> found = verdict(measured, rule.sense, by);
    if (!found)
        noteMargin(measured, by);
    return found;
}

void Judge::noteMargin(double measured, const Limits& by)
{
    const double sign = rule.sense == Sense::over ? 1 : -1;
    for (const std::optional<double>& limit : {by.advice, by.caution, by.stop}) {
        if (!limit)
            continue;
        const double left = std::max(0.0, sign * (*limit - measured));
        if (!margin_ || left < margin_->left)
            margin_ = Margin{std::string(rule.id), part_, measured, *limit, left, rule.unit};
    }
}

Finding& Judge::report(Severity severity, PartRef part, Message text)
{
    Finding finding;
    finding.rule = std::string(rule.id);
    finding.severity = severity;
    finding.part = std::move(part);
    finding.unit = rule.unit;
    finding.text = std::move(text);
    finding.fix.pattern = std::string(rule.fix);
    finding.rests_on = rests_on_;
    judgement_.findings.push_back(std::move(finding));
    return judgement_.findings.back();
}

void Judge::notJudged(PartRef part, std::string missing)
{
    NotJudged entry;
    entry.rule = std::string(rule.id);
    entry.missing = std::move(missing);
    entry.part = std::move(part);
    judgement_.not_judged.push_back(std::move(entry));
}

namespace {

bool isIn(RuleSet set, const Rule& rule, const Results& results)
{
    const bool has_what_it_needs = rule.needs == Needs::layout ||
                                   (rule.needs == Needs::circulation && results.running) ||
                                   (rule.needs == Needs::filling && results.filling && results.running) ||
                                   (rule.needs == Needs::warm_up && results.warm_up);
    const bool proven = rule.needs == Needs::filling || rule.needs == Needs::warm_up;
    switch (set) {
    case RuleSet::live:
        return has_what_it_needs && !proven;
    case RuleSet::over_grades:
        return has_what_it_needs && rule.tilt != Tilt::same;
    case RuleSet::proven:
        break;
    }
    return has_what_it_needs && proven;
}

} // namespace

Judgement judge(const Sketch& sketch, const Layout& layout, const Results& results, RuleSet set)
{
    Judgement out;
    for (const Rule& rule : ruleBook()) {
        if (!isIn(set, rule, results) || switchedOff(rule.id, sketch))
            continue;
        Judge judge(rule, sketch, layout, results, out);
        rule.judge(judge);
        if (judge.margin_)
            out.margins.push_back(*judge.margin_);
    }
    return out;
}

} // namespace siphonwright
