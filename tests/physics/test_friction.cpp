#include "tests/near.h"
#include "tests/physics/published.h"

#include "core/physics/friction.h"

#include <algorithm>
#include <map>
#include <numbers>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double quarter_turn = std::numbers::pi / 2;

double relative(double actual, double expected)
{
    return std::abs(actual / expected - 1);
}

/// Colebrook (1939), solved by repeated substitution.
double colebrook(double reynolds, double relative_roughness)
{
    double inverse_root = 7;
    for (int i = 0; i < 60; ++i)
        inverse_root = -2 * std::log10(relative_roughness / 3.7 + 2.51 * inverse_root / reynolds);
    return 1 / (inverse_root * inverse_root);
}

/// Largest deviation of each kind, printed when all is done.
class Deviations {
public:
    void add(const QString& kind, double deviation)
    {
        double& largest = largest_[kind];
        // Not a number must not go unnoticed.
        largest = deviation > largest || !(deviation == deviation) ? deviation : largest;
    }
    double of(const QString& kind) const
    {
        const auto found = largest_.find(kind);
        return found == largest_.end() ? std::numeric_limits<double>::quiet_NaN() : found->second;
    }
    void print() const
    {
        for (const auto& [kind, deviation] : largest_)
            qInfo("%s: largest relative deviation %.2g", qPrintable(kind), deviation);
    }

private:
    std::map<QString, double> largest_;
};

} // namespace

class TestFriction : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void publishedFactorsAreMet();
    void churchillStandsByColebrookAsStated();
    void curvedPipesAndBendsMeetPublishedValues();
    void bendsAgreeWithItoWithinSevenPercent();
    void anIndependentLibraryAgrees();
    void almostStillFlowIsPlainlyLaminar();
    void bendsOfMoreThanHalfATurnGoOnInProportion();
    void nothingJumpsWhereRegimesMeet();
};

void TestFriction::publishedFactorsAreMet()
{
    Deviations deviations;
    int rows = 0;
    for (const QStringList& row : readCsv(QStringLiteral("data/losses.csv"))) {
        const QString kind = row[0].left(2);
        if (kind != QStringLiteral("FF") && kind != QStringLiteral("FM"))
            continue;
        const double factor =
            frictionFactor(input(row[2], QStringLiteral("Re")), input(row[2], QStringLiteral("eD")));
        deviations.add(row[6], relative(factor, row[3].toDouble()));
        ++rows;
    }
    deviations.print();
    QCOMPARE(rows, 19);
    QVERIFY(deviations.of(QStringLiteral("Churchill 1977; equals fluids.Churchill_1977")) < 1e-5);
    // White, Fluid Mechanics, from memory, three digits.
    QVERIFY(deviations.of(QStringLiteral("Prandtl smooth-pipe table, F.M. White, Fluid Mechanics (ch. 6)")) <
            0.02);
}

void TestFriction::churchillStandsByColebrookAsStated()
{
    int rows = 0;
    for (const QStringList& row : readCsv(QStringLiteral("data/losses.csv"))) {
        if (!row[0].startsWith(QStringLiteral("FD")))
            continue;
        const double reynolds = input(row[2], QStringLiteral("Re"));
        const double roughness = input(row[2], QStringLiteral("eD"));
        VERIFY_NEAR(frictionFactor(reynolds, roughness) / colebrook(reynolds, roughness) - 1,
                    row[3].toDouble(), 2e-4);
        ++rows;
    }
    QCOMPARE(rows, 6);
}

void TestFriction::curvedPipesAndBendsMeetPublishedValues()
{
    Deviations deviations;
    int rows = 0;
    for (const QStringList& row : readCsv(QStringLiteral("data/losses.csv"))) {
        const QString kind = row[0].left(2);
        const double reynolds = input(row[2], QStringLiteral("Re"));
        const double radius = input(row[2], QStringLiteral("r_over_D"));
        const double factor = input(row[2], QStringLiteral("f"));
        double computed = 0;
        if (kind == QStringLiteral("BW")) // White 1929
            computed = curvedPipeRatio(reynolds, radius);
        else if (kind == QStringLiteral("BX")) // White 1929
            computed = bendExcess(reynolds, quarter_turn, radius);
        else if (kind == QStringLiteral("BR")) // Rennels and Hudson 2012
            computed = turbulentBendExcess(factor, quarter_turn, radius) + factor * quarter_turn * radius;
        else
            continue;
        deviations.add(kind, relative(computed, row[3].toDouble()));
        ++rows;
    }
    deviations.print();
    QCOMPARE(rows, 15);
    QVERIFY(deviations.of(QStringLiteral("BW")) < 1e-5);
    QVERIFY(deviations.of(QStringLiteral("BX")) < 1e-5);
    QVERIFY(deviations.of(QStringLiteral("BR")) < 1e-5);
}

