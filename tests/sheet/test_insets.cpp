#include "tests/sheet/papers.h"
#include "tests/sheet/sample_rows.h"
#include "tests/sheet/text_recorder.h"

#include "app/paper/fitting_words.h"
#include "app/paper/hose_strip.h"
#include "app/paper/insets.h"
#include "app/paper/sheet_set.h"
#include "app/sheet/lay_out.h"

#include "core/analysis/analysis.h"

#include <QPainter>
#include <QRegularExpression>
#include <QTest>

#include <algorithm>

using namespace siphonwright;

namespace {

/// A page with all its insets, laid out and not painted.
sheet::Options laid(const Sketch& sketch, const Analysis& analysis, sheet::Options options)
{
    options.insets = paper::insetsOf(sketch, analysis.layout);
    return sheet::followedBy(options, sketch, analysis, {});
}

QString overlapIn(const sheet::LaidSheet& laid)
{
    const QRectF frame = laid.plan.frame;
    for (std::size_t i = 0; i < laid.insets.size(); ++i) {
        const QRectF& box = laid.insets[i].box;
        if (!frame.contains(box) || box.intersects(laid.plan.title) || box.intersects(laid.plan.view))
            return QStringLiteral("inset %1 is out of place").arg(laid.insets[i].inset);
        for (std::size_t k = 0; k < i; ++k)
            if (box.intersects(laid.insets[k].box))
                return QStringLiteral("insets %1 and %2").arg(laid.insets[i].inset).arg(laid.insets[k].inset);
        for (const sheet::Block& block : laid.notes) {
            const QRectF words(block.at, QSizeF(laid.columns.width_mm(),
                                                sheet::heightOf(block, laid.lettering_mm) - block.before_mm));
            if (box.intersects(words))
                return QStringLiteral("inset %1 and \"%2\"")
                    .arg(laid.insets[i].inset)
                    .arg(block.lines.value(0));
        }
    }
    return {};
}

} // namespace

