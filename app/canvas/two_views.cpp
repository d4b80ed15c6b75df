#include "app/canvas/view_state.h"
#include "app/drawing/seen.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

/// What a view does because it is one of two: the side elevation and the end view beside it.
namespace siphonwright {

void ElevationView::setView(const Projection& view)
{
    if (view == state_->canvas.view())
        return;
    state_->tool->putAway();
    state_->canvas.viewport.setView(view);
    zoomToFit();
    refresh();
}

const Projection& ElevationView::view() const
{
    return state_->canvas.view();
}

void ElevationView::setPartner(ElevationView* partner)
{
    state_->partner = partner;
    partner->state_->partner = this;
    partner->state_->follows = true;
    // Not within painting: the other view is moved by it.
    connect(this, &ElevationView::heightsMoved, partner, &ElevationView::keepLevel, Qt::QueuedConnection);
    connect(partner, &ElevationView::heightsMoved, this, &ElevationView::keepLevel, Qt::QueuedConnection);
}

void ElevationView::setLevelled(bool on)
{
    state_->levelled = on;
    if (state_->partner)
        state_->partner->state_->levelled = on;
    zoomToFit();
}

/// The other view, if both are to be seen and kept level.
ElevationView* ElevationView::levelPartner() const
{
    ElevationView* partner = state_->partner;
    const bool seen = partner && partner->isVisibleTo(window()) && isVisibleTo(window());
    return seen && state_->levelled ? partner : nullptr;
}

void ElevationView::keepLevel()
{
    const ElevationView* partner = levelPartner();
    if (!partner)
        return;
    const QTransform before = state_->canvas.viewport.transform();
    const bool fitted = state_->fit && *state_->fit == before;
    // Zooming keeps the middle of the paper where it is.
    const double factor = partner->zoom() / zoom();
    state_->canvas.viewport.zoomAbout(state_->canvas.area.center(), factor);
    state_->canvas.viewport.keepLevelWith(partner->state_->canvas.viewport);
    if (state_->canvas.viewport.transform() == before)
        return;
    if (fitted && partner->state_->fit &&
        *partner->state_->fit == partner->state_->canvas.viewport.transform())
        state_->fit = state_->canvas.viewport.transform();
    state_->shown = state_->canvas.viewport.transform(); // and need not be told back
    update();
}

void ElevationView::fitAlone()
{
    const Document& document = state_->canvas.document;
    state_->canvas.viewport.fit(
        drawing::boundsOf(document.sketch(), document.analysis(), state_->canvas.view()),
        state_->canvas.area);
}

void ElevationView::zoomToFit()
{
    fitAlone();
    if (ElevationView* partner = levelPartner()) {
        partner->fitAlone();
        // The zoom at which both go in.
        const double least = std::min(zoom(), partner->zoom());
        for (ElevationView* one : {this, partner})
            one->state_->canvas.viewport.zoomAbout(one->state_->canvas.area.center(), least / one->zoom());
        ElevationView* end = state_->canvas.view().isEnd() ? this : partner;
        ElevationView* side = end == this ? partner : this;
        end->state_->canvas.viewport.keepLevelWith(side->state_->canvas.viewport);
        partner->state_->fit = partner->state_->canvas.viewport.transform();
        partner->update();
    }
    state_->fit = state_->canvas.viewport.transform();
    update();
}

/// Which end it is, where the eye begins.
void ElevationView::paintCaption(QPainter& painter) const
{
    const Canvas& canvas = state_->canvas;
    if (!canvas.view().isEnd())
        return;
    QString text = tr("End view");
    if (canvas.sketch().engine)
        text = drawing::endSeen(*canvas.sketch().engine, canvas.view()) == drawing::EndSeen::front
                   ? tr("End view from the front")
                   : tr("End view from the rear");
    const QFontMetricsF metrics(painter.font());
    constexpr double pad = 6;
    const QSizeF size(metrics.horizontalAdvance(text) + 2 * pad, metrics.height() + pad);
    const QRectF box(canvas.area.bottomLeft() + QPointF(pad, -pad - size.height()), size);
    QColor ground = canvas.palette.ground;
    ground.setAlphaF(0.9F);
    painter.setPen(QPen(canvas.palette.faint, 1));
    painter.setBrush(ground);
    painter.drawRect(box);
    painter.setPen(canvas.palette.text);
    painter.drawText(box, Qt::AlignCenter, text);
}

} // namespace siphonwright
