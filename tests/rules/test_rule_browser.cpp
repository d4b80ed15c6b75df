#include "tests/near.h"

#include "app/panels/quantity_edit.h"
#include "app/rules/rule_browser.h"
#include "app/rules/rule_list.h"

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTreeView>

using namespace siphonwright;

/// The rule browser as people use it, on a document of its own.
class TestRuleBrowser : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void theListHasEveryRuleInTheBooksOrder();
    void aSearchLeavesTheRulesThatHaveTheWords();
    void aWantedRuleComesBackFromASearchThatHidIt();
    void thePageSaysWhatTheRuleBookSays();
    void thePageSaysWhatTheRuleFoundHere();
    void whatIsLeftIsSaidInTheChosenUnits();
    void aChangedLimitIsKeptWithItsReasonAndUndone();
    void aLimitWithoutAReasonIsNotKept();
    void whatIsNotUnderstoodChangesNothing();
    void typedLimitsOutliveAnEditOfTheDrawing();
    void aRuleIsSwitchedOffWithAReasonOnly();
    void aRuleSwitchedOffKeepsItsChangedLimits();
    void theRuleBooksLimitsComeBackInOneStep();
    void limitsFollowTheUnits();
    void escapeClosesIt();

private:
    template <class T>
    T* child(const char* name) const
    {
        return browser_->findChild<T*>(QString::fromLatin1(name));
    }
    void openSample(const char* name)
    {
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
    }
    QStringList listedRules() const
    {
        const QAbstractItemModel* model = child<QTreeView>("rule-list")->model();
        QStringList rules;
        for (int group = 0; group < model->rowCount(); ++group) {
            const QModelIndex parent = model->index(group, 0);
            for (int row = 0; row < model->rowCount(parent); ++row)
                rules += model->index(row, 0, parent).data(rules::RuleList::rule_role).toString();
        }
        return rules;
    }
    QString stateOf(const char* rule) const
    {
        const auto* list = browser_->findChild<rules::RuleList*>();
        return list->indexOf(QLatin1String(rule)).siblingAtColumn(1).data().toString();
    }
    void type(QLineEdit* line, const char* text)
    {
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, QLatin1String(text));
    }
    panels::QuantityEdit* limit(const char* label) const { return child<panels::QuantityEdit>(label); }
    void click(const char* button) { QTest::mouseClick(child<QAbstractButton>(button), Qt::LeftButton); }
    QString text(const char* label) const { return child<QLabel>(label)->text(); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<rules::RuleBrowser> browser_;
};

void TestRuleBrowser::init()
{
    browser_.reset();
    document_ = std::make_unique<Document>();
    openSample("sound-bus");
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::metric; });
    document_->undoStack().clear();
    browser_ = std::make_unique<rules::RuleBrowser>(*document_);
    browser_->show();
    QVERIFY(QTest::qWaitForWindowExposed(browser_.get()));
}

void TestRuleBrowser::theListHasEveryRuleInTheBooksOrder()
{
    const QStringList listed = listedRules();
    QCOMPARE(static_cast<std::size_t>(listed.size()), ruleBook().size());
    const auto place = [&listed](const char* rule) { return listed.indexOf(QLatin1String(rule)); };
    for (const Rule& rule : ruleBook())
        QVERIFY2(place(std::string(rule.id).c_str()) >= 0, std::string(rule.id).c_str());
    QVERIFY(place("supply-high-point") < place("return-high-point"));
    QVERIFY(place("supply-port-low") < place("sensor-near-return"));
    QVERIFY(place("supply-high-point") < place("supply-port-low"));
}

void TestRuleBrowser::aSearchLeavesTheRulesThatHaveTheWords()
{
    type(child<QLineEdit>("rule-search"), "RETURN port thermostat");
    QCOMPARE(listedRules(), QStringList(QStringLiteral("return-near-thermostat")));
    type(child<QLineEdit>("rule-search"), "no such words");
    QVERIFY(listedRules().isEmpty());
    child<QLineEdit>("rule-search")->clear();
    QCOMPARE(static_cast<std::size_t>(listedRules().size()), ruleBook().size());
}

void TestRuleBrowser::aWantedRuleComesBackFromASearchThatHidIt()
{
    type(child<QLineEdit>("rule-search"), "thermostat");
    browser_->showRule(QStringLiteral("freeze-margin"));
    QCOMPARE(browser_->currentRule(), QStringLiteral("freeze-margin"));
    QVERIFY(listedRules().contains(QStringLiteral("freeze-margin")));
    const auto* tree = child<QTreeView>("rule-list");
    QCOMPARE(tree->currentIndex().data(rules::RuleList::rule_role).toString(),
             QStringLiteral("freeze-margin"));
    QTest::keyClick(child<QTreeView>("rule-list"), Qt::Key_Up);
    QCOMPARE(browser_->currentRule(), QStringLiteral("antifreeze-over-60"));
}

