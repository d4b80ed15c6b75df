#include "tests/near.h"

#include "core/paperwork/dilution.h"

#include <QTest>

#include <cmath>
#include <limits>
#include <random>

using namespace siphonwright;

namespace {

/// Litres of antifreeze after the plan, carried along by hand: what is in, less the share that is drained,
/// plus what is added.
double glycolAfter_l(const MixRequest& request, const MixPlan& plan)
{
    double volume_l = request.present_l;
    double glycol_l = volume_l * request.present_percent / 100;
    for (const MixRound& round : plan.rounds) {
        glycol_l -= volume_l > 0 ? glycol_l * round.drain_l / volume_l : 0;
        glycol_l += round.antifreeze_l;
        volume_l += round.antifreeze_l + round.water_l - round.drain_l;
    }
    return glycol_l;
}

} // namespace

/// Dilution by hand, and its balance over anything.
class TestDilution : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void anEmptySystemIsFilledAsWanted();
    void newHosesAloneMakeItStronger();
    void drainingOnceMakesItStronger();
    void drainingOnceMakesItWeaker();
    void drainingAllThatRunsOutIsNotEnoughAtOnce();
    void plainWaterIsNeverReachedByPartDrains();
    void whereNothingRunsOutItIsSaid();
    void overSixtyPercentIsNotPlanned();
    void asItIsWantedNothingIsDone();
    void nonsenseIsRefused();
    void volumesAndAntifreezeBalanceOverAnything();
};

void TestDilution::anEmptySystemIsFilledAsWanted()
{
    // 20 l at 50 %: 10 l of each.
    const MixPlan plan = planMix({0, 0, 20, 50, {}});
    QVERIFY(plan.outcome == MixOutcome::fill);
    VERIFY_NEAR(plan.antifreeze_l, 10, 1e-12);
    VERIFY_NEAR(plan.water_l, 10, 1e-12);
    VERIFY_NEAR(plan.drain_l, 0, 0);
}

void TestDilution::newHosesAloneMakeItStronger()
{
    // 28 l at 48 % hold 13.44 l of antifreeze; with 2 l of new hoses 30 l at 50 % hold 15: 1.56 l of
    // antifreeze and 0.44 l of water into the hoses, nothing drained.
    const MixPlan plan = planMix({28, 48, 2, 50, 10});
    QVERIFY(plan.outcome == MixOutcome::fill);
    VERIFY_NEAR(plan.antifreeze_l, 1.56, 1e-12);
    VERIFY_NEAR(plan.water_l, 0.44, 1e-12);
    VERIFY_NEAR(plan.percent, 50, 1e-9);
}

void TestDilution::drainingOnceMakesItStronger()
{
    // 28 l at 40 % hold 11.2 l; 30 l at 50 % want 15. Filling the 2 l with antifreeze gives 13.2, 1.8 short.
    // Each litre drained and replaced by antifreeze brings 1 - 0.4 = 0.6 l: drain 3 l, add 5 l. Check: 11.2 -
    // 1.2 + 5 = 15.
    const MixPlan plan = planMix({28, 40, 2, 50, 10});
    QVERIFY(plan.outcome == MixOutcome::drain);
    VERIFY_NEAR(plan.drain_l, 3, 1e-12);
    VERIFY_NEAR(plan.antifreeze_l, 5, 1e-12);
    VERIFY_NEAR(plan.water_l, 0, 0);
    VERIFY_NEAR(plan.filled_l, 30, 1e-12);
}

void TestDilution::drainingOnceMakesItWeaker()
{
    // 28 l at 65 % hold 18.2 l; 30 l at 50 % want 15. Draining D takes 0.65 D: D = 3.2/0.65 = 4.9231 l, and
    // 6.9231 l of water are added.
    const MixPlan plan = planMix({28, 65, 2, 50, {}});
    QVERIFY(plan.outcome == MixOutcome::drain);
    VERIFY_NEAR(plan.drain_l, 3.2 / 0.65, 1e-12);
    VERIFY_NEAR(plan.water_l, 2 + 3.2 / 0.65, 1e-12);
    VERIFY_NEAR(plan.antifreeze_l, 0, 0);
    QVERIFY(plan.message.pattern.find("not entered") != std::string::npos); // how much runs out
}

void TestDilution::drainingAllThatRunsOutIsNotEnoughAtOnce()
{
    // 20 l at 20 %, 5 l run out, 50 % wanted. Each round leaves 1 - s' = (1 - s) x 15/20:
    //   round 1: 1 - 0.80 x 0.75 = 0.40, round 2: 1 - 0.60 x 0.75 = 0.55: so the second drains less:
    //   D = 20 (0.5 - 0.4)/(1 - 0.4) = 3.3333 l.
    const MixPlan plan = planMix({20, 20, 0, 50, 5});
    QVERIFY(plan.outcome == MixOutcome::rounds);
    QCOMPARE(plan.rounds.size(), std::size_t{2});
    VERIFY_NEAR(plan.rounds[0].drain_l, 5, 1e-12);
    VERIFY_NEAR(plan.rounds[0].percent_after, 40, 1e-9);
    VERIFY_NEAR(plan.rounds[1].drain_l, 10.0 / 3, 1e-9);
    VERIFY_NEAR(plan.antifreeze_l, 25.0 / 3, 1e-9);
    VERIFY_NEAR(plan.percent, 50, 1e-6);
    QVERIFY(plan.message.pattern.find("not enough") != std::string::npos);
    // In one go more antifreeze would have done with less: all 7.5 l at once bring 20 x 0.3 = 6 = 0.8 D.
    VERIFY_NEAR(planMix({20, 20, 0, 50, {}}).antifreeze_l, 7.5, 1e-12);
}

