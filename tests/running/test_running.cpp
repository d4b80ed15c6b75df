#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/physics/heat_loss.h"
#include "core/running/loop_figures.h"
#include "core/running/running.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <functional>
#include <string>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Layout layoutOf(const Sketch& sketch)
{
    return resolve(sketch, plumbOf(sketch));
}

Running runningOf(const Sketch& sketch)
{
    return runSteady(sketch, layoutOf(sketch), Assumptions(sketch));
}

constexpr double pi = 3.14159265358979323846;
constexpr double smooth_m = 0.005e-3; // the assumed roughness of hoses

/// A straight or arc of the sound loop's hoses: 19 mm bore.
LoopElement piece(double length_mm, double rise_mm)
{
    LoopElement out;
    out.length_m = length_mm / 1000;
    out.rise_m = rise_mm / 1000;
    out.bore_m = 0.019;
    out.losses = {Loss::wall(out.length_m, out.bore_m, smooth_m)};
    return out;
}

/// Let a piece have another loss.
LoopElement with(LoopElement element, const Loss& loss)
{
    element.losses.push_back(loss);
    return element;
}

/// One bend of 90 degrees on 150 mm: its arc.
constexpr double arc_mm = 150 * pi / 2;

/// The return of the sound loop by hand: outlet opening (1030, 220) up over a stub of 40 mm and hose to
/// z 690, by a bend on 150 mm to the left, then slanting to (830, 700) and its port's opening at (800, 700).
/// Its angle is not quite 90 degrees: from (1030, 690) to (830, 700).
std::vector<LoopElement> returnByHand()
{
    const double slant = std::hypot(200, 10);
    const double turn = pi / 2 - std::atan2(10, 200); // from up to left and a little up
    const double tangent = 150 * std::tan(turn / 2);
    const double up = 690 - 260 - tangent; // hose from z 260, where the stub ends
    const double across = slant - tangent;
    LoopElement stub = with(piece(40, 40), Loss::entrance(0.019));
    LoopElement rising = with(piece(up, up), Loss::hoseEnd(0.019, 0.015, 0.030));
    LoopElement bend = piece(150 * turn, tangent + tangent * 10 / slant);
    bend = with(bend, Loss::hoseBend(turn, 0.150, 0.019));
    bend = with(bend, Loss::ballValve(0.019)); // 470 mm along the hose, which is in the bend
    LoopElement level = with(piece(across, across * 10 / slant), Loss::hoseEnd(0.019, 0.015, 0.030));
    // The port's stub is level: a corner of so few degrees loses in proportion to an elbow of 45.
    const double askew = std::atan2(10, 200) / (pi / 4);
    LoopElement port = with(piece(30, 0), Loss::exit(0.019));
    port = with(port, Loss::twoK(500 * askew, 0.20 * askew, 0.019));
    return {stub, rising, bend, level, port};
}

/// The supply by hand: port (100, 440) down over a stub of 30 mm and hose to z -40, by a bend of 90 degrees
/// on 150 mm to the right, level to (960, -40), stub to the inlet opening (990, -40).
std::vector<LoopElement> supplyByHand()
{
    const double down = 410 - (-40) - 150;
    LoopElement stub = with(piece(30, -30), Loss::entrance(0.019));
    LoopElement falling = with(piece(down, -down), Loss::hoseEnd(0.019, 0.015, 0.030));
    falling = with(falling, Loss::ballValve(0.019));
    LoopElement bend = with(piece(arc_mm, -150), Loss::hoseBend(pi / 2, 0.150, 0.019));
    LoopElement level = with(piece(960 - 250, 0), Loss::hoseEnd(0.019, 0.015, 0.030));
    LoopElement nozzle = with(piece(30, 0), Loss::exit(0.019));
    return {stub, falling, bend, level, nozzle};
}

