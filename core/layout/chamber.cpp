#include "core/layout/chamber.h"

#include "core/geometry/profile.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {
namespace {

/// How far a disc normal to the axis reaches over its centre, per radius.
double reach(Vec3 axis, const Plumb& plumb)
{
    const double along = dot(axis, plumb.up());
    return std::sqrt(std::max(0.0, 1 - along * along));
}

/// Integral over w of the segment area r^2 acos(w/r) - w sqrt(r^2 - w^2): zero from w = r on.
double segmentIntegral(double r, double w)
{
    if (w >= r)
        return 0;
    if (w <= -r)
        return std::numbers::pi * r * r * w;
    const double root = std::sqrt(r * r - w * w);
    return r * r * w * std::acos(w / r) - r * r * root + root * root * root / 3;
}

} // namespace

double highestOf(const Cylinder& cylinder, const Plumb& plumb)
{
    const Vec3 axis = unit(cylinder.top - cylinder.bottom);
    return std::max(plumb.height(cylinder.bottom), plumb.height(cylinder.top)) +
           cylinder.diameter_mm / 2 * reach(axis, plumb);
}

double lowestOf(const Cylinder& cylinder, const Plumb& plumb)
{
    const Vec3 axis = unit(cylinder.top - cylinder.bottom);
    return std::min(plumb.height(cylinder.bottom), plumb.height(cylinder.top)) -
           cylinder.diameter_mm / 2 * reach(axis, plumb);
}

double volumeOver(const Cylinder& cylinder, const Plumb& plumb, double height_mm)
{
    const double length_mm = distance(cylinder.bottom, cylinder.top);
    const double r = cylinder.diameter_mm / 2;
    if (!(length_mm > 0 && r > 0))
        return 0; // without an inside; there would be nothing to divide by
    const double k = reach(unit(cylinder.top - cylinder.bottom), plumb);
    const double low = std::min(plumb.height(cylinder.bottom), plumb.height(cylinder.top));
    const double high = std::max(plumb.height(cylinder.bottom), plumb.height(cylinder.top));
    if (k < 1e-9) {
        const double over_mm = std::clamp(high - height_mm, 0.0, length_mm);
        return std::numbers::pi * r * r * over_mm * ml_per_mm3;
    }
    // Chord offsets at the two flat ends; between them they run linearly along the axis.
    const double w_low = (height_mm - low) / k;
    const double w_high = (height_mm - high) / k;
    if (w_low - w_high < 1e-6 * r)
        return discAreaOver(cylinder.diameter_mm, (w_low + w_high) / 2) * length_mm * ml_per_mm3;
    const double integral = segmentIntegral(r, w_low) - segmentIntegral(r, w_high);
    return integral * length_mm / (w_low - w_high) * ml_per_mm3;
}

} // namespace siphonwright
