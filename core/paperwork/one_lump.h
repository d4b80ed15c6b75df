#pragma once

#include <optional>

/// An engine as one lump of heat that a steady power warms and the air cools:
///
///     C dT/dt = P - K (T - T_air),
///     T(t) = T_end + (T_start - T_end) exp(-t K/C),  T_end = T_air + P/K.
///
/// That is exact for the mean of an engine of several parts that lose heat in proportion to what they hold,
/// whatever flows between them; an engine's swept part and its rest are such parts (core/physics/warm_up.h).
namespace siphonwright {

struct OneLump {
    double capacity_J_per_K = 0;
    double loss_W_per_K = 0;
};

/// What is warmed from where to where. degC.
struct Warming {
    double air_degC = 0;
    double start_degC = 0;
    double target_degC = 0;
};

/// Temperature that a power ends at. Both members of the lump are over 0.
double endsAt_degC(const OneLump& lump, double power_W, double air_degC);

/// Temperature after a time.
double after_degC(const OneLump& lump, double power_W, double air_degC, double start_degC, double time_s);

/// Time to reach the target; 0 if the start is there already; nothing where the power never reaches it.
std::optional<double> timeTo_s(const OneLump& lump, double power_W, const Warming& warming);

/// Power that reaches the target in exactly this time; nothing for a time that is not over 0. Where the start
/// is at the target or over it: what holds the target, and never under 0.
std::optional<double> powerFor_W(const OneLump& lump, const Warming& warming, double time_s);

} // namespace siphonwright
