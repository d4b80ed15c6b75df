#include "tests/headless/run.h"

#include "app/headless/headless.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

QStringList faultsOf(const QJsonValue& group)
{
    QStringList out;
    for (const QJsonValue& fault : group[QStringLiteral("faults")].toArray())
        out << fault[QStringLiteral("fault")].toString();
    return out;
}

} // namespace

class TestDiagnoseCommand : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theSampleWithReadingsIsDiagnosedInWords();
    void jsonHasAnEntryForEveryHeaterAndItsFaults();
    void whereNothingFitsNoShareIsGiven();
    void withoutReadingsItSaysWhatIsMissing();
    void wrongArgumentsEndWithTwo();
};

void TestDiagnoseCommand::theSampleWithReadingsIsDiagnosedInWords()
{
    const Run result = run({QStringLiteral("diagnose"), sample("generator-first-start")});
    QCOMPARE(result.code, 1);
    for (const char* words : {"Checklist: ", "One phase is missing", "is closed", "Next: "})
        QVERIFY2(result.out.contains(QString::fromLatin1(words)), words);
    QVERIFY(!result.out.contains(u'{'));
}

void TestDiagnoseCommand::jsonHasAnEntryForEveryHeaterAndItsFaults()
{
    const Run result =
        run({QStringLiteral("diagnose"), sample("generator-first-start"), QStringLiteral("--json")});
    const QJsonObject entry = QJsonDocument::fromJson(result.out.toUtf8()).object();
    const QJsonArray heaters = entry[QStringLiteral("heaters")].toArray();
    QCOMPARE(heaters.size(), 2);
    QCOMPARE(faultsOf(heaters[0][QStringLiteral("groups")][0]), QStringList{QStringLiteral("phase-missing")});
    QVERIFY(faultsOf(heaters[1][QStringLiteral("groups")][0])
                .contains(QStringLiteral("return-valve-closed:hose-4")));
    for (const QJsonValue& heater : heaters) {
        double sum = 0;
        for (const QJsonValue& group : heater[QStringLiteral("groups")].toArray())
            sum += group[QStringLiteral("probability")].toDouble();
        QVERIFY(std::abs(sum - 1) < 1e-9);
        QVERIFY(!heater[QStringLiteral("readings")].toArray().isEmpty());
        QVERIFY(heater[QStringLiteral("missing")].isNull());
    }
    QVERIFY(entry[QStringLiteral("checklist")][QStringLiteral("done")].toInt() > 0);
}

void TestDiagnoseCommand::whereNothingFitsNoShareIsGiven()
{
    QFile file(sample("sound-bus"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QJsonObject job = QJsonDocument::fromJson(file.readAll()).object();
    const QString at = QStringLiteral("2026-11-25T06:00:00Z");
    job[QStringLiteral("checklist")] =
        QJsonObject{{QStringLiteral("switched"),
                     QJsonArray{QJsonObject{{QStringLiteral("time"), at},
                                            {QStringLiteral("heater"), QStringLiteral("heater-1")},
                                            {QStringLiteral("on"), true}}}}};
    job[QStringLiteral("readings")] =
        QJsonArray{QJsonObject{{QStringLiteral("time"), at},
                               {QStringLiteral("heater"), QStringLiteral("heater-1")},
                               {QStringLiteral("outlet_degC"), 88}}};
    const QTemporaryDir folder;
    QFile hot(folder.filePath(QStringLiteral("hot.siphon")));
    QVERIFY(hot.open(QIODevice::WriteOnly));
    hot.write(QJsonDocument(job).toJson());
    hot.close();
    const Run words = run({QStringLiteral("diagnose"), hot.fileName()});
    QCOMPARE(words.code, 1);
    QVERIFY(words.out.contains(QStringLiteral("over the limit of 82.2")));
    QVERIFY(!words.out.contains(QStringLiteral("Nothing wrong")) && !words.out.contains(u'%'));
    const Run result = run({QStringLiteral("diagnose"), hot.fileName(), QStringLiteral("--json")});
    const QJsonValue heater =
        QJsonDocument::fromJson(result.out.toUtf8()).object()[QStringLiteral("heaters")][0];
    QVERIFY(heater[QStringLiteral("nothing_fits")].toBool());
    QCOMPARE(heater[QStringLiteral("broken_limits")].toArray().size(), 1);
    for (const QJsonValue& group : heater[QStringLiteral("groups")].toArray()) {
        QVERIFY(group[QStringLiteral("probability")].isNull());
        QVERIFY(!faultsOf(group).contains(QStringLiteral("none")));
    }
}

void TestDiagnoseCommand::withoutReadingsItSaysWhatIsMissing()
{
    const Run result = run({QStringLiteral("diagnose"), sample("sound-bus")});
    QCOMPARE(result.code, 0);
    QVERIFY(result.out.contains(QStringLiteral("not judged: when the heater was energised is not entered")));
}

void TestDiagnoseCommand::wrongArgumentsEndWithTwo()
{
    QCOMPARE(run({QStringLiteral("diagnose")}).code, 2);
    QCOMPARE(run({QStringLiteral("diagnose"), QStringLiteral("--all")}).code, 2);
    QCOMPARE(run({QStringLiteral("diagnose"), QStringLiteral("no-such-file.siphon")}).code, 2);
}

QTEST_MAIN(TestDiagnoseCommand)
#include "test_diagnose_command.moc"
