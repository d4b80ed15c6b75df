#pragma once

#include "core/physics/fluid.h"

#include <array>
#include <cstddef>
#include <vector>

namespace siphonwright {

/// What the balance of heats and heads in a loop asks of a liquid, all at once.
struct HeatState {
    double density_kg_per_m3 = 0;
    double ln_viscosity = 0; ///< of dynamic viscosity in Pa s
    double viscosity_squared_per_density =
        0; ///< Pa2 s2 m3/kg: pressure losses go with it at one Reynolds number
    double specific_heat_J_per_kg_K = 0;
    double specific_heat_slope_J_per_kg_K2 = 0; ///< by temperature
    double enthalpy_J_per_kg = 0;               ///< over the lower end of the liquid's range
};

/// Derivatives of a HeatState by temperature, per kelvin.
struct HeatSlopes {
    double density_kg_per_m3 = 0;
    double ln_viscosity = 0;
    double viscosity_squared_per_density = 0;
    double specific_heat_bend_J_per_kg_K3 = 0; ///< that of specific heat twice
};

/// A liquid's properties with its enthalpy, tabulated for the right-hand side of warm-up, which asks for all
/// of them at some ten temperatures a hundred thousand times.
///
/// Method: cubics by values and slopes on a grid of 0.5 K, smooth where they join. Specific heat is the exact
/// derivative of the tabulated enthalpy (Simpson's rule between nodes), so that what flows and what is stored
/// balance.
///
/// Error: relative, for coolants: 1e-4 of viscosity within half a kelvin of a bend in the liquid's own rules
/// (100 degC), 1e-5 elsewhere; the rest under 1e-6. Outside the liquid's range all but enthalpy stay as at
/// the nearer end, and enthalpy goes on with the specific heat there.
class EnthalpyTable {
public:
    /// \param fluid with a range of 1 to 2000 K; otherwise empty() and of no use
    explicit EnthalpyTable(const Fluid& fluid);

    bool empty() const { return cells_.empty(); }
    HeatState at(double temperature_degC) const;
    HeatSlopes slopesAt(double temperature_degC) const;
    double lowest_degC() const { return lowest_; }
    double highest_degC() const { return highest_; }

private:
    /// In the share of the cell's width, lowest power first.
    using Cubic = std::array<double, 4>;
    struct Cell {
        Cubic density{};
        Cubic ln_viscosity{};
        Cubic loss_factor{}; ///< viscosity squared over density
        Cubic enthalpy{};
    };

    std::vector<Cell> cells_;
    double lowest_ = 0;
    double highest_ = 0;
    double width_K_ = 1; ///< of a cell
    double per_K_ = 1;   ///< cells

    /// Where a temperature stands: in which cell, and at what share of its width.
    struct Place {
        const Cell& cell;
        double share;
    };
    Place placeOf(double within_degC) const;
};

} // namespace siphonwright
