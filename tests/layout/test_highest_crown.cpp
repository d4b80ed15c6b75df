#include "tests/geometry/random_hoses.h"
#include "tests/near.h"

#include "core/analysis/analysis.h"

#include <QtTest>

using namespace siphonwright;
using namespace siphonwright::test;

class TestHighestCrown : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noPlaceOfAHoseHasAHigherCrownThanTheHighest();
};

void TestHighestCrown::noPlaceOfAHoseHasAHigherCrownThanTheHighest()
{
    // Steep, tight and sharp bends, bores up to half as wide as the room they turn in; on a slope or level.
    Dice dice(5);
    for (int run = 0; run < 300; ++run) {
        Sketch s;
        Hose hose;
        hose.id = "hose-1";
        hose.bore_mm.value = dice.between(12, 50);
        const double climb = run % 3 == 0 ? 300 : 0;
        double base_mm = 0;
        for (const Corner& corner : randomCorners(dice)) {
            base_mm += climb;
            hose.points.push_back({corner.at + Vec3{0, 0, base_mm}, corner.radius_mm, BendKind::hose});
        }
        hose.to.open_at = hose.points.front().at + Vec3{900, 0, base_mm};
        s.hoses = {Shared<Hose>(hose)};
        const Plumb plumb = plumbOf(s, {dice.between(-5, 5), dice.between(-5, 5)});
        const Layout layout = resolve(s, plumb);
        const ResolvedHose& resolved = layout.hoses[0];
        for (const Piece& piece : resolved->path.line.pieces())
            for (const double s_mm : {piece.s, piece.s + piece.length_mm})
                QVERIFY(heightsAt(resolved->path, plumb, s_mm).crown_mm <= resolved.highest_crown_mm + 1e-9);
        VERIFY_NEAR(heightsAt(resolved->path, plumb, resolved.highest_at_mm).crown_mm,
                    resolved.highest_crown_mm, 1e-9);
    }
}

QTEST_APPLESS_MAIN(TestHighestCrown)
#include "test_highest_crown.moc"
