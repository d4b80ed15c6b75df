#include "tests/near.h"

#include "core/quantity/quantity.h"

#include <cmath>
#include <limits>
#include <random>

using namespace siphonwright;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double nan_value = std::numeric_limits<double>::quiet_NaN();

QString text(const std::string& s)
{
    return QString::fromStdString(s);
}

} // namespace

class TestQuantity : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void printsWhatPeopleRead_data();
    void printsWhatPeopleRead();
    void readsWhatPeopleType_data();
    void readsWhatPeopleType();
    void refusesAndSaysWhy_data();
    void refusesAndSaysWhy();
    void everyRefusalSaysWhatWouldBeUnderstood();
    void printedQuantitiesReadBackWithinTheirRounding_data();
    void printedQuantitiesReadBackWithinTheirRounding();
    void exactTextReadsBackToTheSameDouble();
    void columnsOfResultsLeaveRoundingOut();
    void messagesFillInQuantitiesAndWords();
    void aRangeIsOneFigureWhereBothEndsReadAlike();
    void namesAreStableAndDifferent();
};

void TestQuantity::printsWhatPeopleRead_data()
{
    QTest::addColumn<double>("value");
    QTest::addColumn<Unit>("unit");
    QTest::addColumn<UnitSystem>("system");
    QTest::addColumn<QString>("expected");
    const auto row = [](double value, Unit unit, UnitSystem system, const char* expected) {
        QTest::addRow("%g as %s", value, expected) << value << unit << system << QString::fromUtf8(expected);
    };
    const auto metric = UnitSystem::metric;
    const auto inch = UnitSystem::inch;
    // Lengths: 25.4 mm to the inch, the nearest sixteenth.
    row(19.05, Unit::mm, inch, "3/4 in");
    row(15.875, Unit::mm, inch, "5/8 in");
    row(152.4, Unit::mm, inch, "6 in");
    row(28.575, Unit::mm, inch, "1 1/8 in");
    row(1000, Unit::mm, inch, "3 ft 3 3/8 in"); // 39.370 in = 39 + 5.92/16
    row(609.6, Unit::mm, inch, "2 ft");
    row(609.0, Unit::mm, inch, "2 ft"); // 23.976 in rounds up to 24 in
    row(608.0125, Unit::mm, inch, "23 15/16 in");
    row(622.3, Unit::mm, inch, "2 ft 1/2 in");
    row(-19.05, Unit::mm, inch, "-3/4 in");
    row(-1000, Unit::mm, inch, "-3 ft 3 3/8 in");
    row(-0.2, Unit::mm, inch, "0 in");
    row(-0.0, Unit::mm, inch, "0 in");
    row(19.05, Unit::mm, metric, "19.1 mm");
    row(152.4, Unit::mm, metric, "152.4 mm");
    row(1000, Unit::mm, metric, "1000 mm");
    row(-0.04, Unit::mm, metric, "0 mm");
    row(250.4, Unit::ml, metric, "250 ml");
    row(0.26, Unit::ml, metric, "0.3 ml"); // little is not none
    row(0.0125, Unit::ml, metric, "0.01 ml");
    row(0.004, Unit::ml, metric, "0 ml");
    row(0.5, Unit::ml, inch, "0.02 fl oz");
    row(236.588, Unit::ml, inch, "8 fl oz"); // half a US pint
    row(12, Unit::litre, metric, "12 l");
    row(3.785411784, Unit::litre, inch, "4 qt"); // a US gallon
    row(100, Unit::kg, inch, "220.5 lb");
    row(82.2222, Unit::degC, inch, "180 °F");
    row(8.94, Unit::head, metric, "8.9 mm");
    row(8.89, Unit::head, inch, "0.35 in");
    row(3.785411784, Unit::l_per_min, inch, "1 gal/min"); // a US gallon
    row(3.456, Unit::l_per_min, metric, "3.46 l/min");
    row(88.26, Unit::Pa, inch, "88.3 Pa");
    row(12.34, Unit::kWh, metric, "12.3 kWh");
    row(2.5, Unit::hour, metric, "2.5 h");
    row(-40, Unit::degC, inch, "-40 °F");
    row(82.25, Unit::degC, metric, "82.2 °C");
    row(5, Unit::kelvin, inch, "9 °F");
    row(5, Unit::kelvin, metric, "5 K");
    row(103.42136, Unit::kPa, inch, "15 psi"); // NIST SP 811: 1 psi = 6.894757 kPa
    row(4.4704, Unit::m_per_s, inch, "10 mph");
    row(1500, Unit::watt, inch, "1500 W");
    row(12.5, Unit::ampere, metric, "12.5 A");
    row(1200, Unit::metre, inch, "3937 ft");
    row(0.7, Unit::ratio, metric, "70 %");
    row(0.599, Unit::ratio, inch, "59.9 %");
    row(1, Unit::bores, metric, "1 bore");
    row(2.5, Unit::bores, metric, "2.5 bores");
    row(22.5, Unit::hour, inch, "22.5 h");
    row(3.5, Unit::l_per_min, metric, "3.5 l/min");
    row(15, Unit::degree, metric, "15°");
    row(0.934, Unit::l_per_min, metric, "0.93 l/min");
    row(3.785411784, Unit::l_per_min, inch, "1 gal/min"); // a US gallon
    row(0.02, Unit::slope, metric, "1 in 50");
    row(1.0 / 30, Unit::slope, inch, "1 in 30");
    row(-1.0 / 30, Unit::slope, metric, "falls 1 in 30");
    row(0, Unit::slope, metric, "level");
    row(-0.0009, Unit::slope, metric, "level");
    row(1, Unit::slope, metric, "steep");
    row(-1, Unit::slope, metric, "falls steeply");
    row(0.98, Unit::slope, metric, "steep");           // not "1 in 1"
    row(4.0682, Unit::ohm_per_km, inch, "1.24 Ω/kft"); // NEC chapter 9 table 8, 10 AWG stranded
    row(4.61, Unit::ohm_per_km, metric, "4.61 Ω/km");
    row(0.3458, Unit::ohm, metric, "0.346 Ω");
    row(2.5, Unit::mm2, inch, "2.5 mm²");
    row(40, Unit::ppm, metric, "40 ppm");
    row(18, Unit::W_per_K, inch, "10 W/°F");
    row(nan_value, Unit::mm, inch, "–");
    row(infinite, Unit::slope, metric, "–");
    row(-infinite, Unit::degC, inch, "–");
}

