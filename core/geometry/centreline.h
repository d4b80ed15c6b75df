#pragma once

#include "core/geometry/vec.h"

#include <cstddef>
#include <vector>

namespace siphonwright {

/// A point that a run is drawn through, with the bend radius asked for there (mm, to the centreline).
struct Corner {
    Vec3 at;
    double radius_mm = 0;
};

/// One exact piece of a centreline: a straight (radius 0) or a circular arc.
struct Piece {
    Vec3 start;
    Vec3 u;               ///< unit tangent at the start
    Vec3 n;               ///< unit vector to the centre of the arc; zero on a straight
    double radius_mm = 0; ///< 0 on a straight
    double length_mm = 0;
    double s = 0; ///< distance from the run's start to this piece's start, mm

    /// Point and unit tangent t mm into the piece.
    Vec3 at(double t) const;
    Vec3 tangent(double t) const;
    /// How far into the piece its place nearest to p is, mm, seen in the side elevation (x, z only).
    double nearestInElevation(Vec2 p) const;
};

/// What became of one inner corner.
struct Bend {
    std::size_t corner = 0; ///< index into the corners given
    double angle_rad = 0;   ///< 0 straight on, pi reversal
    double asked_mm = 0;    ///< radius asked for
    double radius_mm = 0;   ///< radius used: asked, or reduced to what fits
    double s = 0;           ///< middle of the bend, mm from the run's start
    bool fits = true;       ///< false where the radius was reduced or the run turns back on itself
};

/// The true centreline of a run: straights joined by tangent circular arcs, in 3-D.
///
/// Definition and degenerate cases: corners closer than 0.01 mm to the one before are dropped; a bend under
/// 1e-6 rad is none; over pi - 0.001 rad it is a reversal (radius 0, does not fit). An arc of angle a and
/// radius r takes t = r tan(a/2) from both neighbouring straights; where two takes exceed their straight of
/// length l, phi = l/(t_i + t_k) and r' = r min(phi before, phi after): one pass, independent of order.
/// Exact but for rounding (1e-9 of the length). Fewer than two distinct corners give an empty centreline.
class Centreline {
public:
    Centreline() = default;
    explicit Centreline(const std::vector<Corner>& corners);
    /// The bends that a centreline through these corners has, without their place along it (s is 0).
    static std::vector<Bend> bendsThrough(const std::vector<Corner>& corners);

    double length() const { return length_mm_; }
    bool empty() const { return pieces_.empty(); }
    /// Point and unit tangent at s mm from the start; s is clamped to the run. At a sharp corner the tangent
    /// is that of the piece that begins there.
    Vec3 at(double s) const;
    Vec3 tangent(double s) const;
    /// Index of the piece that holds s.
    std::size_t pieceAt(double s) const;
    /// The s nearest to p, and how far p is from it, seen in the side elevation (x, z only).
    struct Nearest {
        double s = 0;
        double distance_mm = 0;
    };
    Nearest nearestInElevation(Vec2 p) const;

    const std::vector<Piece>& pieces() const { return pieces_; }
    const std::vector<Bend>& bends() const { return bends_; }

private:
    std::vector<Piece> pieces_;
    std::vector<Bend> bends_;
    double length_mm_ = 0;
};

} // namespace siphonwright
