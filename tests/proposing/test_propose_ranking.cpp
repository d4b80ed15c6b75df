#include "tests/near.h"
#include "tests/random_runs.h"
#include "tests/read_sample.h"
#include "tests/sound_loop.h"

#include "core/paperwork/parts.h"
#include "core/proposing/proposal_text.h"
#include "core/proposing/propose.h"

#include <QTest>

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

using namespace siphonwright;

namespace {

HangingSpace roomAbout(const Sketch& sketch)
{
    const Vec3 at = sketch.heaters.front().position;
    return {at - Vec3{200, 100, 75}, at + Vec3{200, 100, 75}};
}

ProposeOptions rankedBy(RankBy what, const Sketch& sketch)
{
    ProposeOptions options;
    options.space = roomAbout(sketch);
    options.rank_by = what;
    return options;
}

PricedItem priced(std::string item, PriceUnit unit, std::int64_t minor)
{
    PricedItem out;
    out.item = std::move(item);
    out.unit = unit;
    out.price_minor = minor;
    return out;
}

/// All that is fitted to hoses at 1.00, and hose at 10.00 a metre whatever its bore.
Sketch withPrices(std::vector<std::string> without = {})
{
    Sketch sketch = test::soundLoop();
    for (Port& port : sketch.ports)
        port.thread = "1/2 NPT"; // without it nobody knows which adapter to price
    sketch.heaters.front().inlet.thread = "1/2 NPT";
    sketch.heaters.front().outlet.thread = "1/2 NPT";
    Quote quote;
    quote.currency = {"XTS", "", 2};
    quote.mark_up_thousandths = 0;
    quote.prices.items.push_back(priced("hose", PriceUnit::metre, 1000));
    for (const char* item : {"hose-end", "adapter", "isolation-valve", "clamp", "clip", "elbow", "reducer"})
        quote.prices.items.push_back(priced(item, PriceUnit::each, 100));
    std::erase_if(quote.prices.items, [&](const PricedItem& one) {
        return std::find(without.begin(), without.end(), one.item) != without.end();
    });
    sketch.quote = Shared<Quote>(quote);
    return sketch;
}

} // namespace

/// What comes first, what it costs, and what is left.
class TestProposeRanking : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theShortestComesFirstWhereLengthRanks();
    void theMostFlowComesFirstWhereFlowRanks();
    void theCheapestComesFirstWherePriceRanks();
    void withoutPricesNothingIsPricedAndNothingIsForNothing();
    void aPartWithoutAPriceIsNamed();
    void aPriceIsThatOfItsParts();
    void proposalsHoldOverTheWholeEnvelopeOfASample_data();
    void proposalsHoldOverTheWholeEnvelopeOfASample();
    void whereNoPlaceHoldsOnAGradeTheProposalSaysSo();
    void marginsOfGroundAndClipsAreThoseOfTheRules();
    void whatCouldNotBeJudgedIsNoMargin();
    void faultsOfAnotherHeaterDoNotStandInTheWay();
    void aBoreThatIsSmallerByRoundingAloneIsTheOneTheManualAsksFor();
    void progressIsToldAndEndsWithWhatWasFound();
};

void TestProposeRanking::theShortestComesFirstWhereLengthRanks()
{
    const Sketch sketch = test::soundLoop();
    const Proposals found = propose(sketch, rankedBy(RankBy::length, sketch));
    QVERIFY(found.best_first.size() >= 2);
    for (std::size_t i = 0; i < found.best_first.size(); ++i) {
        const Proposal& one = found.best_first[i];
        VERIFY_NEAR(one.length_mm, one.supply_mm + one.return_mm, 1e-9);
        if (i > 0)
            QVERIFY(found.best_first[i - 1].length_mm <= one.length_mm);
    }
    const Proposals by_flow = propose(sketch, rankedBy(RankBy::flow, sketch));
    QVERIFY(found.best_first.front().length_mm < by_flow.best_first.front().length_mm);
}

void TestProposeRanking::theMostFlowComesFirstWhereFlowRanks()
{
    const Sketch sketch = test::soundLoop();
    const Proposals found = propose(sketch, rankedBy(RankBy::flow, sketch));
    QVERIFY(found.best_first.size() >= 2);
    for (std::size_t i = 1; i < found.best_first.size(); ++i)
        QVERIFY(found.best_first[i - 1].flow_l_per_min >= found.best_first[i].flow_l_per_min);
    const Proposals by_length = propose(sketch, rankedBy(RankBy::length, sketch));
    QVERIFY(found.best_first.front().flow_l_per_min > by_length.best_first.front().flow_l_per_min);
}

