#include "tests/layout/dimension_end.h"
#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/layout/dimensioning.h"
#include "core/layout/follow_dimensions.h"
#include "core/sketch/edits.h"

#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

DimensionEnd at(Vec3 place)
{
    DimensionEnd end;
    end.at = place;
    return end;
}

template <class Place>
std::int64_t index(Place place)
{
    return static_cast<std::int64_t>(place);
}

Dimension between(const DimensionEnd& from, const DimensionEnd& to, DimensionKind kind)
{
    Dimension out;
    out.id = "dimension-1";
    out.from = from;
    out.to = to;
    out.kind = kind;
    return out;
}

MeasuredDimension measured(const Sketch& sketch, const Dimension& dimension, Grade grade = {})
{
    return measure(dimension, sketch, resolve(sketch, plumbOf(sketch, grade)));
}

/// The sketch after an edit, its one dimension followed.
Sketch followed(const Sketch& before, bool (*edit)(Sketch&))
{
    Sketch after = before;
    if (!edit(after))
        qFatal("the edit did nothing");
    followDimensions(after, before, resolve(before, plumbOf(before)));
    return after;
}

Sketch withDimension(const Dimension& dimension)
{
    Sketch sketch = soundLoop();
    sketch.dimensions = {dimension};
    return sketch;
}

Area exhaust()
{
    Area area;
    area.outline = {{300, 100}, {500, 100}, {500, 200}, {300, 200}};
    return area;
}

const DimensionEnd outlet = on(PartKind::heater, "heater-1", index(HeaterPlace::outlet));
const DimensionEnd return_port = on(PartKind::port, "port-2");

} // namespace

class TestDimensioning : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachKindMeasuresItsOwn_data();
    void eachKindMeasuresItsOwn();
    void placesOfPartsAreWhereTheyAre_data();
    void placesOfPartsAreWhereTheyAre();
    void depthCountsInSpaceOnlyWhereItIsKnown();
    void betweenTwoPlacesOfOneHoseItRunsAlongTheHose();
    void aSlopeIsTakenAlongPlumb();
    void aWholeOutlineIsHeldWhereItIsNearest();
    void groundAndLevelsAreUnderOrOverTheOtherEnd();
    void itFollowsWhatItMeasures();
    void anEndWhosePartIsGoneStaysWhereItWas();
    void pointsKeepTheirOwnThroughInsertingAndRemoving();
    void aNewPartWithTheOldIdIsNotTaken();
    void whatTheEditItselfChangedIsLeft();
    void thePointerChoosesTheKind();
    void theLineGoesThroughThePointer();
    void dimensionsAreAddedMovedAsideAndRemoved();
};

void TestDimensioning::eachKindMeasuresItsOwn_data()
{
    QTest::addColumn<int>("kind");
    QTest::addColumn<double>("value");
    // From the outlet's opening {1030, 220} to the return port {800, 700}: 230 across, 480 up.
    QTest::newRow("horizontal") << int(DimensionKind::horizontal) << 230.0;
    QTest::newRow("vertical") << int(DimensionKind::vertical) << 480.0;
    QTest::newRow("along") << int(DimensionKind::along) << std::sqrt(230.0 * 230 + 480.0 * 480);
    QTest::newRow("slope") << int(DimensionKind::slope) << 480.0 / 230;
}

void TestDimensioning::eachKindMeasuresItsOwn()
{
    QFETCH(int, kind);
    QFETCH(double, value);
    const Sketch sketch = soundLoop();
    const auto wanted = static_cast<DimensionKind>(kind);
    VERIFY_NEAR(measured(sketch, between(outlet, return_port, wanted)).value, value, 1e-9);
    VERIFY_NEAR(measured(sketch, between(return_port, outlet, wanted)).value, value, 1e-9);
}

