#include "core/running/warm_up_csv.h"

#include "core/quantity/constants.h"

#include <string_view>

namespace siphonwright {
namespace {

/// A field in quotes where it has to be.
std::string quoted(const std::string& field)
{
    if (field.find_first_of(",\"\r\n") == std::string::npos)
        return field;
    std::string out = "\"";
    for (const char c : field)
        out += c == '"' ? std::string("\"\"") : std::string(1, c);
    return out + '"';
}

void add(std::string& line, double value)
{
    line += ',';
    line += toAMillionth(value);
}

void addLoop(std::string& line, const LoopSample& loop)
{
    for (const double value : {loop.outlet_degC, loop.inlet_degC, loop.return_degC, loop.return_surface_degC,
                               loop.sensed_degC, loop.swept_degC, loop.flow_kg_per_s, loop.power_W})
        add(line, value);
}

} // namespace

std::string csvOf(const EngineWarmUp& warm)
{
    std::string out = "time_s,block_degC,rest_degC,power_W,energy_kWh";
    for (const Id& heater : warm.heaters)
        for (const std::string_view column :
             {"outlet_degC", "inlet_degC", "return_degC", "return_surface_degC", "sensed_degC", "swept_degC",
              "flow_kg_per_s", "power_W"})
            out += ',' + quoted(heater + "." + std::string(column));
    out += '\n';
    for (const WarmUpSample& sample : warm.result.series) {
        out += toAMillionth(sample.time_s);
        add(out, sample.block_degC);
        add(out, sample.rest_degC);
        add(out, sample.power_W);
        add(out, sample.energy_J / J_per_kWh);
        for (const LoopSample& loop : sample.loops)
            addLoop(out, loop);
        out += '\n';
    }
    return out;
}

} // namespace siphonwright
