#include "app/panels/access.h"
#include "app/panels/elbow_rows.h"

namespace siphonwright::panels {

namespace {

void addBody(Fields<Heater>& fields)
{
    fields.text(
        FormText::tr("Name"), [](auto& h) -> auto& { return h.name; });
    fields.text(
        FormText::tr("Serial number"), [](auto& h) -> auto& { return h.serial_number; });
    fields.quantity(
        positionLabels().value(0), Unit::mm, [](auto& h) -> auto& { return h.position.x; });
    fields.addSource(
        fields.last(), [](auto& h) -> auto& { return h.position_source; });
    fields.quantity(
        positionLabels().value(1), Unit::mm, [](auto& h) -> auto& { return h.position.z; });
    fields.quantity(
        positionLabels().value(2), Unit::mm, [](auto& h) -> auto& { return h.position.y; });
    Field& tilt = fields.quantity(
        FormText::tr("Tilt from upright"), Unit::degree, [](auto& h) -> auto& { return h.tilt_deg; });
    tilt.tip = FormText::tr("0 upright, 90 lying to the right, -90 to the left");
    tilt.least = -180;
    tilt.most = 180;
    Field& turn = fields.quantity(
        FormText::tr("Turn about plumb"), Unit::degree, [](auto& h) -> auto& { return h.turn_deg; });
    turn.least = -360;
    turn.most = 360;
    fields
        .quantity(
            FormText::tr("Body length"), Unit::mm, [](auto& h) -> auto& { return h.length_mm; })
        .least = 1;
    fields
        .quantity(
            FormText::tr("Body diameter"), Unit::mm, [](auto& h) -> auto& { return h.diameter_mm; })
        .least = 1;
    fields.choice(
        FormText::tr("Mounted on"), {FormText::tr("frame"), FormText::tr("engine")},
        [](auto& h) -> auto& { return h.mounting; });
}

/// One yes/no of the positions that the manual allows.
template <class At>
Field allowed(const Id& id, const QString& label, At at)
{
    const Access<Heater> access = heaterAccess(id);
    Field row;
    row.kind = Field::Kind::choice;
    row.label = label;
    row.may_be_empty = true;
    row.choices = {FormText::tr("not allowed"), FormText::tr("allowed")};
    row.choice = [access, at](const Sketch& sketch) {
        const Heater* heater = access.read(sketch);
        return heater && heater->allowed_positions.known()
                   ? static_cast<int>(at(*heater->allowed_positions.value))
                   : -1;
    };
    row.set_choice = [access, at](Sketch& sketch, int index) {
        access.change(sketch, [&](Heater& heater) {
            auto& fact = heater.allowed_positions;
            if (index < 0) {
                fact.value.reset();
                return;
            }
            if (!fact.known()) {
                fact.value = AllowedPositions();
                fact.source = Source::manual;
            }
            at(*fact.value) = index == 1;
        });
    };
    return row;
}

template <class Of>
void addNozzle(Fields<Heater>& fields, const QString& title, Of of)
{
    fields.heading(title);
    fields
        .quantity(
            FormText::tr("Bore"), Unit::mm, [of](auto& h) -> auto& { return of(h).bore_mm; })
        .least = 0.1;
    fields.quantity(
        FormText::tr("From centre, right"), Unit::mm, [of](auto& h) -> auto& { return of(h).offset.x; });
    fields.quantity(
        FormText::tr("From centre, up"), Unit::mm, [of](auto& h) -> auto& { return of(h).offset.z; });
    fields.quantity(
        FormText::tr("From centre, away"), Unit::mm, [of](auto& h) -> auto& { return of(h).offset.y; });
    fields
        .quantity(
            FormText::tr("Points to, in plan"),
            Unit::degree, [of](auto& h) -> auto& { return of(h).axis.azimuth_deg; })
        .tip = FormText::tr("0 right, 90 away from the viewer, 180 left");
    fields.quantity(
        FormText::tr("Points up by"),
        Unit::degree, [of](auto& h) -> auto& { return of(h).axis.elevation_deg; });
    fields
        .quantity(
            FormText::tr("Stub length"), Unit::mm, [of](auto& h) -> auto& { return of(h).stub.length_mm; })
        .least = 0;
    addElbow(
        fields, [of](auto& h) -> auto& { return of(h).stub; });
    fields.text(
        FormText::tr("Thread"), [of](auto& h) -> auto& { return of(h).thread; });
}

Field phasesField(const Id& id)
{
    const Access<Heater> access = heaterAccess(id);
    Field row;
    row.kind = Field::Kind::choice;
    row.label = FormText::tr("Phases");
    row.choices = {FormText::tr("single phase"), FormText::tr("three phase")};
    row.choice = [access](const Sketch& sketch) {
        const Heater* heater = access.read(sketch);
        return heater && heater->phases == 3 ? 1 : 0;
    };
    row.set_choice = [access](Sketch& sketch, int index) {
        access.change(sketch, [index](Heater& heater) { heater.phases = index == 1 ? 3 : 1; });
    };
    return row;
}

/// No cut-out, one that closes again by itself, or one to be reset by hand.
Field cutOutField(const Id& id)
{
    const Access<Heater> access = heaterAccess(id);
    Field row;
    row.kind = Field::Kind::choice;
    row.label = FormText::tr("Over-temperature cut-out");
    row.choices = {FormText::tr("none"), FormText::tr("resets itself"), FormText::tr("manual reset")};
    row.choice = [access](const Sketch& sketch) {
        const Heater* heater = access.read(sketch);
        if (!heater || !heater->cut_out)
            return 0;
        return heater->cut_out->manual_reset ? 2 : 1;
    };
    row.set_choice = [access](Sketch& sketch, int index) {
        access.change(sketch, [index](Heater& heater) {
            if (index <= 0) {
                heater.cut_out.reset();
                return;
            }
            if (!heater.cut_out)
                heater.cut_out = CutOut();
            heater.cut_out->manual_reset = index == 2;
        });
    };
    return row;
}

Field cutOutTripField(const Id& id)
{
    const Access<Heater> access = heaterAccess(id);
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = FormText::tr("Cut-out opens at");
    row.unit = Unit::degC;
    row.may_be_empty = true;
    row.number = [access](const Sketch& sketch) -> std::optional<double> {
        const Heater* heater = access.read(sketch);
        return heater && heater->cut_out ? std::optional(heater->cut_out->trip_degC) : std::nullopt;
    };
    row.set_number = [access](Sketch& sketch, std::optional<double> value) {
        access.change(sketch, [value](Heater& heater) {
            if (!value) {
                heater.cut_out.reset();
                return;
            }
            if (!heater.cut_out)
                heater.cut_out = CutOut();
            heater.cut_out->trip_degC = *value;
        });
    };
    return row;
}

void addChamber(Fields<Heater>& fields)
{
    fields.heading(FormText::tr("Chamber, from the body's centre"));
    fields.quantity(
        FormText::tr("Top"), Unit::mm, [](auto& h) -> auto& { return h.chamber_top_mm; });
    fields.quantity(
        FormText::tr("Bottom"), Unit::mm, [](auto& h) -> auto& { return h.chamber_bottom_mm; });
    fields
        .quantity(
            FormText::tr("Bore"), Unit::mm, [](auto& h) -> auto& { return h.chamber_bore_mm; })
        .least = 1;
    fields
        .quantity(
            FormText::tr("Volume"), Unit::ml, [](auto& h) -> auto& { return h.chamber_volume_ml; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Top of element"), Unit::mm, [](auto& h) -> auto& { return h.element_top_mm; })
        .tip = FormText::tr("Coolant must stand over it before power goes on");
}

void addElectrics(Fields<Heater>& fields)
{
    fields.heading(FormText::tr("Electrical"));
    fields
        .quantity(
            FormText::tr("Power"), Unit::watt, [](auto& h) -> auto& { return h.power_W; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Rated voltage"), Unit::volt, [](auto& h) -> auto& { return h.rated_V; })
        .least = 0;
    fields
        .quantity(
            FormText::tr("Voltage at the bay"), Unit::volt, [](auto& h) -> auto& { return h.actual_V; })
        .least = 0;
    fields.choice(
        FormText::tr("Thermostat"),
        {FormText::tr("at the inlet"), FormText::tr("at the outlet"), FormText::tr("remote")},
        [](auto& h) -> auto& { return h.thermostat; });
    fields.quantity(
        FormText::tr("Turns on at"), Unit::degC, [](auto& h) -> auto& { return h.on_degC; });
    fields.quantity(
        FormText::tr("Turns off at"), Unit::degC, [](auto& h) -> auto& { return h.off_degC; });
}

} // namespace

Form heaterForm(const Id& id)
{
    Fields<Heater> fields(heaterAccess(id));
    addBody(fields);
    addElectrics(fields);
    Form form = fields.take();
    form.push_back(phasesField(id));
    form.push_back(cutOutField(id));
    form.push_back(cutOutTripField(id));
    fields.heading(FormText::tr("The heater's manual"));
    fields
        .quantity(
            FormText::tr("Smallest hose bore"), Unit::mm,
            [](auto& h) -> auto& { return h.manual_min_bore_mm; })
        .least = 0;
    fields.quantity(
        FormText::tr("Least drop under jacket"), Unit::mm,
        [](auto& h) -> auto& { return h.manual_min_drop_mm; });
    append(form, fields.take());
    form.push_back(allowed(
        id, FormText::tr("Upright"), [](auto& a) -> auto& { return a.vertical; }));
    fields.addSource(
        form.back(), [](auto& h) -> auto& { return h.allowed_positions.source; });
    form.push_back(allowed(
        id, FormText::tr("Lying"), [](auto& a) -> auto& { return a.horizontal; }));
    form.push_back(allowed(
        id, FormText::tr("Inclined"), [](auto& a) -> auto& { return a.inclined; }));
    addNozzle(
        fields, FormText::tr("Inlet nozzle"), [](auto& h) -> auto& { return h.inlet; });
    addNozzle(
        fields, FormText::tr("Outlet nozzle"), [](auto& h) -> auto& { return h.outlet; });
    addChamber(fields);
    append(form, fields.take());
    return form;
}

} // namespace siphonwright::panels
