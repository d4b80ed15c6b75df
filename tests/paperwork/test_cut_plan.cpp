#include "core/paperwork/cut_plan.h"

#include <QTest>

#include <algorithm>
#include <functional>
#include <numeric>
#include <random>

using namespace siphonwright;

namespace {

using Lengths = std::vector<std::int64_t>;

/// Every way to share cuts among rolls, one cut after the other: the least length bought. Nothing in common
/// with the way the plan is made.
std::int64_t leastByTrying(const Lengths& cuts, const Lengths& rolls)
{
    const std::int64_t longest = *std::max_element(rolls.begin(), rolls.end());
    std::int64_t least = -1;
    Lengths groups;
    const std::function<void(std::size_t)> place = [&](std::size_t next) {
        if (next == cuts.size()) {
            std::int64_t bought = 0;
            for (const std::int64_t group : groups) {
                std::int64_t roll = longest;
                for (const std::int64_t length : rolls)
                    if (length >= group)
                        roll = std::min(roll, length);
                bought += roll;
            }
            least = least < 0 ? bought : std::min(least, bought);
            return;
        }
        for (std::size_t i = 0; i < groups.size(); ++i) {
            if (groups[i] + cuts[next] > longest)
                continue;
            groups[i] += cuts[next];
            place(next + 1);
            groups[i] -= cuts[next];
        }
        groups.push_back(cuts[next]);
        place(next + 1);
        groups.pop_back();
    };
    place(0);
    return least;
}

Lengths someLengths(std::mt19937& random, std::size_t count, int from, int to)
{
    Lengths out(count);
    for (std::int64_t& length : out)
        length = std::uniform_int_distribution<int>(from, to)(random);
    return out;
}

/// Does each cut lie on one roll, do rolls hold their cuts, are they of lengths that can be bought?
bool holdsTogether(const CutPlan& plan, const Lengths& cuts, const Lengths& rolls)
{
    std::vector<int> times(cuts.size(), 0);
    std::int64_t bought = 0;
    for (const CutRoll& roll : plan.rolls) {
        std::int64_t used = 0;
        for (const std::size_t cut : roll.cuts) {
            ++times.at(cut);
            used += cuts[cut];
        }
        bought += roll.length;
        if (used + roll.left != roll.length || roll.left < 0 ||
            std::find(rolls.begin(), rolls.end(), roll.length) == rolls.end())
            return false;
    }
    const bool each_once = std::all_of(times.begin(), times.end(), [](int n) { return n == 1; });
    return each_once && bought == plan.bought &&
           plan.cut == std::accumulate(cuts.begin(), cuts.end(), std::int64_t{0});
}

} // namespace

class TestCutPlan : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void threeHosesComeOffTwoRolls();
    void firstFitWouldBuyMoreThanTheLeast();
    void smallCasesAreTheLeastOfEveryWay();
    void manyCutsHoldTogetherAndRespectTheBound();
    void aPlanThatMeetsTheBoundIsCalledTheLeast();
    void aCutLongerThanTheLongestRollIsRefused();
    void whatIsMissingOrWrongIsSaid();
    void aLengthIsNeverRoundedDown();
};

// By hand: 900 + 100 fill one roll of 1000, 500 takes another: 2000 bought, 500 left. One roll cannot do, as
// 1500 is more than 1000.
void TestCutPlan::threeHosesComeOffTwoRolls()
{
    const CutPlan plan = planCuts({100, 900, 500}, {1000});
    QCOMPARE(plan.status, CutStatus::least);
    QCOMPARE(plan.rolls.size(), std::size_t{2});
    QCOMPARE(plan.bought, std::int64_t{2000});
    QCOMPARE(plan.waste(), std::int64_t{500});
}

// By hand: rolls of 100 and cuts 50, 34, 33, 33, 25, 25. First fit decreasing puts 50+34, 33+33+25, 25 on
// three rolls; 50+25+25 and 34+33+33 fill two.
void TestCutPlan::firstFitWouldBuyMoreThanTheLeast()
{
    const CutPlan plan = planCuts({50, 34, 33, 33, 25, 25}, {100});
    QCOMPARE(plan.bought, std::int64_t{200});
    QCOMPARE(plan.waste(), std::int64_t{0});
}

