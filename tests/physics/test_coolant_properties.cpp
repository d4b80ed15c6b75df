#include "tests/near.h"
#include "tests/physics/published.h"

#include "core/physics/glycol.h"
#include "core/physics/melinder.h"
#include "core/physics/water.h"

#include <algorithm>
#include <map>
#include <numeric>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr std::array bases = {CoolantBase::ethylene_glycol, CoolantBase::propylene_glycol};

struct PropertyRow {
    QString fluid;
    double percent;
    bool by_volume;
    double temperature_degC;
    QString property;
    double value;
    double last_digit; ///< one unit of it
    QString kind;
    QString source;

    CoolantBase base() const
    {
        return fluid == QStringLiteral("PG") ? CoolantBase::propylene_glycol : CoolantBase::ethylene_glycol;
    }
    std::optional<GlycolWater> coolant() const
    {
        return by_volume ? GlycolWater::ofVolume(base(), percent) : GlycolWater::ofMass(base(), percent);
    }
};

double lastDigit(const QString& printed)
{
    const auto point = printed.indexOf(u'.');
    return point < 0 ? 1 : std::pow(10.0, static_cast<double>(point + 1 - printed.size()));
}

std::vector<PropertyRow> rows()
{
    std::vector<PropertyRow> all;
    for (const QStringList& cells : readCsv(QStringLiteral("data/coolant.csv")))
        all.push_back({cells[0], cells[1].toDouble(), cells[2] == QStringLiteral("volume"),
                       cells[3].toDouble(), cells[4], cells[5].toDouble(), lastDigit(cells[5]), cells[7],
                       cells[8]});
    return all;
}

/// A property in the unit of the table.
double propertyOf(const FluidState& state, const QString& name)
{
    if (name == QStringLiteral("density"))
        return state.density_kg_per_m3;
    if (name == QStringLiteral("dynamic_viscosity"))
        return 1000 * state.viscosity_Pa_s;
    if (name == QStringLiteral("specific_heat"))
        return state.specific_heat_J_per_kg_K;
    if (name == QStringLiteral("thermal_conductivity"))
        return state.conductivity_W_per_m_K;
    return std::numeric_limits<double>::quiet_NaN();
}

/// How far a group of rows stands off, computed less published, percent.
struct Spread {
    int rows = 0;
    double least = std::numeric_limits<double>::infinity();
    double most = -std::numeric_limits<double>::infinity();
};

/// The spread that is allowed to each kind of source: as measured, rounded outwards. It is no accuracy that
/// we claim but how far sources differ; coolants with inhibitors are other liquids than pure glycol in water.
std::map<QString, Spread> allowedSpread()
{
    std::map<QString, Spread> allowed;
    for (const QStringList& cells : readCsv(QStringLiteral("data/coolant_spread.csv")))
        allowed[cells.mid(0, 3).join(u' ')] = {cells[3].toInt(), cells[4].toDouble(), cells[5].toDouble()};
    return allowed;
}

} // namespace

class TestCoolantProperties : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void polynomialsAreTranscribedExactly();
    void publishedRowsAreMetWithinTheSpreadOfTheirKind();
    void waterAgreesWithAnIndependentLibrary();
    void volumesAndMassesAgreeWithPublishedPairs();
    void plainWaterIsWaterWhateverTheBase();
    void aTraceOfGlycolBlendsIntoWater();
    void extensionsPastAHundredDegreesFollowTheirRules();
    void propertiesMoveOneWayOverTheWholeRange();
    void outsideTheRangeTheNearerEndAnswers();
    void whatIsNoMixtureIsNotMade();
    void coolantExpandsByWhatItsDensityLoses();
};

