#pragma once

#include "core/sketch/sketch.h"

#include <string>
#include <vector>

/// Engines and heaters to start a drawing from: typical sizes, our own choice, every fact marked typical.
namespace siphonwright {

struct EngineTemplate {
    std::string id;    ///< "in-line-6"
    std::string title; ///< "In-line 6, highway diesel"
    Engine engine;     ///< front left, origin at the middle of the jacket's underside on the datum's height
    SurgeTank tank;
    std::vector<Port> ports; ///< places where such engines usually have ports; role spare, supply or return
};
/// In-line 4, in-line 6, vee 6, vee 8, large vee generator set, horizontal underfloor.
const std::vector<EngineTemplate>& engineTemplates();

struct HeaterTemplate {
    std::string id; ///< "tank-1500"
    std::string title;
    Heater heater; ///< at the origin
};
/// 500 W to 5 kW.
const std::vector<HeaterTemplate>& heaterTemplates();

/// Put a template's engine, tank and ports (of chosen roles) into a sketch at a point; replaces an engine.
void placeEngine(Sketch& sketch, const EngineTemplate& chosen, Vec3 at);

/// Stock hose bores, mm, with what the trade calls them (3/8 in to 2 in).
struct HoseSize {
    double bore_mm;
    std::string title;
};
const std::vector<HoseSize>& hoseSizes();

} // namespace siphonwright
