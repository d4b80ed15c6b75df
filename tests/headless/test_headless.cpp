#include "app/headless/headless.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

using namespace siphonwright;

namespace {

QString sample(const char* name)
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QString::fromLatin1(name));
}

struct Run {
    int code = -1;
    QString out;
    QString err;
};

Run run(const QStringList& arguments)
{
    Run result;
    QTextStream out(&result.out);
    QTextStream err(&result.err);
    result.code = runHeadless(arguments, out, err);
    return result;
}

QJsonArray jsonOf(const Run& result)
{
    return QJsonDocument::fromJson(result.out.toUtf8()).array();
}

} // namespace

class TestHeadless : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void aSoundJobEndsWithZero();
    void aStopEndsWithOne();
    void aBadFileEndsWithTwoAndTheOthersAreStillChecked();
    void jsonIsAnArrayEvenForOneFile();
    void jsonCarriesEveryPromisedKey();
    void whatDoesNotApplyIsNull();
    void anUnreadableFileIsAnEntryWithItsError();
    void wordsSayFindingsAndEndWithAVerdict();
    void wrongArgumentsEndWithTwo_data();
    void wrongArgumentsEndWithTwo();
    void helpAndVersionGoToOutput();
    void aSheetIsWrittenInEveryKind_data();
    void aSheetIsWrittenInEveryKind();

private:
    QTemporaryDir folder_;
    QString bad_;
};

void TestHeadless::initTestCase()
{
    bad_ = folder_.filePath(QStringLiteral("bad.siphon"));
    QFile file(bad_);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write("{\"version\": ");
}

void TestHeadless::aSoundJobEndsWithZero()
{
    const Run result = run({QStringLiteral("check"), sample("sound-bus")});
    QCOMPARE(result.code, 0);
    QCOMPARE(result.err, QString());
}

void TestHeadless::aStopEndsWithOne()
{
    QCOMPARE(run({QStringLiteral("check"), sample("supply-hump")}).code, 1);
    QCOMPARE(run({QStringLiteral("check"), sample("supply-hump"), sample("sound-bus")}).code, 1);
}

void TestHeadless::aBadFileEndsWithTwoAndTheOthersAreStillChecked()
{
    const Run result = run({QStringLiteral("check"), QStringLiteral("--json"), sample("supply-hump"), bad_,
                            sample("sound-bus")});
    QCOMPARE(result.code, 2);
    QVERIFY(result.err.contains(bad_));
    const QJsonArray files = jsonOf(result);
    QCOMPARE(files.size(), 3);
    QVERIFY(files[0].toObject().contains(QStringLiteral("findings")));
    QVERIFY(files[1].toObject().contains(QStringLiteral("error")));
    QVERIFY(files[2].toObject().contains(QStringLiteral("findings")));
}

void TestHeadless::jsonIsAnArrayEvenForOneFile()
{
    const Run result = run({QStringLiteral("check"), sample("sound-bus"), QStringLiteral("--json")});
    QCOMPARE(result.code, 0);
    QCOMPARE(jsonOf(result).size(), 1);
    QCOMPARE(jsonOf(result)[0].toObject()[QStringLiteral("file")].toString(), sample("sound-bus"));
}

