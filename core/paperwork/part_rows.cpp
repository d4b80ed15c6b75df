#include "core/paperwork/part_rows.h"

#include "core/layout/route.h"
#include "core/layout/wording.h"
#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

/// What parts a hose, along the hose itself: hose is pushed onto it from either side, up to its stops.
struct Joint {
    ItemKind kind = ItemKind::isolation_valve;
    double along_mm = 0; ///< its middle
    double from_mm = 0;  ///< the stops
    double to_mm = 0;
};

/// Its length is over all; what is pushed onto it is taken as at the hose's own ends. The bodies of short
/// parts have none left between their stops.
Joint jointOf(const InlinePart& part, const Hose& hose)
{
    const double from = part.along_mm - part.length_mm / 2 + hose.from.engagement_mm;
    const double to = part.along_mm + part.length_mm / 2 - hose.to.engagement_mm;
    return {itemKindOf(part.kind), part.along_mm, std::min(from, part.along_mm), std::max(to, part.along_mm)};
}

/// In-line parts and metal elbows, which reach over their arc.
std::vector<Joint> jointsOf(const Route& route)
{
    const Hose& hose = *route.hose;
    std::vector<Joint> joints;
    for (const InlinePart& part : hose.parts)
        joints.push_back(jointOf(part, hose));
    for (std::size_t i = 0; i < route.bends.size(); ++i) {
        if (route.bend_points[i] == Route::no_point || route.bend_kinds[i] != BendKind::metal_elbow)
            continue;
        const double middle = route.bends[i].s - route.hose_from_mm;
        const double half = route.bends[i].radius_mm * route.bends[i].angle_rad / 2;
        joints.push_back({ItemKind::elbow, middle, middle - half, middle + half});
    }
    std::stable_sort(joints.begin(), joints.end(),
                     [](const Joint& a, const Joint& b) { return a.along_mm < b.along_mm; });
    return joints;
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

Message ofPassage(std::optional<double> hose_bore_mm, double passage_mm)
{
    if (!hose_bore_mm)
        return {"passage {0}", {{passage_mm, Unit::mm}}, {}};
    return {"for hose of {0}, passage {1}", {{*hose_bore_mm, Unit::mm}, {passage_mm, Unit::mm}}, {}};
}

std::vector<Message> noteOfAngle(double angle_deg)
{
    constexpr double near_enough_deg = 3;
    for (const double usual_deg : {45.0, 90.0})
        if (std::abs(angle_deg - usual_deg) <= near_enough_deg)
            return {};
    return {{"Usual elbows turn {0} or {1}: take the nearer and lay the hose to suit.",
             {{45, Unit::degree}, {90, Unit::degree}},
             {}}};
}

UsedAt usedAt(const PartRef& part, std::string name)
{
    return {part, {"{a}", {}, {std::move(name)}}};
}

ItemKind itemKindOf(InlineKind kind)
{
    switch (kind) {
    case InlineKind::isolation_valve:
        return ItemKind::isolation_valve;
    case InlineKind::bleed:
        return ItemKind::bleed;
    case InlineKind::drain:
        return ItemKind::drain;
    case InlineKind::lift_check_valve:
        return ItemKind::lift_check_valve;
    case InlineKind::swing_check_valve:
        return ItemKind::swing_check_valve;
    case InlineKind::reducer:
        return ItemKind::reducer;
    }
    return ItemKind::isolation_valve;
}

double fromCutEnd(const Hose& hose, double along_mm)
{
    return along_mm + hose.from.engagement_mm;
}

double onTape(double mm, UnitChoice units)
{
    const double step_mm = units == UnitChoice::metric ? 1 : mm_per_inch / 16;
    return std::round(mm / step_mm) * step_mm;
}

std::vector<double> piecesOnTape(const HoseCut& cut, UnitChoice units)
{
    std::vector<double> long_mm;
    double from_mm = 0;
    for (const HosePart& part : cut.parts) {
        long_mm.push_back(onTape(part.from_mm, units) - from_mm);
        from_mm = onTape(part.to_mm, units);
    }
    long_mm.push_back(onTape(cut.length_mm, units) - from_mm);
    return long_mm;
}

HosePart stopsOf(const InlinePart& part, const Hose& hose)
{
    const Joint joint = jointOf(part, hose);
    return {joint.kind, fromCutEnd(hose, joint.from_mm), fromCutEnd(hose, joint.to_mm)};
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
    const std::vector<Joint> joints = jointsOf(route);
    const double end_mm = route.length_mm + hose.to.engagement_mm;
    std::vector<HosePiece> pieces;
    HosePiece piece;
    piece.bore_mm = hose.bore_mm.value;
    double cut_from_mm = -hose.from.engagement_mm; // along the hose itself, as all of these
    const auto close = [&](double to_mm, double cut_to_mm) {
        piece.to_mm = to_mm;
        piece.cut_length_mm = cutLength(std::max(0.0, cut_to_mm - cut_from_mm), route.units) + allowance_mm;
        piece.parts.clear();
        double free_from_mm = cut_from_mm;
        for (const Joint& joint : joints) {
            if (joint.kind == ItemKind::reducer || joint.along_mm < piece.from_mm || joint.along_mm > to_mm)
                continue;
            const double from_mm = std::clamp(joint.from_mm, free_from_mm, std::max(free_from_mm, cut_to_mm));
            free_from_mm = std::clamp(joint.to_mm, from_mm, std::max(from_mm, cut_to_mm));
            piece.parts.push_back({joint.kind, from_mm - cut_from_mm, free_from_mm - cut_from_mm});
        }
        pieces.push_back(piece);
    };
    for (const InlinePart* reducer : reducers) {
        const Joint joint = jointOf(*reducer, hose);
        close(std::clamp(reducer->along_mm, piece.from_mm, route.length_mm), std::min(joint.from_mm, end_mm));
        piece.from_mm = pieces.back().to_mm;
        piece.bore_mm = reducer->bore_mm;
        cut_from_mm = joint.to_mm;
    }
    close(route.length_mm, end_mm);
    return pieces;
}

} // namespace siphonwright
