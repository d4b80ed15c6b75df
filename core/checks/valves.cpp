#include "core/checks/judges.h"
#include "core/layout/heater_loop.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

bool closedValve(const InlinePart& part)
{
    return part.kind == InlineKind::isolation_valve && !part.open;
}

bool shut(const ResolvedHose* hose)
{
    return hose && std::any_of((*hose)->hose->parts.begin(), (*hose)->hose->parts.end(), closedValve);
}

void judgeEnd(Judge& judge, const Route& route, const Port& port, double port_mm)
{
    judge.about(refOf(*route.hose));
    std::optional<double> nearest_mm;
    for (const InlinePart& part : route.hose->parts) {
        if (part.kind != InlineKind::isolation_valve)
            continue;
        const double away_mm = std::abs(route.hose_from_mm + part.along_mm - port_mm);
        nearest_mm = std::min(nearest_mm.value_or(away_mm), away_mm);
    }
    Message text{"{a} has no isolation valve near {b}.", {}, {nameOfHose(*route.hose), nameOfPort(port)}};
    std::optional<double> limit_mm = judge.limits.caution;
    Severity severity = Severity::caution;
    if (nearest_mm) {
        const std::optional<Verdict> found = judge.verdictOn(*nearest_mm);
        if (!found)
            return;
        severity = found->severity;
        limit_mm = found->limit;
        text.pattern = "{a} has its isolation valve {0} from {b}.";
        text.quantities = {{*nearest_mm, Unit::mm}};
    }
    Finding& finding = judge.report(severity, refOf(*route.hose), text);
    finding.hose = route.hose->id;
    finding.along_mm = port_mm;
    finding.at = route.path.line.at(port_mm);
    finding.measured = nearest_mm;
    finding.limit = limit_mm;
    if (limit_mm)
        finding.fix = {
            "Put an isolation valve within {0} of {a}.", {{*limit_mm, Unit::mm}}, {nameOfPort(port)}};
}

/// A place in a hose, on its path.
void placeOn(Finding& finding, const Route& route, double hose_along_mm)
{
    finding.hose = route.hose->id;
    finding.along_mm = std::clamp(route.hose_from_mm + hose_along_mm, 0.0, route.path.line.length());
    finding.at = route.path.line.at(*finding.along_mm);
}

void reportClosed(Judge& judge, const Route& route, std::size_t index, bool sealed)
{
    Message text{"{a} has a closed isolation valve: nothing circulates.", {}, {nameOfHose(*route.hose)}};
    if (sealed)
        text.pattern = "{a} has a closed isolation valve, and so has the heater's other hose: the heater is "
                       "a sealed vessel "
                       "and builds dangerous pressure when heated.";
    Finding& finding = judge.report(Severity::stop, {PartKind::inline_part, route.hose->id, index}, text);
    placeOn(finding, route, route.hose->parts[index].along_mm);
    if (sealed)
        finding.fix = {"Turn the heater off, let it cool, then open both valves.", {}, {}};
}

/// A cabin heater line that is shut off closes the loop as a valve does.
void judgeCabinLine(Judge& judge, const Hose& hose, const HoseEnd& end)
{
    const Port* port = judge.sketch.port(end.port);
    if (!port || port->kind != PortKind::cabin_line)
        return;
    if (!port->cabin_line_open) {
        judge.notJudged(refOf(*port),
                        "it is not entered whether the shut-off of " + nameOfPort(*port) + " is open");
        return;
    }
    if (*port->cabin_line_open)
        return;
    Finding& finding =
        judge.report(Severity::stop, refOf(*port),
                     {"{a} is a cabin heater line with its shut-off closed: nothing circulates.",
                      {},
                      {nameOfPort(*port)}});
    finding.hose = hose.id;
    finding.at = port->position;
    finding.fix = {"Open the shut-off whenever the heater is on, or use another port.", {}, {}};
}

/// Is the other hose on this hose's heater shut too?
bool sealedBy(const std::vector<HeaterLoop>& loops, const ResolvedHose& hose)
{
    return std::any_of(loops.begin(), loops.end(), [&](const HeaterLoop& loop) {
        return (loop.supply == &hose || loop.return_ == &hose) && shut(loop.supply) && shut(loop.return_);
    });
}

} // namespace

void valveMissing(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        if (route.path.line.empty())
            return;
        if (const Port* port = judge.sketch.port(route.hose->from.port))
            judgeEnd(judge, route, *port, 0);
        if (const Port* port = judge.sketch.port(route.hose->to.port))
            judgeEnd(judge, route, *port, route.path.line.length());
    });
}

void valveClosed(Judge& judge)
{
    const std::vector<HeaterLoop> loops = loopsOf(judge.sketch, judge.layout);
    for (const ResolvedHose& hose : judge.layout.hoses) {
        const Hose& drawn = *hose->hose;
        for (std::size_t i = 0; i < drawn.parts.size(); ++i)
            if (closedValve(drawn.parts[i]))
                reportClosed(judge, *hose, i, sealedBy(loops, hose));
        judgeCabinLine(judge, drawn, drawn.from);
        judgeCabinLine(judge, drawn, drawn.to);
    }
}

void checkValveStaysShut(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Hose& drawn = *hose->hose;
        for (std::size_t i = 0; i < drawn.parts.size(); ++i) {
            const bool lift = drawn.parts[i].kind == InlineKind::lift_check_valve;
            if (!lift && drawn.parts[i].kind != InlineKind::swing_check_valve)
                continue;
            Finding& finding = judge.report(
                Severity::caution, {PartKind::inline_part, drawn.id, i},
                {lift ? "{a} has a lift check valve, which does not open on a few mm of head."
                      : "{a} has a swing check valve, which does not open on a few mm of head unless it is "
                        "hung to fall open.",
                 {},
                 {nameOfHose(drawn)}});
            placeOn(finding, *hose, drawn.parts[i].along_mm);
        }
    });
}

} // namespace siphonwright::judges
