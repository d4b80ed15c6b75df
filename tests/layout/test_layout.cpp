#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/layout/chamber.h"
#include "core/layout/route.h"

#include <cmath>
#include <functional>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double pi = 3.14159265358979323846;

Layout laidOut(const Sketch& sketch)
{
    return resolve(sketch, plumbOf(sketch));
}

const Route& routeIn(const Layout& layout, std::size_t hose)
{
    return *layout.hoses.at(hose).route;
}

bool sameProfile(const Profile& a, const Profile& b)
{
    if (a.high_points.size() != b.high_points.size() || a.dips.size() != b.dips.size())
        return false;
    for (std::size_t i = 0; i < a.high_points.size(); ++i)
        if (a.high_points[i].height_mm != b.high_points[i].height_mm ||
            a.high_points[i].trapped_ml != b.high_points[i].trapped_ml)
            return false;
    for (std::size_t i = 0; i < a.dips.size(); ++i)
        if (a.dips[i].depth_mm != b.dips[i].depth_mm || a.dips[i].held_ml != b.dips[i].held_ml)
            return false;
    return true;
}

bool sameResult(const Analysis& a, const Analysis& b)
{
    if (a.findings != b.findings || a.not_judged != b.not_judged ||
        a.layout.hoses.size() != b.layout.hoses.size())
        return false;
    for (std::size_t i = 0; i < a.layout.hoses.size(); ++i) {
        const ResolvedHose& x = a.layout.hoses[i];
        const ResolvedHose& y = b.layout.hoses[i];
        if (x->length_mm != y->length_mm || x->cut_length_mm != y->cut_length_mm ||
            x->volume_ml != y->volume_ml || x.rise_mm != y.rise_mm ||
            x.highest_crown_mm != y.highest_crown_mm || !sameProfile(x.profile, y.profile))
            return false;
    }
    return true;
}

/// Share of a cylinder over a level, by a fine grid of points: axis steps by rings of equal area.
double sampledOver(const Cylinder& c, const Plumb& plumb, double height_mm)
{
    const Vec3 axis = unit(c.top - c.bottom);
    const Vec3 side = unit(std::abs(axis.y) < 0.9 ? cross(axis, {0, 1, 0}) : cross(axis, {1, 0, 0}));
    const Vec3 other = cross(axis, side);
    const int steps = 120;
    int over = 0;
    for (int i = 0; i < steps; ++i)
        for (int j = 0; j < steps; ++j)
            for (int k = 0; k < steps; ++k) {
                const double r = c.diameter_mm / 2 * std::sqrt((j + 0.5) / steps);
                const double angle = 2 * pi * (k + 0.5) / steps;
                const Vec3 p = c.bottom + (c.top - c.bottom) * ((i + 0.5) / steps) +
                               side * (r * std::cos(angle)) + other * (r * std::sin(angle));
                over += plumb.height(p) > height_mm ? 1 : 0;
            }
    return static_cast<double>(over) / (steps * steps * steps);
}

} // namespace

class TestLayout : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aPathRunsFromOpeningToOpening();
    void anElbowOnAStubIsPartOfThePathAndNotOfTheHose();
    void bendsAreNamedAfterTheirRoutePoints();
    void aBendTakesNoRoomFromAStubInLine();
    void aHoseWithoutLengthIsResolvedAndJudged();
    void anOpenEndLiesWhereItWasLeft();
    void aHoseEndAndAValveNarrowThePathButMakeNoTrap();
    void aReducerChangesTheBoreFromThereOn();
    void cutLengthsRoundUp_data();
    void cutLengthsRoundUp();
    void volumeIsThatOfTheHoseItself();
    void theHighestCrownOfAnArch();
    void theCoolantLevelIsALevelPlaneThroughTheTank();
    void leanLowersOneSideOfTheJacket();
    void chamberHeightsOfATiltedHeater();
    void aChamberWithoutAnInsideHoldsNothing();
    void volumeOverALevelInATiltedCylinder_data();
    void volumeOverALevelInATiltedCylinder();
    void reusedRoutesGiveTheSameResult();
    void anUnchangedHoseKeepsItsRoute();
};