void TestDimensioning::placesOfPartsAreWhereTheyAre_data()
{
    QTest::addColumn<int>("part");
    QTest::addColumn<QString>("id");
    QTest::addColumn<int>("place");
    QTest::addColumn<double>("x");
    QTest::addColumn<double>("z");
    // All from the description of the sound loop.
    QTest::newRow("port") << int(PartKind::port) << "port-2" << 0 << 800.0 << 700.0;
    QTest::newRow("port's stop") << int(PartKind::port) << "port-2" << 1 << 830.0 << 700.0;
    QTest::newRow("heater") << int(PartKind::heater) << "heater-1" << 0 << 1030.0 << 80.0;
    QTest::newRow("inlet") << int(PartKind::heater) << "heater-1" << 1 << 990.0 << -40.0;
    QTest::newRow("top") << int(PartKind::heater) << "heater-1" << 3 << 1030.0 << 230.0;
    QTest::newRow("foot") << int(PartKind::heater) << "heater-1" << 4 << 1030.0 << -70.0;
    QTest::newRow("point") << int(PartKind::hose_point) << "hose-2" << 0 << 1030.0 << 690.0;
    QTest::newRow("hose's start") << int(PartKind::hose_end) << "hose-2" << 0 << 1030.0 << 260.0;
    QTest::newRow("on a hose") << int(PartKind::hose) << "hose-2" << 100 << 1030.0 << 360.0;
    QTest::newRow("in-line part") << int(PartKind::inline_part) << "hose-1" << 0 << 100.0 << 310.0;
    QTest::newRow("engine's corner") << int(PartKind::engine_corner) << "" << 2 << 950.0 << 850.0;
    QTest::newRow("thermostat") << int(PartKind::thermostat) << "" << 0 << 40.0 << 800.0;
    QTest::newRow("tank") << int(PartKind::tank) << "" << 0 << 200.0 << 900.0;
}

void TestDimensioning::placesOfPartsAreWhereTheyAre()
{
    QFETCH(int, part);
    QFETCH(QString, id);
    QFETCH(int, place);
    QFETCH(double, x);
    QFETCH(double, z);
    const Sketch sketch = soundLoop();
    const DimensionEnd end = on(static_cast<PartKind>(part), id.toStdString(), place);
    const DimensionPlace found = placeOfEnd(end, sketch, resolve(sketch, plumbOf(sketch)), {});
    QVERIFY(found.held);
    VERIFY_NEAR(found.at.x, x, 1e-9);
    VERIFY_NEAR(found.at.z, z, 1e-9);
}

void TestDimensioning::depthCountsInSpaceOnlyWhereItIsKnown()
{
    Sketch sketch = soundLoop();
    sketch.ports[1].position = {1030, 400, 520}; // 300 over the outlet and 400 behind it
    VERIFY_NEAR(measured(sketch, between(outlet, return_port, DimensionKind::along)).value, 500, 1e-9);
    // A corner of an outline lies at no depth of its own: {-50, 850} to {1030, 400, 520}.
    const DimensionEnd corner = on(PartKind::engine_corner, "", 3);
    VERIFY_NEAR(measured(sketch, between(corner, return_port, DimensionKind::along)).value,
                std::hypot(1080.0, 330.0), 1e-9);
    const DimensionEnd free = at({1030, 0, 120});
    VERIFY_NEAR(measured(sketch, between(free, return_port, DimensionKind::along)).value, 400, 1e-9);
}

void TestDimensioning::betweenTwoPlacesOfOneHoseItRunsAlongTheHose()
{
    const Sketch sketch = soundLoop();
    const Layout layout = resolve(sketch, plumbOf(sketch));
    // Clips at 500 and 1000 mm along the supply hose, one before and one after its bend or not: 500 apart.
    const Dimension clips =
        between(on(PartKind::clip, "hose-1", 2), on(PartKind::clip, "hose-1", 0), DimensionKind::along);
    const MeasuredDimension along = measure(clips, sketch, layout);
    VERIFY_NEAR(along.value, 500, 1e-9);
    QVERIFY(along.stretch.has_value());
    // From stop to stop it is the developed length.
    const Dimension whole = between(on(PartKind::hose_end, "hose-2", 0), on(PartKind::hose_end, "hose-2", 1),
                                    DimensionKind::along);
    VERIFY_NEAR(measure(whole, sketch, layout).value, layout.hoses[return_hose]->length_mm, 1e-9);
    // Up to the bend's middle: 430 to the corner less r tan(a/2), and half the arc; a from the geometry.
    const double a = std::acos(10 / std::hypot(200.0, 10.0));
    const Dimension to_bend = between(on(PartKind::hose_end, "hose-2", 0),
                                      on(PartKind::hose_point, "hose-2", 0), DimensionKind::along);
    VERIFY_NEAR(measure(to_bend, sketch, layout).value, 430 - 150 * std::tan(a / 2) + 150 * a / 2, 1e-6);
    // Places of two hoses are measured straight.
    const Dimension two = between(on(PartKind::hose_end, "hose-1", 0), on(PartKind::hose_end, "hose-2", 1),
                                  DimensionKind::along);
    QVERIFY(!measure(two, sketch, layout).stretch.has_value());
}

