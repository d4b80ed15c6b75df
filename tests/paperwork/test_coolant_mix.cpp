#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/paperwork/coolant_mix.h"
#include "core/physics/coolant.h"

#include <QTest>

#include <numbers>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

CoolantMix mixOf(const Sketch& sketch)
{
    return coolantMixOf(sketch, resolve(sketch, plumbOf(sketch)), Assumptions(sketch));
}

} // namespace

/// Volumes, freezing points and the water of a drawn job.
class TestCoolantMix : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void hosesAndChamberTakeTheirBoreVolumes();
    void theDrawnJobIsMixedAsWanted();
    void theWholeSystemCountsWhereItIsEntered();
    void anEmptyEngineIsFilledAfresh();
    void theKindToAddCanBeEntered();
    void kindsAreNeverMixed();
    void whatWasLetOutIsFilledAgain();
    void freezingPointsAreThoseOfTheTables_data();
    void freezingPointsAreThoseOfTheTables();
    void theMarginIsToTheColdestAmbient();
    void theLeastShareFreezesUnderTheColdestAmbient();
    void whatIsMissingIsNamedAndNothingIsInvented();
    void waterIsHeldAgainstTheLimits_data();
    void waterIsHeldAgainstTheLimits();
    void waterNotEnteredIsNotJudged();
};

void TestCoolantMix::hosesAndChamberTakeTheirBoreVolumes()
{
    const CoolantMix mix = mixOf(soundLoop());
    // Bore 19 mm: 283.53 mm2. Supply: down 410 + 40 - 150, an arc of 235.62, along 960 - 250: 1245.6 mm, stop
    // to stop. Return: straight up 690 - 260 less the bend's take, the arc, and the rest (slant, see the
    // circuit's test): some 567 mm. Chamber 80 mm by 280 mm: 1.4074 l.
    const double section_mm2 = std::numbers::pi / 4 * 19 * 19;
    const double supply_l = section_mm2 * (410 + 40 - 150 + 150 * std::numbers::pi / 2 + 960 - 250) / 1e6;
    VERIFY_NEAR(mix.hoses_l, supply_l + section_mm2 * 567 / 1e6, 0.003);
    VERIFY_NEAR(mix.chambers_l, std::numbers::pi / 4 * 80 * 80 * 280 / 1e6, 1e-9);
    Sketch entered = soundLoop();
    entered.heaters.front().chamber_volume_ml.value = 900;
    VERIFY_NEAR(mixOf(entered).chambers_l, 0.9, 1e-12);
}

void TestCoolantMix::theDrawnJobIsMixedAsWanted()
{
    Sketch sketch = soundLoop(); // 30 l at 50 %
    sketch.coolant_plan.wanted_percent = 55;
    sketch.coolant_plan.drainable_l = 15;
    const CoolantMix mix = mixOf(sketch);
    QCOMPARE(mix.missing, std::string());
    QVERIFY(mix.plan && mix.reached);
    // T = 30 + N; wanted 0.55 T; in it 15; so D = (0.55 T - 15 - N)/0.5.
    const double n = mix.new_l();
    const double drained_l = (0.55 * (30 + n) - 15 - n) / 0.5;
    QVERIFY(drained_l > 0);
    VERIFY_NEAR(mix.plan->drain_l, drained_l, 1e-9);
    VERIFY_NEAR(mix.plan->antifreeze_l, drained_l + n, 1e-9);
    VERIFY_NEAR(mix.reached->percent, 55, 1e-9);
    QVERIFY(!mix.whole_system);
}

void TestCoolantMix::theWholeSystemCountsWhereItIsEntered()
{
    Sketch sketch = soundLoop();
    sketch.coolant_plan.system_l = 44;
    sketch.coolant_plan.wanted_percent = 50;
    const CoolantMix mix = mixOf(sketch);
    QVERIFY(mix.whole_system);
    VERIFY_NEAR(mix.present_l, 44, 0);
    VERIFY_NEAR(mix.plan.value_or(MixPlan{}).filled_l, 44 + mix.new_l(), 1e-12);
}

void TestCoolantMix::anEmptyEngineIsFilledAfresh()
{
    Sketch sketch = soundLoop();
    sketch.fill.start = FillStart::all_empty;
    sketch.coolant_plan.wanted_percent = 40;
    const CoolantMix mix = mixOf(sketch);
    QVERIFY(mix.all_empty && mix.plan && mix.plan->outcome == MixOutcome::fill);
    VERIFY_NEAR(mix.plan->antifreeze_l, 0.4 * (30 + mix.new_l()), 1e-9);
    VERIFY_NEAR(mix.plan->water_l, 0.6 * (30 + mix.new_l()), 1e-9);
}

