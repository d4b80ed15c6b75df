#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<ThermostatHousing> T>
void describe(V& v, T& housing)
{
    v.object("thermostat_housing", "The engine's thermostat housing");
    v(Field{"position", "Its middle"}.needed(), housing.position);
    v(Field{"position_source", "Where the position comes from"}, housing.position_source);
    v(Field{"side", "On which side of the engine's coolant circuit it sits"}, housing.side);
    v(Field{"bleed_hole", "Whether the thermostat lets air past when closed"}, housing.bleed_hole);
}

template <class V, Is<Engine> T>
void describe(V& v, T& engine)
{
    v.object("engine", "A liquid-cooled engine in side elevation");
    v(Field{"name", "What people call it"}, engine.name);
    v(Field{"serial_number", "From its plate"}, engine.serial_number);
    v(Field{"arrangement", "How its cylinders stand"}.needed(), engine.arrangement);
    v(outline("outline", "Side outline, a closed polygon"), engine.outline);
    v(outline("jacket", "Side outline of the water jacket, a closed polygon"), engine.jacket);
    v(coordinate("jacket_y_from_mm", "Where the jacket's depth begins"), engine.jacket_y_from_mm);
    v(coordinate("jacket_y_to_mm", "Where the jacket's depth ends"), engine.jacket_y_to_mm);
    v(Field{"jacket_source", "Where the jacket's outline comes from"}, engine.jacket_source);
    v(Field{"displacement_l", "Swept volume"}.within(0.01, 1000, "l"), engine.displacement_l);
    v(Field{"mass_kg", "Dry mass"}.within(1, 100'000, "kg"), engine.mass_kg);
    v(Field{"material", "Of block and head"}, engine.material);
    v(Field{"coolant_volume_l", "Coolant in the engine"}.within(0.1, 10'000, "l"), engine.coolant_volume_l);
    v(Field{"front", "Which end of the drawing the engine's front is at"}, engine.front);
    v(Field{"heading_deg", "Engine front clockwise from vehicle front"}.oneOf({0, 90, 180, 270}),
      engine.heading_deg);
    v(angle("mount_angle_deg", "Positive: rear lower"), engine.mount_angle_deg);
    v(angle("lean_deg", "Positive: top towards the engine's right side"), engine.lean_deg);
    v(Field{"thermostat", "Left out: not known"}, engine.thermostat);
}

template <class V, Is<SurgeTank> T>
void describe(V& v, T& tank)
{
    v.object("surge_tank", "Filler or surge tank; the coolant level is a level plane through it");
    v(Field{"position", "Where its levels are read"}.needed(), tank.position);
    v(Field{"position_source", "Where the position comes from"}, tank.position_source);
    v(coordinate("cold_min_mm", "Height of the lowest level when cold"), tank.cold_min_mm);
    v(coordinate("cold_full_mm", "Height of the full level when cold"), tank.cold_full_mm);
    v(coordinate("hot_mm", "Height of the level when hot"), tank.hot_mm);
}

template <class V, Is<Port> T>
void describe(V& v, T& port)
{
    v.object("port", "An opening into the engine's coolant");
    v(identity("id", "Unique in the sketch"), port.id);
    v(Field{"name", "What people call it"}, port.name);
    v(Field{"role", "What it serves"}.needed(), port.role);
    v(Field{"kind", "What it is"}.needed(), port.kind);
    v(Field{"cabin_line_open", "Shut-off of a cabin heater line; left out: not known"}, port.cabin_line_open);
    v(Field{"position", "Where coolant enters or leaves the engine"}.needed(), port.position);
    v(Field{"position_source", "Where the position comes from"}, port.position_source);
    v(Field{"axis", "Where the thread points, out of the engine"}, port.axis);
    v(Field{"stub", "What is screwed into it"}, port.stub);
    v(Field{"thread", "Its thread as people write it"}, port.thread);
    v(bore("bore_mm", "Smallest bore of opening and stub"), port.bore_mm);
}

} // namespace siphonwright
