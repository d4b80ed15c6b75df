#pragma once

#include "core/geometry/vec.h"
#include "core/quantity/quantity.h"
#include "core/sketch/sketch.h"

#include <optional>
#include <vector>

/// A survey turned into the drawing.
namespace siphonwright {

/// Between what a tape and an inclinometer read and the drawing's axes. Exact, no small-angle form.
///
/// Level axes: X towards the engine's rear, Y towards its right side, Z plumb up; origin on the frame rail's
/// upper edge at station 0. With the slopes f of the floor, r of the rail and e of the engine (higher at the
/// front: positive), L the rail over the floor at station 0, a place at station s with height h is
///     X = s cos r
///     Z = h - s sin r                  measured from the frame rail
///     Z = h - L - s cos r tan f        measured from the floor
/// since the rail falls by s sin r and the floor by X tan f towards the rear. Turned to the engine, which the
/// drawing is square to:
///     u = X cos e - Z sin e            along the crankshaft, to the rear
///     w = X sin e + Z cos e            square to it
/// and, where the engine leans by l (top to its right), y' = Y cos l - w sin l, w' = Y sin l + w cos l. The
/// floor across the vehicle is taken as level. Drawn: x = x0 + u, y = y', z = w' with the front at the left,
/// both turned round with it at the right; x0 is where the jacket's front end is drawn, so that the engine
/// stays where it is. Datum: the frame rail at station 0, or the floor there when nothing was measured from
/// the rail and L is not known.
class SurveyAxes {
public:
    SurveyAxes(const Survey& survey, const Sketch& drawn);

    /// Null without a height, or from the floor with L not known. A station not measured is that of
    /// `where_drawn`, as is what lies across.
    std::optional<Vec3> drawn(const SurveyPoint& point, Vec3 where_drawn) const;
    /// What would have been measured of a drawn point, from rail or floor.
    std::optional<SurveyPoint> measured(Vec3 at, SurveyFrom from) const;
    /// Plumb in the drawing's axes as the vehicle stood.
    Vec3 up() const;
    /// The drawing's z of the floor under the drawing's x.
    std::optional<double> floorAt(double x_mm) const;
    /// Of the engine against the floor, positive: its rear lower; nothing unless both were measured.
    std::optional<double> mountAngle() const;

private:
    Vec3 fromLevel(Vec3 level) const;
    Vec3 toLevel(Vec3 drawn) const;

    double front_x_ = 0;
    double way_ = 1; ///< +1: the rear is to the right
    double floor_ = 0;
    double rail_ = 0;
    double engine_ = 0;
    double lean_ = 0;
    std::optional<double> rail_over_floor_mm_;
    std::optional<double> mount_angle_deg_;
};

/// What drawing from a survey did not find in it, and what it had to take for granted.
struct SurveyReport {
    std::vector<Message> not_measured; ///< stays typical or not known in the drawing
    std::vector<Message> taken;        ///< "The floor is taken as level: P was not measured."
    std::vector<Message> disagree;     ///< measurements that do not fit each other
};

/// Of a survey as it stands, drawn or not.
SurveyReport reportOn(const Sketch& sketch);

/// Makes or updates engine, tank, ports, thermostat and ground from what was measured; each fact that was
/// measured is marked so, the rest stays as it is. Without an engine an in-line 6 of typical shape is placed
/// first. The engine's shape is stretched: its jacket from face to face of the block and from the lowest to
/// the highest point; ports and thermostat that were not measured keep their place in it. Hoses stay on
/// their ports. Changes nothing without a survey.
bool drawFromSurvey(Sketch& sketch);

} // namespace siphonwright
