#include "core/sketch/group_edits.h"

#include "core/sketch/find.h"

#include <algorithm>

namespace siphonwright {
namespace {

/// What moves and goes with it, if anything can.
std::vector<PartRef> carriersOf(const PartRef& part)
{
    switch (part.kind) {
    case PartKind::engine_corner:
    case PartKind::jacket:
    case PartKind::thermostat:
    case PartKind::port:
        return {{PartKind::engine, {}, 0}};
    case PartKind::jacket_corner:
        return {{PartKind::jacket, {}, 0}, {PartKind::engine, {}, 0}};
    case PartKind::area_corner:
        return {{PartKind::area, part.id, 0}};
    case PartKind::hose_point:
    case PartKind::hose_end:
    case PartKind::inline_part:
    case PartKind::clip:
        return {{PartKind::hose, part.id, 0}};
    default:
        return {};
    }
}

void enlarge(std::optional<PartBox>& box, Vec2 p)
{
    if (!box)
        box = PartBox{p, p};
    box->low = {std::min(box->low.x, p.x), std::min(box->low.z, p.z)};
    box->high = {std::max(box->high.x, p.x), std::max(box->high.z, p.z)};
}

void enlarge(std::optional<PartBox>& box, Vec3 p)
{
    enlarge(box, Vec2{p.x, p.z});
}

std::optional<PartBox> boxRound(const std::vector<Vec2>& outline)
{
    std::optional<PartBox> box;
    for (const Vec2 corner : outline)
        enlarge(box, corner);
    return box;
}

std::optional<PartBox> boxOf(const Heater& heater)
{
    std::optional<PartBox> box;
    const double r = heater.diameter_mm / 2;
    const double h = heater.length_mm / 2;
    for (const Vec3 corner : {Vec3{-r, 0, -h}, Vec3{r, 0, -h}, Vec3{r, 0, h}, Vec3{-r, 0, h}})
        enlarge(box, heaterPoint(heater, corner));
    return box;
}

/// Of what moves when the hose is moved: its points and its open ends.
std::optional<PartBox> boxOf(const Hose& hose)
{
    std::optional<PartBox> box;
    for (const RoutePoint& point : hose.points)
        enlarge(box, point.at);
    for (const HoseEnd* end : {&hose.from, &hose.to})
        if (!end->connected())
            enlarge(box, end->open_at);
    return box;
}

/// The parts that can be lined up, with their boxes.
struct Placed {
    PartRef part;
    PartBox box;
};

std::vector<Placed> placed(const Sketch& sketch, const std::vector<PartRef>& parts)
{
    std::vector<Placed> out;
    for (const PartRef& part : withoutRiders(sketch, parts))
        if (const std::optional<PartBox> box = boxOf(sketch, part))
            out.push_back(Placed{part, *box});
    return out;
}

Vec3 stepTo(Alignment alignment, const PartBox& part, const PartBox& all)
{
    switch (alignment) {
    case Alignment::left:
        return {all.low.x - part.low.x, 0, 0};
    case Alignment::right:
        return {all.high.x - part.high.x, 0, 0};
    case Alignment::top:
        return {0, 0, all.high.z - part.high.z};
    case Alignment::bottom:
        return {0, 0, all.low.z - part.low.z};
    case Alignment::middle_x:
        return {all.middle().x - part.middle().x, 0, 0};
    case Alignment::middle_z:
        return {0, 0, all.middle().z - part.middle().z};
    }
    return {};
}

bool moveUnlessThere(Sketch& sketch, const PartRef& part, Vec3 delta)
{
    return delta != Vec3{} && move(sketch, part, delta);
}

} // namespace

std::vector<PartRef> withoutRiders(const Sketch& sketch, const std::vector<PartRef>& parts)
{
    std::vector<PartRef> out;
    for (const PartRef& part : parts) {
        const std::vector<PartRef> carriers = carriersOf(part);
        const bool rides = std::any_of(carriers.begin(), carriers.end(), [&](const PartRef& carrier) {
            return exists(sketch, carrier) && contains(parts, carrier);
        });
        if (exists(sketch, part) && !rides && !contains(out, part))
            out.push_back(part);
    }
    return out;
}

bool move(Sketch& sketch, const std::vector<PartRef>& parts, Vec3 delta)
{
    std::vector<PartRef> movers = withoutRiders(sketch, parts);
    if (!std::all_of(movers.begin(), movers.end(), liesAlongHose))
        std::erase_if(movers, liesAlongHose);
    bool moved = false;
    for (const PartRef& part : movers)
        moved = move(sketch, part, delta) || moved;
    return moved;
}

bool remove(Sketch& sketch, const std::vector<PartRef>& parts)
{
    std::vector<PartRef> goers = withoutRiders(sketch, parts);
    // The highest index of a hose or outline first, so that those before it keep theirs.
    std::sort(goers.begin(), goers.end(), [](const PartRef& a, const PartRef& b) { return a > b; });
    bool gone = false;
    for (const PartRef& part : goers)
        gone = remove(sketch, part) || gone;
    return gone;
}

std::optional<PartBox> boxOf(const Sketch& sketch, const PartRef& part)
{
    if (!exists(sketch, part))
        return std::nullopt;
    switch (part.kind) {
    case PartKind::engine:
        return boxRound(sketch.engine->outline);
    case PartKind::jacket:
        return boxRound(sketch.engine->jacket);
    case PartKind::area:
        return boxRound(sketch.area(part.id)->outline);
    case PartKind::heater:
        return boxOf(*sketch.heater(part.id));
    case PartKind::hose:
        return boxOf(*sketch.hose(part.id));
    case PartKind::hose_end: {
        const Hose& hose = *sketch.hose(part.id);
        if ((part.index == 0 ? hose.from : hose.to).connected())
            return std::nullopt;
        break;
    }
    case PartKind::inline_part:
    case PartKind::clip:
    case PartKind::ground:
    case PartKind::photo:
        return std::nullopt;
    default:
        break;
    }
    std::optional<PartBox> box;
    if (const std::optional<Vec3> at = positionOf(sketch, part))
        enlarge(box, *at);
    return box;
}

std::optional<PartBox> boxOf(const Sketch& sketch, const std::vector<PartRef>& parts)
{
    std::optional<PartBox> all;
    for (const PartRef& part : parts)
        if (const std::optional<PartBox> box = boxOf(sketch, part)) {
            enlarge(all, box->low);
            enlarge(all, box->high);
        }
    return all;
}

bool align(Sketch& sketch, const std::vector<PartRef>& parts, Alignment alignment)
{
    const std::vector<Placed> all = placed(sketch, parts);
    std::optional<PartBox> round;
    for (const Placed& one : all) {
        enlarge(round, one.box.low);
        enlarge(round, one.box.high);
    }
    bool moved = false;
    for (const Placed& one : all)
        moved = moveUnlessThere(sketch, one.part, stepTo(alignment, one.box, *round)) || moved;
    return moved;
}

bool distribute(Sketch& sketch, const std::vector<PartRef>& parts, SpreadAlong spread)
{
    std::vector<Placed> all = placed(sketch, parts);
    if (all.size() < 3)
        return false;
    const auto place = [spread](const Placed& one) {
        return spread == SpreadAlong::x ? one.box.middle().x : one.box.middle().z;
    };
    std::stable_sort(all.begin(), all.end(),
                     [&](const Placed& a, const Placed& b) { return place(a) < place(b); });
    const double first = place(all.front());
    const double gap = (place(all.back()) - first) / static_cast<double>(all.size() - 1);
    bool moved = false;
    for (std::size_t i = 1; i + 1 < all.size(); ++i) {
        const double by = first + gap * static_cast<double>(i) - place(all[i]);
        const Vec3 delta = spread == SpreadAlong::x ? Vec3{by, 0, 0} : Vec3{0, 0, by};
        moved = moveUnlessThere(sketch, all[i].part, delta) || moved;
    }
    return moved;
}

} // namespace siphonwright
