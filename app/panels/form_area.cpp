#include "app/panels/access.h"

namespace siphonwright::panels {

namespace {

/// The outline that a corner belongs to, or nothing.
const std::vector<Vec2>* outlineOf(const Sketch& sketch, const PartRef& part)
{
    switch (part.kind) {
    case PartKind::engine_corner:
        return sketch.engine ? &sketch.engine->outline : nullptr;
    case PartKind::jacket_corner:
        return sketch.engine ? &sketch.engine->jacket : nullptr;
    case PartKind::area_corner: {
        const Area* area = sketch.area(part.id);
        return area ? &area->outline : nullptr;
    }
    default:
        return nullptr;
    }
}

void setCorner(Sketch& sketch, const PartRef& part, const Vec2& at)
{
    if (part.kind == PartKind::area_corner) {
        areaAccess(part.id).change(sketch, [&](Area& area) { area.outline[part.index] = at; });
        return;
    }
    if (sketch.engine)
        (part.kind == PartKind::jacket_corner ? sketch.engine->jacket : sketch.engine->outline)[part.index] =
            at;
}

Field cornerField(const QString& label, const PartRef& part, double Vec2::*member)
{
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = label;
    row.unit = Unit::mm;
    row.number = [part, member](const Sketch& sketch) -> std::optional<double> {
        const auto* outline = outlineOf(sketch, part);
        return outline && part.index < outline->size() ? std::optional((*outline)[part.index].*member)
                                                       : std::nullopt;
    };
    row.set_number = [part, member](Sketch& sketch, std::optional<double> value) {
        const auto* outline = outlineOf(sketch, part);
        if (!outline || part.index >= outline->size() || !value)
            return;
        Vec2 at = (*outline)[part.index];
        at.*member = *value;
        setCorner(sketch, part, at);
    };
    return row;
}

} // namespace

Form areaForm(const Id& id)
{
    Fields<Area> fields(areaAccess(id));
    fields.text(
        FormText::tr("Name"), [](auto& a) -> auto& { return a.name; });
    fields.choice(
        FormText::tr("What it is"),
        {FormText::tr("exhaust"), FormText::tr("turbocharger"), FormText::tr("heat shield"),
         FormText::tr("belt"), FormText::tr("fan"), FormText::tr("shaft"), FormText::tr("steering"),
         FormText::tr("suspension"), FormText::tr("other")},
        [](auto& a) -> auto& { return a.what; });
    fields
        .quantity(
            FormText::tr("Near side"), Unit::mm, [](auto& a) -> auto& { return a.y_from_mm; })
        .tip = FormText::tr("Depth of its side towards the viewer; not entered: not known");
    fields.quantity(
        FormText::tr("Far side"), Unit::mm, [](auto& a) -> auto& { return a.y_to_mm; });
    fields
        .quantity(
            FormText::tr("Keep clear by"), Unit::mm, [](auto& a) -> auto& { return a.clearance_mm; })
        .least = 0;
    return fields.take();
}

Form cornerForm(const PartRef& part)
{
    return {cornerField(positionLabels().value(0), part, &Vec2::x),
            cornerField(positionLabels().value(1), part, &Vec2::z)};
}

Form groundForm()
{
    Fields<Sketch> fields(sketchAccess());
    fields
        .quantity(
            FormText::tr("Ground over datum"), Unit::mm, [](auto& s) -> auto& { return s.ground_z_mm; })
        .tip = FormText::tr("At the lowest ride height");
    return fields.take();
}

} // namespace siphonwright::panels