void TestDimensioning::aSlopeIsTakenAlongPlumb()
{
    const Sketch sketch = soundLoop();
    const Dimension slope = between(on(PartKind::hose_point, "hose-2", 0),
                                    on(PartKind::hose_end, "hose-2", 1), DimensionKind::slope);
    const MeasuredDimension level = measured(sketch, slope);
    VERIFY_NEAR(level.value, 10.0 / 200, 1e-9);
    VERIFY_NEAR(level.angle_deg, std::atan(0.05) * 180 / 3.14159265358979323846, 1e-9);
    // Nose-up by 5 %, front at the left: what rises to the left by 5 % rises by 10 % in all, but for the
    // tangent of a sum, (a + b) / (1 - a b).
    VERIFY_NEAR(measured(sketch, slope, {5, 0}).value, 0.1 / (1 - 0.0025), 1e-9);
    VERIFY_NEAR(measured(sketch, slope, {-5, 0}).value, 0, 1e-9);
    const Dimension plumb = between(at({10, 0, 0}), at({10, 0, 80}), DimensionKind::slope);
    QVERIFY(std::isinf(measured(sketch, plumb).value));
    VERIFY_NEAR(measured(sketch, plumb).angle_deg, 90, 1e-9);
    QCOMPARE(measured(sketch, between(at({10, 0, 0}), at({10, 0, 0}), DimensionKind::slope)).value, 0.0);
}

void TestDimensioning::aWholeOutlineIsHeldWhereItIsNearest()
{
    Sketch sketch = soundLoop();
    const Id area = addArea(sketch, exhaust());
    const DimensionEnd whole = on(PartKind::area, area);
    // Under the area its lower edge is nearest, 60 up; beside a corner the corner, 30 and 40 away.
    VERIFY_NEAR(measured(sketch, between(at({420, 0, 40}), whole, DimensionKind::along)).value, 60, 1e-9);
    VERIFY_NEAR(measured(sketch, between(whole, at({530, 0, 240}), DimensionKind::along)).value, 50, 1e-9);
    // Two outlines: from the area's top at 200 to the engine's underside at 350.
    const Dimension gap = between(whole, on(PartKind::engine, ""), DimensionKind::along);
    VERIFY_NEAR(measured(sketch, gap).value, 150, 1e-9);
}

void TestDimensioning::groundAndLevelsAreUnderOrOverTheOtherEnd()
{
    const Sketch sketch = soundLoop();
    const DimensionEnd foot = on(PartKind::heater, "heater-1", index(HeaterPlace::foot));
    const DimensionEnd top = on(PartKind::heater, "heater-1", index(HeaterPlace::top));
    const DimensionEnd ground = on(PartKind::ground, "");
    VERIFY_NEAR(measured(sketch, between(foot, ground, DimensionKind::along)).value, 230, 1e-9);
    const DimensionEnd lowest = on(PartKind::jacket, "", index(JacketPlace::lowest));
    const MeasuredDimension drop = measured(sketch, between(top, lowest, DimensionKind::vertical));
    VERIFY_NEAR(drop.value, 170, 1e-9);
    VERIFY_NEAR(drop.to.at.x, 900, 1e-9); // of the level underside the place nearest to the heater
    const DimensionEnd cold_min = on(PartKind::tank, "", index(TankPlace::cold_min));
    const MeasuredDimension under = measured(sketch, between(return_port, cold_min, DimensionKind::along));
    VERIFY_NEAR(under.value, 150, 1e-9);
    VERIFY_NEAR(under.to.at.x, 800, 1e-9);
    // Nose-up by 3 % the level line falls by 3 % to the right of the drawing... seen from the port, 600 mm
    // right of the tank: the level there is 18 mm nearer to it or farther, by the sign of plumb.
    const MeasuredDimension tilted =
        measured(sketch, between(return_port, cold_min, DimensionKind::vertical), {3, 0});
    const Plumb plumb = plumbOf(sketch, {3, 0});
    VERIFY_NEAR(plumb.height(tilted.to.at), plumb.height({200, 0, 850}), 1e-9);
    VERIFY_NEAR(std::abs(tilted.value - 150), 18, 1e-9);
    QVERIFY(isLevel(ground) && isLevel(lowest) && isLevel(cold_min));
    QVERIFY(!isLevel(foot) && !isLevel(on(PartKind::tank, "")));
}

