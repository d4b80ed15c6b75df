#include "tests/near.h"
#include "tests/sheet/text_recorder.h"
#include "tests/sheet/yard_bus.h"

#include "app/sheet/plan.h"
#include "app/sheet/sheet.h"

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>

using namespace siphonwright;

class TestTiles : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aScaleThatFitsTakesOnePage()
    {
        const Sketch sketch = test::yardBus();
        const Analysis analysis = analyse(sketch);
        sheet::Options options;
        options.scale = 50;
        options = sheet::tiled(options, sketch, analysis);
        QCOMPARE(options.across * options.down, 1);
        QCOMPARE(sheet::scaleDenominator(sketch, analysis, options), 50);
    }

    void aLargerScaleGoesOverSeveralPagesAtTrueScale()
    {
        // 1000 mm long at 1:5 are 200 mm; A4 alone takes 1:20.
        const Sketch sketch = test::yardBus();
        const Analysis analysis = analyse(sketch);
        sheet::Options options;
        options.scale = 5;
        options = sheet::tiled(options, sketch, analysis);
        QVERIFY(options.across * options.down > 1);
        QCOMPARE(sheet::scaleDenominator(sketch, analysis, options), 5);
        const auto pages = sheet::drawingPages(sketch, analysis, options);
        QCOMPARE(pages.size(), std::size_t(options.across * options.down));
        // Joined edge to edge they are the whole: 277 mm by 190 mm of each A4 are printed.
        const QSizeF whole = sheet::pageSize(options);
        VERIFY_NEAR(whole.width(), 277.0 * options.across, 1e-6);
        VERIFY_NEAR(whole.height(), 190.0 * options.down, 1e-6);
        for (const sheet::FurtherPage& page : pages) {
            test::TextRecorder recorder(QSize(2970, 2100));
            QPainter painter(&recorder);
            painter.scale(10, 10);
            page.paint(painter);
            painter.end();
            QVERIFY(std::any_of(recorder.texts().begin(), recorder.texts().end(), [](const auto& text) {
                return text.text.contains(QStringLiteral("Trim at the marks and join"));
            }));
        }
    }

    void aPictureHasTheResolutionAskedFor()
    {
        const QTemporaryDir folder;
        const Sketch sketch = test::yardBus();
        sheet::Options options;
        options.png_dpi = 100;
        const QString path = folder.filePath(QStringLiteral("sheet.png"));
        QCOMPARE(sheet::exportTo(path, sketch, analyse(sketch), options), QStringList());
        // 297 mm by 210 mm at 100 dots per inch.
        QCOMPARE(QImage(path).size(), QSize(1169, 827));
    }

    void aPdfIsArchivalAndSaysWhatItIs()
    {
        const QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
        const Sketch sketch = test::yardBus();
        QCOMPARE(sheet::exportTo(path, sketch, analyse(sketch), {}), QStringList());
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QByteArray pdf = file.readAll();
        QVERIFY(pdf.contains("pdfaid:part"));
        QVERIFY(pdf.contains("OutputIntent"));
        QVERIFY(pdf.contains("Coolant heater, bus 14"));
        QVERIFY(pdf.size() < 500'000);
    }
};

QTEST_MAIN(TestTiles)
#include "test_tiles.moc"
