#include "tests/near.h"

#include "core/physics/coolant.h"

#include <QFile>

#include <cmath>
#include <limits>

using namespace siphonwright;

namespace {

struct Row {
    CoolantBase base;
    double volume_percent;
    double freezing_degC;
    QString kind;
    QString source;
};

/// Rows of freezing.csv; only the last two columns, which are not needed whole, are quoted or hold commas.
std::vector<Row> readRows()
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/tests/physics/freezing.csv"));
    std::vector<Row> rows;
    if (!file.open(QIODevice::ReadOnly))
        return rows;
    file.readLine();
    while (!file.atEnd()) {
        const QStringList cells = QString::fromUtf8(file.readLine()).split(u',');
        Row row;
        row.base =
            cells[0] == QStringLiteral("EG") ? CoolantBase::ethylene_glycol : CoolantBase::propylene_glycol;
        row.volume_percent = cells[1].toDouble();
        row.freezing_degC = cells[2].toDouble();
        row.kind = cells[3];
        row.source = cells[4];
        rows.push_back(row);
    }
    return rows;
}

} // namespace

class TestCoolant : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void freezingAgreesWithPublishedRows_data();
    void freezingAgreesWithPublishedRows();
    void plainWaterFreezesAtZero();
    void moreGlycolFreezesLater();
    void nothingIsMadeUpOutsideTheRange();
};

void TestCoolant::freezingAgreesWithPublishedRows_data()
{
    QTest::addColumn<CoolantBase>("base");
    QTest::addColumn<double>("volume_percent");
    QTest::addColumn<double>("freezing_degC");
    QTest::addColumn<double>("least"); // fit less row
    QTest::addColumn<double>("most");
    const std::vector<Row> rows = readRows();
    QCOMPARE(rows.size(), std::size_t{25});
    for (const Row& row : rows) {
        const bool ethylene = row.base == CoolantBase::ethylene_glycol;
        // The deviations that the header states: the handbook itself, a second handbook, coolants as sold.
        double least = -0.34;
        double most = 0.34;
        if (row.source.contains(QStringLiteral("Lange"))) {
            least = -1.4;
            most = -0.3;
        } else if (row.kind == QStringLiteral("maker-inhibited")) {
            least = ethylene ? -0.5 : -0.8;
            most = ethylene ? 1.7 : 0.6;
        }
        QTest::addRow("%s %g %% %s %.12s", ethylene ? "EG" : "PG", row.volume_percent, qPrintable(row.kind),
                      qPrintable(row.source))
            << row.base << row.volume_percent << row.freezing_degC << least << most;
    }
}

void TestCoolant::freezingAgreesWithPublishedRows()
{
    QFETCH(CoolantBase, base);
    QFETCH(double, volume_percent);
    QFETCH(double, freezing_degC);
    QFETCH(double, least);
    QFETCH(double, most);
    const auto computed = freezingPoint(base, volume_percent);
    QVERIFY(computed.has_value());
    const double deviation = *computed - freezing_degC;
    QVERIFY2(deviation >= least && deviation <= most, qPrintable(QString::number(deviation)));
}

void TestCoolant::plainWaterFreezesAtZero()
{
    QCOMPARE(freezingPoint(CoolantBase::ethylene_glycol, 0), std::optional<double>(0));
    QCOMPARE(freezingPoint(CoolantBase::propylene_glycol, 0), std::optional<double>(0));
    QVERIFY(*freezingPoint(CoolantBase::propylene_glycol, 0.01) <= 0);
}

void TestCoolant::moreGlycolFreezesLater()
{
    for (const CoolantBase base : {CoolantBase::ethylene_glycol, CoolantBase::propylene_glycol}) {
        double before = *freezingPoint(base, 0.5);
        for (double percent = 1; percent <= 60; percent += 0.5) {
            const double now = *freezingPoint(base, percent);
            QVERIFY2(now < before, qPrintable(QString::number(percent)));
            before = now;
        }
    }
}

void TestCoolant::nothingIsMadeUpOutsideTheRange()
{
    QVERIFY(freezingPoint(CoolantBase::ethylene_glycol, 60).has_value());
    QVERIFY(!freezingPoint(CoolantBase::ethylene_glycol, 60.01));
    QVERIFY(!freezingPoint(CoolantBase::ethylene_glycol, -0.01));
    QVERIFY(!freezingPoint(CoolantBase::propylene_glycol, std::numeric_limits<double>::quiet_NaN()));
    QVERIFY(!freezingPoint(CoolantBase::propylene_glycol, std::numeric_limits<double>::infinity()));
}

QTEST_APPLESS_MAIN(TestCoolant)
#include "test_coolant.moc"
