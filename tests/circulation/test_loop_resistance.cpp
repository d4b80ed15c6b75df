#include "tests/circulation/random_loops.h"
#include "tests/near.h"

#include <QTest>

#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// Straight from the losses, without tables.
double directLoss_Pa(const Loop& loop, double flow_kg_per_s, const FluidState& state)
{
    double sum_Pa = 0;
    for (const LoopElement& element : loop.elements) {
        for (const Loss& given : element.losses) {
            const Loss loss = flow_kg_per_s > 0 ? given : reversed(given);
            const double velocity = std::abs(flow_kg_per_s) / (state.density_kg_per_m3 * loss.area_m2);
            const double reynolds = velocity * state.density_kg_per_m3 * loss.bore_m / state.viscosity_Pa_s;
            sum_Pa += lossCoefficient(loss, reynolds) * state.density_kg_per_m3 * velocity * velocity / 2;
        }
    }
    return flow_kg_per_s > 0 ? sum_Pa : -sum_Pa;
}

std::vector<FluidState> statesAt(const Loop& loop, double temperature_degC)
{
    return {loop.elements.size(), HalfGlycol().at(temperature_degC)};
}

} // namespace

class TestLoopResistance : public QObject {
    Q_OBJECT

private slots:
    void tables_agree_with_the_losses_themselves();
    void loss_rises_strictly_with_flow();
    void the_flow_for_a_drive_loses_that_drive();
    void a_drive_backwards_gives_a_flow_backwards();
    void a_pocket_withstands_its_head_and_no_more();
    void a_shut_valve_withstands_everything();
    void an_element_can_have_an_area_of_its_own();
};

void TestLoopResistance::tables_agree_with_the_losses_themselves()
{
    Dice dice(1);
    double worst = 0, sum = 0;
    int count = 0;
    for (int i = 0; i < 100; ++i) {
        const Loop loop = SoundLoop::random(dice).loop();
        const LoopResistance resistance(loop.elements);
        for (double flow = 1e-5; flow < 2; flow *= 1.17) {
            for (const double temperature_degC : {-30.0, 20.0, 90.0}) {
                const double signed_flow = dice.upTo(1) == 1 ? flow : -flow;
                const std::vector<FluidState> states = statesAt(loop, temperature_degC);
                const double direct = directLoss_Pa(loop, signed_flow, states.front());
                const double miss = std::abs(resistance.pressureLoss_Pa(signed_flow, states) / direct - 1);
                worst = std::max(worst, miss);
                sum += miss;
                ++count;
            }
        }
    }
    qInfo("off by %.2e at worst, %.2e in the mean of %d", worst, sum / count, count);
    QVERIFY(worst < 4e-3);
    QVERIFY(sum / count < 2e-5);
}

void TestLoopResistance::loss_rises_strictly_with_flow()
{
    Dice dice(2);
    for (int i = 0; i < 10000; ++i) {
        const Loop loop = SoundLoop::random(dice).loop();
        const LoopResistance resistance(loop.elements);
        const std::vector<FluidState> states = statesAt(loop, dice.between(-30, 100));
        double before = 0;
        for (double flow = dice.between(1e-9, 2e-5); flow < 5; flow *= 1.3) {
            const double loss_Pa = resistance.pressureLoss_Pa(flow, states);
            QVERIFY(loss_Pa > before);
            before = loss_Pa;
        }
    }
}

void TestLoopResistance::the_flow_for_a_drive_loses_that_drive()
{
    Dice dice(3);
    int most = 0;
    for (int i = 0; i < 1000; ++i) {
        const Loop loop = SoundLoop::random(dice).loop();
        const LoopResistance resistance(loop.elements);
        const std::vector<FluidState> states = statesAt(loop, dice.between(-30, 100));
        const double drive_Pa = std::pow(10, dice.between(-8, 6)) * (dice.upTo(1) == 1 ? 1 : -1);
        const DrivenFlow cold = resistance.flowFor(drive_Pa, states);
        QVERIFY(cold.converged);
        VERIFY_NEAR(resistance.pressureLoss_Pa(cold.flow_kg_per_s, states), drive_Pa,
                    1e-10 * std::abs(drive_Pa));
        const DrivenFlow started = resistance.flowFor(drive_Pa, states, 1.02 * cold.flow_kg_per_s);
        VERIFY_NEAR(started.flow_kg_per_s, cold.flow_kg_per_s, 1e-11 * std::abs(cold.flow_kg_per_s));
        most = std::max(most, started.iterations);
    }
    qInfo("%d iterations at most from 2 %% off", most);
    QVERIFY(most <= 8);
}

