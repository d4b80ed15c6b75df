#include "tests/headless/run.h"

#include "app/headless/headless.h"

#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

Run runParts(const QStringList& arguments)
{
    return run(QStringList(QStringLiteral("parts")) + arguments);
}

} // namespace

class TestPartsCommand : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void withoutAListNothingIsPricedAndItSaysSo();
    void aListPricesTheParts();
    void theTableIsWrittenAsCsv();
    void aBrokenListIsRefusedWithItsPlace();
    void wrongArgumentsEndWithTwo();
    void helpNamesTheCommand();
};

void TestPartsCommand::withoutAListNothingIsPricedAndItSaysSo()
{
    const Run parts = runParts({sample("sound-bus")});
    QCOMPARE(parts.code, nothing_stops);
    QVERIFY(parts.out.contains(QStringLiteral("Tank heater, 1500 W, 120 V")));
    QVERIFY(parts.out.contains(QStringLiteral("not priced")));
    QVERIFY(parts.out.contains(QStringLiteral("incomplete: 14 items are not priced")));
    QVERIFY(parts.out.contains(QStringLiteral("not planned. No length of roll is entered.")));
    QVERIFY(parts.err.isEmpty());
}

// By hand from samples/prices-invented.csv: heater 389.00, kit 36.50, hose 1.8 m * 11.80 = 21.24, hose ends
// 4 * 7.25 = 29.00, adapters 2 * 14.80 twice = 59.20, elbow 16.40, valves 2 * 24.30 = 48.60, clamps 16 * 1.95
// = 31.20, clips 6 * 2.40 = 14.40, insulation 0.585 m * 8.75 = 5.11875 to 5.12, sealant 11.20, antifreeze
// 0.813 l
// * 6.90 = 5.6097 to 5.61, water 0.813 * 0.85 = 0.69105 to 0.69: 668.16.
void TestPartsCommand::aListPricesTheParts()
{
    const Run parts = runParts({sample("sound-bus"), QStringLiteral("--prices"),
                                QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/prices-invented.csv")});
    QCOMPARE(parts.code, nothing_stops);
    QVERIFY2(parts.out.contains(QStringLiteral("Materials at list price: 668.16\u00A0USD.")),
             qPrintable(parts.out));
    QVERIFY(!parts.out.contains(QStringLiteral("not priced")));
}

void TestPartsCommand::theTableIsWrittenAsCsv()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("parts.csv"));
    const Run parts = runParts({sample("sound-bus"), QStringLiteral("--csv=%1").arg(path)});
    QCOMPARE(parts.code, nothing_stops);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    QVERIFY(text.startsWith("number,item,name,size,quantity,unit,"));
    QCOMPARE(text.count("\r\n"), 15);
    const Run nowhere = runParts({sample("sound-bus"), QStringLiteral("--csv"),
                                  folder.filePath(QStringLiteral("no/such/folder.csv"))});
    QCOMPARE(nowhere.code, not_understood);
}

void TestPartsCommand::aBrokenListIsRefusedWithItsPlace()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("list.csv"));
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write("item,description,unit,price,currency\r\nclamp,c,each,ten,USD\r\n");
    file.close();
    const Run parts = runParts({sample("sound-bus"), QStringLiteral("--prices"), path});
    QCOMPARE(parts.code, not_understood);
    QVERIFY(parts.err.contains(QStringLiteral("Line 2, column 14")));
    QVERIFY(parts.out.isEmpty());
}

void TestPartsCommand::wrongArgumentsEndWithTwo()
{
    QCOMPARE(runParts({}).code, not_understood);
    QCOMPARE(runParts({QStringLiteral("--what"), sample("sound-bus")}).code, not_understood);
    QCOMPARE(runParts({sample("sound-bus"), QStringLiteral("--csv")}).code, not_understood);
    QCOMPARE(runParts({sample("sound-bus"), QStringLiteral("--prices=")}).code, not_understood);
    QCOMPARE(runParts({sample("no-such")}).code, not_understood);
    QCOMPARE(runParts({sample("sound-bus"), sample("sound-bus")}).code, not_understood);
}

void TestPartsCommand::helpNamesTheCommand()
{
    QString text;
    QTextStream out(&text);
    QCOMPARE(runHeadless({QStringLiteral("--help")}, out, out), nothing_stops);
    for (const char* command : {"check", "fill", "parts", "sheet", "warm-up", "--help", "--version"})
        QVERIFY2(isHeadless(QString::fromLatin1(command)), command);
    QVERIFY(!isHeadless(sample("sound-bus")));
    QVERIFY(text.contains(QStringLiteral("siphonwright parts FILE [--prices LIST.csv] [--csv OUT.csv]")));
}

QTEST_GUILESS_MAIN(TestPartsCommand)
#include "test_parts_command.moc"
