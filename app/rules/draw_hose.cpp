#include "app/rules/rule_drawings.h"

#include <array>

/// The hose itself, and what it passes.
namespace siphonwright::rules {

namespace {

void boreUnderManual(Pencil& p, bool right)
{
    const double bore = right ? 2.4 : 0.5;
    engineAndHeater(p);
    p.supply({{14, 31}, {14, 14}, {58, 8}}, bore);
    p.back({{66, 25}, {66, 42}, {56, 42}}, bore);
    bothPorts(p);
}

void boreRestriction(Pencil& p, bool right)
{
    p.supply({{28, 28}, {56, 28}}, right ? 6.5 : 1.2);
    p.supply({{4, 28}, {32, 28}}, 9);
    p.supply({{52, 28}, {80, 28}}, 9);
    if (!right)
        p.ring({42, 28}, 6);
    p.text({42, 38},
           right ? QT_TRANSLATE_NOOP("siphonwright::rules", "nearly as wide")
                 : QT_TRANSLATE_NOOP("siphonwright::rules", "narrow"),
           Anchor::centre);
}

void bendTooTight(Pencil& p, bool right)
{
    p.supply({{6, 44}, {48, 44}, {48, 6}}, 6, right ? 24 : 1);
    if (!right)
        p.ring({47, 43}, 8);
}

void bendDoesNotFit(Pencil& p, bool right)
{
    if (right) {
        p.supply({{6, 46}, {34, 46}, {46, 12}, {78, 12}}, 4, 14);
        return;
    }
    p.supply({{6, 34}, {42, 34}, {42, 25}, {78, 25}}, 4, 0.5);
    p.dimension({52, 25}, {52, 34}, QT_TRANSLATE_NOOP("siphonwright::rules", "too short"));
}

void hoseLong(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    if (right)
        returnHose(p);
    else
        p.back({{66, 25}, {66, 28}, {79, 32}, {79, 41}, {56, 42}});
    bothPorts(p);
}

void unsupportedSpan(Pencil& p, bool right)
{
    p.bar({4, 39}, {80, 39});
    p.text({78, 41.5}, QT_TRANSLATE_NOOP("siphonwright::rules", "frame"), Anchor::right);
    if (right) {
        p.supply({{6, 34.5}, {78, 31}});
        for (const double x : {14.0, 34.0, 54.0, 74.0})
            p.clip({x, 34.5 - (x - 6) * 3.5 / 72}, 39);
        return;
    }
    p.supply({{6, 34.5}, {30, 23}, {54, 22}, {78, 31}}, 1.7, 16);
    p.clip({10, 32.6}, 39);
    p.clip({74, 29.6}, 39);
    p.dimension({10, 14}, {74, 14}, QT_TRANSLATE_NOOP("siphonwright::rules", "nothing holds it"));
}

void noSlack(Pencil& p, bool right)
{
    engineAndHeater(p);
    supplyHose(p);
    p.bar({80, 4}, {80, 24});
    p.bar({71, 12}, {80, 12});
    if (right) {
        p.back({{66, 25}, {68, 34}, {66, 42}, {56, 42}});
    } else {
        p.back({{66, 25}, {56, 42}});
        p.shake({61, 38});
    }
    bothPorts(p);
    p.text({78, 26}, QT_TRANSLATE_NOOP("siphonwright::rules", "frame"), Anchor::centre);
}

void groundClearance(Pencil& p, bool right)
{
    p.engine({8, 34}, {60, 52});
    p.heater({66, 23});
    if (right)
        p.supply({{14, 38}, {14, 22}, {58, 17}});
    else
        p.supply({{14, 38}, {14, 8}, {52, 8}, {52, 17}, {58, 17}});
    p.back({{66, 34}, {66, 47}, {56, 47}});
    p.port({14, 38});
    p.port({56, 47});
    p.ground(5);
    if (right)
        p.dimension({32, 5}, {32, 18.6}, QT_TRANSLATE_NOOP("siphonwright::rules", "clearance"));
}

void keepClear(Pencil& p, bool right)
{
    engineAndHeater(p);
    p.hot({24, 6}, {42, 13}, QT_TRANSLATE_NOOP("siphonwright::rules", "exhaust"));
    if (right)
        p.supply({{14, 31}, {14, 23}, {50, 21}, {50, 8}, {58, 8}});
    else
        p.supply({{14, 31}, {14, 11}, {58, 8}});
    returnHose(p);
    bothPorts(p);
}

constexpr std::array hose_table = {
    RuleDrawing{"bore-under-manual", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "A thinner hose than the heater's manual asks for."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The size that the manual asks for, all the way."),
                boreUnderManual},
    RuleDrawing{"bore-restriction", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "A part far narrower than the hose."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "A part nearly as wide as the hose."),
                boreRestriction},
    RuleDrawing{"bend-too-tight", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Bent over a sharp corner, the hose kinks."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "An open bend, or a moulded elbow."), bendTooTight},
    RuleDrawing{
        "bend-does-not-fit", Group::hose,
        QT_TRANSLATE_NOOP("siphonwright::rules", "Two bends need more length than lies between them."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Each bend has the length that it needs."), bendDoesNotFit},
    RuleDrawing{"hose-long", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The hose goes a long way round."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The hose goes the direct way."), hoseLong},
    RuleDrawing{"unsupported-span", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "A long flat piece without a clip sags and chafes."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "Clips hold it to the frame along its way."),
                unsupportedSpan},
    RuleDrawing{"no-slack", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Pulled straight: the engine tears at both ends."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "A bend gives when the engine moves."), noSlack},
    RuleDrawing{"ground-clearance", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The hose hangs where the road reaches it."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The hose stays clear of the ground."),
                groundClearance},
    RuleDrawing{"keep-clear", Group::hose,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The hose touches something hot or moving."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The hose keeps its distance."), keepClear},
};

} // namespace

std::span<const RuleDrawing> hoseDrawings()
{
    return hose_table;
}

} // namespace siphonwright::rules
