#include "tests/near.h"

#include "core/physics/integrator.h"

#include <array>
#include <cmath>
#include <numbers>

using namespace siphonwright;

class TestIntegrator : public QObject {
    Q_OBJECT
private slots:
    void rootsAreNarrowedToTheWidthAsked();
    void aBracketWithoutARootComesBackUntouched();
    void aStepErrsWithTheFifthPower();
    void betweenStepsTheErrorIsOfFourthOrder();
    void anOrbitClosesToTheTolerance();
    void tighterToleranceMeansLessErrorInProportion();
    void conservedSumsStayToRounding();
    void anEventIsFoundWhereTheClosedFormHasIt();
    void aRiseWithinAStepIsSeen();
    void aThermostatSwitchesWhereTheClosedFormSays();
    void aStateLeftOutOfTheControlDoesNotSteerIt();
    void aSliverBeforeTheEndIsStepped();
    void whatCannotBeFollowedIsSaid();
};

namespace {

using State = std::span<const double>;
using Rate = std::span<double>;

/// y' = -y + sin t; from y(0) = 1, y = 1.5 exp(-t) + (sin t - cos t)/2.
void driven(double t, State y, Rate dydt)
{
    dydt[0] = -y[0] + std::sin(t);
}
double drivenAt(double t)
{
    return 1.5 * std::exp(-t) + (std::sin(t) - std::cos(t)) / 2;
}

/// One step of a given size: with no tolerance to meet, the first step tried is taken.
DormandPrince oneStep(double h)
{
    DormandPrince solver({1e300, {1e300}});
    const std::array<double, 1> start = {1};
    solver.begin(driven, 0, start, h);
    solver.step(driven, 10);
    return solver;
}

} // namespace

void TestIntegrator::rootsAreNarrowedToTheWidthAsked()
{
    for (const double width : {1e-3, 1e-9, 1e-14}) {
        const auto square = [](double x) { return x * x - 2; };
        const RootBracket root = narrowRoot(square, 0, 2, -2, 2, width);
        QVERIFY(root.high - root.low <= width);
        QVERIFY(root.low <= std::numbers::sqrt2 + 1e-15 && root.high >= std::numbers::sqrt2 - 1e-15);
        // A function that is flat beside its root makes plain false position crawl.
        const auto flat = [](double x) { return std::pow(x, 25) - 1e-5; };
        const RootBracket hard = narrowRoot(flat, 0, 4, flat(0), flat(4), width);
        VERIFY_NEAR(hard.middle(), std::pow(1e-5, 1.0 / 25), width);
        QVERIFY(hard.evaluations < 120);
    }
}

void TestIntegrator::aBracketWithoutARootComesBackUntouched()
{
    const auto one = [](double) { return 1.0; };
    const RootBracket none = narrowRoot(one, 0, 2, 1, 1, 1e-6);
    QCOMPARE(none.low, 0.0);
    QCOMPARE(none.high, 2.0);
    QCOMPARE(none.evaluations, 0);
    QVERIFY(!firstRise(one, 0, 1, 1e-6));
}

void TestIntegrator::aStepErrsWithTheFifthPower()
{
    // Order 5: one step's error goes with h^6.
    const auto error = [](double h) { return std::abs(oneStep(h).state()[0] - drivenAt(h)); };
    for (const double h : {0.4, 0.2}) {
        const double order = std::log2(error(h) / error(h / 2));
        QVERIFY2(order > 5.6 && order < 6.6, qPrintable(QString::number(order)));
    }
}

void TestIntegrator::betweenStepsTheErrorIsOfFourthOrder()
{
    // Order 4 between steps: the error at a fixed share of one step goes with h^5.
    const auto error = [](double h) { return std::abs(oneStep(h).at(0.4 * h, 0) - drivenAt(0.4 * h)); };
    for (const double h : {0.4, 0.2}) {
        const double order = std::log2(error(h) / error(h / 2));
        QVERIFY2(order > 4.6 && order < 5.6, qPrintable(QString::number(order)));
    }
    const DormandPrince step = oneStep(0.3);
    QCOMPARE(step.at(0, 0), 1.0);
    VERIFY_NEAR(step.at(0.3, 0), step.state()[0], 1e-15);
}

