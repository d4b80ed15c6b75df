#include "app/canvas/hit.h"
#include "app/canvas/part_names.h"
#include "app/canvas/shelf_part.h"
#include "app/canvas/view_state.h"

#include "core/sketch/edits.h"
#include "core/sketch/templates.h"

#include <QDragEnterEvent>
#include <QDragMoveEvent>
#include <QDropEvent>

#include <algorithm>

/// Parts dragged from the shelf: the tools that place parts show where they go and put them down.
namespace siphonwright {
namespace {

const EngineTemplate* engineTemplate(const std::string& id)
{
    const auto& all = engineTemplates();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const EngineTemplate& t) { return t.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::vector<Vec2> squareAbout(Vec2 at)
{
    constexpr double half_mm = 60;
    return {{at.x - half_mm, at.z - half_mm},
            {at.x + half_mm, at.z - half_mm},
            {at.x + half_mm, at.z + half_mm},
            {at.x - half_mm, at.z + half_mm}};
}

/// From where an engine's origin has to be for its outline's middle to be at the pointer.
Vec2 originFor(const EngineTemplate& engine, Vec2 middle)
{
    Sketch alone;
    alone.engine = engine.engine;
    const Vec3 is = positionOf(alone, {PartKind::engine, {}, 0}).value_or(Vec3{});
    return {middle.x - is.x, middle.z - is.z};
}

std::vector<Vec2> ghostOf(const ShelfPart& part, Vec2 at)
{
    if (part.what == ShelfPart::What::area)
        return squareAbout(at);
    const EngineTemplate* engine =
        part.what == ShelfPart::What::engine ? engineTemplate(part.template_id) : nullptr;
    if (!engine)
        return {};
    const Vec2 origin = originFor(*engine, at);
    std::vector<Vec2> out = engine->engine.outline;
    for (Vec2& corner : out)
        corner = {corner.x + origin.x, corner.z + origin.z};
    return out;
}

/// An engine or an area, its middle at a place.
PartRef putAsItIs(Canvas& canvas, const ShelfPart& part, Vec2 at)
{
    PartRef put;
    if (part.what == ShelfPart::What::area) {
        canvas.apply(ElevationView::tr("Place an area"), [&](Sketch& sketch) {
            Area area;
            area.outline = squareAbout(at);
            put = {PartKind::area, addArea(sketch, std::move(area)), 0};
        });
    } else if (const EngineTemplate* engine = engineTemplate(part.template_id)) {
        const Vec2 origin = originFor(*engine, at);
        canvas.apply(ElevationView::tr("Place engine"), [&](Sketch& sketch) {
            placeEngine(sketch, *engine, {origin.x, 0, origin.z});
        });
        put = {PartKind::engine, {}, 0};
    }
    return put;
}

bool goesIntoHose(const ShelfPart& part)
{
    return part.what == ShelfPart::What::valve || part.what == ShelfPart::What::bleed ||
           part.what == ShelfPart::What::clip;
}

} // namespace

void ElevationView::dragEnterEvent(QDragEnterEvent* event)
{
    state_->dragged = shelfPartFrom(event->mimeData());
    if (!state_->dragged) {
        event->ignore(); // a file is the window's
        return;
    }
    takeUp(*state_->dragged);
    event->setDropAction(Qt::CopyAction);
    event->accept();
}

void ElevationView::dragMoveEvent(QDragMoveEvent* event)
{
    if (!state_->dragged) {
        event->ignore();
        return;
    }
    const Pointer at = state_->finger(event->position(), false);
    if (toolFor(*state_->dragged))
        act([&](Tool& tool) { tool.moved(at); });
    state_->outline = ghostOf(*state_->dragged, at.at);
    event->setDropAction(Qt::CopyAction);
    event->accept();
    update();
}

void ElevationView::dragLeaveEvent(QDragLeaveEvent*)
{
    state_->dragged.reset();
    state_->outline.clear();
    setTool(ToolKind::select);
}

void ElevationView::dropEvent(QDropEvent* event)
{
    const std::optional<ShelfPart> part = state_->dragged;
    state_->dragged.reset();
    state_->outline.clear();
    if (!part) {
        event->ignore();
        return;
    }
    event->setDropAction(Qt::CopyAction);
    event->accept();
    layDown(*part, state_->finger(event->position(), false));
}

/// The tool that a part is put down with.
void ElevationView::takeUp(const ShelfPart& part)
{
    if (part.what == ShelfPart::What::heater)
        setHeaterTemplate(part.template_id);
    setTool(toolFor(part).value_or(ToolKind::select));
}

void ElevationView::layDown(const ShelfPart& part, const Pointer& at)
{
    setFocus(Qt::OtherFocusReason);
    if (!toolFor(part)) {
        setTool(ToolKind::select);
        selection().select(putAsItIs(state_->canvas, part, at.at));
        return;
    }
    act([&](Tool& tool) { tool.moved(at); });
    act([&](Tool& tool) { tool.pressed(at); });
    if (tool() == ToolKind::select) // it has been put down
        return;
    setTool(ToolKind::select);
    Q_EMIT told(tr("It goes into a hose: drop it on one."));
}

void ElevationView::placeInMiddle(const ShelfPart& part)
{
    if (goesIntoHose(part)) {
        const PartRef before = selection().part();
        if (state_->canvas.sketch().hose(before.id))
            addHere(*toolFor(part));
        else
            Q_EMIT told(tr("It goes into a hose: select the hose first."));
        setFocus(Qt::OtherFocusReason);
        return;
    }
    takeUp(part);
    const Vec2 middle = toDrawing(state_->canvas.area.center());
    const double step_mm = state_->canvas.nudgeStep(false);
    const Vec2 whole = {std::round(middle.x / step_mm) * step_mm, std::round(middle.z / step_mm) * step_mm};
    Pointer at = state_->finger(toScreen(whole), false);
    at.at = whole;
    at.keyboard = true;
    layDown(part, at);
}

} // namespace siphonwright
