#include "core/checks/facts.h"
#include "core/checks/judges.h"
#include "core/layout/heater_loop.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright::judges {
namespace {

/// The jacket, or a note that it is missing.
const JacketHeights* jacketFor(Judge& judge, const Port& port)
{
    if (judge.layout.jacket)
        return &*judge.layout.jacket;
    if (judge.sketch.engine)
        judge.notJudged(refOf(port), "the outline of the water jacket is not entered");
    return nullptr;
}

/// Height in the jacket: 0 at its lowest point, 1 at its highest.
void judgePortHeight(Judge& judge, HoseRole role)
{
    for (const Port* port : portsServing(judge.sketch, role)) {
        const JacketHeights* jacket = jacketFor(judge, *port);
        if (!jacket || jacket->highest_mm <= jacket->lowest_mm)
            continue;
        judge.about(refOf(*port));
        restsOnJacket(judge);
        restsOnPlace(judge, *port);
        const double range_mm = jacket->highest_mm - jacket->lowest_mm;
        const double share = (judge.layout.plumb.height(port->position) - jacket->lowest_mm) / range_mm;
        const std::optional<Verdict> found = judge.verdictOn(share);
        if (!found)
            continue;
        const bool supply = role == HoseRole::supply;
        Message text{"{a} is {0} above the lowest point of the water jacket, high for a supply.",
                     {{share * range_mm, Unit::mm}},
                     {nameOfPort(*port)}};
        if (!supply)
            text = {"{a} is {0} below the highest point of the water jacket, low for a return.",
                    {{(1 - share) * range_mm, Unit::mm}},
                    {nameOfPort(*port)}};
        Finding& finding = judge.report(found->severity, refOf(*port), text);
        finding.measured = share;
        finding.limit = found->limit;
        finding.at = port->position;
        finding.fix = {supply ? "Take a port at least {0} lower." : "Take a port at least {0} higher.",
                       {{enough(std::abs(share - found->limit) * range_mm), Unit::mm}},
                       {}};
    }
}

/// Place along the jacket's length: 0 at its front, 1 at its rear.
void judgePortPlace(Judge& judge, HoseRole role)
{
    for (const Port* port : portsServing(judge.sketch, role)) {
        if (!jacketFor(judge, *port))
            continue;
        judge.about(refOf(*port));
        restsOnJacket(judge);
        restsOnPlace(judge, *port);
        const Engine& engine = *judge.sketch.engine;
        const auto [left, right] = std::minmax_element(engine.jacket.begin(), engine.jacket.end(),
                                                       [](Vec2 a, Vec2 b) { return a.x < b.x; });
        const double length_mm = right->x - left->x;
        if (length_mm <= 0)
            continue;
        const double from_left = (port->position.x - left->x) / length_mm;
        const double share = engine.front == EngineEnd::left ? from_left : 1 - from_left;
        const std::optional<Verdict> found = judge.verdictOn(share);
        if (!found)
            continue;
        Message text{"{a}, a supply port, is {0} back from the front of the water jacket, in its rear half.",
                     {{share * length_mm, Unit::mm}},
                     {nameOfPort(*port)}};
        if (role == HoseRole::return_)
            text.pattern =
                "{a}, a return port, is {0} back from the front of the water jacket, in its front half.";
        Finding& finding = judge.report(found->severity, refOf(*port), text);
        finding.measured = share;
        finding.limit = found->limit;
        finding.at = port->position;
    }
}

struct PortPair {
    const Port* supply = nullptr;
    const Port* return_ = nullptr;
};

/// The ports of each loop; before hoses are drawn, a single supply and a single return port.
std::vector<PortPair> pairsOf(const Judge& judge)
{
    std::vector<PortPair> out;
    for (const HeaterLoop& loop : loopsOf(judge.sketch, judge.layout))
        if (loop.supply_port && loop.return_port)
            out.push_back({loop.supply_port, loop.return_port});
    if (!out.empty())
        return out;
    const std::vector<const Port*> supplies = portsServing(judge.sketch, HoseRole::supply);
    const std::vector<const Port*> returns = portsServing(judge.sketch, HoseRole::return_);
    if (supplies.size() == 1 && returns.size() == 1)
        out.push_back({supplies.front(), returns.front()});
    return out;
}

} // namespace

