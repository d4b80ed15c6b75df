#pragma once

#include "core/sketch/format/describe.h"
#include "core/sketch/record.h"

namespace siphonwright {

template <class V, Is<Tick> T>
void describe(V& v, T& tick)
{
    v.object("tick", "A step of the checklist that was done");
    v(identity("step", "Id of the step"), tick.step);
    v(Field{"time", "ISO 8601"}, tick.time);
    v(Field{"by", "By whom"}, tick.by);
    v(Field{"note", "In words"}, tick.note);
    v(Field{"override_reason", "Why it was done before what makes it safe"}, tick.override_reason);
}

template <class V, Is<SwitchSeen> T>
void describe(V& v, T& seen)
{
    v.object("switch_seen", "A heater seen or heard to turn on or off");
    v(Field{"time", "ISO 8601"}, seen.time);
    v(Field{"heater", "Id of the heater"}.text(0, 200), seen.heater);
    v(Field{"on", "Whether it turned on"}, seen.on);
}

template <class V, Is<Checklist> T>
void describe(V& v, T& checklist)
{
    v.object("checklist", "The work at the vehicle, as far as it is done");
    v(Field{"ticks", "Steps done, in the order in which they were ticked"}, checklist.ticks);
    v(Field{"switched", "When heaters turned on and off; a heater's first is when it was energised"},
      checklist.switched);
}

template <class V, Is<Reading> T>
void describe(V& v, T& reading)
{
    v.object("reading", "What was read at the vehicle at one time");
    v(Field{"time", "ISO 8601"}, reading.time);
    v(Field{"heater", "Id of the heater"}.text(0, 200), reading.heater);
    v(temperature("ambient_degC", "Ambient"), reading.ambient_degC);
    v(temperature("inlet_degC", "Metal at the heater's inlet"), reading.inlet_degC);
    v(temperature("outlet_degC", "Metal at the heater's outlet"), reading.outlet_degC);
    v(temperature("hose_surface_degC", "Rubber of the return hose at the engine, by infrared thermometer"),
      reading.hose_surface_degC);
    v(temperature("engine_degC", "Engine block beside the return port"), reading.engine_degC);
    v(Field{"current_A", "Current in one conductor"}.within(0, 100'000, "A"), reading.current_A);
    v(Field{"voltage_V", "At the heater while it is on"}.within(0, 100'000, "V"), reading.voltage_V);
    v(Field{"coolant_level_mm", "Coolant level over the cold full mark; under it is negative"}.within(
          -10'000, 10'000, "mm"),
      reading.coolant_level_mm);
    v(Field{"energised", "Whether power was on at the heater's supply"}, reading.energised);
    v(Field{"note", "In words"}, reading.note);
}

} // namespace siphonwright
