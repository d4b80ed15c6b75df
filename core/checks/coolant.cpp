#include "core/physics/coolant.h"

#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/sketch/sketch.h"

namespace siphonwright::judges {
namespace {

/// There is something to judge the coolant for.
bool begun(const Sketch& sketch)
{
    return !sketch.heaters.empty() || !sketch.hoses.empty();
}

/// The coolant's freezing point, or a note on the fact that it lacks.
std::optional<double> freezingPointOf(Judge& judge)
{
    const Coolant& coolant = judge.sketch.coolant;
    if (coolant.glycol == Glycol::none)
        return 0.0;
    if (coolant.glycol == Glycol::unknown) {
        judge.notJudged({}, "the kind of antifreeze is not entered");
        return std::nullopt;
    }
    if (!coolant.volume_percent.known()) {
        judge.notJudged({}, "the share of antifreeze in the coolant is not entered");
        return std::nullopt;
    }
    const CoolantBase kind =
        coolant.glycol == Glycol::ethylene ? CoolantBase::ethylene_glycol : CoolantBase::propylene_glycol;
    const std::optional<double> point = freezingPoint(kind, *coolant.volume_percent.value);
    if (!point)
        judge.notJudged({}, "freezing points are known only up to 60 % of antifreeze");
    return point;
}

} // namespace

void antifreezeOver60(Judge& judge)
{
    const Coolant& coolant = judge.sketch.coolant;
    if (!begun(judge.sketch) || coolant.glycol == Glycol::none)
        return;
    if (!coolant.volume_percent.known()) {
        judge.notJudged({}, "the share of antifreeze in the coolant is not entered");
        return;
    }
    judge.restsOn(coolant.volume_percent, {}, "the share of antifreeze in the coolant");
    const std::optional<Verdict> found = judge.verdictOn(*coolant.volume_percent.value);
    if (!found)
        return;
    Finding& finding = judge.report(
        found->severity, {},
        {"The coolant holds {0} of antifreeze by volume; more than {1} carries heat worse and protects less.",
         {{*coolant.volume_percent.value, Unit::percent}, {found->limit, Unit::percent}},
         {}});
    finding.measured = coolant.volume_percent.value;
    finding.limit = found->limit;
    finding.fix = {"Drain some and top up with water to {0} or less.", {{found->limit, Unit::percent}}, {}};
}

void freezeMargin(Judge& judge)
{
    if (!begun(judge.sketch))
        return;
    const std::optional<double> freezing_degC = freezingPointOf(judge);
    const Fact<double>& coldest_degC = judge.sketch.site.coldest_ambient_degC;
    if (!coldest_degC.known())
        judge.notJudged({}, "the coldest ambient temperature is not entered");
    if (!freezing_degC || !coldest_degC.known())
        return;
    judge.restsOn(judge.sketch.coolant.volume_percent, {}, "the share of antifreeze in the coolant");
    judge.restsOn(coldest_degC, {}, "the coldest ambient temperature");
    const double margin_K = *coldest_degC.value - *freezing_degC;
    const std::optional<Verdict> found = judge.verdictOn(margin_K);
    if (!found)
        return;
    Finding& finding = judge.report(found->severity, {},
                                    {"The coolant freezes at {0}, and it gets as cold as {1}.",
                                     {{*freezing_degC, Unit::degC}, {*coldest_degC.value, Unit::degC}},
                                     {}});
    finding.measured = margin_K;
    finding.limit = found->limit;
    finding.fix = {
        "Mix the coolant to freeze at {0} or below.", {{*coldest_degC.value - found->limit, Unit::degC}}, {}};
}

void antifreezeKindUnknown(Judge& judge)
{
    const Coolant& coolant = judge.sketch.coolant;
    if (!begun(judge.sketch) || coolant.glycol == Glycol::none)
        return;
    if (coolant.glycol == Glycol::unknown)
        judge.report(Severity::advice, {}, {"The kind of antifreeze in the engine is not known.", {}, {}});
    else if (!coolant.colour.empty() && coolant.technology.empty())
        judge.report(Severity::advice, {},
                     {"Of the antifreeze only the colour is entered ({a}), which does not tell its kind.",
                      {},
                      {coolant.colour}});
}

} // namespace siphonwright::judges
