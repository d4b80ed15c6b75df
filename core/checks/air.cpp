#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

/// The pocket of a loop that takes the most head; null without one that takes any.
const PocketFound* worstPocket(const Filling& filling, const Id& heater)
{
    const PocketFound* worst = nullptr;
    for (const PocketFound& pocket : filling.pockets)
        if (pocket.heater == heater && pocket.height_mm > 0 &&
            (!worst || pocket.height_mm > worst->height_mm))
            worst = &pocket;
    return worst;
}

/// The pocket that leaves least of its bore open; null where none narrows one.
const PocketFound* narrowestPocket(const Filling& filling, const Id& heater)
{
    const PocketFound* worst = nullptr;
    for (const PocketFound& pocket : filling.pockets)
        if (pocket.heater == heater && pocket.open_share < 1 &&
            (!worst || pocket.open_share < worst->open_share))
            worst = &pocket;
    return worst;
}

/// What a pocket lies in, by name: a hose or a heater.
std::string nameOfPlace(const Judge& judge, const PocketFound& pocket)
{
    if (const Hose* hose = judge.sketch.hose(pocket.hose))
        return nameOfHose(*hose);
    return nameOfHeater(*judge.sketch.heater(pocket.heater));
}

Finding& reportPocket(Judge& judge, Severity severity, const PocketFound& pocket, Message text)
{
    const Hose* hose = judge.sketch.hose(pocket.hose);
    const PartRef part = hose ? refOf(*hose) : PartRef{PartKind::heater, pocket.heater, 0};
    Finding& finding = judge.report(severity, part, std::move(text));
    finding.at = pocket.at;
    if (hose) {
        finding.hose = pocket.hose;
        finding.along_mm = pocket.along_mm;
        constexpr double beside_mm = 60; // a pocket shifts a little as the vehicle tilts
        finding.from_mm = pocket.along_mm - beside_mm;
        finding.to_mm = pocket.along_mm + beside_mm;
    }
    return finding;
}

void restOnFill(Judge& judge, const HeaterLoop& loop)
{
    judge.about(refOf(*loop.heater));
    restsOnLevels(judge);
    restsOnPlace(judge, *loop.heater);
    if (loop.supply)
        restsOnEnds(judge, **loop.supply);
    if (loop.return_)
        restsOnEnds(judge, **loop.return_);
}

/// Each loop that was filled, with its circulation.
template <class Act>
void forEachFilled(Judge& judge, Act&& act)
{
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout)) {
        const LoopRun* run = judge.results.running->loopOf(loop.heater->id);
        if (!run || !run->missing.empty() || !judge.results.filling->missing.empty())
            continue;
        restOnFill(judge, loop);
        act(loop, *run);
    }
}

const LoopAir* airOf(const Filling& filling, const Id& heater)
{
    const auto found = std::find_if(filling.loops.begin(), filling.loops.end(),
                                    [&](const LoopAir& air) { return air.heater == heater; });
    return found == filling.loops.end() ? nullptr : &*found;
}

} // namespace

void airLocked(Judge& judge)
{
    const Filling& filling = *judge.results.filling;
    if (!filling.missing.empty()) {
        for (const LoopRun& run : judge.results.running->loops)
            if (run.missing.empty())
                return judge.notJudged(filling.missing_of, filling.missing);
        return;
    }
    forEachFilled(judge, [&](const HeaterLoop& loop, const LoopRun& run) {
        const PocketFound* pocket = worstPocket(filling, loop.heater->id);
        const bool ran_before = run.without_air && run.without_air->status == CirculationStatus::circulates;
        if (!pocket || !ran_before || run.circulation.status == CirculationStatus::circulates)
            return;
        Message text{
            "{a} is air-locked: {0} of air stays in it and takes {1} of head; the loop can raise {2}.",
            {{pocket->volume_ml, Unit::ml},
             {pocket->height_mm, Unit::mm},
             {run.circulation.drive_mm, Unit::mm}},
            {nameOfPlace(judge, *pocket)}};
        if (run.circulation.status == CirculationStatus::reverse)
            text = {"{a} is air-locked: {0} of air stays in it, takes {1} of head and turns the flow round.",
                    {{pocket->volume_ml, Unit::ml}, {pocket->height_mm, Unit::mm}},
                    {nameOfPlace(judge, *pocket)}};
        Finding& finding = reportPocket(judge, Severity::stop, *pocket, text);
        finding.measured = pocket->height_mm;
    });
}

