#include "tests/near.h"

#include "core/sketch/edits.h"

#include <limits>
#include <set>

using namespace siphonwright;

namespace {

Port portAt(Vec3 at, Direction axis, double stub_mm)
{
    Port port;
    port.position = at;
    port.axis = axis;
    port.stub.length_mm = stub_mm;
    return port;
}

HoseEnd onPort(const Id& id)
{
    HoseEnd end;
    end.port = id;
    return end;
}

HoseEnd onHeater(const Id& id, NozzleKind nozzle)
{
    HoseEnd end;
    end.heater = id;
    end.nozzle = nozzle;
    return end;
}

/// An engine with one port, a heater, a supply hose of two points between them, an area.
Sketch smallSketch()
{
    Sketch sketch;
    Engine engine;
    engine.outline = {{0, 0}, {1000, 0}, {1000, 800}, {0, 800}};
    engine.jacket = {{100, 300}, {900, 350}, {900, 600}, {100, 700}};
    engine.thermostat = ThermostatHousing();
    engine.thermostat->position = {50, 0, 650};
    sketch.engine = engine;
    sketch.tank = SurgeTank();
    sketch.tank->position = {-200, 0, 900};
    const Id port = addPort(sketch, portAt({200, -150, 320}, {270, 0}, 40));
    Heater heater;
    heater.position = {400, -250, 0};
    heater.inlet.offset = {-45, 0, -100};
    heater.inlet.axis = {180, 0};
    heater.inlet.stub.length_mm = 25;
    const Id heater_id = addHeater(sketch, heater);
    const Id hose = addHose(sketch, HoseRole::supply, onPort(port), onHeater(heater_id, NozzleKind::inlet),
                            {{{200, -250, 200}}, {{300, -250, 0}}});
    InlinePart valve;
    valve.along_mm = 80;
    addInlinePart(sketch, hose, valve);
    addClip(sketch, hose, 120);
    Area area;
    area.outline = {{0, 0}, {10, 0}, {10, 10}};
    area.y_from_mm = 5;
    addArea(sketch, area);
    sketch.ground_z_mm = -700;
    sketch.photo = Shared<Photo>(Photo());
    addDimension(sketch, Dimension());
    return sketch;
}

bool same(Vec3 a, Vec3 b)
{
    return test::near(distance(a, b), 0, 1e-9);
}

const PartRef every_part[] = {{PartKind::engine, "", 0},
                              {PartKind::engine_corner, "", 2},
                              {PartKind::jacket, "", 0},
                              {PartKind::jacket_corner, "", 1},
                              {PartKind::thermostat, "", 0},
                              {PartKind::tank, "", 0},
                              {PartKind::port, "port-1", 0},
                              {PartKind::heater, "heater-1", 0},
                              {PartKind::hose, "hose-1", 0},
                              {PartKind::hose_point, "hose-1", 1},
                              {PartKind::inline_part, "hose-1", 0},
                              {PartKind::clip, "hose-1", 0},
                              {PartKind::area, "area-1", 0},
                              {PartKind::area_corner, "area-1", 1},
                              {PartKind::ground, "", 0},
                              {PartKind::photo, "", 0},
                              {PartKind::dimension, "dimension-1", 0}};

const PartRef missing_parts[] = {{PartKind::nothing, "", 0},          {PartKind::engine_corner, "", 4},
                                 {PartKind::jacket_corner, "", 4},    {PartKind::port, "port-2", 0},
                                 {PartKind::heater, "port-1", 0},     {PartKind::hose, "", 0},
                                 {PartKind::hose_point, "hose-1", 2}, {PartKind::hose_end, "hose-1", 2},
                                 {PartKind::hose_end, "hose-9", 0},   {PartKind::inline_part, "hose-1", 1},
                                 {PartKind::clip, "hose-1", 1},       {PartKind::area, "area-2", 0},
                                 {PartKind::area_corner, "area-1", 3}};

} // namespace

class TestEdits : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsThereExistsAndWhatIsNotDoesNot();
    void everyPartMovesThereAndBack();
    void positionsFollowAMove();
    void theEngineTakesItsPartsWithIt();
    void theTankTakesItsLevelMarksWithIt();
    void aConnectedHoseEndDoesNotMoveAndAnOpenOneDoes();
    void partsOfAHoseMoveAlongIt();
    void whatIsNotThereIsLeftAlone();
    void removingAPortLeavesTheHoseEndWhereItWas();
    void removingAHeaterLeavesTheHoseEndWhereItWas();
    void removingTheEngineTakesItsPorts();
    void outlinesKeepThreeCorners();
    void untouchedHosesStayShared();
    void connectingKeepsBoreAndEngagement();
    void connectingToNowhereIsRefused();
    void aNewHoseTakesAfterAnEarlierOne();
    void aFirstHoseHasTheBoreItsHeaterAsksFor();
    void pointsGoWhereAsked();
    void idsAndNamesAreFresh();
    void jacketLevelsComeOutExactly();
};

