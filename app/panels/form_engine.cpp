#include "app/panels/access.h"

#include "core/sketch/edits.h"

#include <algorithm>

namespace siphonwright::panels {

namespace {

Field headingField()
{
    Field row;
    row.kind = Field::Kind::choice;
    row.label = FormText::tr("Engine front faces");
    row.choices = {FormText::tr("vehicle front"), FormText::tr("vehicle right"), FormText::tr("vehicle rear"),
                   FormText::tr("vehicle left")};
    row.choice = [](const Sketch& sketch) { return sketch.engine ? sketch.engine->heading_deg / 90 : -1; };
    row.set_choice = [](Sketch& sketch, int index) {
        if (sketch.engine)
            sketch.engine->heading_deg = 90 * index;
    };
    return row;
}

std::optional<std::pair<double, double>> levelsOf(const Sketch& sketch)
{
    if (!sketch.engine || sketch.engine->jacket.empty())
        return std::nullopt;
    const auto [low, high] = std::minmax_element(sketch.engine->jacket.begin(), sketch.engine->jacket.end(),
                                                 [](const Vec2& a, const Vec2& b) { return a.z < b.z; });
    return std::pair(low->z, high->z);
}

Field levelField(const QString& label, bool lowest)
{
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = label;
    row.tip = FormText::tr("Stretches the jacket's outline to this level");
    row.unit = Unit::mm;
    row.number = [lowest](const Sketch& sketch) -> std::optional<double> {
        const auto levels = levelsOf(sketch);
        if (!levels)
            return std::nullopt;
        return lowest ? levels->first : levels->second;
    };
    row.set_number = [lowest](Sketch& sketch, std::optional<double> value) {
        const auto levels = levelsOf(sketch);
        if (levels && value)
            setJacketLevels(sketch, lowest ? *value : levels->first, lowest ? levels->second : *value);
    };
    return row;
}

} // namespace

Form jacketForm()
{
    Fields<Engine> fields(engineAccess());
    fields.heading(FormText::tr("Water jacket"));
    Form form = fields.take();
    form.push_back(levelField(FormText::tr("Lowest level"), true));
    fields.addSource(
        form.back(), [](auto& e) -> auto& { return e.jacket_source; });
    form.push_back(levelField(FormText::tr("Highest level"), false));
    fields
        .quantity(
            FormText::tr("Near side"), Unit::mm, [](auto& e) -> auto& { return e.jacket_y_from_mm; })
        .tip = FormText::tr("Depth of the jacket's side towards the viewer");
    fields.quantity(
        FormText::tr("Far side"), Unit::mm, [](auto& e) -> auto& { return e.jacket_y_to_mm; });
    append(form, fields.take());
    return form;
}

Form engineForm(const Sketch& sketch)
{
    Fields<Engine> fields(engineAccess());
    fields.text(
        FormText::tr("Name"), [](auto& e) -> auto& { return e.name; });
    fields.text(
        FormText::tr("Serial number"), [](auto& e) -> auto& { return e.serial_number; });
    fields.choice(
        FormText::tr("Arrangement"),
        {FormText::tr("in-line 3"), FormText::tr("in-line 4"), FormText::tr("in-line 5"),
         FormText::tr("in-line 6"), FormText::tr("vee 6"), FormText::tr("vee 8"), FormText::tr("vee 12"),
         FormText::tr("vee 16"), FormText::tr("horizontal"), FormText::tr("slanted in-line")},
        [](auto& e) -> auto& { return e.arrangement; });
    fields
        .quantity(
            FormText::tr("Displacement"), Unit::litre, [](auto& e) -> auto& { return e.displacement_l; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Mass"), Unit::kg, [](auto& e) -> auto& { return e.mass_kg; })
        .least = 0;
    fields.choice(
        FormText::tr("Block"), {FormText::tr("iron"), FormText::tr("aluminium")},
        [](auto& e) -> auto& { return e.material; });
    fields
        .quantity(
            FormText::tr("Coolant in engine"), Unit::litre,
            [](auto& e) -> auto& { return e.coolant_volume_l; })
        .least = 0;
    fields.choice(
        FormText::tr("Front is at the"), {FormText::tr("left"), FormText::tr("right")},
        [](auto& e) -> auto& { return e.front; });
    Form form = fields.take();
    form.push_back(headingField());
    fields
        .quantity(
            FormText::tr("Mount angle"), Unit::degree, [](auto& e) -> auto& { return e.mount_angle_deg; })
        .tip = FormText::tr("Positive: the engine's rear is lower");
    fields
        .quantity(
            FormText::tr("Lean"), Unit::degree, [](auto& e) -> auto& { return e.lean_deg; })
        .tip = FormText::tr("Positive: the top leans towards the engine's right side");
    append(form, fields.take());
    append(form, jacketForm());
    if (sketch.engine && sketch.engine->thermostat)
        form.push_back(linkTo(FormText::tr("Thermostat housing"), {PartKind::thermostat, {}, 0}));
    if (sketch.tank)
        form.push_back(linkTo(FormText::tr("Surge tank and levels"), {PartKind::tank, {}, 0}));
    return form;
}

Form thermostatForm()
{
    Fields<ThermostatHousing> fields(thermostatAccess());
    fields.quantity(
        positionLabels().value(0), Unit::mm, [](auto& t) -> auto& { return t.position.x; });
    fields.addSource(
        fields.last(), [](auto& t) -> auto& { return t.position_source; });
    fields.quantity(
        positionLabels().value(1), Unit::mm, [](auto& t) -> auto& { return t.position.z; });
    fields.quantity(
        positionLabels().value(2), Unit::mm, [](auto& t) -> auto& { return t.position.y; });
    fields.choice(
        FormText::tr("Sits on the"), {FormText::tr("outlet side"), FormText::tr("inlet side")},
        [](auto& t) -> auto& { return t.side; });
    fields.choice(
        FormText::tr("Bleed hole"), {FormText::tr("no"), FormText::tr("yes")},
        [](auto& t) -> auto& { return t.bleed_hole; });
    return fields.take();
}

Form tankForm()
{
    Fields<SurgeTank> fields(tankAccess());
    fields.heading(FormText::tr("Coolant levels over datum"));
    fields.quantity(
        FormText::tr("Cold minimum"), Unit::mm, [](auto& t) -> auto& { return t.cold_min_mm; });
    fields.quantity(
        FormText::tr("Cold full"), Unit::mm, [](auto& t) -> auto& { return t.cold_full_mm; });
    fields.quantity(
        FormText::tr("Hot"), Unit::mm, [](auto& t) -> auto& { return t.hot_mm; });
    fields.heading(FormText::tr("Position"));
    fields.quantity(
        positionLabels().value(0), Unit::mm, [](auto& t) -> auto& { return t.position.x; });
    fields.addSource(
        fields.last(), [](auto& t) -> auto& { return t.position_source; });
    fields.quantity(
        positionLabels().value(1), Unit::mm, [](auto& t) -> auto& { return t.position.z; });
    fields.quantity(
        positionLabels().value(2), Unit::mm, [](auto& t) -> auto& { return t.position.y; });
    return fields.take();
}

} // namespace siphonwright::panels
