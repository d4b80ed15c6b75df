#include "tests/canvas/bench.h"
#include "tests/patience.h"

#include "app/drawing/ghost.h"
#include "app/proposing/layouts_panel.h"
#include "app/window/main_window.h"

#include <QDockWidget>
#include <QListWidget>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <optional>

using namespace siphonwright;
using siphonwright::test::Bench;
using siphonwright::test::patience_ms;

namespace {

int pixelsThatDiffer(const QImage& a, const QImage& b)
{
    int out = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            out += a.pixel(x, y) != b.pixel(x, y) ? 1 : 0;
    return out;
}

} // namespace

/// What is not there yet on the elevation, and the area in which a heater may hang.
class TestLayoutGhost : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void aGhostLiesOverTheDrawingAndGoesAway();
    void aGhostHasOneHeaterWithItsOwnPortsAndHoses();
    void aGhostOutOfSightIsBroughtIntoSight();
    void anAreaIsDraggedOnTheElevation();
    void anAreaIsDrawnByTwoClicksAndByKeys();
    void theActionShowsLayoutsOnTheElevation();

private:
    QTemporaryDir folder_;
};

void TestLayoutGhost::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test"));
}

void TestLayoutGhost::aGhostLiesOverTheDrawingAndGoesAway()
{
    Sketch bare = test::soundLoop();
    bare.hoses.clear();
    Bench bench(bare);
    const QImage without = bench.view.grab().toImage();
    bench.view.setGhost(std::make_shared<drawing::Ghost>(drawing::ghostOf(test::soundLoop(), "heater-1")));
    const QImage with = bench.view.grab().toImage();
    QVERIFY(pixelsThatDiffer(without, with) > 500);
    bench.view.setGhost(nullptr);
    QCOMPARE(pixelsThatDiffer(without, bench.view.grab().toImage()), 0);
    QVERIFY(bench.sketch() == bare);
}

void TestLayoutGhost::aGhostHasOneHeaterWithItsOwnPortsAndHoses()
{
    Sketch sketch = test::soundLoop();
    Heater other = sketch.heaters.front();
    other.id = "heater-2";
    sketch.heaters.push_back(other);
    Port spare = sketch.ports.front();
    spare.id = "port-3";
    sketch.ports.push_back(spare);
    const drawing::Ghost ghost = drawing::ghostOf(sketch, "heater-1");
    QCOMPARE(ghost.sketch.heaters.size(), std::size_t{1});
    QCOMPARE(ghost.sketch.heaters.front().id, std::string("heater-1"));
    QCOMPARE(ghost.sketch.ports.size(), std::size_t{2});
    QCOMPARE(ghost.layout.hoses.size(), std::size_t{2});
}

void TestLayoutGhost::aGhostOutOfSightIsBroughtIntoSight()
{
    Bench bench;
    Sketch far = test::soundLoop();
    far.heaters.front().position.x += 3000;
    bench.view.setGhost(std::make_shared<drawing::Ghost>(drawing::ghostOf(far, "heater-1")));
    const Vec3 at = far.heaters.front().position;
    QVERIFY(bench.view.rect().contains(bench.view.toScreen({at.x, at.z}).toPoint()));
}

void TestLayoutGhost::anAreaIsDraggedOnTheElevation()
{
    Bench bench;
    bench.view.setSnapping(false);
    std::optional<std::pair<Vec2, Vec2>> area;
    bench.view.askForBox(QStringLiteral("Drag"),
                         [&](Vec2 least, Vec2 most) { area = std::pair(least, most); });
    QCOMPARE(bench.view.tool(), ToolKind::box);
    bench.drag({1100, -50}, {700, 250});
    QVERIFY(area);
    const double pixel_mm = 1.01 / bench.view.zoom();
    VERIFY_NEAR(area->first.x, 700, pixel_mm);
    VERIFY_NEAR(area->first.z, -50, pixel_mm);
    VERIFY_NEAR(area->second.x, 1100, pixel_mm);
    VERIFY_NEAR(area->second.z, 250, pixel_mm);
    QCOMPARE(bench.view.tool(), ToolKind::select);
    QCOMPARE(bench.document.undoStack().count(), 0); // an area asked for is no part of the drawing
}

void TestLayoutGhost::anAreaIsDrawnByTwoClicksAndByKeys()
{
    Bench bench;
    std::optional<std::pair<Vec2, Vec2>> area;
    const auto take = [&](Vec2 least, Vec2 most) { area = std::pair(least, most); };
    bench.view.askForBox(QStringLiteral("Drag"), take);
    bench.click({700, 0});
    QVERIFY(!area);
    bench.click({900, 100});
    QVERIFY(area);
    area.reset();
    bench.view.askForBox(QStringLiteral("Drag"), take);
    bench.key(Qt::Key_Right);
    bench.key(Qt::Key_Return);
    QVERIFY(!area);
    bench.key(Qt::Key_Right, Qt::ControlModifier); // 50 mm
    bench.key(Qt::Key_Up, Qt::ControlModifier);
    bench.key(Qt::Key_Return);
    QVERIFY(area);
    VERIFY_NEAR(area->second.x - area->first.x, 50, 1e-6);
    VERIFY_NEAR(area->second.z - area->first.z, 50, 1e-6);
    area.reset();
    bench.view.askForBox(QStringLiteral("Drag"), take);
    bench.key(Qt::Key_Escape);
    QCOMPARE(bench.view.tool(), ToolKind::select);
    QVERIFY(!area);
}

void TestLayoutGhost::theActionShowsLayoutsOnTheElevation()
{
    QSettings().clear();
    MainWindow window;
    window.show();
    QVERIFY(QTest::qWaitForWindowExposed(&window));
    Sketch bare = test::soundLoop();
    bare.hoses.clear();
    window.document().reset(bare);
    window.view().zoomToFit();
    window.actions()[QStringLiteral("propose-layouts")]->trigger();
    auto* dock = window.findChild<QDockWidget*>(QStringLiteral("layouts"));
    QVERIFY(dock && dock->isVisible());
    auto* list = dock->findChild<QListWidget*>(QStringLiteral("layout-list"));
    QTRY_VERIFY_WITH_TIMEOUT(list->count() > 0, patience_ms);
    QCoreApplication::processEvents();
    const QImage with = window.view().grab().toImage();
    list->setCurrentRow(-1);
    QVERIFY(pixelsThatDiffer(with, window.view().grab().toImage()) > 200);
    dock->close();
    QVERIFY(window.document().sketch() == bare);
}

QTEST_MAIN(TestLayoutGhost)
#include "test_layout_ghost.moc"
