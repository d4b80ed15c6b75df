#include "core/checks/judges.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

Finding& reportEnd(Judge& judge, const Route& route, std::size_t end, Message text)
{
    Finding& finding =
        judge.report(Severity::stop, {PartKind::hose_end, route.hose->id, end}, std::move(text));
    finding.hose = route.hose->id;
    finding.along_mm = end == 0 ? 0 : route.path.line.length();
    finding.at = end == 0 ? route.from.opening : route.to.opening;
    return finding;
}

/// What is wrong with where a connected end lies; nothing if it is right.
const char* wrongEnd(const Hose& hose, std::size_t index)
{
    const HoseEnd& end = index == 0 ? hose.from : hose.to;
    const bool engine_side = (hose.role == HoseRole::supply) == (index == 0);
    if (engine_side)
        return end.port.empty() ? "{a} has a heater at both ends: this end belongs on an engine port."
                                : nullptr;
    if (end.heater.empty())
        return "{a} has an engine port at both ends: this end belongs on the heater.";
    if (hose.role == HoseRole::supply && end.nozzle == NozzleKind::outlet)
        return "{a} ends on the heater's outlet: it belongs on the inlet.";
    if (hose.role == HoseRole::return_ && end.nozzle == NozzleKind::inlet)
        return "{a} starts at the heater's inlet: it belongs on the outlet.";
    return nullptr;
}

void judgeHose(Judge& judge, const Route& route)
{
    const std::vector<std::string> words = {nameOfHose(*route.hose)};
    if (!route.from.connected && !route.to.connected) {
        reportEnd(judge, route, 0, {"{a} is connected to nothing.", {}, words});
        return;
    }
    for (const std::size_t end : {std::size_t{0}, std::size_t{1}}) {
        const bool connected = end == 0 ? route.from.connected : route.to.connected;
        if (const char* problem = connected ? wrongEnd(*route.hose, end) : nullptr)
            reportEnd(judge, route, end, {problem, {}, words});
    }
}

/// A heater without a hose of one kind takes no part in any loop.
void judgeHeater(Judge& judge, const Heater& heater)
{
    const auto on_nozzle = [&](NozzleKind nozzle) {
        const auto on = [&](const HoseEnd& end) { return end.heater == heater.id && end.nozzle == nozzle; };
        return std::any_of(judge.sketch.hoses.begin(), judge.sketch.hoses.end(),
                           [&](const Shared<Hose>& hose) { return on(hose->from) || on(hose->to); });
    };
    const bool inlet = on_nozzle(NozzleKind::inlet);
    const bool outlet = on_nozzle(NozzleKind::outlet);
    if (inlet && outlet)
        return;
    Message text{"{a} has no hoses yet.", {}, {nameOfHeater(heater)}};
    if (inlet)
        text.pattern = "{a} has no hose on its outlet.";
    else if (outlet)
        text.pattern = "{a} has no hose on its inlet.";
    judge.report(Severity::stop, refOf(heater), text).at = heater.position;
}

} // namespace

void hoseLong(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        judge.about(refOf(*route.hose));
        const Vec3 across = route.to.stop - route.from.stop;
        const double direct_mm = std::abs(across.x) + std::abs(across.y) + std::abs(across.z);
        const std::optional<Verdict> found = judge.verdictOn(route.length_mm - direct_mm);
        if (!found)
            return;
        Finding& finding =
            judge.report(found->severity, refOf(*route.hose),
                         {"{a} is {0} long, {1} more than square from end to end.",
                          {{route.length_mm, Unit::mm}, {route.length_mm - direct_mm, Unit::mm}},
                          {nameOfHose(*route.hose)}});
        finding.hose = hose.id();
        finding.along_mm = (route.hose_from_mm + route.hose_to_mm) / 2;
        finding.at = route.path.line.at(*finding.along_mm);
        finding.measured = route.length_mm - direct_mm;
        finding.limit = found->limit;
        finding.fix = {"Take at least {0} out of it.",
                       {{enough(route.length_mm - direct_mm - found->limit), Unit::mm}},
                       {}};
    });
}

void hoseOpenEnd(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) {
        const Route& route = *hose;
        if (route.from.connected == route.to.connected)
            return; // sound, or on nothing at all
        const std::size_t end = route.from.connected ? 1 : 0;
        reportEnd(judge, route, end,
                  {end == 0 ? "{a} is open at its start." : "{a} is open at its end.",
                   {},
                   {nameOfHose(*route.hose)}});
    });
}

void hoseNotConnected(Judge& judge)
{
    judge.eachHose([&](const ResolvedHose& hose) { judgeHose(judge, *hose); });
    for (const Heater& heater : judge.sketch.heaters)
        judgeHeater(judge, heater);
}

} // namespace siphonwright::judges
