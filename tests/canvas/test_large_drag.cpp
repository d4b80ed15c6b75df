#include "tests/canvas/bench.h"
#include "tests/patience.h"
#include "tests/random_runs.h"

#include "app/canvas/hose_pictures.h"
#include "app/canvas/overlay.h"
#include "app/canvas/snap_scene.h"
#include "app/drawing/balloon_places.h"
#include "app/drawing/hose_layer.h"

#include <QColor>
#include <QEvent>
#include <QImage>
#include <QPainter>
#include <QSignalSpy>
#include <QtTest>

#include <cmath>
#include <cstdlib>
#include <random>

using namespace siphonwright;
using namespace siphonwright::test;

class TestLargeDrag : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aPictureKeptForManyStepsIsTheOneThatIsMadeNow();
    void noStepWaitsForAPictureThatIsMadeBesideTheWindow();
    void noStepWaitsForAThreadThatFillsTheBoxOfFigures();
    void aPictureThatWasExpectedIsAtHandWithTheFirstStep();
    void thePictureOfADragServesTheNextOneOfTheSameHose();
    void picturesAreKeptOfWhatTakesLongToDraw();
    void whatADragLeavesIsWhatDrawingAnewGives_data();
    void whatADragLeavesIsWhatDrawingAnewGives();
    void stepsOfADragAreLaidOutAtOnceAndJudgedSoon();
    void aDragThatIsTakenBackIsJudgedAtOnce();
    void figuresComeWhileThePointerNeverRests();
    void theProofAfterADragIsThatOfTheSameSketchOpenedAnew();
    void balloonsThatAreKeptStandWhereTheyWouldBePlaced();
    void pointsOutOfReachMakeNoDifferenceToSnapping();
};

namespace {

Sketch wavy(int hoses, int points)
{
    Sketch sketch;
    for (int i = 0; i < hoses; ++i) {
        Hose hose;
        hose.id = "hose-" + std::to_string(i + 1);
        hose.role = i % 2 == 0 ? HoseRole::supply : HoseRole::return_;
        hose.bore_mm.value = 19.05;
        const auto at = [&](int k) {
            return Vec3{40.0 * k, 10.0 * i, 200.0 * i + 0.1 * k + 90 * std::sin(0.1 * k + i)};
        };
        hose.from.open_at = at(0);
        hose.to.open_at = at(points + 1);
        for (int k = 1; k <= points; ++k)
            hose.points.push_back({at(k), 300, BendKind::hose});
        sketch.hoses.push_back(Shared<Hose>(std::move(hose)));
    }
    return sketch;
}

/// Enough points to be judged beside the window and drawn from a kept picture.
Sketch large()
{
    return wavy(10, 2000);
}

void raise(Sketch& sketch, double by_mm)
{
    sketch.hoses[3].edit([&](Hose& hose) { hose.points[1000].at.z += by_mm; });
}

void step(Document& document, int gesture, double by_mm = 7)
{
    document.apply(
        QStringLiteral("Move"), [&](Sketch& s) { raise(s, by_mm); }, gesture);
}

QImage painted(const Sketch& sketch, const Analysis& analysis, drawing::HoseLayer& layer)
{
    QImage image(900, 500, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(20, 440);
    painter.scale(0.2, 0.2);
    drawing::Style style;
    style.scale = 0.2 * 25.4 / 96;
    style.balloons = false; // labels of a kept picture do not step aside for balloons that move
    drawing::paintElevation(painter, sketch, analysis, style, &layer);
    return image;
}

QImage shown(ElevationView& view)
{
    QEvent leave(QEvent::Leave);
    QApplication::sendEvent(&view, &leave);
    return view.grab().toImage();
}

/// The rim of a letter laid over a picture is rounded once more than over what is drawn: by a step of a
/// colour.
bool sameToAStep(const QImage& a, const QImage& b)
{
    const auto near = [](int one, int other) { return std::abs(one - other) <= 1; };
    if (a.size() != b.size())
        return false;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QColor one = a.pixelColor(x, y);
            const QColor other = b.pixelColor(x, y);
            if (!near(one.red(), other.red()) || !near(one.green(), other.green()) ||
                !near(one.blue(), other.blue()))
                return false;
        }
    return true;
}

} // namespace