void TestProposeRanking::theCheapestComesFirstWherePriceRanks()
{
    const Sketch sketch = withPrices();
    const Proposals found = propose(sketch, rankedBy(RankBy::price, sketch));
    QVERIFY(found.best_first.size() >= 2);
    for (std::size_t i = 0; i < found.best_first.size(); ++i) {
        QVERIFY(found.best_first[i].price.complete());
        if (i > 0)
            QVERIFY(*found.best_first[i - 1].price.minor <= *found.best_first[i].price.minor);
    }
}

void TestProposeRanking::withoutPricesNothingIsPricedAndNothingIsForNothing()
{
    const Sketch sketch = test::soundLoop();
    const Proposals found = propose(sketch, rankedBy(RankBy::price, sketch));
    QVERIFY(!found.best_first.empty());
    for (const Proposal& one : found.best_first) {
        QVERIFY(!one.price.minor);
        QVERIFY(!one.price.complete());
        QVERIFY(!one.price.hose_priced);
        QVERIFY(!one.price.not_priced.empty());
    }
}

void TestProposeRanking::aPartWithoutAPriceIsNamed()
{
    const Sketch sketch = withPrices({"clamp"});
    const Proposals found = propose(sketch, rankedBy(RankBy::price, sketch));
    QVERIFY(!found.best_first.empty());
    const LayoutPrice& price = found.best_first.front().price;
    QVERIFY(price.minor);
    QVERIFY(!price.complete());
    QVERIFY(price.hose_priced);
    QCOMPARE(price.not_priced, std::vector<std::string>{"Hose clamp"});
}

void TestProposeRanking::aPriceIsThatOfItsParts()
{
    // Two hoses: what is cut of them at 10.00 a metre, rounded up to the cent by row, and each piece 1.00.
    const Sketch sketch = withPrices();
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const PartsList parts = partsOf(sketch, layout);
    double expected_minor = 0;
    for (const PartRow& row : parts.rows) {
        if (row.kind < ItemKind::hose || row.kind > ItemKind::insulation)
            continue;
        const double units = static_cast<double>(row.thousandths.value_or(0)) / 1000;
        expected_minor += row.kind == ItemKind::hose ? 1000 * units : 100 * units;
    }
    const LayoutPrice price = priceOfHoses(sketch, layout);
    QVERIFY(price.complete());
    VERIFY_NEAR(static_cast<double>(*price.minor), expected_minor, 1.0);
    VERIFY_NEAR(*priceOfMetre(sketch, 19.05), 1000.0, 1e-9);
    QVERIFY(!priceOfMetre(test::soundLoop(), 19.05));
}

void TestProposeRanking::proposalsHoldOverTheWholeEnvelopeOfASample_data()
{
    QTest::addColumn<QString>("name");
    const std::vector names = {"sound-bus", "return-dip", "hose-too-small", "vee-crossing", "clear-tube-rig"};
    for (const char* name : test::someOf(names, 3))
        QTest::newRow(name) << QString::fromLatin1(name);
}

void TestProposeRanking::proposalsHoldOverTheWholeEnvelopeOfASample()
{
    QFETCH(const QString, name);
    const Sketch sketch = test::sampleOf(name);
    ProposeOptions options;
    options.space = spaceUnder(sketch, sketch.heaters.front().id);
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    for (const Proposal& one : found.best_first) {
        QVERIFY(one.sound_over_envelope);
        const Analysis analysis = proved(one.sketch);
        for (const Finding& finding : analysis.proof->on_grade)
            QVERIFY2(beyondLayout(finding.rule), finding.rule.c_str());
        QVERIFY(analysis.proof->sound->low_percent <= -sketch.site.envelope_along_percent);
        QVERIFY(analysis.proof->sound->high_percent >= sketch.site.envelope_along_percent);
    }
}

