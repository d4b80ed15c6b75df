#include "app/photo/picture_cache.h"

#include "app/photo/read_picture.h"
#include "app/photo/store_picture.h"

#include <QCoreApplication>

namespace siphonwright::photo {

drawing::Picture decoded(const Photo& photo)
{
    constexpr int small_px = 200; // smaller ones are never wanted
    drawing::Picture out;
    const QByteArray file = storedFile(photo);
    if (file.isEmpty()) {
        out.problem = QCoreApplication::translate("Photo", "Its data are damaged: they are no Base64.");
        return out;
    }
    ReadPicture read = readPicture(file);
    out.problem = read.problem;
    if (read.image.isNull())
        return out;
    out.size_px = read.source_px;
    QImage level = read.image.convertToFormat(
        read.image.hasAlphaChannel() ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32);
    while (true) {
        out.levels.push_back(level);
        if (level.width() < 2 * small_px || level.height() < 2 * small_px)
            return out;
        level = level.scaled(level.size() / 2, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    }
}

const drawing::Picture* PictureCache::of(const Sketch& sketch)
{
    if (!sketch.photo) {
        photo_.reset();
        picture_ = {};
        return nullptr;
    }
    const Shared<Photo>& photo = *sketch.photo;
    if (!photo_ || (!photo_->same(photo) && (*photo_)->data_base64 != photo->data_base64))
        picture_ = decoded(*photo);
    photo_ = photo;
    return &picture_;
}

} // namespace siphonwright::photo
