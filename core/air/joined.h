#pragma once

#include "core/air/cells.h"
#include "core/air/state.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// What is joined in one set of modes, and the unknowns that follow from it.
///
/// Gas region: cells whose gas is joined; open if it holds the jacket or an open bleed. Reach: cells whose
/// liquid is joined by pool, sealed or bubbling, so that level plus pressure is one head throughout. Body:
/// reaches joined by weirs. Unknown are the head of each reach that can change, the pressure of each closed
/// region, and the gas through each bubbling throat.
struct Joined {
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    /// What a cell belongs to, each group being named by its least cell, and what follows from that.
    struct OfCell {
        std::size_t region = 0;
        std::size_t reach = 0;
        std::size_t body = 0;
        std::size_t head = none;     ///< unknown of its reach
        std::size_t pressure = none; ///< of its region: which of `closed` it is
        std::size_t row = none;      ///< its body's, where that moves
        double gas = 0;              ///< of the region that is named by it
        bool open = false;           ///< its region
        bool has_gas = false;        ///< its region: closed, and holds gas or is bubbled into
        bool live = false;           ///< it has a level
        bool holds = false;          ///< its body: has a cell that has a level
        bool moves = false;          ///< its body: its liquid can move
    };
    std::vector<OfCell> cells;
    std::size_t bodies = 0;   ///< that move
    std::size_t unknowns = 0; ///< heads first, then gas through throats

    /// A cell whose level is unknown.
    struct Moving {
        std::size_t cell = 0;
        std::size_t row = 0;
        std::size_t head = 0;
        std::size_t pressure = none; ///< none: its gas is open
        bool alone = false;          ///< its head is of no other cell
    };
    std::vector<Moving> moving;
    std::vector<std::size_t> resting; ///< the other cells
    std::vector<std::size_t> weirs;   ///< throats
    std::vector<std::size_t> passing; ///< throats that gas passes through liquid
    std::vector<std::size_t> closed;  ///< regions whose pressure is unknown

    /// A throat with gas through it, which is unknown.
    struct GasThroat {
        std::size_t throat = 0;
        std::size_t gas = 0;
        std::size_t from = 0; ///< cells
        std::size_t to = 0;
        std::size_t from_pressure = none;
        std::size_t to_pressure = none;
    };
    std::vector<GasThroat> gas_throats;
    std::vector<std::size_t> first_at; ///< of each head: where in `moving` its first cell is

    /// Whether there are as many equations as unknowns.
    bool isSquare() const { return bodies + weirs.size() + gas_throats.size() == unknowns; }
};

/// Finds what is joined. A weir between liquid that is joined all the way round cannot run: such weirs are
/// set dry, `newest` last of all.
void join(const FillNetwork& network, FillState& state, const Push& push, std::size_t newest, Joined& joined);

/// So far under a valve's crown a level has to sink before it lets gas through, mm: a tenth of the opening.
double sunkUnder(const Throat& valve);

/// The level to which a cell's liquid has to sink before it lets gas through a valve, mm. Where the cell ends
/// at the valve (a plumb hose over it) that is a film on its floor.
double letsGasUnder(const FillNetwork& network, const Throat& valve, std::size_t cell);

/// Whether a cell's liquid lets no gas through a valve. What is empty never does, though it stands at its
/// floor, which may be the valve's crown.
bool coversValve(const FillNetwork& network, const Throat& valve, std::size_t cell, const CellState& state);

/// The cell that gas leaves through a throat where it passes, and the cell it reaches.
std::size_t gasFrom(const Throat& throat, const ThroatState& state);
std::size_t gasTo(const Throat& throat, const ThroatState& state);

/// The gas of each region anew, after a step.
void sumGas(const FillState& state, Joined& joined);

} // namespace siphonwright
