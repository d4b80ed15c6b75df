#include "tests/near.h"
#include "tests/warm_up/typical_engine.h"

#include "core/physics/circulation.h"
#include "core/physics/warm_up.h"

#include <cmath>
#include <limits>

using namespace siphonwright;
using siphonwright::test::halfGlycol;
using siphonwright::test::TypicalEngine;
using siphonwright::test::typicalWarmUp;

namespace {

WarmUp run(const TypicalEngine& engine, const WarmUpOptions& options = {})
{
    return warmUp(typicalWarmUp(engine), halfGlycol(), options);
}

/// Heater that is on as long as it has power.
WarmUpInputs alwaysOn(const TypicalEngine& engine)
{
    WarmUpInputs inputs = typicalWarmUp(engine);
    inputs.loops[0].heater.thermostat.place = ThermostatPlace::none;
    return inputs;
}

/// The loop in the order in which steadyCirculation() takes it, its jacket giving heat to metal of the
/// temperature that the warm-up ended with.
Loop steadyLoop(const WarmUpInputs& inputs, double swept_degC)
{
    const WarmUpLoop& in = inputs.loops[0];
    Loop loop;
    for (const auto* part : {&in.chamber, &in.return_hose, &in.jacket, &in.supply_hose})
        loop.elements.insert(loop.elements.end(), part->begin(), part->end());
    loop.elements[0].heat.power_W = in.heater.power_W();
    for (LoopElement& element : loop.elements)
        element.heat.surroundings_degC = inputs.air_degC;
    loop.elements[in.chamber.size() + in.return_hose.size()].heat.surroundings_degC = swept_degC;
    return loop;
}

} // namespace

class TestWarmUp : public QObject {
    Q_OBJECT
private slots:
    void theLongTimeLimitIsTheSteadySolvers_data();
    void theLongTimeLimitIsTheSteadySolvers();
    void aLoopThatRunsInReverseEndsAsTheSteadySolverHasIt();
    void energyBalancesInEveryRun_data();
    void energyBalancesInEveryRun();
    void aLumpedEngineWarmsAsTheClosedFormSays();
    void moreCellsChangeLittle();
    void powerGoesWithTheSquareOfVoltage();
    void windCoolsTheEngine();
    void theTargetTimeIsWhenTheSeriesCrossesIt();
    void aStalledChamberStillTripsItsThermostat();
    void aCutOutTripsOnceOrAgainAndAgain();
    void boilingStopsTheHeaterAndSaysSo();
    void slushHasNoResult();
    void coolingUnderTheFreezingPointEndsTheRun();
    void powerCanComeLateAndGoEarly();
    void aWarmEngineWaitsForItsThermostat();
    void aRemoteThermostatHeatsOnPastOneAtTheInlet();
    void twoHeatersAlikeSwitchTogetherAndWarmTheirOwnParts();
    void theInfraredReadingIsTheRubbers();
    void aPocketNearTheDriveIsOnTheEdge();
    void sameInputsGiveTheSameBits();
    void whatIsNotPhysicalIsRefusedByName();
};

void TestWarmUp::theLongTimeLimitIsTheSteadySolvers_data()
{
    QTest::addColumn<double>("air_degC");
    QTest::addColumn<double>("bore_m");
    QTest::addColumn<double>("port_distance_mm");
    QTest::newRow("3/4 in at -20") << -20.0 << 0.01905 << 800.0;
    QTest::newRow("3/4 in at 10") << 10.0 << 0.01905 << 800.0;
    QTest::newRow("1 in at -10") << -10.0 << 0.0254 << 800.0;
    QTest::newRow("5/8 in, ports close") << -20.0 << 0.0159 << 200.0;
}

