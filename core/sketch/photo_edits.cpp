#include "core/sketch/photo_edits.h"

#include "core/quantity/constants.h"
#include "core/sketch/format/describe.h"

#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

// As in the description of the file format.
constexpr double least_mm_per_pixel = 1e-6;
constexpr double most_mm_per_pixel = 100'000;

bool inReach(double mm)
{
    return std::abs(mm) <= farthest_mm; // false for NaN
}

bool fitsTheFormat(const Photo& photo)
{
    return inReach(photo.top_left.x) && inReach(photo.top_left.z) && std::isfinite(photo.rotation_deg) &&
           photo.mm_per_pixel >= least_mm_per_pixel && photo.mm_per_pixel <= most_mm_per_pixel;
}

/// Put the picture so that its place `shown` lies at `at`.
void pin(Photo& photo, PicturePoint shown, Vec2 at)
{
    const Vec2 now = drawingPoint(photo, shown);
    photo.top_left = {photo.top_left.x + at.x - now.x, photo.top_left.z + at.z - now.z};
}

/// Change scale and turn, what the drawing shows at `fixed` staying there.
template <class Change>
bool changeAbout(Sketch& sketch, Vec2 fixed, const Change& change)
{
    if (!sketch.photo || !inReach(fixed.x) || !inReach(fixed.z))
        return false;
    Photo photo = **sketch.photo;
    const PicturePoint shown = picturePoint(photo, fixed);
    change(photo);
    pin(photo, shown, fixed);
    if (!fitsTheFormat(photo))
        return false;
    sketch.photo = Shared<Photo>(std::move(photo));
    return true;
}

/// Between -180, left out, and 180 degrees.
double wrapped(double angle_deg)
{
    const double turn = std::remainder(angle_deg, 360);
    return turn <= -180 ? turn + 360 : turn;
}

} // namespace

Vec2 drawingPoint(const Photo& photo, PicturePoint at)
{
    const double c = std::cos(photo.rotation_deg * rad_per_deg) * photo.mm_per_pixel;
    const double s = std::sin(photo.rotation_deg * rad_per_deg) * photo.mm_per_pixel;
    return {photo.top_left.x + at.right_px * c - at.down_px * s,
            photo.top_left.z - at.right_px * s - at.down_px * c};
}

PicturePoint picturePoint(const Photo& photo, Vec2 at)
{
    const double c = std::cos(photo.rotation_deg * rad_per_deg) / photo.mm_per_pixel;
    const double s = std::sin(photo.rotation_deg * rad_per_deg) / photo.mm_per_pixel;
    const double dx = at.x - photo.top_left.x;
    const double dz = at.z - photo.top_left.z;
    return {dx * c - dz * s, -dx * s - dz * c};
}

bool scalePhotoAbout(Sketch& sketch, Vec2 fixed, double factor)
{
    if (!(std::isfinite(factor) && factor > 0))
        return false;
    return changeAbout(sketch, fixed, [&](Photo& photo) { photo.mm_per_pixel *= factor; });
}

bool turnPhotoAbout(Sketch& sketch, Vec2 fixed, double clockwise_deg)
{
    if (!std::isfinite(clockwise_deg))
        return false;
    return changeAbout(sketch, fixed, [&](Photo& photo) {
        photo.rotation_deg = wrapped(photo.rotation_deg + clockwise_deg);
    });
}

bool scalePhotoByTwoPoints(Sketch& sketch, Vec2 first, Vec2 second, double true_mm)
{
    const double now_mm = std::hypot(second.x - first.x, second.z - first.z);
    if (!(std::isfinite(now_mm) && now_mm > 0))
        return false;
    return scalePhotoAbout(sketch, first, true_mm / now_mm);
}

bool levelPhotoByTwoPoints(Sketch& sketch, Vec2 first, Vec2 second, Vec2 level)
{
    const double dx = second.x - first.x;
    const double dz = second.z - first.z;
    if (!(std::hypot(dx, dz) > 0) || !(std::hypot(level.x, level.z) > 0))
        return false;
    // Counter-clockwise, how far the line is from level; whichever of its ends was pointed at first.
    double over_deg = wrapped((std::atan2(dz, dx) - std::atan2(level.z, level.x)) / rad_per_deg);
    if (over_deg > 90)
        over_deg -= 180;
    else if (over_deg < -90)
        over_deg += 180;
    return turnPhotoAbout(sketch, first, over_deg);
}

} // namespace siphonwright
