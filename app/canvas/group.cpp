#include "app/canvas/group.h"

#include "app/canvas/part_names.h"
#include "app/canvas/sockets.h"

#include "core/sketch/group_edits.h"

#include <QCoreApplication>

#include <algorithm>

namespace siphonwright {
namespace {

struct CaughtBy {
    Vec2 low;
    Vec2 high;
    bool holds(Vec2 p) const { return p.x >= low.x && p.x <= high.x && p.z >= low.z && p.z <= high.z; }
    bool holds(const PartBox& box) const { return holds(box.low) && holds(box.high); }
    bool holds(const std::vector<Vec2>& outline) const
    {
        return !outline.empty() &&
               std::all_of(outline.begin(), outline.end(), [this](Vec2 p) { return holds(p); });
    }
};

void catchHose(const ResolvedHose& resolved, const Projection& view, const CaughtBy& band,
               std::vector<PartRef>& out)
{
    const auto flat = [&view](Vec3 p) { return view.flat(p); };
    const Hose& hose = *resolved->hose;
    const bool starts = band.holds(flat(resolved->from.stop));
    const bool ends = band.holds(flat(resolved->to.stop));
    const bool points = std::all_of(hose.points.begin(), hose.points.end(),
                                    [&](const RoutePoint& point) { return band.holds(flat(point.at)); });
    if (starts && ends && points) {
        out.push_back({PartKind::hose, hose.id, 0});
        return;
    }
    if (starts && !hose.from.connected())
        out.push_back({PartKind::hose_end, hose.id, 0});
    for (std::size_t i = 0; i < hose.points.size(); ++i)
        if (band.holds(flat(hose.points[i].at)))
            out.push_back({PartKind::hose_point, hose.id, i});
    if (ends && !hose.to.connected())
        out.push_back({PartKind::hose_end, hose.id, 1});
    if (resolved->path.line.empty())
        return;
    for (std::size_t i = 0; i < hose.parts.size(); ++i)
        if (band.holds(flat(alongHose(*resolved, hose.parts[i].along_mm))))
            out.push_back({PartKind::inline_part, hose.id, i});
    for (std::size_t i = 0; i < hose.clips_mm.size(); ++i)
        if (band.holds(flat(alongHose(*resolved, hose.clips_mm[i]))))
            out.push_back({PartKind::clip, hose.id, i});
}

bool catchesFromTheEnd(const Canvas& canvas, const PartRef& part, const CaughtBy& band)
{
    if (const Heater* heater = part.kind == PartKind::heater ? canvas.sketch().heater(part.id) : nullptr)
        return band.holds(bodyOf(*heater, canvas.view()));
    if (part.kind == PartKind::engine || part.kind == PartKind::area)
        return band.holds(outlineSeen(canvas, part));
    const std::optional<Vec2> at = placeOf(canvas, part);
    return at && band.holds(*at);
}

} // namespace

std::vector<PartRef> partsWithin(const Canvas& canvas, Vec2 corner, Vec2 opposite)
{
    const Sketch& sketch = canvas.sketch();
    const CaughtBy band = {{std::min(corner.x, opposite.x), std::min(corner.z, opposite.z)},
                           {std::max(corner.x, opposite.x), std::max(corner.z, opposite.z)}};
    std::vector<PartRef> out;
    const auto add = [&](const PartRef& part) {
        if (canvas.view().isEnd()) {
            if (catchesFromTheEnd(canvas, part, band))
                out.push_back(part);
            return;
        }
        const std::optional<PartBox> box = boxOf(sketch, part);
        if (box && band.holds(*box))
            out.push_back(part);
    };
    if (sketch.engine) {
        add({PartKind::engine, {}, 0});
        add({PartKind::thermostat, {}, 0});
    }
    if (sketch.tank && band.holds(bodyOf(*sketch.tank, canvas.view())))
        out.push_back({PartKind::tank, {}, 0});
    for (const Port& port : sketch.ports)
        add({PartKind::port, port.id, 0});
    for (const Heater& heater : sketch.heaters)
        add({PartKind::heater, heater.id, 0});
    for (const ResolvedHose& hose : canvas.layout().hoses)
        catchHose(hose, canvas.view(), band, out);
    for (const Shared<Area>& area : sketch.areas)
        add({PartKind::area, area->id, 0});
    return out;
}

QString nameOfParts(const Sketch& sketch, const std::vector<PartRef>& parts)
{
    if (parts.size() == 1)
        return nameOfPart(sketch, parts.front());
    return QCoreApplication::translate("Canvas", "%1 parts").arg(parts.size());
}

std::vector<Vec2> stillNeighbours(const Sketch& start, const std::vector<PartRef>& moving)
{
    constexpr double away_mm = 1000; // any step shows what moves
    Sketch moved = start;
    move(moved, moving, {away_mm, 0, away_mm});
    const std::vector<Socket> before = socketsOf(start);
    const std::vector<Socket> after = socketsOf(moved);
    std::vector<Vec2> out;
    for (std::size_t i = 0; i < std::min(before.size(), after.size()); ++i)
        if (before[i].opening == after[i].opening)
            out.push_back({before[i].opening.x, before[i].opening.z});
    return out;
}

} // namespace siphonwright