void TestProposeRanking::whereNoPlaceHoldsOnAGradeTheProposalSaysSo()
{
    // The heater's top is at most 155 mm under the jacket on the level, and nearer nose-down: 5 mm more than
    // the rule's 150 mm are gone at 3 %, 1030 mm from the jacket's rear end and farther from its front.
    Sketch sketch = test::soundLoop();
    const double top_mm = resolve(sketch, plumbOf(sketch)).heaters.front().body_top_mm;
    sketch.heaters.front().position.z += 400 - 155 - top_mm;
    const Proposals found = propose(sketch);
    QVERIFY(!found.best_first.empty());
    for (const Proposal& one : found.best_first) {
        QVERIFY(!one.sound_over_envelope);
        const std::vector<Message> lines = marginList(one);
        QVERIFY(std::any_of(lines.begin(), lines.end(), [](const Message& line) {
            return line.pattern == "Not sound on every grade that is judged.";
        }));
    }
}

void TestProposeRanking::marginsOfGroundAndClipsAreThoseOfTheRules()
{
    const Proposals found = propose(test::soundLoop());
    QVERIFY(!found.best_first.empty());
    const Proposal& best = found.best_first.front();
    const Analysis analysis = analyse(best.sketch);
    for (const char* rule : {"ground-clearance", "heater-drop"}) {
        const auto is = [&](const Margin& margin) { return margin.rule == rule; };
        const auto own = std::find_if(best.to_spare.begin(), best.to_spare.end(), is);
        const auto judged = std::find_if(analysis.margins.begin(), analysis.margins.end(), is);
        QVERIFY(own != best.to_spare.end() && judged != analysis.margins.end());
        VERIFY_NEAR(own->left, judged->left, 1e-9);
    }
    const Margin* least = best.leastToSpare();
    QVERIFY(least);
    for (const Margin& margin : best.to_spare)
        QVERIFY(margin.unit != Unit::mm || least->left <= margin.left);
    QVERIFY(leastOf(best));
    QVERIFY(best.clips > 0);
}

void TestProposeRanking::whatCouldNotBeJudgedIsNoMargin()
{
    Sketch sketch = test::soundLoop();
    sketch.ground_z_mm.reset();
    const Proposals found = propose(sketch);
    QVERIFY(!found.best_first.empty());
    const Proposal& best = found.best_first.front();
    QVERIFY(std::none_of(best.to_spare.begin(), best.to_spare.end(),
                         [](const Margin& margin) { return margin.rule == "ground-clearance"; }));
    QVERIFY(std::any_of(best.not_judged.begin(), best.not_judged.end(),
                        [](const NotJudged& one) { return one.rule == "ground-clearance"; }));
    const std::vector<Message> lines = marginList(best);
    QVERIFY(std::any_of(lines.begin(), lines.end(), [](const Message& line) {
        return format(line, UnitSystem::metric).find("Too near the ground") != std::string::npos;
    }));
}

void TestProposeRanking::faultsOfAnotherHeaterDoNotStandInTheWay()
{
    // A second heater, not yet plumbed: that is a stop of its own.
    Sketch sketch = test::sampleOf(QStringLiteral("generator-two-heaters"));
    const Id first = sketch.heaters[0].id;
    const Id second = sketch.heaters[1].id;
    std::erase_if(sketch.hoses, [&](const Shared<Hose>& hose) {
        return hose->from.heater == second || hose->to.heater == second;
    });
    QVERIFY(analyse(sketch).stopped());
    ProposeOptions options;
    options.heater = first;
    options.how_many = 1;
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    QVERIFY(std::any_of(found.beside.begin(), found.beside.end(),
                        [&](const Finding& finding) { return finding.part.id == second; }));
}

void TestProposeRanking::aBoreThatIsSmallerByRoundingAloneIsTheOneTheManualAsksFor()
{
    Sketch sketch = test::soundLoop();
    sketch.heaters.front().manual_min_bore_mm.value = 19; // what its ports have too
    ProposeOptions options;
    options.how_many = 1;
    options.stock_bores_mm = {std::nextafter(19.0, 0.0)};
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    VERIFY_NEAR(found.best_first.front().bore_mm, 19.0, 1e-9);
}

void TestProposeRanking::progressIsToldAndEndsWithWhatWasFound()
{
    const Sketch sketch = test::soundLoop();
    ProposeOptions options = rankedBy(RankBy::balance, sketch);
    std::size_t told = 0;
    ProposeProgress last;
    options.progress = [&](const ProposeProgress& progress) {
        ++told;
        QVERIFY(progress.tried > last.tried);
        QVERIFY(progress.tried <= progress.of);
        last = progress;
    };
    const Proposals found = propose(sketch, options);
    QVERIFY(!found.best_first.empty());
    QVERIFY(told > 0);
}

QTEST_APPLESS_MAIN(TestProposeRanking)
#include "test_propose_ranking.moc"
