#include "core/checks/judges.h"
#include "core/layout/wording.h"
#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

/// Is the loop closed, so that what is missing is worth asking for? An open one is other rules' to find.
bool closedLoop(const Judge& judge, const Id& heater)
{
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout))
        if (loop.heater->id == heater)
            return loop.supply && loop.return_ && loop.supply_port && loop.return_port;
    return false;
}

void restOnPower(Judge& judge, const Heater& heater)
{
    judge.restsOn(heater.power_W, refOf(heater), "the power of " + nameOfHeater(heater));
}

/// At the part itself, which for what is fitted into a hose is a place along it.
void place(Finding& finding, const Judge& judge, const PartRef& part)
{
    finding.at = positionOf(judge.sketch, part);
    const ResolvedHose* hose = judge.layout.hose(part.id);
    if (!hose)
        return;
    finding.hose = part.id;
    const Route& route = **hose;
    if (part.kind != PartKind::inline_part || part.index >= route.hose->parts.size())
        return;
    const double along_mm = route.hose->parts[part.index].along_mm;
    finding.along_mm = std::clamp(route.hose_from_mm + along_mm, route.hose_from_mm, route.hose_to_mm);
    finding.at = alongHose(route, along_mm);
}

/// Each loop that was computed, with its heater.
template <class Act>
void forEachRun(Judge& judge, Act&& act)
{
    for (const LoopRun& run : judge.results.running->loops) {
        const Heater* heater = judge.sketch.heater(run.heater);
        if (!heater || !run.missing.empty())
            continue;
        judge.about(refOf(*heater));
        restOnPower(judge, *heater);
        act(run, *heater);
    }
}

} // namespace

void stalled(Judge& judge)
{
    for (const LoopRun& run : judge.results.running->loops)
        if (!run.missing.empty() && closedLoop(judge, run.heater))
            judge.notJudged(run.missing_of, run.missing);
    forEachRun(judge, [&](const LoopRun& run, const Heater& heater) {
        const Circulation& found = run.circulation;
        if (found.status != CirculationStatus::stalled)
            return;
        Message text{
            "{a} stalls: its warm coolant stands no higher than the cold, and nothing drives it round.",
            {},
            {nameOfHeater(heater)}};
        if (found.drive_mm > 0)
            text = {"{a} stalls: it can raise {0} of head, and air withstands {1}.",
                    {{found.drive_mm, Unit::mm}, {found.resistance_mm, Unit::mm}},
                    {nameOfHeater(heater)}};
        Finding& finding = judge.report(Severity::stop, refOf(heater), text);
        finding.at = heater.position;
    });
}

void reverseCirculation(Judge& judge)
{
    forEachRun(judge, [&](const LoopRun& run, const Heater& heater) {
        if (run.circulation.status != CirculationStatus::reverse)
            return;
        Finding& finding = judge.report(
            Severity::stop, refOf(heater),
            {"{a} runs backward: warm coolant leaves by the supply hose.", {}, {nameOfHeater(heater)}});
        finding.at = heater.position;
    });
}

void partTakesLoss(Judge& judge)
{
    forEachRun(judge, [&](const LoopRun& run, const Heater&) {
        for (const PartLoss& loss : run.circulation.parts) {
            if (loss.part < 0)
                continue;
            const CircuitPart& part = run.circuit.parts[static_cast<std::size_t>(loss.part)];
            if (part.part.kind == PartKind::hose)
                continue; // a hose is not one part: its length and bends are judged by other rules
            const std::optional<Verdict> found = judge.verdictOn(loss.share);
            if (!found)
                continue;
            Finding& finding =
                judge.report(found->severity, part.part,
                             {"{a} takes {0} of the loop's head.", {{loss.share, Unit::ratio}}, {part.name}});
            finding.measured = loss.share;
            finding.limit = found->limit;
            place(finding, judge, part.part);
        }
    });
}

void muchPower(Judge& judge)
{
    double sum_W = 0;
    for (const Heater& heater : judge.sketch.heaters)
        sum_W += actualPower_W(heater).value_or(0);
    const std::optional<Verdict> found = judge.verdictOn(sum_W);
    if (!found)
        return;
    const Heater& first = judge.sketch.heaters.front();
    Finding& finding = judge.report(
        found->severity, refOf(first),
        {"The heaters have {0} in all: consider a heater with a pump.", {{sum_W, Unit::watt}}, {}});
    finding.measured = sum_W;
    finding.limit = found->limit;
    finding.at = first.position;
}

} // namespace siphonwright::judges
