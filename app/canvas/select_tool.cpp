#include "app/canvas/select_tool.h"

#include "app/canvas/dimensions.h"
#include "app/canvas/overlay.h"
#include "app/canvas/part_names.h"
#include "app/canvas/plane.h"
#include "app/canvas/shape.h"
#include "app/canvas/sockets.h"

#include "core/sketch/edits.h"

#include <QCoreApplication>
#include <QKeyEvent>

#include <algorithm>

namespace siphonwright {
namespace {

QString text(const char* source)
{
    return QCoreApplication::translate("Canvas", source);
}

/// Arrow keys as a direction in the elevation; nothing for other keys.
std::optional<Vec2> arrowOf(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return Vec2{-1, 0};
    case Qt::Key_Right:
        return Vec2{1, 0};
    case Qt::Key_Up:
        return Vec2{0, 1};
    case Qt::Key_Down:
        return Vec2{0, -1};
    default:
        return std::nullopt;
    }
}

bool hasCorners(PartKind kind)
{
    return kind == PartKind::engine || kind == PartKind::jacket || kind == PartKind::area;
}

} // namespace

void SelectTool::pressed(const Pointer& pointer)
{
    press_ = pointer;
    pressed_on_ = hitTest(canvas_, pointer.screen);
    if (pressed_on_.finding >= 0) {
        canvas_.selection.selectFinding(pressed_on_.finding);
        return;
    }
    canvas_.selection.select(pressed_on_.part);
}

void SelectTool::moved(const Pointer& pointer)
{
    constexpr double drag_px = 4;
    at_ = pointer.screen;
    if (drag_) {
        guides_ = dragTo(canvas_, *drag_, pointer);
        return;
    }
    const bool far = press_ && distanceBetween(press_->screen, pointer.screen) >= drag_px;
    if (far && pointer.button && pressed_on_.part.kind != PartKind::nothing) {
        drag_ = beginDrag(canvas_, pressed_on_.part, pressed_on_.turns, press_->at);
        guides_ = dragTo(canvas_, *drag_, pointer);
        return;
    }
    hovered_ = hitTest(canvas_, pointer.screen);
    if (hovered_.part.kind == PartKind::hose && hovered_.along_mm)
        canvas_.selection.hover(hovered_.part.id, *hovered_.along_mm);
    else
        canvas_.selection.hover({}, 0);
}

void SelectTool::released(const Pointer& pointer)
{
    if (drag_)
        dragTo(canvas_, *drag_, pointer);
    stopDrag();
}

void SelectTool::doubleClicked(const Pointer& pointer)
{
    stopDrag();
    const Hit hit = hitTest(canvas_, pointer.screen);
    PartRef added;
    if (hit.part.kind == PartKind::hose && hit.along_mm)
        added = insertHosePoint(canvas_, hit.part.id, *hit.along_mm);
    else if (hasCorners(hit.part.kind) && !canvas_.view().isEnd())
        added = insertCorner(canvas_, hit.part, pointer.at);
    if (added.kind != PartKind::nothing)
        canvas_.selection.select(added);
}

void SelectTool::left()
{
    hovered_ = {};
    canvas_.selection.hover({}, 0);
}

bool SelectTool::key(const QKeyEvent& event)
{
    const bool shift = event.modifiers().testFlag(Qt::ShiftModifier);
    if (event.modifiers().testFlag(Qt::ControlModifier))
        return false;
    if (drag_ && event.key() != Qt::Key_Escape)
        return arrowOf(event.key()).has_value(); // the pointer has hold of the part: keys wait
    switch (event.key()) {
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        deleteSelected();
        return true;
    case Qt::Key_Insert:
        insertPointByKey();
        return true;
    case Qt::Key_C:
        connectToNext();
        return true;
    case Qt::Key_R: {
        if (canvas_.view().isEnd())
            return false; // angles are turned in the side elevation
        const PartRef part = canvas_.selection.part();
        canvas_.apply(text("Turn %1").arg(nameOfPart(canvas_.sketch(), part)), [&](Sketch& sketch) {
            turnPart(sketch, part, shift ? -turn_step_deg : turn_step_deg);
        });
        return true;
    }
    case Qt::Key_Return:
    case Qt::Key_Enter:
        enterOutline();
        return true;
    default:
        return nudge(event);
    }
}

