#include "tests/canvas/bench.h"

#include "app/canvas/shelf_part.h"

#include "core/sketch/templates.h"

#include <QDropEvent>
#include <QNativeGestureEvent>
#include <QPointingDevice>
#include <QSignalSpy>

#include <memory>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const PartRef touched_heater{PartKind::heater, "heater-1", 0};
constexpr Vec2 on_the_heater = {1030, 80};
constexpr Vec2 free_ground = {500, 150};

/// A trackpad or a wheel over a place.
void scroll(Bench& bench, QPointF at, QPoint pixels, QPoint angle, Qt::ScrollPhase phase,
            Qt::KeyboardModifiers modifiers = {})
{
    QWheelEvent event(at, bench.view.mapToGlobal(at), pixels, angle, Qt::NoButton, modifiers, phase, false);
    QApplication::sendEvent(&bench.view, &event);
}

void pinch(Bench& bench, QPointF at, double by)
{
    QNativeGestureEvent event(Qt::ZoomNativeGesture, QPointingDevice::primaryPointingDevice(), 2, at, at,
                              bench.view.mapToGlobal(at), by, {});
    QApplication::sendEvent(&bench.view, &event);
}

struct Fingertips {
    const std::unique_ptr<QPointingDevice> owned{QTest::createTouchDevice()};
    QPointingDevice* device = owned.get();
    Bench& bench;

    explicit Fingertips(Bench& touched) : bench(touched) {}
    QPoint on(Vec2 at) const { return bench.view.toScreen(at).toPoint(); }
    void tap(QPoint at)
    {
        QTest::touchEvent(&bench.view, device).press(0, at, &bench.view);
        QTest::touchEvent(&bench.view, device).release(0, at, &bench.view);
    }
    void drag(QPoint from, QPoint to)
    {
        QTest::touchEvent(&bench.view, device).press(0, from, &bench.view);
        for (int i = 1; i <= 5; ++i)
            QTest::touchEvent(&bench.view, device).move(0, from + (to - from) * i / 5, &bench.view);
        QTest::touchEvent(&bench.view, device).release(0, to, &bench.view);
    }
};

/// Drag a part of the shelf to a place and let go, as a drag does it.
void dropOn(Bench& bench, const ShelfPart& part, Vec2 at, bool let_go = true)
{
    const QPointF screen = bench.view.toScreen(at);
    const std::unique_ptr<QMimeData> data(mimeDataOf(part));
    QDragEnterEvent enter(screen.toPoint(), Qt::CopyAction, data.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&bench.view, &enter);
    QVERIFY(enter.isAccepted());
    QDragMoveEvent over(screen.toPoint(), Qt::CopyAction, data.get(), Qt::LeftButton, {});
    QApplication::sendEvent(&bench.view, &over);
    if (let_go) {
        QDropEvent drop(screen, Qt::CopyAction, data.get(), Qt::LeftButton, {});
        QApplication::sendEvent(&bench.view, &drop);
    } else {
        QDragLeaveEvent leave;
        QApplication::sendEvent(&bench.view, &leave);
    }
}

} // namespace

class TestCanvasGestures : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aTrackpadMovesThePaperByPixels();
    void controlAndATrackpadZoomToThePointer();
    void aTiltedWheelAndShiftMoveSideways();
    void aPinchOnATrackpadZoomsToThePointer();
    void twoFingersMoveAndZoomThePaper();
    void aTapSelectsAndAFingerDrags();
    void aFingerTakesHoldFromFartherThanAMouse();
    void aSecondFingerTakesADragBack();
    void aHeldFingerOpensTheMenu();
    void twoTapsInsertAPoint();
    void aHoseIsDrawnWithAFinger();
    void aHeaterIsDroppedWhereThePointerIs();
    void aValveIsDroppedOnAHose();
    void aValveDroppedBesideAHoseIsNotPutDown();
    void anEngineAndAnAreaAreDroppedByTheirMiddle();
    void aDragThatLeavesLeavesNothing();
    void aFileIsLeftToTheWindow();
    void thePartInTheMiddleTakesOneKey();
};

void TestCanvasGestures::aTrackpadMovesThePaperByPixels()
{
    Bench bench;
    const QPointF origin = bench.view.toScreen({0, 0});
    const double zoom = bench.view.zoom();
    scroll(bench, {300, 200}, {12, -30}, {24, -60}, Qt::ScrollUpdate);
    QCOMPARE(bench.view.toScreen({0, 0}), origin + QPointF(12, -30));
    QCOMPARE(bench.view.zoom(), zoom);
}

void TestCanvasGestures::controlAndATrackpadZoomToThePointer()
{
    Bench bench;
    const QPointF at(300, 200);
    const Vec2 under = bench.view.toDrawing(at);
    const double zoom = bench.view.zoom();
    scroll(bench, at, {0, 30}, {0, 60}, Qt::ScrollUpdate, Qt::ControlModifier);
    QVERIFY(bench.view.zoom() > zoom);
    VERIFY_NEAR(bench.view.toDrawing(at).x, under.x, 1e-9);
    VERIFY_NEAR(bench.view.toDrawing(at).z, under.z, 1e-9);
}

