#pragma once

#include "core/physics/fluid.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <vector>

namespace siphonwright {

/// What the balance of heats and heads in a loop asks of a liquid, all at once.
struct HeatState {
    double density_kg_per_m3 = 0;
    double fluidity_per_Pa_s = 0; ///< one over dynamic viscosity
    double viscosity_squared_per_density =
        0; ///< Pa2 s2 m3/kg: pressure losses go with it at one Reynolds number
    double specific_heat_J_per_kg_K = 0;
    double specific_heat_slope_J_per_kg_K2 = 0; ///< by temperature
    double enthalpy_J_per_kg = 0;               ///< over the lower end of the liquid's range
};

/// Derivatives of a HeatState by temperature, per kelvin.
struct HeatSlopes {
    double density_kg_per_m3 = 0;
    double fluidity_per_Pa_s = 0;
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
    /// Cubics in the share of the cell's width, of density, fluidity, viscosity squared over density and
    /// enthalpy: by power, lowest first, so that all four are worked out side by side.
    struct Cell {
        std::array<std::array<double, 4>, 4> powers{};
    };
    static constexpr std::size_t density = 0, fluidity = 1, loss_factor = 2, enthalpy = 3;

    std::vector<Cell> cells_;
    double lowest_ = 0;
    double highest_ = 0;
    double width_K_ = 1; ///< of a cell
    double per_K_ = 1;   ///< cells

    /// Where a temperature stands: in which cell, and at what share of its width.
    struct Place {
        const std::array<std::array<double, 4>, 4>& powers;
        double share = 0;
    };
    Place placeOf(double within_degC) const;
};

// Inline: the right-hand side of warm-up asks for little else.

inline EnthalpyTable::Place EnthalpyTable::placeOf(double within_degC) const
{
    const double place = (within_degC - lowest_) * per_K_;
    const std::size_t index = std::min(static_cast<std::size_t>(place), cells_.size() - 1);
    return {cells_[index].powers, place - static_cast<double>(index)};
}

inline HeatState EnthalpyTable::at(double temperature_degC) const
{
    // What is not a number becomes the lower end.
    const double t = temperature_degC > lowest_ ? std::min(temperature_degC, highest_) : lowest_;
    const auto [c, x] = placeOf(t);
    std::array<double, 4> value = c[3];
    for (std::size_t power = 3; power-- > 0;) {
        for (std::size_t i = 0; i < value.size(); ++i)
            value[i] = c[power][i] + x * value[i];
    }
    HeatState state;
    state.density_kg_per_m3 = value[density];
    state.viscosity_squared_per_density = value[loss_factor];
    state.fluidity_per_Pa_s = value[fluidity];
    state.specific_heat_J_per_kg_K =
        (c[1][enthalpy] + x * (2 * c[2][enthalpy] + x * 3 * c[3][enthalpy])) * per_K_;
    state.specific_heat_slope_J_per_kg_K2 = (2 * c[2][enthalpy] + x * 6 * c[3][enthalpy]) * (per_K_ * per_K_);
    state.enthalpy_J_per_kg = value[enthalpy] + (temperature_degC - t) * state.specific_heat_J_per_kg_K;
    return state;
}

} // namespace siphonwright