void TestCutPlan::smallCasesAreTheLeastOfEveryWay()
{
    std::mt19937 random(19);
    for (int run = 0; run < 6000; ++run) {
        const Lengths rolls = someLengths(random, 1 + random() % 3, 40, 100);
        const int longest = static_cast<int>(*std::max_element(rolls.begin(), rolls.end()));
        const Lengths cuts = someLengths(random, 1 + random() % 7, 1, longest);
        const CutPlan plan = planCuts(cuts, rolls);
        QCOMPARE(plan.status, CutStatus::least);
        QVERIFY2(holdsTogether(plan, cuts, rolls), std::to_string(run).c_str());
        QVERIFY2(plan.bought == leastByTrying(cuts, rolls), std::to_string(run).c_str());
    }
}

void TestCutPlan::manyCutsHoldTogetherAndRespectTheBound()
{
    std::mt19937 random(7);
    int near_least = 0;
    for (int run = 0; run < 400; ++run) {
        const Lengths rolls = someLengths(random, 1 + random() % 3, 400, 1000);
        const int longest = static_cast<int>(*std::max_element(rolls.begin(), rolls.end()));
        const Lengths cuts = someLengths(random, 15 + random() % 40, 20, longest);
        const CutPlan plan = planCuts(cuts, rolls);
        QVERIFY(plan.planned());
        QVERIFY2(holdsTogether(plan, cuts, rolls), std::to_string(run).c_str());
        QVERIFY(plan.least_possible <= plan.bought && plan.least_possible >= plan.cut);
        near_least += plan.status == CutStatus::near_least ? 1 : 0;
    }
    QVERIFY(near_least > 0); // both ends of the statement are met
    QVERIFY(near_least < 400);
}

// 16 cuts of 500 fill 8 rolls of 1000 without a rest: no way buys less than is cut.
void TestCutPlan::aPlanThatMeetsTheBoundIsCalledTheLeast()
{
    const CutPlan plan = planCuts(Lengths(16, 500), {1000});
    QCOMPARE(plan.status, CutStatus::least);
    QCOMPARE(plan.bought, std::int64_t{8000});
}

void TestCutPlan::aCutLongerThanTheLongestRollIsRefused()
{
    const CutPlan plan = planCuts({300, 1001, 200}, {700, 1000});
    QCOMPARE(plan.status, CutStatus::cut_too_long);
    QCOMPARE(plan.too_long, std::size_t{1});
    QVERIFY(!plan.message.empty());
    QVERIFY(!plan.planned());
    QCOMPARE(planCuts({300, 1000, 200}, {700, 1000}).status, CutStatus::least);
}

void TestCutPlan::whatIsMissingOrWrongIsSaid()
{
    QCOMPARE(planCuts({}, {100}).status, CutStatus::nothing_to_cut);
    QCOMPARE(planCuts({10}, {}).status, CutStatus::no_rolls);
    QCOMPARE(planCuts({0}, {100}).status, CutStatus::bad_input);
    QCOMPARE(planCuts({10}, {-5, 100}).status, CutStatus::bad_input);
    QCOMPARE(planCuts(Lengths(most_cuts + 1, 1), {100}).status, CutStatus::bad_input);
}

void TestCutPlan::aLengthIsNeverRoundedDown()
{
    QCOMPARE(hundredthsOf(6.35), std::int64_t{635});
    QCOMPARE(hundredthsOf(1245), std::int64_t{124'500});
    QCOMPARE(hundredthsOf(10.001), std::int64_t{1001});
    QCOMPARE(hundredthsOf(-1), std::int64_t{0});
    QCOMPARE(hundredthsOf(std::nan("")), std::int64_t{0});
    QCOMPARE(hundredthsOf(1e12), std::int64_t{0});
}

QTEST_APPLESS_MAIN(TestCutPlan)
#include "test_cut_plan.moc"
