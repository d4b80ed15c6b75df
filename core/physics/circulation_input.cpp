#include "core/physics/circulation.h"

#include <cmath>
#include <string>

namespace siphonwright {

namespace {

// Far past anything built, near enough that no product of them overflows.
constexpr double most_m = 1e5, most_W = 1e9, most_W_per_K = 1e9, most_degC = 1e5, most_elements = 1e5;

bool within(double value, double least, double most)
{
    return std::isfinite(value) && value >= least && value <= most;
}

Message about(std::size_t element, const std::string& what, double value)
{
    return {"element {a}: {b}, not {c}", {}, {std::to_string(element + 1), what, exactText(value)}};
}

Message problemIn(const LoopElement& element, std::size_t i)
{
    const Heat& heat = element.heat;
    if (!within(element.length_m, 0, most_m))
        return about(i, "length in metres must be 0 or more", element.length_m);
    if (!within(element.rise_m, -most_m, most_m))
        return about(i, "rise in metres must be a number", element.rise_m);
    if (!(within(element.bore_m, 0, most_m) && element.bore_m >= 1e-6))
        return about(i, "bore in metres must be over 0", element.bore_m);
    if (!(within(element.area_m2, 0, most_m) && (element.area_m2 == 0 || element.area_m2 >= 1e-12)))
        return about(i, "area in square metres must be over 0, or 0 for a round bore", element.area_m2);
    if (!within(heat.power_W, -most_W, most_W))
        return about(i, "power in watts must be a number", heat.power_W);
    if (!within(heat.exchange_W_per_K, 0, most_W_per_K))
        return about(i, "heat exchange in W/K must be 0 or more", heat.exchange_W_per_K);
    if (!within(heat.surroundings_degC, -273.15, most_degC))
        return about(i, "temperature of surroundings in degC must be over -273.15", heat.surroundings_degC);
    if (element.share_at_outlet && !within(*element.share_at_outlet, 0, 1))
        return about(i, "share at outlet temperature must be from 0 to 1", *element.share_at_outlet);
    if (!within(element.pocket_forward_m, 0, most_m))
        return about(i, "pocket's head in metres must be 0 or more", element.pocket_forward_m);
    if (!within(element.pocket_backward_m, 0, most_m))
        return about(i, "pocket's head in metres must be 0 or more", element.pocket_backward_m);
    for (const Loss& loss : element.losses) {
        if (const char* problem = problemIn(loss))
            return about(i, problem, loss.bore_m);
        if (!(within(loss.bore_m, 1e-6, most_m) && within(loss.area_m2, 1e-12, most_m)))
            return about(i, "a loss's bore in metres must be over 0", loss.bore_m);
    }
    return {};
}

} // namespace

Message problemIn(const Loop& loop)
{
    if (loop.elements.empty())
        return {"the loop has no elements", {}, {}};
    if (static_cast<double>(loop.elements.size()) > most_elements)
        return {"the loop has too many elements: {a}", {}, {std::to_string(loop.elements.size())}};
    double gap_m = 0, heights_m = 0, powers_W = 0, heat_W = 0, exchange_W_per_K = 0;
    bool resists = false;
    for (std::size_t i = 0; i < loop.elements.size(); ++i) {
        const LoopElement& element = loop.elements[i];
        Message problem = problemIn(element, i);
        if (!problem.pattern.empty())
            return problem;
        gap_m += element.rise_m;
        heights_m += std::abs(element.rise_m);
        heat_W += element.heat.power_W;
        powers_W += std::abs(element.heat.power_W);
        exchange_W_per_K += element.heat.exchange_W_per_K;
        resists = resists || !element.losses.empty();
    }
    if (std::abs(gap_m) > 1e-6 * (1 + heights_m))
        return {"the loop does not close: its rises add up to {a} m", {}, {exactText(gap_m)}};
    if (!resists)
        return {"no element of the loop resists flow", {}, {}};
    if (!within(loop.start_degC, -273.15, most_degC))
        return {"start temperature in degC must be over -273.15, not {a}", {}, {exactText(loop.start_degC)}};
    if (!(exchange_W_per_K > 0) && std::abs(heat_W) > 1e-6 * powers_W)
        return {"no element of the loop takes heat out, and {a} W are put in", {}, {exactText(heat_W)}};
    return {};
}

} // namespace siphonwright
