#pragma once

#include "core/geometry/centreline.h"
#include "core/geometry/plumb.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace siphonwright {

/// A stretch of a path with one bore. Stretches follow each other without gaps; a step between two is an
/// opening, at which crown and invert are taken with the smaller bore.
struct BoreSpan {
    double from_mm = 0;
    double to_mm = 0;
    double bore_mm = 0;
};

/// A path: its centreline, from the opening in one vessel to the opening in the other, and its bore along it.
struct Path {
    Centreline line;
    std::vector<BoreSpan> bores;

    double boreAt(double s) const;
};

/// Centreline height, crown (top of the bore) and invert (bottom), mm along plumb.
struct BoreHeights {
    double centre_mm = 0;
    double crown_mm = 0;
    double invert_mm = 0;
};

/// Heights at s: crown = z + (D/2) k, invert = z - (D/2) k, k = sqrt(1 - t_z^2) with t the unit tangent;
/// k = 0 on a plumb piece. From D/2 before to D/2 after a bend of radius under D/2 the crown (turning upward)
/// or invert (turning downward) is held at the bend's own, z + (D/2) k with z at the bend's middle and the
/// greater k of its two ends; on the bend itself it goes no farther than at its ends. An arc that passes its
/// steepest place is two such bends. So crossing disc sections invent no crests.
BoreHeights heightsAt(const Path& path, const Plumb& plumb, double s);

/// A crest of the crown where air can stay.
struct HighPoint {
    double along_mm = 0;  ///< middle of the crest, mm from the path's start
    double z_mm = 0;      ///< height of the centreline there, along plumb
    double crown_mm = 0;  ///< height of the crown there
    double height_mm = 0; ///< crown less the higher of its two sills
    double sill_mm = 0;   ///< the height over which air is held
    double from_mm = 0;   ///< stretch round the crest with crown over the sill
    double to_mm = 0;
    double trapped_ml = 0;             ///< the most it can hold: bore volume over the sill in that stretch
    std::optional<std::size_t> within; ///< index of the greatest high point that contains this one
    Vec3 at;                           ///< the centreline point at along_mm
};

/// A hollow of the invert where coolant stays when drained: a high point upside down.
struct Dip {
    double along_mm = 0;
    double z_mm = 0;
    double invert_mm = 0;
    double depth_mm = 0;
    double rim_mm = 0;
    double from_mm = 0;
    double to_mm = 0;
    double held_ml = 0;
    std::optional<std::size_t> within;
    Vec3 at;
};

/// Every crest and hollow from least_mm of height up (tape accuracy by default), in order along the path.
///
/// Crest: a maximal interval in which the crown stays within 0.01 mm of its own highest value and is lower
/// just outside on both sides; touching an end of the path it is none. Its left sill is the lowest crown from
/// there back to the nearest place with a crown as high (equal counts when looking towards s = 0) or to the
/// path's end; right alike (strictly higher); the higher sill counts. Extrema are found exactly: they lie at
/// piece ends, at bore steps and, per arc, where u_z cos a + n_z sin a = 0. Volumes by disc sections normal
/// to the centreline, integrated to 1e-6 relative; in an arc this differs from the true solid by at most 0.42
/// (D/2)/R.
struct Profile {
    std::vector<HighPoint> high_points;
    std::vector<Dip> dips;
};
constexpr double tape_accuracy_mm = 3;
Profile profileOf(const Path& path, const Plumb& plumb, double least_mm = tape_accuracy_mm);

/// Whether profileOf would report anything; quicker, since no volume is taken.
bool hasTrap(const Path& path, const Plumb& plumb, double least_mm = tape_accuracy_mm);
/// Whether it would report a high point.
bool hasHump(const Path& path, const Plumb& plumb, double least_mm = tape_accuracy_mm);

/// Bore volume of the path between two places, ml.
double boreVolume(const Path& path, double from_mm, double to_mm);

/// Bore volume over a height (or under it) between two places, ml: what a level plane cuts off.
double boreVolumeOver(const Path& path, const Plumb& plumb, double height_mm, double from_mm, double to_mm);
double boreVolumeUnder(const Path& path, const Plumb& plumb, double height_mm, double from_mm, double to_mm);

/// The area of a disc of diameter bore_mm above a chord at `offset_mm` from its centre (positive: over the
/// centre), mm2. The elementary circular segment; 0 and the full disc outside.
double discAreaOver(double bore_mm, double offset_mm);

} // namespace siphonwright
