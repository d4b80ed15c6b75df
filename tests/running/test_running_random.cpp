#include "tests/random_runs.h"
#include "tests/sketch/random_sketch.h"
#include "tests/sound_loop.h"

#include "core/analysis/analysis.h"

#include <QTest>

#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

bool finite(const std::optional<double>& value)
{
    return !value || std::isfinite(*value);
}

bool finite(const Message& message)
{
    for (const Quantity& quantity : message.quantities)
        if (!std::isfinite(quantity.value))
            return false;
    return true;
}

bool finite(const Circulation& c)
{
    bool all = finite(c.message);
    for (const double value : {c.flow_kg_per_s, c.heater_inlet_degC, c.heater_outlet_degC, c.drive_Pa,
                               c.resistance_Pa, c.drive_mm, c.resistance_mm, c.pocket_mm})
        all = all && std::isfinite(value);
    for (const ElementState& e : c.elements)
        all = all && std::isfinite(e.mean_degC) && std::isfinite(e.reynolds) && std::isfinite(e.loss_Pa);
    for (const PartLoss& part : c.parts)
        all = all && std::isfinite(part.share);
    return all;
}

bool finite(const EngineWarmUp& warm)
{
    const WarmUp& w = warm.result;
    bool all = finite(w.message) && finite(w.target_s);
    for (const double value : {w.block_at_end_degC, w.rest_at_end_degC, w.energy_J, w.lost_J, w.stored_J})
        all = all && std::isfinite(value);
    for (const LoopOutcome& o : w.loops)
        all = all && finite(o.peak_outlet_degC) && finite(o.boiling_margin_K) && finite(o.return_warm_s) &&
              std::isfinite(o.cycles_per_hour) && std::isfinite(o.energy_J) &&
              std::isfinite(o.at_end.return_surface_degC) && std::isfinite(o.at_end.flow_kg_per_s);
    for (const WarmUpSample& sample : w.series)
        all = all && std::isfinite(sample.block_degC) && std::isfinite(sample.power_W);
    return all;
}

bool finite(const Finding& finding)
{
    return finite(finding.measured) && finite(finding.limit) && finite(finding.text) && finite(finding.fix);
}

/// Empty when all of an analysis is numbers, else what is not.
std::string notFinite(const Analysis& analysis)
{
    for (const LoopRun& run : analysis.running.loops)
        if (!finite(run.circulation))
            return "circulation of " + run.heater;
    for (const Finding& finding : analysis.findings)
        if (!finite(finding))
            return finding.rule;
    if (!analysis.proof)
        return "no proof";
    if (!finite(analysis.proof->warm_up))
        return "warm-up";
    for (const BoreRow& row : analysis.proof->by_bore)
        if (!std::isfinite(row.flow_kg_per_s) || !finite(row.peak_outlet_degC) || !finite(row.target_h))
            return "table by bore";
    return {};
}

Analysis provedWithoutBands(const Sketch& sketch)
{
    ProofOptions options;
    options.bands = false;
    return proved(sketch, options);
}

/// A random fact in the place of a sensible one, where it is known: an unknown one would only end the job.
template <class T>
void take(Fact<T>& fact, const Fact<T>& other)
{
    if (other.known())
        fact = other;
}

/// Temperatures in which nothing is computed because they are beyond all reason are left to other tests.
void takeDegC(Fact<double>& fact, const Fact<double>& other)
{
    if (other.known() && std::abs(*other.value) < 60)
        fact = other;
}

