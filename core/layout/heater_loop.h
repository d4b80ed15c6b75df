#pragma once

#include "core/layout/layout.h"
#include "core/sketch/sketch.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// A heater with the hoses on it and the ports that these lead to; null where there is none (yet).
struct HeaterLoop {
    const Heater* heater = nullptr;
    const HeaterHeights* heights = nullptr;
    const ResolvedHose* supply = nullptr;
    const ResolvedHose* return_ = nullptr;
    const Port* supply_port = nullptr;
    const Port* return_port = nullptr;
};
std::vector<HeaterLoop> loopsOf(const Sketch& sketch, const Layout& layout);

/// Ports that serve as supply (or return): by their role, or because such a hose is on them.
std::vector<const Port*> portsServing(const Sketch& sketch, HoseRole role);

} // namespace siphonwright
