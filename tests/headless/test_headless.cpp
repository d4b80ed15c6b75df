#include "tests/headless/run.h"

#include "app/headless/headless.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <cmath>
#include <initializer_list>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

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
    void jsonSaysHowLoopsRun();
    void jsonSaysHowTheEngineWarmsUp();
    void bandsComeWhereTheyAreAskedFor();
    void whatIsMissingForRunningIsSaid();
    void everyNumberIsFiniteOrNull_data();
    void everyNumberIsFiniteOrNull();
    void wordsSayHowItRuns();
    void aWarmUpIsSaidInWords();
    void typedFiguresTakeThePlaceOfTheSketchs();
    void theSeriesGoesToAFile();
    void aWarmUpThatStopsTheJobEndsWithOne();
    void aSheetIsWrittenInEveryKind_data();
    void aSheetIsWrittenInEveryKind();
    void thePartsListFollowsTheSheetWhenWanted();
    void manySheetsGoIntoAFolderOneByOne();

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

namespace {

/// The one file of a check in JSON.
QJsonObject checkedFile(const QStringList& arguments)
{
    return jsonOf(run(QStringList{QStringLiteral("check"), QStringLiteral("--json")} + arguments))[0]
        .toObject();
}

void verifyKeys(const QJsonObject& object, std::initializer_list<const char*> keys)
{
    for (const char* key : keys)
        QVERIFY2(object.contains(QLatin1String(key)), key);
}

QJsonObject first(const QJsonObject& file, const char* list)
{
    return file[QLatin1String(list)].toArray().at(0).toObject();
}

/// A copy of a sample with a change made to its JSON.
template <class Change>
QString changed(const QTemporaryDir& folder, const char* name, const char* as, Change&& change)
{
    QFile from(sample(name));
    if (!from.open(QIODevice::ReadOnly))
        return {};
    QJsonObject sketch = QJsonDocument::fromJson(from.readAll()).object();
    change(sketch);
    const QString path = folder.filePath(QLatin1String(as) + QStringLiteral(".siphon"));
    QFile to(path);
    if (!to.open(QIODevice::WriteOnly))
        return {};
    to.write(QJsonDocument(sketch).toJson());
    return path;
}

void changeHeater(QJsonObject& sketch, const char* key, const QJsonValue& value)
{
    QJsonArray heaters = sketch[QStringLiteral("heaters")].toArray();
    QJsonObject heater = heaters[0].toObject();
    if (value.isUndefined())
        heater.remove(QLatin1String(key));
    else
        heater[QLatin1String(key)] = value;
    heaters[0] = heater;
    sketch[QStringLiteral("heaters")] = heaters;
}

} // namespace

void TestHeadless::jsonSaysHowLoopsRun()
{
    const QJsonObject file = checkedFile({sample("sound-bus")});
    QCOMPARE(file[QStringLiteral("loops")].toArray().size(), 1);
    const QJsonObject loop = first(file, "loops");
    verifyKeys(loop, {"heater", "state", "missing", "block_degC", "flow_kg_per_s", "flow_l_per_min",
                      "inlet_degC", "outlet_degC", "drive_Pa", "drive_mm", "resistance_Pa", "resistance_mm",
                      "reynolds_return", "reynolds_supply", "losses", "also_possible"});
    QCOMPARE(loop[QStringLiteral("state")].toString(), QStringLiteral("circulates"));
    QVERIFY(loop[QStringLiteral("missing")].isNull());
    QCOMPARE(loop[QStringLiteral("block_degC")].toDouble(), 40.0);
    const double drive_Pa = loop[QStringLiteral("drive_Pa")].toDouble();
    QVERIFY(std::abs(loop[QStringLiteral("resistance_Pa")].toDouble() / drive_Pa - 1) < 1e-5);
    // 1500 W into this flow at some 3.5 kJ/kg K raise it by outlet less inlet.
    const double flow = loop[QStringLiteral("flow_kg_per_s")].toDouble();
    const double rise =
        loop[QStringLiteral("outlet_degC")].toDouble() - loop[QStringLiteral("inlet_degC")].toDouble();
    QVERIFY(std::abs(flow * 3500 * rise / 1500 - 1) < 0.05);
    // A litre has some 1.05 kg.
    QVERIFY(std::abs(loop[QStringLiteral("flow_l_per_min")].toDouble() * 1.05 / (flow * 60) - 1) < 0.02);
    double sum = 0;
    for (const QJsonValue& loss : loop[QStringLiteral("losses")].toArray()) {
        verifyKeys(loss.toObject(), {"part", "name", "share"});
        QVERIFY(!loss[QStringLiteral("name")].toString().isEmpty());
        sum += loss[QStringLiteral("share")].toDouble();
    }
    QVERIFY(std::abs(sum - 1) < 1e-9);
}