void TestDimensioning::itFollowsWhatItMeasures()
{
    Sketch sketch = withDimension(between(outlet, return_port, DimensionKind::vertical));
    QVERIFY(move(sketch, {PartKind::heater, "heater-1", 0}, {0, 0, -70}));
    VERIFY_NEAR(measured(sketch, sketch.dimensions[0]).value, 550, 1e-9);
    QVERIFY(move(sketch, {PartKind::port, "port-2", 0}, {0, 0, -50}));
    VERIFY_NEAR(measured(sketch, sketch.dimensions[0]).value, 500, 1e-9);
}

void TestDimensioning::anEndWhosePartIsGoneStaysWhereItWas()
{
    const Sketch before = withDimension(between(outlet, return_port, DimensionKind::vertical));
    const Sketch after = followed(before, [](Sketch& s) {
        return remove(s, {PartKind::heater, "heater-1", 0});
    });
    QCOMPARE(after.dimensions[0].from, at({1030, 0, 220}));
    QCOMPARE(after.dimensions[0].to, return_port);
    VERIFY_NEAR(measured(after, after.dimensions[0]).value, 480, 1e-9);
    // A clip lies along a resolved hose: 500 mm along the supply hose is past its bend, on z -40.
    const Sketch clip =
        withDimension(between(on(PartKind::clip, "hose-1", 0), return_port, DimensionKind::vertical));
    const Vec3 place = measured(clip, clip.dimensions[0]).from.at;
    const Sketch no_hose = followed(clip, [](Sketch& s) { return remove(s, {PartKind::hose, "hose-1", 0}); });
    QCOMPARE(no_hose.dimensions[0].from, at(place));
    const Sketch no_clip = followed(clip, [](Sketch& s) { return remove(s, {PartKind::clip, "hose-1", 0}); });
    QCOMPARE(no_clip.dimensions[0].from, at(place));
}

void TestDimensioning::pointsKeepTheirOwnThroughInsertingAndRemoving()
{
    const Sketch point =
        withDimension(between(on(PartKind::hose_point, "hose-2", 0), return_port, DimensionKind::along));
    const auto insert_before = [](Sketch& s) {
        return insertPoint(s, "hose-2", 0, {{1030, 0, 400}, 80, BendKind::hose});
    };
    const auto insert_after = [](Sketch& s) {
        return insertPoint(s, "hose-2", 1, {{900, 0, 695}, 80, BendKind::hose});
    };
    const Sketch inserted = followed(point, insert_before);
    QCOMPARE(inserted.dimensions[0].from.index, std::int64_t(1));
    QCOMPARE(followed(point, insert_after).dimensions[0].from.index, std::int64_t(0));
    const Sketch back = followed(inserted, [](Sketch& s) {
        return remove(s, {PartKind::hose_point, "hose-2", 0});
    });
    QCOMPARE(back.dimensions, point.dimensions);
    const Sketch gone = followed(inserted, [](Sketch& s) {
        return remove(s, {PartKind::hose_point, "hose-2", 1});
    });
    QCOMPARE(gone.dimensions[0].from, at({1030, 0, 690}));

    const Sketch clips = withDimension(
        between(on(PartKind::clip, "hose-1", 0), on(PartKind::clip, "hose-1", 2), DimensionKind::along));
    const Sketch fewer = followed(clips, [](Sketch& s) { return remove(s, {PartKind::clip, "hose-1", 1}); });
    QCOMPARE(fewer.dimensions[0].from.index, std::int64_t(0));
    QCOMPARE(fewer.dimensions[0].to.index, std::int64_t(1));

    const Sketch corner =
        withDimension(between(on(PartKind::engine_corner, "", 2), return_port, DimensionKind::along));
    const Sketch more = followed(corner, [](Sketch& s) {
        s.engine->outline.insert(s.engine->outline.begin() + 1, Vec2{400, 350});
        return true;
    });
    QCOMPARE(more.dimensions[0].from.index, std::int64_t(3));
    // A point that is moved is still the same.
    const Sketch moved = followed(point, [](Sketch& s) {
        return move(s, {PartKind::hose_point, "hose-2", 0}, {5, 0, 5});
    });
    QCOMPARE(moved.dimensions, point.dimensions);
}

