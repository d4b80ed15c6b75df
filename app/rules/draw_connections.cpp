#include "app/rules/rule_drawings.h"

#include <array>

/// What makes a loop of the hoses, and what interrupts it.
namespace siphonwright::rules {

namespace {

void hoseOpenEnd(Pencil& p, bool right)
{
    engineAndHeater(p);
    returnHose(p);
    if (right) {
        supplyHose(p);
    } else {
        p.supply({{14, 31}, {14, 15}, {44, 12}});
        p.drops({45.5, 9.5});
    }
    bothPorts(p);
}

void hoseNotConnected(Pencil& p, bool right)
{
    engineAndHeater(p);
    if (right) {
        supplyHose(p);
        returnHose(p);
        bothPorts(p);
        return;
    }
    p.supply({{14, 31}, {14, 18}, {50, 18}, {50, 32}});
    p.port({14, 31.5});
    p.port({50, 32.5});
}

void valveMissing(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    returnHose(p);
    bothPorts(p);
    if (right) {
        p.valve({14, 22.5}, true);
        p.valve({66, 34}, true);
    } else {
        p.ring({14, 22.5}, 3.6);
        p.ring({66, 34}, 3.6);
    }
}

void valveClosed(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    returnHose(p);
    bothPorts(p);
    p.valve({14, 22.5}, true, right);
    p.valve({66, 35}, true, true);
    if (!right) {
        p.text({19, 21}, QT_TRANSLATE_NOOP("siphonwright::rules", "closed"));
        p.heat({75, 10});
    }
}

void supplyCutOff(Pencil& p, bool right)
{
    p.engine({26, 27}, {60, 48});
    p.heater({66, 14});
    p.engine({4, 27}, {13, 48});
    p.text({3, 50}, QT_TRANSLATE_NOOP("siphonwright::rules", "radiator"));
    p.pipe({{12, 33}, {28, 33}});
    if (right)
        p.supply({{34, 31}, {34, 12}, {58, 8}});
    else
        p.supply({{18, 33}, {18, 14}, {58, 8}});
    returnHose(p);
    p.thermostat({25, 33});
    p.text({24, 23.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "thermostat"),
           right ? Anchor::right : Anchor::left);
    if (right)
        p.port({34, 31.5});
    p.port({56, 42});
}

void parallelPath(Pencil& p, bool right)
{
    p.engine({28, 27}, {60, 48});
    p.heater({66, 14});
    p.engine({4, 33}, {15, 48});
    p.text({3, 29}, QT_TRANSLATE_NOOP("siphonwright::rules", "cabin heater"));
    p.pipe({{32, 44}, {13, 44}});
    p.pipe({{13, 37}, {32, 37}});
    p.supply({{34, 31}, {34, 12}, {58, 8}});
    returnHose(p);
    p.valve({21.5, 44}, false, !right);
    p.text({21.5, 49.5},
           right ? QT_TRANSLATE_NOOP("siphonwright::rules", "closed")
                 : QT_TRANSLATE_NOOP("siphonwright::rules", "open"),
           Anchor::centre);
    p.port({34, 31.5});
    p.port({56, 42});
}

void checkValveStaysShut(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    returnHose(p);
    bothPorts(p);
    p.valve({14, 22.5}, true);
    if (right) {
        p.valve({66, 34}, true);
        return;
    }
    p.checkValve({66, 33}, true);
    p.text({62, 51}, QT_TRANSLATE_NOOP("siphonwright::rules", "check valve"));
    p.arrow({75, 50}, {68.8, 35});
}

constexpr std::array connections_table = {
    RuleDrawing{"hose-open-end", Group::connections,
                QT_TRANSLATE_NOOP("siphonwright::rules", "A hose ends in the open."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "Every hose end is on a port or a nozzle."),
                hoseOpenEnd},
    RuleDrawing{
        "hose-not-connected", Group::connections,
        QT_TRANSLATE_NOOP("siphonwright::rules", "A hose from port to port, and the heater left out."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Port, heater and port make one loop."), hoseNotConnected},
    RuleDrawing{"valve-missing", Group::connections,
                QT_TRANSLATE_NOOP("siphonwright::rules", "No valve where the loop leaves the engine."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "A valve near each of the engine's ports."),
                valveMissing},
    RuleDrawing{"valve-closed", Group::connections,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The heater is on and a valve is closed."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "Both valves are open while the heater is on."),
                valveClosed},
    RuleDrawing{
        "supply-cut-off-by-thermostat", Group::connections,
        QT_TRANSLATE_NOOP("siphonwright::rules", "Cold, the thermostat shuts between engine and supply."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The supply leaves the block itself."), supplyCutOff},
    RuleDrawing{"parallel-path", Group::connections,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The cabin heater's line is open beside the loop."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The cabin heater's line is closed."), parallelPath},
    RuleDrawing{
        "check-valve-stays-shut", Group::connections,
        QT_TRANSLATE_NOOP("siphonwright::rules", "A few millimetres of head do not open a check valve."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Nothing in the loop has to be pushed open."),
        checkValveStaysShut},
};

} // namespace

std::span<const RuleDrawing> connectionDrawings()
{
    return connections_table;
}

} // namespace siphonwright::rules
