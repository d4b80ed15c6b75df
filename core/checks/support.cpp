#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/checks/spans.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

/// How hoses are held, and what they give when the engine moves.
namespace siphonwright::judges {
namespace {

constexpr double slack_bend_rad = std::numbers::pi / 4;
constexpr double touch_mm = 1e-6;

/// One finding for a hose: its longest span speaks for the others.
void judgeSpans(Judge& judge, const Route& route, const std::vector<HoseSpan>& spans)
{
    const HoseSpan* longest = nullptr;
    std::size_t over = 0;
    for (const HoseSpan& span : spans) {
        if (!judge.verdictOn(span.length()))
            continue;
        ++over;
        if (!longest || span.length() > longest->length())
            longest = &span;
    }
    const std::optional<Verdict> found =
        longest ? judge.verdictOn(longest->length()) : std::optional<Verdict>();
    if (!found)
        return;
    Message text{"{a} spans {0}, near level, without a clip.",
                 {{longest->length(), Unit::mm}},
                 {nameOfHose(*route.hose)}};
    if (over > 1) {
        text.pattern = "{a} has {1} long spans, near level, without a clip; the longest is {0}.";
        text.quantities.push_back({static_cast<double>(over), Unit::none});
    }
    Finding& finding = judge.report(found->severity, refOf(*route.hose), text);
    finding.hose = route.hose->id;
    finding.from_mm = longest->from_mm;
    finding.to_mm = longest->to_mm;
    finding.along_mm = (longest->from_mm + longest->to_mm) / 2;
    finding.at = route.path.line.at(*finding.along_mm);
    finding.measured = longest->length();
    finding.limit = found->limit;
    finding.fix = {
        "Put a clip at least every {0}.", {{judge.limits.advice.value_or(found->limit), Unit::mm}}, {}};
}

const Heater* heaterOn(const Sketch& sketch, const Hose& hose)
{
    const Heater* heater = sketch.heater(hose.from.heater);
    return heater ? heater : sketch.heater(hose.to.heater);
}

/// A bend in the hose itself that takes up what its ends move.
bool bendsEnough(const Route& route)
{
    for (std::size_t i = 0; i < route.bends.size(); ++i)
        if (route.bend_points[i] != Route::no_point && route.bends[i].angle_rad >= slack_bend_rad - 1e-9)
            return true;
    return false;
}

void judgeSlack(Judge& judge, const Route& route, const Heater& heater)
{
    const double straight_mm = distance(route.from.stop, route.to.stop);
    if (straight_mm <= touch_mm || bendsEnough(route))
        return;
    judge.about(refOf(*route.hose));
    restsOnEnds(judge, route);
    judge.restsOn(heater.mounting, refOf(heater), "what " + nameOfHeater(heater) + " is mounted to");
    const bool on_frame = heater.mounting.known() && *heater.mounting.value == Mounting::frame;
    if (heater.mounting.known() && !on_frame)
        return;
    const double slack = std::max(0.0, route.length_mm / straight_mm - 1);
    const std::optional<Verdict> found = judge.verdictOn(slack);
    if (!found)
        return;
    if (!on_frame) {
        judge.notJudged(refOf(*route.hose),
                        "it is not entered what " + nameOfHeater(heater) + " is mounted to");
        return;
    }
    Finding& finding = judge.report(found->severity, refOf(*route.hose),
                                    {"{a}, from frame to engine, is only {0} longer than straight and has no "
                                     "bend: the engine pulls at its ends.",
                                     {{slack * straight_mm, Unit::mm}},
                                     {nameOfHose(*route.hose)}});
    finding.hose = route.hose->id;
    finding.along_mm = (route.hose_from_mm + route.hose_to_mm) / 2;
    finding.at = route.path.line.at(*finding.along_mm);
    finding.measured = slack;
    finding.limit = found->limit;
    finding.fix = {"Make it at least {0} longer, or lead it round a bend of {1}.",
                   {{enough((found->limit - slack) * straight_mm), Unit::mm}, {45, Unit::degree}},
                   {}};
}

} // namespace

void unsupportedSpan(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        judge.about(refOf(*hose->hose));
        restsOnEnds(judge, *hose);
        judgeSpans(judge, *hose, spansNearLevel(*hose, judge.layout.plumb));
    });
}

void noSlack(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Hose& drawn = *hose->hose;
        const Heater* heater = heaterOn(judge.sketch, drawn);
        if (heater && (judge.sketch.port(drawn.from.port) || judge.sketch.port(drawn.to.port)))
            judgeSlack(judge, *hose, *heater);
    });
}

} // namespace siphonwright::judges
