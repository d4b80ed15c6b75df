#include "tests/near.h"

#include "core/physics/fluid_table.h"
#include "core/physics/glycol.h"

#include <cmath>
#include <limits>

using namespace siphonwright;

namespace {

/// A liquid of cubics, which the table must hold to rounding.
class Cubics : public Fluid {
public:
    Cubics(double lowest_degC, double highest_degC) : lowest_(lowest_degC), highest_(highest_degC) {}

    FluidState at(double temperature_degC) const override
    {
        const double t = temperature_degC > lowest_ ? std::min(temperature_degC, highest_) : lowest_;
        FluidState state;
        state.density_kg_per_m3 = 1000 - 0.4 * t - 2e-3 * t * t + 1e-6 * t * t * t;
        state.viscosity_Pa_s = viscosity;
        state.specific_heat_J_per_kg_K = 3000 + 4 * t;
        return state;
    }
    double lowest_degC() const override { return lowest_; }
    double highest_degC() const override { return highest_; }

    double viscosity = 2e-3;

private:
    double lowest_;
    double highest_;
};

double antiderivative(double t)
{
    return 1000 * t - 0.2 * t * t - 2e-3 / 3 * t * t * t + 2.5e-7 * t * t * t * t;
}

const double not_a_number = std::numeric_limits<double>::quiet_NaN();
const double infinite = std::numeric_limits<double>::infinity();

} // namespace

class TestFluidTable : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everyCoolantIsHeldToTenMillionths();
    void cubicsAreHeldToRounding();
    void densityIntegralsAreExact();
    void meanDensityHoldsForEqualAndForCloseTemperatures();
    void outsideTheRangeTheNearerEndAnswers();
    void aRangeMayEndAnywhere();
    void whatIsNoLiquidIsNotTabulated();
};

void TestFluidTable::everyCoolantIsHeldToTenMillionths()
{
    double largest = 0;
    for (const CoolantBase base : {CoolantBase::ethylene_glycol, CoolantBase::propylene_glycol})
        for (double percent = 0; percent <= 60; percent += 0.5) {
            const GlycolWater coolant = *GlycolWater::ofVolume(base, percent);
            const FluidTable table = *FluidTable::of(coolant);
            QVERIFY(table.largestRelativeError() < 1e-7);
            // Measured here anew, at temperatures that the table does not know.
            for (double t = coolant.lowest_degC(); t <= 120; t += 0.137) {
                const FluidState state = coolant.at(t);
                for (const double deviation : {table.density(t) / state.density_kg_per_m3 - 1,
                                               std::exp(table.lnViscosity(t)) / state.viscosity_Pa_s - 1,
                                               table.specificHeat(t) / state.specific_heat_J_per_kg_K - 1}) {
                    QVERIFY(std::abs(deviation) < 1e-7);
                    largest = std::max(largest, std::abs(deviation));
                }
            }
        }
    qInfo("largest relative deviation of a tabulated coolant %.2g", largest);
}

void TestFluidTable::cubicsAreHeldToRounding()
{
    const Cubics liquid(-31.3, 118.9);
    const FluidTable table = *FluidTable::of(liquid);
    QVERIFY(table.largestRelativeError() < 1e-14);
    VERIFY_NEAR(table.density(41.7), liquid.at(41.7).density_kg_per_m3, 1e-11);
    VERIFY_NEAR(table.lnViscosity(41.7), std::log(2e-3), 1e-14);
    VERIFY_NEAR(table.specificHeat(41.7), 3000 + 4 * 41.7, 1e-11);
}

void TestFluidTable::densityIntegralsAreExact()
{
    const FluidTable table = *FluidTable::of(Cubics(-31.3, 118.9));
    QCOMPARE(table.densityIntegral(-31.3), 0.0);
    for (const double t : {-31.2, -30.0, -7.3, 0.0, 2.0, 99.99, 118.9})
        VERIFY_NEAR(table.densityIntegral(t), antiderivative(t) - antiderivative(-31.3), 1e-9);
    // Beyond the ends it goes on with the density there.
    VERIFY_NEAR(table.densityIntegral(121.9) - table.densityIntegral(118.9), 3 * table.density(118.9), 1e-9);
    VERIFY_NEAR(table.densityIntegral(-41.3), -10 * table.density(-31.3), 1e-9);
}

void TestFluidTable::meanDensityHoldsForEqualAndForCloseTemperatures()
{
    const FluidTable table = *FluidTable::of(Cubics(-31.3, 118.9));
    const double mean = (antiderivative(90) - antiderivative(10)) / 80;
    VERIFY_NEAR(table.meanDensity(10, 90), mean, 1e-10);
    VERIFY_NEAR(table.meanDensity(90, 10), mean, 1e-10);
    QCOMPARE(table.meanDensity(50, 50), table.density(50));
    for (const double apart : {1e-9, 1e-4, 0.999e-3, 1.001e-3, 0.01})
        VERIFY_NEAR(table.meanDensity(50, 50 + apart), table.density(50 + apart / 2), 1e-7);
}

void TestFluidTable::outsideTheRangeTheNearerEndAnswers()
{
    const GlycolWater coolant = *GlycolWater::ofVolume(CoolantBase::propylene_glycol, 40);
    const FluidTable table = *FluidTable::of(coolant);
    QCOMPARE(table.lowest_degC(), coolant.lowest_degC());
    QCOMPARE(table.highest_degC(), coolant.highest_degC());
    for (const double low : {-1e9, -infinite, not_a_number}) {
        QCOMPARE(table.density(low), table.density(coolant.lowest_degC()));
        QCOMPARE(table.lnViscosity(low), table.lnViscosity(coolant.lowest_degC()));
    }
    QCOMPARE(table.specificHeat(infinite), table.specificHeat(120));
}

/// A range that ends a hair over a border of cells, on one, or within a single cell.
void TestFluidTable::aRangeMayEndAnywhere()
{
    for (const auto& [lowest, highest] : {std::pair{-2.0, 4.0}, std::pair{-2.0 - 1e-13, 4.0 + 1e-13},
                                          std::pair{0.3, 0.4}, std::pair{-0.1, 0.1}, std::pair{1.0, 601.0}}) {
        const Cubics liquid(lowest, highest);
        const auto table = FluidTable::of(liquid);
        QVERIFY(table.has_value());
        QVERIFY(table->largestRelativeError() < 1e-12);
        VERIFY_NEAR(table->density(highest), liquid.at(highest).density_kg_per_m3, 1e-9);
        VERIFY_NEAR(table->density(lowest), liquid.at(lowest).density_kg_per_m3, 1e-9);
        VERIFY_NEAR(table->densityIntegral(highest), antiderivative(highest) - antiderivative(lowest), 1e-8);
    }
}

void TestFluidTable::whatIsNoLiquidIsNotTabulated()
{
    QVERIFY(!FluidTable::of(Cubics(10, 10)));
    QVERIFY(!FluidTable::of(Cubics(10, 9)));
    QVERIFY(!FluidTable::of(Cubics(not_a_number, 9)));
    QVERIFY(!FluidTable::of(Cubics(0, infinite)));
    QVERIFY(!FluidTable::of(Cubics(-infinite, 0)));
    QVERIFY(!FluidTable::of(Cubics(0, 2001)));
    Cubics liquid(0, 100);
    for (const double wrong : {0.0, -1.0, not_a_number, infinite}) {
        liquid.viscosity = wrong;
        QVERIFY(!FluidTable::of(liquid));
    }
}

QTEST_APPLESS_MAIN(TestFluidTable)
#include "test_fluid_table.moc"
