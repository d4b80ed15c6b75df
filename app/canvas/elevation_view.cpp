#include "app/canvas/elevation_view.h"

#include "app/canvas/accessible_view.h"
#include "app/canvas/area_tool.h"
#include "app/canvas/dimension_tool.h"
#include "app/canvas/group.h"
#include "app/canvas/hose_tool.h"
#include "app/canvas/overlay.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/photo_tool.h"
#include "app/canvas/place_tool.h"
#include "app/canvas/rulers.h"
#include "app/canvas/select_tool.h"
#include "app/canvas/view_state.h"

#include <QPainter>
#include <QResizeEvent>

#include <cmath>

namespace siphonwright {
namespace {

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
    case ToolKind::dimension:
        return std::make_unique<DimensionTool>(canvas);
    case ToolKind::photo_scale:
    case ToolKind::photo_level:
    case ToolKind::photo_straighten:
        return std::make_unique<PhotoTool>(canvas, kind);
    default:
        return std::make_unique<PlaceTool>(canvas, kind);
    }
}

} // namespace

ElevationView::ElevationView(Document& document, Selection& selection, QWidget* parent, Projection view)
    : QWidget(parent), state_(std::make_unique<State>(document, selection))
{
    state_->canvas.viewport.setView(view);
    state_->pictures = std::make_unique<HosePictures>(state_->hoses, [this] { update(); });
    state_->tool = makeTool(state_->canvas, ToolKind::select);
    makeElevationAccessible();
    state_->canvas.photo_points = [this](const std::vector<Vec2>& points) {
        Q_EMIT photoPointsPicked(points);
    };
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAttribute(Qt::WA_AcceptTouchEvents);
    setAcceptDrops(!view.isEnd()); // what is new is put down in the side elevation
    setMinimumSize(view.isEnd() ? 200 : 320, 160);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(view.isEnd() ? tr("End view") : tr("Side elevation"));
    QFont font = drawing::lettering();
    font.setPixelSize(
        drawing::usual_text_px); // the drawing's own letters are scaled on paper, those on the screen are not
    setFont(font);
    connect(&document, &Document::changed, this, &ElevationView::documentChanged);
    connect(&document, &Document::analysed, this, &ElevationView::refresh);
    connect(&selection, &Selection::partChanged, this, [this] {
        state_->hoses.expect(hosesMovedBy(state_->canvas.sketch(), state_->canvas.selection.parts()));
        refresh();
        announceSelection(*this);
    });
    connect(&selection, &Selection::hoverChanged, this, qOverload<>(&QWidget::update));
    connect(&selection, &Selection::findingChanged, this,
            [this] { showFinding(state_->canvas.selection.finding()); });
}

ElevationView::~ElevationView() = default;

template <class Value>
void ElevationView::tellPartner(void (ElevationView::*set)(Value), const Value& value)
{
    ElevationView* partner = state_->follows ? nullptr : state_->partner.data();
    if (partner)
        (partner->*set)(value);
}

void ElevationView::setTool(ToolKind kind)
{
    state_->tool->putAway();
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
    tellPartner(&ElevationView::setSnapping, on);
    state_->canvas.snapping = on;
}

void ElevationView::setSnapTo(SnapKind kind, bool on)
{
    state_->canvas.snap_settings.choice.set(kind, on);
    if (state_->partner && !state_->follows)
        state_->partner->setSnapTo(kind, on);
}

void ElevationView::setSnapSlope(double slope)
{
    tellPartner(&ElevationView::setSnapSlope, slope);
    state_->canvas.snap_settings.slope = slope;
}

void ElevationView::setGridShown(bool on)
{
    tellPartner(&ElevationView::setGridShown, on);
    state_->grid_shown = on;
    update();
}

void ElevationView::setRunningShown(bool on)
{
    tellPartner(&ElevationView::setRunningShown, on);
    state_->canvas.running = on;
    update();
}

void ElevationView::setTinted(bool on)
{
    tellPartner(&ElevationView::setTinted, on);
    state_->canvas.tinted = on;
    update();
}

void ElevationView::setLook(drawing::Look look)
{
    tellPartner(&ElevationView::setLook, look);
    state_->canvas.palette = drawing::paletteOf(look);
    update();
}