void supplyPortLow(Judge& judge)
{
    judgePortHeight(judge, HoseRole::supply);
}

void returnPortHigh(Judge& judge)
{
    judgePortHeight(judge, HoseRole::return_);
}

void supplyPortFront(Judge& judge)
{
    judgePortPlace(judge, HoseRole::supply);
}

void returnPortRear(Judge& judge)
{
    judgePortPlace(judge, HoseRole::return_);
}

void portsTooClose(Judge& judge)
{
    for (const PortPair& pair : pairsOf(judge)) {
        const JacketHeights* jacket = jacketFor(judge, *pair.supply);
        if (!jacket || jacket->diagonal_mm <= 0)
            continue;
        judge.about(refOf(*pair.return_));
        restsOnJacket(judge);
        restsOnPlace(judge, *pair.supply);
        restsOnPlace(judge, *pair.return_);
        const double apart_mm = distance(pair.supply->position, pair.return_->position);
        const std::optional<Verdict> found = judge.verdictOn(apart_mm / jacket->diagonal_mm);
        if (!found)
            continue;
        Finding& finding =
            judge.report(found->severity, refOf(*pair.return_),
                         {"{a} and {b} are only {0} apart: most of the engine would stay cold.",
                          {{apart_mm, Unit::mm}},
                          {nameOfPort(*pair.supply), nameOfPort(*pair.return_)}});
        finding.measured = apart_mm;
        finding.limit = found->limit * jacket->diagonal_mm;
        finding.unit = Unit::mm;
        finding.at = pair.return_->position;
        finding.fix = {"Choose ports at least {0} apart.",
                       {{judge.limits.advice.value_or(found->limit) * jacket->diagonal_mm, Unit::mm}},
                       {}};
    }
}

void returnNearThermostat(Judge& judge)
{
    if (!judge.sketch.engine)
        return;
    const std::optional<ThermostatHousing>& thermostat = judge.sketch.engine->thermostat;
    for (const Port* port : portsServing(judge.sketch, HoseRole::return_)) {
        if (!thermostat) {
            judge.notJudged(refOf(*port), "the engine's thermostat housing is not entered");
            continue;
        }
        judge.about(refOf(*port));
        restsOnPlace(judge, *port);
        judge.restsOn(thermostat->position_source, {PartKind::thermostat, {}, 0},
                      "the place of the thermostat housing");
        const double apart_mm = distance(port->position, thermostat->position);
        const std::optional<Verdict> found = judge.verdictOn(apart_mm);
        if (!found)
            continue;
        Finding& finding = judge.report(
            found->severity, refOf(*port),
            {"{a} is only {0} from the thermostat housing.", {{apart_mm, Unit::mm}}, {nameOfPort(*port)}});
        finding.measured = apart_mm;
        finding.limit = found->limit;
        finding.at = port->position;
    }
}

void sensorNearReturn(Judge& judge)
{
    bool has_sensor = false;
    for (const Port& sensor : judge.sketch.ports) {
        if (sensor.role != PortRole::sensor)
            continue;
        has_sensor = true;
        for (const Port* port : portsServing(judge.sketch, HoseRole::return_)) {
            judge.about(refOf(sensor));
            restsOnPlace(judge, sensor);
            restsOnPlace(judge, *port);
            const double apart_mm = distance(sensor.position, port->position);
            const std::optional<Verdict> found = judge.verdictOn(apart_mm);
            if (!found)
                continue;
            Finding& finding =
                judge.report(found->severity, refOf(sensor),
                             {"{a} is only {0} from {b}, whose warm coolant misleads the sensor.",
                              {{apart_mm, Unit::mm}},
                              {nameOfPort(sensor), nameOfPort(*port)}});
            finding.measured = apart_mm;
            finding.limit = found->limit;
            finding.at = sensor.position;
        }
    }
    for (const Heater& heater : judge.sketch.heaters)
        if (heater.thermostat == HeaterThermostat::remote && !has_sensor)
            judge.notJudged(refOf(heater), "the port of the remote thermostat of " + nameOfHeater(heater) +
                                               " is not entered");
}

} // namespace siphonwright::judges
