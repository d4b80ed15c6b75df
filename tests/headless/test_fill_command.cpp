#include "tests/headless/run.h"

#include "app/headless/headless.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <cmath>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

QJsonObject closingPocket(const QJsonArray& air)
{
    for (const QJsonValue& pocket : air)
        if (pocket[QStringLiteral("closes_bore")].toBool())
            return pocket.toObject();
    return {};
}

} // namespace

class TestFillCommand : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void wordsTellWhatHappensInOrder();
    void aSoundJobEndsWithZeroAndKeepsNoAir();
    void jsonHoldsEventsAirAndFill();
    void aCheckCarriesAirAndFill();
    void aFillThatIsNotComputedSaysWhatIsMissing();
    void framesAreNumberedPictures();
    void aFolderThatCannotBeWrittenIsRefused();
    void wrongArgumentsEndWithTwo();
};

void TestFillCommand::wordsTellWhatHappensInOrder()
{
    const Run result = run({QStringLiteral("fill"), sample("air-lock-lesson-2")});
    QCOMPARE(result.code, 1);
    qsizetype last = 0;
    for (const char* words :
         {"Start: block full", "Coolant runs through Drain port", "The valve in Supply hose is opened",
          "Coolant covers the element", "Filled to 730 mm", "85 ml of air stay in Return hose",
          "Running the engine", "With the engine running", "nothing needs topping up", "At -25"}) {
        const qsizetype at = result.out.indexOf(QString::fromLatin1(words), last);
        QVERIFY2(at >= last, words);
        last = at;
    }
}

void TestFillCommand::aSoundJobEndsWithZeroAndKeepsNoAir()
{
    const Run result = run({QStringLiteral("fill"), sample("air-lock-lesson-3")});
    QCOMPARE(result.code, 0);
    QVERIFY(result.out.contains(QStringLiteral("No air stays.")));
}

void TestFillCommand::jsonHoldsEventsAirAndFill()
{
    const Run result = run({QStringLiteral("fill"), QStringLiteral("--json"), sample("air-lock-lesson-2")});
    const QJsonObject root = QJsonDocument::fromJson(result.out.toUtf8()).object();
    QVERIFY(root[QStringLiteral("events")].toArray().size() > 5);
    QVERIFY(!closingPocket(root[QStringLiteral("air")].toArray()).isEmpty());
    QVERIFY(root[QStringLiteral("fill")][QStringLiteral("missing")].isNull());
}

void TestFillCommand::aCheckCarriesAirAndFill()
{
    const Run result = run({QStringLiteral("check"), QStringLiteral("--json"), sample("air-lock-lesson-2")});
    const QJsonObject file = QJsonDocument::fromJson(result.out.toUtf8()).array().first().toObject();
    const QJsonObject pocket = closingPocket(file[QStringLiteral("air")].toArray());
    for (const char* key :
         {"hose", "heater", "along_mm", "x_mm", "z_mm", "volume_ml", "height_mm", "closes_bore", "head_Pa",
          "cleared_by_running", "velocity_m_per_s", "clears_from_m_per_s", "clears_to_m_per_s"})
        QVERIFY2(pocket.contains(QLatin1String(key)), key);
    QCOMPARE(pocket[QStringLiteral("hose")].toString(), QStringLiteral("hose-2"));
    // Head is height: 78 mm of coolant of about 1066 kg/m3 are 815 Pa.
    const double head_Pa = pocket[QStringLiteral("head_Pa")].toDouble();
    const double height_mm = pocket[QStringLiteral("height_mm")].toDouble();
    QVERIFY(std::abs(head_Pa / (height_mm / 1000 * 9.80665) - 1066) < 5);
    const QJsonObject fill = file[QStringLiteral("fill")].toObject();
    for (const char* key :
         {"level_mm", "coldest_level_mm", "chamber_full", "coolant_ml", "top_up_ml", "missing"})
        QVERIFY2(fill.contains(QLatin1String(key)), key);
    QVERIFY(fill[QStringLiteral("chamber_full")][0][QStringLiteral("full")].toBool());
}

