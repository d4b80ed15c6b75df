#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/paperwork/power_table.h"
#include "core/paperwork/sizing.h"
#include "core/running/running.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Sketch costed()
{
    Sketch sketch = soundLoop();
    sketch.supply.hours_per_night = 10;
    sketch.supply.tariff_per_kWh = 0.30;
    return sketch;
}

std::vector<PowerRow> tableOf(const Sketch& sketch)
{
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Assumptions assumed(sketch);
    const Running running = runSteady(sketch, layout, assumed);
    return powerTable(sketch, layout, fillOf(sketch, layout, &running, assumed), assumed);
}

const PowerRow& drawnIn(const std::vector<PowerRow>& rows)
{
    return *std::find_if(rows.begin(), rows.end(), [](const PowerRow& row) { return row.drawn; });
}

} // namespace

/// The table over stock powers.
class TestPowerTable : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyStockPowerHasItsRowAndTheDrawnOneIsMarked();
    void theDrawnRowIsTheWarmUpOfTheDrawing();
    void morePowerIsThereSoonerAndOnForLess();
    void aNightsEnergyIsPricedByTheTariff();
    void aSeasonIsItsNights();
    void aLongSeasonIsWithinThreePercentOfNightByNight();
    void withoutALoopTheEngineCountsAsOneLump();
    void twoHeatersCountTwice();
    void overFiveKilowattsInAllAPumpIsNamed();
    void whatIsNotEnteredHasNoFigure();
    void theInventedSeasonIsAWinter();
};

void TestPowerTable::everyStockPowerHasItsRowAndTheDrawnOneIsMarked()
{
    const std::vector<PowerRow> rows = tableOf(soundLoop());
    QCOMPARE(rows.size(), stock_powers_W.size()); // 1500 W is one of them
    QCOMPARE(std::count_if(rows.begin(), rows.end(), [](const PowerRow& row) { return row.drawn; }),
             std::ptrdiff_t{1});
    VERIFY_NEAR(drawnIn(rows).each_W, 1500, 0);
    // 1500 W rated for 120 V on 110 V is 1260.4 W, a row of its own in its place.
    Sketch low = soundLoop();
    low.heaters.front().actual_V.value = 110;
    const std::vector<PowerRow> more = tableOf(low);
    QCOMPARE(more.size(), stock_powers_W.size() + 1);
    VERIFY_NEAR(drawnIn(more).power_W, 1500 * (110.0 / 120) * (110.0 / 120), 1e-9);
    QVERIFY(std::is_sorted(more.begin(), more.end(),
                           [](const PowerRow& a, const PowerRow& b) { return a.power_W < b.power_W; }));
}

void TestPowerTable::theDrawnRowIsTheWarmUpOfTheDrawing()
{
    const Sketch sketch = costed();
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Assumptions assumed(sketch);
    const WarmUp warm = runWarmUp(sketch, layout, runSteady(sketch, layout, assumed), assumed).result;
    const std::vector<PowerRow> rows = tableOf(sketch);
    const PowerRow& row = drawnIn(rows);
    QVERIFY(row.by_warm_up && warm.target_s && row.target_h);
    VERIFY_NEAR(*row.target_h, *warm.target_s / 3600, 1e-9);
    VERIFY_NEAR(row.peak_outlet_degC.value_or(0), *warm.loops.front().peak_outlet_degC, 1e-9);
    // Ten hours of it, between samples of a minute.
    Sketch ten = sketch;
    ten.plan.hours = 10;
    const WarmUp night = runWarmUp(ten, layout, runSteady(ten, layout, assumed), assumed).result;
    QVERIFY(row.night.has_value());
    VERIFY_NEAR(row.night->kWh, night.energy_J / 3.6e6, 1500 * 60 / 3.6e6);
}

void TestPowerTable::morePowerIsThereSoonerAndOnForLess()
{
    const std::vector<PowerRow> rows = tableOf(soundLoop());
    double last_h = 1e9;
    for (const PowerRow& row : rows) {
        QVERIFY(row.duty >= 0 && row.duty <= 1);
        if (!row.target_h)
            continue;
        QVERIFY(*row.target_h < last_h);
        last_h = *row.target_h;
    }
    QVERIFY(last_h < 4);
    QVERIFY(!rows.front().target_h); // 500 W does not reach 20 degC: 656 W are needed to hold it
    VERIFY_NEAR(rows.front().duty, 1, 1e-6);
    QVERIFY(rows.back().duty < 0.5);
    QVERIFY(rows.back().peak_outlet_degC > rows.front().peak_outlet_degC);
}

void TestPowerTable::aNightsEnergyIsPricedByTheTariff()
{
    for (const PowerRow& row : tableOf(costed())) {
        QVERIFY(row.night && row.night->cost);
        VERIFY_NEAR(*row.night->cost, 0.30 * row.night->kWh, 1e-12);
        QVERIFY(row.night->kWh > 0 && row.night->kWh <= row.power_W * 10 / 1000 + 1e-9);
        QVERIFY(!row.season);
    }
}

