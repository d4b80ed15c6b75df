#include "core/paperwork/sizing.h"

#include "core/paperwork/beside_block.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// Powers are repeated until they change by less; what hoses lose hangs on them but weakly.
constexpr double settled_W = 0.01;
constexpr int most_repeats = 40;

/// What a job loses and holds at its target and a power.
struct AtTarget {
    double block_W = 0;  ///< lost by the engine itself
    double hoses_W = 0;  ///< by hoses and chambers
    double stored_J = 0; ///< by them and the coolant in the jacket, over the block's own temperature
    bool circulates = true;
};

/// The engine and its loops in one temperature of the air.
struct Job {
    EngineBlock block;
    double coolant_J_per_K = 0; ///< of the engine's coolant
    OneLump lump;
    BesideBlock beside;
    Warming warming;

    double rise_K() const { return warming.target_degC - warming.air_degC; }
    AtTarget at(double power_W) const;
};

/// The part of the block that the loops reach is warmer than the rest by what makes the rest follow: its loss
/// and its warming come by conduction. The target is that of the mean as the warm-up takes it, by heat
/// capacity, the rest's with its coolant; losses go by shares of the block alone.
AtTarget Job::at(double power_W) const
{
    double swept_over_K = 0;
    double mean_over_K = 0; // of the mean by shares over the mean by capacity
    if (beside.loops() > 0) {
        const double swept = beside.sweptShare();
        const double rest = 1 - swept;
        const double rest_J_per_K = rest * (block.metal_J_per_K + coolant_J_per_K);
        const double rising_K_per_s =
            std::max(0.0, power_W - lump.loss_W_per_K * rise_K()) / lump.capacity_J_per_K;
        const double apart_K =
            (rest_J_per_K * rising_K_per_s + rest * block.loss_W_per_K * rise_K()) /
            (block.conduction_W_per_K * double(beside.loops()) + block.loss_W_per_K * rest * swept);
        const double rest_weight = rest_J_per_K / (rest_J_per_K + swept * block.metal_J_per_K);
        swept_over_K = rest_weight * apart_K;
        mean_over_K = (rest_weight - rest) * apart_K;
    }
    const BesideBlock::Share share = beside.at(power_W, swept_over_K);
    return {block.loss_W_per_K * (rise_K() + mean_over_K), share.lost_W, share.stored_J, share.circulates};
}

/// Power at which block at its target, hoses and chambers together lose just that.
double holdPower_W(const Job& job)
{
    if (job.rise_K() <= 0)
        return 0;
    double power_W = job.block.loss_W_per_K * job.rise_K();
    for (int i = 0; i < most_repeats; ++i) {
        const AtTarget at = job.at(power_W);
        const double next_W = at.block_W + at.hoses_W;
        const bool settled = std::abs(next_W - power_W) < settled_W;
        power_W = next_W;
        if (settled)
            break;
    }
    return power_W;
}

/// The lump that stands for a job at a power: its mean runs over the block's temperature by what coolant and
/// hoses hold on top, and loses at the target what block and hoses lose.
struct Matched {
    Warming warming;
    double extra_W = 0; ///< loss that the lump's own conductance misses
};
Matched matched(const Job& job, double power_W)
{
    const AtTarget at = job.at(power_W);
    Matched out{job.warming, 0};
    out.warming.target_degC += at.stored_J / job.lump.capacity_J_per_K;
    out.extra_W =
        at.block_W + at.hoses_W - job.lump.loss_W_per_K * (out.warming.target_degC - job.warming.air_degC);
    return out;
}

std::optional<double> reachPower_W(const Job& job, double time_s)
{
    std::optional<double> power_W = powerFor_W(job.lump, job.warming, time_s);
    for (int i = 0; power_W && i < most_repeats; ++i) {
        const Matched match = matched(job, *power_W);
        const double next_W = *powerFor_W(job.lump, match.warming, time_s) + match.extra_W;
        const bool settled = std::abs(next_W - *power_W) < settled_W;
        power_W = next_W;
        if (settled)
            break;
    }
    return power_W;
}

std::optional<double> reachTime_s(const Job& job, double power_W)
{
    if (job.warming.start_degC >= job.warming.target_degC)
        return 0;
    const Matched match = matched(job, power_W);
    return timeTo_s(job.lump, power_W - match.extra_W, match.warming);
}

