#include "tests/near.h"

#include "app/panels/quantity_edit.h"

#include <QSignalSpy>

using namespace siphonwright;
using panels::QuantityEdit;

class TestQuantityEdit : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void what_is_typed_is_understood_in_both_unit_systems_data();
    void what_is_typed_is_understood_in_both_unit_systems();
    void a_stored_value_is_not_rounded_by_being_shown();
    void what_is_not_understood_changes_nothing_and_says_why();
    void escape_brings_the_value_back();
    void an_empty_line_means_not_entered_only_where_it_may();
    void a_value_out_of_range_is_refused();
    void leaving_the_line_takes_what_is_typed();
    void a_refresh_does_not_take_away_what_is_being_typed();
};

void TestQuantityEdit::what_is_typed_is_understood_in_both_unit_systems_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<int>("unit");
    QTest::addColumn<int>("system");
    QTest::addColumn<double>("expected");
    const auto row = [](const char* name, const char* typed, Unit unit, UnitSystem system, double expected) {
        QTest::newRow(name) << QString::fromUtf8(typed) << static_cast<int>(unit) << static_cast<int>(system)
                            << expected;
    };
    // 1 in = 25.4 mm exactly; degC = (degF - 32) / 1.8.
    row("plain number, metric", "19", Unit::mm, UnitSystem::metric, 19);
    row("plain number, inch", "2", Unit::mm, UnitSystem::inch, 50.8);
    row("fraction with unit in metric", "3/4 in", Unit::mm, UnitSystem::metric, 19.05);
    row("mm in inch", "19 mm", Unit::mm, UnitSystem::inch, 19);
    row("comma as decimal sign", "1,5", Unit::mm, UnitSystem::metric, 1.5);
    row("fahrenheit in metric", "180 F", Unit::degC, UnitSystem::metric, (180 - 32) / 1.8);
    row("plain temperature in inch", "180", Unit::degC, UnitSystem::inch, (180 - 32) / 1.8);
}

void TestQuantityEdit::what_is_typed_is_understood_in_both_unit_systems()
{
    QFETCH(QString, typed);
    QFETCH(int, unit);
    QFETCH(int, system);
    QFETCH(double, expected);
    QuantityEdit edit(static_cast<Unit>(unit));
    edit.setUnits(static_cast<UnitSystem>(system));
    const QSignalSpy committed(&edit, &QuantityEdit::committed);
    QTest::keyClicks(&edit, typed);
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(committed.count(), 1);
    QVERIFY(edit.value().has_value());
    VERIFY_NEAR(*edit.value(), expected, 1e-9);
}

void TestQuantityEdit::a_stored_value_is_not_rounded_by_being_shown()
{
    QuantityEdit edit(Unit::mm);
    edit.setUnits(UnitSystem::inch);
    edit.setValue(123.456789);
    const QSignalSpy committed(&edit, &QuantityEdit::committed);
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(committed.count(), 0);
    QCOMPARE(edit.value(), std::optional(123.456789));
}

void TestQuantityEdit::what_is_not_understood_changes_nothing_and_says_why()
{
    QuantityEdit edit(Unit::mm);
    edit.setValue(19.0);
    edit.selectAll();
    const QSignalSpy problems(&edit, &QuantityEdit::problemChanged);
    QTest::keyClicks(&edit, QStringLiteral("nineteen"));
    QTest::keyClick(&edit, Qt::Key_Return);
    QCOMPARE(edit.value(), std::optional(19.0));
    QVERIFY(!edit.problem().isEmpty());
    QCOMPARE(problems.count(), 1);
    QCOMPARE(edit.text(), QStringLiteral("nineteen"));
}

void TestQuantityEdit::escape_brings_the_value_back()
{
    QuantityEdit edit(Unit::mm);
    edit.setValue(19.0);
    const QString shown = edit.text();
    edit.selectAll();
    QTest::keyClicks(&edit, QStringLiteral("what"));
    QTest::keyClick(&edit, Qt::Key_Return);
    QTest::keyClick(&edit, Qt::Key_Escape);
    QCOMPARE(edit.text(), shown);
    QVERIFY(edit.problem().isEmpty());
}

void TestQuantityEdit::an_empty_line_means_not_entered_only_where_it_may()
{
    QuantityEdit edit(Unit::mm);
    edit.setValue(19.0);
    edit.selectAll();
    QTest::keyClick(&edit, Qt::Key_Backspace);
    QVERIFY(!edit.commit());
    QCOMPARE(edit.value(), std::optional(19.0));
    edit.setMayBeEmpty(true);
    QVERIFY(edit.commit());
    QVERIFY(!edit.value());
}

void TestQuantityEdit::a_value_out_of_range_is_refused()
{
    QuantityEdit edit(Unit::percent);
    edit.setRange(0, 100);
    QTest::keyClicks(&edit, QStringLiteral("100"));
    QVERIFY(edit.commit());
    edit.selectAll();
    QTest::keyClicks(&edit, QStringLiteral("101"));
    QVERIFY(!edit.commit());
    QCOMPARE(edit.value(), std::optional(100.0));
}

void TestQuantityEdit::leaving_the_line_takes_what_is_typed()
{
    QWidget window;
    auto* edit = new QuantityEdit(Unit::mm, &window);
    auto* other = new QLineEdit(&window);
    other->move(0, 40);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    edit->setFocus();
    QTest::keyClicks(edit, QStringLiteral("25"));
    other->setFocus();
    QCOMPARE(edit->value(), std::optional(25.0));
}

void TestQuantityEdit::a_refresh_does_not_take_away_what_is_being_typed()
{
    QuantityEdit edit(Unit::mm);
    edit.setValue(19.0);
    edit.selectAll();
    QTest::keyClicks(&edit, QStringLiteral("2"));
    edit.setUnits(UnitSystem::inch);
    edit.setValue(19.0);
    QCOMPARE(edit.text(), QStringLiteral("2"));
}

QTEST_MAIN(TestQuantityEdit)
#include "test_quantity_edit.moc"
