#pragma once

#include "core/sketch/templates.h"

/// What the templates are put together from.
namespace siphonwright {

inline Fact<double> typical(double value)
{
    return {value, Source::typical};
}

/// A port of an engine template; its id follows from its place in the list.
Port typicalPort(PortKind kind, PortRole role, Vec3 position, Direction axis, double bore_mm);

/// A surge tank ahead of the engine with its levels over a height that they must clear.
SurgeTank typicalTank(double x, double clear_of_z);

std::vector<EngineTemplate> inlineEngines();
std::vector<EngineTemplate> veeEngines();
EngineTemplate underfloorEngine();
std::vector<HeaterTemplate> tankHeaters();

/// Names and numbers the ports and marks every fact of the engine typical.
EngineTemplate finished(EngineTemplate engine_template);

} // namespace siphonwright
