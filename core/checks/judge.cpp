#include "core/checks/judged_hoses.h"
#include "core/checks/rules.h"
#include "core/sketch/sketch.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <type_traits>
#include <utility>

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
             Judgement& judgement, JudgedHoses* judged, OnceEach* facts)
    : rule(of_rule),
      sketch(of_sketch),
      layout(of_layout),
      results(of_results),
      limits(limitsOf(of_rule, of_sketch)),
      judgement_(&judgement),
      judged_(judged),
      facts_(facts)
{}

void Judge::eachHose(const std::function<void(const ResolvedHose&)>& look)
{
    for (std::size_t i = 0; i < layout.hoses.size(); ++i) {
        if (!judged_) {
            say(lookAt(layout.hoses[i], look));
            continue;
        }
        std::shared_ptr<const HoseVerdict> known = judged_->verdict(rule, i);
        if (!known) {
            known = std::make_shared<const HoseVerdict>(lookAt(layout.hoses[i], look));
            judged_->remember(rule, i, known);
        }
        say(*known);
    }
    about({});
}

/// What is said of one hose, apart from all else that is said.
HoseVerdict Judge::lookAt(const ResolvedHose& hose, const std::function<void(const ResolvedHose&)>& look)
{
    Judgement apart;
    Judgement* const whole = std::exchange(judgement_, &apart);
    OnceEach* const facts = std::exchange(facts_, nullptr);
    std::optional<Margin> margin = std::exchange(margin_, std::nullopt);
    about({});
    look(hose);
    judgement_ = whole;
    facts_ = facts;
    margin_.swap(margin);
    return {std::move(apart.findings), std::move(apart.not_judged), std::move(apart.unconfirmed),
            std::move(margin)};
}

/// Add what is said of a hose to the rest, as if it had been said there.
template <class Verdict>
void Judge::say(Verdict&& said)
{
    const auto append = [](auto& to, auto& from) {
        if constexpr (std::is_const_v<std::remove_reference_t<decltype(from)>>)
            to.insert(to.end(), from.begin(), from.end());
        else
            std::move(from.begin(), from.end(), std::back_inserter(to));
    };
    append(judgement_->findings, said.findings);
    append(judgement_->not_judged, said.not_judged);
    for (const Unconfirmed& fact : said.unconfirmed)
        addFact(fact);
    if (said.margin && (!margin_ || said.margin->left < margin_->left))
        margin_ = said.margin;
}

void Judge::addFact(const Unconfirmed& fact)
{
    std::vector<Unconfirmed>& all = judgement_->unconfirmed;
    if (facts_)
        facts_->add(fact);
    else if (std::find(all.begin(), all.end(), fact) == all.end())
        all.push_back(fact);
}

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
    addFact(entry);
    if (std::find(rests_on_.begin(), rests_on_.end(), entry) == rests_on_.end())
        rests_on_.push_back(std::move(entry));
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
    judgement_->findings.push_back(std::move(finding));
    return judgement_->findings.back();
}

void Judge::notJudged(PartRef part, std::string missing)
{
    NotJudged entry;
    entry.rule = std::string(rule.id);
    entry.missing = std::move(missing);
    entry.part = std::move(part);
    judgement_->not_judged.push_back(std::move(entry));
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

Judgement judge(const Sketch& sketch, const Layout& layout, const Results& results, RuleSet set,
                JudgedHoses* judged)
{
    Judgement out;
    OnceEach facts(out.unconfirmed);
    for (const Rule& rule : ruleBook()) {
        if (!isIn(set, rule, results) || switchedOff(rule.id, sketch))
            continue;
        Judge judge(rule, sketch, layout, results, out, judged, &facts);
        rule.judge(judge);
        if (judge.margin_)
            out.margins.push_back(*judge.margin_);
    }
    return out;
}

} // namespace siphonwright
