#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/sketch/copy_parts.h"
#include "core/sketch/edits.h"
#include "core/sketch/group_edits.h"
#include "core/sketch/photo_edits.h"

#include <limits>
#include <string>
#include <utility>
#include <vector>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// The sound loop with one of everything else: an area of four corners, a valve and two clips on the supply
/// hose, a hose of two points that lies open at both ends, a photograph, a dimension.
Sketch oneOfEach()
{
    Sketch sketch = soundLoop();
    Area area;
    area.what = Hazard::exhaust;
    area.outline = {{10, 20}, {50, 20}, {50, 80}, {10, 80}};
    area.y_from_mm = 5;
    area.y_to_mm = 15;
    addArea(sketch, std::move(area));
    sketch.hoses[supply_hose].edit([](Hose& hose) {
        hose.parts = {InlinePart{}};
        hose.clips_mm = {100, 200};
    });
    HoseEnd from;
    from.open_at = {0, 0, 10};
    HoseEnd to;
    to.open_at = {300, 0, -20};
    addHose(sketch, HoseRole::return_, from, to, {{{100, 0, 40}}, {{200, 0, 5}}});
    sketch.photo = Shared<Photo>(Photo());
    addDimension(sketch, Dimension());
    return sketch;
}

Id idOf(const Shared<Hose>& hose)
{
    return hose->id;
}

/// Everything that can go by itself.
std::vector<PartRef> removable(const Sketch& sketch)
{
    const Id supply = idOf(sketch.hoses[supply_hose]);
    const Id open = idOf(sketch.hoses.back());
    return {{PartKind::engine_corner, "", 3},
            {PartKind::jacket_corner, "", 3},
            {PartKind::thermostat, "", 0},
            {PartKind::tank, "", 0},
            {PartKind::port, sketch.ports[0].id, 0},
            {PartKind::heater, sketch.heaters[0].id, 0},
            {PartKind::hose, open, 0},
            {PartKind::hose_point, open, 1},
            {PartKind::inline_part, supply, 0},
            {PartKind::clip, supply, 1},
            {PartKind::area, "area-1", 0},
            {PartKind::area_corner, "area-1", 3},
            {PartKind::ground, "", 0},
            {PartKind::photo, "", 0},
            {PartKind::dimension, "dimension-1", 0}};
}

bool isBox(const std::optional<PartBox>& box, Vec2 low, Vec2 high)
{
    return box && near(box->low.x, low.x, 1e-9) && near(box->low.z, low.z, 1e-9) &&
           near(box->high.x, high.x, 1e-9) && near(box->high.z, high.z, 1e-9);
}

} // namespace

class TestEveryKind : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsRemovedIsNoLongerThere();
    void theHoseEndOfARemovedNozzleStaysAndLetsGoOnRequest();
    void newPortsAndAreasAreNamedAfterWhatTheyAre();
    void whatCannotBeAddedIsRefused();
    void aJacketWithoutHeightHasNoLevelsToSet();
    void anOpenHoseMovesWithItsEnds();
    void anAreaTakesItsDepthWithItAndItsCornersDoNot();
    void boxesGoRoundWhatMoves();
    void whatHasNoBoxIsNotLinedUp();
    void whatRidesOnAnotherIsRemovedOnce();
    void cornersPointsAndClipsStandForTheirWhole();
    void pastedAreasAndTanksAreTheirOwn();
    void aCopyOfAnythingIsPutBesideWhatIsThere();
};

void TestEveryKind::whatIsRemovedIsNoLongerThere()
{
    const Sketch before = oneOfEach();
    for (const PartRef& part : removable(before)) {
        Sketch sketch = before;
        const QByteArray kind = QByteArray::number(static_cast<int>(part.kind));
        QVERIFY2(exists(sketch, part), kind);
        QVERIFY2(siphonwright::remove(sketch, part), kind);
        QVERIFY2(!exists(sketch, part), kind); // the last of its list, where it has an index
        QVERIFY2(!siphonwright::remove(sketch, part), kind);
        QVERIFY2(!siphonwright::move(sketch, part, {1, 1, 1}), kind);
    }
}

