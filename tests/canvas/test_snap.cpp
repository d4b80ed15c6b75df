#include "tests/near.h"
#include "tests/sound_loop.h"

#include "app/canvas/snap_scene.h"

#include "core/sketch/edits.h"

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double no_grid = 0;
constexpr double reach_mm = 6;

SnapChoice all()
{
    return SnapChoice();
}

SnapChoice only(SnapKind kind)
{
    SnapChoice choice;
    for (std::size_t i = 0; i < snap_kinds; ++i)
        choice.set(static_cast<SnapKind>(i), static_cast<SnapKind>(i) == kind);
    return choice;
}

bool has(const Snapped& snapped, SnapKind kind)
{
    return std::any_of(snapped.guides.begin(), snapped.guides.end(),
                       [kind](const Guide& guide) { return guide.kind == kind; });
}

Layout laidOut(const Sketch& sketch, Grade grade = {})
{
    return resolve(sketch, plumbOf(sketch, grade));
}

/// Snap the return hose's point with one kind alone.
Snapped snapPoint(const Sketch& sketch, Vec2 raw, SnapKind kind, Grade grade = {})
{
    return snap(raw, sceneFor(sketch, laidOut(sketch, grade), {PartKind::hose_point, "hose-2", 0}, 0.02),
                only(kind), no_grid, reach_mm);
}

} // namespace

class TestSnap : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void withNothingNearItGoesToTheGrid();
    void aPointWinsOverLines();
    void levelAndPlumbWithTheNearer();
    void twoLinesMeetInACorner();
    void onOneLineTheGridStillHolds();
    void plumbIsTrueOnAGrade();
    void levelIsTrueInDepth();
    void aPieceTakesTheUsersSlope();
    void aPieceThatGoesIntoTheDepthTakesTheSlopeInSpace();
    void aPieceGoesOnInLineWithTheLast();
    void aPieceIsJustLongEnoughForItsBends();
    void theBendThenHasExactlyTheLeastRadius();
    void limitsAreJustKept_data();
    void limitsAreJustKept();
    void aHeaterStopsAtItsDropUnderTheJacket();
    void anAreaIsKeptClearOf();
    void eachKindCanBeLeftOut();
    void aDraftSnapsToItsLastPiece();
};

void TestSnap::withNothingNearItGoesToTheGrid()
{
    const Snapped grid = snap({57, 23}, {}, all(), 10, reach_mm);
    QVERIFY((grid.at == Vec2{60, 20}));
    QVERIFY(grid.guides.empty());
    QVERIFY((snap({57.3, 23.4}, {}, all(), no_grid, reach_mm).at == Vec2{57.3, 23.4}));
    SnapChoice no = all();
    no.set(SnapKind::grid, false);
    QVERIFY((snap({57, 23}, {}, no, 10, reach_mm).at == Vec2{57, 23}));
}

void TestSnap::aPointWinsOverLines()
{
    SnapScene scene;
    addLevelAndPlumb(scene, {100, 0, 0}, Plumb(), 0);
    scene.points.emplace_back(Vec2{104, 3}, QStringLiteral("Drain port"));
    const Snapped point = snap({101, 1}, scene, all(), 10, reach_mm);
    QVERIFY((point.at == Vec2{104, 3}));
    QCOMPARE(point.guides.size(), std::size_t(1));
    QCOMPARE(point.guides[0].kind, SnapKind::point);
    QCOMPARE(point.guides[0].word, QStringLiteral("Drain port"));
    QVERIFY((snap({111, 30}, scene, all(), no_grid, reach_mm).at == Vec2{111, 30}));
}

void TestSnap::levelAndPlumbWithTheNearer()
{
    SnapScene scene;
    addLevelAndPlumb(scene, {100, 0, 0}, Plumb(), 0);
    addLevelAndPlumb(scene, {104, 0, 50}, Plumb(), 0);
    const Snapped both = snap({103, 51}, scene, all(), 10, reach_mm);
    QVERIFY((both.at == Vec2{104, 50}));
    QCOMPARE(both.guides.size(), std::size_t(2));
    const Snapped plumb = snap({101, 77}, scene, all(), no_grid, reach_mm);
    QVERIFY((plumb.at == Vec2{100, 77}));
    QVERIFY((plumb.guides[0].from == Vec2{100, 0}));
}