/// The reference values of another implementation's own tests, to the rounding of their last digit (and a
/// twentieth more, since the other computed in its own order).
void TestCoolantProperties::polynomialsAreTranscribedExactly()
{
    int compared = 0;
    double largest = 0;
    for (const PropertyRow& row : rows()) {
        if (row.kind != QStringLiteral("transcription"))
            continue;
        const FluidState state = MelinderMix(row.base(), row.percent).at(row.temperature_degC);
        const double deviation = std::abs(propertyOf(state, row.property) - row.value);
        QVERIFY2(deviation < 0.525 * row.last_digit, qPrintable(QStringLiteral("%1 %2 % %3 degC %4 off by %5")
                                                                    .arg(row.fluid)
                                                                    .arg(row.percent)
                                                                    .arg(row.temperature_degC)
                                                                    .arg(row.property)
                                                                    .arg(deviation)));
        largest = std::max(largest, deviation / row.value);
        ++compared;
    }
    qInfo("transcription: %d rows, largest relative deviation %.2g", compared, largest);
    QCOMPARE(compared, 57);
}

void TestCoolantProperties::publishedRowsAreMetWithinTheSpreadOfTheirKind()
{
    std::map<QString, Spread> spreads;
    int outside = 0;
    for (const PropertyRow& row : rows()) {
        if (row.kind == QStringLiteral("transcription"))
            continue;
        const auto coolant = row.coolant();
        if (!coolant || row.temperature_degC < coolant->lowest_degC() ||
            row.temperature_degC > coolant->highest_degC()) {
            ++outside;
            continue;
        }
        const double computed = propertyOf(coolant->at(row.temperature_degC), row.property);
        const double percent = 100 * (computed / row.value - 1);
        QVERIFY2(std::isfinite(percent), qPrintable(row.property));
        Spread& spread = spreads[row.kind + u' ' + row.fluid + u' ' + row.property];
        ++spread.rows;
        spread.least = std::min(spread.least, percent);
        spread.most = std::max(spread.most, percent);
    }
    QCOMPARE(outside, 2); // 121 degC
    std::map<QString, Spread> allowed = allowedSpread();
    QCOMPARE(spreads.size(), allowed.size());
    for (const auto& [name, spread] : spreads) {
        qInfo("%s: %d rows, %+.3f to %+.3f %%", qPrintable(name), spread.rows, spread.least, spread.most);
        QVERIFY2(allowed.contains(name), qPrintable(name));
        QCOMPARE(spread.rows, allowed[name].rows);
        QVERIFY2(spread.least >= allowed[name].least && spread.most <= allowed[name].most, qPrintable(name));
    }
}

/// IAPWS-IF97, R12-08 and R15-11 by python3-iapws, run now, every half degree to 120 degC.
void TestCoolantProperties::waterAgreesWithAnIndependentLibrary()
{
    const PythonAnswer answer = runPython(QStringLiteral("reference_water.py"));
    QVERIFY2(answer.problem.isEmpty(), qPrintable(answer.problem));
    std::array<double, 4> largest{};
    int compared = 0;
    for (const QStringList& row : answer.rows) {
        if (row[0] != QStringLiteral("liquid"))
            continue;
        const FluidState state = liquidWater(row[1].toDouble());
        const std::array<double, 4> computed = {state.density_kg_per_m3, state.viscosity_Pa_s,
                                                state.specific_heat_J_per_kg_K, state.conductivity_W_per_m_K};
        for (std::size_t i = 0; i < computed.size(); ++i) {
            const double deviation =
                std::abs(computed[i] / row[static_cast<qsizetype>(i) + 2].toDouble() - 1);
            QVERIFY(std::isfinite(deviation));
            largest[i] = std::max(largest[i], deviation);
        }
        ++compared;
    }
    qInfo("water to IAPWS: density %.2g, viscosity %.2g, specific heat %.2g, conductivity %.2g", largest[0],
          largest[1], largest[2], largest[3]);
    QCOMPARE(compared, 241);
    QVERIFY(largest[0] < 1e-4);
    QVERIFY(largest[1] < 7e-4);
    QVERIFY(largest[2] < 2e-4);
    QVERIFY(largest[3] < 8e-4);
}

