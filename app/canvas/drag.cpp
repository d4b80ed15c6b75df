#include "app/canvas/drag.h"

#include "app/canvas/dimension_ends.h"
#include "app/canvas/group.h"
#include "app/canvas/hit.h"
#include "app/canvas/part_names.h"
#include "app/canvas/sockets.h"

#include "core/quantity/constants.h"
#include "core/sketch/group_edits.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

std::optional<double> alongOf(const Sketch& sketch, const PartRef& part)
{
    const Hose* hose = liesAlongHose(part) ? sketch.hose(part.id) : nullptr;
    if (!hose)
        return std::nullopt;
    if (part.kind == PartKind::clip)
        return part.index < hose->clips_mm.size() ? std::optional(hose->clips_mm[part.index]) : std::nullopt;
    return part.index < hose->parts.size() ? std::optional(hose->parts[part.index].along_mm) : std::nullopt;
}

/// Drop a hose's end: on a port or nozzle it connects, elsewhere it lies open.
bool dropEnd(Sketch& sketch, const Drag& drag, const std::optional<Socket>& socket, const Projection& view,
             Vec2 at)
{
    const Hose* hose = sketch.hose(drag.part.id);
    if (!hose)
        return false;
    const HoseEnd& other = drag.part.index == 0 ? hose->to : hose->from;
    const bool taken_by_itself = socket && other.connected() && socket->sameAs(other);
    if (socket && !taken_by_itself)
        return connect(sketch, drag.part.id, drag.part.index, socket->end);
    HoseEnd open;
    const HoseEnd& was = drag.part.index == 0 ? hose->from : hose->to;
    const Vec3 before = was.connected() ? positionOf(drag.start, drag.part).value_or(Vec3{}) : was.open_at;
    open.open_at = view.at(at, view.depth(before));
    return connect(sketch, drag.part.id, drag.part.index, open);
}

/// Slide an in-line part or clip to the place on its hose that is nearest to the pointer.
bool slide(Sketch& sketch, const Layout& layout, const Projection& view, const Drag& drag, Vec2 to)
{
    const ResolvedHose* hose = layout.hose(drag.part.id);
    if (!hose || (*hose)->path.line.empty() || !drag.anchor_along)
        return false;
    const Route& route = **hose;
    const double s =
        std::clamp(nearestSeen(view, route.path.line, to).s, route.hose_from_mm, route.hose_to_mm);
    const double along_mm = std::round(s - route.hose_from_mm);
    return move(sketch, drag.part, {along_mm - *drag.anchor_along, 0, 0});
}

} // namespace

Drag beginDrag(Canvas& canvas, const PartRef& part, bool turns, Vec2 grabbed)
{
    Drag drag;
    drag.part = part;
    drag.turns = turns;
    if (!turns && canvas.selection.parts().size() > 1 && canvas.selection.contains(part))
        drag.parts = canvas.selection.parts();
    drag.start = canvas.sketch();
    canvas.hose_boxes = boxesOf(drag.start, canvas.hose_boxes);
    drag.hose_boxes = canvas.hose_boxes;
    drag.grabbed = grabbed;
    drag.anchor = placeOf(canvas, part).value_or(grabbed);
    if (turns)
        if (const std::optional<Vec3> centre = positionOf(canvas.sketch(), part))
            drag.anchor = canvas.view().flat(*centre);
    drag.anchor_along = alongOf(canvas.sketch(), part);
    drag.gesture = canvas.document.beginGesture();
    return drag;
}

namespace {

std::vector<Guide> dragAll(Canvas& canvas, const Drag& drag, const Pointer& pointer)
{
    const Vec2 raw = {drag.anchor.x + pointer.at.x - drag.grabbed.x,
                      drag.anchor.z + pointer.at.z - drag.grabbed.z};
    const SnapScene scene = canvas.view().isEnd()
                                ? SnapScene()
                                : sceneFor(stillNeighbours(drag.start, drag.parts), canvas.layout().plumb);
    const Snapped snapped = canvas.snap(raw, scene, pointer);
    const Vec3 delta = canvas.view().move({snapped.at.x - drag.anchor.x, snapped.at.z - drag.anchor.z});
    canvas.apply(
        QCoreApplication::translate("Canvas", "Move %1").arg(nameOfParts(drag.start, drag.parts)),
        [&](Sketch& sketch) {
            sketch = drag.start;
            move(sketch, drag.parts, delta);
        },
        drag.gesture);
    return snapped.guides;
}

} // namespace

