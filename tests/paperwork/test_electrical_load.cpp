#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/paperwork/electrical_load.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

bool says(const std::vector<Message>& messages, const char* words)
{
    return std::any_of(messages.begin(), messages.end(), [words](const Message& message) {
        return format(message, UnitSystem::metric).find(words) != std::string::npos;
    });
}

/// 1500 W at 120 V, on 30 m of 10 AWG copper.
Sketch supplied()
{
    Sketch sketch = soundLoop();
    sketch.supply.volts_V = 120;
    sketch.supply.phases = 1;
    sketch.supply.conductor = "10 AWG";
    sketch.supply.one_way_m = 30;
    return sketch;
}

} // namespace

/// The load of a drawn job on its supply.
class TestElectricalLoad : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void oneHeaterOnItsSupply();
    void twoHeatersAddUp();
    void aHeaterOnAnotherVoltageTakesItBySquare();
    void twiceTheVoltageIsCalledOut();
    void whatIsNotEnteredIsSaid();
    void aSizeThatIsNotInTheTablesIsRefused();
    void phasesThatDoNotFitAreRefused();
    void singlePhaseHeatersAreSharedOutOverThreePhases();
    void anAbsurdSupplyIsRefused();
    void aDropOverTheAdviceIsPointedOut();
};

void TestElectricalLoad::oneHeaterOnItsSupply()
{
    const ElectricalLoad load = electricalLoadOf(supplied());
    QVERIFY(load.missing.empty());
    VERIFY_NEAR(load.power_W.value_or(0), 1500, 1e-9);
    VERIFY_NEAR(load.current_A.value_or(0), 12.5, 1e-9);
    VERIFY_NEAR(load.continuous_A.value_or(0), 15.625, 1e-9); // NEC 210.20(A)
    // 2 x 0.030 km x 1.24/0.3048 ohm/km x 12.5 A = 3.0512 V, 2.54 %.
    QVERIFY(load.drop.has_value());
    VERIFY_NEAR(load.drop->drop_V, 3.0512, 1e-4);
    VERIFY_NEAR(load.drop->percent, 2.5427, 1e-3);
    QVERIFY(load.remarks.empty());
}

void TestElectricalLoad::twoHeatersAddUp()
{
    Sketch sketch = supplied();
    Heater second = sketch.heaters.front();
    second.id = "heater-2";
    second.power_W.value = 1000;
    sketch.heaters.push_back(second);
    const ElectricalLoad load = electricalLoadOf(sketch);
    VERIFY_NEAR(load.power_W.value_or(0), 2500, 1e-9);
    VERIFY_NEAR(load.current_A.value_or(0), 2500.0 / 120, 1e-9);
    sketch.heaters.back().power_W.value.reset();
    QVERIFY(!electricalLoadOf(sketch).power_W); // one unknown: no sum is invented
    QVERIFY(!electricalLoadOf(sketch).drop);
}

void TestElectricalLoad::aHeaterOnAnotherVoltageTakesItBySquare()
{
    Sketch sketch = supplied();
    sketch.heaters.front().rated_V.value = 240;
    sketch.heaters.front().actual_V.value = 208;
    sketch.supply.volts_V = 208;
    const ElectricalLoad load = electricalLoadOf(sketch);
    VERIFY_NEAR(load.power_W.value_or(0), 1500 * (208.0 / 240) * (208.0 / 240), 1e-9);
    QVERIFY(load.remarks.empty());
}

void TestElectricalLoad::twiceTheVoltageIsCalledOut()
{
    Sketch sketch = supplied();
    sketch.supply.volts_V = 240;
    const ElectricalLoad load = electricalLoadOf(sketch);
    QVERIFY(load.heaters.front().over_rated);
    QVERIFY(says(load.remarks, "do not connect it"));
    QVERIFY(says(load.remarks, "6000 W"));
    QVERIFY(says(load.remarks, "the supply has 240 V")); // and the warm-up is computed at another
    sketch.supply.volts_V = 126;                         // within what supplies vary
    QVERIFY(!electricalLoadOf(sketch).heaters.front().over_rated);
}

void TestElectricalLoad::whatIsNotEnteredIsSaid()
{
    const ElectricalLoad load = electricalLoadOf(soundLoop());
    QVERIFY(says(load.missing, "The supply's voltage is not entered"));
    QVERIFY(says(load.missing, "conductor's size is not entered"));
    QVERIFY(says(load.missing, "length of the run is not entered"));
    QVERIFY(!load.drop);
    VERIFY_NEAR(load.current_A.value_or(0), 12.5, 1e-9); // on its own 120 V
    QVERIFY(says(load.missing, "counted at 120 V"));
    Sketch two = soundLoop();
    two.heaters.push_back(two.heaters.front());
    VERIFY_NEAR(electricalLoadOf(two).current_A.value_or(0), 25, 1e-9); // both on 120 V
    two.heaters.back().actual_V.value.reset();
    two.heaters.back().rated_V.value = 240; // no supply is both
    QVERIFY(!electricalLoadOf(two).current_A);
    QVERIFY(says(electricalLoadOf(two).missing, "of all heaters together is not computed"));
    Sketch bare = soundLoop();
    bare.heaters.front().rated_V.value.reset();
    bare.heaters.front().actual_V.value.reset();
    QVERIFY(!electricalLoadOf(bare).heaters.front().missing.empty());
    QVERIFY(!electricalLoadOf(bare).current_A);
    QVERIFY(!electricalLoadOf({}).power_W); // no heater is no load of 0
}

