#include "tests/near.h"

#include "core/physics/bands.h"
#include "core/physics/latin_hypercube.h"

#include <algorithm>
#include <cmath>
#include <limits>

using namespace siphonwright;

class TestBands : public QObject {
    Q_OBJECT
private slots:
    void theGeneratorGivesItsPublishedNumbers();
    void everySliceOfEverySideHasOnePoint();
    void spreadsHaveTheirQuantiles();
    void percentilesAndRanksAreThoseOfTheTextbook();
    void bandsOfKnownFunctionsAreTheirs();
    void theStrongestDriverComesFirst();
    void missingOutputsAreLeftOut();
    void sameSeedGivesTheSameBitsAndAnotherOthers();
    void aStopTokenStops();
    void rangesThatDoNotHoldTogetherAreRefused();
};

namespace {

std::vector<UncertainFigure> evenOnes(std::size_t count)
{
    std::vector<UncertainFigure> assumptions(count);
    for (std::size_t i = 0; i < count; ++i)
        assumptions[i].name = "factor " + std::to_string(i);
    return assumptions;
}

} // namespace

void TestBands::theGeneratorGivesItsPublishedNumbers()
{
    // O'Neill's demonstration of PCG32 with seed 42 and stream 54 prints these first.
    Pcg32 random(42, 54);
    for (const std::uint32_t expected :
         {0xa15c02b7u, 0x7b47f409u, 0xba1d3330u, 0x83d2f293u, 0xbfa4784bu, 0xcbed606eu})
        QCOMPARE(random.next(), expected);
    for (int i = 0; i < 1000; ++i) {
        const double u = random.uniform();
        QVERIFY(u >= 0 && u < 1);
        QVERIFY(random.below(7) < 7);
    }
}

void TestBands::everySliceOfEverySideHasOnePoint()
{
    const auto points = latinHypercube(200, 14, 7);
    QCOMPARE(points.size(), 200u);
    for (std::size_t factor = 0; factor < 14; ++factor) {
        std::vector<int> hits(200);
        for (const auto& point : points)
            ++hits[static_cast<std::size_t>(point[factor] * 200)];
        QVERIFY(std::all_of(hits.begin(), hits.end(), [](int n) { return n == 1; }));
    }
    // Sides are not tied to each other: of 91 pairs none is correlated beyond 4 standard errors.
    for (std::size_t a = 0; a < 14; ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            std::vector<double> x, y;
            for (const auto& point : points) {
                x.push_back(point[a]);
                y.push_back(point[b]);
            }
            QVERIFY(std::abs(rankCorrelation(x, y)) < 4 / std::sqrt(200.0));
        }
    }
}

void TestBands::spreadsHaveTheirQuantiles()
{
    const UncertainFigure even{"a", "", Spread::even, 2, 6, 0};
    const UncertainFigure log{"b", "", Spread::logarithmic, 0.5, 2, 0};
    const UncertainFigure peaked{"c", "", Spread::peaked, 0, 10, 4};
    VERIFY_NEAR(valueAt(even, 0.25), 3, 1e-15);
    VERIFY_NEAR(valueAt(log, 0.5), 1, 1e-15);
    VERIFY_NEAR(valueAt(log, 1), 2, 1e-15);
    // Triangle over 0..10 with its peak at 4: 40 % lie under 4; a quarter of those, 10 %, under 2; of the 60
    // % over it a quarter, 15 %, over 10 - 6/2.
    VERIFY_NEAR(valueAt(peaked, 0.4), 4, 1e-14);
    VERIFY_NEAR(valueAt(peaked, 0.1), 2, 1e-14);
    VERIFY_NEAR(valueAt(peaked, 0.85), 7, 1e-14);
    const UncertainFigure fact{"d", "", Spread::peaked, 3, 3, 3};
    QCOMPARE(valueAt(fact, 0.3), 3.0);
}

void TestBands::percentilesAndRanksAreThoseOfTheTextbook()
{
    // Type 7 of Hyndman and Fan (1996): of 1, 2, 3, 4 the first quartile is 1.75.
    VERIFY_NEAR(percentile({1, 2, 3, 4}, 0.25), 1.75, 1e-15);
    QCOMPARE(percentile({5}, 0.95), 5.0);
    // Spearman by 1 - 6 sum d^2 / (n (n^2 - 1)): ranks 1 2 3 4 5 against 2 1 4 3 5: d^2 sums to 4, 0.8.
    VERIFY_NEAR(rankCorrelation({1, 2, 3, 4, 5}, {20, 10, 40, 30, 50}), 0.8, 1e-15);
    VERIFY_NEAR(rankCorrelation({1, 2, 3}, {9, 4, 1}), -1, 1e-15);
    QCOMPARE(rankCorrelation({1, 2, 3}, {7, 7, 7}), 0.0);
    // Ties share their mean rank: 1 2 3 4 against 1.5 1.5 3.5 3.5 correlates by sqrt(4/5).
    VERIFY_NEAR(rankCorrelation({1, 2, 3, 4}, {0, 0, 9, 9}), std::sqrt(0.8), 1e-15);
}

