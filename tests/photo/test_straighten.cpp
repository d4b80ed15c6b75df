#include "tests/near.h"
#include "tests/photo/pictures.h"

#include "app/photo/picture_cache.h"
#include "app/photo/read_picture.h"
#include "app/photo/store_picture.h"
#include "app/photo/straighten.h"
#include "app/photo/straightened_photo.h"

#include "core/sketch/photo_edits.h"

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;
using photo::Corners;

namespace {

/// A rectangle of 200 x 100 mm lying back: its lower edge, 400 px long, is twice as near as its upper one,
/// 200 px. By similar triangles a row y of the picture shows, with 100 mm between y = 100 and y = 300,
///   across  100 + 200 (x - 200) / (y + 100)  mm,
///   down    200 (y - 100) / (y + 100)        mm.
const Corners trapezium = {QPointF(100, 100), QPointF(300, 100), QPointF(400, 300), QPointF(0, 300)};

double acrossAt(double x, double y)
{
    return 100 + 200 * (x - 200) / (y + 100);
}

double downAt(double y)
{
    return 200 * (y - 100) / (y + 100);
}

/// 400 x 300 px; red where the rectangle's upper left quarter is, blue elsewhere.
QImage quarterSeenAtAnAngle()
{
    QImage image = plain(400, 300, Qt::blue);
    for (int y = 0; y < 300; ++y)
        for (int x = 0; x < 400; ++x) {
            const double across = acrossAt(x + 0.5, y + 0.5);
            const double down = downAt(y + 0.5);
            if (across > 0 && across < 100 && down > 0 && down < 50)
                image.setPixelColor(x, y, Qt::red);
        }
    return image;
}

bool isRed(const QColor& c)
{
    return c.red() > 150 && c.blue() < 100;
}

} // namespace

/// A rectangle seen at an angle made square again.
class TestStraighten : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aSquareKnownByHandIsMapped();
    void theCornersMayBePointedAtInAnyOrder();
    void whatIsNoRectangleIsRefused_data();
    void whatIsNoRectangleIsRefused();
    void thePictureIsResampledTrueToScale();
    void nearTheHorizonThePictureIsCut();
    void thePhotoKeepsItsFirstPointAndBecomesTrueToScale();
    void aPhotoThatCannotBeStraightenedSaysWhy();
};

void TestStraighten::aSquareKnownByHandIsMapped()
{
    const auto map = photo::straighteningMap(trapezium, 200, 100);
    QVERIFY(map);
    const auto near = [&](QPointF picture, QPointF mm) {
        const QPointF at = map->map(picture);
        return test::near(at.x(), mm.x(), 1e-6) && test::near(at.y(), mm.y(), 1e-6);
    };
    QVERIFY(near({100, 100}, {0, 0}));
    QVERIFY(near({400, 300}, {200, 100}));
    // The diagonals, of slope 2/3 and -2/3, cross at 200, 166 2/3: the rectangle's middle.
    QVERIFY(near({200, 500.0 / 3}, {100, 50}));
    // Level with it the left edge is at 66 2/3: the middle of the rectangle's left edge.
    QVERIFY(near({200.0 / 3, 500.0 / 3}, {0, 50}));
    // Outside of the rectangle: the picture's top left corner.
    QVERIFY(near({0, 0}, {-300, -200}));
}

void TestStraighten::theCornersMayBePointedAtInAnyOrder()
{
    std::array<std::size_t, 4> shuffled = {0, 1, 2, 3};
    do {
        Corners points;
        for (std::size_t i = 0; i < 4; ++i)
            points[i] = trapezium[shuffled[i]];
        const auto order = photo::cornerOrder(points);
        QVERIFY(order);
        for (std::size_t i = 0; i < 4; ++i)
            QCOMPARE(points[(*order)[i]], trapezium[i]);
    } while (std::next_permutation(shuffled.begin(), shuffled.end()));
    // Leaning by 37 degrees (3-4-5): the upper edge still is the one that runs to the right.
    const auto leaning = photo::cornerOrder({QPointF(4, 3), QPointF(0, 0), QPointF(-3, 4), QPointF(1, 7)});
    QVERIFY(leaning);
    QCOMPARE(*leaning, (std::array<std::size_t, 4>{1, 0, 3, 2}));
}