void airWeakensFlow(Judge& judge)
{
    forEachFilled(judge, [&](const HeaterLoop& loop, const LoopRun& run) {
        const Filling& filling = *judge.results.filling;
        const PocketFound* closing = worstPocket(filling, loop.heater->id);
        const PocketFound* pocket = closing ? closing : narrowestPocket(filling, loop.heater->id);
        if (!pocket || !run.without_air || run.circulation.status != CirculationStatus::circulates ||
            run.without_air->flow_kg_per_s <= 0)
            return;
        const double lost = 1 - run.circulation.flow_kg_per_s / run.without_air->flow_kg_per_s;
        const std::optional<Verdict> found = judge.verdictOn(lost);
        if (!found)
            return;
        Message text{"Air in {a} takes {0} of head and weakens the flow by {1}.",
                     {{pocket->height_mm, Unit::mm}, {lost, Unit::ratio}},
                     {nameOfPlace(judge, *pocket)}};
        if (!closing)
            text = {"Air in {a} leaves {0} of the bore open and weakens the flow by {1}.",
                    {{pocket->open_share, Unit::ratio}, {lost, Unit::ratio}},
                    {nameOfPlace(judge, *pocket)}};
        Finding& finding = reportPocket(judge, found->severity, *pocket, text);
        finding.measured = lost;
        finding.limit = found->limit;
    });
}

void chamberNotFull(Judge& judge)
{
    forEachFilled(judge, [&](const HeaterLoop& loop, const LoopRun&) {
        const LoopAir* air = airOf(*judge.results.filling, loop.heater->id);
        if (!air)
            return;
        const Heater& heater = *loop.heater;
        judge.restsOn(heater.element_top_mm, refOf(heater),
                      "the top of the element of " + nameOfHeater(heater));
        const std::optional<Verdict> found = judge.verdictOn(air->chamber_gas_ml);
        const bool bared = heater.element_top_mm.known() && !air->element_covered;
        if (!found && !bared)
            return;
        if (!heater.element_top_mm.known())
            judge.notJudged(refOf(heater),
                            "the top of the element of " + nameOfHeater(heater) + " is not entered");
        Message text{"{a} keeps {0} of air in its chamber after filling.",
                     {{air->chamber_gas_ml, Unit::ml}},
                     {nameOfHeater(heater)}};
        if (bared)
            text.pattern =
                "{a} keeps {0} of air in its chamber after filling, and its element is not covered.";
        Finding& finding = judge.report(bared ? Severity::stop : found->severity, refOf(heater), text);
        finding.at = heater.position;
        finding.measured = air->chamber_gas_ml;
        finding.limit = found ? found->limit : judge.limits.advice;
    });
}

void notClearedByRunning(Judge& judge)
{
    forEachFilled(judge, [&](const HeaterLoop& loop, const LoopRun&) {
        for (const PocketFound& pocket : judge.results.filling->pockets) {
            if (pocket.heater != loop.heater->id || !pocket.closes_bore)
                continue;
            const std::vector<Quantity> figures = {{pocket.velocity_m_per_s, Unit::m_per_s},
                                                   {pocket.clears.least_m_per_s, Unit::m_per_s},
                                                   {pocket.clears.greatest_m_per_s, Unit::m_per_s}};
            Message text{
                "Running the engine leaves the air in {a}: {0} in the hose, and {1} to {2} clear it.",
                figures,
                {nameOfPlace(judge, pocket)}};
            if (pocket.cleared_by_running == Clearing::may_clear)
                text.pattern =
                    "Running the engine may clear the air in {a}: {0} in the hose, and {1} to {2} clear it.";
            if (pocket.cleared_by_running == Clearing::cleared)
                text.pattern =
                    "Running the engine clears the air in {a} ({0} in the hose, {1} to {2} clear it): "
                    "look again after the first night.";
            Finding& finding = reportPocket(judge, Severity::caution, pocket, text);
            finding.measured = pocket.velocity_m_per_s;
            finding.limit = pocket.clears.greatest_m_per_s;
        }
    });
}

void lowCoolant(Judge& judge)
{
    const Filling& filling = *judge.results.filling;
    const std::optional<double>& min_mm = judge.layout.levels.cold_min_mm;
    if (!filling.missing.empty() || !min_mm)
        return;
    if (!judge.sketch.site.coldest_ambient_degC.known())
        return judge.notJudged({}, "the coldest ambient temperature is not entered");
    judge.about({PartKind::tank, {}, 0});
    restsOnLevels(judge);
    judge.restsOn(judge.sketch.site.coldest_ambient_degC, {}, "the coldest ambient temperature");
    const double under_mm = *min_mm - filling.coldest_level_mm;
    const std::optional<Verdict> found = judge.verdictOn(under_mm);
    if (!found)
        return;
    Finding& finding =
        judge.report(found->severity, {PartKind::tank, {}, 0},
                     {"At {1} the coolant shrinks to {0} under its cold minimum.",
                      {{under_mm, Unit::mm}, {*judge.sketch.site.coldest_ambient_degC.value, Unit::degC}},
                      {}});
    finding.measured = under_mm;
    finding.limit = found->limit;
    if (judge.sketch.tank)
        finding.at = judge.sketch.tank->position;
}

} // namespace siphonwright::judges
