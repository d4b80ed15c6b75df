#include "core/paperwork/one_lump.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {

double endsAt_degC(const OneLump& lump, double power_W, double air_degC)
{
    return air_degC + power_W / lump.loss_W_per_K;
}

double after_degC(const OneLump& lump, double power_W, double air_degC, double start_degC, double time_s)
{
    const double end_degC = endsAt_degC(lump, power_W, air_degC);
    return end_degC + (start_degC - end_degC) * std::exp(-time_s * lump.loss_W_per_K / lump.capacity_J_per_K);
}

std::optional<double> timeTo_s(const OneLump& lump, double power_W, const Warming& warming)
{
    if (warming.start_degC >= warming.target_degC)
        return 0;
    const double end_degC = endsAt_degC(lump, power_W, warming.air_degC);
    if (!(end_degC > warming.target_degC))
        return std::nullopt;
    return lump.capacity_J_per_K / lump.loss_W_per_K *
           std::log1p((warming.target_degC - warming.start_degC) / (end_degC - warming.target_degC));
}

std::optional<double> powerFor_W(const OneLump& lump, const Warming& warming, double time_s)
{
    if (!(std::isfinite(time_s) && time_s > 0))
        return std::nullopt;
    const double hold_W = lump.loss_W_per_K * (warming.target_degC - warming.air_degC);
    if (warming.start_degC >= warming.target_degC)
        return std::max(0.0, hold_W);
    // T_end less target is (target - start)/(exp(t K/C) - 1).
    const double over_K = (warming.target_degC - warming.start_degC) /
                          std::expm1(time_s * lump.loss_W_per_K / lump.capacity_J_per_K);
    return std::max(0.0, hold_W + lump.loss_W_per_K * over_K);
}

} // namespace siphonwright
