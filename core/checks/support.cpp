#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

/// How hoses are held, and what they give when the engine moves.
namespace siphonwright::judges {
namespace {

constexpr double near_level = 0.5; ///< sine of 30 degrees, from which on a hose hangs more than it spans
constexpr double slack_bend_rad = std::numbers::pi / 4;
constexpr double touch_mm = 1e-6;

struct Stretch {
    double from_mm = 0; ///< along the path
    double to_mm = 0;
};

/// Where an arc passes 30 degrees, as distances along it: its steepness is the cosine of the way from its
/// steepest place, C cos(a - phase).
void addCrossings(const Piece& piece, const Vec3& up, std::vector<double>& places_mm)
{
    const double along = dot(piece.u, up);
    const double inwards = dot(piece.n, up);
    const double steepest = std::hypot(along, inwards);
    if (steepest <= near_level)
        return;
    const double phase = std::atan2(inwards, along);
    for (const double limit : {near_level, -near_level})
        for (const double side : {1.0, -1.0})
            for (const double turn : {0.0, 2 * std::numbers::pi}) {
                const double angle = phase + side * std::acos(limit / steepest) + turn;
                const double at_mm = angle * piece.radius_mm;
                if (at_mm > 0 && at_mm < piece.length_mm)
                    places_mm.push_back(at_mm);
            }
}

/// Stretches of the hose itself within 30 degrees of level.
std::vector<Stretch> nearLevel(const Route& route, const Plumb& plumb)
{
    std::vector<Stretch> out;
    for (const Piece& piece : route.path.line.pieces()) {
        std::vector<double> places_mm = {0, piece.length_mm};
        if (piece.radius_mm > 0)
            addCrossings(piece, plumb.up(), places_mm);
        std::sort(places_mm.begin(), places_mm.end());
        for (std::size_t i = 1; i < places_mm.size(); ++i) {
            const double middle_mm = (places_mm[i - 1] + places_mm[i]) / 2;
            if (std::abs(plumb.height(piece.tangent(middle_mm))) > near_level + 1e-9)
                continue;
            const double from_mm = std::max(piece.s + places_mm[i - 1], route.hose_from_mm);
            const double to_mm = std::min(piece.s + places_mm[i], route.hose_to_mm);
            if (to_mm <= from_mm)
                continue;
            if (!out.empty() && from_mm - out.back().to_mm < touch_mm)
                out.back().to_mm = to_mm;
            else
                out.push_back({from_mm, to_mm});
        }
    }
    return out;
}

/// Cuts a stretch at its clips.
void addSpans(const Stretch& stretch, const Route& route, std::vector<Stretch>& spans)
{
    std::vector<double> ends_mm = {stretch.from_mm, stretch.to_mm};
    for (const double clip_mm : route.hose->clips_mm) {
        const double at_mm = route.hose_from_mm + clip_mm;
        if (at_mm > stretch.from_mm && at_mm < stretch.to_mm)
            ends_mm.push_back(at_mm);
    }
    std::sort(ends_mm.begin(), ends_mm.end());
    for (std::size_t i = 1; i < ends_mm.size(); ++i)
        spans.push_back({ends_mm[i - 1], ends_mm[i]});
}

/// One finding for a hose: its longest span speaks for the others.
void judgeSpans(Judge& judge, const Route& route, const std::vector<Stretch>& spans)
{
    const auto lengthOf = [](const Stretch& span) { return span.to_mm - span.from_mm; };
    const Stretch* longest = nullptr;
    std::size_t over = 0;
    for (const Stretch& span : spans) {
        if (!judge.verdictOn(lengthOf(span)))
            continue;
        ++over;
        if (!longest || lengthOf(span) > lengthOf(*longest))
            longest = &span;
    }
    const std::optional<Verdict> found =
        longest ? judge.verdictOn(lengthOf(*longest)) : std::optional<Verdict>();
    if (!found)
        return;
    Message text{"{a} spans {0}, near level, without a clip.",
                 {{lengthOf(*longest), Unit::mm}},
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
    finding.measured = lengthOf(*longest);
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
    for (const ResolvedHose& hose : judge.layout.hoses) {
        judge.about(refOf(*hose->hose));
        restsOnEnds(judge, *hose);
        std::vector<Stretch> spans;
        for (const Stretch& stretch : nearLevel(*hose, judge.layout.plumb))
            addSpans(stretch, *hose, spans);
        judgeSpans(judge, *hose, spans);
    }
}

void noSlack(Judge& judge)
{
    for (const ResolvedHose& hose : judge.layout.hoses) {
        const Hose& drawn = *hose->hose;
        const Heater* heater = heaterOn(judge.sketch, drawn);
        if (heater && (judge.sketch.port(drawn.from.port) || judge.sketch.port(drawn.to.port)))
            judgeSlack(judge, *hose, *heater);
    }
}

} // namespace siphonwright::judges