void TestFillCommand::aFillThatIsNotComputedSaysWhatIsMissing()
{
    QFile sound(sample("sound-bus"));
    QVERIFY(sound.open(QIODevice::ReadOnly));
    QJsonObject sketch = QJsonDocument::fromJson(sound.readAll()).object();
    sketch.remove(QStringLiteral("tank"));
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("no-tank.siphon"));
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QJsonDocument(sketch).toJson());
    file.close();
    const QString words = run({QStringLiteral("fill"), path}).out;
    QVERIFY(words.contains(QStringLiteral("Filling is not computed: the coolant level")));
    const Run json = run({QStringLiteral("check"), QStringLiteral("--json"), path});
    const QJsonObject entry = QJsonDocument::fromJson(json.out.toUtf8()).array().first().toObject();
    QVERIFY(entry[QStringLiteral("air")].isNull());
    QVERIFY(entry[QStringLiteral("fill")][QStringLiteral("level_mm")].isNull());
    QVERIFY(entry[QStringLiteral("fill")][QStringLiteral("missing")].toString().contains(
        QStringLiteral("coolant level")));
}

void TestFillCommand::framesAreNumberedPictures()
{
    // Pre-filled and without a heater's power: few moments, so few pictures.
    QFile sound(sample("sound-bus"));
    QVERIFY(sound.open(QIODevice::ReadOnly));
    QJsonObject sketch = QJsonDocument::fromJson(sound.readAll()).object();
    sketch[QStringLiteral("fill")] = QJsonObject{{QStringLiteral("start"), QStringLiteral("hoses_full")}};
    QJsonArray heaters = sketch[QStringLiteral("heaters")].toArray();
    QJsonObject heater = heaters[0].toObject();
    heater.remove(QStringLiteral("power_W"));
    heaters[0] = heater;
    sketch[QStringLiteral("heaters")] = heaters;
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("few.siphon")));
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(QJsonDocument(sketch).toJson());
    file.close();
    const QString pictures = folder.filePath(QStringLiteral("made/here"));
    const Run result = run({QStringLiteral("fill"), file.fileName(), QStringLiteral("--json"),
                            QStringLiteral("--frames"), pictures});
    QVERIFY2(result.err.isEmpty(), qPrintable(result.err));
    const QJsonObject root = QJsonDocument::fromJson(result.out.toUtf8()).object();
    const int count = root[QStringLiteral("frames")][QStringLiteral("pictures")].toInt();
    const QStringList names = QDir(pictures).entryList(QDir::Files, QDir::Name);
    QVERIFY(count > 10 && count < 60);
    QCOMPARE(names.size(), count);
    for (qsizetype i = 0; i < names.size(); ++i)
        QCOMPARE(names[i], QStringLiteral("moment-%1.png").arg(i + 1, 4, 10, QLatin1Char('0')));
    const QImage first(QDir(pictures).filePath(names.first()));
    const QImage last(QDir(pictures).filePath(names.last()));
    QCOMPARE(first.size(), QSize(1920, 1080));
    QVERIFY(first != last);
}

void TestFillCommand::aFolderThatCannotBeWrittenIsRefused()
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(QStringLiteral("a-file")));
    QVERIFY(file.open(QIODevice::WriteOnly));
    for (const QString& wrong : {file.fileName(), file.fileName() + QStringLiteral("/inside")}) {
        const Run result =
            run({QStringLiteral("fill"), QStringLiteral("--frames=") + wrong, sample("sound-bus")});
        QCOMPARE(result.code, 2);
        QVERIFY2(result.err.contains(wrong), qPrintable(result.err));
        QVERIFY(result.err.contains(QStringLiteral("folder")));
    }
    QCOMPARE(run({QStringLiteral("fill"), sample("sound-bus"), QStringLiteral("--frames")}).code, 2);
}

void TestFillCommand::wrongArgumentsEndWithTwo()
{
    QCOMPARE(run({QStringLiteral("fill")}).code, 2);
    QCOMPARE(run({QStringLiteral("fill"), QStringLiteral("--slowly"), sample("sound-bus")}).code, 2);
    QCOMPARE(run({QStringLiteral("fill"), sample("sound-bus"), sample("sound-bus")}).code, 2);
    QCOMPARE(run({QStringLiteral("fill"), QStringLiteral("no-such.siphon")}).code, 2);
}

QTEST_MAIN(TestFillCommand)
#include "test_fill_command.moc"
