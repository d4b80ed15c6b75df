#pragma once

#include "core/physics/boiling.h"
#include "core/physics/glycol.h"
#include "core/physics/heat_loss.h"
#include "core/physics/warm_up.h"

#include <numbers>

/// An engine with one tank heater, of usual sizes, for tests and benchmarks.
namespace siphonwright::test {

/// What a typical installation is varied in.
struct TypicalEngine {
    double bore_m = 0.01905;  ///< 3/4 in hose
    double nipple_m = 0.0145; ///< own bore of its ends
    double low_port_m = 0.30;
    double high_port_m = 0.75;
    double port_distance_mm = 800; ///< along the engine
    double engine_length_mm = 1100;
    double air_degC = -20;
    double start_degC = -20;
    double wind_m_per_s = 0;
    double iron_kg = 650;
    double coolant_L = 20;
    double rated_W = 1500;
    double pocket_m = 0; ///< air in the return hose
    bool shut = false;   ///< a closed valve in the return hose: a blocked bore
};

inline GlycolWater halfGlycol()
{
    return *GlycolWater::ofVolume(CoolantBase::ethylene_glycol, 50);
}

/// A hose with an elbow, a ball valve, entrance, exit and an end at each side, as one element.
inline LoopElement hose(const TypicalEngine& e, double length_m, double rise_m, double loss_W_per_K_m)
{
    LoopElement hose;
    hose.length_m = length_m;
    hose.rise_m = rise_m;
    hose.bore_m = e.bore_m;
    hose.losses = {Loss::wall(length_m, e.bore_m, 0),
                   Loss::hoseBend(std::numbers::pi / 2, 6 * e.bore_m, e.bore_m),
                   Loss::ballValve(e.bore_m),
                   Loss::entrance(e.bore_m),
                   Loss::exit(e.bore_m),
                   Loss::hoseEnd(e.bore_m, e.nipple_m, 0.04),
                   Loss::hoseEnd(e.bore_m, e.nipple_m, 0.04)};
    hose.heat = Heat::toAir(loss_W_per_K_m, length_m, e.air_degC);
    return hose;
}

inline WarmUpLoop typicalLoop(const TypicalEngine& e)
{
    constexpr double inlet_m = 0.10, outlet_m = 0.35;
    WarmUpLoop loop;
    HoseWall wall;
    wall.bore_mm = e.bore_m * 1000;
    const HoseLoss loss = *hoseLoss(wall, 50, 100, {e.air_degC, wind_share_at_hose * e.wind_m_per_s});
    LoopElement chamber;
    chamber.length_m = outlet_m - inlet_m;
    chamber.rise_m = outlet_m - inlet_m;
    chamber.bore_m = 0.05;
    chamber.losses = {Loss::wall(chamber.length_m, chamber.bore_m, 0)};
    chamber.heat = Heat::toAir(0.8, e.air_degC);
    chamber.share_at_outlet = default_share_at_outlet;
    loop.chamber = {chamber};
    loop.return_hose = {hose(e, 1.0, e.high_port_m - outlet_m, loss.conductance_W_per_m_K)};
    loop.return_hose[0].pocket_forward_m = e.pocket_m;
    loop.return_hose[0].pocket_backward_m = e.pocket_m;
    loop.return_hose[0].shut = e.shut;
    loop.supply_hose = {hose(e, 1.2, inlet_m - e.low_port_m, loss.conductance_W_per_m_K)};
    loop.swept_share = sweptShare(e.port_distance_mm, e.engine_length_mm);
    LoopElement jacket;
    jacket.length_m = e.port_distance_mm / 1000;
    jacket.rise_m = e.low_port_m - e.high_port_m;
    jacket.bore_m = 0.06;
    jacket.heat = Heat::toBlock(jacketExchange_W_per_K(e.coolant_L, loop.swept_share), e.start_degC);
    loop.jacket = {jacket};
    loop.return_wall_J_per_K = wallHeatCapacity_J_per_m_K(wall) * 1.0;
    loop.supply_wall_J_per_K = wallHeatCapacity_J_per_m_K(wall) * 1.2;
    loop.return_surface_share = loss.surface_share;
    loop.heater.rated_W = e.rated_W;
    return loop;
}

/// Grey iron of 500 J/kg K (460-540, memory), a box of 1.1 x 0.7 x 0.9 m in the wind.
inline WarmUpInputs typicalWarmUp(const TypicalEngine& e = {})
{
    WarmUpInputs inputs;
    inputs.loops = {typicalLoop(e)};
    inputs.block.metal_J_per_K = e.iron_kg * 500;
    inputs.block.coolant_L = e.coolant_L;
    inputs.block.loss_W_per_K = *blockLoss_W_per_K(1100, 700, 900, e.wind_m_per_s);
    inputs.air_degC = e.air_degC;
    inputs.start_degC = e.start_degC;
    inputs.boiling_degC = *boilingPoint_degC(CoolantBase::ethylene_glycol, 50, standard_pressure_Pa);
    return inputs;
}

} // namespace siphonwright::test
