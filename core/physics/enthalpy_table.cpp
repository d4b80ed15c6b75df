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
    std::vector<double> densities, fluidities, factors, heats;
    for (std::size_t i = 0; i <= count; ++i) {
        const FluidState state = fluid.at(lowest_ + static_cast<double>(i) * width_K_);
        densities.push_back(state.density_kg_per_m3);
        fluidities.push_back(1 / state.viscosity_Pa_s);
        factors.push_back(state.viscosity_Pa_s * state.viscosity_Pa_s / state.density_kg_per_m3);
        heats.push_back(state.specific_heat_J_per_kg_K * width_K_);
    }
    cells_.resize(count);
    const auto enter = [&](std::size_t cell, std::size_t what, const std::array<double, 4>& cubic) {
        for (std::size_t power = 0; power < cubic.size(); ++power)
            cells_[cell].powers[power][what] = cubic[power];
    };
    const auto enterAll = [&](std::size_t what, const std::vector<double>& y) {
        const std::vector<double> slope = slopes(y);
        for (std::size_t i = 0; i < count; ++i)
            enter(i, what, hermite(y[i], y[i + 1], slope[i], slope[i + 1]));
    };
    enterAll(density, densities);
    enterAll(fluidity, fluidities);
    enterAll(loss_factor, factors);
    double start = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double middle_degC = lowest_ + (static_cast<double>(i) + 0.5) * width_K_;
        const double middle = fluid.at(middle_degC).specific_heat_J_per_kg_K * width_K_;
        const double end = start + (heats[i] + 4 * middle + heats[i + 1]) / 6;
        enter(i, enthalpy, hermite(start, end, heats[i], heats[i + 1]));
        start = end;
    }
}

HeatSlopes EnthalpyTable::slopesAt(double temperature_degC) const
{
    if (!(temperature_degC > lowest_ && temperature_degC < highest_))
        return {}; // all stay as at the end
    const Place place = placeOf(temperature_degC);
    const auto& c = place.powers;
    const double x = place.share;
    const auto slope = [&](std::size_t i) {
        return (c[1][i] + x * (2 * c[2][i] + x * 3 * c[3][i])) * per_K_;
    };
    return {slope(density), slope(fluidity), slope(loss_factor),
            6 * c[3][enthalpy] * (per_K_ * per_K_ * per_K_)};
}

} // namespace siphonwright
