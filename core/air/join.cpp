#include "core/air/step.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace siphonwright {
namespace {

/// Gas under this (mm times ml) is none: 2e-7 ml at the atmosphere.
constexpr double no_gas = 2e-3;
/// What is left on the floor of a cell that has run out, where nothing else keeps gas from passing.
constexpr double film_mm = 5e-4;

void separate(std::vector<std::size_t>& group, std::size_t size)
{
    group.resize(size);
    for (std::size_t i = 0; i < size; ++i)
        group[i] = i;
}

std::size_t leastOf(const std::vector<std::size_t>& group, std::size_t cell)
{
    while (group[cell] != cell)
        cell = group[cell];
    return cell;
}

/// Each cell leads to a lesser one of its group. False if the two were one already.
bool unite(std::vector<std::size_t>& group, std::size_t a, std::size_t b)
{
    const std::size_t one = leastOf(group, a);
    const std::size_t other = leastOf(group, b);
    group[std::max(one, other)] = std::min(one, other);
    return one != other;
}

/// A group is named by its least cell.
void nameByLeast(std::vector<std::size_t>& group)
{
    for (std::size_t& cell : group)
        cell = group[cell];
}

} // namespace

double sunkUnder(const Throat& valve)
{
    return std::max(0.05, 0.1 * (valve.crown_mm - valve.floor_mm));
}

double letsGasUnder(const FillNetwork& network, const Throat& valve, std::size_t cell)
{
    return std::max(valve.crown_mm - sunkUnder(valve), network.cells[cell].floor_mm + film_mm);
}

bool coversValve(const FillNetwork& network, const Throat& valve, std::size_t cell, const CellState& state)
{
    return state.full || state.level_mm >= std::max(valve.crown_mm - sunkUnder(valve) / 2,
                                                    network.cells[cell].floor_mm + 1.5 * film_mm);
}

namespace {

/// Liquid that weirs join, too. A weir between liquid that is joined all the way round is set dry.
void joinBodies(const FillNetwork& network, FillState& state, std::size_t newest, Joined& joined)
{
    joined.body = joined.reach;
    if (joined.weirs.empty())
        return;
    const auto run = [&](std::size_t j) {
        if (!unite(joined.body, network.throats[j].left, network.throats[j].right))
            state.throats[j].mode = Mode::dry;
    };
    if (newest < network.throats.size() && state.throats[newest].mode == Mode::weir)
        run(newest);
    for (const std::size_t j : joined.weirs) {
        if (j != newest)
            run(j);
    }
    std::erase_if(joined.weirs, [&](std::size_t j) { return state.throats[j].mode != Mode::weir; });
    nameByLeast(joined.body);
}

/// What a mode joins.
struct Joins {
    bool liquid = false;
    bool gas = false;
    bool gas_passes = false;
};

Joins joinsOf(Mode mode)
{
    constexpr std::array<Joins, 11> joins = {{
        {false, true, false},  // dry
        {false, true, false},  // weir
        {true, true, false},   // pool
        {true, false, false},  // sealed
        {true, false, true},   // bubbling
        {true, false, true},   // surging
        {false, true, false},  // opening
        {false, false, false}, // drowned
        {false, false, true},  // blowing
        {false, false, true},  // gurgling
        {false, false, false}, // shut
    }};
    return joins[static_cast<std::size_t>(mode)];
}

void joinCells(const FillNetwork& network, FillState& state, std::size_t newest, Joined& joined)
{
    separate(joined.reach, network.cells.size());
    separate(joined.region, network.cells.size());
    joined.weirs.clear();
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        const Throat& throat = network.throats[j];
        const Joins joins = joinsOf(state.throats[j].mode);
        if (joins.gas)
            unite(joined.region, throat.left, throat.right);
        if (joins.liquid)
            unite(joined.reach, throat.left, throat.right);
        if (state.throats[j].mode == Mode::weir)
            joined.weirs.push_back(j);
    }
    nameByLeast(joined.reach);
    nameByLeast(joined.region);
    joinBodies(network, state, newest, joined);
}

/// Which regions hold gas of their own: what is left of it, or what comes in.
void findGas(const FillNetwork& network, const FillState& state, const Push& push, Joined& joined)
{
    const std::size_t size = network.cells.size();
    joined.open.assign(size, 0);
    joined.open[0] = 1;
    for (std::size_t i = 0; i < network.bleeds.size(); ++i) {
        if (state.bleed_open[i])
            joined.open[joined.region[network.bleeds[i].cell]] = 1;
    }
    sumGas(state, joined);
    joined.has_gas.assign(size, 0);
    for (std::size_t i = 0; i < size; ++i)
        joined.has_gas[i] = !joined.open[i] && joined.gas[i] > no_gas; // summed where a region is named
    const auto comesIn = [&](std::size_t cell) {
        joined.has_gas[joined.region[cell]] = !joined.open[joined.region[cell]];
    };
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        if (joinsOf(state.throats[j].mode).gas_passes)
            comesIn(gasTo(network.throats[j], state.throats[j]));
    }
    if (push.valve_gas != 0) {
        const Throat& valve = network.throats[push.valve];
        comesIn(state.throats[push.valve].to_right ? valve.right : valve.left);
    }
}

