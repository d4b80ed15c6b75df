#include "tests/geometry/random_hoses.h"
#include "tests/near.h"

#include "core/geometry/prism.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <limits>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double endless = std::numeric_limits<double>::infinity();

const std::vector<Vec2> square = {{0, 0}, {100, 0}, {100, 100}, {0, 100}};
/// Open to the right; the bay between its legs reaches in to x 30.
const std::vector<Vec2> bracket = {{0, 0},   {100, 0},  {100, 30},  {30, 30},
                                   {30, 70}, {100, 70}, {100, 100}, {0, 100}};

double away(Vec3 p, const Prism& prism)
{
    return distance(p, nearestIn(prism, p));
}

/// Corners about a middle in order of direction, so that edges do not cross; deep bays occur.
std::vector<Vec2> randomOutline(Dice& dice)
{
    std::vector<Vec2> outline;
    const double x = dice.between(100, 800);
    const double z = dice.between(-250, 250);
    const std::size_t corners = 3 + dice.upTo(7);
    for (std::size_t i = 0; i < corners; ++i) {
        const double turn = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(corners);
        const double out = dice.between(10, 200);
        outline.push_back({x + out * std::cos(turn), z + out * std::sin(turn)});
    }
    return outline;
}

Prism randomPrism(Dice& dice, const std::vector<Vec2>& outline)
{
    const double y = dice.between(-300, 200);
    return {outline, y, y + dice.between(1, 200)};
}

} // namespace

class TestPrism : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aPointIsAsFarAwayAsItsNearestFaceEdgeOrCorner();
    void anEndlessDepthIsTheSideView();
    void aBayIsOutside();
    void aRunComesAsNearAsSamplingItShows();
    void aCylinderIsAsFarAwayAsSamplingItShows();
    void aCylindersFlatEndIsFlat();
    void aCylinderRoundASmallThingMeetsIt();
};

void TestPrism::aPointIsAsFarAwayAsItsNearestFaceEdgeOrCorner()
{
    const Prism box{square, -20, 20};
    VERIFY_NEAR(away({50, 0, 50}, box), 0, 1e-12);
    VERIFY_NEAR(away({50, 60, 50}, box), 40, 1e-12);   // over a face of depth
    VERIFY_NEAR(away({-30, 60, 50}, box), 50, 1e-12);  // 30, 40: an edge
    VERIFY_NEAR(away({-20, 60, -40}, box), 60, 1e-12); // 20, 40, 40: a corner
    VERIFY_NEAR(away({130, 0, 140}, box), 50, 1e-12);  // 30, 40 in the elevation
}

void TestPrism::anEndlessDepthIsTheSideView()
{
    VERIFY_NEAR(away({130, 5000, 140}, {square, -endless, endless}), 50, 1e-12);
    VERIFY_NEAR(away({50, 5000, 50}, {square, -endless, endless}), 0, 1e-12);
}

void TestPrism::aBayIsOutside()
{
    const Prism prism{bracket, -20, 20};
    VERIFY_NEAR(away({60, 0, 50}, prism), 20, 1e-12); // 20 to either leg, 30 to the back
    VERIFY_NEAR(away({20, 0, 50}, prism), 0, 1e-12);
}

void TestPrism::aRunComesAsNearAsSamplingItShows()
{
    Dice dice(5);
    for (int i = 0; i < 300; ++i) {
        const Centreline line(randomCorners(dice));
        const std::vector<Vec2> outline = randomOutline(dice);
        const Prism prism = randomPrism(dice, outline);
        const double from = line.length() * dice.between(0, 0.3);
        const double to = line.length() * dice.between(0.7, 1);
        const Approach found = approach(line, from, to, prism);
        QVERIFY(found.along_mm >= from && found.along_mm <= to);
        VERIFY_NEAR(away(line.at(found.along_mm), prism), found.distance_mm, 1e-6);
        constexpr double step_mm = 0.2;
        double sampled = endless;
        for (double s = from; s < to; s += step_mm)
            sampled = std::min(sampled, away(line.at(s), prism));
        // Sampling misses by a step at most, the search by its stated error.
        QVERIFY(found.distance_mm >= sampled - step_mm - 1e-9);
        QVERIFY(found.distance_mm <= sampled + approach_error_mm + 1e-9);
    }
}

void TestPrism::aCylinderIsAsFarAwayAsSamplingItShows()
{
    Dice dice(6);
    double worst = 0;
    for (int i = 0; i < 200; ++i) {
        const std::vector<Vec2> outline = randomOutline(dice);
        const Prism prism = randomPrism(dice, outline);
        const Vec3 bottom{dice.between(0, 900), dice.between(-300, 300), dice.between(-300, 300)};
        const double azimuth_deg = dice.between(0, 360);
        const Vec3 axis = direction(azimuth_deg, dice.between(-90, 90));
        const double long_mm = dice.between(200, 450);
        const RoundBody body{bottom, bottom + axis * long_mm, dice.between(30, 65)};
        const Vec3 any = std::abs(axis.z) < 0.9 ? Vec3{0, 0, 1} : Vec3{1, 0, 0};
        const Vec3 across = unit(cross(axis, any));
        const Vec3 third = cross(axis, across);
        double sampled = endless;
        for (int k = 0; k <= 80; ++k)
            for (int turn = 0; turn < 48; ++turn)
                for (int out = 0; out <= 8; ++out) {
                    if (out < 8 && k != 0 && k != 80)
                        continue; // inside: only the ends and the mantle
                    const double angle = 2 * std::numbers::pi * turn / 48;
                    const Vec3 radial = across * std::cos(angle) + third * std::sin(angle);
                    const Vec3 at = bottom + axis * (long_mm * k / 80) + radial * (body.radius_mm * out / 8);
                    sampled = std::min(sampled, away(at, prism));
                }
        const double found = distance(body, prism);
        // Sampling is coarse: its places are up to 5 mm apart, so it finds up to a few mm too much.
        worst = std::max(worst, found - sampled);
        QVERIFY(found <= sampled + 1);
        QVERIFY(found >= sampled - 7);
    }
    qInfo("at most %.3f mm farther than sampling", worst);
}

void TestPrism::aCylindersFlatEndIsFlat()
{
    // A capsule would be 50 mm nearer.
    const RoundBody body{{50, 0, 140}, {50, 0, 400}, 50};
    VERIFY_NEAR(distance(body, Prism{square, -20, 20}), 40, 1e-9);
}

void TestPrism::aCylinderRoundASmallThingMeetsIt()
{
    const std::vector<Vec2> small = {{48, 200}, {52, 200}, {50, 204}};
    const RoundBody body{{50, 0, 0}, {50, 0, 400}, 50};
    VERIFY_NEAR(distance(body, Prism{small, 10, 14}), 0, 1e-9);
}

QTEST_APPLESS_MAIN(TestPrism)
#include "test_prism.moc"
