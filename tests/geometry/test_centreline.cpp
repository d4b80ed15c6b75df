#include "tests/geometry/random_hoses.h"
#include "tests/near.h"

#include "core/geometry/centreline.h"

#include <cmath>
#include <limits>
#include <numbers>

using namespace siphonwright;
using siphonwright::test::Dice;
using siphonwright::test::randomCorners;

class TestCentreline : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aRightAngledBendIsAQuarterOfATorusAndTakesItsRadius()
    {
        // Take r tan 45 deg = 100 of each 200 mm leg; arc 100 pi / 2.
        const Centreline line({{{0, 0, 0}, 0}, {{200, 0, 0}, 100}, {{200, 0, 200}, 0}});
        VERIFY_NEAR(line.length(), 100 + 50 * std::numbers::pi + 100, 1e-9);
        QCOMPARE(line.pieces().size(), std::size_t(3));
        VERIFY_NEAR(line.pieces()[0].length_mm, 100, 1e-9);
        const Vec3 middle = line.at(line.length() / 2);
        // The arc's centre is {100, 0, 100}; its middle is r away at 45 deg.
        VERIFY_NEAR(middle.x, 100 + 100 * std::sqrt(0.5), 1e-9);
        VERIFY_NEAR(middle.z, 100 - 100 * std::sqrt(0.5), 1e-9);
        const Bend bend = line.bends().at(0);
        QCOMPARE(bend.corner, std::size_t(1));
        VERIFY_NEAR(bend.angle_rad, std::numbers::pi / 2, 1e-12);
        VERIFY_NEAR(bend.s, line.length() / 2, 1e-9);
        QVERIFY(bend.fits);
    }

    void takesThatFillTheirStraightJustFit()
    {
        const Centreline line({{{0, 0, 0}, 0}, {{100, 0, 0}, 100}, {{100, 0, 200}, 100}, {{200, 0, 200}, 0}});
        VERIFY_NEAR(line.length(), 100 * std::numbers::pi, 1e-7);
        QVERIFY(line.bends()[0].fits && line.bends()[1].fits);
    }

    void aBendThatDoesNotFitIsReducedByTheWorseOfItsStraights()
    {
        // Right angles: takes 100 and 60. Straights 300, 80, 45: phi = 1, 80/160, 45/60.
        const Centreline line({{{0, 0, 0}, 0}, {{300, 0, 0}, 100}, {{300, 0, 80}, 60}, {{345, 0, 80}, 0}});
        VERIFY_NEAR(line.bends()[0].radius_mm, 50, 1e-9);
        VERIFY_NEAR(line.bends()[1].radius_mm, 30, 1e-9);
        VERIFY_NEAR(line.bends()[0].asked_mm, 100, 0);
        QVERIFY(!line.bends()[0].fits && !line.bends()[1].fits);
        // 250 straight, arcs of 50 and 30, no straight between them, then 15.
        VERIFY_NEAR(line.length(), 250 + 40 * std::numbers::pi + 15, 1e-9);
    }

    void coincidentCornersAreOne()
    {
        const Centreline line({{{0, 0, 0}, 0}, {{0, 0.009, 0}, 5}, {{100, 0, 0}, 0}, {{100, 0, 0}, 0}});
        VERIFY_NEAR(line.length(), 100, 1e-12);
        QVERIFY(line.bends().empty());
    }

    void fewerThanTwoDistinctCornersAreEmpty()
    {
        QVERIFY(Centreline(std::vector<Corner>{}).empty());
        const Centreline point({{{1, 2, 3}, 9}, {{1, 2, 3}, 9}});
        QVERIFY(point.empty());
        VERIFY_NEAR(point.length(), 0, 0);
        QCOMPARE(point.at(5), Vec3{});
        VERIFY_NEAR(point.nearestInElevation({4, 4}).s, 0, 0);
    }

    void aCornerOnAStraightSplitsNothing()
    {
        const Centreline whole({{{0, 0, 0}, 0}, {{100, 0, 0}, 90}, {{100, 0, 200}, 0}});
        const Centreline split({{{0, 0, 0}, 0}, {{95, 0, 0}, 70}, {{100, 0, 0}, 90}, {{100, 0, 200}, 0}});
        QCOMPARE(split.bends().size(), std::size_t(1));
        QCOMPARE(split.bends()[0].corner, std::size_t(2));
        VERIFY_NEAR(split.length(), whole.length(), 1e-9);
    }

    void aReversalIsSharpAndDoesNotFit()
    {
        const Centreline line({{{0, 0, 0}, 0}, {{100, 0, 0}, 50}, {{30, 0, 0}, 0}});
        VERIFY_NEAR(line.length(), 170, 1e-9);
        VERIFY_NEAR(line.bends().at(0).radius_mm, 0, 0);
        QVERIFY(!line.bends()[0].fits);
        VERIFY_NEAR(line.at(120).x, 80, 1e-9);
    }

    void aPointIsClampedToTheRunAndASharpCornerLooksAhead()
    {
        const Centreline line({{{0, 0, 0}, 0}, {{100, 0, 0}, 0}, {{100, 0, 50}, 0}});
        QCOMPARE(line.at(-10), (Vec3{0, 0, 0}));
        VERIFY_NEAR(line.at(1e9).z, 50, 1e-12);
        QCOMPARE(line.tangent(100), (Vec3{0, 0, 1}));
        QCOMPARE(line.pieceAt(100), std::size_t(1));
        QVERIFY(line.bends().at(0).fits);
    }

    void randomRunsAreContinuousAndMeasuredByTheirOwnLength()
    {
        Dice dice(11);
        for (int run = 0; run < 300; ++run) {
            const std::vector<Corner> corners = randomCorners(dice);
            const Centreline line(corners);
            VERIFY_NEAR(distance(line.at(0), corners.front().at), 0, 1e-9);
            VERIFY_NEAR(distance(line.at(line.length()), corners.back().at), 0, 1e-7);
            double chords = 0;
            const int parts = 20000;
            for (int i = 0; i < parts; ++i) {
                const double a = line.length() * i / parts;
                const double b = line.length() * (i + 1) / parts;
                const double chord = distance(line.at(a), line.at(b));
                QVERIFY(chord <= (b - a) * (1 + 1e-9));
                chords += chord;
            }
            // A chord of an arc is short by h^3 / (24 r^2); sharp corners cut at most one chord each.
            VERIFY_NEAR(chords, line.length(), 1);
            for (const Piece& piece : line.pieces()) {
                VERIFY_NEAR(length(piece.tangent(piece.length_mm)), 1, 1e-12);
                if (piece.radius_mm > 0)
                    VERIFY_NEAR(distance(piece.at(piece.length_mm), piece.start + piece.n * piece.radius_mm),
                                piece.radius_mm, 1e-9);
            }
        }
    }

    void theNearestPlaceIsNoFartherThanAnySample()
    {
        Dice dice(12);
        for (int run = 0; run < 200; ++run) {
            const Centreline line(randomCorners(dice));
            const Vec2 p = {dice.between(-100, 1000), dice.between(-300, 300)};
            const Centreline::Nearest nearest = line.nearestInElevation(p);
            double sampled = std::numeric_limits<double>::infinity();
            for (int i = 0; i <= 20000; ++i) {
                const Vec3 q = line.at(line.length() * i / 20000);
                sampled = std::min(sampled, std::hypot(q.x - p.x, q.z - p.z));
            }
            const Vec3 found = line.at(nearest.s);
            VERIFY_NEAR(std::hypot(found.x - p.x, found.z - p.z), nearest.distance_mm, 1e-6);
            VERIFY_NEAR(nearest.distance_mm, sampled, 0.1);
            QVERIFY(nearest.distance_mm <= sampled + 1e-9);
        }
    }

    void absurdCornersStayFinite()
    {
        const double huge = std::numeric_limits<double>::max();
        const Centreline line(
            {{{0, 0, 0}, huge}, {{huge, -huge, 5}, huge}, {{-huge, 0, huge}, 1}, {{1, 1, 1}, -4}});
        QVERIFY(std::isfinite(line.length()));
        for (int i = 0; i <= 100; ++i) {
            const Vec3 p = line.at(line.length() * i / 100);
            QVERIFY(std::isfinite(p.x + p.y + p.z));
        }
        const double nan = std::numeric_limits<double>::quiet_NaN();
        VERIFY_NEAR(Centreline({{{0, 0, 0}, 0}, {{nan, 0, 0}, 0}, {{100, 0, 0}, nan}}).length(), 100, 1e-12);
    }
};

QTEST_APPLESS_MAIN(TestCentreline)
#include "test_centreline.moc"
