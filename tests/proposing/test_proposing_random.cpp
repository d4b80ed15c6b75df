#include "tests/random_runs.h"
#include "tests/sketch/random_sketch.h"
#include "tests/sound_loop.h"

#include "core/proposing/fix.h"
#include "core/proposing/propose.h"

#include <QTest>

#include <algorithm>
#include <random>

using namespace siphonwright;

namespace {

/// The sound loop with everything that a route or place hangs on moved about at random.
Sketch shaken(unsigned seed)
{
    std::mt19937 random(seed);
    const auto by = [&](double most) { return std::uniform_real_distribution<double>(-most, most)(random); };
    const auto move = [&](Vec3& at, double most) { at = at + Vec3{by(most), by(most), by(most)}; };
    Sketch sketch = test::soundLoop();
    for (Port& port : sketch.ports) {
        move(port.position, 40);
        port.axis.azimuth_deg += by(90);
        port.axis.elevation_deg = std::clamp(port.axis.elevation_deg - 20 + by(20), -90.0, 90.0);
    }
    move(sketch.heaters[0].position, 200);
    sketch.heaters[0].turn_deg = by(180);
    sketch.engine->mount_angle_deg = by(3);
    sketch.engine->lean_deg = by(3);
    sketch.ground_z_mm = -500;
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([&](Hose& changed) {
            for (int i = 0; i < 2; ++i)
                changed.points.push_back(changed.points.front());
            for (RoutePoint& point : changed.points)
                move(point.at, 250);
            if (by(1) > 0.5)
                changed.parts.clear();
            changed.bore_mm.value = 19 + by(6);
        });
    return sketch;
}

std::size_t stops(const Sketch& sketch)
{
    return analyse(sketch).count(Severity::stop);
}

} // namespace

class TestProposingRandom : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void whateverAFileHoldsNothingBreaks();
    void fixesOfAShakenLoopAddNoStop();
    void proposalsForAShakenLoopHold();
};

void TestProposingRandom::whateverAFileHoldsNothingBreaks()
{
    int with_findings = 0;
    const int seeds = test::runs(14, 60);
    for (unsigned seed = 1; seed <= unsigned(seeds); ++seed) {
        const Sketch sketch = test::RandomFiller(seed).sketch();
        const Analysis analysis = analyse(sketch);
        std::size_t tried = 0;
        for (const Finding& finding : analysis.findings)
            if (tried++ < 3)
                (void)fixFor(sketch, analysis, finding);
        with_findings += tried > 0 ? 1 : 0;
        ProposeOptions options;
        options.how_many = 1;
        const Proposals found = propose(sketch, options);
        QVERIFY(!found.best_first.empty() || !found.in_conflict.empty() || !found.missing.empty());
    }
    QVERIFY(with_findings * 7 > seeds * 3);
}

void TestProposingRandom::fixesOfAShakenLoopAddNoStop()
{
    int fixed = 0;
    const int seeds = test::runs(8, 40);
    for (unsigned seed = 1; seed <= unsigned(seeds); ++seed) {
        const Sketch sketch = shaken(seed);
        const Analysis analysis = analyse(sketch);
        const std::size_t before = analysis.count(Severity::stop);
        for (const Finding& finding : analysis.findings) {
            if (finding.severity == Severity::advice)
                continue;
            const std::optional<Fix> fix = fixFor(sketch, analysis, finding);
            if (!fix)
                continue;
            ++fixed;
            const std::size_t cured = finding.severity == Severity::stop ? 1 : 0;
            QVERIFY2(stops(fix->sketch) + cured <= before, format(fix->text, UnitSystem::metric).c_str());
        }
    }
    QVERIFY(fixed > seeds);
}

void TestProposingRandom::proposalsForAShakenLoopHold()
{
    int proposed = 0;
    for (unsigned seed = 1; seed <= unsigned(test::runs(6, 30)); ++seed) {
        const Sketch sketch = shaken(seed);
        ProposeOptions options;
        options.how_many = 1;
        options.space = spaceUnder(sketch, "heater-1");
        const Proposals found = propose(sketch, options);
        QVERIFY(!found.best_first.empty() || !found.in_conflict.empty());
        for (const Proposal& proposal : found.best_first) {
            ++proposed;
            for (const Finding& finding : proved(proposal.sketch).findings)
                QVERIFY2(finding.severity == Severity::advice || beyondLayout(finding.rule),
                         finding.rule.c_str());
        }
    }
    QVERIFY(proposed > 0);
}

QTEST_APPLESS_MAIN(TestProposingRandom)
#include "test_proposing_random.moc"