/// The whole loop by hand at a block of 40 degC. Air at -15 degC, wind 2 m/s of which hoses feel 0.4.
Loop loopByHand()
{
    Surroundings air;
    air.air_degC = -15;
    air.wind_m_per_s = 2 * wind_share_at_hose;
    HoseWall wall;
    wall.bore_mm = 19;
    wall.wall_mm = 4;
    const double per_metre = hoseLoss(wall, 45, 70, air)->conductance_W_per_m_K;
    std::vector<LoopElement> back = returnByHand();
    std::vector<LoopElement> supply = supplyByHand();
    for (auto* hose : {&back, &supply})
        for (LoopElement& element : *hose)
            element.heat = Heat::toAir(per_metre, element.length_m, -15);
    LoopElement chamber; // inlet (990, -40), outlet (1030, 220); body 90 by 300, bore 80 mm
    chamber.length_m = std::hypot(40, 260) / 1000;
    chamber.rise_m = 0.260;
    chamber.bore_m = 0.080;
    chamber.share_at_outlet = default_share_at_outlet;
    chamber.heat = Heat::toAir(blockFilm_W_per_m2_K(0.8) * pi * 0.090 * 0.300, -15);
    chamber.heat.power_W = 1500;
    LoopElement jacket; // ports 700 mm apart along and 260 mm in height, jacket 900 by 300 by 400
    jacket.length_m = std::hypot(700, 260) / 1000;
    jacket.rise_m = -(700 - 440) / 1000.0;
    jacket.bore_m = 0.030;
    const double diagonal = std::sqrt(900.0 * 900 + 300 * 300 + 400 * 400);
    const double swept = sweptShare(std::hypot(700, 260), diagonal);
    jacket.heat = Heat::toBlock(jacketExchange_W_per_K(30, swept), 40);
    Loop loop;
    loop.elements = {chamber};
    loop.elements.insert(loop.elements.end(), back.begin(), back.end());
    loop.elements.push_back(jacket);
    loop.elements.insert(loop.elements.end(), supply.begin(), supply.end());
    return loop;
}

} // namespace

class TestRunning : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aDrawnLoopFlowsLikeTheSameLoopListedByHand();
    void aDrawnLoopClosesOnItself_data();
    void aDrawnLoopClosesOnItself();
    void everyLossBelongsToAPartWithAName();
    void sharesOfPartsMakeUpAll();
    void aClosedValveClosesTheLoop();
    void whatIsMissingIsNamed_data();
    void whatIsMissingIsNamed();
    void powerGoesWithTheSquareOfVoltage();
    void heatersOnOneEngineShareIt();
    void aRunBeforeOnlySavesTime();
    void tablesKeepNoMoreThanTheLoopsHave();
};

void TestRunning::aDrawnLoopFlowsLikeTheSameLoopListedByHand()
{
    const Sketch sketch = soundLoop();
    const Running running = runningOf(sketch);
    QCOMPARE(running.loops.size(), std::size_t{1});
    QVERIFY2(running.loops[0].missing.empty(), running.loops[0].missing.c_str());
    const Circulation& drawn = running.loops[0].circulation;
    QCOMPARE(drawn.status, CirculationStatus::circulates);
    const CoolantOf coolant = coolantOf(sketch, Assumptions());
    CirculationOptions options;
    options.boiling_degC = *boilingPoint_degC(sketch, 850 - 220);
    const Circulation listed = steadyCirculation(loopByHand(), *coolant.fluid, options);
    QCOMPARE(listed.status, CirculationStatus::circulates);
    VERIFY_NEAR(drawn.flow_kg_per_s / listed.flow_kg_per_s, 1, 1e-9);
    VERIFY_NEAR(drawn.heater_outlet_degC, listed.heater_outlet_degC, 1e-7);
    VERIFY_NEAR(drawn.drive_mm, listed.drive_mm, 1e-7);
}

void TestRunning::aDrawnLoopClosesOnItself_data()
{
    QTest::addColumn<double>("mount_deg");
    QTest::addColumn<double>("lean_deg");
    QTest::newRow("upright") << 0.0 << 0.0;
    QTest::newRow("mounted sloping") << 4.0 << 0.0;
    QTest::newRow("leaning too") << -3.0 << 12.0;
}

