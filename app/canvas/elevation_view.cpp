#include "app/canvas/elevation_view.h"

#include "app/canvas/area_tool.h"
#include "app/canvas/canvas.h"
#include "app/canvas/hose_tool.h"
#include "app/canvas/overlay.h"
#include "app/canvas/part_names.h"
#include "app/canvas/place_tool.h"
#include "app/canvas/rulers.h"
#include "app/canvas/select_tool.h"

#include "core/sketch/edits.h"

#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QNativeGestureEvent>
#include <QPainter>
#include <QWheelEvent>

#include <cmath>

namespace siphonwright {
namespace {

constexpr double zoom_step = 1.25;

std::unique_ptr<Tool> makeTool(Canvas& canvas, ToolKind kind)
{
    switch (kind) {
    case ToolKind::select:
        return std::make_unique<SelectTool>(canvas);
    case ToolKind::supply_hose:
        return std::make_unique<HoseTool>(canvas, HoseRole::supply);
    case ToolKind::return_hose:
        return std::make_unique<HoseTool>(canvas, HoseRole::return_);
    case ToolKind::area:
        return std::make_unique<AreaTool>(canvas);
    default:
        return std::make_unique<PlaceTool>(canvas, kind);
    }
}

/// What a selected part covers, painter axes.
QRectF pageOf(const Canvas& canvas, const PartRef& part)
{
    constexpr double around_mm = 60;
    QPolygonF points;
    const auto add = [&](const std::vector<Vec2>& outline) {
        for (const Vec2& p : outline)
            points.append(drawing::toPage(p));
    };
    if (const std::vector<Vec2>* outline = part == ownerOf(part) ? outlineOf(canvas.sketch(), part) : nullptr)
        add(*outline);
    else if (const Heater* heater = part.kind == PartKind::heater ? canvas.sketch().heater(part.id) : nullptr)
        add(bodyOf(*heater));
    else if (const ResolvedHose* hose = part.kind == PartKind::hose ? canvas.layout().hose(part.id) : nullptr)
        for (const Piece& piece : (*hose)->path.line.pieces())
            points << drawing::toPage(piece.start) << drawing::toPage(piece.at(piece.length_mm));
    else if (const std::optional<Vec2> at = placeOf(canvas, part))
        add({{at->x - around_mm, at->z - around_mm}, {at->x + around_mm, at->z + around_mm}});
    return points.isEmpty() ? QRectF()
                            : points.boundingRect().adjusted(-around_mm, -around_mm, around_mm, around_mm);
}

} // namespace

/// Pan, zoom, tool and pointer.
struct ElevationView::State {
    State(Document& document, Selection& selection) : canvas(document, selection) {}

    Canvas canvas;
    ToolKind kind = ToolKind::select;
    std::unique_ptr<Tool> tool;
    bool grid_shown = true;
    bool fitted = false;             ///< the drawing was brought into view once
    std::optional<QPointF> pointer;  ///< of the mouse, while it is over the widget
    std::optional<Vec2> crosshair;   ///< while the keyboard places
    std::optional<QPointF> pan_from; ///< while the middle button or Space drags the paper
    bool space_held = false;
    bool space_panned = false;
    QString hint;

