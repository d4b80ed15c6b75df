#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/heater_loop.h"
#include "core/layout/wording.h"

#include <algorithm>

namespace siphonwright::judges {
namespace {

/// The smallest bore of the hose itself, reducers counted, and where it is.
BoreSpan smallestSpan(const Route& route)
{
    BoreSpan smallest{route.hose_from_mm, route.hose_to_mm, route.bore_mm};
    for (const BoreSpan& span : route.path.bores)
        if (span.from_mm >= route.hose_from_mm && span.to_mm <= route.hose_to_mm &&
            span.bore_mm < smallest.bore_mm)
            smallest = span;
    return smallest;
}

void judgeManualBore(Judge& judge, const Heater& heater, const ResolvedHose& hose)
{
    const Route& route = *hose;
    const std::optional<double> least_mm =
        heater.manual_min_bore_mm.known() ? heater.manual_min_bore_mm.value : judge.limits.stop;
    if (!least_mm)
        return judge.notJudged(refOf(heater), "the least hose bore in the manual of " + nameOfHeater(heater) +
                                                  " is not entered");
    if (!route.bore_known)
        return judge.notJudged(refOf(*route.hose),
                               "the bore of " + nameOfHose(*route.hose) + " is not entered");
    const BoreSpan smallest = smallestSpan(route);
    judge.about(refOf(*route.hose));
    restsOnBore(judge, *route.hose);
    judge.restsOn(heater.manual_min_bore_mm, refOf(heater),
                  "the least hose bore in the manual of " + nameOfHeater(heater));
    const std::optional<Verdict> found =
        judge.verdictOn(smallest.bore_mm, {std::nullopt, std::nullopt, least_mm});
    if (!found)
        return;
    Finding& finding = judge.report(found->severity, refOf(*route.hose),
                                    {"{a} has a bore of {0}; the heater's manual asks for {1} or more.",
                                     {{smallest.bore_mm, Unit::mm}, {*least_mm, Unit::mm}},
                                     {nameOfHose(*route.hose)}});
    finding.hose = hose.id();
    finding.from_mm = smallest.from_mm;
    finding.to_mm = smallest.to_mm;
    finding.along_mm = (smallest.from_mm + smallest.to_mm) / 2;
    finding.at = route.path.line.at(*finding.along_mm);
    finding.measured = smallest.bore_mm;
    finding.limit = found->limit;
    finding.fix = {"Use hose of {0} bore or more.", {{*least_mm, Unit::mm}}, {}};
}

/// Words for what narrows a path, as the end of a sentence.
const char* narrowPlace(const Route& route, const PartRef& part)
{
    if (part.kind == PartKind::port)
        return "the port";
    if (part.kind == PartKind::heater)
        return "the heater's nozzle";
    if (part.kind == PartKind::hose_end)
        return "the hose end";
    switch (route.hose->parts[part.index].kind) {
    case InlineKind::isolation_valve:
        return "the isolation valve";
    case InlineKind::bleed:
        return "the bleed";
    case InlineKind::drain:
        return "the drain";
    case InlineKind::lift_check_valve:
    case InlineKind::swing_check_valve:
        return "the check valve";
    case InlineKind::reducer:
        return "the reducer";
    }
    return "a part";
}

/// A bore that is not entered may be narrower than what is judged.
void needBore(Judge& judge, const Fact<double>& bore_mm, const PartRef& part, const std::string& name)
{
    judge.restsOn(bore_mm, part, name);
    if (!bore_mm.known())
        judge.notJudged(part, name + " is not entered");
}

void needBores(Judge& judge, const Route& route)
{
    for (const HoseEnd* end : {&route.hose->from, &route.hose->to}) {
        if (const Port* port = judge.sketch.port(end->port))
            needBore(judge, port->bore_mm, refOf(*port), "the bore of " + nameOfPort(*port));
        if (const Heater* heater = judge.sketch.heater(end->heater)) {
            const bool inlet = end->nozzle == NozzleKind::inlet;
            const Nozzle& nozzle = inlet ? heater->inlet : heater->outlet;
            needBore(judge, nozzle.bore_mm, refOf(*heater),
                     std::string("the bore of the ") + (inlet ? "inlet" : "outlet") + " of " +
                         nameOfHeater(*heater));
        }
    }
}

} // namespace

void boreUnderManual(Judge& judge)
{
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout))
        for (const ResolvedHose* hose : {loop.supply, loop.return_})
            if (hose)
                judgeManualBore(judge, *loop.heater, *hose);
}

void boreRestriction(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        if (!route.bore_known) {
            judge.notJudged(refOf(*route.hose), "the bore of " + nameOfHose(*route.hose) + " is not entered");
            return;
        }
        judge.about(refOf(*route.hose));
        restsOnBore(judge, *route.hose);
        needBores(judge, route);
        const auto narrowest = std::min_element(
            route.constrictions.begin(), route.constrictions.end(),
            [](const Constriction& a, const Constriction& b) { return a.bore_mm < b.bore_mm; });
        if (narrowest == route.constrictions.end())
            return;
        const std::optional<Verdict> found = judge.verdictOn(narrowest->bore_mm / route.bore_mm);
        if (!found)
            return;
        Finding& finding = judge.report(found->severity, narrowest->part,
                                        {"{a} narrows from {0} to {1} at {b}.",
                                         {{route.bore_mm, Unit::mm}, {narrowest->bore_mm, Unit::mm}},
                                         {nameOfHose(*route.hose), narrowPlace(route, narrowest->part)}});
        finding.hose = hose.id();
        finding.along_mm = (narrowest->from_mm + narrowest->to_mm) / 2;
        finding.from_mm = narrowest->from_mm;
        finding.to_mm = narrowest->to_mm;
        finding.at = route.path.line.at(*finding.along_mm);
        finding.measured = narrowest->bore_mm / route.bore_mm;
        finding.limit = found->limit;
        finding.fix = {"Use a part with a bore of {0} or more.",
                       {{judge.limits.advice.value_or(found->limit) * route.bore_mm, Unit::mm}},
                       {}};
    });
}

} // namespace siphonwright::judges
