#include "tests/near.h"
#include "tests/warm_up/typical_engine.h"
#include "tests/warm_up/warm_up_bands.h"

using namespace siphonwright;
using siphonwright::test::halfGlycol;
using siphonwright::test::TypicalEngine;

/// What the trade knows of such heaters comes out of the computation; none of it is coded in. Outlets of
/// sound installations stay under 82 degC (180 degF) and heaters switch on at most four times an hour (common
/// practice, no published source).
class TestTradeFacts : public QObject {
    Q_OBJECT
private slots:
    void aSoundLayoutStaysCoolAndCyclesSeldom_data();
    void aSoundLayoutStaysCoolAndCyclesSeldom();
    void portsTooCloseCycleAndLeaveTheEngineCold();
    void aSmallHoseOnAWarmEngineOverheats();
    void aNarrowedBoreOverheatsAndCycles();
    void aBlockedBoreStarvesTheEngine();
    void whatDrivesTheFlowIsItsLosses();
    void variedInputsAreTheInputsAtTheirDefaults();
};

namespace {

constexpr double hottest_degC = 82;
constexpr double most_cycles_per_hour = 4;

WarmUpInputs withThermostat(const TypicalEngine& engine, double on_degC, double off_degC)
{
    WarmUpInputs inputs = test::typicalWarmUp(engine);
    inputs.loops[0].heater.thermostat.on_degC = on_degC;
    inputs.loops[0].heater.thermostat.off_degC = off_degC;
    return inputs;
}

Bands bandsFor(const WarmUpInputs& inputs, std::size_t samples = 100)
{
    BandOptions options;
    options.samples = samples;
    return warmUpBands(inputs, halfGlycol(), warmUpAssumptions(), {}, options);
}

const Band& band(const Bands& bands, WarmUpOutput which)
{
    return bands.outputs[static_cast<std::size_t>(which)];
}

} // namespace

void TestTradeFacts::aSoundLayoutStaysCoolAndCyclesSeldom_data()
{
    QTest::addColumn<double>("air_degC");
    QTest::newRow("at -20") << -20.0;
    QTest::newRow("at 0") << 0.0;
}

void TestTradeFacts::aSoundLayoutStaysCoolAndCyclesSeldom()
{
    QFETCH(double, air_degC);
    TypicalEngine engine;
    engine.air_degC = engine.start_degC = air_degC;
    const Bands bands = bandsFor(withThermostat(engine, 38, 60));
    QCOMPARE(bands.status, BandStatus::done);
    QVERIFY(band(bands, WarmUpOutput::peak_outlet_degC).p95 < hottest_degC);
    QVERIFY(band(bands, WarmUpOutput::cycles_per_hour).p95 <= most_cycles_per_hour);
    // And it does warm the engine, and the return is warm within minutes.
    QVERIFY(band(bands, WarmUpOutput::block_at_end_degC).p5 > air_degC + 30);
    QVERIFY(band(bands, WarmUpOutput::return_warm_s).p95 < 10 * 60);
}

void TestTradeFacts::portsTooCloseCycleAndLeaveTheEngineCold()
{
    TypicalEngine engine;
    engine.port_distance_mm = 100;
    engine.low_port_m = engine.high_port_m - 0.1;
    const Bands close = bandsFor(withThermostat(engine, 38, 49), 40);
    const Bands sound = bandsFor(withThermostat({}, 38, 49), 40);
    QVERIFY(band(close, WarmUpOutput::cycles_per_hour).p5 > most_cycles_per_hour);
    QVERIFY(band(close, WarmUpOutput::block_at_end_degC).p95 <
            band(sound, WarmUpOutput::block_at_end_degC).p5);
}

void TestTradeFacts::aSmallHoseOnAWarmEngineOverheats()
{
    TypicalEngine engine;
    engine.bore_m = 0.0159; // 5/8 in
    engine.nipple_m = 0.012;
    engine.air_degC = 0;
    engine.start_degC = 60;
    const Bands bands = bandsFor(withThermostat(engine, 60, 71), 40);
    QVERIFY(band(bands, WarmUpOutput::peak_outlet_degC).p5 > hottest_degC);
}

