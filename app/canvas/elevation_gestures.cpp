#include "app/canvas/plane.h"
#include "app/canvas/view_state.h"

#include <QContextMenuEvent>
#include <QGuiApplication>
#include <QNativeGestureEvent>
#include <QPointingDevice>
#include <QStyleHints>
#include <QTouchEvent>
#include <QWheelEvent>

#include <cmath>

/// Wheel, trackpad and fingers: two move and zoom the paper, one does what the left mouse button does.
namespace siphonwright {
namespace {

constexpr double finger_slop_px = 10; ///< a finger never holds quite still
constexpr double finger_reach = 2.2;  ///< times as far as a mouse's pointer
constexpr double wheel_notch = 120;   ///< eighths of a degree per click of a wheel
constexpr double notch_pan_px = 60;   ///< where a trackpad counts in notches

/// Fingers that are down.
QList<QEventPoint> fingersOf(const QTouchEvent& event)
{
    QList<QEventPoint> out;
    for (const QEventPoint& point : event.points())
        if (point.state() != QEventPoint::Released)
            out << point;
    return out;
}

bool fromTrackpad(const QWheelEvent& event)
{
    const QPointingDevice* device = event.pointingDevice();
    return event.phase() != Qt::NoScrollPhase ||
           (device && device->type() == QInputDevice::DeviceType::TouchPad);
}

} // namespace

void ElevationView::wheelEvent(QWheelEvent* event)
{
    const QPointF notches = QPointF(event->angleDelta()) / wheel_notch;
    const bool zooms = event->modifiers().testFlag(Qt::ControlModifier) || !fromTrackpad(*event);
    if (!zooms)
        state_->canvas.viewport.pan(event->pixelDelta().isNull() ? notches * notch_pan_px
                                                                 : QPointF(event->pixelDelta()));
    else if (event->modifiers().testFlag(Qt::ShiftModifier))
        state_->canvas.viewport.pan({(notches.x() + notches.y()) * notch_pan_px, 0});
    else if (notches.y() != 0)
        state_->canvas.viewport.zoomAbout(event->position(), std::pow(State::zoom_step, notches.y()));
    else
        state_->canvas.viewport.pan({notches.x() * notch_pan_px, 0}); // a wheel that tilts
    event->accept();
    update();
}

/// @return whether it was one, and has been seen to.
bool ElevationView::gesture(QEvent* event)
{
    switch (event->type()) {
    case QEvent::NativeGesture:
        return nativeGesture(*static_cast<QNativeGestureEvent*>(event));
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
    case QEvent::TouchCancel:
        touch(*static_cast<QTouchEvent*>(event));
        event->accept();
        return true;
    default:
        return false;
    }
}

bool ElevationView::nativeGesture(const QNativeGestureEvent& event)
{
    switch (event.gestureType()) {
    case Qt::ZoomNativeGesture:
        state_->canvas.viewport.zoomAbout(event.position(), std::max(0.1, 1 + event.value()));
        break;
    case Qt::PanNativeGesture:
        state_->canvas.viewport.pan(event.delta());
        break;
    case Qt::SmartZoomNativeGesture:
        zoomToFit();
        break;
    case Qt::BeginNativeGesture:
    case Qt::EndNativeGesture:
        break;
    default:
        return false;
    }
    update();
    return true;
}

void ElevationView::touch(const QTouchEvent& event)
{
    Fingers& fingers = state_->fingers;
    const QList<QEventPoint> down = fingersOf(event);
    state_->canvas.reach = finger_reach;
    state_->pointer.reset();
    state_->crosshair.reset();
    if (event.type() == QEvent::TouchCancel || down.size() > 1) {
        fingers.hold.stop();
        if (fingers.doing == Fingers::Doing::pressing)
            act([](Tool& tool) { tool.cancel(); });
    }
    if (event.type() == QEvent::TouchCancel) {
        fingers.doing = Fingers::Doing::nothing;
    } else if (down.size() > 1) {
        movePaper(down[0].position(), down[1].position());
    } else if (down.size() == 1) {
        oneFinger(down[0].position());
    } else {
        fingersLifted(event.points().isEmpty() ? fingers.start : event.points().constFirst().position());
    }
}

/// What is between two fingers stays between them.
void ElevationView::movePaper(QPointF first, QPointF second)
{
    Fingers& fingers = state_->fingers;
    const QPointF middle = (first + second) / 2;
    const double apart_px = std::max(1.0, distanceBetween(first, second));
    if (fingers.doing == Fingers::Doing::moving_paper) {
        state_->canvas.viewport.pan(middle - fingers.middle);
        state_->canvas.viewport.zoomAbout(middle, apart_px / fingers.apart_px);
    }
    fingers.doing = Fingers::Doing::moving_paper;
    fingers.middle = middle;
    fingers.apart_px = apart_px;
    update();
}

/// A finger is a button only once it is clear that no second one comes: when it moves, or is lifted.
void ElevationView::oneFinger(QPointF at)
{
    Fingers& fingers = state_->fingers;
    if (fingers.doing == Fingers::Doing::nothing) {
        fingers.doing = Fingers::Doing::waiting;
        fingers.start = at;
        setFocus(Qt::MouseFocusReason);
        fingers.hold.start(QGuiApplication::styleHints()->mousePressAndHoldInterval(), this);
    }
    const bool far = distanceBetween(fingers.start, at) > finger_slop_px;
    if (fingers.doing == Fingers::Doing::waiting && far) {
        fingers.hold.stop();
        fingers.doing = Fingers::Doing::pressing;
        act([&](Tool& tool) { tool.moved(state_->finger(fingers.start, false)); });
        act([&](Tool& tool) { tool.pressed(state_->finger(fingers.start, true)); });
    }
    if (fingers.doing == Fingers::Doing::pressing)
        act([&](Tool& tool) { tool.moved(state_->finger(at, true)); });
    if (fingers.doing != Fingers::Doing::moving_paper)
        Q_EMIT pointerAt(toDrawing(at));
}

void ElevationView::fingersLifted(QPointF at)
{
    Fingers& fingers = state_->fingers;
    const Fingers::Doing did = fingers.doing;
    fingers.doing = Fingers::Doing::nothing;
    fingers.hold.stop();
    if (did == Fingers::Doing::pressing) {
        act([&](Tool& tool) { tool.released(state_->finger(at, false)); });
    } else if (did == Fingers::Doing::waiting) {
        const Pointer tap = state_->finger(fingers.start, true);
        const bool again =
            fingers.since_tap.isValid() &&
            fingers.since_tap.elapsed() < QGuiApplication::styleHints()->mouseDoubleClickInterval() &&
            distanceBetween(fingers.tapped, fingers.start) < 2 * finger_slop_px;
        act([&](Tool& tool) { tool.moved(state_->finger(fingers.start, false)); });
        act([&](Tool& tool) { again ? tool.doubleClicked(tap) : tool.pressed(tap); });
        act([&](Tool& tool) { tool.released(state_->finger(fingers.start, false)); });
        fingers.tapped = fingers.start;
        if (again)
            fingers.since_tap.invalidate();
        else
            fingers.since_tap.start();
    }
    if (did != Fingers::Doing::moving_paper)
        act([](Tool& tool) { tool.left(); });
}

/// A finger held still opens the menu; what was drawn over the rest step by step goes back to it.
void ElevationView::timerEvent(QTimerEvent* event)
{
    Fingers& fingers = state_->fingers;
    if (event->timerId() == state_->rest.timerId()) {
        if (state_->tool->dragging() || !state_->canvas.document.analysisIsCurrent())
            return; // and again after as long
        state_->rest.stop();
        if (state_->hoses.leavesOut()) {
            state_->hoses.settle();
            update();
        }
        return;
    }
    if (event->timerId() != fingers.hold.timerId()) {
        QWidget::timerEvent(event);
        return;
    }
    fingers.hold.stop();
    fingers.doing = Fingers::Doing::held;
    const QPoint at = fingers.start.toPoint();
    QContextMenuEvent menu(QContextMenuEvent::Mouse, at, mapToGlobal(at));
    contextMenuEvent(&menu);
}

} // namespace siphonwright
