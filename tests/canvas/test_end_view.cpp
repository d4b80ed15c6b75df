#include "tests/canvas/bench.h"

#include "app/drawing/crossings.h"
#include "app/drawing/ink.h"
#include "app/drawing/seen.h"

#include "core/sketch/edits.h"
#include "core/sketch/file.h"

#include <QFile>
#include <QSplitter>

#include <cmath>
#include <numbers>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr Projection side;
constexpr Projection from_left(Projection::From::from_left);
constexpr Projection from_right(Projection::From::from_right);

/// The sound loop seen from its left end: right is -y.
struct EndBench : Bench {
    explicit EndBench(Sketch sketch = soundLoop()) : Bench(std::move(sketch)) { view.setView(from_left); }
};

/// An open hose of 20 mm bore and 5 mm wall, points included in `line`.
Shared<Hose> openHose(const Id& id, const std::vector<Vec3>& line, double radius_mm)
{
    Hose hose;
    hose.id = id;
    hose.from.open_at = line.front();
    hose.to.open_at = line.back();
    hose.bore_mm.value = 20;
    hose.wall_mm = 5;
    for (std::size_t i = 1; i + 1 < line.size(); ++i) {
        RoutePoint point;
        point.at = line[i];
        point.radius_mm = radius_mm;
        hose.points.push_back(point);
    }
    return Shared<Hose>(std::move(hose));
}

Heater lyingHeater(double turn_deg)
{
    Heater heater;
    heater.id = "heater-1";
    heater.length_mm = 300;
    heater.diameter_mm = 100;
    heater.tilt_deg = 90;
    heater.turn_deg = turn_deg;
    return heater;
}

QSizeF sizeSeen(const Heater& heater, const Projection& view)
{
    return drawing::heaterBody(heater, view).boundingRect().size();
}

double lengthOf(const QPolygonF& line)
{
    double sum = 0;
    for (qsizetype i = 1; i < line.size(); ++i)
        sum += std::hypot(line[i].x() - line[i - 1].x(), line[i].y() - line[i - 1].y());
    return sum;
}

Sketch sampleOf(const char* name)
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/") + QLatin1String(name));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const auto read = readSketch(file.readAll().toStdString());
    const Sketch* sketch = std::get_if<Sketch>(&read);
    return sketch ? *sketch : Sketch();
}

} // namespace

class TestEndView : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aRoutePointDraggedInTheEndViewMovesAcrossAndUpAndKeepsX();
    void seenFromTheOtherEndTheSameDragGoesTheOtherWay();
    void anArrowKeyNudgesAcross();
    void aHeaterAPortAndTheTankAreDraggedAcross();
    void theEngineTakesItsJacketsDepthAndItsPortsAlong();
    void aValveSlidesAlongAHoseThatRunsAcross();
    void anEndDroppedInTheEndViewKeepsItsX();
    void aDoubleClickInsertsAPointInSpace();
    void outlinesHaveNoCornersInTheEndView();
    void undoTakesBackADragOfEitherView();
    void theHoseUnderThePointerIsFoundByWhatTheEndViewShows();
    void anAreaWithoutADepthIsNotUnderThePointer();
    void lengthsAreTrueWhicheverViewIsShown();
    void bothViewsShowEveryPlaceAtOneHeight();
    void aLyingHeaterIsACircleFromItsEndAndABoxFromItsSide();
    void theNearerHoseGoesOverTheFartherOne();
    void hosesAtOneDepthCrossWithoutAGap();
    void theSampleWithTwoBanksCrossesUnderTheEngine();
    void viewsKeptLevelHaveOneHeightInOnePlace();
};

void TestEndView::aRoutePointDraggedInTheEndViewMovesAcrossAndUpAndKeepsX()
{
    EndBench bench;
    const Vec3 before = bench.hose(return_hose).points.at(0).at;
    const Vec2 at = from_left.flat(before);
    bench.selection.select({PartKind::hose_point, bench.hose(return_hose).id, 0});
    bench.drag(at, {at.x - 50, at.z + 20}, Qt::AltModifier);
    const Vec3 after = bench.hose(return_hose).points.at(0).at;
    QCOMPARE(after.x, before.x);
    VERIFY_NEAR(after.y, before.y + 50, 1e-6); // left is +y here
    VERIFY_NEAR(after.z, before.z + 20, 1e-6);
    QCOMPARE(bench.document.undoStack().count(), 1);
}

