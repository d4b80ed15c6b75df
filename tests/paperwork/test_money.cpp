#include "core/paperwork/money.h"

#include <QTest>

#include <limits>

using namespace siphonwright;

namespace {

constexpr std::int64_t most = std::numeric_limits<std::int64_t>::max();
constexpr std::int64_t least = std::numeric_limits<std::int64_t>::min();

} // namespace

class TestMoney : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void halvesAreRoundedAwayFromZero();
    void whatDoesNotFitIsRefusedAndNotWrapped();
    void decimalsArePrinted();
    void decimalsAreReadOrRefused_data();
    void decimalsAreReadOrRefused();
    void whatIsPrintedReadsBack();
    void amountsCarryTheirCurrency();
};

// By hand: 25 * 1/10 = 2.5; 24 * 1/10 = 2.4; 1 * 1/3 = 0.33; 2 * 1/3 = 0.67.
void TestMoney::halvesAreRoundedAwayFromZero()
{
    QCOMPARE(shareOf(25, 1, 10), std::optional<std::int64_t>(3));
    QCOMPARE(shareOf(-25, 1, 10), std::optional<std::int64_t>(-3));
    QCOMPARE(shareOf(35, 1, 10), std::optional<std::int64_t>(4));
    QCOMPARE(shareOf(24, 1, 10), std::optional<std::int64_t>(2));
    QCOMPARE(shareOf(-24, 1, 10), std::optional<std::int64_t>(-2));
    QCOMPARE(shareOf(1, 1, 3), std::optional<std::int64_t>(0));
    QCOMPARE(shareOf(2, 1, 3), std::optional<std::int64_t>(1));
    QCOMPARE(shareOf(0, 5, 7), std::optional<std::int64_t>(0));
}

void TestMoney::whatDoesNotFitIsRefusedAndNotWrapped()
{
    QVERIFY(!sumOf(most, 1));
    QVERIFY(!sumOf(least, -1));
    QVERIFY(!productOf(most, 2));
    QVERIFY(!shareOf(most, 2, 2)); // the product is what has to fit
    QVERIFY(!shareOf(1, 1, 0));
    QCOMPARE(sumOf(most, least), std::optional<std::int64_t>(-1));
}

void TestMoney::decimalsArePrinted()
{
    QCOMPARE(decimalText(12345, 2), std::string("123.45"));
    QCOMPARE(decimalText(5, 2), std::string("0.05"));
    QCOMPARE(decimalText(-5, 2), std::string("-0.05"));
    QCOMPARE(decimalText(0, 0), std::string("0"));
    QCOMPARE(decimalText(1'234'567, 0), std::string("1234567"));
    QCOMPARE(decimalText(123'456'789, 2, Grouping::thousands), std::string("1\u2009234\u2009567.89"));
    QCOMPARE(decimalText(150, 2, Grouping::none, true), std::string("1.5"));
    QCOMPARE(decimalText(100, 2, Grouping::none, true), std::string("1"));
    QCOMPARE(decimalText(least, 0), std::string("-9223372036854775808"));
}

void TestMoney::decimalsAreReadOrRefused_data()
{
    QTest::addColumn<QString>("typed");
    QTest::addColumn<int>("decimals");
    QTest::addColumn<qlonglong>("steps"); // -1: refused
    QTest::newRow("whole") << "12" << 2 << 1200LL;
    QTest::newRow("one decimal") << "12.5" << 2 << 1250LL;
    QTest::newRow("blanks around") << "  3.25 " << 2 << 325LL;
    QTest::newRow("more decimals than the currency has") << "12.505" << 2 << -1LL;
    QTest::newRow("decimals where there are none") << "12.5" << 0 << -1LL;
    QTest::newRow("thousands set apart") << "1,250.00" << 2 << -1LL;
    QTest::newRow("comma") << "12,5" << 2 << -1LL;
    QTest::newRow("empty") << "" << 2 << -1LL;
    QTest::newRow("exponent") << "1e3" << 2 << -1LL;
    QTest::newRow("nothing behind the point") << "12." << 2 << -1LL;
    QTest::newRow("nothing before the point") << ".5" << 2 << -1LL;
    QTest::newRow("too large") << "99999999999999999999" << 2 << -1LL;
    QTest::newRow("the largest") << "92233720368547758.07" << 2 << static_cast<qlonglong>(most);
    QTest::newRow("one more than the largest") << "92233720368547758.08" << 2 << -1LL;
    QTest::newRow("words") << "ten" << 2 << -1LL;
}

void TestMoney::decimalsAreReadOrRefused()
{
    QFETCH(QString, typed);
    QFETCH(int, decimals);
    QFETCH(qlonglong, steps);
    std::string problem;
    const auto read = readDecimal(typed.toStdString(), decimals, DecimalMark::point, &problem);
    QCOMPARE(read.has_value(), steps >= 0);
    QCOMPARE(problem.empty(), read.has_value());
    if (read)
        QCOMPARE(static_cast<qlonglong>(*read), steps);
}

void TestMoney::whatIsPrintedReadsBack()
{
    for (const std::int64_t steps : {std::int64_t{0}, std::int64_t{7}, std::int64_t{-150}, most, -most})
        for (const int decimals : {0, 2, 3, 4})
            QCOMPARE(readDecimal(decimalText(steps, decimals), decimals), std::optional<std::int64_t>(steps));
    QCOMPARE(readDecimal("8,875", 3, DecimalMark::point_or_comma), std::optional<std::int64_t>(8875));
}

void TestMoney::amountsCarryTheirCurrency()
{
    QCOMPARE(moneyText(123'450, {"USD", "$", 2}), std::string("$1\u2009234.50"));
    QCOMPARE(moneyText(-500, {"USD", "$", 2}), std::string("-$5.00"));
    QCOMPARE(moneyText(123, {"JPY", "", 0}), std::string("123\u00A0JPY"));
    QCOMPARE(moneyText(123, {}), std::string("1.23"));
}

QTEST_APPLESS_MAIN(TestMoney)
#include "test_money.moc"
