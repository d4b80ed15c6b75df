#include "core/checks/clearance.h"

#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/geometry/prism.h"
#include "core/layout/wording.h"
#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>
#include <limits>

/// What hoses and heaters keep clear of: the ground, and what is hot or moving.
namespace siphonwright::judges {
namespace {

double outsideRadius(const Route& route)
{
    return route.outsideDiameter() / 2 + route.hose->insulation_mm;
}

struct Lowest {
    double along_mm = 0;
    double height_mm = std::numeric_limits<double>::infinity();
};

/// The lowest point of a hose's outside, along plumb. It is where the centreline turns or a piece ends.
Lowest lowestOutside(const Route& route, const Plumb& plumb)
{
    Lowest out;
    const auto look = [&](const Piece& piece, double s) {
        if (s < route.hose_from_mm || s > route.hose_to_mm)
            return;
        const double steep = plumb.height(piece.tangent(s - piece.s));
        const double below_mm = outsideRadius(route) * std::sqrt(std::max(0.0, 1 - steep * steep));
        const double height_mm = plumb.height(piece.at(s - piece.s)) - below_mm;
        if (height_mm < out.height_mm)
            out = {s, height_mm};
    };
    for (const Piece& piece : route.path.line.pieces()) {
        const double end_mm = piece.s + piece.length_mm;
        look(piece, std::max(piece.s, route.hose_from_mm));
        look(piece, std::min(end_mm, route.hose_to_mm));
        if (piece.radius_mm <= 0)
            continue;
        // Level where u cos a + n sin a is; a hollow where the arc's middle lies over it.
        const double hollow = std::atan2(-plumb.height(piece.u), plumb.height(piece.n));
        if (hollow > 0 && piece.s + hollow * piece.radius_mm < end_mm)
            look(piece, piece.s + hollow * piece.radius_mm);
    }
    return out;
}

Finding* judgeOverGround(Judge& judge, double over_mm, const PartRef& part, const std::string& name)
{
    const std::optional<Verdict> found = judge.verdictOn(over_mm);
    if (!found)
        return nullptr;
    Finding& finding = judge.report(found->severity, part,
                                    {over_mm < 0 ? "{a} reaches {0} under the ground at lowest ride height."
                                                 : "{a} is only {0} over the ground at lowest ride height.",
                                     {{std::abs(over_mm), Unit::mm}},
                                     {name}});
    finding.measured = over_mm;
    finding.limit = found->limit;
    finding.fix = {"Raise it by at least {0}.", {{enough(found->limit - over_mm), Unit::mm}}, {}};
    return &finding;
}

bool depthKnown(const Area& area)
{
    return area.y_from_mm && area.y_to_mm;
}

Prism prismOf(const Area& area)
{
    constexpr double all = std::numeric_limits<double>::infinity();
    if (!depthKnown(area))
        return {area.outline, -all, all};
    return {area.outline, std::min(*area.y_from_mm, *area.y_to_mm), std::max(*area.y_from_mm, *area.y_to_mm)};
}

Limits limitsFor(const Judge& judge, const Area& area)
{
    const double clearance_mm = clearanceOf(area, judge.limits);
    if (!depthKnown(area))
        return {clearance_mm, std::nullopt, std::nullopt};
    return {judge.limits.advice, clearance_mm, judge.limits.stop};
}

Message sentence(const std::string& name, const Area& area, double away_mm, bool touches)
{
    Message text{"{a} is only {0} from {b}.", {{away_mm, Unit::mm}}, {name, nameOfArea(area)}};
    if (touches)
        text = {"{a} touches {b}.", {}, text.words};
    if (!depthKnown(area))
        text.pattern = touches
                           ? "{a} crosses {b} in the side view; how deep that lies is not entered."
                           : "{a} is only {0} from {b} in the side view; how deep that lies is not entered.";
    return text;
}

Finding* judgeAway(Judge& judge, double away_mm, const Area& area, const PartRef& part,
                   const std::string& name)
{
    constexpr double touching_mm = 1e-6;
    const bool touches = away_mm <= touching_mm;
    const double measured_mm = touches ? 0 : away_mm;
    const Limits limits = limitsFor(judge, area);
    std::optional<Verdict> found = judge.verdictOn(measured_mm, limits);
    if (touches && depthKnown(area))
        found = Verdict{Severity::stop, 0};
    if (!found)
        return nullptr;
    Finding& finding = judge.report(found->severity, part, sentence(name, area, measured_mm, touches));
    const double clearance_mm = limits.caution.value_or(limits.advice.value_or(0));
    const double to_move_mm = enough(std::max(clearance_mm, found->limit) - away_mm);
    finding.measured = measured_mm;
    finding.limit = found->limit;
    finding.fix = {"Move it at least {0} away.", {{to_move_mm, Unit::mm}}, {}};
    if (!depthKnown(area))
        finding.fix = {"Enter how deep {a} lies, or move it at least {0} away.",
                       {{to_move_mm, Unit::mm}},
                       {nameOfArea(area)}};
    return &finding;
}

void keepHoseClear(Judge& judge, const Route& route)
{
    if (route.path.line.empty())
        return;
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    restsOnBore(judge, *route.hose);
    for (const Shared<Area>& area : judge.sketch.areas) {
        if (area->outline.empty())
            continue;
        const Approach nearest =
            approach(route.path.line, route.hose_from_mm, route.hose_to_mm, prismOf(*area));
        if (!std::isfinite(nearest.distance_mm))
            continue;
        Finding* finding = judgeAway(judge, nearest.distance_mm - outsideRadius(route), *area,
                                     refOf(*route.hose), nameOfHose(*route.hose));
        if (!finding)
            continue;
        finding->hose = route.hose->id;
        finding->along_mm = nearest.along_mm;
        finding->at = route.path.line.at(nearest.along_mm);
    }
}

void keepHeaterClear(Judge& judge, const Heater& heater)
{
    judge.about(refOf(heater));
    restsOnPlace(judge, heater);
    const RoundBody body{heaterPoint(heater, {0, 0, -heater.length_mm / 2}),
                         heaterPoint(heater, {0, 0, heater.length_mm / 2}), heater.diameter_mm / 2};
    for (const Shared<Area>& area : judge.sketch.areas) {
        if (area->outline.empty())
            continue;
        if (Finding* finding =
                judgeAway(judge, distance(body, prismOf(*area)), *area, refOf(heater), nameOfHeater(heater)))
            finding->at = heater.position;
    }
}

} // namespace

void groundClearance(Judge& judge)
{
    if (judge.layout.hoses.empty() && judge.sketch.heaters.empty())
        return;
    if (!judge.sketch.ground_z_mm) {
        judge.notJudged({}, "the ground at lowest ride height is not entered");
        return;
    }
    const Plumb& plumb = judge.layout.plumb;
    const double ground_mm = plumb.height({0, 0, *judge.sketch.ground_z_mm});
    judge.eachHose([&](const ResolvedHose& hose) {
        const Lowest lowest = lowestOutside(*hose, plumb);
        if (!std::isfinite(lowest.height_mm))
            return;
        judge.about(refOf(*hose->hose));
        restsOnEnds(judge, *hose);
        restsOnBore(judge, *hose->hose);
        Finding* finding =
            judgeOverGround(judge, lowest.height_mm - ground_mm, refOf(*hose->hose), nameOfHose(*hose->hose));
        if (!finding)
            return;
        finding->hose = hose.id();
        finding->along_mm = lowest.along_mm;
        finding->at = hose->path.line.at(lowest.along_mm);
    });
    for (std::size_t i = 0; i < judge.sketch.heaters.size(); ++i) {
        const Heater& heater = judge.sketch.heaters[i];
        judge.about(refOf(heater));
        restsOnPlace(judge, heater);
        if (Finding* finding = judgeOverGround(judge, judge.layout.heaters[i].body_bottom_mm - ground_mm,
                                               refOf(heater), nameOfHeater(heater)))
            finding->at = heater.position;
    }
}

void keepClear(Judge& judge)
{
    if (judge.sketch.areas.empty())
        return;
    judge.eachHose([&](const ResolvedHose& hose) { keepHoseClear(judge, *hose); });
    for (const Heater& heater : judge.sketch.heaters)
        keepHeaterClear(judge, heater);
}

} // namespace siphonwright::judges

namespace siphonwright {

double usualClearance(Hazard what)
{
    switch (what) {
    case Hazard::exhaust:
    case Hazard::turbo:
        return 150;
    case Hazard::heat_shield:
        return 75;
    case Hazard::belt:
    case Hazard::fan:
    case Hazard::shaft:
    case Hazard::steering:
    case Hazard::suspension:
    case Hazard::other:
        break;
    }
    return 50;
}

double clearanceOf(const Area& area, const Limits& keep_clear)
{
    return area.clearance_mm.value_or(keep_clear.caution.value_or(usualClearance(area.what)));
}

} // namespace siphonwright