void TestSnap::twoLinesMeetInACorner()
{
    SnapScene scene;
    addRise(scene, {0, 0, 0}, 0.02, Plumb(), 0, {});
    addLevelAndPlumb(scene, {500, 0, 300}, Plumb(), 0);
    // Rising 1 in 50 over its length, 500 mm across: 500 * 0.02 / sqrt(1 - 0.02^2).
    const Snapped corner = snap({503, 12}, scene, all(), 10, reach_mm);
    VERIFY_NEAR(corner.at.x, 500, 1e-9);
    VERIFY_NEAR(corner.at.z, 500 * 0.02 / std::sqrt(1 - 0.0004), 1e-9);
    QVERIFY(has(corner, SnapKind::rise) && has(corner, SnapKind::plumb));
}

void TestSnap::onOneLineTheGridStillHolds()
{
    SnapScene scene;
    addLevelAndPlumb(scene, {100, 0, 3}, Plumb(), 0);
    QVERIFY((snap({158, 4}, scene, all(), 10, reach_mm).at == Vec2{160, 3}));
    QVERIFY((snap({101, 77}, scene, all(), 10, reach_mm).at == Vec2{100, 80}));
}

void TestSnap::plumbIsTrueOnAGrade()
{
    Attitude attitude;
    attitude.grade.along_percent = 10;
    const Plumb plumb(attitude);
    SnapScene scene;
    addLevelAndPlumb(scene, {0, 0, 0}, plumb, 0);
    const double lean = plumb.up().x / plumb.up().z; // 10 %, to the side that is down
    VERIFY_NEAR(std::abs(lean), 0.1, 1e-9);
    const Snapped over = snap({lean * 300 + 2, 300}, scene, only(SnapKind::plumb), no_grid, reach_mm);
    VERIFY_NEAR(over.at.x / over.at.z, lean, 1e-9);
    const Snapped level = snap({300, -lean * 300 + 2}, scene, only(SnapKind::level), no_grid, reach_mm);
    VERIFY_NEAR(plumb.height({level.at.x, 0, level.at.z}), 0, 1e-9);
}

void TestSnap::levelIsTrueInDepth()
{
    Attitude attitude;
    attitude.grade.across_percent = 10;
    const Plumb plumb(attitude);
    SnapScene scene;
    addLevelAndPlumb(scene, {0, 200, 50}, plumb, 0); // a neighbour 200 mm behind the point
    const double z = 50 + 200 * plumb.up().y / plumb.up().z;
    const Snapped level = snap({300, z + 1}, scene, only(SnapKind::level), no_grid, reach_mm);
    VERIFY_NEAR(plumb.height({level.at.x, 0, level.at.z}), plumb.height({0, 200, 50}), 1e-9);
}

void TestSnap::aPieceTakesTheUsersSlope()
{
    SnapScene scene;
    addRise(scene, {100, 0, 100}, 0.05, Plumb(), 0, QStringLiteral("1 in 20"));
    for (const double side : {1.0, -1.0}) {
        const Snapped up = snap({100 + side * 400, 123}, scene, all(), no_grid, reach_mm);
        VERIFY_NEAR((up.at.z - 100) / std::hypot(up.at.x - 100, up.at.z - 100), 0.05, 1e-9);
        QCOMPARE(up.guides[0].word, QStringLiteral("1 in 20"));
        const Snapped down = snap({100 + side * 400, 78}, scene, all(), no_grid, reach_mm);
        VERIFY_NEAR((100 - down.at.z) / std::hypot(down.at.x - 100, down.at.z - 100), 0.05, 1e-9);
    }
}

void TestSnap::aPieceThatGoesIntoTheDepthTakesTheSlopeInSpace()
{
    SnapScene scene;
    addRise(scene, {0, 300, 0}, 0.05, Plumb(), 0, {});
    // 400 across and 300 deep are 500 long but for the rise: 0.05 of it, by 1 / sqrt(1 - 0.05^2).
    const Snapped rise = snap({400, 22}, scene, all(), no_grid, reach_mm);
    VERIFY_NEAR(rise.at.x, 400, 1e-9);
    VERIFY_NEAR(rise.at.z, 25 / std::sqrt(1 - 0.0025), 1e-6);
    VERIFY_NEAR(snap({401, 22}, scene, all(), 10, reach_mm).at.x, 400, 1e-9); // on the grid's lines
}

