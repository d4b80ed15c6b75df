#include "tests/near.h"

#include "core/geometry/projection.h"

#include <cmath>
#include <limits>
#include <numbers>

using namespace siphonwright;

namespace {

constexpr Projection side;
constexpr Projection from_left(Projection::From::from_left);
constexpr Projection from_right(Projection::From::from_right);

/// A run in space whose bend lies in no view's plane: 500 mm level along {0.6, 0.8, 0}, then 500 mm up, the
/// bend of 100 mm radius. Its arc begins 100 mm before the corner {300, 400, 0}, round {240, 320, 100}.
Centreline obliqueRun()
{
    return Centreline({{{0, 0, 0}, 0}, {{300, 400, 0}, 100}, {{300, 400, 500}, 0}});
}

} // namespace

class TestProjection : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyViewHasItsAxesWhereTheHeaderSays()
    {
        const Vec3 port = {250, 40, 310};
        QCOMPARE(side.flat(port), (Vec2{250, 310}));
        QCOMPARE(from_left.flat(port), (Vec2{-40, 310}));
        QCOMPARE(from_right.flat(port), (Vec2{40, 310}));
        // Nearer to the viewer is less deep.
        QVERIFY(side.depth({0, -100, 0}) < side.depth({0, 100, 0}));
        QVERIFY(from_left.depth({-100, 0, 0}) < from_left.depth({100, 0, 0}));
        QVERIFY(from_right.depth({100, 0, 0}) < from_right.depth({-100, 0, 0}));
    }

    void aPlaceOfAViewAndItsDepthGiveThePointBack()
    {
        const Vec3 p = {250, -40, 310};
        for (const Projection& view : {side, from_left, from_right})
            QCOMPARE(view.at(view.flat(p), view.depth(p)), p);
    }

    void aMoveInAnEndViewLeavesXAlone()
    {
        QCOMPARE(from_left.move({-50, 20}), (Vec3{0, 50, 20}));
        QCOMPARE(from_right.move({-50, 20}), (Vec3{0, -50, 20}));
        QCOMPARE(side.move({-50, 20}), (Vec3{-50, 0, 20}));
    }

    void theRulerSaysYInBothEndViews()
    {
        for (const Projection& view : {from_left, from_right})
            QCOMPARE(view.ruler(view.flat({0, 70, 0}).x), 70.0);
    }

    void anArcInSpaceIsWhereItShouldBeInEveryView()
    {
        const Centreline line = obliqueRun();
        // Half-way round: from the arc's centre {240, 320, 100} by 100 mm along {0.6, 0.8, -1} sin 45 deg.
        const double s = 400 + 25 * std::numbers::pi;
        const double half = 100 * std::sqrt(0.5);
        const double x = 240 + 0.6 * half; // 282.426
        const double y = 320 + 0.8 * half; // 376.569
        const double z = 100 - half;       // 29.289
        const Vec3 middle = line.at(s);
        VERIFY_NEAR(side.flat(middle).x, x, 1e-9);
        VERIFY_NEAR(from_left.flat(middle).x, -y, 1e-9);
        VERIFY_NEAR(from_right.flat(middle).x, y, 1e-9);
        for (const Projection& view : {side, from_left, from_right})
            VERIFY_NEAR(view.flat(middle).z, z, 1e-9);
        // The arc's ends: {240, 320, 0} and {300, 400, 100}.
        VERIFY_NEAR(from_left.flat(line.at(400)).x, -320, 1e-9);
        VERIFY_NEAR(from_left.flat(line.at(400 + 50 * std::numbers::pi)).x, -400, 1e-9);
        VERIFY_NEAR(from_left.flat(line.at(400 + 50 * std::numbers::pi)).z, 100, 1e-9);
    }

    void aBendAcrossTheEngineIsRoundFromTheEndAndALineFromTheSide()
    {
        // 200 mm along y, then 200 mm up, radius 100: centre {0, 100, 100}.
        const Centreline line({{{0, 0, 0}, 0}, {{0, 200, 0}, 100}, {{0, 200, 200}, 0}});
        for (int i = 0; i <= 10; ++i) {
            const double s = 100 + 50 * std::numbers::pi * i / 10;
            const Vec3 at = line.at(s);
            const Vec2 seen = from_left.flat(at);
            VERIFY_NEAR(std::hypot(seen.x + 100, seen.z - 100), 100, 1e-9);
            VERIFY_NEAR(side.flat(at).x, 0, 1e-9);
        }
    }

    void theNearestPlaceIsTheOneThatSamplingFinds()
    {
        const Centreline line = obliqueRun();
        for (const Projection& view : {from_left, from_right})
            for (const Vec2 p :
                 {Vec2{-390, 20}, Vec2{-350, 60}, Vec2{-100, -40}, Vec2{-420, 300}, Vec2{50, 700}}) {
                const Vec2 at = {view == from_left ? p.x : -p.x, p.z};
                double least = std::numeric_limits<double>::infinity();
                for (double s = 0; s <= line.length(); s += 0.01) {
                    const Vec2 seen = view.flat(line.at(s));
                    least = std::min(least, std::hypot(seen.x - at.x, seen.z - at.z));
                }
                const Centreline::Nearest nearest = nearestSeen(view, line, at);
                VERIFY_NEAR(nearest.distance_mm, least, 1e-3);
                const Vec2 there = view.flat(line.at(nearest.s));
                VERIFY_NEAR(std::hypot(there.x - at.x, there.z - at.z), nearest.distance_mm, 1e-9);
            }
    }

    void aHoseSeenEndOnIsOnePoint()
    {
        const Centreline line({{{0, 30, 40}, 0}, {{500, 30, 40}, 0}});
        VERIFY_NEAR(nearestSeen(from_left, line, {-30, 50}).distance_mm, 10, 1e-9);
        VERIFY_NEAR(nearestSeen(from_left, Centreline(), {1, 2}).distance_mm, 0, 0);
    }
};

QTEST_APPLESS_MAIN(TestProjection)
#include "test_projection.moc"
