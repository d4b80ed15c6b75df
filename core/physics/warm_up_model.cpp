#include "core/physics/warm_up_model.h"

#include "core/physics/warm_up_cells.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {
namespace {

/// Coolant of the block that no loop moves keeps the heat capacity it has here.
constexpr double typical_degC = 40;

/// n / (exp(n) - 1): outlet over mean of an exponential that decays by n. Written as z coth(z) - z with
/// z = n/2, whose continued fraction 1 + z^2/(3 + z^2/(5 + ...)) (Lambert) down to 15 errs by 4e-11 at most.
double outletOverMean(double n)
{
    constexpr double fraction_until = 3, nothing_left = 700;
    if (n < fraction_until) {
        const double y = n * n * 0.25;
        const double top = 2027025 + y * (945945 + y * (51975 + y * (630 + y)));
        const double bottom = 2027025 + y * (270270 + y * (6930 + y * 36));
        return top / bottom - n * 0.5;
    }
    return n < nothing_left ? n / std::expm1(n) : 0;
}

/// n / (exp(n) - 1) - 1 for n of a hose, which unitsWhileRenewed() keeps under 0.15: by its series, whose
/// next term is under 1e-11.
double outletLessMean(double n)
{
    const double n2 = n * n;
    return n * (-0.5 + n * (1.0 / 12 + n2 * (-1.0 / 720 + n2 * (1.0 / 30240))));
}

/// Derivative of outletOverMean(); for small n, where that would be a difference of like numbers, from the
/// series.
double outletOverMeanSlope(double n, double share)
{
    constexpr double series_until = 0.2;
    if (n < series_until)
        return -0.5 + n * (1.0 / 6 - n * n * (1.0 / 180));
    return share / n * (1 - share - n);
}

/// Transfer units of a hose's cell, UA over flow capacity, as its outlet sees them. Its coolant is on a
/// steady exponential only while the flow renews it long before it cools; a hose that has come to rest is as
/// warm at its end as it is on the whole, and not as cold as the air. So n / (1 + (n/0.3)^2).
constexpr double renewed_until = 0.3; // ten times what flow in running has
double unitsWhileRenewed(double exchange_W_per_K, double capacity_W_per_K)
{
    const double limit = exchange_W_per_K * (1 / renewed_until);
    return exchange_W_per_K * capacity_W_per_K / (capacity_W_per_K * capacity_W_per_K + limit * limit);
}

std::vector<LoopElement> ringOf(const WarmUpLoop& loop, std::size_t hose_cells, std::size_t jacket_cells)
{
    std::vector<LoopElement> ring = cellsOf(loop.chamber, 1);
    for (const auto& [run, count] :
         {std::pair{&loop.return_hose, hose_cells}, std::pair{&loop.jacket, jacket_cells},
          std::pair{&loop.supply_hose, hose_cells}}) {
        const std::vector<LoopElement> cells = cellsOf(*run, count);
        ring.insert(ring.end(), cells.begin(), cells.end());
    }
    return ring;
}

} // namespace

WarmUpModel::Ring::Ring(const LoopStates& states, std::vector<Cell> ring_cells,
                        const std::vector<LoopElement>& elements)
    : at(states),
      cells(std::move(ring_cells)),
      law(LoopResistance(elements)),
      heat(cells.size()),
      outlet_degC(cells.size()),
      outflow_J_per_kg(cells.size()),
      slopes(cells.size()),
      loss_slopes(cells.size())
{
    for (const LoopElement& element : elements) {
        has_pockets = has_pockets || element.pocket_forward_m > 0 || element.pocket_backward_m > 0;
        shut = shut || element.shut;
    }
}

WarmUpModel::WarmUpModel(const WarmUpInputs& inputs, const WarmUpOptions& options, const Fluid& fluid)
    : table_(fluid),
      start_degC_(inputs.start_degC),
      air_degC_(inputs.air_degC),
      conduction_W_per_K_(inputs.block.conduction_W_per_K)
{
    double rest_share = 1;
    loops_.reserve(inputs.loops.size());
    for (const WarmUpLoop& loop : inputs.loops) {
        addLoop(loop, options, inputs.block);
        rest_share -= loop.swept_share;
    }
    const HeatState typical = table_.at(typical_degC);
    const double coolant_J_per_K =
        inputs.block.coolant_L / 1000 * typical.density_kg_per_m3 * typical.specific_heat_J_per_kg_K;
    rest_J_per_K_ = rest_share * (inputs.block.metal_J_per_K + coolant_J_per_K);
    rest_loss_W_per_K_ = rest_share * inputs.block.loss_W_per_K;
    state_count_ += 2;
    rates_.resize(state_count_);
}

