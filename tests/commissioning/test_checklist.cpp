#include "tests/commissioning/job.h"
#include "tests/near.h"

#include "core/analysis/analysis.h"
#include "core/commissioning/checklist.h"
#include "core/commissioning/checklist_text.h"
#include "core/commissioning/iso_time.h"
#include "core/paperwork/parts.h"

#include <QRegularExpression>
#include <QTest>

#include <set>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Tick tickFor(std::string_view step, std::string reason = {})
{
    return {std::string(step), "2026-11-25T06:00:00Z", "Apprentice", "", std::move(reason)};
}

Checklist allDoneBefore(std::string_view step)
{
    Checklist out;
    for (const WorkStep& one : checklistSteps()) {
        if (one.id == step)
            break;
        out.ticks.push_back(tickFor(one.id));
    }
    return out;
}

QString saidOf(std::string_view step, const Sketch& sketch, const Analysis& analysis)
{
    QString out;
    for (const Message& line : textOf(*stepById(step), sketch, analysis))
        out += QString::fromStdString(format(line, UnitSystem::metric)) + u'\n';
    return out;
}

} // namespace

class TestChecklist : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyNeedIsAnEarlierStepAndEveryIdIsItsOwn();
    void theWholeListCanBeTickedInItsOrder();
    void aStepWaitsForWhatMakesItSafe();
    void aReasonOverridesAndIsKept();
    void aReasonThatWasNotNeededIsNotKept();
    void untickingSaysWhatRestsOnIt();
    void progressNamesTheNextStepAndWhatWasDoneAgainstTheOrder();
    void energisingWaitsForCoolantAndOpenValves();
    void tickingTwiceKeepsOneTick();
    void stepsSayTheNumbersOfThisDrawing();
    void stepsGiveTheFiguresOfThePartsList();
    void whatTheNewPartsHoldIsOneFigure();
    void anAirLockIsNamedWithItsPlace();
    void whatIsNotEnteredIsSaid();
    void timesAreReadAsIsoWritesThem();
    void timesThatDoNotExistAreRefused();
};

void TestChecklist::everyNeedIsAnEarlierStepAndEveryIdIsItsOwn()
{
    std::set<std::string_view> before;
    for (const WorkStep& step : checklistSteps()) {
        for (const std::string_view need : step.needs)
            QVERIFY2(need.empty() || before.count(need) == 1, step.id.data());
        QVERIFY2(before.insert(step.id).second, step.id.data());
        QVERIFY(!step.caution.empty());
    }
}

void TestChecklist::theWholeListCanBeTickedInItsOrder()
{
    Checklist list;
    for (const WorkStep& step : checklistSteps())
        QVERIFY2(tick(list, tickFor(step.id)).done, step.id.data());
    const Progress progress = progressOf(list);
    QCOMPARE(progress.done, progress.total);
    QVERIFY(!progress.next);
    QVERIFY(progress.against_order.empty());
}

void TestChecklist::aStepWaitsForWhatMakesItSafe()
{
    Checklist list;
    const Ticked refused = tick(list, tickFor("drain-flush"));
    QVERIFY(!refused.done);
    QVERIFY(list.ticks.empty());
    const QString words = QString::fromStdString(format(refused.message, UnitSystem::metric));
    QVERIFY2(words.contains(QStringLiteral("Lock out the heater's power")), qPrintable(words));
    QVERIFY2(words.contains(QStringLiteral("Chock the wheels")), qPrintable(words));
}

void TestChecklist::aReasonOverridesAndIsKept()
{
    Checklist list;
    const Ticked done = tick(list, tickFor("drain-flush", "Drained at another yard"));
    QVERIFY(done.done);
    QVERIFY(!done.message.pattern.empty());
    QCOMPARE(tickOf(list, "drain-flush")->override_reason, std::string("Drained at another yard"));
}

void TestChecklist::aReasonThatWasNotNeededIsNotKept()
{
    Checklist list;
    QVERIFY(tick(list, tickFor("chock-wheels", "Just so")).done);
    QVERIFY(tickOf(list, "chock-wheels")->override_reason.empty());
}

