#include "app/rules/rule_drawings.h"

#include <array>

/// Where the heater hangs, and how.
namespace siphonwright::rules {

namespace {

void heaterDrop(Pencil& p, bool right)
{
    p.engine({6, 27}, {50, 48});
    const double z = right ? 11 : 18.5;
    p.heater({60, z});
    p.supply({{12, 31}, {12, z + 1}, {52, z - 6}});
    p.back({{60, z + 11}, {60, 42}, {46, 42}});
    p.port({12, 31.5});
    p.port({46, 42});
    p.plainLevel(30, 47, 76);
    p.plainLevel(z + 9, 56, 76);
    if (right)
        p.dimension({70, 20}, {70, 30}, QT_TRANSLATE_NOOP("siphonwright::rules", "drop"));
    else
        p.text({68, 32}, QT_TRANSLATE_NOOP("siphonwright::rules", "little drop"));
}

void heaterUnderReturn(Pencil& p, bool right)
{
    p.engine({8, 32}, {60, 51});
    if (right) {
        p.heater({66, 14});
        p.supply({{14, 36}, {14, 14}, {58, 8}});
        p.back({{66, 25}, {66, 45}, {56, 45}});
    } else {
        p.heater({22, 13});
        p.supply({{14, 36}, {4.5, 34}, {4.5, 7}, {14, 7}});
        p.back({{22, 24}, {22, 26}, {66, 29}, {66, 45}, {56, 45}});
    }
    p.port({14, 36.5});
    p.port({56, 45});
}

void chamberTrapsAir(Pencil& p, bool right)
{
    if (right) {
        p.heater({42, 25}, 0, 1.7);
        p.back({{42, 44}, {42, 52}, {76, 52}}, 2.4);
        p.supply({{6, 20}, {28.4, 14.8}}, 2.4);
        return;
    }
    p.heater({44, 28}, -90, 1.7);
    p.back({{25.3, 28}, {10, 28}, {10, 50}}, 2.4);
    p.supply({{76, 20}, {54.2, 6}, {54.2, 14.4}}, 2.4);
    p.air({44, 34}, 24, 3.4, 3);
}

void heaterPosition(Pencil& p, bool right)
{
    p.heater({42, 26}, right ? 0 : 90, 1.7);
    p.arrow({72, 14}, {72, 40});
    p.text({72, 42}, QT_TRANSLATE_NOOP("siphonwright::rules", "up"), Anchor::centre);
    p.text({42, 3}, QT_TRANSLATE_NOOP("siphonwright::rules", "the manual: upright only"), Anchor::centre);
}

void mountedOnEngine(Pencil& p, bool right)
{
    p.engine();
    p.heater({66, 14});
    supplyHose(p);
    returnHose(p);
    bothPorts(p);
    if (right) {
        p.bar({80, 4}, {80, 50});
        p.bar({71, 12}, {80, 12});
        p.text({78.6, 52}, QT_TRANSLATE_NOOP("siphonwright::rules", "frame"), Anchor::centre);
        return;
    }
    p.bar({50, 27}, {50, 17});
    p.bar({50, 17}, {61, 17});
    p.shake({73, 14});
}

constexpr std::array heater_table = {
    RuleDrawing{
        "heater-drop", Group::heater,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The heater's top is hardly lower than the jacket."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The heater hangs well under the jacket's lowest point."),
        heaterDrop},
    RuleDrawing{"heater-under-return", Group::heater,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The heater is far from under the return port."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The heater is right under the return port."),
                heaterUnderReturn},
    RuleDrawing{
        "heater-chamber-traps-air", Group::heater,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The chamber reaches higher than its outlet: air stays."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The outlet is at the top: air leaves by itself."),
        chamberTrapsAir},
    RuleDrawing{
        "heater-position-not-allowed", Group::heater,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The heater lies where its manual wants it upright."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The heater stands as its manual says."), heaterPosition},
    RuleDrawing{"mounted-on-engine", Group::heater,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The bracket is on the engine and shakes with it."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The bracket is on the frame."), mountedOnEngine},
};

} // namespace

std::span<const RuleDrawing> heaterDrawings()
{
    return heater_table;
}

} // namespace siphonwright::rules
