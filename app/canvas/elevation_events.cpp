#include "app/canvas/hit.h"
#include "app/canvas/rulers.h"
#include "app/canvas/view_state.h"

#include <QContextMenuEvent>
#include <QKeyEvent>

#include <cmath>

/// What mouse, wheel, keys and gestures do: pan and zoom here, everything else by way of the tool.
namespace siphonwright {

void ElevationView::moveCrosshair(Vec2 to)
{
    state_->crosshair = to;
    state_->canvas.viewport.reveal(to, state_->canvas.area);
    act([this](Tool& tool) { tool.moved(state_->keys()); });
    Q_EMIT pointerAt(to);
}

bool ElevationView::event(QEvent* event)
{
    if (gesture(event))
        return true;
    if (event->type() == QEvent::ShortcutOverride) {
        // With the focus here these keys mean the drawing, whatever the window has them for.
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
        const bool arrow = key->key() == Qt::Key_Left || key->key() == Qt::Key_Right ||
                           key->key() == Qt::Key_Up || key->key() == Qt::Key_Down;
        if (arrow && key->modifiers() == Qt::ControlModifier && state_->tool->hasCrosshair()) {
            event->accept(); // the cross-hair in large steps
            return true;
        }
        switch (key->key()) {
        case Qt::Key_Escape:
        case Qt::Key_Backspace:
        case Qt::Key_Delete:
        case Qt::Key_Return:
        case Qt::Key_Enter:
        case Qt::Key_Space:
        case Qt::Key_Left:
        case Qt::Key_Right:
        case Qt::Key_Up:
        case Qt::Key_Down:
            event->setAccepted(plain);
            return plain;
        default:
            if (plain && state_->tool->claims(key->key())) {
                event->accept();
                return true;
            }
            break;
        }
    }
    if (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut) {
        state_->space_held = false;
        update();
    }
    return QWidget::event(event);
}

bool ElevationView::focusNextPrevChild(bool next)
{
    bool stays = false;
    act([&](Tool& tool) { stays = tool.walk(next); });
    if (!stays)
        return QWidget::focusNextPrevChild(next);
    if (state_->tool->hasCrosshair()) {
        const Vec2 from = state_->crosshair.value_or(toDrawing(state_->canvas.area.center()));
        if (const std::optional<Vec2> to = state_->tool->nextStop(from, next))
            moveCrosshair(*to);
    } else if (const std::optional<Vec2> at = placeOf(state_->canvas, state_->canvas.selection.part())) {
        state_->canvas.viewport.reveal(*at, state_->canvas.area);
    }
    return true;
}

void ElevationView::mousePressEvent(QMouseEvent* event)
{
    state_->menu_on.reset();
    state_->canvas.reach = 1;
    const bool pans =
        event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && state_->space_held);
    if (pans) {
        state_->pan_from = event->position();
        refresh();
        return;
    }
    if (event->button() != Qt::LeftButton)
        return;
    state_->crosshair.reset();
    act([&](Tool& tool) { tool.pressed(state_->mouse(*event)); });
}

void ElevationView::mouseMoveEvent(QMouseEvent* event)
{
    state_->pointer = event->position();
    if (state_->pan_from) {
        state_->canvas.viewport.pan(event->position() - *state_->pan_from);
        state_->pan_from = event->position();
        state_->space_panned = state_->space_held;
        update();
        return;
    }
    state_->crosshair.reset();
    const Pointer pointer = state_->mouse(*event);
    act([&](Tool& tool) { tool.moved(pointer); });
    Q_EMIT pointerAt(pointer.at);
}

void ElevationView::mouseReleaseEvent(QMouseEvent* event)
{
    if (state_->pan_from && (event->button() == Qt::MiddleButton || event->button() == Qt::LeftButton)) {
        state_->pan_from.reset();
        refresh();
        return;
    }
    if (event->button() == Qt::LeftButton)
        act([&](Tool& tool) { tool.released(state_->mouse(*event)); });
}

void ElevationView::mouseDoubleClickEvent(QMouseEvent* event)
{
    if (event->button() == Qt::LeftButton && !state_->space_held)
        act([&](Tool& tool) { tool.doubleClicked(state_->mouse(*event)); });
}

/// How far the cross-hair goes with Ctrl.
double ElevationView::coarseStep() const
{
    const double step_mm = state_->canvas.nudgeStep(false);
    return state_->canvas.units() == UnitSystem::inch ? 8 * step_mm : 10 * step_mm;
}

QString ElevationView::keysHint() const
{
    const Canvas& canvas = state_->canvas;
    return tr("Arrow keys aim: %1 a step, with Ctrl %2, with Shift %3. Tab: next place; Enter "
              "clicks; "
              "Backspace: back.")
        .arg(canvas.length(canvas.nudgeStep(false)), canvas.length(coarseStep()),
             canvas.length(canvas.nudgeStep(true)));
}