void TestQuantity::printsWhatPeopleRead()
{
    QFETCH(double, value);
    QFETCH(Unit, unit);
    QFETCH(UnitSystem, system);
    QTEST(text(format(value, unit, system)), "expected");
}

void TestQuantity::readsWhatPeopleType_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<Unit>("unit");
    QTest::addColumn<UnitSystem>("system");
    QTest::addColumn<double>("expected");
    const auto row = [](const char* typed, Unit unit, UnitSystem system, double expected) {
        QTest::addRow("%s = %g", typed, expected) << QString::fromUtf8(typed) << unit << system << expected;
    };
    const auto metric = UnitSystem::metric;
    const auto inch = UnitSystem::inch;
    row("19", Unit::mm, metric, 19);
    row("19", Unit::mm, inch, 482.6);
    row(" 19 MM ", Unit::mm, inch, 19);
    row("1.9 cm", Unit::mm, metric, 19);
    row("1,9cm", Unit::mm, metric, 19);
    row("0,125 m", Unit::mm, metric, 125);
    row("3/4 in", Unit::mm, metric, 19.05);
    row("3/4", Unit::mm, inch, 19.05);
    row("¾\"", Unit::mm, metric, 19.05);
    row("1-1/8\"", Unit::mm, metric, 28.575);
    row("1 1/8", Unit::mm, inch, 28.575);
    row("1½ in", Unit::mm, metric, 38.1);
    row("2' 3 1/2\"", Unit::mm, metric, 698.5); // 27.5 in
    row("2'3", Unit::mm, metric, 685.8);
    row("2 ft - 3 in", Unit::mm, metric, 685.8);
    row("2′ 3″", Unit::mm, metric, 685.8);
    row("-2 ft 3 in", Unit::mm, metric, -685.8);
    row("−5", Unit::mm, metric, -5);
    row("-0", Unit::mm, metric, 0);
    row(".5", Unit::mm, metric, 0.5);
    row("180 F", Unit::degC, metric, 740.0 / 9);
    row("180", Unit::degC, inch, 740.0 / 9);
    row("0.35 in", Unit::head, metric, 8.89);
    row("1 gal/min", Unit::l_per_min, metric, 3.785411784);
    row("0.1 kPa", Unit::Pa, metric, 100);
    row("90 min", Unit::hour, metric, 1.5);
    row("82 degC", Unit::degC, inch, 82);
    row("-40 °F", Unit::degC, metric, -40);
    row("355.15 K", Unit::degC, metric, 82);
    row("9 F", Unit::kelvin, metric, 5);
    row("2 qt", Unit::litre, metric, 1.892705892);
    row("2 qt", Unit::ml, metric, 1892.705892);
    row("8 fl oz", Unit::ml, metric, 236.5882365);
    row("1.2 l", Unit::ml, metric, 1200);
    row("100 lb", Unit::kg, metric, 45.359237);
    row("15 psi", Unit::kPa, metric, 103.42135939752);
    row("1 bar", Unit::kPa, inch, 100);
    row("1.5 kW", Unit::watt, metric, 1500);
    row("10 mph", Unit::m_per_s, metric, 4.4704);
    row("36 km/h", Unit::m_per_s, metric, 10);
    row("50 %", Unit::percent, metric, 50);
    row("50", Unit::percent, metric, 50);
    row("15°", Unit::degree, metric, 15);
    row("3937 ft", Unit::metre, metric, 1199.9976);
    row("6 bores", Unit::bores, metric, 6);
    row("90 min", Unit::hour, metric, 1.5);
    row("2 days", Unit::hour, inch, 48);
    row("24", Unit::hour, metric, 24);
    row("1 gpm", Unit::l_per_min, metric, 3.785411784);
    row("70 %", Unit::ratio, metric, 0.7);
    row("0.7", Unit::ratio, metric, 0.7);
    row("1:50", Unit::slope, metric, 0.02);
    row("0.5 gal/min", Unit::l_per_min, metric, 1.892705892);
    row("1 in 50", Unit::slope, inch, 0.02);
    row("falls 1 in 50", Unit::slope, inch, -0.02);
    row("-1:50", Unit::slope, inch, -0.02);
    row("2 %", Unit::slope, inch, 0.02);
    row("0.02", Unit::slope, inch, 0.02);
    row("level", Unit::slope, inch, 0);
}