void TestEdits::whatIsThereExistsAndWhatIsNotDoesNot()
{
    const Sketch sketch = smallSketch();
    for (const PartRef& part : every_part)
        QVERIFY2(exists(sketch, part), qPrintable(QString::number(static_cast<int>(part.kind))));
    for (const PartRef& part : missing_parts)
        QVERIFY2(!exists(sketch, part), qPrintable(QString::number(static_cast<int>(part.kind))));
    for (const PartRef& part : every_part)
        QVERIFY(!exists(Sketch(), part));
}

void TestEdits::everyPartMovesThereAndBack()
{
    for (const PartRef& part : every_part) {
        const Sketch before = smallSketch();
        Sketch sketch = before;
        QVERIFY(move(sketch, part, {16, 8, -32}));
        QVERIFY2(!(sketch == before), qPrintable(QString::number(static_cast<int>(part.kind))));
        QVERIFY(move(sketch, part, {-16, -8, 32}));
        QVERIFY2(sketch == before, qPrintable(QString::number(static_cast<int>(part.kind))));
    }
}

void TestEdits::positionsFollowAMove()
{
    const Vec3 delta = {10, 0, 20};
    for (const PartRef& part : every_part) {
        Sketch sketch = smallSketch();
        const auto before = positionOf(sketch, part);
        QVERIFY(move(sketch, part, delta));
        const auto after = positionOf(sketch, part);
        QCOMPARE(before.has_value(), after.has_value());
        const bool lies_between = part.kind == PartKind::inline_part || part.kind == PartKind::clip ||
                                  part.kind == PartKind::hose || part.kind == PartKind::dimension;
        QCOMPARE(before.has_value(), !lies_between);
        if (part.kind == PartKind::ground)
            QVERIFY(same(*after, *before + Vec3{0, 0, 20}));
        else if (before)
            QVERIFY(same(*after, *before + delta));
    }
}

void TestEdits::theEngineTakesItsPartsWithIt()
{
    Sketch sketch = smallSketch();
    QVERIFY(move(sketch, {PartKind::engine, "", 0}, {5, 7, -3}));
    QVERIFY(same(sketch.ports[0].position, {205, -143, 317}));
    QVERIFY(same(sketch.engine->thermostat->position, {55, 7, 647}));
    QCOMPARE(sketch.engine->jacket[0], (Vec2{105, 297}));
    QCOMPARE(sketch.engine->jacket_y_from_mm, -143.0);
    QVERIFY(same(sketch.tank->position, {-200, 0, 900}));
    // Off the port's stub, 40 mm towards the viewer.
    QVERIFY(same(*positionOf(sketch, {PartKind::hose_end, "hose-1", 0}), {205, -183, 317}));
}

void TestEdits::theTankTakesItsLevelMarksWithIt()
{
    Sketch sketch = smallSketch();
    sketch.tank->cold_min_mm = {870, Source::measured};
    QVERIFY(siphonwright::move(sketch, {PartKind::tank, "", 0}, {10, 0, 25}));
    QVERIFY(same(sketch.tank->position, {-190, 0, 925}));
    QCOMPARE(sketch.tank->cold_min_mm, (Fact<double>{895, Source::measured}));
    QVERIFY(!sketch.tank->hot_mm.known()); // what is not entered stays so
}

void TestEdits::aConnectedHoseEndDoesNotMoveAndAnOpenOneDoes()
{
    Sketch sketch = smallSketch();
    const PartRef end = {PartKind::hose_end, "hose-1", 0};
    const Sketch before = sketch;
    QVERIFY(!move(sketch, end, {1, 1, 1}));
    QVERIFY(sketch == before);
    QVERIFY(remove(sketch, end)); // lets go of the port
    QVERIFY(same(*positionOf(sketch, end), *positionOf(before, end)));
    QVERIFY(move(sketch, end, {1, 2, 3}));
    QVERIFY(same(*positionOf(sketch, end), *positionOf(before, end) + Vec3{1, 2, 3}));
    QVERIFY(!remove(sketch, end));
}

void TestEdits::partsOfAHoseMoveAlongIt()
{
    Sketch sketch = smallSketch();
    QVERIFY(move(sketch, {PartKind::inline_part, "hose-1", 0}, {-30, 99, 99}));
    QCOMPARE(sketch.hoses[0]->parts[0].along_mm, 50.0);
    QVERIFY(move(sketch, {PartKind::clip, "hose-1", 0}, {-500, 0, 0}));
    QCOMPARE(sketch.hoses[0]->clips_mm[0], 0.0);
}

