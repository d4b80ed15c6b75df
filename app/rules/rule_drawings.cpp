#include "app/rules/rule_drawings.h"

#include "app/language/tr.h"

#include <QPainter>

namespace siphonwright::rules {

QString titleOf(Group group)
{
    switch (group) {
    case Group::elevation:
        return tr("Elevation");
    case Group::heater:
        return tr("Heater");
    case Group::ports:
        return tr("Ports");
    case Group::hose:
        return tr("Hose");
    case Group::coolant:
        return tr("Coolant");
    case Group::connections:
        return tr("Connections");
    case Group::running:
        return tr("Running");
    case Group::air:
        return tr("Air");
    case Group::other:
        return tr("Other");
    }
    return {};
}

QString RuleDrawing::caption(bool of_right) const
{
    return tr(of_right ? right : wrong);
}

std::vector<const RuleDrawing*> allDrawings()
{
    std::vector<const RuleDrawing*> all;
    for (const auto& group : {elevationDrawings(), heaterDrawings(), portDrawings(), hoseDrawings(),
                              coolantDrawings(), connectionDrawings(), runningDrawings(), airDrawings()})
        for (const RuleDrawing& drawing : group)
            all.push_back(&drawing);
    return all;
}

const RuleDrawing* drawingOf(std::string_view rule)
{
    for (const RuleDrawing* drawing : allDrawings())
        if (drawing->rule == rule)
            return drawing;
    return nullptr;
}

Group groupOf(std::string_view rule)
{
    const RuleDrawing* drawing = drawingOf(rule);
    return drawing ? drawing->group : Group::other;
}

void paintCase(QPainter& painter, const drawing::Palette& palette, const RuleDrawing& drawing, bool right)
{
    Pencil pencil(painter, palette);
    drawing.draw(pencil, right);
    pencil.verdict(right);
}

void supplyHose(Pencil& pencil)
{
    pencil.supply({{14, 31}, {14, 14}, {58, 8}});
}

void returnHose(Pencil& pencil)
{
    pencil.back({{66, 25}, {66, 42}, {56, 42}});
}

void engineAndHeater(Pencil& pencil)
{
    pencil.engine();
    pencil.heater({66, 14});
}

void bothPorts(Pencil& pencil)
{
    pencil.port({14, 31.5});
    pencil.port({56, 42});
}

} // namespace siphonwright::rules
