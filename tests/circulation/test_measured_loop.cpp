#include "tests/circulation/loops.h"
#include "tests/near.h"

#include <nlohmann/json.hpp>
#include <QTest>

#include <cmath>
#include <fstream>

/// The isolated secondary loop of the CIET facility (UC Berkeley), filled with oil: Zweibaum, N. (2015), PhD
/// thesis, UC Berkeley; Zou, L., Hu, R. and Charpentier, A. (2019), ANL/NSE-19/11; Zou, L. et al. (2021),
/// Nuclear Engineering and Design 377, 111144, tables 2 to 4. Second-hand: values as quoted in a public test
/// suite.
using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// Biphenyl and diphenyl oxide, 20 to 180 degC.
class Oil : public Fluid {
public:
    FluidState at(double temperature_degC) const override
    {
        const double t = std::fmin(std::fmax(temperature_degC, lowest_degC()), highest_degC());
        return {1078 - 0.85 * t, 0.130 * std::pow(t, -1.072), 1518 + 2.82 * t, 0.14};
    }
    double lowest_degC() const override { return 20; }
    double highest_degC() const override { return 180; }
};

nlohmann::json published()
{
    std::ifstream file(SIPHONWRIGHT_SOURCE_DIR "/tests/circulation/data/measured_loop.json");
    return nlohmann::json::parse(file);
}

/// All the loop's legs are adiabatic; its level is the temperature of the cold leg, where the list begins.
Loop loopOf(const nlohmann::json& document, double heat_W, double cold_degC)
{
    Loop loop;
    loop.start_degC = cold_degC;
    for (const nlohmann::json& given : document.at("elements")) {
        LoopElement element;
        element.length_m = given.at("length_m");
        element.rise_m = given.at("rise_m");
        element.bore_m = given.at("bore_m");
        element.area_m2 = given.at("area_m2");
        element.losses = {Loss::general(given.at("K_inf"), given.at("K_1"), given.at("K_exponent"),
                                        element.bore_m, element.area_m2)};
        if (given.at("wall_friction")) {
            Loss wall = Loss::wall(element.length_m, element.bore_m, given.at("roughness_m"));
            wall.area_m2 = element.area_m2;
            element.losses.push_back(wall);
        }
        element.heat = Heat::heater(heat_W * given.at("share_of_heat").get<double>());
        loop.elements.push_back(element);
    }
    return loop;
}

} // namespace

class TestCirculationMeasuredLoop : public QObject {
    Q_OBJECT

private slots:
    void flow_is_that_of_the_published_code_and_near_the_measured_data();
    void flow_is_that_of_the_published_code_and_near_the_measured();
};

void TestCirculationMeasuredLoop::flow_is_that_of_the_published_code_and_near_the_measured_data()
{
    QTest::addColumn<double>("heat_W");
    QTest::addColumn<double>("cold_degC");
    QTest::addColumn<double>("code_kg_per_s");
    QTest::addColumn<double>("measured_kg_per_s");
    const nlohmann::json document = published();
    QCOMPARE(document.at("points").size(), 16U);
    for (const nlohmann::json& point : document.at("points")) {
        const double heat_W = point.at("heat_W"), cold_degC = point.at("T_cold_degC");
        QTest::addRow("%g W, %g degC", heat_W, cold_degC)
            << heat_W << cold_degC << point.at("published_code_kg_s").get<double>()
            << point.at("measured_kg_s").get<double>();
    }
}

void TestCirculationMeasuredLoop::flow_is_that_of_the_published_code_and_near_the_measured()
{
    QFETCH(double, heat_W);
    QFETCH(double, cold_degC);
    QFETCH(double, code_kg_per_s);
    QFETCH(double, measured_kg_per_s);
    const Circulation result = steadyCirculation(loopOf(published(), heat_W, cold_degC), Oil());
    QCOMPARE(result.status, CirculationStatus::circulates);
    qInfo("%.6f kg/s, %+.2f %% to the code, %+.2f %% to the measurement", result.flow_kg_per_s,
          100 * (result.flow_kg_per_s / code_kg_per_s - 1),
          100 * (result.flow_kg_per_s / measured_kg_per_s - 1));
    VERIFY_NEAR(result.flow_kg_per_s, code_kg_per_s, 0.03 * code_kg_per_s);
    VERIFY_NEAR(result.flow_kg_per_s, measured_kg_per_s, 0.08 * measured_kg_per_s);
    // What is heated is cooled: the stream comes back at the cold leg's temperature.
    VERIFY_NEAR(result.elements.back().end_degC, cold_degC, 1e-3);
}

QTEST_APPLESS_MAIN(TestCirculationMeasuredLoop)
#include "test_measured_loop.moc"