void TestSnap::aPieceGoesOnInLineWithTheLast()
{
    SnapScene scene;
    addTangent(scene, {0, 0, 0}, {300, 0, 400}, {});
    // In line with 3 : 4, 100 further on; beside it by 5 the foot is where the pointer was.
    const Snapped on = snap({360 + 4, 480 - 3}, scene, all(), no_grid, reach_mm);
    VERIFY_NEAR(on.at.x, 360, 1e-9);
    VERIFY_NEAR(on.at.z, 480, 1e-9);
    QVERIFY(has(on, SnapKind::tangent));
    QVERIFY(snap({240, 320}, scene, all(), no_grid, reach_mm).guides.empty()); // not backwards
}

void TestSnap::aPieceIsJustLongEnoughForItsBends()
{
    SnapScene scene;
    SnapRoom room;
    room.neighbour = {0, 0, 0};
    room.beyond = Vec3{-500, 0, 0};
    room.neighbour_radius_mm = 120;
    room.least_radius_mm = 120;
    scene.rooms = {room};
    // A right angle takes r tan 45 = r.
    const Snapped up = snap({0, 118}, scene, all(), no_grid, reach_mm);
    VERIFY_NEAR(up.at.x, 0, 1e-6);
    VERIFY_NEAR(up.at.z, 120, 1e-6);
    QVERIFY(has(up, SnapKind::radius));
    // Two thirds of the asked radius are allowed: two thirds of the length suffice.
    scene.rooms[0].least_radius_mm = 80;
    VERIFY_NEAR(snap({0, 81}, scene, all(), no_grid, reach_mm).at.z, 80, 1e-6);
    // Straight on there is no bend and no least length.
    QVERIFY(!roomNeeded(room, {100, 0}));
}

void TestSnap::theBendThenHasExactlyTheLeastRadius()
{
    Sketch sketch = soundLoop();
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([](Hose& one) { one.min_bend_radius_mm.value = 100; });
    const double least_mm = leastCentrelineRadius(sketch, *sketch.hoses[return_hose]);
    VERIFY_NEAR(least_mm, 100 + 19 / 2.0 + 4, 1e-9);
    // Down to where the piece from the outlet's stop is too short for the 150 mm that are asked for. How far
    // that is: moved in steps until a snap is in reach.
    Snapped found;
    for (double z = 560; z > 262 && found.guides.empty(); z -= 4)
        found = snapPoint(sketch, {1030, z}, SnapKind::radius);
    QVERIFY(has(found, SnapKind::radius));
    sketch.hoses[return_hose].edit([&](Hose& hose) { hose.points[0].at = {found.at.x, 0, found.at.z}; });
    const Layout layout = laidOut(sketch);
    const Route& route = *layout.hoses[return_hose];
    const auto at_point = std::find(route.bend_points.begin(), route.bend_points.end(), std::size_t{0});
    QVERIFY(at_point != route.bend_points.end());
    VERIFY_NEAR(route.bends[static_cast<std::size_t>(at_point - route.bend_points.begin())].radius_mm,
                least_mm, 0.05);
}

void TestSnap::limitsAreJustKept_data()
{
    QTest::addColumn<double>("near_z");
    QTest::addColumn<double>("z");
    // Level cold minimum 850: the crown of a 19 mm bore is 9.5 over the point; and 25 mm to spare.
    QTest::newRow("coolant's level") << 842.0 << 840.5;
    QTest::newRow("25 mm under it") << 814.0 << 815.5;
    // Ground at -300, 200 mm over it, and half of 27 mm outside.
    QTest::newRow("ground") << -84.0 << -86.5;
    // The port's stop is at 700, the outlet's at 260.
    QTest::newRow("just no hump") << 703.0 << 700.0;
    QTest::newRow("just no dip") << 262.0 << 260.0;
}

