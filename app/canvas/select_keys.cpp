#include "app/canvas/dimension_ends.h"
#include "app/canvas/group.h"
#include "app/canvas/part_names.h"
#include "app/canvas/select_tool.h"
#include "app/canvas/shape.h"
#include "app/language/tr.h"

#include "core/sketch/group_edits.h"

#include <QKeyEvent>

#include <algorithm>

/// What the keys do while parts are selected.
namespace siphonwright {
namespace {

/// Arrow keys as a direction in the elevation; nothing for other keys.
std::optional<Vec2> arrowOf(int key)
{
    switch (key) {
    case Qt::Key_Left:
        return Vec2{-1, 0};
    case Qt::Key_Right:
        return Vec2{1, 0};
    case Qt::Key_Up:
        return Vec2{0, 1};
    case Qt::Key_Down:
        return Vec2{0, -1};
    default:
        return std::nullopt;
    }
}

} // namespace

bool SelectTool::key(const QKeyEvent& event)
{
    if (event.modifiers().testFlag(Qt::ControlModifier))
        return false;
    if (dragging() && event.key() != Qt::Key_Escape)
        return arrowOf(event.key()).has_value(); // the pointer has hold of the part: keys wait
    switch (event.key()) {
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        deleteSelected();
        return true;
    case Qt::Key_Insert:
        insertPointByKey();
        return true;
    default:
        return nudge(event);
    }
}

bool SelectTool::nudge(const QKeyEvent& event)
{
    constexpr qint64 burst_ms = 1000;
    const std::optional<Vec2> arrow = arrowOf(event.key());
    const std::vector<PartRef> parts = canvas_.selection.parts();
    if (!arrow || parts.empty())
        return false;
    if (parts != nudged_ || !since_nudge_.isValid() || since_nudge_.elapsed() > burst_ms)
        nudge_gesture_ = canvas_.document.beginGesture();
    nudged_ = parts;
    since_nudge_.start();
    const Vec3 delta = nudgeBy(*arrow, canvas_.nudgeStep(event.modifiers().testFlag(Qt::ShiftModifier)));
    canvas_.apply(
        tr("Move %1").arg(nameOfParts(canvas_.sketch(), parts)),
        [&](Sketch& sketch) { siphonwright::move(sketch, parts, delta); }, nudge_gesture_);
    return true;
}

Vec3 SelectTool::nudgeBy(Vec2 arrow, double step_mm) const
{
    const PartRef part = canvas_.selection.part();
    if (part.kind == PartKind::inline_part || part.kind == PartKind::clip) {
        // The arrow that points the way the hose runs here takes the part along with it.
        const ResolvedHose* hose = canvas_.layout().hose(part.id);
        const std::optional<Vec2> at = placeOf(canvas_, part);
        const bool alone = withoutRiders(canvas_.sketch(), canvas_.selection.parts()).size() == 1;
        if (alone && hose && at && !(*hose)->path.line.empty()) {
            const Centreline& line = (*hose)->path.line;
            const Vec2 way = canvas_.view().flat(line.tangent(nearestSeen(canvas_.view(), line, *at).s));
            return {way.x * arrow.x + way.z * arrow.z >= 0 ? step_mm : -step_mm, 0, 0};
        }
    }
    if (part.kind == PartKind::dimension && canvas_.selection.parts().size() == 1)
        return {step_mm * asideOfArrow(canvas_, part.id, arrow), 0, 0};
    return canvas_.view().move({arrow.x * step_mm, arrow.z * step_mm});
}

void SelectTool::turnSelected(double clockwise_deg)
{
    const std::vector<PartRef> parts = canvas_.selection.parts();
    canvas_.apply(tr("Turn %1").arg(nameOfParts(canvas_.sketch(), parts)), [&](Sketch& sketch) {
        for (const PartRef& part : parts)
            turnPart(sketch, part, clockwise_deg);
    });
}

int SelectTool::keepSelected()
{
    const PartRef part = canvas_.selection.part();
    if (part.kind == PartKind::nothing)
        return 0;
    if (kept_.empty())
        kept_ = canvas_.selection.parts();
    else if (std::erase(kept_, part) == 0)
        kept_.push_back(part);
    return static_cast<int>(kept_.size());
}

/// On to a part, with those kept still selected, unless something else has been selected since.
void SelectTool::selectNext(const PartRef& part)
{
    const auto selected = [this](const PartRef& one) { return canvas_.selection.contains(one); };
    if (!std::all_of(kept_.begin(), kept_.end(), selected))
        kept_.clear();
    std::vector<PartRef> all = kept_;
    std::erase(all, part);
    all.push_back(part);
    canvas_.selection.selectAll(all);
}

void SelectTool::connectToNext()
{
    PartRef part = canvas_.selection.part();
    if (const Hose* hose = part.kind == PartKind::hose ? canvas_.sketch().hose(part.id) : nullptr)
        part = {PartKind::hose_end, part.id, hose->from.connected() ? 1U : 0U};
    if (connectToNextSocket(canvas_, part))
        canvas_.selection.select(part);
}

void SelectTool::insertPointByKey()
{
    const PartRef part = canvas_.selection.part();
    const std::optional<Vec2> at = placeOf(canvas_, part);
    const PartRef owner = ownerOf(part);
    PartRef added;
    if (const ResolvedHose* hose = owner.kind == PartKind::hose ? canvas_.layout().hose(owner.id) : nullptr) {
        // With a point selected, half-way to the next one; with the hose, in its middle.
        const Route& route = **hose;
        double from_mm = route.hose_from_mm;
        double to_mm = route.hose_to_mm;
        if (part.kind == PartKind::hose_point && at) {
            from_mm = nearestSeen(canvas_.view(), route.path.line, *at).s;
            const auto next = placeOf(canvas_, {PartKind::hose_point, part.id, part.index + 1});
            if (next)
                to_mm = nearestSeen(canvas_.view(), route.path.line, *next).s;
        }
        added = insertHosePoint(canvas_, owner.id, (from_mm + to_mm) / 2);
    } else if (const std::vector<Vec2>* outline =
                   canvas_.view().isEnd() ? nullptr : outlineOf(canvas_.sketch(), part)) {
        const Vec2 a = outline->at(std::min(part.index, outline->size() - 1));
        const Vec2 b = outline->at((part.index + 1) % outline->size());
        added = insertCorner(canvas_, part, {(a.x + b.x) / 2, (a.z + b.z) / 2});
    }
    if (added.kind != PartKind::nothing)
        canvas_.selection.select(added);
}

void SelectTool::enterOutline()
{
    if (canvas_.view().isEnd()) // outlines are shaped in the side elevation
        return;
    const PartRef part = canvas_.selection.part();
    if (part.kind == PartKind::engine)
        canvas_.selection.select({PartKind::engine_corner, {}, 0});
    else if (part.kind == PartKind::jacket)
        canvas_.selection.select({PartKind::jacket_corner, {}, 0});
    else if (part.kind == PartKind::area)
        canvas_.selection.select({PartKind::area_corner, part.id, 0});
}

bool SelectTool::walk(bool forward)
{
    const PartRef& now = canvas_.selection.part();
    const std::vector<PartRef> order = walkOrder(canvas_.sketch(), now);
    if (order.empty())
        return false;
    const auto at = std::find(order.begin(), order.end(), now);
    const bool among_corners = hasCorners(ownerOf(now).kind) && ownerOf(now) != now;
    if (at == order.end()) {
        selectNext(forward ? order.front() : order.back());
        return true;
    }
    const bool last = forward ? at + 1 == order.end() : at == order.begin();
    if (last && !among_corners) {
        canvas_.selection.selectAll(kept_);
        return false;
    }
    if (last)
        selectNext(forward ? order.front() : order.back());
    else
        selectNext(forward ? *(at + 1) : *(at - 1));
    return true;
}

} // namespace siphonwright
