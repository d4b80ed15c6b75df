#include "app/canvas/box_tool.h"

#include "app/canvas/overlay.h"
#include "app/canvas/plane.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <utility>

namespace siphonwright {

BoxTool::BoxTool(Canvas& canvas, QString hint, Take take)
    : Tool(canvas), hint_(std::move(hint)), take_(std::move(take))
{}

void BoxTool::moved(const Pointer& pointer)
{
    at_ = pointer;
    const Snapped snapped = canvas_.snap(pointer.at, {}, pointer);
    next_ = snapped.at;
    guides_ = snapped.guides;
}

void BoxTool::pressed(const Pointer& pointer)
{
    moved(pointer);
    if (first_)
        return finish();
    first_ = next_;
    first_screen_ = pointer.screen;
}

void BoxTool::released(const Pointer& pointer)
{
    constexpr double dragged_px = 6;
    if (!first_ || distanceBetween(first_screen_, pointer.screen) < dragged_px)
        return; // a click: the other corner is still to come
    moved(pointer);
    finish();
}

bool BoxTool::cancel()
{
    const bool busy = first_.has_value();
    first_.reset();
    guides_.clear();
    return busy;
}

void BoxTool::finish()
{
    const Vec2 least{std::min(first_->x, next_.x), std::min(first_->z, next_.z)};
    const Vec2 most{std::max(first_->x, next_.x), std::max(first_->z, next_.z)};
    if (least == most)
        return;
    first_.reset();
    canvas_.done = true;
    take_(least, most);
}

void BoxTool::paint(QPainter& painter) const
{
    if (!at_)
        return;
    QStringList lines;
    if (first_) {
        overlay::paintGhostOutline(painter, canvas_,
                                   {*first_, {next_.x, first_->z}, next_, {first_->x, next_.z}}, true);
        lines.append(QCoreApplication::translate("Canvas", "%1 wide, %2 high")
                         .arg(canvas_.length(std::abs(next_.x - first_->x)),
                              canvas_.length(std::abs(next_.z - first_->z))));
    }
    overlay::paintGuides(painter, canvas_, guides_);
    if (at_->keyboard)
        overlay::paintCrosshair(painter, canvas_, at_->at);
    lines.append(QCoreApplication::translate("Canvas", "Height %1")
                     .arg(canvas_.length(canvas_.layout().plumb.height({next_.x, 0, next_.z}))));
    overlay::paintDimensions(painter, canvas_, at_->screen, lines);
}

} // namespace siphonwright
