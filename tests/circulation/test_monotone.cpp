#include "tests/circulation/random_loops.h"
#include "tests/near.h"
#include "tests/random_runs.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <functional>
#include <vector>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

const int loops = runs(10'000, 10'000);
constexpr std::uint64_t seed = 20260401;

// What counts as no change: the solver's own tolerance, and the resistance tables' error.
constexpr double same = 1e-6;

Circulation circulate(const SoundLoop& sound)
{
    static const FluidTable coolant = FluidTable::of(HalfGlycol()).value();
    CirculationOptions options;
    options.look_for_others = false;
    options.details = false;
    const Loop loop = sound.loop();
    return steadyCirculation(loop, LoopResistance(loop.elements), coolant, options);
}

using LoopChange = std::function<void(SoundLoop&, Dice&)>;
using FlowCheck = std::function<bool(const Circulation& before, const Circulation& after)>;

bool notLess(const Circulation& a, const Circulation& b)
{
    return b.flow_kg_per_s >= a.flow_kg_per_s * (1 - same);
}
bool notMore(const Circulation& a, const Circulation& b)
{
    return b.flow_kg_per_s <= a.flow_kg_per_s * (1 + same);
}

} // namespace

class TestCirculationMonotone : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void a_larger_hose_with_its_ends_never_lowers_the_flow()
    {
        compare([](SoundLoop& s, Dice& dice) { s.hose_bore_m *= dice.between(1, 1.5); }, notLess);
    }
    void a_longer_hose_never_raises_the_flow()
    {
        compare(
            [](SoundLoop& s, Dice& dice) {
                s.return_m *= dice.between(1, 2);
                s.supply_m *= dice.between(1, 2);
            },
            notMore);
    }
    void more_height_never_lowers_the_flow()
    {
        // The same hose, led higher: the block stands higher over the heater.
        compare(
            [](SoundLoop& s, Dice& dice) {
                const double most = std::min(s.return_m - s.return_rise_m, s.supply_m - s.supply_fall_m);
                const double more = dice.between(0, most);
                s.return_rise_m += more;
                s.supply_fall_m += more;
            },
            notLess);
    }
    void more_power_never_lowers_the_outlet_temperature()
    {
        compare([](SoundLoop& s, Dice& dice) { s.power_W *= dice.between(1, 1.5); },
                [](const Circulation& a, const Circulation& b) {
                    return b.heater_outlet_degC >= a.heater_outlet_degC - 1e-4;
                });
    }
    void a_start_finds_what_the_search_finds();
    void a_larger_hose_on_the_same_hose_ends_can_lower_the_flow_a_little();
    void hose_ends_far_too_small_for_their_hose_lower_it_by_more();

private:
    struct Solved {
        SoundLoop sound;
        Circulation result;
    };
    std::vector<Solved> solved;

    void compare(const LoopChange& change, const FlowCheck& check) const;
    double mostLost(const std::function<double(const SoundLoop&, Dice&)>& larger) const;
};

void TestCirculationMonotone::initTestCase()
{
    Dice dice(seed);
    for (int i = 0; i < loops; ++i) {
        Solved s;
        s.sound = SoundLoop::random(dice);
        s.result = circulate(s.sound);
        QVERIFY(std::isfinite(s.result.flow_kg_per_s));
        solved.push_back(s);
    }
}

/// Every loop and the same loop changed, where both circulate.
void TestCirculationMonotone::compare(const LoopChange& change, const FlowCheck& check) const
{
    Dice dice(seed + 1);
    int compared = 0;
    for (std::size_t i = 0; i < solved.size(); ++i) {
        SoundLoop changed = solved[i].sound;
        change(changed, dice);
        const Circulation &a = solved[i].result, b = circulate(changed);
        if (a.status != CirculationStatus::circulates || b.status != CirculationStatus::circulates)
            continue;
        ++compared;
        if (!check(a, b)) {
            qWarning("loop %zu: %.12g kg/s, then %.12g; out at %.9g, then %.9g degC", i, a.flow_kg_per_s,
                     b.flow_kg_per_s, a.heater_outlet_degC, b.heater_outlet_degC);
            QFAIL("see the warning");
        }
    }
    qInfo("%d of %d loops compared", compared, loops);
    QVERIFY(compared > loops * 9 / 10);
}