void TestEndView::seenFromTheOtherEndTheSameDragGoesTheOtherWay()
{
    EndBench bench;
    bench.view.setView(from_right);
    const Vec3 before = bench.hose(return_hose).points.at(0).at;
    const Vec2 at = from_right.flat(before);
    bench.selection.select({PartKind::hose_point, bench.hose(return_hose).id, 0});
    bench.drag(at, {at.x - 50, at.z}, Qt::AltModifier);
    VERIFY_NEAR(bench.hose(return_hose).points.at(0).at.y, before.y - 50, 1e-6);
}

void TestEndView::anArrowKeyNudgesAcross()
{
    EndBench bench;
    bench.selection.select({PartKind::heater, "heater-1", 0});
    bench.key(Qt::Key_Right);
    QCOMPARE(bench.sketch().heaters[0].position, (Vec3{1030, -5, 80}));
    bench.key(Qt::Key_Up, Qt::ShiftModifier);
    QCOMPARE(bench.sketch().heaters[0].position, (Vec3{1030, -5, 81}));
}

void TestEndView::aHeaterAPortAndTheTankAreDraggedAcross()
{
    EndBench bench;
    bench.drag({20, 60}, {-80, 60}, Qt::AltModifier); // on the heater's body
    QCOMPARE(bench.sketch().heaters[0].position, (Vec3{1030, 100, 80}));
    const Vec3 port = bench.sketch().ports[1].position;
    bench.selection.select({PartKind::port, bench.sketch().ports[1].id, 0});
    bench.drag(from_left.flat(port), {60, port.z}, Qt::AltModifier);
    QCOMPARE(bench.sketch().ports[1].position.x, port.x);
    VERIFY_NEAR(bench.sketch().ports[1].position.y, -60, 1e-6);
    const Vec3 tank = bench.sketch().tank->position;
    bench.drag({60, tank.z + 20}, {160, tank.z + 20}, Qt::AltModifier);
    QCOMPARE(bench.sketch().tank->position, (Vec3{tank.x, tank.y - 100, tank.z}));
}

void TestEndView::theEngineTakesItsJacketsDepthAndItsPortsAlong()
{
    EndBench bench;
    const double port_y = bench.sketch().ports[0].position.y;
    const std::vector<Vec2> outline = bench.sketch().engine->outline;
    bench.drag({120, 830}, {70, 830}, Qt::AltModifier);        // between jacket and outline
    QCOMPARE(bench.sketch().engine->jacket_y_from_mm, -100.0); // entered as -150, moved by +50
    QCOMPARE(bench.sketch().engine->jacket_y_to_mm, 200.0);
    QCOMPARE(bench.sketch().ports[0].position.y, port_y + 50);
    QCOMPARE(bench.sketch().engine->outline, outline);
}

void TestEndView::aValveSlidesAlongAHoseThatRunsAcross()
{
    Sketch sketch;
    Shared<Hose> hose = openHose("hose-1", {{0, 0, 0}, {0, 600, 60}}, 0);
    InlinePart valve;
    valve.along_mm = 100;
    hose.edit([&](Hose& h) { h.parts.push_back(valve); });
    sketch.hoses.push_back(hose);
    EndBench bench(sketch);
    // The hose is 603 mm long; half of it is at y 300, z 30.
    const Vec3 from = alongHose(*bench.document.analysis().layout.hoses[0].route, 100);
    bench.drag(from_left.flat(from), {-300, 30}, Qt::AltModifier);
    VERIFY_NEAR(bench.hose(0).parts.at(0).along_mm, std::hypot(300.0, 30.0), 1.0);
}

