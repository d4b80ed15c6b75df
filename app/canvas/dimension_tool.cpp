#include "app/canvas/dimension_tool.h"

#include "app/canvas/overlay.h"
#include "app/canvas/plane.h"
#include "app/drawing/dimension_shape.h"
#include "app/language/tr.h"

#include "core/sketch/edits.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace siphonwright {
namespace {

struct KindKey {
    int key;
    DimensionKind kind;
};
constexpr std::array kind_keys = {
    KindKey{Qt::Key_H, DimensionKind::horizontal}, KindKey{Qt::Key_V, DimensionKind::vertical},
    KindKey{Qt::Key_A, DimensionKind::along}, KindKey{Qt::Key_S, DimensionKind::slope}};

std::optional<DimensionKind> kindOfKey(int key)
{
    for (const KindKey& one : kind_keys)
        if (one.key == key)
            return one.kind;
    return std::nullopt;
}

QString nameOfKind(DimensionKind kind)
{
    switch (kind) {
    case DimensionKind::horizontal:
        return tr("Horizontal");
    case DimensionKind::vertical:
        return tr("Vertical");
    case DimensionKind::along:
        return tr("Along");
    case DimensionKind::slope:
        return tr("Slope");
    }
    return {};
}

bool sameThing(const DimensionEnd& a, const DimensionEnd& b)
{
    const bool free = a.part == PartKind::nothing;
    return a.part == b.part && a.id == b.id && a.index == b.index &&
           (!free || distance(a.at, b.at) < same_place_mm);
}

} // namespace

void DimensionTool::moved(const Pointer& pointer)
{
    at_ = pointer;
    if (!to_)
        under_ = dimensionEndAt(canvas_, pointer);
}

void DimensionTool::pressed(const Pointer& pointer)
{
    moved(pointer);
    if (!from_) {
        from_ = under_;
    } else if (!to_) {
        if (!sameThing(from_->end, under_.end))
            to_ = under_;
    } else {
        finish();
    }
}

/// The dimension that a click would draw.
Dimension DimensionTool::draft() const
{
    Dimension out;
    out.from = from_->end;
    out.to = to_ ? to_->end : under_.end;
    const Vec2 pointer = at_ ? at_->at : under_.at;
    const MeasuredDimension line = measure(out, canvas_.sketch(), canvas_.layout());
    const Vec2 from = {line.from.at.x, line.from.at.z};
    const Vec2 to = {line.to.at.x, line.to.at.z};
    if (forced_)
        out.kind = *forced_;
    else if (isLevel(out.from) || isLevel(out.to))
        out.kind = DimensionKind::vertical;
    else
        out.kind = kindAt(from, to, pointer);
    if (to_)
        out.aside_mm = std::round(asideThrough(measure(out, canvas_.sketch(), canvas_.layout()), pointer));
    return out;
}

void DimensionTool::finish()
{
    Id id;
    const Dimension dimension = draft();
    canvas_.apply(tr("Draw a dimension"), [&](Sketch& sketch) { id = addDimension(sketch, dimension); });
    from_.reset();
    to_.reset();
    canvas_.selection.select({PartKind::dimension, id, 0});
    canvas_.done = true;
}

bool DimensionTool::claims(int key) const
{
    return kindOfKey(key).has_value();
}

bool DimensionTool::key(const QKeyEvent& event)
{
    if (event.key() == Qt::Key_Backspace) {
        (to_ ? to_ : from_).reset();
        return true;
    }
    const std::optional<DimensionKind> kind = kindOfKey(event.key());
    if (!kind || event.modifiers() != Qt::NoModifier)
        return false;
    forced_ = forced_ == kind ? std::nullopt : kind;
    return true;
}

bool DimensionTool::walk(bool)
{
    return !to_ && !dimensionEnds(canvas_.sketch(), canvas_.layout(), {}).empty();
}

std::optional<Vec2> DimensionTool::nextStop(Vec2 from, bool forward) const
{
    const std::vector<NamedEnd> ends = dimensionEnds(canvas_.sketch(), canvas_.layout(), {});
    std::vector<Vec2> stops;
    for (const NamedEnd& one : ends) {
        const auto there = [&](Vec2 p) { return std::hypot(p.x - one.at.x, p.z - one.at.z) < same_place_mm; };
        if (std::none_of(stops.begin(), stops.end(), there)) // Tab would not get past two in one place
            stops.push_back(one.at);
    }
    if (to_ || stops.empty())
        return std::nullopt;
    const auto here = std::find_if(stops.begin(), stops.end(), [&](Vec2 p) {
        return std::hypot(p.x - from.x, p.z - from.z) < same_place_mm;
    });
    if (here == stops.end())
        return forward ? stops.front() : stops.back();
    const std::size_t index = static_cast<std::size_t>(here - stops.begin());
    return stops[(index + (forward ? 1 : stops.size() - 1)) % stops.size()];
}

bool DimensionTool::cancel()
{
    const bool busy = from_.has_value();
    from_.reset();
    to_.reset();
    return busy;
}

void DimensionTool::paint(QPainter& painter) const
{
    if (!at_)
        return;
    if (at_->keyboard)
        overlay::paintCrosshair(painter, canvas_, at_->at);
    QStringList lines;
    if (!to_) {
        overlay::paintTarget(painter, canvas_, {under_.at.x, 0, under_.at.z});
        lines.append(nameOfEnd(canvas_.sketch(), under_.end));
    }
    const bool two = from_ && (to_ || !sameThing(from_->end, under_.end));
    if (from_)
        overlay::paintTarget(painter, canvas_, {from_->at.x, 0, from_->at.z});
    if (to_)
        overlay::paintTarget(painter, canvas_, {to_->at.x, 0, to_->at.z});
    if (two) {
        const Dimension dimension = draft();
        const MeasuredDimension measured = measure(dimension, canvas_.sketch(), canvas_.layout());
        const drawing::Style style = canvas_.style();
        if (to_) {
            painter.save();
            painter.setTransform(canvas_.viewport.transform(), true);
            drawing::paintDimension(painter, drawing::shapeOf(measured, style), style,
                                    canvas_.palette.accent);
            painter.restore();
        }
        const QString word = measured.stretch ? tr("Along the hose") : nameOfKind(dimension.kind);
        lines.append(tr("%1: %2").arg(word, drawing::dimensionText(measured, canvas_.units())));
    }
    overlay::paintDimensions(painter, canvas_, at_->screen, lines);
}

QString DimensionTool::hint() const
{
    if (!from_)
        return tr("Click what to measure from; Tab goes from one thing to the next, Enter clicks.");
    if (!to_)
        return tr("Click what to measure to; Backspace takes the first back.");
    return tr("Click where its line goes. H, V, A, S: horizontal, vertical, along, slope.");
}

} // namespace siphonwright