void TestLayout::aPathRunsFromOpeningToOpening()
{
    const Layout layout = laidOut(soundLoop());
    const Route& supply = routeIn(layout, supply_hose);
    QVERIFY(supply.from.connected && supply.to.connected);
    QCOMPARE(supply.from.opening, (Vec3{100, 0, 440}));
    VERIFY_NEAR(distance(supply.from.stop, {100, 0, 410}), 0, 1e-9);
    VERIFY_NEAR(distance(supply.to.opening, {990, 0, -40}), 0, 1e-9);
    VERIFY_NEAR(distance(supply.to.stop, {960, 0, -40}), 0, 1e-9);
    // 450 mm down and 860 mm along, the corner of 150 mm radius cut by 2 * 150 - 150 pi / 2.
    const double hose_mm = 450 + 860 - 300 + 150 * pi / 2;
    VERIFY_NEAR(supply.length_mm, hose_mm, 1e-6);
    VERIFY_NEAR(supply.hose_from_mm, 30, 1e-9);
    VERIFY_NEAR(supply.hose_to_mm, 30 + hose_mm, 1e-6);
    VERIFY_NEAR(supply.path.line.length(), 60 + hose_mm, 1e-6);
    VERIFY_NEAR(layout.hoses[supply_hose].rise_mm, -480, 1e-9);
    VERIFY_NEAR(distance(alongHose(supply, 100), {100, 0, 310}), 0, 1e-9);
}

void TestLayout::anElbowOnAStubIsPartOfThePathAndNotOfTheHose()
{
    Sketch s = soundLoop();
    // Straight right for 40 mm, then down by an elbow of 20 mm radius, 30 mm from its corner to the stop.
    s.ports[0].axis = {0, 0};
    s.ports[0].stub.length_mm = 40;
    s.ports[0].stub.elbow = StubElbow{{0, -90}, 20, 30};
    const Layout layout = laidOut(s);
    const Route& route = routeIn(layout, supply_hose);
    VERIFY_NEAR(distance(route.from.stop, {140, 0, 410}), 0, 1e-9);
    VERIFY_NEAR(route.hose_from_mm, (40 - 20) + 20 * pi / 2 + (30 - 20), 1e-9);
    QCOMPARE(route.bend_kinds.at(0), BendKind::metal_elbow);
    QCOMPARE(route.bend_points.at(0), Route::no_point);
}

void TestLayout::bendsAreNamedAfterTheirRoutePoints()
{
    Sketch s = soundLoop();
    s.hoses[supply_hose].edit([](Hose& h) {
        // On the straight, so no bend of its own.
        h.points.insert(h.points.begin(), {{100, 0, 200}, 50, BendKind::hose});
        h.points[1].bend = BendKind::moulded_elbow;
    });
    const Layout layout = laidOut(s);
    const Route& route = routeIn(layout, supply_hose);
    QCOMPARE(route.path.line.bends().size(), route.bend_points.size());
    QCOMPARE(route.path.line.bends().size(), route.bend_kinds.size());
    QCOMPARE(route.bend_points.size(), std::size_t{1});
    QCOMPARE(route.bend_points[0], std::size_t{1});
    QCOMPARE(route.bend_kinds[0], BendKind::moulded_elbow);
}

void TestLayout::aBendTakesNoRoomFromAStubInLine()
{
    Sketch s = soundLoop();
    // 450 mm from the stop to the corner, in line with the stub of 30 mm before it.
    s.hoses[supply_hose].edit([](Hose& h) { h.points[0].radius_mm = 470; });
    const Layout layout = laidOut(s);
    const Route& route = routeIn(layout, supply_hose);
    QCOMPARE(route.bends.size(), std::size_t{1});
    QVERIFY(!route.bends[0].fits);
    VERIFY_NEAR(route.bends[0].asked_mm, 470, 1e-12);
    VERIFY_NEAR(route.bends[0].radius_mm, 450, 1e-9);
    VERIFY_NEAR(distance(route.path.line.at(30), route.from.stop), 0, 1e-9);
    VERIFY_NEAR(distance(route.path.line.at(31), {100, 0, 409}), 0, 0.01);
}

