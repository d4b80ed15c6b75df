#include "core/physics/circulation.h"

#include "core/physics/circulation_search.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {

namespace {

Circulation refused(const Message& why)
{
    Circulation result;
    result.status = CirculationStatus::invalid_input;
    result.message = why;
    return result;
}

/// Options with what no search could use put right.
CirculationOptions usable(CirculationOptions options)
{
    const CirculationOptions standard;
    const auto inRange = [](double value, double least, double most, double otherwise) {
        return std::isfinite(value) ? std::clamp(value, least, most) : otherwise;
    };
    options.flow_tolerance = inRange(options.flow_tolerance, 1e-13, 1e-2, standard.flow_tolerance);
    options.search_step = inRange(options.search_step, 0.02, 1, standard.search_step);
    options.edge_share = inRange(options.edge_share, 0, 1, standard.edge_share);
    options.most_iterations = std::clamp(options.most_iterations, 5, 1000);
    const double start = std::abs(options.start_flow_kg_per_s);
    if (!(start > 1e-9 && start < 1e6))
        options.start_flow_kg_per_s = 0;
    if (std::isnan(options.boiling_degC))
        options.boiling_degC = standard.boiling_degC;
    return options;
}

bool heated(const LoopElement& element)
{
    return element.heat.power_W > 0;
}

/// Temperatures at the heater, of the state that `balance` is in.
CirculationState stateOf(const Loop& loop, const LoopBalance& balance, const Root& root)
{
    CirculationState state;
    state.flow_kg_per_s = (root.forward ? 1 : -1) * std::exp(root.ln_flow);
    bool entered = false;
    const std::size_t count = loop.elements.size();
    for (std::size_t k = 0; k < count; ++k) {
        const std::size_t i = root.forward ? k : count - 1 - k;
        if (!heated(loop.elements[i]))
            continue;
        if (!entered)
            state.heater_inlet_degC = balance.ends()[i].in_degC;
        state.heater_outlet_degC = balance.ends()[i].out_degC;
        entered = true;
    }
    if (!entered) { // a loop that its block drives
        state.heater_inlet_degC = root.balance.coldest_degC;
        state.heater_outlet_degC = root.balance.hottest_degC;
    }
    return state;
}

void giveHeads(Circulation& result, double drive_Pa, double resistance_Pa, double pocket_Pa,
               double density_kg_per_m3)
{
    const double mm_per_Pa = mm_per_m / (density_kg_per_m3 * standard_gravity_m_per_s2);
    result.drive_Pa = drive_Pa;
    result.resistance_Pa = resistance_Pa;
    result.drive_mm = drive_Pa * mm_per_Pa;
    result.resistance_mm = resistance_Pa * mm_per_Pa;
    result.pocket_mm = pocket_Pa * mm_per_Pa;
}

void giveElements(Circulation& result, const Loop& loop, const LoopResistance& resistance,
                  const LoopBalance& balance)
{
    const bool forward = result.flow_kg_per_s > 0;
    const double flow = std::abs(result.flow_kg_per_s);
    for (std::size_t i = 0; i < loop.elements.size(); ++i) {
        const LoopElement& element = loop.elements[i];
        const LoopBalance::Ends& ends = balance.ends()[i];
        const double round_m2 = std::numbers::pi / 4 * element.bore_m * element.bore_m;
        const double area_m2 = element.area_m2 > 0 ? element.area_m2 : round_m2;
        ElementState state;
        state.start_degC = forward ? ends.in_degC : ends.out_degC;
        state.end_degC = forward ? ends.out_degC : ends.in_degC;
        state.mean_degC = ends.mean_degC;
        state.heat_W = ends.heat_W;
        state.reynolds = flow * element.bore_m / (area_m2 * std::exp(ends.ln_viscosity));
        state.velocity_m_per_s = flow / (ends.density_kg_per_m3 * area_m2);
        state.loss_Pa =
            resistance.slopeOf(i, forward, std::log(flow), ends.density_kg_per_m3, ends.ln_viscosity).loss_Pa;
        result.elements.push_back(state);
    }
}

/// By the losses themselves: the tables know only each element's sum.
void giveParts(Circulation& result, const Loop& loop, const LoopBalance& balance)
{
    const bool forward = result.flow_kg_per_s > 0;
    const double flow = std::abs(result.flow_kg_per_s);
    double total_Pa = 0;
    for (std::size_t i = 0; i < loop.elements.size(); ++i) {
        const double density_kg_per_m3 = balance.ends()[i].density_kg_per_m3;
        const double viscosity_Pa_s = std::exp(balance.ends()[i].ln_viscosity);
        for (const Loss& given : loop.elements[i].losses) {
            const Loss loss = forward ? given : reversed(given);
            const double velocity = flow / (density_kg_per_m3 * loss.area_m2);
            const double reynolds = flow * loss.bore_m / (loss.area_m2 * viscosity_Pa_s);
            const double loss_Pa =
                lossCoefficient(loss, reynolds) * density_kg_per_m3 * velocity * velocity / 2;
            const auto at = std::lower_bound(result.parts.begin(), result.parts.end(), given.part,
                                             [](const PartLoss& p, int part) { return p.part < part; });
            if (at != result.parts.end() && at->part == given.part)
                at->loss_Pa += loss_Pa;
            else
                result.parts.insert(at, {given.part, loss_Pa, 0});
            total_Pa += loss_Pa;
        }
    }
    for (PartLoss& part : result.parts)
        part.share = total_Pa > 0 ? part.loss_Pa / total_Pa : 0;
}

void giveState(Circulation& result, const Loop& loop, const LoopResistance& resistance,
               const FluidTable& fluid, CirculationSearch& search, const Root& root,
               const CirculationOptions& options)
{
    Root settled = root;
    settled.balance = search.settle(root);
    const CirculationState state = stateOf(loop, search.balance(), settled);
    const Balance& b = settled.balance;
    result.status = root.forward ? CirculationStatus::circulates : CirculationStatus::reverse;
    result.flow_kg_per_s = state.flow_kg_per_s;
    result.heater_inlet_degC = state.heater_inlet_degC;
    result.heater_outlet_degC = state.heater_outlet_degC;
    result.residual_Pa = b.net_Pa();
    giveHeads(result, b.drive_Pa, b.loss_Pa + b.pocket_Pa, b.pocket_Pa,
              fluid.density(state.heater_inlet_degC));
    if (options.details) {
        giveElements(result, loop, resistance, search.balance());
        giveParts(result, loop, search.balance());
    }
    result.on_the_edge = b.pocket_Pa > 0 && b.pocket_Pa >= (1 - options.edge_share) * b.drive_Pa;
    const char* pattern = root.forward
                              ? "circulates on {2} of head, into the heater at {0} and out at {1}"
                              : "circulates in reverse on {2} of head, into the heater at {0} and out at {1}";
    result.message = {pattern,
                      {{state.heater_inlet_degC, Unit::degC},
                       {state.heater_outlet_degC, Unit::degC},
                       {result.drive_mm, Unit::mm}},
                      {}};
    if (!root.converged) {
        result.status = CirculationStatus::not_converged;
        result.message = {"the balance was not found within {a} Pa", {}, {exactText(b.net_Pa())}};
    }
}

/// No flow: why not, with both heads.
void giveReason(Circulation& result, const FlowSurvey& forward, const TemperatureLimits& limits,
                const CirculationOptions& options)
{
    const double drive_Pa = forward.any_in_range ? std::max(forward.most_drive_Pa, 0.0) : 0;
    const double pocket_Pa = forward.pocket_Pa;
    giveHeads(result, drive_Pa, pocket_Pa, pocket_Pa, forward.density_kg_per_m3);
    if (forward.any_in_range && pocket_Pa > 0 && pocket_Pa >= drive_Pa) {
        result.status = CirculationStatus::stalled;
        result.on_the_edge = pocket_Pa <= (1 + options.edge_share) * drive_Pa;
        result.message = {"air takes {0} of head, and the loop can raise {1} at most",
                          {{result.pocket_mm, Unit::mm}, {result.drive_mm, Unit::mm}},
                          {}};
    } else if (forward.any_in_range && !forward.too_hot && !forward.too_cold && !(drive_Pa > 0)) {
        result.status = CirculationStatus::stalled;
        result.message = {"nothing drives it: the warm column is not above the cold one ({0} of head)",
                          {{result.drive_mm, Unit::mm}},
                          {}};
    } else if (forward.too_cold || (!forward.any_in_range && !forward.hot_at_slowest)) {
        result.status = CirculationStatus::slush;
        result.message = {
            "the coolant would be under {0}, where it freezes", {{limits.lowest_degC, Unit::degC}}, {}};
    } else {
        result.status = CirculationStatus::boiling;
        result.message = {
            "the coolant would reach {0} before enough of it flows", {{limits.highest_degC, Unit::degC}}, {}};
    }
}

void giveClosed(Circulation& result, const FlowSurvey& forward)
{
    const double drive_Pa = forward.any_in_range ? std::max(forward.most_drive_Pa, 0.0) : 0;
    giveHeads(result, drive_Pa, drive_Pa, 0, forward.density_kg_per_m3);
    result.status = CirculationStatus::closed;
    result.message = {
        "a closed valve withstands the {0} of head that drives", {{result.drive_mm, Unit::mm}}, {}};
}

/// Search both directions, take one state and list the others.
void searchAll(Circulation& result, const Loop& loop, const LoopResistance& resistance,
               const FluidTable& fluid, CirculationSearch& search, const CirculationOptions& options)
{
    const FlowSurvey forward = search.survey(true);
    if (search.shut())
        return giveClosed(result, forward);
    std::vector<Root> roots = forward.roots;
    if (roots.empty() || options.look_for_others) {
        const FlowSurvey backward = search.survey(false);
        roots.insert(roots.end(), backward.roots.begin(), backward.roots.end());
    }
    if (roots.empty())
        return giveReason(result, forward, search.limits(), options);
    for (std::size_t i = 1; i < roots.size(); ++i) {
        Root other = roots[i];
        other.balance = search.settle(other);
        result.also_possible.push_back(stateOf(loop, search.balance(), other));
    }
    giveState(result, loop, resistance, fluid, search, roots.front(), options);
}

} // namespace

