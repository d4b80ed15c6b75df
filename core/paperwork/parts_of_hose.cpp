#include "core/checks/rules.h"
#include "core/checks/spans.h"
#include "core/layout/route.h"
#include "core/layout/wording.h"
#include "core/paperwork/part_rows.h"

#include <algorithm>
#include <cmath>
#include <numbers>

/// What a hose itself takes: its length, what sits in it, clamps, clips, insulation.
namespace siphonwright {
namespace {

constexpr std::string_view no_bore = "bore not entered";
constexpr std::int64_t clamps_per_end = 2; ///< common practice, no published source

std::int64_t wholeMillimetres(double length_mm)
{
    return static_cast<std::int64_t>(std::ceil(length_mm - 1e-6));
}

/// The piece at a distance along the hose itself; at a reducer, that before it.
const HosePiece& pieceAt(const std::vector<HosePiece>& pieces, double along_mm)
{
    for (const HosePiece& piece : pieces)
        if (along_mm <= piece.to_mm)
            return piece;
    return pieces.back();
}

ItemOf hoseItem(const Hose& hose, std::optional<double> bore_mm)
{
    ItemOf item = sizedItem(ItemKind::hose, bore_mm, no_bore);
    if (bore_mm)
        item.size = {"bore {0}, wall {1}", {{*bore_mm, Unit::mm}, {hose.wall_mm, Unit::mm}}, {}};
    return item;
}

void addLengths(const Hose& hose, const std::vector<HosePiece>& pieces, PartRows& rows)
{
    for (const HosePiece& piece : pieces) {
        PartRow& row = rows.row(hoseItem(hose, piece.bore_mm));
        *row.thousandths += wholeMillimetres(piece.cut_length_mm);
        row.used.push_back(
            {refOf(hose), {"{a}: {0}", {{piece.cut_length_mm, Unit::mm}}, {nameOfHose(hose)}}});
    }
}

void addClamps(const Hose& hose, std::optional<double> bore_mm, std::int64_t ends, PartRows& rows)
{
    if (ends == 0)
        return;
    PartRow& row = rows.count(sizedItem(ItemKind::clamp, overHose(bore_mm, hose), "hose's bore not entered"),
                              usedAt(refOf(hose), nameOfHose(hose)), ends * clamps_per_end);
    row.notes = {{"Two on each hose end: common practice.", {}, {}}};
}

/// What is pushed into a hose goes by the hose that it is for; what it lets through is told beside it.
ItemOf inlineItem(const InlinePart& part, std::optional<double> hose_bore_mm)
{
    ItemOf item = sizedItem(itemKindOf(part.kind), part.bore_mm, no_bore);
    item.size = ofPassage(hose_bore_mm, part.bore_mm);
    return item;
}

ItemOf reducerItem(std::optional<double> bore_mm, double next_mm)
{
    ItemOf item = sizedItem(ItemKind::reducer, bore_mm, no_bore);
    if (bore_mm) {
        item.size_key += "-" + sizeKey(next_mm);
        item.size = {"{0} to {1}", {{*bore_mm, Unit::mm}, {next_mm, Unit::mm}}, {}};
    }
    return item;
}

/// In-line parts, and the clamps on the hose to either side of each.
void addInline(const Hose& hose, const std::vector<HosePiece>& pieces, PartRows& rows)
{
    for (std::size_t i = 0; i < hose.parts.size(); ++i) {
        const InlinePart& part = hose.parts[i];
        const UsedAt used{
            {PartKind::inline_part, hose.id, i},
            {"{a}, {0} from A", {{fromCutEnd(hose, part.along_mm), Unit::mm}}, {nameOfHose(hose)}}};
        if (part.kind != InlineKind::reducer) {
            const std::optional<double> hose_bore_mm = pieceAt(pieces, part.along_mm).bore_mm;
            rows.count(inlineItem(part, hose_bore_mm), used);
            addClamps(hose, hose_bore_mm, 2, rows);
            continue;
        }
        // Reducers are in order of their places in `pieces`, not in the hose's list.
        const auto before = static_cast<std::size_t>(
            std::count_if(hose.parts.begin(), hose.parts.end(), [&](const InlinePart& other) {
                return other.kind == InlineKind::reducer &&
                       (other.along_mm < part.along_mm ||
                        (other.along_mm == part.along_mm && &other < &part));
            }));
        rows.count(reducerItem(pieces.at(before).bore_mm, part.bore_mm), used);
        addClamps(hose, pieces.at(before).bore_mm, 1, rows);
        addClamps(hose, part.bore_mm, 1, rows);
    }
}

void addElbows(const Route& route, const std::vector<HosePiece>& pieces, PartRows& rows)
{
    const Hose& hose = *route.hose;
    for (std::size_t i = 0; i < route.bends.size(); ++i) {
        const bool metal = route.bend_kinds[i] == BendKind::metal_elbow;
        if (route.bend_points[i] == Route::no_point || route.bend_kinds[i] == BendKind::hose)
            continue;
        const std::optional<double> bore_mm = pieceAt(pieces, route.bends[i].s - route.hose_from_mm).bore_mm;
        ItemOf item = sizedItem(metal ? ItemKind::elbow : ItemKind::moulded_elbow, bore_mm, no_bore);
        const double angle_deg = std::round(route.bends[i].angle_rad * 180 / std::numbers::pi);
        if (bore_mm)
            item.size = {"for hose of {0}, {1}", {{*bore_mm, Unit::mm}, {angle_deg, Unit::degree}}, {}};
        PartRow& row =
            rows.count(item, usedAt({PartKind::hose_point, hose.id, route.bend_points[i]}, nameOfHose(hose)));
        if (metal) {
            row.notes = noteOfAngle(angle_deg);
            addClamps(hose, bore_mm, 2, rows);
        } else {
            row.notes = {
                {"Of one piece with the hose; bought singly it also takes joiners and clamps.", {}, {}}};
        }
    }
}

/// How many clips more the spacing rule asks for; nothing when the rule is off or without a limit.
std::optional<std::int64_t> clipsWanted(const Sketch& sketch, const Route& route, const Plumb& plumb)
{
    const Rule* rule = ruleById("unsupported-span");
    if (!rule || switchedOff(rule->id, sketch) || route.path.line.empty())
        return std::nullopt;
    const std::optional<double> limit_mm = limitsOf(*rule, sketch).advice;
    if (!limit_mm || !(*limit_mm > 0))
        return std::nullopt;
    std::int64_t wanted = 0;
    for (const HoseSpan& span : spansNearLevel(route, plumb))
        wanted += std::max(std::int64_t{0},
                           static_cast<std::int64_t>(std::ceil(span.length() / *limit_mm - 1e-6)) - 1);
    return wanted;
}

void addClips(const Sketch& sketch, const Route& route, const Plumb& plumb,
              const std::vector<HosePiece>& pieces, PartRows& rows)
{
    const Hose& hose = *route.hose;
    const auto item = [&](double along_mm) {
        return sizedItem(ItemKind::clip, overHose(pieceAt(pieces, along_mm).bore_mm, hose),
                         "hose's bore not entered");
    };
    for (const double clip_mm : hose.clips_mm)
        rows.count(item(clip_mm), usedAt(refOf(hose), nameOfHose(hose)));
    const std::int64_t wanted = clipsWanted(sketch, route, plumb).value_or(0);
    if (wanted > 0)
        rows.row(item(0)).notes.push_back({wanted == 1
                                               ? "{a} wants one more than is drawn, by the spacing rule."
                                               : "{a} wants {0} more than are drawn, by the spacing rule.",
                                           {{static_cast<double>(wanted), Unit::none}},
                                           {nameOfHose(hose)}});
}

void addInsulation(const Route& route, const std::vector<HosePiece>& pieces, PartRows& rows)
{
    const Hose& hose = *route.hose;
    if (!(hose.insulation_mm > 0))
        return;
    for (const HosePiece& piece : pieces) {
        const std::optional<double> over_mm = overHose(piece.bore_mm, hose);
        ItemOf item = sizedItem(ItemKind::insulation, over_mm, "hose's bore not entered");
        if (over_mm) {
            item.size_key += "-" + sizeKey(hose.insulation_mm);
            item.size = {"for {0}, {1} thick", {{*over_mm, Unit::mm}, {hose.insulation_mm, Unit::mm}}, {}};
        }
        const double length_mm = cutLength(piece.to_mm - piece.from_mm, route.units);
        PartRow& row = rows.row(item);
        *row.thousandths += wholeMillimetres(length_mm);
        row.used.push_back({refOf(hose), {"{a}: {0}", {{length_mm, Unit::mm}}, {nameOfHose(hose)}}});
    }
}

} // namespace

void addHose(const Sketch& sketch, const ResolvedHose& hose, const Plumb& plumb, PartRows& rows)
{
    const Route& route = *hose;
    const Hose& drawn = *route.hose;
    const std::vector<HosePiece> pieces = piecesOf(route, quoteOf(sketch).cut_allowance_mm);
    addLengths(drawn, pieces, rows);
    addClamps(drawn, pieces.front().bore_mm, drawn.from.connected() ? 1 : 0, rows);
    addInline(drawn, pieces, rows);
    addElbows(route, pieces, rows);
    addClamps(drawn, pieces.back().bore_mm, drawn.to.connected() ? 1 : 0, rows);
    addClips(sketch, route, plumb, pieces, rows);
    addInsulation(route, pieces, rows);
}

} // namespace siphonwright
