#include "app/rules/rule_drawings.h"

#include <array>

/// What is in the loop.
namespace siphonwright::rules {

namespace {

void antifreezeOver60(Pencil& p, bool right)
{
    p.beaker({30, 12}, right ? 0.5 : 0.85, QT_TRANSLATE_NOOP("siphonwright::rules", "antifreeze"));
}

void freezeMargin(Pencil& p, bool right)
{
    p.thermometer({40, 12}, right ? 0.62 : 0.3, right ? 0.25 : 0.66,
                  QT_TRANSLATE_NOOP("siphonwright::rules", "coolant freezes"));
    if (!right)
        p.ice({56, 22});
}

void antifreezeKind(Pencil& p, bool right)
{
    p.beaker({24, 12}, 0.5,
             right ? QT_TRANSLATE_NOOP("siphonwright::rules", "kind: as the engine's")
                   : QT_TRANSLATE_NOOP("siphonwright::rules", "kind: ?"));
    if (right)
        p.text({41, 30}, QT_TRANSLATE_NOOP("siphonwright::rules", "maker specifies"));
}

constexpr std::array coolant_table = {
    RuleDrawing{"antifreeze-over-60", Group::coolant,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Nearly all antifreeze, hardly any water."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "As much antifreeze as the cold asks for."),
                antifreezeOver60},
    RuleDrawing{
        "freeze-margin", Group::coolant,
        QT_TRANSLATE_NOOP("siphonwright::rules", "The coldest night is colder than the coolant bears."),
        QT_TRANSLATE_NOOP("siphonwright::rules", "The coolant freezes only well under the coldest night."),
        freezeMargin},
    RuleDrawing{"antifreeze-kind-unknown", Group::coolant,
                QT_TRANSLATE_NOOP("siphonwright::rules", "Nobody has written down which antifreeze it is."),
                QT_TRANSLATE_NOOP("siphonwright::rules", "The kind is known and is not mixed with others."),
                antifreezeKind},
};

} // namespace

std::span<const RuleDrawing> coolantDrawings()
{
    return coolant_table;
}

} // namespace siphonwright::rules
