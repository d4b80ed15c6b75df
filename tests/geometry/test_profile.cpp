#include "tests/geometry/random_hoses.h"
#include "tests/near.h"

#include "core/geometry/profile.h"

#include <QElapsedTimer>

#include <cmath>
#include <limits>
#include <numbers>

using namespace siphonwright;
using siphonwright::test::Dice;
using siphonwright::test::hose;
using siphonwright::test::randomCorners;

namespace {

/// A hump 300 mm high, 19 mm bore, whose top sags by `sag_mm` between two clips 500 mm apart.
Path saggingHump(double sag_mm)
{
    return hose({{{0, 0, 0}, 0},
                 {{230, 0, 300}, 80},
                 {{480, 0, 300 - sag_mm}, 80},
                 {{730, 0, 300}, 80},
                 {{960, 0, 0}, 0}},
                19);
}

/// Level, drop, level, fall, with bends of this radius.
Path levelDropLevelFall(double radius_mm)
{
    return hose({{{0, 0, 0}, 0},
                 {{200, 0, 0}, radius_mm},
                 {{200, 0, -100}, radius_mm},
                 {{400, 0, -100}, 0},
                 {{600, 0, -200}, 0}},
                19);
}

bool isSound(const Profile& profile)
{
    for (const HighPoint& p : profile.high_points) {
        if (!std::isfinite(p.along_mm + p.z_mm + p.height_mm + p.from_mm + p.to_mm + p.trapped_ml))
            return false;
    }
    for (const Dip& p : profile.dips) {
        if (!std::isfinite(p.along_mm + p.z_mm + p.depth_mm + p.from_mm + p.to_mm + p.held_ml))
            return false;
    }
    return true;
}

} // namespace

