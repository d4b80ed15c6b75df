#include "core/physics/boiling.h"

#include "core/physics/glycol.h"
#include "core/quantity/constants.h"

#include <cmath>

namespace siphonwright {

std::optional<double> atmosphericPressure_Pa(double altitude_m)
{
    constexpr double lapse_K_per_m = 0.0065;
    constexpr double sea_level_K = 288.15;
    constexpr double exponent = 9.80665 / (287.05287 * lapse_K_per_m);
    if (!(altitude_m >= -500 && altitude_m <= 11000))
        return std::nullopt;
    return 101325 * std::pow(1 - lapse_K_per_m * altitude_m / sea_level_K, exponent);
}

std::optional<double> coolantPressure_Pa(const CoolingSystem& system)
{
    const std::optional<double> air = atmosphericPressure_Pa(system.altitude_m);
    if (!air || !(system.cap_gauge_Pa >= 0) || !(system.density_kg_per_m3 >= 0))
        return std::nullopt;
    const double pressure =
        *air + system.cap_gauge_Pa + system.density_kg_per_m3 * standard_gravity_m_per_s2 * system.head_m;
    if (!(std::isfinite(pressure) && pressure > 0))
        return std::nullopt;
    return pressure;
}

std::optional<double> waterBoilingPoint_degC(double absolute_pressure_Pa)
{
    if (!(absolute_pressure_Pa >= 611.213 && absolute_pressure_Pa <= 22.064e6))
        return std::nullopt;
    const double b = std::pow(absolute_pressure_Pa / 1e6, 0.25);
    const double e = b * b - 0.17073846940092e2 * b + 0.14915108613530e2;
    const double f = 0.11670521452767e4 * b * b + 0.12020824702470e5 * b - 0.48232657361591e4;
    const double g = -0.72421316703206e6 * b * b - 0.32325550322333e7 * b + 0.40511340542057e6;
    const double d = 2 * g / (-f - std::sqrt(f * f - 4 * e * g));
    constexpr double n9 = -0.23855557567849;
    constexpr double n10 = 0.65017534844798e3;
    const double kelvin = (n10 + d - std::sqrt((n10 + d) * (n10 + d) - 4 * (n9 + n10 * d))) / 2;
    return kelvin - 273.15;
}

double waterMoleFraction(CoolantBase base, double volume_percent)
{
    const double glycol_g_per_mol = base == CoolantBase::ethylene_glycol ? 62.068 : 76.094;
    const double mass_percent = glycolMassPercent(base, volume_percent);
    const double water = (100 - mass_percent) / 18.015;
    return water / (water + mass_percent / glycol_g_per_mol);
}

std::optional<double> boilingPoint_degC(CoolantBase base, double volume_percent, double absolute_pressure_Pa)
{
    if (!freezingPoint(base, volume_percent))
        return std::nullopt;
    return waterBoilingPoint_degC(absolute_pressure_Pa / waterMoleFraction(base, volume_percent));
}

} // namespace siphonwright
