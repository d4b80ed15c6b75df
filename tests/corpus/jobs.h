#pragma once

#include "core/checks/finding.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <string>
#include <vector>

/// A corpus of jobs as yards build them: engines and heaters from the templates, laid out by a few rules of
/// thumb. Nothing here is a real vehicle.
namespace siphonwright::test {

/// How the hoses of a loop leave their ends before they turn towards each other.
struct Lead {
    double port_mm = 110;
    double heater_mm = 110;
};

/// An engine template at the origin with usual coolant, site and ground.
Sketch engineOf(const std::string& template_id, double ground_z_mm);
/// A heater template at a place, with an outlet that leads up; returns its id.
Id placeHeater(Sketch& sketch, const std::string& template_id, Vec3 at);
const Port& portServing(const Sketch& sketch, PortRole role);
Port& portServing(Sketch& sketch, PortRole role);

/// Lay a hose from a port to the heater's inlet, or from its outlet to a port: straight out of both ends,
/// then straight across; with a valve at the port and clips every 250 mm.
Id layHose(Sketch& sketch, HoseRole role, const Id& heater, const Id& port, Lead lead = {},
           double bore_mm = 19.05);
/// The same, led through points of its own.
Id layHose(Sketch& sketch, HoseRole role, const Id& heater, const Id& port,
           const std::vector<RoutePoint>& points, double bore_mm = 19.05);
/// A supply and a return hose on the ports that serve.
void layLoop(Sketch& sketch, const Id& heater, Lead supply = {}, Lead back = {}, double bore_mm = 19.05);

/// An in-line 6 with a 1.5 kW heater on the frame under its rear head port, and nothing wrong with it: what
/// bad jobs spoil. Supply hose first, return hose second.
Sketch ordinarySix();

struct GoodJob {
    std::string name;
    Sketch sketch;
};
std::vector<GoodJob> goodJobs();

/// What a bad job must be caught by.
struct Caught {
    std::string rule;
    Severity severity = Severity::stop;
    PartRef part;
    std::optional<Vec3> near; ///< the balloon points within `within_mm` of here
    double within_mm = 0;
    bool only_on_grade = false;
};
struct BadJob {
    std::string name;
    Sketch sketch;
    Caught caught;
};
std::vector<BadJob> badJobs();

} // namespace siphonwright::test
