#include "tests/near.h"

#include "core/sketch/edits.h"
#include "core/sketch/file.h"
#include "core/sketch/templates.h"

#include <algorithm>
#include <limits>
#include <set>

using namespace siphonwright;

namespace {

constexpr double pi = 3.14159265358979323846;

double cross(Vec2 o, Vec2 a, Vec2 b)
{
    return (a.x - o.x) * (b.z - o.z) - (a.z - o.z) * (b.x - o.x);
}

/// Crossing number: inside when a ray to the right crosses the outline an odd number of times.
bool inside(const std::vector<Vec2>& outline, Vec2 p)
{
    bool odd = false;
    for (std::size_t i = 0, k = outline.size() - 1; i < outline.size(); k = i++) {
        const Vec2 a = outline[i];
        const Vec2 b = outline[k];
        if ((a.z > p.z) != (b.z > p.z) && p.x < a.x + (b.x - a.x) * (p.z - a.z) / (b.z - a.z))
            odd = !odd;
    }
    return odd;
}

double distanceToOutline(const std::vector<Vec2>& outline, Vec2 p)
{
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0, k = outline.size() - 1; i < outline.size(); k = i++) {
        const Vec2 a = outline[k];
        const Vec2 ab = {outline[i].x - a.x, outline[i].z - a.z};
        const double share = ((p.x - a.x) * ab.x + (p.z - a.z) * ab.z) / (ab.x * ab.x + ab.z * ab.z);
        const double t = std::clamp(share, 0.0, 1.0);
        least = std::min(least, std::hypot(p.x - a.x - ab.x * t, p.z - a.z - ab.z * t));
    }
    return least;
}

/// No two sides that are not neighbours cross.
bool simple(const std::vector<Vec2>& outline)
{
    const std::size_t n = outline.size();
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t k = i + 2; k < n; ++k) {
            if (i == 0 && k == n - 1)
                continue;
            const Vec2 a = outline[i];
            const Vec2 b = outline[i + 1];
            const Vec2 c = outline[k];
            const Vec2 d = outline[(k + 1) % n];
            const bool apart =
                std::max(a.x, b.x) < std::min(c.x, d.x) || std::max(c.x, d.x) < std::min(a.x, b.x);
            if (!apart && cross(a, b, c) * cross(a, b, d) <= 0 && cross(c, d, a) * cross(c, d, b) <= 0)
                return false;
        }
    }
    return true;
}

struct Box {
    double left, right, low, high;
};
Box boxOf(const std::vector<Vec2>& outline)
{
    Box box = {outline[0].x, outline[0].x, outline[0].z, outline[0].z};
    for (const Vec2 p : outline) {
        box = {std::min(box.left, p.x), std::max(box.right, p.x), std::min(box.low, p.z),
               std::max(box.high, p.z)};
    }
    return box;
}

const Port* withRole(const Sketch& sketch, PortRole role)
{
    const auto found = std::find_if(sketch.ports.begin(), sketch.ports.end(),
                                    [&](const Port& port) { return port.role == role; });
    return found == sketch.ports.end() ? nullptr : &*found;
}

Sketch placed(const EngineTemplate& chosen)
{
    Sketch sketch;
    placeEngine(sketch, chosen, {});
    return sketch;
}

} // namespace

class TestTemplates : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void thereIsAnEngineOfEachKind();
    void engines_data();
    void engines();
    void jacketsLieInTheirEngines_data() { engines_data(); }
    void jacketsLieInTheirEngines();
    void portsLieOnTheJacket_data() { engines_data(); }
    void portsLieOnTheJacket();
    void portsSuitALoop_data() { engines_data(); }
    void portsSuitALoop();
    void levelsStandOverEverything_data() { engines_data(); }
    void levelsStandOverEverything();
    void veeEnginesHavePortsOnBothBanks();
    void theHighwayEngineLeavesRoomForAHeaterBesideTheRail();
    void placingMovesEverythingAndReplaces();
    void heaters_data();
    void heaters();
    void chambersLetTheirAirOut_data() { heaters_data(); }
    void chambersLetTheirAirOut();
    void hoseSizesAreStockSizes();
};

void TestTemplates::thereIsAnEngineOfEachKind()
{
    std::set<Arrangement> kinds;
    std::set<std::string> ids;
    for (const EngineTemplate& chosen : engineTemplates()) {
        kinds.insert(chosen.engine.arrangement);
        QVERIFY(ids.insert(chosen.id).second);
    }
    QVERIFY(
        (kinds == std::set<Arrangement>{Arrangement::inline_4, Arrangement::inline_6, Arrangement::vee_6,
                                        Arrangement::vee_8, Arrangement::vee_12, Arrangement::horizontal}));
}

