#pragma once

#include "app/panels/fields.h"

/// Rows for the elbow on a stub, a port's or a nozzle's alike.
namespace siphonwright::panels {

/// Whether there is an elbow. `stub` reaches the part's Stub.
template <class Part, class At>
Field elbowRow(const Access<Part>& access, At stub)
{
    Field row;
    row.kind = Field::Kind::choice;
    row.label = siphonwright::panels::FormText::tr("Elbow");
    row.choices = {siphonwright::panels::FormText::tr("none, straight"),
                   siphonwright::panels::FormText::tr("elbow or angled adapter")};
    row.choice = [access, stub](const Sketch& sketch) {
        const Part* part = access.read(sketch);
        return part && stub(*part).elbow ? 1 : 0;
    };
    row.set_choice = [access, stub](Sketch& sketch, int index) {
        access.change(sketch, [&](Part& part) {
            auto& elbow = stub(part).elbow;
            if (index == 1 && !elbow)
                elbow = StubElbow();
            else if (index == 0)
                elbow.reset();
        });
    };
    return row;
}

/// A number of the elbow; typing one where there is no elbow changes nothing.
template <class Part, class At, class Of>
Field elbowQuantity(const Access<Part>& access, const QString& label, Unit unit, At stub, Of of)
{
    Field row;
    row.kind = Field::Kind::quantity;
    row.label = label;
    row.unit = unit;
    row.number = [access, stub, of](const Sketch& sketch) -> std::optional<double> {
        const Part* part = access.read(sketch);
        return part && stub(*part).elbow ? std::optional<double>(of(*stub(*part).elbow)) : std::nullopt;
    };
    row.set_number = [access, stub, of](Sketch& sketch, std::optional<double> value) {
        access.change(sketch, [&](Part& part) {
            if (auto& elbow = stub(part).elbow; elbow && value)
                of(*elbow) = *value;
        });
    };
    return row;
}

template <class Part, class At>
void addElbow(Fields<Part>& fields, At stub)
{
    const Access<Part>& access = fields.access();
    fields.add(elbowRow(access, stub));
    fields.add(elbowQuantity(
        access, siphonwright::panels::FormText::tr("Leaves, in plan"), Unit::degree, stub,
        [](auto& e) -> auto& { return e.direction.azimuth_deg; }));
    fields.add(elbowQuantity(
        access, siphonwright::panels::FormText::tr("Leaves up by"), Unit::degree, stub,
        [](auto& e) -> auto& { return e.direction.elevation_deg; }));
    fields.add(elbowQuantity(
        access, siphonwright::panels::FormText::tr("Elbow radius"), Unit::mm, stub,
        [](auto& e) -> auto& { return e.radius_mm; }));
    fields.add(elbowQuantity(
        access, siphonwright::panels::FormText::tr("Elbow leg"), Unit::mm, stub,
        [](auto& e) -> auto& { return e.leg_mm; }));
}

} // namespace siphonwright::panels