void TestLoopResistance::a_drive_backwards_gives_a_flow_backwards()
{
    const Loop loop = SoundLoop().loop();
    const LoopResistance resistance(loop.elements);
    const std::vector<FluidState> states = statesAt(loop, 30);
    const double forward = resistance.flowFor(100, states).flow_kg_per_s;
    const double backward = resistance.flowFor(-100, states).flow_kg_per_s;
    QVERIFY(forward > 0);
    QVERIFY(backward < 0);
    // Entrances and exits change places at both ends of both hoses, so the way back loses as much.
    VERIFY_NEAR(-backward, forward, 1e-6 * forward);
    QCOMPARE(resistance.flowFor(0, states).flow_kg_per_s, 0.0);
}

void TestLoopResistance::a_pocket_withstands_its_head_and_no_more()
{
    Loop loop = SoundLoop().loop();
    const LoopResistance without(loop.elements);
    loop.elements[1].pocket_forward_m = 0.010;
    const LoopResistance resistance(loop.elements);
    const std::vector<FluidState> states = statesAt(loop, 30);
    const double head_Pa = 0.010 * states[1].density_kg_per_m3 * 9.80665;
    VERIFY_NEAR(resistance.pockets_Pa(true, states), head_Pa, 1e-9);
    QCOMPARE(resistance.pockets_Pa(false, states), 0.0);
    QCOMPARE(resistance.flowFor(0.999 * head_Pa, states).flow_kg_per_s, 0.0);
    VERIFY_NEAR(resistance.flowFor(head_Pa + 50, states).flow_kg_per_s,
                without.flowFor(50, states).flow_kg_per_s, 1e-9);
    VERIFY_NEAR(resistance.flowFor(-50, states).flow_kg_per_s, without.flowFor(-50, states).flow_kg_per_s,
                1e-12);
}

void TestLoopResistance::a_shut_valve_withstands_everything()
{
    Loop loop = SoundLoop().loop();
    loop.elements[2].shut = true;
    const LoopResistance resistance(loop.elements);
    QVERIFY(resistance.shut());
    QCOMPARE(resistance.flowFor(1e5, statesAt(loop, 30)).flow_kg_per_s, 0.0);
}

void TestLoopResistance::an_element_can_have_an_area_of_its_own()
{
    // Six round tubes side by side: each takes a sixth of the flow and loses what all lose together.
    LoopElement one = pipe(2, 0, 0.006), six = one;
    six.area_m2 = 6 * areaOf(0.006);
    six.losses.front().area_m2 = six.area_m2;
    const LoopResistance tube({one}), bundle({six});
    const FluidState state = HalfGlycol().at(50);
    VERIFY_NEAR(bundle.elementLoss_Pa(0, 0.06, state), tube.elementLoss_Pa(0, 0.01, state), 1e-9);
    VERIFY_NEAR(bundle.reynolds(0, 0.06, state), tube.reynolds(0, 0.01, state), 1e-9);
    // Hagen and Poiseuille: 128 viscosity m L / (pi density D^4), at Re 10.
    const double flow = 10 * areaOf(0.006) * state.viscosity_Pa_s / 0.006;
    const double expected_Pa = 128 * state.viscosity_Pa_s * flow * 2 /
                               (std::numbers::pi * state.density_kg_per_m3 * std::pow(0.006, 4));
    VERIFY_NEAR(tube.elementLoss_Pa(0, flow, state), expected_Pa, 1e-4 * expected_Pa);
}

QTEST_APPLESS_MAIN(TestLoopResistance)
#include "test_loop_resistance.moc"
