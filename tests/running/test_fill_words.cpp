#include "tests/near.h"
#include "tests/read_sample.h"

#include "core/running/fill_words.h"
#include "core/running/running.h"
#include "core/sketch/file.h"

#include <QFile>
#include <QTest>

#include <algorithm>

using namespace siphonwright;
using siphonwright::test::sampleOf;

namespace {

struct Told {
    Sketch sketch;
    Layout layout;
    FillPlanOf plan;
    FillResult filled;
    std::vector<FillLine> lines;
};

void tell(Told& told, const QString& name)
{
    told.sketch = sampleOf(name);
    told.layout = resolve(told.sketch, plumbOf(told.sketch));
    told.plan = fillRequestOf(told.sketch, told.layout, Assumptions(told.sketch));
    told.filled = fillAsPlanned(*told.plan.request);
    told.lines = linesOf(told.filled, told.plan);
}

bool says(const Told& told, const std::string& words)
{
    return std::any_of(told.lines.begin(), told.lines.end(), [&](const FillLine& line) {
        return format(line.text, UnitSystem::metric).find(words) != std::string::npos;
    });
}

} // namespace

class TestFillWords : public QObject {
    Q_OBJECT
private slots:
    void theHumpIsNamedWithItsHose();
    void linesComeInTheOrderInWhichTheyHappen();
    void framesTellWhatIsSealed();
    void aPrefilledJobSaysSo();
    void noSentenceKeepsAnOpenPlace();
};

void TestFillWords::theHumpIsNamedWithItsHose()
{
    Told told;
    tell(told, QStringLiteral("supply-hump"));
    QVERIFY(told.filled.status == FillStatus::filled);
    QVERIFY(says(told, "Coolant spills over the hump in "));
}

void TestFillWords::linesComeInTheOrderInWhichTheyHappen()
{
    Told told;
    tell(told, QStringLiteral("supply-hump"));
    QVERIFY(told.lines.size() > 2);
    QVERIFY(std::is_sorted(told.lines.begin(), told.lines.end(),
                           [](const FillLine& a, const FillLine& b) { return a.poured_ml < b.poured_ml; }));
}

void TestFillWords::framesTellWhatIsSealed()
{
    Told told;
    tell(told, QStringLiteral("supply-hump"));
    QVERIFY(!says(told, "the air behind it is sealed"));
    told.plan.request->frames = 200;
    told.filled = fillAsPlanned(*told.plan.request);
    told.lines = linesOf(told.filled, told.plan);
    QVERIFY(says(told, "; the air behind it is sealed."));
}

void TestFillWords::aPrefilledJobSaysSo()
{
    Sketch sketch = sampleOf(QStringLiteral("supply-hump"));
    sketch.fill.start = FillStart::hoses_full;
    const Layout layout = resolve(sketch, plumbOf(sketch));
    const Filling clean = fillOf(sketch, layout, nullptr, Assumptions(sketch));
    QVERIFY(clean.missing.empty());
    QVERIFY(clean.pockets.empty());
    QVERIFY(clean.loops.at(0).element_covered);
    const auto begins = [&] {
        return format(beginningOf(fillRequestOf(sketch, layout, Assumptions(sketch))), UnitSystem::metric);
    };
    QVERIFY(begins().find("filled before they were connected.") != std::string::npos);
    sketch.fill.hose_air_ml = 12;
    QVERIFY(begins().find("12 ml of air got into each hose.") != std::string::npos);
    // Both hoses fall from their ports: what gets in there goes out again.
    QVERIFY(fillOf(sketch, layout, nullptr, Assumptions(sketch)).pockets.empty());
    // Here the return hose rises from its port to a crest, which keeps it, a little pressed together.
    Sketch crest = sampleOf(QStringLiteral("air-lock-lesson-2"));
    crest.fill.start = FillStart::hoses_full;
    crest.fill.hose_air_ml = 12;
    const Filling left = fillOf(crest, resolve(crest, plumbOf(crest)), nullptr, Assumptions(crest));
    double kept_ml = 0;
    for (const PocketFound& pocket : left.pockets)
        kept_ml += pocket.volume_ml;
    QVERIFY(kept_ml > 10 && kept_ml < 12);
}

void TestFillWords::noSentenceKeepsAnOpenPlace()
{
    for (const char* name :
         {"supply-hump", "sound-bus", "return-dip", "above-level", "generator-two-heaters"}) {
        Told told;
        tell(told, QString::fromLatin1(name));
        for (const FillLine& line : told.lines) {
            const std::string text = format(line.text, UnitSystem::inch);
            QVERIFY2(text.find('{') == std::string::npos && text.back() == '.', text.c_str());
        }
    }
}

QTEST_APPLESS_MAIN(TestFillWords)
#include "test_fill_words.moc"
