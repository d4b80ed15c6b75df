#include "tests/near.h"
#include "tests/patience.h"

#include "app/panels/quantity_edit.h"
#include "app/warming/chart_view.h"
#include "app/warming/files.h"
#include "app/warming/warm_up_panel.h"

#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

using namespace siphonwright;
using siphonwright::test::patience_ms;
using warming::Curve;

namespace {}

/// The warm-up panel as people use it, on a document of its own that is proven beside the test.
class TestWarmUpPanel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void cleanup();
    void theChartHasTheProofsSeries();
    void aLowChartShowsTemperaturesAloneAndAHighOneFlowAndPowerToo();
    void everyCurveDiffersInItsLineAndNotByColourAlone();
    void pointerAndKeysReadTheSeries();
    void theCsvReadsBackToTheSameNumbers();
    void pictureFilesAreCompleteAndOtherKindsAreRefused();
    void aTypedAmbientChangesTheSketchAndUndoPutsItBack();
    void everyChoiceIsTypedWithItsUnit();
    void anEmptyStartIsTheAirs();
    void whatCannotBeReadChangesNothing();
    void keptCurvesStayUntilTheyAreTakenAway();
    void aMissingFactIsSaidAndLeadsToItsPart();
    void aMissingAmbientLeadsToItsLine();
    void theResultOfTheDrawingBeforeIsMarked();
    void eachHeaterHasItsOwnCurves();

private:
    void openSample(const char* name)
    {
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
    }
    void waitForResult()
    {
        QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && panel_->hasResult(), patience_ms);
    }
    const warming::Result& result() const { return *panel_->chart().result(); }
    template <class T>
    T* child(const char* name) const
    {
        return panel_->findChild<T*>(QString::fromLatin1(name));
    }
    void type(const char* line, const char* text)
    {
        auto* edit = child<panels::QuantityEdit>(line);
        edit->setFocus();
        edit->selectAll();
        QTest::keyClick(edit, Qt::Key_Delete);
        QTest::keyClicks(edit, QLatin1String(text));
        QTest::keyClick(edit, Qt::Key_Return);
    }
    QString resultText() const { return child<QLabel>("warm-up-result")->text(); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<Selection> selection_;
    std::unique_ptr<warming::WarmUpPanel> panel_;
};

void TestWarmUpPanel::init()
{
    document_ = std::make_unique<Document>();
    selection_ = std::make_unique<Selection>();
    panel_ = std::make_unique<warming::WarmUpPanel>(*document_, *selection_);
    panel_->resize(1000, 420);
    panel_->show();
    openSample("sound-bus");
    document_->startProving();
    waitForResult();
}

void TestWarmUpPanel::cleanup()
{
    panel_.reset();
    selection_.reset();
    document_.reset();
}

void TestWarmUpPanel::theChartHasTheProofsSeries()
{
    const WarmUp& run = document_->proof()->warm_up.result;
    QCOMPARE(result().time_h.size(), run.series.size());
    for (std::size_t i = 0; i < run.series.size(); ++i) {
        const LoopSample& at = run.series[i].loops[0];
        QCOMPARE(result().time_h[i], run.series[i].time_s / 3600);
        QCOMPARE(result()[Curve::outlet][i], at.outlet_degC);
        QCOMPARE(result()[Curve::inlet][i], at.inlet_degC);
        QCOMPARE(result()[Curve::return_port][i], at.return_degC);
        QCOMPARE(result()[Curve::hose_outside][i], at.return_surface_degC);
        QCOMPARE(result()[Curve::block][i], run.series[i].block_degC);
        QCOMPARE(result()[Curve::power][i], at.power_W);
        QCOMPARE(result().flow_kg_per_s[i], at.flow_kg_per_s);
    }
    // The flow by volume is that by mass over a density between hot water's and cold glycol's.
    const std::size_t last = run.series.size() - 1;
    const double kg_per_l = result().flow_kg_per_s[last] * 60 / result()[Curve::flow][last];
    QVERIFY2(kg_per_l > 0.95 && kg_per_l < 1.12, qPrintable(QString::number(kg_per_l)));
}

