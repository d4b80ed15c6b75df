#include "tests/near.h"

#include "core/physics/electrical.h"

#include <QTest>

#include <cmath>
#include <limits>
#include <string>

using namespace siphonwright;

namespace {

constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

double resistance(const char* size, ConductorMetal metal, double degC)
{
    const Conductor* conductor = findConductor(size);
    return conductor ? resistance_ohm_per_km(*conductor, metal, degC).value.value_or(0) : 0;
}

} // namespace

/// Currents, conductors and drops against tables and closed forms.
class TestElectrical : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void currentsOfUsualHeaters_data();
    void currentsOfUsualHeaters();
    void powerGoesWithTheSquareOfTheVoltage();
    void conductorsAreThoseOfTheTables_data();
    void conductorsAreThoseOfTheTables();
    void bothTablesAgreeOnTheSameMetal();
    void resistanceGrowsWithTemperatureAsPublished();
    void sizesAreUnderstoodAsPeopleWriteThem();
    void unknownSizesAreRefused();
    void dropsByHand();
    void dropGrowsWithLengthAndCurrentAndFallsWithSize();
    void nonsenseIsRefusedAndNeverComputed();
};

void TestElectrical::currentsOfUsualHeaters_data()
{
    QTest::addColumn<double>("power_W");
    QTest::addColumn<double>("volts_V");
    QTest::addColumn<int>("phases");
    QTest::addColumn<double>("current_A");
    // P/V and P/(sqrt(3) V), by hand.
    QTest::newRow("1500 W on 120 V") << 1500.0 << 120.0 << 1 << 12.5;
    QTest::newRow("1500 W on 240 V") << 1500.0 << 240.0 << 1 << 6.25;
    QTest::newRow("2300 W on 230 V") << 2300.0 << 230.0 << 1 << 10.0;
    QTest::newRow("5000 W on 208 V, three phases") << 5000.0 << 208.0 << 3 << 13.8786;
    QTest::newRow("4000 W on 400 V, three phases") << 4000.0 << 400.0 << 3 << 5.7735;
    QTest::newRow("5000 W on 480 V, three phases") << 5000.0 << 480.0 << 3 << 6.0141;
}

void TestElectrical::currentsOfUsualHeaters()
{
    QFETCH(double, power_W);
    QFETCH(double, volts_V);
    QFETCH(int, phases);
    QFETCH(double, current_A);
    const Figure found = loadCurrent_A(power_W, volts_V, phases);
    VERIFY_NEAR(found.value.value_or(0), current_A, 1e-4);
    QVERIFY(found.problem.pattern.empty());
}

void TestElectrical::powerGoesWithTheSquareOfTheVoltage()
{
    // A 240 V heater on 208 V gives three quarters: (208/240)^2 = 0.7511.
    VERIFY_NEAR(powerAtVoltage_W(1500, 240, 208).value.value_or(0), 1126.667, 1e-3);
    VERIFY_NEAR(powerAtVoltage_W(1500, 120, 120).value.value_or(0), 1500, 1e-12);
    VERIFY_NEAR(powerAtVoltage_W(1500, 120, 240).value.value_or(0), 6000, 1e-9); // four times: burns out
    VERIFY_NEAR(continuous_load_factor * 12.5, 15.625, 1e-12);                   // NEC 210.20(A): 125 %
}

void TestElectrical::conductorsAreThoseOfTheTables_data()
{
    QTest::addColumn<QString>("size");
    QTest::addColumn<double>("degC");
    QTest::addColumn<double>("copper");
    QTest::addColumn<double>("aluminium");
    // IEC 60228, classes 1 and 2, plain, ohm/km at 20 degC.
    QTest::newRow("1.5 mm2") << QStringLiteral("1.5 mm2") << 20.0 << 12.1 << 0.0;
    QTest::newRow("2.5 mm2") << QStringLiteral("2.5 mm2") << 20.0 << 7.41 << 0.0;
    QTest::newRow("4 mm2") << QStringLiteral("4 mm2") << 20.0 << 4.61 << 0.0;
    QTest::newRow("6 mm2") << QStringLiteral("6 mm2") << 20.0 << 3.08 << 0.0;
    QTest::newRow("10 mm2") << QStringLiteral("10 mm2") << 20.0 << 1.83 << 3.08;
    QTest::newRow("16 mm2") << QStringLiteral("16 mm2") << 20.0 << 1.15 << 1.91;
    QTest::newRow("50 mm2") << QStringLiteral("50 mm2") << 20.0 << 0.387 << 0.641;
    QTest::newRow("120 mm2") << QStringLiteral("120 mm2") << 20.0 << 0.153 << 0.253;
    // NEC chapter 9 table 8, stranded, uncoated, 75 degC; ohm/kft of the table over 0.3048.
    QTest::newRow("14 AWG") << QStringLiteral("14 AWG") << 75.0 << 3.14 / 0.3048 << 5.17 / 0.3048;
    QTest::newRow("12 AWG") << QStringLiteral("12 AWG") << 75.0 << 1.98 / 0.3048 << 3.25 / 0.3048;
    QTest::newRow("10 AWG") << QStringLiteral("10 AWG") << 75.0 << 1.24 / 0.3048 << 2.04 / 0.3048;
    QTest::newRow("8 AWG") << QStringLiteral("8 AWG") << 75.0 << 0.778 / 0.3048 << 1.28 / 0.3048;
    QTest::newRow("4 AWG") << QStringLiteral("4 AWG") << 75.0 << 0.308 / 0.3048 << 0.508 / 0.3048;
    QTest::newRow("4/0 AWG") << QStringLiteral("4/0 AWG") << 75.0 << 0.0608 / 0.3048 << 0.100 / 0.3048;
}

