#pragma once

#include <cmath>

/// Points and directions.
///
/// Axes of every drawing, once and for all (millimetres):
///   x  along the engine, to the right on the screen
///   y  across the engine, away from the viewer
///   z  up from the datum (frame rail or floor), square to the engine
/// The viewer looks along +y. Example: a port at {250, 40, 310} is 250 mm right of the origin, 40 mm
/// behind the drawing plane and 310 mm above the datum. Heights are never read from z: they are taken
/// along plumb (plumb.h), which equals z only when nothing is tilted.
namespace siphonwright {

/// A point or direction in the side elevation (mm).
struct Vec2 {
    double x = 0;
    double z = 0;
    friend bool operator==(const Vec2&, const Vec2&) = default;
};

/// A point or direction in space (mm).
struct Vec3 {
    double x = 0;
    double y = 0;
    double z = 0;
    friend bool operator==(const Vec3&, const Vec3&) = default;
};

constexpr Vec3 operator+(Vec3 a, Vec3 b)
{
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
constexpr Vec3 operator-(Vec3 a, Vec3 b)
{
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
constexpr Vec3 operator*(Vec3 a, double k)
{
    return {a.x * k, a.y * k, a.z * k};
}
constexpr double dot(Vec3 a, Vec3 b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
constexpr Vec3 cross(Vec3 a, Vec3 b)
{
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(Vec3 a)
{
    return std::sqrt(dot(a, a));
}
inline double distance(Vec3 a, Vec3 b)
{
    return length(b - a);
}
/// Unit vector along a; the zero vector stays zero.
inline Vec3 unit(Vec3 a)
{
    const double n = length(a);
    return n > 0 ? a * (1 / n) : Vec3{};
}

/// Unit vector from two angles in degrees: azimuth in plan from +x towards +y, elevation above the xy plane.
/// direction(0, 0) points right, (180, 0) left, (90, 0) away from the viewer, (0, 90) up.
inline Vec3 direction(double azimuth_deg, double elevation_deg)
{
    constexpr double rad = 3.14159265358979323846 / 180;
    const double a = azimuth_deg * rad;
    const double e = elevation_deg * rad;
    return {std::cos(e) * std::cos(a), std::cos(e) * std::sin(a), std::sin(e)};
}

} // namespace siphonwright
