#include "core/geometry/plumb.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {

namespace {

/// Sine of the angle of a grade: a grade is rise over run, so its angle is atan(percent / 100).
double sineOfGrade(double percent)
{
    const double tangent = percent / 100;
    return tangent / std::hypot(1.0, tangent);
}

struct Turn {
    explicit Turn(double deg)
        : cosine(std::cos(deg * std::numbers::pi / 180)), sine(std::sin(deg * std::numbers::pi / 180))
    {}
    double cosine;
    double sine;
};

} // namespace

Plumb::Plumb(const Attitude& attitude)
{
    // Up in the vehicle's axes. Each grade is what a level laid along or across the vehicle reads, so the
    // two sines are two of the three components and no order between them arises.
    const double nose = sineOfGrade(attitude.grade.along_percent);
    const double side = sineOfGrade(attitude.grade.across_percent);
    const double top = std::sqrt(std::max(0.0, 1 - nose * nose - side * side));

    // Heading: the engine's front is turned from the vehicle's nose towards the vehicle's right.
    const Turn heading(attitude.heading_deg);
    const double front_level = heading.cosine * nose + heading.sine * side;
    const double right_level = heading.cosine * side - heading.sine * nose;

    // Mount angle about the cross axis lifts the front; lean about the long axis brings the top to the right.
    const Turn mount(attitude.mount_angle_deg);
    const Turn lean(attitude.lean_deg);
    const double front = mount.cosine * front_level + mount.sine * top;
    const double over = mount.cosine * top - mount.sine * front_level;
    const double right = lean.cosine * right_level - lean.sine * over;
    const double up = lean.cosine * over + lean.sine * right_level;

    // Front is -x or +x; the right-hand side is front x up, so behind the drawing plane when the front is
    // left.
    const Vec3 drawn = attitude.front_at_left ? Vec3{-front, right, up} : Vec3{front, -right, up};
    const double size = length(drawn);
    if (std::isfinite(size) && size > 0)
        up_ = drawn * (1 / size);
}

} // namespace siphonwright