void TestHeadless::jsonSaysHowTheEngineWarmsUp()
{
    const QJsonObject file = checkedFile({sample("generator-two-heaters")});
    QCOMPARE(file[QStringLiteral("warm_up")].toArray().size(), 2);
    const QJsonObject warm = first(file, "warm_up");
    for (const char* key :
         {"peak_outlet_degC", "cycles_per_hour", "time_to_target_h", "final_block_degC", "energy_kWh"}) {
        const QJsonObject figure = warm[QLatin1String(key)].toObject();
        verifyKeys(figure, {"value", "low", "high"});
        QVERIFY2(figure[QStringLiteral("value")].isDouble(), key);
        QVERIFY2(figure[QStringLiteral("low")].isNull() && figure[QStringLiteral("high")].isNull(), key);
    }
    verifyKeys(warm, {"heater", "missing", "return_warm_min", "infrared_surface_degC", "boiling_margin_K",
                      "switches", "ambient_degC", "start_degC", "target_degC", "hours", "on_grades"});
    const QJsonArray on_grades = warm[QStringLiteral("on_grades")].toArray();
    QCOMPARE(on_grades.size(), 4);
    verifyKeys(on_grades[0].toObject(),
               {"along_percent", "across_percent", "state", "flow_kg_per_s", "outlet_degC",
                "peak_outlet_degC", "cycles_per_hour", "time_to_target_h", "final_block_degC"});
    QCOMPARE(on_grades[0][QStringLiteral("along_percent")].toDouble(), -3.0);
    QVERIFY(on_grades[0][QStringLiteral("peak_outlet_degC")].isDouble());
    const QJsonArray switches = warm[QStringLiteral("switches")].toArray();
    QVERIFY(!switches.isEmpty());
    QCOMPARE(switches[0][QStringLiteral("on")].toBool(), true);
    QCOMPARE(switches[0][QStringLiteral("time_s")].toDouble(), 0.0);
    const QJsonArray rows = file[QStringLiteral("by_bore")].toArray();
    QVERIFY(rows.size() >= 4);
    verifyKeys(rows[0].toObject(), {"bore_mm", "drawn", "circulates", "flow_kg_per_s", "peak_outlet_degC",
                                    "cycles_per_hour", "time_to_target_h"});
    QVERIFY(file[QStringLiteral("assumptions_changed")].toArray().isEmpty());
    const QString with_change = changed(folder_, "sound-bus", "assumed", [](QJsonObject& sketch) {
        sketch[QStringLiteral("assumptions")] =
            QJsonArray{QJsonObject{{QStringLiteral("assumption"), QStringLiteral("viscosity")},
                                   {QStringLiteral("value"), 1.1},
                                   {QStringLiteral("reason"), QStringLiteral("measured")}}};
    });
    const QJsonObject change = first(checkedFile({with_change}), "assumptions_changed");
    QCOMPARE(change[QStringLiteral("assumption")].toString(), QStringLiteral("viscosity"));
    QCOMPARE(change[QStringLiteral("value")].toDouble(), 1.1);
    QCOMPARE(change[QStringLiteral("usual")].toDouble(), 1.0);
}

