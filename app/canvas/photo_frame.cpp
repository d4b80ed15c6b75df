#include "app/canvas/photo_frame.h"

#include "app/canvas/plane.h"
#include "app/photo/store_picture.h"

namespace siphonwright {

std::vector<Vec2> photoFrame(const Canvas& canvas)
{
    const drawing::Picture* picture = canvas.picture();
    if (canvas.view().isEnd() || !picture || picture->size_px.isEmpty())
        return {};
    return photo::cornersOf(**canvas.sketch().photo, picture->size_px);
}

QRectF withPhotoFrame(const QRectF& box, const Canvas& canvas)
{
    QPolygonF frame;
    for (const Vec2& corner : photoFrame(canvas))
        frame << drawing::toPage(corner);
    return frame.isEmpty() ? box : box.isNull() ? frame.boundingRect() : box.united(frame.boundingRect());
}

Hit photoAt(const Canvas& canvas, Vec2 at)
{
    const std::optional<Shared<Photo>>& photo = canvas.sketch().photo;
    if (!photo || (*photo)->locked)
        return {};
    const std::vector<Vec2> frame = photoFrame(canvas);
    return !frame.empty() && isInside(frame, at) ? Hit{{PartKind::photo, {}, 0}, false, -1, std::nullopt}
                                                 : Hit{};
}

} // namespace siphonwright
