#include "tests/circulation/random_loops.h"
#include "tests/near.h"

#include <QTest>

#include <algorithm>
#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Circulation solve(const Loop& loop, const CirculationOptions& options = {})
{
    return steadyCirculation(loop, HalfGlycol(), options);
}

/// Heated along its bottom, cooled by air along its top: it runs as well either way.
Loop evenRectangle()
{
    Loop loop = rectangle(0.8, 0.8, 0.020, 600);
    loop.elements[2].heat = Heat::toAir(20, 10);
    return loop;
}

Loop mirrored(Loop loop)
{
    std::reverse(loop.elements.begin(), loop.elements.end());
    for (LoopElement& element : loop.elements) {
        element.rise_m = -element.rise_m;
        std::swap(element.pocket_forward_m, element.pocket_backward_m);
        for (Loss& loss : element.losses)
            loss = reversed(loss);
    }
    return loop;
}

} // namespace

class TestCirculationStates : public QObject {
    Q_OBJECT

private slots:
    void a_block_under_its_heater_stalls_the_loop();
    void a_loop_without_heat_stalls();
    void a_closed_valve_withstands_the_drive();
    void a_pocket_under_the_drive_slows_the_flow();
    void a_pocket_over_the_drive_stalls_with_both_heads();
    void the_most_drive_is_that_of_the_hottest_flow();
    void a_pocket_near_the_drive_is_on_the_edge();
    void a_loop_with_both_states_runs_forward_and_lists_the_other();
    void a_low_port_over_the_heater_lets_the_loop_run_in_reverse_too();
    void a_loop_listed_backwards_runs_in_reverse();
    void a_pocket_in_one_direction_lets_the_loop_run_in_the_other();
    void too_little_flow_boils();
    void boiling_can_be_set_lower();
    void a_block_under_the_freezing_point_is_slush();
    void heat_given_is_heat_taken();
    void losses_of_parts_add_up();
    void elements_join_at_their_ends();
    void hose_loss_follows_the_exponential();
    void a_chamber_hot_to_its_bottom_drives_more();
    void a_finer_list_of_elements_changes_nothing();
    void a_start_in_the_other_direction_finds_the_other_state();
};

void TestCirculationStates::a_block_under_its_heater_stalls_the_loop()
{
    // The jacket's high port is 0.1 m under the heater's outlet, its low one under its inlet: the warm column
    // stands over nothing cold.
    SoundLoop sound;
    sound.return_rise_m = -0.5;
    sound.supply_fall_m = -0.5;
    sound.hose_W_per_K = 0;
    sound.return_m = sound.supply_m = 0.8;
    const Circulation result = solve(sound.loop());
    QCOMPARE(result.status, CirculationStatus::stalled);
    QCOMPARE(result.flow_kg_per_s, 0.0);
    VERIFY_NEAR(result.drive_mm, 0, 1e-9);
    QVERIFY(result.message.pattern.find("warm column") != std::string::npos);
}

void TestCirculationStates::a_loop_without_heat_stalls()
{
    SoundLoop sound;
    sound.power_W = 0;
    sound.air_degC = sound.block_degC;
    QCOMPARE(solve(sound.loop()).status, CirculationStatus::stalled);
}

void TestCirculationStates::a_closed_valve_withstands_the_drive()
{
    Loop loop = PracticalCircuit().loop();
    loop.elements[2].shut = true;
    const Circulation result = solve(loop);
    QCOMPARE(result.status, CirculationStatus::closed);
    QCOMPARE(result.flow_kg_per_s, 0.0);
    QVERIFY(result.drive_mm > 10.5); // the drive of case E at 20 degC, when the coolant may get hotter
    VERIFY_NEAR(result.resistance_Pa, result.drive_Pa, 1e-9);
}

void TestCirculationStates::a_pocket_under_the_drive_slows_the_flow()
{
    Loop loop = PracticalCircuit().loop();
    const Circulation without = solve(loop);
    // Drive of 10.5 mm at 20 degC and 1500 W: case E.
    VERIFY_NEAR(without.drive_mm, 10.5, 0.1);
    loop.elements[2].pocket_forward_m = 0.003;
    const Circulation with = solve(loop);
    QCOMPARE(with.status, CirculationStatus::circulates);
    QVERIFY(with.flow_kg_per_s < without.flow_kg_per_s);
    VERIFY_NEAR(with.pocket_mm, 3, 0.1); // on the lighter, hot coolant
    QVERIFY(!with.on_the_edge);
    QVERIFY(with.heater_outlet_degC > without.heater_outlet_degC);
}