    Pointer mouse(const QMouseEvent& event) const
    {
        return {canvas.viewport.toDrawing(event.position()), event.position(), event.modifiers(),
                event.buttons().testFlag(Qt::LeftButton), false};
    }
    Pointer keys() const
    {
        const Vec2 at = crosshair.value_or(Vec2{});
        return {at, canvas.viewport.toScreen(at), Qt::NoModifier, false, true};
    }
};

ElevationView::ElevationView(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent), state_(std::make_unique<State>(document, selection))
{
    state_->tool = makeTool(state_->canvas, ToolKind::select);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(320, 240);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Side elevation"));
    setFont(drawing::lettering());
    connect(&document, &Document::changed, this, &ElevationView::documentChanged);
    connect(&selection, &Selection::partChanged, this, [this] { refresh(); });
    connect(&selection, &Selection::hoverChanged, this, qOverload<>(&QWidget::update));
    connect(&selection, &Selection::findingChanged, this,
            [this] { showFinding(state_->canvas.selection.finding()); });
}

ElevationView::~ElevationView() = default;

void ElevationView::setTool(ToolKind kind)
{
    state_->tool->cancel();
    state_->tool = makeTool(state_->canvas, kind);
    state_->canvas.done = false;
    state_->crosshair.reset();
    const bool other = kind != state_->kind;
    state_->kind = kind;
    refresh();
    if (other)
        Q_EMIT toolChanged();
}

ToolKind ElevationView::tool() const
{
    return state_->kind;
}

void ElevationView::setHeaterTemplate(const std::string& id)
{
    state_->canvas.heater_template = id;
}

QPointF ElevationView::toScreen(Vec2 p) const
{
    return state_->canvas.viewport.toScreen(p);
}

Vec2 ElevationView::toDrawing(QPointF screen) const
{
    return state_->canvas.viewport.toDrawing(screen);
}

double ElevationView::zoom() const
{
    return state_->canvas.viewport.zoom();
}

void ElevationView::setSnapping(bool on)
{
    state_->canvas.snapping = on;
}

void ElevationView::setGridShown(bool on)
{
    state_->grid_shown = on;
    update();
}

void ElevationView::setDark(bool on)
{
    state_->canvas.palette = on ? drawing::Palette::dark() : drawing::Palette::light();
    update();
}

void ElevationView::zoomToFit()
{
    const Document& document = state_->canvas.document;
    state_->canvas.viewport.fit(drawing::boundsOf(document.sketch(), document.analysis()),
                                state_->canvas.area);
    update();
}

void ElevationView::zoomToSelection()
{
    const QRectF page = pageOf(state_->canvas, state_->canvas.selection.part());
    if (page.isEmpty())
        return;
    state_->canvas.viewport.fit(page, state_->canvas.area);
    update();
}

void ElevationView::zoomIn()
{
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), zoom_step);
    update();
}

void ElevationView::zoomOut()
{
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), 1 / zoom_step);
    update();
}

void ElevationView::deleteSelected()
{
    if (auto* select = dynamic_cast<SelectTool*>(state_->tool.get()))
        select->deleteSelected();
    refresh();
}

void ElevationView::showFinding(int index)
{
    const std::vector<Finding>& findings = state_->canvas.document.analysis().findings;
    if (index >= 0 && static_cast<std::size_t>(index) < findings.size()) {
        const Finding& finding = findings[static_cast<std::size_t>(index)];
        std::optional<Vec2> at = placeOf(state_->canvas, finding.part);
        if (finding.at)
            at = Vec2{finding.at->x, finding.at->z};
        if (at)
            state_->canvas.viewport.reveal(*at, state_->canvas.area);
    }
    update();
}

/// Let the tool act, then show what came of it.
void ElevationView::act(const std::function<void(Tool&)>& action)
{
    action(*state_->tool);
    if (state_->canvas.done)
        setTool(ToolKind::select);
    refresh();
}

void ElevationView::refresh()
{
    const PartRef& part = state_->canvas.selection.part();
    setAccessibleDescription(part.kind == PartKind::nothing
                                 ? tr("Nothing selected")
                                 : tr("Selected: %1").arg(nameOfPart(state_->canvas.sketch(), part)));
    const bool panning = state_->pan_from || state_->space_held;
    const QString text =
        panning ? tr("Drag to move the paper; the wheel zooms to the pointer.") : state_->tool->hint();
    if (text != state_->hint) {
        state_->hint = text;
        Q_EMIT hint(text);
    }
    setCursor(panning ? Qt::SizeAllCursor : state_->tool->cursor());
    update();
}

void ElevationView::documentChanged()
{
    // Somebody else's change, undo included, ends what the tool was about to do with the old values.
    if (!state_->canvas.applying) {
        state_->tool->documentChanged();
        refresh();
    }
    update();
}