void TestEveryKind::theHoseEndOfARemovedNozzleStaysAndLetsGoOnRequest()
{
    const Sketch before = soundLoop();
    for (const std::size_t end : {std::size_t{0}, std::size_t{1}}) {
        Sketch sketch = before;
        const PartRef part{PartKind::hose_end, idOf(sketch.hoses[supply_hose]), end};
        const auto was = positionOf(before, part);
        QVERIFY(was && siphonwright::remove(sketch, part));
        const Hose& hose = *sketch.hoses[supply_hose];
        QVERIFY(!(end == 0 ? hose.from : hose.to).connected());
        QVERIFY((end == 0 ? hose.to : hose.from).connected());
        VERIFY_NEAR(distance(*positionOf(sketch, part), *was), 0, 1e-9);
    }
}

void TestEveryKind::newPortsAndAreasAreNamedAfterWhatTheyAre()
{
    Sketch sketch;
    const std::pair<PortKind, const char*> ports[] = {{PortKind::drain_port, "Drain port"},
                                                      {PortKind::core_plug, "Core plug"},
                                                      {PortKind::lower_hose_tee, "Lower hose tee"},
                                                      {PortKind::head_port, "Head port"},
                                                      {PortKind::cabin_line, "Cabin line"}};
    for (const auto& [kind, name] : ports) {
        Port port;
        port.kind = kind;
        addPort(sketch, port);
        QCOMPARE(sketch.ports.back().name, std::string(name));
    }
    Port sensor;
    sensor.role = PortRole::sensor;
    addPort(sketch, sensor);
    QCOMPARE(sketch.ports.back().name, std::string("Sensor port"));
    const std::pair<Hazard, const char*> areas[] = {{Hazard::exhaust, "Exhaust"},
                                                    {Hazard::turbo, "Turbocharger"},
                                                    {Hazard::heat_shield, "Heat shield"},
                                                    {Hazard::belt, "Belt"},
                                                    {Hazard::fan, "Fan"},
                                                    {Hazard::shaft, "Shaft"},
                                                    {Hazard::steering, "Steering"},
                                                    {Hazard::suspension, "Suspension"},
                                                    {Hazard::other, "Keep clear"}};
    for (const auto& [what, name] : areas) {
        Area area;
        area.what = what;
        addArea(sketch, area);
        QCOMPARE(sketch.areas.back()->name, std::string(name));
    }
    Area named;
    named.name = "Air tank";
    addArea(sketch, named);
    QCOMPARE(sketch.areas.back()->name, std::string("Air tank"));
    Heater heater;
    heater.name = "Tank heater";
    addHeater(sketch, heater);
    QCOMPARE(sketch.heaters.back().name, std::string("Tank heater"));
}

void TestEveryKind::whatCannotBeAddedIsRefused()
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    Sketch sketch = soundLoop();
    const Sketch before = sketch;
    Dimension dimension;
    dimension.aside_mm = nan;
    QVERIFY(addDimension(sketch, dimension).empty());
    HoseEnd nowhere;
    nowhere.heater = "heater-9";
    QVERIFY(addHose(sketch, HoseRole::supply, {}, nowhere, {}).empty());
    QVERIFY(!addClip(sketch, idOf(sketch.hoses[0]), nan));
    InlinePart part;
    part.along_mm = nan;
    QVERIFY(!addInlinePart(sketch, idOf(sketch.hoses[0]), part));
    part.along_mm = -1;
    QVERIFY(!addInlinePart(sketch, idOf(sketch.hoses[0]), part));
    const double inf = std::numeric_limits<double>::infinity();
    for (const Vec3 delta : {Vec3{inf, 0, 0}, Vec3{0, nan, 0}, Vec3{0, 0, inf}})
        QVERIFY(!siphonwright::move(sketch, {PartKind::tank, "", 0}, delta));
    QVERIFY(sketch == before);
}

void TestEveryKind::aJacketWithoutHeightHasNoLevelsToSet()
{
    Sketch nothing;
    QVERIFY(!setJacketLevels(nothing, 0, 100));
    Sketch sketch = soundLoop();
    sketch.engine->jacket = {{0, 400}, {900, 400}, {500, 400}};
    const Sketch flat = sketch;
    QVERIFY(!setJacketLevels(sketch, 0, 100));
    QVERIFY(sketch == flat);
    sketch.engine->jacket.clear();
    QVERIFY(!setJacketLevels(sketch, 0, 100));
}

