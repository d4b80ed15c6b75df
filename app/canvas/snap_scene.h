#pragma once

#include "app/canvas/hose_draft.h"
#include "app/canvas/snap.h"

#include "core/geometry/projection.h"
#include "core/layout/layout.h"
#include "core/sketch/part.h"

#include <QRectF>

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

/// What there is to snap to in a sketch.
namespace siphonwright {

/// What the user has chosen.
struct SnapSettings {
    SnapChoice choice;
    double slope = 0.02; ///< constant rise, over length
};

/// What a hose's points take of the elevation (x, z): all of them, and so many each.
struct HoseBoxes {
    static constexpr std::size_t points_each = 32;
    explicit HoseBoxes(const Shared<Hose>& of);

    Shared<Hose> hose;
    QRectF whole;
    std::vector<QRectF> stretches;
};
using BoxesOfHoses = std::vector<std::shared_ptr<const HoseBoxes>>;
/// In the sketch's order. Those of before are kept where a hose is the same and at the same place.
BoxesOfHoses boxesOf(const Sketch& sketch, const BoxesOfHoses& before = {});
/// Where hoses' points are looked for: of a large drawing's hundreds of thousands few are in reach.
struct SnapNear {
    Vec2 at;
    double reach_mm = 0;
    const BoxesOfHoses& hoses; ///< boxesOf() the sketch
};
/// For a part that is moved: the sketch as it was when the drag began. `near_by` leaves out points of hoses
/// that are not in reach.
SnapScene sceneFor(const Sketch& sketch, const Layout& layout, const PartRef& part, double slope,
                   const SnapNear* near_by = nullptr);
/// The same in an end view: level and plumb with the neighbours on its hose, ports and nozzles.
SnapScene endSceneFor(const Sketch& sketch, const Layout& layout, const PartRef& part,
                      const Projection& view);
/// For the next point of a hose that is drawn.
SnapScene sceneFor(const Sketch& sketch, const Layout& layout, const HoseDraft& draft, double slope);
/// For the next corner of an outline.
SnapScene sceneFor(const std::vector<Vec2>& corners, const Plumb& plumb);

/// The least centreline radius of a hose, mm: its own minimum to the inside of the bend, or the rule's in
/// bores, and half its outside diameter.
double leastCentrelineRadius(const Sketch& sketch, const Hose& hose);

/// Limits that the rules set on a moved part, as lines and distances.
void addHoseLimits(SnapScene& scene, const Sketch& sketch, const Layout& layout, const Hose& hose,
                   double depth_mm);
void addHeaterLimits(SnapScene& scene, const Sketch& sketch, const Layout& layout, const Id& heater);
/// Level with the higher neighbour a point makes just no hump, with the lower one just no dip.
void addTrapLimits(SnapScene& scene, Vec3 before, Vec3 after, const Plumb& plumb, double depth_mm);

} // namespace siphonwright
