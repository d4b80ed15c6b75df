#include "app/panels/access.h"

namespace siphonwright::panels {

namespace {

Field elbowField(const Id& id)
{
    const Access<Port> access = portAccess(id);
    Field row;
    row.kind = Field::Kind::choice;
    row.label = FormText::tr("Elbow");
    row.choices = {FormText::tr("none, straight"), FormText::tr("elbow or angled adapter")};
    row.choice = [access](const Sketch& sketch) {
        const Port* port = access.read(sketch);
        return port && port->stub.elbow ? 1 : 0;
    };
    row.set_choice = [access](Sketch& sketch, int index) {
        access.change(sketch, [index](Port& port) {
            if (index == 1 && !port.stub.elbow)
                port.stub.elbow = StubElbow();
            else if (index == 0)
                port.stub.elbow.reset();
        });
    };
    return row;
}

/// A number of the stub's elbow; typing one where there is no elbow changes nothing.
template <class At>
Field elbowQuantity(const Id& id, const QString& label, Unit unit, At at)
{
    const Access<Port> access = portAccess(id);
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = label;
    row.unit = unit;
    row.number = [access, at](const Sketch& sketch) -> std::optional<double> {
        const Port* port = access.read(sketch);
        return port && port->stub.elbow ? std::optional<double>(at(*port->stub.elbow)) : std::nullopt;
    };
    row.set_number = [access, at](Sketch& sketch, std::optional<double> value) {
        access.change(sketch, [&](Port& port) {
            if (port.stub.elbow && value)
                at(*port.stub.elbow) = *value;
        });
    };
    return row;
}

Field shutOffField(const Id& id)
{
    Fields<Port> fields(portAccess(id));
    fields.choice(
        FormText::tr("Cabin line's shut-off"), {FormText::tr("closed"), FormText::tr("open")},
        [](auto& p) -> auto& { return p.cabin_line_open; });
    return fields.last();
}

} // namespace

Form portForm(const Id& id)
{
    Fields<Port> fields(portAccess(id));
    fields.text(
        FormText::tr("Name"), [](auto& p) -> auto& { return p.name; });
    fields.choice(
        FormText::tr("Used for"),
        {FormText::tr("supply"), FormText::tr("return"), FormText::tr("sensor"), FormText::tr("spare")},
        [](auto& p) -> auto& { return p.role; });
    fields.choice(
        FormText::tr("Kind"),
        {FormText::tr("drain port"), FormText::tr("core-plug opening"), FormText::tr("lower-hose tee"),
         FormText::tr("head or manifold port"), FormText::tr("cabin heater line")},
        [](auto& p) -> auto& { return p.kind; });
    Form form = fields.take();
    form.push_back(shutOffField(id));
    fields.quantity(
        positionLabels().value(0), Unit::mm, [](auto& p) -> auto& { return p.position.x; });
    fields.addSource(
        fields.last(), [](auto& p) -> auto& { return p.position_source; });
    fields.quantity(
        positionLabels().value(1), Unit::mm, [](auto& p) -> auto& { return p.position.z; });
    fields.quantity(
        positionLabels().value(2), Unit::mm, [](auto& p) -> auto& { return p.position.y; });
    fields
        .quantity(
            FormText::tr("Bore"), Unit::mm, [](auto& p) -> auto& { return p.bore_mm; })
        .least = 0.1;
    fields.text(
        FormText::tr("Thread"), [](auto& p) -> auto& { return p.thread; });
    fields.heading(FormText::tr("Direction out of the engine"));
    fields
        .quantity(
            FormText::tr("In plan"), Unit::degree, [](auto& p) -> auto& { return p.axis.azimuth_deg; })
        .tip = FormText::tr("0 right, 90 away from the viewer, 180 left, -90 towards the viewer");
    fields.quantity(
        FormText::tr("Up by"), Unit::degree, [](auto& p) -> auto& { return p.axis.elevation_deg; });
    fields
        .quantity(
            FormText::tr("Stub length"), Unit::mm, [](auto& p) -> auto& { return p.stub.length_mm; })
        .least = 0;
    for (Field& row : fields.take())
        form.push_back(std::move(row));
    form.push_back(elbowField(id));
    form.push_back(elbowQuantity(
        id, FormText::tr("Leaves, in plan"), Unit::degree,
        [](auto& e) -> auto& { return e.direction.azimuth_deg; }));
    form.push_back(elbowQuantity(
        id, FormText::tr("Leaves up by"), Unit::degree,
        [](auto& e) -> auto& { return e.direction.elevation_deg; }));
    form.push_back(elbowQuantity(
        id, FormText::tr("Elbow radius"), Unit::mm, [](auto& e) -> auto& { return e.radius_mm; }));
    form.push_back(elbowQuantity(
        id, FormText::tr("Elbow leg"), Unit::mm, [](auto& e) -> auto& { return e.leg_mm; }));
    return form;
}

} // namespace siphonwright::panels