void TestWarmUp::theLongTimeLimitIsTheSteadySolvers()
{
    QFETCH(double, air_degC);
    QFETCH(double, bore_m);
    QFETCH(double, port_distance_mm);
    TypicalEngine engine;
    engine.air_degC = engine.start_degC = air_degC;
    engine.bore_m = bore_m;
    engine.nipple_m = 0.76 * bore_m;
    engine.port_distance_mm = port_distance_mm;
    engine.rated_W = 1000;
    WarmUpInputs inputs = alwaysOn(engine);
    inputs.boiling_degC = 125;
    inputs.duration_s = 40 * 86400.0; // some thirty times the slowest time constant
    const WarmUp warm = warmUp(inputs, halfGlycol(), {});
    QCOMPARE(warm.status, WarmUpStatus::done);
    const LoopSample& end = warm.loops[0].at_end;
    const Circulation steady = steadyCirculation(steadyLoop(inputs, end.swept_degC), halfGlycol());
    QCOMPARE(steady.status, CirculationStatus::circulates);
    // Two cells a hose against exponentials; a chamber that loses heat at the mean of its ends.
    VERIFY_NEAR(end.flow_kg_per_s, steady.flow_kg_per_s, 0.003 * steady.flow_kg_per_s);
    VERIFY_NEAR(end.outlet_degC, steady.heater_outlet_degC, 0.15);
    VERIFY_NEAR(end.inlet_degC, steady.heater_inlet_degC, 0.15);
    // And all that the heater gives is lost.
    const WarmUpSample& before = warm.series[warm.series.size() - 2];
    VERIFY_NEAR(warm.block_at_end_degC, before.block_degC, 1e-4);
}

void TestWarmUp::aLoopThatRunsInReverseEndsAsTheSteadySolverHasIt()
{
    // The return hose led to the low port, the supply to the high one, and the heater's outlet a little below
    // its inlet: what it warms leaves by the inlet and rises through the supply hose.
    TypicalEngine engine;
    engine.low_port_m = 0.75; // where the supply hose ends
    engine.high_port_m = 0.15;
    engine.rated_W = 500;
    engine.air_degC = engine.start_degC = 10;
    WarmUpInputs inputs = alwaysOn(engine);
    WarmUpLoop& loop = inputs.loops[0];
    loop.return_hose[0].rise_m += loop.chamber[0].rise_m + 0.05;
    loop.chamber[0].rise_m = -0.05;
    inputs.boiling_degC = 118;
    inputs.duration_s = 40 * 86400.0;
    const WarmUp warm = warmUp(inputs, halfGlycol(), {});
    QCOMPARE(warm.status, WarmUpStatus::done);
    const LoopSample& end = warm.loops[0].at_end;
    CirculationOptions here; // forward is possible too; the start decides, and it went backward
    here.start_flow_kg_per_s = end.flow_kg_per_s;
    const Circulation steady = steadyCirculation(steadyLoop(inputs, end.swept_degC), halfGlycol(), here);
    QCOMPARE(steady.status, CirculationStatus::reverse);
    QVERIFY(end.flow_kg_per_s < 0);
    VERIFY_NEAR(end.flow_kg_per_s, steady.flow_kg_per_s, 0.003 * -steady.flow_kg_per_s);
    VERIFY_NEAR(end.outlet_degC, steady.heater_outlet_degC, 0.2);
}

void TestWarmUp::energyBalancesInEveryRun_data()
{
    QTest::addColumn<TypicalEngine>("engine");
    TypicalEngine engine;
    QTest::newRow("sound") << engine;
    engine.air_degC = 5;
    engine.start_degC = 20;
    QTest::newRow("warmer than the air at the start") << engine;
    engine.start_degC = -10;
    QTest::newRow("colder than the air at the start") << engine;
    engine = {};
    engine.port_distance_mm = 100;
    QTest::newRow("ports close") << engine;
    engine = {};
    engine.shut = true;
    QTest::newRow("blocked") << engine;
    engine = {};
    engine.high_port_m = 0.2; // the return falls from heater to engine
    QTest::newRow("return below the heater") << engine;
    engine = {};
    engine.pocket_m = 0.004;
    QTest::newRow("pocket") << engine;
    engine = {};
    engine.wind_m_per_s = 8;
    QTest::newRow("windy") << engine;
}

void TestWarmUp::energyBalancesInEveryRun()
{
    QFETCH(TypicalEngine, engine);
    const WarmUp warm = run(engine);
    QCOMPARE(warm.status, WarmUpStatus::done);
    // Asked for is 0.1 %. The method conserves it to the tolerance of its steps, and better.
    QVERIFY2(warm.balance_error < 1e-5, qPrintable(QString::number(warm.balance_error)));
    VERIFY_NEAR(warm.energy_J, warm.loops[0].energised_s * 1500, 1e-6 * warm.energy_J);
    // The same from the series: power over time, by the samples a minute apart.
    double sampled_J = 0;
    for (const WarmUpSample& sample : warm.series)
        sampled_J += sample.power_W * 60;
    VERIFY_NEAR(sampled_J, warm.energy_J, 1500 * 60 * (1 + double(warm.loops[0].switches.size())));
    VERIFY_NEAR(warm.series.back().energy_J, warm.energy_J, 1e-6 * warm.energy_J);
}