void TestElectrical::conductorsAreThoseOfTheTables()
{
    QFETCH(QString, size);
    QFETCH(double, degC);
    QFETCH(double, copper);
    QFETCH(double, aluminium);
    const QByteArray name = size.toLatin1();
    VERIFY_NEAR(resistance(name.constData(), ConductorMetal::copper, degC), copper, 1e-9);
    VERIFY_NEAR(resistance(name.constData(), ConductorMetal::aluminium, degC), aluminium, 1e-9);
}

void TestElectrical::bothTablesAgreeOnTheSameMetal()
{
    // Resistivity times section: annealed copper has 17.241 ohm mm2/km at 20 degC (IACS, 1913), and a
    // stranded conductor's strands run 2 % longer. IEC's are upper limits. At 75 degC copper is 1 + 0.00393 x
    // 55 = 1.216 times that. Small sizes are allowed more above their nominal section.
    for (const Conductor& conductor : conductors()) {
        const double at_20 = *resistance_ohm_per_km(conductor, ConductorMetal::copper, 20).value;
        const double product = at_20 * conductor.area_mm2;
        QVERIFY2(product > 17.2 && product < 19.5, std::string(conductor.size).c_str());
        if (conductor.aluminium_ohm_per_km > 0) {
            const double ratio =
                *resistance_ohm_per_km(conductor, ConductorMetal::aluminium, 20).value / at_20;
            // Aluminium of conductors: 28.0 to 28.7 ohm mm2/km (IEC 60889: 28.264).
            QVERIFY2(ratio > 1.58 && ratio < 1.71, std::string(conductor.size).c_str());
        }
    }
}

void TestElectrical::resistanceGrowsWithTemperatureAsPublished()
{
    // IEC 60228 reduces to 20 degC by 254.5/(234.5 + t): 0.820 at 75 degC, so 4.61/0.8223.
    VERIFY_NEAR(resistance("4 mm2", ConductorMetal::copper, 75), 4.61 * 309.5 / 254.5, 1e-9);
    VERIFY_NEAR(4.61 / resistance("4 mm2", ConductorMetal::copper, 75), 0.820, 0.003);
    // NEC chapter 9 table 8, note 2: R2 = R1 (1 + a (T2 - 75)), a 0.00323 copper and 0.00330 aluminium.
    VERIFY_NEAR(resistance("12 AWG", ConductorMetal::copper, 20), 1.98 / 0.3048 * (1 - 0.00323 * 55), 1e-9);
    VERIFY_NEAR(resistance("12 AWG", ConductorMetal::aluminium, 30), 3.25 / 0.3048 * (1 - 0.0033 * 45), 1e-9);
    const Conductor& wire = *findConductor("4 mm2");
    for (const double degC : {-51.0, 151.0, nan_value, infinite})
        QVERIFY(!resistance_ohm_per_km(wire, ConductorMetal::copper, degC).value);
}

void TestElectrical::sizesAreUnderstoodAsPeopleWriteThem()
{
    for (const char* typed : {"12 AWG", "12awg", "#12", "AWG 12", "  12 AwG "})
        QVERIFY2(findConductor(typed) == findConductor("12 AWG") && findConductor(typed), typed);
    for (const char* typed : {"2.5 mm2", "2.5mm²", "2.5 sq mm", "2.5 qmm"})
        QVERIFY2(findConductor(typed) == findConductor("2.5 mm2") && findConductor(typed), typed);
    for (const char* typed : {"1/0", "1/0 AWG", "#1/0"})
        QVERIFY2(findConductor(typed) == findConductor("1/0 AWG") && findConductor(typed), typed);
}

void TestElectrical::unknownSizesAreRefused()
{
    for (const char* typed : {"", "4", "13 AWG", "3 mm2", "12 mm", "AWG", "-4 mm2", "12 AWG 4", "0 AWG", "#"})
        QVERIFY2(!findConductor(typed), typed);
    const Figure none = resistance_ohm_per_km(*findConductor("2.5 mm2"), ConductorMetal::aluminium, 75);
    QVERIFY(!none.value);
    QVERIFY(!none.problem.pattern.empty());
}

