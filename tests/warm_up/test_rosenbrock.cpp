#include "tests/near.h"

#include "core/physics/dense_lu.h"
#include "core/physics/rosenbrock.h"
#include "core/physics/switching_integrator.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <limits>
#include <span>
#include <vector>

using namespace siphonwright;

class TestRosenbrock : public QObject {
    Q_OBJECT
private slots:
    void linearEquationsAreSolvedWhateverTheirOrder();
    void aSingularMatrixIsSaid();
    void aStepErrsWithTheSixthPower();
    void betweenStepsTheErrorIsOfFourthOrder();
    void aFastStateIsGoneAfterOneLongStep();
    void stepsDoNotHangOnHowStiffItIs();
    void robertsonsReactionEndsAsPublished();
    void tighterToleranceMeansLessErrorInProportion();
    void whatCannotBeFollowedIsSaid();
    void anEasyProblemIsSteppedExplicitly();
    void aStiffProblemIsTakenOver();
    void anEventBeginsExplicitlyAgain();
};

namespace {

using State = std::span<const double>;
using Rates = std::span<double>;

/// y' = y (1 - y) from 1/4: y = 1/(1 + 3 exp(-t)).
struct Logistic {
    void operator()(double, State y, Rates rate) const { rate[0] = y[0] * (1 - y[0]); }
    static void jacobian(State y, Rates row_by_row) { row_by_row[0] = 1 - 2 * y[0]; }
    static double at(double t) { return 1 / (1 + 3 * std::exp(-t)); }
};

/// Prothero and Robinson 1974, Math. Comp. 28:145-162: y' = fast (y - sin t) + cos t, y = sin t. Time is the
/// second state, so that rates hang on states alone.
struct ProtheroRobinson {
    double fast = -1e6;

    void operator()(double, State y, Rates rate) const
    {
        rate[0] = fast * (y[0] - std::sin(y[1])) + std::cos(y[1]);
        rate[1] = 1;
    }
    void jacobian(State y, Rates row_by_row) const
    {
        row_by_row[0] = fast;
        row_by_row[1] = -fast * std::cos(y[1]) - std::sin(y[1]);
        row_by_row[2] = row_by_row[3] = 0;
    }
};

/// Robertson 1966 (in Walsh, Numerical Analysis, 178-182), of which Hairer and Wanner 1996, IV.1, write.
struct Robertson {
    void operator()(double, State y, Rates rate) const
    {
        const double first = 0.04 * y[0], back = 1e4 * y[1] * y[2], last = 3e7 * y[1] * y[1];
        rate[0] = back - first;
        rate[1] = first - back - last;
        rate[2] = last;
    }
    static void jacobian(State y, Rates d)
    {
        d[0] = -0.04;
        d[1] = 1e4 * y[2];
        d[2] = 1e4 * y[1];
        d[6] = 0;
        d[7] = 6e7 * y[1];
        d[8] = 0;
        for (std::size_t k = 0; k < 3; ++k)
            d[3 + k] = -d[k] - d[6 + k];
    }
};

/// Two states that exchange a thousand times faster than both go to a goal: with eigenvalues -1 and -1000,
/// from 2 and 0 to 0, y1 = exp(-t) + exp(-1000 t), y2 = exp(-t) - exp(-1000 t).
struct FastAndSlow {
    double goal = 0;

    void operator()(double, State y, Rates rate) const
    {
        rate[0] = -500.5 * (y[0] - goal) + 499.5 * (y[1] - goal);
        rate[1] = 499.5 * (y[0] - goal) - 500.5 * (y[1] - goal);
    }
    static void jacobian(State, Rates d)
    {
        d[0] = d[3] = -500.5;
        d[1] = d[2] = 499.5;
    }
};

/// One step of a given size: with no tolerance to meet, the first step tried is taken.
Rosenbrock oneRosenbrockStep(double h)
{
    Rosenbrock solver({1e300, {1e300}});
    const std::array<double, 1> start = {0.25};
    solver.begin(Logistic{}, 0, start, h);
    solver.step(Logistic{}, 10);
    return solver;
}

template <typename Solver, typename System>
bool follow(Solver& solver, const System& system, double until)
{
    while (solver.time() < until) {
        if (solver.step(system, until) != StepStatus::done)
            return false;
    }
    return true;
}

} // namespace

void TestRosenbrock::linearEquationsAreSolvedWhateverTheirOrder()
{
    // 0 x + 2 y + z = 7, 4 x + y - z = 3, 2 x + y + 3 z = 13 has x = 1, y = 2, z = 3 in any order of rows;
    // the first pivot of this one is 0.
    DenseLu equations(3);
    const std::array<double, 9> rows = {0, 2, 1, 4, 1, -1, 2, 1, 3};
    std::copy(rows.begin(), rows.end(), equations.matrix().begin());
    QVERIFY(equations.factor());
    std::array<double, 3> x = {7, 3, 13};
    equations.solve(x);
    for (std::size_t i = 0; i < 3; ++i)
        VERIFY_NEAR(x[i], double(i + 1), 1e-14);
}