/// Which cells have a level, and which bodies move. What holds no gas is full, and has no level of its own:
/// the rounding that is left of its gas and that is missing of its liquid stay on the books.
void findMoving(const FillNetwork& network, FillState& state, const Push& push, Joined& joined)
{
    const std::size_t size = network.cells.size();
    std::vector<int>& holds = joined.holds;
    joined.live.resize(size);
    holds.assign(size, 0);
    joined.moves.assign(size, 0);
    for (std::size_t i = 0; i < size; ++i) {
        const std::size_t region = joined.region[i];
        const std::size_t body = joined.body[i];
        joined.live[i] = joined.open[region] | joined.has_gas[region];
        if (joined.live[i]) {
            joined.moves[body] = joined.moves[body] || holds[body] || push.shrink != 0;
            holds[body] = 1;
        }
        CellState& cell = state.cells[i];
        if (cell.full || joined.open[region] || joined.gas[region] > no_gas)
            continue;
        cell.level_mm = network.cells[i].top_mm;
        cell.full = true;
    }
    const auto pushOn = [&](std::size_t cell) { joined.moves[joined.body[cell]] = holds[joined.body[cell]]; };
    if (push.pour_ml != 0)
        pushOn(push.feed);
    if (push.valve_ml != 0) {
        pushOn(network.throats[push.valve].left);
        pushOn(network.throats[push.valve].right);
    }
}

/// Bubbling from where no gas is left, nor comes in, has ended. True if there was any.
bool endDryBubbling(const FillNetwork& network, FillState& state, const Joined& joined)
{
    bool ended = false;
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        ThroatState& throat = state.throats[j];
        if (throat.mode != Mode::bubbling)
            continue;
        const std::size_t region = joined.region[gasFrom(network.throats[j], throat)];
        if (joined.open[region] || joined.has_gas[region])
            continue;
        throat = {Mode::sealed, true};
        ended = true;
    }
    return ended;
}

} // namespace

void sumGas(const FillState& state, Joined& joined)
{
    joined.gas.assign(state.cells.size(), 0);
    for (std::size_t i = 0; i < state.cells.size(); ++i)
        joined.gas[joined.region[i]] += state.cells[i].gas;
}

namespace {

void listCells(Joined& joined)
{
    const std::size_t size = joined.region.size();
    joined.moving.clear();
    joined.resting.clear();
    joined.closed.clear();
    joined.bodies = 0;
    joined.unknowns = 0;
    joined.head_at.assign(size, Joined::none);
    joined.pressure_at.assign(size, Joined::none);
    joined.row_of.assign(size, Joined::none);
    for (std::size_t i = 0; i < size; ++i) {
        const std::size_t region = joined.region[i];
        const std::size_t body = joined.body[i];
        // Each group is named by its least cell, which comes first.
        if (joined.has_gas[i]) {
            joined.pressure_at[i] = joined.closed.size();
            joined.closed.push_back(i);
        }
        if (joined.moves[body])
            joined.row_of[i] = body == i ? joined.bodies++ : joined.row_of[body];
        if (!joined.live[i] || !joined.moves[body]) {
            joined.resting.push_back(i);
            continue;
        }
        std::size_t& head = joined.head_at[joined.reach[i]];
        const bool alone = head == Joined::none;
        if (alone)
            head = joined.unknowns++;
        for (Joined::Moving& other : joined.moving)
            other.alone = other.alone && other.head != head;
        joined.moving.push_back(
            {i, joined.row_of[i], head, joined.pressure_at[region], joined.open[region] != 0, alone});
    }
}

/// What the equations go through again and again.
void listJoined(const FillNetwork& network, const FillState& state, Joined& joined)
{
    listCells(joined);
    joined.gas_throats.clear();
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        // What surges passes a given volume.
        const Mode mode = state.throats[j].mode;
        if (!joinsOf(mode).gas_passes || mode == Mode::surging)
            continue;
        const std::size_t from = gasFrom(network.throats[j], state.throats[j]);
        const std::size_t to = gasTo(network.throats[j], state.throats[j]);
        joined.gas_throats.push_back({j, joined.unknowns++, from, to, joined.pressure_at[joined.region[from]],
                                      joined.pressure_at[joined.region[to]]});
    }
}

} // namespace

void join(const FillNetwork& network, FillState& state, const Push& push, std::size_t newest, Joined& joined)
{
    joinCells(network, state, newest, joined);
    do {
        findGas(network, state, push, joined);
    } while (endDryBubbling(network, state, joined));
    findMoving(network, state, push, joined);
    listJoined(network, state, joined);
}

} // namespace siphonwright
