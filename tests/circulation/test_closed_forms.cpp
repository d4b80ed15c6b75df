#include "tests/circulation/loops.h"
#include "tests/near.h"

#include <QTest>

#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double g = standard_gravity_m_per_s2;

/// Grashof number of the generalised correlation: Vijayan, P. K. (2002), Nuclear Engineering and Design 215,
/// 139-152: D^3 rho^2 beta g Q H / (A mu^3 cp).
double modifiedGrashof(double bore_m, double density, double viscosity, double specific_heat,
                       double expansion_per_K, double power_W, double height_m)
{
    return std::pow(bore_m, 3) * density * density * expansion_per_K * g * power_W * height_m /
           (areaOf(bore_m) * std::pow(viscosity, 3) * specific_heat);
}

void verifyFlow(const Circulation& result, double expected_kg_per_s, double share)
{
    QCOMPARE(result.status, CirculationStatus::circulates);
    qInfo("%s: %.6f kg/s for %.6f, off by %+.3f %%, %d evaluations", QTest::currentDataTag(),
          result.flow_kg_per_s, expected_kg_per_s, 100 * (result.flow_kg_per_s / expected_kg_per_s - 1),
          result.iterations);
    VERIFY_NEAR(result.flow_kg_per_s, expected_kg_per_s, share * expected_kg_per_s);
    VERIFY_NEAR(result.drive_Pa, result.resistance_Pa, 3e-7 * result.drive_Pa);
}

} // namespace

class TestCirculationClosedForms : public QObject {
    Q_OBJECT

private slots:
    void closed_forms_hold_within_one_percent_data();
    void closed_forms_hold_within_one_percent();
    void the_generalised_correlation_holds_data();
    void the_generalised_correlation_holds();
    void the_practical_circuit_holds_within_one_percent_data();
    void the_practical_circuit_holds_within_one_percent();
    void a_jacket_cooling_evenly_lowers_the_flow_of_the_practical_circuit_by_18_to_19_percent();
};

void TestCirculationClosedForms::closed_forms_hold_within_one_percent_data()
{
    QTest::addColumn<Loop>("loop");
    QTest::addColumn<QList<double>>("fluid");
    QTest::addColumn<double>("flow_kg_per_s");

    // Closed forms: with f = p Re^-b and constant properties Re = (2/p Gr/N)^(1/(3-b)), checked by an
    // independent marching solution; the expected flows are those of the closed form.
    const QList<double> mixture{1060, 2.2e-3, 3400, 5.5e-4};
    QTest::newRow("A: laminar rectangle") << rectangle(1.0, 1.0, 0.025, 500) << mixture << 0.031160;
    // Turbulent by Blasius (1913); Churchill (1977), which is computed here, gives 0.05215.
    QTest::newRow("B: turbulent rectangle")
        << rectangle(2.2, 1.415, 0.0269, 1000) << QList<double>{988, 5.47e-4, 4181, 4.58e-4} << 0.052414;

    // 3.0 m of 19.05 mm with two-K fittings: 4 elbows, 2 ball valves, entrance and exit, the sums being K1 =
    // 3960 and Kinf = 5.70 with the size factor.
    Loop fitted = rectangle(0.6, 0.9, 0.01905, 1000);
    std::vector<Loss>& losses = fitted.elements[1].losses;
    for (int i = 0; i < 4; ++i)
        losses.push_back(Loss::elbow90(0.01905));
    losses.push_back(Loss::ballValve(0.01905));
    losses.push_back(Loss::ballValve(0.01905));
    losses.push_back(Loss::entrance(0.01905));
    losses.push_back(Loss::exit(0.01905));
    QTest::newRow("C: laminar with fittings") << fitted << mixture << 0.017579;
    QTest::newRow("C without its fittings") << rectangle(0.6, 0.9, 0.01905, 1000) << mixture << 0.02289;

    // Tank 0.25 m of 60 mm; hoses of 16 mm: up 0.45 in 1.10 m, cooler down 0.40, back down 0.30 in 1.00 m.
    Loop two_bores;
    two_bores.elements = {pipe(0.25, 0.25, 0.060, Heat::heater(750)), pipe(1.10, 0.45, 0.016),
                          pipe(0.40, -0.40, 0.016, Heat::heater(-750)), pipe(1.00, -0.30, 0.016)};
    QTest::newRow("D: two bores") << two_bores << QList<double>{1050, 1.5e-3, 3500, 6e-4} << 0.014949;
}

void TestCirculationClosedForms::closed_forms_hold_within_one_percent()
{
    QFETCH(Loop, loop);
    QFETCH(QList<double>, fluid);
    QFETCH(double, flow_kg_per_s);
    verifyFlow(steadyCirculation(loop, PlainFluid(fluid[0], fluid[1], fluid[2], fluid[3])), flow_kg_per_s,
               0.01);
}

