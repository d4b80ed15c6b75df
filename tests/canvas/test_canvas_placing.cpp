#include "tests/canvas/bench.h"

#include "core/sketch/templates.h"

using namespace siphonwright;
using namespace siphonwright::test;

class TestCanvasPlacing : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aPortSitsOnTheJacketAndPointsOut_data();
    void aPortSitsOnTheJacketAndPointsOut();
    void aPortTakesTheRoleThatIsMissing();
    void aHeaterComesFromTheChosenTemplate();
    void valvesBleedsAndClipsGoOntoAHose();
    void nothingGoesOntoAHoseThatIsNotThere();
    void anAreaIsDrawnCornerByCorner();
    void aClickOnTheFirstCornerClosesAnArea();
    void aTankBringsItsMarks();
    void aJobIsDrawnFromAnEmptySheet();
};

void TestCanvasPlacing::aPortSitsOnTheJacketAndPointsOut_data()
{
    QTest::addColumn<double>("x");
    QTest::addColumn<double>("z");
    QTest::addColumn<double>("at_x");
    QTest::addColumn<double>("at_z");
    QTest::addColumn<double>("azimuth_deg");
    QTest::addColumn<double>("elevation_deg");
    QTest::newRow("underside") << 300.0 << 405.0 << 300.0 << 400.0 << 0.0 << -90.0;
    QTest::newRow("left") << -4.0 << 600.0 << 0.0 << 600.0 << 180.0 << 0.0;
    QTest::newRow("right") << 896.0 << 600.0 << 900.0 << 600.0 << 0.0 << 0.0;
    QTest::newRow("top") << 300.0 << 796.0 << 300.0 << 800.0 << 0.0 << 90.0;
}

void TestCanvasPlacing::aPortSitsOnTheJacketAndPointsOut()
{
    QFETCH(double, x);
    QFETCH(double, z);
    QFETCH(double, at_x);
    QFETCH(double, at_z);
    QFETCH(double, azimuth_deg);
    QFETCH(double, elevation_deg);
    Bench bench;
    bench.view.setTool(ToolKind::port);
    bench.click({x, z});
    QCOMPARE(bench.sketch().ports.size(), std::size_t(3));
    const Port& port = bench.sketch().ports.back();
    VERIFY_NEAR(port.position.x, at_x, 1e-6);
    VERIFY_NEAR(port.position.z, at_z, 1e-6);
    const Vec3 axis = direction(port.axis.azimuth_deg, port.axis.elevation_deg);
    const Vec3 expected = direction(azimuth_deg, elevation_deg);
    VERIFY_NEAR(dot(axis, expected), 1, 1e-9);
    QCOMPARE(port.role, PortRole::spare); // both others are taken
}

void TestCanvasPlacing::aPortTakesTheRoleThatIsMissing()
{
    Sketch sketch = soundLoop();
    sketch.ports.clear();
    sketch.hoses.clear();
    Bench bench(sketch);
    bench.view.setTool(ToolKind::port);
    bench.click({300, 402});
    bench.view.setTool(ToolKind::port);
    bench.click({898, 750});
    QCOMPARE(bench.sketch().ports.at(0).role, PortRole::supply);
    QCOMPARE(bench.sketch().ports.at(1).role, PortRole::return_);
}

void TestCanvasPlacing::aHeaterComesFromTheChosenTemplate()
{
    const HeaterTemplate& chosen = heaterTemplates().back();
    Bench bench;
    bench.view.setHeaterTemplate(chosen.id);
    bench.view.setTool(ToolKind::heater);
    bench.click({600, 100});
    QCOMPARE(bench.sketch().heaters.size(), std::size_t(2));
    const Heater& heater = bench.sketch().heaters.back();
    QCOMPARE(heater.length_mm, chosen.heater.length_mm);
    VERIFY_NEAR(heater.position.x, 600, 10.01);
    VERIFY_NEAR(heater.position.z, 100, 10.01);
    QVERIFY((bench.selection.part() == PartRef{PartKind::heater, heater.id, 0}));
}

void TestCanvasPlacing::valvesBleedsAndClipsGoOntoAHose()
{
    Bench bench;
    bench.view.setTool(ToolKind::bleed);
    bench.click({1030, 460});
    QCOMPARE(bench.hose(return_hose).parts.size(), std::size_t(2));
    QCOMPARE(bench.hose(return_hose).parts[1].kind, InlineKind::bleed);
    VERIFY_NEAR(bench.hose(return_hose).parts[1].along_mm, 200, 1.01); // from the stop at z 260
    bench.view.setTool(ToolKind::valve);
    bench.click({100, 210});
    QCOMPARE(bench.hose(supply_hose).parts.size(), std::size_t(2));
    QCOMPARE(bench.hose(supply_hose).parts[1].kind, InlineKind::isolation_valve);
    VERIFY_NEAR(bench.hose(supply_hose).parts[1].along_mm, 200, 1.01); // from the stop at z 410
    // Half the valve is in the port's hose end: it is moved off it.
    bench.view.setTool(ToolKind::valve);
    bench.click({1030, 262});
    const InlinePart& valve = bench.hose(return_hose).parts[2];
    VERIFY_NEAR(valve.along_mm, valve.length_mm / 2 + bench.hose(return_hose).from.engagement_mm, 1e-9);
    const std::size_t clips = bench.hose(supply_hose).clips_mm.size();
    bench.view.setTool(ToolKind::clip);
    bench.click({600, -40});
    QCOMPARE(bench.hose(supply_hose).clips_mm.size(), clips + 1);
    QCOMPARE(bench.document.undoStack().count(), 4);
}