void TestLayout::aHoseWithoutLengthIsResolvedAndJudged()
{
    Sketch s;
    Hose hose;
    hose.id = "hose-1";
    InlinePart part;
    part.open = false;
    hose.parts = {part};
    s.hoses = {Shared<Hose>(hose)};
    const Analysis analysis = analyse(s);
    VERIFY_NEAR(analysis.layout.hoses.at(0)->length_mm, 0, 1e-12);
    VERIFY_NEAR(analysis.layout.hoses.at(0)->volume_ml, 0, 1e-12);
    QVERIFY(analysis.stopped());
}

void TestLayout::anOpenEndLiesWhereItWasLeft()
{
    Sketch s = soundLoop();
    s.hoses[supply_hose].edit([](Hose& h) {
        h.to = {};
        h.to.open_at = {500, 20, -40};
    });
    const Layout layout = laidOut(s);
    const Route& route = routeIn(layout, supply_hose);
    QVERIFY(!route.to.connected);
    QCOMPARE(route.to.opening, (Vec3{500, 20, -40}));
    VERIFY_NEAR(route.hose_to_mm, route.path.line.length(), 1e-9);
}

void TestLayout::aHoseEndAndAValveNarrowThePathButMakeNoTrap()
{
    Sketch s = soundLoop();
    s.hoses[return_hose].edit([](Hose& h) {
        h.to.bore_mm = 9; // its crown would be 5 mm under the hose's: over tape accuracy
        h.parts[0].bore_mm = 8;
    });
    const Layout layout = laidOut(s);
    QVERIFY(layout.hoses[return_hose].profile.high_points.empty());
    QVERIFY(layout.hoses[return_hose].profile.dips.empty());
    const Route& route = routeIn(layout, return_hose);
    VERIFY_NEAR(route.smallest_bore_mm, 8, 1e-12);
    VERIFY_NEAR(route.smallest_at_mm, 40 + 470, 1e-9); // the valve's middle, behind the outlet's stub
    VERIFY_NEAR(route.to.bore_mm, 9, 1e-12);
}

void TestLayout::aReducerChangesTheBoreFromThereOn()
{
    Sketch s = soundLoop();
    s.hoses[supply_hose].edit([](Hose& h) {
        h.parts[0].kind = InlineKind::reducer;
        h.parts[0].along_mm = 200;
        h.parts[0].bore_mm = 16;
    });
    const Layout layout = laidOut(s);
    const Route& route = routeIn(layout, supply_hose);
    VERIFY_NEAR(route.path.boreAt(229), 19, 1e-12);
    VERIFY_NEAR(route.path.boreAt(231), 16, 1e-12);
    VERIFY_NEAR(route.path.boreAt(route.hose_to_mm + 1), 19, 1e-12); // the inlet's nozzle
    const double area_before = pi / 4 * 19 * 19;
    const double area_after = pi / 4 * 16 * 16;
    VERIFY_NEAR(route.volume_ml, (200 * area_before + (route.length_mm - 200) * area_after) / 1000, 1e-6);
}

void TestLayout::cutLengthsRoundUp_data()
{
    QTest::addColumn<double>("length_mm");
    QTest::addColumn<bool>("inch");
    QTest::addColumn<double>("cut_mm");
    QTest::newRow("on the mark stays") << 500.0 << false << 500.0;
    QTest::newRow("a little over goes up 5 mm") << 500.1 << false << 505.0;
    QTest::newRow("20 in stays") << 508.0 << true << 508.0;
    QTest::newRow("a little over 20 in goes up 1/4 in") << 508.1 << true << 514.35;
}

void TestLayout::cutLengthsRoundUp()
{
    QFETCH(const double, length_mm);
    QFETCH(const bool, inch);
    QFETCH(const double, cut_mm);
    // A straight hose on nothing, with 30 mm pushed on at either end.
    Sketch s;
    s.units = inch ? UnitChoice::inch : UnitChoice::metric;
    Hose hose;
    hose.id = "hose-1";
    hose.to.open_at = {length_mm - 60, 0, 0};
    s.hoses = {Shared<Hose>(hose)};
    const Layout layout = laidOut(s);
    VERIFY_NEAR(routeIn(layout, 0).length_mm, length_mm - 60, 1e-9);
    VERIFY_NEAR(routeIn(layout, 0).cut_length_mm, cut_mm, 1e-9);
}

