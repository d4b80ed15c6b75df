#pragma once

#include "core/physics/air.h"
#include "core/physics/fluid.h"

#include <optional>

/// Heat that hoses and engine lose to the air.
///
/// The correlations are those of the papers named; as predictions of a real film they are good to 10-25 %.
namespace siphonwright {

/// Nusselt number of a horizontal cylinder in still fluid, properties at the film temperature.
/// Churchill and Chu 1975, Int. J. Heat Mass Transfer 18:1049. Range: Rayleigh number to 1e12.
double naturalCylinderNusselt(double rayleigh, double prandtl);

/// Nusselt number of a vertical plate in still fluid, properties at the film temperature.
/// Churchill and Chu 1975, Int. J. Heat Mass Transfer 18:1323. Range: Rayleigh number to 1e12.
double naturalPlateNusselt(double rayleigh, double prandtl);

/// Nusselt number of a cylinder across a flow, properties at the film temperature.
/// Churchill and Bernstein 1977, J. Heat Transfer 99:300. Range: Re Pr over 0.2.
double crossFlowNusselt(double reynolds, double prandtl);

/// Nusselt number inside a tube with laminar flow and a wall of one temperature, Hausen 1943:
/// 3.66 + 0.0668 Gz / (1 + 0.04 Gz^(2/3)), Gz = Re Pr D/L. Range: Re under 2300.
double laminarTubeNusselt(double reynolds, double prandtl, double bore_over_length);

/// Nusselt number inside a smooth tube with turbulent flow, Gnielinski 1976, with the friction factor
/// (0.790 ln Re - 1.64)^-2 (Petukhov 1970, from memory). Range: Re 2300 to 5e6, Pr 0.5 to 2000.
double turbulentTubeNusselt(double reynolds, double prandtl);

/// Film inside a hose, W/m2 K: laminar up to Re 2300, turbulent from Re 4000, in between linear in Re
/// (as Gnielinski 2013, Int. J. Heat Mass Transfer 63:134, proposes; from memory). No flow: Nu 3.66.
/// Direction of flow does not matter. Nothing for a bore, length or fluid that is not positive.
std::optional<double> insideFilm_W_per_m2_K(const FluidState& fluid, double flow_kg_per_s, double bore_mm,
                                            double length_m);

/// Radiation of a grey surface to surroundings at air temperature, as a film: eps sigma (Ts^2 + Ta^2)(Ts +
/// Ta) with T in kelvin. Exact; sigma = 5.670374e-8 W/m2 K4 (CODATA 2018).
double radiationFilm_W_per_m2_K(double emissivity, double surface_degC, double air_degC);

/// A hose across its wall.
struct HoseWall {
    double bore_mm = 19.05;
    double wall_mm = 4; ///< coolant hose 3.5 to 4.8 mm (common practice)
    /// Solid rubber 0.16 to 0.36: natural rubber at the low end, EPDM with carbon black at the high (memory).
    double conductivity_W_per_m_K = 0.25;
    double insulation_mm = 0;                         ///< thickness of a foam sleeve; 0 is a bare hose
    double insulation_conductivity_W_per_m_K = 0.036; ///< closed-cell foam 0.034 to 0.038 (memory)
    double emissivity = 0.9;                          ///< rubber 0.86 to 0.95 (memory)

    double outside_mm() const { return bore_mm + 2 * wall_mm + 2 * insulation_mm; }
};

/// The air round a hose or an engine.
struct Surroundings {
    double air_degC = 0;
    double wind_m_per_s = 0; ///< what reaches the surface, not the free wind
    double pressure_Pa = standard_pressure_Pa;
};

/// Share of the free wind that reaches a hose among other parts: 0.3 to 0.5 (common practice, no published
/// source).
constexpr double wind_share_at_hose = 0.4;

/// What a length of hose loses.
struct HoseLoss {
    double per_metre_W_per_m = 0;     ///< negative where the air is the warmer
    double conductance_W_per_m_K = 0; ///< loss per metre over (coolant - air): U'
    double surface_degC = 0;          ///< of the outside: what an infrared thermometer reads
    double surface_share = 0;         ///< (surface - air) / (coolant - air)
    double convection_W_per_m2_K = 0; ///< film outside, without radiation
    double radiation_W_per_m2_K = 0;  ///< radiation as a film
};

/// Loss of a hose whose coolant, film and surroundings are known: inside film, wall, sleeve, and outside
/// convection beside radiation, in series; the surface temperature that balances them is found to 1e-9 K.
///
/// Outside convection is the larger of natural convection (horizontal cylinder) and cross-flow, so that it
/// neither jumps nor falls as wind rises from nothing. Properties of air at the mean of surface and air.
///
/// Nothing for an input that is not finite, a bore, wall, conductivity or film that is not positive, a sleeve
/// or wind under 0, an emissivity outside 0..1, or temperatures outside -70..150 degC.
std::optional<HoseLoss> hoseLoss(const HoseWall& wall, double coolant_degC, double inside_film_W_per_m2_K,
                                 const Surroundings& around);

/// Heat that a hose's own wall holds, J/m K: rubber of 1150 kg/m3 and 1800 J/kg K (EPDM compound 1100-1200
/// and 1600-2000, from memory); the sleeve's is left out, being under 2 % of it.
double wallHeatCapacity_J_per_m_K(const HoseWall& wall);

/// Film of an engine's outside, W/m2 K, radiation and still-air convection included (so neither is to be
/// added again): 5.7 + 3.8 V up to 5 m/s, 6.47 V^0.78 from 8 m/s (McAdams 1954 after Juerges 1924; the second
/// form from memory), in between a mean weighted linearly in V, since the two differ by 8 % at 5 m/s. V is
/// the wind that reaches the engine; under 0 counts as 0.
double blockFilm_W_per_m2_K(double wind_m_per_s);

/// Area of a box round an engine that loses heat, m2: five of six faces, all but the underside (common
/// practice, no published source).
double blockArea_m2(double length_mm, double width_mm, double height_mm);

/// Heat loss of an engine per kelvin over the air, W/K: film times area. Nothing for a size that is not
/// positive or a wind that is not finite.
std::optional<double> blockLoss_W_per_K(double length_mm, double width_mm, double height_mm,
                                        double wind_m_per_s);

} // namespace siphonwright
