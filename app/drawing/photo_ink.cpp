#include "app/drawing/ink.h"
#include "app/drawing/picture.h"
#include "app/drawing/text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

/// The photograph under the drawing.
namespace siphonwright::drawing {

namespace {

/// Picture pixels to painter axes.
QTransform placeOf(const Photo& photo)
{
    const QPointF corner = toPage(photo.top_left);
    QTransform place;
    place.translate(corner.x(), corner.y());
    place.rotate(photo.rotation_deg);
    place.scale(photo.mm_per_pixel, photo.mm_per_pixel);
    return place;
}

/// The smallest level that is still as fine as the device: a large picture drawn small would glitter.
const QImage& levelFor(const Picture& picture, double device_px_per_pixel)
{
    std::size_t level = 0;
    while (level + 1 < picture.levels.size() && device_px_per_pixel <= 0.5) {
        device_px_per_pixel *= 2;
        ++level;
    }
    return picture.levels[level];
}

void drawOn(QPainter& painter, const Photo& photo, const Picture& picture)
{
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(painter.opacity() * std::clamp(photo.opacity, 0.0, 1.0));
    painter.setTransform(placeOf(photo), true);
    const double scale = std::sqrt(std::abs(painter.deviceTransform().determinant()));
    painter.drawImage(QRectF(QPointF(), QSizeF(picture.size_px)), levelFor(picture, scale));
    painter.restore();
}

/// As one plain image of what is seen, mixed with the ground.
void drawFlat(Ink& ink, const Photo& photo, const Picture& picture)
{
    constexpr double per_mm = 150 / 25.4; // of the device
    constexpr double most_px = 4000;
    const QRectF frame = placeOf(photo).mapRect(QRectF(QPointF(), QSizeF(picture.size_px)));
    const QRectF area = frame.intersected(ink.visible);
    const double longest = std::max(area.width(), area.height());
    if (area.isEmpty())
        return;
    const double scale = std::min(ink.style.scale * per_mm, most_px / longest);
    const QSize size(std::max(1, int(std::ceil(area.width() * scale))),
                     std::max(1, int(std::ceil(area.height() * scale))));
    QImage flat(size, QImage::Format_RGB32);
    flat.fill(ink.palette.ground);
    QPainter painter(&flat);
    painter.scale(size.width() / area.width(), size.height() / area.height());
    painter.translate(-area.topLeft());
    drawOn(painter, photo, picture);
    painter.end();
    if (ink.style.photo_as == PhotoAs::flat_grey)
        flat = flat.convertToFormat(QImage::Format_Grayscale8);
    ink.painter.drawImage(area, flat);
}

/// On the screen something has to stand for a picture that cannot be shown.
void drawMissing(Ink& ink, const Photo& photo)
{
    const QPointF corner = toPage(photo.top_left);
    const QRectF box(corner, QSizeF(ink.paper(60), ink.paper(40)));
    ink.painter.setPen(ink.pen(ink.palette.faint, medium_mm, Qt::DashLine));
    ink.painter.setBrush(Qt::NoBrush);
    ink.painter.drawRect(box);
    ink.line(box.topLeft(), box.bottomRight());
    ink.line(box.topRight(), box.bottomLeft());
    ink.label({{box.center(), Anchor::centre, 0}},
              QCoreApplication::translate("Drawing", "The photo cannot be shown"), ink.palette.caution);
}

} // namespace

void paintPhoto(Ink& ink)
{
    if (!ink.style.photo || !ink.sketch.photo)
        return;
    const Photo& photo = **ink.sketch.photo;
    const bool layer = ink.style.photo_as == PhotoAs::layer;
    if (!ink.style.photo->levels.empty()) {
        if (layer)
            drawOn(ink.painter, photo, *ink.style.photo);
        else
            drawFlat(ink, photo, *ink.style.photo);
    } else if (layer) {
        drawMissing(ink, photo);
    }
}

} // namespace siphonwright::drawing