void TestTemplates::engines_data()
{
    QTest::addColumn<std::size_t>("index");
    for (std::size_t i = 0; i < engineTemplates().size(); ++i)
        QTest::newRow(engineTemplates()[i].id.c_str()) << i;
}

void TestTemplates::engines()
{
    QFETCH(std::size_t, index);
    const Sketch sketch = placed(engineTemplates()[index]);
    QVERIFY(problemsIn(sketch).empty());
    const Engine& engine = *sketch.engine;
    QVERIFY(engine.outline.size() >= 14 && engine.outline.size() <= 24);
    QVERIFY(simple(engine.outline));
    QVERIFY(simple(engine.jacket));
    QVERIFY(engine.front == EngineEnd::left);
    QVERIFY(!engine.name.empty());
    std::set<Id> ids;
    for (const Port& port : sketch.ports) {
        QVERIFY(!port.id.empty() && !port.name.empty());
        QVERIFY(ids.insert(port.id).second);
        QVERIFY(port.bore_mm.known() && port.bore_mm.source == Source::typical);
        QVERIFY(port.position_source == Source::typical);
    }
    for (const Fact<double>* fact :
         {&engine.displacement_l, &engine.mass_kg, &engine.coolant_volume_l, &sketch.tank->cold_min_mm,
          &sketch.tank->cold_full_mm, &sketch.tank->hot_mm}) {
        QVERIFY(fact->known());
        QVERIFY(fact->source == Source::typical);
    }
    QVERIFY(engine.jacket_source == Source::typical);
    QVERIFY(engine.material.source == Source::typical && engine.material.known());
    QVERIFY(engine.thermostat->side.value == ThermostatSide::outlet);
    QVERIFY(engine.thermostat->side.source == Source::typical);
}

void TestTemplates::jacketsLieInTheirEngines()
{
    QFETCH(std::size_t, index);
    const Sketch sketch = placed(engineTemplates()[index]);
    const Engine& engine = *sketch.engine;
    // Corners inside and no corner of the engine in the jacket: the jacket as a whole is inside.
    for (const Vec2 corner : engine.jacket)
        QVERIFY2(inside(engine.outline, corner), qPrintable(QString::number(corner.x)));
    for (const Vec2 corner : engine.outline)
        QVERIFY(!inside(engine.jacket, corner));
    QVERIFY(engine.jacket_y_from_mm < engine.jacket_y_to_mm);
    const Box jacket = boxOf(engine.jacket);
    double left = 1e9;
    double right = -1e9;
    for (const Vec2 corner : engine.jacket) {
        if (corner.z == jacket.low) {
            left = std::min(left, corner.x);
            right = std::max(right, corner.x);
        }
    }
    VERIFY_NEAR((left + right) / 2, 0, 1e-9); // the origin is under the middle of the underside
    const Vec3 thermostat = engine.thermostat->position;
    QVERIFY(inside(engine.outline, {thermostat.x, thermostat.z}));
    QVERIFY(thermostat.z > jacket.high); // front top
    QVERIFY(thermostat.x < jacket.left + 0.2 * (jacket.right - jacket.left));
}

void TestTemplates::portsLieOnTheJacket()
{
    QFETCH(std::size_t, index);
    const Sketch sketch = placed(engineTemplates()[index]);
    const Engine& engine = *sketch.engine;
    for (const Port& port : sketch.ports) {
        const Vec2 at = {port.position.x, port.position.z};
        QVERIFY2(inside(engine.jacket, at) || distanceToOutline(engine.jacket, at) < 1, port.name.c_str());
        QVERIFY(port.position.y >= engine.jacket_y_from_mm && port.position.y <= engine.jacket_y_to_mm);
        // A port opens through a face: an end or edge of the outline, or a side.
        const bool on_a_side =
            port.position.y == engine.jacket_y_from_mm || port.position.y == engine.jacket_y_to_mm;
        QVERIFY2(on_a_side || distanceToOutline(engine.jacket, at) < 1, port.name.c_str());
        // Just outside along its axis there is no jacket.
        const Vec3 out = port.position + direction(port.axis.azimuth_deg, port.axis.elevation_deg) * 2;
        const bool still_within = inside(engine.jacket, {out.x, out.z}) && out.y > engine.jacket_y_from_mm &&
                                  out.y < engine.jacket_y_to_mm;
        QVERIFY2(!still_within, port.name.c_str());
    }
}