void TestBands::bandsOfKnownFunctionsAreTheirs()
{
    // One even factor: the band is its quantiles. A sum of twelve: nearly normal, mean 6, standard deviation
    // 1, so P5 and P95 lie 1.645 off.
    const auto function = [](const std::vector<double>& x) {
        double sum = 0;
        for (const double value : x)
            sum += value;
        return Outputs{x[0], sum};
    };
    BandOptions options;
    options.samples = 2000;
    const Bands bands = bandsOf(evenOnes(12), function, options);
    QCOMPARE(bands.status, BandStatus::done);
    VERIFY_NEAR(bands.outputs[0].p5, 0.05, 1e-3);
    VERIFY_NEAR(bands.outputs[0].p50, 0.5, 1e-3);
    VERIFY_NEAR(bands.outputs[0].p95, 0.95, 1e-3);
    VERIFY_NEAR(bands.outputs[1].p5, 6 - 1.645, 0.06);
    VERIFY_NEAR(bands.outputs[1].p50, 6, 0.05);
    VERIFY_NEAR(bands.outputs[1].p95, 6 + 1.645, 0.06);
}

void TestBands::theStrongestDriverComesFirst()
{
    const auto function = [](const std::vector<double>& x) { return Outputs{x[1] - 4 * x[2] + 0.2 * x[0]}; };
    const Bands bands = bandsOf(evenOnes(4), function);
    const std::vector<Driver>& drivers = bands.outputs[0].drivers;
    QCOMPARE(drivers.size(), 4u);
    QCOMPARE(drivers[0].assumption, 2u);
    QVERIFY(drivers[0].rank_correlation < -0.9);
    QCOMPARE(drivers[1].assumption, 1u);
    QVERIFY(drivers[1].rank_correlation > 0.1 && drivers[1].rank_correlation < 0.4);
}

void TestBands::missingOutputsAreLeftOut()
{
    const auto function = [](const std::vector<double>& x) {
        return Outputs{x[0] < 0.5 ? std::optional(x[0]) : std::nullopt, std::nullopt};
    };
    const Bands bands = bandsOf(evenOnes(1), function);
    QCOMPARE(bands.outputs[0].samples, 100u);
    VERIFY_NEAR(bands.outputs[0].p95, 0.475, 0.005);
    QCOMPARE(bands.outputs[1].samples, 0u);
    QVERIFY(bands.outputs[1].drivers.empty());
}

void TestBands::sameSeedGivesTheSameBitsAndAnotherOthers()
{
    const auto function = [](const std::vector<double>& x) { return Outputs{x[0] * x[1]}; };
    const auto p95 = [&](std::uint64_t seed) {
        BandOptions options;
        options.seed = seed;
        return bandsOf(evenOnes(2), function, options).outputs[0].p95;
    };
    QVERIFY(p95(1) == p95(1));
    QVERIFY(p95(1) != p95(2));
    BandOptions four_at_a_time;
    four_at_a_time.seed = 1;
    four_at_a_time.threads = 4;
    QVERIFY(bandsOf(evenOnes(2), function, four_at_a_time).outputs[0].p95 == p95(1));
    // Four points of one side by the same rules in another language: integers, and divisions by powers of
    // two.
    const auto points = latinHypercube(4, 1, 1);
    const double expected[] = {0.011303652659989893, 0.6353927770396695, 0.8870358498534188,
                               0.4070325172506273};
    for (std::size_t i = 0; i < 4; ++i)
        QVERIFY(points[i][0] == expected[i]);
}

void TestBands::aStopTokenStops()
{
    std::stop_source source;
    int calls = 0;
    const auto function = [&](const std::vector<double>&) {
        if (++calls == 30)
            source.request_stop();
        return Outputs{1.0};
    };
    const Bands bands = bandsOf(evenOnes(1), function, {}, source.get_token());
    QCOMPARE(bands.status, BandStatus::stopped);
    QCOMPARE(calls, 30);
    QCOMPARE(bands.samples_done, 30u);
    QVERIFY(bands.outputs.empty());
}

void TestBands::rangesThatDoNotHoldTogetherAreRefused()
{
    const auto function = [](const std::vector<double>&) { return Outputs{1.0}; };
    const auto refused = [&](const UncertainFigure& assumption) {
        const Bands bands = bandsOf({assumption}, function);
        return bands.status == BandStatus::invalid_input && !bands.message.pattern.empty();
    };
    const double nan = std::numeric_limits<double>::quiet_NaN();
    QVERIFY(!refused({"a", "", Spread::even, 0, 1, 0}));
    QVERIFY(refused({"a", "", Spread::even, 2, 1, 0}));
    QVERIFY(refused({"a", "", Spread::even, nan, 1, 0}));
    QVERIFY(refused({"a", "", Spread::logarithmic, 0, 1, 0}));
    QVERIFY(refused({"a", "", Spread::peaked, 0, 1, 2}));
    BandOptions few;
    few.samples = 3;
    QCOMPARE(bandsOf(evenOnes(1), function, few).status, BandStatus::invalid_input);
    QCOMPARE(bandsOf(evenOnes(1), {}, {}).status, BandStatus::invalid_input);
}

QTEST_APPLESS_MAIN(TestBands)
#include "test_bands.moc"
