#include "tests/circulation/random_loops.h"
#include "tests/near.h"

#include <QTest>

#include <cmath>
#include <functional>
#include <limits>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

void verifyFinite(const Circulation& r)
{
    for (const double value : {r.flow_kg_per_s, r.heater_inlet_degC, r.heater_outlet_degC, r.drive_Pa,
                               r.resistance_Pa, r.drive_mm, r.resistance_mm, r.pocket_mm, r.residual_Pa})
        QVERIFY(std::isfinite(value));
    for (const ElementState& e : r.elements)
        for (const double value :
             {e.start_degC, e.end_degC, e.mean_degC, e.heat_W, e.reynolds, e.velocity_m_per_s, e.loss_Pa})
            QVERIFY(std::isfinite(value));
    for (const PartLoss& p : r.parts)
        QVERIFY(std::isfinite(p.loss_Pa) && std::isfinite(p.share));
    for (const CirculationState& s : r.also_possible)
        QVERIFY(std::isfinite(s.flow_kg_per_s) && std::isfinite(s.heater_outlet_degC));
    QVERIFY(!r.message.pattern.empty());
}

/// A liquid whose properties are what a test says.
class OddFluid : public Fluid {
public:
    FluidState state{1000, 1e-3, 4000, 0.5};
    double lowest = 0, highest = 100;

    FluidState at(double /*temperature_degC*/) const override { return state; }
    double lowest_degC() const override { return lowest; }
    double highest_degC() const override { return highest; }
};

} // namespace

class TestCirculationInputs : public QObject {
    Q_OBJECT

private slots:
    void what_does_not_hold_is_refused_by_element_and_value_data();
    void what_does_not_hold_is_refused_by_element_and_value();
    void a_loop_that_does_not_close_is_refused();
    void heat_with_nowhere_to_go_is_refused();
    void an_empty_loop_and_one_without_losses_are_refused();
    void a_liquid_without_properties_is_refused();
    void resistance_of_another_loop_is_refused();
    void odd_options_are_put_right();
    void hostile_loops_give_finite_answers();
    void results_repeat_to_the_bit();
};

using Change = std::function<void(LoopElement&)>;

void TestCirculationInputs::what_does_not_hold_is_refused_by_element_and_value_data()
{
    QTest::addColumn<Change>("change");
    QTest::addColumn<QString>("word");
    const auto row = [](const char* name, const char* word, const Change& change) {
        QTest::newRow(name) << change << QString(word);
    };
    row("length", "length", [](LoopElement& e) { e.length_m = -1; });
    row("length not a number", "length", [](LoopElement& e) { e.length_m = not_a_number; });
    row("rise", "rise", [](LoopElement& e) { e.rise_m = infinity; });
    row("bore", "bore", [](LoopElement& e) { e.bore_m = 0; });
    row("bore not a number", "bore", [](LoopElement& e) { e.bore_m = not_a_number; });
    row("area", "area", [](LoopElement& e) { e.area_m2 = -1e-4; });
    row("power", "power", [](LoopElement& e) { e.heat.power_W = 1e300; });
    row("exchange", "exchange", [](LoopElement& e) { e.heat.exchange_W_per_K = -1; });
    row("surroundings", "surroundings", [](LoopElement& e) { e.heat.surroundings_degC = -300; });
    row("share", "share", [](LoopElement& e) { e.share_at_outlet = 1.01; });
    row("pocket", "pocket", [](LoopElement& e) { e.pocket_forward_m = -0.01; });
    row("pocket backward", "pocket", [](LoopElement& e) { e.pocket_backward_m = not_a_number; });
    row("loss", "bore", [](LoopElement& e) { e.losses.push_back(Loss::exit(-1)); });
    row("loss not a number", "coefficient",
        [](LoopElement& e) { e.losses.push_back(Loss::general(not_a_number, 0, 1, 0.02, 3e-4)); });
}

void TestCirculationInputs::what_does_not_hold_is_refused_by_element_and_value()
{
    QFETCH(Change, change);
    QFETCH(QString, word);
    Loop loop = PracticalCircuit().loop();
    QVERIFY(problemIn(loop).pattern.empty());
    change(loop.elements[2]);
    const Circulation result = steadyCirculation(loop, HalfGlycol());
    QCOMPARE(result.status, CirculationStatus::invalid_input);
    const QString text = QString::fromStdString(format(result.message, UnitSystem::metric));
    QVERIFY2(text.startsWith("element 3: "), qPrintable(text));
    QVERIFY2(text.contains(word), qPrintable(text));
    verifyFinite(result);
}

void TestCirculationInputs::a_loop_that_does_not_close_is_refused()
{
    Loop loop = PracticalCircuit().loop();
    loop.elements[0].rise_m += 0.05;
    const Circulation result = steadyCirculation(loop, HalfGlycol());
    QCOMPARE(result.status, CirculationStatus::invalid_input);
    const std::string text = format(result.message, UnitSystem::metric);
    QVERIFY2(text.find("does not close") != std::string::npos, text.c_str());
    QVERIFY2(text.find("0.0") != std::string::npos, text.c_str());
}

void TestCirculationInputs::heat_with_nowhere_to_go_is_refused()
{
    Loop loop = rectangle(1, 1, 0.02, 500);
    loop.elements[2].heat = Heat::heater(-400);
    const Circulation result = steadyCirculation(loop, HalfGlycol());
    QCOMPARE(result.status, CirculationStatus::invalid_input);
    QVERIFY(format(result.message, UnitSystem::metric).find("100 W") != std::string::npos);
}

