#include "core/quantity/quantity.h"
#include "core/sketch/template_parts.h"

#include <numbers>

namespace siphonwright {
namespace {

struct TankSize {
    double power_W;
    double length_mm;
    double diameter_mm;
    double nozzle_bore_mm;
    double hose_bore_mm; ///< least that goes with it
};

constexpr double wall_mm = 3;
constexpr double head_mm = 25; ///< element flange and thermostat at the bottom
constexpr double cover_mm = 5; ///< over the chamber
constexpr double usual_drop_mm = 152.4;
constexpr double largest_on_120_V_W = 1500;

Nozzle nozzleOf(const TankSize& size, Vec3 offset, Direction axis)
{
    Nozzle nozzle;
    nozzle.offset = offset;
    nozzle.axis = axis;
    nozzle.stub.length_mm = 30;
    nozzle.bore_mm = typical(size.nozzle_bore_mm);
    return nozzle;
}

/// Inlet at the side, as low as the chamber goes. Outlet where no part of the chamber is higher: on top, or
/// on the larger ones at the side with its crown at the chamber's top.
void addNozzles(Heater& heater, const TankSize& size)
{
    const double bore = size.nozzle_bore_mm;
    const double side = heater.chamber_bore_mm / 2;
    heater.inlet = nozzleOf(size, {-side, 0, heater.chamber_bottom_mm + bore / 2}, {180, 0});
    if (size.power_W <= largest_on_120_V_W)
        heater.outlet = nozzleOf(size, {0, 0, heater.chamber_top_mm}, {0, 90});
    else
        heater.outlet = nozzleOf(size, {side, 0, heater.chamber_top_mm - bore / 2}, {0, 0});
    // Clear under the outlet, so that coolant stands over the element as soon as it reaches the outlet.
    heater.element_top_mm = typical(heater.chamber_top_mm - bore - 20);
}

void addElectrics(Heater& heater, const TankSize& size)
{
    const double volts = size.power_W <= largest_on_120_V_W ? 120 : 240;
    heater.power_W = typical(size.power_W);
    heater.rated_V = typical(volts);
    heater.actual_V = typical(volts);
    heater.thermostat = HeaterThermostat::inlet;
    heater.on_degC = typical(38);
    heater.off_degC = typical(49);
    heater.cut_out = CutOut();
}

HeaterTemplate heaterOf(const TankSize& size)
{
    HeaterTemplate made;
    const std::string watts = exactText(size.power_W);
    made.id = "tank-" + watts;
    made.title = "Tank heater, " + format(size.power_W, Unit::watt, UnitSystem::metric);
    Heater& heater = made.heater;
    heater.id = "heater-1";
    heater.position_source = Source::typical;
    heater.allowed_positions = {AllowedPositions(), Source::typical};
    heater.length_mm = size.length_mm;
    heater.diameter_mm = size.diameter_mm;
    heater.chamber_bottom_mm = -size.length_mm / 2 + head_mm;
    heater.chamber_top_mm = size.length_mm / 2 - cover_mm;
    heater.chamber_bore_mm = size.diameter_mm - 2 * wall_mm;
    addNozzles(heater, size);
    addElectrics(heater, size);
    // The whole chamber: the element takes up a few percent of it.
    const double height_mm = heater.chamber_top_mm - heater.chamber_bottom_mm;
    const double area_mm2 = std::numbers::pi / 4 * heater.chamber_bore_mm * heater.chamber_bore_mm;
    heater.chamber_volume_ml = typical(std::round(area_mm2 * height_mm / 1000));
    heater.manual_min_bore_mm = typical(size.hose_bore_mm);
    heater.manual_min_drop_mm = typical(usual_drop_mm);
    heater.mounting = {Mounting::frame, Source::typical};
    return made;
}

} // namespace

std::vector<HeaterTemplate> tankHeaters()
{
    constexpr TankSize sizes[] = {
        {500, 220, 70, 12.7, 15.875},   {750, 240, 70, 12.7, 15.875},  {1000, 270, 80, 15.875, 19.05},
        {1500, 300, 80, 15.875, 19.05}, {2000, 320, 100, 19.05, 25.4}, {2500, 350, 100, 19.05, 25.4},
        {4000, 400, 120, 25.4, 31.75},  {5000, 450, 120, 31.75, 38.1},
    };
    std::vector<HeaterTemplate> made;
    for (const TankSize& size : sizes)
        made.push_back(heaterOf(size));
    return made;
}

} // namespace siphonwright
