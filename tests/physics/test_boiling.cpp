#include "tests/near.h"
#include "tests/physics/published.h"

#include "core/physics/boiling.h"
#include "core/physics/glycol.h"

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {
constexpr double one_atmosphere_Pa = 101325;
}

class TestBoiling : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void boilingPointsMeetPublishedValues();
    void waterAgreesWithAnIndependentLibrary();
    void theStandardAtmosphereIsMet();
    void pressureAddsCapAltitudeAndHead();
    void glycolAndPressureRaiseTheBoilingPoint();
    void nothingIsMadeUpOutsideTheRange();
};

void TestBoiling::boilingPointsMeetPublishedValues()
{
    const CoolantBase ethylene = CoolantBase::ethylene_glycol;
    int compared = 0;
    for (const QStringList& row : readCsv(QStringLiteral("data/boiling.csv"))) {
        const double expected = row[3].toDouble();
        const double gauge = input(row[2], QStringLiteral("p_gauge"));
        const double pressure = one_atmosphere_Pa + 1000 * gauge;
        ++compared;
        if (row[1].startsWith(QStringLiteral("water mole fraction"))) {
            VERIFY_NEAR(waterMoleFraction(ethylene, 50), expected, 1e-4); // mixing arithmetic
        } else if (row[1].startsWith(QStringLiteral("EG mass fraction"))) {
            VERIFY_NEAR(glycolMassPercent(ethylene, 50) / 100, expected, 1e-4); // mixing arithmetic
        } else if (row[1].startsWith(QStringLiteral("boiling point of water"))) {
            VERIFY_NEAR(*waterBoilingPoint_degC(pressure), expected, 0.001); // IAPWS-IF97
        } else if (row[1].contains(QStringLiteral("Raoult estimate"))) {
            VERIFY_NEAR(*boilingPoint_degC(ethylene, 50, pressure), expected, 0.01); // Raoult with IAPWS-IF97
        } else {
            // Quoted by several automotive references: 226 degF open, 262 to 265 degF under a 15 psi cap.
            QVERIFY2(row[1].contains(QStringLiteral("published")), qPrintable(row[1]));
            const double deviation = *boilingPoint_degC(ethylene, 50, pressure) - expected;
            qInfo("50 %% ethylene glycol at %g kPa over the air: %+.2f K off the published point", gauge,
                  deviation);
            QVERIFY(std::abs(deviation) < 2);
        }
    }
    QCOMPARE(compared, 10);
}

/// IAPWS-IF97 by python3-iapws, run now.
void TestBoiling::waterAgreesWithAnIndependentLibrary()
{
    const PythonAnswer answer = runPython(QStringLiteral("reference_water.py"));
    QVERIFY2(answer.problem.isEmpty(), qPrintable(answer.problem));
    int compared = 0;
    double largest = 0;
    for (const QStringList& row : answer.rows) {
        if (row[0] != QStringLiteral("boiling"))
            continue;
        const double deviation = std::abs(*waterBoilingPoint_degC(row[1].toDouble()) - row[2].toDouble());
        QVERIFY2(deviation < 1e-8, qPrintable(row.join(u' ')));
        largest = std::max(largest, deviation);
        ++compared;
    }
    qInfo("boiling point of water: largest deviation %.2g K", largest);
    QCOMPARE(compared, 14);
    // The boiling point at one atmosphere, ITS-90: 99.974 degC.
    VERIFY_NEAR(*waterBoilingPoint_degC(one_atmosphere_Pa), 99.974, 0.001);
}

void TestBoiling::theStandardAtmosphereIsMet()
{
    // US Standard Atmosphere 1976, tables at geopotential heights.
    VERIFY_NEAR(*atmosphericPressure_Pa(0), 101325, 1e-9);
    VERIFY_NEAR(*atmosphericPressure_Pa(1000), 89874.6, 1);
    VERIFY_NEAR(*atmosphericPressure_Pa(3000), 70108.5, 1);
    VERIFY_NEAR(*atmosphericPressure_Pa(5000), 54019.9, 1);
    VERIFY_NEAR(*atmosphericPressure_Pa(11000), 22632.1, 1);
    QVERIFY(!atmosphericPressure_Pa(-501));
    QVERIFY(!atmosphericPressure_Pa(11001));
    QVERIFY(!atmosphericPressure_Pa(std::numeric_limits<double>::quiet_NaN()));
}

void TestBoiling::pressureAddsCapAltitudeAndHead()
{
    CoolingSystem system;
    system.altitude_m = 1000;
    system.cap_gauge_Pa = 50'000;
    system.head_m = 0.4;
    system.density_kg_per_m3 = 1050;
    // 89874.6 + 50000 + 1050 x 9.80665 x 0.4
    VERIFY_NEAR(*coolantPressure_Pa(system), 89874.6 + 50'000 + 4118.79, 1);
    system.head_m = -0.4;
    VERIFY_NEAR(*coolantPressure_Pa(system), 89874.6 + 50'000 - 4118.79, 1);
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (double CoolingSystem::*member : {&CoolingSystem::altitude_m, &CoolingSystem::cap_gauge_Pa,
                                          &CoolingSystem::head_m, &CoolingSystem::density_kg_per_m3}) {
        CoolingSystem wrong = system;
        wrong.*member = nan;
        QVERIFY(!coolantPressure_Pa(wrong));
    }
    system.cap_gauge_Pa = -1;
    QVERIFY(!coolantPressure_Pa(system));
    system.cap_gauge_Pa = 0;
    system.head_m = -20; // a column that would tear
    QVERIFY(!coolantPressure_Pa(system));
}

void TestBoiling::glycolAndPressureRaiseTheBoilingPoint()
{
    for (const CoolantBase base : {CoolantBase::ethylene_glycol, CoolantBase::propylene_glycol}) {
        double before = *waterBoilingPoint_degC(one_atmosphere_Pa);
        QCOMPARE(*boilingPoint_degC(base, 0, one_atmosphere_Pa), before);
        for (double percent = 1; percent <= 60; ++percent) {
            const double now = *boilingPoint_degC(base, percent, one_atmosphere_Pa);
            QVERIFY(now > before);
            QVERIFY(*boilingPoint_degC(base, percent, 1.01 * one_atmosphere_Pa) > now);
            before = now;
        }
    }
    // A molecule of propylene glycol is heavier, so a mass of it makes fewer.
    QVERIFY(*boilingPoint_degC(CoolantBase::propylene_glycol, 50, one_atmosphere_Pa) <
            *boilingPoint_degC(CoolantBase::ethylene_glycol, 50, one_atmosphere_Pa));
}

void TestBoiling::nothingIsMadeUpOutsideTheRange()
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const double wrong : {0.0, -1.0, 600.0, 23e6, nan, std::numeric_limits<double>::infinity()}) {
        QVERIFY(!waterBoilingPoint_degC(wrong));
        QVERIFY(!boilingPoint_degC(CoolantBase::ethylene_glycol, 0, wrong));
    }
    for (const double wrong : {-1.0, 60.1, nan})
        QVERIFY(!boilingPoint_degC(CoolantBase::propylene_glycol, wrong, one_atmosphere_Pa));
}

QTEST_APPLESS_MAIN(TestBoiling)
#include "test_boiling.moc"
