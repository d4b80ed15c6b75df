#pragma once

#include "core/sketch/sketch.h"

namespace siphonwright::test {

/// A loop with nothing to find fault with, and every fact entered, that tests then spoil one thing in.
///
/// Jacket x 0..900, y -150..150, z 400..800, front left. Supply port at x 100, z 440, pointing down; return
/// port at x 800, z 700, pointing right. An upright heater at x 1030, z 80: outlet opening at z 220 pointing
/// up, inlet opening at x 990, z -40 pointing left. Hose 19 mm bore, 4 mm wall. Stubs 30 mm (outlet 40 mm).
/// Ground at z -300: the heater ends 230 mm over it, the supply hose 246.5 mm. An iron engine of 650 kg with
/// 30 l of coolant; 1500 W at its rated 120 V, on at 38 and off at 60 degC; from -15 degC to 20 degC in a
/// day.
inline Sketch soundLoop()
{
    Sketch s;
    Engine engine;
    engine.outline = {{-50, 350}, {950, 350}, {950, 850}, {-50, 850}};
    engine.jacket = {{0, 400}, {900, 400}, {900, 800}, {0, 800}};
    engine.thermostat = ThermostatHousing{};
    engine.thermostat->position = {40, 0, 800};
    engine.thermostat->side.value = ThermostatSide::outlet;
    engine.displacement_l.value = 8;
    engine.mass_kg.value = 650;
    engine.material.value = Material::iron;
    engine.coolant_volume_l.value = 30;
    s.engine = engine;

    SurgeTank tank;
    tank.position = {200, 0, 900};
    tank.cold_min_mm.value = 850;
    tank.cold_full_mm.value = 880;
    tank.hot_mm.value = 900;
    s.tank = tank;

    Port supply;
    supply.id = "port-1";
    supply.role = PortRole::supply;
    supply.position = {100, 0, 440};
    supply.axis = {0, -90};
    supply.bore_mm.value = 19;
    Port back = supply;
    back.id = "port-2";
    back.role = PortRole::return_;
    back.position = {800, 0, 700};
    back.axis = {0, 0};
    s.ports = {supply, back};

    Heater heater;
    heater.id = "heater-1";
    heater.position = {1030, 0, 80};
    heater.allowed_positions.value = AllowedPositions{};
    heater.element_top_mm.value = 100;
    heater.inlet.offset = {-40, 0, -120};
    heater.inlet.axis = {180, 0};
    heater.inlet.bore_mm.value = 19;
    heater.outlet.offset = {0, 0, 140};
    heater.outlet.axis = {0, 90};
    heater.outlet.stub.length_mm = 40;
    heater.outlet.bore_mm.value = 19;
    heater.manual_min_bore_mm.value = 15;
    heater.mounting.value = Mounting::frame;
    heater.power_W.value = 1500;
    heater.rated_V.value = 120;
    heater.actual_V.value = 120;
    heater.on_degC.value = 38;
    heater.off_degC.value = 60;
    s.heaters = {heater};

    InlinePart valve;
    valve.bore_mm = 19;
    Hose down;
    down.id = "hose-1";
    down.role = HoseRole::supply;
    down.from.port = "port-1";
    down.to.heater = "heater-1";
    down.to.nozzle = NozzleKind::inlet;
    down.points = {{{100, 0, -40}, 150, BendKind::hose}};
    down.bore_mm.value = 19;
    valve.along_mm = 100;
    down.parts = {valve};
    down.clips_mm = {500, 750, 1000};
    Hose up = down;
    up.id = "hose-2";
    up.role = HoseRole::return_;
    up.from = {};
    up.from.heater = "heater-1";
    up.from.nozzle = NozzleKind::outlet;
    up.to = {};
    up.to.port = "port-2";
    up.points = {{{1030, 0, 690}, 150, BendKind::hose}};
    up.parts[0].along_mm = 470;
    up.clips_mm.clear();
    s.hoses = {Shared<Hose>(down), Shared<Hose>(up)};

    s.ground_z_mm = -300;
    s.coolant.volume_percent.value = 50;
    s.coolant.cap_pressure_kPa.value = 90;
    s.site.ambient_degC.value = -15;
    s.site.coldest_ambient_degC.value = -25;
    s.site.wind_m_per_s.value = 2;
    s.site.altitude_m.value = 200;
    s.plan.target_degC = 20;
    return s;
}

constexpr std::size_t supply_hose = 0;
constexpr std::size_t return_hose = 1;

} // namespace siphonwright::test
