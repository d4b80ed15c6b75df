#include "tests/near.h"
#include "tests/warm_up/typical_engine.h"

#include "core/physics/circulation.h"
#include "core/physics/enthalpy_table.h"
#include "core/physics/flow_law.h"
#include "core/physics/warm_up_cells.h"

#include <algorithm>
#include <cmath>
#include <variant>

using namespace siphonwright;
using siphonwright::test::halfGlycol;
using siphonwright::test::TypicalEngine;
using siphonwright::test::typicalWarmUp;

class TestWarmUpAccuracy : public QObject {
    Q_OBJECT
private slots:
    void finerStepsChangeNothingThatMatters_data();
    void finerStepsChangeNothingThatMatters();
    void theTableFollowsTheFluid();
    void enthalpyIsTheIntegralOfSpecificHeat();
    void theFlowIsThatOfTheResistance();
    void theFlowAskedForAgainIsTheSame();
    void cellsAddUpToTheRun();
};

void TestWarmUpAccuracy::finerStepsChangeNothingThatMatters_data()
{
    QTest::addColumn<TypicalEngine>("engine");
    TypicalEngine engine;
    for (const double air : {-20.0, -5.0, 0.0, 10.0}) {
        engine.air_degC = engine.start_degC = air;
        QTest::addRow("sound at %g", air) << engine;
    }
    engine = {};
    engine.port_distance_mm = 100;
    QTest::newRow("ports close") << engine;
    engine = {};
    engine.shut = true;
    QTest::newRow("blocked") << engine;
    engine = {};
    engine.bore_m = 0.0159;
    engine.nipple_m = 0.012;
    engine.start_degC = 30;
    QTest::newRow("small hose, warm start") << engine;
}

void TestWarmUpAccuracy::finerStepsChangeNothingThatMatters()
{
    QFETCH(TypicalEngine, engine);
    const WarmUpInputs inputs = typicalWarmUp(engine);
    WarmUpOptions fine;
    fine.relative_tolerance = 1e-10;
    fine.absolute_tolerance_K = 1e-9;
    fine.event_tolerance_s = 1e-7;
    const WarmUp coarse_run = warmUp(inputs, halfGlycol());
    const WarmUp fine_run = warmUp(inputs, halfGlycol(), fine);
    const LoopOutcome& a = coarse_run.loops[0];
    const LoopOutcome& b = fine_run.loops[0];
    QVERIFY(fine_run.steps > coarse_run.steps);
    QCOMPARE(a.switches.size(), b.switches.size());
    VERIFY_NEAR(*a.peak_outlet_degC, *b.peak_outlet_degC, 0.05);
    VERIFY_NEAR(*a.first_switch_off_s, *b.first_switch_off_s, 0.1);
    VERIFY_NEAR(a.switches.back().time_s, b.switches.back().time_s, 2);
    qInfo("first %.2g s, last %.2g s, peak %.2g K, %zu switches",
          *a.first_switch_off_s - *b.first_switch_off_s, a.switches.back().time_s - b.switches.back().time_s,
          *a.peak_outlet_degC - *b.peak_outlet_degC, a.switches.size());
}

void TestWarmUpAccuracy::theTableFollowsTheFluid()
{
    const GlycolWater fluid = halfGlycol();
    const EnthalpyTable table(fluid);
    for (double t = fluid.lowest_degC() + 2; t < fluid.highest_degC(); t += 0.137) {
        const FluidState exact = fluid.at(t);
        const HeatState state = table.at(t);
        VERIFY_NEAR(state.density_kg_per_m3, exact.density_kg_per_m3, 1e-6 * exact.density_kg_per_m3);
        const double factor = exact.viscosity_Pa_s * exact.viscosity_Pa_s / exact.density_kg_per_m3;
        VERIFY_NEAR(state.viscosity_squared_per_density, factor, 2e-4 * factor);
        VERIFY_NEAR(state.fluidity_per_Pa_s * exact.viscosity_Pa_s, 1, 1e-4);
        VERIFY_NEAR(state.specific_heat_J_per_kg_K, exact.specific_heat_J_per_kg_K, 0.01);
    }
    // Outside as at the nearer end; enthalpy goes on.
    const HeatState end = table.at(120), beyond = table.at(130);
    QCOMPARE(beyond.density_kg_per_m3, end.density_kg_per_m3);
    VERIFY_NEAR(beyond.enthalpy_J_per_kg - end.enthalpy_J_per_kg, 10 * end.specific_heat_J_per_kg_K, 1e-6);
}

void TestWarmUpAccuracy::enthalpyIsTheIntegralOfSpecificHeat()
{
    const EnthalpyTable table(halfGlycol());
    // Difference over 0.02 K against specific heat in its middle, across the borders of cells too.
    for (double t = -30; t < 119; t += 0.31) {
        const double rise = table.at(t + 0.01).enthalpy_J_per_kg - table.at(t - 0.01).enthalpy_J_per_kg;
        VERIFY_NEAR(rise / 0.02, table.at(t).specific_heat_J_per_kg_K, 0.01);
    }
    // And over all of it, by the trapezium rule on the fluid itself.
    double sum = 0;
    for (int i = 0; i < 1000; ++i)
        sum += halfGlycol().at(-20 + 0.1 * (i + 0.5)).specific_heat_J_per_kg_K * 0.1;
    VERIFY_NEAR(table.at(80).enthalpy_J_per_kg - table.at(-20).enthalpy_J_per_kg, sum, 1e-6 * sum);
}

