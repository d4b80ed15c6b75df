#include "tests/canvas/bench.h"

#include "app/canvas/dimension_ends.h"
#include "app/drawing/dimension_shape.h"

#include <QImage>
#include <QPainter>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr Vec2 outlet_opening = {1030, 220};
constexpr Vec2 return_opening = {800, 700};

/// Draw one with three clicks, the kind left to the pointer or chosen by a key.
const Dimension& drawn(Bench& bench, Vec2 from, Vec2 to, Vec2 line, Qt::Key kind = Qt::Key_unknown)
{
    bench.view.setTool(ToolKind::dimension);
    bench.click(from);
    bench.click(to);
    if (kind != Qt::Key_unknown)
        bench.key(kind);
    bench.click(line);
    return bench.sketch().dimensions.back();
}

} // namespace

class TestCanvasDimensions : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void threeClicksDrawOne_data();
    void threeClicksDrawOne();
    void aLevelIsMeasuredVertically();
    void aPlaceOnAHoseAndAFreePlaceCanBeMeasured();
    void theSameThingTwiceIsNoDimension();
    void backspaceAndEscapeTakeBack();
    void theKeyboardDrawsOne();
    void itIsSelectedDraggedAsideAndDeleted();
    void arrowsMoveItAside();
    void itKeepsItsPointWhenOneIsInsertedAndUndoGivesItBack();
    void deletingThePartLeavesTheEndInPlace();
    void itIsOnThePaper_data();
    void itIsOnThePaper();
    void textSaysItInEitherUnit();
};

void TestCanvasDimensions::threeClicksDrawOne_data()
{
    QTest::addColumn<double>("x");
    QTest::addColumn<double>("z");
    QTest::addColumn<int>("key");
    QTest::addColumn<int>("kind");
    QTest::addColumn<double>("aside");
    // From {1030, 220} to {800, 700}: the middle is {915, 460}.
    QTest::newRow("over") << 900.0 << 800.0 << 0 << int(DimensionKind::horizontal) << 340.0;
    QTest::newRow("beside") << 1130.0 << 500.0 << 0 << int(DimensionKind::vertical) << 215.0;
    QTest::newRow("forced") << 900.0 << 800.0 << int(Qt::Key_V) << int(DimensionKind::vertical) << -15.0;
    QTest::newRow("slope") << 915.0 << 460.0 << int(Qt::Key_S) << int(DimensionKind::slope) << 0.0;
}

