#include "core/paperwork/beside_block.h"

#include "core/physics/warm_up_cells.h"

#include <algorithm>

namespace siphonwright {
namespace {

/// Any power will do for a circuit, which does not hang on it.
constexpr double some_W = 1000;

Sketch withPowers(Sketch sketch)
{
    for (Heater& heater : sketch.heaters)
        if (!heater.power_W.known())
            heater.power_W.value = some_W;
    return sketch;
}

/// Mean of the coolant over some elements, by their lengths.
double mean_degC(const std::vector<LoopElement>& stretch, const std::vector<ElementState>& states,
                 std::size_t first)
{
    double length_m = 0;
    double sum = 0;
    for (std::size_t i = 0; i < stretch.size(); ++i) {
        length_m += stretch[i].length_m;
        sum += stretch[i].length_m * states[first + i].mean_degC;
    }
    return length_m > 0 ? sum / length_m : states[first].mean_degC;
}

double exchangeOf(const std::vector<LoopElement>& stretch)
{
    double sum_W_per_K = 0;
    for (const LoopElement& element : stretch)
        sum_W_per_K += element.heat.exchange_W_per_K;
    return sum_W_per_K;
}

} // namespace

BesideBlock::BesideBlock(const Sketch& sketch, const Layout& layout, const Assumptions& assumed,
                         double block_degC)
    : block_degC_(block_degC), air_degC_(sketch.site.ambient_degC.value.value_or(0))
{
    const CoolantOf coolant = coolantOf(sketch, assumed);
    if (!coolant.fluid)
        return;
    const FluidState warm = coolant.fluid->at(block_degC);
    heat_J_per_m3_K_ = warm.density_kg_per_m3 * warm.specific_heat_J_per_kg_K;
    const Running running = runSteady(withPowers(sketch), layout, assumed);
    coolant_ = running.coolant;
    const double litres = litresInEngine(sketch, assumed).value_or(0);
    for (const LoopRun& run : running.loops)
        if (run.missing.empty())
            add(run, *sketch.heater(run.heater), litres, assumed);
    double sum_W = 0;
    for (const Drawn& loop : loops_)
        sum_W += loop.share;
    for (Drawn& loop : loops_)
        loop.share /= sum_W;
}

void BesideBlock::add(const LoopRun& run, const Heater& heater, double litres, const Assumptions& assumed)
{
    Drawn loop;
    loop.run = run;
    loop.share = std::max(1.0, actualPower_W(heater).value_or(some_W));
    loop.jacket_J_per_K = coolantHeat_J_per_K(litres * run.circuit.swept_share);
    loop.chamber_J_per_K = coolantHeat_J_per_K(chamberLitres(heater)) + assumed[Assumed::chamber_metal];
    loop.return_J_per_K =
        heat_J_per_m3_K_ * volume_m3(run.circuit.return_hose) + run.circuit.return_wall_J_per_K;
    loop.supply_J_per_K =
        heat_J_per_m3_K_ * volume_m3(run.circuit.supply_hose) + run.circuit.supply_wall_J_per_K;
    for (const auto* stretch : {&run.circuit.chamber, &run.circuit.return_hose, &run.circuit.supply_hose})
        loop.loss_W_per_K += exchangeOf(*stretch);
    loops_.push_back(std::move(loop));
}

double BesideBlock::loss_W_per_K() const
{
    double sum = 0;
    for (const Drawn& loop : loops_)
        sum += loop.loss_W_per_K;
    return sum;
}

double BesideBlock::capacity_J_per_K() const
{
    double sum = 0;
    for (const Drawn& loop : loops_)
        sum += loop.chamber_J_per_K + loop.return_J_per_K + loop.supply_J_per_K;
    return sum;
}

double BesideBlock::coolantHeat_J_per_K(double litres) const
{
    return litres / 1000 * heat_J_per_m3_K_;
}

double BesideBlock::sweptShare() const
{
    constexpr double most = 0.95; // as in the warm-up
    double sum = 0;
    for (const Drawn& loop : loops_)
        sum += loop.run.circuit.swept_share;
    return std::min(sum, most);
}

BesideBlock::Share BesideBlock::of(const Drawn& loop, double power_W, double swept_degC) const
{
    Share as_block{loop.loss_W_per_K * (swept_degC - air_degC_), 0, false};
    if (!(power_W > 0))
        return as_block;
    const Circuit& circuit = loop.run.circuit;
    CirculationOptions options;
    options.look_for_others = false;
    const Circulation found =
        steadyCirculation(circuit.loop(power_W, swept_degC), *loop.run.resistance, *coolant_, options);
    if (found.status != CirculationStatus::circulates)
        return as_block;
    // The loop's elements: chamber, return, jacket, supply.
    const std::size_t return_at = circuit.chamber.size();
    const std::size_t jacket_at = return_at + circuit.return_hose.size();
    const std::size_t supply_at = jacket_at + circuit.jacket.size();
    const auto over_K = [&](const std::vector<LoopElement>& stretch, std::size_t first) {
        return mean_degC(stretch, found.elements, first) - block_degC_;
    };
    Share out;
    out.lost_W = power_W;
    for (std::size_t i = jacket_at; i < supply_at; ++i)
        out.lost_W += found.elements[i].heat_W; // negative: given to the block
    out.stored_J = loop.chamber_J_per_K * (found.heater_outlet_degC - block_degC_) +
                   loop.return_J_per_K * over_K(circuit.return_hose, return_at) +
                   loop.jacket_J_per_K * over_K(circuit.jacket, jacket_at) +
                   loop.supply_J_per_K * over_K(circuit.supply_hose, supply_at);
    return out;
}

BesideBlock::Share BesideBlock::at(double power_W, double swept_over_K) const
{
    Share sum;
    for (const Drawn& loop : loops_) {
        const Share one = of(loop, power_W * loop.share, block_degC_ + swept_over_K);
        sum.lost_W += one.lost_W;
        sum.stored_J += one.stored_J;
        sum.circulates = sum.circulates && one.circulates;
    }
    return sum;
}

} // namespace siphonwright
