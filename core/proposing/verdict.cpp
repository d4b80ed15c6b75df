#include "core/proposing/verdict.h"

#include "core/checks/rules.h"
#include "core/layout/route.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace siphonwright {
namespace {

constexpr std::array<std::string_view, 5> beyond = {
    "antifreeze-over-60", "freeze-margin", "antifreeze-kind-unknown", "low-coolant", "target-not-reached"};

bool breaks(const Finding& finding)
{
    return finding.severity > Severity::advice && !beyondLayout(finding.rule);
}

std::optional<Finding> firstBreaking(const std::vector<Finding>& findings)
{
    for (const Finding& finding : findings) {
        if (breaks(finding))
            return finding;
        for (const Finding& detail : finding.details)
            if (breaks(detail))
                return detail;
    }
    return std::nullopt;
}

void keepBeside(const std::vector<Finding>& findings, std::vector<Finding>& beside)
{
    for (const Finding& finding : findings)
        if (finding.severity > Severity::advice && beyondLayout(finding.rule))
            beside.push_back(finding);
}

bool touchesHeater(const Hose& hose, const Id& heater)
{
    return hose.from.heater == heater || hose.to.heater == heater;
}

} // namespace

bool beyondLayout(const std::string& rule)
{
    return std::find(beyond.begin(), beyond.end(), rule) != beyond.end();
}

std::optional<Finding> breaksLive(const Analysis& analysis)
{
    return firstBreaking(analysis.findings);
}

Verified verify(const Sketch& sketch, const Analysis& level, const Id& heater, const std::stop_token& stop)
{
    Verified out;
    keepBeside(level.findings, out.beside);
    out.broken = breaksLive(level);
    if (out.broken)
        return out;
    const Assumptions assumed(sketch);
    Running running = level.running;
    const Filling filling = fillOf(sketch, level.layout, &running, assumed);
    passAir(running, sketch, level.layout, filling);
    WarmUpOptions end_only;
    end_only.sample_every_s = 0;
    const EngineWarmUp warm = runWarmUp(sketch, level.layout, running, assumed, end_only);
    Results results;
    results.running = &running;
    results.filling = &filling;
    results.warm_up = &warm;
    const Judgement proven = judge(sketch, level.layout, results, RuleSet::proven);
    keepBeside(proven.findings, out.beside);
    out.broken = firstBreaking(proven.findings);
    if (out.broken || stop.stop_requested())
        return out;
    std::vector<Finding> on_grade = findingsOnEnvelope(sketch, level.layout, stop, &level.running);
    out.broken = firstBreaking(on_grade);
    if (out.broken || stop.stop_requested())
        return out;
    const std::vector<GradeRun> ends = runAtEnds(sketch, level.layout, level.running, assumed, stop);
    for (Finding& finding : warmingAtEnds(sketch, level.layout, ends, proven.findings))
        on_grade.push_back(std::move(finding));
    out.broken = firstBreaking(on_grade);
    if (out.broken || stop.stop_requested())
        return out;
    out.sound_on_grades = std::none_of(on_grade.begin(), on_grade.end(), [](const Finding& finding) {
        return !beyondLayout(finding.rule);
    });
    out.sound = soundGrades(sketch, level.layout, stop);
    for (const ResolvedHose& hose : level.layout.hoses)
        if (touchesHeater(*hose->hose, heater))
            if (const std::optional<Droop> droop = sagMargin(*hose, level.layout.plumb))
                out.sag.push_back({hose.id(), *droop});
    out.margins = level.margins;
    out.margins.insert(out.margins.end(), proven.margins.begin(), proven.margins.end());
    out.not_judged = level.not_judged;
    out.advices = level.count(Severity::advice) + proven.findings.size() + on_grade.size();
    return out;
}

} // namespace siphonwright