void TestLayout::volumeIsThatOfTheHoseItself()
{
    const Layout layout = laidOut(soundLoop());
    const Route& route = routeIn(layout, supply_hose);
    VERIFY_NEAR(route.volume_ml, pi / 4 * 19 * 19 * route.length_mm / 1000, 1e-6);
}

void TestLayout::theHighestCrownOfAnArch()
{
    // Up, a half turn of two right angles with 100 mm radius each, and down: the top is at z 300.
    Sketch s;
    Hose hose;
    hose.id = "hose-1";
    hose.bore_mm.value = 20;
    hose.points = {{{0, 0, 300}, 100, BendKind::hose}, {{200, 0, 300}, 100, BendKind::hose}};
    hose.to.open_at = {200, 0, 0};
    s.hoses = {Shared<Hose>(hose)};
    const Layout layout = laidOut(s);
    VERIFY_NEAR(layout.hoses[0].highest_crown_mm, 310, 1e-9);
}

void TestLayout::theCoolantLevelIsALevelPlaneThroughTheTank()
{
    Sketch s = soundLoop();
    s.engine->mount_angle_deg = 3; // rear, at +x, lower
    const Layout layout = laidOut(s);
    const double sine = std::sin(3 * pi / 180);
    const double cosine = std::cos(3 * pi / 180);
    // Tank at x 200, cold minimum at z 850; height is z cos 3 - x sin 3.
    VERIFY_NEAR(*layout.levels.cold_min_mm, 850 * cosine - 200 * sine, 1e-9);
    // Farther back, the same level is nearer to the top of the drawing.
    const double z_at_rear = (*layout.levels.cold_min_mm + 900 * sine) / cosine;
    VERIFY_NEAR(z_at_rear, 850 + 700 * std::tan(3 * pi / 180), 1e-9);
}

void TestLayout::leanLowersOneSideOfTheJacket()
{
    Sketch s = soundLoop();
    s.engine->lean_deg = 10;
    const Layout layout = laidOut(s);
    const double sine = std::sin(10 * pi / 180);
    const double cosine = std::cos(10 * pi / 180);
    VERIFY_NEAR(layout.jacket->lowest_mm, 400 * cosine - 150 * sine, 1e-9);
    VERIFY_NEAR(layout.jacket->highest_mm, 800 * cosine + 150 * sine, 1e-9);
    VERIFY_NEAR(layout.jacket->diagonal_mm, std::sqrt(900.0 * 900 + 300.0 * 300 + 400.0 * 400), 1e-9);
}

void TestLayout::chamberHeightsOfATiltedHeater()
{
    Sketch s = soundLoop();
    Heater& heater = s.heaters[0];
    heater.tilt_deg = 30;
    const HeaterHeights heights = laidOut(s).heaters.at(0);
    const double sine = 0.5;
    const double cosine = std::sqrt(3.0) / 2;
    VERIFY_NEAR(heights.body_top_mm, 80 + 150 * cosine + 45 * sine, 1e-9);
    VERIFY_NEAR(heights.body_bottom_mm, 80 - 150 * cosine - 45 * sine, 1e-9);
    VERIFY_NEAR(heights.chamber_top_mm, 80 + 140 * cosine + 40 * sine, 1e-9);
    VERIFY_NEAR(heights.chamber_bottom_mm, 80 - 140 * cosine - 40 * sine, 1e-9);
    VERIFY_NEAR(heights.outlet_mm, 80 + 140 * cosine, 1e-9);
    VERIFY_NEAR(heights.outlet_crown_mm, 80 + 140 * cosine + 9.5 * sine, 1e-9);
    VERIFY_NEAR(*heights.element_top_mm, 80 + 100 * cosine, 1e-9);
    QVERIFY(heights.over_crown_ml > 0);
}

