#include "tests/sketch/full_sketch.h"

#include "core/sketch/file.h"

#include <QTest>

#include <functional>
#include <limits>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

struct Row {
    const char* name;
    const char* path;
    std::function<void(Sketch&)> spoil;
};

std::vector<Row> rows()
{
    return {
        {"NaN", "/ground_z_mm", [](Sketch& s) { s.ground_z_mm = not_a_number; }},
        {"infinity in a hose", "/hoses/0/points/1/at/z",
         [](Sketch& s) { s.hoses[0].edit([](Hose& h) { h.points[1].at.z = infinity; }); }},
        {"NaN in a fact", "/heaters/0/power_W/value",
         [](Sketch& s) { s.heaters[0].power_W.value = not_a_number; }},
        {"too far", "/ports/0/position/x", [](Sketch& s) { s.ports[0].position.x = 100'001; }},
        {"heading", "/engine/heading_deg", [](Sketch& s) { s.engine->heading_deg = 45; }},
        {"two phases", "/heaters/0/phases", [](Sketch& s) { s.heaters[0].phases = 2; }},
        {"outline", "/engine/outline", [](Sketch& s) { s.engine->outline.resize(2); }},
        {"jacket", "/engine/jacket", [](Sketch& s) { s.engine->jacket.clear(); }},
        {"area", "/areas/0/outline",
         [](Sketch& s) { s.areas[0].edit([](Area& a) { a.outline.resize(2); }); }},
        {"empty id", "/ports/0/id",
         [](Sketch& s) {
             s.ports[0].id.clear();
             s.hoses[0].edit([](Hose& h) { h.to.port.clear(); });
         }},
        {"same id twice in a list", "/ports/1/id", [](Sketch& s) { s.ports.push_back(s.ports[0]); }},
        {"same id in two lists", "/areas/0/id",
         [](Sketch& s) { s.areas[0].edit([](Area& a) { a.id = "hose-1"; }); }},
        {"missing port", "/hoses/0/to/port", [](Sketch& s) { s.ports.clear(); }},
        {"missing heater", "/hoses/0/from/heater",
         [](Sketch& s) { s.hoses[0].edit([](Hose& h) { h.from.heater = "port-1"; }); }},
        {"on two things", "/hoses/0/to",
         [](Sketch& s) { s.hoses[0].edit([](Hose& h) { h.to.heater = "heater-1"; }); }},
        {"no such choice", "/engine/front", [](Sketch& s) { s.engine->front = static_cast<EngineEnd>(7); }},
        {"not UTF-8", "/notes", [](Sketch& s) { s.notes = "caf\xE9"; }},
        {"too long", "/sheet/title", [](Sketch& s) { s.sheet.title.assign(100'001, 'x'); }},
        {"too many hoses", "/hoses",
         [](Sketch& s) {
             s.hoses.clear();
             for (int i = 0; i < 501; ++i)
                 s.hoses.emplace_back().edit([i](Hose& h) { h.id = "hose-" + std::to_string(i); });
         }},
        {"too many clips", "/hoses/0/clips_mm",
         [](Sketch& s) { s.hoses[0].edit([](Hose& h) { h.clips_mm.assign(1001, 5); }); }},
    };
}

} // namespace

class TestSketchProblems : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void aFullSketchHasNone();
    void eachFaultIsNamedAndNeverWritten_data();
    void eachFaultIsNamedAndNeverWritten();
    void aPhotoMayBeLongButNotLongerThanAFile();
    void aProblemReadsAsASentence();
};

void TestSketchProblems::aFullSketchHasNone()
{
    QVERIFY(problemsIn(fullSketch()).empty());
    QVERIFY(problemsIn(Sketch{}).empty());
}

void TestSketchProblems::eachFaultIsNamedAndNeverWritten_data()
{
    QTest::addColumn<std::size_t>("index");
    const auto all = rows();
    for (std::size_t i = 0; i < all.size(); ++i)
        QTest::newRow(all[i].name) << i;
}

void TestSketchProblems::eachFaultIsNamedAndNeverWritten()
{
    QFETCH(std::size_t, index);
    const Row row = rows()[index];
    Sketch sketch = fullSketch();
    row.spoil(sketch);
    const Problems problems = problemsIn(sketch);
    QCOMPARE(problems.size(), std::size_t{1});
    QCOMPARE(problems.front().path, std::string(row.path));
    const auto written = writeSketch(sketch);
    QVERIFY(std::holds_alternative<Problems>(written));
    QVERIFY(std::get<Problems>(written) == problems);
}

void TestSketchProblems::aPhotoMayBeLongButNotLongerThanAFile()
{
    Sketch sketch;
    Photo photo;
    photo.data_base64.assign(3'000'000, 'A');
    sketch.photo = Shared<Photo>(photo);
    const auto fits = writeSketch(sketch);
    QVERIFY(std::holds_alternative<std::string>(fits));
    const auto again = readSketch(std::get<std::string>(fits));
    QVERIFY(std::holds_alternative<Sketch>(again));
    QVERIFY(std::get<Sketch>(again) == sketch);

    photo.data_base64.assign(largest_file_bytes, 'A');
    sketch.photo = Shared<Photo>(photo);
    const auto refused = writeSketch(sketch);
    QVERIFY(std::holds_alternative<Problems>(refused));
    QVERIFY(std::get<Problems>(refused).front().allowed.find("32 MiB") != std::string::npos);
}

void TestSketchProblems::aProblemReadsAsASentence()
{
    const Problem problem{"/hoses/0/wall_mm", "900", "0 to 300 mm"};
    QCOMPARE(problem.text(), std::string("At /hoses/0/wall_mm: found 900, but allowed is 0 to 300 mm."));
}

QTEST_APPLESS_MAIN(TestSketchProblems)
#include "test_sketch_problems.moc"
