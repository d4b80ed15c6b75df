#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/checks/faults.h"
#include "core/checks/rules.h"

#include <QTest>

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Finding onHose(const std::string& rule, Severity severity, double from_mm, double to_mm)
{
    Finding finding;
    finding.rule = rule;
    finding.severity = severity;
    finding.part = {PartKind::hose, "hose-2", 0};
    finding.hose = "hose-2";
    finding.from_mm = from_mm;
    finding.to_mm = to_mm;
    finding.along_mm = (from_mm + to_mm) / 2;
    return finding;
}

Finding parked(Finding finding)
{
    finding.only_on_grade = Grade{-2, 0};
    return finding;
}

std::vector<std::string> rulesOf(const std::vector<Finding>& list)
{
    std::vector<std::string> out;
    for (const Finding& finding : list)
        out.push_back(finding.rule);
    return out;
}

using Rules = std::vector<std::string>;

} // namespace

class TestFaults : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aHumpAndItsDipAreOneFaultHeadedByTheHump();
    void theWorstHeadsAFault();
    void twoHumpsStayTwoFaults();
    void aDipGoesWithTheHumpItSharesMostWith();
    void aDipAwayFromAnyHumpStandsAlone();
    void otherRulesStandAlone();
    void theSameThingOnAGradeGoesWithTheLevels();
    void aNewHumpBesideAnotherIsNotTheSameThing();
    void aFlatStretchGoesWithTheHumpThatItBecomesOnAGrade();
    void amongEqualsTheLevelLeads();
    void stopsComeFirstThenTheRuleBooksOrder();
    void aDrawnHumpIsOneFault();
    void aRuleSwitchedOffGivesNothing();
};

void TestFaults::aHumpAndItsDipAreOneFaultHeadedByTheHump()
{
    const auto faults = faultsOf({onHose("return-dip", Severity::stop, 200, 500),
                                  onHose("return-high-point", Severity::stop, 100, 300),
                                  onHose("return-slope", Severity::advice, 280, 700)});
    QCOMPARE(rulesOf(faults), Rules({"return-high-point"}));
    QCOMPARE(rulesOf(faults[0].details), Rules({"return-dip", "return-slope"}));
}

void TestFaults::theWorstHeadsAFault()
{
    const auto faults = faultsOf({onHose("return-high-point", Severity::advice, 100, 300),
                                  onHose("return-dip", Severity::stop, 200, 500)});
    QCOMPARE(rulesOf(faults), Rules({"return-dip"}));
    QCOMPARE(rulesOf(faults[0].details), Rules({"return-high-point"}));
    QCOMPARE(faults[0].severity, Severity::stop);
}

void TestFaults::twoHumpsStayTwoFaults()
{
    const auto faults = faultsOf({onHose("return-high-point", Severity::stop, 100, 300),
                                  onHose("return-high-point", Severity::stop, 300, 600)});
    QCOMPARE(faults.size(), std::size_t{2});
    QVERIFY(faults[0].details.empty() && faults[1].details.empty());
}

void TestFaults::aDipGoesWithTheHumpItSharesMostWith()
{
    const auto faults = faultsOf({onHose("return-high-point", Severity::caution, 0, 300),
                                  onHose("return-high-point", Severity::caution, 400, 800),
                                  onHose("return-dip", Severity::caution, 250, 600)});
    QCOMPARE(faults.size(), std::size_t{2});
    QVERIFY(faults[0].details.empty());
    QCOMPARE(faults[1].from_mm, std::optional<double>(400));
    QCOMPARE(rulesOf(faults[1].details), Rules({"return-dip"}));
}

void TestFaults::aDipAwayFromAnyHumpStandsAlone()
{
    Finding elsewhere = onHose("return-dip", Severity::caution, 100, 300);
    elsewhere.hose = "hose-4";
    elsewhere.part.id = "hose-4";
    const auto faults = faultsOf({onHose("return-high-point", Severity::caution, 100, 300),
                                  onHose("return-dip", Severity::caution, 301, 600), elsewhere});
    QCOMPARE(faults.size(), std::size_t{3});
}

void TestFaults::otherRulesStandAlone()
{
    const auto faults = faultsOf({onHose("return-high-point", Severity::stop, 100, 300),
                                  onHose("unsupported-span", Severity::caution, 100, 300)});
    QCOMPARE(faults.size(), std::size_t{2});
}

void TestFaults::theSameThingOnAGradeGoesWithTheLevels()
{
    const auto faults = faultsOf({parked(onHose("return-high-point", Severity::caution, 120, 330)),
                                  onHose("return-high-point", Severity::advice, 100, 300)});
    QCOMPARE(faults.size(), std::size_t{1});
    QVERIFY(faults[0].only_on_grade.has_value()); // the worse of the two
    QCOMPARE(faults[0].details.size(), std::size_t{1});
}

