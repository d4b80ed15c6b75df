#include "core/air/prefill.h"

#include "core/air/open_valve.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// So far over a port's crown the coolant has to stand for it to be connected under liquid.
constexpr double over_crown_mm = 1e-3;
/// Poured to let a state settle; far under what anybody sees.
constexpr double drop_ml = 1e-6;
/// Air comes in bubble by bubble, each of which goes where it can before the next.
constexpr double portion_ml = 2;

bool isEngineEnd(const Throat& throat)
{
    return throat.kind == ThroatKind::opening && (throat.left == 0 || throat.right == 0);
}

/// No more than half of the hose that it gets into.
double airAt(const FillRequest& request, const FillNetwork& network, const Throat& end)
{
    double hose_ml = 0;
    for (const Cell& cell : network.cells)
        if (cell.loop == end.loop && cell.part == end.part)
            hose_ml += cell.capacity_ml;
    return std::min(request.prefilled_air_ml, hose_ml / 2);
}

bool underCoolant(const Throat& end, const FillState& state)
{
    return state.cells[0].level_mm > end.crown_mm + over_crown_mm;
}

bool settle(const FillNetwork& network, FillRun& run)
{
    return pourSome(network, run, HUGE_VAL, 0, drop_ml) != RunEnd::failed;
}

/// Air from over the jacket into the hose, its coolant going the other way.
bool letAirIn(const FillNetwork& network, FillRun& run, std::size_t end, double air_ml)
{
    const bool to_right = network.throats[end].left == 0;
    run.setMode(end, {Mode::surging, to_right});
    Push air;
    air.valve = end;
    air.valve_gas = run.state().atmosphere_mm;
    const bool done = run.run(air, air_ml, std::max(1.0, network.hoses_and_chambers_ml)) != RunEnd::failed;
    run.setMode(end, {Mode::sealed, true});
    return done;
}

/// Bubble by bubble is told as one: where air begins to pass, and where at last it passes no more.
void tellOnce(std::vector<FillEvent>& events)
{
    std::vector<FillEvent> told;
    for (std::size_t i = 0; i < events.size(); ++i) {
        const FillEvent& event = events[i];
        const auto alike = [&event](const FillEvent& other) {
            return other.kind == event.kind && other.throat == event.throat;
        };
        const auto here = events.begin() + static_cast<std::ptrdiff_t>(i);
        const bool ends =
            event.kind == FillEventKind::stops_bubbling || event.kind == FillEventKind::stops_spilling;
        if (ends ? std::none_of(here + 1, events.end(), alike) : std::none_of(events.begin(), here, alike))
            told.push_back(event);
    }
    events = std::move(told);
}

} // namespace

FillState prefilledState(const FillRequest& request, const FillNetwork& network, FillState empty)
{
    FillState state = std::move(empty);
    double lost_ml = 0;
    for (const Throat& throat : network.throats)
        if (isEngineEnd(throat))
            lost_ml += airAt(request, network, throat);
    CellState& jacket = state.cells[0];
    const double before_ml = jacket.liquid_ml;
    const LevelTable& volume = network.cells[0].volume;
    jacket.liquid_ml = volume.under(request.target_level_mm).liquid_ml - lost_ml;
    jacket.level_mm = volume.levelOf(jacket.liquid_ml);
    jacket.head_mm = jacket.level_mm;
    state.poured_ml = jacket.liquid_ml - before_ml;
    for (std::size_t i = 1; i < state.cells.size(); ++i) {
        CellState& cell = state.cells[i];
        cell.level_mm = network.cells[i].top_mm;
        cell.liquid_ml = network.cells[i].capacity_ml;
        cell.gas = 0;
        cell.pressure_mm = 0;
        cell.head_mm = jacket.level_mm;
        cell.full = true;
        state.poured_ml += cell.liquid_ml;
    }
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        const Throat& throat = network.throats[j];
        const bool waits = isEngineEnd(throat) && !underCoolant(throat, state);
        if (state.throats[j].mode != Mode::shut)
            state.throats[j] = {waits ? Mode::shut : Mode::sealed, true};
    }
    std::fill(state.bleed_open.begin(), state.bleed_open.end(), char{0});
    return state;
}

bool connectPrefilled(const FillRequest& request, const FillNetwork& network, FillRun& run)
{
    std::vector<std::size_t> over_coolant;
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        const Throat& throat = network.throats[j];
        if (!isEngineEnd(throat))
            continue;
        if (run.state().throats[j].mode == Mode::shut) {
            over_coolant.push_back(j);
            continue;
        }
        const double air_ml = airAt(request, network, throat);
        const int portions = static_cast<int>(std::ceil(air_ml / portion_ml));
        for (int i = 0; i < portions; ++i)
            if (!letAirIn(network, run, j, air_ml / portions) || !settle(network, run))
                return false;
    }
    if (!settle(network, run))
        return false;
    tellOnce(run.events());
    return std::all_of(over_coolant.begin(), over_coolant.end(),
                       [&](std::size_t j) { return openValve(network, run, j) && settle(network, run); });
}

} // namespace siphonwright
