#include "core/paperwork/dilution.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// Under so much, in litres and in shares, nothing is done: no measuring jug shows it.
constexpr double nothing_l = 1e-6;
constexpr double same_share = 1e-9;

Message problemOf(const MixRequest& request)
{
    const auto sound = [](double litres) { return std::isfinite(litres) && litres >= 0 && litres <= 10'000; };
    if (!sound(request.present_l) || !sound(request.empty_l) || !sound(request.drainable_l.value_or(0)))
        return {"A volume has to be from 0 to {0}.", {{10'000, Unit::litre}}, {}};
    if (!(request.present_l + request.empty_l > 0))
        return {"There is nothing to fill.", {}, {}};
    if (!(request.present_percent >= 0 && request.present_percent <= 100))
        return {"The share of antifreeze has to be from 0 to 100 %.", {}, {}};
    if (!(request.wanted_percent >= 0 && request.wanted_percent <= most_glycol_percent))
        return {"{0} is not planned for: over {1} antifreeze by volume coolant carries less heat and freezes "
                "earlier again.",
                {{request.wanted_percent, Unit::percent}, {most_glycol_percent, Unit::percent}},
                {}};
    return {};
}

/// The mixing under way: what is in, and its share of antifreeze.
struct Mixing {
    double volume_l = 0;
    double glycol_l = 0;

    double share() const { return volume_l > 0 ? glycol_l / volume_l : 0; }
};

void go(MixPlan& plan, Mixing& in, double drain_l, double antifreeze_l, double water_l)
{
    in.glycol_l += antifreeze_l - drain_l * in.share();
    in.volume_l += antifreeze_l + water_l - drain_l;
    plan.rounds.push_back({drain_l, antifreeze_l, water_l, 100 * in.share()});
    plan.drain_l += drain_l;
    plan.antifreeze_l += antifreeze_l;
    plan.water_l += water_l;
}

/// What has to be drained of `in` so that filling up to `total_l` with antifreeze, or water, gives the share.
double drainFor_l(const Mixing& in, double total_l, double share, bool stronger)
{
    const double now = in.share();
    if (stronger)
        return (share * total_l - in.glycol_l - (total_l - in.volume_l)) / (1 - now);
    return in.volume_l - share * total_l / now;
}

MixPlan& unreachable(MixPlan& plan, const MixRequest& request, bool stronger)
{
    const double runs_out_l = request.drainable_l.value_or(0);
    plan.outcome = MixOutcome::unreachable;
    if (runs_out_l < nothing_l)
        plan.message = {"{0} is not reached: coolant would have to be drained, and nothing runs out at the "
                        "drains.",
                        {{request.wanted_percent, Unit::percent}},
                        {}};
    else if (stronger)
        plan.message = {
            "{0} is not reached: only {1} runs out at once, and after {2} rounds of draining and "
            "filling with antifreeze the coolant is at {3}. Drain elsewhere too, or flush and fill "
            "afresh.",
            {{request.wanted_percent, Unit::percent},
             {runs_out_l, Unit::litre},
             {double(most_rounds), Unit::none},
             {plan.percent, Unit::percent}},
            {}};
    else
        plan.message = {"{0} is not reached: only {1} runs out at once, each round leaves antifreeze behind, "
                        "and after {2} the coolant is at {3}. Drain elsewhere too, or flush and fill afresh.",
                        {{request.wanted_percent, Unit::percent},
                         {runs_out_l, Unit::litre},
                         {double(most_rounds), Unit::none},
                         {plan.percent, Unit::percent}},
                        {}};
    return plan;
}

void sayDone(MixPlan& plan, const MixRequest& request)
{
    const double first_l = plan.rounds.front().drain_l;
    if (plan.rounds.size() > 1) {
        plan.outcome = MixOutcome::rounds;
        plan.message = {
            "Draining all of the {0} that runs out at once is not enough: it gives {1}. {2} rounds "
            "are needed, with the engine run in between until its thermostat opens.",
            {{first_l, Unit::litre},
             {plan.rounds.front().percent_after, Unit::percent},
             {double(plan.rounds.size()), Unit::none}},
            {}};
    } else if (first_l > 0) {
        plan.outcome = MixOutcome::drain;
        plan.message = {
            request.drainable_l
                ? "Drain {0}, then fill."
                : "Drain {0}, then fill. How much runs out at the drains is not entered: see that "
                  "so much does.",
            {{first_l, Unit::litre}},
            {}};
    } else {
        plan.outcome = MixOutcome::fill;
        plan.message = {"Nothing has to be drained: fill the new hoses and chambers as stated.", {}, {}};
    }
}

} // namespace

MixPlan planMix(const MixRequest& request)
{
    MixPlan plan;
    plan.message = problemOf(request);
    if (!plan.message.pattern.empty())
        return plan;
    const double total_l = request.present_l + request.empty_l;
    const double wanted = request.wanted_percent / 100;
    Mixing in{request.present_l, request.present_l * request.present_percent / 100};
    plan.filled_l = total_l;
    plan.percent = request.present_percent;
    const double lacking_l = wanted * total_l - in.glycol_l; // of antifreeze
    if (request.empty_l < nothing_l && std::abs(in.share() - wanted) < same_share) {
        plan.outcome = MixOutcome::nothing_to_do;
        plan.message = {"The coolant is as wanted.", {}, {}};
        return plan;
    }
    if (lacking_l >= -nothing_l && lacking_l <= request.empty_l + nothing_l) {
        const double antifreeze_l = std::clamp(lacking_l, 0.0, request.empty_l);
        go(plan, in, 0, antifreeze_l, request.empty_l - antifreeze_l);
    } else {
        const bool stronger = lacking_l > 0;
        const double runs_out_l = std::min(request.drainable_l.value_or(request.present_l), total_l);
        for (int i = 0; i < most_rounds; ++i) {
            const double needed_l = drainFor_l(in, total_l, wanted, stronger);
            const bool last = needed_l <= runs_out_l + nothing_l;
            // At first no more can run out than is in.
            const double drain_l = std::min(last ? needed_l : runs_out_l, in.volume_l);
            const double add_l = total_l - in.volume_l + drain_l;
            go(plan, in, drain_l, stronger ? add_l : 0, stronger ? 0 : add_l);
            plan.percent = 100 * in.share();
            if (last || runs_out_l < nothing_l)
                break;
        }
    }
    plan.percent = 100 * in.share();
    constexpr double reached_percent = 1e-3; // far under what can be measured
    if (std::abs(plan.percent - request.wanted_percent) > reached_percent)
        return unreachable(plan, request, lacking_l > 0);
    sayDone(plan, request);
    return plan;
}

} // namespace siphonwright