void TestHeadless::jsonCarriesEveryPromisedKey()
{
    const QJsonArray files = jsonOf(run(
        {QStringLiteral("check"), QStringLiteral("--json"), sample("supply-hump"), sample("return-dip")}));
    QCOMPARE(files.size(), 2);
    const auto verifyKeys = [](const QJsonObject& object, std::initializer_list<const char*> keys) {
        for (const char* key : keys)
            QVERIFY2(object.contains(QLatin1String(key)), key);
    };
    int high_points = 0;
    int dips = 0;
    int bends = 0;
    int stops = 0;
    for (const QJsonValue& file : files) {
        for (const QJsonValue& finding : file[QStringLiteral("findings")].toArray()) {
            verifyKeys(finding.toObject(), {"rule", "severity", "part", "hose", "along_mm", "x_mm", "z_mm",
                                            "measured", "limit", "unit", "text"});
            stops += finding[QStringLiteral("severity")].toString() == QLatin1String("stop");
        }
        for (const QJsonValue& hose : file[QStringLiteral("hoses")].toArray()) {
            verifyKeys(hose.toObject(), {"id", "role", "length_mm", "cut_length_mm", "rise_mm", "bore_mm",
                                         "volume_ml", "bends", "high_points", "dips"});
            // Cut length: the hose itself, what is pushed over its ends, rounded up.
            QVERIFY(hose[QStringLiteral("cut_length_mm")].toDouble() >=
                    hose[QStringLiteral("length_mm")].toDouble());
            for (const QJsonValue& bend : hose[QStringLiteral("bends")].toArray()) {
                verifyKeys(bend.toObject(), {"angle_deg", "radius_mm"});
                ++bends;
            }
            for (const QJsonValue& high : hose[QStringLiteral("high_points")].toArray()) {
                verifyKeys(high.toObject(), {"along_mm", "z_mm", "height_mm", "trapped_ml"});
                QVERIFY(high[QStringLiteral("height_mm")].toDouble() >= 3);
                ++high_points;
            }
            for (const QJsonValue& dip : hose[QStringLiteral("dips")].toArray()) {
                verifyKeys(dip.toObject(), {"along_mm", "z_mm", "depth_mm", "held_ml"});
                ++dips;
            }
        }
    }
    QVERIFY(high_points > 0 && dips > 0 && bends > 0 && stops >= 2);
}

void TestHeadless::whatDoesNotApplyIsNull()
{
    // Without hoses a layout has findings that lie on none.
    const QString path = folder_.filePath(QStringLiteral("no-hoses.siphon"));
    QFile from(sample("sound-bus"));
    QVERIFY(from.open(QIODevice::ReadOnly));
    QJsonObject sketch = QJsonDocument::fromJson(from.readAll()).object();
    sketch[QStringLiteral("hoses")] = QJsonArray();
    QJsonArray heaters = sketch[QStringLiteral("heaters")].toArray();
    QJsonObject heater = heaters[0].toObject();
    QVERIFY(!heater.isEmpty());
    heater[QStringLiteral("mounting")] = QJsonObject{{QStringLiteral("value"), QStringLiteral("engine")},
                                                     {QStringLiteral("source"), QStringLiteral("measured")}};
    heaters[0] = heater;
    sketch[QStringLiteral("heaters")] = heaters;
    QFile to(path);
    QVERIFY(to.open(QIODevice::WriteOnly));
    to.write(QJsonDocument(sketch).toJson());
    to.close();
    const Run result = run({QStringLiteral("check"), QStringLiteral("--json"), path});
    QCOMPARE(result.err, QString());
    bool seen = false;
    for (const QJsonValue& finding : jsonOf(result)[0][QStringLiteral("findings")].toArray()) {
        if (finding[QStringLiteral("rule")].toString() != QLatin1String("mounted-on-engine"))
            continue;
        seen = true;
        QVERIFY(finding[QStringLiteral("hose")].isNull());
        QVERIFY(finding[QStringLiteral("along_mm")].isNull());
        QVERIFY(finding[QStringLiteral("measured")].isNull());
        QVERIFY(finding[QStringLiteral("limit")].isNull());
    }
    QVERIFY(seen);
}

void TestHeadless::anUnreadableFileIsAnEntryWithItsError()
{
    const QString missing = folder_.filePath(QStringLiteral("missing.siphon"));
    const Run result = run({QStringLiteral("check"), QStringLiteral("--json"), missing});
    QCOMPARE(result.code, 2);
    const QJsonObject entry = jsonOf(result)[0].toObject();
    QCOMPARE(entry[QStringLiteral("file")].toString(), missing);
    QVERIFY(!entry[QStringLiteral("error")].toString().isEmpty());
    QVERIFY(!entry.contains(QStringLiteral("findings")));
    QVERIFY(result.err.contains(missing));
}

