#include "core/commissioning/allowed.h"

#include "core/checks/rules.h"

#include <algorithm>

namespace siphonwright {
namespace {

std::optional<double> strictest(const char* rule, const Sketch& sketch)
{
    const Limits limits = limitsOf(*ruleById(rule), sketch);
    return limits.stop ? limits.stop : limits.caution ? limits.caution : limits.advice;
}

} // namespace

Allowed allowedIn(const Sketch& sketch)
{
    Allowed out;
    out.outlet_degC = strictest("outlet-over-limit", sketch);
    out.cycles_per_hour = strictest("cycles-over-4", sketch);
    const std::optional<SurgeTank>& tank = sketch.tank;
    if (tank && tank->cold_min_mm.known() && tank->cold_full_mm.known())
        out.least_level_mm = *tank->cold_min_mm.value - *tank->cold_full_mm.value;
    return out;
}

std::vector<Message> brokenLimits(const Sketch& sketch, const Evidence& evidence)
{
    const Allowed allowed = allowedIn(sketch);
    std::optional<double> hottest_degC;
    std::optional<double> lowest_mm;
    for (const Reading& reading : evidence.readings) {
        if (reading.outlet_degC)
            hottest_degC = std::max(hottest_degC.value_or(*reading.outlet_degC), *reading.outlet_degC);
        if (reading.coolant_level_mm)
            lowest_mm = std::min(lowest_mm.value_or(*reading.coolant_level_mm), *reading.coolant_level_mm);
    }
    std::vector<Message> out;
    if (allowed.outlet_degC && hottest_degC && *hottest_degC > *allowed.outlet_degC)
        out.push_back(
            {"The outlet was {0}, over the limit of {1}. Turn the heater off and leave it off until the "
             "cause is found.",
             {{*hottest_degC, Unit::degC}, {*allowed.outlet_degC, Unit::degC}},
             {}});
    if (allowed.least_level_mm && lowest_mm && *lowest_mm < *allowed.least_level_mm)
        out.push_back(
            {"Coolant was {0} under the full mark, lower than the cold minimum. Power off, find the "
             "leak, top up.",
             {{-*lowest_mm, Unit::mm}},
             {}});
    const std::optional<double> cycles = cyclesPerHour(sketch, evidence.heater);
    if (allowed.cycles_per_hour && cycles && *cycles > *allowed.cycles_per_hour)
        out.push_back(
            {"The heater turned on {0} times within an hour, over the limit of {1}. Leave it off until "
             "the cause is found.",
             {{*cycles, Unit::none}, {*allowed.cycles_per_hour, Unit::none}},
             {}});
    return out;
}

} // namespace siphonwright
