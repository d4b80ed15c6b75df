#include "tests/near.h"
#include "tests/random_runs.h"
#include "tests/read_sample.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"
#include "core/running/warm_up_csv.h"

#include <QTest>

#include <algorithm>
#include <vector>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Layout proofLayoutOf(const Sketch& sketch)
{
    return resolve(sketch, plumbOf(sketch));
}

void assume(Sketch& sketch, const char* id, double value)
{
    AssumptionChange change;
    change.assumption = id;
    change.value = value;
    sketch.assumptions.push_back(change);
}

double flowOf(const Sketch& sketch)
{
    return runSteady(sketch, proofLayoutOf(sketch), Assumptions(sketch))
        .loops.at(0)
        .circulation.flow_kg_per_s;
}

constexpr std::size_t few_samples = 40;

bool drives(const HeaterBands& bands, Assumed which)
{
    return std::any_of(bands.results.begin(), bands.results.end(), [&](const auto& band) {
        return band && std::find(band->drivers.begin(), band->drivers.end(), which) != band->drivers.end();
    });
}

} // namespace

class TestRunningProof : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aLargerBoreLetsMoreThrough();
    void theTableMarksTheBoreThatIsDrawn();
    void aChangedAssumptionChangesTheResult();
    void aChangedAssumptionIsHeldInBands();
    void bandsRepeatToTheLastBit();
    void bandsHoldTheResultBetweenThem();
    void aTargetOutOfReachIsReachedByNoSample();
    void airThatLocksTheLoopLocksBandsAndBoresToo_data();
    void airThatLocksTheLoopLocksBandsAndBoresToo();
    void theSeriesIsWrittenWithItsUnits();
    void onlyAssumptionsWhoseFactIsMissingAreListed();
};

void TestRunningProof::aLargerBoreLetsMoreThrough()
{
    const std::vector<BoreRow> rows = byBore(soundLoop());
    QVERIFY(rows.size() >= 4);
    for (std::size_t i = 1; i < rows.size(); ++i) {
        QVERIFY(rows[i].bore_mm > rows[i - 1].bore_mm);
        QVERIFY(rows[i].flow_kg_per_s > rows[i - 1].flow_kg_per_s);
        QVERIFY(rows[i].steady_outlet_degC < rows[i - 1].steady_outlet_degC);
    }
}

void TestRunningProof::theTableMarksTheBoreThatIsDrawn()
{
    const std::vector<BoreRow> rows = byBore(soundLoop());
    QCOMPARE(std::count_if(rows.begin(), rows.end(), [](const BoreRow& row) { return row.drawn; }),
             std::ptrdiff_t{1});
    const auto drawn = std::find_if(rows.begin(), rows.end(), [](const BoreRow& row) { return row.drawn; });
    VERIFY_NEAR(drawn->bore_mm, 19.05, 0.06);
    // 19.05 mm for the 19 mm drawn: flow grows about with the square of the bore in slow flow.
    VERIFY_NEAR(drawn->flow_kg_per_s / flowOf(soundLoop()), 1, 0.01);
    QVERIFY(byBore({}).empty());
}

void TestRunningProof::aChangedAssumptionChangesTheResult()
{
    Sketch less = soundLoop();
    assume(less, "hose-end-loss", 0.5);
    QVERIFY(flowOf(less) > 1.02 * flowOf(soundLoop()));
    Sketch thick = soundLoop();
    assume(thick, "viscosity", 1.3);
    QVERIFY(flowOf(thick) < flowOf(soundLoop()));
    Sketch unknown = soundLoop();
    assume(unknown, "no-such-figure", 7);
    QCOMPARE(flowOf(unknown), flowOf(soundLoop()));
}

