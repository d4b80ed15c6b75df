#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

constexpr double bleed_reach_mm = 50; ///< along the hose between a crest and the bleed that serves it

bool bleedNear(const Route& route, double along_mm)
{
    const std::vector<InlinePart>& parts = route.hose->parts;
    return std::any_of(parts.begin(), parts.end(), [&](const InlinePart& part) {
        return part.kind == InlineKind::bleed &&
               std::abs(route.hose_from_mm + part.along_mm - along_mm) <= bleed_reach_mm + 1e-6;
    });
}

/// Put a finding at a crest or hollow of a hose. Limits in bores are shown as lengths.
void place(Finding& finding, const Route& route, double along_mm, double from_mm, double to_mm, Vec3 at)
{
    finding.hose = route.hose->id;
    finding.along_mm = along_mm;
    finding.from_mm = from_mm;
    finding.to_mm = to_mm;
    finding.at = at;
}

/// The limit passed, as a length; under tape accuracy nothing is found, so that is the least limit.
double limitLength(const Verdict& verdict, double bore_mm)
{
    return std::max(verdict.limit * bore_mm, tape_accuracy_mm);
}

void reportHighPoint(Judge& judge, const ResolvedHose& hose, const HighPoint& point)
{
    const Route& route = *hose;
    const double bore_mm = route.path.boreAt(point.along_mm);
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    restsOnBore(judge, *route.hose);
    const std::optional<Verdict> found = judge.verdictOn(point.height_mm / bore_mm);
    if (!found)
        return;
    const bool bleed = bleedNear(route, point.along_mm);
    const bool fills = found->severity == Severity::stop;
    Message text;
    text.pattern =
        fills ? "{a} humps {0} above its sill: air can fill the {1} of bore above it and stop the flow."
              : "{a} humps {0} above its sill: the {1} of bore above it can hold air.";
    if (fills && bleed)
        text.pattern =
            "{a} humps {0} above its sill: air in the {1} of bore above it stops the flow unless it is bled.";
    text.quantities = {{point.height_mm, Unit::mm}, {point.trapped_ml, Unit::ml}};
    text.words = {nameOfHose(*route.hose)};
    Finding& finding =
        judge.report(fills && bleed ? Severity::caution : found->severity, refOf(*route.hose), text);
    place(finding, route, point.along_mm, point.from_mm, point.to_mm, point.at);
    finding.measured = point.height_mm;
    finding.limit = limitLength(*found, bore_mm);
    finding.unit = Unit::mm;
    if (bleed)
        finding.fix = {"Bleed at every fill, or lower the hump by at least {0}.",
                       {{enough(point.height_mm), Unit::mm}},
                       {}};
    else
        finding.fix = {"Lower the hump by at least {0}, or put a bleed at its crest.",
                       {{enough(point.height_mm), Unit::mm}},
                       {}};
}

void highPoints(Judge& judge, HoseRole role)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        if (hose.role() == role)
            for (const HighPoint& point : hose.profile.high_points)
                if (!point.within)
                    reportHighPoint(judge, hose, point);
    });
}

void reportReturnDip(Judge& judge, const Route& route, const Dip& dip)
{
    const double bore_mm = route.path.boreAt(dip.along_mm);
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    restsOnBore(judge, *route.hose);
    const std::optional<Verdict> found = judge.verdictOn(dip.depth_mm / bore_mm);
    if (!found)
        return;
    Message text{"{a} dips {0} below its rim: {1} of coolant stays there and slows the flow.",
                 {{dip.depth_mm, Unit::mm}, {dip.held_ml, Unit::ml}},
                 {nameOfHose(*route.hose)}};
    if (found->severity == Severity::stop)
        text.pattern = "{a} dips {0} below its rim: {1} of coolant fills the bore there and no air can pass.";
    Finding& finding = judge.report(found->severity, refOf(*route.hose), text);
    place(finding, route, dip.along_mm, dip.from_mm, dip.to_mm, dip.at);
    finding.measured = dip.depth_mm;
    finding.limit = limitLength(*found, bore_mm);
    finding.unit = Unit::mm;
    finding.fix = {"Raise the dip by at least {0}, so that the hose rises all the way.",
                   {{enough(dip.depth_mm), Unit::mm}},
                   {}};
}

