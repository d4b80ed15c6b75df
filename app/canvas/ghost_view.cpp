#include "app/canvas/box_tool.h"
#include "app/canvas/view_state.h"

#include <QPainter>

#include <cmath>
#include <utility>

/// What is not there yet: a proposed layout over the drawing, and the area asked for.
namespace siphonwright {
namespace {

constexpr double see_through = 0.72;

} // namespace

void ElevationView::setGhost(std::shared_ptr<const drawing::Ghost> ghost)
{
    state_->ghost = std::move(ghost);
    if (state_->ghost) {
        Canvas& canvas = state_->canvas;
        const QRectF wanted = drawing::boundsOf(*state_->ghost);
        const QRectF seen = canvas.viewport.transform().inverted().mapRect(canvas.area);
        if (!wanted.isNull() && !canvas.area.isEmpty() && !seen.contains(wanted))
            canvas.viewport.fit(wanted.united(drawing::boundsOf(canvas.sketch(), canvas.document.analysis())),
                                canvas.area);
    }
    update();
}

void ElevationView::askForBox(const QString& hint, std::function<void(Vec2, Vec2)> take)
{
    state_->tool->putAway();
    state_->tool = std::make_unique<BoxTool>(state_->canvas, hint, std::move(take));
    state_->canvas.done = false;
    state_->crosshair.reset();
    state_->kind = ToolKind::box;
    refresh();
    Q_EMIT toolChanged();
}

/// On a layer of its own, so that what overlaps within it does not shine through itself.
void ElevationView::paintGhost(QPainter& painter) const
{
    if (!state_->ghost)
        return;
    const Canvas& canvas = state_->canvas;
    const qreal ratio = devicePixelRatioF();
    QImage layer((QSizeF(size()) * ratio).toSize(), QImage::Format_ARGB32_Premultiplied);
    layer.setDevicePixelRatio(ratio);
    layer.fill(Qt::transparent);
    QPainter over(&layer);
    over.setTransform(canvas.viewport.transform(), true);
    drawing::paintGhost(over, *state_->ghost, canvas.style());
    over.end();
    painter.setOpacity(see_through);
    painter.drawImage(QPointF(0, 0), layer);
    painter.setOpacity(1);
}

} // namespace siphonwright
