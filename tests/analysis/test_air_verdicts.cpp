#include "core/analysis/analysis.h"
#include "core/sketch/file.h"

#include <QFile>
#include <QTest>

#include <algorithm>
#include <functional>

using namespace siphonwright;

namespace {

Sketch sample(const char* name)
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name)));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return std::get<Sketch>(readSketch(file.readAll().toStdString()));
}

Analysis prove(const Sketch& sketch)
{
    ProofOptions options;
    options.bands = false;
    return proved(sketch, options);
}

const Finding* under(const std::vector<Finding>& findings, const std::string& rule)
{
    for (const Finding& finding : findings) {
        if (finding.rule == rule)
            return &finding;
        if (const Finding* detail = under(finding.details, rule))
            return detail;
    }
    return nullptr;
}

} // namespace

/// Half fixed: the return hose humps 103 mm before the head port.
class TestAirVerdicts : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void atTheFillerTheHumpStaysAStop();
    void underVacuumTheHumpIsACaution();
    void aFillThatIsNotKnownLowersNothing();
    void theCureNamesABleedAtTheCrest();
    void oneBleedDoesNotCureTwoHumps();
    void oneFaultStaysOneFinding();
};

void TestAirVerdicts::atTheFillerTheHumpStaysAStop()
{
    const Analysis analysis = prove(sample("air-lock-lesson-2"));
    QVERIFY(analysis.proof->filled_clean.empty());
    QVERIFY(under(analysis.findings, "return-high-point")->severity == Severity::stop);
}

void TestAirVerdicts::underVacuumTheHumpIsACaution()
{
    Sketch sketch = sample("air-lock-lesson-2");
    sketch.fill.by = FillBy::vacuum;
    const Analysis analysis = prove(sketch);
    QCOMPARE(analysis.proof->filled_clean.size(), std::size_t(1));
    const Finding* hump = under(analysis.findings, "return-high-point");
    QVERIFY(hump && hump->severity == Severity::caution);
    QVERIFY(!under(analysis.findings, "air-locked"));
    QVERIFY(!analysis.stopped());
    QVERIFY(format(hump->text, UnitSystem::metric).find("none closes the bore") != std::string::npos);
}

void TestAirVerdicts::aFillThatIsNotKnownLowersNothing()
{
    Sketch sketch = sample("air-lock-lesson-2");
    sketch.fill.by = FillBy::vacuum;
    sketch.tank->cold_full_mm = {};
    sketch.tank->cold_min_mm = {};
    const Analysis analysis = prove(sketch);
    QVERIFY(!analysis.proof->filling.missing.empty());
    QVERIFY(under(analysis.findings, "return-high-point")->severity == Severity::stop);
}

void TestAirVerdicts::theCureNamesABleedAtTheCrest()
{
    const Analysis analysis = prove(sample("air-lock-lesson-2"));
    QCOMPARE(analysis.proof->bleeds.size(), std::size_t(1));
    const BleedCure& cure = analysis.proof->bleeds.front();
    const ResolvedHose* hose = analysis.layout.hose(cure.hose);
    QVERIFY(hose && hose->role() == HoseRole::return_);
    // At the hose's highest place, within a bore.
    QVERIFY(std::abs(cure.along_mm - hose->highest_at_mm) < 19.05);
    const std::string fix = format(under(analysis.findings, "air-locked")->fix, UnitSystem::metric);
    QVERIFY2(fix.find("A bleed 558 mm along Return hose") == 0, fix.c_str());
}

void TestAirVerdicts::oneBleedDoesNotCureTwoHumps()
{
    QVERIFY(prove(sample("air-lock-lesson-1")).proof->bleeds.empty());
}

void TestAirVerdicts::oneFaultStaysOneFinding()
{
    Sketch sketch = sample("air-lock-lesson-2");
    sketch.fill.by = FillBy::vacuum;
    const Analysis analysis = prove(sketch);
    QCOMPARE(std::count_if(analysis.findings.begin(), analysis.findings.end(),
                           [](const Finding& finding) { return finding.hose == "hose-2"; }),
             std::ptrdiff_t(1));
}

QTEST_APPLESS_MAIN(TestAirVerdicts)
#include "test_air_verdicts.moc"