void TestCirculationStates::a_pocket_over_the_drive_stalls_with_both_heads()
{
    Loop loop = PracticalCircuit().loop();
    loop.elements[2].pocket_forward_m = loop.elements[2].pocket_backward_m = 0.050;
    const Circulation result = solve(loop);
    QCOMPARE(result.status, CirculationStatus::stalled);
    VERIFY_NEAR(result.pocket_mm, 50, 3);
    QVERIFY(result.drive_mm > 15 && result.drive_mm < 35);
    QCOMPARE(result.message.quantities.size(), 2U);
    VERIFY_NEAR(result.message.quantities[0].value, result.pocket_mm, 0);
    VERIFY_NEAR(result.message.quantities[1].value, result.drive_mm, 0);
}

void TestCirculationStates::the_most_drive_is_that_of_the_hottest_flow()
{
    // Case E with the tank at the end of the coolant's range: both are exact at 110 degC at the outlet.
    const HalfGlycol coolant;
    PracticalCircuit circuit;
    Loop loop = circuit.loop();
    loop.elements[2].shut = true;
    const double cold = coolant.at(20).density_kg_per_m3, hot = coolant.at(110).density_kg_per_m3;
    // Mean over a temperature that rises evenly: Simpson's rule is exact for a square.
    const double tank = (cold + 4 * coolant.at(65).density_kg_per_m3 + hot) / 6;
    const double expected_Pa = 9.80665 * (0.65 * cold - 0.25 * tank - 0.40 * hot);
    VERIFY_NEAR(solve(loop).drive_Pa, expected_Pa, 1e-3 * expected_Pa);
}

void TestCirculationStates::a_pocket_near_the_drive_is_on_the_edge()
{
    Loop loop = PracticalCircuit().loop();
    bool stalled_on_edge = false, runs_on_edge = false, stalled = false;
    for (double head_m = 0; head_m < 0.06; head_m += 0.0005) {
        loop.elements[2].pocket_forward_m = loop.elements[2].pocket_backward_m = head_m;
        const Circulation result = solve(loop);
        // More pocket never starts a loop again.
        QVERIFY(!stalled || result.flow_kg_per_s == 0);
        stalled = stalled || result.flow_kg_per_s == 0;
        runs_on_edge = runs_on_edge || (result.flow_kg_per_s > 0 && result.on_the_edge);
        stalled_on_edge =
            stalled_on_edge || (result.status == CirculationStatus::stalled && result.on_the_edge);
        if (result.on_the_edge)
            QVERIFY(std::abs(result.pocket_mm - result.drive_mm) <= 0.2 * result.drive_mm * 1.0001);
    }
    QVERIFY(runs_on_edge || stalled_on_edge);
    QVERIFY(stalled);
}

void TestCirculationStates::a_loop_with_both_states_runs_forward_and_lists_the_other()
{
    const Circulation result = solve(evenRectangle());
    QCOMPARE(result.status, CirculationStatus::circulates);
    QCOMPARE(result.also_possible.size(), 1U);
    VERIFY_NEAR(result.also_possible[0].flow_kg_per_s, -result.flow_kg_per_s, 1e-6);
    VERIFY_NEAR(result.also_possible[0].heater_outlet_degC, result.heater_outlet_degC, 1e-3);
}

void TestCirculationStates::a_low_port_over_the_heater_lets_the_loop_run_in_reverse_too()
{
    // Case E: a well mixed jacket whose low port is 0.075 m over the middle of the heater drives that much
    // the wrong way, and 0.525 m the right way.
    const Circulation result = solve(PracticalCircuit().loop());
    QCOMPARE(result.also_possible.size(), 1U);
    QVERIFY(result.also_possible[0].flow_kg_per_s < 0);
    qInfo("%.5f kg/s and %.5f", result.flow_kg_per_s, result.also_possible[0].flow_kg_per_s);
    QVERIFY(result.also_possible[0].flow_kg_per_s > -0.7 * result.flow_kg_per_s);
    PracticalCircuit lower;
    lower.extra_height_m = -0.1;
    QVERIFY(solve(lower.loop()).also_possible.empty());
}

