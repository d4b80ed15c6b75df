#include "core/sketch/file.h"

#include <QTest>

#include <string>

using namespace siphonwright;

namespace {

Problems problemsOf(const std::string& text)
{
    const auto result = readSketch(text);
    const auto* problems = std::get_if<Problems>(&result);
    return problems == nullptr ? Problems{} : *problems;
}

std::string sketchWith(const std::string& members)
{
    return R"({"format": "siphonwright", "version": 1, )" + members + "}";
}

std::string repeated(const std::string& text, std::size_t times)
{
    std::string all;
    all.reserve(text.size() * times);
    for (std::size_t i = 0; i < times; ++i)
        all += text;
    return all;
}

std::string listOf(const std::string& item, std::size_t count)
{
    return "[" + item + repeated("," + item, count - 1) + "]";
}

const std::string triangle = R"([{"x": 0, "z": 0}, {"x": 9, "z": 0}, {"x": 0, "z": 9}])";
const std::string small_sketch = sketchWith(
    R"("engine": {"arrangement": "vee_8", "outline": )" + triangle + R"(, "jacket": )" + triangle +
    R"(}, "ports": [{"id": "p1", "role": "return", "kind": "head_port", "position": {"x": 1, "y": -2.5, "z": 3e1}}],
    "hoses": [{"id": "h1", "role": "supply", "from": {"port": "p1"}, "to": {"open_at": {"x": 0, "y": 0, "z": 0}},
    "bore_mm": {"value": 12.7, "source": "measured"}, "clips_mm": [1, 2]}], "notes": "caf\u00e9 é")");

struct RefusedRow {
    std::string name;
    std::string text;
    std::string path;
    std::string found;   ///< a part of it
    std::string allowed; ///< a part of it
};

std::string hoseWith(const std::string& members)
{
    return sketchWith(R"("hoses": [{"id": "h", "role": "supply", "from": {}, "to": {}, )" + members + "}]");
}

std::string withItems(const std::string& before, const std::string& item, std::size_t count,
                      std::size_t number)
{
    std::string text = number == 0 ? "" : ",";
    text += R"({"id": "i)";
    text += std::to_string(number);
    text += R"(", )";
    text += before;
    text += listOf(item, count);
    text += "}";
    return text;
}

std::string manyCorners(const std::vector<std::size_t>& hoses)
{
    std::string all;
    for (std::size_t i = 0; i < hoses.size(); ++i)
        all += withItems(R"("role": "supply", "from": {}, "to": {}, "points": )",
                         R"({"at": {"x": 1, "y": 0, "z": 2}})", hoses[i], i);
    return sketchWith(R"("hoses": [)" + all + "]");
}

std::string manyKeys(std::size_t count)
{
    std::string all;
    for (std::size_t i = 0; i < count; ++i)
        all += (i == 0 ? "\"k" : ", \"k") + std::to_string(i) + "\": 1";
    return all;
}

std::string areasWith(const std::vector<std::size_t>& corners)
{
    std::string all;
    for (std::size_t i = 0; i < corners.size(); ++i)
        all += withItems(R"("what": "fan", "outline": )", R"({"x": 1, "z": 2})", corners[i], i);
    return "[" + all + "]";
}

std::string engineWith(const std::string& arrangement)
{
    return sketchWith(R"("engine": {"arrangement": )" + arrangement + R"(, "outline": )" + triangle +
                      R"(, "jacket": )" + triangle + "}");
}

