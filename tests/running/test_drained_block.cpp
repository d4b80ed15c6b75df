#include "tests/near.h"
#include "tests/sound_loop.h"

#include "core/running/fill_words.h"
#include "core/running/running.h"

#include <QTest>

#include <algorithm>

using namespace siphonwright;
using siphonwright::test::soundLoop;

namespace {

Sketch drainedLoop()
{
    Sketch sketch = soundLoop();
    sketch.fill.start = FillStart::block_drained;
    return sketch;
}

/// The sound loop's jacket stands from 400 to 800 mm and holds 30 l: 75 ml a mm. The tank over it, to cold
/// full at 880 mm, holds what is assumed.
constexpr double jacket_ml_per_mm = 75;
double tank_ml(const Sketch& sketch)
{
    return 80 * std::max(1.0, Assumptions(sketch)[Assumed::tank_per_metre] * 30);
}

Drained drainedOf(const Sketch& sketch)
{
    return drainedBlock(sketch, resolve(sketch, plumbOf(sketch)), Assumptions(sketch)).value_or(Drained{});
}

Filling filled(const Sketch& sketch)
{
    return fillOf(sketch, resolve(sketch, plumbOf(sketch)), nullptr, Assumptions(sketch));
}

FillPlanOf planOf(const Sketch& sketch)
{
    return fillRequestOf(sketch, resolve(sketch, plumbOf(sketch)), Assumptions(sketch));
}

} // namespace

