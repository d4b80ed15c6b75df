#include "tests/canvas/bench.h"

#include "app/canvas/clipboard.h"

#include <QClipboard>
#include <QMimeData>
#include <QSignalSpy>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const PartRef heater{PartKind::heater, "heater-1", 0};
const PartRef returning{PartKind::hose, "hose-2", 0};
const PartRef bend{PartKind::hose_point, "hose-2", 0};
const PartRef low_bend{PartKind::hose_point, "hose-1", 0};
constexpr Vec2 heater_middle = {1030, 80};
constexpr Vec2 supply_bend = {100, -40};
constexpr Vec2 empty_ground = {500, 150};

void setClipboard(const QByteArray& bytes)
{
    auto* data = new QMimeData;
    data->setData(QLatin1String(parts_mime_type), bytes);
    QGuiApplication::clipboard()->setMimeData(data);
}

} // namespace

class TestCanvasGroups : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void shiftAndCtrlClicksAddAndTakeOut();
    void aClickOnOneOfSeveralSelectsItAlone();
    void aBandOverEmptyGroundSelectsWhatLiesInIt();
    void aBandAroundBendsSelectsTheBendsAlone();
    void aBandWithShiftAddsAndMayBeginOnAPart();
    void escapeStopsABand();
    void severalAreDraggedAsOne();
    void aDraggedGroupDoesNotSnapToItself();
    void severalAreNudgedAsOne();
    void severalAreDeletedAsOne();
    void theKeyboardKeepsPartsWhileItGoesOn();
    void everythingIsSelected();
    void copiedPartsGoIntoAnotherWindow();
    void cutPartsComeBackFromTheClipboard();
    void partsArePastedWhereThePointerIs();
    void aDuplicateLiesBesideAndIsSelected();
    void aValveIsDuplicatedOnItsHose();
    void badClipboardDataChangesNothing_data();
    void badClipboardDataChangesNothing();
    void anEmptyClipboardIsSaid();
    void partsLineUpWithOneUndo();
    void pointsAreSpacedEvenly();
    void aValveIsClosedAndOpenedAgain();
    void pointsAndValvesAreAddedWhereTheMenuWasOpened();
    void aMenuOnOneOfSeveralKeepsThemSelected();
};

void TestCanvasGroups::shiftAndCtrlClicksAddAndTakeOut()
{
    Bench bench;
    bench.click(heater_middle);
    bench.click(return_bend, Qt::ShiftModifier);
    bench.click(supply_bend, Qt::ControlModifier);
    QVERIFY((bench.selection.parts() == std::vector<PartRef>{heater, bend, low_bend}));
    QVERIFY(bench.selection.part() == low_bend);
    bench.click(return_bend, Qt::ControlModifier);
    QVERIFY((bench.selection.parts() == std::vector<PartRef>{heater, low_bend}));
    bench.click(empty_ground, Qt::ShiftModifier);
    QCOMPARE(bench.selection.parts().size(), std::size_t(2));
    bench.click(empty_ground);
    QVERIFY(bench.selection.parts().empty());
    QCOMPARE(bench.document.undoStack().count(), 0);
}

void TestCanvasGroups::aClickOnOneOfSeveralSelectsItAlone()
{
    Bench bench;
    bench.selection.selectAll({heater, bend});
    bench.click(heater_middle);
    QVERIFY((bench.selection.parts() == std::vector<PartRef>{heater}));
}

void TestCanvasGroups::aBandOverEmptyGroundSelectsWhatLiesInIt()
{
    Bench bench;
    // Round the heater, whose body ends at z -70 and 230; the return's bend stands higher.
    bench.drag({900, 320}, {1140, -120});
    QVERIFY((bench.selection.parts() == std::vector<PartRef>{heater}));
    // The supply hose's end and valve at the heater stay with the hose, which is not in the band.
    QVERIFY(!bench.selection.contains({PartKind::hose, "hose-1", 0}));
    QCOMPARE(bench.document.undoStack().count(), 0);
}

void TestCanvasGroups::aBandAroundBendsSelectsTheBendsAlone()
{
    Bench bench;
    bench.drag({0, 100}, {200, -100});
    QVERIFY(bench.selection.contains(low_bend));
    QVERIFY(!bench.selection.contains({PartKind::hose, "hose-1", 0}));
    for (const PartRef& part : bench.selection.parts())
        QCOMPARE(part.id, Id("hose-1"));
}

