#include "tests/checks/cases.h"
#include "tests/near.h"

#include "core/analysis/analysis.h"

#include <algorithm>
#include <cmath>
#include <set>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// Is every placeholder of the pattern given, and everything given used?
bool complete(const Message& message)
{
    const auto used = [&](const std::string& mark) {
        return message.pattern.find(mark) != std::string::npos;
    };
    std::size_t marks = 0;
    for (std::size_t i = 0; i < message.quantities.size(); ++i)
        marks += used(std::string{'{', static_cast<char>('0' + i), '}'}) ? 1 : 0;
    for (std::size_t i = 0; i < message.words.size(); ++i)
        marks += used(std::string{'{', static_cast<char>('a' + i), '}'}) ? 1 : 0;
    const auto braces = std::count(message.pattern.begin(), message.pattern.end(), '{');
    return marks == message.quantities.size() + message.words.size() &&
           static_cast<std::size_t>(braces) == marks && !message.pattern.empty();
}

std::optional<Severity> worst(const Judgement& judgement, const std::string& rule)
{
    std::optional<Severity> out;
    for (const Finding& finding : judgement.findings)
        if (finding.rule == rule && (!out || finding.severity > *out))
            out = finding.severity;
    return out;
}

QString text(const std::optional<Severity>& severity)
{
    if (!severity)
        return QStringLiteral("passes");
    const std::string_view name = nameOf(*severity);
    return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

} // namespace

class TestRules : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aSoundLoopHasNothingToFind();
    void everyRuleHasACaseThatFailsAndOneThatPasses();
    void everySeverityWithALimitHasACase();
    void eachSideOfEachLimit_data();
    void eachSideOfEachLimit();
    void everyFindingIsWholeAndPlaced();
};

void TestRules::aSoundLoopHasNothingToFind()
{
    ProofOptions options;
    options.bands = false;
    Sketch sketch = soundLoop();
    sketch.site.envelope_along_percent = 0; // grades have tests of their own
    sketch.site.envelope_across_percent = 0;
    const Analysis analysis = proved(sketch, options);
    for (const Finding& finding : analysis.findings)
        qWarning("%s: %s", finding.rule.c_str(), format(finding.text, UnitSystem::metric).c_str());
    for (const NotJudged& entry : analysis.not_judged)
        qWarning("%s: %s", entry.rule.c_str(), entry.missing.c_str());
    QVERIFY(analysis.proof && analysis.proof->warm_up.inputs && !analysis.proof->by_bore.empty());
    QVERIFY(analysis.findings.empty());
    QVERIFY(analysis.not_judged.empty());
}

void TestRules::everyRuleHasACaseThatFailsAndOneThatPasses()
{
    std::set<std::string> failing;
    std::set<std::string> passing;
    for (const Case& one : allCases())
        (one.expected ? failing : passing).insert(one.rule);
    for (const Rule& rule : ruleBook()) {
        if (rule.needs == Needs::filling)
            continue; // test_air_rules has their cases
        const std::string id(rule.id);
        QVERIFY2(failing.count(id) == 1, id.c_str());
        QVERIFY2(passing.count(id) == 1, id.c_str());
    }
    const auto others = std::count_if(ruleBook().begin(), ruleBook().end(),
                                      [](const Rule& rule) { return rule.needs != Needs::filling; });
    QCOMPARE(failing.size(), static_cast<std::size_t>(others));
}

void TestRules::everySeverityWithALimitHasACase()
{
    std::set<std::pair<std::string, Severity>> covered;
    for (const Case& one : allCases())
        if (one.expected)
            covered.insert({one.rule, *one.expected});
    for (const Rule& rule : ruleBook()) {
        if (rule.needs == Needs::filling)
            continue; // test_air_rules has their cases
        const std::string id(rule.id);
        if (rule.limits.advice)
            QVERIFY2(covered.count({id, Severity::advice}) == 1, id.c_str());
        if (rule.limits.caution)
            QVERIFY2(covered.count({id, Severity::caution}) == 1, id.c_str());
        if (rule.limits.stop)
            QVERIFY2(covered.count({id, Severity::stop}) == 1, id.c_str());
    }
}

void TestRules::eachSideOfEachLimit_data()
{
    QTest::addColumn<int>("index");
    const std::vector<Case> all = allCases();
    for (std::size_t i = 0; i < all.size(); ++i)
        QTest::newRow((all[i].rule + ": " + all[i].name).c_str()) << static_cast<int>(i);
}

void TestRules::eachSideOfEachLimit()
{
    QFETCH(const int, index);
    const Case one = allCases().at(static_cast<std::size_t>(index));
    const Judged judged = judgeCase(one);
    QCOMPARE(text(worst(judged.judgement, one.rule)), text(one.expected));
}

void TestRules::everyFindingIsWholeAndPlaced()
{
    std::set<std::string> coolant_rules = {"antifreeze-over-60", "freeze-margin", "antifreeze-kind-unknown"};
    for (const Case& one : allCases()) {
        for (const Finding& finding : judgeCase(one).judgement.findings) {
            const std::string where = one.rule + ", " + one.name + ": " + finding.rule;
            QVERIFY2(ruleById(finding.rule) != nullptr, where.c_str());
            QVERIFY2(complete(finding.text), where.c_str());
            QVERIFY2(complete(finding.fix), where.c_str());
            for (const Quantity& quantity : finding.text.quantities)
                QVERIFY2(std::isfinite(quantity.value), where.c_str());
            // What is nowhere on the drawing is the coolant alone.
            const bool placed = finding.at || coolant_rules.count(finding.rule) == 1;
            QVERIFY2(placed, where.c_str());
        }
    }
}

QTEST_APPLESS_MAIN(TestRules)
#include "test_rules.moc"
