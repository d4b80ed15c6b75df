#include "tests/corpus/jobs.h"

#include "core/layout/route.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <cstdlib>

namespace siphonwright::test {
namespace {

constexpr double clip_every_mm = 250;
constexpr double valve_from_stop_mm = 70;

/// Where a hose starts on an end, and which way it leaves.
struct Leaving {
    Vec3 stop;
    Vec3 out;
};

Leaving leaving(const Sketch& sketch, const HoseEnd& end)
{
    const std::vector<Corner> stub = attachment(sketch, end)->stub;
    const Vec3 stop = stub.back().at;
    return {stop, unit(stop - stub[stub.size() - 2].at)};
}

HoseEnd onPort(const Id& port)
{
    HoseEnd end;
    end.port = port;
    return end;
}

HoseEnd onHeater(const Id& heater, HoseRole role)
{
    HoseEnd end;
    end.heater = heater;
    end.nozzle = role == HoseRole::supply ? NozzleKind::inlet : NozzleKind::outlet;
    return end;
}

/// Valve and clips, once the hose's length is known.
void fitOut(Sketch& sketch, const Id& hose, double bore_mm)
{
    Shared<Hose>& laid = *byId(sketch.hoses, hose);
    laid.edit([&](Hose& h) {
        h.bore_mm = {bore_mm, Source::measured};
        h.min_bend_radius_mm = {3.5 * bore_mm, Source::manual};
        h.from.bore_mm = h.to.bore_mm = 0.8 * bore_mm;
    });
    const double length_mm = routeOf(sketch, laid)->length_mm;
    laid.edit([&](Hose& h) {
        InlinePart valve;
        valve.bore_mm = 0.8 * bore_mm;
        valve.along_mm = h.role == HoseRole::supply ? valve_from_stop_mm : length_mm - valve_from_stop_mm;
        h.parts = {valve};
        for (double at_mm = clip_every_mm / 2; at_mm < length_mm; at_mm += clip_every_mm)
            h.clips_mm.push_back(at_mm);
    });
}

template <class List>
auto firstServing(List& ports, PortRole role)
{
    return std::find_if(ports.begin(), ports.end(), [role](const Port& port) { return port.role == role; });
}

} // namespace

Sketch engineOf(const std::string& template_id, double ground_z_mm)
{
    const std::vector<EngineTemplate>& all = engineTemplates();
    const auto chosen = std::find_if(all.begin(), all.end(),
                                     [&](const EngineTemplate& one) { return one.id == template_id; });
    Sketch sketch;
    placeEngine(sketch, *chosen, {});
    sketch.coolant.volume_percent = {50, Source::measured};
    sketch.site.coldest_ambient_degC = {-25, Source::measured};
    sketch.ground_z_mm = ground_z_mm;
    return sketch;
}

Id placeHeater(Sketch& sketch, const std::string& template_id, Vec3 at)
{
    const std::vector<HeaterTemplate>& all = heaterTemplates();
    const auto chosen = std::find_if(all.begin(), all.end(),
                                     [&](const HeaterTemplate& one) { return one.id == template_id; });
    Heater heater = chosen->heater;
    heater.position = at;
    if (heater.outlet.axis.elevation_deg < 90)
        heater.outlet.stub.elbow = StubElbow{{0, 90}, 20, 30};
    return addHeater(sketch, heater);
}

const Port& portServing(const Sketch& sketch, PortRole role)
{
    return *firstServing(sketch.ports, role);
}

Port& portServing(Sketch& sketch, PortRole role)
{
    return *firstServing(sketch.ports, role);
}

Id layHose(Sketch& sketch, HoseRole role, const Id& heater, const Id& port,
           const std::vector<RoutePoint>& points, double bore_mm)
{
    const bool supply = role == HoseRole::supply;
    const HoseEnd on_port = onPort(port);
    const HoseEnd on_heater = onHeater(heater, role);
    const Id hose = addHose(sketch, role, supply ? on_port : on_heater, supply ? on_heater : on_port, points);
    fitOut(sketch, hose, bore_mm);
    return hose;
}

Id layHose(Sketch& sketch, HoseRole role, const Id& heater, const Id& port, Lead lead, double bore_mm)
{
    const Leaving at_port = leaving(sketch, onPort(port));
    const Leaving at_heater = leaving(sketch, onHeater(heater, role));
    const double radius_mm = 3.5 * bore_mm + bore_mm / 2 + 5;
    std::vector<RoutePoint> points = {
        {at_port.stop + at_port.out * lead.port_mm, radius_mm, BendKind::hose},
        {at_heater.stop + at_heater.out * lead.heater_mm, radius_mm, BendKind::hose}};
    if (role == HoseRole::return_)
        std::swap(points[0], points[1]);
    return layHose(sketch, role, heater, port, points, bore_mm);
}

void layLoop(Sketch& sketch, const Id& heater, Lead supply, Lead back, double bore_mm)
{
    layHose(sketch, HoseRole::supply, heater, portServing(sketch, PortRole::supply).id, supply, bore_mm);
    layHose(sketch, HoseRole::return_, heater, portServing(sketch, PortRole::return_).id, back, bore_mm);
}

Sketch ordinarySix()
{
    Sketch sketch = engineOf("in-line-6", -520);
    layLoop(sketch, placeHeater(sketch, "tank-1500", {440, -320, -40}));
    return sketch;
}

} // namespace siphonwright::test
