#include "app/warming/words.h"

#include <QTest>

using namespace siphonwright;

/// A result in words, from figures chosen for the test.
class TestWarmUpWords : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void timesAreAsRoughAsTheyAreLong_data();
    void timesAreAsRoughAsTheyAreLong();
    void theLineSaysWhatComesOut();
    void aBandThatCrossesALimitMayExceedIt();
    void aFigureOverItsLimitIsOverIt();
    void aTargetThatIsMissedOrMayBeMissedIsSaid();
    void inchUnitsHaveFahrenheit();
    void driversAreNamedOnce();

private:
    static warming::Result sound();
    static QString line(const warming::Result& result, UnitSystem units = UnitSystem::metric)
    {
        return warming::resultLine(result, units);
    }
};

warming::Result TestWarmUpWords::sound()
{
    warming::Result result;
    result.time_h = {0, 24};
    result.energy_kWh = {0, 36};
    result.outcome.peak_outlet_degC = 58.7;
    result.outcome.return_warm_s = 180;
    result.reached_h = 22;
    result.target_degC = 32;
    result.hours = result.end_h = 24;
    result.outlet_limit_degC = 82.2;
    result.cycles_limit = 4;
    result.peak_band = ResultBand{54.8, 58, 66.2, 1, {Assumed::hose_end_loss, Assumed::block_loss}};
    result.cycles_band = ResultBand{0, 0, 1, 1, {Assumed::thermostat_lag}};
    result.target_band = ResultBand{20, 22, 23.8, 1, {Assumed::block_loss, Assumed::hose_end_loss}};
    return result;
}

void TestWarmUpWords::timesAreAsRoughAsTheyAreLong_data()
{
    QTest::addColumn<double>("hours");
    QTest::addColumn<QString>("text");
    const auto row = [](double hours, const char* text) {
        QTest::addRow("%g", hours) << hours << QString::fromLatin1(text);
    };
    row(0, "0 min");
    row(3.2 / 60, "3 min");
    row(0.999, "1 h");
    row(1.0, "1 h");
    row(2.26, "2 h 20 min"); // 135.6 min
    row(9.95, "10 h");       // 597 min
    row(22.4, "22 h");
}

void TestWarmUpWords::timesAreAsRoughAsTheyAreLong()
{
    QFETCH(double, hours);
    QFETCH(QString, text);
    QCOMPARE(warming::timeText(hours), text);
}

void TestWarmUpWords::theLineSaysWhatComesOut()
{
    QCOMPARE(
        line(sound()),
        QStringLiteral("peak 58.7 °C (55–66 °C) · 0 cycles an hour (0–1) · 32 °C after 22 h (20 h–24 h) · "
                       "36.0 kWh · return warm after 3 min"));
}

void TestWarmUpWords::aBandThatCrossesALimitMayExceedIt()
{
    warming::Result result = sound();
    result.peak_band->high = 90;
    result.cycles_band->high = 5;
    QVERIFY(line(result).contains(QStringLiteral("(55–90 °C), may exceed 82.2 °C")));
    QVERIFY(line(result).contains(QStringLiteral("(0–5), may exceed 4")));
}

void TestWarmUpWords::aFigureOverItsLimitIsOverIt()
{
    warming::Result result = sound();
    result.outcome.peak_outlet_degC = 91;
    result.peak_band->high = 99;
    result.outcome.cycles_per_hour = 6;
    QVERIFY(line(result).contains(QStringLiteral("°C), over 82.2 °C")));
    QVERIFY(line(result).contains(QStringLiteral("6 cycles an hour (0–1), over 4")));
    QVERIFY(!line(result).contains(QStringLiteral("may exceed")));
}

void TestWarmUpWords::aTargetThatIsMissedOrMayBeMissedIsSaid()
{
    warming::Result result = sound();
    result.target_band->share = 0.8;
    QVERIFY(line(result).contains(QStringLiteral("after 22 h (20 h–24 h), reached in 8 of 10 cases")));
    result.target_band.reset();
    QVERIFY(line(result).contains(QStringLiteral("after 22 h, may not be reached")));
    result.bands_follow = true;
    QVERIFY(!line(result).contains(QStringLiteral("may not")));
    result.reached_h.reset();
    result.block_at_end_degC = 28.3;
    QVERIFY(line(result).contains(QStringLiteral("32 °C not reached in 24 h (28.3 °C then)")));
}

void TestWarmUpWords::inchUnitsHaveFahrenheit()
{
    // 58.7 degC is 137.66 degF; 54.8 and 66.2 are 130.64 and 151.16; 32 is 89.6.
    QVERIFY(line(sound(), UnitSystem::inch).startsWith(QStringLiteral("peak 137.7 °F (131–151 °F)")));
    QVERIFY(line(sound(), UnitSystem::inch).contains(QStringLiteral("89.6 °F after 22 h")));
}

void TestWarmUpWords::driversAreNamedOnce()
{
    QCOMPARE(
        warming::driversLine(sound()),
        QStringLiteral("Hangs most on: loss of hose ends, heat loss of the engine, lag of the thermostat"));
    QCOMPARE(warming::driversLine({}), QString());
}

QTEST_APPLESS_MAIN(TestWarmUpWords)
#include "test_warm_up_words.moc"
