#pragma once

#include "core/sketch/sketch.h"

/// The photograph under the drawing: where it lies, and edits of its place, scale and turn.
///
/// Elementary plane geometry. The picture's own axes are pixels from its top left corner, right and down; the
/// drawing's are millimetres, right and up. A pixel is mm_per_pixel wide and high, and the picture is turned
/// clockwise by rotation_deg about its top left corner.
///
/// The edits leave the sketch as it is and return false when there is no photograph, when a figure is not
/// finite, or when the picture would come to lie, or be scaled, outside what the file format holds.
namespace siphonwright {

/// A place in the picture, pixels from its top left corner; may lie outside of it.
struct PicturePoint {
    double right_px = 0;
    double down_px = 0;
    friend bool operator==(const PicturePoint&, const PicturePoint&) = default;
};

/// Where a place in the picture lies on the drawing, and back.
Vec2 drawingPoint(const Photo& photo, PicturePoint at);
PicturePoint picturePoint(const Photo& photo, Vec2 at);

/// Make the picture larger or smaller, a point of the drawing staying where it is.
bool scalePhotoAbout(Sketch& sketch, Vec2 fixed, double factor);
/// Turn it, likewise. The angle that is kept lies over -180 and up to 180 degrees.
bool turnPhotoAbout(Sketch& sketch, Vec2 fixed, double clockwise_deg);

/// Scale it so that what two points of the drawing show is `true_mm` apart; what the first shows stays there.
bool scalePhotoByTwoPoints(Sketch& sketch, Vec2 first, Vec2 second, double true_mm);

/// Turn it, by no more than 90 degrees, so that the line between two points of the drawing lies `level`:
/// along a direction of the drawing, (1, 0) where neither engine nor vehicle stands at an angle. What the
/// first point shows stays there.
bool levelPhotoByTwoPoints(Sketch& sketch, Vec2 first, Vec2 second, Vec2 level = {1, 0});

} // namespace siphonwright
