#include "app/canvas/hit.h"

#include "app/canvas/dimension_ends.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/plane.h"
#include "app/drawing/balloon_places.h"

#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

constexpr double handle_reach_px = 9;
constexpr double edge_reach_px = 6;

std::optional<int> balloonAt(const Canvas& canvas, QPointF screen)
{
    const drawing::Style style = canvas.style();
    if (!style.balloons)
        return std::nullopt;
    const std::vector<QPointF>& places = canvas.balloons().places;
    const double radius_px =
        std::max(handle_reach_px * canvas.reach, drawing::balloonRadius(style) * canvas.viewport.zoom());
    for (std::size_t i = 0; i < places.size(); ++i)
        if (distanceBetween(canvas.viewport.transform().map(places[i]), screen) <= radius_px)
            return static_cast<int>(i);
    return std::nullopt;
}

std::optional<Hit> handleAt(const Canvas& canvas, QPointF screen)
{
    std::optional<Hit> best;
    double best_px = handle_reach_px * canvas.reach;
    const PartRef& selected = canvas.selection.part();
    const Vec2 at = canvas.viewport.toDrawing(screen);
    const double near_mm = 2 * handle_reach_px * canvas.reach / canvas.viewport.zoom();
    HandleWish near_by;
    near_by.place = [&](Vec2 place) {
        return std::abs(place.x - at.x) <= near_mm && std::abs(place.z - at.z) <= near_mm;
    };
    for (const Handle& handle : handlesOf(canvas, near_by)) {
        // What is selected is taken rather than what lies just as near to it.
        const double favour_px = belongTogether(handle.part, selected) ? 2 : 0;
        const double px = distanceBetween(canvas.viewport.toScreen(handle.at), screen) - favour_px;
        if (px < best_px) {
            best = Hit{handle.part, handle.turns, -1, std::nullopt};
            best_px = px;
        }
    }
    return best;
}

/// Whether a line may pass within reach of a point: quicker to say than how near it does.
bool mayReach(const Projection& view, const Centreline& line, Vec2 at, double reach_mm)
{
    return std::any_of(line.pieces().begin(), line.pieces().end(), [&](const Piece& piece) {
        const double far_mm = piece.length_mm + reach_mm;
        const Vec2 start = view.flat(piece.start);
        return std::abs(start.x - at.x) <= far_mm && std::abs(start.z - at.z) <= far_mm;
    });
}

std::optional<Hit> hoseAt(const Canvas& canvas, QPointF screen)
{
    std::optional<Hit> best;
    double best_mm = 0;
    const double zoom = canvas.viewport.zoom();
    for (const ResolvedHose& hose : canvas.layout().hoses) {
        const Vec2 at = canvas.viewport.toDrawing(screen);
        const double reach_mm = std::max(hose->outsideDiameter() / 2, edge_reach_px * canvas.reach / zoom);
        if (!mayReach(canvas.view(), hose->path.line, at, reach_mm))
            continue;
        const auto nearest = nearestSeen(canvas.view(), hose->path.line, at);
        if (nearest.distance_mm > reach_mm || (best && nearest.distance_mm >= best_mm))
            continue;
        best = Hit{{PartKind::hose, hose.id(), 0}, false, -1, nearest.s};
        best_mm = nearest.distance_mm;
    }
    return best;
}

std::optional<Hit> bodyAt(const Canvas& canvas, Vec2 at)
{
    const Sketch& sketch = canvas.sketch();
    for (const Heater& heater : sketch.heaters)
        if (isInside(bodyOf(heater, canvas.view()), at))
            return Hit{{PartKind::heater, heater.id, 0}, false, -1, std::nullopt};
    if (sketch.tank && isInside(bodyOf(*sketch.tank, canvas.view()), at))
        return Hit{{PartKind::tank, {}, 0}, false, -1, std::nullopt};
    return std::nullopt;
}

bool onEdge(const std::vector<Vec2>& outline, Vec2 at, double reach_mm)
{
    return outline.size() > 1 && nearestEdge(outline, at).distance_mm <= reach_mm;
}

std::optional<Hit> outlineAt(const Canvas& canvas, Vec2 at)
{
    const Sketch& sketch = canvas.sketch();
    const double reach_mm = edge_reach_px * canvas.reach / canvas.viewport.zoom();
    const auto seen = [&](PartKind kind, const Id& id = {}) { return outlineSeen(canvas, {kind, id, 0}); };
    if (sketch.engine && onEdge(seen(PartKind::jacket), at, reach_mm))
        return Hit{{PartKind::jacket, {}, 0}, false, -1, std::nullopt};
    for (const Shared<Area>& area : sketch.areas)
        if (const std::vector<Vec2> outline = seen(PartKind::area, area->id);
            isInside(outline, at) || onEdge(outline, at, reach_mm))
            return Hit{{PartKind::area, area->id, 0}, false, -1, std::nullopt};
    if (const std::vector<Vec2> outline = seen(PartKind::engine);
        isInside(outline, at) || onEdge(outline, at, reach_mm))
        return Hit{{PartKind::engine, {}, 0}, false, -1, std::nullopt};
    if (sketch.ground_z_mm && std::abs(*sketch.ground_z_mm - at.z) <= reach_mm)
        return Hit{{PartKind::ground, {}, 0}, false, -1, std::nullopt};
    return std::nullopt;
}

