#include "app/canvas/snap_scene.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/checks/clearance.h"
#include "core/checks/rules.h"

#include <algorithm>
#include <cmath>

/// Limits of the rules as places to stop at: a part put there just passes.
namespace siphonwright {
namespace {

constexpr double spare_mm = 25; ///< own choice: what one likes to leave under the coolant's level
constexpr double spare_inch_mm = 25.4;

QString lengthText(const Sketch& sketch, double mm)
{
    const UnitSystem units = sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    return inWords(mm, Unit::mm, units);
}

/// A rule's limit from where on it is a fault; nothing when it is switched off or has none.
std::optional<double> limitOf(const Sketch& sketch, const char* id)
{
    const auto off = [&](const LimitChange& change) { return change.off && change.rule == id; };
    const Rule* rule = ruleById(id);
    if (!rule || std::any_of(sketch.limits.begin(), sketch.limits.end(), off))
        return std::nullopt;
    const Limits limits = limitsOf(*rule, sketch);
    return limits.caution ? limits.caution : limits.stop;
}

/// Heights for something that reaches `over_mm` above its own place and `under_mm` below it.
void addHeights(SnapScene& scene, const Sketch& sketch, const Layout& layout, double over_mm, double under_mm,
                double depth_mm)
{
    const Plumb& plumb = layout.plumb;
    const std::optional<double> over_level = limitOf(sketch, "above-coolant-level");
    const CoolantLevels& levels = layout.levels;
    const std::optional<double> level_mm = levels.cold_min_mm ? levels.cold_min_mm : levels.cold_full_mm;
    if (over_level && level_mm) {
        const double spare = sketch.units == UnitChoice::inch ? spare_inch_mm : spare_mm;
        const double top_mm = *level_mm + *over_level - over_mm;
        addHeightLimit(scene, top_mm, plumb, depth_mm, tr("just under the coolant's level"));
        addHeightLimit(scene, top_mm - spare, plumb, depth_mm,
                       tr("%1 under the coolant's level").arg(lengthText(sketch, spare)));
    }
    const std::optional<double> over_ground = limitOf(sketch, "ground-clearance");
    if (over_ground && sketch.ground_z_mm)
        addHeightLimit(scene, plumb.height({0, 0, *sketch.ground_z_mm}) + *over_ground + under_mm, plumb,
                       depth_mm, tr("%1 over the ground").arg(lengthText(sketch, *over_ground)));
}

} // namespace

double leastCentrelineRadius(const Sketch& sketch, const Hose& hose)
{
    constexpr double usual_bore_mm = 19.05;
    const double bore_mm = hose.bore_mm.value.value_or(usual_bore_mm);
    const double inside_mm =
        hose.min_bend_radius_mm.value.value_or(limitOf(sketch, "bend-too-tight").value_or(0) * bore_mm);
    return inside_mm + bore_mm / 2 + hose.wall_mm;
}

void addHoseLimits(SnapScene& scene, const Sketch& sketch, const Layout& layout, const Hose& hose,
                   double depth_mm)
{
    constexpr double usual_bore_mm = 19.05;
    const double bore_mm = hose.bore_mm.value.value_or(usual_bore_mm);
    const double outside_mm = bore_mm / 2 + hose.wall_mm + hose.insulation_mm;
    addHeights(scene, sketch, layout, bore_mm / 2, outside_mm, depth_mm);
    const Rule* keep_clear = ruleById("keep-clear");
    if (!keep_clear)
        return;
    for (const Shared<Area>& area : sketch.areas) {
        const double clearance_mm = clearanceOf(*area, limitsOf(*keep_clear, sketch));
        const double away_mm = clearance_mm + outside_mm;
        const bool beside = area->y_from_mm && area->y_to_mm &&
                            (depth_mm < std::min(*area->y_from_mm, *area->y_to_mm) - away_mm ||
                             depth_mm > std::max(*area->y_from_mm, *area->y_to_mm) + away_mm);
        if (!beside)
            scene.clearances.emplace_back(
                area->outline, away_mm,
                tr("%1 clear of %2").arg(lengthText(sketch, clearance_mm), inWords(area->name)));
    }
}

void addHeaterLimits(SnapScene& scene, const Sketch& sketch, const Layout& layout, const Id& heater)
{
    const auto at = std::find_if(sketch.heaters.begin(), sketch.heaters.end(),
                                 [&](const Heater& one) { return one.id == heater; });
    const auto index = static_cast<std::size_t>(at - sketch.heaters.begin());
    if (at == sketch.heaters.end() || index >= layout.heaters.size())
        return;
    const double height_mm = layout.plumb.height(at->position);
    const double over_mm = layout.heaters[index].body_top_mm - height_mm;
    const double under_mm = height_mm - layout.heaters[index].body_bottom_mm;
    addHeights(scene, sketch, layout, over_mm, under_mm, at->position.y);
    std::optional<double> drop_mm = limitOf(sketch, "heater-drop");
    if (at->manual_min_drop_mm.known())
        drop_mm = at->manual_min_drop_mm.value;
    if (drop_mm && layout.jacket)
        addHeightLimit(scene, layout.jacket->lowest_mm - *drop_mm - over_mm, layout.plumb, at->position.y,
                       tr("top %1 under the jacket").arg(lengthText(sketch, *drop_mm)));
}

void addTrapLimits(SnapScene& scene, Vec3 before, Vec3 after, const Plumb& plumb, double depth_mm)
{
    const double a = plumb.height(before);
    const double b = plumb.height(after);
    addHeightLimit(scene, std::max(a, b), plumb, depth_mm, tr("just no hump"));
    addHeightLimit(scene, std::min(a, b), plumb, depth_mm, tr("just no dip"));
}

} // namespace siphonwright
