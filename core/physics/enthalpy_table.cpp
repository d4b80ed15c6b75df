#include "core/physics/enthalpy_table.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double widest_cell_K = 0.5;

/// The cubic over 0..1 with these values and slopes at its ends.
std::array<double, 4> hermite(double a, double b, double slope_a, double slope_b)
{
    return {a, slope_a, 3 * (b - a) - 2 * slope_a - slope_b, 2 * (a - b) + slope_a + slope_b};
}

double valueOf(const std::array<double, 4>& c, double x)
{
    return c[0] + x * (c[1] + x * (c[2] + x * c[3]));
}

double slopeOf(const std::array<double, 4>& c, double x)
{
    return c[1] + x * (2 * c[2] + x * 3 * c[3]);
}

/// Slopes by central differences of fourth order, of second and first order towards the ends.
std::vector<double> slopes(const std::vector<double>& y)
{
    const std::size_t last = y.size() - 1;
    std::vector<double> slope(y.size());
    for (std::size_t i = 0; i <= last; ++i) {
        if (i >= 2 && i + 2 <= last)
            slope[i] = (8 * (y[i + 1] - y[i - 1]) - (y[i + 2] - y[i - 2])) / 12;
        else if (i >= 1 && i + 1 <= last)
            slope[i] = (y[i + 1] - y[i - 1]) / 2;
        else if (last >= 2)
            slope[i] =
                i == 0 ? (4 * y[1] - 3 * y[0] - y[2]) / 2 : (3 * y[last] - 4 * y[last - 1] + y[last - 2]) / 2;
        else
            slope[i] = y[1] - y[0];
    }
    return slope;
}

} // namespace

EnthalpyTable::EnthalpyTable(const Fluid& fluid)
    : lowest_(fluid.lowest_degC()), highest_(fluid.highest_degC())
{
    const double range_K = highest_ - lowest_;
    if (!(range_K >= 1 && range_K <= 2000))
        return;
    const auto count = static_cast<std::size_t>(std::ceil(range_K / widest_cell_K));
    width_K_ = range_K / static_cast<double>(count);
    per_K_ = 1 / width_K_;
    std::vector<double> density, ln_viscosity, loss_factor, heat;
    for (std::size_t i = 0; i <= count; ++i) {
        const FluidState state = fluid.at(lowest_ + static_cast<double>(i) * width_K_);
        density.push_back(state.density_kg_per_m3);
        ln_viscosity.push_back(std::log(state.viscosity_Pa_s));
        loss_factor.push_back(state.viscosity_Pa_s * state.viscosity_Pa_s / state.density_kg_per_m3);
        heat.push_back(state.specific_heat_J_per_kg_K * width_K_);
    }
    const std::vector<double> density_slope = slopes(density), ln_slope = slopes(ln_viscosity),
                              factor_slope = slopes(loss_factor);
    double enthalpy = 0;
    cells_.resize(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double middle_degC = lowest_ + (static_cast<double>(i) + 0.5) * width_K_;
        const double middle = fluid.at(middle_degC).specific_heat_J_per_kg_K * width_K_;
        const double next = enthalpy + (heat[i] + 4 * middle + heat[i + 1]) / 6;
        cells_[i].density = hermite(density[i], density[i + 1], density_slope[i], density_slope[i + 1]);
        cells_[i].loss_factor =
            hermite(loss_factor[i], loss_factor[i + 1], factor_slope[i], factor_slope[i + 1]);
        cells_[i].ln_viscosity = hermite(ln_viscosity[i], ln_viscosity[i + 1], ln_slope[i], ln_slope[i + 1]);
        cells_[i].enthalpy = hermite(enthalpy, next, heat[i], heat[i + 1]);
        enthalpy = next;
    }
}

inline EnthalpyTable::Place EnthalpyTable::placeOf(double within_degC) const
{
    const double place = (within_degC - lowest_) * per_K_;
    const std::size_t index = std::min(static_cast<std::size_t>(place), cells_.size() - 1);
    return {cells_[index], place - static_cast<double>(index)};
}

HeatState EnthalpyTable::at(double temperature_degC) const
{
    // What is not a number becomes the lower end.
    const double t = temperature_degC > lowest_ ? std::min(temperature_degC, highest_) : lowest_;
    const auto [cell, x] = placeOf(t);
    const Cubic& h = cell.enthalpy;
    HeatState state;
    state.density_kg_per_m3 = valueOf(cell.density, x);
    state.viscosity_squared_per_density = valueOf(cell.loss_factor, x);
    state.ln_viscosity = valueOf(cell.ln_viscosity, x);
    state.specific_heat_J_per_kg_K = slopeOf(h, x) * per_K_;
    state.specific_heat_slope_J_per_kg_K2 = (2 * h[2] + x * 6 * h[3]) * (per_K_ * per_K_);
    state.enthalpy_J_per_kg = valueOf(h, x) + (temperature_degC - t) * state.specific_heat_J_per_kg_K;
    return state;
}

HeatSlopes EnthalpyTable::slopesAt(double temperature_degC) const
{
    if (!(temperature_degC > lowest_ && temperature_degC < highest_))
        return {}; // all stay as at the end
    const auto [cell, x] = placeOf(temperature_degC);
    return {slopeOf(cell.density, x) * per_K_, slopeOf(cell.ln_viscosity, x) * per_K_,
            slopeOf(cell.loss_factor, x) * per_K_, 6 * cell.enthalpy[3] * (per_K_ * per_K_ * per_K_)};
}

} // namespace siphonwright
