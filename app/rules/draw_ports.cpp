#include "app/rules/rule_drawings.h"

#include <array>

/// Where the loop is joined to the water jacket.
namespace siphonwright::rules {

namespace {

/// Engine and heater with the ports at places of their own; the hoses lie in front of the engine.
void loopFrom(Pencil& p, At supply, At back)
{
    engineAndHeater(p);
    p.supply({supply, {supply.x, 14 - (supply.x - 14) * 0.12}, {58, 8}});
    p.back({{66, 25}, {66, back.z}, back});
    p.port(supply);
    p.port(back);
}

void front(Pencil& p)
{
    p.arrow({22, 50.5}, {9, 50.5});
    p.text({24, 49.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "front"));
}

void supplyPortLow(Pencil& p, bool right)
{
    loopFrom(p, {14, right ? 32.0 : 41.0}, {56, 42});
    if (!right)
        p.text({19, 33}, QT_TRANSLATE_NOOP("siphonwright::rules", "stays cold"));
}

void returnPortHigh(Pencil& p, bool right)
{
    loopFrom(p, {14, 32}, {56, right ? 43.0 : 33.0});
}

void supplyPortFront(Pencil& p, bool right)
{
    loopFrom(p, {right ? 14.0 : 46.0, 32}, {56, 43});
    front(p);
}

void returnPortRear(Pencil& p, bool right)
{
    loopFrom(p, {14, 32}, {right ? 56.0 : 22.0, 43});
    front(p);
}

void portsTooClose(Pencil& p, bool right)
{
    if (right) {
        loopFrom(p, {14, 32}, {56, 43});
        return;
    }
    loopFrom(p, {47, 38}, {56, 42});
    p.ring({51.5, 40}, 8);
    p.text({14, 36.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "stays cold"));
}

void returnNearThermostat(Pencil& p, bool right)
{
    p.thermostat({30, 50.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "thermostat"));
    loopFrom(p, {14, 32}, {right ? 56.0 : 33.0, 43});
}

void sensorNearReturn(Pencil& p, bool right)
{
    loopFrom(p, {14, 32}, {56, 42});
    p.sensor({right ? 24.0 : 48.0, 39}, QT_TRANSLATE_NOOP("siphonwright::rules", "sensor"));
}

void sharedPort(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    const At other = right ? At{32, 42} : At{56, 42};
    p.pipe({{80, 51}, {other.x, 51}, other});
    p.text({80, 53.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "another circuit"), Anchor::right);
    returnHose(p);
    bothPorts(p);
    p.port(other);
}

void bankNotCrossed(Pencil& p, bool right)
{
    p.engine({8, 34}, {56, 49});
    p.engine({8, 14}, {56, 29});
    p.heater({72, 14});
    p.supply({{14, 19}, {14, 9}, {64, 8}});
    const At back = right ? At{51, 44} : At{51, 24};
    p.back({{72, 25}, {72, right ? 44.0 : 31.5}, right ? At{60, 44} : At{51, 31.5}, back});
    p.port({14, 19});
    p.port(back);
    p.text({32, 40.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "one bank"), Anchor::centre);
    p.text({32, 20.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "the other"), Anchor::centre);
}

constexpr std::array ports_table = {
    RuleDrawing{
        "supply-port-low", Group::ports,
        QT_TRANSLATE_NOOP("siphonwright::rules", "Coolant under the supply port never gets to the heater."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The supply is taken from the lowest port."), supplyPortLow},
    RuleDrawing{
        "return-port-high", Group::ports,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The return enters low: little height drives the flow."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The return enters high."), returnPortHigh},
    RuleDrawing{"supply-port-front", Group::ports,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Both ports at the rear: the front stays cold."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The supply leaves at the front."), supplyPortFront},
    RuleDrawing{"return-port-rear", Group::ports,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Both ports at the front: the rear stays cold."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The return enters at the rear."), returnPortRear},
    RuleDrawing{"ports-too-close", Group::ports,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Warm coolant goes straight back into the supply."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The whole engine lies between the ports."),
                portsTooClose},
    RuleDrawing{
        "return-near-thermostat", Group::ports,
        QT_TRANSLATE_NOOP("siphonwright::rules", "Warm coolant enters at the thermostat and opens it."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Warm coolant enters far from the thermostat."),
        returnNearThermostat},
    RuleDrawing{"sensor-near-return", Group::ports,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The sensor feels what comes from the heater."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The sensor feels the engine."), sensorNearReturn},
    RuleDrawing{
        "shared-port", Group::ports,
        QT_TRANSLATE_NOOP("siphonwright::rules", "Two circuits on one port share what it lets through."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Each circuit has a port of its own."), sharedPort},
    RuleDrawing{"bank-not-crossed", Group::ports,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Both ports on one bank: the other stays colder."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "Out of one bank, into the other."), bankNotCrossed},
};

} // namespace

std::span<const RuleDrawing> portDrawings()
{
    return ports_table;
}

} // namespace siphonwright::rules
