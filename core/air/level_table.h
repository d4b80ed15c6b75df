#pragma once

#include "core/air/bore_part.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// How much liquid part of a bore holds under a level plane.
///
/// At nodes it holds what its parts do (volumes by disc sections normal to the centreline, as everywhere in
/// core/geometry); cubic Hermite pieces between them rise strictly and are within 1e-5 of the whole volume
/// nearly everywhere; where a surface begins or ends in a short, level hose within 1e-3 (of 400,000 levels in
/// random hoses 1 in 100 is off by more than 1e-4, the worst by 6e-4).
/// Within 0.02 mm of its lowest and highest point the volume is taken as straight, and it goes on so beyond:
/// a surface without area has no level that could be solved for.
class LevelTable {
public:
    LevelTable() = default;
    explicit LevelTable(const std::vector<BorePart>& bore);
    /// Straight between points, both columns strictly rising.
    LevelTable(const std::vector<double>& levels_mm, const std::vector<double>& volumes_ml);

    LiquidUnder under(double level_mm) const
    {
        std::size_t near = 0;
        return under(level_mm, near);
    }
    /// The same, faster where `near`, the piece last looked up, is still the piece; it is kept up to date.
    LiquidUnder under(double level_mm, std::size_t& near) const;
    /// The level at which it holds so much; beyond the ends for less than nothing or more than it holds.
    double levelOf(double liquid_ml) const;

    /// Lowest and highest point, mm, and all that it holds, ml.
    double floor() const { return pieces_.empty() ? 0 : pieces_.front().low_mm; }
    double top() const { return pieces_.empty() ? 0 : pieces_.back().high_mm; }
    double capacity() const { return pieces_.empty() ? 0 : pieces_.back().high_ml; }

private:
    struct Piece {
        double low_mm = 0;
        double high_mm = 0;
        double low_ml = 0;
        double high_ml = 0;
        double low_slope = 0;
        double high_slope = 0;
    };
    friend class LevelTableMaker;
    std::vector<Piece> pieces_;
};

} // namespace siphonwright
