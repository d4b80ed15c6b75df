#include "tests/near.h"
#include "tests/read_sample.h"

#include "core/analysis/analysis.h"
#include "core/running/narrowing.h"
#include "core/sketch/edits.h"
#include "core/sketch/file.h"

#include <QDir>
#include <QFile>
#include <QTest>

#include <algorithm>

using namespace siphonwright;
using siphonwright::test::sampleOf;

namespace {

struct Air {
    Layout layout;
    Running running;
    Filling filling;
};

Air airOf(const Sketch& sketch, Grade grade = {})
{
    Air out;
    const Assumptions assumed(sketch);
    out.layout = resolve(sketch, plumbOf(sketch, grade));
    out.running = runSteady(sketch, out.layout, assumed);
    out.filling = fillOf(sketch, out.layout, &out.running, assumed);
    passAir(out.running, sketch, out.layout, out.filling);
    return out;
}

double closedIn(const Filling& filling, const Id& hose)
{
    double sum = 0;
    for (const PocketFound& pocket : filling.pockets)
        if (pocket.hose == hose && pocket.closes_bore)
            sum += pocket.volume_ml;
    return sum;
}

void rows(std::initializer_list<const char*> names)
{
    QTest::addColumn<QString>("name");
    for (const char* name : names)
        QTest::newRow(name) << QString::fromLatin1(name);
}

} // namespace

class TestAirOfSamples : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aSoundSampleKeepsNoAirThatCloses_data()
    {
        rows({"sound-bus", "vee-crossing", "generator-two-heaters", "air-lock-lesson-3"});
    }
    void aSoundSampleKeepsNoAirThatCloses();
    void everySampleFillsUnderVacuumAndFromBelowOnAnyGrade();
    void aBrokenSampleIsAirLocked_data()
    {
        rows({"supply-hump", "above-level", "air-lock-lesson-1", "air-lock-lesson-2", "air-lock-fault-1",
              "air-lock-fault-3", "clear-tube-rig"});
    }
    void aBrokenSampleIsAirLocked();
    void lessonsGetBetterFromOneToTheNext();
    void aDragShowsTheSameAirWithTablesKeptAsWithout();
    void theTrapOfAVehicleParkedNoseDownIsFoundWithItsGrade();
    void aBlockThatIsAllButEmptyLeavesTheElementBare();
    void aTeeInTheLowerHoseRunsBackward();
    void theColdestLevelFallsAsTheDensitySays();
    void halfABoreIsHalfOpen();
    void theLossPastANarrowedBoreIsAsWorkedByHand();
};

void TestAirOfSamples::aSoundSampleKeepsNoAirThatCloses()
{
    QFETCH(const QString, name);
    const Air air = airOf(sampleOf(name));
    QVERIFY(air.filling.missing.empty());
    for (const PocketFound& pocket : air.filling.pockets)
        QVERIFY2(!pocket.closes_bore && pocket.volume_ml < 2, pocket.hose.c_str());
    for (const LoopRun& run : air.running.loops)
        QVERIFY(run.circulation.status == CirculationStatus::circulates);
}

void TestAirOfSamples::aBrokenSampleIsAirLocked()
{
    QFETCH(const QString, name);
    const Air air = airOf(sampleOf(name));
    const LoopRun& run = air.running.loops.at(0);
    QVERIFY(air.filling.closedBore(run.heater));
    QVERIFY(run.without_air && run.without_air->status == CirculationStatus::circulates);
    QVERIFY(run.circulation.status == CirculationStatus::stalled);
}

void TestAirOfSamples::lessonsGetBetterFromOneToTheNext()
{
    const Filling first = airOf(sampleOf(QStringLiteral("air-lock-lesson-1"))).filling;
    const Filling second = airOf(sampleOf(QStringLiteral("air-lock-lesson-2"))).filling;
    const Filling third = airOf(sampleOf(QStringLiteral("air-lock-lesson-3"))).filling;
    // What the trainer's page says: 105, 156 and 85 ml.
    VERIFY_NEAR(closedIn(first, "hose-1"), 105, 1);
    VERIFY_NEAR(closedIn(first, "hose-2"), 156, 1);
    VERIFY_NEAR(closedIn(second, "hose-1"), 0, 1e-9);
    VERIFY_NEAR(closedIn(second, "hose-2"), 85, 1);
    VERIFY_NEAR(closedIn(third, "hose-2"), 0, 1e-9);
}

