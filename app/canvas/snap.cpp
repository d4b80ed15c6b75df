#include "app/canvas/snap.h"

#include "app/canvas/plane.h"

#include "core/quantity/constants.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <span>

namespace siphonwright {
namespace {

constexpr std::array<double, 8> metric_grid = {5, 10, 50, 100, 500, 1000, 5000, 10000};
constexpr std::array<double, 9> inch_grid = {mm_per_inch / 4,   mm_per_inch / 2,   mm_per_inch,
                                             6 * mm_per_inch,   12 * mm_per_inch,  60 * mm_per_inch,
                                             120 * mm_per_inch, 600 * mm_per_inch, 1200 * mm_per_inch};
constexpr double exact_mm = 0.01;

/// What a point can slide on: the nearest place of it, and which way it runs there if it is straight.
struct Locus {
    std::function<std::optional<Vec2>(Vec2)> project;
    SnapKind kind = SnapKind::level;
    QString word;
    const SnapLine* line = nullptr;   ///< null: curved
    std::function<Vec2(Vec2)> origin; ///< where its guide begins
    Vec2 at;                          ///< its place nearest to the pointer
    Vec2 way;                         ///< which way it runs there
    double off_mm = 0;
};

double apart(Vec2 a, Vec2 b)
{
    return std::hypot(a.x - b.x, a.z - b.z);
}

double toGrid(double value, double grid_mm)
{
    return std::round(value / grid_mm) * grid_mm;
}

Vec2 onLine(const SnapLine& line, double t)
{
    return {line.from.x + line.way.x * t, line.from.z + line.way.z * t};
}

double alongLine(const SnapLine& line, Vec2 p)
{
    return (p.x - line.from.x) * line.way.x + (p.z - line.from.z) * line.way.z;
}

/// The same line drawn twice: level with two neighbours that are level with each other.
bool sameLine(const SnapLine& a, const SnapLine& b)
{
    constexpr double parallel = 1e-6;
    return std::abs(a.way.x * b.way.z - a.way.z * b.way.x) < parallel &&
           apart(onLine(a, alongLine(a, b.from)), b.from) < exact_mm;
}

Locus locusOf(const SnapLine& line, double reach_mm)
{
    constexpr double shown = 20; // times the reach, of a line that begins nowhere
    Locus out;
    out.kind = line.kind;
    out.word = line.word;
    out.line = &line;
    out.project = [&line](Vec2 p) -> std::optional<Vec2> {
        const double t = alongLine(line, p);
        if (line.reach == SnapLine::Reach::ray && t <= 0)
            return std::nullopt;
        return onLine(line, t);
    };
    out.origin = [&line, reach_mm](Vec2 at) {
        return line.reach == SnapLine::Reach::endless ? onLine(line, alongLine(line, at) - shown * reach_mm)
                                                      : line.from;
    };
    return out;
}

/// The length that the bends need changes with the direction: a few looks settle it.
std::optional<Vec2> shortestAt(const SnapRoom& room, Vec2 towards)
{
    constexpr int looks = 12;
    const Vec2 neighbour = {room.neighbour.x, room.neighbour.z};
    const double away = apart(neighbour, towards);
    if (!(away > exact_mm))
        return std::nullopt;
    const Vec2 way = {(towards.x - neighbour.x) / away, (towards.z - neighbour.z) / away};
    const double dy = room.depth_mm - room.neighbour.y;
    Vec2 at = towards;
    for (int i = 0; i < looks; ++i) {
        const std::optional<double> needed = roomNeeded(room, at);
        if (!needed || !(*needed > std::abs(dy)))
            return std::nullopt;
        const double run = std::sqrt(*needed * *needed - dy * dy);
        at = {neighbour.x + way.x * run, neighbour.z + way.z * run};
    }
    const std::optional<double> needed = roomNeeded(room, at);
    const double now = std::hypot(apart(at, neighbour), dy);
    return needed && std::abs(*needed - now) < exact_mm ? std::optional(at) : std::nullopt;
}

/// Up or down plumb from a place until the rise is right.
std::optional<Vec2> atRise(const SnapRise& rise, Vec2 p)
{
    constexpr int looks = 60; // each leaves at most the slope's share of what was wrong
    const Vec3 up = rise.plumb.up();
    const double square = up.x * up.x + up.z * up.z;
    for (int i = 0; i < looks; ++i) {
        const Vec3 piece = Vec3{p.x, rise.depth_mm, p.z} - rise.from;
        const double off_mm = rise.slope * length(piece) - dot(piece, up);
        p = {p.x + up.x * off_mm / square, p.z + up.z * off_mm / square};
        if (std::abs(off_mm) < 1e-9)
            return p;
    }
    return std::nullopt;
}

Locus locusOf(const SnapRise& rise)
{
    Locus out;
    out.kind = SnapKind::rise;
    out.word = rise.word;
    out.project = [&rise](Vec2 p) { return atRise(rise, p); };
    out.origin = [&rise](Vec2) { return Vec2{rise.from.x, rise.from.z}; };
    return out;
}

Locus locusOf(const SnapRoom& room)
{
    Locus out;
    out.kind = SnapKind::radius;
    out.word = room.word;
    out.project = [&room](Vec2 p) { return shortestAt(room, p); };
    out.origin = [&room](Vec2) { return Vec2{room.neighbour.x, room.neighbour.z}; };
    return out;
}

Locus locusOf(const SnapClearance& clearance)
{
    Locus out;
    out.kind = SnapKind::limit;
    out.word = clearance.word;
    out.project = [&clearance](Vec2 p) -> std::optional<Vec2> {
        const NearestEdge edge = nearestEdge(clearance.outline, p);
        Vec2 way = edge.outward;
        if (edge.distance_mm > exact_mm && !isInside(clearance.outline, p))
            way = {(p.x - edge.at.x) / edge.distance_mm, (p.z - edge.at.z) / edge.distance_mm};
        return Vec2{edge.at.x + way.x * clearance.away_mm, edge.at.z + way.z * clearance.away_mm};
    };
    out.origin = [&clearance](Vec2 at) { return nearestEdge(clearance.outline, at).at; };
    return out;
}

/// Where two say the same the guide tells more of the first of these.
int rank(SnapKind kind)
{
    constexpr std::array order = {SnapKind::limit, SnapKind::tangent, SnapKind::level,
                                  SnapKind::plumb, SnapKind::rise,    SnapKind::radius};
    return static_cast<int>(std::find(order.begin(), order.end(), kind) - order.begin());
}

/// A curve's direction, from where it is next to its place.
Vec2 wayOf(const Locus& locus)
{
    if (locus.line)
        return locus.line->way;
    Vec2 best;
    double far_mm = 0;
    for (const Vec2 step : {Vec2{1, 0}, Vec2{0, 1}}) {
        const std::optional<Vec2> beside = locus.project({locus.at.x + step.x, locus.at.z + step.z});
        const double mm = beside ? apart(*beside, locus.at) : 0;
        if (mm > far_mm) {
            best = {(beside->x - locus.at.x) / mm, (beside->z - locus.at.z) / mm};
            far_mm = mm;
        }
    }
    return best;
}

std::vector<Locus> lociInReach(Vec2 raw, const SnapScene& scene, const SnapChoice& choice, double reach_mm)
{
    std::vector<Locus> out;
    const auto add = [&](Locus locus) {
        const std::optional<Vec2> at = choice.has(locus.kind) ? locus.project(raw) : std::nullopt;
        if (!at || !(apart(*at, raw) <= reach_mm))
            return;
        locus.at = *at;
        locus.off_mm = apart(*at, raw);
        locus.way = wayOf(locus);
        out.push_back(std::move(locus));
    };
    for (const SnapLine& line : scene.lines)
        add(locusOf(line, reach_mm));
    for (const SnapRise& rise : scene.rises)
        add(locusOf(rise));
    for (const SnapRoom& room : scene.rooms)
        add(locusOf(room));
    for (const SnapClearance& clearance : scene.clearances)
        if (clearance.outline.size() > 1)
            add(locusOf(clearance));
    std::stable_sort(out.begin(), out.end(), [](const Locus& a, const Locus& b) {
        constexpr double same_mm = 1e-6;
        if (std::abs(a.off_mm - b.off_mm) > same_mm)
            return a.off_mm < b.off_mm;
        return rank(a.kind) < rank(b.kind);
    });
    return out;
}

Vec2 crossing(const SnapLine& a, const SnapLine& b)
{
    const double turn = a.way.x * b.way.z - a.way.z * b.way.x;
    const double t = ((b.from.x - a.from.x) * b.way.z - (b.from.z - a.from.z) * b.way.x) / turn;
    return onLine(a, t);
}

/// Where two loci meet: lines exactly, curves by going from one to the other.
std::optional<Vec2> meeting(const Locus& a, const Locus& b, Vec2 from)
{
    constexpr int steps = 60;
    constexpr double least = 0.1; // nearly along each other they cross nowhere of use
    if (std::abs(a.way.x * b.way.z - a.way.z * b.way.x) < least)
        return std::nullopt;
    if (a.line && b.line)
        return crossing(*a.line, *b.line);
    Vec2 at = from;
    for (int i = 0; i < steps; ++i) {
        const std::optional<Vec2> on_a = a.project(at);
        const std::optional<Vec2> on_b = on_a ? b.project(*on_a) : std::nullopt;
        if (!on_b)
            return std::nullopt;
        at = *on_b;
    }
    const std::optional<Vec2> on_a = a.project(at);
    return on_a && apart(*on_a, at) < exact_mm ? on_a : std::nullopt;
}

Guide guideOf(const Locus& locus, Vec2 at)
{
    return {locus.origin(at), at, locus.kind, locus.word};
}

/// On a rise, the grid's plumb lines.
Vec2 gridOnRise(const Locus& rise, double grid_mm)
{
    return rise.project({toGrid(rise.at.x, grid_mm), rise.at.z}).value_or(rise.at);
}

/// On a line, the grid that runs across it.
Vec2 gridOnLine(const SnapLine& line, Vec2 at, double grid_mm)
{
    const bool flat = std::abs(line.way.x) >= std::abs(line.way.z);
    const double t = flat ? (toGrid(at.x, grid_mm) - line.from.x) / line.way.x
                          : (toGrid(at.z, grid_mm) - line.from.z) / line.way.z;
    const bool behind = line.reach == SnapLine::Reach::ray && t <= 0;
    return behind ? at : onLine(line, t);
}

std::optional<Snapped> toPoint(Vec2 raw, const SnapScene& scene, double reach_mm)
{
    const SnapPoint* best = nullptr;
    for (const SnapPoint& point : scene.points)
        if (apart(point.at, raw) <= reach_mm && (!best || apart(point.at, raw) < apart(best->at, raw)))
            best = &point;
    if (!best)
        return std::nullopt;
    Snapped out;
    out.at = best->at;
    out.guides.emplace_back(best->at, best->at, SnapKind::point, best->word);
    return out;
}

} // namespace

Snapped snap(Vec2 raw, const SnapScene& scene, const SnapChoice& choice, double grid_mm, double reach_mm)
{
    constexpr double corner_reach = 1.5; // a crossing may be a little farther than either of its lines
    if (choice.has(SnapKind::point))
        if (std::optional<Snapped> point = toPoint(raw, scene, reach_mm))
            return *point;
    const bool grid = choice.has(SnapKind::grid) && grid_mm > 0;
    const std::vector<Locus> loci = lociInReach(raw, scene, choice, reach_mm);
    Snapped out;
    if (loci.empty()) {
        out.at = grid ? Vec2{toGrid(raw.x, grid_mm), toGrid(raw.z, grid_mm)} : raw;
        return out;
    }
    const Locus& first = loci.front();
    for (std::size_t i = 1; i < loci.size(); ++i) {
        if (first.line && loci[i].line && sameLine(*first.line, *loci[i].line))
            continue;
        const std::optional<Vec2> at = meeting(first, loci[i], raw);
        if (!at || apart(*at, raw) > corner_reach * reach_mm)
            continue;
        out.at = *at;
        out.guides = {guideOf(first, *at), guideOf(loci[i], *at)};
        return out;
    }
    out.at = first.at;
    if (grid && first.line)
        out.at = gridOnLine(*first.line, first.at, grid_mm);
    else if (grid && first.kind == SnapKind::rise)
        out.at = gridOnRise(first, grid_mm);
    out.guides.push_back(guideOf(first, out.at));
    return out;
}

std::optional<double> roomNeeded(const SnapRoom& room, Vec2 at)
{
    const Vec3 here = {at.x, room.depth_mm, at.z};
    const Vec3 way = unit(here - room.neighbour);
    const auto taken = [](double radius_mm, Vec3 in, Vec3 out) {
        return radius_mm * std::tan(std::acos(std::clamp(dot(in, out), -1.0, 1.0)) / 2);
    };
    double sum_mm = 0;
    double share = 0; // of the asked radii that the hose still bears
    const auto add = [&](double radius_mm, Vec3 in, Vec3 out) {
        const double mm = taken(radius_mm, in, out);
        if (!(mm > exact_mm))
            return;
        sum_mm += mm;
        share = std::max(share, std::min(1.0, room.least_radius_mm / radius_mm));
    };
    if (room.beyond && room.neighbour_radius_mm > 0)
        add(room.neighbour_radius_mm, unit(room.neighbour - *room.beyond), way);
    if (room.other && room.own_radius_mm > 0)
        add(room.own_radius_mm, way, unit(*room.other - here));
    const double needed = sum_mm * share;
    return needed > 0 && std::isfinite(needed) ? std::optional(needed) : std::nullopt;
}

double gridSpacing(double zoom, UnitSystem units)
{
    constexpr double least_px = 8;
    const std::span<const double> steps =
        units == UnitSystem::inch ? std::span<const double>(inch_grid) : std::span<const double>(metric_grid);
    for (const double step : steps)
        if (step * zoom >= least_px)
            return step;
    return steps.back();
}

double snapSpacing(double zoom, UnitSystem units)
{
    return std::min(gridSpacing(zoom, units), units == UnitSystem::inch ? mm_per_inch : 50.0);
}

} // namespace siphonwright
