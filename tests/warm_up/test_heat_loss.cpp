#include "tests/near.h"
#include "tests/warm_up/check_rows.h"

#include "core/physics/element.h"
#include "core/physics/heat_loss.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

using namespace siphonwright;
using siphonwright::test::CheckRow;

namespace {

/// Ethylene glycol, 50 % by volume: the fit of the ASHRAE Handbook 2001 that an open property library gives,
/// -30 to 100 degC, as the rows were computed with.
class HalfGlycol : public Fluid {
public:
    FluidState at(double degC) const override
    {
        const double t = std::min(degC, 100.0);
        return {1081.083 - 0.338265 * t - 0.00243064 * t * t,
                std::exp(-4.794039 - 0.04378271 * t + 3.2411093e-4 * t * t - 1.3528125e-6 * t * t * t),
                3203.38 + 3.85965 * t, 0.363794 + 9.0401e-4 * t - 3.8549e-6 * t * t};
    }
    double lowest_degC() const override { return -35; }
    double highest_degC() const override { return 100; }
};

/// Water as a textbook's example has it: beta 4e-4 1/K, nu 6.25e-7 m2/s, Pr 4.16, k 0.634 W/m K.
class TextbookWater : public Fluid {
public:
    FluidState at(double degC) const override
    {
        const double density = 1000 * (1 - 4e-4 * (degC - 42));
        const double viscosity = 6.25e-7 * density;
        return {density, viscosity, 4.16 * 0.634 / viscosity, 0.634};
    }
    double lowest_degC() const override { return 0; }
    double highest_degC() const override { return 100; }
};

} // namespace

class TestHeatLoss : public QObject {
    Q_OBJECT
private slots:
    void correlationsEqualTheirPublishedAndComputedValues();
    void airEqualsTheStandardAtmosphere();
    void hoseLosesWhatTheWorkedBalancesSay_data();
    void hoseLosesWhatTheWorkedBalancesSay();
    void windNeverLowersTheLoss();
    void theSurfaceReadsBetweenCoolantAndAir();
    void insideFilmRisesWithFlowAndIsTheSameBothWays();
    void blockFilmFollowsItsTwoFormsAndNeverFalls();
    void blockLossEqualsTheWorkedFigures();
    void elementSurfaceEqualsTheWorkedFigures_data();
    void elementSurfaceEqualsTheWorkedFigures();
    void elementSurfaceEqualsATextbookExample();
    void elementThatBoilsIsHeldNearTheBoilingPoint();
    void whatIsNotPhysicalIsRefused();
};

void TestHeatLoss::correlationsEqualTheirPublishedAndComputedValues()
{
    const auto rows = test::readCheckRows("heat_loss.csv", "HT-");
    QCOMPARE(rows.size(), 10u);
    for (const CheckRow& row : rows) {
        double actual = std::numeric_limits<double>::quiet_NaN();
        const double re = row.input("Re"), pr = row.input("Pr"), ra = row.input("Ra");
        if (row.quantity.contains(QStringLiteral("horizontal cylinder")))
            actual = naturalCylinderNusselt(ra, pr);
        else if (row.quantity.contains(QStringLiteral("vertical plate")))
            actual = naturalPlateNusselt(row.input("Gr") * pr, pr);
        else if (row.quantity.contains(QStringLiteral("cross-flow")))
            actual = crossFlowNusselt(re, pr);
        else if (row.quantity.contains(QStringLiteral("Hausen")))
            actual = laminarTubeNusselt(re, pr, row.input("D") / row.input("L"));
        else if (row.quantity.contains(QStringLiteral("radiation")))
            actual = radiationFilm_W_per_m2_K(row.input("eps"), row.input("Ts"), row.input("Ta"));
        qInfo("%s (%s)", qPrintable(row.id), qPrintable(row.source));
        VERIFY_NEAR(actual, row.expected, row.tolerance);
    }
}

void TestHeatLoss::airEqualsTheStandardAtmosphere()
{
    // U.S. Standard Atmosphere 1976, sea level, 15 degC: 1.2250 kg/m3, 1.7894e-5 Pa s, 0.025326 W/m K.
    const AirState air = airAt(15);
    VERIFY_NEAR(air.density_kg_per_m3, 1.2250, 1e-4);
    VERIFY_NEAR(air.viscosity_Pa_s, 1.7894e-5, 1e-9);
    VERIFY_NEAR(air.conductivity_W_per_m_K, 0.025326, 1e-6);
    VERIFY_NEAR(air.prandtl(), 0.711, 0.001); // 1.7894e-5 * 1006 / 0.025326
}