std::vector<RefusedRow> textRows()
{
    return {
        {"empty", "", "", "empty", "sketch"},
        {"blank", " \n\t\r ", "", "empty", "sketch"},
        {"50 MB", std::string(50'000'000, ' '), "", "47 MiB", "32 MiB"},
        {"too large by one", std::string(largest_file_bytes + 1, ' '), "", "32 MiB", "32 MiB"},
        {"not UTF-8", "{\n  \"notes\": \"\xE9\"}", "line 2, column 13", "UTF-8", "UTF-8"},
        {"overlong UTF-8", "\"\xC0\xAF\"", "line 1, column 2", "UTF-8", "UTF-8"},
        {"half a surrogate pair", "\"\xED\xA0\x80\"", "line 1, column 2", "UTF-8", "UTF-8"},
        {"a four-byte character whose second byte is too low", "\"\xF0\x8F\xBF\xBF\"", "line 1, column 2",
         "UTF-8", "UTF-8"},
        {"past the last character of Unicode", "\"\xF4\x90\x80\x80\"", "line 1, column 2", "UTF-8", "UTF-8"},
        {"a four-byte character without its third", "\"\xF1\x80(\x80\"", "line 1, column 2", "UTF-8",
         "UTF-8"},
        {"a four-byte character without its fourth", "\"\xF1\x80\x80(\"", "line 1, column 2", "UTF-8",
         "UTF-8"},
        {"a three-byte character without its third", "\"\xE2\x89\"", "line 1, column 2", "UTF-8", "UTF-8"},
        {"a two-byte character without its second", "\"≤\xC3\"", "line 1, column 3", "UTF-8", "UTF-8"},
        {"a byte that begins nothing", "\"\xF5\"", "line 1, column 2", "UTF-8", "UTF-8"},
        {"a picture", std::string("\x89PNG\r\n\x1a\n", 8), "line 1, column 1", "UTF-8", "UTF-8"},
        {"plain words", "hello", "line 1, column 1", "\"hello\"", "JSON"},
        {"missing colon", "{\n  \"é\" 3}", "line 2, column 7", "\"3\"", "':'"},
        {"missing comma", "{\"a\": 1\n \"b\": 2}", "line 2, column 2", "b", "'}'"},
        {"text after the end", sketchWith(R"("notes": "")") + " x", "line 1, column 55", "\"x\"",
         "end of input"},
        {"a word without quotes", "{≤ 1}", "line 1, column 2", "\"≤\"", "string"},
        {"comment", "{ /* why */ }", "line 1, column 3", "\"/\"", "string"},
        {"cut short", R"({"format": "siph)", "line 1, column 17", "end of the file", "cut short"},
        {"NaN", sketchWith(R"("ground_z_mm": NaN)"), "/ground_z_mm", "NaN (line 1", "finite"},
        {"Infinity", hoseWith(R"("clips_mm": [1, Infinity])"), "/hoses/0/clips_mm/1", "Infinity (line",
         "finite"},
        {"-Infinity", sketchWith(R"("ground_z_mm": -Infinity)"), "/ground_z_mm", "-Infinity (line", "finite"},
        {"1e999", hoseWith(R"("wall_mm": 1e999)"), "/hoses/0/wall_mm", "1e999 (line", "finite"},
        {"key twice", sketchWith(R"("notes": "a", "notes": "b")"), "/notes", "twice", "once"},
        {"key twice, deep", hoseWith(R"("from": {"bore_mm": 9})"), "/hoses/0/from", "twice", "once"},
        {"key twice inside a key twice", sketchWith(R"("sheet": {}, "sheet": {"title": "a", "title": "b"})"),
         "/sheet", "twice", "once"},
        {"65 levels", repeated("[", 65) + repeated("]", 65), repeated("/0", 64), "64 levels", "64"},
        {"a million levels", repeated("[", 1'000'000), repeated("/0", 64), "64 levels", "64"},
        {"201 keys", "{" + manyKeys(201) + "}", "/k200", "more than 200 keys", "at most 200"},
        {"a string behind a string", R"(["≤" "≥"])", "line 1, column 6", "≥", "']'"},
        {"a colon too many", R"({"a"::1})", "line 1, column 6", "\":\"", "literal"},
        {"a list of a million", sketchWith(R"("x": )" + listOf("1", 1'000'000)), "/x/5000", "5000", "5000"},
    };
}

std::vector<RefusedRow> formatRows()
{
    return {
        {"a list", "[]", "", "a list of 0", "object"},
        {"a number", "17", "", "17", "object"},
        {"null", "null", "", "null", "object"},
        {"no format", R"({"version": 1})", "/format", "nothing", "siphonwright"},
        {"other format", R"({"format": "other", "version": 1})", "/format", "\"other\"", "siphonwright"},
        {"format of a wrong type", R"({"format": 3, "version": 1})", "/format", "3", "siphonwright"},
        {"no version", R"({"format": "siphonwright"})", "/version", "nothing", "1"},
        {"version 0", R"({"format": "siphonwright", "version": 0})", "/version", "0", "1"},
        {"version in words", R"({"format": "siphonwright", "version": "1"})", "/version", "\"1\"", "1"},
        {"version between", R"({"format": "siphonwright", "version": 0.5})", "/version", "0.5", "1"},
        {"newer", R"({"format": "siphonwright", "version": 7})", "/version", "version 7", "up to version 1"},
    };
}

