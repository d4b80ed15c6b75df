#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/heater_loop.h"
#include "core/layout/wording.h"
#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

/// How a heater stands on the vehicle as it stands: against plumb, not against the paper.
Orientation standing(const Heater& heater, const Plumb& plumb)
{
    constexpr double degrees = 180 / 3.14159265358979323846;
    const Vec3 axis = heaterPoint(heater, {0, 0, 1}) - heaterPoint(heater, {});
    const double from_upright_deg = std::acos(std::clamp(dot(axis, plumb.up()), -1.0, 1.0)) * degrees;
    constexpr double near_deg = 5 + 1e-6;
    if (from_upright_deg <= near_deg)
        return Orientation::vertical;
    if (std::abs(from_upright_deg - 90) <= near_deg)
        return Orientation::horizontal;
    return from_upright_deg < 90 ? Orientation::inclined : Orientation::inverted;
}

bool allowed(const AllowedPositions& positions, Orientation orientation)
{
    switch (orientation) {
    case Orientation::vertical:
        return positions.vertical;
    case Orientation::horizontal:
        return positions.horizontal;
    case Orientation::inclined:
        return positions.inclined;
    case Orientation::inverted:
        return false;
    }
    return false;
}

const char* standingText(Orientation orientation)
{
    switch (orientation) {
    case Orientation::vertical:
        return "{a} stands upright, which its manual does not allow.";
    case Orientation::horizontal:
        return "{a} lies level, which its manual does not allow.";
    case Orientation::inclined:
        return "{a} is inclined, which its manual does not allow.";
    case Orientation::inverted:
        break;
    }
    return "{a} hangs upside down, which no heater allows.";
}

void reportUnderReturn(Judge& judge, const HeaterLoop& loop)
{
    judge.about(refOf(*loop.heater));
    restsOnPlace(judge, *loop.heater);
    restsOnPlace(judge, *loop.return_port);
    const Vec3 outlet = nozzleOpening(*loop.heater, NozzleKind::outlet).at;
    const Vec3 away = loop.return_port->position - outlet;
    const double rise_mm = judge.layout.plumb.height(away);
    const double aside_mm = length(away - judge.layout.plumb.up() * rise_mm);
    constexpr double level_mm = 1e-6;
    const std::vector<std::string> words = {nameOfHeater(*loop.heater), nameOfPort(*loop.return_port)};
    if (rise_mm <= level_mm) {
        Finding& finding = judge.report(Severity::caution, refOf(*loop.heater),
                                        {"{a} has its outlet {0} above {b}: warm coolant would have to sink.",
                                         {{-std::min(rise_mm, 0.0), Unit::mm}},
                                         words});
        finding.at = loop.heater->position;
        return;
    }
    const std::optional<Verdict> found = judge.verdictOn(aside_mm / rise_mm);
    if (!found)
        return;
    Finding& finding = judge.report(found->severity, refOf(*loop.heater),
                                    {"{a} is {0} to the side of {b} and only {1} below it.",
                                     {{aside_mm, Unit::mm}, {rise_mm, Unit::mm}},
                                     words});
    finding.measured = aside_mm / rise_mm;
    finding.limit = found->limit;
    finding.at = loop.heater->position;
    const double to_move_mm = aside_mm - judge.limits.advice.value_or(found->limit) * rise_mm;
    finding.fix = {"Move the heater at least {0} towards {a}.", {{enough(to_move_mm), Unit::mm}}, {words[1]}};
}

} // namespace

void heaterDrop(Judge& judge)
{
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout)) {
        if (!judge.layout.jacket) {
            if (judge.sketch.engine)
                judge.notJudged(refOf(*loop.heater), "the outline of the water jacket is not entered");
            continue;
        }
        judge.about(refOf(*loop.heater));
        restsOnJacket(judge);
        restsOnPlace(judge, *loop.heater);
        Limits limits = judge.limits;
        if (loop.heater->manual_min_drop_mm.known())
            limits = {std::nullopt, loop.heater->manual_min_drop_mm.value, std::nullopt};
        const double drop_mm = judge.layout.jacket->lowest_mm - loop.heights->body_top_mm;
        const std::optional<Verdict> found = judge.verdictOn(drop_mm, limits);
        if (!found)
            continue;
        Message text{"{a} has its top only {0} below the lowest point of the water jacket.",
                     {{std::abs(drop_mm), Unit::mm}},
                     {nameOfHeater(*loop.heater)}};
        if (drop_mm < 0)
            text.pattern = "{a} has its top {0} above the lowest point of the water jacket.";
        Finding& finding = judge.report(found->severity, refOf(*loop.heater), text);
        finding.measured = drop_mm;
        finding.limit = found->limit;
        finding.at = loop.heater->position;
        finding.fix = {"Lower the heater by at least {0}.", {{enough(found->limit - drop_mm), Unit::mm}}, {}};
    }
}