void TestEndView::anEndDroppedInTheEndViewKeepsItsX()
{
    Sketch sketch;
    sketch.hoses.push_back(openHose("hose-1", {{40, 0, 0}, {70, 600, 60}}, 0));
    EndBench bench(sketch);
    bench.drag({-600, 60}, {-500, 160}, Qt::AltModifier);
    QCOMPARE(bench.hose(0).to.open_at.x, 70.0);
    VERIFY_NEAR(bench.hose(0).to.open_at.y, 500, 1e-6);
    VERIFY_NEAR(bench.hose(0).to.open_at.z, 160, 1e-6);
}

void TestEndView::aDoubleClickInsertsAPointInSpace()
{
    Sketch sketch;
    sketch.hoses.push_back(openHose("hose-1", {{0, 0, 0}, {300, 600, 60}}, 0));
    EndBench bench(sketch);
    bench.doubleClick({-200, 20});
    QCOMPARE(bench.hose(0).points.size(), std::size_t(1));
    // A third of the way: {100, 200, 20}, within what a pixel is.
    VERIFY_NEAR(distance(bench.hose(0).points[0].at, {100, 200, 20}), 0, 2);
}

void TestEndView::outlinesHaveNoCornersInTheEndView()
{
    EndBench bench;
    const std::size_t corners = bench.sketch().engine->outline.size();
    bench.doubleClick({140, 830});
    QCOMPARE(bench.sketch().engine->outline.size(), corners);
    QVERIFY((bench.selection.part() == PartRef{PartKind::engine, {}, 0}));
    bench.key(Qt::Key_Return);
    QVERIFY((bench.selection.part() == PartRef{PartKind::engine, {}, 0}));
}

void TestEndView::undoTakesBackADragOfEitherView()
{
    EndBench bench;
    ElevationView elevation(bench.document, bench.selection);
    elevation.resize(1200, 900);
    elevation.show();
    const Sketch before = bench.sketch();
    bench.drag({20, 60}, {-80, 60}, Qt::AltModifier);
    QVERIFY(!(bench.sketch() == before));
    QVERIFY((bench.selection.part() == PartRef{PartKind::heater, "heater-1", 0}));
    QTest::keyClick(&elevation, Qt::Key_Up); // the same part, nudged in the other view
    QCOMPARE(bench.sketch().heaters[0].position, (Vec3{1030, 100, 85}));
    bench.document.undoStack().undo();
    bench.document.undoStack().undo();
    QVERIFY(bench.sketch() == before);
}

void TestEndView::theHoseUnderThePointerIsFoundByWhatTheEndViewShows()
{
    Sketch sketch;
    sketch.hoses.push_back(openHose("hose-1", {{0, 0, 0}, {300, 400, 0}, {300, 400, 500}}, 100));
    EndBench bench(sketch);
    // Half-way round the bend at {282, 377, 29}.
    bench.hover({-376.6, 29.3});
    QCOMPARE(bench.selection.hoverHose(), Id("hose-1"));
    VERIFY_NEAR(bench.selection.hoverAlong(), 400 + 25 * std::numbers::pi, 3);
    bench.hover({-282, 100});
    QCOMPARE(bench.selection.hoverHose(), Id());
    bench.view.setView(side);
    bench.hover({282.4, 29.3});
    QCOMPARE(bench.selection.hoverHose(), Id("hose-1"));
}

void TestEndView::anAreaWithoutADepthIsNotUnderThePointer()
{
    Sketch sketch;
    Area area;
    area.id = "area-1";
    area.outline = {{0, 0}, {100, 0}, {100, 200}, {0, 200}};
    area.y_from_mm = 300;
    area.y_to_mm = 500;
    sketch.areas.push_back(Shared<Area>(area));
    EndBench known(sketch);
    known.click({-400, 100});
    QVERIFY((known.selection.part() == PartRef{PartKind::area, "area-1", 0}));
    sketch.areas[0].edit([](Area& a) { a.y_to_mm.reset(); });
    EndBench unknown(sketch);
    unknown.click({-400, 100});
    QCOMPARE(unknown.selection.part().kind, PartKind::nothing);
}

