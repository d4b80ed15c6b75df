#include "app/canvas/snap.h"

#include <QCoreApplication>

#include <cmath>

/// The lines that a place can be snapped to.
namespace siphonwright {
namespace {

/// Plumb as the elevation shows it, and how long its unit is there.
struct FlatUp {
    Vec2 way;
    double share = 0;
};

std::optional<FlatUp> flatUp(const Plumb& plumb)
{
    constexpr double least = 0.2; // seen nearly from above there is no level to be seen
    const double share = std::hypot(plumb.up().x, plumb.up().z);
    if (share < least)
        return std::nullopt;
    return FlatUp{{plumb.up().x / share, plumb.up().z / share}, share};
}

Vec2 levelWay(const FlatUp& up)
{
    return {up.way.z, -up.way.x};
}

/// The place at a depth that is as high as another, as near to it as can be.
Vec2 levelWith(Vec3 with, const Plumb& plumb, const FlatUp& up, double depth_mm)
{
    const double over_mm = plumb.height(with) - plumb.height({with.x, depth_mm, with.z});
    return {with.x + up.way.x * over_mm / up.share, with.z + up.way.z * over_mm / up.share};
}

} // namespace

void addLevelAndPlumb(SnapScene& scene, Vec3 with, const Plumb& plumb, double depth_mm)
{
    const std::optional<FlatUp> up = flatUp(plumb);
    if (!up)
        return;
    scene.lines.emplace_back(SnapKind::level, levelWith(with, plumb, *up, depth_mm), levelWay(*up),
                             QCoreApplication::translate("Snap", "level"));
    scene.lines.emplace_back(SnapKind::plumb, Vec2{with.x, with.z}, up->way,
                             QCoreApplication::translate("Snap", "plumb"));
}

void addRise(SnapScene& scene, Vec3 from, double slope, const Plumb& plumb, double depth_mm,
             const QString& word)
{
    const std::optional<FlatUp> up = flatUp(plumb);
    if (!up || !(slope > 0 && slope < up->share))
        return;
    for (const double way : {slope, -slope}) {
        SnapRise rise;
        rise.from = from;
        rise.slope = way;
        rise.plumb = plumb;
        rise.depth_mm = depth_mm;
        rise.word = word;
        scene.rises.push_back(rise);
    }
}

void addTangent(SnapScene& scene, Vec3 before, Vec3 from, const QString& word)
{
    const double mm = std::hypot(from.x - before.x, from.z - before.z);
    if (!(mm > 0.01))
        return;
    scene.lines.emplace_back(SnapKind::tangent, Vec2{from.x, from.z},
                             Vec2{(from.x - before.x) / mm, (from.z - before.z) / mm}, word,
                             SnapLine::Reach::ray);
}

void addHeightLimit(SnapScene& scene, double height_mm, const Plumb& plumb, double depth_mm,
                    const QString& word)
{
    const std::optional<FlatUp> up = flatUp(plumb);
    if (!up)
        return;
    const double over_mm = height_mm - plumb.height({0, depth_mm, 0});
    scene.lines.emplace_back(SnapKind::limit,
                             Vec2{up->way.x * over_mm / up->share, up->way.z * over_mm / up->share},
                             levelWay(*up), word, SnapLine::Reach::endless);
}

} // namespace siphonwright