Circulation steadyCirculation(const Loop& loop, const LoopResistance& resistance, const FluidTable& fluid,
                              const CirculationOptions& options)
{
    const Message problem = problemIn(loop);
    if (!problem.pattern.empty())
        return refused(problem);
    if (resistance.size() != loop.elements.size())
        return refused(
            {"the resistance is that of a loop of {a} elements", {}, {std::to_string(resistance.size())}});
    const CirculationOptions usable_options = usable(options);
    if (!(usable_options.boiling_degC > fluid.lowest_degC()))
        return refused({"boiling in degC must be over the freezing point, not {a}",
                        {},
                        {exactText(usable_options.boiling_degC)}});
    CirculationSearch search(loop, resistance, fluid, usable_options);
    Circulation result;
    Root followed;
    if (usable_options.start_flow_kg_per_s != 0 && !search.shut())
        followed = search.follow(usable_options.start_flow_kg_per_s);
    if (followed.converged)
        giveState(result, loop, resistance, fluid, search, followed, usable_options);
    else
        searchAll(result, loop, resistance, fluid, search, usable_options);
    result.iterations = search.evaluations();
    return result;
}

Circulation steadyCirculation(const Loop& loop, const Fluid& fluid, const CirculationOptions& options)
{
    const Message problem = problemIn(loop);
    if (!problem.pattern.empty())
        return refused(problem);
    const std::optional<FluidTable> table = FluidTable::of(fluid);
    if (!table)
        return refused({"the coolant has no range of temperature with properties over 0", {}, {}});
    return steadyCirculation(loop, LoopResistance(loop.elements), *table, options);
}

} // namespace siphonwright
