#include "app/canvas/kept_ground.h"
#include "app/drawing/balloon.h"
#include "app/drawing/balloon_pictures.h"

#include <QImage>
#include <QPainter>
#include <QtTest>

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdlib>
#include <random>
#include <vector>

using namespace siphonwright;

/// What is kept from one frame to the next is what painting it now gives, whatever has changed since.
class TestKeptPictures : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void groundAndGridThatAreKeptAreThoseOfNow();
    void balloonsThatAreKeptAreThoseOfNow();
};

namespace {

/// Sparing: a picture is painted for each of them, twice.
constexpr int kept_changes = 60;

struct Balloon {
    QPointF at;
    Severity severity = Severity::stop;
    int number = 1;
    double line_width = 1;
};

QImage paintedKept(drawing::BalloonPictures& pictures, const std::vector<Balloon>& balloons, double zoom,
                   const drawing::Palette& palette, double radius)
{
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(palette.ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(zoom, zoom);
    pictures.begin(painter, palette);
    for (const Balloon& one : balloons)
        pictures.paint(painter, palette, one.at, radius, one.severity, one.number, one.line_width);
    return image;
}

QImage paintedDirectly(const std::vector<Balloon>& balloons, double zoom, const drawing::Palette& palette,
                       double radius)
{
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(palette.ground);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(zoom, zoom);
    for (const Balloon& one : balloons)
        drawing::paintBalloon(painter, palette, one.at, radius, one.severity, one.number, one.line_width);
    return image;
}

/// The rim of what is laid down as a picture is rounded once more: by few steps of a colour where several lie
/// over each other.
int farthestApart(const QImage& a, const QImage& b)
{
    int most = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QColor one = a.pixelColor(x, y);
            const QColor other = b.pixelColor(x, y);
            most = std::max({most, std::abs(one.red() - other.red()), std::abs(one.green() - other.green()),
                             std::abs(one.blue() - other.blue())});
        }
    return most;
}

} // namespace

void TestKeptPictures::groundAndGridThatAreKeptAreThoseOfNow()
{
    Document document;
    Selection selection;
    Canvas canvas(document, selection);
    QSize size(400, 300);
    bool with_grid = true;
    canvas.area = QRectF(26, 26, 374, 274);
    KeptGround kept;
    std::mt19937 random(5);
    for (int i = 0; i < kept_changes; ++i) {
        switch (random() % 8) {
        case 0:
            canvas.viewport.pan(QPointF(double(random() % 50), 3.7));
            break;
        case 1:
            canvas.viewport.zoomAbout(canvas.area.center(), random() % 2 == 0 ? 1.25 : 0.7);
            break;
        case 2:
            canvas.palette = random() % 2 == 0 ? drawing::Palette::dark() : drawing::Palette::light();
            break;
        case 3:
            with_grid = !with_grid;
            break;
        case 4:
            document.apply(QStringLiteral("Units"), [](Sketch& sketch) {
                sketch.units = sketch.units == UnitChoice::inch ? UnitChoice::metric : UnitChoice::inch;
            });
            break;
        case 5:
            size = QSize(380 + int(random() % 40), 300);
            canvas.area.setRight(size.width());
            break;
        case 6:
            canvas.text_scale = random() % 2 == 0 ? 1 : 2;
            break;
        default: // nothing: as it is most often
            break;
        }
        QImage from_kept(420, 300, QImage::Format_RGB32);
        from_kept.fill(Qt::red);
        QImage anew = from_kept;
        QPainter onto_kept(&from_kept);
        kept.paint(onto_kept, canvas, size, with_grid);
        QPainter onto_anew(&anew);
        paintGround(onto_anew, canvas, size, with_grid);
        QCOMPARE(from_kept, anew);
    }
}

void TestKeptPictures::balloonsThatAreKeptAreThoseOfNow()
{
    std::mt19937 random(6);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    constexpr std::array severities = {Severity::stop, Severity::caution, Severity::advice};
    const auto any = [&] {
        return Balloon{
            {between(0, 150), between(0, 100)}, severities[random() % 3], 1 + int(random() % 12'000), 1};
    };
    std::vector<Balloon> balloons;
    for (int i = 0; i < 12; ++i)
        balloons.push_back(any());
    double zoom = 2;
    drawing::Palette palette = drawing::Palette::light();
    drawing::BalloonPictures kept;
    for (int i = 0; i < kept_changes; ++i) {
        const std::size_t one = random() % balloons.size();
        switch (random() % 6) {
        case 0:
            balloons[one] = any();
            break;
        case 1:
            balloons.erase(balloons.begin() + static_cast<std::ptrdiff_t>(one));
            balloons.push_back(any());
            break;
        case 2:
            balloons[one].line_width = 3 - balloons[one].line_width; // highlighted, or no more
            break;
        case 3:
            palette = random() % 2 == 0 ? drawing::Palette::dark() : drawing::Palette::light();
            break;
        case 4:
            zoom = between(1, 3);
            break;
        default:
            break;
        }
        const double radius = 12 / zoom;
        drawing::BalloonPictures fresh;
        const QImage now = paintedKept(kept, balloons, zoom, palette, radius);
        QCOMPARE(now, paintedKept(fresh, balloons, zoom, palette, radius));
        QVERIFY(farthestApart(now, paintedDirectly(balloons, zoom, palette, radius)) <= 3);
    }
}

QTEST_MAIN(TestKeptPictures)
#include "test_kept_pictures.moc"
