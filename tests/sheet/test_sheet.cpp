#include "tests/near.h"
#include "tests/random_runs.h"
#include "tests/sheet/on_a3.h"
#include "tests/sheet/text_recorder.h"
#include "tests/sheet/yard_bus.h"

#include "app/drawing/text.h"
#include "app/sheet/plan.h"
#include "app/sheet/sheet.h"

#include "core/sketch/file.h"

#include <QDir>
#include <QImage>
#include <QImageReader>
#include <QPainter>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QTest>

using namespace siphonwright;
using siphonwright::test::onA3;

Q_DECLARE_METATYPE(siphonwright::Sketch)

namespace {

constexpr double per_mm = 20; // pixels of the pictures that are measured: 0.05 mm each

/// Middle of the dark stretch nearest to a point, along a row or a column, mm; NaN if there is none within
/// 3 mm.
double darkMiddle(const QImage& image, QPointF near_mm, bool along_row)
{
    const auto dark = [&](int i) {
        const int x = along_row ? i : int(near_mm.x() * per_mm);
        const int y = along_row ? int(near_mm.y() * per_mm) : i;
        return image.valid(x, y) && qGray(image.pixel(x, y)) < 96;
    };
    const int centre = int((along_row ? near_mm.x() : near_mm.y()) * per_mm);
    for (int off = 0; off <= int(3 * per_mm); ++off) {
        for (const int start : {centre + off, centre - off}) {
            if (!dark(start))
                continue;
            int from = start;
            int to = start;
            while (dark(from - 1))
                --from;
            while (dark(to + 1))
                ++to;
            return (from + to + 1) / 2.0 / per_mm;
        }
    }
    return std::numeric_limits<double>::quiet_NaN();
}

/// The yard's bus has an engine 1000 mm long and 920 mm high; at 1:10 that is 100 mm by 92 mm.
void measureEngine(const QImage& image, const sheet::Plan& plan)
{
    QCOMPARE(plan.denominator, 10);
    const auto onPage = [&](double x, double z) { return plan.origin + QPointF(x, -z) / 10; };
    const double left = darkMiddle(image, onPage(-500, 985), true);
    const double right = darkMiddle(image, onPage(500, 985), true);
    VERIFY_NEAR(right - left, 100.0, 0.1);
    const double top = darkMiddle(image, onPage(0, 1000), false);
    const double bottom = darkMiddle(image, onPage(0, 80), false);
    VERIFY_NEAR(bottom - top, 92.0, 0.1);
    VERIFY_NEAR(left, onPage(-500, 0).x(), 0.1);
    VERIFY_NEAR(top, onPage(0, 1000).y(), 0.1);
    // The square to measure a print by: 25 mm in either way, whatever the drawing's scale.
    const double side = sheet::measureMeSide(UnitSystem::metric);
    QCOMPARE(side, 25.0);
    const QPointF corner(plan.foot.right() - 4 - side, plan.foot.center().y() - side / 2);
    const double square_left = darkMiddle(image, corner + QPointF(0, 2), true);
    const double square_right = darkMiddle(image, corner + QPointF(side, 2), true);
    VERIFY_NEAR(square_right - square_left, 25.0, 0.1);
    const double square_top = darkMiddle(image, corner + QPointF(2, 0), false);
    const double square_bottom = darkMiddle(image, corner + QPointF(2, side), false);
    VERIFY_NEAR(square_bottom - square_top, 25.0, 0.1);
}

std::vector<std::pair<QString, Sketch>> sketches()
{
    Sketch wordy = test::yardBus(120);
    const std::string long_words =
        "A very long name that somebody once typed because nobody told them how small the field on paper is";
    wordy.sheet.title = long_words + ' ' + long_words;
    wordy.sheet.legal_owner = long_words;
    wordy.sheet.revision = long_words;
    wordy.ports[0].name = long_words;
    wordy.heaters[0].name = long_words;
    wordy.engine->name = std::string(200, 'W');
    wordy.units = UnitChoice::inch;
    Sketch crowded = test::yardBus(120);
    for (int i = 0; i < 4; ++i) {
        Port port = crowded.ports[2];
        port.id = "port-1" + std::to_string(i);
        port.position.z += 12.0 * (i + 1);
        crowded.ports.push_back(port);
        Shared<Hose> hose = crowded.hoses[1];
        hose.edit([&](Hose& h) {
            h.id = "hose-1" + std::to_string(i);
            h.points[0].at.x -= 30.0 * (i + 1);
        });
        crowded.hoses.push_back(hose);
    }
    Sketch tilted = test::yardBus();
    tilted.engine->mount_angle_deg = 4;
    std::vector<std::pair<QString, Sketch>> all = {{QStringLiteral("empty"), Sketch()},
                                                   {QStringLiteral("bus"), test::yardBus()},
                                                   {QStringLiteral("tilted bus"), tilted},
                                                   {QStringLiteral("long words"), wordy},
                                                   {QStringLiteral("many findings"), crowded}};
    const QDir samples(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples"));
    for (const QString& name : samples.entryList({QStringLiteral("*.siphon")}, QDir::Files, QDir::Name)) {
        QFile file(samples.filePath(name));
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const auto read = readSketch(file.readAll().toStdString());
        if (const Sketch* sketch = std::get_if<Sketch>(&read))
            all.emplace_back(name, *sketch);
    }
    return all;
}

constexpr std::array papers = {sheet::Paper::a4, sheet::Paper::a3, sheet::Paper::letter,
                               sheet::Paper::tabloid};

} // namespace

class TestSheet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aThousandMillimetresAreAHundredOnThePdf();
    void aThousandMillimetresAreAHundredOnTheSvg();
    void aThousandMillimetresAreAHundredWhenPainted();
    void thePdfHasThePapersSizeAndItsFonts_data();
    void thePdfHasThePapersSizeAndItsFonts();
    void textStaysOnThePageAndOffOtherText_data();
    void textStaysOnThePageAndOffOtherText();
    void whatDoesNotFitIsCounted();
    void theScaleIsTheLargestThatFits();
    void theSheetSaysWhatTheSketchSays();
    void theSheetSaysWhatIsJudgedOtherwiseThanTheRuleBook();
    void capitalsHaveTheHeightAskedFor();
    void wrappedLinesAreNoWiderThanAsked();
    void aNumberStaysWithItsUnit();
    void linesOfATitleAreOfLikeLength();
    void anUnknownEndingIsRefused();
    void aFolderThatIsNotThereIsReported();
};