void WarmUpModel::addLoop(const WarmUpLoop& loop, const WarmUpOptions& options, const EngineBlock& block)
{
    const auto hose_cells = static_cast<std::size_t>(options.hose_cells);
    const auto jacket_cells = static_cast<std::size_t>(options.jacket_cells);
    const std::vector<LoopElement> elements = ringOf(loop, hose_cells, jacket_cells);
    const double density_kg_per_m3 = table_.at(start_degC_).density_kg_per_m3;
    const auto hose = static_cast<double>(hose_cells);
    const double return_kg = density_kg_per_m3 * volume_m3(loop.return_hose) / hose;
    const double supply_kg = density_kg_per_m3 * volume_m3(loop.supply_hose) / hose;
    const double jacket_kg =
        density_kg_per_m3 * block.coolant_L / 1000 * loop.swept_share / static_cast<double>(jacket_cells);

    std::vector<Cell> cells;
    for (std::size_t i = 0; i < elements.size(); ++i) {
        Cell cell;
        cell.exchange_W_per_K = elements[i].heat.exchange_W_per_K;
        cell.rise_m = elements[i].rise_m;
        cell.pocket_forward_m = elements[i].pocket_forward_m;
        cell.pocket_backward_m = elements[i].pocket_backward_m;
        if (i == 0) {
            cell.coolant_kg = density_kg_per_m3 * loop.heater.coolant_L / 1000;
            cell.wall_J_per_K = loop.heater.metal_J_per_K;
        } else if (i <= hose_cells) {
            cell.coolant_kg = return_kg;
            cell.wall_J_per_K = loop.return_wall_J_per_K / hose;
        } else if (i <= hose_cells + jacket_cells) {
            cell.coolant_kg = jacket_kg;
            cell.in_block = true;
        } else {
            cell.coolant_kg = supply_kg;
            cell.wall_J_per_K = loop.supply_wall_J_per_K / hose;
        }
        cells.push_back(cell);
    }
    LoopStates at;
    at.swept = state_count_;
    at.sensor = state_count_ + 1;
    at.chamber = state_count_ + 2;
    at.return_end = at.chamber + hose_cells;
    at.supply_end = at.chamber + cells.size() - 1;
    state_count_ = at.supply_end + 1;

    Ring ring(at, cells, elements);
    ring.share_at_outlet = elements[0].share_at_outlet.value_or(default_share_at_outlet);
    ring.swept_J_per_K = loop.swept_share * block.metal_J_per_K;
    ring.swept_loss_W_per_K = loop.swept_share * block.loss_W_per_K;
    ring.loss_factor = loop.loss_factor;
    ring.thermostat = loop.heater.thermostat;
    ring.own_convection_W_per_K = loop.heater.own_convection_W_per_K;
    loops_.push_back(std::move(ring));
}

std::vector<double> WarmUpModel::start() const
{
    std::vector<double> state(state_count_, start_degC_);
    state[lost()] = 0;
    return state;
}

double WarmUpModel::pockets_Pa(const Ring& ring, bool forward)
{
    double sum_Pa = 0;
    for (std::size_t i = 0; i < ring.cells.size(); ++i) {
        const Cell& cell = ring.cells[i];
        sum_Pa += standard_gravity_m_per_s2 * ring.heat[i].density_kg_per_m3 *
                  (forward ? cell.pocket_forward_m : cell.pocket_backward_m);
    }
    return sum_Pa;
}

/// Of the two cells beside the chamber the colder, from which a heated chamber is fed: a matter of states
/// alone, so that buoyancy is one too, and right whichever way the loop runs.
std::size_t WarmUpModel::coldNeighbour(const Ring& ring, std::span<const double> state)
{
    const std::size_t return_start = ring.at.chamber + 1;
    return state[return_start] < state[ring.at.supply_end] ? return_start : ring.at.supply_end;
}