void TestStraighten::whatIsNoRectangleIsRefused_data()
{
    QTest::addColumn<QPolygonF>("points");
    QTest::newRow("three in one line") << QPolygonF({{0, 0}, {50, 0}, {100, 0}, {50, 80}});
    QTest::newRow("one between the others") << QPolygonF({{0, 0}, {100, 0}, {50, 20}, {50, 80}});
    QTest::newRow("two in one place") << QPolygonF({{0, 0}, {100, 0}, {100, 0}, {0, 80}});
    QTest::newRow("all in one place") << QPolygonF({{5, 5}, {5, 5}, {5, 5}, {5, 5}});
    QTest::newRow("no number") << QPolygonF({{0, 0}, {qQNaN(), 0}, {100, 80}, {0, 80}});
}

void TestStraighten::whatIsNoRectangleIsRefused()
{
    QFETCH(QPolygonF, points);
    const Corners corners = {points[0], points[1], points[2], points[3]};
    QVERIFY(!photo::cornerOrder(corners));
    QVERIFY(!photo::straighteningMap(corners, 200, 100));
    const photo::Straightened none = photo::straighten(quarterSeenAtAnAngle(), corners, 200, 100);
    QVERIFY(none.image.isNull());
    QVERIFY(!none.problem.isEmpty());
}

void TestStraighten::thePictureIsResampledTrueToScale()
{
    const photo::Straightened out = photo::straighten(quarterSeenAtAnAngle(), trapezium, 200, 100);
    QCOMPARE(out.problem, QString());
    // The picture's upper edge shows from -300 to 500 mm across, at -200 mm; its lower edge lies at 100 mm.
    VERIFY_NEAR(out.extent_mm.left(), -300, 1e-6);
    VERIFY_NEAR(out.extent_mm.top(), -200, 1e-6);
    VERIFY_NEAR(out.extent_mm.right(), 500, 0.5);
    VERIFY_NEAR(out.extent_mm.bottom(), 100, 0.5);
    // Its slanting edges, 223.6 px for 100 mm, are the finest: 2.236 px to the mm.
    const double scale = out.image.width() / out.extent_mm.width();
    VERIFY_NEAR(scale, 2.2360679774997896, 1e-6);
    const auto at = [&](double across, double down) {
        return out.image.pixelColor(int((across + 300) * scale), int((down + 200) * scale));
    };
    // Within 2 mm of the quarter's edges on either side.
    for (const double down : {2.0, 25.0, 48.0})
        for (const double across : {2.0, 50.0, 98.0})
            QVERIFY(isRed(at(across, down)));
    for (const QPointF beside : {QPointF(-2, 25), QPointF(102, 25), QPointF(50, -2), QPointF(50, 52)})
        QVERIFY(!isRed(at(beside.x(), beside.y())));
    QCOMPARE(at(-290, 50).alpha(), 0); // beyond the picture, at x = -320
    QCOMPARE(at(150, 90).alpha(), 255);
}

void TestStraighten::nearTheHorizonThePictureIsCut()
{
    // The slanting edges meet at y = -100: with 200 rows more over it the picture reaches beyond the horizon.
    Corners lower = trapezium;
    for (QPointF& corner : lower)
        corner += QPointF(0, 200);
    const photo::Straightened out = photo::straighten(plain(400, 500, Qt::blue), lower, 200, 100);
    QCOMPARE(out.problem, QString());
    // The corners' mean is at y = 400, 300 from the horizon at 100: cut at a quarter of that, y = 175, which
    // shows 200 (-25 - 100) / 75 = -333 1/3 mm.
    VERIFY_NEAR(out.extent_mm.top(), -1000.0 / 3, 1e-6);
    QVERIFY(out.image.width() <= photo::longest_side_px && out.image.height() <= photo::longest_side_px);
    // A picture far larger than the rectangle is shown to three times its longer side each way.
    const photo::Straightened large = photo::straighten(
        plain(2000, 2000, Qt::blue),
        {QPointF(1000, 1000), QPointF(1040, 1000), QPointF(1040, 1020), QPointF(1000, 1020)}, 400, 200);
    VERIFY_NEAR(large.extent_mm.left(), -1200, 1e-6);
    VERIFY_NEAR(large.extent_mm.width(), 400 + 2 * 1200, 10);
}

