#include "tests/sheet/on_a3.h"
#include "tests/sheet/sample_files.h"
#include "tests/sheet/text_recorder.h"
#include "tests/sheet/yard_bus.h"

#include "app/drawing/slope_words.h"
#include "app/paper/sheet_set.h"
#include "app/sheet/sheet.h"
#include "app/sheet/words.h"

#include <QPainter>
#include <QTest>

#include <cmath>
#include <functional>

using namespace siphonwright;
using siphonwright::test::onA3;

namespace {

/// All that stands on a page, a space between texts.
QString saidOn(const QSizeF& page_mm, const std::function<void(QPainter&)>& paint)
{
    test::TextRecorder recorder((page_mm * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    paint(painter);
    painter.end();
    QString all;
    for (const test::WrittenText& text : recorder.texts())
        all += text.text + QLatin1Char(' ');
    return all;
}

QString saidOnTheDrawing(const Sketch& sketch, const sheet::Options& options)
{
    const Analysis analysis = analyse(sketch);
    return saidOn(sheet::pageSize(options),
                  [&](QPainter& painter) { sheet::paintPage(painter, sketch, analysis, options); });
}

/// A sound job, whose sheet has room for all there is to say.
Sketch soundBus()
{
    return test::sampleNamed(QStringLiteral("sound-bus.siphon"));
}

/// The yard's bus with serial numbers, in its second revision.
Sketch numbered()
{
    Sketch sketch = test::yardBus();
    sketch.sheet.vehicle_serial = "YNL-14-0077";
    sketch.sheet.revision = "B2";
    sketch.sheet.revision_change = "Return hose straightened";
    sketch.engine->serial_number = "E9-55120";
    sketch.heaters[0].serial_number = "H-0471";
    return sketch;
}

} // namespace

class TestSheetWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    /// Rise over run by elementary geometry: 1 over 12 along, 3 over 4 is 36.9 degrees, sqrt(3) over 1 is 60.
    void aSlopeIsSaidAsRiseOverRun_data()
    {
        QTest::addColumn<double>("x");
        QTest::addColumn<double>("z");
        QTest::addColumn<QString>("said");
        QTest::newRow("one in twelve") << 12.0 << 1.0 << QStringLiteral("1:12 up");
        QTest::newRow("the other way along") << -12.0 << 1.0 << QStringLiteral("1:12 up");
        QTest::newRow("falls") << 4.0 << -3.0 << QStringLiteral("1:1.3 down");
        QTest::newRow("steep") << 1.0 << std::sqrt(3.0) << QStringLiteral("60° up");
        QTest::newRow("level") << 5000.0 << 1.0 << QStringLiteral("level");
        QTest::newRow("upright") << 0.001 << -1.0 << QStringLiteral("plumb down");
    }

    void aSlopeIsSaidAsRiseOverRun()
    {
        QFETCH(double, x);
        QFETCH(double, z);
        QFETCH(QString, said);
        const double length = std::hypot(x, z);
        QCOMPARE(drawing::slopeWords({x / length, 0, z / length}, Plumb()), said);
    }

    /// Its return hose goes from 400 to the head port's stub, 60 mm aside in 250 mm, and plumb from the
    /// outlet.
    void slopesStandOnTheDrawingAndOnTheStrips()
    {
        const Sketch sketch = test::yardBus();
        // The supply's straight from (-250, 60) to (263, -153): 213 mm down over 513 mm, 1:2.4.
        const QString drawing = saidOnTheDrawing(soundBus(), onA3());
        QVERIFY2(drawing.contains(QStringLiteral("1:2.4 down")), qPrintable(drawing));
        QString strips;
        paper::SheetSet set;
        set.fitting = true;
        for (const sheet::FurtherPage& page :
             paper::pagesBehind(sketch, analyse(sketch), set, sheet::Paper::a4))
            strips += saidOn(page.layout.fullRect(QPageLayout::Millimeter).size(), page.paint);
        QVERIFY2(strips.contains(QStringLiteral("1:4 down")), qPrintable(strips));
    }

    void serialNumbersAndRevisionAreInTheTitleBlock()
    {
        const QString said = saidOnTheDrawing(numbered(), onA3());
        for (const char* one : {"YNL-14-0077", "E9-55120", "H-0471", "Return hose straightened"})
            QVERIFY2(said.contains(QLatin1String(one)), one);
    }

    void serialNumbersAndRevisionAreOnTheFittingPages()
    {
        paper::SheetSet set;
        set.fitting = true;
        const Sketch sketch = numbered();
        QString said;
        for (const sheet::FurtherPage& page :
             paper::pagesBehind(sketch, analyse(sketch), set, sheet::Paper::a4))
            said += saidOn(page.layout.fullRect(QPageLayout::Millimeter).size(), page.paint);
        for (const char* one :
             {"YNL-14-0077", "E9-55120", "Serial number H-0471", "Return hose straightened"})
            QVERIFY2(said.contains(QLatin1String(one)), one);
    }

    void theDrawingNamesTheSheetsBehindIt()
    {
        const Sketch sketch = test::yardBus();
        const Analysis analysis = analyse(sketch);
        const paper::SheetSet set{true, false, true, true, false, true};
        sheet::Options options = onA3();
        const std::vector<sheet::FurtherPage> pages = paper::pagesOf(sketch, analysis, set, options);
        QCOMPARE(options.sheets, int(pages.size()));
        QCOMPARE(options.behind.size(), std::size_t(3));
        QCOMPARE(options.behind[0].first_sheet, 2 + options.notes_sheets);
        for (std::size_t i = 1; i < 3; ++i)
            QCOMPARE(options.behind[i].first_sheet, options.behind[i - 1].last_sheet + 1);
        QCOMPARE(options.behind[2].last_sheet, options.sheets);
        const QString said = saidOn(sheet::pageSize(options), pages.front().paint);
        for (const char* one : {"page 2, Commissioning checklist", "page 3, Parts list",
                                "page 4, Assumptions and sources", "1, drawing"})
            QVERIFY2(said.contains(QString::fromLatin1(one)), qPrintable(said));
    }

    /// Each sheet says which page it belongs to and its number among all.
    void everySheetBehindSaysItsPageAndNumber()
    {
        const Sketch sketch = test::yardBus();
        const Analysis analysis = analyse(sketch);
        sheet::Options options = onA3();
        const std::vector<sheet::FurtherPage> pages =
            paper::pagesOf(sketch, analysis, paper::SheetSet{true, false, true, true, false, true}, options);
        for (std::size_t i = std::size_t(1 + options.notes_sheets); i < pages.size(); ++i) {
            const QString said =
                saidOn(pages[i].layout.fullRect(QPageLayout::Millimeter).size(), pages[i].paint);
            const QString place =
                QStringLiteral("Page %1, sheet %2/%3").arg(pages[i].page).arg(i + 1).arg(pages.size());
            QVERIFY2(said.contains(place), qPrintable(place));
        }
    }

    /// Drawing, strips and parts list: from the cut end, 30 mm over the hose end, to the valve in the middle
    /// of what its 60 mm leave between the hoses, nothing; the pieces are the cut.
    void everyPageGivesTheSamePiecesOfHose()
    {
        const Sketch sketch = soundBus();
        const Analysis analysis = analyse(sketch);
        const PartsList parts = partsOf(sketch, analysis.layout);
        const double cut_mm = parts.cuts.at(0).length_mm;
        const QString pieces = QStringLiteral("70 mm, valve, %1 mm").arg(cut_mm - 70);
        QCOMPARE(sheet::piecesWords(parts.cuts[0], UnitSystem::metric), pieces);
        QString on_drawing;
        for (const sheet::Item& item : sheet::partsSection(sketch, analysis).items)
            on_drawing += item.text + QLatin1Char('\n');
        QVERIFY2(on_drawing.contains(pieces), qPrintable(on_drawing));
        for (const bool fitting : {true, false}) {
            paper::SheetSet set;
            set.fitting = fitting;
            set.parts = !fitting;
            QString said;
            for (const sheet::FurtherPage& page : paper::pagesBehind(sketch, analysis, set, sheet::Paper::a4))
                said += saidOn(page.layout.fullRect(QPageLayout::Millimeter).size(), page.paint);
            for (const QString& piece : pieces.split(QStringLiteral(", ")))
                QVERIFY2(said.contains(piece), qPrintable(said));
            QVERIFY2(!said.contains(QStringLiteral("40 mm along")), qPrintable(said));
        }
    }

    /// A generator's supply hose, cut to a quarter of an inch: the pieces and the body between them add up.
    void piecesInInchesAddUpToTheCut()
    {
        HoseCut cut;
        cut.length_mm = 29.75 * 25.4;
        cut.parts = {{ItemKind::isolation_valve, 70, 100}, {ItemKind::drain, 300, 300}};
        // 70 mm are 2 3/4 in on a tape, 100 mm 3 15/16, 300 mm 11 13/16: 1 3/16 for the valve, 7 7/8 between,
        // 17 15/16 left.
        QCOMPARE(sheet::piecesWords(cut, UnitSystem::inch),
                 QStringLiteral("2 3/4 in, valve 1 3/16 in, 7 7/8 in, drain, 17 15/16 in"));
    }

    /// The sleeve is hose by the metre, not a piece: it was left out, and the numbers skipped it.
    void itemsOfTheDrawingAreNumberedWithoutAGap()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("air-lock-fault-1.siphon"));
        QString all;
        int last = 0;
        for (const sheet::Item& item : sheet::partsSection(sketch, analyse(sketch)).items) {
            const int number = item.text.mid(1, item.text.indexOf(QLatin1Char(']')) - 1).toInt();
            QVERIFY2(number == last || number == last + 1, qPrintable(item.text));
            last = number;
            all += item.text + QLatin1Char('\n');
        }
        QVERIFY2(all.contains(QStringLiteral("Hose insulation, ")), qPrintable(all));
    }

    void aHeatersPowerIsSaidOnce()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("clear-tube-rig.siphon"));
        QCOMPARE(sheet::partsSection(sketch, analyse(sketch)).items.at(0).text,
                 QStringLiteral("[1] Clear heater, 300 W, 24 V"));
    }

    /// Two loops have two hoses of each role.
    void hosesOfOneRoleAreNamedApart()
    {
        const QString said =
            saidOnTheDrawing(test::sampleNamed(QStringLiteral("generator-two-heaters.siphon")), onA3());
        for (const char* name : {"Supply hose A 1 1/4 in", "Supply hose B 1 1/4 in", "Return hose A 1 1/4 in",
                                 "Return hose B 1 1/4 in"})
            QVERIFY2(said.contains(QLatin1String(name)), name);
    }

    void aDrawingAloneSaysWhatIsNotPrintedWithIt()
    {
        QVERIFY(
            saidOnTheDrawing(test::yardBus(), onA3()).contains(QStringLiteral("None printed with this one")));
    }

    void loadAndCoolantAreOnTheDrawing()
    {
        const QString said = saidOnTheDrawing(soundBus(), onA3());
        QVERIFY2(said.contains(QStringLiteral("All heaters 1500 W")), qPrintable(said));
        QVERIFY2(said.contains(QStringLiteral("ethylene glycol 50")), qPrintable(said));
    }
};

QTEST_MAIN(TestSheetWords)
#include "test_sheet_words.moc"
