#include "core/air/joined.h"

#include <algorithm>
#include <array>
#include <cstddef>

namespace siphonwright {
namespace {

/// Gas under this (mm times ml) is none: 2e-7 ml at the atmosphere.
constexpr double no_gas = 2e-3;
/// What is left on the floor of a cell that has run out, where nothing else keeps gas from passing.
constexpr double film_mm = 5e-4;

using Cells = std::vector<Joined::OfCell>;
/// Each cell leads to a lesser one of its group, the least to itself.
using Group = std::size_t Joined::OfCell::*;

template <Group group>
std::size_t leastOf(const Cells& cells, std::size_t cell)
{
    while (cells[cell].*group != cell)
        cell = cells[cell].*group;
    return cell;
}

/// False if the two were one already.
template <Group group>
bool unite(Cells& cells, std::size_t a, std::size_t b)
{
    const std::size_t one = leastOf<group>(cells, a);
    const std::size_t other = leastOf<group>(cells, b);
    cells[std::max(one, other)].*group = std::min(one, other);
    return one != other;
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

/// What a mode joins.
struct Joins {
    bool liquid = false;
    bool gas = false;
    bool gas_passes = false;
};

constexpr std::array<Joins, 11> joins_in = {{
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

const Joins& joinsOf(Mode mode)
{
    return joins_in[static_cast<std::size_t>(mode)];
}

/// Liquid that weirs join, too. A weir between liquid that is joined all the way round is set dry.
void joinBodies(const FillNetwork& network, FillState& state, std::size_t newest, Joined& joined)
{
    const auto run = [&](std::size_t j) {
        if (!unite<&Joined::OfCell::body>(joined.cells, network.throats[j].left, network.throats[j].right))
            state.throats[j].mode = Mode::dry;
    };
    if (newest < network.throats.size() && state.throats[newest].mode == Mode::weir)
        run(newest);
    for (const std::size_t j : joined.weirs) {
        if (j != newest)
            run(j);
    }
    std::erase_if(joined.weirs, [&](std::size_t j) { return state.throats[j].mode != Mode::weir; });
    for (Joined::OfCell& cell : joined.cells)
        cell.body = joined.cells[cell.body].body;
}

void joinCells(const FillNetwork& network, FillState& state, std::size_t newest, Joined& joined)
{
    Cells& cells = joined.cells;
    cells.resize(network.cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        cells[i] = {};
        cells[i].region = cells[i].reach = i;
    }
    joined.weirs.clear();
    joined.passing.clear();
    for (std::size_t j = 0; j < network.throats.size(); ++j) {
        const Throat& throat = network.throats[j];
        const Joins& joins = joinsOf(state.throats[j].mode);
        if (joins.gas)
            unite<&Joined::OfCell::region>(cells, throat.left, throat.right);
        if (joins.liquid)
            unite<&Joined::OfCell::reach>(cells, throat.left, throat.right);
        if (joins.gas_passes)
            joined.passing.push_back(j);
        if (state.throats[j].mode == Mode::weir)
            joined.weirs.push_back(j);
    }
    // Lesser cells lead to the least of their group already.
    for (std::size_t i = 0; i < cells.size(); ++i) {
        Joined::OfCell& cell = cells[i];
        cell.region = cells[cell.region].region;
        cell.reach = cells[cell.reach].reach;
        cell.body = cell.reach;
        cells[cell.region].gas += state.cells[i].gas;
    }
    if (!joined.weirs.empty())
        joinBodies(network, state, newest, joined);
}

/// Which regions hold gas of their own: what is left of it, or what comes in. Kept where each is named.
void findGas(const FillNetwork& network, const FillState& state, const Push& push, Joined& joined)
{
    Cells& cells = joined.cells;
    cells[0].open = true;
    for (std::size_t i = 0; i < network.bleeds.size(); ++i) {
        if (state.bleed_open[i])
            cells[cells[network.bleeds[i].cell].region].open = true;
    }
    for (Joined::OfCell& cell : cells)
        cell.has_gas = !cell.open && cell.gas > no_gas;
    const auto comesIn = [&](std::size_t i) {
        Joined::OfCell& region = cells[cells[i].region];
        region.has_gas = !region.open;
    };
    for (const std::size_t j : joined.passing)
        comesIn(gasTo(network.throats[j], state.throats[j]));
    if (push.valve_gas != 0) {
        const Throat& valve = network.throats[push.valve];
        comesIn(state.throats[push.valve].to_right ? valve.right : valve.left);
    }
}

/// Which cells have a level, and which bodies move. What holds no gas is full, and has no level of its own:
/// the rounding that is left of its gas and that is missing of its liquid stay on the books.
void findMoving(const FillNetwork& network, FillState& state, const Push& push, Joined& joined)
{
    Cells& cells = joined.cells;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const Joined::OfCell& region = cells[cells[i].region];
        Joined::OfCell& body = cells[cells[i].body];
        cells[i].live = region.open || region.has_gas;
        if (cells[i].live) {
            body.moves = body.moves || body.holds || push.shrink != 0;
            body.holds = true;
        }
        CellState& cell = state.cells[i];
        if (cell.full || region.open || region.gas > no_gas)
            continue;
        cell.level_mm = network.cells[i].top_mm;
        cell.full = true;
    }
    const auto pushOn = [&](std::size_t i) {
        Joined::OfCell& body = cells[cells[i].body];
        body.moves = body.holds;
    };
    if (push.pour_ml != 0)
        pushOn(push.feed);
    if (push.valve_ml != 0) {
        pushOn(network.throats[push.valve].left);
        pushOn(network.throats[push.valve].right);
    }
}

/// Bubbling from where no gas is left, nor comes in, has ended. True if there was any.
bool endDryBubbling(const FillNetwork& network, FillState& state, Joined& joined)
{
    const std::size_t were = joined.passing.size();
    std::erase_if(joined.passing, [&](std::size_t j) {
        ThroatState& throat = state.throats[j];
        if (throat.mode != Mode::bubbling)
            return false;
        const std::size_t from = gasFrom(network.throats[j], throat);
        const Joined::OfCell& region = joined.cells[joined.cells[from].region];
        if (region.open || region.has_gas)
            return false;
        throat = {Mode::sealed, true};
        return true;
    });
    return joined.passing.size() < were;
}

} // namespace

void sumGas(const FillState& state, Joined& joined)
{
    for (Joined::OfCell& cell : joined.cells)
        cell.gas = 0;
    for (std::size_t i = 0; i < state.cells.size(); ++i)
        joined.cells[joined.cells[i].region].gas += state.cells[i].gas;
}

namespace {

void listCells(Joined& joined)
{
    Cells& cells = joined.cells;
    joined.moving.clear();
    joined.resting.clear();
    joined.closed.clear();
    joined.first_at.clear();
    joined.bodies = 0;
    // Where a group is named comes first.
    for (std::size_t i = 0; i < cells.size(); ++i) {
        Joined::OfCell& cell = cells[i];
        const Joined::OfCell& region = cells[cell.region];
        const Joined::OfCell& body = cells[cell.body];
        if (cell.region == i && cell.has_gas) {
            cell.pressure = joined.closed.size();
            joined.closed.push_back(i);
        }
        if (cell.body == i && cell.moves)
            cell.row = joined.bodies++;
        cell.open = region.open;
        cell.has_gas = region.has_gas;
        cell.pressure = region.pressure;
        cell.holds = body.holds;
        cell.moves = body.moves;
        cell.row = body.row;
        if (!cell.live || !cell.moves) {
            joined.resting.push_back(i);
            continue;
        }
        std::size_t& head = cells[cell.reach].head;
        const bool alone = head == Joined::none;
        if (alone) {
            head = joined.first_at.size();
            joined.first_at.push_back(joined.moving.size());
        } else {
            joined.moving[joined.first_at[head]].alone = false;
        }
        joined.moving.push_back({i, cell.row, head, cell.pressure, alone});
    }
    joined.unknowns = joined.first_at.size();
    for (Joined::OfCell& cell : cells)
        cell.head = cells[cell.reach].head;
}

/// What the equations go through again and again.
void listJoined(const FillNetwork& network, const FillState& state, Joined& joined)
{
    listCells(joined);
    joined.gas_throats.clear();
    for (const std::size_t j : joined.passing) {
        // What surges passes a given volume.
        if (state.throats[j].mode == Mode::surging)
            continue;
        const std::size_t from = gasFrom(network.throats[j], state.throats[j]);
        const std::size_t to = gasTo(network.throats[j], state.throats[j]);
        joined.gas_throats.push_back(
            {j, joined.unknowns++, from, to, joined.cells[from].pressure, joined.cells[to].pressure});
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
