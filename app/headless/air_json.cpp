#include "app/headless/air_json.h"

#include "app/headless/json.h"

#include "core/quantity/constants.h"

#include <cmath>

namespace siphonwright::headless {

namespace {

const char* wordFor(Clearing clearing)
{
    switch (clearing) {
    case Clearing::cleared:
        return "cleared";
    case Clearing::may_clear:
        return "may_clear";
    case Clearing::stays:
        break;
    }
    return "stays";
}

Json pocketJson(const PocketFound& pocket, double density_kg_per_m3)
{
    Json entry;
    entry["hose"] = pocket.hose.empty() ? Json(nullptr) : Json(pocket.hose);
    entry["heater"] = pocket.heater;
    entry["along_mm"] = pocket.hose.empty() ? Json(nullptr) : number(pocket.along_mm);
    entry["x_mm"] = number(pocket.at.x);
    entry["z_mm"] = number(pocket.at.z);
    entry["volume_ml"] = number(pocket.volume_ml);
    entry["height_mm"] = number(pocket.height_mm);
    entry["closes_bore"] = pocket.closes_bore;
    entry["head_Pa"] = number(pocket.height_mm / 1000 * density_kg_per_m3 * standard_gravity_m_per_s2);
    entry["cleared_by_running"] = wordFor(pocket.cleared_by_running);
    entry["velocity_m_per_s"] = number(pocket.velocity_m_per_s);
    entry["clears_from_m_per_s"] = number(pocket.clears.least_m_per_s);
    entry["clears_to_m_per_s"] = number(pocket.clears.greatest_m_per_s);
    return entry;
}

Json chamberJson(const LoopAir& air)
{
    // Less than this is what the last drop under a flat lid holds, not air to speak of.
    constexpr double full_but_for_ml = 1;
    Json entry;
    entry["heater"] = air.heater;
    entry["full"] = air.chamber_gas_ml < full_but_for_ml;
    entry["gas_ml"] = number(air.chamber_gas_ml);
    entry["element_covered"] = air.element_known ? Json(air.element_covered) : Json(nullptr);
    entry["element_covered_at_mm"] =
        air.element_covered_at_mm ? number(*air.element_covered_at_mm) : Json(nullptr);
    return entry;
}

Json runningJson(const LoopAir& air)
{
    Json entry;
    entry["heater"] = air.heater;
    const bool known = air.running.flow_l_per_min > 0;
    entry["flow_l_per_min"] = known ? number(air.running.flow_l_per_min) : Json(nullptr);
    entry["direction"] = !known                                    ? Json(nullptr)
                         : air.running.sense == FlowSense::reverse ? Json("reverse")
                                                                   : Json("forward");
    entry["bypasses_radiator"] = air.bypasses_radiator;
    return entry;
}

} // namespace

Json airJson(const Filling& filling)
{
    if (!filling.missing.empty())
        return nullptr;
    Json list = Json::array();
    for (const PocketFound& pocket : filling.pockets)
        list.push_back(pocketJson(pocket, filling.density_kg_per_m3));
    return list;
}

Json fillJson(const Filling& filling)
{
    const bool known = filling.missing.empty();
    const auto figure = [&](double value) { return known ? number(value) : Json(nullptr); };
    Json entry;
    entry["level_mm"] = figure(filling.level_mm);
    entry["coldest_level_mm"] = figure(filling.coldest_level_mm);
    Json chambers = Json::array();
    Json running = Json::array();
    for (const LoopAir& air : filling.loops) {
        chambers.push_back(chamberJson(air));
        running.push_back(runningJson(air));
    }
    entry["chamber_full"] = std::move(chambers);
    entry["engine_running"] = std::move(running);
    entry["coolant_ml"] = figure(filling.coolant_ml);
    entry["drained_ml"] = filling.drained_ml ? figure(*filling.drained_ml) : Json(nullptr);
    entry["refill_ml"] = filling.drained_ml ? figure(filling.refill_ml) : Json(nullptr);
    entry["top_up_ml"] = figure(filling.top_up_ml);
    entry["missing"] = known ? Json(nullptr) : Json(filling.missing);
    return entry;
}

} // namespace siphonwright::headless
