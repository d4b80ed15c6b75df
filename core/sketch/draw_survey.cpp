#include "core/sketch/draw_survey.h"

#include "core/sketch/edits.h"
#include "core/sketch/survey_letters.h"
#include "core/sketch/template_parts.h"

#include <algorithm>
#include <cmath>

namespace siphonwright {
namespace {

struct Extent {
    double least = 0;
    double most = 0;
};

Extent extentOf(const std::vector<Vec2>& outline, double Vec2::*member)
{
    const auto [least, most] =
        std::minmax_element(outline.begin(), outline.end(),
                            [member](const Vec2& a, const Vec2& b) { return a.*member < b.*member; });
    return outline.empty() ? Extent{} : Extent{(*least).*member, (*most).*member};
}

/// A straight map of one coordinate, so that both ends come out exactly.
struct Stretch {
    Extent from;
    Extent to;

    double operator()(double at) const
    {
        const double size = from.most - from.least;
        if (!(size > 0))
            return at + to.least - from.least;
        const double share = (at - from.least) / size;
        return to.least * (1 - share) + to.most * share;
    }
};

bool isTypical(Source source)
{
    return !isConfirmed(source);
}

/// Where the jacket's levels come to lie: as measured; with one of them only, the other keeps its distance.
Extent levelsFrom(const SurveyAxes& axes, const Survey& survey, const Engine& engine, bool& both)
{
    const Extent now = extentOf(engine.jacket, &Vec2::z);
    const double middle =
        (extentOf(engine.jacket, &Vec2::x).least + extentOf(engine.jacket, &Vec2::x).most) / 2;
    const auto zOf = [&](const std::optional<SurveyPoint>& point, double z) -> std::optional<double> {
        if (!point)
            return std::nullopt;
        const std::optional<Vec3> at = axes.drawn(*point, {middle, 0, z});
        return at ? std::optional(at->z) : std::nullopt;
    };
    const std::optional<double> lowest = zOf(survey.jacket_lowest, now.least);
    const std::optional<double> highest = zOf(survey.jacket_highest, now.most);
    both = lowest && highest && *lowest < *highest;
    if (both)
        return {*lowest, *highest};
    if (lowest)
        return {*lowest, *lowest + now.most - now.least};
    return highest ? Extent{*highest - now.most + now.least, *highest} : now;
}

/// The shape, with what is drawn on it and nobody has measured.
void stretchEngine(Sketch& sketch, const Stretch& x, const Stretch& z)
{
    Engine& engine = *sketch.engine;
    for (std::vector<Vec2>* outline : {&engine.outline, &engine.jacket})
        for (Vec2& corner : *outline)
            corner = {x(corner.x), z(corner.z)};
    const auto along = [&](Vec3& at) { at = {x(at.x), at.y, z(at.z)}; };
    for (Port& port : sketch.ports)
        if (isTypical(port.position_source))
            along(port.position);
    if (engine.thermostat && isTypical(engine.thermostat->position_source))
        along(engine.thermostat->position);
    if (sketch.tank && isTypical(sketch.tank->position_source))
        move(sketch, {PartKind::tank, {}, 0}, {0, 0, z.to.most - z.from.most});
}

void drawEngine(Sketch& sketch, const SurveyAxes& axes, const Survey& survey)
{
    Engine& engine = *sketch.engine;
    bool both = false;
    const Stretch z{extentOf(engine.jacket, &Vec2::z), levelsFrom(axes, survey, engine, both)};
    const Extent ends = extentOf(engine.jacket, &Vec2::x);
    const double length = survey.block_length_mm.value_or(ends.most - ends.least);
    const bool front_left = engine.front == EngineEnd::left;
    const Stretch x{ends, front_left ? Extent{ends.least, ends.least + length}
                                     : Extent{ends.most - length, ends.most}};
    stretchEngine(sketch, x, z);
    if (both)
        engine.jacket_source = Source::measured;
    if (const std::optional<double> mount = axes.mountAngle())
        engine.mount_angle_deg = *mount;
}

Direction directionOf(SurveyFacing facing, double tilt_deg, bool front_left)
{
    switch (facing) {
    case SurveyFacing::front:
        return {front_left ? 180.0 : 0.0, tilt_deg};
    case SurveyFacing::rear:
        return {front_left ? 0.0 : 180.0, tilt_deg};
    case SurveyFacing::right:
        return {front_left ? 90.0 : 270.0, tilt_deg};
    case SurveyFacing::left:
        return {front_left ? 270.0 : 90.0, tilt_deg};
    case SurveyFacing::up:
        return {0, 90};
    case SurveyFacing::down:
        break;
    }
    return {0, -90};
}

/// The port of a role; a typical one on the jacket where there is none.
Port& portFor(Sketch& sketch, PortRole role)
{
    const auto has_role = [role](const Port& port) { return port.role == role; };
    const auto found = std::find_if(sketch.ports.begin(), sketch.ports.end(), has_role);
    if (found != sketch.ports.end())
        return *found;
    const Engine& engine = *sketch.engine;
    const Extent x = extentOf(engine.jacket, &Vec2::x);
    const Extent z = extentOf(engine.jacket, &Vec2::z);
    const double front = engine.front == EngineEnd::left ? x.least : x.most;
    const double rear = engine.front == EngineEnd::left ? x.most : x.least;
    constexpr double bore_mm = 15.875;
    addPort(sketch, role == PortRole::supply
                        ? typicalPort(PortKind::drain_port, role, {front, engine.jacket_y_from_mm, z.least},
                                      {270, -30}, bore_mm)
                        : typicalPort(PortKind::head_port, role, {rear, 0, z.most},
                                      {engine.front == EngineEnd::left ? 0.0 : 180.0, 0}, bore_mm));
    return sketch.ports.back();
}

void drawPort(Sketch& sketch, const SurveyAxes& axes, const SurveyPort& measured, PortRole role)
{
    Port& port = portFor(sketch, role);
    if (measured.at) {
        const std::optional<Vec3> at = axes.drawn(*measured.at, port.position);
        if (at)
            port.position = *at;
        if (at && measured.at->along_mm && measured.at->across_mm)
            port.position_source = Source::measured;
    }
    port.kind = measured.kind.value_or(port.kind);
    if (!measured.thread.empty())
        port.thread = measured.thread;
    if (measured.bore_mm)
        port.bore_mm = {*measured.bore_mm, Source::measured};
    if (measured.facing)
        port.axis = directionOf(*measured.facing, measured.tilt_deg.value_or(0),
                                sketch.engine->front == EngineEnd::left);
    constexpr double faces_down_deg = -60; // as the templates have it: then no elbow is needed
    if (measured.facing && port.axis.elevation_deg <= faces_down_deg)
        port.stub.elbow.reset();
}

void drawThermostat(Sketch& sketch, const SurveyAxes& axes, const Survey& survey)
{
    Engine& engine = *sketch.engine;
    if (!survey.thermostat && !survey.thermostat_side)
        return;
    if (!engine.thermostat)
        engine.thermostat.emplace();
    if (survey.thermostat) {
        if (const std::optional<Vec3> at = axes.drawn(*survey.thermostat, engine.thermostat->position)) {
            engine.thermostat->position = *at;
            if (survey.thermostat->along_mm && survey.thermostat->across_mm)
                engine.thermostat->position_source = Source::measured;
        }
    }
    if (survey.thermostat_side)
        engine.thermostat->side = {*survey.thermostat_side, Source::measured};
}

/// A mark is a level plane through the tank's place: what was read at the mark is carried there along it.
void drawMark(Fact<double>& mark, const std::optional<SurveyPoint>& read, const SurveyPoint& cap,
              const SurveyAxes& axes, Vec3 tank)
{
    if (!read)
        return;
    SurveyPoint point = *read;
    if (!point.along_mm)
        point.along_mm = cap.along_mm;
    if (!point.across_mm)
        point.across_mm = cap.across_mm;
    const std::optional<Vec3> at = axes.drawn(point, tank);
    if (!at)
        return;
    const Vec3 up = axes.up();
    mark = {at->z + (up.x * (at->x - tank.x) + up.y * (at->y - tank.y)) / up.z, Source::measured};
}

void drawTank(Sketch& sketch, const SurveyAxes& axes, const Survey& survey)
{
    if (!survey.tank_cap && !survey.mark_cold_min && !survey.mark_cold_full && !survey.mark_hot)
        return;
    if (!sketch.tank) {
        const Extent x = extentOf(sketch.engine->outline, &Vec2::x);
        const double beside = sketch.engine->front == EngineEnd::left ? x.least - 160 : x.most + 160;
        sketch.tank = typicalTank(beside, extentOf(sketch.engine->outline, &Vec2::z).most);
    }
    SurgeTank& tank = *sketch.tank;
    if (survey.tank_cap) {
        if (const std::optional<Vec3> at = axes.drawn(*survey.tank_cap, tank.position)) {
            tank.position = *at;
            if (survey.tank_cap->along_mm && survey.tank_cap->across_mm)
                tank.position_source = Source::measured;
        }
    }
    const SurveyPoint cap = survey.tank_cap.value_or(SurveyPoint{});
    drawMark(tank.cold_min_mm, survey.mark_cold_min, cap, axes, tank.position);
    drawMark(tank.cold_full_mm, survey.mark_cold_full, cap, axes, tank.position);
    drawMark(tank.hot_mm, survey.mark_hot, cap, axes, tank.position);
}

void drawRest(Sketch& sketch, const SurveyAxes& axes, const Survey& survey)
{
    if (const std::optional<double> floor = axes.floorAt(0); floor && survey.ride_drop_mm)
        sketch.ground_z_mm = *floor + *survey.ride_drop_mm / axes.up().z;
    if (survey.supply_V)
        for (Heater& heater : sketch.heaters)
            heater.actual_V = {*survey.supply_V, Source::measured};
    sketch.coolant.glycol = survey.glycol.value_or(sketch.coolant.glycol);
    if (survey.glycol_percent)
        sketch.coolant.volume_percent = {*survey.glycol_percent, Source::measured};
    if (!survey.coolant_colour.empty())
        sketch.coolant.colour = survey.coolant_colour;
}

/// An in-line 6 of typical shape with one supply and one return port; a tank that is there stays.
void placeTypicalEngine(Sketch& sketch)
{
    const std::vector<EngineTemplate>& all = engineTemplates();
    const auto chosen =
        std::find_if(all.begin(), all.end(), [](const EngineTemplate& one) { return one.id == "in-line-6"; });
    if (chosen == all.end())
        return;
    EngineTemplate shape = *chosen;
    shape.ports.erase(std::remove_if(shape.ports.begin(), shape.ports.end(),
                                     [](const Port& port) {
                                         return port.role != PortRole::supply &&
                                                port.role != PortRole::return_;
                                     }),
                      shape.ports.end());
    const std::optional<SurgeTank> tank = sketch.tank;
    placeEngine(sketch, shape, {});
    if (tank)
        sketch.tank = tank;
}

} // namespace

bool drawFromSurvey(Sketch& sketch)
{
    if (!sketch.survey)
        return false;
    const Survey survey = *sketch.survey;
    if (!sketch.engine || sketch.engine->jacket.empty())
        placeTypicalEngine(sketch);
    if (!sketch.engine || sketch.engine->jacket.empty())
        return false;
    const SurveyAxes axes(survey, sketch);
    drawEngine(sketch, axes, survey);
    if (survey.supply_port)
        drawPort(sketch, axes, *survey.supply_port, PortRole::supply);
    if (survey.return_port)
        drawPort(sketch, axes, *survey.return_port, PortRole::return_);
    drawThermostat(sketch, axes, survey);
    drawTank(sketch, axes, survey);
    drawRest(sketch, axes, survey);
    return true;
}

} // namespace siphonwright
