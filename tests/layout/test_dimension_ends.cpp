#include "tests/layout/dimension_end.h"
#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/layout/dimensioning.h"
#include "core/layout/follow_dimensions.h"
#include "core/sketch/edits.h"

#include <cstdint>
#include <limits>
#include <string>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

DimensionPlace placeOf(const DimensionEnd& end, const Sketch& sketch, Vec3 seen_from = {})
{
    return placeOfEnd(end, sketch, resolve(sketch, plumbOf(sketch)), seen_from);
}

Area box()
{
    Area area;
    area.outline = {{300, 100}, {500, 100}, {500, 200}, {300, 200}};
    return area;
}

/// Where the first end of a dimension is after an edit.
DimensionEnd followed(const DimensionEnd& from, void (*edit)(Sketch&))
{
    Sketch before = soundLoop();
    addArea(before, box());
    Dimension dimension;
    dimension.id = "dimension-1";
    dimension.from = from;
    dimension.to.at = {1, 0, 2};
    before.dimensions = {dimension};
    Sketch after = before;
    edit(after);
    followDimensions(after, before, resolve(before, plumbOf(before)));
    return after.dimensions.front().from;
}

} // namespace

/// Ends of dimensions as a file may have them: on parts, and on places of parts, that are not there.
class TestDimensionEnds : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anEndOnNothingLiesWhereItWasLeft_data();
    void anEndOnNothingLiesWhereItWasLeft();
    void aMarkThatIsNotEnteredHoldsNothing();
    void marksAreHeldAtTheirHeight();
    void theJacketsHighestPlaceIsItsTop();
    void anOutlineOfOnePlaceIsHeldThere();
    void aDimensionOfNoLengthHasNoWayButUp();
    void aLineLeftAndRightOfAHoseHasItsSign();
    void cornersKeepTheirOwnThroughInsertingAndRemoving();
    void whatWasNotHeldIsLeft();
};

void TestDimensionEnds::anEndOnNothingLiesWhereItWasLeft_data()
{
    QTest::addColumn<int>("part");
    QTest::addColumn<QString>("id");
    QTest::addColumn<int>("index");
    const auto row = [](const char* name, PartKind part, const char* id, int index) {
        QTest::newRow(name) << int(part) << QString::fromLatin1(id) << index;
    };
    row("no port of that name", PartKind::port, "port-9", 0);
    row("no third place of a port", PartKind::port, "port-1", 2);
    row("no heater of that name", PartKind::heater, "heater-9", 0);
    row("no sixth place of a heater", PartKind::heater, "heater-1", 5);
    row("no fifth place of a tank", PartKind::tank, "", 4);
    row("no third level of a jacket", PartKind::jacket, "", 2);
    row("no level before the first", PartKind::jacket, "", -1);
    row("no area of that name", PartKind::area, "area-9", 0);
    row("no hose of that name", PartKind::hose, "hose-9", 10);
    row("no third end", PartKind::hose_end, "hose-1", 2);
    row("no such point", PartKind::hose_point, "hose-1", 99);
    row("no such part", PartKind::inline_part, "hose-1", 99);
    row("no such clip", PartKind::clip, "hose-1", 99);
    row("nothing before the start", PartKind::hose, "hose-1", -1);
    row("no such corner", PartKind::engine_corner, "", 99);
    row("no such corner of an area", PartKind::area_corner, "area-9", 0);
    row("a photograph", PartKind::photo, "", 0);
    row("another dimension", PartKind::dimension, "dimension-1", 0);
    row("nothing", PartKind::nothing, "", 0);
}

void TestDimensionEnds::anEndOnNothingLiesWhereItWasLeft()
{
    QFETCH(int, part);
    QFETCH(QString, id);
    QFETCH(int, index);
    DimensionEnd end = on(static_cast<PartKind>(part), id.toStdString(), index);
    end.at = {11, 0, 22};
    const DimensionPlace place = placeOf(end, soundLoop());
    QVERIFY(!place.held);
    QVERIFY((place.at == Vec3{11, 0, 22}));
    // Of a drawing in which nothing at all is drawn too.
    QVERIFY(!placeOf(end, Sketch()).held);
}

void TestDimensionEnds::aMarkThatIsNotEnteredHoldsNothing()
{
    Sketch sketch = soundLoop();
    sketch.tank->hot_mm = {};
    QVERIFY(!placeOf(on(PartKind::tank, "", 3), sketch).held);
    QVERIFY(placeOf(on(PartKind::tank, "", 2), sketch).held);
    for (const PartKind part : {PartKind::tank, PartKind::engine, PartKind::jacket, PartKind::ground,
                                PartKind::thermostat, PartKind::engine_corner})
        QVERIFY(!placeOf(on(part, ""), Sketch()).held);
    sketch.engine->jacket.clear();
    QVERIFY(!placeOf(on(PartKind::jacket, ""), sketch).held);
    sketch.engine->outline.clear();
    QVERIFY(!placeOf(on(PartKind::engine, ""), sketch).held);
}

void TestDimensionEnds::marksAreHeldAtTheirHeight()
{
    // From the description of the sound loop: 850, 880 and 900 mm, seen from x 500.
    const Sketch sketch = soundLoop();
    const double heights[] = {850, 880, 900};
    for (int mark = 1; mark <= 3; ++mark) {
        const DimensionPlace place = placeOf(on(PartKind::tank, "", mark), sketch, {500, 0, 0});
        VERIFY_NEAR(place.at.x, 500, 1e-9);
        VERIFY_NEAR(place.at.z, heights[mark - 1], 1e-9);
    }
    // A drawing that lies on its side has no level line across it: the mark stays at the tank.
    Sketch lying = sketch;
    lying.engine->lean_deg = 85;
    const DimensionPlace place = placeOf(on(PartKind::tank, "", 1), lying, {500, 0, 0});
    VERIFY_NEAR(place.at.x, 200, 1e-9);
    VERIFY_NEAR(place.at.z, 850, 1e-9);
}

