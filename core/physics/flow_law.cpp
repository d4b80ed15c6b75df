#include "core/physics/flow_law.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace siphonwright {
namespace {

// Reynolds numbers 0.07 to 5e5 in hoses of 16 to 38 mm.
constexpr double first_place = -7;
constexpr double step = 0.025;
constexpr std::size_t node_count = 641;

/// ln(a/b) for both over 0; by its series (error under 1e-11) where they are near, as they mostly are.
double lnRatio(double a, double b)
{
    const double u = (a - b) / (a + b);
    const double u2 = u * u;
    return u2 < 1e-3 ? 2 * u * (1 + u2 * (1.0 / 3 + u2 * (1.0 / 5 + u2 / 7))) : std::log(a / b);
}

} // namespace

FlowLaw::FlowLaw(LoopResistance resistance) : resistance_(std::move(resistance))
{
    constexpr double unknown = std::numeric_limits<double>::quiet_NaN();
    for (std::size_t cell = 0; cell < resistance_.size(); ++cell) {
        if (resistance_.slopeOf(cell, true, 0, {1, 1, 1, 1}).loss_Pa > 0)
            forward_.push_back({cell, std::vector<Node>(node_count, Node{unknown, unknown})});
    }
    backward_ = forward_;
}

inline const FlowLaw::Node& FlowLaw::nodeAt(Table& table, bool forward, std::size_t place) const
{
    Node& node = table.nodes[place];
    if (std::isnan(node.loss)) [[unlikely]] {
        const double ln_flow = first_place + static_cast<double>(place) * step;
        const LoopResistance::Slope slope = resistance_.slopeOf(table.cell, forward, ln_flow, {1, 1, 1, 1});
        node = {slope.loss_Pa, slope.per_ln_flow_Pa * step};
    }
    return node;
}

inline FlowLaw::Slope FlowLaw::slopeAt(Table& table, bool forward, double ln_flow_per_viscosity) const
{
    const double place = (ln_flow_per_viscosity - first_place) * (1 / step);
    constexpr auto last = static_cast<double>(node_count - 1);
    if (!(place >= 0 && place < last)) [[unlikely]] {
        const bool low = !(place >= 0);
        const Node& end = nodeAt(table, forward, low ? 0 : node_count - 1);
        const double power = end.slope / end.loss; // by node
        const double loss = end.loss * std::exp(power * (low ? place : place - last));
        return {loss, loss * power / step, loss * power * power / (step * step)};
    }
    const auto cell = static_cast<std::size_t>(place);
    const double x = place - static_cast<double>(cell);
    const Node& a = nodeAt(table, forward, cell);
    const Node& b = nodeAt(table, forward, cell + 1);
    const double rise = b.loss - a.loss;
    const double c = 3 * rise - 2 * a.slope - b.slope;
    const double d = a.slope + b.slope - 2 * rise;
    constexpr double per_step = 1 / step;
    return {a.loss + x * (a.slope + x * (c + x * d)), (a.slope + x * (2 * c + 3 * x * d)) * per_step,
            (2 * c + 6 * x * d) * (per_step * per_step)};
}

inline FlowLaw::Slope FlowLaw::slopeOfAll(bool forward, double ln_flow, const std::vector<HeatState>& states)
{
    Slope sum;
    for (Table& table : forward ? forward_ : backward_) {
        const HeatState& state = states[table.cell];
        const Slope own = slopeAt(table, forward, ln_flow - state.ln_viscosity);
        const double factor = state.viscosity_squared_per_density;
        sum.loss_Pa += own.loss_Pa * factor;
        sum.per_ln_flow_Pa += own.per_ln_flow_Pa * factor;
        sum.curvature_Pa += own.curvature_Pa * factor;
    }
    return sum;
}

void FlowLaw::findSlopes(bool forward, double flow_kg_per_s, const std::vector<HeatState>& states,
                         std::vector<Slope>& slopes)
{
    std::fill(slopes.begin(), slopes.end(), Slope{});
    const double ln_flow = std::log(flow_kg_per_s);
    for (Table& table : forward ? forward_ : backward_)
        slopes[table.cell] = slopeAt(table, forward, ln_flow - states[table.cell].ln_viscosity);
}

double FlowLaw::flowLosing(double loss_Pa, bool forward, const std::vector<HeatState>& states)
{
    // The error that a step leaves is under a tenth of its cube, where no loss has a kink.
    constexpr double close_enough = 1e-3, longest_step = 5, least_Pa = 1e-30;
    constexpr double bend_counts_under = 0.1; // far off, the curvature here says little
    constexpr int most_iterations = 100;
    if (!(loss_Pa > least_Pa) || forward_.empty())
        return 0;
    double x = last_ln_flow_, low = -200, high = 50;
    if (last_loss_Pa_ > 0)
        x += std::clamp(lnRatio(loss_Pa, last_loss_Pa_) / last_power_, -longest_step, longest_step);
    for (int i = 0; i < most_iterations; ++i) {
        const Slope sum = slopeOfAll(forward, x, states);
        const double miss = lnRatio(sum.loss_Pa, loss_Pa);
        (miss > 0 ? high : low) = x;
        // f(x) = ln(loss) - ln(goal): f' = L'/L, f'' = L''/L - f'^2.
        const double slope = sum.per_ln_flow_Pa / sum.loss_Pa;
        const double bend = sum.curvature_Pa / sum.loss_Pa - slope * slope;
        double change = std::clamp(-miss / slope, -longest_step, longest_step);
        if (std::abs(change) < bend_counts_under)
            change -= bend / (2 * slope) * change * change;
        if (!(x + change >= low && x + change <= high))
            change = (low + high) / 2 - x;
        x += change;
        last_power_ = slope;
        if (std::abs(change) <= close_enough)
            break;
    }
    last_ln_flow_ = x;
    last_loss_Pa_ = loss_Pa;
    return std::exp(x);
}

} // namespace siphonwright