void TestLargeDrag::aPictureKeptForManyStepsIsTheOneThatIsMadeNow()
{
    Sketch sketch = wavy(6, 100);
    Analysis analysis = analyse(sketch);
    drawing::HoseLayer kept(0);
    painted(sketch, analysis, kept);
    for (int i = 0; i < 6; ++i) {
        drawing::HoseLayer made_now(0);
        painted(sketch, analysis, made_now);
        const QImage before = painted(sketch, analysis, kept);
        sketch.hoses[3].edit([](Hose& hose) { hose.points[40].at.z += 25; });
        analysis = analyse(sketch, &analysis);
        const QImage now = painted(sketch, analysis, kept);
        QVERIFY(kept.leavesOut());
        QVERIFY(now != before);
        QCOMPARE(now, painted(sketch, analysis, made_now)); // one step: its picture is of this moment
    }
    drawing::HoseLayer fresh(0);
    const QImage anew = painted(sketch, analysis, fresh);
    kept.settle();
    QCOMPARE(painted(sketch, analysis, kept), anew);
}

void TestLargeDrag::noStepWaitsForAPictureThatIsMadeBesideTheWindow()
{
    Sketch sketch = wavy(6, 100);
    Analysis analysis = analyse(sketch);
    std::vector<drawing::HosePictureOrder> orders;
    drawing::HoseLayer kept(0);
    drawing::HoseLayer made_now(0);
    kept.orderWith([&](drawing::HosePictureOrder order) { orders.push_back(std::move(order)); });
    painted(sketch, analysis, kept);
    painted(sketch, analysis, made_now);
    QVERIFY(orders.empty()); // there is nothing to stand meanwhile
    QImage now;
    for (int i = 0; i < 3; ++i) {
        sketch.hoses[3].edit([](Hose& hose) { hose.points[40].at.z += 25; });
        analysis = analyse(sketch, &analysis);
        const QImage before = now;
        now = painted(sketch, analysis, kept);
        QVERIFY(now != before);
        QCOMPARE(orders.size(), std::size_t(1)); // while it is under way it is not ordered again
    }
    QVERIFY(orders[0].key.left_out == std::vector<bool>({false, false, false, true, false, false}));
    const QImage anew = painted(sketch, analysis, made_now);
    QVERIFY(now != anew); // the hose is seen where it was, too
    kept.take(drawing::pictureOf(std::move(orders[0])));
    QCOMPARE(painted(sketch, analysis, kept), anew);
    kept.settle();
    QCOMPARE(painted(sketch, analysis, kept), anew);
    QCOMPARE(orders.size(), std::size_t(2));
    kept.take(drawing::pictureOf(std::move(orders[1])));
    drawing::HoseLayer fresh(0);
    QCOMPARE(painted(sketch, analysis, kept), painted(sketch, analysis, fresh));
    QVERIFY(!kept.leavesOut());
    QCOMPARE(orders.size(), std::size_t(2));
}

/// Qt fills what is opaque in the thread that paints; what lets something through, if it is large, in threads
/// of its own, which have to wait where others compute.
void TestLargeDrag::noStepWaitsForAThreadThatFillsTheBoxOfFigures()
{
    Document document;
    Selection selection;
    Canvas canvas(document, selection);
    canvas.area = QRectF(0, 0, 400, 300);
    for (const drawing::Look look : {drawing::Look::light, drawing::Look::dark}) {
        canvas.palette = drawing::paletteOf(look);
        const auto paintedOver = [&](const QColor& under) {
            QImage image(400, 300, QImage::Format_RGB32);
            image.fill(under);
            QPainter painter(&image);
            overlay::paintDimensions(painter, canvas, {200, 150}, QStringList(6, QStringLiteral("1 mm")));
            return image;
        };
        const QImage over_black = paintedOver(Qt::black);
        const QImage over_white = paintedOver(Qt::white);
        int covered = 0;
        for (int y = 0; y < over_black.height(); ++y)
            for (int x = 0; x < over_black.width(); ++x)
                if (over_black.pixel(x, y) != qRgb(0, 0, 0)) {
                    ++covered;
                    QCOMPARE(over_black.pixel(x, y), over_white.pixel(x, y));
                }
        QVERIFY(covered > 1000);
    }
}

