#pragma once

#include <QByteArray>
#include <QImage>
#include <QString>

/// Pictures from outside, read within stated limits: what a file claims is looked at before any of it is
/// decoded, and a large picture is made smaller while it is read.
namespace siphonwright::photo {

constexpr qint64 largest_source_bytes = qint64(64) << 20;
/// Whole in memory at 4 bytes a pixel, as some kinds of file have to be: 256 MB.
constexpr qint64 largest_source_px = 64'000'000;
/// A progressive JPEG keeps up to 6 bytes a pixel, whatever size it is read at.
constexpr qint64 largest_progressive_px = 40'000'000;
constexpr int shortest_side_px = 8;
constexpr int longest_side_px = 2400; ///< after reading

struct ReadPicture {
    QImage image;    ///< upright, as the camera was held (Exif orientation); null where there is a problem
    QSize source_px; ///< upright, before it was made smaller
    QString problem; ///< a sentence; empty: read
};

/// PNG, JPEG, and WebP where Qt reads it; told by its first bytes, whatever it is called.
ReadPicture readPicture(const QByteArray& file);
ReadPicture readPictureFile(const QString& path);

/// Upright size of a picture by its header alone, within the limits; empty: it cannot be read.
QSize pictureSize(const QByteArray& file);

bool readsWebP();

} // namespace siphonwright::photo