void TestHeadless::bandsComeWhereTheyAreAskedFor()
{
    const QString short_plan = changed(folder_, "sound-bus", "short", [](QJsonObject& sketch) {
        QJsonObject plan = sketch[QStringLiteral("plan")].toObject();
        plan[QStringLiteral("hours")] = 2;
        sketch[QStringLiteral("plan")] = plan;
    });
    const QJsonObject file = checkedFile({QStringLiteral("--bands"), short_plan});
    const QJsonObject peak = first(file, "warm_up")[QStringLiteral("peak_outlet_degC")].toObject();
    QVERIFY(peak[QStringLiteral("low")].toDouble() < peak[QStringLiteral("value")].toDouble());
    QVERIFY(peak[QStringLiteral("value")].toDouble() < peak[QStringLiteral("high")].toDouble());
    QVERIFY(!peak[QStringLiteral("drivers")].toArray().isEmpty());
    const QJsonObject loop = first(file, "loops");
    QVERIFY(loop[QStringLiteral("flow_low_kg_per_s")].toDouble() <
            loop[QStringLiteral("flow_high_kg_per_s")].toDouble());
}

void TestHeadless::whatIsMissingForRunningIsSaid()
{
    const QString path = changed(folder_, "sound-bus", "no-power", [](QJsonObject& sketch) {
        changeHeater(sketch, "power_W", QJsonValue(QJsonValue::Undefined));
    });
    const QJsonObject file = checkedFile({path});
    const QJsonObject loop = first(file, "loops");
    QCOMPARE(loop[QStringLiteral("state")].toString(), QStringLiteral("not_computed"));
    QVERIFY(loop[QStringLiteral("missing")].toString().contains(QStringLiteral("power")));
    QVERIFY(loop[QStringLiteral("flow_kg_per_s")].isNull());
    const QJsonObject warm = first(file, "warm_up");
    QVERIFY(warm[QStringLiteral("missing")].toString().contains(QStringLiteral("power")));
    QVERIFY(warm[QStringLiteral("peak_outlet_degC")][QStringLiteral("value")].isNull());
    const Run words = run({QStringLiteral("warm-up"), path});
    QVERIFY(words.out.contains(QStringLiteral("not computed: the power of")));
    const QString csv = folder_.filePath(QStringLiteral("none.csv"));
    const Run refused = run({QStringLiteral("warm-up"), path, QStringLiteral("--csv"), csv});
    QCOMPARE(refused.code, 2);
    QVERIFY(refused.err.contains(QStringLiteral("power")));
    QVERIFY(!QFile::exists(csv));
}

void TestHeadless::everyNumberIsFiniteOrNull_data()
{
    QTest::addColumn<QString>("path");
    for (const char* name : {"sound-bus", "vee-crossing", "generator-two-heaters", "supply-hump",
                             "return-dip", "hose-too-small", "ports-too-close", "above-level"})
        QTest::newRow(name) << sample(name);
    QTest::newRow("an empty drawing") << changed(folder_, "sound-bus", "empty", [](QJsonObject& sketch) {
        for (const char* key : {"engine", "tank", "ports", "heaters", "hoses"})
            sketch.remove(QLatin1String(key));
    });
}

void TestHeadless::everyNumberIsFiniteOrNull()
{
    QFETCH(QString, path);
    const Run result = run({QStringLiteral("check"), QStringLiteral("--json"), path});
    QCOMPARE(result.err, QString());
    QJsonParseError problem;
    const QJsonObject file = QJsonDocument::fromJson(result.out.toUtf8(), &problem).array()[0].toObject();
    QCOMPARE(problem.error, QJsonParseError::NoError);
    // What is not a number is written as null, which what was computed must not be.
    for (const QJsonValue& loop : file[QStringLiteral("loops")].toArray()) {
        const bool flows = loop[QStringLiteral("state")].toString() == QLatin1String("circulates");
        for (const char* key :
             {"flow_kg_per_s", "flow_l_per_min", "inlet_degC", "outlet_degC", "drive_Pa", "drive_mm",
              "resistance_Pa", "resistance_mm", "reynolds_return", "reynolds_supply"})
            QVERIFY2(loop[QLatin1String(key)].isDouble() || (!flows && loop[QLatin1String(key)].isNull()),
                     key);
    }
    for (const QJsonValue& warm : file[QStringLiteral("warm_up")].toArray()) {
        const bool computed = warm[QStringLiteral("missing")].isNull();
        for (const char* key : {"peak_outlet_degC", "cycles_per_hour", "final_block_degC", "energy_kWh"})
            QCOMPARE(warm[QLatin1String(key)][QStringLiteral("value")].isDouble(), computed);
        QCOMPARE(warm[QStringLiteral("boiling_margin_K")].isDouble(), computed);
    }
}

