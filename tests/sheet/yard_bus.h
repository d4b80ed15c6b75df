#pragma once

#include "core/sketch/sketch.h"

namespace siphonwright::test {

/// A bus of an invented yard, drawn in full: an in-line six, a tank heater under it, two hoses. Its return
/// hose climbs over a hump on its way, so there is something to find.
///
/// The engine's outline is a plain box from x = -500 to 500 mm, so that its width on paper is known: 1000 mm.
inline Sketch yardBus(double hump_mm = 0)
{
    Sketch sketch;
    sketch.sheet.title = "Coolant heater, bus 14";
    sketch.sheet.supplementary_title = "Tank heater under the rear engine";
    sketch.sheet.identification_number = "SW-0014";
    sketch.sheet.legal_owner = "Yard of the North Line";
    sketch.sheet.creator = "A. Miller";
    sketch.sheet.date_of_issue = "2026-01-15";
    sketch.sheet.vehicle = "Bus 14";

    Engine engine;
    engine.name = "In-line 6, highway diesel";
    engine.outline = {{-500, 80}, {500, 80}, {500, 1000}, {-500, 1000}};
    engine.jacket = {{-450, 330}, {450, 330}, {450, 860}, {-450, 860}};
    engine.displacement_l.value = 9;
    ThermostatHousing housing;
    housing.position = {-440, 0, 930};
    housing.side.value = ThermostatSide::outlet;
    engine.thermostat = housing;
    sketch.engine = engine;

    SurgeTank tank;
    tank.position = {620, 0, 1150};
    tank.cold_min_mm.value = 1120;
    tank.cold_full_mm.value = 1160;
    tank.hot_mm.value = 1200;
    sketch.tank = tank;

    Port supply;
    supply.id = "port-1";
    supply.name = "Drain port";
    supply.role = PortRole::supply;
    supply.position = {-380, -150, 360};
    supply.axis = {270, 0};
    supply.stub = {30, StubElbow{{0, -90}, 20, 40}};
    supply.bore_mm.value = 16;
    Port back;
    back.id = "port-2";
    back.name = "Head port";
    back.role = PortRole::return_;
    back.kind = PortKind::head_port;
    back.position = {360, -150, 800};
    back.axis = {270, 0};
    back.stub = {30, StubElbow{{0, -90}, 20, 40}};
    back.bore_mm.value = 16;
    Port sensor;
    sensor.id = "port-3";
    sensor.name = "Sensor";
    sensor.role = PortRole::sensor;
    sensor.position = {500, 0, 600};
    sensor.axis = {0, 0};
    sketch.ports = {supply, back, sensor};

    Heater heater;
    heater.id = "heater-1";
    heater.name = "Tank heater 1.5 kW";
    heater.position = {300, -180, -20};
    heater.element_top_mm.value = 60;
    heater.inlet.offset = {-45, 0, -110};
    heater.inlet.axis = {180, 0};
    heater.inlet.bore_mm.value = 16;
    heater.outlet.offset = {0, 0, 150};
    heater.outlet.axis = {0, 90};
    heater.outlet.bore_mm.value = 16;
    heater.power_W.value = 1500;
    heater.mounting.value = Mounting::frame;
    sketch.heaters = {heater};

    Hose down;
    down.id = "hose-1";
    down.name = "Supply hose";
    down.from.port = "port-1";
    down.from.bore_mm = 16;
    down.to.heater = "heater-1";
    down.to.nozzle = NozzleKind::inlet;
    down.to.bore_mm = 16;
    down.bore_mm.value = 19.05;
    down.points = {{{-380, -190, -60}, 140, BendKind::hose}, {{-100, -180, -130}, 200, BendKind::hose}};
    down.clips_mm = {330, 520};
    down.parts = {{InlineKind::isolation_valve, 110, 60, 16, true}, {InlineKind::drain, 470, 60, 16, false}};
    Hose up;
    up.id = "hose-2";
    up.name = "Return hose";
    up.role = HoseRole::return_;
    up.from.heater = "heater-1";
    up.from.nozzle = NozzleKind::outlet;
    up.from.bore_mm = 16;
    up.to.port = "port-2";
    up.to.bore_mm = 16;
    up.bore_mm.value = 19.05;
    up.points = {{{300, -180, 250}, 60, BendKind::hose}, {{360, -190, 400}, 60, BendKind::hose}};
    if (hump_mm > 0)
        up.points = {{{300, -180, 320 + hump_mm}, 60, BendKind::hose},
                     {{150, -185, 320 + hump_mm}, 60, BendKind::hose},
                     {{150, -190, 260}, 60, BendKind::hose},
                     {{360, -190, 280}, 60, BendKind::hose}};
    up.clips_mm = {200};
    up.parts = {{InlineKind::isolation_valve, 300, 60, 16, true}};
    sketch.hoses = {Shared<Hose>(down), Shared<Hose>(up)};

    Area exhaust;
    exhaust.id = "area-1";
    exhaust.name = "Exhaust";
    exhaust.outline = {{560, 250}, {760, 250}, {760, 380}, {560, 380}};
    sketch.areas = {Shared<Area>(exhaust)};
    sketch.ground_z_mm = -420;
    sketch.coolant.volume_percent.value = 50;
    sketch.site.coldest_ambient_degC.value = -25;
    return sketch;
}

} // namespace siphonwright::test