void TestCoolantProperties::volumesAndMassesAgreeWithPublishedPairs()
{
    // Pairs of volume and mass percent, ASHRAE Handbook Fundamentals 2001, freezing tables, which count on
    // the mixture's own volume for ethylene glycol in part: within 0.4 and 0.9.
    VERIFY_NEAR(glycolMassPercent(CoolantBase::ethylene_glycol, 47.6), 50, 0.4);
    VERIFY_NEAR(glycolMassPercent(CoolantBase::ethylene_glycol, 57.8), 60, 0.5);
    VERIFY_NEAR(glycolMassPercent(CoolantBase::propylene_glycol, 49.9), 50, 0.9);
    // 50 x 1113.2 / (50 x 1113.2 + 50 x 998.2) and the like.
    VERIFY_NEAR(glycolMassPercent(CoolantBase::ethylene_glycol, 50), 52.723, 1e-3);
    VERIFY_NEAR(glycolMassPercent(CoolantBase::propylene_glycol, 50), 50.934, 1e-3);
    for (const CoolantBase base : bases)
        for (double percent = 0; percent <= 100; percent += 0.5)
            VERIFY_NEAR(glycolVolumePercent(base, glycolMassPercent(base, percent)), percent, 1e-11);
}

void TestCoolantProperties::plainWaterIsWaterWhateverTheBase()
{
    for (const CoolantBase base : bases) {
        const FluidState none = GlycolWater::ofVolume(base, 0)->at(37);
        QCOMPARE(none.density_kg_per_m3, liquidWater(37).density_kg_per_m3);
        QCOMPARE(none.viscosity_Pa_s, liquidWater(37).viscosity_Pa_s);
    }
    QCOMPARE(GlycolWater::water().lowest_degC(), 0.0);
    QCOMPARE(GlycolWater::water().at(80).specific_heat_J_per_kg_K, liquidWater(80).specific_heat_J_per_kg_K);
}

void TestCoolantProperties::aTraceOfGlycolBlendsIntoWater()
{
    for (const CoolantBase base : bases) {
        const FluidState half = GlycolWater::ofMass(base, 0.5)->at(60);
        const FluidState water = liquidWater(60);
        const FluidState one = MelinderMix(base, 1).at(60);
        VERIFY_NEAR(half.density_kg_per_m3, std::midpoint(water.density_kg_per_m3, one.density_kg_per_m3),
                    1e-9);
        VERIFY_NEAR(half.viscosity_Pa_s, std::sqrt(water.viscosity_Pa_s * one.viscosity_Pa_s), 1e-15);
        // What the blend hides: 0.1 % of density, 0.3 % of specific heat, 1 % of conductivity, 2 % of
        // viscosity.
        for (double t = 0; t <= 100; t += 5) {
            const FluidState from = liquidWater(t);
            const FluidState to = MelinderMix(base, 1).at(t);
            const FluidState next = MelinderMix(base, 2).at(t);
            const auto jump = [](double at_0, double at_1, double at_2) {
                return std::abs((at_1 - (at_2 - at_1)) / at_0 - 1);
            };
            QVERIFY(jump(from.density_kg_per_m3, to.density_kg_per_m3, next.density_kg_per_m3) < 0.001);
            QVERIFY(jump(from.viscosity_Pa_s, to.viscosity_Pa_s, next.viscosity_Pa_s) < 0.02);
        }
        // No step at 1 percent.
        const double below = GlycolWater::ofMass(base, 1 - 1e-9)->at(60).viscosity_Pa_s;
        VERIFY_NEAR(GlycolWater::ofMass(base, 1 + 1e-9)->at(60).viscosity_Pa_s / below, 1, 1e-9);
    }
}

void TestCoolantProperties::extensionsPastAHundredDegreesFollowTheirRules()
{
    for (const CoolantBase base : bases) {
        const GlycolWater coolant = *GlycolWater::ofVolume(base, 50);
        const auto ln_viscosity = [&](double t) { return std::log(coolant.at(t).viscosity_Pa_s); };
        const auto inverse = [](double t) { return 1 / (t + 273.15); };
        const double slope = (ln_viscosity(80) - ln_viscosity(100)) / (inverse(80) - inverse(100));
        VERIFY_NEAR(ln_viscosity(120), ln_viscosity(100) + slope * (inverse(120) - inverse(100)), 1e-12);
        QCOMPARE(coolant.at(113).conductivity_W_per_m_K, coolant.at(100).conductivity_W_per_m_K);
        const FluidState polynomial = MelinderMix(base, glycolMassPercent(base, 50)).at(115);
        QCOMPARE(coolant.at(115).density_kg_per_m3, polynomial.density_kg_per_m3);
        QCOMPARE(coolant.at(115).specific_heat_J_per_kg_K, polynomial.specific_heat_J_per_kg_K);
        VERIFY_NEAR(coolant.at(100 + 1e-9).viscosity_Pa_s / coolant.at(100).viscosity_Pa_s, 1, 1e-10);
    }
}