void TestRosenbrock::aSingularMatrixIsSaid()
{
    DenseLu equations(2);
    const std::array<double, 4> twice = {1, 2, 2, 4};
    std::copy(twice.begin(), twice.end(), equations.matrix().begin());
    QVERIFY(!equations.factor());
    equations.matrix()[0] = std::numeric_limits<double>::quiet_NaN();
    QVERIFY(!equations.factor());
}

void TestRosenbrock::aStepErrsWithTheSixthPower()
{
    // Order 5 (Steinebach 2023): one step's error goes with h^6.
    const auto error = [](double h) { return std::abs(oneRosenbrockStep(h).state()[0] - Logistic::at(h)); };
    for (const double h : {0.8, 0.4}) {
        const double order = std::log2(error(h) / error(h / 2));
        QVERIFY2(order > 5.5 && order < 6.6, qPrintable(QString::number(order)));
    }
}

void TestRosenbrock::betweenStepsTheErrorIsOfFourthOrder()
{
    // Order 4 between steps (Steinebach 2023): the error at a fixed share of one step goes with h^5.
    const auto error = [](double h) {
        return std::abs(oneRosenbrockStep(h).at(0.4 * h, 0) - Logistic::at(0.4 * h));
    };
    for (const double h : {0.4, 0.2}) {
        const double order = std::log2(error(h) / error(h / 2));
        QVERIFY2(order > 4.5 && order < 5.6, qPrintable(QString::number(order)));
    }
    const Rosenbrock step = oneRosenbrockStep(0.3);
    QCOMPARE(step.at(0, 0), 0.25);
    VERIFY_NEAR(step.at(0.3, 0), step.state()[0], 1e-15);
}

void TestRosenbrock::aFastStateIsGoneAfterOneLongStep()
{
    // L-stable: for y' = -a y one step multiplies by what goes to 0 with 1/(a h).
    for (const double fast : {1e4, 1e8}) {
        ProtheroRobinson decay{-fast};
        Rosenbrock solver({1e300, {1e300, 1e300}});
        const std::array<double, 2> start = {1, 0}; // 1 off sin 0
        solver.begin(decay, 0, start, 0.1);
        solver.step(decay, 1);
        QVERIFY(std::abs(solver.state()[0] - std::sin(0.1)) < 100 / (fast * 0.1) + 1e-4);
    }
}

void TestRosenbrock::stepsDoNotHangOnHowStiffItIs()
{
    // An explicit method, stable up to 3.3, would take 3e6 and 3e8 steps.
    for (const double fast : {-1e6, -1e8}) {
        const ProtheroRobinson problem{fast};
        Rosenbrock solver({1e-6, {1e-6, 1e-6}});
        const std::array<double, 2> start = {0, 0};
        solver.begin(problem, 0, start);
        QVERIFY(follow(solver, problem, 10));
        VERIFY_NEAR(solver.state()[0], std::sin(10.0), 1e-5);
        QVERIFY2(solver.attempts() < 300, qPrintable(QString::number(solver.attempts())));
    }
}

void TestRosenbrock::robertsonsReactionEndsAsPublished()
{
    // At t = 40: 7.1583e-01 9.1855e-06 2.8416e-01, printed in the documentation of CVODE's example
    // cvRoberts_dns (Hindmarsh and Serban, User Documentation for CVODE). What there is stays: sum 1.
    Rosenbrock solver({1e-7, {1e-9, 1e-12, 1e-9}});
    const std::array<double, 3> start = {1, 0, 0};
    solver.begin(Robertson{}, 0, start, 1e-6);
    while (solver.time() < 40) {
        QCOMPARE(solver.step(Robertson{}, 40), StepStatus::done);
        const double middle = solver.from() + 0.37 * (solver.time() - solver.from());
        VERIFY_NEAR(solver.at(middle, 0) + solver.at(middle, 1) + solver.at(middle, 2), 1, 1e-12);
    }
    VERIFY_NEAR(solver.state()[0], 7.1583e-01, 0.5e-5);
    VERIFY_NEAR(solver.state()[1], 9.1855e-06, 0.5e-10);
    VERIFY_NEAR(solver.state()[2], 2.8416e-01, 0.5e-5);
}

void TestRosenbrock::tighterToleranceMeansLessErrorInProportion()
{
    double before = 1;
    for (const double tolerance : {1e-4, 1e-6, 1e-8, 1e-10}) {
        Rosenbrock solver({tolerance, {tolerance}});
        const std::array<double, 1> start = {0.25};
        solver.begin(Logistic{}, 0, start);
        QVERIFY(follow(solver, Logistic{}, 3));
        const double error = std::abs(solver.state()[0] - Logistic::at(3));
        QVERIFY2(error < 10 * tolerance && error < before, qPrintable(QString::number(error)));
        before = error;
    }
}

