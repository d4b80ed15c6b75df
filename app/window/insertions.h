#pragma once

#include "core/layout/layout.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <string>
#include <vector>

/// Parts put where such parts usually sit, so that a drawing can be made without the mouse. Each gives what
/// it put, or nothing where it could not.
namespace siphonwright {

PartRef insertEngine(Sketch& sketch, const std::string& template_id);
/// Under the return port if there is one, well under the jacket.
PartRef insertHeater(Sketch& sketch, const std::string& template_id);
PartRef insertPort(Sketch& sketch, PortRole role);
/// Straight between the first free port of the role and the first heater that lacks this hose.
PartRef insertHose(Sketch& sketch, HoseRole role);
PartRef insertRoutePoint(Sketch& sketch, const Layout& layout, const Id& hose);
PartRef insertValve(Sketch& sketch, const Id& hose);
PartRef insertBleed(Sketch& sketch, const Layout& layout, const Id& hose);
PartRef insertTank(Sketch& sketch);
PartRef insertArea(Sketch& sketch);

/// All parts in the order in which the keyboard goes through them.
std::vector<PartRef> allParts(const Sketch& sketch);

} // namespace siphonwright