std::vector<RefusedRow> valueRows()
{
    return {
        {"unknown key", sketchWith(R"("colour": "red")"), "/colour", "unknown key", "format"},
        {"key with a slash", sketchWith(R"("a/b~c": 1)"), "/a~1b~0c", "unknown key", "format"},
        {"unknown key, deep", hoseWith(R"("points": [{"at": {"x":0,"y":0,"z":0,"w":0}}])"),
         "/hoses/0/points/0/at/w", "unknown key", "format"},
        {"number as text", sketchWith(R"("ground_z_mm": "5")"), "/ground_z_mm", "\"5\"",
         "-100000 to 100000 mm"},
        {"null for a number", sketchWith(R"("ground_z_mm": null)"), "/ground_z_mm", "null", "mm"},
        {"text as a number", sketchWith(R"("notes": 5)"), "/notes", "5", "text"},
        {"truth as a number", hoseWith(R"("parts": [{"kind": "bleed", "along_mm": 1, "open": 1}])"),
         "/hoses/0/parts/0/open", "1", "true or false"},
        {"list as an object", sketchWith(R"("ports": {})"), "/ports", "an object", "a list"},
        {"object as a list", sketchWith(R"("sheet": [1])"), "/sheet", "a list of 1", "an object"},
        {"fact as a bare number", hoseWith(R"("bore_mm": 15)"), "/hoses/0/bore_mm", "15", "an object"},
        {"out of range", hoseWith(R"("points": [{"at": {"x":0,"y":0,"z":100000.5}}])"),
         "/hoses/0/points/0/at/z", "100000.5", "-100000 to 100000 mm"},
        {"fact out of range", hoseWith(R"("bore_mm": {"value": 0.4})"), "/hoses/0/bore_mm/value", "0.4",
         "0.5 to 300 mm"},
        {"unknown source", hoseWith(R"("bore_mm": {"value": 9, "source": "guessed"})"),
         "/hoses/0/bore_mm/source", "\"guessed\"", "\"measured\", \"manual\", \"typical\", \"assumed\""},
        {"unknown word", sketchWith(R"("units": "return_")"), "/units", "\"return_\"",
         "\"metric\", \"inch\""},
        {"air-cooled", engineWith(R"("air-cooled")"), "/engine/arrangement", "air-cooled", "no water jacket"},
        {"air_cooled", engineWith(R"("air_cooled")"), "/engine/arrangement", "air_cooled",
         "a coolant heater cannot be fitted"},
        {"missing position", sketchWith(R"("tank": {})"), "/tank/position", "nothing", "required"},
        {"missing z", sketchWith(R"("tank": {"position": {"x": 1, "y": 2}})"), "/tank/position/z", "nothing",
         "required"},
        {"half a vehicle", sketchWith(R"("quote": {"vehicles": 1.5})"), "/quote/vehicles", "1.5",
         "a whole number, 1 to 10000"},
        {"no vehicle at all", sketchWith(R"("quote": {"vehicles": 0})"), "/quote/vehicles", "0",
         "a whole number, 1 to 10000"},
        {"more vehicles than are counted", sketchWith(R"("quote": {"vehicles": 10001})"), "/quote/vehicles",
         "10001", "a whole number, 1 to 10000"},
        {"vehicles in words", sketchWith(R"("quote": {"vehicles": "two"})"), "/quote/vehicles", "\"two\"",
         "a whole number, 1 to 10000"},
        {"past every exact whole number", sketchWith(R"("quote": {"vehicles": 1e300})"), "/quote/vehicles",
         "1e+300", "a whole number, 1 to 10000"},
        {"two phases", sketchWith(R"("supply": {"phases": 2})"), "/supply/phases", "2", "one of 1, 3"},
        {"phases between", sketchWith(R"("supply": {"phases": 1.5})"), "/supply/phases", "1.5",
         "one of 1, 3"},
        {"phases in words", sketchWith(R"("supply": {"phases": "three"})"), "/supply/phases", "\"three\"",
         "one of 1, 3"},
        {"past every int", sketchWith(R"("supply": {"phases": -3e9})"), "/supply/phases", "-3000000000",
         "one of 1, 3"},
        {"a word with unseen characters", sketchWith(R"("units": "in\u0007\u007f\tch\n")"), "/units",
         R"("in\u0007\u007f\tch\n")", "\"inch\""},
        {"false for a number", sketchWith(R"("ground_z_mm": false)"), "/ground_z_mm", "false", "mm"},
        {"true for a number", sketchWith(R"("ground_z_mm": true)"), "/ground_z_mm", "true", "mm"},
        {"a number that is too small to print in full", hoseWith(R"("bore_mm": {"value": 1e-9})"),
         "/hoses/0/bore_mm/value", "1e-09", "0.5 to 300 mm"},
        {"a long word is cut at a whole character", sketchWith(R"("units": ")" + repeated("é", 21) + "\""),
         "/units", "\"" + repeated("é", 20) + "…\"", "\"inch\""},
        {"a long key too", sketchWith("\"" + repeated("€", 67) + "\": 1"), "/" + repeated("€", 66) + "…",
         "unknown key", "format"},
        {"empty id", sketchWith(R"("limits": [{"rule": ""}])"), "/limits/0/rule", "empty text", "1 to 200"},
        {"long text", sketchWith(R"("notes": ")" + std::string(100'001, 'n') + "\""), "/notes",
         "100001 characters", "100000 characters"},
        {"501 hoses", sketchWith(R"("hoses": )" + listOf("{}", 501)), "/hoses", "a list of 501", "0 to 500"},
        {"1001 ports", sketchWith(R"("ports": )" + listOf("{}", 1001)), "/ports", "a list of 1001",
         "0 to 1000"},
        {"10,001 corners of hoses", manyCorners({5000, 5000, 1}), "/hoses", "10001 corners in all hoses",
         "at most 10000"},
        {"10,001 corners of areas", sketchWith(R"("areas": )" + areasWith({2000, 2000, 2000, 2000, 1998, 3})),
         "/areas", "10001 corners in all outlines", "at most 10000"},
        {"two corners",
         sketchWith(R"("areas": [{"id": "a", "what": "fan", "outline": [{"x":0,"z":0},{"x":1,"z":0}]}])"),
         "/areas/0/outline", "a list of 2", "3 to 2000"},
        {"end on a missing port",
         sketchWith(R"("hoses": [{"id": "h", "role": "supply", "from": {"port": "p"}, "to": {}}])"),
         "/hoses/0/from/port", "\"p\"", "port"},
    };
}

