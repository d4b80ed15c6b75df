#include "tests/near.h"
#include "tests/warm_up/cvode_day.h"
#include "tests/warm_up/typical_engine.h"

using namespace siphonwright;
using siphonwright::test::cvodeDay;
using siphonwright::test::CvodeDay;
using siphonwright::test::halfGlycol;
using siphonwright::test::TypicalEngine;

/// Days with cycling, against an integrator that shares nothing with ours but the equations.
class TestWarmUpCvode : public QObject {
    Q_OBJECT
private slots:
    void aDayEndsAsCvodeHasIt_data();
    void aDayEndsAsCvodeHasIt();
};

void TestWarmUpCvode::aDayEndsAsCvodeHasIt_data()
{
    QTest::addColumn<TypicalEngine>("engine");
    TypicalEngine engine;
    QTest::newRow("sound at -20") << engine;
    engine.air_degC = engine.start_degC = 0;
    QTest::newRow("sound at 0") << engine;
    engine.port_distance_mm = 100;
    QTest::newRow("ports close at 0") << engine;
    engine = {};
    engine.port_distance_mm = 100;
    engine.low_port_m = 0.65;
    QTest::newRow("ports close, both high, at -20") << engine;
    engine = {};
    engine.shut = true;
    QTest::newRow("blocked at -20") << engine;
    engine = {};
    engine.bore_m = 0.0254;
    engine.nipple_m = 0.019;
    engine.air_degC = engine.start_degC = 10;
    QTest::newRow("1 in at 10") << engine;
}

void TestWarmUpCvode::aDayEndsAsCvodeHasIt()
{
    QFETCH(TypicalEngine, engine);
    const WarmUpInputs inputs = test::typicalWarmUp(engine);
    const WarmUp ours = warmUp(inputs, halfGlycol());
    const CvodeDay theirs = cvodeDay(inputs, halfGlycol(), 1e-10, 1e-9);
    QVERIFY(theirs.worked);
    QVERIFY(theirs.switches_s.size() > 10);
    const std::vector<HeaterSwitch>& switches = ours.loops[0].switches; // with power on at 0
    QCOMPARE(switches.size(), theirs.switches_s.size() + 1);
    VERIFY_NEAR(switches[1].time_s, theirs.switches_s.front(), 0.1);
    VERIFY_NEAR(switches.back().time_s, theirs.switches_s.back(), 2);
    VERIFY_NEAR(*ours.loops[0].peak_outlet_degC, theirs.peak_outlet_degC, 0.05);
    VERIFY_NEAR(ours.block_at_end_degC, theirs.block_at_end_degC, 0.02);
    qInfo("first %.4f s, last %.4f s, peak %.2g K", switches[1].time_s - theirs.switches_s.front(),
          switches.back().time_s - theirs.switches_s.back(),
          *ours.loops[0].peak_outlet_degC - theirs.peak_outlet_degC);
}

QTEST_APPLESS_MAIN(TestWarmUpCvode)
#include "test_warm_up_cvode.moc"
