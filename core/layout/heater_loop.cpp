#include "core/layout/heater_loop.h"

#include <algorithm>

namespace siphonwright {

std::vector<HeaterLoop> loopsOf(const Sketch& sketch, const Layout& layout)
{
    std::vector<HeaterLoop> loops;
    loops.reserve(sketch.heaters.size());
    for (std::size_t i = 0; i < sketch.heaters.size(); ++i) {
        HeaterLoop loop;
        loop.heater = &sketch.heaters[i];
        loop.heights = &layout.heaters[i];
        for (const ResolvedHose& hose : layout.hoses) {
            const Hose& drawn = *hose->hose;
            if (drawn.role == HoseRole::supply && drawn.to.heater == loop.heater->id && !loop.supply) {
                loop.supply = &hose;
                loop.supply_port = sketch.port(drawn.from.port);
            }
            if (drawn.role == HoseRole::return_ && drawn.from.heater == loop.heater->id && !loop.return_) {
                loop.return_ = &hose;
                loop.return_port = sketch.port(drawn.to.port);
            }
        }
        loops.push_back(loop);
    }
    return loops;
}

std::vector<const Port*> portsServing(const Sketch& sketch, HoseRole role)
{
    const PortRole port_role = role == HoseRole::supply ? PortRole::supply : PortRole::return_;
    const auto serves = [&](const Port& port) {
        return port.role == port_role ||
               std::any_of(sketch.hoses.begin(), sketch.hoses.end(), [&](const Shared<Hose>& hose) {
                   return hose->role == role &&
                          (role == HoseRole::supply ? hose->from.port : hose->to.port) == port.id;
               });
    };
    std::vector<const Port*> out;
    for (const Port& port : sketch.ports)
        if (serves(port))
            out.push_back(&port);
    return out;
}

} // namespace siphonwright