void TestWarmUp::aLumpedEngineWarmsAsTheClosedFormSays()
{
    // Lumped warm-up, dT(t) = (P/UA)(1 - exp(-UA t/C)), an elementary result: 450 kg of iron (490 J/kg K)
    // with 14 L, 0.270 MJ/K, UA 13.5, 1500 W: +40 K after 2.48 h. Made lumped here: swept and rest joined by
    // much conduction, hoses that lose nothing and weigh little.
    TypicalEngine engine;
    engine.iron_kg = 450;
    engine.coolant_L = 14;
    WarmUpInputs inputs = alwaysOn(engine);
    inputs.block.metal_J_per_K = 450 * 490;
    inputs.block.loss_W_per_K = 13.5;
    inputs.block.conduction_W_per_K = 3000;
    WarmUpLoop& loop = inputs.loops[0];
    loop.swept_share = 0.5;
    loop.jacket[0].heat.exchange_W_per_K = 4000;
    for (auto* run : {&loop.chamber, &loop.return_hose, &loop.supply_hose})
        run->front().heat.exchange_W_per_K = 0;
    loop.return_wall_J_per_K = loop.supply_wall_J_per_K = loop.heater.metal_J_per_K = 0;
    loop.heater.coolant_L = 0.05;
    inputs.target_degC = 20;
    inputs.duration_s = 4 * 3600;
    const WarmUp warm = warmUp(inputs, halfGlycol());
    QCOMPARE(warm.status, WarmUpStatus::done);
    QVERIFY(warm.target_s);
    // What hoses and chamber hold at 50 K over the block, some 0.8 kg, delays it by a minute or two.
    VERIFY_NEAR(*warm.target_s / 3600, 2.48, 0.06);
    VERIFY_NEAR(warm.block_at_end_degC, -20 + 1500 / 13.5 * (1 - std::exp(-4 * 3600 * 13.5 / 270e3)), 1);
}

void TestWarmUp::moreCellsChangeLittle()
{
    WarmUpOptions fine;
    fine.hose_cells = 8;
    fine.jacket_cells = 8;
    const WarmUp coarse_run = warmUp(alwaysOn({}), halfGlycol());
    const WarmUp fine_run = warmUp(alwaysOn({}), halfGlycol(), fine);
    VERIFY_NEAR(*coarse_run.loops[0].peak_outlet_degC, *fine_run.loops[0].peak_outlet_degC, 0.1);
    VERIFY_NEAR(coarse_run.block_at_end_degC, fine_run.block_at_end_degC, 0.05);
    VERIFY_NEAR(coarse_run.loops[0].at_end.flow_kg_per_s, fine_run.loops[0].at_end.flow_kg_per_s, 5e-5);
}

void TestWarmUp::powerGoesWithTheSquareOfVoltage()
{
    // EI: 1500 W at 120 V gives 1215 W at 108 V; 240 V on 208 V gives 75.1 %.
    WarmUpHeater heater;
    heater.supply_V = 108;
    VERIFY_NEAR(heater.power_W(), 1215, 1e-9);
    heater.rated_V = 240;
    heater.supply_V = 208;
    VERIFY_NEAR(heater.power_W() / heater.rated_W, 0.751, 5e-4);

    WarmUpInputs inputs = alwaysOn({});
    const WarmUp full = warmUp(inputs, halfGlycol());
    inputs.loops[0].heater.supply_V = 108;
    const WarmUp low = warmUp(inputs, halfGlycol());
    VERIFY_NEAR(low.energy_J, 0.81 * full.energy_J, 1);
    QVERIFY(low.block_at_end_degC < full.block_at_end_degC);
    inputs.loops[0].heater.supply_V = 0;
    const WarmUp none = warmUp(inputs, halfGlycol());
    QCOMPARE(none.energy_J, 0.0);
    QVERIFY(!none.loops[0].peak_outlet_degC);
}

void TestWarmUp::windCoolsTheEngine()
{
    TypicalEngine engine;
    double before = 1000;
    for (const double wind : {0.0, 1.0, 3.0, 6.0, 12.0}) {
        engine.wind_m_per_s = wind;
        const double block = run(engine).block_at_end_degC;
        QVERIFY(block < before);
        before = block;
    }
}

