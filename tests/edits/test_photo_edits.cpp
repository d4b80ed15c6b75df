#include "tests/near.h"

#include "core/sketch/edits.h"
#include "core/sketch/file.h"
#include "core/sketch/photo_edits.h"

#include <limits>

using namespace siphonwright;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

/// Top left corner at 100, 500; half a millimetre to the pixel; as it was taken.
Sketch withPhoto(double rotation_deg = 0)
{
    Photo photo;
    photo.data_base64 = "AAAA";
    photo.top_left = {100, 500};
    photo.mm_per_pixel = 0.5;
    photo.rotation_deg = rotation_deg;
    Sketch sketch;
    sketch.photo = Shared<Photo>(photo);
    return sketch;
}

} // namespace

#define VERIFY_AT(point, expected_x, expected_z)                                                             \
    do {                                                                                                     \
        VERIFY_NEAR((point).x, expected_x, 1e-9);                                                            \
        VERIFY_NEAR((point).z, expected_z, 1e-9);                                                            \
    } while (false)

/// Every number is worked out by hand: the picture's right is the drawing's right, its down the drawing's
/// down, and angles are clockwise.
class TestPhotoEdits : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aPlaceInThePictureIsFoundOnTheDrawingAndBack();
    void scalingKeepsThePointUnderIt();
    void twoPointsAndTheirDistanceGiveTheScale();
    void turningKeepsThePointUnderIt();
    void twoPointsAlongSomethingLevelLevelIt();
    void levelIsAcrossThePlumbOfATiltedEngine();
    void whatCannotBeIsRefusedAndChangesNothing();
    void aLockedPhotographIsNotMoved();
    void anEditedPhotographIsWrittenAndReadBack();
};

void TestPhotoEdits::aPlaceInThePictureIsFoundOnTheDrawingAndBack()
{
    // 40 px right is 20 mm, 60 px down is 30 mm.
    const Photo upright = **withPhoto().photo;
    VERIFY_AT(drawingPoint(upright, {40, 60}), 120, 470);
    // A quarter turn clockwise: its right points down, its down points left.
    const Photo turned = **withPhoto(90).photo;
    VERIFY_AT(drawingPoint(turned, {40, 60}), 70, 480);
    // 30 degrees clockwise: right is (cos 30, -sin 30), so 40 px are 17.320508 right and 10 down.
    const Photo leaning = **withPhoto(30).photo;
    VERIFY_AT(drawingPoint(leaning, {40, 0}), 100 + 17.320508075688775, 490);
    for (const Photo& photo : {upright, turned, leaning}) {
        const PicturePoint back = picturePoint(photo, drawingPoint(photo, {123, 45}));
        VERIFY_NEAR(back.right_px, 123, 1e-9);
        VERIFY_NEAR(back.down_px, 45, 1e-9);
    }
}

void TestPhotoEdits::scalingKeepsThePointUnderIt()
{
    Sketch sketch = withPhoto();
    QVERIFY(scalePhotoAbout(sketch, {200, 400}, 3));
    VERIFY_NEAR((*sketch.photo)->mm_per_pixel, 1.5, 1e-12);
    // The corner was 100 left and 100 over the fixed point: now three times as far.
    VERIFY_AT((*sketch.photo)->top_left, -100, 700);
}

void TestPhotoEdits::twoPointsAndTheirDistanceGiveTheScale()
{
    Sketch sketch = withPhoto();
    // 3-4-5: the points are 50 mm apart as drawn, in truth 200.
    QVERIFY(scalePhotoByTwoPoints(sketch, {130, 460}, {160, 420}, 200));
    VERIFY_NEAR((*sketch.photo)->mm_per_pixel, 2, 1e-12);
    VERIFY_AT(drawingPoint(**sketch.photo, {60, 80}), 130, 460);               // where the first point was
    VERIFY_AT(drawingPoint(**sketch.photo, {120, 160}), 130 + 120, 460 - 160); // four times 30 and 40
}

void TestPhotoEdits::turningKeepsThePointUnderIt()
{
    Sketch sketch = withPhoto();
    QVERIFY(turnPhotoAbout(sketch, {200, 500}, 90));
    VERIFY_NEAR((*sketch.photo)->rotation_deg, 90, 1e-12);
    // The corner was 100 left of the fixed point; a quarter turn clockwise puts it over it.
    VERIFY_AT((*sketch.photo)->top_left, 200, 600);
    QVERIFY(turnPhotoAbout(sketch, {0, 0}, 100));
    VERIFY_NEAR((*sketch.photo)->rotation_deg, -170, 1e-9); // 190 is 170 the other way
}