void TestCanvasDimensions::threeClicksDrawOne()
{
    QFETCH(double, x);
    QFETCH(double, z);
    QFETCH(int, key);
    QFETCH(int, kind);
    QFETCH(double, aside);
    Bench bench;
    const Dimension dimension =
        drawn(bench, outlet_opening, return_opening, {x, z}, key ? Qt::Key(key) : Qt::Key_unknown);
    QCOMPARE(dimension.kind, static_cast<DimensionKind>(kind));
    QCOMPARE(dimension.from.part, PartKind::heater);
    QCOMPARE(dimension.from.index, std::int64_t(HeaterPlace::outlet));
    QCOMPARE(dimension.to.part, PartKind::port);
    QCOMPARE(dimension.to.id, Id("port-2"));
    VERIFY_NEAR(dimension.aside_mm, aside, 1.01); // clicks are whole pixels
    QVERIFY((bench.selection.part() == PartRef{PartKind::dimension, dimension.id, 0}));
    QCOMPARE(bench.view.tool(), ToolKind::select);
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestCanvasDimensions::aLevelIsMeasuredVertically()
{
    Bench bench;
    const Dimension dimension = drawn(bench, {1030, 230}, {600, 400}, {1200, 900});
    QCOMPARE(dimension.to.part, PartKind::jacket);
    QCOMPARE(dimension.kind, DimensionKind::vertical);
    QCOMPARE(drawn(bench, {1030, -70}, {700, -300}, {1200, -200}).to.part, PartKind::ground);
}

void TestCanvasDimensions::aPlaceOnAHoseAndAFreePlaceCanBeMeasured()
{
    Bench bench;
    const Dimension dimension = drawn(bench, {1030, 460}, {1250, 460}, {1150, 560});
    QCOMPARE(dimension.from.part, PartKind::hose);
    QCOMPARE(dimension.from.id, Id("hose-2"));
    VERIFY_NEAR(double(dimension.from.index), 200, 2); // from the stop at z 260
    QCOMPARE(dimension.to.part, PartKind::nothing);
    QCOMPARE(dimension.kind, DimensionKind::horizontal);
}

void TestCanvasDimensions::theSameThingTwiceIsNoDimension()
{
    Bench bench;
    bench.view.setTool(ToolKind::dimension);
    for (int i = 0; i < 4; ++i)
        bench.click(outlet_opening);
    QVERIFY(bench.sketch().dimensions.empty());
}

void TestCanvasDimensions::backspaceAndEscapeTakeBack()
{
    Bench bench;
    bench.view.setTool(ToolKind::dimension);
    bench.click(return_bend); // a wrong one
    bench.key(Qt::Key_Backspace);
    bench.click(outlet_opening);
    bench.click(return_opening);
    bench.click({900, 800});
    QCOMPARE(bench.sketch().dimensions.size(), std::size_t(1));
    QCOMPARE(bench.sketch().dimensions[0].from.part, PartKind::heater);
    bench.view.setTool(ToolKind::dimension);
    bench.click(outlet_opening);
    bench.key(Qt::Key_Escape);
    QCOMPARE(bench.view.tool(), ToolKind::dimension);
    bench.key(Qt::Key_Escape);
    QCOMPARE(bench.view.tool(), ToolKind::select);
    QCOMPARE(bench.sketch().dimensions.size(), std::size_t(1));
}

void TestCanvasDimensions::theKeyboardDrawsOne()
{
    Bench bench;
    bench.view.setTool(ToolKind::dimension);
    bench.view.setFocus();
    bench.key(Qt::Key_Tab); // the first port
    bench.key(Qt::Key_Return);
    bench.key(Qt::Key_Tab); // the second
    bench.key(Qt::Key_Return);
    bench.key(Qt::Key_H);
    bench.key(Qt::Key_Up);
    bench.key(Qt::Key_Return);
    QCOMPARE(bench.sketch().dimensions.size(), std::size_t(1));
    const Dimension& dimension = bench.sketch().dimensions[0];
    QCOMPARE(dimension.from.id, Id("port-1"));
    QCOMPARE(dimension.to.id, Id("port-2"));
    QCOMPARE(dimension.kind, DimensionKind::horizontal);
    VERIFY_NEAR(dimension.aside_mm, 130 + 5, 1e-9); // from the middle at 570 to the port at 700, a nudge up
}

void TestCanvasDimensions::itIsSelectedDraggedAsideAndDeleted()
{
    Bench bench;
    const Id id = drawn(bench, outlet_opening, return_opening, {1150, 500}).id; // vertical at x 1150
    bench.click({1250, 900});
    QCOMPARE(bench.selection.part().kind, PartKind::nothing);
    bench.click({1150, 300});
    QVERIFY((bench.selection.part() == PartRef{PartKind::dimension, id, 0}));
    bench.drag({1150, 300}, {1200, 310}, Qt::AltModifier);
    VERIFY_NEAR(bench.sketch().dimensions[0].aside_mm, 285, 3);
    bench.key(Qt::Key_Delete);
    QVERIFY(bench.sketch().dimensions.empty());
    bench.document.undoStack().undo();
    QCOMPARE(bench.sketch().dimensions.size(), std::size_t(1));
}

void TestCanvasDimensions::arrowsMoveItAside()
{
    Bench bench;
    drawn(bench, outlet_opening, return_opening, {1150, 500});
    const double before = bench.sketch().dimensions[0].aside_mm;
    bench.key(Qt::Key_Right);
    VERIFY_NEAR(bench.sketch().dimensions[0].aside_mm, before + 5, 1e-9);
    bench.key(Qt::Key_Left, Qt::ShiftModifier);
    VERIFY_NEAR(bench.sketch().dimensions[0].aside_mm, before + 4, 1e-9);
    bench.key(Qt::Key_Up); // along its line
    VERIFY_NEAR(bench.sketch().dimensions[0].aside_mm, before + 4, 1e-9);
}

void TestCanvasDimensions::itKeepsItsPointWhenOneIsInsertedAndUndoGivesItBack()
{
    Bench bench;
    drawn(bench, return_bend, return_opening, {900, 900});
    const std::vector<Dimension> before = bench.sketch().dimensions;
    QCOMPARE(before[0].from.index, std::int64_t(0));
    bench.doubleClick({1030, 400}); // a point before it
    QCOMPARE(bench.hose(return_hose).points.size(), std::size_t(2));
    QCOMPARE(bench.sketch().dimensions[0].from.index, std::int64_t(1));
    bench.document.undoStack().undo();
    QVERIFY(bench.sketch().dimensions == before);
}

void TestCanvasDimensions::deletingThePartLeavesTheEndInPlace()
{
    Bench bench;
    drawn(bench, outlet_opening, return_opening, {900, 900});
    bench.click({1030, 60});
    bench.key(Qt::Key_Delete);
    QVERIFY(bench.sketch().heaters.empty());
    const DimensionEnd& from = bench.sketch().dimensions[0].from;
    QCOMPARE(from.part, PartKind::nothing);
    QVERIFY((from.at == Vec3{1030, 0, 220}));
}

void TestCanvasDimensions::itIsOnThePaper_data()
{
    QTest::addColumn<int>("kind");
    QTest::newRow("horizontal") << int(DimensionKind::horizontal);
    QTest::newRow("vertical") << int(DimensionKind::vertical);
    QTest::newRow("along") << int(DimensionKind::along);
    QTest::newRow("slope") << int(DimensionKind::slope);
}

/// The painter of the sheet draws the line where it lies, and nothing there without it.
void TestCanvasDimensions::itIsOnThePaper()
{
    QFETCH(int, kind);
    Sketch sketch = soundLoop();
    Dimension dimension;
    dimension.id = "dimension-1";
    dimension.kind = static_cast<DimensionKind>(kind);
    dimension.from.part = PartKind::heater;
    dimension.from.id = "heater-1";
    dimension.to.part = PartKind::port;
    dimension.to.id = "port-2";
    dimension.aside_mm = 250;
    const auto inkAtLine = [&](const Sketch& what) {
        const Analysis analysis = analyse(what);
        const QPolygonF line = drawing::dimensionLine(measure(dimension, sketch, analysis.layout));
        const QPointF centre = line.first() * 0.8 + line.last() * 0.2; // away from its text
        QImage image(60, 60, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.translate(30, 30);
        painter.translate(-centre);
        drawing::Style style;
        style.palette = drawing::Palette::paper();
        style.scale = 1;
        style.labels = false;
        style.balloons = false;
        style.running = false;
        drawing::paintElevation(painter, what, analysis, style);
        painter.end();
        int dark = 0;
        for (int x = 28; x <= 32; ++x)
            for (int y = 28; y <= 32; ++y)
                dark += qGray(image.pixel(x, y)) < 250 ? 1 : 0;
        return dark;
    };
    const int without = inkAtLine(sketch);
    sketch.dimensions = {dimension};
    QVERIFY(inkAtLine(sketch) > without);
    // It belongs to what has to fit on the page.
    const QRectF bounds = drawing::boundsOf(sketch, analyse(sketch));
    for (const QPointF& p : drawing::dimensionLine(measure(dimension, sketch, analyse(sketch).layout)))
        QVERIFY(bounds.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(p));
}

void TestCanvasDimensions::textSaysItInEitherUnit()
{
    MeasuredDimension measured;
    measured.kind = DimensionKind::along;
    measured.value = 254;
    QCOMPARE(drawing::dimensionText(measured, UnitSystem::metric), QStringLiteral("254 mm"));
    QCOMPARE(drawing::dimensionText(measured, UnitSystem::inch), QStringLiteral("10 in"));
    measured.kind = DimensionKind::slope;
    measured.value = 0.02;
    measured.angle_deg = 1.1458; // atan 0.02
    const QString slope = drawing::dimensionText(measured, UnitSystem::metric);
    QVERIFY2(slope.startsWith(QStringLiteral("1 in 50 (1.1")), qPrintable(slope));
    measured.value = 0;
    QCOMPARE(drawing::dimensionText(measured, UnitSystem::metric), QStringLiteral("level"));
    measured.value = HUGE_VAL;
    QCOMPARE(drawing::dimensionText(measured, UnitSystem::metric), QStringLiteral("plumb"));
}

QTEST_MAIN(TestCanvasDimensions)
#include "test_canvas_dimensions.moc"
