#include "core/physics/circulation_balance.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

namespace {

// Past this an exponential has long ended; it keeps products of large and small numbers finite.
constexpr double most_ntu = 1e8;

// No temperature is looked for beyond: far outside every fluid's range, and finite.
constexpr double beyond_degC = 1e12;

bool hasHeat(const Heat& heat)
{
    return heat.power_W != 0 || heat.exchange_W_per_K > 0;
}

double ntuOf(const Heat& heat, double capacity_W_per_K)
{
    return std::min(heat.exchange_W_per_K / capacity_W_per_K, most_ntu);
}

/// (1 - exp(-n)) / n
double meanDecay(double ntu)
{
    return ntu > 0 ? -std::expm1(-ntu) / ntu : 1;
}

/// Mean density over an element from densities at its end, halfway in temperature, and at its start.
double meanDensity(double at_end, double halfway, double at_start, const ProfileMoments& u)
{
    const double linear = 4 * halfway - 3 * at_end - at_start;
    const double square = 2 * (at_end + at_start) - 4 * halfway;
    return at_end + linear * u.mean + square * u.mean_square;
}

} // namespace

ProfileMoments profileMoments(double ntu)
{
    // mean u = 1/n - 1/(exp(n) - 1); mean u^2 = (1/2 - mean u)/n + (mean u)^2. Near n = 0 by their series.
    if (ntu < 0.1) {
        const double n2 = ntu * ntu;
        const double short_of_half_per_ntu = 1.0 / 12 - n2 / 720 + n2 * n2 / 30240;
        const double mean = 0.5 - ntu * short_of_half_per_ntu;
        return {mean, short_of_half_per_ntu + mean * mean};
    }
    const double mean = 1 / ntu - 1 / std::expm1(ntu);
    return {mean, (0.5 - mean) / ntu + mean * mean};
}

LoopBalance::LoopBalance(const Loop& in, const LoopResistance& tables, const Fluid& liquid)
    : loop(in), resistance(tables), fluid(liquid), stream(in.elements.size()), entry_degC(in.start_degC)
{
    double warmth_W = 0, exchange_W_per_K = 0;
    for (const LoopElement& element : loop.elements) {
        exchange_W_per_K += element.heat.exchange_W_per_K;
        warmth_W += element.heat.exchange_W_per_K * element.heat.surroundings_degC;
    }
    if (exchange_W_per_K > 0)
        entry_degC = warmth_W / exchange_W_per_K;
    const double specific_heat = fluid.at(entry_degC).specific_heat_J_per_kg_K;
    specific_heat_J_per_kg_K.assign(loop.elements.size(), specific_heat);
}

LoopBalance::Round LoopBalance::sweep(double flow_kg_per_s, bool forward)
{
    Round round;
    double temperature_degC = entry_degC;
    for (std::size_t k = 0; k < loop.elements.size(); ++k) {
        const std::size_t i = place(k, forward);
        const Heat& heat = loop.elements[i].heat;
        Ends& ends = stream[i];
        ends.in_degC = temperature_degC;
        if (hasHeat(heat)) {
            const double capacity_W_per_K = flow_kg_per_s * specific_heat_J_per_kg_K[i];
            const double ntu = ntuOf(heat, capacity_W_per_K);
            const double decay = meanDecay(ntu);
            temperature_degC +=
                (ntu * (heat.surroundings_degC - temperature_degC) + heat.power_W / capacity_W_per_K) * decay;
            round.lost_share += (1 - round.lost_share) * ntu * decay;
        }
        ends.out_degC = temperature_degC;
    }
    round.gain_K = temperature_degC - entry_degC;
    return round;
}

double LoopBalance::renewSpecificHeats()
{
    double change_K = 0;
    for (std::size_t i = 0; i < loop.elements.size(); ++i) {
        if (!hasHeat(loop.elements[i].heat))
            continue;
        const Ends& ends = stream[i];
        const double now = fluid.at((ends.in_degC + ends.out_degC) / 2).specific_heat_J_per_kg_K;
        double& known = specific_heat_J_per_kg_K[i];
        change_K += std::abs((ends.out_degC - ends.in_degC) * (now - known) / known);
        known = now;
    }
    return change_K;
}

