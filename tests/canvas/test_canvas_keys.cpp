#include "tests/canvas/bench.h"

#include <QLineEdit>

using namespace siphonwright;
using namespace siphonwright::test;

class TestCanvasKeys : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void arrowKeysNudgeInTheUnitsInUse_data();
    void arrowKeysNudgeInTheUnitsInUse();
    void aBurstOfNudgesIsOneStep();
    void aClipMovesTheWayTheArrowPoints();
    void tabReachesEveryPartAndThenLeaves();
    void tabGoesRoundAnOutlineAndEscapeOut();
    void deleteRemovesAndOpensWhatHungOnIt();
    void anEndIsConnectedToOneOpeningAfterTheOther();
    void insertAddsAPointHalfWay();
    void aHoseIsDrawnWithTheKeyboardAlone();
    void spaceClicksAtTheCrosshair();
    void keysThatMeanTheDrawingAreKeptFromTheWindow();
};

void TestCanvasKeys::arrowKeysNudgeInTheUnitsInUse_data()
{
    QTest::addColumn<bool>("inch");
    QTest::addColumn<bool>("fine");
    QTest::addColumn<double>("step_mm");
    QTest::newRow("5 mm") << false << false << 5.0;
    QTest::newRow("1 mm") << false << true << 1.0;
    QTest::newRow("1/4 in") << true << false << 6.35;
    QTest::newRow("1/16 in") << true << true << 1.5875;
}

void TestCanvasKeys::arrowKeysNudgeInTheUnitsInUse()
{
    QFETCH(bool, inch);
    QFETCH(bool, fine);
    QFETCH(double, step_mm);
    Sketch sketch = soundLoop();
    sketch.units = inch ? UnitChoice::inch : UnitChoice::metric;
    Bench bench(sketch);
    bench.selection.select({PartKind::heater, "heater-1", 0});
    const Qt::KeyboardModifiers modifiers = fine ? Qt::ShiftModifier : Qt::NoModifier;
    bench.key(Qt::Key_Up, modifiers);
    VERIFY_NEAR(bench.sketch().heaters[0].position.z, 80 + step_mm, 1e-9);
    bench.key(Qt::Key_Left, modifiers);
    VERIFY_NEAR(bench.sketch().heaters[0].position.x, 1030 - step_mm, 1e-9);
    bench.key(Qt::Key_Down, modifiers);
    bench.key(Qt::Key_Right, modifiers);
    VERIFY_NEAR(bench.sketch().heaters[0].position.x, 1030, 1e-9);
}

void TestCanvasKeys::aBurstOfNudgesIsOneStep()
{
    Bench bench;
    bench.selection.select({PartKind::heater, "heater-1", 0});
    for (int i = 0; i < 4; ++i)
        bench.key(Qt::Key_Down);
    QCOMPARE(bench.document.undoStack().count(), 1);
    VERIFY_NEAR(bench.sketch().heaters[0].position.z, 60, 1e-9);
    bench.selection.select({PartKind::hose_point, "hose-2", 0});
    bench.key(Qt::Key_Down);
    QCOMPARE(bench.document.undoStack().count(), 2);
    bench.document.undoStack().undo();
    bench.document.undoStack().undo();
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasKeys::aClipMovesTheWayTheArrowPoints()
{
    Sketch sketch = soundLoop();
    // On the return's plumb part, where the hose runs up.
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.clips_mm = {100}; });
    Bench bench(sketch);
    bench.selection.select({PartKind::clip, "hose-2", 0});
    bench.key(Qt::Key_Up);
    VERIFY_NEAR(bench.hose(return_hose).clips_mm[0], 105, 1e-9);
    bench.key(Qt::Key_Down);
    bench.key(Qt::Key_Down);
    VERIFY_NEAR(bench.hose(return_hose).clips_mm[0], 95, 1e-9);
}

