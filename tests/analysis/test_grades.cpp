#include "tests/geometry/random_hoses.h"
#include "tests/near.h"
#include "tests/random_runs.h"
#include "tests/sound_loop.h"

#include "core/analysis/grades.h"
#include "core/checks/faults.h"
#include "core/checks/rules.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// The sound loop with its return hose as a free run through corners, low under the coolant level.
Sketch freeReturn(const std::vector<Vec3>& corners, double radius_mm)
{
    Sketch sketch = soundLoop();
    sketch.heaters[0].position.z -= 100; // deep enough under the jacket on any grade looked at
    sketch.hoses[return_hose].edit([&](Hose& h) {
        h.from = {};
        h.to = {};
        h.from.open_at = corners.front();
        h.to.open_at = corners.back();
        h.points.clear();
        for (std::size_t i = 1; i + 1 < corners.size(); ++i)
            h.points.push_back({corners[i], radius_mm, BendKind::hose});
        h.parts.clear();
    });
    return sketch;
}

/// A return that rises a little all the way, towards either end of the engine: some grades spoil it.
Sketch gentleReturn(Dice& dice)
{
    const double sign = dice.upTo(1) == 0 ? 1 : -1;
    Vec3 at{500 - sign * 400, 0, 0};
    std::vector<Vec3> corners = {at};
    const std::size_t pieces = 2 + dice.upTo(4);
    for (std::size_t i = 0; i < pieces; ++i) {
        at.x += sign * dice.between(150, 350);
        at.y += dice.between(-80, 80);
        at.z += dice.between(1, 25);
        corners.push_back(at);
    }
    return freeReturn(corners, 60);
}

Layout level(const Sketch& sketch)
{
    return resolve(sketch, plumbOf(sketch));
}

std::vector<Finding> judged(const Sketch& sketch, Grade grade)
{
    return judge(sketch, resolve(sketch, plumbOf(sketch, grade)), {}, RuleSet::over_grades).findings;
}

bool soundOn(const Sketch& sketch, double along_percent)
{
    const std::vector<Finding> found = judged(sketch, {along_percent, 0});
    return std::none_of(found.begin(), found.end(), [](const Finding& finding) {
        return finding.severity > Severity::advice && ruleById(finding.rule)->tilt == Tilt::traps;
    });
}

/// The last sound grade outwards from the level, by trying every hundredth of a percent.
double lastSound(const Sketch& sketch, double sign)
{
    double last = 0;
    for (int step = 1; step <= 1500; ++step) {
        const double along_percent = sign * step * 0.01;
        if (!soundOn(sketch, along_percent))
            break;
        last = along_percent;
    }
    return last;
}

bool contains(const std::vector<Finding>& list, const Finding& thing, Severity least)
{
    return std::any_of(list.begin(), list.end(), [&](const Finding& other) {
        return sameThing(other, thing) && other.severity >= least;
    });
}

} // namespace

class TestGrades : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aReturnOfOneInFiftyIsLevelOnATwoPercentYard();
    void whatIsFoundOnAGradeIsOneSeverityLower();
    void whatWouldBeAdviceOnAGradeIsNothing();
    void theGradeFoundIsThatOfTryingAll();
    void aStraightReturnIsLevelFromItsOwnGradeOn();
    void theSoundRangeIsThatOfTryingAll();
    void anEngineTurnedRoundHasItsRangeTurnedRound();
    void whatIsNotSoundOnTheLevelHasNoRange();
    void theUsualGradeIsJudgedBesideTheEnvelope();
    void noEnvelopeFindsNothing();
    void stoppedTheyGiveNothing();
};

void TestGrades::aReturnOfOneInFiftyIsLevelOnATwoPercentYard()
{
    const double run_mm = std::sqrt(1000.0 * 1000 - 20 * 20); // rises 20 mm in 1000 mm of hose
    const Sketch rear = freeReturn({{0, 0, 0}, {run_mm, 0, 20}}, 0);
    QVERIFY(judged(rear, {}).empty());
    // Nose-up, the rear sinks.
    const Layout parked = resolve(rear, plumbOf(rear, {2, 0}));
    VERIFY_NEAR(parked.hoses[return_hose].rise_mm, 0, 0.01); // sine and tangent of 2 % differ by 4e-6
    const std::vector<Finding> found = findingsOn(rear, {2, 0}, level(rear));
    QCOMPARE(found.size(), std::size_t{1});
    QCOMPARE(found[0].rule, std::string("return-slope"));
    VERIFY_NEAR(*found[0].measured, 0, 1e-5);
    QVERIFY(found[0].only_on_grade == Grade({2, 0}));
    QVERIFY(findingsOn(rear, {-2, 0}, level(rear)).empty());
    // Led to the front, it is the other way round.
    const Sketch front = freeReturn({{run_mm, 0, 0}, {0, 0, 20}}, 0);
    QVERIFY(findingsOn(front, {2, 0}, level(front)).empty());
    QCOMPARE(findingsOn(front, {-2, 0}, level(front)).size(), std::size_t{1});
}

