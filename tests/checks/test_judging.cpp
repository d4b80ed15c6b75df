#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const Finding* findingOf(const Analysis& analysis, const std::string& rule)
{
    const auto found = std::find_if(analysis.findings.begin(), analysis.findings.end(),
                                    [&](const Finding& finding) { return finding.rule == rule; });
    return found == analysis.findings.end() ? nullptr : &*found;
}

bool lacks(const Analysis& analysis, const std::string& rule, const std::string& part)
{
    return std::any_of(analysis.not_judged.begin(), analysis.not_judged.end(), [&](const NotJudged& entry) {
        return entry.rule == rule && entry.missing.find(part) != std::string::npos;
    });
}

/// The return of the sound loop led over a hump: up to z 900, down to 600, up to the port.
Sketch withHump()
{
    Sketch s = soundLoop();
    s.hoses[return_hose].edit([](Hose& h) {
        h.points = {{{1030, 0, 900}, 0, BendKind::moulded_elbow},
                    {{930, 0, 900}, 0, BendKind::moulded_elbow},
                    {{930, 0, 700}, 0, BendKind::moulded_elbow}};
        h.parts[0].along_mm = 1000;
    });
    return s;
}

} // namespace

class TestJudging : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void anEmptySketchHasNothingToJudge();
    void everyHalfOfALoopIsJudgedWithoutHarm();
    void aDrawnHumpStopsAndSaysWhereAndHowMuch();
    void aSagInTheTopOfAHumpDoesNotHideIt();
    void stopsComeFirst();
    void closedValvesOnBothHosesAreASealedVessel();
    void oneClosedValveIsNot();
    void whatIsNotEnteredIsNotJudged();
    void limitsAreChangedByTheSketch();
    void anUnnamedHoseIsNamedByItsRole();
};

void TestJudging::anEmptySketchHasNothingToJudge()
{
    const Analysis analysis = analyse({});
    QVERIFY(analysis.findings.empty());
    QVERIFY(analysis.not_judged.empty());
    QVERIFY(!analysis.stopped());
}

void TestJudging::everyHalfOfALoopIsJudgedWithoutHarm()
{
    // Every combination of parts that can be missing while a loop is being drawn.
    for (unsigned left_out = 0; left_out < 128; ++left_out) {
        Sketch s = soundLoop();
        if (left_out & 1U)
            s.engine.reset();
        if (left_out & 2U)
            s.tank.reset();
        if (left_out & 4U)
            s.ports.clear();
        if (left_out & 8U)
            s.heaters.clear();
        if (left_out & 16U)
            s.hoses.pop_back();
        if (left_out & 32U)
            s.hoses[supply_hose].edit([](Hose& h) { h.points.clear(); });
        if (left_out & 64U)
            s.hoses[supply_hose].edit([](Hose& h) { h.from = h.to = {}; });
        const Analysis analysis = analyse(s);
        QCOMPARE(analysis.layout.hoses.size(), s.hoses.size());
        const bool whole_loop = (left_out & (4U | 8U | 16U | 64U)) == 0;
        QCOMPARE(findingOf(analysis, "hose-not-connected") || findingOf(analysis, "hose-open-end"),
                 !whole_loop);
    }
}

void TestJudging::aDrawnHumpStopsAndSaysWhereAndHowMuch()
{
    const Analysis analysis = analyse(withHump());
    QVERIFY(analysis.stopped());
    const Finding* finding = findingOf(analysis, "return-high-point");
    QVERIFY(finding);
    QCOMPARE(finding->severity, Severity::stop);
    QCOMPARE(finding->hose, Id("hose-2"));
    // Crown 909.5 at the level top; behind it the hose drops plumb and turns level at z 700, where the crown
    // is 709.5 up to the port, the end of the path.
    VERIFY_NEAR(*finding->measured, 200, 1e-6);
    VERIFY_NEAR(*finding->limit, 19, 1e-9); // one bore
    QCOMPARE(finding->unit, Unit::mm);
    QVERIFY(finding->at.has_value());
    VERIFY_NEAR(finding->at->x, 980, 1); // middle of the level top, 1030 to 930
    VERIFY_NEAR(finding->at->z, 900, 1e-6);
    QVERIFY(*finding->from_mm < *finding->along_mm && *finding->along_mm < *finding->to_mm);
}

void TestJudging::aSagInTheTopOfAHumpDoesNotHideIt()
{
    Sketch s = withHump();
    s.hoses[return_hose].edit([](Hose& h) {
        h.points.insert(h.points.begin() + 1, {{980, 0, 892}, 0, BendKind::moulded_elbow});
    });
    const Analysis analysis = analyse(s);
    const Finding* finding = findingOf(analysis, "return-high-point");
    QVERIFY(finding);
    QCOMPARE(finding->severity, Severity::stop);
    const auto humps = std::count_if(analysis.findings.begin(), analysis.findings.end(),
                                     [](const Finding& f) { return f.rule == "return-high-point"; });
    QCOMPARE(humps, std::ptrdiff_t{1});
}

void TestJudging::stopsComeFirst()
{
    Sketch s = withHump();
    s.ports[0].position.z = 600;
    s.heaters[0].mounting.value = Mounting::engine;
    const Analysis analysis = analyse(s);
    QVERIFY(analysis.count(Severity::stop) > 0);
    QVERIFY(analysis.count(Severity::caution) > 0);
    QVERIFY(std::is_sorted(analysis.findings.begin(), analysis.findings.end(),
                           [](const Finding& a, const Finding& b) { return a.severity > b.severity; }));
}

