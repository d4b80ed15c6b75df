#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<SurveyPoint> T>
void describe(V& v, T& point)
{
    v.object("survey_point", "A place measured at the vehicle, the tape held plumb");
    v(coordinate("height_mm", "Over the frame rail, negative under it, or over the floor"), point.height_mm);
    v(Field{"from", "What the height was measured from"}, point.from);
    v(coordinate("along_mm", "Along the frame rail from the block's front face, towards its rear"),
      point.along_mm);
    v(coordinate("across_mm", "Out from the crankshaft, positive to the engine's right side"),
      point.across_mm);
}

template <class V, Is<SurveyPort> T>
void describe(V& v, T& port)
{
    v.object("survey_port", "An opening measured at the vehicle");
    v(Field{"at", "Middle of the opening"}, port.at);
    v(Field{"kind", "What it is"}, port.kind);
    v(Field{"thread", "Its thread"}, port.thread);
    v(bore("bore_mm", "Its bore"), port.bore_mm);
    v(Field{"facing", "Where it points, as the engine stands"}, port.facing);
    v(Field{"tilt_deg", "Over the horizontal, of one that points to a side"}.within(-90, 90, "deg"),
      port.tilt_deg);
}

template <class V, Is<Survey> T>
void describe(V& v, T& survey)
{
    const auto slope = [](std::string_view name, std::string_view meaning) {
        return Field{name, meaning}.within(-45, 45, "deg");
    };
    v.object("survey", "What was measured at the vehicle, before anything is drawn");
    v(Field{"by", "Who measured"}, survey.by);
    v(Field{"date", "When, ISO 8601"}, survey.date);
    v(Field{"jacket_lowest", "Lowest point of the water jacket"}, survey.jacket_lowest);
    v(Field{"jacket_highest", "Highest point of the water jacket"}, survey.jacket_highest);
    v(Field{"supply_port", "Port for the supply hose"}, survey.supply_port);
    v(Field{"return_port", "Port for the return hose"}, survey.return_port);
    v(Field{"thermostat", "Thermostat housing"}, survey.thermostat);
    v(Field{"tank_cap", "Cap of the filler or surge tank"}, survey.tank_cap);
    v(Field{"mark_cold_min", "Mark for the least coolant, cold"}, survey.mark_cold_min);
    v(Field{"mark_cold_full", "Mark for full, cold"}, survey.mark_cold_full);
    v(Field{"mark_hot", "Mark for full, hot"}, survey.mark_hot);
    v(extent("block_length_mm", "Front face to rear face of the block"), survey.block_length_mm);
    v(extent("rail_over_floor_mm", "Frame rail over the floor, at the block's front face"),
      survey.rail_over_floor_mm);
    v(extent("ride_drop_mm", "How much further the frame sinks at lowest ride height"), survey.ride_drop_mm);
    v(extent("ports_apart_mm", "Straight from opening to opening"), survey.ports_apart_mm);
    v(slope("floor_slope_deg", "Of the floor, positive: higher at the engine's front"),
      survey.floor_slope_deg);
    v(slope("rail_slope_deg", "Of the frame rail, likewise"), survey.rail_slope_deg);
    v(slope("engine_slope_deg", "Of the crankshaft's line, likewise"), survey.engine_slope_deg);
    v(Field{"thermostat_side", "Where the engine's thermostat sits in its circuit"}, survey.thermostat_side);
    v(Field{"supply_V", "Voltage at the bay"}.within(0, 100'000, "V"), survey.supply_V);
    v(Field{"glycol", "Antifreeze in it now"}, survey.glycol);
    v(Field{"glycol_percent", "Antifreeze in it now, by volume"}.within(0, 100, "%"), survey.glycol_percent);
    v(Field{"coolant_colour", "Colour of the coolant in it now"}, survey.coolant_colour);
    v(Field{"notes", "In words"}, survey.notes);
}

} // namespace siphonwright