void TestGrades::whatIsFoundOnAGradeIsOneSeverityLower()
{
    Dice dice(21);
    std::size_t looked_at = 0;
    for (int i = 0; i < 60; ++i) {
        const Sketch sketch = gentleReturn(dice);
        for (const Grade grade : {Grade{3, 0}, Grade{-3, 0}, Grade{-3, 2}}) {
            const std::vector<Finding> on_grade = judged(sketch, grade);
            for (const Finding& finding : findingsOn(sketch, grade, level(sketch))) {
                const auto as_judged =
                    std::find_if(on_grade.begin(), on_grade.end(), [&](const Finding& other) {
                        return sameThing(other, finding) && other.along_mm == finding.along_mm;
                    });
                QVERIFY(as_judged != on_grade.end());
                QCOMPARE(int(finding.severity), int(as_judged->severity) - 1);
                QVERIFY(!contains(judged(sketch, {}), finding, finding.severity));
                ++looked_at;
            }
        }
    }
    QVERIFY(looked_at > 30);
}

void TestGrades::whatWouldBeAdviceOnAGradeIsNothing()
{
    const double run_mm = std::sqrt(1000.0 * 1000 - 25 * 25);
    const Sketch sketch = freeReturn({{0, 0, 0}, {run_mm, 0, 25}}, 0);
    QVERIFY(!judged(sketch, {1, 0}).empty()); // 1.5 %, under 1 in 50: advice
    QVERIFY(findingsOn(sketch, {1, 0}, level(sketch)).empty());
}

void TestGrades::theGradeFoundIsThatOfTryingAll()
{
    Dice dice(22);
    std::size_t looked_at = 0;
    for (int i = 0; i < 120; ++i) { // seldom is a grade found
        const Sketch sketch = gentleReturn(dice);
        const Layout on_level = level(sketch);
        for (const Finding& finding : findingsOnEnvelope(sketch, on_level, {})) {
            const Grade from = *finding.only_on_grade;
            // Flat stretches join and part as the grade changes: which is which has no one answer.
            if (from.across_percent != 0 || finding.rule == "return-slope")
                continue;
            const double sign = from.along_percent > 0 ? 1 : -1;
            const auto as_judged = static_cast<Severity>(int(finding.severity) + 1);
            double first = sign * 3;
            for (int step = 1; step <= 600; ++step) {
                const double along_percent = sign * step * 0.005;
                if (contains(judged(sketch, {along_percent, 0}), finding, as_judged)) {
                    first = along_percent;
                    break;
                }
            }
            VERIFY_NEAR(from.along_percent, first, 0.02);
            ++looked_at;
        }
    }
    QVERIFY(looked_at > 20);
}

void TestGrades::aStraightReturnIsLevelFromItsOwnGradeOn()
{
    for (const double rise_mm : {21.0, 24.0, 27.5}) {
        const double run_mm = std::sqrt(1000.0 * 1000 - rise_mm * rise_mm);
        const Sketch sketch = freeReturn({{0, 0, 0}, {run_mm, 0, rise_mm}}, 0);
        double first_percent = 3;
        for (const Finding& finding : findingsOnEnvelope(sketch, level(sketch), {}))
            if (finding.rule == "return-slope")
                first_percent = std::min(first_percent, finding.only_on_grade->along_percent);
        // Where what is left of its slope is 1 in 1000 of its length.
        const double expected_percent = 100 * std::tan(std::asin(rise_mm / 1000) - std::asin(0.001));
        VERIFY_NEAR(first_percent, expected_percent, 0.02);
    }
}