/// What is set into the room that the drawing leaves: all of it is on page 1, once, and in nobody's way.
class TestInsets : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void eachStandsOnceAndInNoOnesWay_data() { test::addSampleRows(); }

    void eachStandsOnceAndInNoOnesWay()
    {
        QFETCH(QString, sample);
        const Sketch sketch = test::sampleNamed(sample);
        const Analysis analysis = proved(sketch);
        for (const sheet::Options& on : test::everyPaper()) {
            const sheet::Options options = laid(sketch, analysis, on);
            const std::vector<sheet::LaidSheet>& sheets = options.laid->sheets;
            QCOMPARE(int(sheets.size()), 1 + options.notes_sheets);
            std::vector<int> seen(options.insets.size());
            for (const sheet::LaidSheet& one : sheets) {
                QVERIFY2(&one == &sheets.front() || !one.notes.empty() || !one.insets.empty(),
                         "a sheet behind the drawing is empty");
                const QString fault = overlapIn(one);
                QVERIFY2(fault.isEmpty(), qPrintable(fault));
                for (const sheet::PlacedInset& inset : one.insets)
                    ++seen[inset.inset];
            }
            QVERIFY(std::all_of(seen.begin(), seen.end(), [](int times) { return times == 1; }));
            // What is signed and how the hoses run belong to the drawing, on the smallest paper too.
            for (std::size_t i = 0; i < options.insets.size(); ++i)
                QVERIFY2(!options.insets[i].needed ||
                             std::any_of(sheets[0].insets.begin(), sheets[0].insets.end(),
                                         [i](const sheet::PlacedInset& one) { return one.inset == i; }),
                         qPrintable(QStringLiteral("paper %1, %2: inset %3 is not on sheet 1")
                                        .arg(int(options.paper))
                                        .arg(options.orientation == QPageLayout::Portrait ? u'P' : u'L')
                                        .arg(i)));
        }
    }

    /// On large paper a usual job needs one sheet.
    void onLargePaperAllIsOnTheFirstSheet()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("sound-bus.siphon"));
        const Analysis analysis = proved(sketch);
        using sheet::Paper;
        for (const Paper paper : {Paper::a3, Paper::tabloid})
            for (const auto orientation : {QPageLayout::Landscape, QPageLayout::Portrait})
                QVERIFY2(laid(sketch, analysis, test::on(paper, orientation)).notes_sheets == 0,
                         qPrintable(QStringLiteral("paper %1 %2").arg(int(paper)).arg(int(orientation))));
    }

    /// A short straight has no room for its slope on the drawing, nor small paper for the hoses laid flat.
    void theRunProfileTellsEverySlope_data() { test::addSampleRows(); }

    void theRunProfileTellsEverySlope()
    {
        QFETCH(QString, sample);
        const Sketch sketch = test::sampleNamed(sample);
        const Analysis analysis = analyse(sketch);
        sheet::Options options;
        const std::vector<sheet::FurtherPage> pages = paper::pagesOf(sketch, analysis, {}, options);
        const QString said = test::wordsOn({pages.front()}, QLatin1Char(' ')).remove(QLatin1Char(' '));
        for (const ResolvedHose& hose : analysis.layout.hoses) {
            const paper::HoseStrip strip =
                paper::stripOf(hose, analysis.layout.plumb, sheet::unitsOf(sketch));
            QStringList slopes;
            for (const paper::StripSlope& slope : strip.slopes)
                slopes << slope.text;
            QVERIFY(!slopes.isEmpty());
            const QString all = slopes.join(QLatin1Char(',')).remove(QLatin1Char(' '));
            QVERIFY2(said.contains(all), qPrintable(all));
        }
    }

    void noLineEndsWithinAQuantity_data() { eachStandsOnceAndInNoOnesWay_data(); }

    /// Lines of a text follow each other: a number at the end of one, its fraction, unit or item at the head
    /// of the next.
    void noLineEndsWithinAQuantity()
    {
        QFETCH(QString, sample);
        const Sketch sketch = test::sampleNamed(sample);
        const Analysis analysis = proved(sketch);
        static const QRegularExpression begun(QStringLiteral("([0-9]|[0-9] ft|×)$"));
        static const QRegularExpression rest(
            QStringLiteral("^([0-9]+/[0-9]+( in)?|in|ft|mm|ml|l|l/min|°C|°F|W|V|A|h|kWh|pipe|%)([.,;:)]| (?! "
                           ")|$)")); // two spaces stand behind a letter of a key
        static const QRegularExpression item(QStringLiteral("^\\[[0-9]+\\]$"));
        for (sheet::Options options : test::everyPaper()) {
            for (const sheet::FurtherPage& page : paper::pagesOf(sketch, analysis, {}, options)) {
                test::TextRecorder recorder(
                    (page.layout.fullRect(QPageLayout::Millimeter).size() * 10).toSize());
                QPainter painter(&recorder);
                painter.scale(10, 10);
                page.paint(painter);
                painter.end();
                const std::vector<test::WrittenText>& texts = recorder.texts();
                for (std::size_t i = 1; i < texts.size(); ++i) {
                    const QString& before = texts[i - 1].text;
                    const QRectF& above = texts[i - 1].box;
                    const QRectF& box = texts[i].box;
                    // The numbers of items on the drawing and the letters of the key stand by themselves.
                    const bool below = box.top() > above.top() + 1 &&
                                       box.top() < above.bottom() + 1.5 * above.height() &&
                                       std::abs(box.left() - above.left()) < 20 &&
                                       !before.endsWith(QLatin1Char(']')) && before.size() > 2;
                    const bool parted =
                        (begun.match(before).hasMatch() &&
                         (rest.match(texts[i].text).hasMatch() || before.endsWith(QStringLiteral("×")))) ||
                        item.match(texts[i].text).hasMatch();
                    QVERIFY2(!below || !parted, qPrintable(QStringLiteral("paper %1: \"%2\" / \"%3\"")
                                                               .arg(int(options.paper))
                                                               .arg(before, texts[i].text)));
                }
            }
        }
    }

    void whoHasOnlyPageOneCanCutAndFit()
    {
        const Sketch sketch = test::sampleNamed(QStringLiteral("sound-bus.siphon"));
        const Analysis analysis = proved(sketch);
        sheet::Options options;
        const QString all = test::wordsOn(paper::pagesOf(sketch, analysis, {}, options), QLatin1Char(' '));
        for (const char* said :
             {"Rev.", "What was changed", "Fitted by, date", "Run profile", "clip 200", "valve 70",
              "1/2 pipe", "Adapter [5]", "Hang the heater", "Valves open", "1, drawing: sheets 1 to"})
            QVERIFY2(all.contains(QLatin1String(said)), said);
    }
};

QTEST_MAIN(TestInsets)
#include "test_insets.moc"