bool ElevationView::crosshairKey(const QKeyEvent& event)
{
    if (!state_->tool->hasCrosshair())
        return false;
    const double fine_mm = state_->canvas.nudgeStep(true);
    const double step_mm = state_->canvas.nudgeStep(false);
    const double by_mm = event.modifiers().testFlag(Qt::ControlModifier) ? coarseStep()
                         : event.modifiers().testFlag(Qt::ShiftModifier) ? fine_mm
                                                                         : step_mm;
    // The first key brings the cross-hair up where the mouse is, on a whole step.
    const Vec2 start = toDrawing(state_->pointer.value_or(state_->canvas.area.center()));
    const Vec2 whole = {std::round(start.x / step_mm) * step_mm, std::round(start.z / step_mm) * step_mm};
    const Vec2 at = state_->crosshair.value_or(whole);
    switch (event.key()) {
    case Qt::Key_Left:
        moveCrosshair({at.x - by_mm, at.z});
        return true;
    case Qt::Key_Right:
        moveCrosshair({at.x + by_mm, at.z});
        return true;
    case Qt::Key_Up:
        moveCrosshair({at.x, at.z + by_mm});
        return true;
    case Qt::Key_Down:
        moveCrosshair({at.x, at.z - by_mm});
        return true;
    default:
        return false;
    }
}

bool ElevationView::panKey(const QKeyEvent& event)
{
    constexpr double step_px = 60;
    switch (event.key()) {
    case Qt::Key_Left:
        state_->canvas.viewport.pan({step_px, 0});
        break;
    case Qt::Key_Right:
        state_->canvas.viewport.pan({-step_px, 0});
        break;
    case Qt::Key_Up:
        state_->canvas.viewport.pan({0, step_px});
        break;
    case Qt::Key_Down:
        state_->canvas.viewport.pan({0, -step_px});
        break;
    default:
        return false;
    }
    update();
    return true;
}

void ElevationView::keyPressEvent(QKeyEvent* event)
{
    state_->menu_on.reset();
    if (event->key() == Qt::Key_Space) {
        if (!event->isAutoRepeat()) {
            state_->space_held = true;
            state_->space_panned = false;
            refresh();
        }
        return;
    }
    const bool menu_key = event->key() == Qt::Key_Menu ||
                          (event->key() == Qt::Key_F10 && event->modifiers() == Qt::ShiftModifier);
    if (menu_key) {
        QContextMenuEvent menu(QContextMenuEvent::Keyboard, QPoint(), QPoint());
        contextMenuEvent(&menu);
        return;
    }
    if (event->key() == Qt::Key_Escape) {
        bool stopped = false;
        act([&](Tool& tool) { stopped = tool.cancel(); });
        if (!stopped && state_->kind != ToolKind::select)
            setTool(ToolKind::select);
        return;
    }
    if (crosshairKey(*event))
        return;
    bool handled = false;
    act([&](Tool& tool) { handled = tool.key(*event); });
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!handled && enter && state_->crosshair) {
        act([this](Tool& tool) { tool.pressed(state_->keys()); });
        handled = true;
    } else if (!handled && enter && state_->kind == ToolKind::select) {
        Q_EMIT detailsWanted();
        handled = true;
    }
    if (!handled && !panKey(*event))
        QWidget::keyPressEvent(event);
}

void ElevationView::keyReleaseEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Space || event->isAutoRepeat()) {
        QWidget::keyReleaseEvent(event);
        return;
    }
    const bool clicks = state_->space_held && !state_->space_panned && state_->crosshair;
    state_->space_held = false;
    if (clicks)
        act([this](Tool& tool) { tool.pressed(state_->keys()); });
    refresh();
}

void ElevationView::leaveEvent(QEvent* event)
{
    state_->pointer.reset();
    act([](Tool& tool) { tool.left(); });
    QWidget::leaveEvent(event);
}

void ElevationView::resizeEvent(QResizeEvent* event)
{
    const double ruler_px = rulerWidth(state_->canvas);
    state_->canvas.area = QRectF(rect()).adjusted(ruler_px, ruler_px, 0, 0);
    // Whoever has moved the paper since, keeps it where it is; else a panel that opens cuts nothing off.
    if (!state_->canvas.area.isEmpty() &&
        (!state_->fit || *state_->fit == state_->canvas.viewport.transform()))
        zoomToFit();
    QWidget::resizeEvent(event);
}

void ElevationView::contextMenuEvent(QContextMenuEvent* event)
{
    Selection& selection = state_->canvas.selection;
    QPoint at = event->globalPos();
    state_->menu_on.reset();
    if (event->reason() == QContextMenuEvent::Keyboard) {
        at = mapToGlobal(state_->canvas.area.center().toPoint());
        if (const std::optional<Vec2> place = placeOf(state_->canvas, selection.part()))
            at = mapToGlobal(toScreen(*place).toPoint());
    } else {
        const Hit hit = hitTest(state_->canvas, event->pos());
        if (hit.finding >= 0)
            selection.selectFinding(hit.finding);
        if (!selection.contains(hit.part))
            selection.select(hit.part);
        state_->menu_on = hit;
        state_->menu_at = toDrawing(event->pos());
    }
    Q_EMIT contextMenuWanted(selection.part(), at);
}

} // namespace siphonwright
