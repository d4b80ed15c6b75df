#include "app/canvas/photo_tool.h"

#include "app/canvas/overlay.h"
#include "app/canvas/photo_frame.h"
#include "app/canvas/plane.h"

#include "core/sketch/photo_edits.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace siphonwright {
namespace {

QPointF flat(Vec2 p)
{
    return {p.x, p.z};
}

} // namespace

void PhotoTool::moved(const Pointer& pointer)
{
    at_ = pointer; // nothing snaps: the picture knows no grid
}

void PhotoTool::pressed(const Pointer& pointer)
{
    constexpr double apart_px = 3;
    moved(pointer);
    if (points_.size() >= wanted())
        return;
    // The second click of a double-click is no second point.
    if (!points_.empty() &&
        distanceBetween(canvas_.viewport.toScreen(points_.back()), pointer.screen) < apart_px)
        return;
    points_.push_back(pointer.at);
    if (points_.size() == wanted())
        finish();
}

void PhotoTool::finish()
{
    if (kind_ == ToolKind::photo_level) {
        level();
        points_.clear();
        canvas_.selection.select({PartKind::photo, {}, 0});
        canvas_.done = true;
    } else if (canvas_.photo_points) {
        canvas_.photo_points(points_);
    }
}

void PhotoTool::level()
{
    // Level by the plumb of the sketch, whatever grade is looked at; on the drawing, square to that.
    const Vec3 up = plumbOf(canvas_.sketch()).up();
    canvas_.apply(tr("Level the photo"), [&](Sketch& sketch) {
        levelPhotoByTwoPoints(sketch, points_[0], points_[1], {up.z, -up.x});
    });
}

bool PhotoTool::key(const QKeyEvent& event)
{
    if (event.key() != Qt::Key_Backspace)
        return false;
    if (!points_.empty())
        points_.pop_back();
    return true;
}

bool PhotoTool::walk(bool)
{
    return !photoFrame(canvas_).empty();
}

/// Round the photograph's corners.
std::optional<Vec2> PhotoTool::nextStop(Vec2 from, bool forward) const
{
    const std::vector<Vec2> frame = photoFrame(canvas_);
    if (frame.empty())
        return std::nullopt;
    const auto nearest = std::min_element(frame.begin(), frame.end(), [&](const Vec2& a, const Vec2& b) {
        return distanceBetween(flat(a), flat(from)) < distanceBetween(flat(b), flat(from));
    });
    if (*nearest != from)
        return *nearest;
    const auto at = static_cast<std::size_t>(nearest - frame.begin());
    return frame[(at + (forward ? 1 : frame.size() - 1)) % frame.size()];
}

bool PhotoTool::cancel()
{
    const bool busy = !points_.empty();
    points_.clear();
    return busy;
}

void PhotoTool::documentChanged()
{
    points_.clear();
    if (!canvas_.sketch().photo)
        canvas_.done = true;
}

QStringList PhotoTool::sizes(Vec2 to) const
{
    if (points_.empty() || points_.size() >= wanted())
        return {};
    return {tr("As drawn now %1").arg(canvas_.length(distanceBetween(flat(points_.back()), flat(to))))};
}

void PhotoTool::paint(QPainter& painter) const
{
    std::vector<Vec2> outline = points_;
    const bool more = at_ && points_.size() < wanted();
    if (more)
        outline.push_back(at_->at);
    if (outline.size() > 1)
        overlay::paintGhostOutline(painter, canvas_, outline, outline.size() == 4);
    for (const Vec2& point : points_) {
        // A cross with a gap: what is pointed at stays to be seen.
        const QPointF p = canvas_.viewport.toScreen(point);
        painter.setPen(QPen(canvas_.palette.ground, 4));
        painter.drawEllipse(p, 8, 8);
        painter.setPen(QPen(canvas_.palette.accent, 2));
        painter.drawEllipse(p, 8, 8);
        painter.drawPoint(p);
    }
    if (!more)
        return;
    if (at_->keyboard)
        overlay::paintCrosshair(painter, canvas_, at_->at);
    overlay::paintDimensions(painter, canvas_, at_->screen, sizes(at_->at));
}

QString PhotoTool::hint() const
{
    const int left = static_cast<int>(wanted() - points_.size());
    if (left == 0)
        return tr("Type what was measured.");
    switch (kind_) {
    case ToolKind::photo_scale:
        return left == 2 ? tr("Click a point in the photo; then another, as far away as you have measured.")
                         : tr("Click the second point. Backspace takes the first one back.");
    case ToolKind::photo_level:
        return left == 2 ? tr("Click two points along something that is level in truth.")
                         : tr("Click the second point along it. Backspace takes the first one back.");
    default:
        return tr("Click the corners of a flat rectangle whose width and height you know: %1 left. "
                  "Backspace takes the last one back.")
            .arg(left);
    }
}

} // namespace siphonwright