void TestEdits::whatIsNotThereIsLeftAlone()
{
    const Sketch before = smallSketch();
    for (const PartRef& part : missing_parts) {
        Sketch sketch = before;
        QVERIFY(!move(sketch, part, {1, 1, 1}));
        QVERIFY(!remove(sketch, part));
        QVERIFY(!positionOf(sketch, part));
        QVERIFY(sketch == before);
    }
    Sketch sketch = before;
    QVERIFY(!move(sketch, every_part[0], {std::numeric_limits<double>::quiet_NaN(), 0, 0}));
    QVERIFY(!insertPoint(sketch, "hose-1", 3, {}));
    QVERIFY(!insertPoint(sketch, "hose-2", 0, {}));
    QVERIFY(!addClip(sketch, "hose-1", -1));
    QVERIFY(!addClip(sketch, "port-1", 1));
    QVERIFY(!addInlinePart(sketch, "hose-2", {}));
    QVERIFY(!remove(sketch, {PartKind::jacket, "", 0}));
    QVERIFY(sketch == before);
}

void TestEdits::removingAPortLeavesTheHoseEndWhereItWas()
{
    Sketch sketch = smallSketch();
    QVERIFY(remove(sketch, {PartKind::port, "port-1", 0}));
    QVERIFY(sketch.ports.empty());
    QVERIFY(!sketch.hoses[0]->from.connected());
    QVERIFY(same(sketch.hoses[0]->from.open_at, {200, -190, 320}));
    QVERIFY(sketch.hoses[0]->to.connected());
}

void TestEdits::removingAHeaterLeavesTheHoseEndWhereItWas()
{
    Sketch sketch = smallSketch();
    StubElbow elbow;
    elbow.direction = {0, 90};
    elbow.leg_mm = 30;
    sketch.heaters[0].inlet.stub.elbow = elbow;
    QVERIFY(remove(sketch, {PartKind::heater, "heater-1", 0}));
    QVERIFY(sketch.heaters.empty());
    // 45 + 25 mm to the left of the axis, then 30 mm up from 100 mm under the centre.
    QVERIFY(same(sketch.hoses[0]->to.open_at, {330, -250, -70}));
    QVERIFY(sketch.hoses[0]->from.connected());
}

void TestEdits::removingTheEngineTakesItsPorts()
{
    Sketch sketch = smallSketch();
    QVERIFY(remove(sketch, {PartKind::engine, "", 0}));
    QVERIFY(!sketch.engine);
    QVERIFY(sketch.ports.empty());
    QVERIFY(same(sketch.hoses[0]->from.open_at, {200, -190, 320}));
}

void TestEdits::outlinesKeepThreeCorners()
{
    Sketch sketch = smallSketch();
    QVERIFY(remove(sketch, {PartKind::engine_corner, "", 0}));
    QVERIFY(!remove(sketch, {PartKind::engine_corner, "", 0}));
    QCOMPARE(sketch.engine->outline.size(), std::size_t{3});
    QVERIFY(!remove(sketch, {PartKind::area_corner, "area-1", 0}));
    QVERIFY(remove(sketch, {PartKind::area, "area-1", 0}));
    QVERIFY(sketch.areas.empty());
}

void TestEdits::untouchedHosesStayShared()
{
    Sketch sketch = smallSketch();
    addHose(sketch, HoseRole::return_, onHeater("heater-1", NozzleKind::outlet), {}, {});
    const Sketch before = sketch;
    QVERIFY(remove(sketch, {PartKind::port, "port-1", 0}));
    QVERIFY(!sketch.hoses[0].same(before.hoses[0]));
    QVERIFY(sketch.hoses[1].same(before.hoses[1]));
}

void TestEdits::connectingKeepsBoreAndEngagement()
{
    Sketch sketch = smallSketch();
    sketch.hoses[0].edit([](Hose& hose) {
        hose.to.bore_mm = 17;
        hose.to.engagement_mm = 22;
    });
    QVERIFY(siphonwright::connect(sketch, "hose-1", 1, onHeater("heater-1", NozzleKind::outlet)));
    QVERIFY(sketch.hoses[0]->to.nozzle == NozzleKind::outlet);
    QCOMPARE(sketch.hoses[0]->to.bore_mm, 17.0);
    QCOMPARE(sketch.hoses[0]->to.engagement_mm, 22.0);
    HoseEnd open;
    open.open_at = {1, 2, 3};
    QVERIFY(siphonwright::connect(sketch, "hose-1", 1, open));
    QVERIFY(!sketch.hoses[0]->to.connected());
    QVERIFY(same(sketch.hoses[0]->to.open_at, {1, 2, 3}));
}