void TestChecklist::untickingSaysWhatRestsOnIt()
{
    Checklist list = allDoneBefore("verify");
    const Ticked back = untick(list, "fill");
    QVERIFY(back.done);
    const QString words = QString::fromStdString(format(back.message, UnitSystem::metric));
    QVERIFY2(words.contains(QStringLiteral("Energise the heater")), qPrintable(words)); // directly
    QVERIFY2(words.contains(QStringLiteral("Inspect every joint")), qPrintable(words)); // through others
    QVERIFY2(!words.contains(QStringLiteral("Mount")), qPrintable(words));
    QVERIFY(!untick(list, "fill").done);
}

void TestChecklist::progressNamesTheNextStepAndWhatWasDoneAgainstTheOrder()
{
    Checklist list = allDoneBefore("fill");
    QVERIFY(progressOf(list).next);
    QCOMPARE(progressOf(list).next->id, std::string_view("fill"));
    untick(list, "route");
    const Progress progress = progressOf(list);
    QCOMPARE(progress.next->id, std::string_view("route"));
    QCOMPARE(progress.against_order.size(), std::size_t(1)); // the valves are open, their hose is not laid
    QCOMPARE(progress.against_order.front()->step, std::string("open-valves"));
}

// Never energise without coolant in the chamber or with a valve closed: common practice, no published source.
void TestChecklist::energisingWaitsForCoolantAndOpenValves()
{
    for (const char* step : {"fill", "open-valves", "top-up", "connect"}) {
        Checklist list = allDoneBefore("energise");
        untick(list, step);
        QVERIFY2(!tick(list, tickFor("energise")).done, step);
    }
}

void TestChecklist::tickingTwiceKeepsOneTick()
{
    Checklist list;
    QVERIFY(tick(list, tickFor("mix")).done);
    Tick again = tickFor("mix");
    again.by = "Foreman";
    QVERIFY(tick(list, again).done);
    QCOMPARE(list.ticks.size(), std::size_t(1));
    QCOMPARE(list.ticks.front().by, std::string("Foreman"));
}

void TestChecklist::stepsSayTheNumbersOfThisDrawing()
{
    const Sketch sketch = sampleJob("sound-bus");
    const Analysis analysis = proved(sketch);
    // 1500 W over 120 V (elementary)
    QVERIFY2(saidOf("connect", sketch, analysis).contains(QStringLiteral("12.5 A")),
             qPrintable(saidOf("connect", sketch, analysis)));
    // The limit of 180 degF and four cycles an hour: common practice, no published source.
    const QString verify = saidOf("verify", sketch, analysis);
    QVERIFY2(verify.contains(QStringLiteral("82.2 °C")) && verify.contains(QStringLiteral("4 cycles")),
             qPrintable(verify));
    const QString litres = QString::fromStdString(
        format(analysis.proof->filling.coolant_ml / 1000, Unit::litre, UnitSystem::metric));
    QVERIFY(saidOf("fill", sketch, analysis).contains(litres));
    for (const Shared<Hose>& hose : sketch.hoses)
        QVERIFY(saidOf("open-valves", sketch, analysis).contains(QString::fromStdString(hose->name)));
}

/// Two hoses, each with two ends and a valve in it: eight pushed-on ends, two clamps each. The valve is 40 mm
/// along the supply hose itself, 30 mm of which are over the hose end.
void TestChecklist::stepsGiveTheFiguresOfThePartsList()
{
    const Sketch sketch = sampleJob("sound-bus");
    const Analysis analysis = proved(sketch);
    QVERIFY2(saidOf("inspect", sketch, analysis).contains(QStringLiteral("16 clamps")),
             qPrintable(saidOf("inspect", sketch, analysis)));
    const double cut_mm = partsOf(sketch, analysis.layout).cuts.at(0).length_mm;
    QVERIFY2(saidOf("route", sketch, analysis).contains(QStringLiteral("70 mm and %1 mm;").arg(cut_mm - 70)),
             qPrintable(saidOf("route", sketch, analysis)));
    QVERIFY2(saidOf("open-valves", sketch, analysis)
                 .contains(QStringLiteral("70 mm from its cut end at Drain port")),
             qPrintable(saidOf("open-valves", sketch, analysis)));
}

