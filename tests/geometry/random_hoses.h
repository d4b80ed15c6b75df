#pragma once

#include "core/geometry/profile.h"

#include <cstdint>
#include <numbers>
#include <random>
#include <vector>

namespace siphonwright::test {

/// The same numbers on every machine: the standard distributions may differ between libraries.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    double between(double low, double high)
    {
        return low + (high - low) * (static_cast<double>(engine_() >> 11) * 0x1p-53);
    }
    std::size_t upTo(std::size_t most) { return static_cast<std::size_t>(engine_() % (most + 1)); }

private:
    std::mt19937_64 engine_;
};

inline std::vector<Corner> randomCorners(Dice& dice)
{
    std::vector<Corner> corners;
    const std::size_t count = 3 + dice.upTo(6);
    for (std::size_t i = 0; i < count; ++i) {
        Corner corner;
        corner.at = {dice.between(0, 900), dice.between(-200, 200), dice.between(-250, 250)};
        corner.radius_mm = dice.upTo(9) == 0 ? 0 : dice.between(5, 150);
        corners.push_back(corner);
    }
    return corners;
}

inline Path hose(const std::vector<Corner>& corners, double bore_mm)
{
    Path path;
    path.line = Centreline(corners);
    path.bores = {{0, path.line.length(), bore_mm}};
    return path;
}

/// A hose between two openings of smaller bore, with a length of other bore in it.
inline Path randomHose(Dice& dice)
{
    // One throw after the other: compilers evaluate arguments in different orders.
    const std::vector<Corner> corners = randomCorners(dice);
    Path path = hose(corners, dice.between(12, 50));
    const double end = path.line.length();
    const double from = end * dice.between(0.2, 0.5);
    const double to = end * dice.between(0.5, 0.8);
    const double bore = path.bores.front().bore_mm;
    path.bores = {{0, from, bore}, {from, to, dice.between(12, 50)}, {to, end, bore}};
    path.bores.push_back({end, end, bore * dice.between(0.6, 1)});
    return path;
}

inline Plumb randomPlumb(Dice& dice)
{
    Attitude attitude;
    attitude.front_at_left = dice.upTo(1) == 0;
    attitude.heading_deg = 90 * static_cast<double>(dice.upTo(3));
    attitude.mount_angle_deg = dice.between(-5, 5);
    attitude.lean_deg = dice.between(-20, 20);
    attitude.grade.along_percent = dice.between(-8, 8);
    attitude.grade.across_percent = dice.between(-4, 4);
    return Plumb(attitude);
}

} // namespace siphonwright::test