/// Another author's measured bends (Ito 1960): the spread between sources, not a check of coding.
void TestFriction::bendsAgreeWithItoWithinSevenPercent()
{
    Deviations deviations;
    int rows = 0;
    for (const QStringList& row : readCsv(QStringLiteral("data/losses.csv"))) {
        if (!row[0].startsWith(QStringLiteral("BI")))
            continue;
        const double factor = frictionFactor(input(row[2], QStringLiteral("Re")), 0);
        const double radius = input(row[2], QStringLiteral("r_over_D"));
        const double computed =
            turbulentBendExcess(factor, quarter_turn, radius) + factor * quarter_turn * radius;
        deviations.add(QStringLiteral("Rennels against Ito"), relative(computed, row[3].toDouble()));
        ++rows;
    }
    deviations.print();
    QCOMPARE(rows, 4);
    QVERIFY(deviations.of(QStringLiteral("Rennels against Ito")) < 0.07);
}

/// python3-fluids, run now, over Reynolds numbers of 1 to 1e7.
void TestFriction::anIndependentLibraryAgrees()
{
    const PythonAnswer answer = runPython(QStringLiteral("reference_losses.py"));
    QVERIFY2(answer.problem.isEmpty(), qPrintable(answer.problem));
    Deviations deviations;
    std::map<QString, int> rows;
    for (const QStringList& row : answer.rows) {
        const QString& kind = row[0];
        const double one = row[1].toDouble();
        const double two = row[2].toDouble();
        const double three = row[3].toDouble();
        ++rows[kind];
        if (kind == QStringLiteral("wall")) {
            deviations.add(kind, relative(frictionFactor(one, two), three));
            if (one >= 4000)
                deviations.add(QStringLiteral("wall against Colebrook"),
                               relative(frictionFactor(one, two), row[4].toDouble()));
        } else if (kind == QStringLiteral("curved")) {
            deviations.add(kind, relative(curvedPipeRatio(one, two), three));
        } else if (kind == QStringLiteral("bend")) {
            const double whole = turbulentBendExcess(one, two, three) + one * two * three;
            deviations.add(kind, relative(whole, row[4].toDouble()));
        } else if (kind == QStringLiteral("down") && (one <= contraction_laminar_to || one >= 25'000)) {
            deviations.add(kind, relative(contractionLoss(one, two), three));
        } else if (kind == QStringLiteral("up") && (one <= expansion_laminar_to || one >= 1'000'000)) {
            deviations.add(kind, relative(expansionLoss(one, two), three));
        }
    }
    deviations.print();
    QCOMPARE(rows[QStringLiteral("wall")], 497);
    QCOMPARE(rows[QStringLiteral("curved")], 230);
    QCOMPARE(rows[QStringLiteral("bend")], 180);
    QCOMPARE(rows[QStringLiteral("down")], 568);
    QCOMPARE(rows[QStringLiteral("up")], 568);
    for (const char* kind : {"wall", "curved", "bend", "down", "up"})
        QVERIFY2(deviations.of(QString::fromLatin1(kind)) < 1e-12, kind);
    // Two published equations of the same diagram, relative roughness 0 to 0.05.
    QVERIFY(deviations.of(QStringLiteral("wall against Colebrook")) < 0.05);
}

void TestFriction::almostStillFlowIsPlainlyLaminar()
{
    // Hagen-Poiseuille, 64/Re.
    QCOMPARE(frictionFactor(0.01, 0), 6400.0);
    VERIFY_NEAR(frictionFactor(0.999999, 0) / frictionFactor(1, 0), 1 / 0.999999, 1e-12);
    QCOMPARE(curvedPipeRatio(1, 5), 1.0);
}

void TestFriction::bendsOfMoreThanHalfATurnGoOnInProportion()
{
    const double half = turbulentBendExcess(0.03, std::numbers::pi, 5);
    VERIFY_NEAR(turbulentBendExcess(0.03, 2 * std::numbers::pi, 5), 2 * half, 1e-12);
    VERIFY_NEAR(turbulentBendExcess(0.03, std::numbers::pi + 1e-9, 5), half, 1e-8);
    QCOMPARE(turbulentBendExcess(0.03, 0, 5), 0.0);
}

void TestFriction::nothingJumpsWhereRegimesMeet()
{
    const auto jump = [](auto loss, double at) {
        return relative(loss(at * (1 + 1e-9)), loss(at * (1 - 1e-9)));
    };
    for (const double size : {0.55, 1.0, 2.0, 5.0, 30.0})
        QVERIFY(jump([size](double re) { return bendExcess(re, quarter_turn, size); }, bend_laminar_to) <
                1e-8);
    for (const double size : {0.1, 0.5, 0.9}) {
        QVERIFY(jump([size](double re) { return contractionLoss(re, size); }, contraction_laminar_to) < 1e-8);
        QVERIFY(jump([size](double re) { return expansionLoss(re, size); }, expansion_laminar_to) < 1e-8);
    }
    QVERIFY(jump([](double re) { return frictionFactor(re, 1e-3); }, 1) < 1e-8);
}

QTEST_APPLESS_MAIN(TestFriction)
#include "test_friction.moc"