void TestEveryKind::anOpenHoseMovesWithItsEnds()
{
    Sketch sketch = oneOfEach();
    const Id open = idOf(sketch.hoses.back());
    QVERIFY(siphonwright::move(sketch, {PartKind::hose, open, 0}, {1, 2, 3}));
    const Hose& hose = *sketch.hoses.back();
    QVERIFY((hose.from.open_at == Vec3{1, 2, 13}));
    QVERIFY((hose.to.open_at == Vec3{301, 2, -17}));
    QVERIFY((hose.points[1].at == Vec3{201, 2, 8}));
    QVERIFY(siphonwright::move(sketch, {PartKind::hose_end, open, 1}, {0, 0, 7}));
    QVERIFY((sketch.hoses.back()->to.open_at == Vec3{301, 2, -10}));
}

void TestEveryKind::anAreaTakesItsDepthWithItAndItsCornersDoNot()
{
    Sketch sketch = oneOfEach();
    QVERIFY(siphonwright::move(sketch, {PartKind::area, "area-1", 0}, {1, 100, 2}));
    QCOMPARE(sketch.areas[0]->y_from_mm.value_or(0), 105.0);
    QCOMPARE(sketch.areas[0]->y_to_mm.value_or(0), 115.0);
    QVERIFY(siphonwright::move(sketch, {PartKind::area_corner, "area-1", 2}, {1, 100, 2}));
    QCOMPARE(sketch.areas[0]->y_to_mm.value_or(0), 115.0);
    QCOMPARE(sketch.areas[0]->outline[2], (Vec2{52, 84}));
    sketch.areas[0].edit([](Area& area) { area.y_from_mm = area.y_to_mm = std::nullopt; });
    QVERIFY(siphonwright::move(sketch, {PartKind::area, "area-1", 0}, {0, 100, 0}));
    QVERIFY(!sketch.areas[0]->y_from_mm && !sketch.areas[0]->y_to_mm); // over the whole width it stays
}

void TestEveryKind::boxesGoRoundWhatMoves()
{
    Sketch sketch = oneOfEach();
    const Id open = idOf(sketch.hoses.back());
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::engine, "", 0}), {-50, 350}, {950, 850}));
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::jacket, "", 0}), {0, 400}, {900, 800}));
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::area, "area-1", 0}), {10, 20}, {50, 80}));
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::tank, "", 0}), {200, 900}, {200, 900}));
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::hose, open, 0}), {0, -20}, {300, 40}));
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::hose_end, open, 1}), {300, -20}, {300, -20}));
    // Upright, its length up and down; lying on its side, along x.
    Heater& heater = sketch.heaters[0];
    heater.position = {1000, 0, 100};
    heater.diameter_mm = 80;
    heater.length_mm = 300;
    heater.tilt_deg = 0;
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::heater, heater.id, 0}), {960, -50}, {1040, 250}));
    heater.tilt_deg = 90;
    QVERIFY(isBox(boxOf(sketch, PartRef{PartKind::heater, heater.id, 0}), {850, 60}, {1150, 140}));
    const std::vector<PartRef> two{{PartKind::tank, "", 0}, {PartKind::area, "area-1", 0}};
    QVERIFY(isBox(boxOf(sketch, two), {10, 20}, {200, 900}));
}

void TestEveryKind::whatHasNoBoxIsNotLinedUp()
{
    Sketch sketch = oneOfEach();
    const Id supply = idOf(sketch.hoses[supply_hose]);
    const std::vector<PartRef> parts{
        {PartKind::inline_part, supply, 0}, {PartKind::clip, supply, 0},
        {PartKind::ground, "", 0},          {PartKind::photo, "", 0},
        {PartKind::hose_end, supply, 0},    {PartKind::dimension, "dimension-1", 0},
        {PartKind::heater, "heater-9", 0}};
    for (const PartRef& part : parts)
        QVERIFY(!boxOf(sketch, part));
    QVERIFY(!boxOf(sketch, parts));
    const Sketch before = sketch;
    for (const Alignment alignment : {Alignment::left, Alignment::right, Alignment::top, Alignment::bottom,
                                      Alignment::middle_x, Alignment::middle_z})
        QVERIFY(!align(sketch, parts, alignment));
    // One alone is in line with itself.
    QVERIFY(!align(sketch, {{PartKind::tank, "", 0}}, Alignment::right));
    QVERIFY(!distribute(sketch, parts, SpreadAlong::x));
    QVERIFY(sketch == before);
}