// Once not a number.
void TestLayout::aChamberWithoutAnInsideHoldsNothing()
{
    const Cylinder no_bore{direction(0, 30) * -140, direction(0, 30) * 140, 0};
    const Cylinder no_length{{0, 0, 5}, {0, 0, 5}, 80};
    QCOMPARE(volumeOver(no_bore, Plumb(), 0), 0.0);
    QCOMPARE(volumeOver(no_length, Plumb(), 0), 0.0);
}

void TestLayout::volumeOverALevelInATiltedCylinder_data()
{
    QTest::addColumn<double>("tilt_deg");
    QTest::addColumn<double>("height_mm");
    for (const double tilt : {0.0, 1e-7, 0.5, 30.0, 60.0, 89.9, 90.0, 150.0})
        for (const double height : {-120.0, -30.0, 0.0, 10.0, 35.0, 90.0, 125.0})
            QTest::addRow("tilt %g, level %g", tilt, height) << tilt << height;
}

void TestLayout::volumeOverALevelInATiltedCylinder()
{
    QFETCH(const double, tilt_deg);
    QFETCH(const double, height_mm);
    const Vec3 axis = direction(0, 90 - tilt_deg);
    const Cylinder cylinder{axis * -140, axis * 140, 80};
    const Plumb plumb;
    const double whole_ml = pi / 4 * 80 * 80 * 280 / 1000;
    VERIFY_NEAR(volumeOver(cylinder, plumb, height_mm) / whole_ml, sampledOver(cylinder, plumb, height_mm),
                0.012); // of the sampling: half a layer of 120
    // Below and above the level together make the whole: the cylinder is the same upside down.
    VERIFY_NEAR(volumeOver(cylinder, plumb, height_mm) + volumeOver(cylinder, plumb, -height_mm), whole_ml,
                1e-6 * whole_ml);
}

void TestLayout::reusedRoutesGiveTheSameResult()
{
    Sketch s = soundLoop();
    Analysis before = analyse(s);
    const std::vector<std::function<void(Sketch&)>> edits = {
        [](Sketch& k) { k.hoses[1].edit([](Hose& h) { h.points[0].at.z = 900; }); },
        [](Sketch& k) { k.ports[0].position.z = 430; },
        [](Sketch& k) {
            k.ports[0].stub.elbow = StubElbow{{90, 0}, 20, 40};
        },
        [](Sketch& k) { k.ports[0].stub.elbow->radius_mm = 25; },
        [](Sketch& k) { k.ports[1].bore_mm.value = 12; },
        [](Sketch& k) { k.heaters[0].tilt_deg = 20; },
        [](Sketch& k) { k.heaters[0].outlet.bore_mm.value = 16; },
        [](Sketch& k) { k.units = UnitChoice::inch; },
        [](Sketch& k) { k.engine->mount_angle_deg = 4; },
        [](Sketch& k) { k.engine->front = EngineEnd::right; },
        [](Sketch& k) { k.ports.pop_back(); },
        [](Sketch& k) { std::swap(k.hoses[0], k.hoses[1]); },
        [](Sketch& k) { k.heaters.clear(); },
        [](Sketch& k) { k.engine.reset(); },
    };
    for (const auto& edit : edits) {
        edit(s);
        const Analysis with_previous = analyse(s, &before);
        const Analysis fresh = analyse(s);
        QVERIFY(sameResult(with_previous, fresh));
        before = with_previous;
    }
}

void TestLayout::anUnchangedHoseKeepsItsRoute()
{
    Sketch s = soundLoop();
    const Analysis before = analyse(s);
    s.hoses[return_hose].edit([](Hose& h) { h.points[0].at.z = 680; });
    const Analysis after = analyse(s, &before);
    QCOMPARE(after.layout.hoses[supply_hose].route.get(), before.layout.hoses[supply_hose].route.get());
    QVERIFY(after.layout.hoses[return_hose].route != before.layout.hoses[return_hose].route);
}

QTEST_APPLESS_MAIN(TestLayout)
#include "test_layout.moc"
