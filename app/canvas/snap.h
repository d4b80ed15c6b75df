#pragma once

#include "core/geometry/plumb.h"
#include "core/geometry/vec.h"
#include "core/quantity/quantity.h"

#include <QString>

#include <array>
#include <optional>
#include <utility>
#include <vector>

/// Snapping as plane geometry: a place in, a place and guides out. What there is to snap to comes as a
/// SnapScene (snap_scene.h makes one of a sketch).
namespace siphonwright {

enum class SnapKind { grid, point, level, plumb, rise, radius, tangent, limit };
constexpr std::size_t snap_kinds = 8;

/// Which kinds are wanted.
class SnapChoice {
public:
    SnapChoice() { on_.fill(true); }
    bool has(SnapKind kind) const { return on_[static_cast<std::size_t>(kind)]; }
    void set(SnapKind kind, bool on) { on_[static_cast<std::size_t>(kind)] = on; }

private:
    std::array<bool, snap_kinds> on_;
};

/// A line that shows what a point has snapped to, and the word for it.
struct Guide {
    Guide(Vec2 begin, Vec2 end, SnapKind snapped_to, QString said)
        : from(begin), to(end), kind(snapped_to), word(std::move(said))
    {}

    Vec2 from;
    Vec2 to;
    SnapKind kind;
    QString word;
};

struct Snapped {
    Vec2 at;
    std::vector<Guide> guides;
};

struct SnapPoint {
    SnapPoint(Vec2 place, QString said) : at(place), word(std::move(said)) {}
    Vec2 at;
    QString word;
};

/// A straight line through a place. A ray begins there; an endless line is of no place (a level, a limit).
struct SnapLine {
    enum class Reach { line, ray, endless };
    SnapLine(SnapKind what, Vec2 through, Vec2 along, QString said, Reach how_far = Reach::line)
        : kind(what), from(through), way(along), word(std::move(said)), reach(how_far)
    {}
    SnapKind kind;
    Vec2 from;
    Vec2 way; ///< unit vector
    QString word;
    Reach reach;
};

/// Places from where a piece to `from` has a constant rise in space: its height differs by `slope` times its
/// length. A straight line where both lie at one depth.
struct SnapRise {
    Vec3 from;
    double slope = 0; ///< over length; negative: the moving point is the lower one
    Plumb plumb;
    double depth_mm = 0; ///< y of the moving point
    QString word;
};

/// The straight between the moving point and one neighbour on its route: as short as the bends at its ends
/// allow. A bend of angle a and radius r takes r tan(a/2) of it (core/geometry/centreline.h).
struct SnapRoom {
    Vec3 neighbour;
    double neighbour_radius_mm = 0; ///< asked for there; 0: no bend
    std::optional<Vec3> beyond;     ///< where the route comes from there
    std::optional<Vec3> other;      ///< the moving point's other neighbour
    double own_radius_mm = 0;       ///< asked for at the moving point
    double least_radius_mm = 0;     ///< bends may be drawn down to this
    double depth_mm = 0;            ///< y of the moving point
    QString word;
};

/// A distance to keep off an outline.
struct SnapClearance {
    SnapClearance(std::vector<Vec2> shape, double keep_mm, QString said)
        : outline(std::move(shape)), away_mm(keep_mm), word(std::move(said))
    {}
    std::vector<Vec2> outline;
    double away_mm;
    QString word;
};

struct SnapScene {
    std::vector<SnapPoint> points;
    std::vector<SnapLine> lines;
    std::vector<SnapRise> rises;
    std::vector<SnapRoom> rooms;
    std::vector<SnapClearance> clearances;
};

/// Snap a place. A point within `reach_mm` wins; then where the nearest two lines (or limits) within reach
/// cross; then the nearest line, on it to the grid; failing all, the grid. A grid of 0 is none.
Snapped snap(Vec2 raw, const SnapScene& scene, const SnapChoice& choice, double grid_mm, double reach_mm);

/// Lines level and truly plumb with a place, for a point at a depth.
void addLevelAndPlumb(SnapScene& scene, Vec3 with, const Plumb& plumb, double depth_mm);
/// Pieces to a place that rise or fall by `slope` (rise over length, 0.02 is 1 in 50).
void addRise(SnapScene& scene, Vec3 from, double slope, const Plumb& plumb, double depth_mm,
             const QString& word);
/// A ray in line with the piece from `before` to `from`.
void addTangent(SnapScene& scene, Vec3 before, Vec3 from, const QString& word);
/// A level line at a height along plumb.
void addHeightLimit(SnapScene& scene, double height_mm, const Plumb& plumb, double depth_mm,
                    const QString& word);
/// The length of the straight that a room's bends need with the moving point at a place; nothing without a
/// bend.
std::optional<double> roomNeeded(const SnapRoom& room, Vec2 at);

/// The grid's spacing at a zoom, mm: fine enough to be of use, coarse enough to be seen apart.
double gridSpacing(double zoom, UnitSystem units);
/// What points snap to: the grid's spacing, but never coarser than 50 mm or 1 in.
double snapSpacing(double zoom, UnitSystem units);

} // namespace siphonwright
