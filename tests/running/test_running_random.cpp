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

} // namespace

class TestRunningRandom : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void anySketchGivesNumbers();
};

void TestRunningRandom::anySketchGivesNumbers()
{
    for (unsigned seed = 1; seed <= 200; ++seed) {
        Sketch sketch = RandomFiller(seed).sketch();
        sketch.plan.hours = std::min(sketch.plan.hours, 4.0);
        const std::string bad = notFinite(provedWithoutBands(sketch));
        QVERIFY2(bad.empty(), ("seed " + std::to_string(seed) + ": " + bad).c_str());
    }
}

QTEST_APPLESS_MAIN(TestRunningRandom)
#include "test_running_random.moc"