void TestCirculationStates::a_loop_listed_backwards_runs_in_reverse()
{
    // With the low port under the middle of the heater nothing drives the wrong way round.
    PracticalCircuit circuit;
    circuit.extra_height_m = -0.1;
    const Loop loop = circuit.loop();
    const Circulation forward = solve(loop), backward = solve(mirrored(loop));
    QCOMPARE(backward.status, CirculationStatus::reverse);
    VERIFY_NEAR(backward.flow_kg_per_s, -forward.flow_kg_per_s, 1e-8);
    VERIFY_NEAR(backward.heater_outlet_degC, forward.heater_outlet_degC, 1e-4);
    VERIFY_NEAR(backward.drive_Pa, forward.drive_Pa, 1e-4);
    // Start and end are the list's, not the stream's.
    VERIFY_NEAR(backward.elements[2].start_degC, forward.elements[1].end_degC, 1e-4);
}

void TestCirculationStates::a_pocket_in_one_direction_lets_the_loop_run_in_the_other()
{
    Loop loop = evenRectangle();
    loop.elements[1].pocket_forward_m = 0.5;
    const Circulation result = solve(loop);
    QCOMPARE(result.status, CirculationStatus::reverse);
    VERIFY_NEAR(result.flow_kg_per_s, -solve(evenRectangle()).flow_kg_per_s, 1e-6);
    VERIFY_NEAR(result.pocket_mm, 0, 0);
}

void TestCirculationStates::too_little_flow_boils()
{
    PracticalCircuit circuit;
    circuit.hose_bore_m = 0.006;
    circuit.end_bore_m = 0.0045;
    const Circulation result = solve(circuit.loop());
    QCOMPARE(result.status, CirculationStatus::boiling);
    QCOMPARE(result.flow_kg_per_s, 0.0);
    VERIFY_NEAR(result.message.quantities[0].value, 110, 0);
}

void TestCirculationStates::boiling_can_be_set_lower()
{
    CirculationOptions options;
    options.boiling_degC = 60; // case E at 20 degC: 60.8 degC at the outlet
    QCOMPARE(solve(PracticalCircuit().loop(), options).status, CirculationStatus::boiling);
    options.boiling_degC = 62;
    QCOMPARE(solve(PracticalCircuit().loop(), options).status, CirculationStatus::circulates);
}

void TestCirculationStates::a_block_under_the_freezing_point_is_slush()
{
    PracticalCircuit circuit;
    circuit.block_degC = -40;
    QCOMPARE(solve(circuit.loop()).status, CirculationStatus::slush);
}

void TestCirculationStates::heat_given_is_heat_taken()
{
    const Circulation result = solve(SoundLoop().loop());
    QCOMPARE(result.status, CirculationStatus::circulates);
    double sum_W = 0, given_W = 0;
    for (const ElementState& element : result.elements) {
        sum_W += element.heat_W;
        given_W += std::max(element.heat_W, 0.0);
    }
    VERIFY_NEAR(given_W, 1500, 1e-3);
    // Each element's specific heat is its own, so heats add up only as far as specific heat is straight.
    VERIFY_NEAR(sum_W, 0, 0.05);
}

void TestCirculationStates::losses_of_parts_add_up()
{
    const Circulation result = solve(PracticalCircuit().loop());
    double elements_Pa = 0, parts_Pa = 0, shares = 0;
    for (const ElementState& element : result.elements)
        elements_Pa += element.loss_Pa;
    for (const PartLoss& part : result.parts) {
        parts_Pa += part.loss_Pa;
        shares += part.share;
        QVERIFY(part.share >= 0);
    }
    VERIFY_NEAR(elements_Pa, result.resistance_Pa, 1e-9 * elements_Pa);
    VERIFY_NEAR(parts_Pa, elements_Pa, 1e-4 * elements_Pa); // the tables' error
    VERIFY_NEAR(shares, 1, 1e-12);
    // Hose ends (5 to 10, both of each hose) take 26 to 62 % of case E's loss, between -20 and 55 degC.
    double ends = 0;
    for (const PartLoss& part : result.parts)
        ends += part.part >= 5 ? part.share : 0;
    qInfo("hose ends take %.1f %%", 100 * ends);
    QVERIFY(ends > 0.26 && ends < 0.62);
}

