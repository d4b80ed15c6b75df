#pragma once

#include "core/physics/element.h"
#include "core/physics/fluid.h"
#include "core/physics/loop_resistance.h"
#include "core/quantity/quantity.h"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

/// Warm-up of an engine by tank heaters, with thermostats that cycle.
///
/// Method: lumped states. The block is what each loop's path reaches (swept) and the rest, joined by
/// conduction. Each loop is a ring of well-stirred cells: heater chamber, return hose, jacket, supply hose,
/// with the hoses' own heat. A cell obeys
///
///     C dT/dt = |m| (h(T_in) - h(T_out)) - UA (T - T_surroundings) + P,
///
/// h the coolant's enthalpy and T_out = T_s + (T - T_s) n / (exp(n) - 1), n = UA/(|m| cp): the outlet of a
/// steady exponential whose mean is T, so that the long-time limit is that of steadyCirculation() however few
/// the cells. (In a hose that has come to rest T_out becomes T: see unitsWhileRenewed() in the source.)
/// Buoyancy is the weight of the cells, which hangs on states alone, and loss rises strictly with flow, so at
/// each instant the flow is unique and signed. Stepped by SwitchingIntegrator; thermostats, cut-outs,
/// boiling, target and a warm return are events located on its dense output.
///
/// Every assumed figure is a named member with its basis beside it. "Own choice" and "own estimate" mean that
/// no published source is known to us.
namespace siphonwright {

/// Where a thermostat senses.
enum class ThermostatPlace {
    none,           ///< the heater is on as long as it has power
    chamber_inlet,  ///< in the chamber, beside its inlet
    chamber_outlet, ///< in the chamber's outlet
    remote,         ///< on the engine, in what the loop sweeps
};

struct Thermostat {
    ThermostatPlace place = ThermostatPlace::chamber_inlet;
    double on_degC = 38; ///< closes at or below; 38 and 49 (100 and 120 degF) are usual (practice)
    double off_degC = 49;
    /// Share of the way from the coolant at the inlet to the chamber's own temperature at which an inlet
    /// thermostat senses, by conduction through the body it sits in. With it a stalled chamber still trips.
    /// Own choice.
    double sensing_fraction = 0.3;
    double lag_s = 30; ///< first-order lag of a disc or capillary in a well: 20 to 60 s (own estimate)
    /// Started between the two points: closed, as after cooling from cold storage, or still open.
    bool closed_between_points_at_start = true;
};

enum class CutOutReset { not_fitted, manual, self };

/// Over-temperature cut-out; it senses the chamber.
struct CutOutSwitch {
    CutOutReset reset = CutOutReset::not_fitted;
    double trip_degC = 99;
    double reset_degC = 80; ///< self-resetting only
};

struct WarmUpHeater {
    double rated_W = 1500;
    double rated_V = 120;
    double supply_V = 120; ///< power goes with the square of supply over rated voltage
    Thermostat thermostat;
    CutOutSwitch cut_out;
    Element element;
    double coolant_L = 0.6;     ///< in the chamber
    double metal_J_per_K = 700; ///< of chamber and element: 1.5 kg of steel at 470 J/kg K (own estimate)
    /// How fast the chamber's own convection mixes inlet and chamber when little flows: 8 W/K (own estimate).
    double own_convection_W_per_K = 8;

