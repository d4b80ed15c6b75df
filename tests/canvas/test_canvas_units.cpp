#include "tests/near.h"

#include "app/canvas/plane.h"
#include "app/canvas/rulers.h"
#include "app/canvas/snap.h"
#include "app/canvas/viewport.h"

using namespace siphonwright;

class TestCanvasUnits : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void screenAndDrawingAreInverse();
    void zoomStopsAtItsLimits();
    void fitCentresTheDrawing();
    void revealMovesNoMoreThanItMust();
    void theGridCoarsensWithTheZoom_data();
    void theGridCoarsensWithTheZoom();
    void edgesPointOutWhicheverWayTheOutlineRuns();
};

void TestCanvasUnits::screenAndDrawingAreInverse()
{
    Viewport viewport;
    viewport.pan({120, 340});
    viewport.zoomAbout({50, 60}, 3.7);
    const Vec2 p = viewport.toDrawing(viewport.toScreen(Vec2{123.4, -56.7}));
    VERIFY_NEAR(p.x, 123.4, 1e-9);
    VERIFY_NEAR(p.z, -56.7, 1e-9);
    // Up on the drawing is up on the screen, and the painter's transformation says the same.
    QVERIFY(viewport.toScreen(Vec2{0, 10}).y() < viewport.toScreen(Vec2{0, 0}).y());
    QCOMPARE(viewport.transform().map(QPointF(10, -20)), viewport.toScreen(Vec2{10, 20}));
}

void TestCanvasUnits::zoomStopsAtItsLimits()
{
    Viewport viewport;
    viewport.zoomAbout({}, 1e9);
    QCOMPARE(viewport.zoom(), Viewport::most_zoom);
    viewport.zoomAbout({}, 1e-9);
    QCOMPARE(viewport.zoom(), Viewport::least_zoom);
}

void TestCanvasUnits::fitCentresTheDrawing()
{
    Viewport viewport;
    const QRectF screen(26, 26, 800, 600);
    viewport.fit({-100, -700, 1200, 900}, screen);
    QCOMPARE(viewport.transform().map(QPointF(500, -250)), screen.center());
    QVERIFY(1200 * viewport.zoom() < screen.width());
    QVERIFY(900 * viewport.zoom() < screen.height());
    viewport.fit({}, screen);
    QCOMPARE(viewport.toScreen(Vec2{}), screen.center());
}

void TestCanvasUnits::revealMovesNoMoreThanItMust()
{
    Viewport viewport;
    const QRectF screen(0, 0, 800, 600);
    viewport.fit({0, -100, 100, 100}, screen);
    const QPointF before = viewport.toScreen(Vec2{});
    viewport.reveal({50, 50}, screen);
    QCOMPARE(viewport.toScreen(Vec2{}), before);
    viewport.reveal({500, 50}, screen);
    QVERIFY(screen.contains(viewport.toScreen(Vec2{500, 50})));
    QCOMPARE(viewport.toScreen(Vec2{}).y(), before.y());
}

void TestCanvasUnits::theGridCoarsensWithTheZoom_data()
{
    QTest::addColumn<double>("zoom");
    QTest::addColumn<double>("metric_mm");
    QTest::addColumn<double>("inch_mm");
    // The first spacing of at least 8 pixels: 5 mm are 10 px at 2 px/mm, 1/4 in are 12.7.
    QTest::newRow("close") << 2.0 << 5.0 << 6.35;
    QTest::newRow("usual") << 1.0 << 10.0 << 12.7;
    QTest::newRow("whole engine") << 0.4 << 50.0 << 25.4;
    QTest::newRow("far") << 0.05 << 500.0 << 304.8;
}

void TestCanvasUnits::theGridCoarsensWithTheZoom()
{
    QFETCH(double, zoom);
    QFETCH(double, metric_mm);
    QFETCH(double, inch_mm);
    VERIFY_NEAR(gridSpacing(zoom, UnitSystem::metric), metric_mm, 1e-9);
    VERIFY_NEAR(gridSpacing(zoom, UnitSystem::inch), inch_mm, 1e-9);
    QVERIFY(snapSpacing(zoom, UnitSystem::metric) <= 50);
    QVERIFY(snapSpacing(zoom, UnitSystem::inch) <= 25.4);
    // Numbers on the rulers stand at least 56 pixels apart and on lines of the grid.
    for (const UnitSystem units : {UnitSystem::metric, UnitSystem::inch}) {
        const double marks = rulerSpacing(zoom, units);
        QVERIFY(marks * zoom >= 56);
        const double lines = marks / gridSpacing(zoom, units);
        VERIFY_NEAR(lines, std::round(lines), 1e-9);
    }
}

void TestCanvasUnits::edgesPointOutWhicheverWayTheOutlineRuns()
{
    std::vector<Vec2> square = {{0, 0}, {100, 0}, {100, 100}, {0, 100}};
    for (int way = 0; way < 2; ++way) {
        const NearestEdge right = nearestEdge(square, {97, 40});
        QVERIFY((right.at == Vec2{100, 40}));
        VERIFY_NEAR(right.outward.x, 1, 1e-12);
        VERIFY_NEAR(right.distance_mm, 3, 1e-12);
        QVERIFY(isInside(square, {50, 50}));
        QVERIFY(!isInside(square, {150, 50}));
        std::reverse(square.begin(), square.end());
    }
}

QTEST_GUILESS_MAIN(TestCanvasUnits)
#include "test_canvas_units.moc"