void TestWarmUpPanel::aLowChartShowsTemperaturesAloneAndAHighOneFlowAndPowerToo()
{
    panel_->chart().resize(700, 90);
    QCOMPARE(panel_->chart().chart()->shown().size(), std::size_t(5));
    QVERIFY(panel_->chart().chart()->strip().isEmpty());
    panel_->chart().resize(700, 400);
    QCOMPARE(panel_->chart().chart()->shown().size(), warming::curve_count);
    const warming::Chart chart = *panel_->chart().chart();
    QVERIFY(chart.strip().height() > 60);
    QVERIFY(chart.temperatures().bottom() < chart.strip().top());
    QVERIFY(chart.legendBottom() < chart.temperatures().top());
    // Everything stays inside its plot.
    for (const Curve curve : warming::all_curves)
        for (const double value : result()[curve]) {
            const QRectF& plot = warming::unitOf(curve) == Unit::degC ? chart.temperatures() : chart.strip();
            QVERIFY(chart.y(curve, value) >= plot.top() - 1e-6 &&
                    chart.y(curve, value) <= plot.bottom() + 1e-6);
        }
}

void TestWarmUpPanel::everyCurveDiffersInItsLineAndNotByColourAlone()
{
    const drawing::Palette paper = drawing::Palette::paper();
    for (const Curve a : warming::all_curves)
        for (const Curve b : warming::all_curves) {
            const bool same_plot = warming::unitOf(a) == Unit::degC && warming::unitOf(b) == Unit::degC;
            if (a == b || !same_plot)
                continue;
            const QPen one = warming::penOf(a, paper);
            const QPen other = warming::penOf(b, paper);
            QVERIFY(one.style() != other.style() || one.widthF() > 1.5 * other.widthF() ||
                    other.widthF() > 1.5 * one.widthF());
        }
    QVERIFY(warming::penOf(Curve::flow, paper).widthF() > 1.5 * warming::penOf(Curve::power, paper).widthF());
}

void TestWarmUpPanel::pointerAndKeysReadTheSeries()
{
    warming::ChartView& view = panel_->chart();
    const warming::Chart chart = *view.chart();
    QVERIFY(!view.cursor());
    const QPointF at(chart.x(6), chart.temperatures().center().y());
    QTest::mouseMove(&view, at.toPoint());
    QTRY_VERIFY(view.cursor());
    const std::size_t index = result().nearest(*view.cursor());
    VERIFY_NEAR(*view.cursor(), 6, 24 / chart.temperatures().width());
    const auto says = [&](std::size_t moment) {
        for (const Curve curve : warming::all_curves) {
            const QString text = warming::nameOf(curve) + QLatin1Char(' ') +
                                 QString::fromStdString(format(result()[curve][moment],
                                                               warming::unitOf(curve), UnitSystem::metric));
            if (!view.reading().contains(text))
                return false;
        }
        return true;
    };
    QVERIFY2(says(index), qPrintable(view.reading()));
    view.setFocus();
    QTest::keyClick(&view, Qt::Key_Right);
    QCOMPARE(*view.cursor(), result().time_h[index + 1]);
    QVERIFY(says(index + 1));
    QTest::keyClick(&view, Qt::Key_Left);
    QTest::keyClick(&view, Qt::Key_Left);
    QCOMPARE(*view.cursor(), result().time_h[index - 1]);
    QTest::keyClick(&view, Qt::Key_PageDown);
    VERIFY_NEAR(*view.cursor(), result().time_h[index - 1] + 1, 0.5 / 60);
    QTest::keyClick(&view, Qt::Key_End);
    QCOMPARE(*view.cursor(), result().time_h.back());
    QTest::keyClick(&view, Qt::Key_Right);
    QCOMPARE(*view.cursor(), result().time_h.back());
    QCOMPARE(view.accessibleDescription(), view.reading());
    QTest::keyClick(&view, Qt::Key_Escape);
    QVERIFY(!view.cursor());
}

