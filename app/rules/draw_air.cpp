#include "app/rules/rule_drawings.h"

#include <array>

/// Air that stays after filling.
namespace siphonwright::rules {

namespace {

/// The supply hose over a hump with a pocket in it, or falling all the way.
void supplyWithAir(Pencil& p, bool right, double crest_z, double width)
{
    engineAndHeater(p);
    returnHose(p);
    if (right) {
        supplyHose(p);
    } else {
        p.supply({{14, 31}, {14, 12}, {27, 11}, {30, crest_z}, {42, crest_z}, {45, 9}, {58, 8}});
        p.air({36, crest_z + 0.4}, width, 1.7);
    }
    bothPorts(p);
}

void airLocked(Pencil& p, bool right)
{
    supplyWithAir(p, right, 20, 9);
    if (right)
        p.arrow({71, 28}, {71, 38});
    else
        p.text({62, 2}, QT_TRANSLATE_NOOP("siphonwright::rules", "nothing moves"), Anchor::right);
}

void airWeakens(Pencil& p, bool right)
{
    supplyWithAir(p, right, 15, 5);
    p.arrow({71, 28}, {71, right ? 38.0 : 31.0});
}

void chamberNotFull(Pencil& p, bool right)
{
    p.heater({42, 26}, 0, 1.8);
    p.back({{42, 46}, {42, 52}, {26, 52}}, 2);
    if (right) {
        p.plainLevel(48, 20, 70);
        return;
    }
    p.air({42, 38}, 12, 6);
    p.plainLevel(32, 20, 70);
    p.text({54, 26}, QT_TRANSLATE_NOOP("siphonwright::rules", "element bare"));
}

void clearedByRunning(Pencil& p, bool right)
{
    engineAndHeater(p);
    returnHose(p);
    p.supply({{14, 31}, {14, 12}, {27, 11}, {30, 20}, {42, 20}, {45, 9}, {58, 8}});
    bothPorts(p);
    if (right) {
        p.drain({36, 21});
        p.arrow({36, 23}, {36, 26});
        p.text({30, 2}, QT_TRANSLATE_NOOP("siphonwright::rules", "a bleed at the crest"), Anchor::centre);
        return;
    }
    p.air({36, 20.4}, 8, 1.7);
    p.arrow({17, 16}, {17, 10});
    p.text({30, 2}, QT_TRANSLATE_NOOP("siphonwright::rules", "pushed, but not out"), Anchor::centre);
}

void lowCoolant(Pencil& p, bool right)
{
    p.engine({8, 10}, {50, 34});
    p.tank({56, 36}, 18, right ? 46.0 : 37.5);
    p.plainLevel(41, 52, 80);
    p.text({66, 29}, QT_TRANSLATE_NOOP("siphonwright::rules", "cold minimum"), Anchor::centre);
    p.ice({64, 18});
}

constexpr std::array table = {
    RuleDrawing{
        "air-locked", Group::air,
        QT_TRANSLATE_NOOP("siphonwright::rules", "Air closes the bore: it takes more head than there is."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "No crest, no pocket: warm coolant rises, cold falls."),
        airLocked},
    RuleDrawing{"air-weakens-flow", Group::air,
                QT_TRANSLATE_NOOP("siphonwright::rules", "A small pocket takes part of the few millimetres."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "All of the head is left for the flow."),
                airWeakens},
    RuleDrawing{"chamber-not-full", Group::air,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Air over the coolant: the element burns out."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The chamber is full, the element covered."),
                chamberNotFull},
    RuleDrawing{
        "not-cleared-by-running", Group::air,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The engine's pump pushes the air and does not move it."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "A bleed lets it out."), clearedByRunning},
    RuleDrawing{
        "low-coolant", Group::air,
        QT_TRANSLATE_NOOP("siphonwright::rules", "In the cold the coolant shrinks under its minimum."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Filled so that enough is left in the cold."), lowCoolant},
};

} // namespace

std::span<const RuleDrawing> airDrawings()
{
    return table;
}

} // namespace siphonwright::rules