void TestEndView::lengthsAreTrueWhicheverViewIsShown()
{
    // Two straights of 500 mm less a bend of 100 mm radius: 400 + 157.08 + 400.
    Sketch sketch;
    sketch.hoses.push_back(openHose("hose-1", {{0, 0, 0}, {300, 400, 0}, {300, 400, 500}}, 100));
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Route& route = *layout.hoses[0].route;
    VERIFY_NEAR(route.length_mm, 800 + 50 * std::numbers::pi, 1e-6);
    for (const Projection& view : {side, from_left}) {
        const double seen = lengthOf(drawing::trace(route.path.line, 0, route.path.line.length(), view));
        QVERIFY(seen < route.length_mm - 50);
    }
    // The level straight shows 3/5 of itself from the side, 4/5 from the end.
    VERIFY_NEAR(lengthOf(drawing::trace(route.path.line, 0, 400, side)), 240, 1e-9);
    VERIFY_NEAR(lengthOf(drawing::trace(route.path.line, 0, 400, from_left)), 320, 1e-9);
}

void TestEndView::bothViewsShowEveryPlaceAtOneHeight()
{
    const Sketch sketch = sampleOf("vee-crossing.siphon");
    const Analysis analysis = analyse(sketch);
    QVERIFY(!analysis.layout.hoses.empty());
    for (const ResolvedHose& hose : analysis.layout.hoses) {
        const Centreline& line = hose->path.line;
        const QPolygonF a = drawing::trace(line, 0, line.length(), side);
        const QPolygonF b = drawing::trace(line, 0, line.length(), from_left);
        QCOMPARE(a.size(), b.size());
        for (qsizetype i = 0; i < a.size(); ++i)
            QCOMPARE(a[i].y(), b[i].y());
    }
    const QRectF from_side = drawing::boundsOf(sketch, analysis, side);
    const QRectF from_end = drawing::boundsOf(sketch, analysis, from_left);
    QCOMPARE(from_end.top(), from_side.top());
    QCOMPARE(from_end.bottom(), from_side.bottom());
    const auto jacket = drawing::pageOf(drawing::jacketSeen(*sketch.engine, from_left)).boundingRect();
    QCOMPARE(jacket, QRectF(-320, -580, 640, 280)); // y -320 to 320, z 300 to 580 in the file
}

void TestEndView::aLyingHeaterIsACircleFromItsEndAndABoxFromItsSide()
{
    // Along x: from the end a disc of 100 mm; from the side 300 by 100.
    QVERIFY(std::abs(sizeSeen(lyingHeater(0), from_left).width() - 100) < 0.5);
    QVERIFY(std::abs(sizeSeen(lyingHeater(0), from_left).height() - 100) < 0.5);
    QVERIFY(std::abs(sizeSeen(lyingHeater(0), side).width() - 300) < 0.5);
    // Along y: the other way round.
    QVERIFY(std::abs(sizeSeen(lyingHeater(90), side).width() - 100) < 0.5);
    QVERIFY(std::abs(sizeSeen(lyingHeater(90), from_left).width() - 300) < 0.5);
    // Between: length and diameter both turned by 45 degrees, (300 + 100) sin 45 deg = 282.8.
    QVERIFY(std::abs(sizeSeen(lyingHeater(45), from_left).width() - 282.84) < 0.5);
    QVERIFY(std::abs(sizeSeen(lyingHeater(45), side).width() - 282.84) < 0.5);
    QVERIFY(std::abs(sizeSeen(lyingHeater(45), side).height() - 100) < 0.5);
}

