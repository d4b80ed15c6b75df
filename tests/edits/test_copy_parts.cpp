#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/sketch/copy_parts.h"
#include "core/sketch/edits.h"
#include "core/sketch/file.h"

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const PartRef copied_engine{PartKind::engine, {}, 0};
const PartRef copied_heater{PartKind::heater, "heater-1", 0};
const PartRef copied_return{PartKind::hose, "hose-2", 0};

Sketch named()
{
    Sketch sketch = soundLoop();
    sketch.heaters[0].name = "Heater";
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.name = "Return hose"; });
    return sketch;
}

} // namespace

class TestCopyParts : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aHoseKeepsItsEndOnAHeaterCopiedAlong();
    void anEndOnWhatIsNotCopiedLiesOpenWhereItWas();
    void partsOfAHoseStandForIt();
    void pastedPartsHaveFreshIdsAndNames();
    void aDrawingOfAnotherKeepsTheNames();
    void aSecondEngineIsLeftOutWithItsIdlePorts();
    void anEnginePastesWhereThereIsNone();
    void aPastedWholeLoopIsSound();
    void aCopyIsAReadableSketch();
    void eachCopyLiesBesideTheOthers();
};

void TestCopyParts::aHoseKeepsItsEndOnAHeaterCopiedAlong()
{
    Sketch sketch = named();
    const Pasted pasted = paste(sketch, copyOf(sketch, {copied_heater, copied_return}), {100, 0, -50});
    QCOMPARE(pasted.parts.size(), std::size_t(2));
    QCOMPARE(sketch.heaters.size(), std::size_t(2));
    QCOMPARE(sketch.hoses.size(), std::size_t(3));
    const Hose& hose = *sketch.hoses.back();
    QCOMPARE(hose.from.heater, sketch.heaters[1].id);
    QVERIFY((sketch.heaters[1].position == Vec3{1130, 0, 30}));
    QVERIFY((hose.points[0].at == Vec3{1130, 0, 640}));
    // The return port was not copied: the stop in it was at x 830, z 700.
    QVERIFY(!hose.to.connected());
    VERIFY_NEAR(hose.to.open_at.x, 930, 1e-9);
    VERIFY_NEAR(hose.to.open_at.z, 650, 1e-9);
}

void TestCopyParts::anEndOnWhatIsNotCopiedLiesOpenWhereItWas()
{
    const Sketch copied = copyOf(named(), {copied_return});
    QCOMPARE(copied.hoses.size(), std::size_t(1));
    QVERIFY(copied.heaters.empty() && copied.ports.empty() && !copied.engine);
    const Hose& hose = *copied.hoses[0];
    // The outlet's stop at x 1030, z 260.
    QVERIFY(!hose.from.connected());
    VERIFY_NEAR(hose.from.open_at.x, 1030, 1e-9);
    VERIFY_NEAR(hose.from.open_at.z, 260, 1e-9);
}

void TestCopyParts::partsOfAHoseStandForIt()
{
    const Sketch sketch = named();
    QVERIFY(copyOf(sketch, {{PartKind::hose_point, "hose-2", 0}, {PartKind::hose_end, "hose-2", 1}}) ==
            copyOf(sketch, {copied_return}));
    QVERIFY(copyOf(sketch, {{PartKind::ground, {}, 0}}) == copyOf(sketch, {}));
}

void TestCopyParts::pastedPartsHaveFreshIdsAndNames()
{
    Sketch sketch = named();
    sketch.heaters[0].serial_number = "H-0471";
    const Sketch copied = copyOf(sketch, {copied_heater, copied_return});
    paste(sketch, copied, {100, 0, 0});
    QCOMPARE(sketch.heaters[0].serial_number, std::string("H-0471"));
    QCOMPARE(sketch.heaters[1].serial_number, std::string());
    paste(sketch, copied, {200, 0, 0});
    QCOMPARE(sketch.heaters[1].name, std::string("Heater 2"));
    QCOMPARE(sketch.heaters[2].name, std::string("Heater 3"));
    QCOMPARE(sketch.hoses[3]->name, std::string("Return hose 3"));
    // A copy of a copy counts on, and does not become "Heater 2 2".
    paste(sketch, copyOf(sketch, {{PartKind::heater, sketch.heaters[1].id, 0}}), {300, 0, 0});
    QCOMPARE(sketch.heaters[3].name, std::string("Heater 4"));
    QVERIFY(problemsIn(sketch).empty());
}

void TestCopyParts::aDrawingOfAnotherKeepsTheNames()
{
    Sketch other;
    paste(other, copyOf(named(), {copied_heater, copied_return}), {});
    QCOMPARE(other.heaters[0].name, std::string("Heater"));
    QCOMPARE(other.hoses[0]->name, std::string("Return hose"));
}

void TestCopyParts::aSecondEngineIsLeftOutWithItsIdlePorts()
{
    Sketch sketch = named();
    const Pasted alone = paste(sketch, copyOf(sketch, {copied_engine}), {10, 0, 0});
    QVERIFY(alone.engine_left_out);
    QVERIFY(alone.parts.empty());
    QVERIFY(sketch == named());
    const Pasted with_hose = paste(sketch, copyOf(sketch, {copied_engine, copied_return}), {10, 0, 0});
    // The return port, and the hose on it.
    QCOMPARE(with_hose.parts.size(), std::size_t(2));
    QCOMPARE(sketch.ports.size(), std::size_t(3));
    QCOMPARE(sketch.hoses.back()->to.port, sketch.ports[2].id);
}

void TestCopyParts::anEnginePastesWhereThereIsNone()
{
    Sketch other;
    const Pasted pasted =
        paste(other, copyOf(named(), {copied_engine, {PartKind::tank, {}, 0}}), {0, 0, 100});
    QVERIFY(!pasted.engine_left_out && !pasted.tank_left_out);
    QCOMPARE(other.ports.size(), std::size_t(2));
    QCOMPARE(other.ports[0].position.z, 540.0);
    QCOMPARE(*other.tank->cold_min_mm.value, 950.0);
    QVERIFY(problemsIn(other).empty());
}

void TestCopyParts::aPastedWholeLoopIsSound()
{
    const Sketch sketch = named();
    Sketch other;
    paste(other, copyOf(sketch, wholesOf(sketch)), {});
    QVERIFY(other.engine == sketch.engine && other.tank == sketch.tank);
    QVERIFY(other.heaters == sketch.heaters && other.hoses == sketch.hoses);
    QCOMPARE(other.ports.size(), sketch.ports.size());
}

void TestCopyParts::aCopyIsAReadableSketch()
{
    const Sketch copied = copyOf(named(), {copied_heater, copied_return});
    const auto text = writeSketch(copied);
    QVERIFY(std::holds_alternative<std::string>(text));
    const auto read = readSketch(std::get<std::string>(text));
    QVERIFY(std::holds_alternative<Sketch>(read));
    QVERIFY(std::get<Sketch>(read) == copied);
}

void TestCopyParts::eachCopyLiesBesideTheOthers()
{
    Sketch sketch = named();
    const Sketch copied = copyOf(sketch, {copied_heater, copied_return});
    QVERIFY((besideOthers(Sketch(), copied) == Vec3{}));
    QVERIFY((besideOthers(sketch, copied) == Vec3{50, 0, -50}));
    paste(sketch, copied, besideOthers(sketch, copied));
    QVERIFY((besideOthers(sketch, copied) == Vec3{100, 0, -100}));
}

QTEST_APPLESS_MAIN(TestCopyParts)
#include "test_copy_parts.moc"
