#include "app/canvas/elevation_view.h"

#include "app/canvas/area_tool.h"
#include "app/canvas/hose_tool.h"
#include "app/canvas/overlay.h"
#include "app/canvas/part_names.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/photo_tool.h"
#include "app/canvas/place_tool.h"
#include "app/canvas/rulers.h"
#include "app/canvas/select_tool.h"
#include "app/canvas/view_state.h"

#include <QPainter>

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
    case ToolKind::photo_scale:
    case ToolKind::photo_level:
    case ToolKind::photo_straighten:
        return std::make_unique<PhotoTool>(canvas, kind);
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
    else if (part.kind == PartKind::photo)
        add(photoFrame(canvas));
    else if (const ResolvedHose* hose = part.kind == PartKind::hose ? canvas.layout().hose(part.id) : nullptr)
        for (const Piece& piece : (*hose)->path.line.pieces())
            points << drawing::toPage(piece.start) << drawing::toPage(piece.at(piece.length_mm));
    else if (const std::optional<Vec2> at = placeOf(canvas, part))
        add({{at->x - around_mm, at->z - around_mm}, {at->x + around_mm, at->z + around_mm}});
    return points.isEmpty() ? QRectF()
                            : points.boundingRect().adjusted(-around_mm, -around_mm, around_mm, around_mm);
}

} // namespace

ElevationView::ElevationView(Document& document, Selection& selection, QWidget* parent)
    : QWidget(parent), state_(std::make_unique<State>(document, selection))
{
    state_->tool = makeTool(state_->canvas, ToolKind::select);
    state_->canvas.photo_points = [this](const std::vector<Vec2>& points) {
        Q_EMIT photoPointsPicked(points);
    };
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(320, 240);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("Side elevation"));
    QFont font = drawing::lettering();
    font.setPixelSize(13); // the drawing's own letters are scaled on paper, those on the screen are not
    setFont(font);
    connect(&document, &Document::changed, this, &ElevationView::documentChanged);
    connect(&document, &Document::analysed, this, &ElevationView::refresh);
    connect(&selection, &Selection::partChanged, this, [this] { refresh(); });
    connect(&selection, &Selection::hoverChanged, this, qOverload<>(&QWidget::update));
    connect(&selection, &Selection::findingChanged, this,
            [this] { showFinding(state_->canvas.selection.finding()); });
}

ElevationView::~ElevationView() = default;

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
    state_->canvas.snapping = on;
}

void ElevationView::setGridShown(bool on)
{
    state_->grid_shown = on;
    update();
}

void ElevationView::setRunningShown(bool on)
{
    state_->canvas.running = on;
    update();
}

void ElevationView::setTinted(bool on)
{
    state_->canvas.tinted = on;
    update();
}

void ElevationView::setDark(bool on)
{
    state_->canvas.palette = on ? drawing::Palette::dark() : drawing::Palette::light();
    update();
}

void ElevationView::setContents(std::shared_ptr<const drawing::Contents> contents)
{
    state_->canvas.contents = std::move(contents);
    update();
}

void ElevationView::setFindingsShown(bool on)
{
    state_->canvas.findings_shown = on;
    update();
}

void ElevationView::setLettering(double times_usual)
{
    state_->canvas.lettering = times_usual;
    update();
}

void ElevationView::zoomToFit()
{
    const Document& document = state_->canvas.document;
    state_->canvas.viewport.fit(
        withPhotoFrame(drawing::boundsOf(document.sketch(), document.analysis()), state_->canvas),
        state_->canvas.area);
    state_->fit = state_->canvas.viewport.transform();
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
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), State::zoom_step);
    update();
}

void ElevationView::zoomOut()
{
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), 1 / State::zoom_step);
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

} // namespace siphonwright