Job jobIn(const Sketch& sketch, const Layout& layout, const Assumptions& assumed, const EngineBlock& block,
          double air_degC)
{
    Job job;
    job.block = block;
    job.warming.air_degC = air_degC;
    job.warming.start_degC = sketch.plan.start_degC.value_or(air_degC);
    job.warming.target_degC = sketch.plan.target_degC;
    job.beside = BesideBlock(inAir(sketch, air_degC), layout, assumed, job.warming.target_degC);
    job.coolant_J_per_K = job.beside.coolantHeat_J_per_K(block.coolant_L);
    job.lump.capacity_J_per_K = block.metal_J_per_K + job.coolant_J_per_K + job.beside.capacity_J_per_K();
    job.lump.loss_W_per_K = block.loss_W_per_K + job.beside.loss_W_per_K();
    return job;
}

PowerNeed needOf(Job job, const Sketch& sketch, const Assumptions& assumed, std::optional<double> drawn_W)
{
    PowerNeed need;
    need.air_degC = job.warming.air_degC;
    need.start_degC = job.warming.start_degC;
    need.hold_W = holdPower_W(job);
    need.block_W = need.hold_W > 0 ? job.at(need.hold_W).block_W : 0;
    need.hoses_W = need.hold_W - need.block_W;
    if (sketch.supply.reach_h && *sketch.supply.reach_h > 0)
        need.reach_W = reachPower_W(job, *sketch.supply.reach_h * 3600);
    if (drawn_W)
        if (const std::optional<double> time_s = reachTime_s(job, *drawn_W))
            need.reaches_after_h = *time_s / 3600;
    const Assumption& loss = assumptionOf(Assumed::block_loss);
    const bool known = assumed.changed(Assumed::block_loss);
    const double as_assumed = job.block.loss_W_per_K;
    job.block.loss_W_per_K = as_assumed * (known ? 1 : loss.low / loss.value);
    need.hold_low_W = holdPower_W(job);
    job.block.loss_W_per_K = as_assumed * (known ? 1 : loss.high / loss.value);
    need.hold_high_W = holdPower_W(job);
    return need;
}

std::optional<double> drawnPower_W(const Sketch& sketch)
{
    double sum_W = 0;
    for (const Heater& heater : sketch.heaters) {
        const std::optional<double> power_W = actualPower_W(heater);
        if (!power_W)
            return std::nullopt;
        sum_W += *power_W;
    }
    return sketch.heaters.empty() ? std::nullopt : std::optional(sum_W);
}

} // namespace

Sketch inAir(Sketch sketch, double air_degC)
{
    sketch.site.ambient_degC.value = air_degC;
    return sketch;
}

Sizing sizingOf(const Sketch& sketch, const Layout& layout, const Assumptions& assumed)
{
    Sizing out;
    out.target_degC = sketch.plan.target_degC;
    out.drawn_W = drawnPower_W(sketch);
    out.wants_pump = out.drawn_W.value_or(0) > most_without_pump_W;
    if (out.drawn_W && sketch.engine && sketch.engine->displacement_l.known())
        out.W_per_litre = *out.drawn_W / *sketch.engine->displacement_l.value;
    const BlockOf block = engineBlockOf(sketch, assumed);
    const CoolantOf coolant = coolantOf(sketch, assumed);
    if (!block.block) {
        out.missing = block.missing;
        out.missing_of = {PartKind::engine, {}, 0};
    } else if (!coolant.fluid) {
        out.missing = coolant.missing;
    } else if (!sketch.site.ambient_degC.known()) {
        out.missing = "the ambient temperature is not entered";
    }
    if (!out.missing.empty())
        return out;
    const Job job = jobIn(sketch, layout, assumed, *block.block, *sketch.site.ambient_degC.value);
    out.lump = job.lump;
    out.block_loss_W_per_K = job.block.loss_W_per_K;
    out.hoses_counted = job.beside.loops() > 0;
    out.circulates = !out.hoses_counted || job.at(out.drawn_W.value_or(0)).circulates;
    out.usual = needOf(job, sketch, assumed, out.drawn_W);
    if (sketch.site.coldest_ambient_degC.known())
        out.coldest =
            needOf(jobIn(sketch, layout, assumed, *block.block, *sketch.site.coldest_ambient_degC.value),
                   sketch, assumed, out.drawn_W);
    return out;
}

} // namespace siphonwright
