#include "core/sketch/pose.h"

#include "core/quantity/constants.h"
#include "core/sketch/find.h"

namespace siphonwright {
namespace {

constexpr double upright_or_level_within_deg = 5;

/// From the heater's own axes: tilt in the drawing plane, its top to the right, then turn about z.
Vec3 turned(const Heater& heater, Vec3 own)
{
    const double tilt = heater.tilt_deg * rad_per_deg;
    const double turn = heater.turn_deg * rad_per_deg;
    const double x = own.x * std::cos(tilt) + own.z * std::sin(tilt);
    const double z = own.z * std::cos(tilt) - own.x * std::sin(tilt);
    return {x * std::cos(turn) - own.y * std::sin(turn), x * std::sin(turn) + own.y * std::cos(turn), z};
}

Vec3 axisOf(const Direction& d)
{
    return direction(d.azimuth_deg, d.elevation_deg);
}

Vec3 alongStub(Vec3 opening, const Direction& axis, const Stub& stub)
{
    const Vec3 corner = opening + axisOf(axis) * stub.length_mm;
    return stub.elbow ? corner + axisOf(stub.elbow->direction) * stub.elbow->leg_mm : corner;
}

const Nozzle& nozzleOf(const Heater& heater, NozzleKind nozzle)
{
    return nozzle == NozzleKind::inlet ? heater.inlet : heater.outlet;
}

} // namespace

Vec3 heaterPoint(const Heater& heater, Vec3 own)
{
    return heater.position + turned(heater, own);
}

Opening nozzleOpening(const Heater& heater, NozzleKind nozzle)
{
    const Nozzle& chosen = nozzleOf(heater, nozzle);
    return {heaterPoint(heater, chosen.offset), turned(heater, axisOf(chosen.axis))};
}

Orientation orientationOf(const Heater& heater)
{
    const double from_upright_deg = std::abs(std::remainder(heater.tilt_deg, 360));
    if (from_upright_deg <= upright_or_level_within_deg)
        return Orientation::vertical;
    if (from_upright_deg > 90 + upright_or_level_within_deg)
        return Orientation::inverted;
    if (from_upright_deg >= 90 - upright_or_level_within_deg)
        return Orientation::horizontal;
    return Orientation::inclined;
}

Vec3 stubTip(const Port& port)
{
    return alongStub(port.position, port.axis, port.stub);
}

Vec3 stubTip(const Heater& heater, NozzleKind nozzle)
{
    const Nozzle& chosen = nozzleOf(heater, nozzle);
    return heaterPoint(heater, alongStub(chosen.offset, chosen.axis, chosen.stub));
}

std::optional<Vec3> hoseEndPosition(const Sketch& sketch, const HoseEnd& end)
{
    if (!end.port.empty()) {
        const Port* port = byId(sketch.ports, end.port);
        return port ? std::optional<Vec3>(stubTip(*port)) : std::nullopt;
    }
    if (!end.heater.empty()) {
        const Heater* heater = byId(sketch.heaters, end.heater);
        return heater ? std::optional<Vec3>(stubTip(*heater, end.nozzle)) : std::nullopt;
    }
    return end.open_at;
}

} // namespace siphonwright
