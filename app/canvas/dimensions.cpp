#include "app/canvas/dimensions.h"

#include "app/canvas/hit.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

QString volume(const Canvas& canvas, double ml)
{
    return inWords(ml, Unit::ml, canvas.units());
}

/// Slopes to the points before and after, in the direction of flow.
void addSlopes(const Canvas& canvas, const PartRef& part, QStringList& out)
{
    const ResolvedHose* hose = canvas.layout().hose(part.id);
    const Hose* drawn = canvas.sketch().hose(part.id);
    if (!hose || !drawn)
        return;
    std::vector<Vec3> line = {(*hose)->from.stop};
    for (const RoutePoint& point : drawn->points)
        line.push_back(point.at);
    line.push_back((*hose)->to.stop);
    std::size_t self = part.index + 1;
    if (part.kind == PartKind::hose_end)
        self = part.index == 0 ? 0 : line.size() - 1;
    if (self >= line.size())
        return;
    if (self > 0)
        out.append(tr("Before: %1").arg(slopeBetween(canvas, line[self - 1], line[self])));
    if (self + 1 < line.size())
        out.append(tr("After: %1").arg(slopeBetween(canvas, line[self], line[self + 1])));
}

/// How far a heater's top is under the jacket, against what the rule asks for.
void addDrop(const Canvas& canvas, const PartRef& part, QStringList& out)
{
    const std::optional<JacketHeights>& jacket = canvas.layout().jacket;
    for (const HeaterHeights& heater : canvas.layout().heaters) {
        const bool meant = part.kind == PartKind::heater ? heater.id == part.id
                                                         : ownerOf(part).kind == PartKind::jacket ||
                                                               ownerOf(part).kind == PartKind::engine;
        if (!jacket || !meant)
            continue;
        const double drop_mm = jacket->lowest_mm - heater.body_top_mm;
        const Rule* rule = ruleById("heater-drop");
        const Heater* entered = canvas.sketch().heater(heater.id);
        std::optional<double> limit = rule ? limitsOf(*rule, canvas.sketch()).caution : std::nullopt;
        if (entered && entered->manual_min_drop_mm.known())
            limit = entered->manual_min_drop_mm.value;
        if (limit)
            out.append(tr("Drop under the jacket %1, at least %2")
                           .arg(canvas.length(drop_mm), canvas.length(*limit)));
        else
            out.append(tr("Drop under the jacket %1").arg(canvas.length(drop_mm)));
    }
}

void addPlaceAlong(const Canvas& canvas, const PartRef& part, QStringList& out)
{
    const Hose* hose = canvas.sketch().hose(part.id);
    if (!hose)
        return;
    if (part.kind == PartKind::clip && part.index < hose->clips_mm.size())
        out.append(tr("%1 along the hose").arg(canvas.length(hose->clips_mm[part.index])));
    if (part.kind == PartKind::inline_part && part.index < hose->parts.size())
        out.append(tr("%1 along the hose").arg(canvas.length(hose->parts[part.index].along_mm)));
}

/// What the side elevation does not show: y, and the true length of a hose that it makes longer.
void addDepth(const Canvas& canvas, const PartRef& part, Vec3 at, QStringList& out)
{
    out.append(tr("Across %1").arg(canvas.length(at.y)));
    const PartRef owner = ownerOf(part);
    if (const ResolvedHose* hose = owner.kind == PartKind::hose ? canvas.layout().hose(owner.id) : nullptr)
        out.append(tr("Length of the hose %1").arg(canvas.length((*hose)->length_mm)));
}

} // namespace

QString slopeBetween(const Canvas& canvas, Vec3 from, Vec3 to)
{
    constexpr double level = 0.001; // 1 in 1000: nobody can see or set it
    constexpr double steep = 0.999;
    const double run_mm = distance(from, to);
    if (run_mm <= 0)
        return tr("no length");
    const Plumb& plumb = canvas.layout().plumb;
    const double slope = (plumb.height(to) - plumb.height(from)) / run_mm;
    if (std::abs(slope) < level)
        return tr("level");
    const QString way = slope > 0 ? tr("rises") : tr("falls");
    if (std::abs(slope) > steep)
        return tr("%1 plumb").arg(way);
    return tr("%1 %2").arg(way, inWords(std::abs(slope), Unit::slope, canvas.units()));
}

QStringList trapsOf(const Canvas& canvas, const Profile& profile)
{
    QStringList out;
    const auto high =
        std::max_element(profile.high_points.begin(), profile.high_points.end(),
                         [](const HighPoint& a, const HighPoint& b) { return a.height_mm < b.height_mm; });
    if (high != profile.high_points.end())
        out.append(tr("Hump %1, holds %2 of air")
                       .arg(canvas.length(high->height_mm), volume(canvas, high->trapped_ml)));
    const auto dip = std::max_element(profile.dips.begin(), profile.dips.end(),
                                      [](const Dip& a, const Dip& b) { return a.depth_mm < b.depth_mm; });
    if (dip != profile.dips.end())
        out.append(tr("Dip %1, holds %2").arg(canvas.length(dip->depth_mm), volume(canvas, dip->held_ml)));
    return out;
}

QStringList dimensionsOf(const Canvas& canvas, const PartRef& part)
{
    QStringList out;
    const PartRef owner = ownerOf(part);
    if (part.kind == PartKind::inline_part || part.kind == PartKind::clip)
        addPlaceAlong(canvas, part, out);
    const std::optional<Vec3> at = positionOf(canvas.sketch(), part);
    if (at)
        out.append(tr("Height %1").arg(canvas.length(canvas.layout().plumb.height(*at))));
    if (at && canvas.view().isEnd())
        addDepth(canvas, part, *at, out);
    if (part.kind == PartKind::hose_point || part.kind == PartKind::hose_end)
        addSlopes(canvas, part, out);
    if (part.kind == PartKind::heater)
        if (const Heater* heater = canvas.sketch().heater(part.id); heater && heater->tilt_deg != 0)
            out.append(tr("Tilt %1").arg(inWords(heater->tilt_deg, Unit::degree, canvas.units())));
    addDrop(canvas, part, out);
    if (const ResolvedHose* hose = owner.kind == PartKind::hose ? canvas.layout().hose(owner.id) : nullptr)
        out += trapsOf(canvas, hose->profile);
    return out;
}

} // namespace siphonwright
