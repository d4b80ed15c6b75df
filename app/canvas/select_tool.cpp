#include "app/canvas/select_tool.h"

#include "app/canvas/dimension_ends.h"
#include "app/canvas/dimensions.h"
#include "app/canvas/group.h"
#include "app/canvas/overlay.h"
#include "app/canvas/part_names.h"
#include "app/canvas/plane.h"
#include "app/canvas/shape.h"
#include "app/canvas/sockets.h"

#include "core/sketch/group_edits.h"

#include <QKeyEvent>

#include <algorithm>

namespace siphonwright {
void SelectTool::pressed(const Pointer& pointer)
{
    press_ = pointer;
    canvas_.hose_boxes = boxesOf(canvas_.sketch(), canvas_.hose_boxes); // ready when a drag begins
    pressed_on_ = hitTest(canvas_, pointer.screen);
    adds_ = bool(pointer.modifiers & (Qt::ShiftModifier | Qt::ControlModifier));
    if (pressed_on_.finding >= 0) {
        canvas_.selection.selectFinding(pressed_on_.finding);
        return;
    }
    // One of several that are selected: they may be about to be dragged together.
    if (!adds_ && !canvas_.selection.contains(pressed_on_.part))
        canvas_.selection.select(pressed_on_.part);
}

/// The pointer has gone far enough with the button down: a part moves, or a band is drawn.
void SelectTool::beginPull(const Pointer& pointer)
{
    if (adds_ || pressed_on_.part.kind == PartKind::nothing) {
        band_ = press_->at;
        banded_ = partsWithin(canvas_, *band_, pointer.at);
        return;
    }
    drag_ = beginDrag(canvas_, pressed_on_.part, pressed_on_.turns, press_->at);
    guides_ = dragTo(canvas_, *drag_, pointer);
}

void SelectTool::moved(const Pointer& pointer)
{
    constexpr double drag_px = 4;
    at_ = pointer.screen;
    if (drag_) {
        guides_ = dragTo(canvas_, *drag_, pointer);
        return;
    }
    if (band_) {
        banded_ = partsWithin(canvas_, *band_, pointer.at);
        return;
    }
    const bool far = press_ && distanceBetween(press_->screen, pointer.screen) >= drag_px;
    if (far && pointer.button && pressed_on_.finding < 0) {
        beginPull(pointer);
        return;
    }
    if (press_ && pointer.button && !far)
        return; // what was pressed is still pointed at
    hovered_ = hitTest(canvas_, pointer.screen);
    if (hovered_.part.kind == PartKind::hose && hovered_.along_mm)
        canvas_.selection.hover(hovered_.part.id, *hovered_.along_mm);
    else
        canvas_.selection.hover({}, 0);
}

void SelectTool::released(const Pointer& pointer)
{
    if (drag_) {
        dragTo(canvas_, *drag_, pointer);
    } else if (band_) {
        std::vector<PartRef> all = adds_ ? canvas_.selection.parts() : std::vector<PartRef>();
        all.insert(all.end(), banded_.begin(), banded_.end());
        canvas_.selection.selectAll(all);
    } else if (press_ && pressed_on_.finding < 0) {
        if (!adds_)
            canvas_.selection.select(pressed_on_.part);
        else if (pressed_on_.part.kind != PartKind::nothing)
            canvas_.selection.toggle(pressed_on_.part);
    }
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

bool SelectTool::cancel()
{
    if (dragging()) {
        const std::optional<Drag> drag = drag_;
        stopDrag();
        if (drag)
            canvas_.document.cancelGesture(drag->gesture);
        return true;
    }
    kept_.clear();
    const PartRef part = canvas_.selection.part();
    if (part.kind == PartKind::nothing)
        return false;
    const PartRef owner = ownerOf(part);
    const bool several = canvas_.selection.parts().size() > 1;
    canvas_.selection.select(owner == part || several ? PartRef{} : owner);
    return true;
}

void SelectTool::putAway()
{
    if (dragging())
        cancel();
}

void SelectTool::documentChanged()
{
    stopDrag();
    nudge_gesture_ = 0;
    since_nudge_.invalidate();
    hovered_ = {};
    std::vector<PartRef> left = canvas_.selection.parts();
    std::erase_if(left, [this](const PartRef& part) { return !exists(canvas_.sketch(), part); });
    canvas_.selection.selectAll(left);
}

void SelectTool::deleteSelected()
{
    const std::vector<PartRef> parts = canvas_.selection.parts();
    stopDrag();
    if (parts.empty())
        return;
    const PartRef part = parts.back();
    const PartRef owner = parts.size() == 1 ? ownerOf(part) : PartRef();
    canvas_.apply(tr("Delete %1").arg(nameOfParts(canvas_.sketch(), parts)),
                  [&](Sketch& sketch) { siphonwright::remove(sketch, parts); });
    hovered_ = {};
    kept_.clear();
    const bool stays = parts.size() == 1 && part.kind == PartKind::hose_end && exists(canvas_.sketch(), part);
    if (!stays)
        canvas_.selection.select(exists(canvas_.sketch(), owner) ? owner : PartRef{});
}

void SelectTool::stopDrag()
{
    drag_.reset();
    press_.reset();
    band_.reset();
    banded_.clear();
    guides_.clear();
}

void SelectTool::paint(QPainter& painter) const
{
    overlay::paintSelection(painter, canvas_, dragging() ? PartRef{} : hovered_.part);
    overlay::paintGuides(painter, canvas_, guides_);
    if (band_)
        overlay::paintBand(painter, canvas_, *band_, at_, banded_);
    if (!drag_)
        return;
    if (drag_->part.kind == PartKind::hose_end)
        if (const auto socket = socketAt(canvas_.sketch(), canvas_.viewport, at_))
            overlay::paintTarget(painter, canvas_, socket->stop);
    overlay::paintDimensions(painter, canvas_, at_,
                             overlay::guideWords(guides_) + dimensionsOf(canvas_, drag_->part));
}

QString SelectTool::hint() const
{
    if (band_)
        return tr("Release to select what lies wholly in the band: %1. Escape stops.")
            .arg(nameOfParts(canvas_.sketch(), banded_));
    if (drag_ && drag_->part.kind == PartKind::hose_end)
        return tr(
            "Drop it on a port or nozzle to connect it, elsewhere to leave it open. Escape puts it back.");
    if (drag_)
        return tr("Hold Alt to place it freely. Escape puts it back.");
    const PartRef& part = hovered_.part;
    const QString name = nameOfPart(canvas_.sketch(), part);
    if (hovered_.finding >= 0)
        return tr("Click to select this finding.");
    if (hovered_.turns)
        return tr("Drag to turn %1 in steps of 15 degrees; full stop and comma turn it too.").arg(name);
    if (part.kind == PartKind::hose)
        return tr("Click to select %1, drag to move it, double-click to insert a point.").arg(name);
    if (hasCorners(part.kind) && !canvas_.view().isEnd())
        return tr("Click to select %1, drag to move it, double-click an edge to add a corner.").arg(name);
    if (part.kind != PartKind::nothing)
        return tr("Click to select %1, drag to move it.").arg(name);
    const PartRef& selected = canvas_.selection.part();
    if (selected.kind == PartKind::hose_end)
        return tr("Press J to connect it to the nearest port or nozzle, again for the next; arrows move it.");
    if (canvas_.selection.parts().size() > 1)
        return tr("Arrow keys move %1, a drag too; Delete removes them; Shift+click adds or takes out.")
            .arg(nameOfParts(canvas_.sketch(), canvas_.selection.parts()));
    if (selected.kind != PartKind::nothing)
        return tr("Arrow keys move %1, with Shift finely; Delete removes it; Tab goes to the next part.")
            .arg(nameOfPart(canvas_.sketch(), selected));
    return tr("Click a part to select it, drag to move it; drag over empty ground to select several.");
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