void TestLargeDrag::aPictureThatWasExpectedIsAtHandWithTheFirstStep()
{
    Sketch sketch = wavy(6, 100);
    Analysis analysis = analyse(sketch);
    std::vector<drawing::HosePictureOrder> orders;
    drawing::HoseLayer kept(0);
    drawing::HoseLayer made_now(0);
    kept.orderWith([&](drawing::HosePictureOrder order) { orders.push_back(std::move(order)); });
    painted(sketch, analysis, kept);
    painted(sketch, analysis, made_now);
    kept.expect(hosesMovedBy(sketch, {{PartKind::hose_point, "hose-4", 40}}));
    const QImage still = painted(sketch, analysis, kept);
    QCOMPARE(orders.size(), std::size_t(1));
    kept.take(drawing::pictureOf(std::move(orders[0])));
    QCOMPARE(painted(sketch, analysis, kept), still);
    QVERIFY(!kept.leavesOut()); // as long as nothing moves, nothing is another
    sketch.hoses[3].edit([](Hose& hose) { hose.points[40].at.z += 25; });
    analysis = analyse(sketch, &analysis);
    QCOMPARE(painted(sketch, analysis, kept), painted(sketch, analysis, made_now));
    QVERIFY(kept.leavesOut());
    QCOMPARE(orders.size(), std::size_t(1));
}

void TestLargeDrag::thePictureOfADragServesTheNextOneOfTheSameHose()
{
    Sketch sketch = wavy(6, 100);
    Analysis analysis = analyse(sketch);
    std::vector<drawing::HosePictureOrder> orders;
    drawing::HoseLayer kept(0);
    drawing::HoseLayer made_now(0);
    kept.orderWith([&](drawing::HosePictureOrder order) { orders.push_back(std::move(order)); });
    kept.expect(hosesMovedBy(sketch, {{PartKind::hose_point, "hose-4", 40}}));
    painted(sketch, analysis, kept);
    painted(sketch, analysis, made_now);
    painted(sketch, analysis, kept);
    QCOMPARE(orders.size(), std::size_t(1));
    kept.take(drawing::pictureOf(std::move(orders[0])));
    const auto drag = [&] {
        sketch.hoses[3].edit([](Hose& hose) { hose.points[40].at.z += 25; });
        analysis = analyse(sketch, &analysis);
        QCOMPARE(painted(sketch, analysis, kept), painted(sketch, analysis, made_now));
        QVERIFY(kept.leavesOut());
    };
    drag();
    kept.settle();
    painted(sketch, analysis, kept);
    QCOMPARE(orders.size(), std::size_t(2)); // all in one again
    kept.take(drawing::pictureOf(std::move(orders[1])));
    for (int i = 0; i < 2; ++i)
        painted(sketch, analysis, kept);
    QVERIFY(!kept.leavesOut());
    drag();
    QCOMPARE(orders.size(), std::size_t(2)); // none was needed
    // Another hose that moves meanwhile is not in that picture as it is.
    kept.settle();
    painted(sketch, analysis, kept);
    kept.take(drawing::pictureOf(std::move(orders[2])));
    sketch.hoses[1].edit([](Hose& hose) { hose.points[40].at.z += 25; });
    analysis = analyse(sketch, &analysis);
    kept.settle();
    painted(sketch, analysis, kept);
    painted(sketch, analysis, kept);
    QVERIFY(orders.size() > 3);
}

void TestLargeDrag::picturesAreKeptOfWhatTakesLongToDraw()
{
    const auto keeps = [](const Sketch& sketch) {
        drawing::HoseLayer layer;
        painted(sketch, analyse(sketch), layer);
        return layer.keepsPictures();
    };
    QVERIFY(keeps(large()));
    QVERIFY(keeps(wavy(10, 50)));
    QVERIFY(!keeps(soundLoop())); // drawn as quickly as a picture of it is laid down
}