void TestCirculationClosedForms::the_generalised_correlation_holds_data()
{
    QTest::addColumn<double>("power_W");
    QTest::addColumn<double>("viscosity_Pa_s");
    QTest::addColumn<double>("C");
    QTest::addColumn<double>("r");
    QTest::addColumn<double>("share");
    // Vijayan (2002): Re = C (Gr/N)^r. The share is what the friction laws behind it differ from Churchill's
    // (Blasius: to 2 % of f, 0.7 % of flow, over Re 4,000 to 30,000).
    QTest::newRow("laminar, Re 200") << 100.0 << 4e-3 << 0.1768 << 0.5 << 0.001;
    QTest::newRow("laminar, Re 700") << 500.0 << 2.2e-3 << 0.1768 << 0.5 << 0.001;
    QTest::newRow("laminar, Re 1400") << 1000.0 << 1.7e-3 << 0.1768 << 0.5 << 0.005;
    QTest::newRow("turbulent, 1 kW") << 1000.0 << 4e-4 << 1.956 << 0.3636 << 0.01;
    QTest::newRow("turbulent, 3 kW") << 3000.0 << 3e-4 << 1.956 << 0.3636 << 0.01;
    QTest::newRow("turbulent, 10 kW") << 10000.0 << 3e-4 << 1.956 << 0.3636 << 0.01;
}

void TestCirculationClosedForms::the_generalised_correlation_holds()
{
    QFETCH(double, power_W);
    QFETCH(double, viscosity_Pa_s);
    QFETCH(double, C);
    QFETCH(double, r);
    QFETCH(double, share);
    const double bore_m = 0.0269, density = 1000, specific_heat = 4000, expansion_per_K = 4e-4;
    const Loop loop = rectangle(1.5, 1.0, bore_m, power_W);
    const double grashof =
        modifiedGrashof(bore_m, density, viscosity_Pa_s, specific_heat, expansion_per_K, power_W, 1.5);
    const double reynolds = C * std::pow(grashof / (5.0 / bore_m), r);
    const double expected = reynolds * areaOf(bore_m) * viscosity_Pa_s / bore_m;
    qInfo("Re %.0f", reynolds);
    verifyFlow(steadyCirculation(loop, PlainFluid(density, viscosity_Pa_s, specific_heat, expansion_per_K)),
               expected, share);
}

void TestCirculationClosedForms::the_practical_circuit_holds_within_one_percent_data()
{
    QTest::addColumn<double>("power_W");
    QTest::addColumn<double>("block_degC");
    QTest::addColumn<double>("hose_bore_m");
    QTest::addColumn<double>("end_bore_m");
    QTest::addColumn<double>("flow_kg_per_s");
    QTest::addColumn<double>("outlet_degC");
    // A marching solution made independently with the same equations and coolant.
    const auto row = [](double power, double block, double hose, double end, double flow, double outlet) {
        QTest::addRow("E: %g W, %g degC, %g mm", power, block, hose * 1000)
            << power << block << hose << end << flow << outlet;
    };
    row(1500, -20, 0.0159, 0.0120, 0.005782, 59.1);
    row(1500, 0, 0.0159, 0.0120, 0.008607, 52.7);
    row(1500, 20, 0.0159, 0.0120, 0.010942, 60.8);
    row(1500, 40, 0.0159, 0.0120, 0.012644, 74.6);
    row(1000, 40, 0.0159, 0.0120, 0.010614, 67.6);
    row(500, 40, 0.0159, 0.0120, 0.007830, 58.8);
    row(1500, 55, 0.0159, 0.0120, 0.013616, 86.7);
    row(1500, 20, 0.01905, 0.0145, 0.01434, 51.3);
    row(1500, 20, 0.0254, 0.0200, 0.02259, 40.0);
}

void TestCirculationClosedForms::the_practical_circuit_holds_within_one_percent()
{
    QFETCH(double, power_W);
    QFETCH(double, block_degC);
    QFETCH(double, hose_bore_m);
    QFETCH(double, end_bore_m);
    QFETCH(double, flow_kg_per_s);
    QFETCH(double, outlet_degC);
    PracticalCircuit circuit;
    circuit.power_W = power_W;
    circuit.block_degC = block_degC;
    circuit.hose_bore_m = hose_bore_m;
    circuit.end_bore_m = end_bore_m;
    const Circulation result = steadyCirculation(circuit.loop(), HalfGlycol());
    verifyFlow(result, flow_kg_per_s, 0.01);
    VERIFY_NEAR(result.heater_outlet_degC, outlet_degC, 0.01 * (outlet_degC - circuit.block_degC));
    VERIFY_NEAR(result.heater_inlet_degC, circuit.block_degC, 0.01);
}

void TestCirculationClosedForms::
    a_jacket_cooling_evenly_lowers_the_flow_of_the_practical_circuit_by_18_to_19_percent()
{
    // Driving height 0.300 m for 0.525 m. A marching solution made independently with the same equations.
    // An even fall of temperature down the jacket is a fixed heat taken out; the level comes from a
    // well mixed stretch without height behind it that holds the block's temperature.
    const Circulation mixed = steadyCirculation(PracticalCircuit().loop(), HalfGlycol());
    Loop even = PracticalCircuit().loop();
    even.elements[3].heat = Heat::heater(-1500);
    even.elements.push_back(pipe(0, 0, 0.050, Heat::toBlock(1e7, 20)));
    const Circulation result = steadyCirculation(even, HalfGlycol());
    QCOMPARE(result.status, CirculationStatus::circulates);
    VERIFY_NEAR(1 - result.flow_kg_per_s / mixed.flow_kg_per_s, 0.185, 0.01);
}

QTEST_APPLESS_MAIN(TestCirculationClosedForms)
#include "test_closed_forms.moc"