void TestCanvasGestures::aTiltedWheelAndShiftMoveSideways()
{
    Bench bench;
    const QPointF origin = bench.view.toScreen({0, 0});
    scroll(bench, {300, 200}, {}, {120, 0}, Qt::NoScrollPhase);
    const QPointF tilted = bench.view.toScreen({0, 0});
    QVERIFY(tilted.x() > origin.x());
    QCOMPARE(tilted.y(), origin.y());
    scroll(bench, {300, 200}, {}, {0, -120}, Qt::NoScrollPhase, Qt::ShiftModifier);
    // Shift alone does not zoom unless Ctrl is held too: the wheel is a mouse's here.
    QCOMPARE(bench.view.toScreen({0, 0}).y(), origin.y());
    QVERIFY(bench.view.toScreen({0, 0}).x() < tilted.x());
}

void TestCanvasGestures::aPinchOnATrackpadZoomsToThePointer()
{
    Bench bench;
    const QPointF at(700, 500);
    const Vec2 under = bench.view.toDrawing(at);
    const double zoom = bench.view.zoom();
    pinch(bench, at, 0.25);
    VERIFY_NEAR(bench.view.zoom(), 1.25 * zoom, 1e-9);
    VERIFY_NEAR(bench.view.toDrawing(at).x, under.x, 1e-9);
    VERIFY_NEAR(bench.view.toDrawing(at).z, under.z, 1e-9);
}