void LoopBalance::findTemperatures(double flow_kg_per_s, bool forward)
{
    constexpr double tolerance_K = 1e-9;
    constexpr int most_sweeps = 40; // each is some thirty times nearer
    for (int i = 0; i < most_sweeps; ++i) {
        // For given specific heats the way round is affine in the entry temperature, so one step finds it.
        const Round round = sweep(flow_kg_per_s, forward);
        const double step_K = round.lost_share > 0 ? round.gain_K / round.lost_share : 0;
        const double change_K = std::abs(step_K) + renewSpecificHeats();
        if (change_K <= tolerance_K)
            return;
        entry_degC = std::clamp(entry_degC + step_K, -beyond_degC, beyond_degC);
    }
}

/// Temperature, mean state and heat of an element whose ends are known; returns its mean density.
double LoopBalance::fill(std::size_t i, double flow_kg_per_s, const FluidState& at_in,
                         const FluidState& at_out)
{
    const LoopElement& element = loop.elements[i];
    Ends& ends = stream[i];
    if (ends.out_degC == ends.in_degC) {
        ends.mean_degC = ends.in_degC;
        ends.mean_state = at_in;
        ends.heat_W = 0;
        return at_in.density_kg_per_m3;
    }
    const double capacity_W_per_K = flow_kg_per_s * specific_heat_J_per_kg_K[i];
    ends.heat_W = capacity_W_per_K * (ends.out_degC - ends.in_degC);
    if (element.share_at_outlet) {
        const double share = *element.share_at_outlet;
        ends.mean_degC = ends.in_degC + share * (ends.out_degC - ends.in_degC);
        ends.mean_state = fluid.at(ends.mean_degC);
        return share * at_out.density_kg_per_m3 + (1 - share) * at_in.density_kg_per_m3;
    }
    const ProfileMoments u = profileMoments(ntuOf(element.heat, capacity_W_per_K));
    const FluidState halfway = fluid.at((ends.in_degC + ends.out_degC) / 2);
    ends.mean_degC = ends.out_degC + (ends.in_degC - ends.out_degC) * u.mean;
    ends.mean_state = element.heat.exchange_W_per_K > 0 ? fluid.at(ends.mean_degC) : halfway;
    return meanDensity(at_out.density_kg_per_m3, halfway.density_kg_per_m3, at_in.density_kg_per_m3, u);
}

Balance LoopBalance::at(double ln_flow, bool forward)
{
    const double flow_kg_per_s = std::exp(ln_flow);
    findTemperatures(flow_kg_per_s, forward);
    Balance balance;
    balance.hottest_degC = balance.coldest_degC = entry_degC;
    FluidState at_in = fluid.at(entry_degC);
    const double reference = at_in.density_kg_per_m3;
    double heights_m = 0;
    for (std::size_t k = 0; k < loop.elements.size(); ++k) {
        const std::size_t i = place(k, forward);
        const LoopElement& element = loop.elements[i];
        const Ends& ends = stream[i];
        const FluidState at_out = ends.out_degC == ends.in_degC ? at_in : fluid.at(ends.out_degC);
        const double density_kg_per_m3 = fill(i, flow_kg_per_s, at_in, at_out);
        const double rise_m = forward ? element.rise_m : -element.rise_m;
        // Relative to one density, as rises add to nothing: no rounding is left of an even temperature.
        balance.drive_Pa -= standard_gravity_m_per_s2 * (density_kg_per_m3 - reference) * rise_m;
        heights_m += std::abs(rise_m);
        const double pocket_m = forward ? element.pocket_forward_m : element.pocket_backward_m;
        balance.pocket_Pa += standard_gravity_m_per_s2 * ends.mean_state.density_kg_per_m3 * pocket_m;
        const LoopResistance::Slope loss = resistance.slopeOf(i, forward, ln_flow, ends.mean_state);
        balance.loss_Pa += loss.loss_Pa;
        balance.loss_per_ln_flow_Pa += loss.per_ln_flow_Pa;
        balance.coldest_degC = std::min(balance.coldest_degC, ends.out_degC);
        balance.hottest_degC = std::max(balance.hottest_degC, ends.out_degC);
        at_in = at_out;
    }
    // What temperatures alike to 1e-9 K drive is rounding.
    if (std::abs(balance.drive_Pa) < 1e-6 + 1e-11 * standard_gravity_m_per_s2 * reference * heights_m)
        balance.drive_Pa = 0;
    return balance;
}

} // namespace siphonwright