void TestCirculationStates::elements_join_at_their_ends()
{
    const Circulation result = solve(SoundLoop().loop());
    const std::size_t count = result.elements.size();
    for (std::size_t i = 0; i < count; ++i)
        VERIFY_NEAR(result.elements[i].end_degC, result.elements[(i + 1) % count].start_degC, 1e-6);
}

void TestCirculationStates::hose_loss_follows_the_exponential()
{
    PracticalCircuit circuit;
    circuit.return_W_per_K = 2;
    const Circulation result = solve(circuit.loop());
    const ElementState& hose = result.elements[2];
    // T - Ta = (T0 - Ta) exp(-UA/(m cp)), with the specific heat halfway.
    const double specific_heat =
        HalfGlycol().at((hose.start_degC + hose.end_degC) / 2).specific_heat_J_per_kg_K;
    const double decay = std::exp(-2 / (result.flow_kg_per_s * specific_heat));
    VERIFY_NEAR(hose.end_degC + 20, (hose.start_degC + 20) * decay, 1e-6);
    const double ntu = -std::log(decay);
    VERIFY_NEAR(hose.mean_degC + 20, (hose.start_degC + 20) * (1 - decay) / ntu, 1e-6);
}

void TestCirculationStates::a_chamber_hot_to_its_bottom_drives_more()
{
    SoundLoop cold, hot;
    cold.share_at_outlet = 0;
    hot.share_at_outlet = 1;
    const Circulation least = solve(cold.loop()), usual = solve(SoundLoop().loop()), most = solve(hot.loop());
    QVERIFY(least.flow_kg_per_s < usual.flow_kg_per_s);
    QVERIFY(usual.flow_kg_per_s < most.flow_kg_per_s);
    qInfo("%+.1f %%, %+.1f %%", 100 * (least.flow_kg_per_s / usual.flow_kg_per_s - 1),
          100 * (most.flow_kg_per_s / usual.flow_kg_per_s - 1));
}

void TestCirculationStates::a_finer_list_of_elements_changes_nothing()
{
    // Density along a hose and a jacket that lose heat is integrated, so cutting them up adds nothing but
    // the change of specific heat along them.
    PracticalCircuit circuit;
    circuit.return_W_per_K = circuit.supply_W_per_K = 1;
    circuit.jacket_W_per_K = 150;
    Loop whole = circuit.loop(), fine;
    for (LoopElement& element : whole.elements)
        element.losses.clear(); // all in one place, at an even temperature
    const LoopElement orifice = [] {
        LoopElement e = pipe(0, 0, 0.0159);
        e.losses = {Loss::general(100, 10000, 1, 0.0159, areaOf(0.0159))};
        return e;
    }();
    whole.elements.push_back(orifice);
    constexpr int pieces = 50;
    for (const LoopElement& element : whole.elements)
        for (int i = 0; i < pieces; ++i) {
            LoopElement piece = element;
            piece.length_m /= pieces;
            piece.rise_m /= pieces;
            piece.heat.power_W /= pieces;
            piece.heat.exchange_W_per_K /= pieces;
            if (i > 0)
                piece.losses.clear();
            fine.elements.push_back(piece);
        }
    const Circulation a = solve(whole), b = solve(fine);
    QCOMPARE(a.status, CirculationStatus::circulates);
    VERIFY_NEAR(a.flow_kg_per_s, b.flow_kg_per_s, 1e-3 * b.flow_kg_per_s);
}

void TestCirculationStates::a_start_in_the_other_direction_finds_the_other_state()
{
    CirculationOptions options;
    options.start_flow_kg_per_s = -0.02;
    const Circulation result = solve(evenRectangle(), options);
    QCOMPARE(result.status, CirculationStatus::reverse);
    // Where there is none, the search finds what there is.
    PracticalCircuit circuit;
    circuit.extra_height_m = -0.1;
    QCOMPARE(solve(circuit.loop(), options).status, CirculationStatus::circulates);
}

QTEST_APPLESS_MAIN(TestCirculationStates)
#include "test_states.moc"