void addRows(const std::vector<RefusedRow>& rows)
{
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QByteArray>("path");
    QTest::addColumn<QByteArray>("found");
    QTest::addColumn<QByteArray>("allowed");
    for (const RefusedRow& row : rows)
        QTest::newRow(row.name.c_str())
            << QByteArray::fromStdString(row.text) << QByteArray::fromStdString(row.path)
            << QByteArray::fromStdString(row.found) << QByteArray::fromStdString(row.allowed);
}

void verifyRefused()
{
    QFETCH(QByteArray, text);
    QFETCH(QByteArray, path);
    QFETCH(QByteArray, found);
    QFETCH(QByteArray, allowed);
    const Problems problems = problemsOf(text.toStdString());
    QVERIFY(!problems.empty());
    const Problem& first = problems.front();
    const QByteArray said = QByteArray::fromStdString(first.text());
    QCOMPARE(QByteArray::fromStdString(first.path), path);
    QVERIFY2(QByteArray::fromStdString(first.found).contains(found), said.constData());
    QVERIFY2(QByteArray::fromStdString(first.allowed).contains(allowed), said.constData());
    QVERIFY2(said.contains(path) && said.size() < 700, said.constData());
}

} // namespace

class TestSketchFilesRefused : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theSmallSketchItselfIsRead();
    void textThatIsNoJsonIsRefused_data() { addRows(textRows()); }
    void textThatIsNoJsonIsRefused() { verifyRefused(); }
    void otherFormatsAndVersionsAreRefused_data() { addRows(formatRows()); }
    void otherFormatsAndVersionsAreRefused() { verifyRefused(); }
    void valuesThatDoNotFitAreRefused_data() { addRows(valueRows()); }
    void valuesThatDoNotFitAreRefused() { verifyRefused(); }
    void aNewerVersionGivesOneProblemOnly();
    void allProblemsAreListedUpToFifty();
    void asManyCornersAsAreAllowedAreRead();
    void wrongValuesBesideAKeyGivenTwiceAreListedToo();
    void aFileCutAnywhereIsRefused();
    void aFileWithAnyByteChangedNeverCrashes();
    void sixtyFourLevelsAreWithinBounds();
};