bool plainWater(const Coolant& coolant)
{
    return coolant.glycol == Glycol::none || coolant.volume_percent.value == 0.0;
}

/// Whether what is entered leaves open that the coolant is plain water.
bool maybeWater(const Coolant& coolant)
{
    return coolant.glycol == Glycol::unknown && !coolant.volume_percent.known();
}

void reportSupplyDip(Judge& judge, const Route& route, const Dip& dip)
{
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    restsOnBore(judge, *route.hose);
    const std::optional<Verdict> found = judge.verdictOn(dip.held_ml);
    const bool water = plainWater(judge.sketch.coolant);
    if (!found && !water) {
        if (maybeWater(judge.sketch.coolant))
            judge.notJudged(refOf(*route.hose), "it is not entered whether the coolant is plain water");
        return;
    }
    Message text{"{a} dips {0}: {1} of coolant stays in it when drained.",
                 {{dip.depth_mm, Unit::mm}, {dip.held_ml, Unit::ml}},
                 {nameOfHose(*route.hose)}};
    if (water)
        text.pattern = "{a} dips {0}: {1} of plain water stays in it when drained and can freeze.";
    Finding& finding = judge.report(found ? found->severity : Severity::advice, refOf(*route.hose), text);
    place(finding, route, dip.along_mm, dip.from_mm, dip.to_mm, dip.at);
    finding.measured = dip.held_ml;
    if (found)
        finding.limit = found->limit;
    finding.fix = {"Raise the dip by at least {0}, or put a drain at its lowest point.",
                   {{enough(dip.depth_mm), Unit::mm}},
                   {}};
}

} // namespace

void supplyHighPoint(Judge& judge)
{
    highPoints(judge, HoseRole::supply);
}

void returnHighPoint(Judge& judge)
{
    highPoints(judge, HoseRole::return_);
}

void returnDip(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        if (hose.role() == HoseRole::return_)
            for (const Dip& dip : hose.profile.dips)
                if (!dip.within)
                    reportReturnDip(judge, *hose, dip);
    });
}

void supplyDip(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        if (hose.role() == HoseRole::supply)
            for (const Dip& dip : hose.profile.dips)
                if (!dip.within)
                    reportSupplyDip(judge, *hose, dip);
    });
}

void supplyRises(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        if (hose.role() != HoseRole::supply || !route.from.connected || !route.to.connected)
            return;
        judge.about(refOf(*route.hose));
        restsOnEnds(judge, route);
        // The openings decide whether cold coolant can run down at all; the hose between the stops may climb
        // although the stubs make up for it.
        const double hose_rise_mm =
            judge.layout.plumb.height(route.to.stop) - judge.layout.plumb.height(route.from.stop);
        const std::optional<Verdict> by_openings =
            judge.verdictOn(hose.rise_mm, {std::nullopt, std::nullopt, judge.limits.stop});
        const std::optional<Verdict> by_hose =
            judge.verdictOn(hose_rise_mm, {judge.limits.advice, judge.limits.caution, std::nullopt});
        if (!by_openings && !by_hose)
            return;
        const Verdict found = by_openings ? *by_openings : *by_hose;
        const double measured_mm = by_openings ? hose.rise_mm : hose_rise_mm;
        Message text{
            "{a} climbs {0} on its way to the heater.", {{measured_mm, Unit::mm}}, {nameOfHose(*route.hose)}};
        if (by_openings)
            text.pattern = "{a} ends {0} above the supply port: cold coolant does not run up to the heater.";
        Finding& finding = judge.report(found.severity, refOf(*route.hose), text);
        finding.hose = hose.id();
        finding.along_mm = route.hose_to_mm;
        finding.at = route.to.stop;
        finding.measured = measured_mm;
        finding.limit = found.limit;
        finding.fix = {"Lower the heater by at least {0}, or take a lower supply port.",
                       {{enough(measured_mm), Unit::mm}},
                       {}};
    });
}

} // namespace siphonwright::judges
