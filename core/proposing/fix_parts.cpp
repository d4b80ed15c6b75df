#include "core/layout/wording.h"
#include "core/proposing/cures.h"
#include "core/proposing/lay.h"
#include "core/sketch/find.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <cmath>

/// Cures by what is fitted into a hose, and by its bore.
namespace siphonwright {
namespace {

PartRef hoseRef(const Id& hose)
{
    return {PartKind::hose, hose, 0};
}

/// A valve at the port whose end the finding lies at.
CureChange valveAdded(const CureCase& of, const ResolvedHose& hose)
{
    const bool at_start = of.finding.along_mm.value_or(0) <= hose->path.line.length() / 2;
    const HoseEnd end = at_start ? hose->hose->from : hose->hose->to;
    const double stub_mm = at_start ? hose->hose_from_mm : hose->path.line.length() - hose->hose_to_mm;
    const double length_mm = hose->length_mm;
    return [=, id = hose.id()](Sketch& sketch, double from_port_mm, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, id);
        const Port* port = sketch.port(end.port);
        const double off_mm = from_port_mm - stub_mm; // from the hose's own end
        if (!shared || !port || off_mm < 0 || off_mm > length_mm)
            return false;
        InlinePart valve;
        valve.along_mm = std::round(at_start ? off_mm : length_mm - off_mm);
        valve.bore_mm = end.bore_mm;
        shared->edit([&](Hose& changed) { changed.parts.push_back(valve); });
        words = {"Add an isolation valve to {a} {0} from {b}.",
                 {{from_port_mm, Unit::mm}},
                 {nameOfHose(**shared), nameOfPort(*port)}};
        return true;
    };
}

CureChange opened(const PartRef& part)
{
    return [=](Sketch& sketch, double, Message& words) {
        if (Port* port = byId(sketch.ports, part.id)) {
            port->cabin_line_open = true;
            words = {"Open the shut-off of {a}.", {}, {nameOfPort(*port)}};
            return true;
        }
        Shared<Hose>* shared = byId(sketch.hoses, part.id);
        if (!shared || part.index >= (*shared)->parts.size())
            return false;
        shared->edit([&](Hose& changed) { changed.parts[part.index].open = true; });
        words = {"Let the heater cool, then open this valve of {a}.", {}, {nameOfHose(**shared)}};
        return true;
    };
}

CureChange takenOut(const PartRef& part)
{
    return [=](Sketch& sketch, double, Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, part.id);
        if (!shared || part.index >= (*shared)->parts.size())
            return false;
        const bool reducer = (*shared)->parts[part.index].kind == InlineKind::reducer;
        shared->edit([&](Hose& changed) {
            changed.parts.erase(changed.parts.begin() + static_cast<std::ptrdiff_t>(part.index));
        });
        words = {reducer ? "Take the reducer out of {a}." : "Take the check valve out of {a}.",
                 {},
                 {nameOfHose(**shared)}};
        return true;
    };
}

/// The clips that one span needs, evenly; once more as long as another span is too long.
CureChange clipped(const CureCase& of, const Id& hose)
{
    return [=, stop = of.stop](Sketch& sketch, double, Message& words) {
        std::vector<double> added;
        constexpr int most_spans = 40;
        for (int i = 0; i < most_spans && !stop.stop_requested(); ++i) {
            const Analysis now = analyse(sketch);
            const auto span =
                std::find_if(now.findings.begin(), now.findings.end(), [&](const Finding& finding) {
                    return finding.rule == "unsupported-span" && finding.hose == hose;
                });
            Shared<Hose>* shared = byId(sketch.hoses, hose);
            const ResolvedHose* resolved = now.layout.hose(hose);
            if (span == now.findings.end() || !shared || !resolved || !span->from_mm || !span->to_mm)
                break;
            const double length_mm = *span->to_mm - *span->from_mm;
            const int spans = static_cast<int>(std::ceil(length_mm / clip_spacing_mm));
            for (int k = 1; k < std::max(2, spans); ++k)
                added.push_back(std::round(*span->from_mm + length_mm * k / std::max(2, spans) -
                                           (*resolved)->hose_from_mm));
            shared->edit([&](Hose& changed) {
                changed.clips_mm = sketch.hose(hose)->clips_mm;
                changed.clips_mm.insert(changed.clips_mm.end(), added.end() - (std::max(2, spans) - 1),
                                        added.end());
                std::sort(changed.clips_mm.begin(), changed.clips_mm.end());
            });
        }
        if (added.empty())
            return false;
        words = {"Add a clip to {a} at {0} from where it starts.",
                 {{added.front(), Unit::mm}},
                 {nameOfHose(*sketch.hose(hose))}};
        if (added.size() > 1) {
            words.pattern = "Add {1} clips to {a}, the first at {0} from where it starts.";
            words.quantities.push_back({static_cast<double>(added.size()), Unit::none});
        }
        return true;
    };
}

/// Stock bores over (or under) one, nearest first.
std::vector<double> stockBores(double bore_mm, bool larger)
{
    constexpr double same_mm = 0.3;
    std::vector<double> out;
    for (const HoseSize& size : hoseSizes())
        if (larger ? size.bore_mm > bore_mm + same_mm : size.bore_mm < bore_mm - same_mm)
            out.push_back(size.bore_mm);
    if (!larger)
        std::reverse(out.begin(), out.end());
    return out;
}

void widenBends(const Sketch& sketch, Hose& hose)
{
    const double least_mm = leastRadius(sketch, hose);
    for (RoutePoint& point : hose.points)
        if (point.bend == BendKind::hose)
            point.radius_mm = std::max(point.radius_mm, least_mm);
}

