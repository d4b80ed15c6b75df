#include "core/geometry/relief.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace siphonwright {

namespace {

/// Under this a disc lies level: it is over the height or under it as a whole.
constexpr double level_disc = 1e-9;

double discArea(double half_bore_mm)
{
    return std::numbers::pi * half_bore_mm * half_bore_mm;
}

double areaOver(const Stretch& stretch, double level_mm, double s)
{
    const Section here = stretch.section(s);
    if (here.k < level_disc)
        return here.z_mm > level_mm ? discArea(stretch.half_bore_mm) : 0;
    return discAreaOver(2 * stretch.half_bore_mm, (level_mm - here.z_mm) / here.k);
}

/// Integral of the area over the level from a to b, by ten-point Gauss-Legendre quadrature (Abramowitz and
/// Stegun, Handbook of Mathematical Functions, table 25.4) in x with s = a + (b - a)(3 x^2 - 2 x^3): where
/// the level enters or leaves a disc its area starts as the power 3/2 of the distance, which is smooth in x.
double quadrature(const Stretch& stretch, double level_mm, double a, double b)
{
    constexpr std::array<double, 5> node = {0.148874338981631211, 0.433395394129247191, 0.679409568299024406,
                                            0.865063366688984511, 0.973906528517171720};
    constexpr std::array<double, 5> weight = {0.295524224714752870, 0.269266719309996355,
                                              0.219086362515982044, 0.149451349150580593,
                                              0.066671344308688138};
    double sum = 0;
    for (std::size_t i = 0; i < node.size(); ++i) {
        for (const double x : {(1 + node[i]) / 2, (1 - node[i]) / 2}) {
            const double s = a + (b - a) * x * x * (3 - 2 * x);
            sum += weight[i] * 3 * x * (1 - x) * areaOver(stretch, level_mm, s);
        }
    }
    return sum * (b - a);
}

double adaptive(const Stretch& stretch, double level_mm, double a, double b, double whole, int depth)
{
    constexpr double relative_error = 1e-9;
    const double middle = (a + b) / 2;
    const double left = quadrature(stretch, level_mm, a, middle);
    const double right = quadrature(stretch, level_mm, middle, b);
    if (depth <= 0 || std::abs(left + right - whole) <= relative_error * (left + right))
        return left + right;
    return adaptive(stretch, level_mm, a, middle, left, depth - 1) +
           adaptive(stretch, level_mm, middle, b, right, depth - 1);
}

double overBetween(const Stretch& stretch, double level_mm, double a, double b)
{
    const Section middle = stretch.section((a + b) / 2);
    const double half_height = stretch.half_bore_mm * middle.k;
    if (middle.z_mm + half_height <= level_mm)
        return 0;
    if (middle.z_mm - half_height >= level_mm || middle.k < level_disc)
        return discArea(stretch.half_bore_mm) * (b - a);
    return adaptive(stretch, level_mm, a, b, quadrature(stretch, level_mm, a, b), 12);
}

/// From a to b crown and invert are monotone: cut where each passes the level, then take part by part.
double overMonotone(const Stretch& stretch, double level_mm, double a, double b)
{
    std::array<double, 4> cuts = {a, a, b, b};
    std::size_t cut = 0;
    for (const double side : {1.0, -1.0}) {
        const auto over = [&](double s) {
            const Section here = stretch.section(s);
            return here.z_mm + side * stretch.half_bore_mm * here.k - level_mm;
        };
        ++cut;
        if ((over(a) < 0) != (over(b) < 0))
            cuts[cut] = rootBetween(a, b, over);
    }
    std::sort(cuts.begin(), cuts.end());
    double sum = 0;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
        if (cuts[i + 1] > cuts[i])
            sum += overBetween(stretch, level_mm, cuts[i], cuts[i + 1]);
    }
    return sum;
}

} // namespace

double discAreaOver(double bore_mm, double offset_mm)
{
    const double r = bore_mm / 2;
    if (!(r > 0) || offset_mm >= r)
        return 0;
    if (offset_mm <= -r)
        return discArea(r);
    return r * r * std::acos(offset_mm / r) - offset_mm * std::sqrt((r - offset_mm) * (r + offset_mm));
}

double volumeOver(const std::vector<Stretch>& stretches, double level_mm, double from_mm, double to_mm)
{
    double sum = 0;
    auto stretch = std::lower_bound(stretches.begin(), stretches.end(), from_mm,
                                    [](const Stretch& part, double s) { return part.to_mm < s; });
    for (; stretch != stretches.end() && stretch->from_mm < to_mm; ++stretch) {
        const double end = std::min(to_mm, stretch->to_mm);
        double a = std::max(from_mm, stretch->from_mm);
        const TurningPlaces places = turningPlaces(*stretch);
        for (int i = 0; i < places.count; ++i) {
            if (places.s[i] <= a || places.s[i] >= end)
                continue;
            sum += overMonotone(*stretch, level_mm, a, places.s[i]);
            a = places.s[i];
        }
        if (end > a)
            sum += overMonotone(*stretch, level_mm, a, end);
    }
    return sum;
}

double boreVolume(const Path& path, double from_mm, double to_mm)
{
    constexpr double mm3_per_ml = 1000;
    double sum = 0;
    for (const Stretch& part : stretchesOf(path, {0, 0, 1}, TightBends::ignored)) {
        const double along = std::min(to_mm, part.to_mm) - std::max(from_mm, part.from_mm);
        sum += along > 0 ? along * discArea(part.half_bore_mm) : 0;
    }
    return sum / mm3_per_ml;
}

double boreVolumeOver(const Path& path, const Plumb& plumb, double height_mm, double from_mm, double to_mm)
{
    constexpr double mm3_per_ml = 1000;
    const auto stretches = stretchesOf(path, plumb.up(), TightBends::ignored);
    return volumeOver(stretches, height_mm, from_mm, to_mm) / mm3_per_ml;
}

double boreVolumeUnder(const Path& path, const Plumb& plumb, double height_mm, double from_mm, double to_mm)
{
    // Under a height is over its opposite when up is turned round.
    constexpr double mm3_per_ml = 1000;
    const auto stretches = stretchesOf(path, plumb.up() * -1, TightBends::ignored);
    return volumeOver(stretches, -height_mm, from_mm, to_mm) / mm3_per_ml;
}

} // namespace siphonwright