void TestCanvasKeys::tabReachesEveryPartAndThenLeaves()
{
    QWidget window;
    Document document;
    document.reset(soundLoop());
    Selection selection;
    auto* view = new ElevationView(document, selection, &window);
    auto* after = new QLineEdit(&window);
    view->setGeometry(0, 0, 800, 600);
    window.resize(800, 640);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    view->setFocus();
    std::vector<PartRef> reached;
    for (int i = 0; i < 60 && view->hasFocus(); ++i) {
        QTest::keyClick(view, Qt::Key_Tab);
        if (view->hasFocus())
            reached.push_back(selection.part());
    }
    QVERIFY(after->hasFocus());
    for (const PartRef& part :
         {PartRef{PartKind::engine, {}, 0}, PartRef{PartKind::jacket, {}, 0},
          PartRef{PartKind::thermostat, {}, 0}, PartRef{PartKind::tank, {}, 0},
          PartRef{PartKind::port, "port-2", 0}, PartRef{PartKind::heater, "heater-1", 0},
          PartRef{PartKind::hose, "hose-1", 0}, PartRef{PartKind::hose_end, "hose-2", 1},
          PartRef{PartKind::hose_point, "hose-2", 0}, PartRef{PartKind::inline_part, "hose-1", 0}})
        QCOMPARE(std::count(reached.begin(), reached.end(), part), 1);
    view->setFocus();
    QTest::keyClick(view, Qt::Key_Tab);
    QTest::keyClick(view, Qt::Key_Tab);
    QTest::keyClick(view, Qt::Key_Backtab, Qt::ShiftModifier);
    QVERIFY((selection.part() == PartRef{PartKind::engine, {}, 0}));
}

void TestCanvasKeys::tabGoesRoundAnOutlineAndEscapeOut()
{
    Bench bench;
    bench.selection.select({PartKind::jacket, {}, 0});
    bench.view.enterOutline();
    QVERIFY((bench.selection.part() == PartRef{PartKind::jacket_corner, {}, 0}));
    bench.key(Qt::Key_Tab);
    bench.key(Qt::Key_Down);
    QCOMPARE(bench.sketch().engine->jacket[1].z, 395.0);
    for (int i = 0; i < 3; ++i)
        bench.key(Qt::Key_Tab);
    QVERIFY((bench.selection.part() == PartRef{PartKind::jacket_corner, {}, 0}));
    bench.key(Qt::Key_Escape);
    QVERIFY((bench.selection.part() == PartRef{PartKind::jacket, {}, 0}));
    bench.key(Qt::Key_Escape);
    QCOMPARE(bench.selection.part().kind, PartKind::nothing);
}

void TestCanvasKeys::deleteRemovesAndOpensWhatHungOnIt()
{
    Bench bench;
    bench.selection.select({PartKind::port, "port-2", 0});
    bench.key(Qt::Key_Delete);
    QCOMPARE(bench.sketch().ports.size(), std::size_t(1));
    QVERIFY(!bench.hose(return_hose).to.connected());
    VERIFY_NEAR(bench.hose(return_hose).to.open_at.x, 830, 1e-9);
    bench.selection.select({PartKind::hose_point, "hose-2", 0});
    bench.key(Qt::Key_Delete);
    QVERIFY(bench.hose(return_hose).points.empty());
    QVERIFY((bench.selection.part() == PartRef{PartKind::hose, "hose-2", 0}));
    bench.key(Qt::Key_Backspace);
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(1));
    QCOMPARE(bench.selection.part().kind, PartKind::nothing);
    bench.key(Qt::Key_Delete);
    QCOMPARE(bench.document.undoStack().count(), 3);
}

void TestCanvasKeys::anEndIsConnectedToOneOpeningAfterTheOther()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) {
        hose.to = {};
        hose.to.open_at = {900, 0, 600};
    });
    Bench bench(sketch);
    bench.selection.select({PartKind::hose_end, "hose-2", 1});
    bench.view.connectSelected();
    // From the point before it, at x 1030, z 690: port-2 is 200 mm away, the inlet 730, port-1 970.
    QCOMPARE(bench.hose(return_hose).to.port, Id("port-2"));
    bench.view.connectSelected();
    QCOMPARE(bench.hose(return_hose).to.heater, Id("heater-1"));
    QCOMPARE(bench.hose(return_hose).to.nozzle, NozzleKind::inlet);
    bench.view.connectSelected();
    QCOMPARE(bench.hose(return_hose).to.port, Id("port-1"));
    bench.view.connectSelected();
    QCOMPARE(bench.hose(return_hose).to.port, Id("port-2"));
    bench.key(Qt::Key_Delete);
    QVERIFY(!bench.hose(return_hose).to.connected());
}