void TestTemplates::portsSuitALoop()
{
    QFETCH(std::size_t, index);
    const Sketch sketch = placed(engineTemplates()[index]);
    const Box jacket = boxOf(sketch.engine->jacket);
    const double height = jacket.high - jacket.low;
    const Port* supply = withRole(sketch, PortRole::supply);
    const Port* back = withRole(sketch, PortRole::return_);
    const Port* sensor = withRole(sketch, PortRole::sensor);
    QVERIFY(supply && back && sensor);
    QVERIFY(supply->position.z <= jacket.low + height / 5);
    QVERIFY(supply->position.x < (jacket.left + jacket.right) / 2);
    QVERIFY(supply->axis.elevation_deg < 0); // so that the supply falls from its first millimetre
    QVERIFY(back->position.z >= jacket.high - height / 3);
    QVERIFY(back->position.x > (jacket.left + jacket.right) / 2);
    QVERIFY(back->axis.elevation_deg == 0);
    const Vec3 diagonal = {jacket.right - jacket.left,
                           sketch.engine->jacket_y_to_mm - sketch.engine->jacket_y_from_mm, height};
    QVERIFY(distance(supply->position, back->position) > length(diagonal) / 2);
    QVERIFY(distance(back->position, sketch.engine->thermostat->position) > 150);
    QVERIFY(distance(back->position, sensor->position) > 200);
}

void TestTemplates::levelsStandOverEverything()
{
    QFETCH(std::size_t, index);
    const Sketch sketch = placed(engineTemplates()[index]);
    const double cold_min = *sketch.tank->cold_min_mm.value;
    QVERIFY(cold_min > boxOf(sketch.engine->jacket).high);
    QVERIFY(cold_min > sketch.engine->thermostat->position.z);
    QVERIFY(cold_min < *sketch.tank->cold_full_mm.value);
    QVERIFY(*sketch.tank->cold_full_mm.value < *sketch.tank->hot_mm.value);
}

void TestTemplates::veeEnginesHavePortsOnBothBanks()
{
    int vees = 0;
    for (const EngineTemplate& chosen : engineTemplates()) {
        const Arrangement kind = chosen.engine.arrangement;
        if (kind != Arrangement::vee_6 && kind != Arrangement::vee_8 && kind != Arrangement::vee_12)
            continue;
        ++vees;
        const Sketch sketch = placed(chosen);
        const Port* supply = withRole(sketch, PortRole::supply);
        const Port* back = withRole(sketch, PortRole::return_);
        QVERIFY(supply->position.y * back->position.y < 0);
        std::set<std::string> names;
        for (const Port& port : sketch.ports)
            QVERIFY(names.insert(port.name).second);
    }
    QCOMPARE(vees, 3);
}

void TestTemplates::theHighwayEngineLeavesRoomForAHeaterBesideTheRail()
{
    for (const EngineTemplate& chosen : engineTemplates()) {
        if (chosen.id != "in-line-6")
            continue;
        const Box outline = boxOf(chosen.engine.outline);
        VERIFY_NEAR(outline.right - outline.left, 1150, 50);
        VERIFY_NEAR(outline.high - outline.low, 950, 50);
        const double jacket_low = boxOf(chosen.engine.jacket).low;
        QVERIFY(jacket_low >= 250 && jacket_low <= 350);
        return;
    }
    QFAIL("there is no in-line 6");
}

void TestTemplates::placingMovesEverythingAndReplaces()
{
    const EngineTemplate& first = engineTemplates()[0];
    const EngineTemplate& second = engineTemplates()[1];
    Sketch sketch;
    placeEngine(sketch, first, {});
    HoseEnd from;
    from.port = sketch.ports[0].id;
    addHose(sketch, HoseRole::supply, from, {}, {});
    const Vec3 end = *positionOf(sketch, {PartKind::hose_end, "hose-1", 0});
    placeEngine(sketch, second, {100, 20, -30});
    QCOMPARE(sketch.ports.size(), second.ports.size());
    QVERIFY(sketch.engine->name == second.title);
    QCOMPARE(sketch.engine->outline[0].x, second.engine.outline[0].x + 100);
    QCOMPARE(sketch.ports[1].position, second.ports[1].position + (Vec3{100, 20, -30}));
    QCOMPARE(*sketch.tank->cold_min_mm.value, *second.tank.cold_min_mm.value - 30);
    QCOMPARE(sketch.tank->position, second.tank.position + (Vec3{100, 20, -30}));
    QVERIFY(!sketch.hoses[0]->from.connected());
    QCOMPARE(sketch.hoses[0]->from.open_at, end);
}

