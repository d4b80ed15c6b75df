#include "app/canvas/place_tool.h"

#include "app/canvas/hit.h"
#include "app/canvas/new_part.h"
#include "app/canvas/overlay.h"
#include "app/canvas/part_names.h"
#include "app/canvas/plane.h"
#include "app/canvas/shape.h"
#include "app/language/in_words.h"

#include "core/sketch/edits.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace siphonwright {
bool PlaceTool::goesOnHose() const
{
    return kind_ == ToolKind::valve || kind_ == ToolKind::bleed || kind_ == ToolKind::clip;
}

void PlaceTool::moved(const Pointer& pointer)
{
    constexpr double hose_reach_px = 16;
    constexpr double wall_reach_px = 24;
    at_ = pointer;
    pointed_ = true;
    const double zoom = canvas_.viewport.zoom();
    guides_.clear();
    place_ = pointer.at;
    hose_.clear();
    outward_ = {};
    if (goesOnHose()) {
        double best_mm = hose_reach_px / zoom;
        for (const ResolvedHose& hose : canvas_.layout().hoses) {
            if (hose->path.line.empty())
                continue;
            const auto nearest = hose->path.line.nearestInElevation(pointer.at);
            const double off_mm = nearest.distance_mm - hose->outsideDiameter() / 2;
            if (off_mm >= best_mm)
                continue;
            best_mm = off_mm;
            hose_ = hose.id();
            const double s = std::clamp(nearest.s, hose->hose_from_mm, hose->hose_to_mm);
            along_ = std::round(s - hose->hose_from_mm);
            place_ = flatInElevation(alongHose(*hose, along_));
        }
        return;
    }
    const Snapped snapped = canvas_.snap(
        pointer.at, sceneFor(canvas_.sketch(), canvas_.layout(), PartRef(), canvas_.snap_settings.slope),
        pointer);
    place_ = snapped.at;
    guides_ = snapped.guides;
    if (kind_ != ToolKind::port || pointer.modifiers.testFlag(Qt::AltModifier))
        return;
    if (const auto wall = nearestWall(canvas_.sketch(), pointer.at, wall_reach_px / zoom)) {
        place_ = wall->at;
        outward_ = wall->outward;
        guides_.clear();
    }
}

void PlaceTool::pressed(const Pointer& pointer)
{
    moved(pointer);
    const PartRef part = goesOnHose() ? putOnHose(canvas_, kind_, hose_, along_) : putDown();
    if (part.kind == PartKind::nothing)
        return;
    canvas_.selection.select(part);
    canvas_.done = true;
}

Port PlaceTool::portHere() const
{
    return newPort(canvas_.sketch(), place_, outward_);
}

Heater PlaceTool::heaterHere() const
{
    return newHeater(canvas_.heater_template, place_);
}

SurgeTank PlaceTool::tankHere() const
{
    return newTank(canvas_.sketch(), place_);
}

PartRef PlaceTool::putDown()
{
    PartRef part;
    if (kind_ == ToolKind::port) {
        const Port port = portHere();
        canvas_.apply(tr("Place a port"), [&](Sketch& sketch) {
            part = {PartKind::port, addPort(sketch, port), 0};
        });
    } else if (kind_ == ToolKind::heater) {
        const Heater heater = heaterHere();
        canvas_.apply(tr("Place a heater"), [&](Sketch& sketch) {
            part = {PartKind::heater, addHeater(sketch, heater), 0};
        });
    } else if (kind_ == ToolKind::tank) {
        const SurgeTank tank = tankHere();
        canvas_.apply(tr("Place the surge tank"), [&](Sketch& sketch) { sketch.tank = tank; });
        part = {PartKind::tank, {}, 0};
    }
    return part;
}