void TestWarmUp::theTargetTimeIsWhenTheSeriesCrossesIt()
{
    WarmUpInputs inputs = typicalWarmUp({});
    inputs.target_degC = 20;
    const WarmUp warm = warmUp(inputs, halfGlycol());
    QVERIFY(warm.target_s);
    for (const WarmUpSample& sample : warm.series) {
        if (sample.time_s < *warm.target_s)
            QVERIFY(sample.block_degC < 20);
        if (sample.time_s > *warm.target_s && sample.time_s < *warm.target_s + 600)
            QVERIFY(sample.block_degC > 20);
    }
    const double warm_s = *warm.loops[0].return_warm_s;
    QVERIFY(warm_s > 30 && warm_s < 600); // minutes, in a sound loop
    const auto at = [&](double time_s) {
        return warm.series[static_cast<std::size_t>(time_s / 60)].loops[0].return_degC;
    };
    QVERIFY(at(warm_s) <= -5 && at(warm_s + 60) >= -5);
    inputs.target_degC = 90;
    QVERIFY(!warmUp(inputs, halfGlycol()).target_s);
}

void TestWarmUp::aStalledChamberStillTripsItsThermostat()
{
    TypicalEngine engine;
    engine.shut = true;
    const WarmUp warm = run(engine);
    const LoopOutcome& loop = warm.loops[0];
    QVERIFY(loop.first_switch_off_s && *loop.first_switch_off_s < 600);
    QCOMPARE(loop.at_end.flow_kg_per_s, 0.0);
    QVERIFY(!loop.return_warm_s);
    VERIFY_NEAR(warm.block_at_end_degC, -20, 0.01);
    QVERIFY(*loop.peak_outlet_degC < 82);
}

void TestWarmUp::aCutOutTripsOnceOrAgainAndAgain()
{
    WarmUpInputs inputs = alwaysOn({});
    inputs.loops[0].heater.cut_out = {CutOutReset::manual, 60, 40};
    const WarmUp manual = warmUp(inputs, halfGlycol());
    const LoopOutcome& once = manual.loops[0];
    QCOMPARE(once.switches.size(), 2u);
    QCOMPARE(once.switches[1].cause, SwitchCause::cut_out);
    QCOMPARE(*once.tripped_s, once.switches[1].time_s);
    VERIFY_NEAR(*once.peak_outlet_degC, 60, 1e-3);
    QCOMPARE(once.cycles_per_hour, 0.0);

    inputs.loops[0].heater.cut_out.reset = CutOutReset::self;
    const WarmUp self = warmUp(inputs, halfGlycol());
    QVERIFY(self.loops[0].switches.size() > 10);
    QVERIFY(self.loops[0].cycles_per_hour >= 1);
    for (std::size_t i = 1; i < self.loops[0].switches.size(); ++i)
        QVERIFY(self.loops[0].switches[i].on != self.loops[0].switches[i - 1].on);
    QVERIFY(self.energy_J > manual.energy_J);
}

void TestWarmUp::boilingStopsTheHeaterAndSaysSo()
{
    TypicalEngine engine;
    engine.shut = true;
    const WarmUpInputs inputs = alwaysOn(engine);
    const WarmUp warm = warmUp(inputs, halfGlycol());
    QCOMPARE(warm.status, WarmUpStatus::boiling);
    QVERIFY(!warm.message.pattern.empty());
    const LoopOutcome& loop = warm.loops[0];
    QVERIFY(loop.boiled_s);
    QCOMPARE(loop.switches.back().cause, SwitchCause::boiling);
    QCOMPARE(loop.switches.size(), 2u);
    VERIFY_NEAR(*loop.peak_outlet_degC, inputs.boiling_degC, 1e-3);
    VERIFY_NEAR(*loop.boiling_margin_K, 0, 1e-3);
    QVERIFY(loop.element->boils_locally);
    // 0.6 L and 700 J/K, with nowhere to go but 0.4 W/K into the air: (C/P) times 128 K and a little.
    QVERIFY(*loop.boiled_s > 200 && *loop.boiled_s < 330);
    QCOMPARE(warm.end_s, inputs.duration_s); // the run goes on without it
}

