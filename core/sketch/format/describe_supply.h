#pragma once

#include "core/sketch/format/describe.h"

namespace siphonwright {

template <class V, Is<ColdNights> T>
void describe(V& v, T& row)
{
    v.object("cold_nights", "So many nights of the season at one temperature");
    v(Field{"ambient_degC", "Temperature of the air"}.within(-100, 100, "degC").needed(), row.ambient_degC);
    v(Field{"nights", "How many"}.within(0, 366).needed(), row.nights);
}

template <class V, Is<Supply> T>
void describe(V& v, T& supply)
{
    v.object("supply", "Electrical supply at the bay, and how long the heater is plugged in");
    v(Field{"volts_V", "Between conductors, at the start of the run"}.within(0, 10'000, "V"), supply.volts_V);
    v(Field{"phases", "Number of phases"}.oneOf({1, 3}), supply.phases);
    v(Field{"conductor", "Size as people write it: 12 AWG, 4 mm2"}.text(0, 100), supply.conductor);
    v(Field{"material", "Of the conductors"}, supply.material);
    v(Field{"one_way_m", "Length of the run, one way"}.within(0, 100'000, "m"), supply.one_way_m);
    v(Field{"tariff_per_kWh", "Price of energy in the currency of the quote"}.within(0, 1e6),
      supply.tariff_per_kWh);
    v(Field{"hours_per_night", "Plugged in"}.within(0, 24, "h"), supply.hours_per_night);
    v(Field{"reach_h", "Time allowed to reach the target"}.within(0, 240, "h"), supply.reach_h);
    v(Field{"season", "Temperatures of the nights of a season"}.items(0, 60), supply.season);
}

template <class V, Is<WaterQuality> T>
void describe(V& v, T& water)
{
    v.object("water_quality", "What is in the water that coolant is mixed with");
    v(Field{"chloride_ppm", "Chloride"}.within(0, 100'000, "ppm"), water.chloride_ppm);
    v(Field{"sulphate_ppm", "Sulphate"}.within(0, 100'000, "ppm"), water.sulphate_ppm);
    v(Field{"hardness_ppm", "Hardness as CaCO3"}.within(0, 100'000, "ppm"), water.hardness_ppm);
    v(Field{"solids_ppm", "Total dissolved solids"}.within(0, 1e6, "ppm"), water.solids_ppm);
    v(Field{"pH", "pH"}.within(0, 14), water.pH);
}

template <class V, Is<CoolantPlan> T>
void describe(V& v, T& plan)
{
    v.object("coolant_plan", "The coolant that is wanted");
    v(Field{"wanted_glycol", "Kind of antifreeze; left out: the kind that is in it now"}, plan.wanted_glycol);
    v(Field{"wanted_percent", "Antifreeze by volume"}.within(0, 100, "%"), plan.wanted_percent);
    v(Field{"system_l", "Whole cooling system, radiator included; left out: the engine alone is counted"}
          .within(0.1, 10'000, "l"),
      plan.system_l);
    v(Field{"drainable_l", "What runs out at the drains in one go"}.within(0, 10'000, "l"), plan.drainable_l);
    v(Field{"water", "Water to mix with"}, plan.water);
}

} // namespace siphonwright
