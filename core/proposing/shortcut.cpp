#include "core/proposing/shortcut.h"

#include "core/checks/clearance.h"
#include "core/geometry/prism.h"
#include "core/layout/layout.h"
#include "core/layout/route.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double every_mm = 40; ///< places looked at on a straight

bool depthKnown(const Area& area)
{
    return area.y_from_mm && area.y_to_mm;
}

} // namespace

Shortcut::Shortcut(const Sketch& sketch, const Hose& hose, const RouteEnd& from, const RouteEnd& to,
                   double radius_mm)
    : plumb_(plumbOf(sketch)), from_(from), to_(to), radius_mm_(radius_mm)
{
    half_bore_mm_ = hose.bore_mm.value.value_or(usual_bore_mm) / 2;
    half_outside_mm_ = half_bore_mm_ + hose.wall_mm + hose.insulation_mm;
    const std::optional<double> ground_mm = cautionOf("ground-clearance", sketch);
    if (ground_mm && sketch.ground_z_mm)
        lowest_mm_ = plumb_.height({0, 0, *sketch.ground_z_mm}) + *ground_mm;
    Sketch tank_alone;
    tank_alone.tank = sketch.tank;
    const CoolantLevels levels = resolve(tank_alone, plumb_).levels;
    const std::optional<double> over_mm = cautionOf("above-coolant-level", sketch);
    const std::optional<double>& level_mm = levels.cold_min_mm ? levels.cold_min_mm : levels.cold_full_mm;
    if (over_mm && level_mm)
        highest_mm_ = *level_mm + *over_mm;
    if (switchedOff("keep-clear", sketch))
        return;
    const Limits keep_clear = limitsOf(*ruleById("keep-clear"), sketch);
    for (const Shared<Area>& area : sketch.areas) {
        // Where the depth is not known, being too near is advice.
        if (!depthKnown(*area) || area->outline.empty())
            continue;
        Near near;
        near.area = &*area;
        near.clearance_mm = half_outside_mm_ + clearanceOf(*area, keep_clear);
        near.least = near.most = area->outline.front();
        for (const Vec2& corner : area->outline) {
            near.least = {std::min(near.least.x, corner.x), std::min(near.least.z, corner.z)};
            near.most = {std::max(near.most.x, corner.x), std::max(near.most.z, corner.z)};
        }
        near_.push_back(near);
    }
}

bool Shortcut::breaksAt(Vec3 p, double steep) const
{
    constexpr double to_be_sure_mm = 1;
    const double flat = std::sqrt(std::max(0.0, 1 - steep * steep));
    const double height_mm = plumb_.height(p);
    if (lowest_mm_ && height_mm - half_outside_mm_ * flat < *lowest_mm_ - to_be_sure_mm)
        return true;
    if (highest_mm_ && height_mm + half_bore_mm_ * flat > *highest_mm_ + to_be_sure_mm)
        return true;
    for (const Near& near : near_) {
        const double c = near.clearance_mm - to_be_sure_mm;
        if (p.x < near.least.x - c || p.x > near.most.x + c || p.z < near.least.z - c ||
            p.z > near.most.z + c)
            continue;
        const Prism prism{near.area->outline, std::min(*near.area->y_from_mm, *near.area->y_to_mm),
                          std::max(*near.area->y_from_mm, *near.area->y_to_mm)};
        if (distance(p, nearestIn(prism, p)) < c)
            return true;
    }
    return false;
}

bool Shortcut::breaks(const HoseWay& way) const
{
    Vec3 before = from_.stop;
    double taken_mm = 0; // by the bend at the start of the straight
    for (std::size_t i = 0; i <= way.points.size(); ++i) {
        const Vec3 after = i < way.points.size() ? way.points[i] : to_.stop;
        const Vec3 along = unit(after - before);
        double take_mm = 0;
        if (i < way.points.size()) {
            const Vec3 next = unit((i + 1 < way.points.size() ? way.points[i + 1] : to_.stop) - after);
            const double cosine = std::clamp(dot(along, next), -0.9999, 1.0);
            take_mm = radius_mm_ * std::sqrt((1 - cosine) / (1 + cosine));
        }
        const double straight_mm = distance(before, after) - taken_mm - take_mm;
        const double steep = plumb_.height(along);
        const int places = std::max(1, static_cast<int>(straight_mm / every_mm));
        for (int k = 0; straight_mm >= 0 && k <= places; ++k)
            if (breaksAt(before + along * (taken_mm + straight_mm * k / places), steep))
                return true;
        before = after;
        taken_mm = take_mm;
    }
    return false;
}

} // namespace siphonwright
