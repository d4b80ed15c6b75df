#include "tests/checks/air_cases.h"

#include <QTest>

#include <algorithm>
#include <set>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

std::optional<Severity> worstOfRule(const Judgement& judgement, const std::string& rule)
{
    std::optional<Severity> out;
    for (const Finding& finding : judgement.findings)
        if (finding.rule == rule && (!out || finding.severity > *out))
            out = finding.severity;
    return out;
}

QString inWords(const std::optional<Severity>& severity)
{
    return severity ? QString::fromStdString(std::string(nameOf(*severity))) : QStringLiteral("passes");
}

} // namespace

class TestAirRules : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyRuleOnAirHasACaseThatFailsAndOneThatPasses();
    void eachSideOfEachLimit_data();
    void eachSideOfEachLimit();
    void everyFindingIsPlacedAndSaid();
};

void TestAirRules::everyRuleOnAirHasACaseThatFailsAndOneThatPasses()
{
    std::set<std::string> failing;
    std::set<std::string> passing;
    for (const AirCase& one : airCases())
        (one.expected ? failing : passing).insert(one.rule);
    for (const Rule& rule : ruleBook()) {
        if (rule.needs != Needs::filling)
            continue;
        const std::string id(rule.id);
        QVERIFY2(failing.count(id) == 1, id.c_str());
        QVERIFY2(passing.count(id) == 1, id.c_str());
    }
    QCOMPARE(failing.size(), std::size_t(5));
}

void TestAirRules::eachSideOfEachLimit_data()
{
    QTest::addColumn<int>("index");
    const std::vector<AirCase> all = airCases();
    for (std::size_t i = 0; i < all.size(); ++i)
        QTest::newRow((all[i].rule + ": " + all[i].name).c_str()) << static_cast<int>(i);
}

void TestAirRules::eachSideOfEachLimit()
{
    QFETCH(const int, index);
    const AirCase one = airCases().at(static_cast<std::size_t>(index));
    const Judgement judgement = judgeCase(one);
    QCOMPARE(inWords(worstOfRule(judgement, one.rule)), inWords(one.expected));
    const bool left_out = std::any_of(judgement.not_judged.begin(), judgement.not_judged.end(),
                                      [&](const NotJudged& entry) { return entry.rule == one.rule; });
    QCOMPARE(left_out, one.not_judged);
}

void TestAirRules::everyFindingIsPlacedAndSaid()
{
    for (const AirCase& one : airCases())
        for (const Finding& finding : judgeCase(one).findings) {
            if (finding.rule != one.rule)
                continue;
            QVERIFY2(finding.at.has_value(), one.name.c_str());
            const std::string said = format(finding.text, UnitSystem::metric);
            QVERIFY2(said.find('{') == std::string::npos && said.size() > 20, said.c_str());
        }
}

QTEST_APPLESS_MAIN(TestAirRules)
#include "test_air_rules.moc"