class TestProfile : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void crownAndInvertStandOffByTheBoreTimesTheCosine()
    {
        // Rise 3 in 5: k = 0.8, so 9.5 x 0.8 = 7.6.
        const BoreHeights inclined = heightsAt(hose({{{0, 0, 0}, 0}, {{240, 0, 180}, 0}}, 19), Plumb(), 100);
        VERIFY_NEAR(inclined.centre_mm, 60, 1e-9);
        VERIFY_NEAR(inclined.crown_mm, 67.6, 1e-9);
        VERIFY_NEAR(inclined.invert_mm, 52.4, 1e-9);
        const BoreHeights plumb = heightsAt(hose({{{0, 0, 0}, 0}, {{0, 0, 180}, 0}}, 19), Plumb(), 100);
        VERIFY_NEAR(plumb.crown_mm, 100, 1e-9);
        VERIFY_NEAR(plumb.invert_mm, 100, 1e-9);
    }

    void aSymmetricHumpStandsByTrigonometry()
    {
        // Legs of 300 at 30 deg, radius 100: the arc's top is r (1/cos 30 deg - 1) = 15.47005 under the
        // corner at 150, and level, so its crown is r_bore (1 - cos 30 deg) = 1.27276 more over the ends'
        // crowns.
        const double run = 300 * std::cos(std::numbers::pi / 6);
        const Path path = hose({{{0, 0, 0}, 0}, {{run, 0, 150}, 100}, {{2 * run, 0, 0}, 0}}, 19);
        const Profile profile = profileOf(path, Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(1));
        QVERIFY(profile.dips.empty());
        const HighPoint& top = profile.high_points[0];
        VERIFY_NEAR(top.height_mm, 150 - 15.470054 + 1.272759, 1e-5);
        VERIFY_NEAR(top.along_mm, path.line.length() / 2, 1e-6);
        VERIFY_NEAR(top.z_mm, 134.529946, 1e-5);
        VERIFY_NEAR(top.at.x, run, 1e-6);
        VERIFY_NEAR(top.crown_mm - top.sill_mm, top.height_mm, 1e-12);
        VERIFY_NEAR(top.from_mm, 0, 1e-6);
        VERIFY_NEAR(top.to_mm, path.line.length(), 1e-6);
    }

    void aVeeWhoseBendDoesNotFitHasOneCrest()
    {
        // 60 along and 60 up, then down: legs of 84.853 take all of the bend, so r' = 84.853 and the height
        // is (r' + 9.5) (1 - cos 45 deg) = 27.64.
        const Path path = hose({{{0, 0, 0}, 0}, {{60, 0, 60}, 100}, {{120, 0, 0}, 0}}, 19);
        QVERIFY(!path.line.bends().at(0).fits);
        const Profile profile = profileOf(path, Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(1));
        VERIFY_NEAR(profile.high_points[0].height_mm, (60 * std::sqrt(2.0) + 9.5) * (1 - std::sqrt(0.5)),
                    1e-9);
        VERIFY_NEAR(profile.high_points[0].height_mm, 27.6, 0.05);
    }

    void aHumpWithASaggingTopIsOneHump()
    {
        // With phi = atan(300/230), psi = atan(8/250) and r = 80 the crest is r (tan((phi + psi)/2) sin psi -
        // 1 + cos psi) = 1.27 under its corner; the crown gains 9.5 (1 - cos phi) = 3.72 on the path's ends;
        // the sag's bottom is r (1/cos psi - 1) = 0.04 over its corner.
        const Profile profile = profileOf(saggingHump(8), Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(2));
        const HighPoint& owner = profile.high_points[0];
        const HighPoint& lesser = profile.high_points[1];
        VERIFY_NEAR(owner.height_mm, 302.4, 0.05);
        VERIFY_NEAR(lesser.height_mm, 6.7, 0.05);
        QVERIFY(!owner.within.has_value());
        QCOMPARE(lesser.within.value_or(9), std::size_t(0));
        QVERIFY(owner.trapped_ml > 10 * lesser.trapped_ml);
        QCOMPARE(profile.dips.size(), std::size_t(1));
        VERIFY_NEAR(profile.dips[0].depth_mm, lesser.height_mm, 1e-6);
        VERIFY_NEAR(profile.dips[0].along_mm, 960.0 / 2 + (profile.dips[0].along_mm - profile.dips[0].at.x),
                    1e-6);
    }

    void withoutTheSagItIsOneCrestAtTheMiddleOfItsTop()
    {
        // 300 + 9.5 (1 - 230/hypot(230, 300)) = 303.72.
        const Path path = saggingHump(0);
        const Profile profile = profileOf(path, Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(1));
        VERIFY_NEAR(profile.high_points[0].height_mm, 303.72, 0.005);
        VERIFY_NEAR(profile.high_points[0].along_mm, path.line.length() / 2, 1e-6);
    }

    void ofEqualCrestsTheFirstOwnsTheHump()
    {
        // Sharp and level inside the hump, so that the two tops are equal to the last bit.
        const Profile profile = profileOf(hose({{{0, 0, 0}, 0},
                                                {{0, 0, 64}, 0},
                                                {{64, 0, 64}, 0},
                                                {{64, 0, 32}, 0},
                                                {{128, 0, 32}, 0},
                                                {{128, 0, 64}, 0},
                                                {{192, 0, 64}, 0},
                                                {{192, 0, 0}, 0}},
                                               16),
                                          Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(2));
        // Tops at crown 72; the legs' ends are plumb (crown 0); between them the crown is 32 + 8.
        VERIFY_NEAR(profile.high_points[0].height_mm, 72, 1e-9);
        VERIFY_NEAR(profile.high_points[1].height_mm, 32, 1e-9);
        VERIFY_NEAR(profile.high_points[0].along_mm, 96, 1e-9);
        QCOMPARE(profile.high_points[1].within.value_or(9), std::size_t(0));
    }

    void aSharpDropBetweenLevelsInventsNoCrest_data()
    {
        QTest::addColumn<double>("radius_mm");
        for (const double radius : {0.0, 1.0, 5.0, 9.0, 9.5, 20.0})
            QTest::addRow("radius %g", radius) << radius;
    }
    void aSharpDropBetweenLevelsInventsNoCrest()
    {
        QFETCH(double, radius_mm);
        // Without the rule for tight bends this is a high point of 9.5 mm (radius 0) or 4.5 mm (radius 5).
        const Profile fall = profileOf(levelDropLevelFall(radius_mm), Plumb(), 0.02);
        QVERIFY(fall.high_points.empty());
        QVERIFY(fall.dips.empty());
        Attitude tilted;
        tilted.lean_deg = 12;
        QVERIFY(profileOf(levelDropLevelFall(radius_mm), Plumb(tilted), 0.02).high_points.empty());
    }

    void aTightBottomInventsNoCrest()
    {
        // Disc sections of a 38 mm bore cross over a bend of radius 3, (19 - 3)(1 - cos 45 deg) = 4.7 mm
        // high.
        const Path path = hose({{{0, 0, 0}, 0}, {{200, 0, -200}, 3}, {{400, 0, 0}, 0}}, 38);
        const Profile profile = profileOf(path, Plumb(), 0.02);
        QVERIFY(profile.high_points.empty());
        QCOMPARE(profile.dips.size(), std::size_t(1));
    }

    void aTrueSharpHumpStays()
    {
        // Legs at 45 deg, all of the same k: the height is the corner's.
        const Profile profile =
            profileOf(hose({{{0, 0, 0}, 0}, {{100, 0, 100}, 0}, {{200, 0, 0}, 0}}, 19), Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(1));
        VERIFY_NEAR(profile.high_points[0].height_mm, 100, 1e-9);
    }

    void aLevelStretchBetweenTwoRisesOrAtAnEndIsNone()
    {
        QVERIFY(
            profileOf(hose({{{0, 0, 0}, 0}, {{200, 0, 50}, 60}, {{400, 0, 50}, 60}, {{600, 0, 90}, 0}}, 19),
                      Plumb(), 0.02)
                .high_points.empty());
        const Profile ends =
            profileOf(hose({{{0, 0, 0}, 0}, {{200, 0, 0}, 60}, {{400, 0, -90}, 0}}, 19), Plumb(), 0);
        QVERIFY(ends.high_points.empty());
        QVERIFY(ends.dips.empty());
    }

    void aWiderLengthHoldsAirAndCoolantByItself()
    {
        // Level, bores 19, 30, 19: 5.5 mm over and under the sills, over 100 mm of length.
        Path path = hose({{{0, 0, 0}, 0}, {{300, 0, 0}, 0}}, 19);
        path.bores = {{0, 100, 19}, {100, 200, 30}, {200, 300, 19}};
        const Profile profile = profileOf(path, Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(1));
        QCOMPARE(profile.dips.size(), std::size_t(1));
        VERIFY_NEAR(profile.high_points[0].height_mm, 5.5, 1e-9);
        VERIFY_NEAR(profile.high_points[0].along_mm, 150, 1e-9);
        VERIFY_NEAR(profile.high_points[0].trapped_ml, discAreaOver(30, 9.5) * 100 / 1000, 1e-9);
        VERIFY_NEAR(profile.dips[0].depth_mm, 5.5, 1e-9);
        VERIFY_NEAR(profile.dips[0].held_ml, profile.high_points[0].trapped_ml, 1e-9);
        VERIFY_NEAR(heightsAt(path, Plumb(), 100).crown_mm, 9.5, 0);
        VERIFY_NEAR(heightsAt(path, Plumb(), 101).crown_mm, 15, 0);
    }

    void aSmallOpeningHoldsAirInTheHoseBehindIt()
    {
        Path path = hose({{{0, 0, 0}, 0}, {{300, 0, 0}, 0}}, 19);
        path.bores = {{0, 0, 12}, {0, 300, 19}, {300, 300, 11}};
        const Profile profile = profileOf(path, Plumb());
        QCOMPARE(profile.high_points.size(), std::size_t(1));
        VERIFY_NEAR(profile.high_points[0].height_mm, 3.5, 1e-9);
        VERIFY_NEAR(profile.high_points[0].sill_mm, 6, 1e-9);
    }

    void lessThanTapeAccuracyIsNotReported()
    {
        const auto bump = [](double height) {
            return hose({{{0, 0, 0}, 0}, {{300, 0, height}, 0}, {{600, 0, 0}, 0}}, 19);
        };
        QVERIFY(profileOf(bump(2.99), Plumb()).high_points.empty());
        QVERIFY(!hasTrap(bump(2.99), Plumb()));
        QCOMPARE(profileOf(bump(3.01), Plumb()).high_points.size(), std::size_t(1));
        QVERIFY(hasTrap(bump(3.01), Plumb()));
    }

    void gradeTurnsALevelHumpIntoNone()
    {
        const Path path = hose({{{0, 0, 0}, 0}, {{300, 0, 6}, 0}, {{600, 0, 0}, 0}}, 19);
        Attitude attitude;
        attitude.grade.along_percent = 3;
        QCOMPARE(profileOf(path, Plumb()).high_points.size(), std::size_t(1));
        QVERIFY(profileOf(path, Plumb(attitude)).high_points.empty());
    }

    void anEmptyPathHasAnEmptyProfile()
    {
        const Profile profile = profileOf(Path{}, Plumb(), 0);
        QVERIFY(profile.high_points.empty() && profile.dips.empty());
        VERIFY_NEAR(boreVolume(Path{}, 0, 100), 0, 0);
        VERIFY_NEAR(heightsAt(Path{}, Plumb(), 5).crown_mm, 0, 0);
    }

    void twoThousandPointsAreAsManyTrapsAsTheyDraw()
    {
        // A saw of 45 deg teeth on a fall of 1 in 1000: each tooth but the first stands by itself. The time
        // is that of a slow machine; comparing every tooth with every other would take far longer.
        std::vector<Corner> corners;
        for (int i = 0; i < 2000; ++i)
            corners.push_back({{i * 100.0, 0, (i % 2) * 100 - i * 0.1}, 20});
        QElapsedTimer timer;
        timer.start();
        const Profile profile = profileOf(hose(corners, 19), Plumb());
        QVERIFY(timer.elapsed() < 2000);
        QCOMPARE(profile.high_points.size(), std::size_t(999));
        QCOMPARE(profile.dips.size(), std::size_t(999));
        QVERIFY(!profile.high_points[0].within.has_value());
    }

    void absurdPathsStayFinite()
    {
        const double huge = std::numeric_limits<double>::max();
        Dice dice(5);
        for (int run = 0; run < 300; ++run) {
            std::vector<Corner> corners = randomCorners(dice);
            corners[dice.upTo(corners.size() - 1)].at.z = dice.between(-1, 1) * huge;
            corners.push_back(corners[corners.size() - 2]);
            corners.push_back(corners.back());
            Path path = hose(corners, dice.upTo(1) == 0 ? huge : -4);
            path.bores.push_back({dice.between(-500, 500), -20, 30});
            path.bores.push_back({100, huge, dice.upTo(1) == 0 ? 0 : 1e-300});
            path.bores.push_back({std::numeric_limits<double>::quiet_NaN(), 3, 25});
            QVERIFY(isSound(profileOf(path, Plumb(), 0)));
            QVERIFY(std::isfinite(heightsAt(path, Plumb(), dice.between(-10, 1e9)).crown_mm));
            QVERIFY(std::isfinite(boreVolumeOver(path, Plumb(), huge, -huge, huge)));
            QVERIFY(std::isfinite(boreVolumeUnder(path, Plumb(), dice.between(-9, 9), -huge, huge)));
        }
    }
};

QTEST_APPLESS_MAIN(TestProfile)
#include "test_profile.moc"