namespace {

/// y' = y^2 from 1 has no solution past t = 1.
struct BlowsUp {
    void operator()(double, State y, Rates rate) const { rate[0] = y[0] * y[0]; }
    static void jacobian(State y, Rates d) { d[0] = 2 * y[0]; }
};

struct NoNumber {
    void operator()(double, State, Rates rate) const { rate[0] = std::numeric_limits<double>::quiet_NaN(); }
    static void jacobian(State, Rates d) { d[0] = 0; }
};

} // namespace

void TestRosenbrock::whatCannotBeFollowedIsSaid()
{
    const std::array<double, 1> start = {1};
    Rosenbrock solver({1e-8, {1e-8}});
    solver.begin(BlowsUp{}, 0, start);
    StepStatus status = StepStatus::done;
    for (int i = 0; i < 10000 && status == StepStatus::done && solver.time() < 2; ++i)
        status = solver.step(BlowsUp{}, 2);
    QVERIFY(status != StepStatus::done);
    VERIFY_NEAR(solver.time(), 1, 1e-3);
    solver.begin(NoNumber{}, 0, start);
    QCOMPARE(solver.step(NoNumber{}, 1), StepStatus::not_finite);
}

void TestRosenbrock::anEasyProblemIsSteppedExplicitly()
{
    DormandPrince plain({1e-8, {1e-8}});
    SwitchingIntegrator switching({1e-8, {1e-8}});
    const std::array<double, 1> start = {0.25};
    plain.begin(Logistic{}, 0, start);
    switching.begin(Logistic{}, 0, start);
    while (plain.time() < 3) {
        QCOMPARE(plain.step(Logistic{}, 3), StepStatus::done);
        QCOMPARE(switching.step(Logistic{}, 3), StepStatus::done);
        QCOMPARE(switching.time(), plain.time());
        QCOMPARE(switching.state()[0], plain.state()[0]);
    }
    QCOMPARE(switching.evaluations(), plain.evaluations());
}

void TestRosenbrock::aStiffProblemIsTakenOver()
{
    const IntegratorTolerance tolerance{1e-7, {1e-7, 1e-7}};
    const std::array<double, 2> start = {2, 0};
    DormandPrince plain(tolerance);
    plain.begin(FastAndSlow{}, 0, start);
    QVERIFY(follow(plain, FastAndSlow{}, 5));
    SwitchingIntegrator switching(tolerance);
    switching.begin(FastAndSlow{}, 0, start);
    while (switching.time() < 5) {
        QCOMPARE(switching.step(FastAndSlow{}, 5), StepStatus::done);
        for (const double share : {0.3, 1.0}) { // between steps and at their ends, whoever made them
            const double t = switching.from() + share * (switching.time() - switching.from());
            VERIFY_NEAR(switching.at(t, 0), std::exp(-t) + std::exp(-1000 * t), 5e-6);
            VERIFY_NEAR(switching.at(t, 1), std::exp(-t) - std::exp(-1000 * t), 5e-6);
        }
    }
    VERIFY_NEAR(switching.state()[0], std::exp(-5.0), 1e-6);
    // Stability alone asks the explicit method for 5 * 1000/3.3 steps of six evaluations.
    QVERIFY(plain.evaluations() > 9000);
    QVERIFY2(switching.evaluations() < 1000, qPrintable(QString::number(switching.evaluations())));
}

void TestRosenbrock::anEventBeginsExplicitlyAgain()
{
    FastAndSlow problem;
    SwitchingIntegrator solver({1e-7, {1e-7, 1e-7}});
    const std::array<double, 2> start = {2, 0};
    solver.begin(problem, 0, start);
    while (solver.time() < 3)
        QCOMPARE(solver.step(problem, 5), StepStatus::done);
    QVERIFY(solver.from() < 3 && solver.time() > 3.01); // in one of the long steps
    solver.shorten(problem, 3);
    problem.goal = 1;
    solver.restart(problem);
    QCOMPARE(solver.time(), 3.0);
    VERIFY_NEAR(solver.state()[0], std::exp(-3.0), 1e-6);
    QCOMPARE(solver.step(problem, 5), StepStatus::done);
    QVERIFY(solver.time() < 3.01); // what is fast is followed again
    QVERIFY(follow(solver, problem, 5));
    VERIFY_NEAR(solver.state()[0], 1 - (1 - std::exp(-3.0)) * std::exp(-2.0), 1e-6);
}

QTEST_APPLESS_MAIN(TestRosenbrock)
#include "test_rosenbrock.moc"
