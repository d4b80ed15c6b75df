#pragma once

#include "core/geometry/centreline.h"

/// Which way the drawing is looked at: the one place where space becomes a view.
namespace siphonwright {

/// A parallel projection square to the engine. In every view z is up and 1 mm is 1 mm, so that one height is
/// one height in all of them.
///
///   side        looking along +y: right is +x (the side elevation)
///   from_left   looking along +x, at the end of the engine that is left in the elevation: right is -y, the
///               elevation's viewer stands at the right
///   from_right  looking along -x, at the end that is right in the elevation: right is +y, the elevation's
///               viewer stands at the left
///
/// Example: a port at {250, 40, 310} is at (250, 310) in the side elevation, at (-40, 310) seen from the left
/// and at (40, 310) seen from the right. In a Vec2 of a view, x is to the right and z is up.
class Projection {
public:
    enum class From { side, from_left, from_right };

    constexpr Projection() = default;
    constexpr explicit Projection(From from) : from_(from) {}

    constexpr From from() const { return from_; }
    constexpr bool isEnd() const { return from_ != From::side; }

    /// Where a point or direction lies in the view.
    constexpr Vec2 flat(Vec3 p) const { return {across(p), p.z}; }
    /// What a ruler across the view says at a place of it: x in the side elevation, y from the end.
    constexpr double ruler(double right_mm) const { return from_ == From::from_left ? -right_mm : right_mm; }
    /// How far it is from the viewer, mm, from the plane through the drawing's origin.
    constexpr double depth(Vec3 p) const
    {
        return from_ == From::side ? p.y : from_ == From::from_left ? p.x : -p.x;
    }
    /// The point of space at a place of the view, so far from the viewer.
    constexpr Vec3 at(Vec2 p, double depth_mm) const
    {
        switch (from_) {
        case From::from_left:
            return {depth_mm, -p.x, p.z};
        case From::from_right:
            return {-depth_mm, p.x, p.z};
        default:
            return {p.x, depth_mm, p.z};
        }
    }
    /// A move within the view as a move in space: what lies along the view stays.
    constexpr Vec3 move(Vec2 by) const { return at(by, 0); }

    friend constexpr bool operator==(const Projection&, const Projection&) = default;

private:
    constexpr double across(Vec3 p) const
    {
        return from_ == From::side ? p.x : from_ == From::from_left ? -p.y : p.y;
    }

    From from_ = From::side;
};

/// The place along a run nearest to p as the view shows both, and how far p is from it there. Exact on
/// straights, on arcs within 1e-6 of their length. An empty run gives zeros.
Centreline::Nearest nearestSeen(const Projection& view, const Centreline& line, Vec2 p);
/// The same of one piece: how far into it, mm.
double nearestSeen(const Projection& view, const Piece& piece, Vec2 p);

} // namespace siphonwright