void TestJudging::closedValvesOnBothHosesAreASealedVessel()
{
    Sketch s = soundLoop();
    for (Shared<Hose>& hose : s.hoses)
        hose.edit([](Hose& h) { h.parts[0].open = false; });
    const Analysis analysis = analyse(s);
    const Finding* finding = findingOf(analysis, "valve-closed");
    QVERIFY(finding);
    const std::string text = format(finding->text, UnitSystem::metric);
    QVERIFY2(text.find("sealed vessel") != std::string::npos, text.c_str());
    QVERIFY2(text.find("pressure") != std::string::npos, text.c_str());
}

void TestJudging::oneClosedValveIsNot()
{
    Sketch s = soundLoop();
    s.hoses[supply_hose].edit([](Hose& h) { h.parts[0].open = false; });
    const Analysis analysis = analyse(s);
    const Finding* finding = findingOf(analysis, "valve-closed");
    QVERIFY(finding);
    QVERIFY(format(finding->text, UnitSystem::metric).find("sealed") == std::string::npos);
}

void TestJudging::whatIsNotEnteredIsNotJudged()
{
    Sketch s = soundLoop();
    s.tank->cold_min_mm.value.reset();
    s.engine->thermostat.reset();
    s.ports[0].kind = PortKind::lower_hose_tee;
    s.ports[0].bore_mm.value.reset();
    s.ports[1].kind = PortKind::cabin_line;
    Heater& heater = s.heaters[0];
    heater.mounting.value.reset();
    heater.allowed_positions.value.reset();
    heater.manual_min_bore_mm.value.reset();
    heater.thermostat = HeaterThermostat::remote;
    s.coolant.volume_percent.value.reset();
    s.site.coldest_ambient_degC.value.reset();
    const Analysis analysis = analyse(s);
    QVERIFY(analysis.findings.empty());
    QVERIFY(lacks(analysis, "above-coolant-level", "cold minimum"));
    QVERIFY(lacks(analysis, "return-near-thermostat", "thermostat housing"));
    QVERIFY(lacks(analysis, "bore-restriction", "port-1"));
    QVERIFY(lacks(analysis, "valve-closed", "port-2"));
    QVERIFY(lacks(analysis, "parallel-path", "port-2"));
    QVERIFY(lacks(analysis, "supply-cut-off-by-thermostat", "thermostat's side"));
    QVERIFY(lacks(analysis, "mounted-on-engine", "mounted"));
    QVERIFY(lacks(analysis, "heater-position-not-allowed", "positions"));
    QVERIFY(lacks(analysis, "bore-under-manual", "manual"));
    QVERIFY(lacks(analysis, "sensor-near-return", "remote thermostat"));
    QVERIFY(lacks(analysis, "antifreeze-over-60", "antifreeze"));
    QVERIFY(lacks(analysis, "freeze-margin", "antifreeze"));
    QVERIFY(lacks(analysis, "freeze-margin", "coldest ambient"));

    s.hoses[return_hose].edit([](Hose& h) { h.bore_mm.value.reset(); });
    s.engine->jacket.clear();
    s.ground_z_mm.reset();
    s.hoses[supply_hose].edit([](Hose& h) { h.points.clear(); });
    const Analysis without_bore = analyse(s);
    QVERIFY(lacks(without_bore, "bore-restriction", "Return hose"));
    QVERIFY(lacks(without_bore, "bend-too-tight", "Return hose"));
    QVERIFY(lacks(without_bore, "heater-drop", "water jacket"));
    QVERIFY(lacks(without_bore, "supply-port-low", "water jacket"));
    QVERIFY(lacks(without_bore, "ground-clearance", "ground"));
    QVERIFY(lacks(without_bore, "no-slack", "mounted"));
}

void TestJudging::limitsAreChangedByTheSketch()
{
    Sketch s = soundLoop(); // drop of 170 mm
    QVERIFY(!findingOf(analyse(s), "heater-drop"));
    LimitChange change;
    change.rule = "heater-drop";
    change.stop = 175;
    change.reason = "engine manual";
    s.limits = {change};
    const Analysis analysis = analyse(s);
    const Finding* finding = findingOf(analysis, "heater-drop");
    QVERIFY(finding);
    QCOMPARE(finding->severity, Severity::stop);
    VERIFY_NEAR(*finding->limit, 175, 1e-9);
    VERIFY_NEAR(*finding->measured, 170, 1e-9);
    // What is not changed keeps the rule's own.
    QCOMPARE(limitsOf(*ruleById("heater-drop"), s).caution, std::optional<double>(152.4));
}

void TestJudging::anUnnamedHoseIsNamedByItsRole()
{
    Sketch s = withHump();
    QCOMPARE(findingOf(analyse(s), "return-high-point")->text.words.at(0), std::string("Return hose hose-2"));
    s.hoses[return_hose].edit([](Hose& h) { h.name = "left"; });
    QCOMPARE(findingOf(analyse(s), "return-high-point")->text.words.at(0), std::string("Return hose left"));
    s.hoses[return_hose].edit([](Hose& h) { h.name = "Rear hose"; });
    QCOMPARE(findingOf(analyse(s), "return-high-point")->text.words.at(0), std::string("Rear hose"));
}

QTEST_APPLESS_MAIN(TestJudging)
#include "test_judging.moc"
