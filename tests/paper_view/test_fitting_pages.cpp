#include "tests/near.h"
#include "tests/sheet/text_recorder.h"
#include "tests/sheet/yard_bus.h"

#include "app/drawing/text.h"
#include "app/paper/hose_strip.h"
#include "app/paper/pages.h"
#include "app/paper/sheet_set.h"

#include "core/paperwork/parts.h"

#include <QPainter>
#include <QTest>

#include <algorithm>

using namespace siphonwright;
using namespace siphonwright::paper;

namespace {

QString allOn(const Pages& pages)
{
    QString all;
    for (int page = 0; page < pages.count(); ++page) {
        test::TextRecorder recorder(QSize(2100, 2970));
        QPainter painter(&recorder);
        painter.scale(10, 10);
        pages.paint(painter, page);
        painter.end();
        for (const test::WrittenText& text : recorder.texts())
            all += text.text + QLatin1Char(' ');
    }
    return all;
}

} // namespace

class TestFittingPages : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aHoseIsMarkedFromItsCutEnd()
    {
        // The supply hose of the yard's bus: clips at 330 and 520 mm along it, a valve at 110, a drain at
        // 470; 30 mm of it are over the hose end at A.
        const Sketch sketch = test::yardBus();
        const Layout layout = resolve(sketch, plumbOf(sketch));
        const HoseStrip strip = stripOf(layout.hoses[0], layout.plumb, UnitSystem::metric);
        VERIFY_NEAR(strip.length_mm, layout.hoses[0]->length_mm + 60, 1e-9);
        std::vector<QString> texts;
        for (const StripMark& mark : strip.marks)
            texts.push_back(mark.text);
        for (const char* said : {"clip 360", "clip 550", "valve 140", "drain 500"})
            QVERIFY2(std::count(texts.begin(), texts.end(), QString::fromLatin1(said)) == 1, said);
        QVERIFY(std::any_of(texts.begin(), texts.end(),
                            [](const QString& text) { return text.startsWith(QLatin1String("bend ")); }));
    }

    void everyMarkIsNamedAndNoNameLiesOnAnother()
    {
        Sketch sketch = test::yardBus();
        sketch.hoses[0].edit([](Hose& hose) {
            for (int i = 0; i < 12; ++i) // crowded at one end
                hose.clips_mm.push_back(40 + 3 * i);
        });
        const Layout layout = resolve(sketch, plumbOf(sketch));
        const HoseStrip strip = stripOf(layout.hoses[0], layout.plumb, UnitSystem::metric);
        const std::vector<StripLabel> labels = labelsUnder(strip, 25, 160, 1.8);
        QCOMPARE(labels.size(), strip.marks.size());
        for (std::size_t i = 0; i + 1 < labels.size(); ++i)
            QVERIFY(labels[i + 1].x - labels[i].x >
                    1.8 * (drawing::ascent_share + drawing::descent_share) * 0.99);
        QVERIFY(labels.front().x >= 25 && labels.back().x <= 185);
    }

    void thePageSaysWhatTheBenchNeeds()
    {
        const Sketch sketch = test::yardBus();
        const PartsList parts = partsOf(sketch, resolve(sketch, plumbOf(sketch)));
        const QString all = allOn(Pages(sketch, Kind::fitting, sheet::Paper::a4));
        for (const HoseCut& cut : parts.cuts)
            QVERIFY2(all.contains(QStringLiteral("Cut %1 mm, in pieces").arg(cut.length_mm)),
                     qPrintable(all));
        // Heater top at 130 mm, 200 mm under the jacket; 360 - 300 = 60 mm in front of the head port.
        for (const char* said :
             {"A: Drain port, 30 mm pushed on", "top 200 mm under the jacket's lowest point",
              "60 mm towards the front", "serial number", "25 mm of it is allowance",
              "Valves open before turning on", "Thread", "Sealant", "not entered", "Fitted by, date", "Rev."})
            QVERIFY2(all.contains(QString::fromLatin1(said)), said);
    }

    void theAssumptionsStandWithTheirBasis()
    {
        Sketch sketch = test::yardBus();
        sketch.assumptions = {{"roughness", 0.01, "measured on a worn hose"}};
        const QString all = allOn(Pages(sketch, Kind::assumptions, sheet::Paper::letter));
        QVERIFY(all.contains(QStringLiteral("McAdams (1954)")));
        QVERIFY(all.contains(QStringLiteral("For this drawing: measured on a worn hose")));
    }

    void pagesAreChosenByName()
    {
        QVERIFY(!setByNames(QStringLiteral("drawing,poster")));
        QVERIFY(!setByNames(QString()));
        const auto two = setByNames(QStringLiteral("Fitting, assumptions"));
        QVERIFY(two && two->fitting && two->assumptions && !two->drawing && !two->parts);
        const Sketch sketch = test::yardBus();
        const Analysis analysis = analyse(sketch);
        const std::size_t fitting = std::size_t(Pages(sketch, Kind::fitting, sheet::Paper::a4).count());
        const std::size_t assumed = std::size_t(Pages(sketch, Kind::assumptions, sheet::Paper::a4).count());
        QCOMPARE(pagesBehind(sketch, analysis, *two, sheet::Paper::a4).size(), fitting + assumed);
        // No prices are there, so no estimate is.
        QVERIFY(
            pagesBehind(sketch, analysis, *setByNames(QStringLiteral("estimate")), sheet::Paper::a4).empty());
    }
};

QTEST_MAIN(TestFittingPages)
#include "test_fitting_pages.moc"