void addHoseParts(const Hose& hose, std::vector<PartRef>& out)
{
    out.push_back({PartKind::hose, hose.id, 0});
    out.push_back({PartKind::hose_end, hose.id, 0});
    for (std::size_t i = 0; i < hose.points.size(); ++i)
        out.push_back({PartKind::hose_point, hose.id, i});
    out.push_back({PartKind::hose_end, hose.id, 1});
    for (std::size_t i = 0; i < hose.parts.size(); ++i)
        out.push_back({PartKind::inline_part, hose.id, i});
    for (std::size_t i = 0; i < hose.clips_mm.size(); ++i)
        out.push_back({PartKind::clip, hose.id, i});
}

} // namespace

Hit hitTest(const Canvas& canvas, QPointF screen)
{
    if (const std::optional<int> finding = balloonAt(canvas, screen))
        return Hit{{}, false, *finding, std::nullopt};
    const Vec2 at = canvas.viewport.toDrawing(screen);
    if (const std::optional<Hit> hit = handleAt(canvas, screen))
        return *hit;
    // Dimensions are drawn in the side elevation alone.
    if (const std::optional<PartRef> dimension =
            canvas.view().isEnd() ? std::nullopt : dimensionAt(canvas, screen))
        return Hit{*dimension, false, -1, std::nullopt};
    if (const std::optional<Hit> hit = hoseAt(canvas, screen))
        return *hit;
    if (const std::optional<Hit> hit = bodyAt(canvas, at))
        return *hit;
    if (const std::optional<Hit> hit = outlineAt(canvas, at))
        return *hit;
    return photoAt(canvas, at);
}

std::optional<Vec2> placeOf(const Canvas& canvas, const PartRef& part)
{
    HandleWish own;
    own.hose = [owner = ownerOf(part)](const Hose& hose) { return hose.id == owner.id; };
    for (const Handle& handle : handlesOf(canvas, own))
        if (handle.part == part && !handle.turns)
            return handle.at;
    if (part.kind == PartKind::hose) {
        const ResolvedHose* hose = canvas.layout().hose(part.id);
        if (hose && !(*hose)->path.line.empty()) {
            const Vec3 middle = (*hose)->path.line.at((*hose)->path.line.length() / 2);
            return canvas.view().flat(middle);
        }
    }
    if (part.kind == PartKind::dimension && !canvas.view().isEnd())
        return placeOfDimension(canvas, part.id);
    if (part.kind == PartKind::ground && canvas.sketch().ground_z_mm)
        return Vec2{canvas.viewport.toDrawing(canvas.area.center()).x, *canvas.sketch().ground_z_mm};
    if (const std::vector<Vec2> outline = outlineSeen(canvas, part); !outline.empty())
        return outline[std::min(part.index, outline.size() - 1)];
    if (const std::optional<Vec3> at = positionOf(canvas.sketch(), part))
        return canvas.view().flat(*at);
    return std::nullopt;
}

std::vector<PartRef> walkOrder(const Sketch& sketch, const PartRef& selected)
{
    std::vector<PartRef> out;
    if (ownerOf(selected).kind != selected.kind)
        if (const std::vector<Vec2>* outline = outlineOf(sketch, selected)) {
            for (std::size_t i = 0; i < outline->size(); ++i)
                out.push_back({selected.kind, selected.id, i});
            return out;
        }
    if (sketch.engine) {
        out.push_back({PartKind::engine, {}, 0});
        out.push_back({PartKind::jacket, {}, 0});
        if (sketch.engine->thermostat)
            out.push_back({PartKind::thermostat, {}, 0});
    }
    if (sketch.tank)
        out.push_back({PartKind::tank, {}, 0});
    for (const Port& port : sketch.ports)
        out.push_back({PartKind::port, port.id, 0});
    for (const Heater& heater : sketch.heaters)
        out.push_back({PartKind::heater, heater.id, 0});
    for (const Shared<Hose>& hose : sketch.hoses)
        addHoseParts(*hose, out);
    for (const Shared<Area>& area : sketch.areas)
        out.push_back({PartKind::area, area->id, 0});
    if (sketch.ground_z_mm)
        out.push_back({PartKind::ground, {}, 0});
    for (const Dimension& dimension : sketch.dimensions)
        out.push_back({PartKind::dimension, dimension.id, 0});
    if (sketch.photo)
        out.push_back({PartKind::photo, {}, 0});
    return out;
}

std::size_t walkLength(const Sketch& sketch)
{
    std::size_t out = sketch.ports.size() + sketch.heaters.size() + sketch.areas.size() +
                      sketch.dimensions.size() + (sketch.tank ? 1 : 0) + (sketch.ground_z_mm ? 1 : 0) +
                      (sketch.photo ? 1 : 0);
    if (sketch.engine)
        out += sketch.engine->thermostat ? 3 : 2; // with its jacket
    for (const Shared<Hose>& hose : sketch.hoses)
        out += 3 + hose->points.size() + hose->parts.size() + hose->clips_mm.size(); // itself and its ends
    return out;
}

} // namespace siphonwright