void TestRunningProof::aChangedAssumptionIsHeldInBands()
{
    const Sketch sketch = soundLoop();
    Sketch held = sketch;
    for (const Assumption& row : assumptionBook())
        if (row.id != "hose-end-loss")
            assume(held, row.id.data(), row.value);
    // As many as usual: a driver has to stand out from chance.
    const auto free = runningBands(sketch, proofLayoutOf(sketch), {});
    const auto narrow = runningBands(held, proofLayoutOf(held), {});
    QCOMPARE(free.size(), std::size_t{1});
    QCOMPARE(narrow.size(), std::size_t{1});
    const auto width = [](const HeaterBands& bands) {
        return bands[Banded::flow_kg_per_s]->high - bands[Banded::flow_kg_per_s]->low;
    };
    QVERIFY(width(narrow[0]) > 0);
    QVERIFY(width(narrow[0]) < width(free[0]));
    QVERIFY(drives(free[0], Assumed::viscosity));
    QVERIFY(!drives(narrow[0], Assumed::viscosity));
    QVERIFY(drives(narrow[0], Assumed::hose_end_loss));
}

void TestRunningProof::bandsRepeatToTheLastBit()
{
    const Sketch sketch = soundLoop();
    const auto a = runningBands(sketch, proofLayoutOf(sketch), {}, {}, few_samples);
    const auto b = runningBands(sketch, proofLayoutOf(sketch), {}, {}, few_samples);
    QCOMPARE(a.size(), b.size());
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t k = 0; k < banded_count; ++k) {
            QVERIFY(a[i].results[k] && b[i].results[k]);
            QVERIFY(a[i].results[k]->low == b[i].results[k]->low);
            QVERIFY(a[i].results[k]->high == b[i].results[k]->high);
            QVERIFY(a[i].results[k]->drivers == b[i].results[k]->drivers);
        }
}

void TestRunningProof::bandsHoldTheResultBetweenThem()
{
    const Sketch sketch = soundLoop();
    const Layout layout = proofLayoutOf(sketch);
    const Running running = runSteady(sketch, layout, Assumptions(sketch));
    const EngineWarmUp warm = runWarmUp(sketch, layout, running, Assumptions(sketch));
    const HeaterBands bands = runningBands(sketch, layout, {}, {}, few_samples).at(0);
    for (const auto& band : bands.results) {
        QVERIFY(band.has_value());
        QVERIFY(band->low <= band->middle && band->middle <= band->high);
    }
    const auto holds = [&](Banded which, double value) {
        return bands[which]->low <= value && value <= bands[which]->high;
    };
    QVERIFY(holds(Banded::flow_kg_per_s, running.loops[0].circulation.flow_kg_per_s));
    QVERIFY(holds(Banded::peak_outlet_degC, *warm.result.loops[0].peak_outlet_degC));
    QVERIFY(holds(Banded::cycles_per_hour, warm.result.loops[0].cycles_per_hour));
    QVERIFY(holds(Banded::target_h, *warm.result.target_s / 3600));
    QVERIFY(holds(Banded::block_at_end_degC, warm.result.block_at_end_degC));
    QVERIFY(holds(Banded::energy_kWh, warm.result.loops[0].energy_J / 3.6e6));
}

void TestRunningProof::aTargetOutOfReachIsReachedByNoSample()
{
    Sketch sketch = soundLoop();
    sketch.plan.target_degC = 95;
    const HeaterBands bands = runningBands(sketch, proofLayoutOf(sketch), {}, {}, few_samples).at(0);
    QVERIFY(!bands[Banded::target_h]);
    QVERIFY(bands[Banded::peak_outlet_degC]);
}

void TestRunningProof::airThatLocksTheLoopLocksBandsAndBoresToo_data()
{
    QTest::addColumn<QString>("name");
    for (const char* name : someOf(std::vector{"air-lock-lesson-1", "above-level", "clear-tube-rig"}, 3))
        QTest::newRow(name) << QString::fromLatin1(name);
}

