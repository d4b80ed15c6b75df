#include "core/physics/element.h"

#include "core/physics/heat_loss.h"
#include "core/physics/root.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

double filmCoefficient_W_per_m2_K(const Fluid& fluid, double diameter_m, double surface_degC,
                                  double bulk_degC)
{
    // Half a kelvin inside the range, so that the difference below is over a whole kelvin.
    const double film_degC = std::clamp((surface_degC + bulk_degC) / 2, fluid.lowest_degC() + 0.5,
                                        std::max(fluid.lowest_degC(), fluid.highest_degC() - 1) + 0.5);
    const FluidState film = fluid.at(film_degC);
    const double expansion_per_K =
        (fluid.at(film_degC - 0.5).density_kg_per_m3 - fluid.at(film_degC + 0.5).density_kg_per_m3) /
        film.density_kg_per_m3;
    const double nu = film.viscosity_Pa_s / film.density_kg_per_m3;
    const double prandtl = film.viscosity_Pa_s * film.specific_heat_J_per_kg_K / film.conductivity_W_per_m_K;
    const double grashof = standard_gravity_m_per_s2 *
                           std::abs(expansion_per_K * (surface_degC - bulk_degC)) * diameter_m * diameter_m *
                           diameter_m / (nu * nu);
    return naturalCylinderNusselt(grashof * prandtl, prandtl) * film.conductivity_W_per_m_K / diameter_m;
}

} // namespace

std::optional<ElementSurface> elementSurface(const Fluid& fluid, const Element& element, double bulk_degC,
                                             double boiling_degC)
{
    if (!(std::isfinite(element.diameter_mm) && element.diameter_mm > 0) ||
        !(std::isfinite(element.flux_W_per_cm2) && element.flux_W_per_cm2 > 0) || !std::isfinite(bulk_degC) ||
        !std::isfinite(boiling_degC))
        return std::nullopt;
    const double diameter_m = element.diameter_mm / 1000;
    const double flux_W_per_m2 = element.flux_W_per_cm2 * 1e4;
    const auto shortfall = [&](double over_K) {
        return flux_W_per_m2 -
               over_K * filmCoefficient_W_per_m2_K(fluid, diameter_m, bulk_degC + over_K, bulk_degC);
    };
    double high_K = 1;
    while (shortfall(high_K) > 0 && high_K < 1e4)
        high_K *= 2;
    constexpr double width_K = 1e-7;
    const double over_K = narrowRoot(shortfall, 0, high_K, shortfall(0), shortfall(high_K), width_K).middle();

    ElementSurface surface;
    surface.convective_degC = bulk_degC + over_K;
    surface.margin_K = boiling_degC - surface.convective_degC;
    surface.boils_locally = surface.margin_K < 0;
    surface.surface_degC = std::min(surface.convective_degC, boiling_degC + boiling_excess_K);
    return surface;
}

} // namespace siphonwright