void TestCanvasKeys::insertAddsAPointHalfWay()
{
    Bench bench;
    bench.selection.select({PartKind::hose, "hose-2", 0});
    bench.key(Qt::Key_Insert);
    QCOMPARE(bench.hose(return_hose).points.size(), std::size_t(2));
    const Vec3 added = bench.hose(return_hose).points[0].at;
    VERIFY_NEAR(added.x, 1030, 1e-6);
    QVERIFY(added.z > 260 && added.z < 690);
    QVERIFY((bench.selection.part() == PartRef{PartKind::hose_point, "hose-2", 0}));
}

void TestCanvasKeys::aHoseIsDrawnWithTheKeyboardAlone()
{
    Bench bench(withoutReturn());
    bench.view.setTool(ToolKind::return_hose);
    // Where a return hose begins comes first, and once round through all four: outlet, port-2, inlet, port-1.
    for (int i = 0; i < 5; ++i)
        bench.key(Qt::Key_Tab);
    bench.key(Qt::Key_Return);
    for (int i = 0; i < 8; ++i)
        bench.key(Qt::Key_Up, Qt::ControlModifier);
    for (int i = 0; i < 6; ++i)
        bench.key(Qt::Key_Up);
    bench.key(Qt::Key_Return);
    bench.key(Qt::Key_Tab); // where it ends: the return port
    bench.key(Qt::Key_Tab);
    bench.key(Qt::Key_Backtab, Qt::ShiftModifier);
    bench.key(Qt::Key_Return);
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(2));
    const Hose& hose = bench.hose(return_hose);
    QCOMPARE(hose.from.heater, Id("heater-1"));
    QCOMPARE(hose.to.port, Id("port-2"));
    QCOMPARE(hose.points.size(), std::size_t(1));
    // 260 and eight times 50 and six times 5.
    QVERIFY((hose.points[0].at == Vec3{1030, 0, 690}));
}

void TestCanvasKeys::spaceClicksAtTheCrosshair()
{
    Bench bench;
    bench.view.setTool(ToolKind::heater);
    bench.key(Qt::Key_Space);
    QCOMPARE(bench.sketch().heaters.size(), std::size_t(1)); // no cross-hair yet
    bench.key(Qt::Key_Right);
    bench.key(Qt::Key_Space);
    QCOMPARE(bench.sketch().heaters.size(), std::size_t(2));
    VERIFY_NEAR(std::fmod(bench.sketch().heaters[1].position.x, 5), 0, 1e-9);
    QCOMPARE(bench.view.tool(), ToolKind::select);
}

void TestCanvasKeys::keysThatMeanTheDrawingAreKeptFromTheWindow()
{
    Bench bench;
    QKeyEvent plain(QEvent::ShortcutOverride, Qt::Key_Delete, Qt::NoModifier);
    plain.ignore();
    QApplication::sendEvent(&bench.view, &plain);
    QVERIFY(plain.isAccepted());
    QKeyEvent command(QEvent::ShortcutOverride, Qt::Key_Z, Qt::ControlModifier);
    command.ignore();
    QApplication::sendEvent(&bench.view, &command);
    QVERIFY(!command.isAccepted());
    for (const bool placing : {false, true}) {
        bench.view.setTool(placing ? ToolKind::heater : ToolKind::select);
        QKeyEvent large(QEvent::ShortcutOverride, Qt::Key_Right, Qt::ControlModifier);
        large.ignore();
        QApplication::sendEvent(&bench.view, &large);
        QCOMPARE(large.isAccepted(), placing);
    }
}

QTEST_MAIN(TestCanvasKeys)
#include "test_canvas_keys.moc"