void ElevationView::moveCrosshair(Vec2 to)
{
    state_->crosshair = to;
    state_->canvas.viewport.reveal(to, state_->canvas.area);
    act([this](Tool& tool) { tool.moved(state_->keys()); });
    Q_EMIT pointerAt(to);
}

bool ElevationView::event(QEvent* event)
{
    if (event->type() == QEvent::NativeGesture) {
        const auto* gesture = static_cast<QNativeGestureEvent*>(event);
        if (gesture->gestureType() == Qt::ZoomNativeGesture) {
            state_->canvas.viewport.zoomAbout(gesture->position(), 1 + gesture->value());
            update();
            return true;
        }
    }
    if (event->type() == QEvent::ShortcutOverride) {
        // With the focus here these keys mean the drawing, whatever the window has them for.
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
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

void ElevationView::paintEvent(QPaintEvent*)
{
    const Canvas& canvas = state_->canvas;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), canvas.palette.ground);
    painter.setClipRect(canvas.area);
    if (state_->grid_shown) {
        painter.setRenderHint(QPainter::Antialiasing, false);
        paintGrid(painter, canvas);
        painter.setRenderHint(QPainter::Antialiasing);
    }
    painter.save();
    painter.setTransform(canvas.viewport.transform(), true);
    drawing::paintElevation(painter, canvas.sketch(), canvas.document.analysis(), canvas.style());
    painter.restore();
    if (const ResolvedHose* hose = canvas.layout().hose(canvas.selection.hoverHose());
        hose && !(*hose)->path.line.empty()) {
        painter.setPen(QPen(canvas.palette.accent, 2));
        painter.setBrush(canvas.palette.ground);
        painter.drawEllipse(canvas.viewport.toScreen((*hose)->path.line.at(canvas.selection.hoverAlong())), 5,
                            5);
    }
    state_->tool->paint(painter);
    painter.setClipping(false);
    paintRulers(painter, canvas, size(),
                state_->crosshair ? std::optional(canvas.viewport.toScreen(*state_->crosshair))
                                  : state_->pointer);
    if (hasFocus()) {
        painter.setPen(QPen(canvas.palette.accent, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void ElevationView::mousePressEvent(QMouseEvent* event)
{
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

void ElevationView::wheelEvent(QWheelEvent* event)
{
    constexpr double notch = 120; // eighths of a degree per click of a wheel
    const double notches = event->angleDelta().y() / notch;
    if (notches != 0)
        state_->canvas.viewport.zoomAbout(event->position(), std::pow(zoom_step, notches));
    event->accept();
    update();
}

bool ElevationView::crosshairKey(const QKeyEvent& event)
{
    if (!state_->tool->hasCrosshair())
        return false;
    const double fine_mm = state_->canvas.nudgeStep(true);
    const double step_mm = state_->canvas.nudgeStep(false);
    const double coarse_mm = state_->canvas.units() == UnitSystem::inch ? 8 * step_mm : 10 * step_mm;
    const double by_mm = event.modifiers().testFlag(Qt::ControlModifier) ? coarse_mm
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
    if (event->key() == Qt::Key_Space) {
        if (!event->isAutoRepeat()) {
            state_->space_held = true;
            state_->space_panned = false;
            refresh();
        }
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
    state_->canvas.area = QRectF(rect()).adjusted(ruler_px, ruler_px, 0, 0);
    if (!state_->fitted && !state_->canvas.area.isEmpty()) {
        state_->fitted = true;
        zoomToFit();
    }
    QWidget::resizeEvent(event);
}

void ElevationView::contextMenuEvent(QContextMenuEvent* event)
{
    Selection& selection = state_->canvas.selection;
    QPoint at = event->globalPos();
    if (event->reason() == QContextMenuEvent::Keyboard) {
        if (const std::optional<Vec2> place = placeOf(state_->canvas, selection.part()))
            at = mapToGlobal(toScreen(*place).toPoint());
    } else {
        selection.select(hitTest(state_->canvas, event->pos()).part);
    }
    Q_EMIT contextMenuWanted(selection.part(), at);
}

} // namespace siphonwright
