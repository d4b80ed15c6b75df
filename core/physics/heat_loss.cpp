// Transcribes the correlations named in the header, with one addition: outside convection is the larger of
// still-air and cross-flow film.
#include "core/physics/heat_loss.h"

#include "core/physics/root.h"
#include "core/quantity/constants.h"
#include "core/quantity/positive.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

constexpr double stefan_boltzmann_W_per_m2_K4 = 5.670374e-8;
constexpr double laminar_until_reynolds = 2300;
constexpr double turbulent_from_reynolds = 4000;

/// The form that both natural-convection correlations share.
double churchillChu(double rayleigh, double prandtl, double still, double pole)
{
    const double prandtl_term = std::pow(1 + std::pow(pole / prandtl, 9.0 / 16), 8.0 / 27);
    const double root = still + 0.387 * std::pow(std::max(0.0, rayleigh), 1.0 / 6) / prandtl_term;
    return root * root;
}

double outsideConvection_W_per_m2_K(double surface_degC, double diameter_m, const Surroundings& around)
{
    const AirState air = airAt((surface_degC + around.air_degC) / 2, around.pressure_Pa);
    const double nu = air.kinematic_m2_per_s();
    const double prandtl = air.prandtl();
    const double expansion_per_K = 1 / ((surface_degC + around.air_degC) / 2 + zero_degC_in_K);
    const double grashof = standard_gravity_m_per_s2 * expansion_per_K *
                           std::abs(surface_degC - around.air_degC) * diameter_m * diameter_m * diameter_m /
                           (nu * nu);
    const double still = naturalCylinderNusselt(grashof * prandtl, prandtl);
    const double windy = crossFlowNusselt(around.wind_m_per_s * diameter_m / nu, prandtl);
    return std::max(still, windy) * air.conductivity_W_per_m_K / diameter_m;
}

bool isKnown(const HoseWall& wall, double coolant_degC, double inside_film_W_per_m2_K,
             const Surroundings& around)
{
    const auto inRange = [](double degC) { return degC >= -70 && degC <= 150; };
    return isPositive(wall.bore_mm) && isPositive(wall.wall_mm) && isPositive(wall.conductivity_W_per_m_K) &&
           std::isfinite(wall.insulation_mm) && wall.insulation_mm >= 0 &&
           isPositive(wall.insulation_conductivity_W_per_m_K) && wall.emissivity >= 0 &&
           wall.emissivity <= 1 && isPositive(inside_film_W_per_m2_K) && inRange(coolant_degC) &&
           inRange(around.air_degC) && std::isfinite(around.wind_m_per_s) && around.wind_m_per_s >= 0 &&
           isPositive(around.pressure_Pa);
}

/// Coolant to outside surface, m K/W.
double resistanceToSurface_m_K_per_W(const HoseWall& wall, double inside_film_W_per_m2_K)
{
    const double rubber_mm = wall.bore_mm + 2 * wall.wall_mm;
    const double two_pi = 2 * std::numbers::pi;
    return 1 / (std::numbers::pi * wall.bore_mm / 1000 * inside_film_W_per_m2_K) +
           std::log(rubber_mm / wall.bore_mm) / (two_pi * wall.conductivity_W_per_m_K) +
           std::log(wall.outside_mm() / rubber_mm) / (two_pi * wall.insulation_conductivity_W_per_m_K);
}

} // namespace

double naturalCylinderNusselt(double rayleigh, double prandtl)
{
    return churchillChu(rayleigh, prandtl, 0.60, 0.559);
}

double naturalPlateNusselt(double rayleigh, double prandtl)
{
    return churchillChu(rayleigh, prandtl, 0.825, 0.492);
}

double crossFlowNusselt(double reynolds, double prandtl)
{
    const double prandtl_term = std::pow(1 + std::pow(0.4 / prandtl, 2.0 / 3), 0.25);
    return 0.3 + 0.62 * std::sqrt(reynolds) * std::cbrt(prandtl) / prandtl_term *
                     std::pow(1 + std::pow(reynolds / 282000, 5.0 / 8), 0.8);
}

double laminarTubeNusselt(double reynolds, double prandtl, double bore_over_length)
{
    const double graetz = reynolds * prandtl * bore_over_length;
    return 3.66 + 0.0668 * graetz / (1 + 0.04 * std::pow(graetz, 2.0 / 3));
}

double turbulentTubeNusselt(double reynolds, double prandtl)
{
    const double root_inverse = 0.790 * std::log(reynolds) - 1.64;
    const double eighth = 1 / (root_inverse * root_inverse) / 8;
    return eighth * (reynolds - 1000) * prandtl /
           (1 + 12.7 * std::sqrt(eighth) * (std::pow(prandtl, 2.0 / 3) - 1));
}

