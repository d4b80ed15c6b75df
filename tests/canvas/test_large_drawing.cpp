#include "tests/near.h"
#include "tests/sound_loop.h"

#include "app/canvas/hose_places.h"
#include "app/drawing/balloon_places.h"
#include "app/drawing/crossings.h"
#include "app/drawing/hose_layer.h"
#include "app/drawing/hoses_near.h"
#include "app/drawing/line_field.h"
#include "app/drawing/thin_line.h"

#include <QImage>
#include <QLineF>
#include <QPainter>
#include <QtTest>

#include <algorithm>
#include <cmath>
#include <random>

using namespace siphonwright;
using namespace siphonwright::drawing;

class TestLargeDrawing : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aThinnedLineKeepsWithinReachOfEveryPoint();
    void aStraightLineIsThinnedToItsEnds();
    void aFieldOfLinesFindsWhatLookingThroughAllFinds();
    void thousandsOfFindingsShareAFewBalloons();
    void findingsOutOfSightGetNoBalloonWhereHundredsCrowd();
    void balloonsFindTheHosesNearThemAsLookingThroughAllDoes();
    void placesThatAreKeptAreThoseOfTheHosesAsTheyLie();
    void hosesFromTheLayerLookAsIfDrawnAnew_data();
    void hosesFromTheLayerLookAsIfDrawnAnew();
    void aHoseThatIsDraggedStaysBehindTheNearerOnesOfTheLayer();
    void everyToothOfALongZigzagCrossesTheHoseBehindIt();
    void hosesDoNotComeFromTheLayerInAnEndView();
};

