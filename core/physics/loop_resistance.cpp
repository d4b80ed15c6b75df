#include "core/physics/loop_resistance.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <variant>

namespace siphonwright {

namespace {

using namespace reynolds_nodes;

/// The interval between two nodes that a Reynolds number falls in, or the nearest.
struct Cell {
    int first = 0;
    double step = wide_step;
    double per_step = 1 / wide_step;
    double t = 0; ///< place in it, 0 to 1; outside the table less or more
};

Cell cellOf(double ln_reynolds)
{
    Cell cell;
    double from = first_ln;
    int least = 0, most = close_from - 1;
    if (ln_reynolds >= last_ln) {
        from = last_ln;
        least = close_to;
        most = count - 2;
    } else if (ln_reynolds >= close_ln) {
        from = close_ln;
        cell.step = close_step;
        cell.per_step = 1 / close_step;
        least = close_from;
        most = close_to - 1;
    }
    const double place = (ln_reynolds - from) * cell.per_step;
    // Not a number falls in the first, and stays one in t.
    const double inside = place > 0 ? std::min(place, static_cast<double>(most - least)) : 0;
    cell.first = least + static_cast<int>(inside);
    cell.t = place - (cell.first - least);
    return cell;
}

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

/// All of an element's losses as one coefficient on the element's own velocity.
Values totalK(const LoopElement& element, bool forward, LossTables& tables)
{
    Values total{};
    for (const Loss& given : element.losses) {
        Loss loss = forward ? given : reversed(given);
        const double areas = areaOf(element) / loss.area_m2;
        // K on the element's velocity per plain K on the loss's own.
        double share = areas * areas * loss.factor;
        if (auto* wall = std::get_if<loss_form::Wall>(&loss.form)) {
            share *= wall->length_m; // friction is even along a wall
            wall->length_m = 1;
        }
        const Values& K = tables.of(loss, loss.bore_m / element.bore_m * areas);
        for (std::size_t i = 0; i < K.size(); ++i)
            total[i] += share * K[i];
    }
    return total;
}

/// Nodes of a monotone cubic through ln(K Re^2).
template <typename Node>
void addTable(const Values& K, std::vector<Node>& nodes)
{
    Values y{};
    for (int i = 0; i < count; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const double x = lnAt(i);
        y[at] = std::log(std::clamp(K[at], least_K_Re * std::exp(-x), most_K)) + 2 * x;
    }
    double before_step = 0, before = 0;
    for (int i = 0; i < count; ++i) {
        const auto at = static_cast<std::size_t>(i);
        const bool last = i + 1 == count;
        const double step = last ? before_step : lnAt(i + 1) - lnAt(i);
        const double after = last ? before : (y[at + 1] - y[at]) / step;
        if (i == 0) {
            before_step = step;
            before = after;
        }
        // Of the parabola through three nodes, held within what Fritsch and Carlson allow a monotone cubic.
        const double slope = (before * step + after * before_step) / (before_step + step);
        const double most = 3 * std::max(0.0, std::min(before, after));
        nodes.push_back({y[at], std::clamp(slope, 0.0, most)});
        before_step = step;
        before = after;
    }
}

} // namespace

LoopResistance::LoopResistance(const std::vector<LoopElement>& loop)
{
    LossTables tables;
    build(loop, tables);
}

LoopResistance::LoopResistance(const std::vector<LoopElement>& loop, LossTables& tables)
{
    build(loop, tables);
}

void LoopResistance::build(const std::vector<LoopElement>& loop, LossTables& tables)
{
    const auto tableOf = [&](const LoopElement& element, bool forward) {
        const int first = static_cast<int>(nodes_.size());
        addTable(totalK(element, forward, tables), nodes_);
        return first;
    };
    elements_.reserve(loop.size());
    nodes_.reserve(loop.size() * count);
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
        any_shut_ = any_shut_ || element.shut;
        elements_.push_back(entry);
    }
}