void ElevationView::setContents(std::shared_ptr<const drawing::Contents> contents)
{
    tellPartner(&ElevationView::setContents, contents);
    state_->canvas.contents = std::move(contents);
    update();
}

void ElevationView::setFindingsShown(bool on)
{
    tellPartner(&ElevationView::setFindingsShown, on);
    state_->canvas.findings_shown = on;
    update();
}

void ElevationView::setLettering(double times_usual)
{
    tellPartner(&ElevationView::setLettering, times_usual);
    state_->canvas.lettering = times_usual;
    update();
}

void ElevationView::setTextScale(double times_usual)
{
    tellPartner(&ElevationView::setTextScale, times_usual);
    state_->canvas.text_scale = times_usual;
    QFont larger = font();
    larger.setPixelSize(static_cast<int>(std::lround(drawing::usual_text_px * times_usual)));
    setFont(larger);
    QResizeEvent rulers_changed(size(), size());
    resizeEvent(&rulers_changed);
    update();
}

void ElevationView::zoomIn()
{
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), State::zoom_step);
    update();
}

void ElevationView::zoomOut()
{
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), 1 / State::zoom_step);
    update();
}

void ElevationView::showFinding(int index)
{
    const std::vector<Finding>& findings = state_->canvas.document.analysis().findings;
    if (index >= 0 && static_cast<std::size_t>(index) < findings.size()) {
        const Finding& finding = findings[static_cast<std::size_t>(index)];
        std::optional<Vec2> at = placeOf(state_->canvas, finding.part);
        if (finding.at)
            at = state_->canvas.view().flat(*finding.at);
        if (at)
            state_->canvas.viewport.reveal(*at, state_->canvas.area);
    }
    update();
}

void ElevationView::showPlace(Vec2 at)
{
    state_->canvas.viewport.reveal(at, state_->canvas.area);
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
    const std::vector<PartRef>& parts = state_->canvas.selection.parts();
    setAccessibleDescription(parts.empty()
                                 ? tr("Nothing selected")
                                 : tr("Selected: %1").arg(nameOfParts(state_->canvas.sketch(), parts)));
    const bool panning = state_->pan_from || state_->space_held;
    const bool by_keys = state_->crosshair && state_->tool->hasCrosshair() && !state_->tool->onTarget();
    const QString text = panning   ? tr("Drag to move the paper; the wheel zooms to the pointer.")
                         : by_keys ? keysHint()
                                   : state_->tool->hint();
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
    if (const std::size_t parts = thingCount(); parts != state_->announced) {
        state_->announced = parts;
        announceParts(*this);
    }
    state_->rest.start(State::rest_ms, this);
    update();
}

void ElevationView::paintEvent(QPaintEvent*)
{
    const Canvas& canvas = state_->canvas;
    if (state_->shown != canvas.viewport.transform()) {
        state_->shown = canvas.viewport.transform();
        Q_EMIT heightsMoved();
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (state_->hoses.keepsPictures()) // so that it is at hand when a drag begins
        state_->ground.paint(painter, canvas, size(), state_->grid_shown);
    else
        paintGround(painter, canvas, size(), state_->grid_shown);
    painter.setClipRect(canvas.area);
    painter.save();
    painter.setTransform(canvas.viewport.transform(), true);
    drawing::paintElevation(painter, canvas.sketch(), canvas.document.analysis(), canvas.style(),
                            &state_->hoses, &canvas.balloons());
    painter.restore();
    paintGhost(painter);
    if (const ResolvedHose* hose = canvas.layout().hose(canvas.selection.hoverHose());
        hose && !(*hose)->path.line.empty()) {
        painter.setPen(QPen(canvas.palette.accent, 2));
        painter.setBrush(canvas.palette.ground);
        painter.drawEllipse(canvas.viewport.toScreen((*hose)->path.line.at(canvas.selection.hoverAlong())), 5,
                            5);
    }
    state_->tool->paint(painter);
    if (!state_->outline.empty())
        overlay::paintGhostOutline(painter, canvas, state_->outline, true);
    if (hasFocus() && canvas.selection.parts().size() > 1) {
        // Which of them the keyboard is on.
        painter.setPen(QPen(canvas.palette.text, 1, Qt::DotLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(rectOf(canvas.selection.part()));
    }
    paintCaption(painter);
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

} // namespace siphonwright