void TestCoolantMix::theKindToAddCanBeEntered()
{
    Sketch sketch = soundLoop();
    sketch.coolant.glycol = Glycol::none;
    sketch.coolant_plan.wanted_percent = 50;
    // Water in, and nothing said of what to add.
    QVERIFY(mixOf(sketch).plan->outcome == MixOutcome::unreachable);
    QVERIFY(!mixOf(sketch).wanted->freezes_degC);
    sketch.coolant_plan.wanted_glycol = Glycol::propylene;
    const CoolantMix mix = mixOf(sketch);
    QVERIFY(mix.plan->outcome == MixOutcome::drain);
    VERIFY_NEAR(mix.reached->percent, 50, 1e-9);
    VERIFY_NEAR(*mix.wanted->freezes_degC, -33, 1.7); // as in the table below
}

void TestCoolantMix::kindsAreNeverMixed()
{
    Sketch sketch = soundLoop();
    sketch.coolant.glycol = Glycol::ethylene;
    sketch.coolant_plan.wanted_percent = 50;
    sketch.coolant_plan.wanted_glycol = Glycol::propylene;
    QVERIFY(mixOf(sketch).plan->outcome == MixOutcome::unreachable);
    QVERIFY(mixOf(sketch).plan->rounds.empty());
    sketch.coolant.glycol = Glycol::unknown;
    QVERIFY(mixOf(sketch).plan->outcome == MixOutcome::unreachable);
    sketch.fill.start = FillStart::all_empty;
    QVERIFY(mixOf(sketch).plan->outcome == MixOutcome::fill);
}

/// What was let out is filled again with the new hoses: 50 % stays 50 %, whatever goes in is half and half.
void TestCoolantMix::whatWasLetOutIsFilledAgain()
{
    Sketch sketch = soundLoop();
    sketch.fill.start = FillStart::block_drained;
    sketch.fill.drained_l = 12;
    sketch.coolant_plan.wanted_percent = 50;
    const CoolantMix mix = mixOf(sketch);
    VERIFY_NEAR(mix.drained_l, 12, 1e-12);
    QVERIFY(mix.plan && mix.plan->outcome == MixOutcome::fill);
    VERIFY_NEAR(mix.plan->antifreeze_l, 0.5 * (12 + mix.new_l()), 1e-9);
    VERIFY_NEAR(mix.plan->water_l, 0.5 * (12 + mix.new_l()), 1e-9);
    VERIFY_NEAR(mix.plan->filled_l, 30 + mix.new_l(), 1e-9);
}

void TestCoolantMix::freezingPointsAreThoseOfTheTables_data()
{
    QTest::addColumn<Glycol>("glycol");
    QTest::addColumn<double>("percent");
    QTest::addColumn<double>("published_degC");
    // Engine makers' manuals print these for coolant by volume; the fit is good to 1.7 K against such tables.
    QTest::newRow("40 % ethylene") << Glycol::ethylene << 40.0 << -24.0;
    QTest::newRow("50 % ethylene") << Glycol::ethylene << 50.0 << -37.0;
    QTest::newRow("40 % propylene") << Glycol::propylene << 40.0 << -21.0;
    QTest::newRow("50 % propylene") << Glycol::propylene << 50.0 << -33.0;
    QTest::newRow("water") << Glycol::none << 0.0 << 0.0;
}

void TestCoolantMix::freezingPointsAreThoseOfTheTables()
{
    QFETCH(Glycol, glycol);
    QFETCH(double, percent);
    QFETCH(double, published_degC);
    Sketch sketch = soundLoop();
    sketch.coolant.glycol = glycol;
    sketch.coolant.volume_percent.value = percent;
    const CoolantMix mix = mixOf(sketch);
    QVERIFY(mix.present.freezes_degC.has_value());
    VERIFY_NEAR(*mix.present.freezes_degC, published_degC, 1.7);
}

void TestCoolantMix::theMarginIsToTheColdestAmbient()
{
    Sketch sketch = soundLoop(); // coldest -25 degC
    const CoolantMix mix = mixOf(sketch);
    const double freezes_degC = *freezingPoint(CoolantBase::ethylene_glycol, 50);
    VERIFY_NEAR(mix.present.margin_K.value_or(0), -25 - freezes_degC, 1e-12);
    QVERIFY(*mix.present.margin_K > 10); // 50 % holds to some -37 degC
    sketch.site.coldest_ambient_degC.value = -45;
    QVERIFY(mixOf(sketch).present.margin_K.value_or(0) < 0);
    sketch.site.coldest_ambient_degC.value.reset();
    QVERIFY(!mixOf(sketch).present.margin_K);
}