void TestCanvasPlacing::nothingGoesOntoAHoseThatIsNotThere()
{
    Bench bench;
    bench.view.setTool(ToolKind::valve);
    bench.click({500, 150});
    QVERIFY(bench.sketch() == soundLoop());
    QCOMPARE(bench.view.tool(), ToolKind::valve);
}

void TestCanvasPlacing::anAreaIsDrawnCornerByCorner()
{
    Bench bench;
    bench.view.setTool(ToolKind::area);
    bench.click({300, 100});
    bench.click({500, 100});
    bench.key(Qt::Key_Return);
    QVERIFY(bench.sketch().areas.empty()); // two corners are no area
    bench.click({700, 300});
    bench.key(Qt::Key_Backspace);
    bench.click({500, 250});
    bench.key(Qt::Key_Return);
    QCOMPARE(bench.sketch().areas.size(), std::size_t(1));
    const std::vector<Vec2>& outline = bench.sketch().areas[0]->outline;
    QCOMPARE(outline.size(), std::size_t(3));
    QCOMPARE(outline[0].z, outline[1].z); // level
    QCOMPARE(outline[1].x, outline[2].x); // plumb
}

void TestCanvasPlacing::aClickOnTheFirstCornerClosesAnArea()
{
    Bench bench;
    bench.view.setTool(ToolKind::area);
    for (const Vec2 corner : {Vec2{300, 100}, Vec2{500, 100}, Vec2{500, 250}, Vec2{300, 250}, Vec2{300, 100}})
        bench.click(corner);
    QCOMPARE(bench.sketch().areas.size(), std::size_t(1));
    QCOMPARE(bench.sketch().areas[0]->outline.size(), std::size_t(4));
}

void TestCanvasPlacing::aTankBringsItsMarks()
{
    Sketch sketch = soundLoop();
    sketch.tank.reset();
    Bench bench(sketch);
    bench.view.setTool(ToolKind::tank);
    bench.click({300, 900});
    QVERIFY(bench.sketch().tank);
    QVERIFY(*bench.sketch().tank->cold_min_mm.value < *bench.sketch().tank->hot_mm.value);
    QCOMPARE(bench.sketch().tank->cold_min_mm.source, Source::typical);
    bench.view.setTool(ToolKind::tank);
    bench.click({600, 900});
    VERIFY_NEAR(bench.sketch().tank->position.x, 600, 10.01);
}

void TestCanvasPlacing::aJobIsDrawnFromAnEmptySheet()
{
    Bench bench(Sketch{});
    bench.document.apply(QStringLiteral("Engine"), [](Sketch& s) {
        placeEngine(s, engineTemplates().front(), {0, 0, 500});
    });
    bench.view.zoomToFit();
    bench.view.setTool(ToolKind::heater);
    const double low = bench.document.analysis().layout.jacket->lowest_mm;
    bench.click({bench.sketch().engine->jacket[1].x + 100, low - 420});
    bench.view.zoomToFit();
    const auto stop = [&](const HoseEnd& end) {
        const Vec3 at = attachment(bench.sketch(), end)->stub.back().at;
        return Vec2{at.x, at.z};
    };
    const auto port = [&](PortRole role) {
        HoseEnd end;
        for (const Port& p : bench.sketch().ports)
            if (p.role == role && end.port.empty())
                end.port = p.id;
        return end;
    };
    HoseEnd inlet;
    inlet.heater = bench.sketch().heaters.front().id;
    HoseEnd outlet = inlet;
    outlet.nozzle = NozzleKind::outlet;
    bench.view.setTool(ToolKind::supply_hose);
    bench.click(stop(port(PortRole::supply)));
    bench.click({stop(port(PortRole::supply)).x, stop(inlet).z});
    bench.click(stop(inlet));
    bench.view.setTool(ToolKind::return_hose);
    bench.click(stop(outlet));
    bench.click({stop(outlet).x, stop(port(PortRole::return_)).z - 30});
    bench.click(stop(port(PortRole::return_)));
    QCOMPARE(bench.sketch().hoses.size(), std::size_t(2));
    QVERIFY(!bench.found("hose-open-end"));
    QVERIFY(!bench.found("bend-does-not-fit"));
    for (const Shared<Hose>& hose : bench.sketch().hoses) {
        QVERIFY(hose->from.connected() && hose->to.connected());
        QVERIFY(hose->bore_mm.known());
    }
}

QTEST_MAIN(TestCanvasPlacing)
#include "test_canvas_placing.moc"