    double power_W() const { return rated_W * (supply_V / rated_V) * (supply_V / rated_V); }
};

/// One heater's loop, in the direction that counts as forward: chamber, return hose up to the engine, jacket,
/// supply hose back to the chamber.
///
/// Of an element's heat only exchange_W_per_K is used: of hoses and chamber to the air, of the jacket to the
/// swept block. A chamber's share_at_outlet is used; its cold share is as cold as the colder of the two hose
/// ends beside it.
struct WarmUpLoop {
    WarmUpHeater heater;
    std::vector<LoopElement> chamber;
    std::vector<LoopElement> return_hose;
    std::vector<LoopElement> jacket;
    std::vector<LoopElement> supply_hose;
    double return_wall_J_per_K = 0; ///< heat capacity of the hose itself, see wallHeatCapacity_J_per_m_K()
    double supply_wall_J_per_K = 0;
    double return_surface_share = 0.6; ///< HoseLoss::surface_share of the return hose
    /// On every pressure loss. Hose ends alone put some +-15 % on the flow, which is a factor of 0.75
    /// to 1.35.
    double loss_factor = 1;
    double swept_share = 0.7; ///< of block and coolant, see sweptShare(); 0.02 to 0.98
};

/// The engine that the loops share.
struct EngineBlock {
    double metal_J_per_K = 0; ///< mass times specific heat: grey iron 460-540 J/kg K, aluminium 880-960
    double coolant_L = 0;     ///< in the engine alone
    double loss_W_per_K = 0;  ///< to the air, see blockLoss_W_per_K()
    /// Between each swept part and the rest. Iron of 50 W/m K over 0.05 m2 and 0.3 m gives 8 W/K; coolant
    /// moving by itself in the jacket about as much again (own estimate).
    double conduction_W_per_K = 15;
};

struct WarmUpInputs {
    std::vector<WarmUpLoop> loops; ///< one per heater
    EngineBlock block;
    double air_degC = -20;
    double start_degC = -20;   ///< of everything
    double boiling_degC = 108; ///< of the coolant in the chambers, see boilingPoint_degC()
    double target_degC = 38; ///< of the block's mean; stand-by practice is 32 degC and more (90 degF, memory)
    double return_warm_rise_K = 15; ///< over the start, from which a hand calls a hose warm (own choice)
    double duration_s = 24 * 3600;
    double supply_on_s = 0; ///< when power comes, and goes
    double supply_off_s = std::numeric_limits<double>::infinity();
};

struct WarmUpOptions {
    /// Local error per step, see IntegratorTolerance: switch times within 0.1 s of their limit for the first
    /// and 2 s for the last of a day, temperatures within 0.05 K. Measured in tests/warm_up.
    double relative_tolerance = 1e-6;
    double absolute_tolerance_K = 1e-5;
    double event_tolerance_s = 1e-6;
    double sample_every_s = 60;      ///< of the series; 0 records none
    int hose_cells = 2;              ///< each of supply and return, 2 to 20
    int jacket_cells = 2;            ///< 2 to 20
    std::size_t most_steps = 100000; ///< a day takes some thousands
};

enum class WarmUpStatus {
    done,
    boiling, ///< a chamber reached the boiling point; its heater was stopped and the run went on without it
    slush,   ///< the start, or air that was reached later, lies under the coolant's freezing point
    invalid_input, ///< the message names the value
    not_followed,  ///< steps vanished or ran out
};

enum class SwitchCause { thermostat, cut_out, boiling, supply };

struct HeaterSwitch {
    double time_s = 0;
    bool on = false;
    SwitchCause cause = SwitchCause::thermostat;
};

/// One loop at one moment of the series.
struct LoopSample {
    double outlet_degC = 0;         ///< chamber
    double inlet_degC = 0;          ///< end of the supply hose at the chamber
    double return_degC = 0;         ///< end of the return hose at the engine
    double return_surface_degC = 0; ///< what an infrared thermometer reads there: rubber, not coolant
    double sensed_degC = 0;         ///< by the thermostat, lag included
    double swept_degC = 0;
    double flow_kg_per_s = 0; ///< positive is forward
    double power_W = 0;
};

struct WarmUpSample {
    double time_s = 0;
    double block_degC = 0; ///< mean by heat capacity
    double rest_degC = 0;
    double power_W = 0;
    double energy_J = 0; ///< taken from the supply so far
    std::vector<LoopSample> loops;
};

struct LoopOutcome {
    std::vector<HeaterSwitch> switches; ///< power on at the start is the first
    std::optional<double> first_switch_off_s;
    double cycles_per_hour = 0; ///< most switchings-on within an hour, from the first switching-off on
    std::optional<double>
        peak_outlet_degC; ///< highest chamber temperature while energised; never energised: none
    double peak_outlet_s = 0;
    std::optional<double> boiling_margin_K; ///< boiling point less that peak
    std::optional<ElementSurface> element;  ///< at that peak, where it is hottest
    std::optional<double> return_warm_s;    ///< when the return at the engine's port is warm to the hand
    std::optional<double> boiled_s;
    std::optional<double> tripped_s; ///< first trip of the cut-out
    double energised_s = 0;
    double energy_J = 0;
    double least_flow_kg_per_s = 0; ///< while energised, after its first ten minutes
    double most_flow_kg_per_s = 0;
    LoopSample at_end;
    /// Pockets' head stayed within a fifth of what drives the loop for a tenth of the energised time or more,
    /// or some heatings ended with flow and others stalled: small causes decide whether the loop runs.
    bool on_the_edge = false;
};

struct WarmUp {
    WarmUpStatus status = WarmUpStatus::invalid_input;
    Message message;

    std::vector<WarmUpSample> series;
    std::vector<LoopOutcome> loops; ///< as in the inputs
    std::optional<double> target_s; ///< when the block's mean reached the target
    double block_at_end_degC = 0;
    double rest_at_end_degC = 0;
    double end_s = 0; ///< duration, unless the run ended early

    double energy_J = 0;
    double lost_J = 0;   ///< to the air
    double stored_J = 0; ///< in block, coolant and hoses, against the start
    /// |energy - lost - stored| over the largest of the three.
    double balance_error = 0;
    std::size_t steps = 0;
    std::size_t evaluations = 0;
};

/// Share of block and coolant that a loop reaches: distance between its ports over the engine's length, 0.1
/// to 0.9. Own choice; ports too close leave most of the engine to conduction.
double sweptShare(double port_distance_mm, double engine_length_mm);

/// UA between a jacket's coolant and its metal, W/K: film times the wetted area of the swept share, the area
/// taken as twice the coolant's volume over the width of its passages. Film 100 W/m2 K: natural convection of
/// glycol and water over a few kelvin (own estimate); width 10 mm (own estimate).
double jacketExchange_W_per_K(double coolant_L, double swept_share, double film_W_per_m2_K = 100,
                              double passage_mm = 10);

/// What is wrong with the inputs or options, naming the value; an empty pattern when nothing is.
Message problemIn(const WarmUpInputs& inputs, const WarmUpOptions& options = {});

/// Runs one warm-up. Same inputs, same result, to the last bit. Never throws but for want of memory.
WarmUp warmUp(const WarmUpInputs& inputs, const Fluid& fluid, const WarmUpOptions& options = {});

} // namespace siphonwright
