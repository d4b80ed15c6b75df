#include "core/physics/loop_resistance.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

namespace siphonwright {

namespace {

// Finer than the steepest thing in the tables, the rise of friction between Re 2000 and 3000.
constexpr double node_step = 0.1;
const double first_ln_reynolds = std::log(0.1);
constexpr int node_count = 163; // to Re 1.1e6

// A bend loses nothing under a Dean number of 11.6, and logarithms need something.
constexpr double least_K_Re = 1e-9;
constexpr double most_K = 1e60;

/// Whether a loss is another when the flow turns.
bool oneWay(const Loss& loss)
{
    return std::holds_alternative<loss_form::Entrance>(loss.form) ||
           std::holds_alternative<loss_form::Exit>(loss.form) ||
           std::holds_alternative<loss_form::Step>(loss.form);
}

double areaOf(const LoopElement& element)
{
    return element.area_m2 > 0 ? element.area_m2 : std::numbers::pi / 4 * element.bore_m * element.bore_m;
}

/// A loss seen from its element's bore.
struct Seen {
    Loss loss;
    double reynolds_ratio = 1; ///< Re in its own bore per Re in the element's
    double K_ratio = 1;        ///< K on the element's velocity per K on its own
};

std::vector<Seen> seenFrom(const LoopElement& element, bool forward)
{
    const double area_m2 = areaOf(element);
    std::vector<Seen> seen;
    for (const Loss& given : element.losses) {
        Seen s;
        s.loss = forward ? given : reversed(given);
        const double areas = area_m2 / s.loss.area_m2;
        s.reynolds_ratio = s.loss.bore_m / element.bore_m * areas;
        s.K_ratio = areas * areas;
        seen.push_back(s);
    }
    return seen;
}

double totalK(const std::vector<Seen>& losses, double reynolds)
{
    double K = 0;
    for (const Seen& s : losses)
        K += s.K_ratio * lossCoefficient(s.loss, s.reynolds_ratio * reynolds);
    return std::clamp(K, least_K_Re / reynolds, most_K);
}

} // namespace

LoopResistance::LoopResistance(const std::vector<LoopElement>& loop)
{
    elements.reserve(loop.size());
    for (const LoopElement& element : loop) {
        Entry entry;
        entry.ln_reynolds_per_flow = std::log(element.bore_m / areaOf(element));
        entry.bore_m = element.bore_m;
        entry.pocket_forward_m = element.pocket_forward_m;
        entry.pocket_backward_m = element.pocket_backward_m;
        if (!element.losses.empty()) {
            entry.table[0] = tableOf(element, true);
            entry.table[1] = std::any_of(element.losses.begin(), element.losses.end(), oneWay)
                                 ? tableOf(element, false)
                                 : entry.table[0];
        }
        any_shut = any_shut || element.shut;
        elements.push_back(entry);
    }
}

int LoopResistance::tableOf(const LoopElement& element, bool forward)
{
    const std::vector<Seen> losses = seenFrom(element, forward);
    std::array<double, node_count> y{};
    for (int i = 0; i < node_count; ++i) {
        const double ln_reynolds = first_ln_reynolds + i * node_step;
        y[static_cast<std::size_t>(i)] = std::log(totalK(losses, std::exp(ln_reynolds))) + 2 * ln_reynolds;
    }
    const auto rise = [&](int i) { // from node i to the next
        const auto at = static_cast<std::size_t>(std::clamp(i, 0, node_count - 2));
        return (y[at + 1] - y[at]) / node_step;
    };
    const int first = static_cast<int>(nodes.size());
    for (int i = 0; i < node_count; ++i) {
        const double before = rise(i - 1), after = rise(i);
        // Central difference of fourth order, held within what Fritsch and Carlson allow a monotone cubic.
        const double slope = (7 * (before + after) - rise(i - 2) - rise(i + 1)) / 12;
        const double most = 3 * std::max(0.0, std::min(before, after));
        nodes.push_back({y[static_cast<std::size_t>(i)], std::clamp(slope, 0.0, most)});
    }
    return first;
}

LoopResistance::Slope LoopResistance::slopeOf(std::size_t element, bool forward, double ln_flow,
                                              const FluidState& state) const
{
    const Entry& entry = elements[element];
    const int table = entry.table[forward ? 0 : 1];
    if (table < 0)
        return {};
    const double ln_reynolds = ln_flow + entry.ln_reynolds_per_flow - std::log(state.viscosity_Pa_s);
    const double place = (ln_reynolds - first_ln_reynolds) / node_step;
    const int cell = static_cast<int>(std::clamp(place, 0.0, node_count - 2.0));
    const Node& a = nodes[static_cast<std::size_t>(table + cell)];
    const Node& b = nodes[static_cast<std::size_t>(table + cell + 1)];
    const double t = place - cell;
    double value = 0, slope = 0;
    if (t < 0) {
        value = a.value + a.slope * t * node_step;
        slope = a.slope;
    } else if (t > 1) {
        value = b.value + b.slope * (t - 1) * node_step;
        slope = b.slope;
    } else { // a cubic by its values and slopes at both ends
        const double rise = b.value - a.value;
        const double c = 3 * rise - node_step * (2 * a.slope + b.slope);
        const double d = node_step * (a.slope + b.slope) - 2 * rise;
        value = a.value + t * (node_step * a.slope + t * (c + t * d));
        slope = a.slope + t * (2 * c + 3 * t * d) / node_step;
    }
    const double viscosity_per_bore = state.viscosity_Pa_s / entry.bore_m;
    const double loss_Pa =
        std::exp(value) * viscosity_per_bore * viscosity_per_bore / (2 * state.density_kg_per_m3);
    return {loss_Pa, loss_Pa * slope};
}

double LoopResistance::elementLoss_Pa(std::size_t element, double flow_kg_per_s,
                                      const FluidState& state) const
{
    if (!(std::abs(flow_kg_per_s) > 0))
        return 0;
    const bool forward = flow_kg_per_s > 0;
    const double loss_Pa = slopeOf(element, forward, std::log(std::abs(flow_kg_per_s)), state).loss_Pa;
    return forward ? loss_Pa : -loss_Pa;
}

double LoopResistance::reynolds(std::size_t element, double flow_kg_per_s, const FluidState& state) const
{
    return std::abs(flow_kg_per_s) * std::exp(elements[element].ln_reynolds_per_flow) / state.viscosity_Pa_s;
}

double LoopResistance::pressureLoss_Pa(double flow_kg_per_s, const std::vector<FluidState>& states) const
{
    double loss_Pa = 0;
    for (std::size_t i = 0; i < elements.size() && i < states.size(); ++i)
        loss_Pa += elementLoss_Pa(i, flow_kg_per_s, states[i]);
    return loss_Pa;
}

double LoopResistance::pockets_Pa(bool forward, const std::vector<FluidState>& states) const
{
    double pockets_Pa = 0;
    for (std::size_t i = 0; i < elements.size() && i < states.size(); ++i) {
        const double head_m = forward ? elements[i].pocket_forward_m : elements[i].pocket_backward_m;
        pockets_Pa += states[i].density_kg_per_m3 * standard_gravity_m_per_s2 * head_m;
    }
    return pockets_Pa;
}

DrivenFlow LoopResistance::flowFor(double drive_Pa, const std::vector<FluidState>& states,
                                   double start_kg_per_s) const
{
    const bool forward = drive_Pa > 0;
    const double net_Pa = std::abs(drive_Pa) - pockets_Pa(forward, states);
    if (any_shut || net_Pa <= 0)
        return {};
    DrivenFlow flow = flowLosing(net_Pa, forward, states, start_kg_per_s);
    if (!forward)
        flow.flow_kg_per_s = -flow.flow_kg_per_s;
    return flow;
}

LoopResistance::Slope LoopResistance::slopeOfAll(bool forward, double ln_flow,
                                                 const std::vector<FluidState>& states) const
{
    Slope sum;
    for (std::size_t i = 0; i < elements.size() && i < states.size(); ++i) {
        const Slope s = slopeOf(i, forward, ln_flow, states[i]);
        sum.loss_Pa += s.loss_Pa;
        sum.per_ln_flow_Pa += s.per_ln_flow_Pa;
    }
    return sum;
}

DrivenFlow LoopResistance::flowLosing(double loss_Pa, bool forward, const std::vector<FluidState>& states,
                                      double start_kg_per_s) const
{
    // What is less than any pressure is none, so that logarithms stay finite.
    constexpr double least_Pa = 1e-30, tolerance = 1e-12, longest_step = 5, usual_kg_per_s = 0.01;
    constexpr int most_iterations = 100;
    if (!std::isfinite(loss_Pa) || nodes.empty())
        return {0, 0, false};
    if (loss_Pa < least_Pa)
        return {};
    // ln(loss) over ln(flow) has a slope of 1/2 to 2 everywhere, so Newton's steps lead to the root.
    const double start = std::abs(start_kg_per_s);
    double x = std::log(std::isfinite(start) && start > 0 ? start : usual_kg_per_s);
    double low = -1000, high = 1000;
    for (int i = 1; i <= most_iterations; ++i) {
        const Slope sum = slopeOfAll(forward, x, states);
        const double miss = std::log(sum.loss_Pa / loss_Pa);
        if (std::isnan(miss))
            break;
        (miss > 0 ? high : low) = x;
        double step = std::clamp(-miss * sum.loss_Pa / sum.per_ln_flow_Pa, -longest_step, longest_step);
        if (!(x + step >= low && x + step <= high))
            step = (low + high) / 2 - x;
        x += step;
        if (std::abs(step) <= tolerance)
            return {std::exp(x), i, true};
    }
    return {0, most_iterations, false};
}

} // namespace siphonwright
