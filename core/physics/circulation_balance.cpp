#include "core/physics/circulation_balance.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

namespace {

// Past this an exponential has long ended; it keeps products of large and small numbers finite.
constexpr double most_ntu = 1e8;

// No temperature is looked for beyond: far outside every fluid_'s range, and finite.
constexpr double beyond_degC = 1e12;

bool hasHeat(const Heat& heat)
{
    return heat.power_W != 0 || heat.exchange_W_per_K > 0;
}

double ntuOf(const Heat& heat, double K_per_W)
{
    return std::min(heat.exchange_W_per_K * K_per_W, most_ntu);
}

/// (1 - exp(-n)) / n
double meanDecay(double ntu)
{
    if (ntu < 0.03) // short pieces of hose: the series, to 2e-13
        return 1 - ntu * (1.0 / 2 - ntu * (1.0 / 6 - ntu * (1.0 / 24 - ntu * (1.0 / 120))));
    return -std::expm1(-ntu) / ntu;
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

LoopBalance::LoopBalance(const Loop& in, const LoopResistance& tables, const FluidTable& liquid)
    : loop_(in),
      resistance_(tables),
      fluid_(liquid),
      stream_(in.elements.size()),
      lines_(in.elements.size()),
      entry_degC_(in.start_degC)
{
    double warmth_W = 0, exchange_W_per_K = 0;
    for (const LoopElement& element : loop_.elements) {
        exchange_W_per_K += element.heat.exchange_W_per_K;
        warmth_W += element.heat.exchange_W_per_K * element.heat.surroundings_degC;
    }
    if (exchange_W_per_K > 0)
        entry_degC_ = warmth_W / exchange_W_per_K;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        lines_[i].halfway_degC = entry_degC_;
        lines_[i].heat = loop_.elements[i].heat;
        lines_[i].has_heat = hasHeat(lines_[i].heat);
    }
}

/// Differences of temperature go about as 1/flow; that is where the next ones are looked for.
void LoopBalance::foresee(double signed_flow_kg_per_s)
{
    const double ratio = known_flow_kg_per_s_ / signed_flow_kg_per_s;
    known_flow_kg_per_s_ = signed_flow_kg_per_s;
    if (!(ratio > 0 && std::isfinite(ratio)))
        return;
    for (Line& line : lines_)
        line.halfway_degC = entry_degC_ + (line.halfway_degC - entry_degC_) * ratio;
}

/// All lines whose error is not good enough.
void LoopBalance::renewLines(double flow_kg_per_s, double good_enough_K)
{
    for (Line& line : lines_) {
        if (!line.has_heat || line.error_K <= good_enough_K)
            continue;
        line.specific_heat_J_per_kg_K = fluid_.specificHeat(line.halfway_degC);
        const double K_per_W = 1 / (flow_kg_per_s * line.specific_heat_J_per_kg_K);
        const double ntu = ntuOf(line.heat, K_per_W);
        const double decay = meanDecay(ntu);
        line.lost_share = ntu * decay;
        line.add_K = (ntu * line.heat.surroundings_degC + line.heat.power_W * K_per_W) * decay;
    }
}

/// The entry temperature that comes back as it set out; none other can if nothing is exchanged.
void LoopBalance::findEntry(bool forward)
{
    double lost_share = 0, add_K = 0;
    for (std::size_t k = 0; k < lines_.size(); ++k) {
        const Line& line = lines_[place(k, forward)];
        add_K += line.add_K - line.lost_share * add_K;
        lost_share += line.lost_share - line.lost_share * lost_share;
    }
    if (lost_share > 0)
        entry_degC_ = std::clamp(add_K / lost_share, -beyond_degC, beyond_degC);
}

/// Temperatures once round. Returns about how far they are off, as specific heats were those of the
/// temperatures before.
double LoopBalance::run(bool forward)
{
    constexpr double specific_heat_change_per_K = 1e-3; // of any coolant, about
    double error_K = 0, temperature_degC = entry_degC_;
    for (std::size_t k = 0; k < lines_.size(); ++k) {
        const std::size_t i = place(k, forward);
        Line& line = lines_[i];
        const double gain_K = line.add_K - line.lost_share * temperature_degC;
        const double halfway_degC = temperature_degC + gain_K / 2;
        line.error_K = std::abs(gain_K * (halfway_degC - line.halfway_degC)) * specific_heat_change_per_K;
        error_K += line.error_K;
        line.halfway_degC = halfway_degC;
        stream_[i].in_degC = temperature_degC;
        temperature_degC += gain_K;
        stream_[i].out_degC = temperature_degC;
    }
    return error_K;
}

void LoopBalance::findTemperatures(double flow_kg_per_s, bool forward, double tolerance_K)
{
    constexpr int most_rounds = 40; // each is some thirty times nearer
    foresee(forward ? flow_kg_per_s : -flow_kg_per_s);
    const double negligible_K = tolerance_K / (4 * static_cast<double>(lines_.size()));
    renewLines(flow_kg_per_s, -1);
    for (int i = 0; i < most_rounds; ++i) {
        findEntry(forward);
        if (run(forward) <= tolerance_K)
            return;
        renewLines(flow_kg_per_s, negligible_K);
    }
}

/// Mean temperature and heat of an element whose ends are known; returns its density averaged over its
/// length.
double LoopBalance::fill(std::size_t i, double flow_kg_per_s, double density_in, double density_out)
{
    const LoopElement& element = loop_.elements[i];
    Ends& ends = stream_[i];
    const double capacity_W_per_K = flow_kg_per_s * lines_[i].specific_heat_J_per_kg_K;
    const double gain_K = ends.out_degC - ends.in_degC;
    ends.heat_W = capacity_W_per_K * gain_K;
    if (element.share_at_outlet) {
        const double share = *element.share_at_outlet;
        ends.mean_degC = ends.in_degC + share * gain_K;
        return share * density_out + (1 - share) * density_in;
    }
    const ProfileMoments u = profileMoments(ntuOf(element.heat, 1 / capacity_W_per_K));
    ends.mean_degC = ends.out_degC - gain_K * u.mean;
    return meanDensity(density_out, fluid_.density(ends.in_degC + gain_K / 2), density_in, u);
}

Balance LoopBalance::at(double ln_flow, bool forward, double tolerance_K)
{
    const double flow_kg_per_s = std::exp(ln_flow);
    findTemperatures(flow_kg_per_s, forward, tolerance_K);
    Balance balance;
    balance.hottest_degC = balance.coldest_degC = entry_degC_;
    double density_in = fluid_.density(entry_degC_), ln_viscosity_in = fluid_.lnViscosity(entry_degC_);
    const double reference = density_in;
    double heights_m = 0;
    bool known = true; // the viscosity at the way in
    for (std::size_t k = 0; k < loop_.elements.size(); ++k) {
        const std::size_t i = place(k, forward);
        const LoopElement& element = loop_.elements[i];
        Ends& ends = stream_[i];
        double density = density_in, density_out = density_in;
        if (ends.out_degC != ends.in_degC) {
            density_out = fluid_.density(ends.out_degC);
            density = fill(i, flow_kg_per_s, density_in, density_out);
            ends.density_kg_per_m3 = density;
            ends.ln_viscosity = fluid_.lnViscosity(ends.mean_degC);
            known = false;
        } else {
            if (!known)
                ln_viscosity_in = fluid_.lnViscosity(ends.in_degC);
            known = true;
            ends.heat_W = 0;
            ends.mean_degC = ends.in_degC;
            ends.density_kg_per_m3 = density_in;
            ends.ln_viscosity = ln_viscosity_in;
        }
        // Relative to one density, as rises add to nothing: no rounding is left of an even temperature.
        const double rise_m = forward ? element.rise_m : -element.rise_m;
        balance.drive_Pa -= standard_gravity_m_per_s2 * (density - reference) * rise_m;
        heights_m += std::abs(rise_m);
        const double pocket_m = forward ? element.pocket_forward_m : element.pocket_backward_m;
        balance.pocket_Pa += standard_gravity_m_per_s2 * ends.density_kg_per_m3 * pocket_m;
        const LoopResistance::Slope loss =
            resistance_.slopeOf(i, forward, ln_flow, ends.density_kg_per_m3, ends.ln_viscosity);
        balance.loss_Pa += loss.loss_Pa;
        balance.loss_per_ln_flow_Pa += loss.per_ln_flow_Pa;
        balance.coldest_degC = std::min(balance.coldest_degC, ends.out_degC);
        balance.hottest_degC = std::max(balance.hottest_degC, ends.out_degC);
        density_in = density_out;
    }
    // What temperatures alike to 1e-8 K drive is rounding.
    if (std::abs(balance.drive_Pa) < 1e-6 + 1e-11 * standard_gravity_m_per_s2 * reference * heights_m)
        balance.drive_Pa = 0;
    return balance;
}

} // namespace siphonwright
