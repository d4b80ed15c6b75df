#pragma once

#include <numbers>

/// Exact by definition: standard gravity (3rd CGPM, 1901), the ice point of the Celsius scale (SI brochure,
/// 2019), and the ratios of the units that core counts in.
namespace siphonwright {

inline constexpr double standard_gravity_m_per_s2 = 9.80665;
inline constexpr double zero_degC_in_K = 273.15;

inline constexpr double mm_per_m = 1000;
inline constexpr double m_per_mm = 1e-3;
inline constexpr double mm3_per_ml = 1000;
inline constexpr double ml_per_mm3 = 1e-3;
inline constexpr double mm_per_inch = 25.4;
inline constexpr double mm_per_foot = 304.8;
inline constexpr double s_per_min = 60;
inline constexpr double s_per_h = 3600;
inline constexpr double s_per_day = 86400;
inline constexpr double J_per_kWh = 3.6e6;
inline constexpr double rad_per_deg = std::numbers::pi / 180;

} // namespace siphonwright
