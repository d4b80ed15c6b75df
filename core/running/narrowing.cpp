#include "core/running/narrowing.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {

double openShare(double bore_mm, double depth_mm)
{
    if (!(std::isfinite(bore_mm) && bore_mm > 0) || !(depth_mm > 0))
        return 0;
    const double c = 1 - 2 * std::min(1.0, depth_mm / bore_mm);
    return (std::acos(c) - c * std::sqrt(std::max(0.0, 1 - c * c))) / std::numbers::pi;
}

double narrowingHead_mm(double bore_mm, double share, double flow_kg_per_s, double density)
{
    const bool positive = bore_mm > 0 && share > 0 && density > 0;
    if (!positive || !std::isfinite(flow_kg_per_s) || share >= 1)
        return 0;
    const double bore_m = bore_mm / 1000;
    const double full = std::abs(flow_kg_per_s) / density / (std::numbers::pi / 4 * bore_m * bore_m);
    // Under a thousandth of the bore the estimate says nothing any more.
    const double narrow = full / std::max(share, 1e-3);
    const double squares = (narrow - full) * (narrow - full) + (1 - share) / 2 * narrow * narrow;
    return squares / (2 * standard_gravity_m_per_s2) * 1000;
}

} // namespace siphonwright