void TestCoolantMix::theLeastShareFreezesUnderTheColdestAmbient()
{
    Sketch sketch = soundLoop();
    for (const double coldest_degC : {-10.0, -25.0, -40.0}) {
        sketch.site.coldest_ambient_degC.value = coldest_degC;
        const std::optional<double> least = mixOf(sketch).least_percent;
        QVERIFY(least.has_value());
        QVERIFY(*freezingPoint(CoolantBase::ethylene_glycol, *least) <= coldest_degC - margin_wanted_K);
        QVERIFY(*freezingPoint(CoolantBase::ethylene_glycol, *least - 1) > coldest_degC - margin_wanted_K);
    }
    sketch.site.coldest_ambient_degC.value = -60;
    QVERIFY(!mixOf(sketch).least_percent);
    QVERIFY(mixOf(sketch).colder_than_60_percent);
}

void TestCoolantMix::whatIsMissingIsNamedAndNothingIsInvented()
{
    Sketch sketch = soundLoop();
    sketch.coolant_plan.wanted_percent = 50;
    sketch.coolant.volume_percent.value.reset();
    CoolantMix mix = mixOf(sketch);
    QCOMPARE(mix.missing, std::string("the share of antifreeze in the coolant is not entered"));
    QVERIFY(!mix.plan && !mix.present.freezes_degC);
    QVERIFY(mix.new_l() > 1); // what the hoses take is known all the same

    sketch = soundLoop();
    QVERIFY(!mixOf(sketch).plan); // nothing is wanted
    sketch.coolant.glycol = Glycol::unknown;
    sketch.coolant_plan.wanted_percent = 55;
    mix = mixOf(sketch);
    QVERIFY(mix.plan && !mix.present.freezes_degC && !mix.present.margin_K && !mix.least_percent);

    sketch = soundLoop();
    sketch.engine->coolant_volume_l.value.reset();
    sketch.engine->displacement_l.value.reset();
    mix = mixOf(sketch);
    QVERIFY(!mix.missing.empty() && mix.missing_of.kind == PartKind::engine);
    sketch = soundLoop();
    sketch.coolant_plan.wanted_percent = 65;
    mix = mixOf(sketch);
    QVERIFY(mix.plan && mix.plan->outcome == MixOutcome::invalid && !mix.reached);
}

void TestCoolantMix::waterIsHeldAgainstTheLimits_data()
{
    QTest::addColumn<int>("row");
    QTest::addColumn<double>("most");
    // TM 5-3895-383-24, table 15 (US Army): chloride 40, sulphate 100, hardness 170, total solids 340 mg/l,
    // acidity pH 5.5 to 9.0.
    QTest::newRow("chloride") << 0 << 40.0;
    QTest::newRow("sulphate") << 1 << 100.0;
    QTest::newRow("hardness") << 2 << 170.0;
    QTest::newRow("total solids") << 3 << 340.0;
    QTest::newRow("pH") << 4 << 9.0;
}

void TestCoolantMix::waterIsHeldAgainstTheLimits()
{
    QFETCH(int, row);
    QFETCH(double, most);
    const auto judged = [row](double value) {
        WaterQuality water;
        std::optional<double>* members[] = {&water.chloride_ppm, &water.sulphate_ppm, &water.hardness_ppm,
                                            &water.solids_ppm, &water.pH};
        *members[row] = value;
        return waterRows(water)[static_cast<std::size_t>(row)].verdict;
    };
    QVERIFY(judged(most) == WaterVerdict::within); // equality passes
    QVERIFY(judged(most * 1.001) == WaterVerdict::outside);
    QVERIFY(judged(row == 4 ? 5.5 : 0) == WaterVerdict::within);
    if (row == 4)
        QVERIFY(judged(5.49) == WaterVerdict::outside);
}

void TestCoolantMix::waterNotEnteredIsNotJudged()
{
    for (const WaterRow& row : waterRows({}))
        QVERIFY(row.verdict == WaterVerdict::not_entered);
    WaterQuality water;
    water.chloride_ppm = 10;
    const auto rows = waterRows(water);
    QVERIFY(rows[0].verdict == WaterVerdict::within);
    QVERIFY(rows[1].verdict == WaterVerdict::not_entered);
}

QTEST_APPLESS_MAIN(TestCoolantMix)
#include "test_coolant_mix.moc"
