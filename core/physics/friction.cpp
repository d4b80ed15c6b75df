#include "core/physics/friction.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace siphonwright {

double frictionFactor(double reynolds, double relative_roughness)
{
    if (reynolds < 1)
        return 64 / reynolds;
    const double rough = 0.27 * relative_roughness;
    const double a = std::pow(2.457 * std::log(1 / (std::pow(7 / reynolds, 0.9) + rough)), 16);
    const double b = std::pow(37530 / reynolds, 16);
    return 8 * std::pow(std::pow(8 / reynolds, 12) + std::pow(a + b, -1.5), 1.0 / 12);
}

double curvedPipeRatio(double reynolds, double radius_over_bore)
{
    constexpr double straight_to = 11.6;
    const double dean = reynolds * std::sqrt(0.5 / radius_over_bore);
    if (dean <= straight_to)
        return 1;
    return 1 / (1 - std::pow(1 - std::pow(straight_to / dean, 0.45), 1 / 0.45));
}

double turbulentBendExcess(double friction_factor, double angle_rad, double radius_over_bore)
{
    const double angle = std::min(angle_rad, std::numbers::pi);
    const double half = std::sin(angle / 2);
    const double turning = (0.10 + 2.4 * friction_factor) * half;
    const double tightness = std::pow(radius_over_bore, 4 * angle / std::numbers::pi);
    const double excess = turning + 6.6 * friction_factor * (std::sqrt(half) + half) / tightness;
    return angle_rad > angle ? excess * angle_rad / angle : excess;
}

double bendExcess(double reynolds, double angle_rad, double radius_over_bore)
{
    const double laminar_reynolds = std::min(reynolds, bend_laminar_to);
    const double laminar = (curvedPipeRatio(laminar_reynolds, radius_over_bore) - 1) * 64 / laminar_reynolds *
                           angle_rad * radius_over_bore;
    if (reynolds <= bend_laminar_to)
        return laminar;
    const double turbulent = turbulentBendExcess(frictionFactor(reynolds, 0), angle_rad, radius_over_bore);
    return handOver(reynolds, bend_laminar_to, laminar, turbulent);
}

double contractionLoss(double reynolds, double bore_ratio)
{
    const double opening = bore_ratio * bore_ratio;
    const double laminar =
        (1.2 + 160 / std::min(reynolds, contraction_laminar_to)) * (1 / (opening * opening) - 1);
    if (reynolds <= contraction_laminar_to)
        return laminar;
    const double turbulent = (0.6 + 0.48 * frictionFactor(reynolds, 0)) / opening * (1 / opening - 1);
    return handOver(reynolds, contraction_laminar_to, laminar, turbulent);
}

double expansionLoss(double reynolds, double bore_ratio)
{
    const double opening = bore_ratio * bore_ratio;
    const double laminar = 2 * (1 - opening * opening);
    if (reynolds <= expansion_laminar_to)
        return laminar;
    const double turbulent = (1 + 0.8 * frictionFactor(reynolds, 0)) * (1 - opening) * (1 - opening);
    return handOver(reynolds, expansion_laminar_to, laminar, turbulent);
}

double handOver(double reynolds, double laminar_to, double last_laminar, double turbulent)
{
    const double change = std::pow(reynolds / laminar_to, 1.5);
    return std::clamp(turbulent, last_laminar / change, last_laminar * change);
}

} // namespace siphonwright
