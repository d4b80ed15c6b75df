#include "app/panels/access.h"
#include "app/panels/elbow_rows.h"

namespace siphonwright::panels {

namespace {

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
    addElbow(
        fields, [](auto& p) -> auto& { return p.stub; });
    for (Field& row : fields.take())
        form.push_back(std::move(row));
    return form;
}

} // namespace siphonwright::panels