LoopResistance::Slope LoopResistance::slopeOf(std::size_t element, bool forward, double ln_flow,
                                              double density_kg_per_m3, double ln_viscosity) const
{
    const Entry& entry = elements_[element];
    const int table = entry.table[forward ? 0 : 1];
    if (table < 0)
        return {};
    const Cell cell = cellOf(ln_flow + entry.ln_reynolds_per_flow - ln_viscosity);
    const double t = cell.t, step = cell.step;
    const auto first = static_cast<std::size_t>(table) + static_cast<std::size_t>(cell.first);
    const Node& a = nodes_[first];
    const Node& b = nodes_[first + 1];
    double value = 0, slope = 0;
    if (t < 0) {
        value = a.value + a.slope * t * step;
        slope = a.slope;
    } else if (t > 1) {
        value = b.value + b.slope * (t - 1) * step;
        slope = b.slope;
    } else { // a cubic by its values and slopes at both ends
        const double rise = b.value - a.value;
        const double c = 3 * rise - step * (2 * a.slope + b.slope);
        const double d = step * (a.slope + b.slope) - 2 * rise;
        value = a.value + t * (step * a.slope + t * (c + t * d));
        slope = a.slope + t * (2 * c + 3 * t * d) * cell.per_step;
    }
    const double loss_Pa =
        std::exp(value + 2 * ln_viscosity) / (2 * density_kg_per_m3 * entry.bore_m * entry.bore_m);
    return {loss_Pa, loss_Pa * slope};
}

LoopResistance::Slope LoopResistance::slopeOf(std::size_t element, bool forward, double ln_flow,
                                              const FluidState& state) const
{
    return slopeOf(element, forward, ln_flow, state.density_kg_per_m3, std::log(state.viscosity_Pa_s));
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
    return std::abs(flow_kg_per_s) * std::exp(elements_[element].ln_reynolds_per_flow) / state.viscosity_Pa_s;
}

double LoopResistance::pressureLoss_Pa(double flow_kg_per_s, const std::vector<FluidState>& states) const
{
    double loss_Pa = 0;
    for (std::size_t i = 0; i < elements_.size() && i < states.size(); ++i)
        loss_Pa += elementLoss_Pa(i, flow_kg_per_s, states[i]);
    return loss_Pa;
}

double LoopResistance::pockets_Pa(bool forward, const std::vector<FluidState>& states) const
{
    double pockets_Pa = 0;
    for (std::size_t i = 0; i < elements_.size() && i < states.size(); ++i) {
        const double head_m = forward ? elements_[i].pocket_forward_m : elements_[i].pocket_backward_m;
        pockets_Pa += states[i].density_kg_per_m3 * standard_gravity_m_per_s2 * head_m;
    }
    return pockets_Pa;
}

DrivenFlow LoopResistance::flowFor(double drive_Pa, const std::vector<FluidState>& states,
                                   double start_kg_per_s) const
{
    const bool forward = drive_Pa > 0;
    const double net_Pa = std::abs(drive_Pa) - pockets_Pa(forward, states);
    if (any_shut_ || net_Pa <= 0)
        return {};
    DrivenFlow flow = flowLosing(net_Pa, forward, states, start_kg_per_s);
    if (!forward)
        flow.flow_kg_per_s = -flow.flow_kg_per_s;
    return flow;
}

DrivenFlow LoopResistance::flowLosing(double loss_Pa, bool forward, const std::vector<FluidState>& states,
                                      double start_kg_per_s) const
{
    // What is less than any pressure is none, so that logarithms stay finite.
    constexpr double least_Pa = 1e-30, tolerance = 1e-12, longest_step = 5, usual_kg_per_s = 0.01;
    constexpr int most_iterations = 100;
    if (!std::isfinite(loss_Pa) || nodes_.empty())
        return {0, 0, false};
    if (loss_Pa < least_Pa)
        return {};
    // ln(loss) over ln(flow) has a slope of 1/2 to 2 everywhere, so Newton's steps lead to the root.
    const std::size_t known = std::min(elements_.size(), states.size());
    std::vector<double> ln_viscosity(known);
    for (std::size_t i = 0; i < known; ++i)
        ln_viscosity[i] = std::log(states[i].viscosity_Pa_s);
    const double start = std::abs(start_kg_per_s);
    double x = std::log(std::isfinite(start) && start > 0 ? start : usual_kg_per_s);
    double low = -1000, high = 1000;
    for (int i = 1; i <= most_iterations; ++i) {
        Slope sum;
        for (std::size_t k = 0; k < known; ++k) {
            const Slope s = slopeOf(k, forward, x, states[k].density_kg_per_m3, ln_viscosity[k]);
            sum.loss_Pa += s.loss_Pa;
            sum.per_ln_flow_Pa += s.per_ln_flow_Pa;
        }
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