void TestWarmUp::slushHasNoResult()
{
    TypicalEngine engine;
    engine.start_degC = engine.air_degC = -45; // 50 % ethylene glycol freezes near -37 degC
    const WarmUp warm = run(engine);
    QCOMPARE(warm.status, WarmUpStatus::slush);
    QVERIFY(warm.series.empty() && warm.loops.empty());
    QVERIFY(!warm.message.pattern.empty());
}

void TestWarmUp::coolingUnderTheFreezingPointEndsTheRun()
{
    TypicalEngine engine;
    engine.start_degC = 0;
    engine.air_degC = -45;
    engine.wind_m_per_s = 10;
    WarmUpInputs inputs = typicalWarmUp(engine);
    inputs.supply_on_s = 1e6;
    inputs.duration_s = 5 * 86400;
    const WarmUp warm = warmUp(inputs, halfGlycol());
    QCOMPARE(warm.status, WarmUpStatus::slush);
    QVERIFY(warm.end_s < inputs.duration_s && !warm.series.empty());
}

void TestWarmUp::powerCanComeLateAndGoEarly()
{
    WarmUpInputs inputs = alwaysOn({});
    inputs.supply_on_s = 3000;
    inputs.supply_off_s = 10000;
    const WarmUp warm = warmUp(inputs, halfGlycol());
    const LoopOutcome& loop = warm.loops[0];
    QCOMPARE(loop.switches.size(), 2u);
    QCOMPARE(loop.switches[0].time_s, 3000.0);
    QCOMPARE(loop.switches[1].time_s, 10000.0);
    QCOMPARE(loop.switches[1].cause, SwitchCause::supply);
    VERIFY_NEAR(loop.energised_s, 7000, 1e-6);
    for (const WarmUpSample& sample : warm.series) {
        if (sample.time_s <= 3000)
            VERIFY_NEAR(sample.block_degC, -20, 1e-9);
    }
    QVERIFY(warm.block_at_end_degC > -20 && warm.block_at_end_degC < -5);
}

void TestWarmUp::aWarmEngineWaitsForItsThermostat()
{
    TypicalEngine engine;
    engine.start_degC = 45; // between 38 and 49
    WarmUpInputs inputs = typicalWarmUp(engine);
    inputs.loops[0].heater.thermostat.closed_between_points_at_start = false;
    const WarmUp open = warmUp(inputs, halfGlycol());
    QVERIFY(open.loops[0].switches.front().on && open.loops[0].switches.front().time_s > 60);
    inputs.loops[0].heater.thermostat.closed_between_points_at_start = true;
    const WarmUp closed = warmUp(inputs, halfGlycol());
    QCOMPARE(closed.loops[0].switches.front().time_s, 0.0);
}

void TestWarmUp::aRemoteThermostatHeatsOnPastOneAtTheInlet()
{
    TypicalEngine engine;
    engine.air_degC = engine.start_degC = 0;
    WarmUpInputs inputs = typicalWarmUp(engine);
    const auto firstOff = [&](ThermostatPlace place) {
        inputs.loops[0].heater.thermostat.place = place;
        return *warmUp(inputs, halfGlycol()).loops[0].first_switch_off_s;
    };
    const double at_outlet = firstOff(ThermostatPlace::chamber_outlet);
    const double at_inlet = firstOff(ThermostatPlace::chamber_inlet);
    const double remote = firstOff(ThermostatPlace::remote);
    QVERIFY(at_outlet < at_inlet);
    QVERIFY(at_inlet < remote);
}

void TestWarmUp::twoHeatersAlikeSwitchTogetherAndWarmTheirOwnParts()
{
    WarmUpInputs inputs = typicalWarmUp({});
    inputs.loops[0].swept_share = 0.4;
    inputs.loops.push_back(inputs.loops[0]);
    const WarmUp both = warmUp(inputs, halfGlycol());
    QCOMPARE(both.loops[0].switches.size(), both.loops[1].switches.size());
    QVERIFY(both.loops[0].switches.size() > 4);
    for (std::size_t i = 0; i < both.loops[0].switches.size(); ++i)
        QCOMPARE(both.loops[0].switches[i].time_s, both.loops[1].switches[i].time_s);
    QVERIFY(both.balance_error < 1e-5);
    VERIFY_NEAR(both.energy_J, both.loops[0].energy_J + both.loops[1].energy_J, 1);

    inputs.loops[1].heater.supply_V = 0;
    const WarmUp one = warmUp(inputs, halfGlycol());
    QVERIFY(one.loops[0].at_end.swept_degC > one.loops[1].at_end.swept_degC + 5);
    QVERIFY(one.block_at_end_degC < both.block_at_end_degC);
}

