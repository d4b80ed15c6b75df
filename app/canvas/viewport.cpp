#include "app/canvas/viewport.h"

#include <algorithm>

namespace siphonwright {

QPointF Viewport::toScreen(Vec2 p) const
{
    return {origin_.x() + p.x * zoom_, origin_.y() - p.z * zoom_};
}

Vec2 Viewport::toDrawing(QPointF screen) const
{
    return {(screen.x() - origin_.x()) / zoom_, (origin_.y() - screen.y()) / zoom_};
}

QTransform Viewport::transform() const
{
    return {zoom_, 0, 0, zoom_, origin_.x(), origin_.y()};
}

void Viewport::zoomAbout(QPointF screen, double factor)
{
    const Vec2 fixed = toDrawing(screen);
    zoom_ = std::clamp(zoom_ * factor, least_zoom, most_zoom);
    origin_ += screen - toScreen(fixed);
}

void Viewport::fit(const QRectF& page, const QRectF& screen)
{
    constexpr double filled = 0.88;
    constexpr double usual_zoom = 0.5;
    if (screen.isEmpty())
        return;
    const double across = page.width() > 0 ? screen.width() / page.width() : most_zoom;
    const double up = page.height() > 0 ? screen.height() / page.height() : most_zoom;
    const bool has_size = page.width() > 0 || page.height() > 0;
    zoom_ = has_size ? std::clamp(filled * std::min(across, up), least_zoom, most_zoom) : usual_zoom;
    origin_ = screen.center() - page.center() * zoom_;
}

void Viewport::reveal(Vec2 p, const QRectF& screen)
{
    constexpr double margin = 24;
    const QRectF inner = screen.adjusted(margin, margin, -margin, -margin);
    const QPointF at = toScreen(p);
    const QPointF wanted(std::clamp(at.x(), inner.left(), std::max(inner.left(), inner.right())),
                         std::clamp(at.y(), inner.top(), std::max(inner.top(), inner.bottom())));
    origin_ += wanted - at;
}

void Viewport::keepLevelWith(const Viewport& other)
{
    zoom_ = other.zoom_;
    origin_.setY(other.origin_.y());
}

} // namespace siphonwright
