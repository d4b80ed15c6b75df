#include "tests/air/random_loops.h"
#include "tests/air/worked_loop.h"
#include "tests/near.h"

#include "core/air/pocket.h"

#include <algorithm>

using namespace siphonwright;
using siphonwright::test::Dice;
using siphonwright::test::jacketStart;
using siphonwright::test::Ledger;
using siphonwright::test::ledgerOf;
using siphonwright::test::randomCampaign;
using siphonwright::test::workedFill;

namespace {

FillRequest prefilled(double air_ml = 0)
{
    FillRequest request = workedFill();
    request.prefilled = true;
    request.prefilled_air_ml = air_ml;
    return request;
}

/// Liquid in jacket, hoses and chambers, less what was put in, as a share of the whole.
double lostLiquid(const FillResult& result, const FillRequest& request)
{
    const FillNetwork& network = *result.end.network;
    return ledgerOf(network, result.end.state, jacketStart(network, request.target_level_mm),
                    result.poured_ml, 1)
        .liquid;
}

/// Gas in the loops and gone, ml at the atmosphere: what came in.
double gasBroughtIn(const FillResult& result)
{
    double gas = result.end.state.gas_out;
    for (std::size_t i = 1; i < result.end.state.cells.size(); ++i)
        gas += result.end.state.cells[i].gas;
    return gas / result.end.state.atmosphere_mm;
}

} // namespace

/// Hoses and chamber filled before they are connected.
class TestPrefilled : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aHumpInAPrefilledHoseKeepsNoAir()
    {
        // Filled from empty the same hump keeps 71.33 ml (worked by hand, test_worked_fill).
        QVERIFY(airPockets(fill(workedFill()).end).at(0).gas_ml > 71);
        const FillRequest request = prefilled();
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        QVERIFY(airPockets(result.end).empty());
        VERIFY_NEAR(result.coolant_ml, result.end.network->hoses_and_chambers_ml, 1e-9);
        VERIFY_NEAR(result.jacket_level_mm, 900, 1e-6);
        VERIFY_NEAR(lostLiquid(result, request), 0, 1e-12);
    }

    void theElementOfAPrefilledHeaterIsCovered()
    {
        FillRequest request = prefilled();
        request.loops[0].element_top_mm = 250;
        const FillResult result = fill(request);
        QCOMPARE(result.covered_at_mm.size(), std::size_t{1});
        VERIFY_NEAR(result.covered_at_mm[0].value(), 900, 1e-3);
    }

    void airLeftInAHoseIsCaughtByItsHumpAndPressedAsBoyleSays()
    {
        // 10 ml at the atmosphere get in at the supply port, 300 mm up, and rise to the crest, 380 mm up. The
        // return rises all the way and keeps none. At rest z + h = 900 and (P_atm + h) V = 10 P_atm, V being
        // the bore's volume over z on both sides of the crest.
        const FillRequest request = prefilled(10);
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        const Path& path = request.loops[0].supply;
        const double crest = distance({0, 0, 300}, {120, 0, 380});
        const double dip = crest + distance({120, 0, 380}, {300, 0, 260});
        const double atmosphere = result.end.state.atmosphere_mm;
        double low = 300;
        double high = 389;
        for (int halving = 0; halving < 60; ++halving) {
            const double z = (low + high) / 2;
            ((atmosphere + 900 - z) * boreVolumeOver(path, Plumb(), z, 0, dip) > 10 * atmosphere ? low
                                                                                                 : high) = z;
        }
        const std::vector<AirPocket> pockets = airPockets(result.end);
        double gas_ml = 0;
        for (const AirPocket& pocket : pockets)
            if (pocket.part == LoopPart::supply)
                gas_ml += pocket.gas_ml;
        VERIFY_NEAR(gas_ml, 10 * atmosphere / (atmosphere + 900 - low), 1e-4);
        VERIFY_NEAR(pockets.at(0).supply_side_mm, low, 1e-3);
        VERIFY_NEAR(pockets.at(0).return_side_mm, low, 1e-3);
        VERIFY_NEAR(result.jacket_level_mm, 900, 1e-6);
    }

    void airLeftInARisingHoseGoesOutByItself()
    {
        FillRequest request = prefilled(10);
        request.loops[0].supply = test::hose({{{0, 0, 300}, 0}, {{400, 0, 120}, 0}}, 19.05);
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        QVERIFY(airPockets(result.end).empty());
        VERIFY_NEAR(lostLiquid(result, request), 0, 1e-9);
        VERIFY_NEAR(gasBroughtIn(result), 0, 1e-6); // what went in went out
    }

    void aPortOverTheCoolantLetsItsHoseRunEmptyToTheLevel()
    {
        // Return port at 750, coolant to 700: over the level the return hose runs out through heater and
        // supply into the jacket, which holds 10 ml a mm.
        FillRequest request = prefilled();
        request.target_level_mm = 700;
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        const Path& path = request.loops[0].return_hose;
        const double over_ml = boreVolumeOver(path, Plumb(), result.jacket_level_mm, 0, path.line.length());
        VERIFY_NEAR(result.coolant_ml, result.end.network->hoses_and_chambers_ml - over_ml, 0.01);
        VERIFY_NEAR(result.jacket_level_mm, 700 + over_ml / 10, 1e-3);
        VERIFY_NEAR(lostLiquid(result, request), 0, 1e-9);
    }

    void framesShowThePrefilledLoopFromItsStart()
    {
        FillRequest request = prefilled(20);
        request.frames = 100;
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        QVERIFY(result.frames.size() >= 2);
        for (std::size_t i = 1; i < result.frames.front().cells.size(); ++i)
            VERIFY_NEAR(result.frames.front().cells[i].gas_ml, 0, 0);
        VERIFY_NEAR(result.frames.back().jacket_level_mm, 900, 1e-6);
    }

    void whateverIsConnectedComesToRestWithoutLosingOrWinningCoolant()
    {
        for (int run = 0; run < 600; ++run) {
            Dice dice(static_cast<std::uint64_t>(run) + 1);
            FillRequest request = randomCampaign(dice);
            request.then_open.clear();
            for (FillLoop& loop : request.loops)
                loop.valves.clear();
            request.method = FillMethod::from_filler;
            request.prefilled = true;
            request.prefilled_air_ml = dice.upTo(1) == 0 ? 0 : dice.between(0, 40);
            if (dice.upTo(2) == 0)
                request.target_level_mm = dice.between(500, 900);
            const FillResult result = fill(request);
            QVERIFY2(result.status == FillStatus::filled, qPrintable(QString::number(run)));
            VERIFY_NEAR(lostLiquid(result, request), 0, 1e-9);
            QVERIFY(gasBroughtIn(result) > -1e-6);
        }
    }
};

QTEST_APPLESS_MAIN(TestPrefilled)
#include "test_prefilled.moc"