void TestTemplates::heaters_data()
{
    QTest::addColumn<std::size_t>("index");
    QTest::addColumn<double>("power_W");
    const double powers[] = {500, 750, 1000, 1500, 2000, 2500, 4000, 5000};
    QCOMPARE(heaterTemplates().size(), std::size(powers));
    for (std::size_t i = 0; i < heaterTemplates().size(); ++i)
        QTest::newRow(heaterTemplates()[i].id.c_str()) << i << powers[i];
}

void TestTemplates::heaters()
{
    QFETCH(std::size_t, index);
    QFETCH(double, power_W);
    const Heater& heater = heaterTemplates()[index].heater;
    Sketch sketch;
    addHeater(sketch, heater);
    QVERIFY(problemsIn(sketch).empty());
    QCOMPARE(*heater.power_W.value, power_W);
    QCOMPARE(*heater.rated_V.value, power_W <= 1500 ? 120.0 : 240.0);
    QVERIFY(orientationOf(heater) == Orientation::vertical);
    QCOMPARE(*heater.on_degC.value, 38.0);
    QCOMPARE(*heater.off_degC.value, 49.0);
    QCOMPARE(*heater.manual_min_drop_mm.value, 152.4);
    QVERIFY(*heater.manual_min_bore_mm.value >= *heater.outlet.bore_mm.value);
    // The nozzles do not restrict the hose that goes with the heater.
    QVERIFY(*heater.outlet.bore_mm.value >= 0.7 * *heater.manual_min_bore_mm.value);
    QVERIFY(*heater.inlet.bore_mm.value >= 12.7 && *heater.inlet.bore_mm.value <= 31.75);
    for (const Fact<double>* fact :
         {&heater.power_W, &heater.rated_V, &heater.actual_V, &heater.on_degC, &heater.off_degC,
          &heater.element_top_mm, &heater.chamber_volume_ml, &heater.manual_min_bore_mm,
          &heater.manual_min_drop_mm, &heater.inlet.bore_mm, &heater.outlet.bore_mm})
        QVERIFY(fact->known() && fact->source == Source::typical);
    QVERIFY(heater.mounting.value == Mounting::frame && heater.mounting.source == Source::typical);
    QVERIFY(heater.allowed_positions.known() && heater.allowed_positions.source == Source::typical);
    const double area_mm2 = pi * heater.chamber_bore_mm * heater.chamber_bore_mm / 4;
    VERIFY_NEAR(*heater.chamber_volume_ml.value,
                area_mm2 * (heater.chamber_top_mm - heater.chamber_bottom_mm) / 1000, 0.5);
    QVERIFY(heater.chamber_bore_mm < heater.diameter_mm);
    QVERIFY(heater.chamber_top_mm < heater.length_mm / 2);
    QVERIFY(heater.chamber_bottom_mm > -heater.length_mm / 2);
}

void TestTemplates::chambersLetTheirAirOut()
{
    QFETCH(std::size_t, index);
    const Heater& heater = heaterTemplates()[index].heater;
    // Crown of an opening: its centre and half its bore, less what the axis' own rise takes away.
    const Opening outlet = nozzleOpening(heater, NozzleKind::outlet);
    const double k = std::sqrt(std::max(0.0, 1 - outlet.axis.z * outlet.axis.z));
    const double half_bore = *heater.outlet.bore_mm.value / 2;
    VERIFY_NEAR(outlet.at.z + half_bore * k, heater.chamber_top_mm, 1e-9);
    QVERIFY(*heater.element_top_mm.value < outlet.at.z - half_bore * k);
    const Opening inlet = nozzleOpening(heater, NozzleKind::inlet);
    VERIFY_NEAR(inlet.at.z - *heater.inlet.bore_mm.value / 2, heater.chamber_bottom_mm, 1e-9);
    QVERIFY(std::abs(inlet.axis.z) < 1e-9);
}

void TestTemplates::hoseSizesAreStockSizes()
{
    QVERIFY(hoseSizes().front().title == "3/8 in (10 mm)");
    QVERIFY(hoseSizes().back().title == "2 in (51 mm)");
    QCOMPARE(hoseSizes().front().bore_mm, 9.525);
    for (std::size_t i = 1; i < hoseSizes().size(); ++i)
        QVERIFY(hoseSizes()[i].bore_mm > hoseSizes()[i - 1].bore_mm);
}

QTEST_APPLESS_MAIN(TestTemplates)
#include "test_templates.moc"
