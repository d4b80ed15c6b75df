#pragma once

#include "core/geometry/plumb.h"
#include "core/geometry/profile.h"
#include "core/sketch/part.h"
#include "core/sketch/sketch.h"

#include <memory>
#include <optional>
#include <vector>

/// A sketch resolved: true hose centrelines from opening to opening, their bores, heights along plumb.
namespace siphonwright {

/// Where a hose end lies and which way the hose leaves, in drawing axes: for drawing and connecting.
struct Attachment {
    Vec3 opening;
    std::vector<Corner> stub; ///< from the opening to the stop, elbow included
    double bore_mm = 0;       ///< of the port or nozzle; the hose end's where that is not entered
};
std::optional<Attachment> attachment(const Sketch& sketch, const HoseEnd& end);

/// One end of a resolved hose's path.
struct PathEnd {
    bool connected = false;
    Vec3 opening;                       ///< the opening into jacket or chamber; an open hose's end
    Vec3 stop;                          ///< where the hose itself starts: the end of the stub
    double bore_mm = 0;                 ///< the smallest bore at this end: port or nozzle, stub, hose end
    std::optional<Attachment> attached; ///< what the hose is pushed onto
};

/// A place that is narrower or wider than the hose itself: a port, nozzle, hose end, in-line part or reducer.
/// Hose ends and in-line parts count here alone, not in the path's bores: a short sleeve inside a hose lowers
/// no crown, so it neither makes nor mends a trap for air.
struct Constriction {
    PartRef part;
    double from_mm = 0; ///< along the path
    double to_mm = 0;
    double bore_mm = 0;
};

/// Geometry of one hose, without heights: depends only on the hose and on what its ends are on, so an
/// unchanged hose keeps it from one analysis to the next.
struct Route {
    Shared<Hose> hose;
    Path path;               ///< stubs included
    double hose_from_mm = 0; ///< the stretch of the path that is the hose itself
    double hose_to_mm = 0;
    PathEnd from;
    PathEnd to;
    /// The path's bends. Unlike path.line's own they know a bend as not fitting that would need room in a
    /// stub.
    std::vector<Bend> bends;
    std::vector<BendKind> bend_kinds;        ///< one per bend
    std::vector<std::size_t> bend_points;    ///< route point of each bend; no_point in a stub or at its end
    std::vector<Constriction> constrictions; ///< in order along the path
    double bore_mm = 0;                      ///< the hose's own; a default where none is entered
    bool bore_known = false;
    double length_mm = 0;     ///< developed, stop to stop
    double cut_length_mm = 0; ///< with engagement at both ends, rounded up to the unit choice's step
    double volume_ml = 0;     ///< bore volume of the hose itself
    double smallest_bore_mm = 0;
    double smallest_at_mm = 0;             ///< along the path
    UnitChoice units = UnitChoice::metric; ///< that the cut length is rounded for

    static constexpr std::size_t no_point = static_cast<std::size_t>(-1);
    double outsideDiameter() const { return bore_mm + 2 * hose->wall_mm; }
};

/// A hose with its heights.
struct ResolvedHose {
    std::shared_ptr<const Route> route;
    Profile profile;
    double rise_mm = 0;          ///< to's opening less from's opening, along plumb
    double highest_crown_mm = 0; ///< of the whole path
    double highest_at_mm = 0;    ///< along the path

    const Route& operator*() const { return *route; }
    const Route* operator->() const { return route.get(); }
    Id id() const { return route->hose->id; }
    HoseRole role() const { return route->hose->role; }
};

/// Heights along plumb of the coolant level, mm; nothing where not entered.
struct CoolantLevels {
    std::optional<double> cold_min_mm;
    std::optional<double> cold_full_mm;
    std::optional<double> hot_mm;
};

struct JacketHeights {
    double lowest_mm = 0;
    double highest_mm = 0;
    double diagonal_mm = 0; ///< of its box in space
};

/// A heater's body and chamber heights.
struct HeaterHeights {
    Id id;
    double body_top_mm = 0;
    double body_bottom_mm = 0;
    double chamber_top_mm = 0;
    double chamber_bottom_mm = 0;
    double outlet_crown_mm =
        0;               ///< of the outlet's opening into the chamber; its centre if no bore is entered
    double inlet_mm = 0; ///< centre of the inlet opening
    double outlet_mm = 0;
    std::optional<double> element_top_mm; ///< of the element's highest point
    double over_crown_ml = 0;             ///< chamber volume over the outlet's crown
};

struct Layout {
    Plumb plumb;
    std::vector<ResolvedHose> hoses; ///< in the sketch's order
    CoolantLevels levels;
    std::optional<JacketHeights> jacket;
    std::vector<HeaterHeights> heaters; ///< in the sketch's order

    const ResolvedHose* hose(const Id& id) const;
};

/// Plumb of a sketch with the vehicle standing on a grade.
Plumb plumbOf(const Sketch& sketch, Grade grade = {});

/// Resolve. `previous`, if given, lends the routes of hoses that have not changed.
Layout resolve(const Sketch& sketch, const Plumb& plumb, const Layout* previous = nullptr);

/// Place of an in-line part or clip, or of any distance along the hose itself, in drawing axes.
Vec3 alongHose(const Route& route, double along_mm);

} // namespace siphonwright
