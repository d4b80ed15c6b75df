#include "tests/sheet/papers.h"
#include "tests/sheet/sample_rows.h"
#include "tests/sheet/text_recorder.h"

#include "app/paper/sheet_set.h"
#include "app/sheet/lay_out.h"

#include "core/analysis/analysis.h"

#include <QTest>

using namespace siphonwright;

namespace {

/// Without the breaks between lines.
QString saidOn(const std::vector<sheet::FurtherPage>& pages)
{
    return test::wordsOn(pages, QLatin1Char(' ')).remove(QLatin1Char(' '));
}

} // namespace

/// What has no room beside the drawing stands on sheets behind it: paper keeps nothing back.
class TestNotesSheet : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyWordIsOnPaper_data() { test::addSampleRows(); }

    void everyWordIsOnPaper()
    {
        QFETCH(QString, sample);
        const Sketch sketch = test::sampleNamed(sample);
        const Analysis analysis = proved(sketch);
        for (const sheet::Options& on : test::everyPaper()) {
            const sheet::Options options = sheet::followedBy(on, sketch, analysis, {});
            const std::vector<sheet::FurtherPage> pages = sheet::drawingPages(sketch, analysis, options);
            QCOMPARE(pages.size(), std::size_t(1 + options.notes_sheets));
            QCOMPARE(options.sheets, 1 + options.notes_sheets);
            const QString said = saidOn(pages);
            for (const sheet::Section& section :
                 {sheet::findingsSection(sketch, analysis), sheet::notJudgedSection(analysis),
                  sheet::resultsSection(sketch, analysis), sheet::marginsSection(sketch, analysis),
                  sheet::choicesSection(sketch), sheet::assumptionsSection(sketch),
                  sheet::partsSection(sketch, analysis), sheet::supplySection(sketch, analysis),
                  sheet::cautionsSection()})
                for (const sheet::Item& item : section.items)
                    QVERIFY2(said.contains(QString(item.text).remove(QLatin1Char(' '))),
                             qPrintable(item.text));
            for (const sheet::Item& item : sheet::partsSection(sketch, analysis).items)
                QCOMPARE(said.count(QString(item.text).remove(QLatin1Char(' '))), 1);
        }
    }

    /// "and 3 more" where the next would still have room keeps back what could be read at once.
    void listsAreCutOnlyWhereTheNextRowHasNoRoom_data() { test::addSampleRows(); }

    void listsAreCutOnlyWhereTheNextRowHasNoRoom()
    {
        QFETCH(QString, sample);
        const Sketch sketch = test::sampleNamed(sample);
        const Analysis analysis = analyse(sketch);
        for (const sheet::Options& on : test::everyPaper()) {
            const sheet::Options options = sheet::followedBy(on, sketch, analysis, {});
            const sheet::LaidSheet& page = options.laid->sheets.front();
            const sheet::Notes notes = sheet::notesIn(
                page.columns, sheet::sectionsOf(sketch, analysis, options, page.plan.end_left_out), options);
            const sheet::SetText set(notes.sections, page.columns.width_mm(), notes.lettering_mm);
            for (std::size_t i = 0; i < notes.sections.size(); ++i) {
                std::vector<std::size_t> more = notes.shown;
                if (++more[i] <= notes.sections[i].items.size())
                    QVERIFY2(set.laid(page.columns, more, options).empty(),
                             qPrintable(notes.sections[i].heading));
            }
        }
    }

    void aLongListTakesAsManySheetsAsItNeeds()
    {
        Sketch sketch = test::sampleNamed(QStringLiteral("sound-bus.siphon"));
        for (int i = 0; i < 150; ++i) {
            LimitChange change;
            change.rule = "drop-150";
            change.off = true;
            change.reason = "reason number " + std::to_string(i) + " of those that were written down here";
            sketch.limits.push_back(change);
        }
        const Analysis analysis = analyse(sketch);
        const sheet::Options options = sheet::followedBy({}, sketch, analysis, {});
        QVERIFY(options.notes_sheets > 1);
        const std::vector<sheet::FurtherPage> pages = sheet::drawingPages(sketch, analysis, options);
        const QString said = saidOn(pages);
        for (int i = 0; i < 150; ++i)
            QVERIFY2(said.contains(QStringLiteral("reasonnumber%1of").arg(i)),
                     qPrintable(QString::number(i)));
        QVERIFY(said.contains(QStringLiteral("moreonsheets2to%1").arg(1 + options.notes_sheets)));
        for (std::size_t i = 0; i < pages.size(); ++i)
            QVERIFY(saidOn({pages[i]}).contains(QStringLiteral("%1/%2").arg(i + 1).arg(pages.size())));
    }

    /// No two texts on a sheet of notes lie over each other, and all are on the page.
    void notesKeepApart()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("generator-two-heaters.siphon"));
        const Analysis analysis = proved(sketch);
        const sheet::Options options = sheet::followedBy({}, sketch, analysis, {});
        const std::vector<sheet::FurtherPage> pages = sheet::drawingPages(sketch, analysis, options);
        QVERIFY(pages.size() > 1);
        const std::vector<test::WrittenText> texts = test::textsOn(pages[1]);
        const QRectF paper(QPointF(), pages[1].layout.fullRect(QPageLayout::Millimeter).size() * 10);
        QVERIFY(texts.size() > 30);
        for (std::size_t i = 0; i < texts.size(); ++i) {
            QVERIFY2(paper.contains(texts[i].box), qPrintable(texts[i].text));
            for (std::size_t k = 0; k < i; ++k)
                QVERIFY2(!texts[i].box.intersects(texts[k].box),
                         qPrintable(texts[i].text + QLatin1String(" / ") + texts[k].text));
        }
    }

    void followingSheetsAreNumberedBehindTheNotes()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("generator-two-heaters.siphon"));
        const Analysis analysis = proved(sketch);
        const paper::SheetSet set{true, true, false, false, false, false};
        const std::vector<sheet::FurtherPage> behind =
            paper::pagesBehind(sketch, analysis, set, sheet::Paper::a4);
        const sheet::Options options = sheet::followedBy({}, sketch, analysis, behind);
        QVERIFY(options.notes_sheets >= 1);
        QCOMPARE(options.behind.front().first_sheet, 2 + options.notes_sheets);
        QCOMPARE(options.sheets, 1 + options.notes_sheets + int(behind.size()));
    }
};

QTEST_MAIN(TestNotesSheet)
#include "test_notes_sheet.moc"
