#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/sketch/group_edits.h"

#include <limits>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const PartRef engine{PartKind::engine, {}, 0};
const PartRef supply_port{PartKind::port, "port-1", 0};
const PartRef heater{PartKind::heater, "heater-1", 0};
const PartRef returning{PartKind::hose, "hose-2", 0};
const PartRef return_bend{PartKind::hose_point, "hose-2", 0};
const PartRef supply_bend{PartKind::hose_point, "hose-1", 0};

/// Three heaters 100 mm wide and 300 mm long, middles at x 0, 100 and 500, z 0, 40 and 200.
Sketch threeHeaters()
{
    Sketch sketch;
    for (const Vec3 at : {Vec3{0, 0, 0}, Vec3{100, 0, 40}, Vec3{500, 0, 200}}) {
        Heater one;
        one.diameter_mm = 100;
        one.length_mm = 300;
        one.position = at;
        addHeater(sketch, one);
    }
    return sketch;
}

std::vector<PartRef> all(const Sketch& sketch)
{
    std::vector<PartRef> out;
    for (const Heater& one : sketch.heaters)
        out.push_back({PartKind::heater, one.id, 0});
    return out;
}

} // namespace

class TestGroupEdits : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whatAnotherTakesAlongIsLeftOut();
    void aHeaterAndItsHoseMoveOnce();
    void theEngineTakesItsPortsOnce();
    void pointsOfTwoHosesMoveTogether();
    void whatLiesAlongAHoseMovesOnlyAmongItsLike();
    void aListThatHoldsNothingMovesNothing();
    void pointsOfOneHoseGoTogether();
    void aHoseAndItsPortGoTogether();
    void anOutlineKeepsThreeCorners();
    void edgesAndMiddlesLineUp_data();
    void edgesAndMiddlesLineUp();
    void pointsLineUpWithTheLowest();
    void middlesAreSpacedEvenly();
    void twoCannotBeSpaced();
    void aConnectedEndIsNotLinedUp();
};

void TestGroupEdits::whatAnotherTakesAlongIsLeftOut()
{
    const Sketch sketch = soundLoop();
    const PartRef gone{PartKind::heater, "heater-9", 0};
    const std::vector<PartRef> left = withoutRiders(
        sketch,
        {return_bend, supply_port, returning, {PartKind::jacket, {}, 0}, heater, gone, heater, engine});
    QVERIFY((left == std::vector<PartRef>{returning, heater, engine}));
}

void TestGroupEdits::aHeaterAndItsHoseMoveOnce()
{
    Sketch sketch = soundLoop();
    QVERIFY(move(sketch, {heater, returning, return_bend}, {10, 0, -20}));
    QVERIFY((sketch.heaters[0].position == Vec3{1040, 0, 60}));
    // The bend stood at x 1030, z 690; the port that the hose ends on stays.
    QVERIFY((sketch.hoses[return_hose]->points[0].at == Vec3{1040, 0, 670}));
    QVERIFY(sketch.ports == soundLoop().ports);
    QVERIFY(sketch.hoses[supply_hose].same(sketch.hoses[supply_hose]));
    QVERIFY(*sketch.hoses[supply_hose] == *soundLoop().hoses[supply_hose]);
}

void TestGroupEdits::theEngineTakesItsPortsOnce()
{
    Sketch sketch = soundLoop();
    QVERIFY(move(sketch,
                 {supply_port, engine, {PartKind::thermostat, {}, 0}, {PartKind::jacket_corner, {}, 2}},
                 {5, 0, 7}));
    QVERIFY((sketch.ports[0].position == Vec3{105, 0, 447}));
    QVERIFY((sketch.engine->thermostat->position == Vec3{45, 0, 807}));
    QVERIFY((sketch.engine->jacket[2] == Vec2{905, 807}));
}

void TestGroupEdits::pointsOfTwoHosesMoveTogether()
{
    Sketch sketch = soundLoop();
    QVERIFY(move(sketch, {return_bend, supply_bend}, {0, 0, 3}));
    QVERIFY((sketch.hoses[return_hose]->points[0].at == Vec3{1030, 0, 693}));
    QVERIFY((sketch.hoses[supply_hose]->points[0].at == Vec3{100, 0, -37}));
}

void TestGroupEdits::whatLiesAlongAHoseMovesOnlyAmongItsLike()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.clips_mm = {100, 200}; });
    const PartRef first{PartKind::clip, "hose-2", 0};
    const PartRef second{PartKind::clip, "hose-2", 1};
    QVERIFY(move(sketch, {first, second}, {15, 0, 0}));
    QVERIFY((sketch.hoses[return_hose]->clips_mm == std::vector<double>{115, 215}));
    QVERIFY(move(sketch, {first, heater}, {15, 0, 0}));
    QVERIFY((sketch.hoses[return_hose]->clips_mm == std::vector<double>{115, 215}));
}

void TestGroupEdits::aListThatHoldsNothingMovesNothing()
{
    Sketch sketch = soundLoop();
    QVERIFY(!move(sketch, std::vector<PartRef>{}, {1, 0, 0}));
    QVERIFY(!move(sketch, std::vector<PartRef>{{PartKind::hose, "hose-9", 0}}, {1, 0, 0}));
    QVERIFY(!move(sketch, std::vector<PartRef>{heater}, {std::numeric_limits<double>::quiet_NaN(), 0, 0}));
    QVERIFY(!remove(sketch, std::vector<PartRef>{{PartKind::hose, "hose-9", 0}}));
    QVERIFY(sketch == soundLoop());
}

