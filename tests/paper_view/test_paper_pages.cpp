#include "tests/sheet/text_recorder.h"

#include "app/paper/pages.h"

#include "core/paperwork/price_list.h"
#include "core/sketch/file.h"

#include <QFile>
#include <QPainter>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

using namespace siphonwright;
using namespace siphonwright::paper;

namespace {

constexpr double per_mm = 20;

QByteArray contents(const QString& path)
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/") + path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

/// A job with everything entered.
Sketch fullJob(const char* name)
{
    auto read =
        readSketch(contents(QStringLiteral("samples/%1.siphon").arg(QLatin1String(name))).toStdString());
    Sketch sketch = std::get<Sketch>(std::move(read));
    Quote quote;
    quote.number = "E-2024-017";
    quote.revision = "B";
    quote.date = "2024-03-01";
    quote.company = "Invented Heater Workshop\n1 Yard Lane\nSomewhere";
    quote.customer = "Invented Bus Yard, attention of the foreman\n7 Depot Road\nElsewhere";
    quote.exclusions = "The outlet in the bay.\nRepair of what is found worn.";
    quote.mark_up_thousandths = 25'000;
    quote.tax_thousandths = 8875;
    quote.labour_rate_minor = 9500;
    quote.travel_minor = 6000;
    quote.consumables_minor = 1500;
    quote.disposal_minor = 2500;
    quote.vehicles = 3;
    quote.rolls = {{std::nullopt, 15'000}, {std::nullopt, 5000}};
    Alternate smaller;
    smaller.name = "Smaller heater";
    smaller.power_W = 1000;
    Alternate larger;
    larger.name = "Larger heater of another make-up, with a long name to be wrapped";
    larger.power_W = 2000;
    larger.price_minor = 42'800;
    quote.alternates = {smaller, larger};
    sketch.quote = Shared<Quote>(quote);
    const auto list = readPriceList(contents(QStringLiteral("samples/prices-invented.csv")).toStdString());
    takePrices(sketch, std::get<PriceListFile>(list), "Invented prices");
    return sketch;
}

std::vector<test::WrittenText> textsOn(const Pages& pages, int page)
{
    test::TextRecorder recorder(QSize(6000, 6000));
    QPainter painter(&recorder);
    painter.scale(per_mm, per_mm);
    pages.paint(painter, page);
    painter.end();
    return recorder.texts();
}

QString allText(const Pages& pages)
{
    QStringList all;
    for (int page = 0; page < pages.count(); ++page)
        for (const test::WrittenText& written : textsOn(pages, page))
            all << written.text;
    return all.join(QLatin1Char('\n'));
}

} // namespace

class TestPaperPages : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void textStaysOnThePageAndOffOtherText_data();
    void textStaysOnThePageAndOffOtherText();
    void theCustomerReadsNoListPriceAndNoMarkUp();
    void printedLinesAddUpToThePrintedTotal();
    void anIncompleteEstimateSaysSo();
    void thePartsListHasEveryItemAndTheCutPlan();
    void aLongListRunsOverPages();
    void pdfHasItsTextAndItsSize();
};

void TestPaperPages::textStaysOnThePageAndOffOtherText_data()
{
    QTest::addColumn<QByteArray>("sample");
    QTest::addColumn<int>("kind");
    QTest::addColumn<bool>("letter");
    QTest::addColumn<bool>("inch");
    for (const char* sample : {"sound-bus", "generator-two-heaters", "vee-crossing"})
        for (int kind = 0; kind < 3; ++kind)
            for (const bool letter : {false, true})
                QTest::addRow("%s, document %d, %s", sample, kind, letter ? "Letter" : "A4")
                    << QByteArray(sample) << kind << letter << letter;
}

void TestPaperPages::textStaysOnThePageAndOffOtherText()
{
    QFETCH(QByteArray, sample);
    QFETCH(int, kind);
    QFETCH(bool, letter);
    QFETCH(bool, inch);
    Sketch sketch = fullJob(sample.constData());
    sketch.units = inch ? UnitChoice::inch : UnitChoice::metric;
    const Pages pages(sketch, static_cast<Kind>(kind), letter ? sheet::Paper::letter : sheet::Paper::a4);
    const QSizeF size = letter ? QSizeF(215.9, 279.4) : QSizeF(210, 297);
    const QRectF room(Flow::left_mm * per_mm, 0, (size.width() - Flow::left_mm - Flow::right_mm) * per_mm,
                      (size.height() - 5) * per_mm);
    for (int page = 0; page < pages.count(); ++page) {
        const auto texts = textsOn(pages, page);
        QVERIFY(!texts.empty());
        for (std::size_t i = 0; i < texts.size(); ++i) {
            QVERIFY2(room.adjusted(-2, -2, 2, 2).contains(texts[i].box), qPrintable(texts[i].text));
            for (std::size_t k = 0; k < i; ++k)
                QVERIFY2(!texts[i].box.intersects(texts[k].box),
                         qPrintable(texts[i].text + QStringLiteral(" lies on ") + texts[k].text));
        }
    }
}

void TestPaperPages::theCustomerReadsNoListPriceAndNoMarkUp()
{
    const Sketch sketch = fullJob("sound-bus");
    const QString customer = allText(Pages(sketch, Kind::for_customer, sheet::Paper::a4));
    for (const char* word : {"ark-up", "ist price", "t list", "own estimate", "389.00"})
        QVERIFY2(!customer.contains(QLatin1String(word)), word);
    QVERIFY(customer.contains(QStringLiteral("486.25"))); // 389.00 with 25 %
    const QString internal = allText(Pages(sketch, Kind::internal, sheet::Paper::a4));
    for (const char* word : {"Mark-up of 25 %", "389.00", "486.25", "own estimate", "Invented prices"})
        QVERIFY2(internal.contains(QLatin1String(word)), word);
}

void TestPaperPages::printedLinesAddUpToThePrintedTotal()
{
    const Sketch sketch = fullJob("sound-bus");
    const Pages pages(sketch, Kind::for_customer, sheet::Paper::a4);
    // Amounts of lines stand at the right edge of their column; sums carry their currency.
    std::int64_t lines = 0;
    std::int64_t subtotal = -1;
    const QRegularExpression plain(QStringLiteral("^[0-9\u2009]+\\.[0-9]{2}$"));
    const double edge = (210 - Flow::right_mm - 1) * per_mm;
    QString before;
    for (int page = 0; page < pages.count(); ++page)
        for (const test::WrittenText& written : textsOn(pages, page)) {
            QString digits = written.text;
            digits.remove(QChar(0x2009)).remove(QStringLiteral("\u00A0USD")).remove(QLatin1Char('.'));
            if (before == QStringLiteral("Subtotal") && subtotal < 0 &&
                written.text.contains(QStringLiteral("USD")))
                subtotal = digits.toLongLong();
            if (subtotal < 0 && plain.match(written.text).hasMatch() &&
                std::abs(written.box.right() - edge) < 0.5 * per_mm)
                lines += digits.toLongLong();
            before = written.text;
        }
    QVERIFY(lines > 0);
    QCOMPARE(lines, subtotal);
}

void TestPaperPages::anIncompleteEstimateSaysSo()
{
    Sketch sketch = fullJob("sound-bus");
    QVERIFY(!allText(Pages(sketch, Kind::for_customer, sheet::Paper::a4))
                 .contains(QStringLiteral("Not in the total")));
    sketch.quote->edit([](Quote& quote) {
        std::erase_if(quote.prices.items, [](const PricedItem& item) { return item.item == "clamp"; });
    });
    const QString text = allText(Pages(sketch, Kind::for_customer, sheet::Paper::a4));
    QVERIFY(text.contains(QStringLiteral("Total of what is priced, incomplete")));
    QVERIFY(text.contains(QStringLiteral("Hose clamp: not priced.")));
}

void TestPaperPages::thePartsListHasEveryItemAndTheCutPlan()
{
    const Sketch sketch = fullJob("sound-bus");
    const QString text = allText(Pages(sketch, Kind::parts_list, sheet::Paper::a4));
    for (const PartRow& row : paperworkOf(sketch).parts.rows)
        QVERIFY2(text.contains(words(nameOf(row.kind))), nameOf(row.kind).data());
    QVERIFY(text.contains(QStringLiteral("Hose cuts, all 3 vehicles")));
    QVERIFY(text.contains(QStringLiteral("left over")));
    QVERIFY(!text.contains(QStringLiteral("USD"))); // no prices on the shop's list
}

void TestPaperPages::aLongListRunsOverPages()
{
    Sketch sketch = fullJob("sound-bus");
    const int before = Pages(sketch, Kind::for_customer, sheet::Paper::a4).count();
    sketch.quote->edit([](Quote& quote) {
        for (int i = 0; i < 120; ++i)
            quote.labour.push_back({"own-" + std::to_string(i), "Task " + std::to_string(i), 100, 50, true});
    });
    const Pages pages(sketch, Kind::for_customer, sheet::Paper::a4);
    QVERIFY(pages.count() > before + 1);
    for (int page = 0; page < pages.count(); ++page) {
        const auto texts = textsOn(pages, page);
        const QString wanted = QStringLiteral("Page %1 of %2").arg(page + 1).arg(pages.count());
        QVERIFY(std::any_of(texts.begin(), texts.end(),
                            [&](const test::WrittenText& written) { return written.text == wanted; }));
        // Each page after the first says what it belongs to.
        const QString job = QString::fromStdString(sketch.sheet.identification_number);
        QVERIFY(!job.isEmpty());
        QVERIFY(page == 0 || std::any_of(texts.begin(), texts.end(), [&](const test::WrittenText& written) {
                    return written.text.contains(job);
                }));
    }
    const QString text = allText(pages);
    for (int i = 0; i < 120; ++i)
        QVERIFY(text.contains(QStringLiteral("Task %1").arg(i)));
}

void TestPaperPages::pdfHasItsTextAndItsSize()
{
    const QString pdftotext = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
    const QString pdfinfo = QStandardPaths::findExecutable(QStringLiteral("pdfinfo"));
    if (pdftotext.isEmpty() || pdfinfo.isEmpty())
        QSKIP("poppler-utils is not installed");
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("estimate.pdf"));
    const Pages pages(fullJob("sound-bus"), Kind::internal, sheet::Paper::letter);
    QCOMPARE(exportTo(path, pages), QStringList());
    QProcess run;
    run.start(pdftotext, {QStringLiteral("-layout"), path, QStringLiteral("-")});
    QVERIFY(run.waitForFinished());
    // Text that can be searched and selected, not pictures of it.
    const QString text = QString::fromUtf8(run.readAllStandardOutput());
    QVERIFY(text.contains(QStringLiteral("Estimate, internal")));
    QVERIFY(text.contains(QStringLiteral("Isolation valve")));
    run.start(pdfinfo, {path});
    QVERIFY(run.waitForFinished());
    const QString info = QString::fromUtf8(run.readAllStandardOutput());
    QVERIFY2(info.contains(QRegularExpression(QStringLiteral("Page size:\\s+612 x 792 pts"))),
             qPrintable(info));
    QVERIFY(info.contains(QRegularExpression(QStringLiteral("Pages:\\s+%1").arg(pages.count()))));
    QVERIFY(!exportTo(folder.filePath(QStringLiteral("no/such/folder.pdf")), pages).isEmpty());
}

QTEST_MAIN(TestPaperPages)
#include "test_paper_pages.moc"
