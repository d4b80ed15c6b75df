#include "tests/near.h"
#include "tests/running_view/warm_loop.h"

#include "core/analysis/analysis.h"
#include "core/running/loop_figures.h"

#include <QTest>

using namespace siphonwright;
using namespace siphonwright::test;

class TestLoopFigures : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theFlowByVolumeIsTheMassFlowOverTheDensityAtTheInlet();
    void theReturnIsHottestAtTheHeater();
    void theSupplyEndsAtTheInletsTemperature();
    void betweenTwoPlacesTheTemperatureIsBetween();
    void nothingIsSaidOfAHoseInWhichNothingFlows();
    void theLargestLossesComeFirst();
};

void TestLoopFigures::theFlowByVolumeIsTheMassFlowOverTheDensityAtTheInlet()
{
    const Sketch sketch = warmLoop();
    const Analysis analysis = analyse(sketch);
    const Circulation& found = analysis.running.loops.at(0).circulation;
    QCOMPARE(found.status, CirculationStatus::circulates);
    const CoolantOf coolant = coolantOf(sketch, Assumptions(sketch));
    const double density = coolant.fluid->at(found.heater_inlet_degC).density_kg_per_m3;
    VERIFY_NEAR(flowByVolume_l_per_min(found), found.flow_kg_per_s / density * 60000, 1e-3);
    Circulation backward = found;
    backward.flow_kg_per_s = -found.flow_kg_per_s;
    VERIFY_NEAR(flowByVolume_l_per_min(backward), -flowByVolume_l_per_min(found), 1e-12);
}

void TestLoopFigures::theReturnIsHottestAtTheHeater()
{
    const Analysis analysis = analyse(warmLoop());
    const LoopRun& run = analysis.running.loops.at(0);
    const std::vector<HoseTemperature> along = temperaturesAlong(run, HoseRole::return_);
    QVERIFY(along.size() > 2);
    VERIFY_NEAR(along.front().degC, run.circulation.heater_outlet_degC, 1e-6);
    for (std::size_t i = 1; i < along.size(); ++i)
        QVERIFY(along[i].degC <= along[i - 1].degC && along[i].along_mm >= along[i - 1].along_mm);
    // Its stretches are as long as the path they were made from.
    const ResolvedHose* hose = analysis.layout.hose("hose-2");
    VERIFY_NEAR(along.back().along_mm, (*hose)->path.line.length(), 1e-6);
}

void TestLoopFigures::theSupplyEndsAtTheInletsTemperature()
{
    const Analysis analysis = analyse(warmLoop());
    const LoopRun& run = analysis.running.loops.at(0);
    const std::vector<HoseTemperature> along = temperaturesAlong(run, HoseRole::supply);
    VERIFY_NEAR(along.back().degC, run.circulation.heater_inlet_degC, 1e-6);
    QVERIFY(along.front().degC > along.back().degC);
}

void TestLoopFigures::betweenTwoPlacesTheTemperatureIsBetween()
{
    const std::vector<HoseTemperature> along{{0, 50}, {100, 40}, {300, 36}};
    VERIFY_NEAR(temperatureAt(along, 25), 47.5, 1e-12);
    VERIFY_NEAR(temperatureAt(along, 200), 38, 1e-12);
    VERIFY_NEAR(temperatureAt(along, -5), 50, 1e-12);
    VERIFY_NEAR(temperatureAt(along, 400), 36, 1e-12);
    QVERIFY(std::isnan(temperatureAt({}, 0)));
}

void TestLoopFigures::nothingIsSaidOfAHoseInWhichNothingFlows()
{
    Sketch sketch = warmLoop();
    Hose shut = *sketch.hoses[supply_hose];
    shut.parts[0].open = false;
    sketch.hoses[supply_hose] = Shared<Hose>(shut);
    const Analysis analysis = analyse(sketch);
    QCOMPARE(analysis.running.loops.at(0).circulation.status, CirculationStatus::closed);
    QVERIFY(temperaturesAlong(analysis.running.loops.at(0), HoseRole::supply).empty());
}

void TestLoopFigures::theLargestLossesComeFirst()
{
    const Analysis analysis = analyse(warmLoop());
    const std::vector<NamedLoss> losses = largestLosses(analysis.running.loops.at(0), 3);
    QCOMPARE(losses.size(), std::size_t(3));
    QVERIFY(losses[0].share >= losses[1].share && losses[1].share >= losses[2].share);
    double largest = 0;
    for (const PartLoss& loss : analysis.running.loops.at(0).circulation.parts)
        largest = std::max(largest, loss.share);
    VERIFY_NEAR(losses[0].share, largest, 1e-12);
}

QTEST_APPLESS_MAIN(TestLoopFigures)
#include "test_loop_figures.moc"
