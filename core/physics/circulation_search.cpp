#include "core/physics/circulation_search.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace siphonwright {

namespace {

constexpr double rough_K = 1e-5; // near enough to see a sign

/// ln(drive/resistance), nearly straight over ln(flow); only where a drive is left after pockets.
bool hasRatio(const Balance& b)
{
    return b.drive_Pa - b.pocket_Pa > 0 && b.loss_Pa > 0;
}
double lnRatio(const Balance& b)
{
    return std::log((b.drive_Pa - b.pocket_Pa) / b.loss_Pa);
}

} // namespace

CirculationSearch::CirculationSearch(const Loop& in, const LoopResistance& tables, const FluidTable& liquid,
                                     const CirculationOptions& choices)
    : loop_(in), resistance_(tables), fluid_(liquid), options_(choices), balance_(in, tables, liquid)
{
    shut_ = std::any_of(in.elements.begin(), in.elements.end(),
                        [](const LoopElement& element) { return element.shut; });
    range_.lowest_degC = fluid_.lowest_degC();
    range_.highest_degC = std::min(fluid_.highest_degC(), options_.boiling_degC);
}

Balance CirculationSearch::evaluate(double ln_flow, bool forward, double tolerance_K)
{
    ++count_;
    return balance_.at(ln_flow, forward, tolerance_K);
}

/// More than any state in range can drive: the whole height between the densest and the lightest liquid.
double CirculationSearch::largestDrive_Pa() const
{
    double ascent_m = 0, coldest_degC = range_.highest_degC;
    bool cooled = false; // by a fixed heat, to no known temperature
    for (const LoopElement& element : loop_.elements) {
        ascent_m += std::max(element.rise_m, 0.0);
        cooled = cooled || element.heat.power_W < 0;
        if (element.heat.exchange_W_per_K > 0)
            coldest_degC = std::min(coldest_degC, element.heat.surroundings_degC);
    }
    if (cooled || coldest_degC < range_.lowest_degC)
        coldest_degC = range_.lowest_degC;
    constexpr int samples = 8; // water is densest at 4 degC, not at an end
    double least = std::numeric_limits<double>::infinity(), most = 0;
    for (int i = 0; i <= samples; ++i) {
        const double share = static_cast<double>(i) / samples;
        const double temperature_degC = coldest_degC + share * (range_.highest_degC - coldest_degC);
        const double density = fluid_.density(temperature_degC);
        least = std::min(least, density);
        most = std::max(most, density);
    }
    constexpr double margin = 1.1, least_drive_Pa = 1e-6;
    return std::max(margin * standard_gravity_m_per_s2 * ascent_m * (most - least), least_drive_Pa);
}

CirculationSearch::Span CirculationSearch::span() const
{
    // Hot liquid resists least, but for the rise of friction where it turns turbulent: hence the margin.
    constexpr double margin = 1.5, widest = 14;
    FluidState hottest;
    hottest.density_kg_per_m3 = fluid_.density(range_.highest_degC);
    hottest.viscosity_Pa_s = std::exp(fluid_.lnViscosity(range_.highest_degC));
    const std::vector<FluidState> hot(loop_.elements.size(), hottest);
    double most_kg_per_s = 0;
    const double drive_Pa = largestDrive_Pa();
    for (const bool forward : {true, false})
        most_kg_per_s = std::max(most_kg_per_s, resistance_.flowLosing(drive_Pa, forward, hot).flow_kg_per_s);
    Span span;
    span.highest = std::log(std::max(most_kg_per_s * margin, 1e-12));
    span.lowest = span.highest - widest;
    // Under some flow a heater with no loss of its own heats through the whole range_.
    for (const LoopElement& element : loop_.elements) {
        if (element.heat.exchange_W_per_K > 0 || element.heat.power_W == 0)
            continue;
        const double most_J_per_kg =
            1.2 * fluid_.specificHeat(range_.highest_degC) * (range_.highest_degC - range_.lowest_degC);
        const double least_kg_per_s = std::abs(element.heat.power_W) / most_J_per_kg;
        span.lowest = std::max(span.lowest, std::log(least_kg_per_s) - options_.search_step);
    }
    span.lowest = std::min(span.lowest, span.highest - 4 * options_.search_step);
    return span;
}

/// Narrows the bracket between a flow that drives itself faster and one that is too fast.
Root CirculationSearch::refine(Point runs, Point stops, bool forward)
{
    Root root;
    root.forward = forward;
    Point last = runs, latest = stops;
    for (int i = 0; i < options_.most_iterations; ++i) {
        double x = (runs.x + stops.x) / 2;
        if (hasRatio(last.balance) && hasRatio(latest.balance)) {
            const double a = lnRatio(last.balance), b = lnRatio(latest.balance);
            const double secant = latest.x - b * (latest.x - last.x) / (b - a);
            // Every fourth step halves the bracket whatever the secant says, so that it cannot creep.
            if (secant > runs.x && secant < stops.x && i % 4 != 3)
                x = secant;
        }
        last = latest;
        latest = {x, evaluate(x, forward)};
        const double net_Pa = latest.balance.net_Pa();
        (net_Pa > 0 ? runs : stops) = latest;
        root.ln_flow = x;
        root.balance = latest.balance;
        const double width = stops.x - runs.x;
        const double slope_Pa = std::abs(latest.balance.drive_Pa) + latest.balance.loss_per_ln_flow_Pa;
        if (width <= options_.flow_tolerance || std::abs(net_Pa) <= options_.flow_tolerance * slope_Pa) {
            root.converged = true;
            break;
        }
    }
    return root;
}

