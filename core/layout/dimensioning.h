#pragma once

#include "core/layout/layout.h"

#include <memory>
#include <optional>

/// What a drawn dimension measures, resolved: both places, the value, and where its line lies.
///
/// All lengths in mm in the drawing's axes. What an end's `index` means beyond PartRef, for a part that has
/// several places of its own: PortPlace, HeaterPlace, JacketPlace, TankPlace; on PartKind::hose it is whole
/// mm along the hose from where the hose starts.
namespace siphonwright {

enum class PortPlace { opening, stop };
enum class HeaterPlace { centre, inlet, outlet, top, foot }; ///< inlet, outlet: openings into the chamber
enum class JacketPlace { lowest, highest };                  ///< along plumb
enum class TankPlace { middle, cold_min, cold_full, hot };   ///< a mark: the coolant's level with it

/// Where an end lies.
struct DimensionPlace {
    Vec3 at;
    bool held = false;              ///< on a part that is there; otherwise it is at the end's `at`
    bool has_depth = true;          ///< outlines, levels and free places have none: y is the other end's
    std::optional<double> along_mm; ///< on a hose: along its path
};

/// A stretch of a hose's path that a dimension runs along.
struct HoseStretch {
    std::shared_ptr<const Route> route;
    double from_mm = 0; ///< along the path; not over to_mm
    double to_mm = 0;
};

/// A dimension as it measures now.
///
/// horizontal: |dx|; vertical: |dz|, both square to the engine as the drawing is. along: true length of the
/// straight line in space; between two places of one hose the length ALONG THE HOSE, which is what is cut
/// and clipped. slope: rise along plumb over run square to plumb, never negative, infinite where plumb.
/// A place without depth is taken at the other's, so that it is measured as the drawing shows it.
struct MeasuredDimension {
    DimensionKind kind = DimensionKind::along;
    DimensionPlace from;
    DimensionPlace to;
    double value = 0;                   ///< mm, or rise over run
    double angle_deg = 0;               ///< of the straight line over the level, 0 to 90
    std::optional<HoseStretch> stretch; ///< where it runs along a hose
    double aside_mm = 0;
};

/// Where an end lies, seen from the other end: a whole outline (engine, area) is held at its place nearest to
/// that, ground and levels under or over it.
DimensionPlace placeOfEnd(const DimensionEnd& end, const Sketch& sketch, const Layout& layout,
                          Vec3 seen_from);

MeasuredDimension measure(const Dimension& dimension, const Sketch& sketch, const Layout& layout);

/// Whether an end is a height rather than a place: jacket's levels, tank's marks, the ground.
bool isLevel(const DimensionEnd& end);

/// The kind that a pointer asks for by where it is: over or under both places horizontal, beside both
/// vertical, else along.
DimensionKind kindAt(Vec2 from, Vec2 to, Vec2 pointer);

/// Which way `aside_mm` counts, a unit vector in the elevation: up (horizontal), right (vertical), else to
/// the left of the way from `from` to `to`; for two places that are one in the elevation, up.
Vec2 asideWay(const MeasuredDimension& measured);

/// The aside that puts the dimension line through a place: from the middle between the ends for horizontal
/// and vertical, from the line between them else; from the hose's centreline, left of its flow positive,
/// where it runs along one.
double asideThrough(const MeasuredDimension& measured, Vec2 place);

} // namespace siphonwright
