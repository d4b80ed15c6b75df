#pragma once

#include "core/physics/fluid.h"
#include "core/physics/fluid_table.h"
#include "core/physics/loop_resistance.h"
#include "core/quantity/quantity.h"

#include <limits>
#include <vector>

/// Steady natural circulation of one closed loop.
///
/// Method: the mass flow m at which what the coolant's weight drives equals what the loop resists,
///
///     -g sum integral rho(T(s)) dz  =  sum K rho v^2 / 2  +  sum rho g h_pocket,
///
/// with T(s) from the heat that each element gives and takes (Heat): a straight line where an element only
/// has power, an exponential where it exchanges heat, T - Te = (T0 - Te) exp(-NTU x), NTU = UA/(m cp),
/// Te = surroundings + power/UA. Density is integrated along that profile, exactly for a density quadratic
/// in temperature between the element's ends, so that where a hose is hot while it rises counts. Specific
/// heat is that halfway between an element's end temperatures, viscosity that at its mean temperature.
///
/// States: with hoses that lose heat a loop can have several, forward and backward. Every change of sign of
/// (drive less resistance) over a grid of flows is refined by Newton's method in ln m within its bracket;
/// those where more flow would mean more resistance than drive are stable. A state with a temperature
/// outside the fluid's range, or at boiling, is dropped. Two states closer than one step of the grid can
/// pass unseen; they are about to vanish anyway.
///
/// Error: of the numbers, under 1e-6 of flow and what LoopResistance states; cutting elements up finely moves
/// flow by under 1e-3. What it says of a real loop is limited by the losses of hose ends (about +-15 % of
/// flow) and the jacket's profile (18 % between its bounds).
///
/// Never throws, never loops without end, and puts no NaN into a result.
namespace siphonwright {

struct Loop {
    std::vector<LoopElement> elements; ///< in the direction that counts as forward, closed on itself
    /// Temperature where forward flow enters the first element. Needed, and used, only where no element
    /// exchanges heat with surroundings (heat taken out is then a fixed power); its level is then open.
    double start_degC = 20;
};

struct CirculationOptions {
    /// Flow to start from, signed; 0 searches. A start finds the state that continues it, in some four
    /// evaluations, and searches after all if that is not stable or out of range. It finds what the search
    /// finds wherever a loop has but one state in that direction. It leaves also_possible empty.
    double start_flow_kg_per_s = 0;
    /// Look for the other states, backward ones too, when a forward one is found; without, also_possible is
    /// empty and a search takes a third of the time.
    bool look_for_others = true;
    /// Fill Circulation::elements and parts.
    bool details = true;
    /// Temperature that no element may reach. Boiling depends on cap, altitude and mixture, which the loop
    /// does not know; by default only the end of the fluid's property data limits it.
    double boiling_degC = std::numeric_limits<double>::infinity();
    /// Change of flow, relative, at which a state counts as found: far under every model error, and tight
    /// enough that differences between neighbouring designs are not numerical.
    double flow_tolerance = 1e-7;
    /// Evaluations spent on one state before it counts as not converged; it takes 3 to 7.
    int most_iterations = 80;
    /// Step of the search in ln(flow). Steady flow over power, height and viscosity changes slowly (powers
    /// 1/3 to 1/2), so that states lie factors apart: own choice.
    double search_step = 0.2;
    /// A pocket's head within this share of the drive is "on the edge": own choice. There small causes
    /// decide whether the loop runs.
    double edge_share = 0.2;
};

enum class CirculationStatus {
    circulates,    ///< forward
    reverse,       ///< no forward state is possible, but one backward is
    stalled,       ///< nothing drives, or a pocket takes more head than the loop can raise
    closed,        ///< a valve is shut
    boiling,       ///< what could circulate does so only at boiling or past the fluid's property data
    slush,         ///< what could circulate is below the freezing point
    invalid_input, ///< the message names element and value
    not_converged,
};

/// One of the loop's steady states.
struct CirculationState {
    double flow_kg_per_s = 0; ///< positive is forward
    double heater_inlet_degC = 0;
    double heater_outlet_degC = 0;
};

/// An element in the state found. Start and end are those of the loop's list, whichever way it flows.
struct ElementState {
    double start_degC = 0;
    double end_degC = 0;
    double mean_degC = 0; ///< over its length
    double heat_W = 0;    ///< given to the coolant; negative: taken from it
    double reynolds = 0;  ///< in its bore
    double velocity_m_per_s = 0;
    double loss_Pa = 0; ///< without a pocket's head
};

/// What the losses of one Loss::part take.
struct PartLoss {
    int part = -1;
    double loss_Pa = 0;
    double share = 0; ///< of all friction and fittings of the loop, pockets not counted
};

struct Circulation {
    CirculationStatus status = CirculationStatus::invalid_input;
    Message message; ///< one plain sentence with the figures that matter

    double flow_kg_per_s = 0;           ///< positive is forward; 0 unless it circulates or runs in reverse
    double heater_inlet_degC = 0;       ///< where the stream enters the first heated element
    double heater_outlet_degC = 0;      ///< where it leaves the last
    std::vector<ElementState> elements; ///< as in the loop; empty unless there is a flow
    std::vector<PartLoss> parts;        ///< in order of part

    /// In a state: what drives in the direction of flow, and what resists it, pockets included; equal but for
    /// the residual. Stalled: the most drive the loop can raise forward (at the slowest flow that stays under
    /// boiling) and the pocket's head that withstands it. Closed: the same drive, which the valve withstands.
    double drive_Pa = 0;
    double resistance_Pa = 0;
    double drive_mm = 0; ///< the same as heads of coolant, at its density where it enters the heater
    double resistance_mm = 0;
    double pocket_mm = 0; ///< of that, what air pockets take

    /// A pocket's head is within CirculationOptions::edge_share of the drive: whether this loop runs hangs on
    /// less than the figures can tell.
    bool on_the_edge = false;

    std::vector<CirculationState> also_possible; ///< other stable states, largest forward flow first
    int iterations = 0;                          ///< evaluations of the balance, the search included
    double residual_Pa = 0;                      ///< drive less resistance at the flow returned
};

/// The state a loop runs in: the stable one with the largest forward flow under boiling, else the one with
/// the largest reverse flow.
Circulation steadyCirculation(const Loop& loop, const Fluid& fluid, const CirculationOptions& options = {});

/// The same with the tables at hand, which takes most of the time. Those of resistance stay good while the
/// loop's geometry and losses do: heats, temperatures and pockets of `loop` may differ from those
/// `resistance` was built from, shape and losses may not.
Circulation steadyCirculation(const Loop& loop, const LoopResistance& resistance, const FluidTable& fluid,
                              const CirculationOptions& options = {});

/// What is wrong with a loop, naming element and value; an empty pattern when nothing is.
Message problemIn(const Loop& loop);

} // namespace siphonwright