void TestStraighten::thePhotoKeepsItsFirstPointAndBecomesTrueToScale()
{
    Photo taken = photo::photoOf(photo::storedPicture(quarterSeenAtAnAngle()), {50, 70}, 800);
    taken.rotation_deg = 8;
    taken.opacity = 0.7;
    taken.locked = true;
    const auto seen = [&](QPointF p) { return drawingPoint(taken, {p.x(), p.y()}); };
    // From the lower right corner on, against the clock.
    const std::vector<Vec2> points = {seen(trapezium[2]), seen(trapezium[1]), seen(trapezium[0]),
                                      seen(trapezium[3])};
    const photo::StraightenedPhoto out = photo::straightened(taken, points, 200, 100);
    QVERIFY2(out.photo, qPrintable(out.problem));
    const Photo& straight = *out.photo;
    QCOMPARE(straight.rotation_deg, 0.0);
    QCOMPARE(straight.opacity, 0.7);
    QVERIFY(straight.locked);
    VERIFY_NEAR(straight.mm_per_pixel, 1 / 2.2360679774997896, 1e-3);
    // The rectangle's lower right corner lies 500 mm right of the picture's, 300 under its top: it stayed.
    VERIFY_NEAR(straight.top_left.x + 500, points[0].x, 1e-6);
    VERIFY_NEAR(straight.top_left.z - 300, points[0].z, 1e-6);
    // So the middle of the rectangle is 100 left of that and 50 over it: red just left of and over the
    // middle.
    const QImage image = photo::decoded(straight).levels.front();
    const auto colourAt = [&](Vec2 p) {
        const PicturePoint at = picturePoint(straight, p);
        return image.pixelColor(int(at.right_px), int(at.down_px));
    };
    const Vec2 middle = {points[0].x - 100, points[0].z + 50};
    QVERIFY(isRed(colourAt({middle.x - 4, middle.z + 4})));
    QVERIFY(!isRed(colourAt({middle.x + 4, middle.z + 4})));
    QVERIFY(!isRed(colourAt({middle.x - 4, middle.z - 4})));
    QVERIFY(isRed(colourAt({middle.x - 96, middle.z + 46})));
    QVERIFY(!isRed(colourAt({middle.x - 104, middle.z + 46})));
}

void TestStraighten::aPhotoThatCannotBeStraightenedSaysWhy()
{
    const Photo taken = photo::photoOf(photo::storedPicture(quarterSeenAtAnAngle()), {0, 0}, 400);
    const std::vector<Vec2> square = {{-50, 50}, {50, 50}, {50, -50}, {-50, -50}};
    QVERIFY(photo::straightened(taken, square, 100, 100).photo);
    const auto refused = [&](const Photo& photo, const std::vector<Vec2>& points, double width_mm) {
        const photo::StraightenedPhoto out = photo::straightened(photo, points, width_mm, 100);
        return !out.photo && !out.problem.isEmpty();
    };
    QVERIFY(refused(taken, {{0, 0}, {1, 1}}, 100));
    QVERIFY(refused(taken, square, 0));
    QVERIFY(refused(taken, square, qQNaN()));
    Photo spoilt = taken;
    spoilt.data_base64 = "AAAA";
    QVERIFY(refused(spoilt, square, 100));
    // Far outside of the picture there is nothing to be shown.
    std::vector<Vec2> away = square;
    for (Vec2& p : away)
        p = {p.x + 50'000, p.z};
    QVERIFY(refused(taken, away, 100));
}

QTEST_MAIN(TestStraighten)
#include "test_straighten.moc"
