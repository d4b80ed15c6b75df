#include "app/canvas/area_tool.h"

#include "app/canvas/overlay.h"
#include "app/canvas/plane.h"

#include "core/sketch/edits.h"

#include <QKeyEvent>

namespace siphonwright {
namespace {

constexpr std::size_t fewest_corners = 3;

} // namespace

void AreaTool::moved(const Pointer& pointer)
{
    at_ = pointer;
    const Snapped snapped = canvas_.snap(pointer.at, sceneFor(corners_, canvas_.layout().plumb), pointer);
    next_ = snapped.at;
    guides_ = snapped.guides;
}

bool AreaTool::closes(const Pointer& pointer) const
{
    constexpr double reach_px = 10;
    return corners_.size() >= fewest_corners &&
           distanceBetween(canvas_.viewport.toScreen(corners_.front()), pointer.screen) < reach_px;
}

void AreaTool::pressed(const Pointer& pointer)
{
    moved(pointer);
    if (closes(pointer))
        finish();
    else if (corners_.empty() || corners_.back() != next_)
        corners_.push_back(next_);
}

void AreaTool::doubleClicked(const Pointer&)
{
    finish();
}

bool AreaTool::key(const QKeyEvent& event)
{
    if (event.key() == Qt::Key_Backspace) {
        if (!corners_.empty())
            corners_.pop_back();
        return true;
    }
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    const bool new_corner = at_ && at_->keyboard && (corners_.empty() || corners_.back() != next_);
    if (!enter || new_corner)
        return false;
    finish();
    return true;
}

bool AreaTool::cancel()
{
    const bool busy = !corners_.empty();
    corners_.clear();
    guides_.clear();
    return busy;
}

void AreaTool::finish()
{
    if (corners_.size() < fewest_corners)
        return;
    Area area;
    area.outline = corners_;
    Id id;
    canvas_.apply(tr("Draw an area to keep clear of"), [&](Sketch& sketch) { id = addArea(sketch, area); });
    corners_.clear();
    canvas_.selection.select({PartKind::area, id, 0});
    canvas_.done = true;
}

void AreaTool::paint(QPainter& painter) const
{
    std::vector<Vec2> outline = corners_;
    if (at_)
        outline.push_back(next_);
    if (!corners_.empty())
        overlay::paintGhostOutline(painter, canvas_, outline, outline.size() >= fewest_corners);
    for (const Vec2& corner : corners_)
        overlay::paintHandle(painter, canvas_, {{}, corner, HandleShape::square, false}, true, false);
    overlay::paintGuides(painter, canvas_, guides_);
    if (!at_)
        return;
    if (at_->keyboard)
        overlay::paintCrosshair(painter, canvas_, at_->at);
    QStringList lines = {
        tr("Height %1").arg(canvas_.length(canvas_.layout().plumb.height({next_.x, 0, next_.z})))};
    if (!corners_.empty())
        lines.append(tr("Edge %1").arg(
            canvas_.length(distanceBetween({corners_.back().x, corners_.back().z}, {next_.x, next_.z}))));
    overlay::paintDimensions(painter, canvas_, at_->screen, overlay::guideWords(guides_) + lines);
}

QString AreaTool::hint() const
{
    if (corners_.size() < fewest_corners)
        return tr("Click the corners of what is hot or moves; Backspace takes the last one back.");
    return tr("Click further corners; Enter, a double-click or a click on the first corner closes the area.");
}

} // namespace siphonwright