void TestWarmUpPanel::theCsvReadsBackToTheSameNumbers()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("run.csv"));
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    QCOMPARE(panel_->exportTo(path), QStringList());
    QLocale::setDefault(before);
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QList<QByteArray> lines = file.readAll().split('\n');
    QVERIFY(lines[0].startsWith("time_h,outlet_degC,"));
    QCOMPARE(lines.size(), static_cast<qsizetype>(result().time_h.size()) + 2); // header and the last end
    for (std::size_t i = 0; i < result().time_h.size(); ++i) {
        const QList<QByteArray> cells = lines[static_cast<qsizetype>(i) + 1].trimmed().split(',');
        QCOMPARE(cells.size(), 10);
        const double half = 0.51e-6; // of the last digit written
        VERIFY_NEAR(cells[0].toDouble(), result().time_h[i], half);
        for (std::size_t k = 0; k < warming::curve_count; ++k)
            VERIFY_NEAR(cells[static_cast<qsizetype>(k) + 1].toDouble(), result().values[k][i], half);
        VERIFY_NEAR(cells[8].toDouble(), result().flow_kg_per_s[i], half);
        VERIFY_NEAR(cells[9].toDouble(), result().energy_kWh[i], half);
    }
}

void TestWarmUpPanel::pictureFilesAreCompleteAndOtherKindsAreRefused()
{
    QTemporaryDir folder;
    const QString png = folder.filePath(QStringLiteral("run.png"));
    const QString svg = folder.filePath(QStringLiteral("run.svg"));
    QCOMPARE(panel_->exportTo(png), QStringList());
    QCOMPARE(panel_->exportTo(svg), QStringList());
    const QImage picture(png);
    QCOMPARE(picture.size(), QSize(2000, 1120));
    QSvgRenderer drawing(svg);
    QVERIFY(drawing.isValid());
    QCOMPARE(drawing.viewBoxF(), QRectF(0, 0, 1000, 560));
    QCOMPARE(panel_->exportTo(folder.filePath(QStringLiteral("run.doc"))).size(), 1);
    QCOMPARE(panel_->exportTo(QStringLiteral("/nowhere/run.csv")).size(), 1);
}

void TestWarmUpPanel::aTypedAmbientChangesTheSketchAndUndoPutsItBack()
{
    const Sketch before = document_->sketch();
    const double block = result().block_at_end_degC;
    type("plan-ambient", "-25 C");
    QCOMPARE(*document_->sketch().site.ambient_degC.value, -25.0);
    QCOMPARE(document_->undoStack().count(), 1);
    waitForResult();
    QVERIFY(result().block_at_end_degC < block - 1);
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
    QCOMPARE(*child<panels::QuantityEdit>("plan-ambient")->value(), *before.site.ambient_degC.value);
}

void TestWarmUpPanel::everyChoiceIsTypedWithItsUnit()
{
    type("plan-wind", "18 km/h");
    VERIFY_NEAR(*document_->sketch().site.wind_m_per_s.value, 5, 1e-12); // 18 / 3.6
    type("plan-start", "14 F");
    VERIFY_NEAR(*document_->sketch().plan.start_degC, -10, 1e-12); // (14 - 32) / 1.8
    type("plan-target", "90 F");
    VERIFY_NEAR(document_->sketch().plan.target_degC, 32.222222222222, 1e-9); // (90 - 32) / 1.8
    type("plan-hours", "90 min");
    VERIFY_NEAR(document_->sketch().plan.hours, 1.5, 1e-12);
    QCOMPARE(document_->undoStack().count(), 4);
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && panel_->hasResult() && result().hours == 1.5,
                             patience_ms);
    VERIFY_NEAR(result()[Curve::block].front(), -10, 0.5);
    QVERIFY(resultText().contains(QStringLiteral("32.2 °C not reached")));
}

void TestWarmUpPanel::anEmptyStartIsTheAirs()
{
    type("plan-start", "5 C");
    type("plan-start", "");
    QVERIFY(!document_->sketch().plan.start_degC);
    waitForResult();
    VERIFY_NEAR(result()[Curve::block].front(), *document_->sketch().site.ambient_degC.value, 1e-6);
}

void TestWarmUpPanel::whatCannotBeReadChangesNothing()
{
    const Sketch before = document_->sketch();
    for (const char* line : {"plan-ambient", "plan-wind", "plan-target", "plan-hours"}) {
        type(line, "warm");
        QVERIFY(!child<panels::QuantityEdit>(line)->problem().isEmpty());
    }
    type("plan-hours", "1000 h");
    type("plan-wind", "-3 m/s");
    QCOMPARE(document_->sketch(), before);
    QCOMPARE(document_->undoStack().count(), 0);
}

