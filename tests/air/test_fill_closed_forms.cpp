#include "tests/air/worked_loop.h"
#include "tests/near.h"

#include "core/air/pocket.h"

#include <algorithm>
#include <cmath>
#include <numbers>

using namespace siphonwright;
using siphonwright::test::hose;
using siphonwright::test::workedFill;

namespace {

/// The worked loop with another return hose, its supply falling all the way.
FillRequest withReturn(const std::vector<Corner>& corners, double bore_mm = 19.05)
{
    FillRequest request = workedFill();
    request.loops[0].supply = hose({{{0, 0, 300}, 0}, {{400, 0, 120}, 0}}, 19.05);
    request.loops[0].return_hose = hose(corners, bore_mm);
    return request;
}

double lengthTo(const std::vector<Corner>& corners, std::size_t corner)
{
    double sum = 0;
    for (std::size_t i = 0; i < corner; ++i)
        sum += distance(corners[i].at, corners[i + 1].at);
    return sum;
}

AirPocket pocketIn(const FillResult& result, LoopPart part)
{
    for (const AirPocket& pocket : airPockets(result.end)) {
        if (pocket.part == part)
            return pocket;
    }
    return {};
}

} // namespace

/// States at rest that follow from Boyle's law and hydrostatics alone.
class TestFillClosedForms : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void coolantRisesInAClosedVerticalLegAsBoyleSays()
    {
        // p0 L/(L - y) = p0 + rho g (h - y), the mouth just covered at first: L 0.6 m, h 1.0 m, 1073 kg/m3,
        // 101325 Pa give y = 53.6882 mm (exact; Boyle). The leg ends at a shut valve.
        FillRequest request = workedFill();
        FillLoop& loop = request.loops[0];
        loop.supply = hose({{{0, 0, 0}, 0}, {{0, 0, 620}, 0}}, 19.05);
        loop.supply_port.axis = {0, 0, 1};
        loop.supply_port.bore_mm = 19.05;
        loop.chamber = {{0, 0, 2000}, {0, 0, 2200}, 60};
        loop.return_hose = hose({{{0, 0, 2100}, 0}, {{0, 0, 2500}, 0}}, 19.05);
        loop.valves = {{LoopPart::supply, 600, false}};
        request.target_level_mm = 1000;
        request.density_kg_per_m3 = 1073;
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        const AirPocket pocket = airPockets(result.end).at(0);
        VERIFY_NEAR(pocket.supply_side_mm, 53.6882, 0.0054);
        VERIFY_NEAR(pocket.gas_ml, std::numbers::pi / 4 * 19.05 * 19.05 * (600 - 53.6882) / 1000, 0.002);
    }

    void oneHumpHoldsWhatWasSealedPressedByTheHead()
    {
        // The dip behind the hump seals at its crown, 400 + 9.525, while coolant spills over 500 - 9.525. At
        // the end both surfaces stand in liquid of head 900: z + h = 900, and P V = n.
        const std::vector<Corner> corners = {
            {{400, 0, 330}, 0}, {{300, 0, 500}, 0}, {{200, 0, 400}, 0}, {{100, 0, 750}, 0}};
        const FillRequest request = withReturn(corners);
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        const Path& path = request.loops[0].return_hose;
        const double crest = lengthTo(corners, 1);
        const double dip = lengthTo(corners, 2);
        const double atmosphere = result.end.state.atmosphere_mm;
        const double gas = atmosphere * (boreVolumeOver(path, Plumb(), 490.475, 0, crest) +
                                         boreVolumeOver(path, Plumb(), 409.525, crest, dip));
        double low = 330;
        double high = 490;
        for (int halving = 0; halving < 60; ++halving) {
            const double z = (low + high) / 2;
            ((atmosphere + 900 - z) * boreVolumeOver(path, Plumb(), z, 0, dip) > gas ? low : high) = z;
        }
        const AirPocket pocket = pocketIn(result, LoopPart::return_hose);
        VERIFY_NEAR(pocket.supply_side_mm, low, 1e-3);
        VERIFY_NEAR(pocket.return_side_mm, low, 1e-3);
        VERIFY_NEAR(pocket.pressure_mm, 900 - low, 1e-3);
        VERIFY_NEAR(pocket.gas_ml, gas / (atmosphere + 900 - low), 1e-4 * pocket.gas_ml);
    }

    void twoEqualHumpsEndAtOneHeadThroughout()
    {
        const std::vector<Corner> corners = {{{400, 0, 330}, 0}, {{340, 0, 500}, 0}, {{280, 0, 420}, 0},
                                             {{220, 0, 500}, 0}, {{160, 0, 420}, 0}, {{100, 0, 750}, 0}};
        const FillResult result = fill(withReturn(corners));
        QCOMPARE(result.status, FillStatus::filled);
        std::vector<AirPocket> humps;
        for (const AirPocket& pocket : airPockets(result.end)) {
            if (pocket.part == LoopPart::return_hose)
                humps.push_back(pocket);
        }
        QCOMPARE(humps.size(), std::size_t{2});
        // Both outer surfaces are in liquid of the jacket's head; the slug between has a head of its own, one
        // on both its sides: level plus pressure is one value along each body of liquid.
        VERIFY_NEAR(humps[0].supply_side_mm + humps[0].pressure_mm, 900, 1e-6);
        VERIFY_NEAR(humps[1].return_side_mm + humps[1].pressure_mm, 900, 1e-6);
        VERIFY_NEAR(humps[0].return_side_mm + humps[0].pressure_mm,
                    humps[1].supply_side_mm + humps[1].pressure_mm, 1e-6);
        QVERIFY(humps[0].gas_ml > 1 && humps[1].gas_ml > 1);
    }

    void aHumpLowerThanItsBoreNarrowsAndDoesNotClose()
    {
        // 12 mm of hump in 19.05 mm of bore: air over the sill's crown stays under the crown of the crest,
        // and coolant runs beneath it.
        const FillResult result = fill(
            withReturn({{{400, 0, 330}, 0}, {{300, 0, 500}, 0}, {{200, 0, 488}, 0}, {{100, 0, 750}, 0}}));
        QCOMPARE(result.status, FillStatus::filled);
        const AirPocket pocket = pocketIn(result, LoopPart::return_hose);
        QVERIFY(pocket.gas_ml > 0.01);
        QVERIFY(!pocket.closes_forward && !pocket.closes_reverse);
        VERIFY_NEAR(pocketHead(result.end, pocket, FlowSense::forward, 5e-6), 0, 0);
    }

    /// Behind the end of a narrower stub lies a corner over the stub's crown, where the hose falls away from
    /// it. No coolant that comes through the stub gets there: its air is sealed at the atmosphere when the
    /// stub's crown is reached, and pressed by the head from then on. Some hundredths of a millilitre, but of
    /// the drawing, not of the method.
    void aStubNarrowerThanItsHoseKeepsTheCornerOverItsCrown()
    {
        FillRequest request = withReturn({{{400, 0, 330}, 0}, {{300, 0, 500}, 0}, {{100, 0, 750}, 0}});
        FillLoop& loop = request.loops[0];
        const double stub_mm = 30;
        const double end_mm = loop.supply.line.length();
        loop.supply.bores = {{0, stub_mm, 15.875}, {stub_mm, end_mm, 19.05}};
        loop.supply_port.bore_mm = 15.875;
        const double slope = std::atan2(180, 400);
        const double crown_mm = 300 - stub_mm * std::sin(slope) + 15.875 / 2 * std::cos(slope);
        const double corner_ml = boreVolumeOver(loop.supply, request.plumb, crown_mm, stub_mm, end_mm);
        QVERIFY(corner_ml > 0.01 && corner_ml < 0.1);

        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        const AirPocket corner = pocketIn(result, LoopPart::supply);
        VERIFY_NEAR(corner.along_mm, stub_mm, 1e-9);
        const double atmosphere_mm = result.end.state.atmosphere_mm;
        VERIFY_NEAR(corner.pressure_mm, 900 - corner.return_side_mm, 1e-6);
        // A level table is within 1e-5 of the limb's 117 ml.
        VERIFY_NEAR(corner.gas_ml, corner_ml * atmosphere_mm / (atmosphere_mm + corner.pressure_mm), 1.2e-3);
        QVERIFY(!corner.closes_forward && !corner.closes_reverse);
    }

    void aReturnThatRisesAllTheWayKeepsNoAir()
    {
        FillRequest request = withReturn({{{430, 0, 345}, 0}, {{430, 0, 500}, 100}, {{100, 0, 750}, 0}});
        request.loops[0].outlet.axis = {0, 0, 1};
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        QVERIFY(airPockets(result.end).empty());
        VERIFY_NEAR(result.coolant_ml, result.end.network->hoses_and_chambers_ml, 1e-6);
    }

    void aBleedAtTheCrestEmptiesIt()
    {
        const std::vector<Corner> corners = {
            {{400, 0, 330}, 0}, {{300, 0, 500}, 60}, {{200, 0, 400}, 40}, {{100, 0, 750}, 0}};
        FillRequest request = withReturn(corners);
        QVERIFY(pocketIn(fill(request), LoopPart::return_hose).gas_ml > 10);
        const Path& path = request.loops[0].return_hose;
        const double crest = profileOf(path, Plumb()).high_points.at(0).along_mm;
        request.loops[0].bleeds = {{LoopPart::return_hose, crest, true}};
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        VERIFY_NEAR(pocketIn(result, LoopPart::return_hose).gas_ml, 0, 0);
    }

    void underVacuumWhatStaysIsAShareOfWhatWouldHaveStayed()
    {
        // Filled at a tenth of the atmosphere each pocket holds about a tenth of its gas.
        FillRequest request = workedFill();
        const AirPocket open = airPockets(fill(request).end).front();
        request.method = FillMethod::under_vacuum;
        request.vacuum_Pa = 10132.5;
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        const AirPocket pocket = airPockets(result.end).front();
        QVERIFY(pocket.gas_ml > 0.05 * open.gas_ml && pocket.gas_ml < 0.2 * open.gas_ml);
        VERIFY_NEAR(result.jacket_level_mm, 900, 1e-6);
    }

    void fromBelowTheSupplysAirGoesOutOfItsPort()
    {
        FillRequest request = workedFill();
        const AirPocket from_filler = airPockets(fill(request).end).front();
        request.method = FillMethod::from_below;
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        QVERIFY(airPockets(result.end).front().gas_ml < 0.7 * from_filler.gas_ml);
        VERIFY_NEAR(result.jacket_level_mm, 900, 1e-6);
    }

    void valvesOpenedUnderAFullBlockLetTheLevelFallBeforeItIsToppedUp()
    {
        // Whichever is opened first, coolant runs into the empty hoses at once: the jacket falls while
        // nothing is poured, and at rest everything that can be reached is full.
        FillRequest request = workedFill();
        request.loops[0].valves = {{LoopPart::supply, 10, false}, {LoopPart::return_hose, 390, false}};
        for (const bool supply_first : {true, false}) {
            request.then_open = {{0, supply_first ? 0U : 1U}, {0, supply_first ? 1U : 0U}};
            const FillResult result = fill(request);
            QCOMPARE(result.status, FillStatus::filled);
            VERIFY_NEAR(result.jacket_level_mm, 900, 1e-6);
            double opened_ml = 0;
            double lowest_mm = 900;
            for (const FillEvent& event : result.events) {
                if (event.kind == FillEventKind::valve_opened && opened_ml == 0)
                    opened_ml = event.poured_ml;
                if (opened_ml > 0)
                    lowest_mm = std::min(lowest_mm, event.level_mm);
            }
            // At first the supply port seals at its crown: 3095 ml in the jacket, up to 4 in the stub.
            VERIFY_NEAR(result.events.front().level_mm, 309.5, 1e-6);
            VERIFY_NEAR(result.events.front().poured_ml, 3097, 2);
            QVERIFY(opened_ml > 0 && lowest_mm < 850);
            // Sealed pockets in supply and chamber, as without valves but for the gas the shut hoses held.
            QCOMPARE(airPockets(result.end).size(), std::size_t{2});
            VERIFY_NEAR(pocketIn(result, LoopPart::supply).reverse_mm, 370.475 - 309.5, 1e-6);
        }
    }

    void aHoseOverTheLevelKeepsAllOverItsPortsCrownWhicheverValveIsOpenedFirst()
    {
        // The crest lies 100 over the level, the valve in the plumb leg from there down to the port. Coolant
        // never reaches the crest, and what it displaces bubbles out of the port, whose crown is 709.5 =
        // 700 + 19/2: both surfaces end there, at the pressure 900 - 709.5, and all over them stays air. A
        // jacket of 10 l a mm hardly falls meanwhile (0.1 mm: 0.002 ml of it).
        const std::vector<Corner> corners = {
            {{400, 0, 330}, 0}, {{150, 0, 1000}, 0}, {{100, 0, 960}, 0}, {{100, 0, 700}, 0}};
        FillRequest request = withReturn(corners);
        const Path& path = request.loops[0].return_hose;
        const double end = path.line.length();
        request.jacket = {{0, 0}, {1000, 1e7}};
        request.loops[0].valves = {{LoopPart::supply, 10, false}, {LoopPart::return_hose, end - 100, false}};
        for (const bool supply_first : {true, false}) {
            request.then_open = {{0, supply_first ? 0U : 1U}, {0, supply_first ? 1U : 0U}};
            const FillResult result = fill(request);
            QCOMPARE(result.status, FillStatus::filled);
            const AirPocket pocket = pocketIn(result, LoopPart::return_hose);
            VERIFY_NEAR(pocket.gas_ml, boreVolumeOver(path, Plumb(), 709.5, 0, end), 0.01);
            VERIFY_NEAR(pocket.supply_side_mm, 709.5, 0.01);
            VERIFY_NEAR(pocket.return_side_mm, 709.5, 0.01);
            VERIFY_NEAR(pocket.pressure_mm, 900 - 709.5, 0.01);
        }
    }

    void aShutValveKeepsItsHoseEmptyAndItsAirAtTheAtmosphere()
    {
        FillRequest request = workedFill();
        request.loops[0].valves = {{LoopPart::supply, 10, false}, {LoopPart::return_hose, 390, false}};
        const FillResult result = fill(request);
        QCOMPARE(result.status, FillStatus::filled);
        QVERIFY(result.coolant_ml < 45); // the stubs alone
        const AirPocket pocket = airPockets(result.end).back();
        VERIFY_NEAR(pocket.pressure_mm, 0, 1e-9);
    }

    void loopsThatShareAJacketFillAsEachAlone()
    {
        FillRequest both = workedFill();
        const AirPocket alone = airPockets(fill(both).end).front();
        both.loops.push_back(both.loops[0]);
        const FillResult result = fill(both);
        QCOMPARE(result.status, FillStatus::filled);
        const std::vector<AirPocket> pockets = airPockets(result.end);
        QCOMPARE(pockets.size(), std::size_t{4});
        VERIFY_NEAR(pockets[0].gas_ml, alone.gas_ml, 1e-6);
        VERIFY_NEAR(pockets[2].gas_ml, alone.gas_ml, 1e-6);
    }
};

QTEST_APPLESS_MAIN(TestFillClosedForms)
#include "test_fill_closed_forms.moc"