/// Hoses and heater alone are what is bought for; the fittings take some as well, and air that stays takes
/// room.
void TestChecklist::whatTheNewPartsHoldIsOneFigure()
{
    const Sketch sketch = sampleJob("above-level");
    const Analysis analysis = proved(sketch);
    double held_l = sketch.heaters.front().chamber_volume_ml.value.value_or(0) / 1000;
    QVERIFY(held_l > 0);
    for (const ResolvedHose& hose : analysis.layout.hoses)
        held_l += hose->volume_ml / 1000;
    const auto litres = [](double value) {
        return QString::fromStdString(format(value, Unit::litre, UnitSystem::metric));
    };
    const double poured_l = analysis.proof->filling.coolant_ml / 1000;
    QVERIFY(litres(poured_l) != litres(held_l));
    QVERIFY2(saidOf("mix", sketch, analysis).contains(litres(held_l)),
             qPrintable(saidOf("mix", sketch, analysis)));
    const QString fill = saidOf("fill", sketch, analysis);
    double air_ml = 0;
    for (const PocketFound& pocket : analysis.proof->filling.pockets)
        air_ml += pocket.volume_ml;
    QVERIFY(air_ml > 50);
    for (const double figure : {poured_l, air_ml / 1000})
        QVERIFY2(fill.contains(litres(figure)), qPrintable(fill));
    QVERIFY2(fill.count(QRegularExpression(QStringLiteral("[0-9] l\\b"))) == 2, qPrintable(fill));
}

void TestChecklist::anAirLockIsNamedWithItsPlace()
{
    const Sketch sketch = sampleJob("supply-hump");
    const Analysis analysis = proved(sketch);
    const auto pocket =
        std::find_if(analysis.proof->filling.pockets.begin(), analysis.proof->filling.pockets.end(),
                     [](const PocketFound& one) { return one.closes_bore; });
    QVERIFY(pocket != analysis.proof->filling.pockets.end());
    const QString fill = saidOf("fill", sketch, analysis);
    QVERIFY2(fill.contains(QStringLiteral("Bleed")), qPrintable(fill));
    QVERIFY2(fill.contains(QString::fromStdString(format(pocket->along_mm, Unit::mm, UnitSystem::metric))),
             qPrintable(fill));
}

void TestChecklist::whatIsNotEnteredIsSaid()
{
    Sketch sketch = sampleJob("sound-bus");
    sketch.heaters.front().actual_V = {};
    sketch.coolant.volume_percent = {};
    const Analysis analysis = proved(sketch);
    QVERIFY(saidOf("connect", sketch, analysis).contains(QStringLiteral("not entered")));
    QVERIFY(saidOf("mix", sketch, analysis).contains(QStringLiteral("not entered")));
}

void TestChecklist::timesAreReadAsIsoWritesThem()
{
    // 2000-03-01 is day 11017 after 1970-01-01: 30 years with 7 leap days before 2000, 60 days in 2000.
    QCOMPARE(secondsOf("2000-03-01T00:00:00Z"), std::optional<double>(11017 * 86400.0));
    QCOMPARE(secondsOf("1970-01-01T00:00Z"), std::optional<double>(0.0));
    QCOMPARE(secondsOf("2026-11-25 07:30"), secondsOf("2026-11-25T07:30:00Z"));
    QCOMPARE(secondsOf("2026-11-25T07:30:00+01:00"), secondsOf("2026-11-25T06:30:00Z"));
    QCOMPARE(secondsOf("2026-11-25T07:30:00-0130"), secondsOf("2026-11-25T09:00:00Z"));
    VERIFY_NEAR(*secondsOf("2026-11-25T07:30:01.25Z") - *secondsOf("2026-11-25T07:30:00Z"), 1.25, 1e-6);
}

void TestChecklist::timesThatDoNotExistAreRefused()
{
    for (const char* wrong :
         {"", "soon", "2026-02-29T00:00Z", "2026-13-01T00:00Z", "2026-00-10T00:00Z", "2026-01-01T24:00Z",
          "2026-01-01", "2026-01-01T10:00Zulu", "2026-01-01T1:00", "0000-01-01T00:00Z"})
        QVERIFY2(!secondsOf(wrong), wrong);
}

QTEST_APPLESS_MAIN(TestChecklist)
#include "test_checklist.moc"