void TestRunning::aDrawnLoopClosesOnItself()
{
    QFETCH(const double, mount_deg);
    QFETCH(const double, lean_deg);
    Sketch sketch = soundLoop();
    sketch.engine->mount_angle_deg = mount_deg;
    sketch.engine->lean_deg = lean_deg;
    const Layout layout = layoutOf(sketch);
    const Running running = runSteady(sketch, layout, Assumptions(sketch));
    const Circuit& circuit = running.loops.at(0).circuit;
    double rise_m = 0;
    double hoses_m = 0;
    for (const LoopElement& element : circuit.loop(1500, 40).elements)
        rise_m += element.rise_m;
    VERIFY_NEAR(rise_m, 0, 1e-12);
    for (const auto* hose : {&circuit.return_hose, &circuit.supply_hose})
        for (const LoopElement& element : *hose)
            hoses_m += element.length_m;
    const double drawn_mm = layout.hoses[0]->path.line.length() + layout.hoses[1]->path.line.length();
    VERIFY_NEAR(hoses_m * 1000, drawn_mm, 1e-9);
    // Jacket: from the return port's height down to the supply port's, along plumb.
    const double fall_mm =
        layout.plumb.height(sketch.ports[0].position) - layout.plumb.height(sketch.ports[1].position);
    VERIFY_NEAR(circuit.jacket[0].rise_m * 1000, fall_mm, 1e-6);
}

void TestRunning::everyLossBelongsToAPartWithAName()
{
    Sketch sketch = soundLoop();
    sketch.hoses[return_hose].edit([](Hose& h) {
        h.name = "Return";
        InlinePart reducer = h.parts[0];
        reducer.kind = InlineKind::reducer;
        reducer.bore_mm = 16;
        reducer.along_mm = 500;
        h.parts.push_back(reducer);
    });
    const Running running = runningOf(sketch);
    const LoopRun& run = running.loops.at(0);
    QVERIFY(!run.circuit.parts.empty());
    for (const CircuitPart& part : run.circuit.parts) {
        QVERIFY(!part.name.empty());
        QCOMPARE(std::count_if(run.circuit.parts.begin(), run.circuit.parts.end(),
                               [&](const CircuitPart& other) { return other.name == part.name; }),
                 std::ptrdiff_t{1});
    }
    for (const LoopElement& element : run.circuit.loop(1500, 40).elements)
        for (const Loss& loss : element.losses)
            QVERIFY(loss.part >= 0 && static_cast<std::size_t>(loss.part) < run.circuit.parts.size());
    const auto named = [&](const char* name) {
        return std::any_of(run.circuit.parts.begin(), run.circuit.parts.end(), [&](const CircuitPart& part) {
            return part.name.find(name) != std::string::npos;
        });
    };
    for (const char* name : {"the isolation valve in", "the reducer in", "the hose end at the start of",
                             "the hose end at the end of", "Return"})
        QVERIFY2(named(name), name);
}

void TestRunning::sharesOfPartsMakeUpAll()
{
    const Running running = runningOf(soundLoop());
    double sum = 0;
    for (const NamedLoss& loss : largestLosses(running.loops.at(0), 100))
        sum += loss.share;
    VERIFY_NEAR(sum, 1, 1e-12);
}

void TestRunning::aClosedValveClosesTheLoop()
{
    for (const std::size_t hose : {supply_hose, return_hose}) {
        Sketch sketch = soundLoop();
        sketch.hoses[hose].edit([](Hose& h) { h.parts[0].open = false; });
        const Running running = runningOf(sketch);
        QVERIFY(running.loops.at(0).missing.empty());
        QCOMPARE(running.loops[0].circulation.status, CirculationStatus::closed);
        QCOMPARE(running.loops[0].circulation.flow_kg_per_s, 0.0);
        QVERIFY(running.loops[0].circulation.drive_mm > 0);
    }
    Sketch sketch = soundLoop();
    sketch.ports[1].kind = PortKind::cabin_line;
    sketch.ports[1].cabin_line_open = false;
    QCOMPARE(runningOf(sketch).loops.at(0).circulation.status, CirculationStatus::closed);
}