void TestRuleBrowser::thePageSaysWhatTheRuleBookSays()
{
    for (const Rule& rule : ruleBook()) {
        const auto said = [](std::string_view words) { return QString::fromStdString(std::string(words)); };
        browser_->showRule(said(rule.id));
        QCOMPARE(text("rule-title"), said(rule.title));
        QCOMPARE(text("rule-id"), said(rule.id));
        QCOMPARE(text("rule-why"), said(rule.why));
        QCOMPARE(text("rule-fix"), said(rule.fix));
        QVERIFY(text("rule-basis").contains(said(rule.basis).mid(1)));
        QCOMPARE(text("rule-tilt").contains(QStringLiteral("over the grades")), rule.tilt != Tilt::same);
        QVERIFY(child<QWidget>("wrong-case") && child<QWidget>("right-case"));
        const auto limits = browser_->findChildren<panels::QuantityEdit*>();
        QCOMPARE(limits.size(), int(rule.limits.advice.has_value()) + int(rule.limits.caution.has_value()) +
                                    int(rule.limits.stop.has_value()));
    }
}

void TestRuleBrowser::thePageSaysWhatTheRuleFoundHere()
{
    openSample("above-level");
    const Finding found = document_->analysis().findings.front();
    browser_->showRule(QString::fromStdString(found.rule));
    const QString sentence = QString::fromStdString(format(
        found.text, document_->sketch().units == UnitChoice::inch ? UnitSystem::inch : UnitSystem::metric));
    QVERIFY2(text("rule-here").contains(sentence), qPrintable(text("rule-here")));
    document_->apply(QStringLiteral("drop"), [](Sketch& sketch) { sketch.hoses.clear(); });
    QVERIFY(!text("rule-here").contains(sentence));
}

void TestRuleBrowser::whatIsLeftIsSaidInTheChosenUnits()
{
    browser_->showRule(QStringLiteral("heater-drop"));
    QVERIFY2(text("rule-here").contains(QStringLiteral("limit 152.4 mm")), qPrintable(text("rule-here")));
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::inch; });
    QVERIFY2(text("rule-here").contains(QStringLiteral("limit 6 in")), qPrintable(text("rule-here")));
}

void TestRuleBrowser::aChangedLimitIsKeptWithItsReasonAndUndone()
{
    // Where the heater's manual gives a drop of its own, that one would be judged by.
    document_->apply(QStringLiteral("no manual"),
                     [](Sketch& sketch) { sketch.heaters.front().manual_min_drop_mm = {}; });
    const Sketch before = document_->sketch();
    browser_->showRule(QStringLiteral("heater-drop"));
    QCOMPARE(stateOf("heater-drop"), QString());
    type(limit("Caution under"), "90");
    type(child<QLineEdit>("limit-reason"), "manual, page 7");
    click("keep-limits");
    QCOMPARE(document_->sketch().limits.size(), std::size_t(1));
    const LimitChange change = document_->sketch().limits.front();
    QCOMPARE(change.rule, std::string("heater-drop"));
    VERIFY_NEAR(*change.caution, 90, 1e-12); // as typed, in the rule's unit
    QVERIFY(!change.advice && !change.stop && !change.off);
    QCOMPARE(change.reason, std::string("manual, page 7"));
    QCOMPARE(stateOf("heater-drop"), QStringLiteral("changed"));
    QVERIFY2(text("rule-here").contains(QStringLiteral("limit 90 mm")), qPrintable(text("rule-here")));
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
    VERIFY_NEAR(*limit("Caution under")->value(), 152.4, 1e-12); // the rule book's, 6 in
    QVERIFY(child<QLineEdit>("limit-reason")->text().isEmpty());
}

void TestRuleBrowser::aLimitWithoutAReasonIsNotKept()
{
    const Sketch before = document_->sketch();
    browser_->showRule(QStringLiteral("heater-drop"));
    type(limit("Caution under"), "90");
    QVERIFY(!child<QPushButton>("keep-limits")->isEnabled());
    QVERIFY(child<QLabel>("limit-remark")->isVisible());
    type(child<QLineEdit>("limit-reason"), "   ");
    QTest::keyClick(child<QLineEdit>("limit-reason"), Qt::Key_Return);
    QCOMPARE(document_->sketch(), before);
    QVERIFY(!document_->undoStack().canUndo());
}

