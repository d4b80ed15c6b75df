#include "tests/canvas/bench.h"

#include <QSignalSpy>

using namespace siphonwright;
using namespace siphonwright::test;

class TestCanvasView : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theWheelZoomsToThePointer();
    void theMiddleButtonAndSpaceMoveThePaper();
    void aClickOnABalloonSelectsItsFinding();
    void whatIsSelectedShows();
    void theHintSaysWhatAClickDoes();
};

void TestCanvasView::theWheelZoomsToThePointer()
{
    Bench bench;
    const QPointF at(300, 200);
    const Vec2 under = bench.view.toDrawing(at);
    const double zoom = bench.view.zoom();
    QWheelEvent event(at, bench.view.mapToGlobal(at), {}, {0, 120}, Qt::NoButton, {}, Qt::NoScrollPhase,
                      false);
    QApplication::sendEvent(&bench.view, &event);
    QVERIFY(bench.view.zoom() > zoom);
    VERIFY_NEAR(bench.view.toDrawing(at).x, under.x, 1e-9);
    VERIFY_NEAR(bench.view.toDrawing(at).z, under.z, 1e-9);
}

void TestCanvasView::theMiddleButtonAndSpaceMoveThePaper()
{
    Bench bench;
    const Sketch before = bench.sketch();
    const QPointF origin = bench.view.toScreen({0, 0});
    bench.send(QEvent::MouseButtonPress, {500, 400}, Qt::MiddleButton, Qt::MiddleButton, {});
    bench.send(QEvent::MouseMove, {540, 430}, Qt::NoButton, Qt::MiddleButton, {});
    bench.send(QEvent::MouseButtonRelease, {540, 430}, Qt::MiddleButton, Qt::NoButton, {});
    QCOMPARE(bench.view.toScreen({0, 0}), origin + QPointF(40, 30));
    QTest::keyPress(&bench.view, Qt::Key_Space);
    bench.send(QEvent::MouseButtonPress, {500, 400}, Qt::LeftButton, Qt::LeftButton, {});
    bench.send(QEvent::MouseMove, {460, 370}, Qt::NoButton, Qt::LeftButton, {});
    bench.send(QEvent::MouseButtonRelease, {460, 370}, Qt::LeftButton, Qt::NoButton, {});
    QTest::keyRelease(&bench.view, Qt::Key_Space);
    QCOMPARE(bench.view.toScreen({0, 0}), origin);
    QVERIFY(bench.sketch() == before);
}

void TestCanvasView::aClickOnABalloonSelectsItsFinding()
{
    Bench bench;
    bench.drag(return_bend, {1030, 790});
    QVERIFY(!bench.document.analysis().findings.empty());
    drawing::Style style;
    style.scale = bench.view.zoom() * 25.4 / bench.view.logicalDpiX();
    const std::vector<QPointF> places = drawing::balloonPlaces(bench.document.analysis(), style);
    bench.click(drawing::fromPage(places.front()));
    QCOMPARE(bench.selection.finding(), 0);
}

void TestCanvasView::whatIsSelectedShows()
{
    Bench bench;
    const QImage plain = bench.view.grab().toImage();
    bench.selection.select({PartKind::hose, "hose-2", 0});
    const QImage selected = bench.view.grab().toImage();
    QVERIFY(plain != selected);
    // Left edge of the handle on the bend's corner, where the paper is else.
    const QPointF edge = bench.view.toScreen(return_bend) - QPointF(5, 0);
    const QPoint handle = (edge * selected.devicePixelRatio()).toPoint();
    QVERIFY(plain.pixel(handle) != selected.pixel(handle));
    bench.hover({1030, 80});
    QVERIFY(bench.view.grab().toImage() != selected);
    QVERIFY(
        bench.view.accessibleDescription().contains(QString::fromStdString(bench.hose(return_hose).name)));
}

void TestCanvasView::theHintSaysWhatAClickDoes()
{
    Bench bench(withoutReturn());
    QSignalSpy hints(&bench.view, &ElevationView::hint);
    bench.view.setTool(ToolKind::return_hose);
    bench.hover(outlet_stop);
    const QString over_outlet = hints.back().at(0).toString();
    bench.click(outlet_stop);
    bench.hover({1100, 500});
    const QString in_the_open = hints.back().at(0).toString();
    QVERIFY(over_outlet != in_the_open);
    QVERIFY(in_the_open.contains(QStringLiteral("Backspace")));
}

QTEST_MAIN(TestCanvasView)
#include "test_canvas_view.moc"
