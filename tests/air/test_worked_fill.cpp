#include "tests/air/worked_loop.h"
#include "tests/near.h"

#include "core/air/pocket.h"

#include <algorithm>
#include <cmath>
#include <vector>

using namespace siphonwright;
using siphonwright::test::workedFill;

namespace {

/// The event of a kind at a throat; the test fails where there is none.
const FillEvent* firstEvent(const FillResult& result, FillEventKind kind, std::size_t throat)
{
    const auto found = std::find_if(result.events.begin(), result.events.end(),
                                    [&](const FillEvent& e) { return e.kind == kind && e.throat == throat; });
    return found == result.events.end() ? nullptr : &*found;
}

} // namespace

/// Values worked out by hand for this loop; levels from the geometry alone: 370.475 = 380 - 19.05/2, 309.5 =
/// 300 + 19/2, 740.5 = 750 - 19/2.
class TestWorkedFill : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theCrestSpillsAndTheInletSealsWhereItsFloorLies()
    {
        const FillResult result = fill(workedFill());
        QCOMPARE(result.status, FillStatus::filled);
        const FillEvent* spills = firstEvent(result, FillEventKind::spills, 1);
        const FillEvent* seals = firstEvent(result, FillEventKind::seals, 2);
        QVERIFY(spills != nullptr && seals != nullptr);
        QVERIFY(spills->to_right);
        VERIFY_NEAR(spills->level_mm, 370.475, 1e-6);
        VERIFY_NEAR(seals->level_mm, 370.475, 1e-6);
        VERIFY_NEAR(firstEvent(result, FillEventKind::seals, 0)->level_mm, 309.5, 1e-6);
    }

    void coolantInTheReturnPortStopsTheSupplyAndPressesAirOutOfItsPort()
    {
        const FillResult result = fill(workedFill());
        const FillEvent* enters = firstEvent(result, FillEventKind::spills, 4);
        const FillEvent* bubbles = firstEvent(result, FillEventKind::bubbles, 0);
        QVERIFY(enters != nullptr && bubbles != nullptr);
        QVERIFY(!enters->to_right);
        QVERIFY(!bubbles->to_right);
        VERIFY_NEAR(enters->level_mm, 740.5, 1e-6);
        VERIFY_NEAR(bubbles->level_mm, 740.5, 1e-6);
        VERIFY_NEAR(firstEvent(result, FillEventKind::stops_spilling, 1)->level_mm, 740.5, 1e-6);
    }

    void thePocketThatStaysIsThatWorkedOut()
    {
        const FillResult result = fill(workedFill());
        const std::vector<AirPocket> pockets = airPockets(result.end);
        QCOMPARE(pockets.size(), std::size_t{2}); // the other lies in the chamber's top
        const AirPocket& pocket = pockets[0];
        QCOMPARE(pocket.part, LoopPart::supply);
        VERIFY_NEAR(pocket.gas_ml, 71.33, 0.005);
        VERIFY_NEAR(pocket.pressure_mm, 589.41, 0.005);
        VERIFY_NEAR(pocket.supply_side_mm, 310.59, 0.005);
        VERIFY_NEAR(pocket.return_side_mm, 310.59, 0.005);
        VERIFY_NEAR(pocket.along_mm, std::hypot(120, 80), 1e-6);
        VERIFY_NEAR(result.end.state.atmosphere_mm, 9674.4, 0.05);
        double gas = 0;
        for (const std::size_t i : pocket.cells)
            gas += result.end.state.cells[i].gas;
        VERIFY_NEAR(gas, 732142, 2); // of 1091164 when it was sealed
        VERIFY_NEAR(gas / pocket.gas_ml - result.end.state.atmosphere_mm, pocket.pressure_mm, 1e-6);
    }

    void itHoldsBack125ForwardAnd61InReverseThoughItsSurfacesAreLevel()
    {
        const FillResult result = fill(workedFill());
        const AirPocket pocket = airPockets(result.end).front();
        QVERIFY(pocket.closes_forward && pocket.closes_reverse);
        VERIFY_NEAR(pocket.forward_mm, 125, 0.5);
        VERIFY_NEAR(pocket.reverse_mm, 61, 0.05); // 370.475 - 309.5: more bubbles out at the port
        VERIFY_NEAR(pocketHead(result.end, pocket, FlowSense::reverse, 0), 370.475 - 309.5, 1e-6);
    }

    void airInTheChamberOverItsOutletNarrowsNothing()
    {
        const AirPocket pocket = airPockets(fill(workedFill()).end).back();
        QCOMPARE(pocket.part, LoopPart::chamber);
        QVERIFY(!pocket.closes_forward && !pocket.closes_reverse);
        VERIFY_NEAR(pocket.forward_mm, 0, 0);
    }

    /// The jacket holds 10 ml a mm from 0 up.
    void aDrainedBlockIsFilledFromWhatIsLeft()
    {
        FillRequest request = workedFill();
        request.drained_to_mm = 400;
        const FillResult left = fill(request);
        QCOMPARE(left.status, FillStatus::filled);
        VERIFY_NEAR(left.left_ml, 10 * 400, 1e-6);
        VERIFY_NEAR(left.poured_ml, 10 * 900 + left.coolant_ml, 1e-4);
        // All is open from the start, so that it ends as if poured at one go.
        VERIFY_NEAR(left.coolant_ml, fill(workedFill()).coolant_ml, 1e-3);
        request.drained_to_mm = 0;
        const FillResult under = fill(request);
        VERIFY_NEAR(under.left_ml, 0, 0);
        VERIFY_NEAR(under.poured_ml, 10 * 900 + under.coolant_ml, 1e-4);
    }

    void framesLeadToTheSameEnd()
    {
        FillRequest request = workedFill();
        const FillResult straight = fill(request);
        for (const std::size_t frames : {15U, 53U, 400U}) {
            request.frames = frames;
            const FillResult result = fill(request);
            QVERIFY(result.frames.size() >= frames && result.frames.size() < frames + 8);
            VERIFY_NEAR(airPockets(result.end).front().gas_ml, airPockets(straight.end).front().gas_ml, 1e-6);
            double before = 0;
            for (const FillFrame& frame : result.frames) {
                QVERIFY(frame.poured_ml >= before);
                before = frame.poured_ml;
            }
            VERIFY_NEAR(result.frames.back().jacket_level_mm, 900, 1e-6);
        }
    }

    void theElementIsCoveredAtALevelOfTheJacket()
    {
        FillRequest request = workedFill();
        request.loops[0].element_top_mm = 250;
        const FillResult result = fill(request);
        QVERIFY(result.covered_at_mm.at(0).has_value());
        // By then the crest spills under the pressure h of the pocket behind it: the jacket stands h over the
        // crest's floor, the surface behind the inlet h under the chamber's. Boyle from the sealing on gives
        // h.
        const Path& supply = request.loops[0].supply;
        const double end = supply.line.length();
        const double crest_at = std::hypot(120, 80);
        const auto gas = [&](double before_mm, double behind_mm) {
            return boreVolumeOver(supply, Plumb(), before_mm, 0, crest_at) +
                   boreVolumeOver(supply, Plumb(), behind_mm, crest_at, end);
        };
        const double atmosphere = result.end.state.atmosphere_mm;
        const double sealed_in = atmosphere * gas(370.475, 128); // 128 = 120 + 16/2, the inlet's crown
        double low = 0;
        double high = 300;
        for (int halving = 0; halving < 60; ++halving) {
            const double h = (low + high) / 2;
            ((atmosphere + h) * gas(370.475, 250 - h) < sealed_in ? low : high) = h;
        }
        VERIFY_NEAR(sealed_in, 1091164, 10);
        VERIFY_NEAR(*result.covered_at_mm[0], 370.475 + low, 1e-3);
        request.target_level_mm = 480;
        QVERIFY(!fill(request).covered_at_mm.at(0).has_value());
    }
};

QTEST_APPLESS_MAIN(TestWorkedFill)
#include "test_worked_fill.moc"