void TestLargeDrag::whatADragLeavesIsWhatDrawingAnewGives_data()
{
    QTest::addColumn<Sketch>("sketch");
    QTest::newRow("very large") << large();
    QTest::newRow("middling") << wavy(10, 50);
}

void TestLargeDrag::whatADragLeavesIsWhatDrawingAnewGives()
{
    QFETCH(Sketch, sketch);
    Bench bench(sketch);
    const Vec3 point = bench.hose(3).points[20].at;
    const QImage before = shown(bench.view);
    bench.view.showPlace({point.x, point.z});
    bench.hover({point.x, point.z});
    bench.press({point.x, point.z});
    for (int i = 1; i <= 4; ++i) {
        bench.pull({point.x + 40.0 * i, point.z + 400.0 * i});
        shown(bench.view);
    }
    bench.release();
    QVERIFY(bench.hose(3).points[20].at.z > point.z + 1000);
    QTRY_VERIFY_WITH_TIMEOUT(bench.document.analysisIsCurrent(), patience_ms);
    bench.selection.select({});
    ElevationView other(bench.document, bench.selection);
    other.resize(bench.view.size());
    other.show();
    other.zoomToFit();
    bench.view.zoomToFit();
    bench.view.zoomIn(); // back to where it was: no other picture was made meanwhile
    bench.view.zoomToFit();
    const QImage anew = shown(other);
    QVERIFY(anew != before);
    QTRY_VERIFY_WITH_TIMEOUT(sameToAStep(shown(bench.view), anew), patience_ms);
}

void TestLargeDrag::stepsOfADragAreLaidOutAtOnceAndJudgedSoon()
{
    Document document;
    document.reset(large());
    QVERIFY(document.analysisIsCurrent());
    QSignalSpy analysed(&document, &Document::analysed);
    const int gesture = document.beginGesture();
    for (int i = 0; i < 5; ++i) {
        step(document, gesture);
        QVERIFY(!document.analysisIsCurrent());
        const Layout now = resolve(document.sketch(), plumbOf(document.sketch()));
        QCOMPARE(document.analysis().layout.hoses[3]->path.line.length(), now.hoses[3]->path.line.length());
    }
    QTRY_VERIFY_WITH_TIMEOUT(document.analysisIsCurrent(), patience_ms);
    QVERIFY(analysed.count() >= 1);
    const Analysis alone = analyse(document.sketch());
    QVERIFY(!alone.findings.empty());
    QVERIFY(document.analysis().findings == alone.findings);
    QVERIFY(document.analysis().margins == alone.margins);
}

void TestLargeDrag::aDragThatIsTakenBackIsJudgedAtOnce()
{
    Document document;
    document.reset(large());
    const std::vector<Finding> before = document.analysis().findings;
    const int gesture = document.beginGesture();
    step(document, gesture, 300);
    document.cancelGesture(gesture);
    QVERIFY(document.analysisIsCurrent());
    QVERIFY(document.analysis().findings == before);
    // An edit that is no drag is judged at once too, and what comes late of the drag is not heard.
    step(document, document.beginGesture(), 300);
    document.apply(QStringLiteral("Remove"), [](Sketch& s) { s.hoses.erase(s.hoses.begin() + 3); });
    QVERIFY(document.analysisIsCurrent());
    QTest::qWait(50);
    QVERIFY(document.analysis().findings == analyse(document.sketch()).findings);
}

void TestLargeDrag::figuresComeWhileThePointerNeverRests()
{
    Document document;
    document.reset(large());
    QSignalSpy analysed(&document, &Document::analysed);
    const int gesture = document.beginGesture();
    const auto stepAndLook = [&] {
        step(document, gesture, 0.01);
        QCoreApplication::processEvents();
        return analysed.count() >= 3;
    };
    // Each look is another step: none ever finds the pointer at rest.
    QTRY_VERIFY_WITH_TIMEOUT(stepAndLook(), patience_ms);
}

