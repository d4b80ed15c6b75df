#include "core/sketch/edits.h"

#include "core/quantity/quantity.h"
#include "core/sketch/find.h"
#include "core/sketch/names.h"

#include <algorithm>

namespace siphonwright {
namespace {

constexpr double typical_hose_bore_mm = 19.05;  ///< 3/4 in, the usual size for these loops
constexpr double typical_hose_end_share = 0.85; ///< bore of a barb in the bore of its hose

bool idUsed(const Sketch& sketch, const Id& id)
{
    return byId(sketch.ports, id) || byId(sketch.heaters, id) || byId(sketch.hoses, id) ||
           byId(sketch.areas, id) || byId(sketch.dimensions, id);
}

std::string nameFor(const Port& port)
{
    if (port.role == PortRole::sensor)
        return "Sensor port";
    switch (port.kind) {
    case PortKind::drain_port:
        return "Drain port";
    case PortKind::core_plug:
        return "Core plug";
    case PortKind::lower_hose_tee:
        return "Lower hose tee";
    case PortKind::head_port:
        return "Head port";
    case PortKind::cabin_line:
        return "Cabin line";
    }
    return "Port";
}

std::string nameFor(Hazard what)
{
    switch (what) {
    case Hazard::exhaust:
        return "Exhaust";
    case Hazard::turbo:
        return "Turbocharger";
    case Hazard::heat_shield:
        return "Heat shield";
    case Hazard::belt:
        return "Belt";
    case Hazard::fan:
        return "Fan";
    case Hazard::shaft:
        return "Shaft";
    case Hazard::steering:
        return "Steering";
    case Hazard::suspension:
        return "Suspension";
    case Hazard::other:
        return "Keep clear";
    }
    return "Keep clear";
}

/// An end may be on one port, on one heater, or on nothing.
bool leadsSomewhere(const Sketch& sketch, const HoseEnd& end)
{
    if (!end.port.empty() && !end.heater.empty())
        return false;
    if (!end.port.empty())
        return byId(sketch.ports, end.port) != nullptr;
    return end.heater.empty() || byId(sketch.heaters, end.heater) != nullptr;
}

/// Bore of a first hose: what a heater at either end asks for, else the usual one.
Fact<double> typicalBore(const Sketch& sketch, const HoseEnd& from, const HoseEnd& to)
{
    double bore_mm = 0;
    for (const HoseEnd* end : {&from, &to})
        if (const Heater* heater = byId(sketch.heaters, end->heater))
            bore_mm = std::max(bore_mm, heater->manual_min_bore_mm.value.value_or(0));
    return {bore_mm > 0 ? bore_mm : typical_hose_bore_mm, Source::typical};
}

/// The hose that a new one takes after: the latest of its role, else the latest.
const Hose* hoseLike(const Sketch& sketch, HoseRole role)
{
    const auto same = std::find_if(sketch.hoses.rbegin(), sketch.hoses.rend(),
                                   [&](const Shared<Hose>& hose) { return hose->role == role; });
    if (same != sketch.hoses.rend())
        return &**same;
    return sketch.hoses.empty() ? nullptr : &*sketch.hoses.back();
}

/// An end whose bore nobody chose gets one in keeping with its hose.
void suitEnd(HoseEnd& end, const Fact<double>& hose_bore)
{
    if (hose_bore.known() && end.bore_mm == HoseEnd().bore_mm)
        end.bore_mm = std::round(*hose_bore.value * typical_hose_end_share * 10) / 10;
}

} // namespace

Id freshId(const Sketch& sketch, const std::string& stem)
{
    for (int n = 1;; ++n) {
        Id id = stem + "-" + exactText(n);
        if (!idUsed(sketch, id))
            return id;
    }
}

bool connect(Sketch& sketch, const Id& hose, std::size_t end, const HoseEnd& to)
{
    Shared<Hose>* shared = byId(sketch.hoses, hose);
    if (!shared || end > 1 || !leadsSomewhere(sketch, to))
        return false;
    shared->edit([&](Hose& changed) {
        HoseEnd& there = end == 0 ? changed.from : changed.to;
        there.port = to.port;
        there.heater = to.heater;
        there.nozzle = to.nozzle;
        there.open_at = to.open_at;
    });
    return true;
}

Id addHose(Sketch& sketch, HoseRole role, const HoseEnd& from, const HoseEnd& to,
           std::vector<RoutePoint> points)
{
    if (!leadsSomewhere(sketch, from) || !leadsSomewhere(sketch, to))
        return {};
    Hose hose;
    hose.id = freshId(sketch, "hose");
    hose.name = nameFree(sketch.hoses, role == HoseRole::supply ? "Supply hose" : "Return hose");
    hose.role = role;
    hose.from = from;
    hose.to = to;
    hose.points = std::move(points);
    if (const Hose* like = hoseLike(sketch, role)) {
        hose.bore_mm = like->bore_mm;
        hose.wall_mm = like->wall_mm;
        hose.min_bend_radius_mm = like->min_bend_radius_mm;
    } else {
        hose.bore_mm = typicalBore(sketch, from, to);
    }
    suitEnd(hose.from, hose.bore_mm);
    suitEnd(hose.to, hose.bore_mm);
    Id id = hose.id;
    sketch.hoses.push_back(Shared<Hose>(std::move(hose)));
    return id;
}

bool insertPoint(Sketch& sketch, const Id& hose, std::size_t before, const RoutePoint& point)
{
    Shared<Hose>* shared = byId(sketch.hoses, hose);
    if (!shared || before > (*shared)->points.size())
        return false;
    shared->edit([&](Hose& changed) {
        changed.points.insert(changed.points.begin() + static_cast<std::ptrdiff_t>(before), point);
    });
    return true;
}

bool addInlinePart(Sketch& sketch, const Id& hose, const InlinePart& part)
{
    Shared<Hose>* shared = byId(sketch.hoses, hose);
    if (!shared || !(std::isfinite(part.along_mm) && part.along_mm >= 0))
        return false;
    shared->edit([&](Hose& changed) { changed.parts.push_back(part); });
    return true;
}

bool addClip(Sketch& sketch, const Id& hose, double along_mm)
{
    Shared<Hose>* shared = byId(sketch.hoses, hose);
    if (!shared || !(std::isfinite(along_mm) && along_mm >= 0))
        return false;
    shared->edit([&](Hose& changed) { changed.clips_mm.push_back(along_mm); });
    return true;
}

Id addPort(Sketch& sketch, Port port)
{
    port.id = freshId(sketch, "port");
    if (port.name.empty())
        port.name = nameFree(sketch.ports, nameFor(port));
    sketch.ports.push_back(std::move(port));
    return sketch.ports.back().id;
}

Id addHeater(Sketch& sketch, Heater heater)
{
    heater.id = freshId(sketch, "heater");
    if (heater.name.empty())
        heater.name = nameFree(sketch.heaters, "Heater");
    sketch.heaters.push_back(std::move(heater));
    return sketch.heaters.back().id;
}

Id addArea(Sketch& sketch, Area area)
{
    area.id = freshId(sketch, "area");
    if (area.name.empty())
        area.name = nameFree(sketch.areas, nameFor(area.what));
    Id id = area.id;
    sketch.areas.push_back(Shared<Area>(std::move(area)));
    return id;
}

Id addDimension(Sketch& sketch, Dimension dimension)
{
    if (!std::isfinite(dimension.aside_mm))
        return {};
    dimension.id = freshId(sketch, "dimension");
    sketch.dimensions.push_back(std::move(dimension));
    return sketch.dimensions.back().id;
}

bool setJacketLevels(Sketch& sketch, double lowest_z, double highest_z)
{
    if (!sketch.engine || sketch.engine->jacket.empty())
        return false;
    if (!(std::isfinite(lowest_z) && std::isfinite(highest_z) && lowest_z < highest_z))
        return false;
    std::vector<Vec2>& jacket = sketch.engine->jacket;
    const auto [low, high] =
        std::minmax_element(jacket.begin(), jacket.end(), [](Vec2 a, Vec2 b) { return a.z < b.z; });
    const double from = low->z;
    const double to = high->z;
    if (!(from < to))
        return false;
    // Written as a mixture of the two levels so that both come out exactly.
    for (Vec2& corner : jacket) {
        const double share = (corner.z - from) / (to - from);
        corner.z = lowest_z * (1 - share) + highest_z * share;
    }
    return true;
}

} // namespace siphonwright