void TestIntegrator::anOrbitClosesToTheTolerance()
{
    // Arenstorf's orbit, period 17.0652165601579625588917206249 (Hairer, Norsett and Wanner 1993, I p. 130).
    constexpr double moon = 0.012277471, earth = 1 - moon;
    const auto orbit = [&](double, State y, Rate d) {
        const double d1 = std::pow((y[0] + moon) * (y[0] + moon) + y[1] * y[1], 1.5);
        const double d2 = std::pow((y[0] - earth) * (y[0] - earth) + y[1] * y[1], 1.5);
        d[0] = y[2];
        d[1] = y[3];
        d[2] = y[0] + 2 * y[3] - earth * (y[0] + moon) / d1 - moon * (y[0] - earth) / d2;
        d[3] = y[1] - 2 * y[2] - earth * y[1] / d1 - moon * y[1] / d2;
    };
    const std::array<double, 4> start = {0.994, 0, 0, -2.00158510637908252240537862224};
    constexpr double period = 17.0652165601579625588917206249;
    DormandPrince solver({1e-12, std::vector<double>(4, 1e-12)});
    solver.begin(orbit, 0, start);
    while (solver.time() < period)
        QCOMPARE(solver.step(orbit, period), StepStatus::done);
    VERIFY_NEAR(solver.state()[0], 0.994, 1e-5);
    VERIFY_NEAR(solver.state()[1], 0, 1e-5);
    // The same book's program DOPRI5 takes a few hundred steps at 1e-7; the count shows that control works.
    QVERIFY(solver.attempts() < 3000);
}

void TestIntegrator::tighterToleranceMeansLessErrorInProportion()
{
    double before = 1;
    for (const double tolerance : {1e-4, 1e-6, 1e-8, 1e-10}) {
        DormandPrince solver({tolerance, {tolerance}});
        const std::array<double, 1> start = {1};
        solver.begin(driven, 0, start);
        while (solver.time() < 20)
            QCOMPARE(solver.step(driven, 20), StepStatus::done);
        const double error = std::abs(solver.state()[0] - drivenAt(20));
        QVERIFY2(error < 10 * tolerance && error < before, qPrintable(QString::number(error)));
        before = error;
    }
}

void TestIntegrator::conservedSumsStayToRounding()
{
    // Three vessels passing on what they hold, at rates that vary with it: what they hold together stays.
    const auto vessels = [](double t, State y, Rate d) {
        const double ab = y[0] * y[1] + 0.1 * std::sin(t), bc = y[1] * y[1] / (1 + y[2]);
        d[0] = -ab;
        d[1] = ab - bc;
        d[2] = bc;
    };
    DormandPrince solver({1e-3, std::vector<double>(3, 1e-3)});
    const std::array<double, 3> start = {3, 2, 1};
    solver.begin(vessels, 0, start);
    while (solver.time() < 30) {
        QCOMPARE(solver.step(vessels, 30), StepStatus::done);
        const double middle = solver.from() + 0.37 * (solver.time() - solver.from());
        VERIFY_NEAR(solver.at(middle, 0) + solver.at(middle, 1) + solver.at(middle, 2), 6, 1e-13);
    }
}

void TestIntegrator::anEventIsFoundWhereTheClosedFormHasIt()
{
    // Free fall from 100 m: the ground after sqrt(2 * 100 / g).
    const auto fall = [](double, State y, Rate d) {
        d[0] = y[1];
        d[1] = -9.80665;
    };
    DormandPrince solver({1e-9, std::vector<double>(2, 1e-9)});
    const std::array<double, 2> start = {100, 0};
    solver.begin(fall, 0, start);
    std::optional<double> ground;
    while (!ground && solver.time() < 60) {
        QCOMPARE(solver.step(fall, 60), StepStatus::done);
        ground = firstRise([&](double t) { return -solver.at(t, 0); }, solver.from(), solver.time(), 1e-9);
    }
    QVERIFY(ground);
    VERIFY_NEAR(*ground, std::sqrt(2 * 100 / 9.80665), 2e-9);
    QVERIFY(solver.at(*ground, 0) <= 0); // on the far side
}

void TestIntegrator::aRiseWithinAStepIsSeen()
{
    // Over zero only in the middle: both ends are under it.
    const auto hill = [](double t) { return 0.2 - (t - 0.5) * (t - 0.5); };
    const auto rise = firstRise(hill, 0, 1, 1e-10);
    QVERIFY(rise);
    VERIFY_NEAR(*rise, 0.5 - std::sqrt(0.2), 1e-10);
}

