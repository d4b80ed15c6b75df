#include "core/layout/follow_dimensions.h"

#include "core/layout/dimensioning.h"
#include "core/sketch/edits.h"
#include "core/sketch/find.h"

#include <algorithm>

namespace siphonwright {
namespace {

/// Where an item of one list is in a list that was made of it by putting in or taking out; nothing if it was
/// taken out. What is alike at both ends of the lists is taken as the same.
template <class Item>
std::optional<std::size_t> indexAfter(const std::vector<Item>& before, const std::vector<Item>& after,
                                      std::size_t index)
{
    if (index >= before.size())
        return std::nullopt;
    if (before.size() == after.size())
        return index;
    const std::size_t shorter = std::min(before.size(), after.size());
    std::size_t head = 0;
    while (head < shorter && before[head] == after[head])
        ++head;
    if (index < head)
        return index;
    std::size_t tail = 0;
    while (tail < shorter - head && before[before.size() - 1 - tail] == after[after.size() - 1 - tail])
        ++tail;
    if (index >= before.size() - tail)
        return index + after.size() - before.size();
    const auto first = after.begin() + static_cast<std::ptrdiff_t>(head);
    const auto last = after.end() - static_cast<std::ptrdiff_t>(tail);
    const auto same = std::find(first, last, before[index]);
    if (same == last)
        return std::nullopt;
    return static_cast<std::size_t>(same - after.begin());
}

std::optional<std::size_t> indexOnHose(const Hose& before, const Hose& after, PartKind kind,
                                       std::size_t index)
{
    if (kind == PartKind::hose_point)
        return indexAfter(before.points, after.points, index);
    if (kind == PartKind::inline_part)
        return indexAfter(before.parts, after.parts, index);
    if (kind == PartKind::clip)
        return indexAfter(before.clips_mm, after.clips_mm, index);
    return index;
}

/// The same thing in the sketch after the edit; nothing if it is gone.
std::optional<std::size_t> sameThing(const DimensionEnd& end, const Sketch& before, const Sketch& after)
{
    const auto index = static_cast<std::size_t>(end.index);
    switch (end.part) {
    case PartKind::hose_point:
    case PartKind::inline_part:
    case PartKind::clip: {
        const Hose* was = before.hose(end.id);
        const Hose* is = after.hose(end.id);
        return was && is ? indexOnHose(*was, *is, end.part, index) : std::nullopt;
    }
    case PartKind::engine_corner:
        return before.engine && after.engine
                   ? indexAfter(before.engine->outline, after.engine->outline, index)
                   : std::nullopt;
    case PartKind::jacket_corner:
        return before.engine && after.engine ? indexAfter(before.engine->jacket, after.engine->jacket, index)
                                             : std::nullopt;
    case PartKind::area_corner: {
        const Area* was = before.area(end.id);
        const Area* is = after.area(end.id);
        return was && is ? indexAfter(was->outline, is->outline, index) : std::nullopt;
    }
    default:
        return exists(after, {end.part, end.id, index}) ? std::optional(index) : std::nullopt;
    }
}

void follow(DimensionEnd& end, const DimensionPlace& was, const Sketch& before, const Sketch& after)
{
    if (!was.held)
        return;
    if (const std::optional<std::size_t> index = sameThing(end, before, after)) {
        end.index = static_cast<std::int64_t>(*index);
        return;
    }
    end = DimensionEnd();
    end.at = was.at;
}

} // namespace

void followDimensions(Sketch& after, const Sketch& before, const Layout& layout_before)
{
    for (Dimension& dimension : after.dimensions) {
        const Dimension* was = byId(before.dimensions, dimension.id);
        if (!was)
            continue;
        const MeasuredDimension measured = measure(*was, before, layout_before);
        if (dimension.from == was->from)
            follow(dimension.from, measured.from, before, after);
        if (dimension.to == was->to)
            follow(dimension.to, measured.to, before, after);
    }
}

} // namespace siphonwright
