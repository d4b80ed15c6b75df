#include "app/rules/rule_drawings.h"

#include <array>

/// Humps, dips and levels.
namespace siphonwright::rules {

namespace {

void supplyHighPoint(Pencil& p, bool right)
{
    engineAndHeater(p);
    returnHose(p);
    if (right) {
        supplyHose(p);
    } else {
        p.supply({{14, 31}, {14, 12}, {27, 11}, {30, 20}, {42, 20}, {45, 9}, {58, 8}});
        p.air({36, 20.4}, 8, 1.7);
    }
    bothPorts(p);
}

void returnHighPoint(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    if (right) {
        returnHose(p);
    } else {
        p.back({{66, 25}, {66, 50.5}, {61.5, 50.5}, {61.5, 42}, {56, 42}});
        p.air({63.8, 50.8}, 5, 1.7);
    }
    bothPorts(p);
}

/// The heater far from the engine, so that the return has a way to go.
void heaterAhead(Pencil& p, double heater_z)
{
    p.engine({40, 27}, {80, 48});
    p.heater({14, heater_z});
}

void returnDip(Pencil& p, bool right)
{
    heaterAhead(p, 12);
    if (right) {
        p.back({{14, 23}, {14, 30}, {34, 37}, {46, 41}});
    } else {
        p.back({{14, 23}, {14, 37}, {22, 37}, {22, 20}, {33, 20}, {33, 41}, {46, 41}});
        p.lying({27.5, 20}, 8, 1.7);
        p.text({27.5, 15}, QT_TRANSLATE_NOOP("siphonwright::rules", "cold coolant lies here"), Anchor::left);
    }
    p.port({46, 41});
}

void supplyDip(Pencil& p, bool right)
{
    engineAndHeater(p);
    returnHose(p);
    if (right) {
        supplyHose(p);
    } else {
        p.supply({{14, 31}, {14, 3}, {50, 3}, {50, 8}, {58, 8}});
        p.lying({34, 3}, 26, 1.7);
        p.text({34, 6}, QT_TRANSLATE_NOOP("siphonwright::rules", "does not drain"), Anchor::centre);
    }
    bothPorts(p);
}

void supplyRises(Pencil& p, bool right)
{
    if (right) {
        engineAndHeater(p);
        supplyHose(p);
        returnHose(p);
        bothPorts(p);
        return;
    }
    p.engine();
    p.heater({73, 42});
    p.supply({{14, 31}, {14, 20}, {63, 20}, {63, 36}, {65, 36}});
    p.plainLevel(31, 10, 82);
    p.port({14, 31.5});
}

void returnSlope(Pencil& p, bool right)
{
    if (right) {
        heaterAhead(p, 12);
        p.back({{14, 23}, {14, 27}, {46, 40}});
    } else {
        heaterAhead(p, 25);
        p.back({{14, 36}, {14, 39.4}, {46, 40}});
        p.text({29, 43}, QT_TRANSLATE_NOOP("siphonwright::rules", "nearly level"), Anchor::centre);
    }
    p.port({46, 40});
}

void aboveCoolantLevel(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    returnHose(p);
    bothPorts(p);
    p.level(right ? 50.5 : 37, QT_TRANSLATE_NOOP("siphonwright::rules", "level"));
    if (!right)
        p.ring({63, 42}, 5);
}

constexpr std::array elevation_table = {
    RuleDrawing{
        "supply-high-point", Group::elevation,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The supply climbs over a hump: air stays at its crest."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The supply falls all the way to the heater."),
        supplyHighPoint},
    RuleDrawing{
        "return-high-point", Group::elevation,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The return climbs over the port and comes down to it."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The return rises to the port and not past it."),
        returnHighPoint},
    RuleDrawing{"return-dip", Group::elevation,
                QT_TRANSLATE_NOOP("siphonwright::rules",
                                  "The return dips on its way: warm coolant does not go down."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The return rises all the way."), returnDip},
    RuleDrawing{"supply-dip", Group::elevation,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The supply lies lower than the heater's inlet."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The heater's inlet is the lowest place."),
                supplyDip},
    RuleDrawing{
        "supply-rises", Group::elevation,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The heater's inlet is higher than the supply port."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The heater hangs under the supply port."), supplyRises},
    RuleDrawing{
        "return-slope", Group::elevation,
        QT_TRANSLATE_NOOP("siphonwright::rules", "A nearly level return: air stays where it is."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "A rise all along: air finds its way to the engine."),
        returnSlope},
    RuleDrawing{
        "above-coolant-level", Group::elevation,
        QT_TRANSLATE_NOOP("siphonwright::rules", "A part of the loop stands above the coolant level."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The whole loop lies under the coolant level."),
        aboveCoolantLevel},
};

} // namespace

std::span<const RuleDrawing> elevationDrawings()
{
    return elevation_table;
}

} // namespace siphonwright::rules