void TestGroupEdits::pointsOfOneHoseGoTogether()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) {
        hose.points.clear();
        for (const double x : {1.0, 2.0, 3.0, 4.0})
            hose.points.push_back({{x, 0, 0}});
    });
    const auto point = [](std::size_t i) { return PartRef{PartKind::hose_point, "hose-2", i}; };
    QVERIFY(remove(sketch, {point(0), point(2), point(1)}));
    QCOMPARE(sketch.hoses[return_hose]->points.size(), std::size_t(1));
    QCOMPARE(sketch.hoses[return_hose]->points[0].at.x, 4.0);
}

void TestGroupEdits::aHoseAndItsPortGoTogether()
{
    Sketch sketch = soundLoop();
    QVERIFY(remove(sketch, {supply_port, {PartKind::hose, "hose-1", 0}, supply_bend}));
    QCOMPARE(sketch.ports.size(), std::size_t(1));
    QCOMPARE(sketch.hoses.size(), std::size_t(1));
    QCOMPARE(sketch.hoses[0]->id, Id("hose-2"));
    QVERIFY(*sketch.hoses[0] == *soundLoop().hoses[return_hose]);
}

void TestGroupEdits::anOutlineKeepsThreeCorners()
{
    Sketch sketch = soundLoop();
    std::vector<PartRef> corners;
    for (std::size_t i = 0; i < 4; ++i)
        corners.push_back({PartKind::jacket_corner, {}, i});
    QVERIFY(remove(sketch, corners));
    QCOMPARE(sketch.engine->jacket.size(), std::size_t(3));
    QVERIFY(!remove(sketch, corners));
}

void TestGroupEdits::edgesAndMiddlesLineUp_data()
{
    QTest::addColumn<int>("alignment");
    QTest::addColumn<QList<double>>("x");
    QTest::addColumn<QList<double>>("z");
    // Bodies reach 50 mm to each side and 150 mm up and down from middles at (0, 0), (100, 40), (500, 200).
    QTest::newRow("left") << int(Alignment::left) << QList<double>{0, 0, 0} << QList<double>{0, 40, 200};
    QTest::newRow("right") << int(Alignment::right) << QList<double>{500, 500, 500}
                           << QList<double>{0, 40, 200};
    QTest::newRow("top") << int(Alignment::top) << QList<double>{0, 100, 500} << QList<double>{200, 200, 200};
    QTest::newRow("bottom") << int(Alignment::bottom) << QList<double>{0, 100, 500} << QList<double>{0, 0, 0};
    QTest::newRow("middle across") << int(Alignment::middle_x) << QList<double>{250, 250, 250}
                                   << QList<double>{0, 40, 200};
    QTest::newRow("middle up") << int(Alignment::middle_z) << QList<double>{0, 100, 500}
                               << QList<double>{100, 100, 100};
}

void TestGroupEdits::edgesAndMiddlesLineUp()
{
    QFETCH(int, alignment);
    QFETCH(QList<double>, x);
    QFETCH(QList<double>, z);
    Sketch sketch = threeHeaters();
    QVERIFY(align(sketch, all(sketch), static_cast<Alignment>(alignment)));
    for (qsizetype i = 0; i < 3; ++i) {
        VERIFY_NEAR(sketch.heaters[std::size_t(i)].position.x, x[i], 1e-9);
        VERIFY_NEAR(sketch.heaters[std::size_t(i)].position.z, z[i], 1e-9);
    }
    QVERIFY(!align(sketch, all(sketch), static_cast<Alignment>(alignment)));
}

void TestGroupEdits::pointsLineUpWithTheLowest()
{
    Sketch sketch = soundLoop();
    // Bends at z 690 and -40, the port at z 440.
    QVERIFY(align(sketch, {return_bend, supply_bend, supply_port}, Alignment::bottom));
    QCOMPARE(sketch.hoses[return_hose]->points[0].at.z, -40.0);
    QCOMPARE(sketch.hoses[supply_hose]->points[0].at.z, -40.0);
    QCOMPARE(sketch.ports[0].position.z, -40.0);
}

void TestGroupEdits::middlesAreSpacedEvenly()
{
    Sketch sketch = threeHeaters();
    QVERIFY(distribute(sketch, all(sketch), SpreadAlong::x));
    VERIFY_NEAR(sketch.heaters[0].position.x, 0, 1e-9);
    VERIFY_NEAR(sketch.heaters[1].position.x, 250, 1e-9);
    VERIFY_NEAR(sketch.heaters[2].position.x, 500, 1e-9);
    VERIFY_NEAR(sketch.heaters[1].position.z, 40, 1e-9);
    QVERIFY(distribute(sketch, all(sketch), SpreadAlong::z));
    VERIFY_NEAR(sketch.heaters[1].position.z, 100, 1e-9);
}

void TestGroupEdits::twoCannotBeSpaced()
{
    Sketch sketch = threeHeaters();
    std::vector<PartRef> two = all(sketch);
    two.pop_back();
    QVERIFY(!distribute(sketch, two, SpreadAlong::x));
    QVERIFY(sketch == threeHeaters());
}

void TestGroupEdits::aConnectedEndIsNotLinedUp()
{
    Sketch sketch = soundLoop();
    const PartRef end{PartKind::hose_end, "hose-2", 1};
    QVERIFY(!boxOf(sketch, end));
    QVERIFY(!align(sketch, {end, return_bend}, Alignment::left));
    QVERIFY(sketch == soundLoop());
}

QTEST_APPLESS_MAIN(TestGroupEdits)
#include "test_group_edits.moc"
