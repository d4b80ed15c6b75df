#pragma once

#include "core/geometry/profile.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

/// The crown of a path as exact stretches: what crests and volumes are found on. A path seen with up reversed
/// shows its inverts as crowns, so dips need no code of their own.
namespace siphonwright {

/// Height of the centreline and k, the horizontal part of the unit tangent.
struct Section {
    double z_mm = 0;
    double k = 0;
};

/// Part of one piece with one bore and one set of limits on its crown.
struct Stretch {
    double from_mm = 0; ///< along the path
    double to_mm = 0;
    double half_bore_mm = 0;
    double piece_mm = 0;  ///< where the piece starts along the path
    double radius_mm = 0; ///< 0 on a straight
    double start_mm = 0;  ///< height where the piece starts
    double u_up = 0;      ///< upward parts of the piece's tangent and of its normal at its start
    double n_up = 0;
    double k_straight = 0;
    /// A tight bend that turns upward holds the crown over the floor and, on its own arc, under the cap.
    double floor_mm = -std::numeric_limits<double>::infinity();
    double cap_mm = std::numeric_limits<double>::infinity();

    Section section(double s) const;
    double slope(double s) const;
    double crown(double s) const { return crownAt(section(s)); }
    /// Of a section of it.
    double crownAt(const Section& here) const
    {
        return std::max(floor_mm, std::min(cap_mm, here.z_mm + half_bore_mm * here.k));
    }
};

/// Places inside a stretch, in order, where the crown or invert may turn; both are monotone between them.
struct TurningPlaces {
    double s[8] = {};
    int count = 0;
};
TurningPlaces turningPlaces(const Stretch& stretch);

/// The stretches of a path in order; limits at tight bends are left out where only the bore matters.
enum class TightBends { limit_crown, ignored };
std::vector<Stretch> stretchesOf(const Path& path, Vec3 up, TightBends tight_bends);

/// A path's stretches with limits at tight bends, and those with up reversed, whose crowns are the inverts.
struct Relief {
    std::vector<Stretch> up;
    std::vector<Stretch> down;
    bool mirrored = false; ///< no bend is tight: each of `down` is the one of `up` turned round
};
Relief reliefOf(const Path& path, Vec3 up);

/// Height of the crown at s (see heightsAt).
double crownAt(const Path& path, Vec3 up, double s);

/// Where a function that changes sign between a and b is zero, to 1e-10 of its unit or its argument's.
template <typename F>
double rootBetween(double a, double b, F f)
{
    constexpr double close_enough = 1e-10;
    double fa = f(a);
    double fb = f(b);
    if (fa == 0)
        return a;
    if (fb == 0)
        return b;
    // False position, Illinois form (Dowell and Jarratt, BIT 11, 1971), with a halving every third step, so
    // that a function that is flat over part of the interval cannot hold it up.
    int kept = 0;
    for (int step = 1; step <= 150; ++step) {
        const double s = step % 3 == 0 ? (a + b) / 2 : a + (b - a) * (fa / (fa - fb));
        const double fs = f(s);
        if (std::abs(fs) < close_enough || std::abs(b - a) < close_enough)
            return s;
        if ((fs < 0) == (fa < 0)) {
            a = s;
            fa = fs;
            fb = kept > 0 ? fb / 2 : fb;
            kept = 1;
        } else {
            b = s;
            fb = fs;
            fa = kept < 0 ? fa / 2 : fa;
            kept = -1;
        }
    }
    return (a + b) / 2;
}

/// Part of a stretch in which crown and invert, without limits, are monotone.
struct MonotonePart {
    Stretch stretch;
    double from_mm = 0;
    double to_mm = 0;
    double lowest_mm = 0;  ///< of its inverts
    double highest_mm = 0; ///< of its crowns
};
std::vector<MonotonePart> monotonePartsOf(const std::vector<Stretch>& stretches);

/// Bore volume over a level between two places of the path, mm3.
double volumeOver(const std::vector<MonotonePart>& parts, double level_mm, double from_mm, double to_mm);

} // namespace siphonwright