void TestHeadless::wordsSayHowItRuns()
{
    const Run sound = run({QStringLiteral("check"), sample("sound-bus")});
    const QRegularExpression loop(QStringLiteral(
        "  Tank heater 1.5 kW: [0-9.]+ l/min, [0-9.]+ °C in, [0-9.]+ °C out, [0-9.]+ mm drives\\.\n"));
    QVERIFY2(loop.match(sound.out).hasMatch(), qPrintable(sound.out));
    QVERIFY(sound.out.contains(QStringLiteral("  Warm-up: 15 °C after ")));
}

void TestHeadless::aWarmUpIsSaidInWords()
{
    const Run result = run({QStringLiteral("warm-up"), sample("sound-bus")});
    QCOMPARE(result.err, QString());
    QCOMPARE(result.code, 0);
    for (const char* part :
         {"Warm-up: 15 °C after ", " kWh", "coolant leaves at ",
          "starts in its worst hour: ", "under boiling", "the return is warm to the hand",
          "an infrared thermometer reads", "assumed: Loss of hose ends, times the formula: 1\n"})
        QVERIFY2(result.out.contains(QString::fromUtf8(part)), part);
    // The mass is entered, so nothing is assumed in its place.
    QVERIFY(!result.out.contains(QStringLiteral("per litre of displacement")));
}

void TestHeadless::typedFiguresTakeThePlaceOfTheSketchs()
{
    const auto out = [](const QStringList& options) {
        const Run result = run(QStringList{QStringLiteral("warm-up"), sample("sound-bus")} + options);
        return result.code == 0 ? result.out : result.err;
    };
    const QString as_drawn = out({});
    const QString celsius = out({QStringLiteral("--ambient"), QStringLiteral("-4 C")});
    QCOMPARE(celsius, out({QStringLiteral("--ambient=24.8 F")}));                // -4 degC
    QCOMPARE(celsius, out({QStringLiteral("--ambient"), QStringLiteral("-4")})); // the sketch is metric
    QVERIFY(celsius != as_drawn);
    QVERIFY(out({QStringLiteral("--hours"), QStringLiteral("2")}).contains(QStringLiteral("after 2 h")));
    QCOMPARE(out({QStringLiteral("--hours"), QStringLiteral("120 min")}),
             out({QStringLiteral("--hours"), QStringLiteral("2 h")}));
}

void TestHeadless::theSeriesGoesToAFile()
{
    const QString path = folder_.filePath(QStringLiteral("series.csv"));
    const Run result = run({QStringLiteral("warm-up"), QStringLiteral("--csv"), path, sample("sound-bus"),
                            QStringLiteral("--hours"), QStringLiteral("1")});
    QCOMPARE(result.err, QString());
    QVERIFY(result.out.contains(path));
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QStringList lines = QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts);
    QVERIFY(lines.size() > 60); // one a minute
    QVERIFY(lines[0].startsWith(QStringLiteral("time_s,block_degC,rest_degC,power_W,energy_kWh,"
                                               "heater-1.outlet_degC,")));
    for (const QString& line : lines) {
        QCOMPARE(line.count(u','), lines[0].count(u','));
        QVERIFY(!line.contains(QStringLiteral("nan")));
    }
    const Run nowhere = run({QStringLiteral("warm-up"), sample("sound-bus"), QStringLiteral("--csv"),
                             folder_.filePath(QStringLiteral("no/such/folder.csv"))});
    QCOMPARE(nowhere.code, 2);
    QVERIFY(nowhere.err.contains(QStringLiteral("could not be written")));
}