void TestCanvasGestures::twoFingersMoveAndZoomThePaper()
{
    Bench bench;
    Fingertips hand(bench);
    const Vec2 between = bench.view.toDrawing({500, 400});
    const double zoom = bench.view.zoom();
    QTest::touchEvent(&bench.view, hand.device)
        .press(0, {450, 400}, &bench.view)
        .press(1, {550, 400}, &bench.view);
    QTest::touchEvent(&bench.view, hand.device)
        .move(0, {460, 430}, &bench.view)
        .move(1, {660, 430}, &bench.view);
    // Twice as far apart, and what was between them still is, 60 px to the right and 30 px lower.
    VERIFY_NEAR(bench.view.zoom(), 2 * zoom, 1e-9);
    VERIFY_NEAR(bench.view.toScreen(between).x(), 560, 1e-6);
    VERIFY_NEAR(bench.view.toScreen(between).y(), 430, 1e-6);
    QTest::touchEvent(&bench.view, hand.device)
        .release(0, {460, 430}, &bench.view)
        .release(1, {660, 430}, &bench.view);
    QVERIFY(bench.selection.parts().empty());
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGestures::aTapSelectsAndAFingerDrags()
{
    Bench bench;
    bench.view.setSnapping(false);
    Fingertips hand(bench);
    hand.tap(hand.on(on_the_heater));
    QVERIFY(bench.selection.part() == touched_heater);
    QCOMPARE(bench.document.undoStack().count(), 0);
    const QPoint from = hand.on(on_the_heater);
    hand.drag(from, from + QPoint(60, 40));
    VERIFY_NEAR(bench.sketch().heaters[0].position.x, 1030 + 60 / bench.view.zoom(), 2);
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestCanvasGestures::aFingerTakesHoldFromFartherThanAMouse()
{
    Bench bench;
    Fingertips hand(bench);
    const QPoint beside = hand.on({100, -40}) + QPoint(-14, 10);
    bench.click(bench.view.toDrawing(beside));
    QVERIFY((bench.selection.part() != PartRef{PartKind::hose_point, "hose-1", 0}));
    hand.tap(beside);
    QVERIFY((bench.selection.part() == PartRef{PartKind::hose_point, "hose-1", 0}));
}

void TestCanvasGestures::aSecondFingerTakesADragBack()
{
    Bench bench;
    Fingertips hand(bench);
    const QPoint from = hand.on(on_the_heater);
    QTest::touchEvent(&bench.view, hand.device).press(0, from, &bench.view);
    QTest::touchEvent(&bench.view, hand.device).move(0, from + QPoint(40, 0), &bench.view);
    QVERIFY(!(bench.sketch() == soundLoop()));
    QTest::touchEvent(&bench.view, hand.device).stationary(0).press(1, from + QPoint(140, 0), &bench.view);
    QVERIFY(bench.sketch() == soundLoop());
    QTest::touchEvent(&bench.view, hand.device)
        .release(0, from + QPoint(40, 0), &bench.view)
        .release(1, from + QPoint(140, 0), &bench.view);
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGestures::aHeldFingerOpensTheMenu()
{
    Bench bench;
    Fingertips hand(bench);
    QSignalSpy wanted(&bench.view, &ElevationView::contextMenuWanted);
    QTest::touchEvent(&bench.view, hand.device).press(0, hand.on(on_the_heater), &bench.view);
    QTRY_COMPARE(wanted.count(), 1);
    QVERIFY(bench.selection.part() == touched_heater);
    QTest::touchEvent(&bench.view, hand.device).release(0, hand.on(on_the_heater), &bench.view);
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGestures::twoTapsInsertAPoint()
{
    Bench bench;
    Fingertips hand(bench);
    hand.tap(hand.on({100, 200}));
    hand.tap(hand.on({100, 200}));
    QCOMPARE(bench.hose(supply_hose).points.size(), std::size_t(2));
}

void TestCanvasGestures::aHoseIsDrawnWithAFinger()
{
    Bench bench(withoutReturn());
    Fingertips hand(bench);
    bench.view.setTool(ToolKind::return_hose);
    hand.tap(hand.on(outlet_stop));
    hand.tap(hand.on(return_bend));
    hand.tap(hand.on(return_stop));
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(2));
    QCOMPARE(bench.hose(return_hose).to.port, Id("port-2"));
    QCOMPARE(bench.hose(return_hose).points.size(), std::size_t(1));
}

void TestCanvasGestures::aHeaterIsDroppedWhereThePointerIs()
{
    Bench bench;
    bench.view.setSnapping(false);
    const std::string id = heaterTemplates().back().id;
    dropOn(bench, {ShelfPart::What::heater, id}, free_ground);
    QCOMPARE(bench.sketch().heaters.size(), std::size_t(2));
    VERIFY_NEAR(bench.sketch().heaters[1].position.x, 500, 2);
    VERIFY_NEAR(bench.sketch().heaters[1].position.z, 150, 2);
    QCOMPARE(bench.sketch().heaters[1].power_W.value, heaterTemplates().back().heater.power_W.value);
    QVERIFY((bench.selection.part() == PartRef{PartKind::heater, "heater-2", 0}));
    QCOMPARE(bench.view.tool(), ToolKind::select);
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestCanvasGestures::aValveIsDroppedOnAHose()
{
    Bench bench;
    dropOn(bench, {ShelfPart::What::valve, {}}, {100, 240});
    QCOMPARE(bench.hose(supply_hose).parts.size(), std::size_t(2));
    VERIFY_NEAR(bench.hose(supply_hose).parts[1].along_mm, 170, 3);
}

void TestCanvasGestures::aValveDroppedBesideAHoseIsNotPutDown()
{
    Bench bench;
    QSignalSpy told(&bench.view, &ElevationView::told);
    dropOn(bench, {ShelfPart::What::valve, {}}, free_ground);
    QVERIFY(bench.sketch() == soundLoop());
    QCOMPARE(told.count(), 1);
    QCOMPARE(bench.view.tool(), ToolKind::select);
}

void TestCanvasGestures::anEngineAndAnAreaAreDroppedByTheirMiddle()
{
    Bench bench{Sketch()};
    dropOn(bench, {ShelfPart::What::engine, engineTemplates().front().id}, {0, 300});
    QVERIFY(bench.sketch().engine.has_value());
    const Vec3 middle = *positionOf(bench.sketch(), {PartKind::engine, {}, 0});
    VERIFY_NEAR(middle.x, 0, 3);
    VERIFY_NEAR(middle.z, 300, 3);
    dropOn(bench, {ShelfPart::What::area, {}}, {200, 100});
    const Vec3 area = *positionOf(bench.sketch(), {PartKind::area, "area-1", 0});
    VERIFY_NEAR(area.x, 200, 3);
    QCOMPARE(bench.document.undoStack().count(), 2);
}

void TestCanvasGestures::aDragThatLeavesLeavesNothing()
{
    Bench bench;
    dropOn(bench, {ShelfPart::What::heater, {}}, free_ground, false);
    QVERIFY(bench.sketch() == soundLoop());
    QCOMPARE(bench.view.tool(), ToolKind::select);
}

void TestCanvasGestures::aFileIsLeftToTheWindow()
{
    Bench bench;
    QMimeData data;
    data.setUrls({QUrl(QStringLiteral("file:///drawing.siphon"))});
    QDragEnterEvent enter({300, 300}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(&bench.view, &enter);
    QVERIFY(!enter.isAccepted());
}

void TestCanvasGestures::thePartInTheMiddleTakesOneKey()
{
    Bench bench;
    bench.view.placeInMiddle({ShelfPart::What::heater, {}});
    QCOMPARE(bench.sketch().heaters.size(), std::size_t(2));
    const Vec3 at = bench.sketch().heaters[1].position;
    const QPointF screen = bench.view.toScreen({at.x, at.z});
    // The drawing's area is 1200 by 900 less the rulers of 26 pixels.
    VERIFY_NEAR(screen.x(), 613, 5);
    VERIFY_NEAR(screen.y(), 463, 5);
    QSignalSpy told(&bench.view, &ElevationView::told);
    bench.view.placeInMiddle({ShelfPart::What::clip, {}});
    QCOMPARE(told.count(), 1);
    bench.selection.select({PartKind::hose, "hose-2", 0});
    bench.view.placeInMiddle({ShelfPart::What::clip, {}});
    QCOMPARE(bench.hose(return_hose).clips_mm.size(), std::size_t(1));
}

QTEST_MAIN(TestCanvasGestures)
#include "test_canvas_gestures.moc"