void TestHeadless::wordsSayFindingsAndEndWithAVerdict()
{
    const Run stopped = run({QStringLiteral("check"), sample("supply-hump")});
    QVERIFY(stopped.out.contains(QStringLiteral("STOP")));
    QVERIFY(stopped.out.contains(QStringLiteral("[supply-high-point: measured ")));
    QVERIFY(stopped.out.endsWith(QStringLiteral("The job is stopped.\n")));
    const Run sound = run({QStringLiteral("check"), sample("sound-bus")});
    QVERIFY(sound.out.contains(QStringLiteral("0 stops, 0 cautions")));
    QVERIFY(sound.out.endsWith(QStringLiteral("Nothing stops the job.\n")));
}

void TestHeadless::wrongArgumentsEndWithTwo_data()
{
    QTest::addColumn<QStringList>("arguments");
    const auto words = [](const char* line) {
        return QString::fromLatin1(line).split(QLatin1Char(' '), Qt::SkipEmptyParts);
    };
    QTest::newRow("nothing") << QStringList();
    QTest::newRow("an unknown command") << words("inspect a.siphon");
    QTest::newRow("check without a file") << words("check --json");
    QTest::newRow("check with an unknown option") << words("check --fast") + QStringList{sample("sound-bus")};
    QTest::newRow("sheet without a file") << words("sheet --output a.pdf");
    QTest::newRow("sheet without an output") << QStringList{QStringLiteral("sheet"), sample("sound-bus")};
    QTest::newRow("sheet with an output but no name")
        << QStringList{QStringLiteral("sheet"), sample("sound-bus"), QStringLiteral("--output")};
    QTest::newRow("sheet on an unknown paper")
        << QStringList{QStringLiteral("sheet"), sample("sound-bus")} + words("--output a.pdf --paper B5");
    QTest::newRow("sheet of an unknown kind")
        << QStringList{QStringLiteral("sheet"), sample("sound-bus")} + words("--output a.doc");
    QTest::newRow("sheet of a file that is not there") << words("sheet missing.siphon --output a.pdf");
}

void TestHeadless::wrongArgumentsEndWithTwo()
{
    QFETCH(QStringList, arguments);
    const Run result = run(arguments);
    QCOMPARE(result.code, 2);
    QVERIFY(!result.err.isEmpty());
    QCOMPARE(result.out, QString());
}

void TestHeadless::helpAndVersionGoToOutput()
{
    QCOMPARE(run({QStringLiteral("--help")}).code, 0);
    QVERIFY(run({QStringLiteral("--help")}).out.contains(QStringLiteral("sheet FILE --output")));
    QCOMPARE(run({QStringLiteral("--version")}).out,
             QStringLiteral("Siphonwright " SIPHONWRIGHT_VERSION "\n"));
}

void TestHeadless::aSheetIsWrittenInEveryKind_data()
{
    QTest::addColumn<QString>("ending");
    QTest::addColumn<QString>("paper");
    QTest::addColumn<QByteArray>("starts_with");
    QTest::newRow("PDF on A4") << QStringLiteral("pdf") << QStringLiteral("A4") << QByteArray("%PDF-");
    QTest::newRow("PDF on Tabloid") << QStringLiteral("pdf") << QStringLiteral("tabloid")
                                    << QByteArray("%PDF-");
    QTest::newRow("SVG on A3") << QStringLiteral("svg") << QStringLiteral("A3") << QByteArray("<?xml");
    QTest::newRow("PNG on Letter") << QStringLiteral("png") << QStringLiteral("Letter")
                                   << QByteArray("\x89PNG");
}

void TestHeadless::aSheetIsWrittenInEveryKind()
{
    QFETCH(QString, ending);
    QFETCH(QString, paper);
    QFETCH(QByteArray, starts_with);
    const QString path = folder_.filePath(QStringLiteral("sheet.") + ending);
    const Run result = run({QStringLiteral("sheet"), sample("sound-bus"), QStringLiteral("--output"), path,
                            QStringLiteral("--paper"), paper});
    QCOMPARE(result.err, QString());
    QCOMPARE(result.code, 0);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    QVERIFY(file.readAll().startsWith(starts_with));
}

QTEST_MAIN(TestHeadless)
#include "test_headless.moc"
