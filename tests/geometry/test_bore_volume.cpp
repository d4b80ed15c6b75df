#include "tests/geometry/random_hoses.h"
#include "tests/near.h"

#include "core/geometry/profile.h"

#include <cmath>
#include <numbers>

using namespace siphonwright;
using siphonwright::test::hose;

class TestBoreVolume : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aDiscCutThroughItsCentreIsHalf()
    {
        VERIFY_NEAR(discAreaOver(20, 0), std::numbers::pi * 50, 1e-12);
        VERIFY_NEAR(discAreaOver(20, 10), 0, 0);
        VERIFY_NEAR(discAreaOver(20, -10), std::numbers::pi * 100, 1e-12);
        // Chord at half the radius: r^2 (pi/3 - sqrt(3)/4), the segment of 120 deg.
        VERIFY_NEAR(discAreaOver(20, 5), 100 * (std::numbers::pi / 3 - std::sqrt(3.0) / 4), 1e-12);
        VERIFY_NEAR(discAreaOver(0, 0), 0, 0);
    }

    void aHoofOfAnInclinedBoreIsTwoThirdsOfACube()
    {
        // Archimedes: the hoof between the base's diameter and a plane through it holds 2/3 r^2 h. Over the
        // level at 45 deg, h = r: 2/3 of 1000 mm3. The disc whose centre is at the level is the base.
        const Path path = hose({{{0, 0, 0}, 0}, {{200, 0, 200}, 0}}, 20);
        const double at_level = 100 * std::sqrt(2.0);
        VERIFY_NEAR(boreVolumeUnder(path, Plumb(), 100, at_level, 300), 2.0 / 3, 1e-9);
        VERIFY_NEAR(boreVolumeOver(path, Plumb(), 100, 0, at_level), 2.0 / 3, 1e-9);
    }

    void anInclinedBoreHoldsWhatACylinderToTheMiddleOfTheCutHolds()
    {
        // Rise 3 in 5: the level cuts the centreline at 100 / 0.6 from the start.
        const Path path = hose({{{0, 0, 0}, 0}, {{240, 0, 180}, 0}}, 19);
        const double disc = std::numbers::pi * 9.5 * 9.5 / 1000;
        VERIFY_NEAR(boreVolumeUnder(path, Plumb(), 100, 0, 300), disc * 100 / 0.6, 1e-9);
        VERIFY_NEAR(boreVolumeOver(path, Plumb(), 100, 0, 300), disc * (300 - 100 / 0.6), 1e-9);
        VERIFY_NEAR(boreVolume(path, 0, 300), disc * 300, 1e-9);
        VERIFY_NEAR(boreVolume(path, 250, 900), disc * 50, 1e-9);
    }

    void aLevelBoreIsFilledBySegment()
    {
        const Path path = hose({{{0, 0, 0}, 0}, {{100, 0, 0}, 0}}, 20);
        VERIFY_NEAR(boreVolumeOver(path, Plumb(), 5, 0, 100), discAreaOver(20, 5) / 10, 1e-9);
        VERIFY_NEAR(boreVolumeUnder(path, Plumb(), 5, 0, 100),
                    (100 * std::numbers::pi - discAreaOver(20, 5)) / 10, 1e-9);
    }

    void aPlumbBoreIsAllOrNothing()
    {
        const Path path = hose({{{0, 0, 0}, 0}, {{0, 0, 100}, 0}}, 20);
        VERIFY_NEAR(boreVolumeOver(path, Plumb(), 30, 0, 100), std::numbers::pi * 100 * 70 / 1000, 1e-9);
    }

    void aHalfTorusCutAtItsCentreIsWhole()
    {
        // Two right angles of radius 100 make half a torus over the level of its centre: pi R pi r^2. The
        // disc at its feet lies level.
        const Path path =
            hose({{{0, 0, -50}, 0}, {{0, 0, 100}, 100}, {{200, 0, 100}, 100}, {{200, 0, -50}, 0}}, 20);
        const double torus = std::numbers::pi * 100 * std::numbers::pi * 100 / 1000;
        VERIFY_NEAR(boreVolumeOver(path, Plumb(), 0, 0, path.line.length()), torus, 1e-6);
    }

    void anArcCutAnywhereAgreesWithAMillionDiscs()
    {
        const Path path = hose({{{0, 0, 0}, 0}, {{150, 40, 120}, 60}, {{300, -20, 0}, 0}}, 30);
        const double end = path.line.length();
        for (const double level : {20.0, 55.0, 80.0, 84.0, 90.0, 95.0}) {
            const int discs = 1'000'000;
            double sum = 0;
            for (int i = 0; i < discs; ++i) {
                const double s = end * (i + 0.5) / discs;
                const double t = path.line.tangent(s).z;
                sum += discAreaOver(30, (level - path.line.at(s).z) / std::sqrt(1 - t * t));
            }
            const double expected = sum * end / discs / 1000;
            VERIFY_NEAR(boreVolumeOver(path, Plumb(), level, 0, end), expected, 1e-6 * expected);
        }
    }

    void boresAddUpAlongAPathAndAnOpeningHasTheSmaller()
    {
        Path path = hose({{{0, 0, 0}, 0}, {{300, 0, 0}, 0}}, 19);
        path.bores = {{0, 100, 10}, {100, 300, 20}, {300, 300, 8}};
        VERIFY_NEAR(boreVolume(path, 0, 300), std::numbers::pi * (25 * 100 + 100 * 200) / 1000, 1e-9);
        VERIFY_NEAR(path.boreAt(50), 10, 0);
        VERIFY_NEAR(path.boreAt(100), 10, 0);
        VERIFY_NEAR(path.boreAt(150), 20, 0);
        VERIFY_NEAR(path.boreAt(300), 8, 0);
        VERIFY_NEAR(Path{}.boreAt(3), 0, 0);
    }
};

QTEST_APPLESS_MAIN(TestBoreVolume)
#include "test_bore_volume.moc"