using Change = std::function<void(Sketch&)>;
struct Missing {
    Change leave_out;
    std::string named;
};

void TestRunning::whatIsMissingIsNamed_data()
{
    QTest::addColumn<int>("index");
    int index = 0;
    for (const char* name : {"power", "bore", "kind of antifreeze", "share of antifreeze",
                             "coolant in the engine", "a hose", "too much antifreeze"})
        QTest::newRow(name) << index++;
}

void TestRunning::whatIsMissingIsNamed()
{
    QFETCH(const int, index);
    const std::vector<Missing> all = {
        {[](Sketch& s) { s.heaters[0].power_W = {}; }, "the power of Heater heater-1"},
        {[](Sketch& s) { s.hoses[supply_hose].edit([](Hose& h) { h.bore_mm = {}; }); },
         "the bore of Supply hose hose-1"},
        {[](Sketch& s) { s.coolant.glycol = Glycol::unknown; }, "the kind of antifreeze"},
        {[](Sketch& s) { s.coolant.volume_percent = {}; }, "the share of antifreeze"},
        {[](Sketch& s) {
             s.engine->coolant_volume_l = {};
             s.engine->displacement_l = {};
         },
         "coolant volume nor its displacement"},
        {[](Sketch& s) { s.hoses.pop_back(); }, "the loop of Heater heater-1 is not closed"},
        {[](Sketch& s) { s.coolant.volume_percent.value = 61; }, "up to 60 %"},
    };
    const Missing& one = all.at(static_cast<std::size_t>(index));
    Sketch sketch = soundLoop();
    one.leave_out(sketch);
    const Running running = runningOf(sketch);
    QCOMPARE(running.loops.size(), std::size_t{1});
    QVERIFY2(running.loops[0].missing.find(one.named) != std::string::npos, running.loops[0].missing.c_str());
    const EngineWarmUp warm = runWarmUp(sketch, layoutOf(sketch), running, Assumptions(sketch));
    QCOMPARE(warm.missing, running.loops[0].missing);
    QVERIFY(!warm.inputs && warm.result.loops.empty());
}

void TestRunning::powerGoesWithTheSquareOfVoltage()
{
    Heater heater;
    QVERIFY(!actualPower_W(heater));
    heater.power_W.value = 1500;
    QCOMPARE(*actualPower_W(heater), 1500.0);
    heater.rated_V.value = 240;
    QCOMPARE(*actualPower_W(heater), 1500.0);
    heater.actual_V.value = 208; // 1500 (208/240)^2 = 1126.67 W
    VERIFY_NEAR(*actualPower_W(heater), 1126.6667, 1e-4);
}

/// The sound loop with a second heater on ports beside the first's.
Sketch twoHeaters()
{
    Sketch s = soundLoop();
    for (std::size_t i = 0; i < 2; ++i) {
        s.ports.push_back(s.ports[i]);
        s.ports.back().id = "port-" + std::to_string(3 + i);
        s.ports.back().position.y = 100;
    }
    s.heaters.push_back(s.heaters[0]);
    s.heaters[1].id = "heater-2";
    s.heaters[1].position.y = 100;
    for (std::size_t i = 0; i < 2; ++i) {
        Hose hose = *s.hoses[i];
        hose.id = "hose-" + std::to_string(3 + i);
        for (HoseEnd* end : {&hose.from, &hose.to}) {
            if (!end->port.empty())
                end->port = end->port == "port-1" ? "port-3" : "port-4";
            if (!end->heater.empty())
                end->heater = "heater-2";
        }
        for (RoutePoint& point : hose.points)
            point.at.y = 100;
        s.hoses.push_back(Shared<Hose>(hose));
    }
    return s;
}