void TestEndView::theNearerHoseGoesOverTheFartherOne()
{
    Sketch sketch;
    sketch.hoses.push_back(openHose("hose-1", {{0, 0, 0}, {400, 0, 0}}, 0));
    sketch.hoses.push_back(openHose("hose-2", {{150, 200, -300}, {150, 200, 300}}, 0));
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const auto from_side = drawing::crossingsOf(layout, side, 2);
    QCOMPARE(from_side.size(), std::size_t(1));
    QCOMPARE(from_side[0].near_hose, std::size_t(0)); // y 0 is nearer than y 200
    // Square to each other: half the other's 30 mm and the gap, on both sides of x 150.
    VERIFY_NEAR(from_side[0].from_mm, 150 - 17, 1e-9);
    VERIFY_NEAR(from_side[0].to_mm, 150 + 17, 1e-9);
    QCOMPARE(drawing::farToNear(layout, side), (std::vector<std::size_t>{1, 0}));
    // From the end they stand 200 mm apart.
    QVERIFY(drawing::crossingsOf(layout, from_left, 2).empty());
    sketch.hoses[1] = openHose("hose-2", {{150, -200, -300}, {150, -200, 300}}, 0);
    const auto other = drawing::crossingsOf(resolve(sketch, plumbOf(sketch)), side, 2);
    QCOMPARE(other.size(), std::size_t(1));
    QCOMPARE(other[0].near_hose, std::size_t(1));
}

void TestEndView::hosesAtOneDepthCrossWithoutAGap()
{
    Sketch sketch;
    sketch.hoses.push_back(openHose("hose-1", {{0, 0, 0}, {400, 0, 0}}, 0));
    sketch.hoses.push_back(openHose("hose-2", {{150, 0, -300}, {150, 0, 300}}, 0));
    QVERIFY(drawing::crossingsOf(resolve(sketch, plumbOf(sketch)), side, 2).empty());
}

void TestEndView::theSampleWithTwoBanksCrossesUnderTheEngine()
{
    const Sketch sketch = sampleOf("vee-crossing.siphon");
    const Layout layout = resolve(sketch, plumbOf(sketch));
    // The supply goes from y -320 to y 430 under the engine: most of its way is seen from the end alone.
    const Centreline& supply = layout.hoses.at(0)->path.line;
    const QRectF from_end = drawing::trace(supply, 0, supply.length(), from_left).boundingRect();
    QVERIFY(from_end.width() > 850);
    QCOMPARE(drawing::endSeen(*sketch.engine, from_left), drawing::EndSeen::front);
    QCOMPARE(drawing::endSeen(*sketch.engine, from_right), drawing::EndSeen::rear);
    // Banks: the outline is as wide as the jacket is deep, and as high as the side outline.
    const QRectF banks = drawing::pageOf(drawing::engineSeen(*sketch.engine, from_left)).boundingRect();
    QCOMPARE(banks, QRectF(-320, -760, 640, 1000));
}

void TestEndView::viewsKeptLevelHaveOneHeightInOnePlace()
{
    Document document;
    Selection selection;
    document.reset(sampleOf("vee-crossing.siphon"));
    QSplitter both;
    auto* elevation = new ElevationView(document, selection, &both);
    auto* end = new ElevationView(document, selection, &both, from_left);
    both.addWidget(elevation);
    both.addWidget(end);
    both.resize(1200, 700);
    elevation->setPartner(end);
    both.show();
    elevation->setLevelled(true);
    const auto apart = [&](double z) {
        return std::abs(elevation->toScreen({0, z}).y() - end->toScreen({0, z}).y());
    };
    VERIFY_NEAR(apart(500), 0, 1e-6);
    // Both fit.
    const QRectF drawn = drawing::boundsOf(document.sketch(), document.analysis(), from_left);
    QVERIFY(end->toScreen({drawn.left(), 0}).x() > 0);
    QVERIFY(end->toScreen({drawn.right(), 0}).x() < end->width());
    elevation->zoomIn();
    QTRY_VERIFY(apart(500) < 1e-6 && apart(-500) < 1e-6);
    end->zoomOut();
    end->zoomOut();
    QTRY_VERIFY(apart(500) < 1e-6 && apart(-500) < 1e-6);
    elevation->setLevelled(false);
    end->zoomIn();
    QTest::qWait(50);
    QVERIFY(std::abs(end->zoom() - elevation->zoom()) > 1e-6);
}

QTEST_MAIN(TestEndView)
#include "test_end_view.moc"