void TestPhotoEdits::twoPointsAlongSomethingLevelLevelIt()
{
    // Rising 1 in 1 to the right: 45 degrees clockwise make it level. The same when pointed at from the
    // right.
    for (const bool from_right : {false, true}) {
        Sketch sketch = withPhoto();
        const Vec2 left = {200, 300};
        const Vec2 right = {300, 400};
        const PicturePoint shown_left = picturePoint(**sketch.photo, left);
        const PicturePoint shown_right = picturePoint(**sketch.photo, right);
        QVERIFY(levelPhotoByTwoPoints(sketch, from_right ? right : left, from_right ? left : right));
        VERIFY_NEAR((*sketch.photo)->rotation_deg, 45, 1e-9);
        VERIFY_NEAR(drawingPoint(**sketch.photo, shown_left).z, drawingPoint(**sketch.photo, shown_right).z,
                    1e-9);
        const Vec2 kept = from_right ? right : left;
        VERIFY_AT(drawingPoint(**sketch.photo, from_right ? shown_right : shown_left), kept.x, kept.z);
    }
    Sketch falling = withPhoto();
    QVERIFY(levelPhotoByTwoPoints(falling, {0, 0}, {100, -100}));
    VERIFY_NEAR((*falling.photo)->rotation_deg, -45, 1e-9);
}

void TestPhotoEdits::levelIsAcrossThePlumbOfATiltedEngine()
{
    Sketch sketch = withPhoto();
    // Level rises by 30 degrees on this drawing: a line that rises by 45 is 15 too steep.
    QVERIFY(levelPhotoByTwoPoints(sketch, {0, 0}, {10, 10}, {0.8660254037844386, 0.5}));
    VERIFY_NEAR((*sketch.photo)->rotation_deg, 15, 1e-9);
}

void TestPhotoEdits::whatCannotBeIsRefusedAndChangesNothing()
{
    Sketch none;
    QVERIFY(!scalePhotoAbout(none, {0, 0}, 2));
    QVERIFY(!turnPhotoAbout(none, {0, 0}, 2));
    QVERIFY(!levelPhotoByTwoPoints(none, {0, 0}, {1, 1}));
    Sketch sketch = withPhoto();
    const Sketch before = sketch;
    for (const double factor : {0.0, -1.0, not_a_number, 1e9, 1e-9})
        QVERIFY(!scalePhotoAbout(sketch, {0, 0}, factor));
    // 90 m from the corner: three times as large would put that outside of every drawing.
    QVERIFY(!scalePhotoAbout(sketch, {90'000, 0}, 3));
    QVERIFY(!scalePhotoAbout(sketch, {not_a_number, 0}, 3));
    QVERIFY(!turnPhotoAbout(sketch, {0, 0}, not_a_number));
    QVERIFY(!scalePhotoByTwoPoints(sketch, {5, 5}, {5, 5}, 100));
    QVERIFY(!scalePhotoByTwoPoints(sketch, {5, 5}, {6, 5}, 0));
    QVERIFY(!levelPhotoByTwoPoints(sketch, {5, 5}, {5, 5}));
    QVERIFY(!levelPhotoByTwoPoints(sketch, {5, 5}, {6, 5}, {0, 0}));
    QVERIFY(sketch == before);
}

void TestPhotoEdits::aLockedPhotographIsNotMoved()
{
    Sketch sketch = withPhoto();
    const PartRef photo = {PartKind::photo, "", 0};
    QVERIFY(move(sketch, photo, {10, 0, -20}));
    VERIFY_AT((*sketch.photo)->top_left, 110, 480);
    sketch.photo->edit([](Photo& p) { p.locked = true; });
    QVERIFY(!move(sketch, photo, {10, 0, -20}));
    VERIFY_AT((*sketch.photo)->top_left, 110, 480);
}

void TestPhotoEdits::anEditedPhotographIsWrittenAndReadBack()
{
    Sketch sketch = withPhoto();
    QVERIFY(turnPhotoAbout(sketch, {7, 3}, 33.3));
    QVERIFY(scalePhotoAbout(sketch, {7, 3}, 1.7));
    const auto text = writeSketch(sketch);
    QVERIFY(std::holds_alternative<std::string>(text));
    const auto read = readSketch(std::get<std::string>(text));
    QVERIFY(std::holds_alternative<Sketch>(read));
    QVERIFY(std::get<Sketch>(read) == sketch);
}

QTEST_APPLESS_MAIN(TestPhotoEdits)
#include "test_photo_edits.moc"
