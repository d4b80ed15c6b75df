#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>

namespace siphonwright::judges {
namespace {

/// A top against the levels: over cold full stops; between cold minimum and cold full is a caution; where
/// only the minimum is entered, over it stops.
struct OverLevel {
    Verdict verdict;
    double over_mm = 0;
    bool over_full = false;
};

std::optional<OverLevel> overLevel(Judge& judge, double top_mm)
{
    const CoolantLevels& levels = judge.layout.levels;
    const Limits& limits = judge.limits;
    const std::optional<double>& full_mm = levels.cold_full_mm;
    const std::optional<double> stop_level_mm = full_mm ? full_mm : levels.cold_min_mm;
    if (stop_level_mm) {
        const double over_mm = top_mm - *stop_level_mm;
        if (const auto found = judge.verdictOn(over_mm, {std::nullopt, std::nullopt, limits.stop}))
            return OverLevel{*found, over_mm, full_mm.has_value()};
    }
    if (levels.cold_min_mm) {
        const double over_mm = top_mm - *levels.cold_min_mm;
        if (const auto found = judge.verdictOn(over_mm, {limits.advice, limits.caution, std::nullopt}))
            return OverLevel{*found, over_mm, false};
    }
    return std::nullopt;
}

Finding* reportOver(Judge& judge, const PartRef& part, const std::string& name, double top_mm)
{
    judge.about(part);
    restsOnLevels(judge);
    if (part.kind == PartKind::heater)
        restsOnPlace(judge, *judge.sketch.heater(part.id));
    else
        restsOnEnds(judge, *judge.layout.hose(part.id)->route);
    const std::optional<OverLevel> found = overLevel(judge, top_mm);
    if (!found)
        return nullptr;
    Message text{"{a} reaches {0} above the coolant's cold minimum level: it can run dry of coolant.",
                 {{found->over_mm, Unit::mm}},
                 {name}};
    if (found->over_full)
        text.pattern = "{a} reaches {0} above the coolant's cold full level: coolant never fills it.";
    Finding& finding = judge.report(found->verdict.severity, part, text);
    finding.measured = found->over_mm;
    finding.limit = found->verdict.limit;
    // What clears the finding altogether is getting under the cold minimum, where that is entered.
    const double under_mm = judge.layout.levels.cold_min_mm
                                ? std::max(found->over_mm, top_mm - *judge.layout.levels.cold_min_mm)
                                : found->over_mm;
    finding.fix = {
        "Lower it by at least {0}, or keep the coolant level higher.", {{enough(under_mm), Unit::mm}}, {}};
    return &finding;
}

} // namespace

void aboveCoolantLevel(Judge& judge)
{
    const CoolantLevels& levels = judge.layout.levels;
    if (judge.layout.hoses.empty() && judge.layout.heaters.empty())
        return;
    if (!levels.cold_min_mm && (judge.sketch.engine || judge.sketch.tank))
        judge.notJudged({PartKind::tank, {}, 0}, "the coolant level at cold minimum is not entered");
    if (!levels.cold_min_mm && !levels.cold_full_mm)
        return;
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        if (route.path.line.empty())
            return;
        Finding* finding =
            reportOver(judge, refOf(*route.hose), nameOfHose(*route.hose), hose.highest_crown_mm);
        if (!finding)
            return;
        finding->hose = hose.id();
        finding->along_mm = hose.highest_at_mm;
        finding->at = route.path.line.at(hose.highest_at_mm);
    });
    for (std::size_t i = 0; i < judge.sketch.heaters.size(); ++i) {
        const Heater& heater = judge.sketch.heaters[i];
        Finding* finding =
            reportOver(judge, refOf(heater), nameOfHeater(heater), judge.layout.heaters[i].body_top_mm);
        if (finding)
            finding->at = heater.position;
    }
}

} // namespace siphonwright::judges
