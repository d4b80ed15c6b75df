#include "app/photo/store_picture.h"

#include "app/photo/read_picture.h"

#include "core/sketch/photo_edits.h"

#include <QBuffer>
#include <QPainter>

#include <algorithm>

namespace siphonwright::photo {
namespace {

// Over 88 a photograph grows and looks no better; under 58 edges begin to fray.
constexpr int qualities[] = {88, 78, 68, 58};
constexpr double shrink = 0.8;

QByteArray encoded(const QImage& image, const char* format, int quality)
{
    QByteArray out;
    QBuffer buffer(&out);
    buffer.open(QIODevice::WriteOnly);
    return image.save(&buffer, format, quality) ? out : QByteArray();
}

bool showsThrough(const QImage& image)
{
    if (!image.hasAlphaChannel())
        return false;
    const QImage pixels = image.convertToFormat(QImage::Format_ARGB32);
    for (int y = 0; y < pixels.height(); ++y) {
        const auto* line = reinterpret_cast<const QRgb*>(pixels.constScanLine(y));
        if (std::any_of(line, line + pixels.width(), [](QRgb pixel) { return qAlpha(pixel) < 255; }))
            return true;
    }
    return false;
}

/// On a grey that is neither paper nor night: JPEG has no holes.
QImage flattened(const QImage& image)
{
    QImage out(image.size(), QImage::Format_RGB32);
    out.fill(qRgb(0x8c, 0x8c, 0x8c));
    QPainter(&out).drawImage(0, 0, image);
    return out;
}

/// By a sixteenth of it: a photograph as PNG takes seconds, only to be found far too large.
bool maybeSmallAsPng(const QImage& image)
{
    constexpr int fast = 80; // in Qt's terms, of a PNG
    constexpr qsizetype times = 8;
    const QImage part = image.scaled(image.size() / 4, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    return encoded(part, "PNG", fast).size() * times <= largest_stored_bytes;
}

} // namespace

StoredPicture storedPicture(const QImage& image)
{
    const bool open = showsThrough(image);
    if (open && maybeSmallAsPng(image)) {
        constexpr int well_compressed = 40;
        QByteArray png = encoded(image, "PNG", well_compressed);
        if (!png.isEmpty() && png.size() <= largest_stored_bytes)
            return {png, image.size()};
    }
    QImage flat = open ? flattened(image) : image.convertToFormat(QImage::Format_RGB32);
    while (true) {
        for (const int quality : qualities) {
            QByteArray jpeg = encoded(flat, "JPEG", quality);
            if (!jpeg.isEmpty() && jpeg.size() <= largest_stored_bytes)
                return {jpeg, flat.size()};
        }
        const QSize smaller(int(flat.width() * shrink), int(flat.height() * shrink));
        if (std::min(smaller.width(), smaller.height()) < shortest_side_px)
            return {};
        flat = flat.scaled(smaller, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
}

Photo photoOf(const StoredPicture& picture, Vec2 middle, double width_mm)
{
    Photo out;
    out.data_base64 = picture.file.toBase64().toStdString();
    out.mm_per_pixel = width_mm / picture.size_px.width();
    out.top_left = {middle.x - width_mm / 2, middle.z + out.mm_per_pixel * picture.size_px.height() / 2};
    return out;
}

QByteArray storedFile(const Photo& photo)
{
    const auto decoded = QByteArray::fromBase64Encoding(
        QByteArray::fromRawData(photo.data_base64.data(), qsizetype(photo.data_base64.size())),
        QByteArray::Base64Encoding | QByteArray::AbortOnBase64DecodingErrors);
    return decoded ? *decoded : QByteArray();
}

QSize storedSize(const Photo& photo)
{
    // What this program stores has its size in the first bytes; another's may have much before it.
    constexpr std::size_t head_characters = 4096;
    Photo head;
    head.data_base64 = photo.data_base64.substr(0, head_characters);
    const QSize size = pictureSize(storedFile(head));
    return size.isValid() ? size : pictureSize(storedFile(photo));
}

Vec2 middleOf(const Photo& photo)
{
    const QSize size = storedSize(photo);
    return size.isValid() ? drawingPoint(photo, {size.width() / 2.0, size.height() / 2.0}) : photo.top_left;
}

std::vector<Vec2> cornersOf(const Photo& photo, QSize size_px)
{
    const double right = size_px.width();
    const double down = size_px.height();
    return {drawingPoint(photo, {0, 0}), drawingPoint(photo, {right, 0}), drawingPoint(photo, {right, down}),
            drawingPoint(photo, {0, down})};
}

} // namespace siphonwright::photo
