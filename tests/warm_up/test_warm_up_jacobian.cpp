#include "tests/near.h"
#include "tests/warm_up/typical_engine.h"

#include "core/physics/warm_up_model.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <vector>

using namespace siphonwright;
using siphonwright::test::halfGlycol;
using siphonwright::test::TypicalEngine;
using siphonwright::test::typicalWarmUp;

class TestWarmUpJacobian : public QObject {
    Q_OBJECT
private slots:
    void theJacobianIsThatOfTheRates_data();
    void theJacobianIsThatOfTheRates();
    void aSoundDayIsNotHeldUpByStability();
};

void TestWarmUpJacobian::theJacobianIsThatOfTheRates_data()
{
    QTest::addColumn<TypicalEngine>("engine");
    QTest::addColumn<int>("heaters");
    QTest::newRow("sound") << TypicalEngine{} << 1;
    QTest::newRow("two heaters") << TypicalEngine{} << 2;
    TypicalEngine engine;
    engine.pocket_m = 0.001;
    QTest::newRow("with a pocket") << engine << 1;
    engine = {};
    engine.shut = true;
    QTest::newRow("blocked") << engine << 1;
}

namespace {

/// All temperatures apart, the chambers hot, or, for backward flow, cold with a cold hose above them.
std::vector<double> someState(const WarmUpModel& model, bool forward)
{
    std::vector<double> state(model.size());
    for (std::size_t i = 0; i < state.size(); ++i)
        state[i] = 38.13 + 2.7 * std::sin(3.0 * static_cast<double>(i));
    for (std::size_t loop = 0; loop < model.loopCount(); ++loop) {
        const LoopStates& at = model.statesOf(loop);
        state[at.chamber] = forward ? 62.3 : 20;
        for (std::size_t k = at.chamber + 1; !forward && k <= at.return_end; ++k)
            state[k] = 15 + 0.1 * static_cast<double>(k);
    }
    return state;
}

/// Largest difference between the Jacobian and central differences of the rates, per second; of the heat
/// lost, a hundredth of W/K.
double worstDifference(WarmUpModel& model, std::vector<double> state)
{
    const std::size_t n = model.size();
    std::vector<double> jacobian(n * n), above(n), below(n);
    model.jacobian(state, jacobian);
    double worst = 0;
    for (std::size_t k = 0; k < n; ++k) {
        constexpr double by_K = 2e-3;
        const double here = state[k];
        state[k] = here + by_K;
        model(0, state, above);
        state[k] = here - by_K;
        model(0, state, below);
        state[k] = here;
        for (std::size_t i = 0; i < n; ++i) {
            const double difference = (above[i] - below[i]) / (2 * by_K);
            const double miss = std::abs(difference - jacobian[i * n + k]);
            worst = std::max(worst, i == model.lost() ? miss / 100 : miss);
        }
    }
    return worst;
}

} // namespace

void TestWarmUpJacobian::theJacobianIsThatOfTheRates()
{
    // Eigenvalues are up to 0.1 per second; differences over 4 mK are within 1e-8 of derivatives.
    QFETCH(TypicalEngine, engine);
    QFETCH(int, heaters);
    for (const ThermostatPlace place : {ThermostatPlace::none, ThermostatPlace::chamber_inlet,
                                        ThermostatPlace::chamber_outlet, ThermostatPlace::remote}) {
        WarmUpInputs inputs = typicalWarmUp(engine);
        inputs.loops[0].heater.thermostat.place = place;
        inputs.loops[0].swept_share = 0.4;
        inputs.loops.resize(static_cast<std::size_t>(heaters), inputs.loops[0]);
        WarmUpModel model(inputs, {}, halfGlycol());
        for (const bool forward : {true, false}) {
            const std::vector<double> state = someState(model, forward);
            for (std::size_t loop = 0; loop < model.loopCount(); ++loop) {
                model.setPower(loop, 1500);
                const double flow = model.flow_kg_per_s(loop, state);
                QVERIFY(engine.shut ? flow == 0 : (flow > 0) == forward);
            }
            VERIFY_NEAR(worstDifference(model, state), 0, 1e-8);
        }
    }
}

void TestWarmUpJacobian::aSoundDayIsNotHeldUpByStability()
{
    // Stability alone (3.3 over an eigenvalue of 0.084 per second) asks an explicit method of six stages for
    // 13,000 evaluations in 24 h.
    const WarmUp day = warmUp(typicalWarmUp({}), halfGlycol());
    QCOMPARE(day.status, WarmUpStatus::done);
    QVERIFY2(day.evaluations < 8000, qPrintable(QString::number(day.evaluations)));
}

QTEST_APPLESS_MAIN(TestWarmUpJacobian)
#include "test_warm_up_jacobian.moc"