std::optional<double> insideFilm_W_per_m2_K(const FluidState& fluid, double flow_kg_per_s, double bore_mm,
                                            double length_m)
{
    if (!isPositive(bore_mm) || !isPositive(length_m) || !isPositive(fluid.viscosity_Pa_s) ||
        !isPositive(fluid.conductivity_W_per_m_K) || !isPositive(fluid.specific_heat_J_per_kg_K) ||
        !std::isfinite(flow_kg_per_s))
        return std::nullopt;
    const double bore_m = bore_mm / 1000;
    const double reynolds = 4 * std::abs(flow_kg_per_s) / (std::numbers::pi * bore_m * fluid.viscosity_Pa_s);
    const double prandtl =
        fluid.viscosity_Pa_s * fluid.specific_heat_J_per_kg_K / fluid.conductivity_W_per_m_K;
    const double turbulent_share = std::clamp(
        (reynolds - laminar_until_reynolds) / (turbulent_from_reynolds - laminar_until_reynolds), 0.0, 1.0);
    double nusselt = 0;
    if (turbulent_share < 1)
        nusselt += (1 - turbulent_share) *
                   laminarTubeNusselt(std::min(reynolds, laminar_until_reynolds), prandtl, bore_m / length_m);
    if (turbulent_share > 0)
        nusselt +=
            turbulent_share * turbulentTubeNusselt(std::max(reynolds, turbulent_from_reynolds), prandtl);
    return nusselt * fluid.conductivity_W_per_m_K / bore_m;
}

double radiationFilm_W_per_m2_K(double emissivity, double surface_degC, double air_degC)
{
    const double surface_K = surface_degC + zero_degC_in_K;
    const double air_K = air_degC + zero_degC_in_K;
    return emissivity * stefan_boltzmann_W_per_m2_K4 * (surface_K * surface_K + air_K * air_K) *
           (surface_K + air_K);
}

std::optional<HoseLoss> hoseLoss(const HoseWall& wall, double coolant_degC, double inside_film_W_per_m2_K,
                                 const Surroundings& around)
{
    if (!isKnown(wall, coolant_degC, inside_film_W_per_m2_K, around))
        return std::nullopt;
    const double inside_m_K_per_W = resistanceToSurface_m_K_per_W(wall, inside_film_W_per_m2_K);
    const double diameter_m = wall.outside_mm() / 1000;
    const auto outside_W_per_m_K = [&](double surface_degC) {
        return std::numbers::pi * diameter_m *
               (outsideConvection_W_per_m2_K(surface_degC, diameter_m, around) +
                radiationFilm_W_per_m2_K(wall.emissivity, surface_degC, around.air_degC));
    };
    // In terms of the share, so that a coolant as warm as the air has its limit and not 0/0.
    const double difference_K = coolant_degC - around.air_degC;
    const auto imbalance = [&](double share) {
        const double surface_degC = around.air_degC + share * difference_K;
        return (1 - share) / inside_m_K_per_W - share * outside_W_per_m_K(surface_degC);
    };
    constexpr double width = 1e-11; // of at most 220 K
    const double share = narrowRoot(imbalance, 0, 1, imbalance(0), imbalance(1), width).middle();

    HoseLoss loss;
    loss.surface_share = share;
    loss.surface_degC = around.air_degC + share * difference_K;
    loss.conductance_W_per_m_K = (1 - share) / inside_m_K_per_W;
    loss.per_metre_W_per_m = loss.conductance_W_per_m_K * difference_K;
    loss.convection_W_per_m2_K = outsideConvection_W_per_m2_K(loss.surface_degC, diameter_m, around);
    loss.radiation_W_per_m2_K = radiationFilm_W_per_m2_K(wall.emissivity, loss.surface_degC, around.air_degC);
    return loss;
}

double wallHeatCapacity_J_per_m_K(const HoseWall& wall)
{
    constexpr double rubber_kg_per_m3 = 1150;
    constexpr double rubber_J_per_kg_K = 1800;
    const double bore_m = wall.bore_mm / 1000;
    const double outside_m = bore_m + 2 * wall.wall_mm / 1000;
    return std::numbers::pi / 4 * (outside_m * outside_m - bore_m * bore_m) * rubber_kg_per_m3 *
           rubber_J_per_kg_K;
}

double blockFilm_W_per_m2_K(double wind_m_per_s)
{
    constexpr double low_until_m_per_s = 5;
    constexpr double high_from_m_per_s = 8;
    const double wind = std::max(0.0, wind_m_per_s);
    const double low = 5.7 + 3.8 * wind;
    const double high = 6.47 * std::pow(wind, 0.78);
    const double share =
        std::clamp((wind - low_until_m_per_s) / (high_from_m_per_s - low_until_m_per_s), 0.0, 1.0);
    return (1 - share) * low + share * high;
}

double blockArea_m2(double length_mm, double width_mm, double height_mm)
{
    return (length_mm * width_mm + 2 * height_mm * (length_mm + width_mm)) * 1e-6;
}

std::optional<double> blockLoss_W_per_K(double length_mm, double width_mm, double height_mm,
                                        double wind_m_per_s)
{
    if (!isPositive(length_mm) || !isPositive(width_mm) || !isPositive(height_mm) ||
        !std::isfinite(wind_m_per_s))
        return std::nullopt;
    return blockFilm_W_per_m2_K(wind_m_per_s) * blockArea_m2(length_mm, width_mm, height_mm);
}

} // namespace siphonwright