bool SelectTool::nudge(const QKeyEvent& event)
{
    constexpr qint64 burst_ms = 1000;
    const std::optional<Vec2> arrow = arrowOf(event.key());
    const PartRef part = canvas_.selection.part();
    if (!arrow || part.kind == PartKind::nothing)
        return false;
    if (part != nudged_ || !since_nudge_.isValid() || since_nudge_.elapsed() > burst_ms)
        nudge_gesture_ = canvas_.document.beginGesture();
    nudged_ = part;
    since_nudge_.start();
    const double step_mm = canvas_.nudgeStep(event.modifiers().testFlag(Qt::ShiftModifier));
    Vec3 delta = canvas_.view().move({arrow->x * step_mm, arrow->z * step_mm});
    if (part.kind == PartKind::inline_part || part.kind == PartKind::clip) {
        // The arrow that points the way the hose runs here takes the part along with it.
        const ResolvedHose* hose = canvas_.layout().hose(part.id);
        const std::optional<Vec2> at = placeOf(canvas_, part);
        if (!hose || !at || (*hose)->path.line.empty())
            return true;
        const Centreline& line = (*hose)->path.line;
        const Vec2 way = canvas_.view().flat(line.tangent(nearestSeen(canvas_.view(), line, *at).s));
        delta = {way.x * arrow->x + way.z * arrow->z >= 0 ? step_mm : -step_mm, 0, 0};
    }
    canvas_.apply(
        text("Move %1").arg(nameOfPart(canvas_.sketch(), part)),
        [&](Sketch& sketch) { siphonwright::move(sketch, part, delta); }, nudge_gesture_);
    return true;
}

void SelectTool::connectToNext()
{
    PartRef part = canvas_.selection.part();
    if (const Hose* hose = part.kind == PartKind::hose ? canvas_.sketch().hose(part.id) : nullptr)
        part = {PartKind::hose_end, part.id, hose->from.connected() ? 1U : 0U};
    if (connectToNextSocket(canvas_, part))
        canvas_.selection.select(part);
}

void SelectTool::insertPointByKey()
{
    const PartRef part = canvas_.selection.part();
    const std::optional<Vec2> at = placeOf(canvas_, part);
    const PartRef owner = ownerOf(part);
    PartRef added;
    if (const ResolvedHose* hose = owner.kind == PartKind::hose ? canvas_.layout().hose(owner.id) : nullptr) {
        // With a point selected, half-way to the next one; with the hose, in its middle.
        const Route& route = **hose;
        double from_mm = route.hose_from_mm;
        double to_mm = route.hose_to_mm;
        if (part.kind == PartKind::hose_point && at) {
            from_mm = nearestSeen(canvas_.view(), route.path.line, *at).s;
            const auto next = placeOf(canvas_, {PartKind::hose_point, part.id, part.index + 1});
            if (next)
                to_mm = nearestSeen(canvas_.view(), route.path.line, *next).s;
        }
        added = insertHosePoint(canvas_, owner.id, (from_mm + to_mm) / 2);
    } else if (const std::vector<Vec2>* outline =
                   canvas_.view().isEnd() ? nullptr : outlineOf(canvas_.sketch(), part)) {
        const Vec2 a = outline->at(std::min(part.index, outline->size() - 1));
        const Vec2 b = outline->at((part.index + 1) % outline->size());
        added = insertCorner(canvas_, part, {(a.x + b.x) / 2, (a.z + b.z) / 2});
    }
    if (added.kind != PartKind::nothing)
        canvas_.selection.select(added);
}

void SelectTool::enterOutline()
{
    if (canvas_.view().isEnd())
        return;
    const PartRef part = canvas_.selection.part();
    if (part.kind == PartKind::engine)
        canvas_.selection.select({PartKind::engine_corner, {}, 0});
    else if (part.kind == PartKind::jacket)
        canvas_.selection.select({PartKind::jacket_corner, {}, 0});
    else if (part.kind == PartKind::area)
        canvas_.selection.select({PartKind::area_corner, part.id, 0});
}

bool SelectTool::walk(bool forward)
{
    const PartRef& now = canvas_.selection.part();
    const std::vector<PartRef> order = walkOrder(canvas_.sketch(), now);
    if (order.empty())
        return false;
    const auto at = std::find(order.begin(), order.end(), now);
    const bool among_corners = hasCorners(ownerOf(now).kind) && ownerOf(now) != now;
    if (at == order.end()) {
        canvas_.selection.select(forward ? order.front() : order.back());
        return true;
    }
    const bool last = forward ? at + 1 == order.end() : at == order.begin();
    if (last && !among_corners) {
        canvas_.selection.select({});
        return false;
    }
    if (last)
        canvas_.selection.select(forward ? order.front() : order.back());
    else
        canvas_.selection.select(forward ? *(at + 1) : *(at - 1));
    return true;
}