class TestDrainedBlock : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLitresLetOutLeaveALevel()
    {
        Sketch sketch = drainedLoop();
        sketch.fill.drained_l = 15;
        // First the tank runs out, the rest of the 15 l leaves the jacket.
        VERIFY_NEAR(drainedOf(sketch).level_mm, 800 - (15'000 - tank_ml(sketch)) / jacket_ml_per_mm, 1e-9);
        VERIFY_NEAR(drainedOf(sketch).drained_ml, 15'000, 1e-9);
        sketch.fill.drained_l = tank_ml(sketch) / 1000 / 4;
        VERIFY_NEAR(drainedOf(sketch).level_mm, 860, 1e-9);
    }

    void moreThanIsInItEmptiesIt()
    {
        Sketch sketch = drainedLoop();
        sketch.fill.drained_l = 100;
        VERIFY_NEAR(drainedOf(sketch).level_mm, 400, 1e-9);
        VERIFY_NEAR(drainedOf(sketch).drained_ml, 30'000 + tank_ml(sketch), 1e-9);
    }

    /// Crown of an opening: z + (d/2) k, d its own bore, k the level part of its axis. Worked by hand for the
    /// supply port at z 440 with its bore of 19 mm, all upright.
    void nothingEnteredIsDownToTheTopOfTheLowerPort()
    {
        Sketch sketch = drainedLoop();
        // It points straight down: k = 0, 440 + 9.5 * 0. Then 800 - 440 = 360 mm of jacket are let out.
        VERIFY_NEAR(drainedOf(sketch).level_mm, 440, 1e-9);
        VERIFY_NEAR(drainedOf(sketch).drained_ml, 360 * jacket_ml_per_mm + tank_ml(sketch), 1e-6);
        // Sideways: k = 1, 440 + 9.5 = 449.5. The hose end of 15 mm bore counts for nothing.
        sketch.ports[0].axis = {90, 0};
        VERIFY_NEAR(drainedOf(sketch).level_mm, 449.5, 1e-9);
        VERIFY_NEAR(drainedOf(sketch).drained_ml, 350.5 * jacket_ml_per_mm + tank_ml(sketch), 1e-6);
        // 60 degrees down: k = cos 60 = 1/2, 440 + 4.75.
        sketch.ports[0].axis = {0, -60};
        VERIFY_NEAR(drainedOf(sketch).level_mm, 444.75, 1e-9);
    }

    void aPortWithoutABoreIsTakenAsWideAsItsHoseEnd()
    {
        Sketch sketch = drainedLoop();
        sketch.ports[0].axis = {90, 0};
        sketch.ports[0].bore_mm = {};
        // 440 + 15 / 2.
        VERIFY_NEAR(drainedOf(sketch).level_mm, 447.5, 1e-9);
    }

    void theLowerOfThePortsCounts()
    {
        Sketch sketch = drainedLoop();
        sketch.ports[0].axis = {90, 0};
        sketch.ports[0].position.z = 720;
        // The return port at 700 faces sideways: 700 + 9.5.
        VERIFY_NEAR(drainedOf(sketch).level_mm, 709.5, 1e-9);
    }

    void otherStartsAreNotDrained()
    {
        for (const FillStart start : {FillStart::block_full, FillStart::all_empty, FillStart::hoses_full}) {
            Sketch sketch = drainedLoop();
            sketch.fill.start = start;
            QVERIFY(!planOf(sketch).drained);
            QVERIFY(!filled(sketch).drained_ml);
        }
    }

    /// The jacket ends as full as it was before: what is poured in is what was let out and what the hoses and
    /// the heater have taken.
    void whatWasLetOutIsPouredInAgain()
    {
        for (const bool valves : {true, false}) {
            for (const double drained_l : {0.0, 2.0, 15.0, 27.0, 100.0}) {
                Sketch sketch = drainedLoop();
                sketch.fill.drained_l = drained_l;
                for (Shared<Hose>& hose : sketch.hoses)
                    hose.edit([&](Hose& h) { h.parts.resize(valves ? h.parts.size() : 0); });
                const Filling filling = filled(sketch);
                QCOMPARE(filling.missing, std::string());
                QCOMPARE(filling.status, FillStatus::filled);
                VERIFY_NEAR(filling.level_mm, 880, 1e-4);
                VERIFY_NEAR(filling.drained_ml.value_or(-1), drainedOf(sketch).drained_ml, 1e-9);
                VERIFY_NEAR(filling.refill_ml, *filling.drained_ml + filling.coolant_ml, 0.01);
            }
        }
    }

    /// With the block drained under both ports nothing runs into the hoses when the valves are opened, and
    /// all of it comes from below: as if engine and hoses were filled together, what is left being in it.
    void drainedUnderThePortsItFillsAsFromEmpty()
    {
        Sketch sketch = drainedLoop();
        sketch.fill.drained_l = 29 + tank_ml(sketch) / 1000;
        Sketch empty = soundLoop();
        empty.fill.start = FillStart::all_empty;
        VERIFY_NEAR(drainedOf(sketch).level_mm, 800 - 29'000 / jacket_ml_per_mm, 1e-9);
        const Filling one = filled(sketch);
        const Filling other = filled(empty);
        VERIFY_NEAR(one.coolant_ml, other.coolant_ml, 1e-3);
        QCOMPARE(one.pockets.size(), other.pockets.size());
    }

    void itIsSaid()
    {
        Sketch sketch = drainedLoop();
        sketch.fill.drained_l = 15;
        const std::string begins = format(beginningOf(planOf(sketch)), UnitSystem::metric);
        QVERIFY2(begins.find("15 l of coolant was let out of the engine, down to ") == 0, begins.c_str());
        const std::string ends = format(endOf(filled(sketch)), UnitSystem::metric);
        QVERIFY2(ends.find("15 l was let out before, and ") != std::string::npos, ends.c_str());
    }

    void itIsSaidInInchesAndQuarts()
    {
        Sketch sketch = drainedLoop();
        sketch.fill.drained_l = 15;
        // 15 l / 0.946353 l = 15.85 qt.
        const std::string ends = format(endOf(filled(sketch)), UnitSystem::inch);
        QVERIFY2(ends.find("15.9 qt was let out before, and ") != std::string::npos, ends.c_str());
        // 449.5 mm / 25.4 = 17.697 in, nearest to 17 11/16 = 17.6875.
        sketch.fill.drained_l.reset();
        sketch.ports[0].axis = {90, 0};
        const std::string begins = format(beginningOf(planOf(sketch)), UnitSystem::inch);
        QVERIFY2(begins.find(" qt of coolant was let out of the engine, down to 17 11/16 in;") !=
                     std::string::npos,
                 begins.c_str());
    }
};

QTEST_APPLESS_MAIN(TestDrainedBlock)
#include "test_drained_block.moc"
