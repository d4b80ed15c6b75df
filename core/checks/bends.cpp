#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/wording.h"

namespace siphonwright::judges {
namespace {

constexpr double reversal_rad = 3.14159265358979323846 - 0.001;
/// Own choice: so much off its stub's axis a hose takes up in its first few bores without kinking.
constexpr double taken_up_rad = 15 * 3.14159265358979323846 / 180;

/// Limits on the inside radius of one hose, mm: its own minimum, or the rule's in bores; half of it stops.
Limits insideLimits(const Judge& judge, const Route& route)
{
    const std::optional<double>& own_mm = route.hose->min_bend_radius_mm.value;
    if (own_mm)
        return {std::nullopt, *own_mm, *own_mm / 2};
    Limits limits = judge.limits;
    for (std::optional<double>* limit : {&limits.advice, &limits.caution, &limits.stop})
        if (*limit)
            *limit = **limit * route.bore_mm;
    return limits;
}

PartRef bendRef(const Route& route, std::size_t bend)
{
    const std::size_t point = route.bend_points[bend];
    return point == Route::no_point ? refOf(*route.hose)
                                    : PartRef{PartKind::hose_point, route.hose->id, point};
}

void place(Finding& finding, const Route& route, const Bend& bend)
{
    finding.hose = route.hose->id;
    finding.along_mm = bend.s;
    finding.at = route.path.line.at(bend.s);
}

/// The hose leaves its hose end off the stub's axis: where it bends there, no radius was asked for.
void reportKink(Judge& judge, const Route& route, std::size_t index)
{
    const Bend& bend = route.bends[index];
    if (bend.angle_rad <= taken_up_rad)
        return;
    constexpr double degrees = 180 / 3.14159265358979323846;
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    Finding& finding = judge.report(Severity::caution, refOf(*route.hose),
                                    {"{a} leaves its hose end at an angle of {0}: it would kink there.",
                                     {{bend.angle_rad * degrees, Unit::degree}},
                                     {nameOfHose(*route.hose)}});
    place(finding, route, bend);
    finding.unit = Unit::degree;
    finding.measured = bend.angle_rad * degrees;
    finding.limit = taken_up_rad * degrees;
    finding.fix = {"Lead the hose straight out of its end before it bends, or turn the elbow.", {}, {}};
}

void judgeRadius(Judge& judge, const Route& route, std::size_t index)
{
    const Bend& bend = route.bends[index];
    judge.about(bendRef(route, index));
    restsOnBore(judge, *route.hose);
    const double half_outside_mm = route.outsideDiameter() / 2;
    const double inside_mm = bend.radius_mm - half_outside_mm;
    const std::optional<Verdict> found = judge.verdictOn(inside_mm, insideLimits(judge, route));
    if (!found)
        return;
    const double least_mm = insideLimits(judge, route).caution.value_or(found->limit) + half_outside_mm;
    Finding& finding = judge.report(found->severity, bendRef(route, index),
                                    {"{a} bends to a radius of {0} at its centre; it needs {1}.",
                                     {{bend.radius_mm, Unit::mm}, {least_mm, Unit::mm}},
                                     {nameOfHose(*route.hose)}});
    place(finding, route, bend);
    finding.unit = Unit::mm;
    finding.measured = inside_mm;
    finding.limit = found->limit;
    finding.fix = {"Open the bend to {0} or more, or use a moulded elbow.", {{least_mm, Unit::mm}}, {}};
}

bool isTight(const Bend& bend)
{
    return !bend.fits && (bend.angle_rad > reversal_rad || bend.radius_mm < bend.asked_mm * (1 - 1e-6));
}

} // namespace

void bendTooTight(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        if (!route.bore_known)
            judge.notJudged(refOf(*route.hose), "the bore of " + nameOfHose(*route.hose) + " is not entered");
        const std::vector<Bend>& bends = route.bends;
        for (std::size_t i = 0; i < bends.size(); ++i) {
            if (route.bend_kinds[i] != BendKind::hose)
                continue;
            if (route.bend_points[i] == Route::no_point)
                reportKink(judge, route, i);
            else if (route.bore_known && !isTight(bends[i])) // one that does not fit is another rule's
                judgeRadius(judge, route, i);
        }
    });
}

void bendDoesNotFit(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        const std::vector<Bend>& bends = route.bends;
        for (std::size_t i = 0; i < bends.size(); ++i) {
            if (!isTight(bends[i]))
                continue;
            judge.about(bendRef(route, i));
            restsOnEnds(judge, route);
            Message text{"{a} has no room for a bend of radius {0}: only {1} fits between its neighbours.",
                         {{bends[i].asked_mm, Unit::mm}, {bends[i].radius_mm, Unit::mm}},
                         {nameOfHose(*route.hose)}};
            if (bends[i].angle_rad > reversal_rad)
                text = {"{a} turns straight back on itself.", {}, {nameOfHose(*route.hose)}};
            Finding& finding = judge.report(Severity::stop, bendRef(route, i), text);
            place(finding, route, bends[i]);
            finding.measured = bends[i].radius_mm;
            finding.limit = bends[i].asked_mm;
        }
    });
}

} // namespace siphonwright::judges