void TestCirculationInputs::an_empty_loop_and_one_without_losses_are_refused()
{
    QCOMPARE(steadyCirculation(Loop(), HalfGlycol()).status, CirculationStatus::invalid_input);
    Loop loop = PracticalCircuit().loop();
    for (LoopElement& element : loop.elements)
        element.losses.clear();
    QCOMPARE(steadyCirculation(loop, HalfGlycol()).status, CirculationStatus::invalid_input);
}

void TestCirculationInputs::a_liquid_without_properties_is_refused()
{
    const Loop loop = PracticalCircuit().loop();
    const auto refuses = [&](const OddFluid& fluid) {
        return steadyCirculation(loop, fluid).status == CirculationStatus::invalid_input;
    };
    QVERIFY(!refuses(OddFluid()));
    OddFluid fluid;
    fluid.state.density_kg_per_m3 = not_a_number;
    QVERIFY(refuses(fluid));
    fluid = OddFluid();
    fluid.state.viscosity_Pa_s = 0;
    QVERIFY(refuses(fluid));
    fluid = OddFluid();
    fluid.highest = -5;
    QVERIFY(refuses(fluid));
    fluid.highest = not_a_number;
    QVERIFY(refuses(fluid));
}

void TestCirculationInputs::resistance_of_another_loop_is_refused()
{
    const FluidTable coolant = FluidTable::of(HalfGlycol()).value();
    const LoopResistance other(rectangle(1, 1, 0.02, 500).elements);
    const Loop loop = SoundLoop().loop();
    QCOMPARE(steadyCirculation(loop, other, coolant).status, CirculationStatus::invalid_input);
}

void TestCirculationInputs::odd_options_are_put_right()
{
    const Loop loop = PracticalCircuit().loop();
    const double flow = steadyCirculation(loop, HalfGlycol()).flow_kg_per_s;
    for (const double odd : {not_a_number, infinity, -infinity, -1.0, 0.0, 1e300, 1e-300}) {
        CirculationOptions options;
        options.flow_tolerance = options.search_step = options.edge_share = odd;
        options.start_flow_kg_per_s = odd;
        options.most_iterations = -5;
        if (!(odd < 1))
            options.boiling_degC = odd;
        const Circulation result = steadyCirculation(loop, HalfGlycol(), options);
        verifyFinite(result);
        if (result.status == CirculationStatus::circulates)
            VERIFY_NEAR(result.flow_kg_per_s, flow, 0.02 * flow);
    }
}

void TestCirculationInputs::hostile_loops_give_finite_answers()
{
    // Numbers of every size and sign that input may hold, in loops that close and in some that do not.
    Dice dice(7);
    const auto any = [&dice] {
        switch (dice.upTo(5)) {
        case 0:
            return 0.0;
        case 1:
            return std::pow(10, dice.between(-320, 300)) * (dice.upTo(1) == 1 ? 1 : -1);
        default:
            return std::pow(10, dice.between(-6, 5)) * (dice.upTo(3) > 0 ? 1 : -1);
        }
    };
    const auto size = [&] { return std::abs(any()); };
    const FluidTable coolant = FluidTable::of(HalfGlycol()).value();
    int answered = 0;
    for (int n = 0; n < 5000; ++n) {
        Loop loop;
        const int count = 1 + dice.upTo(6);
        double rise_m = 0;
        for (int i = 0; i < count; ++i) {
            const double bore_m = std::pow(10, dice.between(-6, 1));
            LoopElement e = pipe(std::pow(10, dice.between(-6, 4)), 0, bore_m);
            e.rise_m = i + 1 == count && dice.upTo(9) > 0 ? -rise_m : std::clamp(any(), -1e3, 1e3);
            rise_m += e.rise_m;
            if (dice.upTo(2) == 0)
                e.losses.push_back(
                    Loss::general(size(), size(), dice.between(0, 1.99), bore_m, areaOf(bore_m)));
            if (dice.upTo(1) == 0)
                e.heat = {dice.upTo(1) == 0 ? any() : 0, size(), dice.between(-60, 150)};
            if (dice.upTo(5) == 0)
                e.pocket_forward_m = size();
            if (dice.upTo(5) == 0)
                e.share_at_outlet = dice.between(0, 1);
            e.shut = dice.upTo(30) == 0;
            loop.elements.push_back(e);
        }
        CirculationOptions options;
        if (dice.upTo(3) == 0)
            options.start_flow_kg_per_s = any();
        const Circulation result =
            problemIn(loop).pattern.empty()
                ? steadyCirculation(loop, LoopResistance(loop.elements), coolant, options)
                : steadyCirculation(loop, HalfGlycol(), options);
        verifyFinite(result);
        if (QTest::currentTestFailed())
            return;
        answered += result.status != CirculationStatus::invalid_input;
        QVERIFY(result.iterations < 1000);
    }
    qInfo("%d loops were not refused", answered);
    QVERIFY(answered > 2000);
}

void TestCirculationInputs::results_repeat_to_the_bit()
{
    Dice dice(8);
    for (int i = 0; i < 100; ++i) {
        const Loop loop = SoundLoop::random(dice).loop();
        const Circulation a = steadyCirculation(loop, HalfGlycol()),
                          b = steadyCirculation(loop, HalfGlycol());
        QVERIFY(a.flow_kg_per_s == b.flow_kg_per_s);
        QVERIFY(a.heater_outlet_degC == b.heater_outlet_degC);
        QVERIFY(a.drive_Pa == b.drive_Pa);
        QCOMPARE(a.iterations, b.iterations);
    }
}

QTEST_APPLESS_MAIN(TestCirculationInputs)
#include "test_inputs.moc"