void TestEdits::connectingToNowhereIsRefused()
{
    Sketch sketch = smallSketch();
    const Sketch before = sketch;
    HoseEnd both = onPort("port-1");
    both.heater = "heater-1";
    QVERIFY(!siphonwright::connect(sketch, "hose-1", 0, onPort("port-7")));
    QVERIFY(!siphonwright::connect(sketch, "hose-1", 0, both));
    QVERIFY(!siphonwright::connect(sketch, "hose-1", 2, onPort("port-1")));
    QVERIFY(!siphonwright::connect(sketch, "hose-7", 0, onPort("port-1")));
    QVERIFY(addHose(sketch, HoseRole::supply, onPort("port-7"), {}, {}).empty());
    QVERIFY(sketch == before);
}

void TestEdits::aNewHoseTakesAfterAnEarlierOne()
{
    Sketch sketch = smallSketch();
    sketch.hoses[0].edit([](Hose& hose) {
        hose.bore_mm = {25.4, Source::measured};
        hose.wall_mm = 5;
    });
    const Id id = addHose(sketch, HoseRole::return_, {}, {}, {});
    QVERIFY(id == "hose-2");
    QCOMPARE(*sketch.hoses[1]->bore_mm.value, 25.4);
    QCOMPARE(sketch.hoses[1]->wall_mm, 5.0);
    QVERIFY(sketch.hoses[1]->name == "Return hose");
    // The hose ends fit the hose, so that they alone are no restriction under 70 %.
    QVERIFY(sketch.hoses[1]->from.bore_mm > 0.7 * 25.4);
    QVERIFY(sketch.hoses[1]->from.bore_mm < 25.4);
}

void TestEdits::aFirstHoseHasTheBoreItsHeaterAsksFor()
{
    Sketch sketch;
    Heater heater;
    heater.manual_min_bore_mm = {25.4, Source::manual};
    const Id id = addHeater(sketch, heater);
    addHose(sketch, HoseRole::supply, {}, onHeater(id, NozzleKind::inlet), {});
    QCOMPARE(*sketch.hoses[0]->bore_mm.value, 25.4);
    QVERIFY(sketch.hoses[0]->bore_mm.source == Source::typical);
}

void TestEdits::pointsGoWhereAsked()
{
    Sketch sketch = smallSketch();
    QVERIFY(insertPoint(sketch, "hose-1", 1, {{1, 1, 1}}));
    QVERIFY(insertPoint(sketch, "hose-1", 3, {{3, 3, 3}}));
    QCOMPARE(sketch.hoses[0]->points.size(), std::size_t{4});
    QVERIFY(same(sketch.hoses[0]->points[1].at, {1, 1, 1}));
    QVERIFY(same(sketch.hoses[0]->points[3].at, {3, 3, 3}));
}

void TestEdits::idsAndNamesAreFresh()
{
    Sketch sketch = smallSketch();
    std::set<Id> ids = {"port-1"};
    std::set<std::string> names = {sketch.ports[0].name};
    for (int i = 0; i < 20; ++i) {
        const Id id = addPort(sketch, {});
        QVERIFY(ids.insert(id).second);
        QVERIFY(names.insert(sketch.ports.back().name).second);
    }
    QVERIFY(freshId(sketch, "heater") == "heater-2");
    // An id is used up whatever kind of part bears it.
    sketch.ports[0].id = "hose-2";
    QVERIFY(freshId(sketch, "hose") == "hose-3");
}

void TestEdits::jacketLevelsComeOutExactly()
{
    Sketch sketch = smallSketch();
    QVERIFY(setJacketLevels(sketch, 250.1, 612.7));
    QCOMPARE(sketch.engine->jacket[0].z, 250.1);
    QCOMPARE(sketch.engine->jacket[3].z, 612.7);
    // 350 was an eighth of the way from 300 to 700.
    VERIFY_NEAR(sketch.engine->jacket[1].z, 250.1 + 362.6 / 8, 1e-9);
    QCOMPARE(sketch.engine->jacket[1].x, 900.0);
    const Sketch before = sketch;
    QVERIFY(!setJacketLevels(sketch, 400, 400));
    QVERIFY(!setJacketLevels(sketch, 400, std::numeric_limits<double>::infinity()));
    QVERIFY(sketch == before);
}

QTEST_APPLESS_MAIN(TestEdits)
#include "test_edits.moc"