void TestWarmUp::theInfraredReadingIsTheRubbers()
{
    const WarmUp warm = run({});
    const LoopSample& end = warm.loops[0].at_end;
    const double share = typicalWarmUp({}).loops[0].return_surface_share;
    VERIFY_NEAR(end.return_surface_degC, -20 + share * (end.return_degC + 20), 1e-9);
    QVERIFY(end.return_surface_degC < end.return_degC - 10);
}

void TestWarmUp::aPocketNearTheDriveIsOnTheEdge()
{
    // Running, this loop's drive is some 7 mm. A bubble of 0.5 mm takes some of its flow; one of 4 to 5 mm
    // lets it run until a pause lets the return cool; one of 10 mm never lets it start.
    TypicalEngine engine;
    engine.pocket_m = 0.0005;
    const WarmUp passed = run(engine);
    QVERIFY(!passed.loops[0].on_the_edge);
    QVERIFY(passed.loops[0].most_flow_kg_per_s < run({}).loops[0].most_flow_kg_per_s);
    engine.pocket_m = 0.005;
    QVERIFY(run(engine).loops[0].on_the_edge);
    engine.pocket_m = 0.010;
    const WarmUp stalled = run(engine);
    QVERIFY(!stalled.loops[0].on_the_edge);
    QCOMPARE(stalled.loops[0].most_flow_kg_per_s, 0.0);
    QVERIFY(!stalled.loops[0].return_warm_s);
}

void TestWarmUp::sameInputsGiveTheSameBits()
{
    const WarmUp one = run({});
    const WarmUp two = run({});
    QCOMPARE(one.evaluations, two.evaluations);
    QCOMPARE(one.loops[0].switches.size(), two.loops[0].switches.size());
    for (std::size_t i = 0; i < one.loops[0].switches.size(); ++i)
        QVERIFY(one.loops[0].switches[i].time_s == two.loops[0].switches[i].time_s);
    QVERIFY(one.lost_J == two.lost_J && one.stored_J == two.stored_J);
    for (std::size_t i = 0; i < one.series.size(); ++i)
        QVERIFY(one.series[i].loops[0].flow_kg_per_s == two.series[i].loops[0].flow_kg_per_s);
}

void TestWarmUp::whatIsNotPhysicalIsRefusedByName()
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const auto refused = [](const auto& spoil) {
        WarmUpInputs inputs = typicalWarmUp({});
        WarmUpOptions options;
        spoil(inputs, options);
        const WarmUp warm = warmUp(inputs, halfGlycol(), options);
        return warm.status == WarmUpStatus::invalid_input && !warm.message.pattern.empty();
    };
    using In = WarmUpInputs;
    using Opt = WarmUpOptions;
    QVERIFY(!refused([](In&, Opt&) {}));
    QVERIFY(refused([](In& in, Opt&) { in.loops.clear(); }));
    QVERIFY(refused([](In& in, Opt&) { in.loops[0].return_hose.clear(); }));
    QVERIFY(refused([](In& in, Opt&) { in.loops[0].return_hose[0].length_m = -1; }));
    QVERIFY(refused([](In& in, Opt&) { in.loops[0].swept_share = 1.5; }));
    QVERIFY(refused([](In& in, Opt&) { in.loops.push_back(in.loops[0]); })); // together over all of it
    QVERIFY(refused([](In& in, Opt&) { in.loops[0].heater.thermostat.on_degC = 60; }));
    QVERIFY(refused([](In& in, Opt&) { in.loops[0].heater.rated_V = 0; }));
    QVERIFY(refused([&](In& in, Opt&) { in.block.metal_J_per_K = nan; }));
    QVERIFY(refused([&](In& in, Opt&) { in.air_degC = nan; }));
    QVERIFY(refused([&](In& in, Opt&) { in.duration_s = nan; }));
    QVERIFY(refused([](In& in, Opt&) { in.start_degC = in.boiling_degC; }));
    QVERIFY(refused([](In&, Opt& options) { options.relative_tolerance = 0; }));
    QVERIFY(refused([](In&, Opt& options) { options.hose_cells = 1; }));
}

QTEST_APPLESS_MAIN(TestWarmUp)
#include "test_warm_up.moc"
