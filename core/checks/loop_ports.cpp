#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/heater_loop.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cstddef>

/// What the loop's ports are part of besides the loop.
namespace siphonwright::judges {
namespace {

bool hasBanks(const Engine& engine)
{
    switch (engine.arrangement) {
    case Arrangement::vee_6:
    case Arrangement::vee_8:
    case Arrangement::vee_12:
    case Arrangement::vee_16:
        return true;
    default:
        return false;
    }
}

bool serves(const Sketch& sketch, const Port& port, HoseRole role)
{
    const std::vector<const Port*> all = portsServing(sketch, role);
    return std::find(all.begin(), all.end(), &port) != all.end();
}

std::size_t endsOn(const Sketch& sketch, const Port& port)
{
    std::size_t ends = 0;
    for (const Shared<Hose>& hose : sketch.hoses)
        ends += (hose->from.port == port.id ? 1U : 0U) + (hose->to.port == port.id ? 1U : 0U);
    return ends;
}

} // namespace

void supplyCutOffByThermostat(Judge& judge)
{
    for (const Port* port : portsServing(judge.sketch, HoseRole::supply)) {
        if (port->kind != PortKind::lower_hose_tee)
            continue;
        const std::optional<Engine>& engine = judge.sketch.engine;
        const ThermostatHousing* thermostat = engine && engine->thermostat ? &*engine->thermostat : nullptr;
        if (!thermostat || !thermostat->side.known()) {
            judge.notJudged(refOf(*port), "the thermostat's side is not entered");
            continue;
        }
        judge.about(refOf(*port));
        judge.restsOn(thermostat->side, {PartKind::thermostat, {}, 0}, "the thermostat's side");
        if (*thermostat->side.value == ThermostatSide::outlet)
            continue;
        judge
            .report(Severity::stop, refOf(*port),
                    {"{a} is in the lower radiator hose, and the thermostat on the engine's inlet side cuts "
                     "it off from the block while the engine is cold.",
                     {},
                     {nameOfPort(*port)}})
            .at = port->position;
    }
}

void parallelPath(Judge& judge)
{
    for (const Port& port : judge.sketch.ports) {
        if (port.kind != PortKind::cabin_line ||
            (!serves(judge.sketch, port, HoseRole::supply) && !serves(judge.sketch, port, HoseRole::return_)))
            continue;
        if (!port.cabin_line_open) {
            judge.notJudged(refOf(port),
                            "it is not entered whether the shut-off of " + nameOfPort(port) + " is open");
            continue;
        }
        if (*port.cabin_line_open)
            judge
                .report(Severity::caution, refOf(port),
                        {"{a} is in an open cabin heater line, a second way round for the coolant: results "
                         "for one loop do not hold.",
                         {},
                         {nameOfPort(port)}})
                .at = port.position;
    }
}

void sharedPort(Judge& judge)
{
    for (const Port& port : judge.sketch.ports) {
        const std::size_t ends = endsOn(judge.sketch, port);
        if (ends < 2)
            continue;
        judge
            .report(Severity::caution, refOf(port),
                    {"{a} has {0} hose ends on it.",
                     {{static_cast<double>(ends), Unit::none}},
                     {nameOfPort(port)}})
            .at = port.position;
    }
}

void bankNotCrossed(Judge& judge)
{
    const std::optional<Engine>& engine = judge.sketch.engine;
    if (!engine || !hasBanks(*engine))
        return;
    const double middle_mm = (engine->jacket_y_from_mm + engine->jacket_y_to_mm) / 2;
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout)) {
        if (!loop.supply_port || !loop.return_port)
            continue;
        judge.about(refOf(*loop.return_port));
        restsOnJacket(judge);
        restsOnPlace(judge, *loop.supply_port);
        restsOnPlace(judge, *loop.return_port);
        // A port in the middle is on no bank.
        const double supply_mm = loop.supply_port->position.y - middle_mm;
        const double return_mm = loop.return_port->position.y - middle_mm;
        if (supply_mm * return_mm <= 0)
            continue;
        Finding& finding = judge.report(Severity::advice, refOf(*loop.return_port),
                                        {"{a} and {b} are on the same bank: the other bank stays cold.",
                                         {},
                                         {nameOfPort(*loop.supply_port), nameOfPort(*loop.return_port)}});
        finding.at = loop.return_port->position;
    }
}

} // namespace siphonwright::judges
