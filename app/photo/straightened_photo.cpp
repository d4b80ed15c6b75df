#include "app/photo/straightened_photo.h"

#include "app/language/tr.h"
#include "app/photo/picture_cache.h"
#include "app/photo/store_picture.h"
#include "app/photo/straighten.h"

#include "core/sketch/photo_edits.h"

#include <algorithm>

namespace siphonwright::photo {
StraightenedPhoto straightened(const Photo& photo, const std::vector<Vec2>& points, double width_mm,
                               double height_mm)
{
    const drawing::Picture picture = decoded(photo);
    if (picture.levels.empty())
        return {std::nullopt, picture.problem};
    Corners seen; // on the drawing, down as in a picture
    for (std::size_t i = 0; i < seen.size() && points.size() == seen.size(); ++i)
        seen[i] = {points[i].x, -points[i].z};
    const auto order = cornerOrder(seen);
    if (!order)
        return {std::nullopt, tr("The four points are not the corners of a rectangle seen at an angle: three "
                                 "of them lie in one line, or one lies between the others.")};
    const QImage& image = picture.levels.front();
    const double reduced = double(image.width()) / picture.size_px.width();
    Corners corners;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const PicturePoint at = picturePoint(photo, points[(*order)[i]]);
        corners[i] = QPointF(at.right_px, at.down_px) * reduced;
    }
    const Straightened straight = straighten(image, corners, width_mm, height_mm);
    if (straight.image.isNull())
        return {std::nullopt, straight.problem};
    const StoredPicture stored = storedPicture(straight.image);
    Photo out = photo;
    out.data_base64 = stored.file.toBase64().toStdString();
    out.rotation_deg = 0;
    out.mm_per_pixel = straight.extent_mm.width() / stored.size_px.width();
    // Where the first point is in the rectangle: its corners are counted from the top left, clockwise.
    const auto first = std::find(order->begin(), order->end(), std::size_t{0}) - order->begin();
    const double right_mm = first == 1 || first == 2 ? width_mm : 0;
    const double down_mm = first >= 2 ? height_mm : 0;
    out.top_left = {points[0].x - right_mm + straight.extent_mm.left(),
                    points[0].z + down_mm - straight.extent_mm.top()};
    return {out, {}};
}

} // namespace siphonwright::photo
