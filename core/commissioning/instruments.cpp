#include "core/commissioning/instruments.h"

#include <cmath>

namespace siphonwright {
namespace {

constexpr std::array<Instrument, channel_count> rows = {{
    {Channel::inlet, "inlet_degC", "inlet", "clip-on thermometer on the metal at the heater's inlet",
     Unit::degC, 1.5, 0, 2, 0},
    {Channel::outlet, "outlet_degC", "outlet", "clip-on thermometer on the metal at the heater's outlet",
     Unit::degC, 1.5, 0, 2.5, 0},
    {Channel::hose_surface, "hose_surface_degC", "return hose",
     "infrared thermometer on the rubber of the return hose at the engine", Unit::degC, 3, 0, 2.5, 0},
    {Channel::engine, "engine_degC", "engine block",
     "infrared thermometer on the block beside the return port", Unit::degC, 3, 0, 2.5, 0},
    {Channel::current, "current_A", "current", "clamp meter round one conductor", Unit::ampere, 0.1, 0.03, 0,
     0.04},
    {Channel::voltage, "voltage_V", "voltage", "voltmeter at the heater, by an electrician", Unit::volt, 1,
     0.01, 0, 0.03},
    {Channel::coolant_level, "coolant_level_mm", "coolant level",
     "rule at the surge tank, from the cold full mark", Unit::mm, 3, 0, 12, 0},
}};

} // namespace

std::span<const Instrument> instruments()
{
    return rows;
}

const Instrument& instrumentFor(Channel channel)
{
    return rows[static_cast<std::size_t>(channel)];
}

double instrumentSpread(Channel channel, double value)
{
    const Instrument& row = instrumentFor(channel);
    return std::hypot(row.spread, row.spread_share * value);
}

double spreadOf(Channel channel, double value)
{
    const Instrument& row = instrumentFor(channel);
    const double model = std::hypot(row.model_spread, row.model_share * value);
    return std::hypot(instrumentSpread(channel, value), model);
}

namespace {

template <class AReading>
auto& memberOf(AReading& reading, Channel channel)
{
    switch (channel) {
    case Channel::inlet:
        return reading.inlet_degC;
    case Channel::outlet:
        return reading.outlet_degC;
    case Channel::hose_surface:
        return reading.hose_surface_degC;
    case Channel::engine:
        return reading.engine_degC;
    case Channel::current:
        return reading.current_A;
    case Channel::voltage:
        return reading.voltage_V;
    case Channel::coolant_level:
    case Channel::count:
        break;
    }
    return reading.coolant_level_mm;
}

} // namespace

const std::optional<double>& readOn(const Reading& reading, Channel channel)
{
    return memberOf(reading, channel);
}

std::optional<double>& readOn(Reading& reading, Channel channel)
{
    return memberOf(reading, channel);
}

} // namespace siphonwright
