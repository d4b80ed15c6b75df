#include "core/checks/facts.h"

#include "core/layout/wording.h"

namespace siphonwright {

// Names are put together only where they are needed: this runs at every pointer move.

void restsOnPlace(Judge& judge, const Port& port)
{
    if (!isConfirmed(port.position_source))
        judge.restsOn(port.position_source, refOf(port), "the place of " + nameOfPort(port));
}

void restsOnPlace(Judge& judge, const Heater& heater)
{
    if (!isConfirmed(heater.position_source))
        judge.restsOn(heater.position_source, refOf(heater), "the place of " + nameOfHeater(heater));
}

void restsOnEnds(Judge& judge, const Route& route)
{
    for (const HoseEnd* end : {&route.hose->from, &route.hose->to}) {
        if (const Port* port = judge.sketch.port(end->port))
            restsOnPlace(judge, *port);
        if (const Heater* heater = judge.sketch.heater(end->heater))
            restsOnPlace(judge, *heater);
    }
}

void restsOnBore(Judge& judge, const Hose& hose)
{
    if (!isConfirmed(hose.bore_mm.source))
        judge.restsOn(hose.bore_mm, refOf(hose), "the bore of " + nameOfHose(hose));
}

void restsOnJacket(Judge& judge)
{
    if (judge.sketch.engine)
        judge.restsOn(judge.sketch.engine->jacket_source, {PartKind::jacket, {}, 0},
                      "the outline of the water jacket");
}

void restsOnLevels(Judge& judge)
{
    if (!judge.sketch.tank)
        return;
    const SurgeTank& tank = *judge.sketch.tank;
    const PartRef part{PartKind::tank, {}, 0};
    judge.restsOn(tank.cold_min_mm, part, "the coolant level at cold minimum");
    judge.restsOn(tank.cold_full_mm, part, "the coolant level at cold full");
    const Vec3 square{0, 0, 1};
    if (judge.layout.plumb.up() != square)
        judge.restsOn(tank.position_source, part, "the place of the surge tank");
}

} // namespace siphonwright
