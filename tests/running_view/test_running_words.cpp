#include "tests/near.h"
#include "tests/running_view/warm_loop.h"
#include "tests/sheet/text_recorder.h"
#include "tests/sheet/yard_bus.h"

#include "app/panels/details_panel.h"
#include "app/panels/running_text.h"
#include "app/sheet/plan.h"
#include "app/sheet/words.h"

#include "core/running/loop_figures.h"

#include <QLabel>
#include <QPainter>
#include <QTest>

using namespace siphonwright;
using namespace siphonwright::test;

namespace {

QString joined(const sheet::Section& section)
{
    QStringList lines{section.heading};
    for (const sheet::Item& item : section.items)
        lines << item.text;
    return lines.join(QLatin1Char('\n'));
}

} // namespace

/// What details and sheet say of how a loop runs.
class TestRunningWords : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void theDetailsOfAHeaterSayHowItRuns();
    void theDetailsSayWhatIsMissing();
    void theDetailsOfAnotherPartSayNothingOfIt();
    void aShutValveIsSaidInTheDetails();
    void theSheetStatesResultsWithTheirBands();
    void theSheetStatesChangedAssumptionsWithTheirReasons();
    void theSheetHasNoResultsWhereNothingRuns();
    void theProvedSheetKeepsItsTextApart_data();
    void theProvedSheetKeepsItsTextApart();
};

void TestRunningWords::theDetailsOfAHeaterSayHowItRuns()
{
    Document document;
    Selection selection;
    document.reset(warmLoop());
    panels::DetailsPanel panel(document, selection);
    panel.show();
    selection.select({PartKind::heater, "heater-1", 0});
    auto* label = panel.findChild<QLabel*>(QStringLiteral("details-running"));
    QVERIFY(label && label->isVisible());
    for (const char* said : {"Circulates, with the block at 40 °C.", "Flow ", " l/min, in at ", " Pa)",
                             "of head drives", "Largest losses: "})
        QVERIFY2(label->text().contains(QString::fromUtf8(said)), qPrintable(label->text()));
    // Live: a change of the drawing shows at once.
    const QString before = label->text();
    document.apply(QStringLiteral("power"), [](Sketch& s) { s.heaters[0].power_W.value = 750; });
    QVERIFY(panel.findChild<QLabel*>(QStringLiteral("details-running"))->text() != before);
}

void TestRunningWords::theDetailsSayWhatIsMissing()
{
    Sketch sketch = warmLoop();
    sketch.heaters[0].power_W.value.reset();
    const QStringList lines = panels::runningText(sketch, analyse(sketch), "heater-1");
    QCOMPARE(lines.size(), 1);
    QVERIFY2(lines[0].contains(QStringLiteral("the power of")), qPrintable(lines[0]));
}

void TestRunningWords::theDetailsOfAnotherPartSayNothingOfIt()
{
    Document document;
    Selection selection;
    document.reset(warmLoop());
    panels::DetailsPanel panel(document, selection);
    panel.show();
    selection.select({PartKind::port, "port-1", 0});
    const auto labels = panel.findChildren<QLabel*>(QStringLiteral("details-running"));
    for (const QLabel* label : labels)
        QVERIFY(!label->isVisible());
}

void TestRunningWords::aShutValveIsSaidInTheDetails()
{
    Sketch sketch = warmLoop();
    Hose shut = *sketch.hoses[supply_hose];
    shut.parts[0].open = false;
    sketch.hoses[supply_hose] = Shared<Hose>(shut);
    const QStringList lines = panels::runningText(sketch, analyse(sketch), "heater-1");
    QVERIFY2(lines.at(0).startsWith(QStringLiteral("A valve is shut, ")), qPrintable(lines.at(0)));
    QVERIFY(lines.filter(QStringLiteral("Flow ")).isEmpty());
}

