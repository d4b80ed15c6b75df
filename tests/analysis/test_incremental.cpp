#include "tests/sketch/random_sketch.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/sketch/edits.h"

#include <QtTest>

#include <algorithm>
#include <cmath>
#include <random>

/// What is taken over from the analysis before is what analysing from scratch gives.
namespace siphonwright {
namespace {

std::size_t upTo(std::mt19937& random, std::size_t most)
{
    return std::uniform_int_distribution<std::size_t>(0, most)(random);
}

/// A hose with humps, dips and flat stretches.
Shared<Hose> wavyHose(std::mt19937& random, int number)
{
    Hose hose;
    hose.id = "hose-wavy-" + std::to_string(number);
    hose.role = upTo(random, 1) == 0 ? HoseRole::supply : HoseRole::return_;
    if (upTo(random, 3) > 0)
        hose.bore_mm.value = 19.05;
    hose.bore_mm.source = upTo(random, 1) == 0 ? Source::measured : Source::assumed;
    const auto at = [&](int k) {
        return Vec3{80.0 * k, 0, 700.0 + 50 * number + double(upTo(random, 60)) + 2.0 * k};
    };
    hose.from.open_at = at(0);
    for (int k = 1; k <= 12; ++k)
        hose.points.push_back({at(k), double(40 + 10 * upTo(random, 10)), BendKind::hose});
    hose.to.open_at = at(13);
    hose.clips_mm = {100, 350};
    hose.parts.push_back({InlineKind::lift_check_valve, 200, 60, 15, true});
    return Shared<Hose>(std::move(hose));
}

/// One random edit: mostly of one hose, sometimes of what is round the hoses or of their number and order.
void editAtRandom(Sketch& sketch, std::mt19937& random)
{
    const std::size_t kind = upTo(random, 17);
    if (kind == 0)
        sketch.coolant.glycol = upTo(random, 1) == 0 ? Glycol::none : Glycol::ethylene;
    else if (kind == 1)
        sketch.ground_z_mm = -100.0 + double(upTo(random, 900));
    else if (kind == 2)
        sketch.limits = {
            {"return-slope", 0.01 * double(upTo(random, 4)), {}, {}, upTo(random, 2) == 0, "try"}};
    else if (kind == 3)
        sketch.units = upTo(random, 1) == 0 ? UnitChoice::inch : UnitChoice::metric;
    else if (kind == 4 && sketch.engine)
        sketch.engine->mount_angle_deg = double(upTo(random, 4));
    else if (kind == 5 && sketch.tank)
        sketch.tank->cold_min_mm.value = 600.0 + double(upTo(random, 400));
    else if (kind == 6 && !sketch.ports.empty())
        sketch.ports.front().position.z += 5;
    if (sketch.hoses.empty() || (kind > 0 && kind < 7))
        return;
    const std::size_t which = upTo(random, sketch.hoses.size() - 1);
    if (kind == 7)
        std::swap(sketch.hoses[which], sketch.hoses.front());
    else if (kind == 8 && sketch.hoses.size() > 3)
        sketch.hoses.erase(sketch.hoses.begin() + std::ptrdiff_t(which));
    else if (kind == 9 && sketch.hoses.size() < 9)
        sketch.hoses.push_back(wavyHose(random, int(100 + upTo(random, 100000))));
    else if (kind == 10 && !sketch.heaters.empty())
        sketch.heaters.front().position.z += double(upTo(random, 100)) - 50;
    else if (kind == 11)
        sketch.hoses[which].edit([&](Hose& hose) {
            hose.bore_mm.value = 12.0 + double(upTo(random, 12));
            for (InlinePart& part : hose.parts)
                part.open = upTo(random, 1) == 0;
            hose.parts.push_back({InlineKind::isolation_valve, 50.0 + double(upTo(random, 200)), 60, 15,
                                  upTo(random, 1) == 0});
        });
    else if (kind == 12) // off what it was on, or the other way round
        sketch.hoses[which].edit([](Hose& hose) { std::swap(hose.from, hose.to); });
    else
        sketch.hoses[which].edit([&](Hose& hose) {
            if (hose.points.empty())
                hose.wall_mm = 3 + double(upTo(random, 3));
            else
                hose.points[upTo(random, hose.points.size() - 1)].at.z += double(upTo(random, 80)) - 40;
        });
}

/// Whether heights, humps and dips are the same, to the last bit.
bool sameHeights(const ResolvedHose& a, const ResolvedHose& b)
{
    const auto same_hump = [](const HighPoint& p, const HighPoint& q) {
        return p.along_mm == q.along_mm && p.height_mm == q.height_mm && p.from_mm == q.from_mm &&
               p.to_mm == q.to_mm && p.trapped_ml == q.trapped_ml && p.within == q.within;
    };
    const auto same_dip = [](const Dip& p, const Dip& q) {
        return p.along_mm == q.along_mm && p.depth_mm == q.depth_mm && p.from_mm == q.from_mm &&
               p.to_mm == q.to_mm && p.held_ml == q.held_ml && p.within == q.within;
    };
    const auto& humps = a.profile.high_points;
    const auto& dips = a.profile.dips;
    return a->path.line.length() == b->path.line.length() && a->volume_ml == b->volume_ml &&
           a->cut_length_mm == b->cut_length_mm && a.rise_mm == b.rise_mm &&
           a.highest_crown_mm == b.highest_crown_mm && a.highest_at_mm == b.highest_at_mm &&
           std::equal(humps.begin(), humps.end(), b.profile.high_points.begin(), b.profile.high_points.end(),
                      same_hump) &&
           std::equal(dips.begin(), dips.end(), b.profile.dips.begin(), b.profile.dips.end(), same_dip);
}

bool sameRunning(const Running& a, const Running& b)
{
    return std::equal(a.loops.begin(), a.loops.end(), b.loops.begin(), b.loops.end(),
                      [](const LoopRun& p, const LoopRun& q) {
                          return p.heater == q.heater && p.missing == q.missing &&
                                 p.circulation.status == q.circulation.status &&
                                 p.circulation.flow_kg_per_s == q.circulation.flow_kg_per_s;
                      });
}

void compareFromScratch(Sketch sketch, std::mt19937& random, int edits, Grade grade = {})
{
    Analysis before = analyse(sketch);
    std::size_t found = 0;
    for (int i = 0; i < edits; ++i) {
        editAtRandom(sketch, random);
        const Analysis now = analyse(sketch, &before, grade);
        const Analysis from_scratch = analyse(sketch, nullptr, grade);
        QVERIFY(now.findings == from_scratch.findings);
        QVERIFY(now.not_judged == from_scratch.not_judged);
        QVERIFY(now.margins == from_scratch.margins);
        QVERIFY(now.unconfirmed == from_scratch.unconfirmed);
        QVERIFY(std::equal(now.layout.hoses.begin(), now.layout.hoses.end(),
                           from_scratch.layout.hoses.begin(), from_scratch.layout.hoses.end(), sameHeights));
        QVERIFY(sameRunning(now.running, from_scratch.running));
        found += now.findings.size();
        before = now;
    }
    QVERIFY(found > 0);
}

} // namespace

class TestIncremental : public QObject {
    Q_OBJECT
private slots:
    void editsOfASoundLoopWithWavyHosesAreJudgedAsFromScratch()
    {
        std::mt19937 random(7);
        Sketch sketch = test::soundLoop();
        for (int i = 0; i < 4; ++i)
            sketch.hoses.push_back(wavyHose(random, i));
        compareFromScratch(sketch, random, 120);
    }
    void editsSeenOnAGradeAreJudgedAsFromScratch()
    {
        std::mt19937 random(11);
        Sketch sketch = test::soundLoop();
        for (int i = 0; i < 3; ++i)
            sketch.hoses.push_back(wavyHose(random, i));
        compareFromScratch(sketch, random, 20, {2, 1});
    }
    void editsOfAnyDrawingTheFormatAllowsAreJudgedAsFromScratch()
    {
        for (unsigned seed = 1; seed <= 20; ++seed) {
            std::mt19937 random(seed);
            Sketch sketch = test::RandomFiller(seed).sketch();
            sketch.hoses.push_back(wavyHose(random, 0));
            compareFromScratch(sketch, random, 10);
        }
    }
};

} // namespace siphonwright

QTEST_APPLESS_MAIN(siphonwright::TestIncremental)
#include "test_incremental.moc"