void TestSheet::aThousandMillimetresAreAHundredOnThePdf()
{
    const QString reader = QStandardPaths::findExecutable(QStringLiteral("pdftocairo"));
    if (reader.isEmpty())
        QSKIP("pdftocairo (Debian: poppler-utils) is not installed");
    const QTemporaryDir folder;
    const Sketch sketch = test::yardBus();
    const Analysis analysis = analyse(sketch);
    const QString pdf = folder.filePath(QStringLiteral("sheet.pdf"));
    QCOMPARE(sheet::exportTo(pdf, sketch, analysis, onA3()), QStringList());
    // The page at 508 dots per inch, 20 per millimetre, is larger than what Qt reads unasked.
    QImageReader::setAllocationLimit(0);
    QCOMPARE(QProcess::execute(reader,
                               {QStringLiteral("-png"), QStringLiteral("-singlefile"), QStringLiteral("-r"),
                                QStringLiteral("508"), pdf, folder.filePath(QStringLiteral("page"))}),
             0);
    measureEngine(QImage(folder.filePath(QStringLiteral("page.png"))),
                  sheet::planOf(sketch, analysis, onA3()));
}

void TestSheet::aThousandMillimetresAreAHundredOnTheSvg()
{
    const QTemporaryDir folder;
    const Sketch sketch = test::yardBus();
    const Analysis analysis = analyse(sketch);
    const QString svg = folder.filePath(QStringLiteral("sheet.svg"));
    QCOMPARE(sheet::exportTo(svg, sketch, analysis, onA3()), QStringList());
    QFile file(svg);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray head = file.read(600);
    QVERIFY2(head.contains("width=\"420mm\"") && head.contains("height=\"297mm\""), head.constData());
    const QByteArray all = head + file.readAll();
    QCOMPARE(all.count("@font-face"), 2);
    QCOMPARE(all.count("textLength="), all.count("<text "));
    QSvgRenderer renderer(svg);
    QImage image(int(420 * per_mm), int(297 * per_mm), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderer.render(&painter);
    painter.end();
    measureEngine(image, sheet::planOf(sketch, analysis, onA3()));
}

void TestSheet::aThousandMillimetresAreAHundredWhenPainted()
{
    const Sketch sketch = test::yardBus();
    const Analysis analysis = analyse(sketch);
    QImage image(int(420 * per_mm), int(297 * per_mm), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(per_mm, per_mm);
    sheet::paintPage(painter, sketch, analysis, onA3());
    painter.end();
    measureEngine(image, sheet::planOf(sketch, analysis, onA3()));
}

void TestSheet::thePdfHasThePapersSizeAndItsFonts_data()
{
    QTest::addColumn<int>("paper");
    QTest::addColumn<bool>("landscape");
    QTest::addColumn<double>("width_pt");
    QTest::addColumn<double>("height_pt");
    // ISO 216 sizes in points of 1/72 in: 297 mm is 841.9, 210 mm 595.3; Letter and Tabloid in whole inches.
    QTest::newRow("A4 landscape") << 0 << true << 841.9 << 595.3;
    QTest::newRow("A4 portrait") << 0 << false << 595.3 << 841.9;
    QTest::newRow("A3 landscape") << 1 << true << 1190.6 << 841.9;
    QTest::newRow("Letter landscape") << 2 << true << 792.0 << 612.0;
    QTest::newRow("Tabloid portrait") << 3 << false << 792.0 << 1224.0;
}

void TestSheet::thePdfHasThePapersSizeAndItsFonts()
{
    QFETCH(int, paper);
    QFETCH(bool, landscape);
    QFETCH(double, width_pt);
    QFETCH(double, height_pt);
    sheet::Options options;
    options.paper = papers[std::size_t(paper)];
    options.orientation = landscape ? QPageLayout::Landscape : QPageLayout::Portrait;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
    const Sketch sketch = test::yardBus();
    QCOMPARE(sheet::exportTo(path, sketch, analyse(sketch), options), QStringList());
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray pdf = file.readAll();
    const QRegularExpression box(QStringLiteral(R"(/MediaBox \[\s*0 0 ([\d.]+) ([\d.]+)\s*\])"));
    const QRegularExpressionMatch match = box.match(QString::fromLatin1(pdf));
    QVERIFY(match.hasMatch());
    VERIFY_NEAR(match.captured(1).toDouble(), width_pt, 0.6);
    VERIFY_NEAR(match.captured(2).toDouble(), height_pt, 0.6);
    QVERIFY(pdf.contains("/FontFile"));
    const int pages = sheet::followedBy(options, sketch, analyse(sketch), {}).sheets;
    QCOMPARE(QString::fromLatin1(pdf).count(QStringLiteral("/Type /Page\n")), pages);
}

void TestSheet::textStaysOnThePageAndOffOtherText_data()
{
    QTest::addColumn<Sketch>("sketch");
    QTest::addColumn<int>("paper");
    QTest::addColumn<bool>("landscape");
    const char* const names[] = {"A4", "A3", "Letter", "Tabloid"};
    int drawings = 0;
    for (const auto& [name, sketch] : sketches()) {
        const int own_paper = drawings++ % 4;
        for (int paper = 0; paper < 4; ++paper) {
            if (test::fewRuns() && paper != own_paper)
                continue;
            for (const bool landscape : {true, false}) {
                if (test::fewRuns() && landscape != (drawings / 4 % 2 == 0))
                    continue;
                QTest::addRow("%s on %s %s", qPrintable(name), names[paper],
                              landscape ? "landscape" : "portrait")
                    << sketch << paper << landscape;
            }
        }
    }
}

void TestSheet::textStaysOnThePageAndOffOtherText()
{
    QFETCH(Sketch, sketch);
    QFETCH(int, paper);
    QFETCH(bool, landscape);
    sheet::Options options;
    options.paper = papers[std::size_t(paper)];
    options.orientation = landscape ? QPageLayout::Landscape : QPageLayout::Portrait;
    const Analysis analysis = analyse(sketch);
    const QSizeF page = sheet::pageSize(options);
    test::TextRecorder recorder((page * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    sheet::paintPage(painter, sketch, analysis, options);
    painter.end();
    QVERIFY(recorder.texts().size() > 20);
    const sheet::Plan plan = sheet::planOf(sketch, analysis, options);
    const QRectF allowed(plan.frame.topLeft() * 10, plan.frame.size() * 10);
    const QRectF border(plan.border.topLeft() * 10, plan.border.size() * 10);
    const auto& texts = recorder.texts();
    for (std::size_t i = 0; i < texts.size(); ++i) {
        // The names of zones stand in the border round the frame, all else in the frame.
        const bool zone = texts[i].text.size() <= 2 && !allowed.intersects(texts[i].box);
        QVERIFY2((zone ? border : allowed).contains(texts[i].box), qPrintable(texts[i].text));
        for (std::size_t k = 0; k < i; ++k)
            QVERIFY2(!texts[i].box.intersects(texts[k].box) || !texts[i].area.intersects(texts[k].area),
                     qPrintable(QStringLiteral("%1 | %2 at %3, %4 mm")
                                    .arg(texts[i].text, texts[k].text)
                                    .arg(texts[i].box.center().x() / 10)
                                    .arg(texts[i].box.center().y() / 10)));
    }
}

void TestSheet::whatDoesNotFitIsCounted()
{
    Sketch sketch;
    for (const auto& [name, one] : sketches()) {
        if (name == QLatin1String("many findings"))
            sketch = one;
    }
    const Analysis analysis = analyse(sketch);
    const sheet::Options options;
    test::TextRecorder recorder((sheet::pageSize(options) * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    sheet::paintPage(painter, sketch, analysis, options);
    painter.end();
    qsizetype listed = 0;
    qsizetype said_more = 0;
    const QRegularExpression more(QStringLiteral("^and (\\d+) more$"));
    const QRegularExpression finding(QStringLiteral("^(Stop|Caution|Advice): "));
    for (const test::WrittenText& text : recorder.texts()) {
        listed += finding.match(text.text).hasMatch();
        // Findings stand first.
        if (const auto match = more.match(text.text); match.hasMatch() && said_more == 0)
            said_more = match.captured(1).toInt();
    }
    QVERIFY(listed >= 3);
    QVERIFY(said_more > 0);
    QCOMPARE(std::size_t(listed + said_more), analysis.findings.size());
}

void TestSheet::theScaleIsTheLargestThatFits()
{
    const Sketch sketch = test::yardBus();
    const Analysis analysis = analyse(sketch);
    // 1.7 m from ground to filler cap: 170 mm at 1:10 stand on A3, but not over the title block of A4.
    QCOMPARE(sheet::scaleDenominator(sketch, analysis, onA3()), 10);
    QCOMPARE(sheet::scaleDenominator(sketch, analysis, sheet::Options()), 20);
}

void TestSheet::theSheetSaysWhatTheSketchSays()
{
    const Sketch sketch = test::yardBus();
    const sheet::Options options = onA3();
    test::TextRecorder recorder((sheet::pageSize(options) * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    sheet::paintPage(painter, sketch, analyse(sketch), options);
    painter.end();
    QString all;
    for (const test::WrittenText& text : recorder.texts())
        all += text.text + QLatin1Char('\n');
    // Jacket 330 to 860 mm; heater top -20 + 300 / 2 = 130 mm, so 200 mm under the jacket.
    for (const char* said :
         {"Coolant heater, bus 14", "SW-0014", "1:10", "seen from the engine's left side", "Front",
          "Jacket highest  860 mm", "Jacket lowest  330 mm", "Tank heater 1.5 kW, top  130 mm", "Drop 200 mm",
          "Level cold minimum  1120 mm", "Drain port  360 mm", "Cautions", "Measure me"})
        QVERIFY2(all.contains(QString::fromLatin1(said)), said);
}

void TestSheet::theSheetSaysWhatIsJudgedOtherwiseThanTheRuleBook()
{
    Sketch sketch = test::yardBus();
    LimitChange off;
    off.rule = "hose-long";
    off.off = true;
    off.reason = "no shorter way round the axle";
    LimitChange changed;
    changed.rule = "heater-drop";
    changed.caution = 100;
    changed.reason = "the heater's manual, page 7";
    sketch.limits = {off, changed};
    const sheet::Options options = onA3();
    test::TextRecorder recorder((sheet::pageSize(options) * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    sheet::paintPage(painter, sketch, analyse(sketch), options);
    painter.end();
    QString all;
    for (const test::WrittenText& text : recorder.texts())
        all += text.text + QLatin1Char(' ');
    for (const char* said :
         {"Not judged by choice: Hose longer than it needs to be (no shorter way round the axle).",
          "caution under 100 mm instead of 152.4 mm (the heater's manual, page 7)."})
        QVERIFY2(all.contains(QString::fromLatin1(said)), said);
}

void TestSheet::capitalsHaveTheHeightAskedFor()
{
    QImage image(600, 300, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(2, 2);
    drawing::Style style;
    style.scale = 2;
    style.lettering_mm = 100;
    drawing::paintText(painter, style, {20, 140}, QStringLiteral("H"), drawing::Anchor::left, Qt::black);
    painter.end();
    int top = -1;
    int bottom = -1;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (qGray(image.pixel(x, y)) < 128) {
                top = top < 0 ? y : top;
                bottom = y;
            }
        }
    }
    VERIFY_NEAR(bottom - top + 1, 100, 1.5);
    VERIFY_NEAR(bottom + 1, 280, 1.5);
}

void TestSheet::wrappedLinesAreNoWiderThanAsked()
{
    const QString text =
        QStringLiteral("Return hose humps 174 mm above its sill: ") + QString(80, QLatin1Char('m'));
    const QStringList lines = drawing::wrapped(text, 40, 2.5);
    QVERIFY(lines.size() > 3);
    for (const QString& line : lines)
        QVERIFY2(drawing::textWidth(line, 2.5) <= 40, qPrintable(line));
    QCOMPARE(lines.join(QString()).remove(QLatin1Char(' ')), QString(text).remove(QLatin1Char(' ')));
}

void TestSheet::aNumberStaysWithItsUnit()
{
    const QString text =
        QStringLiteral("Coolant takes 14.9 qt, the heater 4000 W at 480 V, flow 0.88 gal/min, cut 2 ft 5 3/4 "
                       "in from 18 1/2 in, 3/4 pipe in Elbow [6], loss × 1.");
    for (double width_mm = 28; width_mm < 60; width_mm += 0.5) {
        const QStringList lines = drawing::wrapped(text, width_mm, 2.5);
        const QString laid = lines.join(QLatin1Char('\n'));
        for (const char* kept : {"14.9 qt,", "4000 W", "480 V,", "0.88 gal/min,", "2 ft 5 3/4 in",
                                 "18 1/2 in,", "3/4 pipe", "Elbow [6]", "× 1."})
            QVERIFY2(laid.contains(QString::fromUtf8(kept)), qPrintable(laid));
    }
}

void TestSheet::linesOfATitleAreOfLikeLength()
{
    const QString text = QStringLiteral("Valves open before turning on");
    const double all_but_on = drawing::textWidth(QStringLiteral("Valves open before turning"), 2.5);
    QCOMPARE(drawing::wrapped(text, all_but_on, 2.5).last(), QStringLiteral("on"));
    QCOMPARE(drawing::wrappedEvenly(text, all_but_on, 2.5, drawing::Weight::regular),
             QStringList({QStringLiteral("Valves open"), QStringLiteral("before turning on")}));
    QCOMPARE(drawing::wrappedEvenly(text, 200, 2.5, drawing::Weight::regular), QStringList(text));
}

void TestSheet::anUnknownEndingIsRefused()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("sheet.doc"));
    QCOMPARE(sheet::exportTo(path, Sketch(), analyse(Sketch()), {}).size(), 1);
    QVERIFY(!QFile::exists(path));
}

void TestSheet::aFolderThatIsNotThereIsReported()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("nowhere/sheet.pdf"));
    const QStringList problems = sheet::exportTo(path, Sketch(), analyse(Sketch()), {});
    QCOMPARE(problems.size(), 1);
    QVERIFY(problems.first().contains(path));
}

QTEST_MAIN(TestSheet)
#include "test_sheet.moc"
