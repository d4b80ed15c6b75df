#include "app/drawing/ink.h"

#include <QImage>
#include <QPainter>
#include <QTest>

using namespace siphonwright;
using namespace siphonwright::drawing;

namespace {

constexpr int side_px = 400;

/// Pixels that are not ground in a square round a point.
int inkedRound(const QImage& image, QPointF at, int half_px)
{
    int inked = 0;
    for (int x = int(at.x()) - half_px; x <= int(at.x()) + half_px; ++x)
        for (int y = int(at.y()) - half_px; y <= int(at.y()) + half_px; ++y)
            inked += image.pixel(x, y) != qRgb(255, 255, 255);
    return inked;
}

/// A label whose first place is taken, so that it stands `away` px to the right of what it is of.
QImage labelled(double away_px)
{
    QImage image(side_px, side_px, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    const Sketch sketch;
    const Analysis analysis;
    Style style;
    style.scale = 1;
    style.lettering_mm = 10;
    Ink ink(painter, sketch, analysis, style);
    const QPointF of(60, 200);
    ink.reserve(QRectF(of.x() + 10, of.y() - 20, 25, 40));
    ink.labelFirst({{of + QPointF(12, 0), Anchor::left}, {of + QPointF(away_px, 0), Anchor::left}},
                   QStringLiteral("51 ml"), Qt::black, Led{of, 45});
    ink.writeLabels();
    return image;
}

} // namespace

/// A label far from what it is of is led to it.
class TestLeaderLine : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void a_label_far_away_is_led_to_its_place()
    {
        const QImage image = labelled(200);
        QVERIFY(inkedRound(image, {60, 200}, 2) > 0);    // the dot
        QVERIFY(inkedRound(image, {150, 196}, 12) > 10); // on the way
    }
    void a_label_beside_it_needs_no_line()
    {
        const QImage image = labelled(40);
        QCOMPARE(inkedRound(image, {60, 200}, 2), 0);
        QVERIFY(inkedRound(image, {120, 196}, 18) > 10); // but it is written
    }
};

QTEST_MAIN(TestLeaderLine)
#include "test_leader_line.moc"