namespace {

double distanceTo(const QPolygonF& line, QPointF p)
{
    double least = HUGE_VAL;
    for (qsizetype i = 0; i + 1 < line.size(); ++i) {
        const QPointF way = line[i + 1] - line[i];
        const double run = QPointF::dotProduct(way, way);
        const double t = run > 0 ? std::clamp(QPointF::dotProduct(p - line[i], way) / run, 0.0, 1.0) : 0;
        least = std::min(least, QLineF(p, line[i] + way * t).length());
    }
    return least;
}

Analysis withFindings(std::size_t count)
{
    Analysis analysis = analyse(test::soundLoop());
    analysis.findings.clear();
    for (std::size_t i = 0; i < count; ++i) {
        Finding finding;
        finding.at = Vec3{double(i % 100) * 20, 0, double(i / 100) * 20};
        analysis.findings.push_back(finding);
    }
    return analysis;
}

QImage painted(const Sketch& sketch, const Analysis& analysis, HoseLayer* layer, const Projection& view = {},
               double pixel_ratio = 1)
{
    QImage image(QSize(900, 700) * pixel_ratio, QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(pixel_ratio);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(120, 520);
    painter.scale(0.5, 0.5);
    Style style;
    style.view = view;
    style.scale = 0.5 * 25.4 / 96;
    paintElevation(painter, sketch, analysis, style, layer);
    return image;
}

int differentPixels(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > 16 ? 1 : 0;
    return count;
}

Hose open(const Id& id, const std::vector<Vec3>& through)
{
    Hose hose;
    hose.id = id;
    hose.bore_mm.value = 20;
    hose.wall_mm = 5;
    hose.from.open_at = through.front();
    hose.to.open_at = through.back();
    for (std::size_t i = 1; i + 1 < through.size(); ++i)
        hose.points.push_back({through[i], 0, BendKind::hose});
    return hose;
}

} // namespace

void TestLargeDrawing::aThinnedLineKeepsWithinReachOfEveryPoint()
{
    std::mt19937 random(3);
    std::uniform_real_distribution<double> turn(-0.6, 0.6);
    for (const double off : {0.1, 0.5, 3.0}) {
        QPolygonF line{{0, 0}};
        double heading = 0;
        for (int i = 0; i < 3000; ++i) {
            heading += turn(random);
            line << line.back() + QPointF(std::cos(heading), std::sin(heading)) * 0.7;
        }
        const QPolygonF thin = thinned(line, off);
        QVERIFY(thin.size() < line.size());
        QCOMPARE(thin.front(), line.front());
        QCOMPARE(thin.back(), line.back());
        for (const QPointF& p : line)
            QVERIFY(distanceTo(thin, p) <= 2 * off);
    }
}

void TestLargeDrawing::aStraightLineIsThinnedToItsEnds()
{
    QPolygonF line;
    for (int i = 0; i < 500; ++i)
        line << QPointF(2.0 * i, 1.0 * i);
    QCOMPARE(thinned(line, 0.1).size(), 2);
}

void TestLargeDrawing::aFieldOfLinesFindsWhatLookingThroughAllFinds()
{
    std::mt19937 random(5);
    std::uniform_real_distribution<double> place(-500, 500);
    std::uniform_real_distribution<double> size(0, 12); // over and under the cell of 8
    LineField field(8);
    std::vector<QRectF> all;
    for (int i = 0; i < 3000; ++i) {
        all.emplace_back(place(random), place(random), size(random), size(random));
        field.add(all.back());
    }
    int hits = 0;
    for (int i = 0; i < 500; ++i) {
        const QRectF area(place(random), place(random), 2 * size(random), size(random));
        bool hit = false;
        double covered = 0;
        for (const QRectF& one : all) {
            hit = hit || one.intersects(area);
            covered += one.intersected(area).width() * one.intersected(area).height();
        }
        QCOMPARE(field.hits(area), hit);
        VERIFY_NEAR(field.covered(area), covered, 1e-9);
        hits += hit ? 1 : 0;
    }
    QVERIFY(hits > 50 && hits < 450);
}

void TestLargeDrawing::thousandsOfFindingsShareAFewBalloons()
{
    const Analysis analysis = withFindings(5000);
    Style style;
    style.highlighted_finding = 3217;
    const Balloons balloons = balloonsOf(analysis, style);
    std::size_t own = 0;
    std::size_t stood_for = 0;
    for (std::size_t i = 0; i < balloons.places.size(); ++i)
        if (!std::isnan(balloons.places[i].x())) {
            ++own;
            stood_for += 1 + std::size_t(balloons.more[i]);
        }
    QVERIFY(own > 1 && own <= most_balloons);
    QCOMPARE(stood_for, std::size_t(5000));
    QVERIFY(!std::isnan(balloons.places[3217].x()));
}

void TestLargeDrawing::findingsOutOfSightGetNoBalloonWhereHundredsCrowd()
{
    const Analysis analysis = withFindings(5000);
    const Balloons balloons = balloonsOf(analysis, {}, QRectF(-5, -65, 50, 70)); // x 0..40, z 0..60
    for (std::size_t i = 0; i < balloons.places.size(); ++i) {
        const bool seen = i % 100 < 3 && i / 100 < 4;
        QCOMPARE(!std::isnan(balloons.places[i].x()), seen);
        QCOMPARE(balloons.more[i], 0);
    }
}

void TestLargeDrawing::balloonsFindTheHosesNearThemAsLookingThroughAllDoes()
{
    constexpr double radius_mm = 15;
    std::mt19937 random(23);
    std::uniform_real_distribution<double> place(0, 1000);
    std::uniform_real_distribution<double> bend(20, 200);
    Sketch sketch;
    for (int i = 0; i < 12; ++i) {
        std::vector<Vec3> through;
        for (int k = 0; k < 5; ++k) {
            through.emplace_back();
            for (double* at : {&through.back().x, &through.back().y, &through.back().z})
                *at = place(random);
        }
        Hose hose = open("hose-" + std::to_string(i), through);
        for (RoutePoint& point : hose.points)
            point.radius_mm = bend(random);
        sketch.hoses.push_back(Shared<Hose>(std::move(hose)));
    }
    const Layout layout = resolve(sketch, plumbOf(sketch));
    for (const Projection& view : {Projection(), Projection(Projection::From::from_left)}) {
        const HosesNear hoses(layout, view, radius_mm);
        int touching = 0;
        for (int i = 0; i < 3000; ++i) {
            const double right =
                view.isEnd() ? -place(random) : place(random); // seen from the left y runs left
            const QPointF at(right, -place(random));
            double expected = 0;
            for (const ResolvedHose& hose : layout.hoses)
                expected += std::max(0.0, 1.6 * radius_mm + hose->outsideDiameter() / 2 -
                                              nearestSeen(view, hose->path.line, fromPage(at)).distance_mm);
            const double whole = hoses.overlap(at);
            VERIFY_NEAR(whole, expected, 0.05 * radius_mm); // very short pieces count as points
            QVERIFY(hoses.overlap(at, whole / 2) >= whole / 2);
            QCOMPARE(hoses.overlap(at, whole + 1), whole);
            touching += expected > 0 ? 1 : 0;
        }
        QVERIFY(touching > 300);
    }
}

void TestLargeDrawing::placesThatAreKeptAreThoseOfTheHosesAsTheyLie()
{
    Sketch sketch;
    for (int i = 0; i < 5; ++i)
        sketch.hoses.push_back(Shared<Hose>(
            open("hose-" + std::to_string(i), {{0, 0, 100.0 * i}, {500, 0, 100.0 * i + 30}, {900, 0, 400}})));
    const QRectF area(0, 0, 600, 400);
    Viewport viewport;
    viewport.fit(QRectF(-50, -450, 1000, 500), area);
    HosePlaces kept;
    for (int step = 0; step < 6; ++step) {
        if (step == 4)
            viewport.pan({30, -20});
        sketch.hoses[2].edit([&](Hose& hose) { hose.points[0].at.z += 40; });
        if (step == 5)
            sketch.hoses.erase(sketch.hoses.begin());
        const Layout layout = resolve(sketch, plumbOf(sketch));
        const QRectF box(40.0 * step, 30, 300, 200);
        HosePlaces fresh;
        const std::vector<QPointF> anew = fresh.within(box, layout, viewport);
        QVERIFY(anew.size() > 20);
        std::vector<QPointF> expected;
        for (const ResolvedHose& hose : layout.hoses) {
            const Centreline& line = hose->path.line;
            const double step_mm = std::max(HosePlaces::step_px / viewport.zoom(), line.length() / 1000);
            for (int i = 0; i * step_mm < line.length(); ++i)
                if (const QPointF at = viewport.toScreen(line.at(i * step_mm)); box.contains(at))
                    expected.push_back(at);
        }
        QCOMPARE(anew, expected);
        QCOMPARE(kept.within(box, layout, viewport), anew);
    }
}

void TestLargeDrawing::hosesFromTheLayerLookAsIfDrawnAnew_data()
{
    QTest::addColumn<double>("pixel_ratio");
    for (const double ratio : {1.0, 1.25, 1.5, 2.0})
        QTest::addRow("%g device pixels to a pixel", ratio) << ratio;
}

void TestLargeDrawing::hosesFromTheLayerLookAsIfDrawnAnew()
{
    QFETCH(double, pixel_ratio);
    Sketch sketch = test::soundLoop();
    HoseLayer layer(0);
    painted(sketch, analyse(sketch), &layer, {}, pixel_ratio);
    for (int step = 0; step < 3; ++step) {
        sketch.hoses[1].edit([](Hose& hose) { hose.points.front().at.x += 15; });
        const Analysis analysis = analyse(sketch);
        const QImage anew = painted(sketch, analysis, nullptr, {}, pixel_ratio);
        const QImage layered = painted(sketch, analysis, &layer, {}, pixel_ratio);
        // Edges are rounded twice, no more.
        QVERIFY2(differentPixels(anew, layered) < 200 * pixel_ratio * pixel_ratio,
                 qPrintable(QString::number(differentPixels(anew, layered))));
        const Sketch without = [&] {
            Sketch less = sketch;
            less.hoses.pop_back();
            return less;
        }();
        QVERIFY(differentPixels(painted(without, analyse(without), nullptr, {}, pixel_ratio), layered) >
                2000);
    }
}

void TestLargeDrawing::aHoseThatIsDraggedStaysBehindTheNearerOnesOfTheLayer()
{
    Sketch sketch;
    sketch.hoses.push_back(Shared<Hose>(open("near", {{0, 0, 200}, {1000, 0, 200}})));
    sketch.hoses.push_back(Shared<Hose>(open("far", {{300, 200, -100}, {300, 200, 100}, {320, 200, 500}})));
    HoseLayer layer(0);
    painted(sketch, analyse(sketch), &layer);
    for (int step = 0; step < 2; ++step) {
        sketch.hoses[1].edit([](Hose& hose) { hose.points.front().at.x += 15; });
        const Analysis analysis = analyse(sketch);
        const int different =
            differentPixels(painted(sketch, analysis, nullptr), painted(sketch, analysis, &layer));
        QVERIFY2(different < 30, qPrintable(QString::number(different)));
    }
    // Were it in front, the crossing itself would tell: 30 by 30 mm are 225 pixels.
    Sketch in_front = sketch;
    in_front.hoses[1].edit([](Hose& hose) {
        hose.from.open_at.y = hose.to.open_at.y = -200;
        hose.points.front().at.y = -200;
    });
    QVERIFY(differentPixels(painted(in_front, analyse(in_front), nullptr),
                            painted(sketch, analyse(sketch), &layer)) > 60);
}

void TestLargeDrawing::everyToothOfALongZigzagCrossesTheHoseBehindIt()
{
    constexpr int teeth = 400;
    std::vector<Vec3> zigzag;
    for (int i = 0; i <= teeth; ++i)
        zigzag.push_back({20.0 * i, 0, i % 2 == 0 ? -50.0 : 50.0});
    Sketch sketch;
    sketch.hoses.push_back(Shared<Hose>(open("zigzag", zigzag)));
    sketch.hoses.push_back(Shared<Hose>(open("behind", {{-100, 100, 0}, {20.0 * teeth + 100, 100, 0}})));
    SeenRuns runs;
    const Layout layout = resolve(sketch, plumbOf(sketch));
    QCOMPARE(crossingsOf(layout, {}, 2, runs, nullptr).size(), std::size_t(teeth));
    const auto of_its_own = [](std::size_t i, std::size_t k) { return i == k; };
    QCOMPARE(crossingsOf(layout, {}, 2, runs, of_its_own).size(), std::size_t(0));
    // Runs that were kept follow the hoses: half of the teeth lie beyond the shortened one.
    sketch.hoses[1].edit([](Hose& hose) { hose.to.open_at.x = 10.0 * teeth; });
    const auto fewer = crossingsOf(resolve(sketch, plumbOf(sketch)), {}, 2, runs, nullptr);
    QCOMPARE(fewer.size(), std::size_t(teeth / 2));
    for (const Crossing& one : fewer)
        QCOMPARE(one.near_hose, std::size_t(0));
}

void TestLargeDrawing::hosesDoNotComeFromTheLayerInAnEndView()
{
    const Projection from_left(Projection::From::from_left);
    Sketch sketch = test::soundLoop();
    HoseLayer layer(0);
    painted(sketch, analyse(sketch), &layer);
    const Analysis analysis = analyse(sketch);
    QCOMPARE(painted(sketch, analysis, &layer, from_left), painted(sketch, analysis, nullptr, from_left));
}

QTEST_MAIN(TestLargeDrawing)
#include "test_large_drawing.moc"
