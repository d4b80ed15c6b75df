#pragma once

#include "core/air/cells.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// What joins the two cells of a throat. With levels and gas this is all there is to remember.
enum class Mode {
    dry,      ///< gas joined
    weir,     ///< liquid runs down over the floor from one side; gas joined
    pool,     ///< one level; gas joined
    sealed,   ///< liquid joined, gas not
    bubbling, ///< sealed, and gas passes from a side whose level stands at the crown
    surging,  ///< sealed, while a given volume of gas passes from one side, whatever its level
    opening,  ///< a valve just opened: a given volume passes; gas joined
    drowned,  ///< opening, but liquid lies over it on one side or both: gas not joined
    blowing,  ///< drowned, and gas comes with the liquid, whose level stands at the crown
    gurgling, ///< drowned, and gas comes back against the liquid so that the heads stay equal
    shut
};

struct ThroatState {
    Mode mode = Mode::dry;
    bool to_right =
        true; ///< direction of weir, bubbling and surging; of the liquid in the four ways of opening
    friend bool operator==(const ThroatState&, const ThroatState&) = default;
};

/// One cell's contents. Pressures and heads in mm of coolant, 0 at the atmosphere.
struct CellState {
    double level_mm = 0;
    double liquid_ml = 0;
    double gas = 0;         ///< absolute pressure in mm times volume in ml
    double pressure_mm = 0; ///< of its gas
    double head_mm = 0;     ///< level and pressure together: one value throughout joined liquid
    bool full = false;      ///< no gas at all
};

struct FillState {
    std::vector<CellState> cells;
    std::vector<ThroatState> throats;
    std::vector<char> bleed_open;
    double open_pressure_mm = 0; ///< of what is open to the filler: 0, or below it under vacuum
    double atmosphere_mm = 0;    ///< absolute, in mm of coolant
    double poured_ml = 0;        ///< through the jacket or the feed, since the start
    double gas_out = 0;          ///< displaced from open gas or bubbled into it, since the start (by fluxes)
};

/// What is done to the whole: quantities per unit of its parameter, which runs from 0 up.
struct Push {
    double pour_ml = 0; ///< into the feed cell
    std::size_t feed = 0;
    std::size_t valve = 0; ///< throat that is opening
    double valve_ml = 0;   ///< liquid through it, in its direction
    double valve_gas = 0;  ///< gas through it, in its direction
    double open_mm = 0;    ///< change of the open pressure
    double shrink = 0;     ///< all liquid shrinks to exp(-shrink) of itself
    /// Cells whose gas leaves evenly: of what is there, as much as the parameter's share of `gas_left`, which
    /// is what is left of the whole parameter.
    const std::vector<char>* gas_leaves = nullptr;
    double gas_left = 1;
};

} // namespace siphonwright