void TestAirOfSamples::theTrapOfAVehicleParkedNoseDownIsFoundWithItsGrade()
{
    const Sketch sketch = sampleOf(QStringLiteral("air-lock-fault-2"));
    VERIFY_NEAR(closedIn(airOf(sketch).filling, "hose-1"), 0, 1e-9);
    QVERIFY(closedIn(airOf(sketch, {-12, 0}).filling, "hose-1") > 10);
    ProofOptions options;
    options.bands = false;
    const Analysis analysis = proved(sketch, options);
    QVERIFY(!analysis.stopped());
    const auto hump = std::find_if(analysis.findings.begin(), analysis.findings.end(),
                                   [](const Finding& one) { return one.rule == "supply-high-point"; });
    QVERIFY(hump != analysis.findings.end() && hump->only_on_grade);
    // The trainer's page says 8.8 % nose-down.
    VERIFY_NEAR(hump->only_on_grade->along_percent, -8.8, 0.1);
}

void TestAirOfSamples::aBlockThatIsAllButEmptyLeavesTheElementBare()
{
    Sketch sketch = sampleOf(QStringLiteral("air-lock-lesson-3"));
    QVERIFY(airOf(sketch).filling.loops.at(0).element_covered);
    // 14 l in the jacket and some over it: 23 l less than full reach no port at all.
    sketch.fill.short_by_ml = 23000;
    const Filling filling = airOf(sketch).filling;
    QVERIFY(filling.missing.empty());
    QVERIFY(!filling.loops.at(0).element_covered);
    QVERIFY(filling.loops.at(0).chamber_gas_ml > 900); // of 1032 ml
}

void TestAirOfSamples::aTeeInTheLowerHoseRunsBackward()
{
    const Filling tee = airOf(sampleOf(QStringLiteral("air-lock-fault-3"))).filling;
    QVERIFY(tee.loops.at(0).running.sense == FlowSense::reverse);
    QVERIFY(tee.loops.at(0).bypasses_radiator);
    QVERIFY(tee.loops.at(0).running.flow_l_per_min > 1);
    const Filling block = airOf(sampleOf(QStringLiteral("air-lock-lesson-1"))).filling;
    QVERIFY(block.loops.at(0).running.sense == FlowSense::forward);
    QVERIFY(!block.loops.at(0).bypasses_radiator);
}

void TestAirOfSamples::theColdestLevelFallsAsTheDensitySays()
{
    const Sketch sketch = sampleOf(QStringLiteral("air-lock-lesson-3"));
    const Air air = airOf(sketch);
    const Assumptions assumed(sketch);
    const CoolantOf coolant = coolantOf(sketch, assumed);
    QVERIFY(coolant.fluid.has_value());
    // All of it shrinks: the jacket's 14 l, what stands over it up to the level, hoses and chamber. What is
    // then missing is missing over the jacket, where so many millilitres stand to the millimetre.
    const double over_ml_per_mm = std::max(1.0, assumed[Assumed::tank_per_metre] * 14);
    const double over_ml = (air.filling.level_mm - air.layout.jacket->highest_mm) * over_ml_per_mm;
    const double all_ml = 14000 + over_ml + air.filling.coolant_ml;
    const double share = coolant.fluid->at(20).density_kg_per_m3 / coolant.fluid->at(-25).density_kg_per_m3;
    const double fall_mm = all_ml * (1 - share) / over_ml_per_mm;
    QVERIFY(fall_mm > 5);
    VERIFY_NEAR(air.filling.level_mm - air.filling.coldest_level_mm, fall_mm, 0.02 * fall_mm);
}