void TestHeatLoss::hoseLosesWhatTheWorkedBalancesSay_data()
{
    QTest::addColumn<CheckRow>("row");
    for (const CheckRow& row : test::readCheckRows("heat_loss.csv", "HL-"))
        QTest::newRow(qPrintable(row.id)) << row;
}

void TestHeatLoss::hoseLosesWhatTheWorkedBalancesSay()
{
    QFETCH(CheckRow, row);
    HoseWall wall;
    wall.bore_mm = row.input("Di") * 1000;
    wall.wall_mm = (row.input("Do") - row.input("Di")) * 1000 / 2;
    wall.conductivity_W_per_m_K = row.input("k");
    wall.insulation_mm = row.input("t_ins") * 1000;
    wall.insulation_conductivity_W_per_m_K = row.input("k_ins");
    wall.emissivity = row.input("eps");
    const auto loss =
        hoseLoss(wall, row.input("T_cool"), row.input("h_i"), {row.input("T_amb"), row.input("V")});
    QVERIFY(loss);
    const double actual = row.quantity.contains(QStringLiteral("per metre")) ? loss->per_metre_W_per_m
                          : row.quantity.contains(QStringLiteral("temperature"))
                              ? loss->surface_degC
                              : loss->convection_W_per_m2_K;
    VERIFY_NEAR(actual, row.expected, row.tolerance);
    // The same heat leaves the surface: pi D (h + h_r) (T_s - T_a).
    VERIFY_NEAR(std::numbers::pi * wall.outside_mm() / 1000 *
                    (loss->convection_W_per_m2_K + loss->radiation_W_per_m2_K) *
                    (loss->surface_degC - row.input("T_amb")),
                loss->per_metre_W_per_m, 1e-6);
}

void TestHeatLoss::windNeverLowersTheLoss()
{
    double before = 0;
    for (double wind = 0; wind <= 15; wind += 0.05) {
        const double loss = hoseLoss({}, 60, 70, {-20, wind})->per_metre_W_per_m;
        QVERIFY2(loss >= before, qPrintable(QString::number(wind)));
        before = loss;
    }
}

void TestHeatLoss::theSurfaceReadsBetweenCoolantAndAir()
{
    // Worked: coolant 60, air -20, 25.4/35 mm hose in still air reads 33.4 degC: 27 K under the coolant.
    for (const double coolant : {-20.0, -19.999, 5.0, 60.0, 110.0}) {
        const auto loss = hoseLoss({}, coolant, 70, {-20});
        QVERIFY(loss);
        QVERIFY(loss->surface_share > 0.3 && loss->surface_share < 1);
        VERIFY_NEAR(loss->surface_degC, -20 + loss->surface_share * (coolant + 20), 1e-9);
    }
    // The other way round: cold coolant in warm air gains.
    QVERIFY(hoseLoss({}, -20, 70, {30})->per_metre_W_per_m < 0);
}

void TestHeatLoss::insideFilmRisesWithFlowAndIsTheSameBothWays()
{
    const FluidState state = HalfGlycol().at(60);
    // No flow: Nu 3.66, so 3.66 k / D.
    VERIFY_NEAR(*insideFilm_W_per_m2_K(state, 0, 19.05, 1), 3.66 * state.conductivity_W_per_m_K / 0.01905,
                1e-9);
    double before = 0;
    for (double flow = 0; flow < 0.5; flow += 0.001) {
        const double film = *insideFilm_W_per_m2_K(state, flow, 19.05, 1);
        QVERIFY2(film >= before, qPrintable(QString::number(flow)));
        QCOMPARE(*insideFilm_W_per_m2_K(state, -flow, 19.05, 1), film);
        before = film;
    }
}

void TestHeatLoss::blockFilmFollowsItsTwoFormsAndNeverFalls()
{
    for (const CheckRow& row : test::readCheckRows("heat_loss.csv", "EB-0")) {
        if (row.quantity.startsWith(QStringLiteral("wind film")))
            VERIFY_NEAR(blockFilm_W_per_m2_K(row.input("V")), row.expected, row.tolerance);
        if (row.id == QStringLiteral("EB-07"))
            VERIFY_NEAR(radiationFilm_W_per_m2_K(0.9, 20, -20), row.expected, row.tolerance);
    }
    double before = 0;
    for (double wind = 0; wind <= 20; wind += 0.01) {
        QVERIFY(blockFilm_W_per_m2_K(wind) > before);
        before = blockFilm_W_per_m2_K(wind);
    }
    QCOMPARE(blockFilm_W_per_m2_K(-1), 5.7);
}