void TestDimensionEnds::theJacketsHighestPlaceIsItsTop()
{
    Sketch sketch = soundLoop();
    const DimensionEnd highest = on(PartKind::jacket, "", 1);
    const DimensionPlace level = placeOf(highest, sketch, {333, 0, 0});
    VERIFY_NEAR(level.at.x, 333, 1e-9);
    VERIFY_NEAR(level.at.z, 800, 1e-9);
    sketch.engine->jacket = {{0, 400}, {900, 400}, {600, 800}};
    VERIFY_NEAR(placeOf(highest, sketch, {333, 0, 0}).at.x, 600, 1e-9);
}

void TestDimensionEnds::anOutlineOfOnePlaceIsHeldThere()
{
    Sketch sketch = soundLoop();
    sketch.engine->outline = {{70, 80}, {70, 80}, {70, 80}};
    const DimensionPlace place = placeOf(on(PartKind::engine, ""), sketch, {500, 0, 500});
    QVERIFY(place.held);
    QVERIFY((place.at == Vec3{70, 0, 80}));
}

void TestDimensionEnds::aDimensionOfNoLengthHasNoWayButUp()
{
    Dimension dimension;
    const Sketch sketch = soundLoop();
    const MeasuredDimension none = measure(dimension, sketch, resolve(sketch, plumbOf(sketch)));
    QCOMPARE(none.value, 0.0);
    QCOMPARE(none.angle_deg, 0.0);
    QCOMPARE(asideWay(none), (Vec2{0, 1}));
    VERIFY_NEAR(asideThrough(none, {0, 25}), 25, 1e-9);
}

void TestDimensionEnds::aLineLeftAndRightOfAHoseHasItsSign()
{
    // The return hose rises at x 1030 from z 260: left of its flow is where x is less.
    const Sketch sketch = soundLoop();
    Dimension dimension;
    dimension.kind = DimensionKind::along;
    dimension.from = on(PartKind::hose, "hose-2", 50);
    dimension.to = on(PartKind::hose, "hose-2", 250);
    const MeasuredDimension measured = measure(dimension, sketch, resolve(sketch, plumbOf(sketch)));
    VERIFY_NEAR(measured.value, 200, 1e-9);
    VERIFY_NEAR(asideThrough(measured, {1010, 400}), 20, 1e-6);
    VERIFY_NEAR(asideThrough(measured, {1065, 400}), -35, 1e-6);
}

void TestDimensionEnds::cornersKeepTheirOwnThroughInsertingAndRemoving()
{
    const auto on_index = [](PartKind part, const Id& id, std::int64_t index) { return on(part, id, index); };
    QCOMPARE(followed(on_index(PartKind::jacket_corner, "", 2),
                      [](Sketch& s) {
                          s.engine->jacket.insert(s.engine->jacket.begin(), Vec2{-5, 500});
                      }),
             on(PartKind::jacket_corner, "", 3));
    QCOMPARE(followed(on_index(PartKind::area_corner, "area-1", 3),
                      [](Sketch& s) {
                          s.areas[0].edit([](Area& area) { area.outline.erase(area.outline.begin() + 1); });
                      }),
             on(PartKind::area_corner, "area-1", 2));
    // Among corners that changed on both sides it is the one that is alike.
    QCOMPARE(followed(on_index(PartKind::engine_corner, "", 1),
                      [](Sketch& s) {
                          s.engine->outline = {{0, 0}, {1, 0}, {950, 350}, {2, 0}, {3, 3}};
                      }),
             on(PartKind::engine_corner, "", 2));
    // Its engine or area gone, the end stays where it was.
    const auto stays = [](const DimensionEnd& end, Vec3 at) {
        return end.part == PartKind::nothing && near(distance(end.at, at), 0, 1e-9);
    };
    QVERIFY(stays(followed(on(PartKind::engine_corner, "", 2), [](Sketch& s) { s.engine.reset(); }),
                  {950, 0, 850}));
    QVERIFY(stays(followed(on(PartKind::jacket_corner, "", 2), [](Sketch& s) { s.engine.reset(); }),
                  {900, 0, 800}));
    QVERIFY(stays(followed(on(PartKind::area_corner, "area-1", 2), [](Sketch& s) { s.areas.clear(); }),
                  {500, 0, 200}));
    const DimensionEnd part = followed(on(PartKind::inline_part, "hose-1", 0), [](Sketch& s) {
        s.hoses[supply_hose].edit([](Hose& hose) { hose.parts.insert(hose.parts.begin(), InlinePart{}); });
    });
    QCOMPARE(part, on(PartKind::inline_part, "hose-1", 1));
    QCOMPARE(followed(on(PartKind::hose, "hose-1", 40), [](Sketch& s) { s.tank.reset(); }),
             on(PartKind::hose, "hose-1", 40));
}

void TestDimensionEnds::whatWasNotHeldIsLeft()
{
    const DimensionEnd corner = on(PartKind::engine_corner, "", 99);
    QCOMPARE(followed(corner, [](Sketch& s) { s.engine.reset(); }), corner);
    const DimensionEnd point = on(PartKind::hose_point, "hose-1", 99);
    QCOMPARE(followed(point,
                      [](Sketch& s) { s.hoses[supply_hose].edit([](Hose& hose) { hose.points.clear(); }); }),
             point);
}

QTEST_APPLESS_MAIN(TestDimensionEnds)
#include "test_dimension_ends.moc"