void TestCoolantProperties::propertiesMoveOneWayOverTheWholeRange()
{
    for (const CoolantBase base : bases)
        for (double percent = 10; percent <= 60; percent += 2.5) {
            const GlycolWater coolant = *GlycolWater::ofVolume(base, percent);
            FluidState before = coolant.at(coolant.lowest_degC());
            for (double t = coolant.lowest_degC() + 1; t <= coolant.highest_degC(); t += 1) {
                const FluidState now = coolant.at(t);
                const auto where = QStringLiteral("%1 % at %2").arg(percent).arg(t);
                // Dilute mixtures have their greatest density a little over freezing, as water has at 4 degC.
                QVERIFY2(now.density_kg_per_m3 < before.density_kg_per_m3 || (percent < 25 && t < 8),
                         qPrintable(where));
                QVERIFY2(now.viscosity_Pa_s < before.viscosity_Pa_s, qPrintable(where));
                QVERIFY2(now.conductivity_W_per_m_K > 0.2 && now.conductivity_W_per_m_K < 0.7,
                         qPrintable(where));
                QVERIFY2(now.specific_heat_J_per_kg_K > 2500 && now.specific_heat_J_per_kg_K < 4300,
                         qPrintable(where));
                before = now;
            }
        }
}

void TestCoolantProperties::outsideTheRangeTheNearerEndAnswers()
{
    const GlycolWater coolant = *GlycolWater::ofVolume(CoolantBase::ethylene_glycol, 50);
    QCOMPARE(coolant.lowest_degC(), *freezingPoint(CoolantBase::ethylene_glycol, 50));
    QCOMPARE(coolant.highest_degC(), 120.0);
    const double infinite = std::numeric_limits<double>::infinity();
    for (const double low : {-200.0, -infinite, std::numeric_limits<double>::quiet_NaN()})
        QCOMPARE(coolant.at(low).viscosity_Pa_s, coolant.at(coolant.lowest_degC()).viscosity_Pa_s);
    for (const double high : {120.01, 500.0, infinite})
        QCOMPARE(coolant.at(high).density_kg_per_m3, coolant.at(120).density_kg_per_m3);
}

void TestCoolantProperties::whatIsNoMixtureIsNotMade()
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    for (const CoolantBase base : bases) {
        for (const double wrong : {-0.01, 60.01, 1e300, nan, std::numeric_limits<double>::infinity()}) {
            QVERIFY(!GlycolWater::ofVolume(base, wrong));
            QVERIFY(!GlycolWater::ofMass(base, 1.05 * wrong));
        }
        QVERIFY(GlycolWater::ofVolume(base, 60));
        QVERIFY(GlycolWater::ofMass(base, glycolMassPercent(base, 59.9)));
    }
}

void TestCoolantProperties::coolantExpandsByWhatItsDensityLoses()
{
    // Water, 20 to 80 degC: 998.21 / 971.79 (IAPWS-IF97 at 0.101 MPa) - 1.
    VERIFY_NEAR(expansion(GlycolWater::water(), 20, 80), 0.02719, 2e-5);
    VERIFY_NEAR(expansion(GlycolWater::water(), 80, 20), 971.79 / 998.21 - 1, 2e-5);
    // 50 % ethylene glycol, -20 to 80 degC: 4.66 % by the ASHRAE tables, whose densities fall less than
    // Melinder's.
    const GlycolWater half = *GlycolWater::ofVolume(CoolantBase::ethylene_glycol, 50);
    const double expands = expansion(half, -20, 80);
    QVERIFY2(expands > 0.0466 && expands < 0.0466 * 1.2, qPrintable(QString::number(expands)));
}

QTEST_APPLESS_MAIN(TestCoolantProperties)
#include "test_coolant_properties.moc"