void TestGrades::theSoundRangeIsThatOfTryingAll()
{
    Dice dice(23);
    std::size_t bounded = 0;
    const int sketches = runs(40, 40);
    for (int i = 0; i < sketches; ++i) {
        const Sketch sketch = gentleReturn(dice);
        const std::optional<SoundGrades> found = soundGrades(sketch, level(sketch), {});
        QCOMPARE(found.has_value(), soundOn(sketch, 0));
        if (!found)
            continue;
        VERIFY_NEAR(found->low_percent, lastSound(sketch, -1), 0.02);
        VERIFY_NEAR(found->high_percent, lastSound(sketch, 1), 0.02);
        QCOMPARE(found->low_open, found->low_percent == -searched_grade_percent);
        QCOMPARE(found->high_open, found->high_percent == searched_grade_percent);
        bounded += (found->low_open ? 0U : 1U) + (found->high_open ? 0U : 1U);
    }
    QVERIFY(bounded > std::size_t(sketches * 3 / 8));
}

void TestGrades::anEngineTurnedRoundHasItsRangeTurnedRound()
{
    Dice dice(24);
    std::size_t lopsided = 0;
    for (int i = 0; i < 20; ++i) {
        Sketch sketch = gentleReturn(dice);
        const std::optional<SoundGrades> ahead = soundGrades(sketch, level(sketch), {});
        sketch.engine->heading_deg = 180;
        const std::optional<SoundGrades> astern = soundGrades(sketch, level(sketch), {});
        QCOMPARE(ahead.has_value(), astern.has_value());
        if (!ahead)
            continue;
        VERIFY_NEAR(astern->low_percent, -ahead->high_percent, 0.011);
        VERIFY_NEAR(astern->high_percent, -ahead->low_percent, 0.011);
        QCOMPARE(astern->low_open, ahead->high_open);
        lopsided += std::abs(ahead->low_percent + ahead->high_percent) > 1 ? 1U : 0U;
    }
    QVERIFY(lopsided > 5);
}

void TestGrades::whatIsNotSoundOnTheLevelHasNoRange()
{
    const Sketch hump = freeReturn({{0, 0, 0}, {200, 0, 100}, {400, 0, 20}, {600, 0, 200}}, 40);
    QVERIFY(!soundGrades(hump, level(hump), {}));
    const Sketch sound = soundLoop();
    QVERIFY(soundGrades(sound, level(sound), {}));
}

void TestGrades::theUsualGradeIsJudgedBesideTheEnvelope()
{
    const double run_mm = std::sqrt(1000.0 * 1000 - 60 * 60);
    Sketch sketch = freeReturn({{0, 0, 0}, {run_mm, 0, 60}}, 0); // 6 %: sound inside 3 %
    QVERIFY(findingsOnEnvelope(sketch, level(sketch), {}).empty());
    sketch.site.grade_along_percent = 8;
    const std::vector<Finding> found = findingsOnEnvelope(sketch, level(sketch), {});
    double first_percent = 8;
    for (const Finding& finding : found)
        if (finding.rule == "return-slope")
            first_percent = std::min(first_percent, finding.only_on_grade->along_percent);
    // Level, under 1 in 1000, from 5.9 % of slope on: 6 % as a sine is 6.0108 % as a grade.
    VERIFY_NEAR(first_percent, 5.91, 0.02);
}

void TestGrades::noEnvelopeFindsNothing()
{
    const double run_mm = std::sqrt(1000.0 * 1000 - 20 * 20);
    Sketch sketch = freeReturn({{0, 0, 0}, {run_mm, 0, 20}}, 0);
    QVERIFY(!findingsOnEnvelope(sketch, level(sketch), {}).empty());
    sketch.site.envelope_along_percent = 0;
    sketch.site.envelope_across_percent = 0;
    QVERIFY(findingsOnEnvelope(sketch, level(sketch), {}).empty());
}

void TestGrades::stoppedTheyGiveNothing()
{
    const double run_mm = std::sqrt(1000.0 * 1000 - 20 * 20);
    const Sketch sketch = freeReturn({{0, 0, 0}, {run_mm, 0, 20}}, 0);
    std::stop_source source;
    source.request_stop();
    QVERIFY(findingsOnEnvelope(sketch, level(sketch), source.get_token()).empty());
    QVERIFY(!soundGrades(sketch, level(sketch), source.get_token()));
}

QTEST_APPLESS_MAIN(TestGrades)
#include "test_grades.moc"
