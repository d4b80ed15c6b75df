#include "tests/sketch/full_sketch.h"
#include "tests/sketch/member_count.h"
#include "tests/sketch/random_sketch.h"

#include "core/sketch/file.h"
#include "core/sketch/format/describe_sketch.h"

#include <QTest>

#include <cmath>
#include <fstream>
#include <limits>
#include <sstream>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

/// The written text, or the problems in its place, so that a failing test shows them.
std::string written(const Sketch& sketch)
{
    const auto result = writeSketch(sketch);
    if (const auto* text = std::get_if<std::string>(&result))
        return *text;
    std::string all;
    for (const Problem& problem : std::get<Problems>(result))
        all += problem.text() + "\n";
    return all;
}

Sketch readBack(const std::string& text)
{
    auto result = readSketch(text);
    if (const auto* problems = std::get_if<Problems>(&result)) {
        qWarning("%s", problems->front().text().c_str());
        return {};
    }
    return std::get<Sketch>(std::move(result));
}

/// Counts described members, and complains about structs inside with another number of members.
class MemberCounter {
public:
    void object(std::string_view name, std::string_view /*meaning*/) { name_ = name; }
    template <class M>
    void operator()(const Field& /*field*/, const M& member)
    {
        ++count_;
        look(member);
    }
    template <class T>
    bool same(const T& part)
    {
        describe(*this, part);
        if (count_ != memberCount<T>())
            qWarning("%s: %zu described of %zu", std::string(name_).c_str(), count_, memberCount<T>());
        return all_same_ && count_ == memberCount<T>();
    }

private:
    template <class T>
    void look(const T& part)
    {
        if constexpr (std::is_class_v<T> && !std::is_same_v<T, std::string>)
            all_same_ = MemberCounter().same(part) && all_same_;
    }
    template <class T>
    void look(const std::optional<T>& /*value*/)
    {
        look(T{});
    }
    template <class T>
    void look(const std::vector<T>& /*list*/)
    {
        look(T{});
    }
    template <class T>
    void look(const Shared<T>& shared)
    {
        look(*shared);
    }
    template <class T>
    void look(const Fact<T>& /*fact*/)
    {
        look(T{});
    }

    std::string_view name_;
    std::size_t count_ = 0;
    bool all_same_ = true;
};

} // namespace

class TestSketchRoundTrip : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyMemberOfEveryStructIsDescribed();
    void anEmptySketchSurvives();
    void aFullSketchSurvives();
    void theFormatIsTheOneOfTheKeptFile();
    void randomSketchesSurvive();
    void numbersSurviveExactly_data();
    void numbersSurviveExactly();
    void negativeZeroKeepsItsSign();
    void aFactNotEnteredIsLeftOut();
    void partsAreFoundById();
};

void TestSketchRoundTrip::everyMemberOfEveryStructIsDescribed()
{
    QVERIFY(MemberCounter().same(Sketch{}));
}

void TestSketchRoundTrip::anEmptySketchSurvives()
{
    QVERIFY(readBack(written(Sketch{})) == Sketch{});
}

void TestSketchRoundTrip::aFullSketchSurvives()
{
    const Sketch full = fullSketch();
    QVERIFY(!(full == Sketch{}));
    QVERIFY(readBack(written(full)) == full);
}

// Files written by earlier builds stay readable: full.siphon is kept as it is for version 1.
void TestSketchRoundTrip::theFormatIsTheOneOfTheKeptFile()
{
    std::ifstream file(SIPHONWRIGHT_SOURCE_DIR "/tests/sketch/full.siphon", std::ios::binary);
    std::ostringstream kept;
    kept << file.rdbuf();
    QCOMPARE(QByteArray::fromStdString(written(fullSketch())), QByteArray::fromStdString(kept.str()));
}

void TestSketchRoundTrip::randomSketchesSurvive()
{
    for (unsigned seed = 0; seed < 2000; ++seed) {
        const Sketch sketch = RandomFiller(seed).sketch();
        const std::string text = written(sketch);
        const Sketch again = readBack(text);
        QVERIFY2(again == sketch, std::to_string(seed).c_str());
        // Equal text as well: == does not tell -0.0 from 0.
        QVERIFY2(written(again) == text, std::to_string(seed).c_str());
    }
}

void TestSketchRoundTrip::numbersSurviveExactly_data()
{
    QTest::addColumn<double>("number");
    QTest::newRow("no binary fraction") << 0.1;
    QTest::newRow("three quarters of an inch") << 19.05;
    QTest::newRow("sum that is not 0.3") << 0.1 + 0.2;
    QTest::newRow("next after one") << std::nextafter(1.0, 2.0);
    QTest::newRow("very small") << 1e-300;
    QTest::newRow("smallest of all") << std::numeric_limits<double>::denorm_min();
    QTest::newRow("the limit itself") << -100'000.0;
    QTest::newRow("next to the limit") << std::nextafter(100'000.0, 0.0);
}

void TestSketchRoundTrip::numbersSurviveExactly()
{
    QFETCH(double, number);
    Sketch sketch;
    sketch.ground_z_mm = number;
    const Sketch again = readBack(written(sketch));
    QVERIFY(again.ground_z_mm.has_value());
    QVERIFY(*again.ground_z_mm == number); // bit for bit, no tolerance
}

void TestSketchRoundTrip::negativeZeroKeepsItsSign()
{
    Sketch sketch;
    sketch.ground_z_mm = -0.0;
    QVERIFY(std::signbit(readBack(written(sketch)).ground_z_mm.value_or(1)));
}

void TestSketchRoundTrip::aFactNotEnteredIsLeftOut()
{
    Sketch sketch;
    sketch.coolant.volume_percent = {50, Source::measured};
    const std::string text = written(sketch);
    QVERIFY(text.find(R"("volume_percent": {"value": 50, "source": "measured"})") != std::string::npos);
    QVERIFY(text.find("cap_pressure_kPa") == std::string::npos);
    QVERIFY(text.find("ambient_degC") == std::string::npos);
    // A source that was chosen before the value is not lost either.
    sketch.coolant.volume_percent = {std::nullopt, Source::manual};
    QVERIFY(readBack(written(sketch)) == sketch);
}

void TestSketchRoundTrip::partsAreFoundById()
{
    const Sketch sketch = fullSketch();
    QVERIFY(sketch.port("port-1") == sketch.ports.data());
    QVERIFY(sketch.heater("heater-1") == sketch.heaters.data());
    QVERIFY(sketch.hose("hose-1") == &*sketch.hoses.front());
    QVERIFY(sketch.area("area-1") == &*sketch.areas.front());
    QVERIFY(sketch.port("heater-1") == nullptr);
    QVERIFY(sketch.hose("") == nullptr);
}

QTEST_APPLESS_MAIN(TestSketchRoundTrip)
#include "test_sketch_round_trip.moc"
