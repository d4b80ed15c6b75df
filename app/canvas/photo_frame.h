#pragma once

#include "app/canvas/hit.h"

namespace siphonwright {

/// The photograph's corners on the elevation; empty in the end view, without one or where it cannot be read.
std::vector<Vec2> photoFrame(const Canvas& canvas);
/// A box in painter axes with the photograph in it too.
QRectF withPhotoFrame(const QRectF& box, const Canvas& canvas);
/// The photograph, if it is under a place of the drawing and not locked: nothing lies under it.
Hit photoAt(const Canvas& canvas, Vec2 at);

} // namespace siphonwright
