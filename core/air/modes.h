#pragma once

#include "core/air/state.h"

#include <cstddef>
#include <vector>

/// When a throat's mode ends, and which comes next.
namespace siphonwright {

/// Levels nearer to a floor or crown than this are at it, mm.
constexpr double at_level_mm = 1e-7;

/// How far each throat is from the ends of its mode, mm: over zero while the mode holds. Two a throat, then
/// one for each bleed and one for each element not yet covered; infinite where there is none.
///
/// dry: each side's level under the floor. weir: the lower side's level under it. pool: under the crown, over
/// the floor. sealed: each side that has gas over the crown. bubbling: the side bubbled into over the crown.
void findMargins(const FillNetwork& network, const FillState& state, const std::vector<char>& covered,
                 std::vector<double>& margins);

/// What uses a margin up: the level of a cell that rises or sinks to a height, or the heads or the pressures
/// on both sides of the valve that is opening, which become one.
struct Mark {
    enum class What { nothing, level, one_head, one_pressure };
    What what = What::nothing;
    std::size_t cell = 0; ///< of a level
    double level_mm = 0;
    bool rising = true;

    static Mark level(std::size_t cell, double level_mm, bool rising)
    {
        return {What::level, cell, level_mm, rising};
    }
    bool isLevel() const { return what == What::level; }
    bool isAny() const { return what != What::nothing; }
};

/// One for each of findMargins(); without a cell where that is infinite.
void findMarks(const FillNetwork& network, const FillState& state, const std::vector<char>& covered,
               std::vector<Mark>& marks);

/// At a throat: of a cell's liquid, or of its gas where no liquid reaches up there, mm.
double headAt(const Throat& throat, const CellState& cell);

/// The mode that follows when margin `which` (0 or 1) of a throat is used up.
ThroatState nextMode(const FillNetwork& network, const FillState& state, std::size_t throat,
                     std::size_t which);

/// The mode that follows when a weir's liquid or bubbling's gas would run the other way.
ThroatState turnedMode(const ThroatState& throat);

} // namespace siphonwright
