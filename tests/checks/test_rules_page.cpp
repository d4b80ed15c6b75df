#include "core/checks/rules.h"
#include "core/checks/rules_page.h"

#include <QTest>

#include <fstream>
#include <sstream>

using namespace siphonwright;

class TestRulesPage : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theKeptPageIsTheOneTheRuleBookMakes();
    void everyRuleStandsOnItOnce();
    void aLimitReadsInBothUnitSystems();
};

void TestRulesPage::theKeptPageIsTheOneTheRuleBookMakes()
{
    std::ifstream file(SIPHONWRIGHT_SOURCE_DIR "/resources/rules.md", std::ios::binary);
    std::ostringstream kept;
    kept << file.rdbuf();
    const std::string made = rulesPage();
    if (kept.str() != made) {
        std::ofstream("rules.md", std::ios::binary) << made;
        QFAIL("resources/rules.md is out of date: the new one is rules.md in the folder the test ran in");
    }
}

void TestRulesPage::everyRuleStandsOnItOnce()
{
    const QString page = QString::fromStdString(rulesPage());
    const auto words = [](std::string_view text) { return QString::fromStdString(std::string(text)); };
    for (const Rule& rule : ruleBook()) {
        QCOMPARE(page.count(QStringLiteral("- Id: `%1`\n").arg(words(rule.id))), 1);
        QVERIFY(page.contains(QStringLiteral("- Basis: %1\n").arg(words(rule.basis))));
        QVERIFY(page.contains(QStringLiteral("- Fix: %1\n").arg(words(rule.fix))));
    }
}

void TestRulesPage::aLimitReadsInBothUnitSystems()
{
    // heater-drop: 152.4 mm, which is 6 times 25.4 mm.
    QVERIFY(QString::fromStdString(rulesPage())
                .contains(QStringLiteral("- Limits: caution under 152.4 mm (6 in)\n")));
}

QTEST_APPLESS_MAIN(TestRulesPage)
#include "test_rules_page.moc"
