#include "tests/canvas/bench.h"

#include <QAccessible>
#include <QSignalSpy>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const PartRef selected_bend{PartKind::hose_point, "hose-2", 0};

Sketch named()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& hose) {
        hose.name = "Return hose";
        hose.points.insert(hose.points.begin(), 2, RoutePoint{{1030, 0, 500}, 20});
    });
    sketch.heaters[0].name = "Tank heater";
    return sketch;
}

QAccessibleInterface* childNamed(QAccessibleInterface* view, const QString& name)
{
    for (int i = 0; i < view->childCount(); ++i)
        if (view->child(i)->text(QAccessible::Name) == name)
            return view->child(i);
    return nullptr;
}

} // namespace

class TestCanvasAccess : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyPartIsAChildWithItsName();
    void childrenKnowTheirPlaceAmongTheOthers();
    void aPartIsWhereItIsDrawn();
    void aPartSaysWhereItIsAndWhatIsWrong();
    void statesFollowTheSelection();
    void aPartIsSelectedByItsActions();
    void aPartThatIsGoneIsNotValid();
    void cornersAreThereWhileOneGoesRoundThem();
};

void TestCanvasAccess::everyPartIsAChildWithItsName()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    QVERIFY(view);
    QCOMPARE(view->text(QAccessible::Name), QStringLiteral("Side elevation"));
    QCOMPARE(view->childCount(), int(bench.view.things().size()));
    QStringList names;
    for (int i = 0; i < view->childCount(); ++i) {
        QVERIFY(view->child(i)->isValid());
        QVERIFY(!view->child(i)->text(QAccessible::Name).isEmpty());
        names << view->child(i)->text(QAccessible::Name);
    }
    for (const char* name : {"Return hose, point 3", "Return hose, start", "Tank heater", "Water jacket",
                             "Return hose, isolation valve 1"})
        QCOMPARE(names.count(QLatin1String(name)), 1);
    QCOMPARE(childNamed(view, QStringLiteral("Return hose, point 3"))->role(), QAccessible::Grip);
    QCOMPARE(childNamed(view, QStringLiteral("Tank heater"))->role(), QAccessible::Graphic);
}

void TestCanvasAccess::childrenKnowTheirPlaceAmongTheOthers()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    for (int i = 0; i < view->childCount(); ++i) {
        QCOMPARE(view->indexOfChild(view->child(i)), i);
        QCOMPARE(view->child(i)->parent(), view);
        QCOMPARE(view->child(i), view->child(i)); // the same object each time
    }
    QVERIFY(!view->child(-1));
    QVERIFY(!view->child(view->childCount()));
}

void TestCanvasAccess::aPartIsWhereItIsDrawn()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    const QPoint on_screen = bench.view.mapToGlobal(bench.view.toScreen({1030, 80}).toPoint());
    QAccessibleInterface* heater = childNamed(view, QStringLiteral("Tank heater"));
    QVERIFY(heater->rect().contains(on_screen));
    // A body of 90 by 300 mm, and 8 pixels round it.
    VERIFY_NEAR(heater->rect().width(), 90 * bench.view.zoom() + 16, 3);
    VERIFY_NEAR(heater->rect().height(), 300 * bench.view.zoom() + 16, 3);
    QAccessibleInterface* there = view->childAt(on_screen.x(), on_screen.y());
    QVERIFY(there);
    QCOMPARE(there->text(QAccessible::Name), QStringLiteral("Tank heater"));
}

void TestCanvasAccess::aPartSaysWhereItIsAndWhatIsWrong()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    QAccessibleInterface* heater = childNamed(view, QStringLiteral("Tank heater"));
    QVERIFY(heater->text(QAccessible::Description).contains(QStringLiteral("1030 mm")));
    QAccessibleInterface* valve = childNamed(view, QStringLiteral("Return hose, isolation valve 1"));
    QVERIFY(valve->text(QAccessible::Description).contains(QStringLiteral("open")));
    bench.selection.select({PartKind::inline_part, "hose-2", 0});
    bench.view.openOrCloseSelected();
    QVERIFY(valve->text(QAccessible::Description).contains(QStringLiteral("closed")));
    QVERIFY(valve->text(QAccessible::Description).contains(QStringLiteral("findings")));
}

void TestCanvasAccess::statesFollowTheSelection()
{
    Bench bench(named());
    bench.view.activateWindow();
    bench.view.setFocus();
    QVERIFY(QTest::qWaitForWindowActive(&bench.view));
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    QAccessibleInterface* point = childNamed(view, QStringLiteral("Return hose, point 1"));
    QAccessibleInterface* heater = childNamed(view, QStringLiteral("Tank heater"));
    QVERIFY(point->state().selectable && !point->state().selected && !point->state().focused);
    bench.selection.selectAll({{PartKind::heater, "heater-1", 0}, selected_bend});
    QVERIFY(point->state().selected && heater->state().selected);
    QVERIFY(point->state().focused && !heater->state().focused);
    QCOMPARE(view->focusChild(), point);
}

void TestCanvasAccess::aPartIsSelectedByItsActions()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    QAccessibleActionInterface* heater = childNamed(view, QStringLiteral("Tank heater"))->actionInterface();
    QAccessibleActionInterface* point =
        childNamed(view, QStringLiteral("Return hose, point 1"))->actionInterface();
    QVERIFY(heater && point);
    heater->doAction(QAccessibleActionInterface::pressAction());
    QVERIFY((bench.selection.part() == PartRef{PartKind::heater, "heater-1", 0}));
    point->doAction(QAccessibleActionInterface::toggleAction());
    QCOMPARE(bench.selection.parts().size(), std::size_t(2));
    QSignalSpy menus(&bench.view, &ElevationView::contextMenuWanted);
    point->doAction(QAccessibleActionInterface::showMenuAction());
    QCOMPARE(menus.count(), 1);
    QVERIFY(bench.selection.part() == selected_bend);
    const QPoint at = menus.at(0).at(1).toPoint();
    QVERIFY(childNamed(view, QStringLiteral("Return hose, point 1"))->rect().contains(at));
}

void TestCanvasAccess::aPartThatIsGoneIsNotValid()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    QAccessibleInterface* heater = childNamed(view, QStringLiteral("Tank heater"));
    const int before = view->childCount();
    bench.selection.select({PartKind::heater, "heater-1", 0});
    bench.key(Qt::Key_Delete);
    QVERIFY(!heater->isValid());
    QVERIFY(heater->text(QAccessible::Name).isEmpty());
    QCOMPARE(view->childCount(), before - 1);
}

void TestCanvasAccess::cornersAreThereWhileOneGoesRoundThem()
{
    Bench bench(named());
    QAccessibleInterface* view = QAccessible::queryAccessibleInterface(&bench.view);
    QVERIFY(!childNamed(view, QStringLiteral("Water jacket, corner 1")));
    bench.selection.select({PartKind::jacket, {}, 0});
    bench.view.enterOutline();
    QVERIFY(childNamed(view, QStringLiteral("Water jacket, corner 1"))->state().selected);
}

QTEST_MAIN(TestCanvasAccess)
#include "test_canvas_access.moc"
