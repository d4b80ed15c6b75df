#include "tests/near.h"

#include "core/physics/freezing.h"

using namespace siphonwright;

class TestFreezing : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void pointsOfTheHandbook_data();
    void pointsOfTheHandbook();
    void waterFreezesAtZero();
    void outsideTheFitThereIsNoValue();
};

void TestFreezing::pointsOfTheHandbook_data()
{
    // ASHRAE Handbook Fundamentals (2001), freezing points of aqueous glycols by volume.
    QTest::addColumn<bool>("ethylene");
    QTest::addColumn<double>("percent");
    QTest::addColumn<double>("freezing_degC");
    QTest::newRow("ethylene 8.9 %") << true << 8.9 << -3.2;
    QTest::newRow("ethylene 27.7 %") << true << 27.7 << -14.1;
    QTest::newRow("ethylene 47.6 %") << true << 47.6 << -33.8;
    QTest::newRow("ethylene 57.8 %") << true << 57.8 << -48.3;
    QTest::newRow("propylene 9.6 %") << false << 9.6 << -3.3;
    QTest::newRow("propylene 29.4 %") << false << 29.4 << -12.7;
    QTest::newRow("propylene 49.9 %") << false << 49.9 << -33.5;
    QTest::newRow("propylene 60 %") << false << 60.0 << -51.1;
}

void TestFreezing::pointsOfTheHandbook()
{
    QFETCH(const bool, ethylene);
    QFETCH(const double, percent);
    QFETCH(const double, freezing_degC);
    const auto kind = ethylene ? Antifreeze::ethylene_glycol : Antifreeze::propylene_glycol;
    const std::optional<double> point = freezingPoint(kind, percent / 100);
    QVERIFY(point.has_value());
    VERIFY_NEAR(*point, freezing_degC, 1.2);
}

void TestFreezing::waterFreezesAtZero()
{
    VERIFY_NEAR(freezingPoint(Antifreeze::ethylene_glycol, 0).value_or(99), 0, 0.1);
    VERIFY_NEAR(freezingPoint(Antifreeze::propylene_glycol, 0).value_or(99), 0, 0.1);
}

void TestFreezing::outsideTheFitThereIsNoValue()
{
    QVERIFY(!freezingPoint(Antifreeze::ethylene_glycol, 0.601));
    QVERIFY(!freezingPoint(Antifreeze::ethylene_glycol, -0.01));
    QVERIFY(!freezingPoint(Antifreeze::propylene_glycol, std::nan("")));
}

QTEST_APPLESS_MAIN(TestFreezing)
#include "test_freezing.moc"
