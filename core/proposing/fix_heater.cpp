#include "core/layout/wording.h"
#include "core/proposing/cures.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"

#include <algorithm>
#include <cmath>

/// Cures by the heater's place, and by how it is turned.
namespace siphonwright {
namespace {

/// What goes with the heater when it moves.
enum class Along { nothing, next_bends, hoses_anew };

/// The bends next to the heater, which lead its hoses straight out of their ends, move with it.
void takeNextBends(Sketch& sketch, const Id& heater, Vec3 by)
{
    for (Shared<Hose>& hose : sketch.hoses) {
        if (hose->points.empty())
            continue;
        if (hose->from.heater == heater)
            hose.edit([&](Hose& h) { h.points.front().at = h.points.front().at + by; });
        else if (hose->to.heater == heater)
            hose.edit([&](Hose& h) { h.points.back().at = h.points.back().at + by; });
    }
}

bool takeAlong(Sketch& sketch, const Id& heater, Along along, Vec3 by, const std::stop_token& stop)
{
    if (along == Along::next_bends)
        takeNextBends(sketch, heater, by);
    return along != Along::hoses_anew || layBothAnew(sketch, heater, stop);
}

const char* ending(Along along)
{
    switch (along) {
    case Along::nothing:
        return ".";
    case Along::next_bends:
        return ", with the bends next to it.";
    case Along::hoses_anew:
        return ", and lay its hoses anew.";
    }
    return ".";
}

CureChange moved(const CureCase& of, const Id& id, Vec3 way, const std::string& words,
                 const std::string& towards, Along along)
{
    return [=, stop = of.stop](Sketch& sketch, double amount_mm, Message& text) {
        Heater* heater = byId(sketch.heaters, id);
        if (!heater)
            return false;
        heater->position = heater->position + way * amount_mm;
        text = {words + ending(along), {{amount_mm, Unit::mm}}, {nameOfHeater(*heater)}};
        if (!towards.empty())
            text.words.push_back(towards);
        return takeAlong(sketch, id, along, way * amount_mm, stop);
    };
}

void addMove(const CureCase& of, const Heater& heater, Vec3 way, const std::string& words,
             std::vector<Cure>& cures, const std::string& towards = {}, double most_mm = 600)
{
    for (const Along along : {Along::nothing, Along::next_bends, Along::hoses_anew})
        addCure(cures, refOf(heater), moved(of, heater.id, way, words, towards, along), {}, most_mm);
}

/// Plumb in the drawing plane, whatever the engine's mount; or level either way.
void addTilts(const CureCase& of, const Heater& heater, std::vector<Cure>& cures)
{
    constexpr double degrees = 180 / 3.14159265358979323846;
    constexpr double nearly_upright_deg = 45;
    const Vec3 up = of.analysis.layout.plumb.up();
    const double plumb_deg = std::round(std::atan2(up.x, up.z) * degrees * 10) / 10;
    for (const Along along : {Along::nothing, Along::hoses_anew})
        addCure(cures, refOf(heater),
                [along, id = heater.id, stop = of.stop](Sketch& sketch, double tilt_deg, Message& text) {
                    Heater* turned = byId(sketch.heaters, id);
                    if (!turned)
                        return false;
                    turned->tilt_deg = tilt_deg;
                    const char* how = std::abs(tilt_deg) < nearly_upright_deg ? "Set {a} upright"
                                      : tilt_deg > 0 ? "Lay {a} level, its top to the right"
                                                     : "Lay {a} level, its top to the left";
                    text = {std::string(how) + ending(along), {}, {nameOfHeater(*turned)}};
                    return takeAlong(sketch, id, along, {}, stop);
                },
                {0, plumb_deg, 90, -90});
}

/// To another place near by, with both hoses laid anew: for what no route mends where the heater is.
void addOtherPlaces(const CureCase& of, const Heater& heater, std::vector<Cure>& cures)
{
    const std::vector<double> steps_mm = {50, 100, 200, 300};
    const Id& id = heater.id;
    const auto to = [&](Vec3 way, const char* words) {
        addCure(cures, refOf(heater), moved(of, id, way, words, {}, Along::hoses_anew), steps_mm);
    };
    to({0, 0, -1}, "Lower {a} by {0}");
    to({-1, 0, 0}, "Move {a} to the left by {0}");
    to({1, 0, 0}, "Move {a} to the right by {0}");
    to({0, -1, 0}, "Move {a} towards you by {0}");
    to({0, 1, 0}, "Move {a} away from you by {0}");
}

/// The filler or surge tank with its levels.
CureChange tankRaised()
{
    return [](Sketch& sketch, double amount_mm, Message& text) {
        text = {"Raise the filler or surge tank by {0}, and fill to match.", {{amount_mm, Unit::mm}}, {}};
        return move(sketch, {PartKind::tank, {}, 0}, {0, 0, amount_mm});
    };
}

CureChange toFrame(const Id& id)
{
    return [=](Sketch& sketch, double, Message& text) {
        Heater* heater = byId(sketch.heaters, id);
        if (!heater)
            return false;
        heater->mounting.value = Mounting::frame;
        text = {"Mount {a} to the frame.", {}, {nameOfHeater(*heater)}};
        return true;
    };
}

/// Across, from the outlet towards the return port.
void addTowardsReturn(const CureCase& of, const Heater& heater, std::vector<Cure>& cures)
{
    for (const Shared<Hose>& hose : of.sketch.hoses) {
        const Port* port = hose->from.heater == heater.id ? of.sketch.port(hose->to.port) : nullptr;
        if (!port)
            continue;
        const Plumb& plumb = of.analysis.layout.plumb;
        const Vec3 away = port->position - nozzleOpening(heater, NozzleKind::outlet).at;
        const Vec3 across = away - plumb.up() * plumb.height(away);
        addMove(of, heater, unit(across), "Move {a} towards {b} by {0}", cures, nameOfPort(*port),
                length(across));
        return;
    }
}

void addSixMoves(const CureCase& of, const Heater& heater, std::vector<Cure>& cures)
{
    addMove(of, heater, {-1, 0, 0}, "Move {a} to the left by {0}", cures);
    addMove(of, heater, {1, 0, 0}, "Move {a} to the right by {0}", cures);
    addMove(of, heater, {0, -1, 0}, "Move {a} towards you by {0}", cures);
    addMove(of, heater, {0, 1, 0}, "Move {a} away from you by {0}", cures);
    addMove(of, heater, {0, 0, -1}, "Lower {a} by {0}", cures);
    addMove(of, heater, {0, 0, 1}, "Raise {a} by {0}", cures);
}

} // namespace

void addHeaterCures(const CureCase& of, std::vector<Cure>& cures)
{
    const Heater* heater = of.heater();
    if (!heater)
        return;
    const std::string& rule = of.finding.rule;
    const Vec3 up = of.analysis.layout.plumb.up();
    const bool of_heater = of.finding.part.kind == PartKind::heater;
    if (isOneOf(rule, {"heater-drop", "supply-rises"}) || (rule == "above-coolant-level" && of_heater))
        addMove(of, *heater, up * -1.0, "Lower {a} by {0}", cures);
    if (of.finding.severity > Severity::advice &&
        isOneOf(rule, {"supply-high-point", "return-high-point", "return-dip", "return-slope", "keep-clear",
                       "bend-does-not-fit", "bend-too-tight", "no-slack"}) &&
        !of_heater)
        addOtherPlaces(of, *heater, cures);
    if (rule == "supply-dip")
        addMove(of, *heater, up * -1.0, "Lower {a} by {0}", cures);
    if (rule == "above-coolant-level" && of.sketch.tank)
        addCure(cures, {PartKind::tank, {}, 0}, tankRaised(), {}, 1000);
    if (rule == "ground-clearance")
        addMove(of, *heater, up, "Raise {a} by {0}", cures);
    if (rule == "heater-under-return") {
        addTowardsReturn(of, *heater, cures);
        addMove(of, *heater, up * -1.0, "Lower {a} by {0}", cures);
    }
    if (rule == "keep-clear" && of_heater)
        addSixMoves(of, *heater, cures);
    if (isOneOf(rule, {"heater-chamber-traps-air", "heater-position-not-allowed", "chamber-not-full"}))
        addTilts(of, *heater, cures);
    if (rule == "mounted-on-engine")
        addCure(cures, refOf(*heater), toFrame(heater->id), {0});
    if (isOneOf(rule, {"stalled", "reverse-circulation", "outlet-over-limit", "boiling-margin",
                       "cycles-over-4", "air-locked", "chamber-not-full"})) {
        addCure(cures, refOf(*heater),
                [id = heater->id, stop = of.stop](Sketch& sketch, double, Message& text) {
                    text = {"Lay both hoses of {a} anew, straight out of their ends.",
                            {},
                            {nameOfHeater(*sketch.heater(id))}};
                    return layBothAnew(sketch, id, stop);
                },
                {0});
        // Each amount is proved, so there are few.
        for (const Along along : {Along::next_bends, Along::hoses_anew})
            addCure(cures, refOf(*heater), moved(of, heater->id, up * -1.0, "Lower {a} by {0}", {}, along),
                    {50, 100, 200});
    }
}

} // namespace siphonwright
