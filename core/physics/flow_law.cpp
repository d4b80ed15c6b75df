#include "core/physics/flow_law.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <utility>

namespace siphonwright {
namespace {

// Of m/viscosity, in metres: Reynolds numbers 0.07 to 5e5 in hoses of 16 to 38 mm.
constexpr double lowest = 1.0 / 1024, highest = 8192;
/// 32 intervals to each doubling: the highest five bits of the fraction tell them apart.
constexpr int bits_within = 52 - 5;
static_assert(std::numeric_limits<double>::is_iec559);

constexpr std::uint64_t placeOf(double flow_per_viscosity)
{
    return std::bit_cast<std::uint64_t>(flow_per_viscosity) >> bits_within;
}

constexpr std::uint64_t first_place = placeOf(lowest);
constexpr auto interval_count = static_cast<std::size_t>(placeOf(highest) - first_place);

constexpr double startOf(std::size_t place)
{
    return std::bit_cast<double>((first_place + place) << bits_within);
}

} // namespace

FlowLaw::FlowLaw(LoopResistance resistance) : resistance_(std::move(resistance))
{
    constexpr double unknown = std::numeric_limits<double>::quiet_NaN();
    for (std::size_t cell = 0; cell < resistance_.size(); ++cell) {
        if (resistance_.slopeOf(cell, true, 0, {1, 1, 1, 1}).loss_Pa > 0)
            forward_.push_back({cell, std::vector<Cubic>(interval_count, Cubic{unknown, 0, 0, 0})});
    }
    backward_ = forward_;
}

FlowLaw::Cubic FlowLaw::between(const Table& table, bool forward, std::size_t place) const
{
    const double start = startOf(place), end = startOf(place + 1), width = end - start;
    const auto at = [&](double there) {
        const LoopResistance::Slope own =
            resistance_.slopeOf(table.cell, forward, std::log(there), {1, 1, 1, 1});
        return Slope{own.loss_Pa, own.per_ln_flow_Pa / there, 0};
    };
    const bool known = place + 1 < interval_count && !std::isnan(table.cubics[place + 1].loss);
    const Slope a = at(start);
    const Slope b = known ? Slope{table.cubics[place + 1].loss, table.cubics[place + 1].slope, 0} : at(end);
    const double rise = (b.loss - a.loss) / width;
    return {a.loss, a.slope, (3 * rise - 2 * a.slope - b.slope) / width,
            (a.slope + b.slope - 2 * rise) / (width * width)};
}

inline const FlowLaw::Cubic& FlowLaw::cubicAt(Table& table, bool forward, std::size_t place) const
{
    Cubic& cubic = table.cubics[place];
    if (std::isnan(cubic.loss)) [[unlikely]]
        cubic = between(table, forward, place);
    return cubic;
}

FlowLaw::Slope FlowLaw::slopeBeyond(Table& table, bool forward, double flow_per_viscosity) const
{
    const bool low = !(flow_per_viscosity >= lowest);
    const Cubic& c = cubicAt(table, forward, low ? 0 : interval_count - 1);
    const double width = low ? 0 : highest - startOf(interval_count - 1), end = low ? lowest : highest;
    const double loss = c.loss + width * (c.slope + width * (c.square + width * c.cube));
    const double power = (c.slope + width * (2 * c.square + width * 3 * c.cube)) * end / loss;
    const double here = loss * std::pow(flow_per_viscosity / end, power);
    const double slope = here * power / flow_per_viscosity;
    return {here, slope, slope * (power - 1) / flow_per_viscosity};
}

inline FlowLaw::Slope FlowLaw::slopeAt(Table& table, bool forward, double flow_per_viscosity) const
{
    if (!(flow_per_viscosity >= lowest && flow_per_viscosity < highest)) [[unlikely]]
        return slopeBeyond(table, forward, flow_per_viscosity);
    const std::uint64_t place = placeOf(flow_per_viscosity);
    const Cubic& c = cubicAt(table, forward, static_cast<std::size_t>(place - first_place));
    const double x = flow_per_viscosity - std::bit_cast<double>(place << bits_within);
    return {c.loss + x * (c.slope + x * (c.square + x * c.cube)),
            c.slope + x * (2 * c.square + x * 3 * c.cube), 2 * c.square + x * 6 * c.cube};
}

inline FlowLaw::Slope FlowLaw::slopeOfAll(bool forward, double flow_kg_per_s,
                                          const std::vector<HeatState>& states)
{
    Slope sum;
    for (Table& table : forward ? forward_ : backward_) {
        const HeatState& state = states[table.cell];
        const double fluidity = state.fluidity_per_Pa_s;
        const Slope own = slopeAt(table, forward, flow_kg_per_s * fluidity);
        const double factor = state.viscosity_squared_per_density;
        sum.loss += own.loss * factor;
        sum.slope += own.slope * (factor * fluidity);
        sum.curvature += own.curvature * (factor * fluidity * fluidity);
    }
    return sum;
}

void FlowLaw::findSlopes(bool forward, double flow_kg_per_s, const std::vector<HeatState>& states,
                         std::vector<Slope>& slopes)
{
    std::fill(slopes.begin(), slopes.end(), Slope{});
    for (Table& table : forward ? forward_ : backward_)
        slopes[table.cell] = slopeAt(table, forward, flow_kg_per_s * states[table.cell].fluidity_per_Pa_s);
}

double FlowLaw::flowLosing(double loss_Pa, bool forward, const std::vector<HeatState>& states)
{
    // The error that a step leaves is under a tenth of its cube, relative, where no loss has a kink.
    constexpr double close_enough = 1e-3, least_Pa = 1e-30;
    constexpr double bend_counts_under = 0.1; // far off, the curvature here says little
    constexpr double farthest = 4;            // of the flow found last, times or a share
    constexpr int most_iterations = 200;
    if (!(loss_Pa > least_Pa) || forward_.empty())
        return 0;
    double flow = last_flow_kg_per_s_, low = 0, high = std::numeric_limits<double>::infinity();
    if (last_slope_ > 0)
        flow = std::clamp(flow + (loss_Pa - last_loss_Pa_) / last_slope_, flow / farthest, flow * farthest);
    for (int i = 0; i < most_iterations; ++i) {
        const Slope sum = slopeOfAll(forward, flow, states);
        const double miss = sum.loss - loss_Pa;
        (miss > 0 ? high : low) = flow;
        double change = -miss / sum.slope;
        if (std::abs(change) < bend_counts_under * flow)
            change -= sum.curvature / (2 * sum.slope) * change * change;
        if (!(flow + change >= low && flow + change <= high))
            change = high < std::numeric_limits<double>::infinity() ? (low + high) / 2 - flow : flow;
        const bool found = std::abs(change) <= close_enough * flow;
        flow += change;
        last_slope_ = sum.slope + sum.curvature * change;
        if (found)
            break;
    }
    last_flow_kg_per_s_ = flow;
    last_loss_Pa_ = loss_Pa;
    return flow;
}

} // namespace siphonwright