void WarmUpModel::findFlow(Ring& ring, std::span<const double> state)
{
    double weight_kg_per_m2 = 0;
    for (std::size_t i = 0; i < ring.cells.size(); ++i) {
        ring.heat[i] = table_.at(state[ring.at.chamber + i]);
        weight_kg_per_m2 += ring.heat[i].density_kg_per_m3 * ring.cells[i].rise_m;
    }
    const HeatState& cold = ring.heat[coldNeighbour(ring, state) - ring.at.chamber];
    weight_kg_per_m2 += (1 - ring.share_at_outlet) * ring.cells[0].rise_m *
                        (cold.density_kg_per_m3 - ring.heat[0].density_kg_per_m3);
    ring.drive.drive_Pa = -standard_gravity_m_per_s2 * weight_kg_per_m2;
    const bool forward = ring.drive.drive_Pa > 0;
    ring.drive.pockets_Pa = ring.has_pockets ? pockets_Pa(ring, forward) : 0;
    const double net_Pa = std::abs(ring.drive.drive_Pa) - ring.drive.pockets_Pa;
    const double flow =
        net_Pa > 0 && !ring.shut ? ring.law.flowLosing(net_Pa / ring.loss_factor, forward, ring.heat) : 0;
    ring.drive.flow_kg_per_s = forward ? flow : -flow;
}

double WarmUpModel::flow_kg_per_s(std::size_t loop, std::span<const double> state)
{
    findFlow(loops_[loop], state);
    findOutflow(loops_[loop], state);
    return loops_[loop].drive.flow_kg_per_s;
}

double WarmUpModel::drive_Pa(std::size_t loop, std::span<const double> state) const
{
    const Ring& ring = loops_[loop];
    double weight_kg_per_m2 = 0;
    for (std::size_t i = 0; i < ring.cells.size(); ++i)
        weight_kg_per_m2 += table_.at(state[ring.at.chamber + i]).density_kg_per_m3 * ring.cells[i].rise_m;
    weight_kg_per_m2 += (1 - ring.share_at_outlet) * ring.cells[0].rise_m *
                        (table_.at(state[coldNeighbour(ring, state)]).density_kg_per_m3 -
                         table_.at(state[ring.at.chamber]).density_kg_per_m3);
    return -standard_gravity_m_per_s2 * weight_kg_per_m2;
}

double WarmUpModel::endOf_degC(std::size_t loop, std::size_t cell, std::span<const double> state) const
{
    const Ring& ring = loops_[loop];
    return ring.drive.flow_kg_per_s > 0 ? ring.outlet_degC[cell - ring.at.chamber] : state[cell];
}

void WarmUpModel::findOutflow(Ring& ring, std::span<const double> state) const
{
    const double flow = std::abs(ring.drive.flow_kg_per_s), swept = state[ring.at.swept];
    const double* const here = state.data() + ring.at.chamber;
    const std::size_t count = ring.cells.size();
    const HeatState* const heats = ring.heat.data();
    const Cell* const cells = ring.cells.data();
    for (std::size_t i = 0; i < count; ++i) {
        const HeatState& heat = heats[i];
        double over_K = 0; // of the outlet over the mean
        if (i > 0 && flow > 0 && cells[i].exchange_W_per_K > 0) {
            const double exchange = cells[i].exchange_W_per_K;
            const double capacity = flow * heat.specific_heat_J_per_kg_K;
            over_K = cells[i].in_block
                         ? (here[i] - swept) * (outletOverMean(exchange / capacity) - 1)
                         : (here[i] - air_degC_) * outletLessMean(unitsWhileRenewed(exchange, capacity));
        }
        ring.outlet_degC[i] = here[i] + over_K;
        ring.outflow_J_per_kg[i] =
            heat.enthalpy_J_per_kg +
            over_K * (heat.specific_heat_J_per_kg_K + over_K * heat.specific_heat_slope_J_per_kg_K2 * 0.5);
    }
}

WarmUpModel::OutletShare WarmUpModel::outletShare(const Cell& cell, double capacity_W_per_K)
{
    const double exchange = cell.exchange_W_per_K;
    double n = exchange / capacity_W_per_K, power = -1; // of the capacity in n
    if (!cell.in_block) {
        n = unitsWhileRenewed(exchange, capacity_W_per_K);
        power = 1 - 2 * capacity_W_per_K * n / exchange;
    }
    const double share = outletOverMean(n);
    return {share, outletOverMeanSlope(n, share), power * n / capacity_W_per_K};
}

