#include "core/physics/warm_up_model.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>

/// How the rates of warm-up hang on the states: derivatives, term by term, of what warm_up_model.cpp
/// computes. A test holds them against differences of the rates.
namespace siphonwright {
namespace {

/// One row of a square matrix, added to by column.
struct Row {
    std::span<double> entries;

    void add(std::size_t column, double amount) const { entries[column] += amount; }
};

} // namespace

/// How what flows out of a cell hangs on its own temperature, on that round it, and on the flow.
void WarmUpModel::findOutflowSlopes(Ring& ring, std::span<const double> state)
{
    const double flow = std::abs(ring.drive.flow_kg_per_s);
    for (std::size_t i = 0; i < ring.cells.size(); ++i) {
        const Cell& cell = ring.cells[i];
        const HeatState& heat = ring.heat[i];
        const double here = state[ring.at.chamber + i];
        CellSlopes& slopes = ring.slopes[i];
        slopes.heat = table_.slopesAt(here);
        slopes.outlet_by_own = 1;
        slopes.outlet_by_around = slopes.outlet_by_flow = 0;
        if (i > 0 && flow > 0 && cell.exchange_W_per_K > 0) {
            const OutletShare share = outletShare(cell, flow * heat.specific_heat_J_per_kg_K);
            const double excess_K = here - (cell.in_block ? state[ring.at.swept] : air_degC_);
            const double by_capacity = excess_K * share.by_units * share.units_by_capacity;
            slopes.outlet_by_own = share.of_mean + by_capacity * flow * heat.specific_heat_slope_J_per_kg_K2;
            slopes.outlet_by_around = cell.in_block ? 1 - share.of_mean : 0;
            slopes.outlet_by_flow = by_capacity * heat.specific_heat_J_per_kg_K;
        }
        const double over_K = ring.outlet_degC[i] - here;
        slopes.heat_at_outlet = heat.specific_heat_J_per_kg_K + over_K * heat.specific_heat_slope_J_per_kg_K2;
        slopes.outflow_by_own = slopes.outlet_by_own * slopes.heat_at_outlet +
                                over_K * over_K / 2 * slopes.heat.specific_heat_bend_J_per_kg_K3;
    }
}

/// How the flow's amount hangs on each cell's temperature: through the drive, the pockets and the losses.
void WarmUpModel::findFlowSlopes(Ring& ring, std::span<const double> state)
{
    const double flow = std::abs(ring.drive.flow_kg_per_s);
    for (CellSlopes& slopes : ring.slopes)
        slopes.flow_by_own = 0;
    if (!(flow > 0))
        return;
    const bool forward = ring.drive.flow_kg_per_s > 0;
    const std::size_t cold = coldNeighbour(ring, state) - ring.at.chamber;
    const double moved_m = (1 - ring.share_at_outlet) * ring.cells[0].rise_m;
    double loss_slope_Pa_s_per_kg = 0;
    ring.law.findSlopes(forward, flow, ring.heat, ring.loss_slopes);
    for (std::size_t i = 0; i < ring.cells.size(); ++i) {
        const Cell& cell = ring.cells[i];
        const FlowLaw::Slope& loss = ring.loss_slopes[i];
        const HeatSlopes& heat = ring.slopes[i].heat;
        const double rise_m = cell.rise_m - (i == 0 ? moved_m : 0) + (i == cold ? moved_m : 0);
        const double pocket_m = forward ? cell.pocket_forward_m : cell.pocket_backward_m;
        const double net_Pa_per_K =
            standard_gravity_m_per_s2 * heat.density_kg_per_m3 * ((forward ? -rise_m : rise_m) - pocket_m);
        const double factor = ring.heat[i].viscosity_squared_per_density;
        const double loss_Pa_per_K = loss.loss * heat.viscosity_squared_per_density +
                                     loss.slope * factor * flow * heat.fluidity_per_Pa_s;
        ring.slopes[i].flow_by_own = net_Pa_per_K / ring.loss_factor - loss_Pa_per_K;
        loss_slope_Pa_s_per_kg += loss.slope * factor * ring.heat[i].fluidity_per_Pa_s;
    }
    for (CellSlopes& slopes : ring.slopes)
        slopes.flow_by_own /= loss_slope_Pa_s_per_kg;
}

void WarmUpModel::addSensorSlopes(const Ring& ring, std::span<const double> state,
                                  std::span<double> sensor_row) const
{
    const Row row{sensor_row};
    const double per_lag = 1 / ring.thermostat.lag_s;
    const std::size_t first = ring.at.chamber;
    row.add(ring.at.sensor, -per_lag);
    if (ring.thermostat.place == ThermostatPlace::remote) {
        row.add(ring.at.swept, per_lag);
        return;
    }
    row.add(first, per_lag);
    if (ring.thermostat.place != ThermostatPlace::chamber_inlet || !(ring.drive.flow_kg_per_s > 0))
        return;
    // Less (1 - sensing fraction) (chamber - inlet) capacity / (capacity + own convection).
    const double own = ring.own_convection_W_per_K, flow = ring.drive.flow_kg_per_s;
    const double capacity = flow * ring.heat[0].specific_heat_J_per_kg_K;
    const double unsensed = (1 - ring.thermostat.sensing_fraction) * per_lag;
    const double share = capacity / (capacity + own);
    const double by_capacity =
        unsensed * (state[first] - ring.outlet_degC.back()) * own / ((capacity + own) * (capacity + own));
    const CellSlopes& end = ring.slopes.back();
    row.add(first, -unsensed * share - by_capacity * flow * ring.heat[0].specific_heat_slope_J_per_kg_K2);
    row.add(ring.at.supply_end, unsensed * share * end.outlet_by_own);
    const double by_flow =
        unsensed * share * end.outlet_by_flow - by_capacity * ring.heat[0].specific_heat_J_per_kg_K;
    for (std::size_t i = 0; i < ring.cells.size(); ++i)
        row.add(first + i, by_flow * ring.slopes[i].flow_by_own);
}

void WarmUpModel::addCellSlopes(const Ring& ring, std::span<const double> state, std::size_t i,
                                std::span<double> cell_row) const
{
    const std::size_t count = ring.cells.size(), first = ring.at.chamber;
    const Cell& cell = ring.cells[i];
    const bool forward = ring.drive.flow_kg_per_s >= 0;
    const std::size_t upstream = forward ? (i == 0 ? count - 1 : i - 1) : (i + 1 == count ? 0 : i + 1);
    const double flow = std::abs(ring.drive.flow_kg_per_s);
    const CellSlopes &in = ring.slopes[upstream], &out = ring.slopes[i];
    const double capacity_J_per_K =
        cell.coolant_kg * ring.heat[i].specific_heat_J_per_kg_K + cell.wall_J_per_K;
    const double per_capacity = 1 / capacity_J_per_K;
    const Row row{cell_row};
    row.add(first + upstream, per_capacity * flow * in.outflow_by_own);
    row.add(first + i,
            -per_capacity * (flow * out.outflow_by_own + rates_[first + i] * cell.coolant_kg *
                                                             ring.heat[i].specific_heat_slope_J_per_kg_K2));
    row.add(ring.at.swept,
            per_capacity * flow *
                (in.outlet_by_around * in.heat_at_outlet - out.outlet_by_around * out.heat_at_outlet));
    if (cell.in_block)
        row.add(ring.at.swept, per_capacity * cell.exchange_W_per_K);
    const double own_share = i == 0 ? ring.share_at_outlet : 1;
    row.add(first + i, -per_capacity * cell.exchange_W_per_K * own_share);
    if (i == 0)
        row.add(coldNeighbour(ring, state), -per_capacity * cell.exchange_W_per_K * (1 - own_share));
    const double by_flow =
        per_capacity *
        (ring.outflow_J_per_kg[upstream] - ring.outflow_J_per_kg[i] +
         flow * (in.outlet_by_flow * in.heat_at_outlet - out.outlet_by_flow * out.heat_at_outlet));
    for (std::size_t k = 0; k < count; ++k)
        row.add(first + k, by_flow * ring.slopes[k].flow_by_own);
}

void WarmUpModel::addJacobian(Ring& ring, std::span<const double> state, std::span<double> row_by_row)
{
    findOutflowSlopes(ring, state);
    findFlowSlopes(ring, state);
    const auto row = [&](std::size_t i) { return row_by_row.subspan(i * state_count_, state_count_); };
    addSensorSlopes(ring, state, row(ring.at.sensor));
    const Row swept{row(ring.at.swept)}, rest_row{row(rest())}, lost_row{row(lost())};
    const double per_swept = 1 / ring.swept_J_per_K;
    for (std::size_t i = 0; i < ring.cells.size(); ++i) {
        const Cell& cell = ring.cells[i];
        const std::size_t here = ring.at.chamber + i;
        addCellSlopes(ring, state, i, row(here));
        if (cell.in_block) {
            swept.add(here, per_swept * cell.exchange_W_per_K);
            swept.add(ring.at.swept, -per_swept * cell.exchange_W_per_K);
        } else if (i == 0) {
            lost_row.add(here, cell.exchange_W_per_K * ring.share_at_outlet);
            lost_row.add(coldNeighbour(ring, state), cell.exchange_W_per_K * (1 - ring.share_at_outlet));
        } else {
            lost_row.add(here, cell.exchange_W_per_K);
        }
    }
    swept.add(rest(), per_swept * conduction_W_per_K_);
    swept.add(ring.at.swept, -per_swept * (conduction_W_per_K_ + ring.swept_loss_W_per_K));
    rest_row.add(ring.at.swept, conduction_W_per_K_ / rest_J_per_K_);
    rest_row.add(rest(), -conduction_W_per_K_ / rest_J_per_K_);
    lost_row.add(ring.at.swept, ring.swept_loss_W_per_K);
}

void WarmUpModel::jacobian(std::span<const double> state, std::span<double> row_by_row)
{
    (*this)(0, state, rates_); // flows and outflows of this state with them
    std::fill(row_by_row.begin(), row_by_row.end(), 0.0);
    row_by_row[rest() * state_count_ + rest()] = -rest_loss_W_per_K_ / rest_J_per_K_;
    row_by_row[lost() * state_count_ + rest()] = rest_loss_W_per_K_;
    for (Ring& ring : loops_)
        addJacobian(ring, state, row_by_row);
}

} // namespace siphonwright
