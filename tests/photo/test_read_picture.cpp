#include "tests/near.h"
#include "tests/photo/pictures.h"

#include "app/photo/jpeg_marks.h"
#include "app/photo/picture_cache.h"
#include "app/photo/read_picture.h"
#include "app/photo/store_picture.h"

#include "core/sketch/file.h"

#include <QFile>
#include <QTemporaryDir>

#include <sys/resource.h>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// 64 wide, 32 high; its top left quarter red, the rest blue.
QImage redCorner()
{
    QImage image = plain(64, 32, Qt::blue);
    for (int y = 0; y < 16; ++y)
        for (int x = 0; x < 32; ++x)
            image.setPixelColor(x, y, Qt::red);
    return image;
}

bool isRed(const QImage& image, int x, int y)
{
    const QColor c = image.pixelColor(x, y);
    return c.red() > 200 && c.blue() < 60;
}

/// The most memory this program has had so far, kB.
long peak_kB()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return usage.ru_maxrss;
}

} // namespace

/// Pictures from outside: what is read, how, and what is refused.
class TestReadPicture : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void pngAndJpegAreReadAndWebPWhereQtReadsIt();
    void theCamerasOrientationIsHeeded_data();
    void theCamerasOrientationIsHeeded();
    void aLargePictureIsMadeSmallerWhileItIsRead();
    void absurdSizesAreRefusedByTheHeaderAlone_data();
    void absurdSizesAreRefusedByTheHeaderAlone();
    void aBadFileIsRefusedWithASentence_data();
    void aBadFileIsRefusedWithASentence();
    void aHugeProgressiveJpegIsRefused();
    void aFileThatIsNotThereIsSaidSo();
    void whatIsStoredStaysUnderTheCeiling();
    void whatShowsThroughIsKeptWhereItStaysSmall();
    void aPhotoThatWasOnlyMovedIsNotDecodedAgain();
    void aPhotoOfAnAbsurdSizeInASketchIsNotDecodedEither();
    void aSketchWithAStoredPictureIsWholeWhenReadBack();
};

void TestReadPicture::pngAndJpegAreReadAndWebPWhereQtReadsIt()
{
    for (const char* format : {"PNG", "JPEG"}) {
        const photo::ReadPicture read = photo::readPicture(fileOf(redCorner(), format, 95));
        QCOMPARE(read.problem, QString());
        QCOMPARE(read.image.size(), QSize(64, 32));
        QVERIFY(isRed(read.image, 4, 4));
        QVERIFY(!isRed(read.image, 60, 28));
    }
    // One pixel, lossless (RFC 9649): too small to be a picture, but read as far as its header.
    const QByteArray webp =
        QByteArray::fromHex("52494646240000005745425056503820180000003001009d012a0100010002003425a400"
                            "037000fefb940000");
    const photo::ReadPicture read = photo::readPicture(webp);
    QVERIFY2(read.problem.contains(photo::readsWebP() ? QStringLiteral("1 × 1") : QStringLiteral("WebP")),
             qPrintable(read.problem));
}

void TestReadPicture::theCamerasOrientationIsHeeded_data()
{
    QTest::addColumn<int>("orientation");
    QTest::addColumn<QSize>("size");
    QTest::addColumn<QPoint>("red");
    // Exif 2.3, Orientation: where the 0th row and the 0th column of what is stored belong.
    QTest::newRow("1: top, left") << 1 << QSize(64, 32) << QPoint(4, 4);
    QTest::newRow("2: top, right") << 2 << QSize(64, 32) << QPoint(59, 4);
    QTest::newRow("3: bottom, right") << 3 << QSize(64, 32) << QPoint(59, 27);
    QTest::newRow("4: bottom, left") << 4 << QSize(64, 32) << QPoint(4, 27);
    QTest::newRow("5: left, top") << 5 << QSize(32, 64) << QPoint(4, 4);
    QTest::newRow("6: right, top") << 6 << QSize(32, 64) << QPoint(27, 4);
    QTest::newRow("7: right, bottom") << 7 << QSize(32, 64) << QPoint(27, 59);
    QTest::newRow("8: left, bottom") << 8 << QSize(32, 64) << QPoint(4, 59);
}