std::vector<Guide> dragTo(Canvas& canvas, const Drag& drag, const Pointer& pointer)
{
    if (!drag.parts.empty())
        return dragAll(canvas, drag, pointer);
    const bool free = pointer.modifiers.testFlag(Qt::AltModifier) || !canvas.snapping;
    Snapped snapped;
    std::function<bool(Sketch&)> step;
    if (drag.turns) {
        step = [&](Sketch& sketch) {
            return pointPart(sketch, drag.part, pointer.at.x - drag.anchor.x, pointer.at.z - drag.anchor.z,
                             free ? 1 : turn_step_deg);
        };
    } else if (liesAlongHose(drag.part)) {
        step = [&](Sketch& sketch) {
            return slide(sketch, canvas.layout(), canvas.view(), drag, pointer.at);
        };
    } else if (drag.part.kind == PartKind::dimension) {
        const Vec2 through = {drag.anchor.x + pointer.at.x - drag.grabbed.x,
                              drag.anchor.z + pointer.at.z - drag.grabbed.z};
        const double grid_mm = free ? 0 : snapSpacing(canvas.viewport.zoom(), canvas.units());
        step = [&, through, grid_mm](Sketch& sketch) {
            return moveDimensionThrough(sketch, canvas.layout(), drag.part.id, through, grid_mm);
        };
    } else {
        const Vec2 raw = {drag.anchor.x + pointer.at.x - drag.grabbed.x,
                          drag.anchor.z + pointer.at.z - drag.grabbed.z};
        const SnapNear near_by{raw, Canvas::snap_reach_px / canvas.viewport.zoom(), drag.hose_boxes};
        snapped = canvas.snap(
            raw,
            canvas.view().isEnd()
                ? endSceneFor(drag.start, canvas.layout(), drag.part, canvas.view())
                : sceneFor(drag.start, canvas.layout(), drag.part, canvas.snap_settings.slope, &near_by),
            pointer);
        const Vec3 delta = canvas.view().move({snapped.at.x - drag.anchor.x, snapped.at.z - drag.anchor.z});
        if (drag.part.kind == PartKind::hose_end) {
            const std::optional<Socket> socket = socketAt(drag.start, canvas.viewport, pointer.screen);
            if (socket)
                snapped.guides.clear();
            step = [&, socket](Sketch& sketch) {
                return dropEnd(sketch, drag, socket, canvas.view(), snapped.at);
            };
        } else {
            step = [&, delta](Sketch& sketch) { return move(sketch, drag.part, delta); };
        }
    }
    const QString text = (drag.turns ? QCoreApplication::translate("Canvas", "Turn %1")
                                     : QCoreApplication::translate("Canvas", "Move %1"))
                             .arg(nameOfPart(drag.start, drag.part));
    canvas.apply(
        text,
        [&](Sketch& sketch) {
            sketch = drag.start;
            step(sketch);
        },
        drag.gesture);
    return snapped.guides;
}

bool pointPart(Sketch& sketch, const PartRef& part, double dx, double dz, double step_deg)
{
    if (dx == 0 && dz == 0)
        return false;
    double clockwise_deg = std::atan2(dx, dz) / rad_per_deg; // from upright
    if (step_deg > 0)
        clockwise_deg = std::round(clockwise_deg / step_deg) * step_deg;
    if (part.kind == PartKind::heater) {
        for (Heater& heater : sketch.heaters)
            if (heater.id == part.id)
                heater.tilt_deg =
                    std::cos(heater.turn_deg * rad_per_deg) < 0 ? -clockwise_deg : clockwise_deg;
        return sketch.heater(part.id) != nullptr;
    }
    for (Port& port : sketch.ports) {
        if (part.kind != PartKind::port || port.id != part.id)
            continue;
        // Azimuth says right or left, elevation the rest: both angles are whole steps too.
        port.axis =
            clockwise_deg >= 0 ? Direction{0, 90 - clockwise_deg} : Direction{180, 90 + clockwise_deg};
        return true;
    }
    return false;
}

bool turnPart(Sketch& sketch, const PartRef& part, double clockwise_deg)
{
    Vec3 way;
    if (const Heater* heater = part.kind == PartKind::heater ? sketch.heater(part.id) : nullptr)
        way = heaterPoint(*heater, {0, 0, 1}) - heater->position;
    else if (const Port* port = part.kind == PartKind::port ? sketch.port(part.id) : nullptr)
        way = direction(port->axis.azimuth_deg, port->axis.elevation_deg);
    else
        return false;
    const double now_deg = std::atan2(way.x, way.z) / rad_per_deg;
    const double next = (std::round(now_deg / turn_step_deg) * turn_step_deg + clockwise_deg) * rad_per_deg;
    return pointPart(sketch, part, std::sin(next), std::cos(next), turn_step_deg);
}

} // namespace siphonwright