void TestDimensioning::aNewPartWithTheOldIdIsNotTaken()
{
    const Sketch before = withDimension(between(return_port, outlet, DimensionKind::along));
    const Sketch without = followed(before, [](Sketch& s) {
        return remove(s, {PartKind::port, "port-2", 0});
    });
    const Sketch again = followed(without, [](Sketch& s) { return addPort(s, Port()) == "port-2"; });
    QCOMPARE(again.dimensions[0].from, at({800, 0, 700}));
}

void TestDimensioning::whatTheEditItselfChangedIsLeft()
{
    const Sketch before =
        withDimension(between(on(PartKind::clip, "hose-1", 1), outlet, DimensionKind::along));
    const Sketch after = followed(before, [](Sketch& s) {
        s.dimensions[0].from = on(PartKind::clip, "hose-1", 0);
        return remove(s, {PartKind::clip, "hose-1", 2});
    });
    QCOMPARE(after.dimensions[0].from.index, std::int64_t(0));
}

void TestDimensioning::thePointerChoosesTheKind()
{
    const Vec2 a = {0, 0};
    const Vec2 b = {100, 50};
    QCOMPARE(kindAt(a, b, {40, 90}), DimensionKind::horizontal);
    QCOMPARE(kindAt(a, b, {40, -20}), DimensionKind::horizontal);
    QCOMPARE(kindAt(b, a, {130, 20}), DimensionKind::vertical);
    QCOMPARE(kindAt(a, b, {-10, 20}), DimensionKind::vertical);
    QCOMPARE(kindAt(a, b, {120, 90}), DimensionKind::along);
    QCOMPARE(kindAt(a, b, {50, 30}), DimensionKind::along);
}

void TestDimensioning::theLineGoesThroughThePointer()
{
    const Sketch sketch = soundLoop();
    const auto aside = [&](DimensionKind kind, Vec2 place) {
        return asideThrough(measured(sketch, between(at({0, 0, 0}), at({300, 0, 400}), kind)), place);
    };
    VERIFY_NEAR(aside(DimensionKind::horizontal, {50, 460}), 260, 1e-9); // over the middle at z 200
    VERIFY_NEAR(aside(DimensionKind::vertical, {-50, 10}), -200, 1e-9);  // left of the middle at x 150
    // {-40, 30} is square to the line 3 : 4 at its start, 50 to the left of the way.
    VERIFY_NEAR(aside(DimensionKind::along, {-40, 30}), 50, 1e-9);
    VERIFY_NEAR(aside(DimensionKind::slope, {40, -30}), -50, 1e-9);
    // Along the return hose, which goes straight up here: 70 to its left.
    const Dimension along =
        between(on(PartKind::hose_end, "hose-2", 0), on(PartKind::hose, "hose-2", 200), DimensionKind::along);
    VERIFY_NEAR(asideThrough(measured(sketch, along), {960, 300}), 70, 1e-9);
}

void TestDimensioning::dimensionsAreAddedMovedAsideAndRemoved()
{
    Sketch sketch = soundLoop();
    QCOMPARE(addDimension(sketch, between(outlet, return_port, DimensionKind::along)), Id("dimension-1"));
    QCOMPARE(addDimension(sketch, between(outlet, return_port, DimensionKind::slope)), Id("dimension-2"));
    const PartRef second = {PartKind::dimension, "dimension-2", 0};
    QVERIFY(exists(sketch, second));
    QVERIFY(!positionOf(sketch, second));
    QVERIFY(move(sketch, second, {-15, 0, 0}));
    VERIFY_NEAR(sketch.dimensions[1].aside_mm, 45, 1e-9);
    QVERIFY(remove(sketch, second));
    QVERIFY(!exists(sketch, second));
    QCOMPARE(sketch.dimensions.size(), std::size_t(1));
    Dimension broken;
    broken.aside_mm = std::nan("");
    QVERIFY(addDimension(sketch, broken).empty());
}

QTEST_APPLESS_MAIN(TestDimensioning)
#include "test_dimensioning.moc"