/// Notes a balance in range.
void CirculationSearch::note(const Balance& balance, FlowSurvey& survey) const
{
    survey.any_in_range = true;
    if (!(balance.drive_Pa > survey.most_drive_Pa))
        return;
    survey.most_drive_Pa = balance.drive_Pa;
    survey.pocket_Pa = balance.pocket_Pa;
    survey.density_kg_per_m3 = fluid_.density(balance.coldest_degC);
}

/// The most drive is raised by the slowest flow that is not yet too hot: finds it between two flows.
void CirculationSearch::narrowHotEdge(double hot, double in_range, bool forward, FlowSurvey& survey)
{
    constexpr int halvings = 12;
    for (int i = 0; i < halvings; ++i) {
        const double middle = (hot + in_range) / 2;
        const Balance balance = evaluate(middle, forward, rough_K);
        if (range_.tooHot(balance) || range_.tooCold(balance)) {
            hot = middle;
        } else {
            in_range = middle;
            note(balance, survey);
        }
    }
}

FlowSurvey CirculationSearch::survey(bool forward)
{
    FlowSurvey survey;
    Span flows = span();
    constexpr int most_widenings = 20;
    for (int i = 0; i < most_widenings && evaluate(flows.highest, forward).net_Pa() > 0; ++i)
        flows.highest += 1;
    const int steps = static_cast<int>(std::ceil((flows.highest - flows.lowest) / options_.search_step));
    Point faster;
    bool faster_in_range = false;
    std::optional<double> hot_edge; // ln flow of the first too hot after one in range
    for (int i = 0; i <= steps; ++i) {
        Point here;
        here.x = flows.highest - i * (flows.highest - flows.lowest) / steps;
        here.balance = evaluate(here.x, forward, rough_K);
        survey.hot_at_slowest = range_.tooHot(here.balance);
        const bool in_range = !survey.hot_at_slowest && !range_.tooCold(here.balance);
        if (in_range)
            note(here.balance, survey);
        else if (faster_in_range && survey.hot_at_slowest && !hot_edge)
            hot_edge = here.x;
        if (i > 0 && here.balance.net_Pa() > 0 && !(faster.balance.net_Pa() > 0))
            sort(refine(here, faster, forward), survey);
        if (!survey.roots.empty() && !options_.look_for_others)
            return survey;
        faster = here;
        faster_in_range = in_range;
    }
    if (hot_edge && (survey.roots.empty() || shut_))
        narrowHotEdge(*hot_edge, *hot_edge + (flows.highest - flows.lowest) / steps, forward, survey);
    return survey;
}

/// Keeps a root that is in range, and notes one that is not.
void CirculationSearch::sort(const Root& root, FlowSurvey& survey) const
{
    if (range_.tooHot(root.balance))
        survey.too_hot = true;
    else if (range_.tooCold(root.balance))
        survey.too_cold = true;
    else
        survey.roots.push_back(root);
}

Root CirculationSearch::follow(double flow_kg_per_s)
{
    constexpr int most_iterations = 12;
    constexpr double longest_step = 0.7, first_step = 1e-4;
    // The first two are only there to step from.
    constexpr double first_K = 1e-5, second_K = 1e-6, exact_K = 1e-8;
    Root root;
    root.forward = flow_kg_per_s > 0;
    double x = std::log(std::abs(flow_kg_per_s));
    double before_x = x, before = 0;
    for (int i = 0; i < most_iterations; ++i) {
        root.ln_flow = x;
        root.balance = evaluate(x, root.forward, i == 0 ? first_K : i == 1 ? second_K : exact_K);
        if (!hasRatio(root.balance))
            return root;
        const double ratio = lnRatio(root.balance);
        double step = 0;
        if (i == 0) {
            // Drive falls about as 1/flow; the step is long enough for the next point to show how truly.
            step = ratio / (1 + root.balance.loss_per_ln_flow_Pa / root.balance.loss_Pa);
            if (std::abs(step) < first_step)
                step = first_step;
        } else {
            const double slope = (ratio - before) / (x - before_x);
            if (!(slope < 0)) // not a stable state
                return root;
            step = -ratio / slope;
            if (std::abs(step) <= options_.flow_tolerance) {
                root.settled = true;
                root.converged = !range_.tooHot(root.balance) && !range_.tooCold(root.balance);
                return root;
            }
        }
        before_x = x;
        before = ratio;
        x += std::clamp(step, -longest_step, longest_step);
    }
    return root;
}

} // namespace siphonwright
