#include "app/rules/rule_drawings.h"

#include <array>

/// How the loop runs: what a wrong layout does to flow and temperatures.
namespace siphonwright::rules {

namespace {

void stalledLoop(Pencil& p, bool right)
{
    if (right) {
        engineAndHeater(p);
        supplyHose(p);
        returnHose(p);
        bothPorts(p);
        p.arrow({71, 28}, {71, 38});
        p.arrow({40, 7}, {50, 5.5});
        return;
    }
    p.engine({6, 18}, {46, 40});
    p.heater({66, 32});
    p.supply({{12, 22}, {12, 12}, {50, 12}, {58, 26}});
    p.back({{66, 43}, {66, 48}, {52, 48}, {52, 34}, {42, 34}});
    p.port({12, 22.5});
    p.port({42, 34});
    p.text({32, 6}, QT_TRANSLATE_NOOP("siphonwright::rules", "nothing moves"), Anchor::centre);
}

void reverseLoop(Pencil& p, bool right)
{
    if (right) {
        engineAndHeater(p);
        supplyHose(p);
        returnHose(p);
        bothPorts(p);
        p.arrow({71, 28}, {71, 38});
        return;
    }
    p.engine();
    p.heater({66, 14});
    p.supply({{56, 42}, {52, 22}, {52, 8}, {58, 8}});
    p.back({{66, 25}, {66, 28}, {79, 28}, {79, 4}, {14, 4}, {14, 31}});
    p.port({14, 31.5});
    p.port({56, 42});
    p.arrow({47.5, 10}, {47.5, 22});
    p.text({44, 14}, QT_TRANSLATE_NOOP("siphonwright::rules", "backward"), Anchor::right);
}

void partTakesLoss(Pencil& p, bool right)
{
    p.supply({{4, 30}, {34, 30}}, right ? 6 : 7);
    p.supply({{50, 30}, {80, 30}}, right ? 6 : 7);
    p.supply({{32, 30}, {52, 30}}, right ? 6 : 1.4);
    p.valve({42, 30}, false);
    if (!right)
        p.ring({42, 30}, 7);
    p.text({42, 40},
           right ? QT_TRANSLATE_NOOP("siphonwright::rules", "as wide as the hose")
                 : QT_TRANSLATE_NOOP("siphonwright::rules", "takes a third of the head"),
           Anchor::centre);
}

void muchPower(Pencil& p, bool right)
{
    p.engine({8, 32}, {76, 50});
    p.heater({right ? 42.0 : 20.0, 16});
    if (right) {
        p.heat({42, 28});
        return;
    }
    p.heater({42, 16});
    p.heater({64, 16});
    for (const double x : {20.0, 42.0, 64.0})
        p.heat({x, 28});
    p.text({42, 2}, QT_TRANSLATE_NOOP("siphonwright::rules", "over 5 kW and no pump"), Anchor::centre);
}

void outletTooHot(Pencil& p, bool right)
{
    p.heater({42, 24}, 0, 1.5);
    p.supply({{6, 20}, {30, 15}}, right ? 2.8 : 0.7);
    p.back({{42, 41}, {42, 50}, {26, 50}}, right ? 2.8 : 0.7);
    if (right) {
        p.text({47, 44}, QT_TRANSLATE_NOOP("siphonwright::rules", "warm"));
        return;
    }
    p.heat({20, 47});
    p.text({47, 44}, QT_TRANSLATE_NOOP("siphonwright::rules", "over 82 °C"));
}

void nearBoiling(Pencil& p, bool right)
{
    p.heater({42, 26}, 0, 1.8);
    if (right) {
        p.dimension({58, 20}, {58, 38}, QT_TRANSLATE_NOOP("siphonwright::rules", "margin"));
        p.plainLevel(38, 52, 76);
        return;
    }
    for (const At& at : {At{39, 28}, At{44, 31}, At{41, 36}, At{45, 39}})
        p.ring(at, 1.6);
    p.heat({42, 47});
    p.text({48, 49}, QT_TRANSLATE_NOOP("siphonwright::rules", "steam"));
}

void boreStarves(Pencil& p, bool right)
{
    const double bore = right ? 2.6 : 0.4;
    engineAndHeater(p);
    p.supply({{14, 31}, {14, 14}, {58, 8}}, bore);
    p.back({{66, 25}, {66, 42}, {56, 42}}, bore);
    bothPorts(p);
    if (right) {
        p.arrow({71, 28}, {71, 38});
        p.arrow({74, 28}, {74, 38});
    } else {
        p.heat({76, 18});
    }
}

/// Power over an hour, as a chart of on and off.
void cycles(Pencil& p, bool right)
{
    p.arrow({12, 16}, {76, 16});
    p.arrow({12, 16}, {12, 46});
    p.text({74, 10}, QT_TRANSLATE_NOOP("siphonwright::rules", "one hour"), Anchor::right);
    p.text({15, 44}, QT_TRANSLATE_NOOP("siphonwright::rules", "power"));
    const int count = right ? 2 : 7;
    const double width = 56.0 / count;
    for (int i = 0; i < count; ++i) {
        const double x = 14 + i * width;
        p.bar({x, 17}, {x, 38});
        p.bar({x, 38}, {x + width * 0.55, 38});
        p.bar({x + width * 0.55, 38}, {x + width * 0.55, 17});
    }
}

/// The block's temperature over the hours against the target.
void target(Pencil& p, bool right)
{
    p.arrow({12, 12}, {76, 12});
    p.arrow({12, 12}, {12, 48});
    p.plainLevel(38, 12, 74);
    p.text({14, 40}, QT_TRANSLATE_NOOP("siphonwright::rules", "target"));
    p.text({74, 6}, QT_TRANSLATE_NOOP("siphonwright::rules", "hours"), Anchor::right);
    const double ends = right ? 43 : 27;
    At from{12, 14};
    for (int i = 1; i <= 12; ++i) {
        const double t = i / 12.0;
        const double gone = 1 - (1 - t) * (1 - t) * (1 - t);
        const At to{12 + 58 * t, 14 + (ends - 14) * gone};
        p.bar(from, to);
        from = to;
    }
}

constexpr std::array running_table = {
    RuleDrawing{
        "stalled", Group::running,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The warm coolant stands no higher than the cold."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "Warm coolant rises all the way, cold falls all the way."),
        stalledLoop},
    RuleDrawing{
        "reverse-circulation", Group::running,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The supply rises from the heater: warm coolant takes it."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The return rises from the outlet, the supply falls."),
        reverseLoop},
    RuleDrawing{
        "part-takes-loss", Group::running,
        QT_TRANSLATE_NOOP("siphonwright::rules", "One narrow part takes much of the few millimetres."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "A part with a full bore takes little."), partTakesLoss},
    RuleDrawing{
        "much-power", Group::running,
        QT_TRANSLATE_NOOP("siphonwright::rules", "More heat than a few millimetres of head carry away."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "As much power as the engine's size asks for."), muchPower},
    RuleDrawing{"outlet-over-limit", Group::running,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Too little flows: what leaves is too hot."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "Enough flows to carry the heat away."),
                outletTooHot},
    RuleDrawing{"boiling-margin", Group::running,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Bubbles gather and steam bares the element."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The coolant stays well under its boiling point."),
                nearBoiling},
    RuleDrawing{
        "bore-starves-flow", Group::running,
        QT_TRANSLATE_NOOP("siphonwright::rules", "A hose too thin for this heater and these heights."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "A hose that lets enough through."), boreStarves},
    RuleDrawing{"cycles-over-4", Group::running,
                QT_TRANSLATE_NOOP("siphonwright::rules", "The heater warms itself: on and off all the time."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The heater warms the engine: few turns an hour."),
                cycles},
    RuleDrawing{
        "target-not-reached", Group::running,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The engine loses the heat before it is warm enough."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The engine gets warm enough in the time given."), target},
};

} // namespace

std::span<const RuleDrawing> runningDrawings()
{
    return running_table;
}

} // namespace siphonwright::rules