bool SelectTool::cancel()
{
    if (drag_) {
        const int gesture = drag_->gesture;
        stopDrag();
        canvas_.document.cancelGesture(gesture);
        return true;
    }
    const PartRef part = canvas_.selection.part();
    if (part.kind == PartKind::nothing)
        return false;
    const PartRef owner = ownerOf(part);
    canvas_.selection.select(owner == part ? PartRef{} : owner);
    return true;
}

void SelectTool::putAway()
{
    if (drag_)
        cancel();
}

void SelectTool::documentChanged()
{
    stopDrag();
    nudge_gesture_ = 0;
    since_nudge_.invalidate();
    hovered_ = {};
    if (!exists(canvas_.sketch(), canvas_.selection.part()))
        canvas_.selection.select({});
}

void SelectTool::deleteSelected()
{
    const PartRef part = canvas_.selection.part();
    stopDrag();
    if (!exists(canvas_.sketch(), part))
        return;
    const PartRef owner = ownerOf(part);
    canvas_.apply(text("Delete %1").arg(nameOfPart(canvas_.sketch(), part)),
                  [&](Sketch& sketch) { remove(sketch, part); });
    hovered_ = {};
    const bool stays = part.kind == PartKind::hose_end && exists(canvas_.sketch(), part);
    if (!stays)
        canvas_.selection.select(exists(canvas_.sketch(), owner) ? owner : PartRef{});
}

void SelectTool::stopDrag()
{
    drag_.reset();
    press_.reset();
    guides_.clear();
}

void SelectTool::paint(QPainter& painter) const
{
    overlay::paintSelection(painter, canvas_, drag_ ? PartRef{} : hovered_.part);
    overlay::paintGuides(painter, canvas_, guides_);
    if (!drag_)
        return;
    if (drag_->part.kind == PartKind::hose_end)
        if (const auto socket = socketAt(canvas_.sketch(), canvas_.viewport, at_))
            overlay::paintTarget(painter, canvas_, socket->stop);
    overlay::paintDimensions(painter, canvas_, at_, dimensionsOf(canvas_, drag_->part));
}

QString SelectTool::hint() const
{
    if (drag_ && drag_->part.kind == PartKind::hose_end)
        return text(
            "Drop it on a port or nozzle to connect it, elsewhere to leave it open. Escape puts it back.");
    if (drag_)
        return text("Hold Alt to place it freely. Escape puts it back.");
    const PartRef& part = hovered_.part;
    const QString name = nameOfPart(canvas_.sketch(), part);
    if (hovered_.finding >= 0)
        return text("Click to select this finding.");
    if (hovered_.turns)
        return text("Drag to turn %1 in steps of 15 degrees; R and Shift+R turn it too.").arg(name);
    if (part.kind == PartKind::hose)
        return text("Click to select %1, drag to move it, double-click to insert a point.").arg(name);
    if (hasCorners(part.kind) && !canvas_.view().isEnd())
        return text("Click to select %1, drag to move it, double-click an edge to add a corner.").arg(name);
    if (part.kind != PartKind::nothing)
        return text("Click to select %1, drag to move it.").arg(name);
    const PartRef& selected = canvas_.selection.part();
    if (selected.kind == PartKind::hose_end)
        return text(
            "Press C to connect it to the nearest port or nozzle, again for the next; arrows move it.");
    if (selected.kind != PartKind::nothing)
        return text("Arrow keys move %1, with Shift finely; Delete removes it; Tab goes to the next part.")
            .arg(nameOfPart(canvas_.sketch(), selected));
    return text("Click a part to select it, drag to move it; Tab goes from part to part.");
}

Qt::CursorShape SelectTool::cursor() const
{
    if (drag_)
        return Qt::ClosedHandCursor;
    if (hovered_.finding >= 0)
        return Qt::PointingHandCursor;
    return hovered_.part.kind == PartKind::nothing ? Qt::ArrowCursor : Qt::OpenHandCursor;
}

} // namespace siphonwright
