#pragma once

#include <QImage>
#include <QRectF>
#include <QString>
#include <QTransform>

#include <array>
#include <optional>

/// A picture taken at an angle, made as if it had been taken square to a flat rectangle of known size: the
/// plane projective map of four points (Heckbert 1989, "Fundamentals of texture mapping and image warping",
/// from memory; here by QTransform::quadToQuad). Only what lies in the rectangle's plane comes out true.
namespace siphonwright::photo {

/// Top left, top right, bottom right, bottom left.
using Corners = std::array<QPointF, 4>;

/// Four points, taken in any order, as the corners of a rectangle: in turn from the one that makes the side
/// from the first to the second run to the right. `down` is the axis the second coordinate counts in: pixels.
/// @return their indices; nothing: they are no corners of a rectangle seen at an angle (three in one line,
/// one inside of the others' triangle).
std::optional<std::array<std::size_t, 4>> cornerOrder(const Corners& points);

/// Picture pixels to millimetres from the rectangle's top left corner, right and down.
std::optional<QTransform> straighteningMap(const Corners& corners, double width_mm, double height_mm);

struct Straightened {
    QImage image;     ///< null where there is a problem
    QRectF extent_mm; ///< of the image, from the rectangle's top left corner, right and down
    QString problem;
};

/// Everything of the picture that can be shown without being drawn out beyond measure: at most three times
/// the rectangle's longer side beyond it each way, at most longest_side_px wide and high. What lies beyond
/// the picture shows through.
Straightened straighten(const QImage& picture, const Corners& corners, double width_mm, double height_mm);

} // namespace siphonwright::photo