void TestReadPicture::theCamerasOrientationIsHeeded()
{
    QFETCH(int, orientation);
    QFETCH(QSize, size);
    QFETCH(QPoint, red);
    const QByteArray file = withOrientation(fileOf(redCorner(), "JPEG", 95), quint8(orientation));
    const photo::ReadPicture read = photo::readPicture(file);
    QCOMPARE(read.problem, QString());
    QCOMPARE(read.image.size(), size);
    QCOMPARE(read.source_px, size);
    QCOMPARE(photo::pictureSize(file), size);
    QVERIFY(isRed(read.image, red.x(), red.y()));
    QVERIFY(!isRed(read.image, size.width() - 1 - red.x(), size.height() - 1 - red.y()));
    // Once stored it is upright without being told.
    const photo::StoredPicture stored = photo::storedPicture(read.image);
    QCOMPARE(photo::readPicture(stored.file).image.size(), size);
}

void TestReadPicture::aLargePictureIsMadeSmallerWhileItIsRead()
{
    // 3000 x 1500 becomes 2400 x 1200; turned by the camera, 1200 x 2400.
    const QByteArray jpeg = fileOf(plain(3000, 1500, Qt::darkGreen), "JPEG", 80);
    const photo::ReadPicture level = photo::readPicture(jpeg);
    QCOMPARE(level.image.size(), QSize(2400, 1200));
    QCOMPARE(level.source_px, QSize(3000, 1500));
    const photo::ReadPicture turned = photo::readPicture(withOrientation(jpeg, 6));
    QCOMPARE(turned.image.size(), QSize(1200, 2400));
    QCOMPARE(turned.source_px, QSize(1500, 3000));
    const photo::ReadPicture png = photo::readPicture(fileOf(plain(3000, 1500, Qt::darkGreen), "PNG"));
    QCOMPARE(png.image.size(), QSize(2400, 1200));
}

void TestReadPicture::absurdSizesAreRefusedByTheHeaderAlone_data()
{
    QTest::addColumn<quint32>("width");
    QTest::addColumn<quint32>("height");
    QTest::newRow("60,000 x 60,000: 14 GB") << 60'000U << 60'000U;
    QTest::newRow("a line of 2,000,000,000") << 2'000'000'000U << 1U;
    QTest::newRow("just over 64 megapixels") << 8'001U << 8'000U;
    QTest::newRow("no width") << 0U << 100U;
    QTest::newRow("7 pixels high") << 100U << 7U;
}