void TestSketchFilesRefused::theSmallSketchItselfIsRead()
{
    const auto result = readSketch(small_sketch);
    QVERIFY(std::holds_alternative<Sketch>(result));
    const auto& sketch = std::get<Sketch>(result);
    QCOMPARE(sketch.ports.front().position.z, 30.0);
    QCOMPARE(sketch.notes, std::string("caf\xC3\xA9 \xC3\xA9"));
    QVERIFY(sketch.ports.front().role == PortRole::return_);
}

void TestSketchFilesRefused::aNewerVersionGivesOneProblemOnly()
{
    const Problems problems =
        problemsOf(R"({"format": "siphonwright", "version": 2, "hoses": 3, "new_in_version_2": {}})");
    QCOMPARE(problems.size(), std::size_t{1});
    QCOMPARE(problems.front().path, std::string("/version"));
}

void TestSketchFilesRefused::allProblemsAreListedUpToFifty()
{
    QCOMPARE(problemsOf(sketchWith(R"("units": 1, "notes": 2, "ground_z_mm": "")")).size(), std::size_t{3});
    QCOMPARE(problemsOf(sketchWith(R"("ports": )" + listOf("{}", 100))).size(), std::size_t{50});
}

void TestSketchFilesRefused::asManyCornersAsAreAllowedAreRead()
{
    QCOMPARE(problemsOf(manyCorners({5000, 5000})).size(), std::size_t{0});
    QCOMPARE(problemsOf(sketchWith(R"("areas": )" + areasWith({2000, 2000, 2000, 2000, 2000}))).size(),
             std::size_t{0});
}

void TestSketchFilesRefused::wrongValuesBesideAKeyGivenTwiceAreListedToo()
{
    const Problems problems =
        problemsOf(sketchWith(R"("notes": "", "notes": {"a": 1, "a": [{}]}, "units": 1)"));
    QCOMPARE(problems.size(), std::size_t{3});
    QCOMPARE(problems[1].path, std::string("/notes/a"));
    QCOMPARE(problems[2].path, std::string("/units"));
}

void TestSketchFilesRefused::aFileCutAnywhereIsRefused()
{
    for (std::size_t length = 0; length < small_sketch.size(); ++length)
        QVERIFY2(!problemsOf(small_sketch.substr(0, length)).empty(), std::to_string(length).c_str());
}

// Whatever comes out, it is a sketch or problems that say something.
void TestSketchFilesRefused::aFileWithAnyByteChangedNeverCrashes()
{
    int refused = 0;
    for (std::size_t at = 0; at < small_sketch.size(); ++at) {
        for (const char c : {'\0', '"', '{', ']', '-', '9', '\xFF'}) {
            std::string text = small_sketch;
            text[at] = c;
            const auto result = readSketch(text);
            const auto* problems = std::get_if<Problems>(&result);
            QVERIFY(problems == nullptr || !problems->empty());
            refused += problems == nullptr ? 0 : 1;
        }
    }
    // NUL and 0xFF are wrong everywhere, so at least two of the seven are refused at every byte.
    QVERIFY(refused >= 2 * static_cast<int>(small_sketch.size()));
}

void TestSketchFilesRefused::sixtyFourLevelsAreWithinBounds()
{
    const Problems problems = problemsOf(repeated("[", 64) + repeated("]", 64));
    QCOMPARE(problems.size(), std::size_t{1});
    QCOMPARE(problems.front().found, std::string("a list of 1")); // only no sketch
}

QTEST_APPLESS_MAIN(TestSketchFilesRefused)
#include "test_sketch_files_refused.moc"
