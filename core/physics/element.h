#pragma once

#include "core/physics/fluid.h"

#include <optional>

/// The heating element's surface.
namespace siphonwright {

/// Shape of an element as its surface temperature needs it.
struct Element {
    double diameter_mm = 8;      ///< of the sheathed rod; 8 mm is usual (practice)
    double flux_W_per_cm2 = 6.2; ///< 40 W/in2; in tanks with glycol 20 to 40 W/in2 (practice, from memory)
};

/// What an element's surface does in still coolant.
struct ElementSurface {
    double convective_degC = 0; ///< by natural convection alone: what it would be if nothing boiled
    double surface_degC = 0;    ///< the same, held where boiling holds it
    bool boils_locally = false; ///< bubbles form on the surface and collapse in cooler coolant
    double margin_K = 0;        ///< boiling point less convective_degC: negative where bubbles form
};

/// Excess over the boiling point at which boiling carries an element's flux off: Rohsenow's correlation gives
/// 10 K for water at 1 atm and 150 kW/m2 with C_sf 0.013; 5 to 15 K is usual (from memory).
constexpr double boiling_excess_K = 10;

/// Surface temperature of a horizontal rod in liquid of one temperature: q = h (T_s - T_b), h from Churchill
/// and Chu 1975 (Int. J. Heat Mass Transfer 18:1049) with the liquid's properties at the mean of both; its
/// thermal expansion by central difference of its density over 1 K. Flow past the rod is left out, which
/// overstates the surface by what it carries off (a few kelvin at the flow of natural circulation).
///
/// Range: film temperatures within the liquid's; above, its properties at the end of its range are used.
/// Error: the correlation's 10-25 % of the difference.
/// Nothing for a diameter or flux that is not positive, or temperatures that are not finite.
std::optional<ElementSurface> elementSurface(const Fluid& fluid, const Element& element, double bulk_degC,
                                             double boiling_degC);

} // namespace siphonwright