void TestElectrical::dropsByHand()
{
    // 12.5 A over 30 m of 12 AWG copper at 75 degC: 2 x 0.030 km x 6.4961 ohm/km x 12.5 A = 4.872 V, 4.06 %
    // of 120 V; 60.9 W stay in the conductors.
    const VoltageDrop single = voltageDrop(12.5, 120, 1, 30, 1.98 / 0.3048);
    QVERIFY(single.computed);
    VERIFY_NEAR(single.drop_V, 4.8721, 1e-4);
    VERIFY_NEAR(single.percent, 4.0600, 1e-3);
    VERIFY_NEAR(single.at_load_V, 115.1279, 1e-4);
    VERIFY_NEAR(single.loss_W, 60.9, 0.01);
    // Three phases: sqrt(3) x 0.050 x 4.61 x 10 = 3.9924 V, 1.0 % of 400 V; 3 x I^2 R = 69.15 W.
    const VoltageDrop three = voltageDrop(10, 400, 3, 50, 4.61);
    VERIFY_NEAR(three.drop_V, 3.9924, 1e-4);
    VERIFY_NEAR(three.percent, 0.9981, 1e-3);
    VERIFY_NEAR(three.loss_W, 69.15, 1e-9);
    VERIFY_NEAR(energy_kWh(1500, 10).value.value_or(0), 15, 1e-12);
}

void TestElectrical::dropGrowsWithLengthAndCurrentAndFallsWithSize()
{
    for (const int phases : {1, 3}) {
        double last_V = 0;
        for (const double metres : {5.0, 10.0, 20.0, 40.0, 80.0}) {
            const VoltageDrop drop = voltageDrop(10, 240, phases, metres, 3.08);
            QVERIFY(drop.computed && drop.drop_V > last_V);
            VERIFY_NEAR(drop.drop_V + drop.at_load_V, 240, 1e-12);
            last_V = drop.drop_V;
        }
        last_V = 0;
        for (const double current_A : {1.0, 2.0, 5.0, 10.0, 20.0}) {
            const VoltageDrop drop = voltageDrop(current_A, 240, phases, 30, 3.08);
            QVERIFY(drop.computed && drop.drop_V > last_V);
            last_V = drop.drop_V;
        }
    }
    for (const bool gauges : {true, false}) {
        double last_ohm = infinite;
        for (const Conductor& conductor : conductors())
            if (conductor.by_gauge == gauges) {
                QVERIFY2(conductor.copper_ohm_per_km < last_ohm, std::string(conductor.size).c_str());
                last_ohm = conductor.copper_ohm_per_km;
            }
    }
}

void TestElectrical::nonsenseIsRefusedAndNeverComputed()
{
    for (const double bad : {0.0, -1.0, nan_value, infinite, -infinite, 1e9}) {
        QVERIFY(!loadCurrent_A(bad, 120, 1).value);
        QVERIFY(!loadCurrent_A(1500, bad, 1).value);
        QVERIFY(!powerAtVoltage_W(bad, 120, 120).value);
        QVERIFY(!powerAtVoltage_W(1500, bad, 120).value);
        QVERIFY(!powerAtVoltage_W(1500, 120, bad).value);
        for (const VoltageDrop& drop :
             {voltageDrop(bad, 120, 1, 30, 6.5), voltageDrop(12, bad, 1, 30, 6.5),
              voltageDrop(12, 120, 1, bad, 6.5), voltageDrop(12, 120, 1, 30, bad)}) {
            QVERIFY(!drop.computed);
            QVERIFY(!drop.problem.pattern.empty());
            VERIFY_NEAR(drop.drop_V, 0, 0);
        }
        QVERIFY(!loadCurrent_A(bad, 120, 1).problem.pattern.empty());
    }
    for (const int phases : {0, 2, -1, 4}) {
        QVERIFY(!loadCurrent_A(1500, 120, phases).value);
        QVERIFY(!voltageDrop(12, 120, phases, 30, 6.5).computed);
    }
    QVERIFY(loadCurrent_A(1500, 1000, 1).value); // the limits themselves are computed
    QVERIFY(!loadCurrent_A(1500, 1000.1, 1).value);
    QVERIFY(voltageDrop(1, 1000, 1, 1000, 6.5).computed);
    QVERIFY(!voltageDrop(1, 1000, 1, 1000.1, 6.5).computed);
    QVERIFY(!voltageDrop(100, 120, 1, 100, 6.5).computed); // more than a third would be lost
    QVERIFY(!energy_kWh(-1, 5).value);
    QVERIFY(!energy_kWh(1500, nan_value).value);
    VERIFY_NEAR(energy_kWh(1500, 0).value.value_or(-1), 0, 0);
}

QTEST_APPLESS_MAIN(TestElectrical)
#include "test_electrical.moc"