/// Random sketches seldom have a whole loop. Here the loop is whole, and what it is fed with is not sensible.
Sketch nonsense(unsigned seed)
{
    const Sketch random = RandomFiller(seed).sketch();
    Sketch sketch = soundLoop();
    takeDegC(sketch.site.ambient_degC, random.site.ambient_degC);
    takeDegC(sketch.site.coldest_ambient_degC, random.site.coldest_ambient_degC);
    take(sketch.site.wind_m_per_s, random.site.wind_m_per_s);
    take(sketch.site.altitude_m, random.site.altitude_m);
    sketch.site.envelope_along_percent = random.site.envelope_along_percent;
    sketch.site.envelope_across_percent = random.site.envelope_across_percent;
    if (random.coolant.glycol != Glycol::unknown)
        sketch.coolant.glycol = random.coolant.glycol;
    take(sketch.coolant.volume_percent, random.coolant.volume_percent);
    take(sketch.coolant.cap_pressure_kPa, random.coolant.cap_pressure_kPa);
    if (random.plan.start_degC && std::abs(*random.plan.start_degC) < 60)
        sketch.plan.start_degC = random.plan.start_degC;
    sketch.plan.hours = 2;
    sketch.fill = random.fill;
    sketch.assumptions = random.assumptions;
    Heater& heater = sketch.heaters[0];
    for (const Heater& other : random.heaters) {
        take(heater.power_W, other.power_W);
        take(heater.rated_V, other.rated_V);
        take(heater.actual_V, other.actual_V);
        if (other.on_degC.known() && other.off_degC.known() && *other.on_degC.value < *other.off_degC.value) {
            heater.on_degC = other.on_degC;
            heater.off_degC = other.off_degC;
        }
        heater.cut_out = other.cut_out;
        heater.chamber_bore_mm = other.chamber_bore_mm;
        heater.diameter_mm = other.diameter_mm;
    }
    if (random.engine) {
        take(sketch.engine->mass_kg, random.engine->mass_kg);
        take(sketch.engine->coolant_volume_l, random.engine->coolant_volume_l);
        take(sketch.engine->displacement_l, random.engine->displacement_l);
    }
    for (const Shared<Hose>& other : random.hoses)
        sketch.hoses[return_hose].edit([&](Hose& hose) {
            take(hose.bore_mm, other->bore_mm);
            hose.wall_mm = other->wall_mm;
            hose.insulation_mm = other->insulation_mm;
            hose.to.bore_mm = other->to.bore_mm;
        });
    return sketch;
}

} // namespace

class TestRunningRandom : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void anySketchGivesNumbers();
    void aSoundLoopWithAnyFactsGivesNumbers();
};

void TestRunningRandom::anySketchGivesNumbers()
{
    const unsigned seeds = unsigned(test::runs(200, 1000));
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        Sketch sketch = RandomFiller(seed).sketch();
        sketch.plan.hours = std::min(sketch.plan.hours, 4.0);
        const std::string bad = notFinite(provedWithoutBands(sketch));
        QVERIFY2(bad.empty(), ("seed " + std::to_string(seed) + ": " + bad).c_str());
    }
}

void TestRunningRandom::aSoundLoopWithAnyFactsGivesNumbers()
{
    int steady = 0;
    int warmed = 0;
    int filled = 0;
    const unsigned seeds = unsigned(test::runs(40, 1000));
    for (unsigned seed = 1; seed <= seeds; ++seed) {
        const Analysis analysis = provedWithoutBands(nonsense(seed));
        const std::string bad = notFinite(analysis);
        QVERIFY2(bad.empty(), ("seed " + std::to_string(seed) + ": " + bad).c_str());
        steady += analysis.running.loops[0].missing.empty() ? 1 : 0;
        warmed += analysis.proof->warm_up.result.loops.empty() ? 0 : 1;
        filled += analysis.proof->filling.missing.empty() ? 1 : 0;
    }
    // So that the test cannot pass by computing nothing.
    QVERIFY2(
        steady * 4 >= int(seeds) && warmed * 4 >= int(seeds) && filled * 4 >= int(seeds),
        qPrintable(QStringLiteral("%1 steady, %2 warmed, %3 filled").arg(steady).arg(warmed).arg(filled)));
}

QTEST_APPLESS_MAIN(TestRunningRandom)
#include "test_running_random.moc"
