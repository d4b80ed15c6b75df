#pragma once

#include "core/geometry/relief.h"

#include <cstdint>
#include <vector>

namespace siphonwright {

/// Liquid under a level, and the area of its surface: d(liquid)/d(level).
struct LiquidUnder {
    double liquid_ml = 0;
    double ml_per_mm = 0;
};

/// Part of a monotone part of a bore, made ready for asking again and again what it holds under a level.
///
/// Volumes by disc sections normal to the centreline, as in core/geometry: a straight in closed form; an arc
/// by the Gauss-Legendre rule of 10 points (Abramowitz and Stegun 1964, table 25.4) between the places where
/// its crown and its invert pass the level, within 1e-6 of its whole volume.
class BorePart {
public:
    /// From one place to another along the path, inside `part`, in mm.
    BorePart(const MonotonePart& part, double from_mm, double to_mm);

    LiquidUnder under(double level_mm) const;

    double whole_ml() const { return whole_ml_; }
    /// Lowest invert and highest crown, and those of either end, mm.
    double lowest_mm() const { return lowest_mm_; }
    double highest_mm() const { return highest_mm_; }
    const double* breaks_mm() const { return breaks_mm_; }
    static constexpr int breaks = 4;
    /// A straight bore that stands plumb: its surface begins and ends at once.
    bool plumb() const { return plumb_; }

    friend bool operator==(const BorePart&, const BorePart&) = default;
    /// A number that another part most likely makes another of.
    std::uint64_t mixedInto(std::uint64_t mark) const;

private:
    struct At {
        double z_mm = 0;
        double k = 0;
        friend bool operator==(const At&, const At&) = default;
    };
    At section(double t) const;
    LiquidUnder underOfStraight(double level_mm) const;
    LiquidUnder underOfArc(double level_mm) const;
    LiquidUnder cutOfArc(double level_mm, double from, double to, int halvings) const;
    double passes(double level_mm, double side) const;

    double half_bore_mm_ = 0;
    double length_mm_ = 0;
    double whole_ml_ = 0;
    double lowest_mm_ = 0;
    double highest_mm_ = 0;
    double breaks_mm_[breaks] = {};
    bool plumb_ = false;
    At first_; ///< of a straight
    At last_;
    double radius_mm_ = 0; ///< of an arc; 0: straight
    double middle_mm_ = 0; ///< height at its middle, and upward parts of tangent and normal there
    double u_up_ = 0;
    double n_up_ = 0;
    double end_ = 0; ///< tangent of a quarter of its angle: places run from -end_ to end_
};

/// The bore from one place to another along a path.
std::vector<BorePart> borePartsOf(const std::vector<MonotonePart>& parts, double from_mm, double to_mm);

} // namespace siphonwright
