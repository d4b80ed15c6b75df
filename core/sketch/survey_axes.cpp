#include "core/quantity/constants.h"
#include "core/sketch/draw_survey.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

bool anyFromRail(const Survey& survey)
{
    const auto from_rail = [](const std::optional<SurveyPoint>& point) {
        return point && point->height_mm && point->from == SurveyFrom::frame_rail;
    };
    return from_rail(survey.jacket_lowest) || from_rail(survey.jacket_highest) ||
           (survey.supply_port && from_rail(survey.supply_port->at)) ||
           (survey.return_port && from_rail(survey.return_port->at)) || from_rail(survey.thermostat) ||
           from_rail(survey.tank_cap) || from_rail(survey.mark_cold_min) ||
           from_rail(survey.mark_cold_full) || from_rail(survey.mark_hot);
}

/// Where the jacket's front end is drawn.
double frontOf(const Engine& engine)
{
    double front = 0;
    bool first = true;
    for (const Vec2 corner : engine.jacket) {
        const bool further = engine.front == EngineEnd::left ? corner.x < front : corner.x > front;
        if (first || further)
            front = corner.x;
        first = false;
    }
    return front;
}

} // namespace

SurveyAxes::SurveyAxes(const Survey& survey, const Sketch& drawn)
{
    const double mount_deg = drawn.engine ? drawn.engine->mount_angle_deg : 0;
    const double floor_deg = survey.floor_slope_deg.value_or(0);
    floor_ = floor_deg * rad_per_deg;
    rail_ = survey.rail_slope_deg.value_or(floor_deg) * rad_per_deg;
    engine_ = survey.engine_slope_deg.value_or(floor_deg + mount_deg) * rad_per_deg;
    if (survey.engine_slope_deg && survey.floor_slope_deg)
        mount_angle_deg_ = *survey.engine_slope_deg - *survey.floor_slope_deg;
    rail_over_floor_mm_ = survey.rail_over_floor_mm;
    if (!rail_over_floor_mm_ && !anyFromRail(survey))
        rail_over_floor_mm_ = 0;
    if (drawn.engine) {
        front_x_ = frontOf(*drawn.engine);
        way_ = drawn.engine->front == EngineEnd::left ? 1 : -1;
        lean_ = drawn.engine->lean_deg * rad_per_deg;
    }
}

Vec3 SurveyAxes::fromLevel(Vec3 level) const
{
    const double u = level.x * std::cos(engine_) - level.z * std::sin(engine_);
    const double w = level.x * std::sin(engine_) + level.z * std::cos(engine_);
    const double y = level.y * std::cos(lean_) - w * std::sin(lean_);
    const double z = level.y * std::sin(lean_) + w * std::cos(lean_);
    return {front_x_ + way_ * u, way_ * y, z};
}

Vec3 SurveyAxes::toLevel(Vec3 drawn) const
{
    const double u = way_ * (drawn.x - front_x_);
    const double right = way_ * drawn.y;
    const double y = right * std::cos(lean_) + drawn.z * std::sin(lean_);
    const double w = drawn.z * std::cos(lean_) - right * std::sin(lean_);
    return {u * std::cos(engine_) + w * std::sin(engine_), y, w * std::cos(engine_) - u * std::sin(engine_)};
}

std::optional<Vec3> SurveyAxes::drawn(const SurveyPoint& point, Vec3 where_drawn) const
{
    const bool from_floor = point.from == SurveyFrom::floor;
    if (!point.height_mm || (from_floor && !rail_over_floor_mm_))
        return std::nullopt;
    const Vec3 now = toLevel(where_drawn);
    const double along = point.along_mm.value_or(now.x / std::cos(rail_));
    Vec3 level;
    level.x = along * std::cos(rail_);
    level.y = point.across_mm.value_or(now.y);
    level.z = from_floor ? *point.height_mm - *rail_over_floor_mm_ - level.x * std::tan(floor_)
                         : *point.height_mm - along * std::sin(rail_);
    return fromLevel(level);
}

std::optional<SurveyPoint> SurveyAxes::measured(Vec3 at, SurveyFrom from) const
{
    if (from == SurveyFrom::floor && !rail_over_floor_mm_)
        return std::nullopt;
    const Vec3 level = toLevel(at);
    SurveyPoint point;
    point.from = from;
    point.along_mm = level.x / std::cos(rail_);
    point.across_mm = level.y;
    point.height_mm = from == SurveyFrom::floor ? level.z + *rail_over_floor_mm_ + level.x * std::tan(floor_)
                                                : level.z + *point.along_mm * std::sin(rail_);
    return point;
}

Vec3 SurveyAxes::up() const
{
    return fromLevel({0, 0, 1}) - fromLevel({});
}

std::optional<double> SurveyAxes::floorAt(double x_mm) const
{
    if (!rail_over_floor_mm_)
        return std::nullopt;
    // The floor as a line in the drawing, through two of its points.
    const auto onFloor = [this](double level_x) {
        return fromLevel({level_x, 0, -*rail_over_floor_mm_ - level_x * std::tan(floor_)});
    };
    const Vec3 a = onFloor(0);
    const Vec3 b = onFloor(1000);
    return a.z + (b.z - a.z) * (x_mm - a.x) / (b.x - a.x);
}

std::optional<double> SurveyAxes::mountAngle() const
{
    return mount_angle_deg_;
}

} // namespace siphonwright