void TestRunningProof::airThatLocksTheLoopLocksBandsAndBoresToo()
{
    QFETCH(QString, name);
    const Sketch sketch = sampleOf(name);
    ProofOptions with_bands;
    with_bands.bands = true;
    const Analysis analysis = proved(sketch, with_bands);
    QCOMPARE(analysis.running.loops.at(0).circulation.flow_kg_per_s, 0.0);
    const HeaterBands& bands = analysis.proof->bands.at(0);
    QVERIFY(bands[Banded::flow_kg_per_s]);
    QCOMPARE(bands[Banded::flow_kg_per_s]->high, 0.0);
    QVERIFY(!bands[Banded::target_h]);
    const LoopOutcome& outcome = analysis.proof->warm_up.result.loops.at(0);
    QVERIFY(bands[Banded::peak_outlet_degC]->low <= *outcome.peak_outlet_degC);
    QVERIFY(bands[Banded::peak_outlet_degC]->high >= *outcome.peak_outlet_degC);
    const auto drawn = std::find_if(analysis.proof->by_bore.begin(), analysis.proof->by_bore.end(),
                                    [](const BoreRow& row) { return row.drawn; });
    QVERIFY(drawn != analysis.proof->by_bore.end());
    QVERIFY(!drawn->runs && !drawn->target_h);
}

void TestRunningProof::theSeriesIsWrittenWithItsUnits()
{
    Sketch sketch = soundLoop();
    sketch.plan.hours = 1;
    sketch.heaters[0].id = "heater, \"A\"";
    sketch.hoses[supply_hose].edit([&](Hose& h) { h.to.heater = sketch.heaters[0].id; });
    sketch.hoses[return_hose].edit([&](Hose& h) { h.from.heater = sketch.heaters[0].id; });
    const Layout layout = proofLayoutOf(sketch);
    const Assumptions assumed;
    const EngineWarmUp warm = runWarmUp(sketch, layout, runSteady(sketch, layout, assumed), assumed);
    const QStringList lines = QString::fromStdString(csvOf(warm)).split(u'\n');
    QCOMPARE(std::size_t(lines.size()), warm.result.series.size() + 2); // names before, nothing after
    QVERIFY(lines[0].startsWith(QStringLiteral("time_s,block_degC,rest_degC,power_W,energy_kWh,"
                                               "\"heater, \"\"A\"\".outlet_degC\",")));
    QVERIFY(lines.back().isEmpty());
    const QStringList last = lines[lines.size() - 2].split(u',');
    QCOMPARE(last.size(), 5 + 8);
    const double half = 0.51e-6; // of the last digit written
    VERIFY_NEAR(last[0].toDouble(), warm.result.series.back().time_s, half);
    VERIFY_NEAR(last[1].toDouble(), warm.result.series.back().block_degC, half);
    VERIFY_NEAR(last[5].toDouble(), warm.result.series.back().loops[0].outlet_degC, half);
    QCOMPARE(csvOf({}), std::string("time_s,block_degC,rest_degC,power_W,energy_kWh\n"));
}

void TestRunningProof::onlyAssumptionsWhoseFactIsMissingAreListed()
{
    const auto listed = [](const Sketch& sketch, Assumed which) {
        const std::vector<Assumed> all = assumptionsIn(sketch);
        return std::find(all.begin(), all.end(), which) != all.end();
    };
    Sketch sketch = soundLoop();
    QVERIFY(!listed(sketch, Assumed::mass_per_litre));
    QVERIFY(!listed(sketch, Assumed::coolant_per_litre));
    QVERIFY(!listed(sketch, Assumed::thermostat_on));
    QVERIFY(!listed(sketch, Assumed::aluminium_heat));
    QVERIFY(listed(sketch, Assumed::iron_heat));
    QVERIFY(listed(sketch, Assumed::hose_end_loss));
    sketch.engine->mass_kg = {};
    sketch.engine->coolant_volume_l = {};
    sketch.engine->material.value = Material::aluminium;
    sketch.heaters[0].on_degC = {};
    sketch.heaters[0].thermostat = HeaterThermostat::outlet;
    QVERIFY(listed(sketch, Assumed::mass_per_litre));
    QVERIFY(listed(sketch, Assumed::coolant_per_litre));
    QVERIFY(listed(sketch, Assumed::thermostat_on));
    QVERIFY(listed(sketch, Assumed::aluminium_heat));
    QVERIFY(!listed(sketch, Assumed::iron_heat));
    QVERIFY(!listed(sketch, Assumed::sensing_share));
}

QTEST_APPLESS_MAIN(TestRunningProof)
#include "test_running_proof.moc"
