#include "core/physics/freezing.h"

#include <array>
#include <cmath>

namespace siphonwright {

std::optional<double> freezingPoint(Antifreeze kind, double share)
{
    constexpr std::array<double, 6> ethylene = {5.534468,   -0.3574293, -0.6535113,
                                                -0.9039166, 1.048048,   4.622116};
    constexpr std::array<double, 6> propylene = {5.546103,   -0.326277, -0.6666873,
                                                 -0.8800598, -1.071417, -1.875782};
    constexpr double base_share = 0.35;
    constexpr double highest_share = 0.6;
    constexpr double zero_degC_K = 273.15;
    if (!(share >= 0 && share <= highest_share + 1e-9))
        return std::nullopt;
    const std::array<double, 6>& c = kind == Antifreeze::ethylene_glycol ? ethylene : propylene;
    double sum = 0;
    for (std::size_t j = c.size(); j-- > 0;)
        sum = sum * (share - base_share) + c[j];
    return std::exp(sum) - zero_degC_K;
}

} // namespace siphonwright
