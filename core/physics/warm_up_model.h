#pragma once

#include "core/physics/enthalpy_table.h"
#include "core/physics/flow_law.h"
#include "core/physics/loop_resistance.h"
#include "core/physics/warm_up.h"

#include <cstddef>
#include <span>
#include <vector>

/// The equations of warm-up: the inside of warmUp(), for it and for tests that integrate them by other means.
namespace siphonwright {

/// Where a loop's states stand among all.
struct LoopStates {
    std::size_t swept = 0;
    std::size_t sensor = 0;
    std::size_t chamber = 0;    ///< first of the ring: chamber, return hose, jacket, supply hose
    std::size_t return_end = 0; ///< the return hose's last cell, at the engine
    std::size_t supply_end = 0; ///< the supply hose's last cell, at the chamber; last of the ring
};

/// Rates of all states for given powers. States are temperatures in degC, but the last: heat lost so far, J.
class WarmUpModel {
public:
    /// \param inputs, options ones in which problemIn() finds nothing \param fluid with a range that holds
    /// the start; needed at construction only
    WarmUpModel(const WarmUpInputs& inputs, const WarmUpOptions& options, const Fluid& fluid);

    std::size_t size() const { return state_count_; }
    std::size_t loopCount() const { return loops_.size(); }
    const LoopStates& statesOf(std::size_t loop) const { return loops_[loop].at; }
    std::size_t rest() const { return state_count_ - 2; }
    std::size_t lost() const { return state_count_ - 1; }

    std::vector<double> start() const;
    void setPower(std::size_t loop, double power_W) { loops_[loop].power_W = power_W; }
    double power_W(std::size_t loop) const { return loops_[loop].power_W; }

    /// The right-hand side. Not const: it keeps the flows found, to begin the next search with.
    void operator()(double time_s, std::span<const double> state, std::span<double> rate);

    /// Derivatives of the rates by the states: row i, column k, that of rate i by state k. They jump where
    /// the flow turns, and where another end of a hose becomes the colder one beside a chamber.
    void jacobian(std::span<const double> state, std::span<double> row_by_row);

    /// Flow of a loop in a state, signed.
    double flow_kg_per_s(std::size_t loop, std::span<const double> state);
    /// What drives a loop forward in a state; under 0 backward. Pockets are not in it.
    double drive_Pa(std::size_t loop, std::span<const double> state) const;
    /// Temperature at the forward end of a cell, in the state whose flow was asked for last.
    double endOf_degC(std::size_t loop, std::size_t cell, std::span<const double> state) const;
    /// The flow found last, and what drove it and what pockets took of that.
    struct Drive {
        double flow_kg_per_s = 0;
        double drive_Pa = 0;
        double pockets_Pa = 0;
    };
    const Drive& lastDrive(std::size_t loop) const { return loops_[loop].drive; }

    double blockMean_degC(std::span<const double> state) const;
    /// Heat in everything against the start.
    double stored_J(std::span<const double> state) const;

private:
    struct Cell {
        double coolant_kg = 0;
        double wall_J_per_K = 0;
        double exchange_W_per_K = 0;
        double rise_m = 0;
        double pocket_forward_m = 0;
        double pocket_backward_m = 0;
        bool in_block = false; ///< exchanges heat with the swept block, not with the air
    };
    /// Outlet over mean of a cell's excess temperature, and what it hangs on.
    struct OutletShare {
        double of_mean = 1;
        double by_units = 0;
        double units_by_capacity = 0; ///< by W/K of flow
    };
    /// Derivatives of one cell's values by its own temperature, what is round it, and the flow's amount.
    struct CellSlopes {
        HeatSlopes heat;
        double outlet_by_own = 1;
        double outlet_by_around = 0; ///< 0 where it stands in the air, which does not change
        double outlet_by_flow = 0;
        double heat_at_outlet = 0; ///< specific heat there, J/kg K
        double outflow_by_own = 0;
        double flow_by_own = 0; ///< of the loop's flow, amount
    };
    struct Ring {
        Ring(const LoopStates& states, std::vector<Cell> ring_cells,
             const std::vector<LoopElement>& elements);

        LoopStates at;
        std::vector<Cell> cells;
        FlowLaw law;
        double loss_factor = 1;
        bool has_pockets = false;
        bool shut = false;
        double share_at_outlet = default_share_at_outlet;
        double swept_J_per_K = 0;
        double swept_loss_W_per_K = 0;
        double power_W = 0;
        Thermostat thermostat;
        double own_convection_W_per_K = 0;

        // What the state asked for last gave, one per cell.
        std::vector<HeatState> heat;
        std::vector<double> outlet_degC;
        std::vector<double> outflow_J_per_kg; ///< enthalpy that leaves with the flow
        Drive drive;
        // What the Jacobian asked for last went through.
        std::vector<CellSlopes> slopes;
        std::vector<FlowLaw::Slope> loss_slopes;
    };

    EnthalpyTable table_;
    std::vector<Ring> loops_;
    std::size_t state_count_ = 0;
    double start_degC_ = 0;
    double air_degC_ = 0;
    double conduction_W_per_K_ = 0;
    double rest_J_per_K_ = 0;
    double rest_loss_W_per_K_ = 0;
    std::vector<double> rates_; ///< in the state of the last Jacobian

    void addLoop(const WarmUpLoop& loop, const WarmUpOptions& options, const EngineBlock& block);
    static std::size_t coldNeighbour(const Ring& ring, std::span<const double> state);
    static double pockets_Pa(const Ring& ring, bool forward);
    void findFlow(Ring& ring, std::span<const double> state);
    void findOutflow(Ring& ring, std::span<const double> state) const;
    double sensorTarget_degC(const Ring& ring, std::span<const double> state) const;
    /// Rates of one ring, and of what it exchanges with rest and air.
    void addRates(Ring& ring, std::span<const double> state, std::span<double> rate);

    static OutletShare outletShare(const Cell& cell, double capacity_W_per_K);
    void findOutflowSlopes(Ring& ring, std::span<const double> state);
    void findFlowSlopes(Ring& ring, std::span<const double> state);
    void addSensorSlopes(const Ring& ring, std::span<const double> state, std::span<double> sensor_row) const;
    void addCellSlopes(const Ring& ring, std::span<const double> state, std::size_t i,
                       std::span<double> cell_row) const;
    void addJacobian(Ring& ring, std::span<const double> state, std::span<double> row_by_row);
};

} // namespace siphonwright
