#pragma once

#include "core/air/level_table.h"
#include "core/air/level_tables.h"
#include "core/air/loop.h"

#include <cstddef>
#include <string>
#include <vector>

namespace siphonwright {

/// A piece of a loop that can be full to one level only: a stretch of hose without a crest or hollow inside,
/// the whole chamber, or the jacket.
struct Cell {
    std::size_t loop = 0;
    LoopPart part = LoopPart::jacket;
    double from_mm = 0; ///< along the part's path; along the axis for a chamber
    double to_mm = 0;
    LevelTable volume;
    double floor_mm = 0;
    double top_mm = 0;
    double capacity_ml = 0;
    double steepest = 0; ///< steepest rise or fall in it: sine of the angle
    double widest_bore_mm = 0;
};

enum class ThroatKind { opening, crest, hollow, reducer, valve };

/// Where two cells meet. Liquid passes from its floor up; over its crown gas does not pass.
struct Throat {
    ThroatKind kind = ThroatKind::crest;
    std::size_t left = 0; ///< cell on the side of the loop's supply port
    std::size_t right = 0;
    double floor_mm = 0; ///< of the bore there, but no lower than the floors of its two cells
    double crown_mm = 0; ///< of the bore there, but no higher than the tops of its two cells
    double bore_mm = 0;
    std::size_t loop = 0;
    LoopPart part = LoopPart::supply;
    double along_mm = 0;
    bool starts_shut = false;
    std::size_t valve = 0; ///< index into the loop's valves, for a valve
};

/// A bleed and the cells whose gas it lets out (two where it sits on a crest).
struct BleedPlace {
    std::size_t cell = 0;
    double height_mm = 0; ///< coolant closes it here
    bool open = true;
    std::size_t loop = 0;
    std::size_t bleed = 0; ///< index into the loop's bleeds
};

/// Where coolant reaches the element's top.
struct ElementTop {
    std::size_t cell = 0;
    double height_mm = 0;
};

/// All loops cut into cells. Cell 0 is the jacket; the cells of a loop follow each other from its supply port
/// to its return port.
///
/// Cut at every turn of the centreline's height (the middle of a level crest or hollow), all of them, however
/// small: a limb must be monotone or its level means nothing. Cut at openings, reducers and valves too.
/// Throats at turns lie D/2 under and over the centreline, others D/2 k; cuts within 0.5 mm of another are
/// left out (a valve takes the other's place).
struct FillNetwork {
    std::vector<Cell> cells;
    std::vector<Throat> throats;
    std::vector<BleedPlace> bleeds;
    std::vector<ElementTop> elements;
    double hoses_and_chambers_ml = 0;
    std::string problem; ///< what is wrong with the input, in plain words; empty when all is well
};

/// `kept`, if given, lends tables made before and keeps the new ones.
FillNetwork cutIntoCells(const std::vector<FillLoop>& loops, const std::vector<JacketVolume>& jacket,
                         const Plumb& plumb, LevelTables* kept = nullptr);

} // namespace siphonwright
