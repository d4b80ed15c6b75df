#include "core/physics/coolant.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double fit_centre = 0.35; ///< volume fraction the fit is centred on

/// ln(T / K) as a polynomial of (volume fraction - fit_centre), lowest power first.
using Fit = std::array<double, 6>;
constexpr Fit freezing_ethylene = {5.534468, -0.3574293, -0.6535113, -0.9039166, 1.048048, 4.622116};
constexpr Fit freezing_propylene = {5.546103, -0.326277, -0.6666873, -0.8800598, -1.071417, -1.875782};

} // namespace

std::optional<double> freezingPoint(CoolantBase base, double volume_percent)
{
    if (!(volume_percent >= 0 && volume_percent <= largest_known_glycol_percent))
        return std::nullopt;
    if (volume_percent == 0)
        return 0;
    const Fit& fit = base == CoolantBase::ethylene_glycol ? freezing_ethylene : freezing_propylene;
    const double x = volume_percent / 100 - fit_centre;
    double logarithm = 0;
    for (std::size_t j = fit.size(); j-- > 0;)
        logarithm = logarithm * x + fit[j];
    return std::min(0.0, std::exp(logarithm) - zero_degC_in_K);
}

} // namespace siphonwright
