#include "core/layout/layout.h"
#include "core/sketch/edits.h"
#include "core/sketch/sketch.h"

namespace siphonwright {
namespace {

/// Corners of a stub from its opening to the stop, given its axis and the direction after its elbow.
std::vector<Corner> stubCorners(Vec3 opening, Vec3 axis, const Stub& stub, Vec3 after_elbow)
{
    const Vec3 end = opening + axis * stub.length_mm;
    if (!stub.elbow)
        return {{opening, 0}, {end, 0}};
    return {{opening, 0}, {end, stub.elbow->radius_mm}, {end + after_elbow * stub.elbow->leg_mm, 0}};
}

Vec3 directionOf(const Direction& d)
{
    return direction(d.azimuth_deg, d.elevation_deg);
}

Vec3 elbowDirection(const Stub& stub)
{
    return stub.elbow ? directionOf(stub.elbow->direction) : Vec3{};
}

} // namespace

std::optional<Attachment> attachment(const Sketch& sketch, const HoseEnd& end)
{
    if (const Port* port = end.port.empty() ? nullptr : sketch.port(end.port)) {
        return Attachment{
            port->position,
            stubCorners(port->position, directionOf(port->axis), port->stub, elbowDirection(port->stub)),
            port->bore_mm.value.value_or(end.bore_mm)};
    }
    if (const Heater* heater = end.heater.empty() ? nullptr : sketch.heater(end.heater)) {
        const Nozzle& nozzle = end.nozzle == NozzleKind::inlet ? heater->inlet : heater->outlet;
        const Opening opening = nozzleOpening(*heater, end.nozzle);
        const Vec3 after_elbow =
            heaterPoint(*heater, elbowDirection(nozzle.stub)) - heaterPoint(*heater, Vec3{});
        return Attachment{opening.at, stubCorners(opening.at, opening.axis, nozzle.stub, after_elbow),
                          nozzle.bore_mm.value.value_or(end.bore_mm)};
    }
    return std::nullopt;
}

} // namespace siphonwright