void TestHeatLoss::blockLossEqualsTheWorkedFigures()
{
    // EB-05, EB-06 (arithmetic, Q = h A dT): 1.5 m2, 40 K: 342 W in still air, 1482 W in 5 m/s.
    // A box of 0.5 m x 0.5 m x 0.625 m has 0.25 + 4 * 0.3125 = 1.5 m2 without its underside.
    VERIFY_NEAR(blockArea_m2(500, 500, 625), 1.5, 1e-12);
    VERIFY_NEAR(*blockLoss_W_per_K(500, 500, 625, 0) * 40, 342, 1e-6 * 342);
    VERIFY_NEAR(*blockLoss_W_per_K(500, 500, 625, 5) * 40, 1482, 1e-6 * 1482);
}

void TestHeatLoss::elementSurfaceEqualsTheWorkedFigures_data()
{
    QTest::addColumn<double>("flux_W_per_in2");
    QTest::addColumn<double>("bulk_degC");
    QTest::addColumn<double>("expected_degC");
    // EL-06, EL-07, EL-09: natural convection alone, 8 mm rod, 50 % ethylene glycol, Churchill and Chu 1975
    QTest::newRow("EL-06") << 20.0 << 40.0 << 76.9723;
    QTest::newRow("EL-07") << 40.0 << 40.0 << 99.3131;
    QTest::newRow("EL-09") << 40.0 << 60.0 << 114.035;
}

void TestHeatLoss::elementSurfaceEqualsTheWorkedFigures()
{
    QFETCH(double, flux_W_per_in2);
    QFETCH(double, bulk_degC);
    QFETCH(double, expected_degC);
    const auto surface = elementSurface(HalfGlycol(), {8, flux_W_per_in2 / 6.4516}, bulk_degC, 125);
    QVERIFY(surface);
    VERIFY_NEAR(surface->convective_degC, expected_degC, 2.0);
    VERIFY_NEAR(surface->margin_K, 125 - surface->convective_degC, 1e-12);
    QVERIFY(!surface->boils_locally);
}

void TestHeatLoss::elementSurfaceEqualsATextbookExample()
{
    // S. K. Som, Introduction to Heat Transfer, example 8.8: 450 W from a rod of 8 mm by 300 mm in water of
    // 20 degC: 64 degC "in excellent agreement"; worked to more places, 64.24.
    const double flux_W_per_cm2 = 450 / (std::numbers::pi * 0.8 * 30);
    VERIFY_NEAR(elementSurface(TextbookWater(), {8, flux_W_per_cm2}, 20, 100)->convective_degC, 64.24, 0.3);
}

void TestHeatLoss::elementThatBoilsIsHeldNearTheBoilingPoint()
{
    const auto surface = elementSurface(HalfGlycol(), {8, 12}, 80, 108);
    QVERIFY(surface->convective_degC > 118);
    QVERIFY(surface->boils_locally);
    QCOMPARE(surface->surface_degC, 118.0);
}

void TestHeatLoss::whatIsNotPhysicalIsRefused()
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    HoseWall thin;
    thin.wall_mm = 0;
    QVERIFY(!hoseLoss(thin, 60, 70, {-20}));
    QVERIFY(!hoseLoss({}, nan, 70, {-20}));
    QVERIFY(!hoseLoss({}, 60, 0, {-20}));
    QVERIFY(!hoseLoss({}, 60, 70, {-20, -1}));
    QVERIFY(!hoseLoss({}, 60, 70, {-120}));
    QVERIFY(!insideFilm_W_per_m2_K({}, 0.01, 19, 1));
    QVERIFY(!blockLoss_W_per_K(500, 0, 600, 0));
    QVERIFY(!blockLoss_W_per_K(500, 500, 600, nan));
    QVERIFY(!elementSurface(HalfGlycol(), {0, 6}, 40, 110));
    QVERIFY(!elementSurface(HalfGlycol(), {8, nan}, 40, 110));
}

QTEST_APPLESS_MAIN(TestHeatLoss)
#include "test_heat_loss.moc"