void TestCanvasGroups::aBandWithShiftAddsAndMayBeginOnAPart()
{
    Bench bench;
    bench.selection.select(low_bend);
    // From within the engine to right of the return hose: it, the heater and the port lie wholly inside.
    bench.drag({700, 820}, {1150, -200}, Qt::ShiftModifier);
    QVERIFY(bench.selection.contains(low_bend));
    QVERIFY(bench.selection.contains(heater));
    QVERIFY(bench.selection.contains(returning));
    QVERIFY(!bench.selection.contains(bend));
    QVERIFY(bench.selection.contains({PartKind::port, "port-2", 0}));
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGroups::escapeStopsABand()
{
    Bench bench;
    bench.selection.select(low_bend);
    bench.press({900, 320}, Qt::ShiftModifier);
    bench.pull({1140, -120}, Qt::ShiftModifier);
    bench.key(Qt::Key_Escape);
    bench.release(Qt::ShiftModifier);
    QVERIFY((bench.selection.parts() == std::vector<PartRef>{low_bend}));
}

void TestCanvasGroups::severalAreDraggedAsOne()
{
    Bench bench;
    bench.view.setSnapping(false);
    bench.selection.selectAll({heater, returning, bend});
    bench.drag(heater_middle, {heater_middle.x + 60, heater_middle.z - 40});
    VERIFY_NEAR(bench.sketch().heaters[0].position.x, 1090, 1e-6);
    VERIFY_NEAR(bench.sketch().heaters[0].position.z, 40, 1e-6);
    VERIFY_NEAR(bench.hose(return_hose).points[0].at.x, 1090, 1e-6);
    VERIFY_NEAR(bench.hose(return_hose).points[0].at.z, 650, 1e-6);
    QCOMPARE(bench.selection.parts().size(), std::size_t(3));
    QCOMPARE(bench.document.undoStack().count(), 1);
    bench.document.undoStack().undo();
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGroups::aDraggedGroupDoesNotSnapToItself()
{
    Sketch sketch = soundLoop();
    // A bend a millimetre beside the outlet of the heater it is dragged with.
    sketch.hoses[return_hose].edit([](Hose& hose) { hose.points[0].at = {1031, 0, 690}; });
    Bench bench(sketch);
    bench.selection.selectAll({heater, bend});
    bench.drag({1031, 690}, {1131, 690});
    // The group goes to whole steps, not to the outlet that comes along.
    const double moved = bench.hose(return_hose).points[0].at.x - 1031;
    QVERIFY(moved > 80);
    VERIFY_NEAR(bench.sketch().heaters[0].position.x - 1030, moved, 1e-9);
}

void TestCanvasGroups::severalAreNudgedAsOne()
{
    Bench bench;
    bench.selection.selectAll({bend, low_bend, heater});
    for (int i = 0; i < 3; ++i)
        bench.key(Qt::Key_Up);
    VERIFY_NEAR(bench.hose(return_hose).points[0].at.z, 705, 1e-9);
    VERIFY_NEAR(bench.hose(supply_hose).points[0].at.z, -25, 1e-9);
    VERIFY_NEAR(bench.sketch().heaters[0].position.z, 95, 1e-9);
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestCanvasGroups::severalAreDeletedAsOne()
{
    Bench bench;
    bench.selection.selectAll({heater, bend, {PartKind::port, "port-1", 0}});
    bench.key(Qt::Key_Delete);
    QVERIFY(bench.sketch().heaters.empty());
    QCOMPARE(bench.sketch().ports.size(), std::size_t(1));
    QVERIFY(bench.hose(return_hose).points.empty());
    QVERIFY(bench.selection.parts().empty());
    QCOMPARE(bench.document.undoStack().count(), 1);
    bench.document.undoStack().undo();
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGroups::theKeyboardKeepsPartsWhileItGoesOn()
{
    Bench bench;
    bench.selection.select({PartKind::port, "port-1", 0});
    bench.view.keepSelected();
    bench.key(Qt::Key_Tab);
    bench.key(Qt::Key_Tab);
    // Past the second port, to the heater; it is kept too, and the next is only gone through.
    QVERIFY((bench.selection.parts() == std::vector<PartRef>{{PartKind::port, "port-1", 0}, heater}));
    bench.view.keepSelected();
    bench.key(Qt::Key_Tab);
    bench.key(Qt::Key_Tab);
    QCOMPARE(bench.selection.parts().size(), std::size_t(3));
    bench.key(Qt::Key_Escape);
    QVERIFY(bench.selection.parts().empty());
    bench.key(Qt::Key_Tab);
    bench.key(Qt::Key_Tab);
    QCOMPARE(bench.selection.parts().size(), std::size_t(1));
}

void TestCanvasGroups::everythingIsSelected()
{
    Bench bench;
    bench.view.selectEverything();
    // Engine, tank, two ports, a heater, two hoses.
    QCOMPARE(bench.selection.parts().size(), std::size_t(7));
    bench.key(Qt::Key_Right);
    VERIFY_NEAR(bench.sketch().ports[0].position.x, 105, 1e-9);
    VERIFY_NEAR(bench.hose(supply_hose).points[0].at.x, 105, 1e-9);
}

void TestCanvasGroups::copiedPartsGoIntoAnotherWindow()
{
    Bench bench;
    bench.selection.selectAll({heater, returning});
    bench.view.copy();
    QVERIFY(QGuiApplication::clipboard()->mimeData()->hasFormat(QLatin1String(parts_mime_type)));
    QVERIFY(bench.sketch() == soundLoop());
    Bench other{Sketch()};
    other.view.paste();
    QCOMPARE(other.sketch().heaters.size(), std::size_t(1));
    QCOMPARE(other.hose(0).from.heater, other.sketch().heaters[0].id);
    QVERIFY((other.sketch().heaters[0].position == Vec3{1030, 0, 80}));
    QCOMPARE(other.selection.parts().size(), std::size_t(2));
    QCOMPARE(other.document.undoStack().count(), 1);
    other.document.undoStack().undo();
    QVERIFY(other.sketch() == Sketch());
}

void TestCanvasGroups::cutPartsComeBackFromTheClipboard()
{
    Bench bench;
    bench.selection.selectAll({heater, returning});
    bench.view.cut();
    QVERIFY(bench.sketch().heaters.empty());
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(1));
    QCOMPARE(bench.document.undoStack().count(), 1);
    bench.view.paste();
    QVERIFY((bench.sketch().heaters.at(0).position == Vec3{1030, 0, 80}));
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(2));
}

void TestCanvasGroups::partsArePastedWhereThePointerIs()
{
    Bench bench;
    bench.selection.select(heater);
    bench.view.copy();
    bench.hover({500, 0});
    bench.view.paste();
    QCOMPARE(bench.sketch().heaters.size(), std::size_t(2));
    VERIFY_NEAR(bench.sketch().heaters[1].position.x, 500, 5);
    VERIFY_NEAR(bench.sketch().heaters[1].position.z, 0, 5);
    // At the same place once more it does not hide what is there.
    bench.view.paste();
    QVERIFY(bench.sketch().heaters[2].position != bench.sketch().heaters[1].position);
}

void TestCanvasGroups::aDuplicateLiesBesideAndIsSelected()
{
    Bench bench;
    bench.selection.selectAll({heater, returning});
    bench.view.duplicate();
    QVERIFY((bench.sketch().heaters[1].position == Vec3{1080, 0, 30}));
    QCOMPARE(bench.hose(2).from.heater, bench.sketch().heaters[1].id);
    QVERIFY((bench.selection.parts() ==
             std::vector<PartRef>{{PartKind::heater, "heater-2", 0}, {PartKind::hose, "hose-3", 0}}));
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestCanvasGroups::aValveIsDuplicatedOnItsHose()
{
    Bench bench;
    bench.selection.select({PartKind::inline_part, "hose-1", 0});
    bench.view.duplicate();
    QCOMPARE(bench.hose(supply_hose).parts.size(), std::size_t(2));
    // 60 mm long and 40 mm clear of the first at 100 mm.
    VERIFY_NEAR(bench.hose(supply_hose).parts[1].along_mm, 200, 1e-9);
    QVERIFY((bench.selection.part() == PartRef{PartKind::inline_part, "hose-1", 1}));
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(2));
}

void TestCanvasGroups::badClipboardDataChangesNothing_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::newRow("not JSON") << QByteArray("{");
    QTest::newRow("empty") << QByteArray("");
    QTest::newRow("another format") << QByteArray("{\"format\": \"other\", \"version\": 1}");
    QTest::newRow("no parts") << QByteArray("{\"format\": \"siphonwright\", \"version\": 1}");
    QTest::newRow("a later version") << QByteArray("{\"format\": \"siphonwright\", \"version\": 99}");
    QTest::newRow("an end on nothing")
        << QByteArray("{\"format\": \"siphonwright\", \"version\": 1, \"hoses\": [{\"id\": \"hose-1\", "
                      "\"from\": {\"port\": \"port-9\"}}]}");
}

void TestCanvasGroups::badClipboardDataChangesNothing()
{
    QFETCH(QByteArray, bytes);
    Bench bench;
    QSignalSpy refused(&bench.view, &ElevationView::refused);
    setClipboard(bytes);
    bench.view.paste();
    QCOMPARE(refused.count(), 1);
    QVERIFY(!refused.at(0).at(1).toStringList().isEmpty());
    QVERIFY(bench.sketch() == soundLoop());
    QCOMPARE(bench.document.undoStack().count(), 0);
}

void TestCanvasGroups::anEmptyClipboardIsSaid()
{
    Bench bench;
    QSignalSpy told(&bench.view, &ElevationView::told);
    QGuiApplication::clipboard()->setText(QStringLiteral("3/4 in"));
    bench.view.paste();
    QCOMPARE(told.count(), 1);
    QVERIFY(bench.sketch() == soundLoop());
}

void TestCanvasGroups::partsLineUpWithOneUndo()
{
    Bench bench;
    bench.selection.selectAll({bend, low_bend, heater});
    bench.view.alignSelected(Alignment::left);
    // The leftmost is the supply's bend at x 100; the heater is 90 mm wide.
    VERIFY_NEAR(bench.hose(return_hose).points[0].at.x, 100, 1e-9);
    VERIFY_NEAR(bench.sketch().heaters[0].position.x, 145, 1e-9);
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestCanvasGroups::pointsAreSpacedEvenly()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) {
        hose.points = {{{1030, 0, 300}, 20}, {{1040, 0, 320}, 20}, {{1030, 0, 700}, 20}};
    });
    Bench bench(sketch);
    bench.selection.selectAll(
        {bend, {PartKind::hose_point, "hose-2", 1}, {PartKind::hose_point, "hose-2", 2}});
    bench.view.distributeSelected(SpreadAlong::z);
    VERIFY_NEAR(bench.hose(return_hose).points[1].at.z, 500, 1e-9);
    VERIFY_NEAR(bench.hose(return_hose).points[1].at.x, 1040, 1e-9);
}

