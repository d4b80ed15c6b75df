#include "app/language/in_words.h"
#include "app/panels/access.h"

#include "core/sketch/edits.h"

#include <utility>

namespace siphonwright::panels {

namespace {

QString named(const std::string& name, const Id& id)
{
    return inWords(name.empty() ? id : name);
}

QString titleOf(const Sketch& sketch, const PartRef& part)
{
    const auto hoseName = [&] {
        const Hose* hose = sketch.hose(part.id);
        return hose ? named(hose->name, hose->id) : QString();
    };
    const int number = static_cast<int>(part.index) + 1;
    switch (part.kind) {
    case PartKind::engine:
        return FormText::tr("Engine");
    case PartKind::engine_corner:
        return FormText::tr("Engine outline, corner %1").arg(number);
    case PartKind::jacket:
        return FormText::tr("Water jacket");
    case PartKind::jacket_corner:
        return FormText::tr("Water jacket, corner %1").arg(number);
    case PartKind::thermostat:
        return FormText::tr("Thermostat housing");
    case PartKind::tank:
        return FormText::tr("Surge tank");
    case PartKind::port:
        return FormText::tr("Port: %1").arg(named(sketch.port(part.id)->name, part.id));
    case PartKind::heater:
        return FormText::tr("Heater: %1").arg(named(sketch.heater(part.id)->name, part.id));
    case PartKind::hose:
        return hoseName();
    case PartKind::hose_point:
        return FormText::tr("%1, point %2").arg(hoseName()).arg(number);
    case PartKind::hose_end:
        return part.index == 0 ? FormText::tr("%1, start").arg(hoseName())
                               : FormText::tr("%1, end").arg(hoseName());
    case PartKind::inline_part:
        return FormText::tr("%1, in-line part %2").arg(hoseName()).arg(number);
    case PartKind::clip:
        return FormText::tr("%1, clip %2").arg(hoseName()).arg(number);
    case PartKind::area:
        return FormText::tr("Area to keep clear of");
    case PartKind::area_corner:
        return FormText::tr("Area, corner %1").arg(number);
    case PartKind::ground:
        return FormText::tr("Ground");
    case PartKind::dimension:
        return FormText::tr("Dimension");
    case PartKind::photo:
        return FormText::tr("Photo");
    case PartKind::nothing:
        break;
    }
    return FormText::tr("The whole drawing");
}

Form rowsOf(const Sketch& sketch, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::engine:
        return engineForm(sketch);
    case PartKind::jacket:
        return jacketForm();
    case PartKind::thermostat:
        return thermostatForm();
    case PartKind::tank:
        return tankForm();
    case PartKind::port:
        return portForm(part.id);
    case PartKind::heater:
        return heaterForm(part.id);
    case PartKind::hose:
        return hoseForm(sketch, part.id);
    case PartKind::hose_point:
        return hosePointForm(part.id, part.index);
    case PartKind::hose_end:
        return hoseEndForm(sketch, part.id, part.index);
    case PartKind::inline_part:
        return inlinePartForm(part.id, part.index);
    case PartKind::clip:
        return clipForm(part.id, part.index);
    case PartKind::area:
        return areaForm(part.id);
    case PartKind::engine_corner:
    case PartKind::jacket_corner:
    case PartKind::area_corner:
        return cornerForm(part);
    case PartKind::ground:
        return groundForm();
    case PartKind::dimension:
        return dimensionForm(part.id);
    case PartKind::photo:
        return photoForm();
    case PartKind::nothing:
        break;
    }
    return sheetForm();
}

} // namespace

void append(Form& form, Form more)
{
    for (Field& row : more)
        form.push_back(std::move(row));
}

PartForm formFor(const Sketch& sketch, const PartRef& part)
{
    // A part that an undo took away leaves the drawing itself to be described.
    const PartRef shown = exists(sketch, part) ? part : PartRef();
    return {titleOf(sketch, shown), rowsOf(sketch, shown)};
}

} // namespace siphonwright::panels
