#pragma once

#include "core/geometry/vec.h"

namespace siphonwright {

/// How the vehicle stands on the ground, percent: rise over run.
struct Grade {
    double along_percent = 0;  ///< positive: parked nose-up
    double across_percent = 0; ///< positive: the vehicle's right side up
    friend bool operator==(const Grade&, const Grade&) = default;
};

/// How the engine stands in the vehicle and the vehicle on the ground. Degrees and percent.
struct Attitude {
    bool front_at_left = true;  ///< the engine's front (fan or damper end) is towards -x
    double heading_deg = 0;     ///< engine front clockwise from the vehicle's front, seen from above
    double mount_angle_deg = 0; ///< positive: the engine's rear is lower than its front
    double lean_deg = 0;        ///< positive: the engine's top leans towards its own right side
    Grade grade;
};

/// The plumb direction, seen from the engine's own axes: the one place where heights are taken.
///
/// Drawings stay square to the engine; mount angle, lean and grade turn this vector instead. Rotations are
/// applied in the order vehicle on its grade, heading, mount angle (about the engine's cross axis), lean
/// (about its long axis); exact, no small-angle form. With everything zero, height(p) == p.z.
class Plumb {
public:
    Plumb() = default;
    explicit Plumb(const Attitude& attitude);

    /// Unit vector that points up, in drawing axes.
    const Vec3& up() const { return up_; }
    /// Height of p over the origin of the drawing, mm along plumb.
    double height(Vec3 p) const { return dot(p, up_); }

private:
    Vec3 up_ = {0, 0, 1};
};

} // namespace siphonwright