void TestWarmUpPanel::keptCurvesStayUntilTheyAreTakenAway()
{
    auto* keep = child<QToolButton>("warm-up-keep");
    QTest::mouseClick(keep, Qt::LeftButton);
    QCOMPARE(panel_->kept().size(), std::size_t(1));
    const std::vector<double> block = panel_->kept()[0][Curve::block];
    type("plan-ambient", "-30 C");
    waitForResult();
    QVERIFY(panel_->kept()[0][Curve::block] == block);
    QVERIFY(result()[Curve::block] != block);
    QTest::mouseClick(keep, Qt::LeftButton);
    QTest::mouseClick(keep, Qt::LeftButton);
    QCOMPARE(panel_->kept().size(), warming::most_kept);
    QVERIFY(!keep->isEnabled());
    QCOMPARE(warming::nameOfKept(panel_->kept(), 0), QString::fromStdString(document_->sketch().sheet.title));
    QVERIFY(warming::nameOfKept(panel_->kept(), 1) != warming::nameOfKept(panel_->kept(), 0));
    panel_->drop(0);
    QCOMPARE(panel_->kept().size(), std::size_t(2));
    QVERIFY(panel_->kept()[0][Curve::block] != block);
    QVERIFY(keep->isEnabled());
    panel_->dropAll();
    QVERIFY(panel_->kept().empty());
}

void TestWarmUpPanel::aMissingFactIsSaidAndLeadsToItsPart()
{
    document_->apply(QStringLiteral("forget"), [](Sketch& s) { s.heaters[0].power_W.value.reset(); });
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent(), patience_ms);
    QVERIFY(!panel_->hasResult());
    const QString sentence = panel_->chart().accessibleDescription();
    QVERIFY2(sentence.startsWith(QStringLiteral("No warm-up: the power of")), qPrintable(sentence));
    QTest::mouseClick(&panel_->chart(), Qt::LeftButton, {}, panel_->chart().rect().center());
    QCOMPARE(selection_->part(), (PartRef{PartKind::heater, document_->sketch().heaters[0].id, 0}));
    QVERIFY(!panel_->mayKeep());
    QCOMPARE(panel_->exportTo(QStringLiteral("/nowhere/x.csv")).size(), 1);
}

void TestWarmUpPanel::aMissingAmbientLeadsToItsLine()
{
    type("plan-ambient", "");
    QVERIFY(!document_->sketch().site.ambient_degC.known());
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent(), patience_ms);
    QCOMPARE(panel_->chart().accessibleDescription(),
             QStringLiteral("No warm-up: the ambient temperature is not entered."));
    panel_->chart().setFocus();
    QTest::keyClick(&panel_->chart(), Qt::Key_Return);
    QCOMPARE(panel_->focusWidget(), child<panels::QuantityEdit>("plan-ambient"));
}

void TestWarmUpPanel::theResultOfTheDrawingBeforeIsMarked()
{
    QVERIFY(!resultText().contains(QStringLiteral("as it was")));
    document_->apply(QStringLiteral("move"),
                     [](Sketch& s) { s.heaters[0].position.z -= 20; }); // proven only after the event loop
    QVERIFY(!document_->proofIsCurrent());
    QVERIFY(resultText().startsWith(QStringLiteral("Of the drawing as it was")));
    QVERIFY(panel_->hasResult());
    QVERIFY(!panel_->mayKeep());
    waitForResult();
    QVERIFY(!resultText().contains(QStringLiteral("as it was")));
}

void TestWarmUpPanel::eachHeaterHasItsOwnCurves()
{
    openSample("generator-two-heaters");
    waitForResult();
    auto* heaters = child<QComboBox>("warm-up-heater");
    QCOMPARE(heaters->count(), 2);
    const WarmUp& run = document_->proof()->warm_up.result;
    const std::size_t last = run.series.size() - 1;
    QCOMPARE(result()[Curve::outlet][last], run.series[last].loops[0].outlet_degC);
    heaters->setCurrentIndex(1);
    QCOMPARE(result().heater, document_->sketch().heaters[1].id);
    QCOMPARE(result()[Curve::outlet][last], run.series[last].loops[1].outlet_degC);
}

QTEST_MAIN(TestWarmUpPanel)
#include "test_warm_up_panel.moc"
