#include "core/physics/fluid_table.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double cell_K = 2;
constexpr double widest_range_K = 2000;

/// Where a cell's cubics pass through the liquid's values, in shares of its width: Lobatto's points, 0, (1 -+
/// sqrt(1/5))/2 and 1, ends included so that cells join.
constexpr std::array<double, 4> nodes = {0, 0.27639320225002103, 0.72360679774997897, 1};

bool usable(const FluidState& state)
{
    const auto positive = [](double value) { return std::isfinite(value) && value > 0; };
    return positive(state.density_kg_per_m3) && positive(state.viscosity_Pa_s) &&
           positive(state.specific_heat_J_per_kg_K);
}

/// The cubic through four values at `nodes`, lowest power first, by Newton's divided differences.
std::array<double, 4> through(std::array<double, 4> value)
{
    for (std::size_t order = 1; order < 4; ++order)
        for (std::size_t i = 3; i >= order; --i)
            value[i] = (value[i] - value[i - 1]) / (nodes[i] - nodes[i - order]);
    std::array<double, 4> cubic{};
    for (std::size_t i = 4; i-- > 0;) {
        for (std::size_t j = 3; j > 0; --j)
            cubic[j] = cubic[j - 1] - nodes[i] * cubic[j];
        cubic[0] = value[i] - nodes[i] * cubic[0];
    }
    return cubic;
}

} // namespace

std::optional<FluidTable> FluidTable::of(const Fluid& fluid)
{
    const double lowest = fluid.lowest_degC();
    const double highest = fluid.highest_degC();
    if (!(highest > lowest && highest - lowest <= widest_range_K))
        return std::nullopt;
    FluidTable table;
    table.highest_degC_ = highest;
    table.first_even_ = std::floor(lowest / cell_K);
    double start = lowest;
    double before = 0;
    for (double border = table.first_even_ + 1; start < highest; ++border) {
        Cell cell;
        const double end = std::min(border * cell_K, highest);
        cell.start_degC = start;
        cell.width_K = end - start;
        cell.integral_before = before;
        if (!fit(fluid, cell))
            return std::nullopt;
        before += integral(cell, 1);
        start = end;
        table.cells_.push_back(cell);
    }
    for (const Cell& cell : table.cells_)
        table.largest_relative_error_ = std::max(table.largest_relative_error_, table.deviation(fluid, cell));
    return table;
}

bool FluidTable::fit(const Fluid& fluid, Cell& cell)
{
    Cubic density{};
    Cubic ln_viscosity{};
    Cubic specific_heat{};
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        const FluidState state = fluid.at(cell.start_degC + nodes[i] * cell.width_K);
        if (!usable(state))
            return false;
        density[i] = state.density_kg_per_m3;
        ln_viscosity[i] = std::log(state.viscosity_Pa_s);
        specific_heat[i] = state.specific_heat_J_per_kg_K;
    }
    cell.density = through(density);
    cell.ln_viscosity = through(ln_viscosity);
    cell.specific_heat = through(specific_heat);
    return true;
}

double FluidTable::deviation(const Fluid& fluid, const Cell& cell) const
{
    constexpr int points = 8;
    double largest = 0;
    for (int i = 0; i < points; ++i) {
        const double t = cell.start_degC + cell.width_K * (i + 0.5) / points;
        const FluidState state = fluid.at(t);
        largest = std::max({largest, std::abs(density(t) / state.density_kg_per_m3 - 1),
                            std::abs(std::exp(lnViscosity(t)) / state.viscosity_Pa_s - 1),
                            std::abs(specificHeat(t) / state.specific_heat_J_per_kg_K - 1)});
    }
    return largest;
}

FluidTable::Place FluidTable::at(double temperature_degC) const
{
    // What is not a number becomes the lower end, as it does in the liquid.
    const double t =
        temperature_degC > lowest_degC() ? std::min(temperature_degC, highest_degC_) : lowest_degC();
    const auto index = static_cast<std::size_t>(std::floor(t / cell_K) - first_even_);
    const Cell& cell = cells_[std::min(index, cells_.size() - 1)];
    return {cell, (t - cell.start_degC) / cell.width_K};
}

double FluidTable::value(const Cubic& cubic, double share)
{
    return ((cubic[3] * share + cubic[2]) * share + cubic[1]) * share + cubic[0];
}

double FluidTable::integral(const Cell& cell, double share)
{
    const Cubic& c = cell.density;
    return cell.width_K * share * (c[0] + share * (c[1] / 2 + share * (c[2] / 3 + share * c[3] / 4)));
}

double FluidTable::density(double temperature_degC) const
{
    const Place place = at(temperature_degC);
    return value(place.cell.density, place.share);
}

double FluidTable::lnViscosity(double temperature_degC) const
{
    const Place place = at(temperature_degC);
    return value(place.cell.ln_viscosity, place.share);
}

double FluidTable::specificHeat(double temperature_degC) const
{
    const Place place = at(temperature_degC);
    return value(place.cell.specific_heat, place.share);
}

double FluidTable::densityIntegral(double temperature_degC) const
{
    const Place place = at(temperature_degC);
    const double inside = place.cell.integral_before + integral(place.cell, place.share);
    const double held = place.cell.start_degC + place.share * place.cell.width_K;
    const bool outside = temperature_degC < lowest_degC() || temperature_degC > highest_degC_;
    return outside ? inside + (temperature_degC - held) * value(place.cell.density, place.share) : inside;
}

double FluidTable::meanDensity(double one_degC, double other_degC) const
{
    constexpr double too_close_to_subtract_K = 1e-3;
    const double difference = other_degC - one_degC;
    if (!(std::abs(difference) > too_close_to_subtract_K))
        return density(one_degC + difference / 2);
    return (densityIntegral(other_degC) - densityIntegral(one_degC)) / difference;
}

} // namespace siphonwright