void TestRunning::heatersOnOneEngineShareIt()
{
    const Sketch one = soundLoop();
    const Sketch two = twoHeaters();
    const Assumptions assumed;
    const Running running = runSteady(two, layoutOf(two), assumed);
    QCOMPARE(running.loops.size(), std::size_t{2});
    const EngineWarmUp warm = runWarmUp(two, layoutOf(two), running, assumed);
    const EngineWarmUp alone = runWarmUp(one, layoutOf(one), runningOf(one), assumed);
    QCOMPARE(warm.result.loops.size(), std::size_t{2});
    QVERIFY(warm.loopOf("heater-1") && warm.loopOf("heater-2"));
    // Each reaches 0.74 of it: together they reach all but a twentieth, in equal parts.
    VERIFY_NEAR(warm.inputs->loops[0].swept_share + warm.inputs->loops[1].swept_share, 0.95, 1e-12);
    VERIFY_NEAR(warm.inputs->loops[0].swept_share, warm.inputs->loops[1].swept_share, 1e-12);
    // The same metal with twice the heat.
    QCOMPARE(warm.inputs->block.metal_J_per_K, alone.inputs->block.metal_J_per_K);
    QVERIFY(*warm.result.target_s < 0.6 * *alone.result.target_s);
    VERIFY_NEAR(warm.result.loops[0].energy_J / warm.result.loops[1].energy_J, 1, 0.02);
}

/// Circulations equal to the last bit.
bool same(const Running& a, const Running& b)
{
    return std::equal(a.loops.begin(), a.loops.end(), b.loops.begin(), b.loops.end(),
                      [](const LoopRun& x, const LoopRun& y) {
                          return x.circulation.flow_kg_per_s == y.circulation.flow_kg_per_s &&
                                 x.circulation.heater_outlet_degC == y.circulation.heater_outlet_degC &&
                                 x.circulation.drive_Pa == y.circulation.drive_Pa &&
                                 x.circulation.status == y.circulation.status;
                      });
}

void TestRunning::aRunBeforeOnlySavesTime()
{
    Sketch sketch = soundLoop();
    Running previous = runningOf(sketch);
    for (int i = 0; i < 20; ++i) {
        sketch.hoses[return_hose].edit([i](Hose& h) {
            h.points[0].at.z -= 3;
            h.points[0].radius_mm = 100 + 2 * i;
            h.bore_mm.value = i % 3 == 0 ? 25 : 19;
        });
        const Layout layout = layoutOf(sketch);
        const Running fresh = runSteady(sketch, layout, Assumptions(sketch));
        const Running after = runSteady(sketch, layout, Assumptions(sketch), &previous);
        QVERIFY(same(fresh, after));
        QVERIFY(after.tables.evaluated() < fresh.tables.evaluated());
        previous = after;
    }
    const Layout layout = layoutOf(sketch);
    QCOMPARE(runSteady(sketch, layout, Assumptions(sketch), &previous).tables.evaluated(), std::size_t{0});
}

void TestRunning::tablesKeepNoMoreThanTheLoopsHave()
{
    // What is not asked for twice in a row is let go: the losses of the first bore are evaluated again.
    Sketch narrow = soundLoop();
    Sketch wide = soundLoop();
    for (Shared<Hose>& hose : wide.hoses)
        hose.edit([](Hose& h) { h.bore_mm.value = 25; });
    const Assumptions assumed;
    const Running first = runSteady(narrow, layoutOf(narrow), assumed);
    const Running other = runSteady(wide, layoutOf(wide), assumed, &first);
    const Running again = runSteady(narrow, layoutOf(narrow), assumed, &other);
    QVERIFY(again.tables.evaluated() > 0);
    QVERIFY(same(first, again));
}

QTEST_APPLESS_MAIN(TestRunning)
#include "test_running.moc"