void TestQuantity::readsWhatPeopleType()
{
    QFETCH(QString, typed);
    QFETCH(Unit, unit);
    QFETCH(UnitSystem, system);
    QFETCH(double, expected);
    std::string problem;
    const auto value = parse(typed.toStdString(), unit, system, &problem);
    QVERIFY2(value.has_value(), problem.c_str());
    VERIFY_NEAR(*value, expected, 1e-9 * std::max(1.0, std::abs(expected)));
    QVERIFY(problem.empty());
}

void TestQuantity::refusesAndSaysWhy_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<Unit>("unit");
    QTest::addColumn<QString>("reason");
    const auto row = [](const char* typed, Unit unit, const char* reason) {
        QTest::addRow("%.40s: %s", typed, reason)
            << QString::fromUtf8(typed) << unit << QString::fromUtf8(reason);
    };
    row("", Unit::mm, "Nothing was typed");
    row("   ", Unit::mm, "Nothing was typed");
    row("-", Unit::mm, "no number");
    row("abc", Unit::mm, "no number");
    row("nan", Unit::mm, "no number");
    row("inf", Unit::degC, "no number");
    row("–", Unit::mm, "no number");
    row("1,234.5", Unit::mm, "a comma and a point");
    row("1.234,5", Unit::mm, "a comma and a point");
    row("1,234", Unit::mm, "could be 1234 or 1.234");
    row("1,234,567", Unit::mm, "more than one decimal sign");
    row("1.2.3", Unit::mm, "more than one decimal sign");
    row("1 234", Unit::mm, "not understood");
    row("1 234", Unit::watt, "not understood");
    row("1'234", Unit::mm, "fewer than 12"); // an apostrophe between thousands, not 1 ft 234 in
    row("0x10", Unit::mm, "not a unit");
    row("1e5", Unit::watt, "not understood");
    row("19 kg", Unit::mm, "“kg” is not a unit that fits here");
    row("19 mm", Unit::degC, "“mm” is not a unit that fits here");
    row("3 in 2 ft", Unit::mm, "not understood");
    row("2 ft 3 mm", Unit::mm, "Only inches can follow feet");
    row("1/0", Unit::mm, "0 under the line");
    row("1 9/8", Unit::mm, "less than 1");
    row("--5", Unit::mm, "no number");
    row("-300", Unit::degC, "absolute zero");
    row("70", Unit::ratio, "between -1 and 1");
    row("50", Unit::slope, "between -1 and 1");
    row("1:0", Unit::slope, "over 0");
    row("steep", Unit::slope, "no number");
    row("falls ", Unit::slope, "no number");
}