void TestDilution::plainWaterIsNeverReachedByPartDrains()
{
    // 10 of 20 l each time: 50, 25, ... after six rounds 50/64 = 0.78 %.
    const MixPlan plan = planMix({20, 50, 0, 0, 10});
    QVERIFY(plan.outcome == MixOutcome::unreachable);
    QCOMPARE(plan.rounds.size(), std::size_t{most_rounds});
    VERIFY_NEAR(plan.percent, 50.0 / 64, 1e-9);
    QVERIFY(plan.message.pattern.find("not reached") != std::string::npos);
    QVERIFY(planMix({20, 50, 0, 0, 20}).outcome == MixOutcome::drain); // all of it does
}

void TestDilution::whereNothingRunsOutItIsSaid()
{
    const MixPlan plan = planMix({20, 30, 1, 50, 0});
    QVERIFY(plan.outcome == MixOutcome::unreachable);
    QVERIFY(plan.message.pattern.find("nothing runs out") != std::string::npos);
    // What the new hose takes is filled all the same: (6 + 1)/21 = 33.3 %.
    VERIFY_NEAR(plan.percent, 100.0 / 3, 1e-9);
}

void TestDilution::overSixtyPercentIsNotPlanned()
{
    QVERIFY(planMix({20, 50, 1, 60, 10}).outcome != MixOutcome::invalid);
    const MixPlan plan = planMix({20, 50, 1, 60.5, 10});
    QVERIFY(plan.outcome == MixOutcome::invalid);
    QVERIFY(format(plan.message, UnitSystem::metric).find("over 60 %") != std::string::npos);
    QVERIFY(plan.rounds.empty());
    QVERIFY(planMix({20, 100, 1, 60, 20}).outcome == MixOutcome::drain); // too strong now is mended
}

void TestDilution::asItIsWantedNothingIsDone()
{
    QVERIFY(planMix({20, 50, 0, 50, 10}).outcome == MixOutcome::nothing_to_do);
    const MixPlan plan = planMix({20, 50, 2, 50, 10}); // but the hoses are still to be filled
    QVERIFY(plan.outcome == MixOutcome::fill);
    VERIFY_NEAR(plan.antifreeze_l, 1, 1e-12);
    VERIFY_NEAR(plan.water_l, 1, 1e-12);
}

void TestDilution::nonsenseIsRefused()
{
    constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();
    for (const MixRequest& bad :
         {MixRequest{-1, 50, 1, 50, {}}, MixRequest{nan_value, 50, 1, 50, {}}, MixRequest{20, -1, 1, 50, {}},
          MixRequest{20, 101, 1, 50, {}}, MixRequest{20, 50, -1, 50, {}}, MixRequest{20, 50, 1, -1, {}},
          MixRequest{20, 50, 1, nan_value, {}}, MixRequest{20, 50, 1, 50, -3}, MixRequest{0, 50, 0, 50, {}},
          MixRequest{1e6, 50, 1, 50, {}}, MixRequest{20, nan_value, 1, 50, {}}}) {
        const MixPlan plan = planMix(bad);
        QVERIFY(plan.outcome == MixOutcome::invalid);
        QVERIFY(!plan.message.pattern.empty());
        QVERIFY(plan.rounds.empty());
    }
}

void TestDilution::volumesAndAntifreezeBalanceOverAnything()
{
    std::mt19937_64 random(20240301);
    std::uniform_real_distribution<double> any(0, 1);
    int several = 0;
    for (int i = 0; i < 20'000; ++i) {
        MixRequest request;
        request.present_l = 60 * any(random);
        request.present_percent = 100 * any(random);
        request.empty_l = 0.01 + 5 * any(random);
        request.wanted_percent = 60 * any(random);
        if (any(random) < 0.7)
            request.drainable_l = request.present_l * any(random);
        const MixPlan plan = planMix(request);
        const double total_l = request.present_l + request.empty_l;
        QVERIFY(plan.outcome != MixOutcome::invalid);
        VERIFY_NEAR(request.present_l + plan.antifreeze_l + plan.water_l - plan.drain_l, total_l, 1e-9);
        VERIFY_NEAR(glycolAfter_l(request, plan), plan.percent / 100 * total_l, 1e-9);
        for (const MixRound& round : plan.rounds) {
            QVERIFY(round.drain_l >= 0 && round.antifreeze_l >= 0 && round.water_l >= 0);
            QVERIFY(round.drain_l <= request.drainable_l.value_or(request.present_l) + 1e-5 ||
                    &round != &plan.rounds.front());
            QVERIFY(round.percent_after >= 0 && round.percent_after <= 100 + 1e-9);
        }
        if (plan.outcome != MixOutcome::unreachable)
            VERIFY_NEAR(plan.percent, request.wanted_percent, 1e-3);
        several += plan.outcome == MixOutcome::rounds ? 1 : 0;
    }
    QVERIFY(several > 1000); // the rows do reach that case
}

QTEST_APPLESS_MAIN(TestDilution)
#include "test_dilution.moc"