void TestReadPicture::absurdSizesAreRefusedByTheHeaderAlone()
{
    QFETCH(quint32, width);
    QFETCH(quint32, height);
    const long before_kB = peak_kB();
    const photo::ReadPicture read = photo::readPicture(pngClaiming(width, height));
    QVERIFY(read.image.isNull());
    QVERIFY2(!read.problem.isEmpty(), "refused without a word");
    QVERIFY(peak_kB() - before_kB < 16'000);
}

void TestReadPicture::aBadFileIsRefusedWithASentence_data()
{
    QTest::addColumn<QByteArray>("file");
    QTest::addColumn<QString>("says");
    const QByteArray jpeg = fileOf(noise(200, 100), "JPEG", 90);
    const QByteArray png = fileOf(noise(200, 100), "PNG");
    QTest::newRow("nothing") << QByteArray() << QStringLiteral("empty");
    QTest::newRow("text") << QByteArray("Dear colleague, the photo is not here.")
                          << QStringLiteral("not a PNG");
    QTest::newRow("a drawing") << QByteArray("<svg xmlns=\"http://www.w3.org/2000/svg\"/>")
                               << QStringLiteral("not a PNG");
    QTest::newRow("an animation") << QByteArray("GIF89a\x20\x00\x20\x00", 10) << QStringLiteral("not a PNG");
    QTest::newRow("a JPEG cut off in its data")
        << jpeg.left(jpeg.size() / 2) << QStringLiteral("cut off: there are %1 bytes").arg(jpeg.size() / 2);
    QTest::newRow("a JPEG cut off in its header") << jpeg.left(24) << QStringLiteral("damaged");
    QTest::newRow("a PNG cut off in its data") << png.left(png.size() / 2) << QStringLiteral("damaged");
    QTest::newRow("a PNG cut off in its header") << png.left(20) << QStringLiteral("damaged");
    QTest::newRow("a PNG without a picture") << pngClaiming(100, 100) << QStringLiteral("damaged");
    QByteArray spoilt = png;
    spoilt[spoilt.size() / 2] = char(~spoilt[spoilt.size() / 2]);
    QTest::newRow("a PNG with one byte wrong") << spoilt << QStringLiteral("damaged");
}

void TestReadPicture::aBadFileIsRefusedWithASentence()
{
    QFETCH(QByteArray, file);
    QFETCH(QString, says);
    const photo::ReadPicture read = photo::readPicture(file);
    QVERIFY2(read.problem.contains(says), qPrintable(read.problem));
    QVERIFY(read.image.isNull());
}

void TestReadPicture::aHugeProgressiveJpegIsRefused()
{
    // SOI; SOF2 of 7000 x 7000, one component; SOS; EOI (ITU-T T.81, B.2).
    QByteArray jpeg = QByteArray::fromHex("ffd8"
                                          "ffc2000b08 1b58 1b58 01 011100"
                                          "ffda0008 01 0100 00 3f 00"
                                          "00ffd9");
    const auto marks = photo::jpegMarks(jpeg);
    QVERIFY(marks && marks->progressive && marks->ends);
    const photo::ReadPicture read = photo::readPicture(jpeg);
    QVERIFY2(read.problem.contains(QStringLiteral("progressive")), qPrintable(read.problem));
    jpeg[3] = char(0xC0); // the same as a baseline JPEG
    QVERIFY(!photo::jpegMarks(jpeg)->progressive);
    QVERIFY(!photo::jpegMarks("\xFF\xD8 no marker here"));
}

void TestReadPicture::aFileThatIsNotThereIsSaidSo()
{
    QTemporaryDir folder;
    const photo::ReadPicture none = photo::readPictureFile(folder.filePath(QStringLiteral("none.png")));
    QVERIFY2(none.problem.contains(QStringLiteral("cannot be opened")), qPrintable(none.problem));
    QFile file(folder.filePath(QStringLiteral("there.png")));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(fileOf(redCorner(), "PNG"));
    file.close();
    QCOMPARE(photo::readPictureFile(file.fileName()).image.size(), QSize(64, 32));
}

void TestReadPicture::whatIsStoredStaysUnderTheCeiling()
{
    const photo::StoredPicture easy = photo::storedPicture(plain(2400, 1800, Qt::gray));
    QCOMPARE(easy.size_px, QSize(2400, 1800));
    QVERIFY(easy.file.startsWith("\xFF\xD8\xFF"));
    // Noise is the worst a picture can be: it loses quality, then pixels, until it fits.
    const photo::StoredPicture hard = photo::storedPicture(noise(2400, 1800));
    QVERIFY(hard.file.size() <= photo::largest_stored_bytes);
    QVERIFY(hard.size_px.width() < 2400 && hard.size_px.width() > 800);
    QCOMPARE(photo::readPicture(hard.file).image.size(), hard.size_px);
    VERIFY_NEAR(double(hard.size_px.width()) / hard.size_px.height(), 4.0 / 3.0, 0.005);
}

void TestReadPicture::whatShowsThroughIsKeptWhereItStaysSmall()
{
    QImage image(400, 300, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    image.setPixelColor(10, 10, Qt::red);
    const photo::StoredPicture stored = photo::storedPicture(image);
    QVERIFY(stored.file.startsWith("\x89PNG"));
    const QImage back = photo::readPicture(stored.file).image;
    QCOMPARE(qAlpha(back.pixel(200, 200)), 0);
    QCOMPARE(back.pixelColor(10, 10), QColor(Qt::red));
    // Too large as a PNG: it lies on grey then.
    QImage large = noise(1500, 1500).convertToFormat(QImage::Format_ARGB32);
    for (int y = 0; y < 200; ++y)
        for (int x = 0; x < 200; ++x)
            large.setPixelColor(x, y, Qt::transparent);
    const QByteArray flat = photo::storedPicture(large).file;
    QVERIFY(flat.startsWith("\xFF\xD8\xFF"));
    VERIFY_NEAR(qGreen(photo::readPicture(flat).image.pixel(40, 40)), 0x8c, 6);
}

void TestReadPicture::aPhotoThatWasOnlyMovedIsNotDecodedAgain()
{
    Sketch sketch;
    photo::PictureCache cache;
    QVERIFY(!cache.of(sketch));
    sketch.photo = Shared<Photo>(photo::photoOf(photo::storedPicture(redCorner()), {0, 0}, 640));
    const drawing::Picture* picture = cache.of(sketch);
    QVERIFY(picture && picture->size_px == QSize(64, 32));
    const auto key = picture->levels.front().cacheKey();
    sketch.photo->edit([](Photo& p) { p.top_left.x += 5; });
    QCOMPARE(cache.of(sketch)->levels.front().cacheKey(), key);
    sketch.photo->edit([](Photo& p) { p.data_base64 = "AAAA"; });
    QVERIFY(cache.of(sketch)->levels.empty());
    QVERIFY(!cache.of(sketch)->problem.isEmpty());
    sketch.photo->edit([](Photo& p) { p.data_base64 = "this is no Base64!"; });
    QVERIFY(!cache.of(sketch)->problem.isEmpty());
    sketch.photo.reset();
    QVERIFY(!cache.of(sketch));
}

void TestReadPicture::aPhotoOfAnAbsurdSizeInASketchIsNotDecodedEither()
{
    Photo photo;
    photo.data_base64 = pngClaiming(60'000, 60'000).toBase64().toStdString();
    const long before_kB = peak_kB();
    QVERIFY(photo::decoded(photo).levels.empty());
    QVERIFY(photo::storedSize(photo).isEmpty());
    QVERIFY(peak_kB() - before_kB < 16'000);
    // One that is only too large to be shown whole counts its pixels as the file has them.
    photo.data_base64 = fileOf(plain(4000, 1000, Qt::gray), "PNG").toBase64().toStdString();
    const drawing::Picture picture = photo::decoded(photo);
    QCOMPARE(picture.size_px, QSize(4000, 1000));
    QCOMPARE(picture.levels.front().size(), QSize(2400, 600));
    QCOMPARE(photo::storedSize(photo), QSize(4000, 1000));
}

void TestReadPicture::aSketchWithAStoredPictureIsWholeWhenReadBack()
{
    Sketch sketch;
    const photo::StoredPicture stored = photo::storedPicture(noise(2000, 1500));
    sketch.photo = Shared<Photo>(photo::photoOf(stored, {500, 400}, 1000));
    const auto text = writeSketch(sketch);
    QVERIFY(std::holds_alternative<std::string>(text));
    const auto read = readSketch(std::get<std::string>(text));
    QVERIFY(std::holds_alternative<Sketch>(read));
    QCOMPARE(photo::storedFile(**std::get<Sketch>(read).photo), stored.file);
    // 1000 wide about 500; 3/4 of that high about 400.
    VERIFY_NEAR((*sketch.photo)->top_left.x, 0, 1e-9);
    VERIFY_NEAR((*sketch.photo)->top_left.z, 775, 1);
    VERIFY_NEAR(photo::middleOf(**sketch.photo).x, 500, 1e-9);
    VERIFY_NEAR(photo::middleOf(**sketch.photo).z, 400, 1e-9);
}

QTEST_MAIN(TestReadPicture)
#include "test_read_picture.moc"
