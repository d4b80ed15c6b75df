#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<AllowedPositions> T>
void describe(V& v, T& allowed)
{
    v.object("allowed_positions", "Positions the heater's manual allows");
    v(Field{"vertical", "Standing upright"}, allowed.vertical);
    v(Field{"horizontal", "Lying"}, allowed.horizontal);
    v(Field{"inclined", "In between"}, allowed.inclined);
}

template <class V, Is<Nozzle> T>
void describe(V& v, T& nozzle)
{
    v.object("nozzle", "An opening of the heater, in the heater's own axes");
    v(Field{"offset", "From the heater's centre"}.needed(), nozzle.offset);
    v(Field{"axis", "Where it points"}, nozzle.axis);
    v(Field{"stub", "What the hose is pushed onto"}, nozzle.stub);
    v(Field{"thread", "Its thread as people write it"}, nozzle.thread);
    v(bore("bore_mm", "Smallest bore of nozzle and stub"), nozzle.bore_mm);
}

template <class V, Is<CutOut> T>
void describe(V& v, T& cut_out)
{
    v.object("cut_out", "The over-temperature cut-out");
    v(temperature("trip_degC", "Where it opens"), cut_out.trip_degC);
    v(Field{"manual_reset", "Whether a person has to close it again"}, cut_out.manual_reset);
}

/// Body and openings, then what is on the rating plate: one object in two functions.
template <class V, Is<Heater> T>
void describeBody(V& v, T& heater)
{
    v(identity("id", "Unique in the sketch"), heater.id);
    v(Field{"name", "What people call it"}, heater.name);
    v(Field{"serial_number", "From its plate"}, heater.serial_number);
    v(Field{"position", "Centre of the body"}.needed(), heater.position);
    v(Field{"position_source", "Where the position comes from"}, heater.position_source);
    v(angle("tilt_deg", "From upright, positive to the right"), heater.tilt_deg);
    v(angle("turn_deg", "About the vertical after the tilt"), heater.turn_deg);
    v(Field{"allowed_positions", "By the manual"}, heater.allowed_positions);
    v(extent("length_mm", "Body along its axis"), heater.length_mm);
    v(extent("diameter_mm", "Body across its axis"), heater.diameter_mm);
    v(coordinate("chamber_bottom_mm", "Along the axis from the centre"), heater.chamber_bottom_mm);
    v(coordinate("chamber_top_mm", "Along the axis from the centre"), heater.chamber_top_mm);
    v(extent("chamber_bore_mm", "Inside diameter of the chamber"), heater.chamber_bore_mm);
    v(coordinate("element_top_mm", "Along the axis from the centre: coolant must stand over it"),
      heater.element_top_mm);
    v(Field{"inlet", "Where coolant enters"}.needed(), heater.inlet);
    v(Field{"outlet", "Where coolant leaves"}.needed(), heater.outlet);
}

template <class V, Is<Heater> T>
void describe(V& v, T& heater)
{
    v.object("heater", "A tank heater without a pump: a cylinder about its centre");
    describeBody(v, heater);
    v(Field{"power_W", "Rated power"}.within(0, 1e6, "W"), heater.power_W);
    v(Field{"rated_V", "Rated voltage"}.within(1, 10'000, "V"), heater.rated_V);
    v(Field{"actual_V", "Voltage it is used at"}.within(0, 10'000, "V"), heater.actual_V);
    v(Field{"phases", "Number of phases"}.oneOf({1, 3}), heater.phases);
    v(Field{"thermostat", "Where its thermostat feels"}, heater.thermostat);
    v(temperature("on_degC", "Where the thermostat switches on"), heater.on_degC);
    v(temperature("off_degC", "Where the thermostat switches off"), heater.off_degC);
    v(Field{"cut_out", "Left out: none"}, heater.cut_out);
    v(Field{"chamber_volume_ml", "Coolant in the chamber"}.within(0, 1e6, "ml"), heater.chamber_volume_ml);
    v(bore("manual_min_bore_mm", "Smallest hose bore the manual allows"), heater.manual_min_bore_mm);
    v(coordinate("manual_min_drop_mm", "Smallest drop under the jacket the manual allows"),
      heater.manual_min_drop_mm);
    v(Field{"mounting", "What it is fixed to"}, heater.mounting);
}

} // namespace siphonwright