void TestCirculationMonotone::a_start_finds_what_the_search_finds()
{
    Dice dice(seed);
    const FluidTable coolant = FluidTable::of(HalfGlycol()).value();
    int followed = 0, most = 0;
    for (int i = 0; i < loops / 10; ++i) {
        const Loop loop = SoundLoop::random(dice).loop();
        const LoopResistance resistance(loop.elements);
        const Circulation searched = steadyCirculation(loop, resistance, coolant);
        if (searched.status != CirculationStatus::circulates)
            continue;
        CirculationOptions options;
        options.start_flow_kg_per_s = searched.flow_kg_per_s * dice.between(0.7, 1.4);
        const Circulation result = steadyCirculation(loop, resistance, coolant, options);
        QCOMPARE(result.status, CirculationStatus::circulates);
        VERIFY_NEAR(result.flow_kg_per_s, searched.flow_kg_per_s, 5e-7 * searched.flow_kg_per_s);
        most = std::max(most, result.iterations);
        ++followed;
    }
    qInfo("%d loops followed, %d evaluations at most", followed, most);
    QVERIFY(followed > loops / 10 * 8 / 10);
}

/// How much flow is lost at most where a hose is exchanged for a larger one on the same hose ends.
/// \param larger by how many times, for one loop
double TestCirculationMonotone::mostLost(const std::function<double(const SoundLoop&, Dice&)>& larger) const
{
    double most = 0;
    std::size_t worst = 0;
    Dice dice(seed + 2);
    for (std::size_t i = 0; i < solved.size(); ++i) {
        SoundLoop wider = solved[i].sound;
        const double ratio = larger(wider, dice);
        wider.hose_bore_m *= ratio;
        wider.end_share /= ratio;
        const Circulation &a = solved[i].result, b = circulate(wider);
        if (a.status != CirculationStatus::circulates || b.status != CirculationStatus::circulates)
            continue;
        const double lost = 1 - b.flow_kg_per_s / a.flow_kg_per_s;
        if (lost > most) {
            most = lost;
            worst = i;
        }
    }
    qInfo("lower by up to %.2f %%: %.1f mm hose on ends of %.1f mm", 100 * most,
          1e3 * solved[worst].sound.hose_bore_m,
          1e3 * solved[worst].sound.hose_bore_m * solved[worst].sound.end_share);
    return most;
}

// The stream has to narrow by more into the same hose end, and Hooper's (1988) laminar steps lose more by
// that than the wider hose saves.
void TestCirculationMonotone::a_larger_hose_on_the_same_hose_ends_can_lower_the_flow_a_little()
{
    // A hose end has 0.70 to 0.82 of its hose's bore (common practice, no published source): the same one
    // fits hoses of two sizes only as far as it stays within that with both. Up to 1 1/4 in the flow falls by
    // less than 3 %, up to 1 1/2 in, the largest in stock, by 3.2 %.
    constexpr double tightest = 0.70;
    constexpr double widest = 0.82;
    const auto mostUpTo = [this](double largest_m) {
        return mostLost([largest_m](const SoundLoop& s, Dice& dice) {
            const double most = std::min(s.end_share / tightest, largest_m / s.hose_bore_m);
            return s.end_share > widest || most < 1 ? 1 : dice.between(0.9, 1) * (most - 1) + 1;
        });
    };
    const double usual = mostUpTo(0.03175);
    QVERIFY(usual > 0.005);
    QVERIFY(usual < 0.03);
    QVERIFY(mostUpTo(0.0381) < 0.035);
}

void TestCirculationMonotone::hose_ends_far_too_small_for_their_hose_lower_it_by_more()
{
    // 3/4 to 1 in and 1 to 1 1/4 in, forced over the old ends.
    const double most = mostLost([](const SoundLoop&, Dice& dice) { return dice.between(1.25, 1.0 / 0.75); });
    QVERIFY(most > 0.03);
    QVERIFY(most < 0.06);
}

QTEST_APPLESS_MAIN(TestCirculationMonotone)
#include "test_monotone.moc"
