#include "tests/near.h"
#include "tests/sheet/on_a3.h"
#include "tests/sheet/sample_files.h"
#include "tests/sheet/text_recorder.h"
#include "tests/sheet/yard_bus.h"

#include "app/sheet/end_view.h"
#include "app/sheet/sheet.h"

#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QTest>

#include <algorithm>

using namespace siphonwright;
using siphonwright::test::onA3;

namespace {

QString textOf(const Sketch& sketch, const sheet::Options& options)
{
    test::TextRecorder recorder((sheet::pageSize(options) * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    sheet::paintPage(painter, sketch, analyse(sketch), options);
    painter.end();
    QString all;
    for (const test::WrittenText& text : recorder.texts())
        all += text.text + QLatin1Char(' ');
    return all;
}

/// Everything in one plane, y 0.
Sketch flatBus()
{
    Sketch sketch = test::yardBus();
    for (Port& port : sketch.ports) {
        port.position.y = 0;
        port.axis = {180, 0};
        port.stub.elbow.reset();
    }
    sketch.heaters[0].position.y = 0;
    for (Shared<Hose>& hose : sketch.hoses)
        hose.edit([](Hose& h) {
            for (RoutePoint& point : h.points)
                point.at.y = 0;
        });
    return sketch;
}

} // namespace

class TestEndSheet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// A leader to it would end on the hose in front.
    void aHoseThatIsWhollyHiddenIsSaidInWords()
    {
        sheet::Options options;
        options.paper = sheet::Paper::a4;
        const QString said =
            textOf(test::sampleNamed(QStringLiteral("generator-two-heaters.siphon")), options);
        QVERIFY2(said.contains(QRegularExpression(
                     QStringLiteral("Supply hose B [^\\[]*\\[3\\]: behind Supply hose A"))),
                 qPrintable(said));
    }

    void aDrawingInOnePlaneHasNoEndView()
    {
        const Sketch sketch = flatBus();
        const Analysis analysis = analyse(sketch);
        QVERIFY(!sheet::depthMatters(sketch, analysis));
        QVERIFY(sheet::planOf(sketch, analysis, onA3()).end.isNull());
        QVERIFY(!textOf(sketch, onA3()).contains(QStringLiteral("nd view")));
    }

    void hosesThatCrossTheEngineBringTheEndViewBesideTheElevation()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("vee-crossing.siphon"));
        const Analysis analysis = analyse(sketch);
        QVERIFY(sheet::depthMatters(sketch, analysis));
        const sheet::Plan plan = sheet::planOf(sketch, analysis, onA3());
        QVERIFY(!plan.end.isNull());
        QVERIFY(plan.end.left() >= plan.drops.right() - 1e-9);
        QVERIFY(plan.end.right() <= plan.notes.left() + 1e-9);
        // One datum for both.
        QCOMPARE(plan.end_origin.y(), plan.origin.y());
        QVERIFY(plan.denominator <= 20);
        QVERIFY(textOf(sketch, onA3()).contains(QStringLiteral("End view from the front")));
    }

    void thirdAngleShowsTheOtherEnd()
    {
        sheet::Options options = onA3();
        options.third_angle = true;
        const Sketch sketch = test::sampleNamed(QStringLiteral("vee-crossing.siphon"));
        QVERIFY(textOf(sketch, options).contains(QStringLiteral("End view from the rear")));
        // The near side, y -320, lies next to the elevation: at the left.
        QCOMPARE(sheet::endOf(options).flat({0, -320, 0}).x, -320.0);
        QCOMPARE(sheet::endOf(onA3()).flat({0, -320, 0}).x, 320.0);
    }

    void anElevationThatWouldBeTooSmallStandsAloneAndTheNotesSayWhy()
    {
        // 5.8 m long: 290 mm at 1:20 are more than A4 has.
        Sketch sketch = test::yardBus();
        for (Vec2& corner : sketch.engine->outline)
            corner.x *= 5.8;
        const Analysis analysis = analyse(sketch);
        const sheet::Plan plan = sheet::planOf(sketch, analysis, sheet::Options());
        // What the elevation takes by itself it keeps.
        QVERIFY(plan.denominator >= 50);
        const Sketch half = [&] {
            Sketch out = test::yardBus();
            for (Vec2& corner : out.engine->outline)
                corner.x *= 1.9; // 1.9 m: 95 mm at 1:20 go in alone, with an end view they do not
            return out;
        }();
        const sheet::Plan alone = sheet::planOf(half, analyse(half), sheet::Options());
        QVERIFY(alone.end_left_out);
        QVERIFY(alone.end.isNull());
        QCOMPARE(alone.denominator, 20);
        QVERIFY(textOf(half, sheet::Options()).contains(QStringLiteral("No end view")));
    }

    void bothViewsAreDrawnAtOneScale()
    {
        // The engine is 300 mm across: its jacket from y -150 to 150.
        const Sketch sketch = test::yardBus();
        const Analysis analysis = analyse(sketch);
        const sheet::Plan plan = sheet::planOf(sketch, analysis, onA3());
        QVERIFY(!plan.end.isNull());
        constexpr double per_mm = 20;
        QImage image((sheet::pageSize(onA3()) * per_mm).toSize(), QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.scale(per_mm, per_mm);
        sheet::paintPage(painter, sketch, analysis, onA3());
        painter.end();
        // The block's right edge at y -150, a little over the jacket's middle: dark within 0.5 mm.
        const double n = plan.denominator;
        for (const double across : {-150.0, 150.0}) {
            const QPointF at = plan.end_origin + QPointF(across / n, -800 / n);
            int dark = 0;
            for (double dx = -0.5; dx <= 0.5; dx += 0.05)
                dark += qGray(image.pixel(((at + QPointF(dx, 0)) * per_mm).toPoint())) < 96;
            QVERIFY2(dark > 0, qPrintable(QString::number(across)));
        }
    }
};

QTEST_MAIN(TestEndSheet)
#include "test_end_sheet.moc"
