#pragma once

#include "app/canvas/canvas.h"

namespace siphonwright {

/// What is worth knowing while a part moves: its height, the slope of the pieces beside it, how far it is
/// from the limit that it is nearest to.
QStringList dimensionsOf(const Canvas& canvas, const PartRef& part);

/// "Hump 12 mm, holds 30 ml" for the worst crest (supply and return) and hollow of a hose.
QStringList trapsOf(const Canvas& canvas, const Profile& profile);

/// "Falls 1 in 24", "Rises 1 in 50", "Level" between two places, along plumb.
QString slopeBetween(const Canvas& canvas, Vec3 from, Vec3 to);

} // namespace siphonwright