void TestRunningWords::theSheetStatesResultsWithTheirBands()
{
    const Sketch sketch = warmLoop();
    Analysis analysis = proved(sketch);
    HeaterBands bands;
    bands.heater = "heater-1";
    ResultBand peak;
    peak.low = 60.4;
    peak.high = 75.2;
    peak.drivers = {Assumed::hose_end_loss, Assumed::viscosity};
    bands.results[std::size_t(Banded::peak_outlet_degC)] = peak;
    // Half to twice the flow: by volume half and twice as well.
    const Circulation& found = analysis.running.loops.at(0).circulation;
    ResultBand flow;
    flow.low = found.flow_kg_per_s / 2;
    flow.high = found.flow_kg_per_s * 2;
    bands.results[std::size_t(Banded::flow_kg_per_s)] = flow;
    const auto volume = [&](double times) {
        const double l_per_min = std::round(flowByVolume_l_per_min(found) * times * 100) / 100;
        return QString::fromStdString(format(l_per_min, Unit::l_per_min, UnitSystem::metric));
    };
    analysis.proof->bands = {bands};
    const QString said = joined(sheet::resultsSection(sketch, analysis));
    const QString low = volume(0.5).section(QLatin1Char(' '), 0, 0); // the unit is said once
    QVERIFY2(said.contains(QStringLiteral("Flow %1 (%2 to %3), in ").arg(volume(1), low, volume(2))),
             qPrintable(said));
    for (const char* words :
         {"Results\n", "at 40 °C block.", "Peak outlet ", "(60 to 75 °C)", "cycles in the worst hour ",
          "Engine at 20 °C after ", " kWh in 24 h, from -18 °C ambient.",
          "Assumed, and what the figures depend on most: loss of hose ends, viscosity of the coolant."})
        QVERIFY2(said.contains(QString::fromUtf8(words)), qPrintable(said));
}

void TestRunningWords::theSheetStatesChangedAssumptionsWithTheirReasons()
{
    Sketch sketch = warmLoop();
    QVERIFY(sheet::assumptionsSection(sketch).items.empty());
    sketch.assumptions = {{"block-conduction", 22, "warm-up of a sister engine"},
                          {"unheard-of", 3, "old file"}};
    QCOMPARE(joined(sheet::assumptionsSection(sketch)),
             QStringLiteral("Assumed otherwise than the book\nConduction from the part reached to the rest: "
                            "22 W/K instead of 15 W/K (warm-up of a sister engine)."));
}

void TestRunningWords::theSheetHasNoResultsWhereNothingRuns()
{
    QVERIFY(sheet::resultsSection(Sketch(), analyse(Sketch())).items.empty());
    Sketch sketch = warmLoop();
    sketch.hoses.pop_back();
    QVERIFY(sheet::resultsSection(sketch, analyse(sketch)).items.empty());
}

void TestRunningWords::theProvedSheetKeepsItsTextApart_data()
{
    QTest::addColumn<int>("paper");
    QTest::addColumn<bool>("landscape");
    QTest::addColumn<bool>("inch");
    for (const bool inch : {false, true})
        for (const bool landscape : {true, false}) {
            const char* const turned = landscape ? "landscape" : "portrait";
            QTest::addRow("A4 %s %s", turned, inch ? "inch" : "mm") << 0 << landscape << inch;
            QTest::addRow("A3 %s %s", turned, inch ? "inch" : "mm") << 1 << landscape << inch;
        }
}

void TestRunningWords::theProvedSheetKeepsItsTextApart()
{
    QFETCH(int, paper);
    QFETCH(bool, landscape);
    QFETCH(bool, inch);
    Sketch sketch = yardBus();
    sketch.units = inch ? UnitChoice::inch : UnitChoice::metric;
    sketch.assumptions = {{"viscosity", 1.1, "old coolant that nobody has changed for years"}};
    sheet::Options options;
    options.paper = paper == 0 ? sheet::Paper::a4 : sheet::Paper::a3;
    options.orientation = landscape ? QPageLayout::Landscape : QPageLayout::Portrait;
    options.tint = true;
    const Analysis analysis = proved(sketch);
    TextRecorder recorder((sheet::pageSize(options) * 10).toSize());
    QPainter painter(&recorder);
    painter.scale(10, 10);
    sheet::paintPage(painter, sketch, analysis, options);
    painter.end();
    const sheet::Plan plan = sheet::planOf(sketch, analysis, options);
    const QRectF allowed(plan.frame.topLeft() * 10, plan.frame.size() * 10);
    const QRectF border(plan.border.topLeft() * 10, plan.border.size() * 10);
    const auto& texts = recorder.texts();
    QString all;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        all += texts[i].text + QLatin1Char(' ');
        // The names of zones stand in the border round the frame, all else in the frame.
        const bool zone = texts[i].text.size() <= 2 && !allowed.intersects(texts[i].box);
        QVERIFY2((zone ? border : allowed).contains(texts[i].box), qPrintable(texts[i].text));
        for (std::size_t k = 0; k < i; ++k)
            QVERIFY2(!texts[i].box.intersects(texts[k].box) || !texts[i].area.intersects(texts[k].area),
                     qPrintable(texts[i].text + QStringLiteral(" | ") + texts[k].text));
    }
    QVERIFY(all.contains(QStringLiteral("Results ")));
    QVERIFY(all.contains(QStringLiteral("Assumed otherwise than the book")));
}

QTEST_MAIN(TestRunningWords)
#include "test_running_words.moc"
