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

bool touchesHeater(const Hose& hose, const Id& heater)
{
    return hose.from.heater == heater || hose.to.heater == heater;
}

/// Whose layout is judged.
struct Own {
    const Sketch& sketch;
    const Id& heater;
};

/// Is a finding about another heater, or about hoses and ports of another?
bool ofAnother(const Finding& finding, const Own& own)
{
    const Sketch& sketch = own.sketch;
    if (const Hose* hose = sketch.hose(finding.hose.empty() ? finding.part.id : finding.hose))
        return !touchesHeater(*hose, own.heater);
    if (finding.part.kind == PartKind::heater)
        return finding.part.id != own.heater;
    if (finding.part.kind != PartKind::port)
        return false;
    bool carries = false;
    for (const Shared<Hose>& hose : sketch.hoses)
        if (hose->from.port == finding.part.id || hose->to.port == finding.part.id) {
            if (touchesHeater(*hose, own.heater))
                return false;
            carries = true;
        }
    return carries;
}

bool mendable(const Finding& finding, const Own& own)
{
    return !beyondLayout(finding.rule) && !ofAnother(finding, own);
}

std::optional<Finding> firstBreaking(const std::vector<Finding>& findings, const Own& own)
{
    const auto breaks = [&](const Finding& finding) {
        return finding.severity > Severity::advice && mendable(finding, own);
    };
    for (const Finding& finding : findings) {
        if (breaks(finding))
            return finding;
        for (const Finding& detail : finding.details)
            if (breaks(detail))
                return detail;
    }
    return std::nullopt;
}

void keepBeside(const std::vector<Finding>& findings, const Own& own, std::vector<Finding>& beside)
{
    for (const Finding& finding : findings)
        if (finding.severity > Severity::advice && !mendable(finding, own))
            beside.push_back(finding);
}

} // namespace

bool beyondLayout(const std::string& rule)
{
    return std::find(beyond.begin(), beyond.end(), rule) != beyond.end();
}

std::optional<Finding> breaksLive(const Analysis& analysis, const Sketch& sketch, const Id& heater)
{
    return firstBreaking(analysis.findings, {sketch, heater});
}

Verified verify(const Sketch& sketch, const Analysis& level, const Id& heater, const std::stop_token& stop)
{
    Verified out;
    const Own own{sketch, heater};
    keepBeside(level.findings, own, out.beside);
    out.broken = firstBreaking(level.findings, own);
    if (out.broken)
        return out;
    const Assumptions assumed(sketch);
    Running running = level.running;
    LevelTables kept;
    const Filling filling = fillOf(sketch, level.layout, &running, assumed, &kept);
    passAir(running, sketch, level.layout, filling);
    WarmUpOptions end_only;
    end_only.sample_every_s = 0;
    const EngineWarmUp warm = runWarmUp(sketch, level.layout, running, assumed, end_only);
    Results results;
    results.running = &running;
    results.filling = &filling;
    results.warm_up = &warm;
    const Judgement proven = judge(sketch, level.layout, results, RuleSet::proven);
    keepBeside(proven.findings, own, out.beside);
    out.broken = firstBreaking(proven.findings, own);
    if (out.broken || stop.stop_requested())
        return out;
    std::vector<Finding> on_grade = findingsOnEnvelope(sketch, level.layout, stop, &level.running, &kept);
    out.broken = firstBreaking(on_grade, own);
    if (out.broken || stop.stop_requested())
        return out;
    const std::vector<GradeRun> ends = runAtEnds(sketch, level.layout, level.running, assumed, stop, &kept);
    for (Finding& finding : warmingAtEnds(sketch, level.layout, ends, proven.findings))
        on_grade.push_back(std::move(finding));
    out.broken = firstBreaking(on_grade, own);
    if (out.broken || stop.stop_requested())
        return out;
    out.sound_on_grades = std::none_of(on_grade.begin(), on_grade.end(),
                                       [&](const Finding& finding) { return mendable(finding, own); });
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
