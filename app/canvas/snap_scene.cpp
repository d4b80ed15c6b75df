#include "app/canvas/snap_scene.h"

#include "app/canvas/hit.h"
#include "app/canvas/plane.h"
#include "app/canvas/sockets.h"
#include "app/language/in_words.h"
#include "app/language/tr.h"

#include "core/sketch/edits.h"

#include <algorithm>
#include <cstddef>

/// What a moved part, or the next point of a hose, lines up with.
namespace siphonwright {
namespace {

QString slopeWord(const Sketch& sketch, double slope)
{
    const UnitSystem units = sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    return inWords(slope, Unit::slope, units);
}

void addCorners(SnapScene& scene, const std::vector<Vec2>& outline, const QString& word)
{
    for (const Vec2& corner : outline)
        scene.points.emplace_back(corner, word);
}

bool inReach(const SnapNear& near_by, const QRectF& box)
{
    return near_by.at.x >= box.left() - near_by.reach_mm && near_by.at.x <= box.right() + near_by.reach_mm &&
           near_by.at.z >= box.top() - near_by.reach_mm && near_by.at.z <= box.bottom() + near_by.reach_mm;
}

void addHosePoints(SnapScene& scene, const Hose& hose, const SnapNear* near_by, const HoseBoxes* boxes)
{
    if (near_by && !inReach(*near_by, boxes->whole))
        return;
    const QString name = inWords(hose.name);
    for (std::size_t i = 0; i < hose.points.size(); ++i) {
        if (near_by && i % HoseBoxes::points_each == 0)
            while (i < hose.points.size() && !inReach(*near_by, boxes->stretches[i / HoseBoxes::points_each]))
                i += HoseBoxes::points_each;
        if (i >= hose.points.size())
            return;
        const Vec3& at = hose.points[i].at;
        if (!near_by || inReach(*near_by, QRectF(QPointF(at.x, at.z), QPointF(at.x, at.z))))
            scene.points.emplace_back(flatInElevation(at), name);
    }
}

/// Everything that is a point, but for what moves with the part.
void addPoints(SnapScene& scene, const Sketch& sketch, const PartRef& part, const SnapNear* near_by = nullptr)
{
    const PartRef owner = ownerOf(part);
    const bool with_engine = owner.kind == PartKind::engine;
    // A hose's point put onto the hose's own end would be no point.
    const Hose* own = part.kind == PartKind::hose_point ? sketch.hose(part.id) : nullptr;
    for (const Socket& socket : socketsOf(sketch)) {
        const bool moves = socket.end.port.empty() ? socket.end.heater == part.id
                                                   : with_engine || socket.end.port == part.id;
        const bool own_end = own && (socket.sameAs(own->from) || socket.sameAs(own->to));
        if (moves || own_end)
            continue;
        scene.points.emplace_back(flatInElevation(socket.stop), socket.name);
        scene.points.emplace_back(flatInElevation(socket.opening), socket.name);
    }
    for (std::size_t i = 0; i < sketch.hoses.size(); ++i) {
        const Hose& hose = *sketch.hoses[i];
        if (owner.kind != PartKind::hose || hose.id != part.id)
            addHosePoints(scene, hose, near_by, near_by ? near_by->hoses[i].get() : nullptr);
    }
    if (sketch.engine && owner.kind != PartKind::engine)
        addCorners(scene, sketch.engine->outline, tr("corner of the engine"));
    if (sketch.engine && owner.kind != PartKind::engine && owner.kind != PartKind::jacket)
        addCorners(scene, sketch.engine->jacket, tr("corner of the jacket"));
    for (const Shared<Area>& area : sketch.areas)
        if (owner.kind != PartKind::area || area->id != part.id)
            addCorners(scene, area->outline, inWords(area->name));
}

void addSockets(SnapScene& scene, const Sketch& sketch, const Plumb& plumb, const PartRef& part,
                double depth_mm)
{
    const bool on_hose = ownerOf(part).kind == PartKind::hose;
    for (const Socket& socket : socketsOf(sketch)) {
        const bool itself = !part.id.empty() && (socket.end.port == part.id || socket.end.heater == part.id);
        if (!itself)
            addLevelAndPlumb(scene, on_hose ? socket.stop : socket.opening, plumb, depth_mm);
    }
}

/// A hose's course as it bears on one of its points: the line it is drawn through, with a place in the stub
/// before and after it.
struct Course {
    std::vector<Corner> line;
    std::size_t self = 0;
    std::size_t first = 0; ///< the stops: what lies outside is rigid
    std::size_t last = 0;
};

std::optional<Vec3> innerOf(const PathEnd& end)
{
    if (!end.attached || end.attached->stub.size() < 2)
        return std::nullopt;
    return end.attached->stub[end.attached->stub.size() - 2].at;
}

Course courseOf(const Hose& hose, const Route& route, const PartRef& part)
{
    Course out;
    if (const std::optional<Vec3> inner = innerOf(route.from))
        out.line.push_back({*inner, 0});
    out.first = out.line.size();
    out.line.push_back({route.from.stop, 0});
    for (const RoutePoint& point : hose.points)
        out.line.push_back({point.at, point.radius_mm});
    out.last = out.line.size();
    out.line.push_back({route.to.stop, 0});
    if (const std::optional<Vec3> inner = innerOf(route.to))
        out.line.push_back({*inner, 0});
    out.self = part.kind == PartKind::hose_point ? out.first + 1 + part.index
               : part.index == 0                 ? out.first
                                                 : out.last;
    return out;
}

/// What one side of a moved route point gives: `step` is -1 for the piece before it, 1 for the one after.
void addSide(SnapScene& scene, const Course& course, std::ptrdiff_t step, double least_mm, const Plumb& plumb,
             double slope, const QString& slope_word)
{
    const auto at = [&](std::ptrdiff_t i) -> const Corner* {
        return i >= 0 && i < static_cast<std::ptrdiff_t>(course.line.size())
                   ? &course.line[static_cast<std::size_t>(i)]
                   : nullptr;
    };
    const auto self = static_cast<std::ptrdiff_t>(course.self);
    const Corner* next = at(self + step);
    const bool rigid = self + step < static_cast<std::ptrdiff_t>(course.first) ||
                       self + step > static_cast<std::ptrdiff_t>(course.last);
    if (!next || rigid)
        return;
    const double depth_mm = course.line[course.self].at.y;
    addLevelAndPlumb(scene, next->at, plumb, depth_mm);
    addRise(scene, next->at, slope, plumb, depth_mm, slope_word);
    const Corner* beyond = at(self + 2 * step);
    if (beyond)
        addTangent(scene, beyond->at, next->at, tr("in line with the next piece"));
    const Corner* other = at(self - step);
    SnapRoom room;
    room.neighbour = next->at;
    room.neighbour_radius_mm = next->radius_mm;
    if (beyond)
        room.beyond = beyond->at;
    if (other)
        room.other = other->at;
    room.own_radius_mm = course.line[course.self].radius_mm;
    room.least_radius_mm = least_mm;
    room.depth_mm = depth_mm;
    scene.rooms.push_back(room);
}

QString radiusWord(const Sketch& sketch, double least_mm)
{
    const UnitSystem units = sketch.units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric;
    return tr("bend radius just %1").arg(inWords(least_mm, Unit::mm, units));
}

void addHoseScene(SnapScene& scene, const Sketch& sketch, const Layout& layout, const PartRef& part,
                  double slope)
{
    const ResolvedHose* resolved = layout.hose(part.id);
    const Hose* hose = sketch.hose(part.id);
    if (!hose || !resolved || (part.kind == PartKind::hose_point && part.index >= hose->points.size()))
        return;
    const Course course = courseOf(*hose, **resolved, part);
    const double least_mm = leastCentrelineRadius(sketch, *hose);
    for (const std::ptrdiff_t step : {std::ptrdiff_t{-1}, std::ptrdiff_t{1}})
        addSide(scene, course, step, least_mm, layout.plumb, slope, slopeWord(sketch, slope));
    for (SnapRoom& room : scene.rooms)
        room.word = radiusWord(sketch, least_mm);
    const double depth_mm = course.line[course.self].at.y;
    if (part.kind == PartKind::hose_point)
        addTrapLimits(scene, course.line[course.self - 1].at, course.line[course.self + 1].at, layout.plumb,
                      depth_mm);
    addHoseLimits(scene, sketch, layout, *hose, depth_mm);
}

} // namespace

HoseBoxes::HoseBoxes(const Shared<Hose>& of) : hose(of)
{
    const auto take = [](QRectF& box, bool first, QPointF at) {
        if (first)
            box = {at, at};
        box.setCoords(std::min(box.left(), at.x()), std::min(box.top(), at.y()),
                      std::max(box.right(), at.x()), std::max(box.bottom(), at.y()));
    };
    for (std::size_t i = 0; i < hose->points.size(); ++i) {
        const QPointF at(hose->points[i].at.x, hose->points[i].at.z);
        const bool first = i % points_each == 0;
        if (first)
            stretches.emplace_back();
        take(whole, i == 0, at);
        take(stretches.back(), first, at);
    }
}

BoxesOfHoses boxesOf(const Sketch& sketch, const BoxesOfHoses& before)
{
    BoxesOfHoses out;
    out.reserve(sketch.hoses.size());
    for (std::size_t i = 0; i < sketch.hoses.size(); ++i) {
        const Shared<Hose>& hose = sketch.hoses[i];
        const bool holds = i < before.size() && before[i]->hose.same(hose);
        out.push_back(holds ? before[i] : std::make_shared<const HoseBoxes>(hose));
    }
    return out;
}

SnapScene sceneFor(const Sketch& sketch, const Layout& layout, const PartRef& part, double slope,
                   const SnapNear* near_by)
{
    SnapScene scene;
    const bool on_hose = part.kind == PartKind::hose_point || part.kind == PartKind::hose_end;
    const double depth_mm = positionOf(sketch, part).value_or(Vec3{}).y;
    if (on_hose)
        addHoseScene(scene, sketch, layout, part, slope);
    if (part.kind == PartKind::heater)
        addHeaterLimits(scene, sketch, layout, part.id);
    addSockets(scene, sketch, layout.plumb, part, depth_mm);
    addPoints(scene, sketch, part, near_by);
    return scene;
}

SnapScene sceneFor(const Sketch& sketch, const Layout& layout, const HoseDraft& draft, double slope)
{
    SnapScene scene;
    std::vector<Vec3> line;
    if (draft.first) {
        if (draft.first->stub.size() > 1)
            line.push_back(draft.first->stub[draft.first->stub.size() - 2].at);
        line.push_back(draft.first->stop);
    }
    line.insert(line.end(), draft.places.begin(), draft.places.end());
    const PartRef none = {PartKind::hose, {}, 0};
    const double depth_mm = line.empty() ? 0 : line.back().y;
    Hose hose; // what it will be like, as addDraft() makes it
    for (const Shared<Hose>& one : sketch.hoses)
        if (one->role == draft.role)
            hose = *one;
    if (!line.empty()) {
        addLevelAndPlumb(scene, line.back(), layout.plumb, depth_mm);
        addRise(scene, line.back(), slope, layout.plumb, depth_mm, slopeWord(sketch, slope));
    }
    if (line.size() > 1) {
        addTangent(scene, line[line.size() - 2], line.back(), tr("in line with the last piece"));
        SnapRoom room;
        room.neighbour = line.back();
        room.beyond = line[line.size() - 2];
        room.least_radius_mm = leastCentrelineRadius(sketch, hose);
        room.neighbour_radius_mm = draft.places.empty() ? 0 : room.least_radius_mm;
        room.depth_mm = depth_mm;
        room.word = radiusWord(sketch, room.least_radius_mm);
        scene.rooms.push_back(room);
    }
    addHoseLimits(scene, sketch, layout, hose, depth_mm);
    addSockets(scene, sketch, layout.plumb, none, depth_mm);
    addPoints(scene, sketch, none);
    return scene;
}

SnapScene sceneFor(const std::vector<Vec2>& corners, const Plumb& plumb)
{
    SnapScene scene;
    if (corners.empty())
        return scene;
    for (const Vec2& corner : {corners.front(), corners.back()})
        addLevelAndPlumb(scene, {corner.x, 0, corner.z}, plumb, 0);
    return scene;
}

} // namespace siphonwright
