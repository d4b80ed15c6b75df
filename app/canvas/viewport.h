#pragma once

#include "core/geometry/projection.h"

#include <QPointF>
#include <QRectF>
#include <QTransform>

namespace siphonwright {

/// From where the drawing is seen, pan and zoom: where its millimetres lie on the widget, in logical pixels.
class Viewport {
public:
    static constexpr double least_zoom = 0.01; ///< pixels per mm: 100 m fit on a screen
    static constexpr double most_zoom = 40;

    const Projection& view() const { return view_; }
    void setView(const Projection& view) { view_ = view; }
    double zoom() const { return zoom_; }
    QPointF toScreen(Vec2 p) const;
    QPointF toScreen(Vec3 p) const { return toScreen(view_.flat(p)); }
    Vec2 toDrawing(QPointF screen) const;
    /// Painter axes (x right, y = -z) to widget pixels.
    QTransform transform() const;

    void pan(QPointF pixels) { origin_ += pixels; }
    /// Zoom by a factor so that the drawing point under `screen` stays there.
    void zoomAbout(QPointF screen, double factor);
    /// Show `page` (painter axes) as large as it goes in `screen`, with a margin; an empty one is centred.
    void fit(const QRectF& page, const QRectF& screen);
    /// Pan by as little as brings a point into `screen`.
    void reveal(Vec2 p, const QRectF& screen);

    /// Height and zoom of another view, so that one height stands at one place on both.
    void keepLevelWith(const Viewport& other);

private:
    Projection view_;
    double zoom_ = 0.5;
    QPointF origin_; ///< where the drawing's origin lies on the widget
};

} // namespace siphonwright