void TestEveryKind::whatRidesOnAnotherIsRemovedOnce()
{
    Sketch sketch = oneOfEach();
    const Id open = idOf(sketch.hoses.back());
    const std::vector<PartRef> parts{{PartKind::jacket, "", 0},
                                     {PartKind::jacket_corner, "", 0},
                                     {PartKind::engine_corner, "", 0},
                                     {PartKind::thermostat, "", 0},
                                     {PartKind::port, sketch.ports[0].id, 0},
                                     {PartKind::engine, "", 0},
                                     {PartKind::area, "area-1", 0},
                                     {PartKind::area_corner, "area-1", 1},
                                     {PartKind::hose_point, open, 0},
                                     {PartKind::hose_end, open, 1},
                                     {PartKind::hose, open, 0},
                                     {PartKind::hose, open, 0}};
    const std::vector<PartRef> wholes{
        {PartKind::engine, "", 0}, {PartKind::area, "area-1", 0}, {PartKind::hose, open, 0}};
    QVERIFY(withoutRiders(sketch, parts) == wholes);
    QVERIFY(siphonwright::remove(sketch, parts));
    QVERIFY(!sketch.engine && sketch.ports.empty() && sketch.areas.empty());
    QCOMPARE(sketch.hoses.size(), std::size_t{2});
    QVERIFY(!siphonwright::remove(sketch, parts));
}

void TestEveryKind::cornersPointsAndClipsStandForTheirWhole()
{
    const Sketch sketch = oneOfEach();
    const Id supply = idOf(sketch.hoses[supply_hose]);
    const Sketch engine = copyOf(sketch, {{PartKind::engine, "", 0}});
    QVERIFY(engine.engine == sketch.engine && engine.ports == sketch.ports);
    for (const PartKind kind :
         {PartKind::engine_corner, PartKind::jacket, PartKind::jacket_corner, PartKind::thermostat})
        QVERIFY(copyOf(sketch, {{kind, "", 0}}) == engine);
    const Sketch area = copyOf(sketch, {{PartKind::area_corner, "area-1", 2}});
    QCOMPARE(area.areas.size(), std::size_t{1});
    QVERIFY(*area.areas[0] == *sketch.areas[0]);
    const Sketch hose = copyOf(sketch, {{PartKind::hose, supply, 0}});
    for (const PartKind kind : {PartKind::inline_part, PartKind::clip, PartKind::hose_end})
        QVERIFY(copyOf(sketch, {{kind, supply, 0}}) == hose);
    QVERIFY(copyOf(sketch, {{PartKind::tank, "", 0}}).tank == sketch.tank);
}

void TestEveryKind::pastedAreasAndTanksAreTheirOwn()
{
    Sketch sketch = oneOfEach();
    const Sketch copied = copyOf(sketch, {{PartKind::area, "area-1", 0}, {PartKind::tank, "", 0}});
    const Pasted again = paste(sketch, copied, {5, 0, 0});
    QVERIFY(again.tank_left_out && !again.engine_left_out);
    QCOMPARE(again.parts.size(), std::size_t{1});
    QCOMPARE(sketch.areas.size(), std::size_t{2});
    QCOMPARE(sketch.areas[1]->name, std::string("Exhaust 2"));
    QCOMPARE(sketch.areas[1]->outline[0], (Vec2{15, 20}));
    Sketch other;
    const Pasted there = paste(other, copied, {0, 0, 10});
    QVERIFY(!there.tank_left_out);
    QCOMPARE(there.parts.size(), std::size_t{2});
    QVERIFY((other.tank->position == Vec3{200, 0, 910}));
    QCOMPARE(other.areas[0]->name, std::string("Exhaust"));
}

void TestEveryKind::aCopyOfAnythingIsPutBesideWhatIsThere()
{
    const Sketch sketch = oneOfEach();
    for (const PartRef& part : wholesOf(sketch)) {
        if (part.kind == PartKind::engine || part.kind == PartKind::tank)
            continue; // there is never a second one
        const Sketch copied = copyOf(sketch, {part});
        const Vec3 delta = besideOthers(sketch, copied);
        QVERIFY2((delta == Vec3{50, 0, -50}), QByteArray::number(static_cast<int>(part.kind)));
        QVERIFY((besideOthers(Sketch(), copied) == Vec3{}));
        Sketch more = sketch;
        paste(more, copied, delta);
        QVERIFY((besideOthers(more, copied) == Vec3{100, 0, -100}));
    }
}

QTEST_APPLESS_MAIN(TestEveryKind)
#include "test_every_kind.moc"
