#pragma once

#include "core/sketch/sketch.h"

#include <QByteArray>
#include <QImage>

namespace siphonwright::photo {

/// Ceiling of the picture in a sketch, before Base64 makes it a third longer: small enough to be mailed.
constexpr qsizetype largest_stored_bytes = 1'500'000;

/// A picture as it goes into a sketch. What the camera wrote beside it (place, time) is not kept.
struct StoredPicture {
    QByteArray file; ///< JPEG; PNG where something shows through and it stays under the ceiling
    QSize size_px;   ///< smaller than the image where quality alone did not do
};
StoredPicture storedPicture(const QImage& image);

/// A photograph `width_mm` wide with its middle at a place; faded by half, not locked.
Photo photoOf(const StoredPicture& picture, Vec2 middle, double width_mm);

/// The bytes of the picture in a sketch; empty where they are no Base64.
QByteArray storedFile(const Photo& photo);

/// Pixels of the picture in a sketch, by its header; empty where it cannot be read.
QSize storedSize(const Photo& photo);

/// Middle of the picture on the drawing; its corner where the size cannot be read.
Vec2 middleOf(const Photo& photo);

/// Its corners on the drawing: top left, top right, bottom right, bottom left of the picture.
std::vector<Vec2> cornersOf(const Photo& photo, QSize size_px);

} // namespace siphonwright::photo
