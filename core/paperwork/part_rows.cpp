#include "core/paperwork/part_rows.h"

#include "core/layout/route.h"
#include "core/layout/wording.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// The engagement at an end of a piece that is not an end of the hose: on a reducer. Taken as at the hose's
/// own end.
double engagement(const Hose& hose, bool at_start)
{
    return at_start ? hose.from.engagement_mm : hose.to.engagement_mm;
}

PriceUnit unitOf(ItemKind kind)
{
    switch (kind) {
    case ItemKind::hose:
    case ItemKind::insulation:
        return PriceUnit::metre;
    case ItemKind::antifreeze:
    case ItemKind::distilled_water:
        return PriceUnit::litre;
    default:
        return PriceUnit::each;
    }
}

} // namespace

PartRow& PartRows::row(const ItemOf& item)
{
    for (PartRow& row : rows_)
        if (row.kind == item.kind && row.size == item.size && row.missing == item.missing)
            return row;
    PartRow row;
    row.kind = item.kind;
    if (item.missing.empty())
        row.item = std::string(keyOf(item.kind)) + (item.size_key.empty() ? "" : "-" + item.size_key);
    row.size = item.size;
    row.missing = item.missing;
    row.thousandths = 0;
    row.unit = unitOf(item.kind);
    rows_.push_back(std::move(row));
    return rows_.back();
}

PartRow& PartRows::count(const ItemOf& item, const UsedAt& used, std::int64_t pieces)
{
    PartRow& counted = row(item);
    if (counted.thousandths)
        *counted.thousandths += pieces * one_piece;
    const auto same = [&](const UsedAt& at) { return at == used; };
    if (std::none_of(counted.used.begin(), counted.used.end(), same))
        counted.used.push_back(used);
    return counted;
}

std::vector<PartRow> PartRows::take()
{
    // Rows of one kind stay in the order in which the drawing gave them.
    std::stable_sort(rows_.begin(), rows_.end(),
                     [](const PartRow& a, const PartRow& b) { return a.kind < b.kind; });
    for (std::size_t i = 0; i < rows_.size(); ++i)
        rows_[i].number = i + 1;
    return std::move(rows_);
}

std::string sizeKey(double size_mm)
{
    return exactText(std::round(size_mm * 100) / 100);
}

ItemOf sizedItem(ItemKind kind, std::optional<double> size_mm, std::string_view what_is_missing)
{
    ItemOf item;
    item.kind = kind;
    if (size_mm) {
        item.size_key = sizeKey(*size_mm);
        item.size = {"{0}", {{*size_mm, Unit::mm}}, {}};
    } else {
        item.missing = what_is_missing;
    }
    return item;
}

std::optional<double> overHose(std::optional<double> bore_mm, const Hose& hose)
{
    if (!bore_mm)
        return std::nullopt;
    return *bore_mm + 2 * hose.wall_mm;
}

UsedAt usedAt(const PartRef& part, std::string name)
{
    return {part, {"{a}", {}, {std::move(name)}}};
}

std::vector<HosePiece> piecesOf(const Route& route, double allowance_mm)
{
    const Hose& hose = *route.hose;
    std::vector<const InlinePart*> reducers;
    for (const InlinePart& part : hose.parts)
        if (part.kind == InlineKind::reducer)
            reducers.push_back(&part);
    std::stable_sort(reducers.begin(), reducers.end(),
                     [](const InlinePart* a, const InlinePart* b) { return a->along_mm < b->along_mm; });
    std::vector<HosePiece> pieces;
    HosePiece piece;
    piece.bore_mm = hose.bore_mm.value;
    const auto close = [&](double to_mm) {
        piece.to_mm = to_mm;
        const double length_mm =
            piece.to_mm - piece.from_mm + engagement(hose, true) + engagement(hose, false);
        piece.cut_length_mm = cutLength(length_mm, route.units) + allowance_mm;
        pieces.push_back(piece);
    };
    for (const InlinePart* reducer : reducers) {
        close(std::clamp(reducer->along_mm, piece.from_mm, route.length_mm));
        piece.from_mm = pieces.back().to_mm;
        piece.bore_mm = reducer->bore_mm;
    }
    close(route.length_mm);
    return pieces;
}

} // namespace siphonwright
