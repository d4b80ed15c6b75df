#include "app/drawing/balloon_pictures.h"

#include "app/drawing/balloon.h"

#include <QPaintDevice>

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright::drawing {

bool BalloonPictures::Kept::shows(const Kept& other) const
{
    return centre.x() == other.centre.x() && centre.y() == other.centre.y() && radius == other.radius &&
           severity == other.severity && line_width == other.line_width;
}

void BalloonPictures::begin(const QPainter& painter, const Palette& palette)
{
    const double pixel_ratio = painter.device()->devicePixelRatioF();
    std::vector<QColor> colours = {palette.ground, palette.ink, palette.stop, palette.caution,
                                   palette.advice};
    const bool same = transform_ == painter.transform() && pixel_ratio_ == pixel_ratio &&
                      hints_ == painter.renderHints() && colours_ == colours;
    before_ = same ? std::exchange(now_, {}) : std::vector<Kept>();
    now_.clear();
    next_ = 0;
    transform_ = painter.transform();
    pixel_ratio_ = pixel_ratio;
    hints_ = painter.renderHints();
    colours_ = std::move(colours);
    usable_ = transform_.type() <= QTransform::TxScale && pixel_ratio == std::floor(pixel_ratio);
}

void BalloonPictures::paint(QPainter& painter, const Palette& palette, QPointF centre, double radius,
                            Severity severity, int number, double line_width)
{
    if (!usable_) {
        paintBalloon(painter, palette, centre, radius, severity, number, line_width);
        return;
    }
    Kept wanted;
    wanted.centre = centre;
    wanted.radius = radius;
    wanted.severity = severity;
    wanted.line_width = line_width;
    const auto shows = [&](const Kept& kept) { return kept.shows(wanted); };
    auto found = before_.begin() + static_cast<std::ptrdiff_t>(std::min(next_, before_.size()));
    if (found == before_.end() || !shows(*found))
        found = std::find_if(before_.begin(), before_.end(), shows);
    if (found != before_.end()) {
        next_ = static_cast<std::size_t>(found - before_.begin()) + 1;
        now_.push_back(*found);
    } else {
        draw(wanted, painter, palette);
        now_.push_back(std::move(wanted));
    }
    painter.save();
    painter.resetTransform();
    painter.drawImage(now_.back().at, now_.back().image);
    painter.restore();
    // Letters on a picture of their own would have another rim.
    paintFigure(painter, palette, centre, radius, severity, number);
}

void BalloonPictures::draw(Kept& balloon, const QPainter& painter, const Palette& palette) const
{
    constexpr double rim_px = 2;
    constexpr double corners = 1.5; // of a radius: those of a triangle, but for its mitres
    const double reach = corners * balloon.radius + 2 * balloon.line_width;
    const QRectF box = painter.transform().mapRect(
        QRectF(balloon.centre - QPointF(reach, reach), balloon.centre + QPointF(reach, reach)));
    balloon.at = QPoint(static_cast<int>(std::floor(box.left() - rim_px)),
                        static_cast<int>(std::floor(box.top() - rim_px)));
    const QSize size(static_cast<int>(std::ceil(box.right() + rim_px)) - balloon.at.x(),
                     static_cast<int>(std::ceil(box.bottom() + rim_px)) - balloon.at.y());
    balloon.image = QImage(size * pixel_ratio_, QImage::Format_ARGB32_Premultiplied);
    balloon.image.setDevicePixelRatio(pixel_ratio_);
    balloon.image.fill(Qt::transparent);
    QPainter onto(&balloon.image);
    onto.setRenderHints(hints_);
    onto.setTransform(transform_ * QTransform::fromTranslate(-balloon.at.x(), -balloon.at.y()));
    paintMark(onto, palette, balloon.centre, balloon.radius, balloon.severity, balloon.line_width);
}

} // namespace siphonwright::drawing