void TestFaults::aNewHumpBesideAnotherIsNotTheSameThing()
{
    // Humps that follow each other share the sill between them.
    const Finding level = onHose("return-high-point", Severity::stop, 100, 300);
    const Finding beside = parked(onHose("return-high-point", Severity::caution, 300, 500));
    QVERIFY(!sameThing(level, beside));
    QVERIFY(sameThing(level, parked(onHose("return-high-point", Severity::caution, 299, 500))));
    QCOMPARE(faultsOf({level, beside}).size(), std::size_t{2});
}

void TestFaults::aFlatStretchGoesWithTheHumpThatItBecomesOnAGrade()
{
    const auto faults = faultsOf({onHose("return-slope", Severity::advice, 300, 1100),
                                  parked(onHose("return-high-point", Severity::caution, 280, 1120)),
                                  parked(onHose("return-dip", Severity::caution, 400, 1130))});
    QCOMPARE(rulesOf(faults), Rules({"return-high-point"}));
    QCOMPARE(rulesOf(faults[0].details), Rules({"return-dip", "return-slope"}));
}

void TestFaults::amongEqualsTheLevelLeads()
{
    const auto faults = faultsOf({onHose("return-slope", Severity::advice, 300, 1100),
                                  parked(onHose("return-high-point", Severity::advice, 280, 1120))});
    QCOMPARE(rulesOf(faults), Rules({"return-slope"}));
    QCOMPARE(rulesOf(faults[0].details), Rules({"return-high-point"}));
}

void TestFaults::stopsComeFirstThenTheRuleBooksOrder()
{
    Finding valve;
    valve.rule = "valve-closed";
    valve.severity = Severity::stop;
    Finding slope = onHose("return-slope", Severity::caution, 0, 100);
    const auto faults = faultsOf({valve, slope, onHose("return-dip", Severity::stop, 500, 600),
                                  onHose("hose-long", Severity::advice, 0, 1)});
    QCOMPARE(rulesOf(faults), Rules({"return-dip", "valve-closed", "return-slope", "hose-long"}));
}

void TestFaults::aDrawnHumpIsOneFault()
{
    Sketch s = soundLoop();
    s.hoses[return_hose].edit([](Hose& h) {
        h.points = {{{1030, 0, 900}, 0, BendKind::moulded_elbow},
                    {{930, 0, 900}, 0, BendKind::moulded_elbow},
                    {{930, 0, 650}, 0, BendKind::moulded_elbow},
                    {{870, 0, 700}, 0, BendKind::moulded_elbow}};
    });
    const Analysis analysis = analyse(s);
    const auto on_elevation = [](const Finding& finding) {
        return finding.rule == "return-high-point" || finding.rule == "return-dip";
    };
    QCOMPARE(std::count_if(analysis.findings.begin(), analysis.findings.end(), on_elevation),
             std::ptrdiff_t{1});
    const auto fault = std::find_if(analysis.findings.begin(), analysis.findings.end(), on_elevation);
    QCOMPARE(fault->rule, std::string("return-high-point"));
    QCOMPARE(rulesOf(fault->details), Rules({"return-dip"}));
}

void TestFaults::aRuleSwitchedOffGivesNothing()
{
    Sketch s = soundLoop();
    s.heaters[0].position.z = 120; // drop of 130 mm
    s.ground_z_mm.reset();
    const auto speaks = [](const Analysis& analysis, const std::string& rule) {
        const auto names = [&](const auto& entry) { return entry.rule == rule; };
        return std::any_of(analysis.findings.begin(), analysis.findings.end(), names) ||
               std::any_of(analysis.not_judged.begin(), analysis.not_judged.end(), names) ||
               std::any_of(analysis.margins.begin(), analysis.margins.end(), names);
    };
    for (const char* rule : {"heater-drop", "ground-clearance", "freeze-margin"}) {
        s.limits.clear();
        QVERIFY(speaks(analyse(s), rule));
        LimitChange off;
        off.rule = rule;
        off.off = true;
        off.reason = "engine manual";
        s.limits = {off};
        const Analysis analysis = analyse(s);
        QVERIFY(!speaks(analysis, rule));
        QVERIFY(!speaks(withProof(analysis, *prove(s, analysis)), rule));
        QCOMPARE(switchedOff(rule, s), &s.limits[0]);
    }
}

QTEST_APPLESS_MAIN(TestFaults)
#include "test_faults.moc"