void TestQuantity::refusesAndSaysWhy()
{
    QFETCH(QString, typed);
    QFETCH(Unit, unit);
    QFETCH(QString, reason);
    std::string problem;
    QVERIFY(!parse(typed.toStdString(), unit, UnitSystem::metric, &problem));
    QVERIFY2(text(problem).contains(reason), problem.c_str());
    QVERIFY(!parse(typed.toStdString(), unit, UnitSystem::metric));
}

void TestQuantity::everyRefusalSaysWhatWouldBeUnderstood()
{
    std::string problem;
    QVERIFY(!parse("?", Unit::kPa, UnitSystem::metric, &problem));
    QVERIFY2(text(problem).contains(QStringLiteral("15 psi")), problem.c_str());

    // Too many digits for a double, and a factor that takes a large number past the largest.
    QVERIFY(!parse(std::string(400, '9'), Unit::mm, UnitSystem::metric, &problem));
    QVERIFY(text(problem).contains(QStringLiteral("too long")));
    QVERIFY(parse(std::string(70, '9') + " m", Unit::mm, UnitSystem::metric).has_value());
}

void TestQuantity::printedQuantitiesReadBackWithinTheirRounding_data()
{
    QTest::addColumn<Unit>("unit");
    QTest::addColumn<UnitSystem>("system");
    QTest::addColumn<double>("rounding");
    const auto row = [](Unit unit, UnitSystem system, double rounding) {
        QTest::addRow("%s, %s", std::string(nameOf(unit)).c_str(),
                      system == UnitSystem::metric ? "metric" : "inch")
            << unit << system << rounding;
    };
    // Half of the last printed place, in the unit itself.
    row(Unit::none, UnitSystem::metric, 0.0005);
    row(Unit::mm, UnitSystem::metric, 0.05);
    row(Unit::mm, UnitSystem::inch, 25.4 / 32);
    row(Unit::ml, UnitSystem::metric, 0.5);
    row(Unit::ml, UnitSystem::inch, 0.05 * 29.5735295625);
    row(Unit::litre, UnitSystem::metric, 0.05);
    row(Unit::litre, UnitSystem::inch, 0.05 * 0.946352946);
    row(Unit::kg, UnitSystem::inch, 0.05 * 0.45359237);
    row(Unit::degC, UnitSystem::metric, 0.05);
    row(Unit::degC, UnitSystem::inch, 0.05 / 1.8);
    row(Unit::kelvin, UnitSystem::inch, 0.05 / 1.8);
    row(Unit::watt, UnitSystem::metric, 0.5);
    row(Unit::kPa, UnitSystem::inch, 0.05 * 6.894757294);
    row(Unit::m_per_s, UnitSystem::inch, 0.05 * 0.44704);
    row(Unit::percent, UnitSystem::inch, 0.05);
    row(Unit::degree, UnitSystem::metric, 0.05);
    row(Unit::metre, UnitSystem::inch, 0.5 * 0.3048);
    row(Unit::bores, UnitSystem::metric, 0.05);
    row(Unit::ratio, UnitSystem::metric, 0.0005);
    row(Unit::slope, UnitSystem::metric, 0);
    row(Unit::l_per_min, UnitSystem::metric, 0.005);
    row(Unit::l_per_min, UnitSystem::inch, 0.005 * 3.785411784); // US gallon, NIST SP 811
    row(Unit::hour, UnitSystem::metric, 0.005);
    row(Unit::ohm, UnitSystem::metric, 0.0005);
    row(Unit::ohm_per_km, UnitSystem::metric, 0.0005);
    row(Unit::ohm_per_km, UnitSystem::inch, 0.0005 / 0.3048); // ft 0.3048 m, NIST SP 811
    row(Unit::mm2, UnitSystem::metric, 0.005);
    row(Unit::ppm, UnitSystem::metric, 0.05);
    row(Unit::W_per_K, UnitSystem::inch, 0.05 * 1.8);
}