void TestWarmUpAccuracy::theFlowIsThatOfTheResistance()
{
    const WarmUpLoop loop = typicalWarmUp({}).loops[0];
    std::vector<LoopElement> cells = cellsOf(loop.return_hose, 3);
    const std::vector<LoopElement> supply = cellsOf(loop.supply_hose, 2);
    cells.insert(cells.end(), supply.begin(), supply.end());
    const LoopResistance resistance(cells);
    FlowLaw law(resistance);
    const EnthalpyTable table(halfGlycol());
    double off = 0;
    int count = 0;
    for (const double warm : {-20.0, 20.0, 80.0}) {
        std::vector<HeatState> heat;
        std::vector<FluidState> states;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            heat.push_back(table.at(warm + 3 * double(i)));
            states.push_back({heat[i].density_kg_per_m3, 1 / heat[i].fluidity_per_Pa_s, 0, 0});
        }
        for (double drive_Pa = 1e-9; drive_Pa < 1e5; drive_Pa *= 1.7) {
            const double there = resistance.flowFor(drive_Pa, states).flow_kg_per_s;
            const double ours = law.flowLosing(drive_Pa, true, heat);
            VERIFY_NEAR(ours, there, 5e-4 * there);
            off += std::abs(ours / there - 1);
            ++count;
            const double back = -resistance.flowFor(-drive_Pa, states).flow_kg_per_s;
            VERIFY_NEAR(law.flowLosing(drive_Pa, false, heat), back, 5e-4 * back);
        }
        QCOMPARE(law.flowLosing(0, true, heat), 0.0);
    }
    VERIFY_NEAR(off / count, 0, 1e-5);
}

void TestWarmUpAccuracy::theFlowAskedForAgainIsTheSame()
{
    // Rates that differ with where a search began are noise to whoever takes differences of them: a search
    // that begins on the root once threw itself far off and came back only to within its tolerance.
    const std::vector<LoopElement> cells = cellsOf(typicalWarmUp({}).loops[0].return_hose, 2);
    FlowLaw law{LoopResistance(cells)};
    const EnthalpyTable table(halfGlycol());
    const std::vector<HeatState> heat = {table.at(38), table.at(41)};
    for (const double drive_Pa : {1e-3, 0.5, 3.0, 20.0}) {
        law.flowLosing(drive_Pa, true, heat);
        const double flow = law.flowLosing(drive_Pa, true, heat);
        for (int again = 0; again < 5; ++again)
            VERIFY_NEAR(law.flowLosing(drive_Pa, true, heat), flow, 1e-14 * flow);
    }
}

void TestWarmUpAccuracy::cellsAddUpToTheRun()
{
    // Ten elements of unlike length, a fitting without length between and at each end.
    std::vector<LoopElement> run;
    LoopElement fitting;
    fitting.bore_m = 0.019;
    fitting.losses = {Loss::ballValve(0.019)};
    fitting.pocket_forward_m = 0.001;
    run.push_back(fitting);
    for (int i = 1; i <= 10; ++i) {
        LoopElement piece;
        piece.length_m = 0.03 * i;
        piece.rise_m = i % 2 ? 0.01 * i : -0.02;
        piece.bore_m = 0.019;
        piece.losses = {Loss::wall(piece.length_m, 0.019, 0), Loss::elbow90(0.019)};
        piece.heat = Heat::toAir(0.7, piece.length_m, -20);
        run.push_back(piece);
        if (i == 5)
            run.push_back(fitting);
    }
    run.push_back(fitting);
    const auto states = [](std::size_t count) { return std::vector<FluidState>(count, halfGlycol().at(40)); };
    const auto total = [](const std::vector<LoopElement>& of, auto member) {
        double sum = 0;
        for (const LoopElement& element : of)
            sum += member(element);
        return sum;
    };
    for (const std::size_t count : {1u, 2u, 3u, 7u, 11u, 20u}) {
        const std::vector<LoopElement> cells = cellsOf(run, count);
        QCOMPARE(cells.size(), count);
        for (const auto& member : {+[](const LoopElement& e) { return e.length_m; },
                                   +[](const LoopElement& e) { return e.rise_m; },
                                   +[](const LoopElement& e) { return e.heat.exchange_W_per_K; },
                                   +[](const LoopElement& e) { return e.pocket_forward_m; }})
            VERIFY_NEAR(total(cells, member), total(run, member), 1e-12);
        for (const LoopElement& cell : cells)
            VERIFY_NEAR(cell.length_m, 1.65 / double(count), 1e-12);
        std::size_t elbows = 0; // each in one cell, also those that a border cuts in the middle
        for (const LoopElement& cell : cells)
            elbows += static_cast<std::size_t>(
                std::count_if(cell.losses.begin(), cell.losses.end(), [](const Loss& loss) {
                    return std::holds_alternative<loss_form::Local>(loss.form);
                }));
        QCOMPARE(elbows, 13u); // ten elbows, three valves
        const double whole = LoopResistance(run).pressureLoss_Pa(0.02, states(run.size()));
        VERIFY_NEAR(LoopResistance(cells).pressureLoss_Pa(0.02, states(count)), whole, 1e-3 * whole);
    }
}

QTEST_APPLESS_MAIN(TestWarmUpAccuracy)
#include "test_warm_up_accuracy.moc"
