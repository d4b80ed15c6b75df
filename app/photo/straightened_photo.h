#pragma once

#include "core/sketch/sketch.h"

#include <QString>

#include <optional>
#include <vector>

namespace siphonwright::photo {

struct StraightenedPhoto {
    std::optional<Photo> photo; ///< nothing where there is a problem
    QString problem;
};

/// A sketch's photograph resampled so that the rectangle with its four corners at `points` of the drawing, in
/// any order, is upright and of the size given. What was under the first point stays there; fade and lock
/// stay as they were.
StraightenedPhoto straightened(const Photo& photo, const std::vector<Vec2>& points, double width_mm,
                               double height_mm);

} // namespace siphonwright::photo