void TestRuleBrowser::whatIsNotUnderstoodChangesNothing()
{
    const Sketch before = document_->sketch();
    browser_->showRule(QStringLiteral("heater-drop"));
    type(limit("Caution under"), "deep");
    type(child<QLineEdit>("limit-reason"), "manual, page 7");
    click("keep-limits");
    QCOMPARE(document_->sketch(), before);
    QVERIFY(!limit("Caution under")->problem().isEmpty());
}

void TestRuleBrowser::typedLimitsOutliveAnEditOfTheDrawing()
{
    browser_->showRule(QStringLiteral("heater-drop"));
    type(limit("Caution under"), "90");
    type(child<QLineEdit>("limit-reason"), "manual, page 7");
    document_->apply(QStringLiteral("note"), [](Sketch& sketch) { sketch.notes = "measured twice"; });
    VERIFY_NEAR(*limit("Caution under")->value(), 90, 1e-12); // as typed
    click("keep-limits");
    QCOMPARE(document_->sketch().limits.size(), std::size_t(1));
    QCOMPARE(document_->sketch().notes, std::string("measured twice"));
}

void TestRuleBrowser::aRuleIsSwitchedOffWithAReasonOnly()
{
    openSample("above-level");
    const Sketch before = document_->sketch();
    browser_->showRule(QStringLiteral("above-coolant-level"));
    const auto finds = [this] {
        for (const Finding& finding : document_->analysis().findings)
            if (finding.rule == "above-coolant-level")
                return true;
        return false;
    };
    QVERIFY(finds());
    auto* judged = child<QCheckBox>("rule-judged");
    judged->click();
    QVERIFY(judged->isChecked());
    QCOMPARE(document_->sketch(), before);
    type(child<QLineEdit>("limit-reason"), "filled under vacuum");
    judged->click();
    QVERIFY(switchedOff("above-coolant-level", document_->sketch()));
    QCOMPARE(document_->sketch().limits.back().reason, std::string("filled under vacuum"));
    QVERIFY(!finds());
    QCOMPARE(stateOf("above-coolant-level"), QStringLiteral("off"));
    QCOMPARE(text("rule-here"), QStringLiteral("Not judged by choice: filled under vacuum"));
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
    QVERIFY(judged->isChecked());
    document_->undoStack().redo();
    judged->click();
    QCOMPARE(document_->sketch(), before);
}

void TestRuleBrowser::aRuleSwitchedOffKeepsItsChangedLimits()
{
    browser_->showRule(QStringLiteral("heater-drop"));
    type(limit("Caution under"), "90");
    type(child<QLineEdit>("limit-reason"), "manual, page 7");
    click("keep-limits");
    child<QCheckBox>("rule-judged")->click();
    QCOMPARE(document_->sketch().limits.size(), std::size_t(1));
    QVERIFY(document_->sketch().limits.front().off);
    child<QCheckBox>("rule-judged")->click();
    QVERIFY(!document_->sketch().limits.front().off);
    VERIFY_NEAR(*document_->sketch().limits.front().caution, 90, 1e-12); // as typed
}

void TestRuleBrowser::theRuleBooksLimitsComeBackInOneStep()
{
    const Sketch before = document_->sketch();
    browser_->showRule(QStringLiteral("supply-high-point"));
    QVERIFY(!child<QPushButton>("own-limits")->isEnabled());
    type(limit("Caution over"), "0.5");
    type(limit("Stop over"), "2");
    type(child<QLineEdit>("limit-reason"), "wide hose");
    click("keep-limits");
    const int steps = document_->undoStack().index();
    QCOMPARE(steps, 1);
    click("own-limits");
    QCOMPARE(document_->sketch(), before);
    QCOMPARE(document_->undoStack().index(), steps + 1);
}

void TestRuleBrowser::limitsFollowTheUnits()
{
    browser_->showRule(QStringLiteral("heater-drop"));
    QCOMPARE(limit("Caution under")->text(), QStringLiteral("152.4 mm"));
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::inch; });
    QCOMPARE(limit("Caution under")->text(), QStringLiteral("6 in"));
    type(limit("Caution under"), "4 1/2");
    type(child<QLineEdit>("limit-reason"), "manual, page 7");
    click("keep-limits");
    VERIFY_NEAR(*document_->sketch().limits.back().caution, 114.3, 1e-9); // 4.5 times 25.4
}

void TestRuleBrowser::escapeClosesIt()
{
    QTest::keyClick(browser_.get(), Qt::Key_Escape);
    QVERIFY(!browser_->isVisible());
}

QTEST_MAIN(TestRuleBrowser)
#include "test_rule_browser.moc"
