#include "tests/commissioning/job.h"

#include "core/commissioning/readings.h"

#include <QTest>

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Reading emptyReading(int minutes)
{
    Reading out;
    out.time = clock(minutes);
    out.heater = "heater-1";
    return out;
}

/// The verdict on one value, read at an hour.
ReadingVerdict verdictOf(Sketch sketch, Channel channel, double value)
{
    Reading reading = emptyReading(60);
    readOn(reading, channel) = value;
    const JudgedReadings judged = judgeReadings(withReadings(std::move(sketch), "heater-1", {reading}));
    return judged.verdicts.empty() ? ReadingVerdict{} : judged.verdicts.front();
}

/// Turns on and off every so many minutes, from the start on.
Sketch cycling(int minutes, int times)
{
    Sketch sketch = sampleJob("sound-bus");
    for (int i = 0; i < 2 * times; ++i)
        sketch.checklist.switched.push_back({clock(i * minutes), "heater-1", i % 2 == 0});
    return sketch;
}

} // namespace

class TestReadings : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatTheDrawingGivesFits();
    void anOutletOverTheLimitIsSaidWhateverWasExpected();
    void aLimitOfTheManualTakesThePlaceOfTheTrades();
    void aColdOutletIsLowerThanExpected();
    void currentIsJudgedAtTheVoltageThatWasRead();
    void noCurrentIsOffWhereItShouldBeOn();
    void aLevelUnderTheColdMinimumIsOverTheLimit();
    void aLevelIsNotJudgedWithoutItsMarks();
    void fiveStartsWithinAnHourAreTooMany();
    void fourStartsWithinAnHourAreAllowed();
    void cyclesAreNotJudgedWithoutASwitchingOff();
    void wordsComeWithEveryVerdict();
};

void TestReadings::whatTheDrawingGivesFits()
{
    const Sketch sketch = sampleJob("sound-bus");
    const Course course = courseOf(sketch, "heater-1", {});
    const JudgedReadings judged =
        judgeReadings(withReadings(sketch, "heater-1", readingsOf(course, "heater-1", nullptr)));
    QCOMPARE(judged.verdicts.size(), std::size_t(20));
    for (const ReadingVerdict& one : judged.verdicts)
        QVERIFY2(one.fit == Fit::fits, format(one.words, UnitSystem::metric).c_str());
}

// 180 degF (82.2 degC): common practice, no published source.
void TestReadings::anOutletOverTheLimitIsSaidWhateverWasExpected()
{
    QCOMPARE(verdictOf(sampleJob("sound-bus"), Channel::outlet, 82.3).fit, Fit::over_limit);
    QVERIFY(verdictOf(sampleJob("sound-bus"), Channel::outlet, 82.2).fit != Fit::over_limit);
}

void TestReadings::aLimitOfTheManualTakesThePlaceOfTheTrades()
{
    Sketch sketch = sampleJob("sound-bus");
    sketch.limits.push_back({"outlet-over-limit", {}, {}, 70, false, "The heater's manual"});
    QCOMPARE(verdictOf(sketch, Channel::outlet, 71).fit, Fit::over_limit);
}

void TestReadings::aColdOutletIsLowerThanExpected()
{
    const ReadingVerdict cold = verdictOf(sampleJob("sound-bus"), Channel::outlet, 0);
    QCOMPARE(cold.fit, Fit::off);
    QVERIFY(cold.expected && cold.expected->low > 0);
    QVERIFY(format(cold.words, UnitSystem::metric).find("Lower") != std::string::npos);
}

// P = V^2/R: at 108 of 120 V 81 % of the power and 90 % of the current, 11.25 of 12.5 A (elementary).
void TestReadings::currentIsJudgedAtTheVoltageThatWasRead()
{
    Reading reading = emptyReading(60);
    reading.current_A = 11.25;
    reading.voltage_V = 108;
    const JudgedReadings judged = judgeReadings(withReadings(sampleJob("sound-bus"), "heater-1", {reading}));
    const auto current =
        std::find_if(judged.verdicts.begin(), judged.verdicts.end(),
                     [](const ReadingVerdict& one) { return one.channel == Channel::current; });
    QVERIFY(current != judged.verdicts.end());
    QCOMPARE(current->fit, Fit::fits);
    QCOMPARE(current->expected->middle, 11.25);
    QCOMPARE(verdictOf(sampleJob("sound-bus"), Channel::current, 6.25).fit, Fit::off);
}

void TestReadings::noCurrentIsOffWhereItShouldBeOn()
{
    QCOMPARE(verdictOf(sampleJob("sound-bus"), Channel::current, 0).fit, Fit::off);
}

void TestReadings::aLevelUnderTheColdMinimumIsOverTheLimit()
{
    const Sketch sketch = sampleJob("sound-bus");
    const double least = *sketch.tank->cold_min_mm.value - *sketch.tank->cold_full_mm.value;
    QCOMPARE(verdictOf(sketch, Channel::coolant_level, least - 1).fit, Fit::over_limit);
    QCOMPARE(verdictOf(sketch, Channel::coolant_level, least).fit, Fit::fits);
}

void TestReadings::aLevelIsNotJudgedWithoutItsMarks()
{
    Sketch sketch = sampleJob("sound-bus");
    sketch.tank->cold_min_mm = {};
    QCOMPARE(verdictOf(sketch, Channel::coolant_level, -200).fit, Fit::not_judged);
}

// At most four on-off cycles an hour: common practice, no published source.
void TestReadings::fiveStartsWithinAnHourAreTooMany()
{
    Sketch sketch = cycling(6, 8); // on every 12 min
    sketch.readings = {emptyReading(60)};
    const JudgedReadings judged = judgeReadings(sketch);
    QCOMPARE(judged.cycles_per_hour, std::optional<double>(5.0));
    QCOMPARE(judged.cycles_fit, Fit::over_limit);
}

void TestReadings::fourStartsWithinAnHourAreAllowed()
{
    Sketch sketch = cycling(8, 8); // on every 16 min
    sketch.readings = {emptyReading(60)};
    const JudgedReadings judged = judgeReadings(sketch);
    QCOMPARE(judged.cycles_per_hour, std::optional<double>(4.0));
    QCOMPARE(judged.cycles_fit, Fit::fits);
}

void TestReadings::cyclesAreNotJudgedWithoutASwitchingOff()
{
    const JudgedReadings judged =
        judgeReadings(withReadings(sampleJob("sound-bus"), "heater-1", {emptyReading(60)}));
    QVERIFY(!judged.cycles_per_hour);
    QCOMPARE(judged.cycles_fit, Fit::not_judged);
}

void TestReadings::wordsComeWithEveryVerdict()
{
    for (const Instrument& row : instruments())
        for (const double value : {-30.0, 0.0, 20.0, 200.0}) {
            const ReadingVerdict verdict = verdictOf(sampleJob("sound-bus"), row.channel, value);
            const std::string words = format(verdict.words, UnitSystem::inch);
            QVERIFY(!words.empty());
            QVERIFY2(words.find('{') == std::string::npos, words.c_str());
        }
}

QTEST_APPLESS_MAIN(TestReadings)
#include "test_readings.moc"