double WarmUpModel::sensorTarget_degC(const Ring& ring, std::span<const double> state) const
{
    const double chamber = state[ring.at.chamber];
    switch (ring.thermostat.place) {
    case ThermostatPlace::none:
    case ThermostatPlace::chamber_outlet:
        return chamber;
    case ThermostatPlace::remote:
        return state[ring.at.swept];
    case ThermostatPlace::chamber_inlet:
        break;
    }
    // Backward flow leaves by the inlet, at the chamber's own temperature.
    const double capacity_W_per_K =
        std::max(0.0, ring.drive.flow_kg_per_s) * ring.heat[0].specific_heat_J_per_kg_K;
    const double mixed = chamber - (chamber - ring.outlet_degC.back()) * capacity_W_per_K /
                                       (capacity_W_per_K + ring.own_convection_W_per_K);
    return mixed + ring.thermostat.sensing_fraction * (chamber - mixed);
}

void WarmUpModel::addRates(Ring& ring, std::span<const double> state, std::span<double> rate)
{
    findFlow(ring, state);
    findOutflow(ring, state);
    const std::size_t count = ring.cells.size(), first = ring.at.chamber;
    const bool forward = ring.drive.flow_kg_per_s >= 0;
    const double flow = std::abs(ring.drive.flow_kg_per_s);
    const double swept = state[ring.at.swept];
    const double* const here = state.data() + first;
    const double* const outflow = ring.outflow_J_per_kg.data();
    const double cold = state[coldNeighbour(ring, state)];
    double to_block_W = 0, to_air_W = ring.swept_loss_W_per_K * (swept - air_degC_);
    const double conducted_W = conduction_W_per_K_ * (state[rest()] - swept);
    double to_swept_W = conducted_W - to_air_W;
    rate[rest()] -= conducted_W;
    const std::size_t to_upstream = forward ? count - 1 : 1; // round the ring
    for (std::size_t i = 0; i < count; ++i) {
        const Cell& cell = ring.cells[i];
        const std::size_t upstream = i + to_upstream < count ? i + to_upstream : i + to_upstream - count;
        const double mean = i == 0 ? cold + ring.share_at_outlet * (here[0] - cold) : here[i];
        const double given_W = cell.exchange_W_per_K * (mean - (cell.in_block ? swept : air_degC_));
        to_block_W += cell.in_block ? given_W : 0;
        to_air_W += cell.in_block ? 0 : given_W;
        const double gained_W =
            flow * (outflow[upstream] - outflow[i]) - given_W + (i == 0 ? ring.power_W : 0);
        rate[first + i] =
            gained_W / (cell.coolant_kg * ring.heat[i].specific_heat_J_per_kg_K + cell.wall_J_per_K);
    }
    to_swept_W += to_block_W;
    rate[ring.at.swept] = to_swept_W / ring.swept_J_per_K;
    rate[ring.at.sensor] = (sensorTarget_degC(ring, state) - state[ring.at.sensor]) / ring.thermostat.lag_s;
    rate[lost()] += to_air_W;
}

void WarmUpModel::operator()(double, std::span<const double> state, std::span<double> rate)
{
    const double rest_to_air_W = rest_loss_W_per_K_ * (state[rest()] - air_degC_);
    rate[rest()] = -rest_to_air_W; // in W until all loops have added theirs
    rate[lost()] = rest_to_air_W;
    for (Ring& ring : loops_)
        addRates(ring, state, rate);
    rate[rest()] /= rest_J_per_K_;
}

double WarmUpModel::blockMean_degC(std::span<const double> state) const
{
    double capacity_J_per_K = rest_J_per_K_, heat_J = rest_J_per_K_ * state[rest()];
    for (const Ring& ring : loops_) {
        capacity_J_per_K += ring.swept_J_per_K;
        heat_J += ring.swept_J_per_K * state[ring.at.swept];
    }
    return heat_J / capacity_J_per_K;
}

double WarmUpModel::stored_J(std::span<const double> state) const
{
    const double start_J_per_kg = table_.at(start_degC_).enthalpy_J_per_kg;
    double stored = rest_J_per_K_ * (state[rest()] - start_degC_);
    for (const Ring& ring : loops_) {
        stored += ring.swept_J_per_K * (state[ring.at.swept] - start_degC_);
        for (std::size_t i = 0; i < ring.cells.size(); ++i) {
            const double here = state[ring.at.chamber + i];
            stored += ring.cells[i].coolant_kg * (table_.at(here).enthalpy_J_per_kg - start_J_per_kg) +
                      ring.cells[i].wall_J_per_K * (here - start_degC_);
        }
    }
    return stored;
}

} // namespace siphonwright
