#pragma once

#include "app/drawing/picture.h"

#include "core/sketch/sketch.h"

#include <memory>
#include <optional>

namespace siphonwright::photo {

/// Decode a sketch's picture, within the limits that hold for pictures from outside: a file may come from
/// anywhere.
drawing::Picture decoded(const Photo& photo);

/// The picture of the last sketch that was asked about. One that was moved, turned, scaled or faded is not
/// decoded again.
class PictureCache {
public:
    /// Null: the sketch has no photograph. Holds until the next call.
    const drawing::Picture* of(const Sketch& sketch);

private:
    std::optional<Shared<Photo>> photo_;
    drawing::Picture picture_;
};

} // namespace siphonwright::photo