void TestHeadless::aWarmUpThatStopsTheJobEndsWithOne()
{
    // Far more power than this loop can carry off, and a thermostat that lets it.
    const QString path = changed(folder_, "sound-bus", "too-hot", [](QJsonObject& sketch) {
        const auto fact = [](double value) {
            return QJsonObject{{QStringLiteral("value"), value},
                               {QStringLiteral("source"), QStringLiteral("manual")}};
        };
        changeHeater(sketch, "power_W", fact(4500));
        changeHeater(sketch, "off_degC", fact(95));
    });
    const Run result = run({QStringLiteral("warm-up"), path});
    QCOMPARE(result.err, QString());
    QCOMPARE(result.code, 1);
    QVERIFY(result.out.contains(QStringLiteral("[outlet-over-limit")));
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
    QTest::newRow("warm-up without a file") << words("warm-up --hours 2");
    const QStringList warm_up{QStringLiteral("warm-up"), sample("sound-bus")};
    QTest::newRow("warm-up with an unknown option") << warm_up + words("--fast");
    QTest::newRow("warm-up of two files") << warm_up + QStringList{sample("vee-crossing")};
    QTest::newRow("warm-up over no time") << warm_up + words("--hours 0");
    QTest::newRow("warm-up over hours that are words") << warm_up + words("--hours many");
    QTest::newRow("warm-up with hours left out") << warm_up + words("--hours");
    QTest::newRow("warm-up in a cold that is none") << warm_up + words("--ambient -20kg");
    QTest::newRow("warm-up in a cold out of range") << warm_up + words("--ambient -200");
    QTest::newRow("warm-up to a file without a name") << warm_up + words("--csv");
    QTest::newRow("warm-up of a file that is not there") << words("warm-up missing.siphon");
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
    for (const QStringList& asked :
         {QStringList{QStringLiteral("--help")}, QStringList{QStringLiteral("help")},
          QStringList{QStringLiteral("check"), QStringLiteral("--help")}})
        QVERIFY(run(asked).out.contains(QStringLiteral("sheet FILE --output")));
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

/// Every page of a PDF has an object of this type.
void TestHeadless::thePartsListFollowsTheSheetWhenWanted()
{
    const auto pages = [this](const QStringList& more) {
        const QString path = folder_.filePath(QStringLiteral("parts.pdf"));
        const Run result =
            run(QStringList{QStringLiteral("sheet"), sample("sound-bus"), QStringLiteral("--output"), path,
                            QStringLiteral("--paper"), QStringLiteral("A3")} +
                more);
        QFile file(path);
        return result.code == 0 && file.open(QIODevice::ReadOnly)
                   ? file.readAll().count(QByteArray("/Type /Page\n"))
                   : -1;
    };
    QCOMPARE(pages({}), 1);
    QVERIFY(pages({QStringLiteral("--parts")}) > 1);
    const qsizetype behind = pages({QStringLiteral("--pages"), QStringLiteral("fitting")});
    QVERIFY(behind > 0);
    // The drawing holds all that is needed to cut and fit: it is not printed twice.
    QCOMPARE(pages({QStringLiteral("--pages"), QStringLiteral("drawing,fitting")}), 1);
}

void TestHeadless::manySheetsGoIntoAFolderOneByOne()
{
    const QString folder = folder_.filePath(QStringLiteral("sheets"));
    const Run result = run({QStringLiteral("sheet"), sample("sound-bus"), sample("clear-tube-rig"),
                            QStringLiteral("--output-dir"), folder});
    QCOMPARE(result.err, QString());
    QVERIFY(result.out.startsWith(QStringLiteral("1/2 ")) && result.out.contains(QStringLiteral("\n2/2 ")));
    for (const char* name : {"sound-bus.pdf", "clear-tube-rig.pdf"})
        QVERIFY2(QFile::exists(folder + QLatin1Char('/') + QLatin1String(name)), name);
    QCOMPARE(run({QStringLiteral("sheet"), sample("sound-bus"), sample("clear-tube-rig"),
                  QStringLiteral("--output"), folder_.filePath(QStringLiteral("one.pdf"))})
                 .code,
             2);
}

QTEST_MAIN(TestHeadless)
#include "test_headless.moc"
