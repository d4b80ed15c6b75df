#include "core/physics/electrical.h"

#include "core/quantity/number.h"
#include "core/quantity/positive.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <string>

namespace siphonwright {
namespace {

constexpr double per_km_of_per_kft = 1 / 0.3048;

constexpr Conductor gauge(std::string_view size, double area_mm2, double copper_per_kft,
                          double aluminium_per_kft)
{
    return {size, area_mm2, 75, copper_per_kft * per_km_of_per_kft, aluminium_per_kft * per_km_of_per_kft,
            true};
}
constexpr Conductor metric(std::string_view size, double area_mm2, double copper, double aluminium)
{
    return {size, area_mm2, 20, copper, aluminium, false};
}

// Areas: circular mils of table 8 times 506.7e-6 mm2.
constexpr std::array table = {
    gauge("18 AWG", 0.823, 7.95, 0),       gauge("16 AWG", 1.31, 4.99, 0),
    gauge("14 AWG", 2.08, 3.14, 5.17),     gauge("12 AWG", 3.31, 1.98, 3.25),
    gauge("10 AWG", 5.26, 1.24, 2.04),     gauge("8 AWG", 8.37, 0.778, 1.28),
    gauge("6 AWG", 13.3, 0.491, 0.808),    gauge("4 AWG", 21.2, 0.308, 0.508),
    gauge("3 AWG", 26.7, 0.245, 0.403),    gauge("2 AWG", 33.6, 0.194, 0.319),
    gauge("1 AWG", 42.4, 0.154, 0.253),    gauge("1/0 AWG", 53.5, 0.122, 0.201),
    gauge("2/0 AWG", 67.4, 0.0967, 0.159), gauge("3/0 AWG", 85.0, 0.0766, 0.126),
    gauge("4/0 AWG", 107, 0.0608, 0.100),  metric("0.75 mm2", 0.75, 24.5, 0),
    metric("1 mm2", 1, 18.1, 0),           metric("1.5 mm2", 1.5, 12.1, 0),
    metric("2.5 mm2", 2.5, 7.41, 0),       metric("4 mm2", 4, 4.61, 0),
    metric("6 mm2", 6, 3.08, 0),           metric("10 mm2", 10, 1.83, 3.08),
    metric("16 mm2", 16, 1.15, 1.91),      metric("25 mm2", 25, 0.727, 1.20),
    metric("35 mm2", 35, 0.524, 0.868),    metric("50 mm2", 50, 0.387, 0.641),
    metric("70 mm2", 70, 0.268, 0.443),    metric("95 mm2", 95, 0.193, 0.320),
    metric("120 mm2", 120, 0.153, 0.253),
};

Message refusal(const char* pattern, double value, Unit unit)
{
    return {pattern, {{value, unit}}, {}};
}

/// What is wrong with a voltage or number of phases; nothing when neither is.
Message problemOf(double volts_V, int phases)
{
    if (!isPositive(volts_V))
        return {"The voltage has to be over 0.", {}, {}};
    if (volts_V > most_supply_V)
        return refusal("Nothing is computed over {0}: that is no low voltage.", most_supply_V, Unit::volt);
    if (phases != 1 && phases != 3)
        return {"A supply has 1 or 3 phases.", {}, {}};
    return {};
}

Message problemOfPower(double power_W)
{
    if (!isPositive(power_W))
        return {"The power has to be over 0.", {}, {}};
    if (power_W > most_heating_W)
        return refusal("Nothing is computed over {0}.", most_heating_W, Unit::watt);
    return {};
}

/// "12 awg", "4mm2": what is typed without blanks, in small letters.
std::string compact(std::string_view typed)
{
    std::string text = plainText(typed);
    text.erase(std::remove(text.begin(), text.end(), ' '), text.end());
    for (const std::string_view square : {"mm²", "sqmm", "qmm"})
        if (const std::size_t at = text.find(square); at != std::string::npos)
            text.replace(at, square.size(), "mm2");
    if (!text.empty() && text.front() == '#')
        text = text.substr(1) + "awg";
    if (text.find("/0") != std::string::npos && text.find("awg") == std::string::npos)
        text += "awg";
    if (const std::size_t at = text.find("awg"); at == 0)
        text = text.substr(3) + "awg";
    return text;
}

} // namespace

Figure loadCurrent_A(double power_W, double volts_V, int phases)
{
    for (const Message& problem : {problemOfPower(power_W), problemOf(volts_V, phases)})
        if (!problem.pattern.empty())
            return {std::nullopt, problem};
    return {power_W / (phases == 3 ? std::numbers::sqrt3 * volts_V : volts_V), {}};
}

Figure powerAtVoltage_W(double rated_W, double rated_V, double volts_V)
{
    for (const Message& problem : {problemOfPower(rated_W), problemOf(rated_V, 1), problemOf(volts_V, 1)})
        if (!problem.pattern.empty())
            return {std::nullopt, problem};
    const double share = volts_V / rated_V;
    return {rated_W * share * share, {}};
}

std::span<const Conductor> conductors()
{
    return table;
}

const Conductor* findConductor(std::string_view typed)
{
    const std::string wanted = compact(typed);
    const auto found = std::find_if(table.begin(), table.end(), [&](const Conductor& conductor) {
        return compact(conductor.size) == wanted;
    });
    return found == table.end() ? nullptr : &*found;
}

Figure resistance_ohm_per_km(const Conductor& conductor, ConductorMetal metal, double temperature_degC)
{
    constexpr double coldest_degC = -50, hottest_degC = 150;
    if (!(temperature_degC >= coldest_degC && temperature_degC <= hottest_degC))
        return {std::nullopt, {"No conductor is that cold or hot.", {}, {}}};
    const bool copper = metal == ConductorMetal::copper;
    const double at_reference = copper ? conductor.copper_ohm_per_km : conductor.aluminium_ohm_per_km;
    if (!(at_reference > 0))
        return {std::nullopt, {"{a} is not in the tables in aluminium.", {}, {std::string(conductor.size)}}};
    if (conductor.by_gauge) {
        const double per_K = copper ? 0.00323 : 0.00330;
        return {at_reference * (1 + per_K * (temperature_degC - conductor.reference_degC)), {}};
    }
    const double zero_at_K = copper ? 234.5 : 228;
    return {at_reference * (zero_at_K + temperature_degC) / (zero_at_K + conductor.reference_degC), {}};
}

VoltageDrop voltageDrop(double current_A, double volts_V, int phases, double one_way_m, double ohm_per_km)
{
    VoltageDrop out;
    out.problem = problemOf(volts_V, phases);
    if (!out.problem.pattern.empty())
        return out;
    if (!isPositive(current_A) || !isPositive(ohm_per_km)) {
        out.problem = {"Current and resistance have to be over 0.", {}, {}};
        return out;
    }
    if (!isPositive(one_way_m) || one_way_m > most_one_way_m) {
        out.problem =
            refusal("The run's length has to be over 0 and at most {0}.", most_one_way_m, Unit::metre);
        return out;
    }
    const double one_conductor_V = one_way_m / 1000 * ohm_per_km * current_A;
    const double drop_V = (phases == 3 ? std::numbers::sqrt3 : 2) * one_conductor_V;
    if (!(drop_V < volts_V / 3)) {
        out.problem = {"The conductor is far too small for this run: more than a third of the voltage would "
                       "be lost.",
                       {},
                       {}};
        return out;
    }
    out.drop_V = drop_V;
    out.percent = 100 * drop_V / volts_V;
    out.at_load_V = volts_V - drop_V;
    out.loss_W = (phases == 3 ? 3 : 2) * one_conductor_V * current_A;
    out.computed = true;
    return out;
}

Figure energy_kWh(double power_W, double hours)
{
    constexpr double most_hours = 1e5;
    if (!(std::isfinite(power_W) && power_W >= 0) || !(hours >= 0 && hours <= most_hours))
        return {std::nullopt, {"Power and hours must not be negative.", {}, {}}};
    return {power_W * hours / 1000, {}};
}

} // namespace siphonwright