void TestPowerTable::aSeasonIsItsNights()
{
    Sketch sketch = costed();
    sketch.supply.season = {{-15, 20}, {-25, 5}};
    const std::vector<PowerRow> rows = tableOf(sketch);
    // The same by hand: 20 nights in -15 and 5 in -25 degC.
    Sketch cold = sketch;
    cold.site.ambient_degC.value = -25;
    cold.supply.season.clear();
    const PowerRow there = drawnIn(tableOf(cold));
    const PowerRow& row = drawnIn(rows);
    QVERIFY(row.season && row.season->cost && there.night);
    const double sample_kWh = 25 * 1500 * 60 / 3.6e6;
    VERIFY_NEAR(row.season->kWh, 20 * row.night->kWh + 5 * there.night->kWh, sample_kWh);
    VERIFY_NEAR(*row.season->cost, 0.30 * row.season->kWh, 1e-9);
    VERIFY_NEAR(nightsIn(sketch.supply), 25, 0);
}

void TestPowerTable::aLongSeasonIsWithinThreePercentOfNightByNight()
{
    Sketch sketch = costed();
    sketch.supply.season = inventedSeason();
    const std::vector<PowerRow> rows = tableOf(sketch);
    std::vector<std::vector<PowerRow>> by_night;
    for (const ColdNights& night : inventedSeason()) {
        Sketch one = sketch;
        one.supply.season = {{night.ambient_degC, night.nights}};
        by_night.push_back(tableOf(one));
    }
    for (const double each_W : {750.0, 1500.0, 3000.0}) {
        double sum_kWh = 0;
        for (const std::vector<PowerRow>& table : by_night) {
            sum_kWh += std::find_if(table.begin(), table.end(), [&](const PowerRow& row) {
                           return row.each_W == each_W;
                       })->season->kWh;
        }
        const auto row =
            std::find_if(rows.begin(), rows.end(), [&](const PowerRow& one) { return one.each_W == each_W; });
        qInfo("%g W: %.1f kWh, night by night %.1f", each_W, row->season->kWh, sum_kWh);
        VERIFY_NEAR(row->season->kWh / sum_kWh, 1, 0.03);
    }
}

void TestPowerTable::withoutALoopTheEngineCountsAsOneLump()
{
    Sketch sketch = costed();
    sketch.hoses.clear();
    sketch.heaters.clear();
    const std::vector<PowerRow> rows = tableOf(sketch);
    QCOMPARE(rows.size(), stock_powers_W.size());
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Sizing sizing = sizingOf(sketch, layout, Assumptions(sketch));
    for (const PowerRow& row : rows) {
        QVERIFY(!row.by_warm_up && !row.drawn && !row.peak_outlet_degC);
        const auto by_hand = timeTo_s(sizing.lump, row.power_W, {-15, -15, 20});
        QCOMPARE(row.target_h.has_value(), by_hand.has_value());
        if (by_hand)
            VERIFY_NEAR(*row.target_h, *by_hand / 3600, 1e-9);
        // Held midway between a usual thermostat's 38 and 49 degC, or as far as the power goes.
        QVERIFY(row.final_degC <= 43.5 + 1e-9);
        QVERIFY(row.night && row.night->kWh <= row.power_W * 10 / 1000 + 1e-9);
    }
    // 15.2 W/K (see test_sizing): 500 W end at -15 + 32.9 = 17.9 degC, nearly there after a day.
    VERIFY_NEAR(rows.front().final_degC, 17.9, 2);
}

void TestPowerTable::twoHeatersCountTwice()
{
    Sketch sketch = soundLoop();
    Heater second = sketch.heaters.front();
    second.id = "heater-2";
    second.power_W.value = 750;
    sketch.heaters.push_back(second); // without hoses: its loop is not closed
    const std::vector<PowerRow> rows = tableOf(sketch);
    VERIFY_NEAR(rows.front().power_W, 1000, 0);
    VERIFY_NEAR(drawnIn(rows).power_W, 2250, 1e-9);
    QCOMPARE(rows.size(), stock_powers_W.size() + 1); // unlike heaters are no stock row
    // The one loop that is closed runs without a pause on 500 W, and the share says so.
    VERIFY_NEAR(rows.front().duty, 1, 1e-6);
}

void TestPowerTable::overFiveKilowattsInAllAPumpIsNamed()
{
    Sketch sketch = soundLoop();
    for (const PowerRow& row : tableOf(sketch))
        QVERIFY(!row.wants_pump);
    Heater second = sketch.heaters.front();
    second.id = "heater-2";
    sketch.heaters.push_back(second);
    for (const PowerRow& row : tableOf(sketch))
        QCOMPARE(row.wants_pump, row.each_W > 2500);
}

void TestPowerTable::whatIsNotEnteredHasNoFigure()
{
    for (const PowerRow& row : tableOf(soundLoop()))
        QVERIFY(!row.night && !row.season);
    Sketch no_tariff = costed();
    no_tariff.supply.tariff_per_kWh.reset();
    no_tariff.supply.season = {{-10, 3}};
    for (const PowerRow& row : tableOf(no_tariff)) {
        QVERIFY(row.night && !row.night->cost);
        QVERIFY(row.season && !row.season->cost);
    }
    QVERIFY(tableOf({}).empty());
}

void TestPowerTable::theInventedSeasonIsAWinter()
{
    Supply supply;
    supply.season = inventedSeason();
    VERIFY_NEAR(nightsIn(supply), 150, 0);
    QVERIFY(std::is_sorted(
        supply.season.begin(), supply.season.end(),
        [](const ColdNights& a, const ColdNights& b) { return a.ambient_degC < b.ambient_degC; }));
}

QTEST_APPLESS_MAIN(TestPowerTable)
#include "test_power_table.moc"