void TestAirOfSamples::halfABoreIsHalfOpen()
{
    VERIFY_NEAR(openShare(19.05, 19.05 / 2), 0.5, 1e-12);
    VERIFY_NEAR(openShare(19.05, 19.05), 1, 1e-12);
    VERIFY_NEAR(openShare(19.05, 0), 0, 1e-12);
    // A quarter of the diameter: (acos(1/2) - 1/2 sqrt(3)/2) / pi = (1.047198 - 0.433013) / 3.141593.
    VERIFY_NEAR(openShare(20, 5), 0.195501, 1e-6);
}

void TestAirOfSamples::theLossPastANarrowedBoreIsAsWorkedByHand()
{
    // 20 mm bore, 314.159e-6 m2; 0.0314159 kg/s at 1000 kg/m3: 0.1 m/s, through half of it 0.2 m/s.
    // (0.2 - 0.1)^2 + 0.5 x 0.5 x 0.2^2 = 0.02 m2/s2; over 2 x 9.80665: 1.01972e-3 m.
    VERIFY_NEAR(narrowingHead_mm(20, 0.5, 0.0314159265, 1000), 1.01972, 1e-4);
    VERIFY_NEAR(narrowingHead_mm(20, 1, 0.0314159265, 1000), 0, 1e-12);
    VERIFY_NEAR(narrowingHead_mm(20, 0.5, 0, 1000), 0, 1e-12);
}

void TestAirOfSamples::aDragShowsTheSameAirWithTablesKeptAsWithout()
{
    const QDir folder(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    std::size_t again = 0;
    for (const QString& file : folder.entryList({QStringLiteral("*.siphon")})) {
        Sketch sketch = sampleOf(file.chopped(7));
        LevelTables kept;
        for (int step = 0; step < 4 && !sketch.heaters.empty(); ++step) {
            const Assumptions assumed(sketch);
            const Layout layout = resolve(sketch, plumbOf(sketch));
            const Filling with = fillOf(sketch, layout, nullptr, assumed, &kept);
            const Filling without = fillOf(sketch, layout, nullptr, assumed);
            QCOMPARE(with.pockets.size(), without.pockets.size());
            for (std::size_t i = 0; i < with.pockets.size(); ++i) {
                QVERIFY(with.pockets[i].volume_ml == without.pockets[i].volume_ml);
                QVERIFY(with.pockets[i].height_mm == without.pockets[i].height_mm);
            }
            QVERIFY(with.coolant_ml == without.coolant_ml && with.top_up_ml == without.top_up_ml);
            QVERIFY(with.coldest_level_mm == without.coldest_level_mm);
            QVERIFY(move(sketch, {PartKind::heater, sketch.heaters.front().id, 0}, {3, 0, -4}));
        }
        again += kept.again();
    }
    QVERIFY(again > 50);
}

/// Under vacuum pressures are nine metres of coolant; levels must still be found to the last digit.
void TestAirOfSamples::everySampleFillsUnderVacuumAndFromBelowOnAnyGrade()
{
    const QDir folder(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    int filled = 0;
    for (const QString& file : folder.entryList({QStringLiteral("*.siphon")})) {
        Sketch sketch = sampleOf(file.chopped(7));
        const Assumptions assumed(sketch);
        for (const FillBy by : {FillBy::vacuum, FillBy::below})
            for (const double along_percent : {-11.0, -5.0, 1.0}) {
                sketch.fill.by = by;
                const Layout layout = resolve(sketch, plumbOf(sketch, {along_percent, 0}));
                const Filling filling = fillOf(sketch, layout, nullptr, assumed);
                QVERIFY2(filling.missing.empty(),
                         qPrintable(file + QString::number(along_percent) + QLatin1Char(' ') +
                                    QString::fromStdString(filling.missing)));
                ++filled;
            }
    }
    QVERIFY(filled >= 60);
}

QTEST_APPLESS_MAIN(TestAirOfSamples)
#include "test_air_of_samples.moc"