void TestIntegrator::aThermostatSwitchesWhereTheClosedFormSays()
{
    // One body, 1 K a minute when heated, cooling 0.01 of its excess a second. Off at 60, on at 50, air 0,
    // heated towards 100: off after -100 ln(1 - 0.6), then 100 ln(60/50) cold, 100 ln(50/40) warm, in turns.
    bool on = true;
    const auto body = [&](double, State y, Rate d) { d[0] = 0.01 * ((on ? 100 : 0) - y[0]); };
    DormandPrince solver({1e-8, {1e-8}});
    const std::array<double, 1> start = {0};
    solver.begin(body, 0, start);
    std::vector<double> switches;
    while (switches.size() < 21) {
        QCOMPARE(solver.step(body, 1e6), StepStatus::done);
        const auto g = [&](double t) { return on ? solver.at(t, 0) - 60 : 50 - solver.at(t, 0); };
        const auto at = firstRise(g, solver.from(), solver.time(), 1e-9);
        if (!at)
            continue;
        switches.push_back(*at);
        solver.shorten(body, *at);
        on = !on;
        solver.restart(body);
    }
    double expected = -100 * std::log(0.4);
    for (std::size_t i = 0; i < switches.size(); ++i) {
        VERIFY_NEAR(switches[i], expected, 1e-4);
        expected += i % 2 == 0 ? 100 * std::log(60.0 / 50) : 100 * std::log(50.0 / 40);
    }
}

void TestIntegrator::aStateLeftOutOfTheControlDoesNotSteerIt()
{
    const double left_out = std::numeric_limits<double>::infinity();
    const auto both = [](double t, State y, Rate d) {
        driven(t, y, d);
        d[1] = 1e6 * y[0]; // adds up, on a scale of its own
    };
    DormandPrince alone({1e-8, {1e-8}});
    DormandPrince with_sum({1e-8, {1e-8, left_out}});
    const std::array<double, 2> start = {1, 0};
    alone.begin(driven, 0, State(start).first(1));
    with_sum.begin(both, 0, start);
    while (alone.time() < 20) {
        QCOMPARE(alone.step(driven, 20), StepStatus::done);
        QCOMPARE(with_sum.step(both, 20), StepStatus::done);
        QCOMPARE(with_sum.time(), alone.time());
    }
    // 1e6 times the integral of y: 1.5 (1 - exp(-t)) + (1 - cos t - sin t)/2
    const double t = 20;
    VERIFY_NEAR(with_sum.state()[1] / 1e6, 1.5 * (1 - std::exp(-t)) + (1 - std::cos(t) - std::sin(t)) / 2,
                1e-6);
}

void TestIntegrator::aSliverBeforeTheEndIsStepped()
{
    // As after an event a rounding error before the end of a day.
    DormandPrince solver({1e-6, {1e-6}});
    const std::array<double, 1> start = {1};
    const double latest = 86400;
    const double before = std::nextafter(latest, 0);
    solver.begin(driven, before, start);
    QCOMPARE(solver.step(driven, latest), StepStatus::done);
    QCOMPARE(solver.time(), latest);
    VERIFY_NEAR(solver.state()[0], 1, 1e-9);
}

void TestIntegrator::whatCannotBeFollowedIsSaid()
{
    // y' = y^2 from 1 has no solution past t = 1.
    const auto blows_up = [](double, State y, Rate d) { d[0] = y[0] * y[0]; };
    DormandPrince solver({1e-8, {1e-8}});
    const std::array<double, 1> start = {1};
    solver.begin(blows_up, 0, start);
    StepStatus status = StepStatus::done;
    for (int i = 0; i < 10000 && status == StepStatus::done && solver.time() < 2; ++i)
        status = solver.step(blows_up, 2);
    QVERIFY(status != StepStatus::done);
    VERIFY_NEAR(solver.time(), 1, 1e-3);

    const auto no_number = [](double, State, Rate d) { d[0] = std::numeric_limits<double>::quiet_NaN(); };
    solver.begin(no_number, 0, start);
    QCOMPARE(solver.step(no_number, 1), StepStatus::not_finite);
}

QTEST_APPLESS_MAIN(TestIntegrator)
#include "test_integrator.moc"