void TestElectricalLoad::aSizeThatIsNotInTheTablesIsRefused()
{
    Sketch sketch = supplied();
    sketch.supply.conductor = "13 AWG";
    ElectricalLoad load = electricalLoadOf(sketch);
    QVERIFY(says(load.missing, "13 AWG is not a size of the tables"));
    QVERIFY(!load.drop && !load.ohm_per_km);
    sketch.supply.conductor = "2.5 mm2";
    sketch.supply.material = ConductorMaterial::aluminium;
    load = electricalLoadOf(sketch);
    QVERIFY(says(load.missing, "not in the tables in aluminium"));
    QVERIFY(!load.drop);
}

void TestElectricalLoad::phasesThatDoNotFitAreRefused()
{
    Sketch sketch = supplied();
    sketch.heaters.front().phases = 3;
    const ElectricalLoad load = electricalLoadOf(sketch);
    QVERIFY(load.heaters.front().missing.find("three phases") != std::string::npos);
    QVERIFY(!load.current_A && !load.drop);
    sketch.supply.phases = 3;
    sketch.heaters.front().rated_V.value = 208;
    sketch.supply.volts_V = 208;
    VERIFY_NEAR(electricalLoadOf(sketch).current_A.value_or(0), 4.16358, 1e-4); // 1500/(1.7321 x 208)
}

void TestElectricalLoad::singlePhaseHeatersAreSharedOutOverThreePhases()
{
    Sketch sketch = supplied();
    sketch.supply.phases = 3;
    const Heater one = sketch.heaters.at(0);
    const auto sharedAmong = [&](int heaters) {
        sketch.heaters.assign(std::size_t(heaters), one);
        for (int i = 0; i < heaters; ++i)
            sketch.heaters[std::size_t(i)].id = "heater-" + std::to_string(i + 1);
        return electricalLoadOf(sketch);
    };
    QVERIFY(!sharedAmong(1).shared_A);
    // Two on two pairs: |12.5 - 12.5 at 120 degrees| = 12.5 sqrt(3) in the conductor they share.
    VERIFY_NEAR(sharedAmong(2).shared_A.value_or(0), 12.5 * std::sqrt(3.0), 1e-9);
    VERIFY_NEAR(sharedAmong(2).current_A.value_or(0), 25, 1e-9); // counted on one pair
    // Three, one on each pair, are a balanced load in delta: line current sqrt(3) of the phase current.
    VERIFY_NEAR(sharedAmong(3).shared_A.value_or(0), 12.5 * std::sqrt(3.0), 1e-9);
    // Nine, over what is tried in every way: three on each pair.
    VERIFY_NEAR(sharedAmong(9).shared_A.value_or(0), 37.5 * std::sqrt(3.0), 1e-9);
    QVERIFY(says(sharedAmong(3).remarks, "21.7 A"));
}

void TestElectricalLoad::anAbsurdSupplyIsRefused()
{
    for (const double volts_V : {0.0, 1001.0}) {
        Sketch sketch = supplied();
        sketch.supply.volts_V = volts_V;
        const ElectricalLoad load = electricalLoadOf(sketch);
        QVERIFY(!load.current_A && !load.drop && !load.heaters.front().missing.empty());
    }
    for (const double metres : {0.0, 1500.0}) {
        Sketch sketch = supplied();
        sketch.supply.one_way_m = metres;
        const ElectricalLoad load = electricalLoadOf(sketch);
        QVERIFY(!load.drop);
        QVERIFY(says(load.missing, "run's length has to be"));
        VERIFY_NEAR(load.current_A.value_or(0), 12.5, 1e-9);
    }
}

void TestElectricalLoad::aDropOverTheAdviceIsPointedOut()
{
    Sketch sketch = supplied();
    sketch.supply.one_way_m = 35; // 2.97 %
    QVERIFY(!says(electricalLoadOf(sketch).remarks, "advised"));
    sketch.supply.one_way_m = 36; // 3.05 %
    QVERIFY(says(electricalLoadOf(sketch).remarks, "advised"));
}

QTEST_APPLESS_MAIN(TestElectricalLoad)
#include "test_electrical_load.moc"