void heaterUnderReturn(Judge& judge)
{
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout))
        if (loop.return_port)
            reportUnderReturn(judge, loop);
}

void heaterChamberTrapsAir(Judge& judge)
{
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout)) {
        const Heater& heater = *loop.heater;
        const HeaterHeights& heights = *loop.heights;
        const Opening outlet = nozzleOpening(heater, NozzleKind::outlet);
        const bool crown_needs_bore = std::abs(dot(outlet.axis, judge.layout.plumb.up())) < 1 - 1e-9;
        if (!heater.outlet.bore_mm.known() && crown_needs_bore) {
            judge.notJudged(refOf(heater),
                            "the bore of the outlet of " + nameOfHeater(heater) + " is not entered");
            continue;
        }
        judge.about(refOf(heater));
        judge.restsOn(heater.outlet.bore_mm, refOf(heater),
                      "the bore of the outlet of " + nameOfHeater(heater));
        judge.restsOn(heater.element_top_mm, refOf(heater),
                      "the top of the element of " + nameOfHeater(heater));
        const double over_mm = heights.chamber_top_mm - heights.outlet_crown_mm;
        const std::optional<Verdict> found = judge.verdictOn(over_mm);
        if (!found)
            continue;
        const bool bared = heights.element_top_mm && *heights.element_top_mm > heights.outlet_crown_mm + 1e-6;
        Message text{"{a} has a chamber that reaches {0} above its outlet: {1} of air stays in it.",
                     {{over_mm, Unit::mm}, {heights.over_crown_ml, Unit::ml}},
                     {nameOfHeater(heater)}};
        if (bared)
            text.pattern =
                "{a} has a chamber that reaches {0} above its outlet: {1} of air bares the element.";
        Finding& finding = judge.report(bared ? Severity::stop : found->severity, refOf(heater), text);
        finding.measured = over_mm;
        finding.limit = found->limit;
        finding.at = outlet.at;
    }
}

void heaterPosition(Judge& judge)
{
    for (const Heater& heater : judge.sketch.heaters) {
        const Orientation orientation = standing(heater, judge.layout.plumb);
        const bool known = heater.allowed_positions.known();
        judge.about(refOf(heater));
        judge.restsOn(heater.allowed_positions, refOf(heater),
                      "the positions that the manual of " + nameOfHeater(heater) + " allows");
        if (!known && orientation != Orientation::inverted) {
            judge.notJudged(refOf(heater), "the positions that the manual of " + nameOfHeater(heater) +
                                               " allows are not entered");
            continue;
        }
        if (known && allowed(*heater.allowed_positions.value, orientation))
            continue;
        judge.report(Severity::stop, refOf(heater), {standingText(orientation), {}, {nameOfHeater(heater)}})
            .at = heater.position;
    }
}

void mountedOnEngine(Judge& judge)
{
    for (const Heater& heater : judge.sketch.heaters) {
        judge.about(refOf(heater));
        judge.restsOn(heater.mounting, refOf(heater), "what " + nameOfHeater(heater) + " is mounted to");
        if (!heater.mounting.known()) {
            judge.notJudged(refOf(heater),
                            "it is not entered what " + nameOfHeater(heater) + " is mounted to");
        } else if (*heater.mounting.value == Mounting::engine) {
            judge
                .report(Severity::caution, refOf(heater),
                        {"{a} is mounted to the engine.", {}, {nameOfHeater(heater)}})
                .at = heater.position;
        }
    }
}

} // namespace siphonwright::judges