void TestTradeFacts::aNarrowedBoreOverheatsAndCycles()
{
    TypicalEngine engine;
    engine.nipple_m = 0.008; // gasket or burr in a 3/4 in hose's ends
    engine.air_degC = engine.start_degC = 0;
    const Bands bands = bandsFor(withThermostat(engine, 38, 60), 40);
    QVERIFY(band(bands, WarmUpOutput::peak_outlet_degC).p5 > hottest_degC);
    QVERIFY(band(bands, WarmUpOutput::cycles_per_hour).p50 > most_cycles_per_hour);
}

void TestTradeFacts::aBlockedBoreStarvesTheEngine()
{
    TypicalEngine engine;
    engine.shut = true;
    const Bands bands = bandsFor(withThermostat(engine, 38, 60), 40);
    QVERIFY(band(bands, WarmUpOutput::block_at_end_degC).p95 < -19.9);
    QCOMPARE(band(bands, WarmUpOutput::return_warm_s).samples, 0u);
}

void TestTradeFacts::whatDrivesTheFlowIsItsLosses()
{
    const Bands bands = bandsFor(withThermostat({}, 38, 60), 60);
    const Driver& first = band(bands, WarmUpOutput::most_flow_kg_per_s).drivers[0];
    QCOMPARE(first.assumption, static_cast<std::size_t>(WarmUpAssumption::pressure_loss));
    QVERIFY(first.rank_correlation < -0.5);
    // Losses within 0.75 to 1.35 put some 15 % on the flow, more or less.
    const Band& flow = band(bands, WarmUpOutput::most_flow_kg_per_s);
    QVERIFY(flow.p5 > 0.8 * flow.p50 && flow.p95 < 1.2 * flow.p50);
}

void TestTradeFacts::variedInputsAreTheInputsAtTheirDefaults()
{
    const WarmUpInputs inputs = withThermostat({}, 38, 60);
    std::vector<double> defaults;
    for (const UncertainFigure& assumption : warmUpAssumptions()) {
        defaults.push_back(assumption.likely);
        QVERIFY(!assumption.basis.empty());
        QVERIFY(assumption.low < assumption.likely && assumption.likely < assumption.high);
    }
    QCOMPARE(defaults.size(), static_cast<std::size_t>(WarmUpAssumption::count));
    const WarmUp plain = warmUp(inputs, halfGlycol());
    const WarmUp same = warmUp(varied(inputs, defaults), halfGlycol());
    QVERIFY(plain.block_at_end_degC == same.block_at_end_degC);
    for (std::size_t i = 0; i < defaults.size(); ++i) {
        if (i == static_cast<std::size_t>(WarmUpAssumption::viscosity))
            break; // those from here on are the liquid's
        std::vector<double> one = defaults;
        one[i] = warmUpAssumptions()[i].high;
        QVERIFY2(warmUp(varied(inputs, one), halfGlycol()).lost_J != plain.lost_J,
                 warmUpAssumptions()[i].name.c_str());
    }
    const GlycolWater fluid = halfGlycol();
    const FactoredFluid thick(fluid, 1.1, 1.05, 1.02);
    VERIFY_NEAR(thick.at(60).viscosity_Pa_s, 1.1 * fluid.at(60).viscosity_Pa_s, 1e-12);
    VERIFY_NEAR(thick.at(60).specific_heat_J_per_kg_K, 1.02 * fluid.at(60).specific_heat_J_per_kg_K, 1e-9);
    VERIFY_NEAR(thick.at(20).density_kg_per_m3, fluid.at(20).density_kg_per_m3, 1e-9);
    VERIFY_NEAR(thick.at(20).density_kg_per_m3 - thick.at(60).density_kg_per_m3,
                1.05 * (fluid.at(20).density_kg_per_m3 - fluid.at(60).density_kg_per_m3), 1e-9);
}

QTEST_APPLESS_MAIN(TestTradeFacts)
#include "test_trade_facts.moc"