void TestSnap::limitsAreJustKept()
{
    QFETCH(double, near_z);
    QFETCH(double, z);
    const Snapped limit = snapPoint(soundLoop(), {960, near_z}, SnapKind::limit);
    VERIFY_NEAR(limit.at.x, 960, 1e-9);
    VERIFY_NEAR(limit.at.z, z, 1e-9);
    QCOMPARE(limit.guides.size(), std::size_t(1));
    QVERIFY(!limit.guides[0].word.isEmpty());
}

void TestSnap::aHeaterStopsAtItsDropUnderTheJacket()
{
    Sketch sketch = soundLoop();
    sketch.heaters[0].manual_min_drop_mm.value = 200;
    const SnapScene scene = sceneFor(sketch, laidOut(sketch), {PartKind::heater, "heater-1", 0}, 0.02);
    // Jacket's lowest 400, less 200, less half its length of 300: its middle at 50.
    const Snapped drop = snap({1100, 53}, scene, only(SnapKind::limit), no_grid, reach_mm);
    VERIFY_NEAR(drop.at.z, 50, 1e-9);
}

void TestSnap::anAreaIsKeptClearOf()
{
    Sketch sketch = soundLoop();
    Area area;
    area.outline = {{600, 500}, {700, 500}, {700, 600}, {600, 600}};
    area.clearance_mm = 100;
    addArea(sketch, area);
    // Right of it: 100 clear and half of 27 mm of hose.
    const Snapped beside = snapPoint(sketch, {811, 550}, SnapKind::limit);
    VERIFY_NEAR(beside.at.x, 813.5, 1e-9);
    VERIFY_NEAR(beside.at.z, 550, 1e-9);
    QVERIFY((beside.guides[0].from == Vec2{700, 550}));
    // Past its corner the distance goes round the corner: 3 : 4.
    const Snapped corner = snapPoint(sketch, {700 + 0.6 * 115, 600 + 0.8 * 115}, SnapKind::limit);
    VERIFY_NEAR(corner.at.x, 700 + 0.6 * 113.5, 1e-6);
    VERIFY_NEAR(corner.at.z, 600 + 0.8 * 113.5, 1e-6);
}

void TestSnap::eachKindCanBeLeftOut()
{
    const Sketch sketch = soundLoop();
    const SnapScene scene = sceneFor(sketch, laidOut(sketch), {PartKind::hose_point, "hose-2", 0}, 0.02);
    const struct {
        SnapKind kind;
        Vec2 raw;
    } cases[] = {{SnapKind::level, {905, 702}}, {SnapKind::plumb, {1032, 500}},
                 {SnapKind::rise, {930, 697}},  {SnapKind::tangent, {1032, 480}},
                 {SnapKind::limit, {930, 842}}, {SnapKind::point, {952, 851}},
                 {SnapKind::grid, {1123, 583}}};
    for (const auto& one : cases) {
        SnapChoice without = only(one.kind);
        const Snapped with = snap(one.raw, scene, without, 10, reach_mm);
        QVERIFY2(with.at != one.raw, qPrintable(QString::number(int(one.kind))));
        without.set(one.kind, false);
        QVERIFY(snap(one.raw, scene, without, 10, reach_mm).at == one.raw);
    }
}

void TestSnap::aDraftSnapsToItsLastPiece()
{
    const Sketch sketch = soundLoop();
    HoseDraft draft;
    draft.role = HoseRole::return_;
    draft.places = {{1200, 0, 100}, {1200, 0, 400}};
    const SnapScene scene = sceneFor(sketch, laidOut(sketch), draft, 0.02);
    QVERIFY(has(snap({1203, 500}, scene, only(SnapKind::tangent), no_grid, reach_mm), SnapKind::tangent));
    QVERIFY(has(snap({1300, 403}, scene, only(SnapKind::rise), no_grid, reach_mm), SnapKind::rise));
    // A right angle at the last point takes its radius.
    const double least_mm = leastCentrelineRadius(sketch, *sketch.hoses[return_hose]);
    const Snapped room = snap({1200 + least_mm - 3, 400}, scene, only(SnapKind::radius), no_grid, reach_mm);
    VERIFY_NEAR(room.at.x, 1200 + least_mm, 1e-6);
}

QTEST_APPLESS_MAIN(TestSnap)
#include "test_snap.moc"