void TestLargeDrag::theProofAfterADragIsThatOfTheSameSketchOpenedAnew()
{
    Sketch sketch = large();
    if (fewRuns()) { // two proofs over all grades take minutes
        sketch.site.envelope_along_percent = 0;
        sketch.site.envelope_across_percent = 0;
    }
    Document document;
    document.reset(sketch);
    document.startProving();
    const int gesture = document.beginGesture();
    for (int i = 0; i < 3; ++i)
        step(document, gesture, 20);
    QVERIFY(!document.proofIsCurrent());
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent(), patience_ms);
    QTRY_VERIFY_WITH_TIMEOUT(document.proof()->graded, patience_ms);
    QTRY_VERIFY_WITH_TIMEOUT(document.proofIsCurrent(), patience_ms);
    Document anew;
    anew.reset(document.sketch());
    anew.startProving();
    QTRY_VERIFY_WITH_TIMEOUT(anew.proofIsCurrent() && anew.proof()->graded, patience_ms);
    QVERIFY(!anew.analysis().findings.empty());
    QVERIFY(document.analysis().findings == anew.analysis().findings);
    QVERIFY(document.analysis().not_judged == anew.analysis().not_judged);
    QVERIFY(document.analysis().margins == anew.analysis().margins);
    QVERIFY(document.analysis().unconfirmed == anew.analysis().unconfirmed);
}

void TestLargeDrag::balloonsThatAreKeptStandWhereTheyWouldBePlaced()
{
    Sketch sketch = large();
    Analysis analysis = analyse(sketch);
    QVERIFY(analysis.findings.size() > drawing::most_balloons);
    drawing::KeptBalloons kept;
    drawing::Style style;
    style.scale = 0.01;
    const QRectF everything(-1e5, -1e5, 2e5, 2e5);
    for (int i = 0; i < 6; ++i) {
        if (i % 2 == 1) {
            raise(sketch, 60);
            analysis = analyse(sketch, &analysis);
        }
        style.highlighted_finding = i == 4 ? 70 : -1;
        const drawing::Balloons anew = drawing::balloonsOf(analysis, style, everything);
        const drawing::Balloons& from = kept.of(analysis, style, everything);
        QCOMPARE(from.more, anew.more);
        for (std::size_t k = 0; k < anew.places.size(); ++k)
            QVERIFY(from.places[k] == anew.places[k] ||
                    (std::isnan(from.places[k].x()) && std::isnan(anew.places[k].x())));
    }
}

void TestLargeDrag::pointsOutOfReachMakeNoDifferenceToSnapping()
{
    constexpr double reach_mm = 30;
    Sketch sketch = wavy(8, 60);
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const PartRef part{PartKind::hose_point, "hose-3", 30};
    BoxesOfHoses boxes = boxesOf(sketch);
    std::mt19937 random(17);
    std::uniform_real_distribution<double> along(-200, 2600);
    std::uniform_real_distribution<double> high(-300, 1900);
    int to_points = 0;
    for (int i = 0; i < 2000; ++i) {
        if (i == 1000) { // a drag later
            sketch.hoses[5].edit([](Hose& hose) { hose.points[30].at.z += 700; });
            const BoxesOfHoses before = boxes;
            boxes = boxesOf(sketch, before);
            QVERIFY(boxes[4] == before[4] && boxes[5] != before[5]);
        }
        const Vec2 raw{along(random), high(random)};
        const SnapNear near_by{raw, reach_mm, boxes};
        const Snapped whole = snap(raw, sceneFor(sketch, layout, part, 0.02), {}, 5, reach_mm);
        const Snapped few = snap(raw, sceneFor(sketch, layout, part, 0.02, &near_by), {}, 5, reach_mm);
        QCOMPARE(few.at, whole.at);
        QCOMPARE(few.guides.size(), whole.guides.size());
        to_points += !whole.guides.empty() && whole.guides.front().kind == SnapKind::point ? 1 : 0;
    }
    QVERIFY(to_points > 50);
}

QTEST_MAIN(TestLargeDrag)
#include "test_large_drag.moc"