std::vector<Vec2> PlaceTool::stops() const
{
    std::vector<Vec2> out;
    if (goesOnHose()) {
        // Every quarter of every hose: near enough for the arrow keys to do the rest.
        for (const ResolvedHose& hose : canvas_.layout().hoses)
            for (int quarter = 0; quarter <= 4 && !hose->path.line.empty(); ++quarter)
                out.push_back(flatInElevation(alongHose(*hose, hose->length_mm * quarter / 4)));
    } else if (kind_ == ToolKind::port && canvas_.sketch().engine) {
        const std::vector<Vec2>& jacket = canvas_.sketch().engine->jacket;
        for (std::size_t i = 0; i < jacket.size(); ++i) {
            const Vec2 next = jacket[(i + 1) % jacket.size()];
            out.push_back({(jacket[i].x + next.x) / 2, (jacket[i].z + next.z) / 2});
        }
    }
    return out;
}

bool PlaceTool::walk(bool)
{
    return !stops().empty();
}

std::optional<Vec2> PlaceTool::nextStop(Vec2 from, bool forward) const
{
    const std::vector<Vec2> all = stops();
    if (all.empty())
        return std::nullopt;
    const auto here = std::find_if(all.begin(), all.end(), [&](Vec2 s) {
        return std::hypot(s.x - from.x, s.z - from.z) < same_place_mm;
    });
    if (here == all.end())
        return forward ? all.front() : all.back();
    const auto count = static_cast<std::ptrdiff_t>(all.size());
    return all[static_cast<std::size_t>((here - all.begin() + (forward ? 1 : count - 1)) % count)];
}

void PlaceTool::documentChanged()
{
    if (pointed_)
        moved(at_);
}

void PlaceTool::paint(QPainter& painter) const
{
    if (!pointed_)
        return;
    overlay::paintGuides(painter, canvas_, guides_);
    QStringList lines;
    if (kind_ == ToolKind::heater) {
        const Heater heater = heaterHere();
        overlay::paintGhostOutline(painter, canvas_, bodyOf(heater), true);
        lines.append(inWords(heater.name));
    } else if (kind_ == ToolKind::tank) {
        overlay::paintGhostOutline(painter, canvas_, bodyOf(tankHere()), true);
    } else if (kind_ == ToolKind::port) {
        const Port port = portHere();
        const Vec3 end =
            port.position + direction(port.axis.azimuth_deg, port.axis.elevation_deg) * port.stub.length_mm;
        overlay::paintGhostOutline(painter, canvas_, {place_, flatInElevation(end)}, false);
    }
    if (at_.keyboard)
        overlay::paintCrosshair(painter, canvas_, at_.at);
    if (!goesOnHose() || !hose_.empty())
        overlay::paintHandle(painter, canvas_, {{}, place_, HandleShape::round, false}, true, false);
    if (!hose_.empty())
        lines.append(tr("%1 along the hose").arg(canvas_.length(along_)));
    const double height_mm = canvas_.layout().plumb.height({place_.x, 0, place_.z});
    lines.append(tr("Height %1").arg(canvas_.length(height_mm)));
    const auto& jacket = canvas_.layout().jacket;
    if (kind_ == ToolKind::heater && jacket)
        lines.append(tr("Top under the jacket %1")
                         .arg(canvas_.length(jacket->lowest_mm - height_mm - heaterHere().length_mm / 2)));
    overlay::paintDimensions(painter, canvas_, at_.screen, overlay::guideWords(guides_) + lines);
}

QString PlaceTool::hint() const
{
    switch (kind_) {
    case ToolKind::port:
        return outward_ == Vec2{} ? tr("Click on the jacket's or the block's edge to place a port.")
                                  : tr("Click to place a port here, its thread pointing outwards.");
    case ToolKind::heater:
        return tr("Click where the middle of the heater goes. Arrow keys move the cross-hair, Enter clicks.");
    case ToolKind::tank:
        return tr("Click where the surge tank goes: its marks give the coolant level.");
    default:
        break;
    }
    const QString what = kind_ == ToolKind::valve   ? tr("an isolation valve")
                         : kind_ == ToolKind::bleed ? tr("a bleed point")
                                                    : tr("a clip");
    if (hose_.empty())
        return tr("Point at a hose and click to place %1 there.").arg(what);
    return tr("Click to place %1 in %2.").arg(what, nameOfPart(canvas_.sketch(), {PartKind::hose, hose_, 0}));
}

} // namespace siphonwright