void TestQuantity::printedQuantitiesReadBackWithinTheirRounding()
{
    QFETCH(Unit, unit);
    QFETCH(UnitSystem, system);
    QFETCH(double, rounding);
    std::mt19937_64 random(20240229);
    std::uniform_real_distribution<double> any(-260, 5000);
    std::uniform_real_distribution<double> slope(-0.9, 0.9);
    for (int i = 0; i < 10'000; ++i) {
        const double value = unit == Unit::slope ? slope(random) : any(random);
        const std::string printed = format(value, unit, system);
        std::string problem;
        const auto read = parse(printed, unit, system, &problem);
        QVERIFY2(read.has_value(), (printed + ": " + problem).c_str());
        // 1 in n with n to 0.05 is off by at most 0.05 slope^2; under 1 in 1000 it prints as level.
        const double n = 1 / std::abs(value);
        const double allowed =
            unit == Unit::slope ? std::max(0.001, 1 / (n - 0.05) - 1 / n) : rounding + 1e-9;
        VERIFY_NEAR(*read, value, allowed);
        // What was printed once prints the same again.
        QCOMPARE(text(format(*read, unit, system)), text(printed));
    }
}

void TestQuantity::columnsOfResultsLeaveRoundingOut()
{
    QCOMPARE(text(toAMillionth(-6.9e-17)), QStringLiteral("0"));
    QCOMPARE(text(toAMillionth(0.1 + 0.2)), QStringLiteral("0.3"));
    QCOMPARE(text(toAMillionth(-11.9999998)), QStringLiteral("-12"));
    QCOMPARE(text(toAMillionth(0.00948459)), QStringLiteral("0.009485"));
}

void TestQuantity::exactTextReadsBackToTheSameDouble()
{
    QCOMPARE(text(exactText(19.05)), QStringLiteral("19.05"));
    QCOMPARE(text(exactText(0.1 + 0.2)), QStringLiteral("0.30000000000000004"));
    QCOMPARE(text(exactText(nan_value)), QStringLiteral("–"));
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> any(-1e6, 1e6);
    for (int i = 0; i < 10'000; ++i) {
        const double value = any(random);
        QVERIFY(QByteArray::fromStdString(exactText(value)).toDouble() == value);
    }
}

void TestQuantity::aRangeIsOneFigureWhereBothEndsReadAlike()
{
    const Message flow{
        "{0-1} at {2-3}",
        {{3.03, Unit::l_per_min}, {3.04, Unit::l_per_min}, {20, Unit::degC}, {21.5, Unit::degC}},
        {}};
    QCOMPARE(text(format(flow, UnitSystem::metric)), QStringLiteral("3.03 to 3.04 l/min at 20 to 21.5 °C"));
    QCOMPARE(text(format(flow, UnitSystem::inch)), QStringLiteral("0.8 gal/min at 68 to 70.7 °F"));
    const Message fractions{"{0-1}, {0-7}", {{19.05, Unit::mm}, {1000, Unit::mm}}, {}};
    QCOMPARE(text(format(fractions, UnitSystem::inch)), QStringLiteral("3/4 in to 3 ft 3 3/8 in, {0-7}"));
}

void TestQuantity::messagesFillInQuantitiesAndWords()
{
    Message message;
    message.pattern = "{a} holds {0} above {b}, limit {1}; {2} and {c} stay, so does {";
    message.quantities = {{19.05, Unit::mm}, {0.02, Unit::slope}};
    message.words = {"Return hose", "the {0} port"};
    QCOMPARE(text(format(message, UnitSystem::inch)),
             QStringLiteral("Return hose holds 3/4 in above the {0} port, limit 1 in 50; {2} and {c} stay, "
                            "so does {"));
    QCOMPARE(text(format(message, UnitSystem::metric)),
             QStringLiteral("Return hose holds 19.1 mm above the {0} port, limit 1 in 50; {2} and {c} stay, "
                            "so does {"));
}

void TestQuantity::namesAreStableAndDifferent()
{
    const std::vector<std::string_view> expected = {
        "",      "mm", "mm_head", "ml",  "l",      "kg",  "degC", "K",  "W",    "kWh",
        "V",     "A",  "kPa",     "Pa",  "m/s",    "%",   "deg",  "m",  "bore", "ratio",
        "slope", "h",  "l/min",   "ohm", "ohm/km", "mm2", "ppm",  "W/K"};
    for (std::size_t i = 0; i < expected.size(); ++i)
        QVERIFY(nameOf(static_cast<Unit>(i)) == expected[i]);
}

QTEST_APPLESS_MAIN(TestQuantity)
#include "test_quantity.moc"
