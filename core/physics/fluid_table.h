#pragma once

#include "core/physics/fluid.h"

#include <array>
#include <optional>
#include <vector>

namespace siphonwright {

/// A liquid's properties tabulated over temperature, for solvers that ask for them millions of times.
///
/// Method: a cubic through four points in each cell of 2 K; cells meet at even degrees, so that a bend of the
/// liquid's own rules at such a temperature (100 degC) does no harm. Density, specific heat and the logarithm
/// of viscosity, which is all that a balance of heads and heats needs. The integral is that of the tabulated
/// density, exactly.
///
/// Error: measured against the liquid at construction, largestRelativeError(); under 2e-8 for GlycolWater.
/// Outside the liquid's range values stay as at the nearer end and the integral goes on with them.
class FluidTable {
public:
    /// Nothing when the liquid's range is empty, not finite or wider than 2000 K, or a property in it is not
    /// finite and over 0.
    static std::optional<FluidTable> of(const Fluid& fluid);

    double lowest_degC() const { return cells_.front().start_degC; }
    double highest_degC() const { return highest_degC_; }

    double density(double temperature_degC) const;      ///< kg/m3
    double lnViscosity(double temperature_degC) const;  ///< of dynamic viscosity in Pa s
    double specificHeat(double temperature_degC) const; ///< J/(kg K)

    /// Integral of density over temperature from lowest_degC(), kg K/m3: integrals over a stretch whose
    /// temperature changes evenly along it come from the difference at its ends.
    double densityIntegral(double temperature_degC) const;
    /// Density averaged over temperature between two temperatures, kg/m3; also for equal ones.
    double meanDensity(double one_degC, double other_degC) const;

    /// Largest deviation from the liquid at points between the tabulated ones, relative; for viscosity
    /// itself, not its logarithm.
    double largestRelativeError() const { return largest_relative_error_; }

private:
    /// In the share of the cell's width, lowest power first.
    using Cubic = std::array<double, 4>;
    struct Cell {
        double start_degC = 0;
        double width_K = 0;
        double integral_before = 0; ///< kg K/m3
        Cubic density{};
        Cubic ln_viscosity{};
        Cubic specific_heat{};
    };
    struct Place {
        const Cell& cell;
        double share; ///< of the cell's width, 0 to 1
    };

    FluidTable() = default;
    static bool fit(const Fluid& fluid, Cell& cell);
    double deviation(const Fluid& fluid, const Cell& cell) const;
    Place at(double temperature_degC) const;
    static double value(const Cubic& cubic, double share);
    static double integral(const Cell& cell, double share);

    std::vector<Cell> cells_;
    double highest_degC_ = 0;
    double first_even_ = 0; ///< the lower border, in widths, of the cell that the first one is a part of
    double largest_relative_error_ = 0;
};

} // namespace siphonwright