void TestCanvasGroups::aValveIsClosedAndOpenedAgain()
{
    Bench bench;
    bench.selection.select({PartKind::inline_part, "hose-1", 0});
    QVERIFY(bench.hose(supply_hose).parts[0].open);
    bench.view.openOrCloseSelected();
    QVERIFY(!bench.hose(supply_hose).parts[0].open);
    bench.view.openOrCloseSelected();
    QVERIFY(bench.hose(supply_hose).parts[0].open);
    bench.selection.select(heater);
    bench.view.openOrCloseSelected();
    QCOMPARE(bench.document.undoStack().count(), 2);
}

void TestCanvasGroups::pointsAndValvesAreAddedWhereTheMenuWasOpened()
{
    Bench bench;
    // On the supply's plumb part, 170 mm under the port's stop at z 410.
    const QPoint at = bench.view.toScreen({100, 240}).toPoint();
    QContextMenuEvent menu(QContextMenuEvent::Mouse, at, bench.view.mapToGlobal(at));
    QApplication::sendEvent(&bench.view, &menu);
    QVERIFY((bench.selection.part() == PartRef{PartKind::hose, "hose-1", 0}));
    bench.view.addHere(ToolKind::clip);
    const std::vector<double>& clips = bench.hose(supply_hose).clips_mm;
    QCOMPARE(clips.size(), std::size_t(4));
    VERIFY_NEAR(clips.back(), 170, 3);
    QApplication::sendEvent(&bench.view, &menu);
    bench.view.addPointHere();
    QCOMPARE(bench.hose(supply_hose).points.size(), std::size_t(2));
    VERIFY_NEAR(bench.hose(supply_hose).points[0].at.z, 240, 3);
}

void TestCanvasGroups::aMenuOnOneOfSeveralKeepsThemSelected()
{
    Bench bench;
    bench.selection.selectAll({bend, heater});
    QSignalSpy wanted(&bench.view, &ElevationView::contextMenuWanted);
    const QPoint at = bench.view.toScreen(heater_middle).toPoint();
    QContextMenuEvent menu(QContextMenuEvent::Mouse, at, bench.view.mapToGlobal(at));
    QApplication::sendEvent(&bench.view, &menu);
    QCOMPARE(wanted.count(), 1);
    QCOMPARE(bench.selection.parts().size(), std::size_t(2));
    const QPoint beside = bench.view.toScreen(empty_ground).toPoint();
    QContextMenuEvent other(QContextMenuEvent::Mouse, beside, bench.view.mapToGlobal(beside));
    QApplication::sendEvent(&bench.view, &other);
    QVERIFY(bench.selection.parts().empty());
}

QTEST_MAIN(TestCanvasGroups)
#include "test_canvas_groups.moc"