/// These hoses on another bore, ends and parts in proportion, their bends opened where the larger hose needs
/// it.
CureChange onStockBore(const CureCase& of, const std::vector<Id>& hoses, bool anew)
{
    return [=, stop = of.stop](Sketch& sketch, double bore_mm, Message& words) {
        for (const Id& id : hoses) {
            Shared<Hose>* shared = byId(sketch.hoses, id);
            if (!shared)
                return false;
            shared->edit([&](Hose& hose) {
                putOnBore(hose, bore_mm);
                widenBends(sketch, hose);
            });
            if (anew && !layAnew(sketch, id, Ways::short_list, stop))
                return false;
        }
        words = {"Use hose of {0} bore for {a}, with hose ends and valves to match",
                 {{bore_mm, Unit::mm}},
                 {nameOfHose(*sketch.hose(hoses.front()))}};
        if (hoses.size() > 1)
            words = {"Use hose of {0} bore on both sides, with hose ends and valves to match",
                     {{bore_mm, Unit::mm}},
                     {}};
        words.pattern += anew ? ", and lay it anew with wider bends." : ".";
        return true;
    };
}

/// The hose end or in-line part that a finding names, with a bore in keeping with its hose.
CureChange widened(const CureCase& of, const ResolvedHose& hose)
{
    return [part = of.finding.part, id = hose.id(), bore_mm = hose->bore_mm](Sketch& sketch, double share,
                                                                             Message& words) {
        Shared<Hose>* shared = byId(sketch.hoses, id);
        const bool end = part.kind == PartKind::hose_end && part.index < 2;
        const bool fitted =
            part.kind == PartKind::inline_part && shared && part.index < (*shared)->parts.size();
        if (!shared || (!end && !fitted))
            return false;
        const double wide_mm = bore_mm * share;
        shared->edit([&](Hose& changed) {
            double& own_mm = end ? (part.index == 0 ? changed.from : changed.to).bore_mm
                                 : changed.parts[part.index].bore_mm;
            own_mm = std::max(own_mm, wide_mm);
        });
        words = {end ? "Use a hose end with a bore of {0} on {a}."
                     : "Use a part with a bore of {0} in {a} here.",
                 {{wide_mm, Unit::mm}},
                 {nameOfHose(**shared)}};
        return true;
    };
}

std::vector<Id> hosesOf(const Sketch& sketch, const Id& heater)
{
    std::vector<Id> out;
    for (const Shared<Hose>& hose : sketch.hoses)
        if ((hose->from.heater == heater || hose->to.heater == heater) && hose->bore_mm.known())
            out.push_back(hose->id);
    return out;
}

void addBoreCures(const CureCase& of, std::vector<Cure>& cures)
{
    const std::string& rule = of.finding.rule;
    const ResolvedHose* hose = of.hose();
    if (rule == "bore-under-manual" && hose) {
        for (std::size_t i = 0; i < (*hose)->hose->parts.size(); ++i)
            if ((*hose)->hose->parts[i].kind == InlineKind::reducer)
                addCure(cures, {PartKind::inline_part, hose->id(), i},
                        takenOut({PartKind::inline_part, hose->id(), i}), {0});
        for (const bool anew : {false, true})
            addCure(cures, hoseRef(hose->id()), onStockBore(of, {hose->id()}, anew),
                    stockBores((*hose)->bore_mm, true));
    }
    if (isOneOf(rule, {"bore-restriction", "part-takes-loss"}) && hose) {
        addCure(cures, of.finding.part, widened(of, *hose), {end_bore_share, 0.9, 1.0});
        if (rule == "bore-restriction")
            addCure(cures, hoseRef(hose->id()), onStockBore(of, {hose->id()}, false),
                    stockBores((*hose)->bore_mm, false));
    }
    const Heater* heater = of.heater();
    if (heater && isOneOf(rule, {"outlet-over-limit", "boiling-margin", "bore-starves-flow", "cycles-over-4",
                                 "air-weakens-flow"})) {
        const std::vector<Id> hoses = hosesOf(of.sketch, heater->id);
        double least_mm = 0;
        for (const Id& id : hoses) {
            const double bore_mm = of.sketch.hose(id)->bore_mm.value.value_or(0);
            least_mm = least_mm > 0 ? std::min(least_mm, bore_mm) : bore_mm;
        }
        std::vector<double> larger = stockBores(least_mm, true);
        if (larger.size() > 2) // each is proved
            larger.erase(larger.begin() + 2, larger.end());
        for (const bool anew : {false, true})
            if (!hoses.empty())
                addCure(cures, hoseRef(hoses.front()), onStockBore(of, hoses, anew), larger);
    }
}

} // namespace

void addPartCures(const CureCase& of, std::vector<Cure>& cures)
{
    const std::string& rule = of.finding.rule;
    const ResolvedHose* hose = of.hose();
    if (rule == "valve-missing" && hose)
        addCure(cures, hoseRef(hose->id()), valveAdded(of, *hose), {100, 130, 160, 200, 250});
    if (rule == "valve-closed")
        addCure(cures, of.finding.part, opened(of.finding.part), {0});
    if (rule == "check-valve-stays-shut")
        addCure(cures, of.finding.part, takenOut(of.finding.part), {0});
    if (rule == "unsupported-span" && hose)
        addCure(cures, hoseRef(hose->id()), clipped(of, hose->id()), {0});
    addBoreCures(of, cures);
}

} // namespace siphonwright
