#include "tests/near.h"
#include "tests/patience.h"

#include "app/document/document.h"
#include "app/panels/quantity_edit.h"
#include "app/sizing/figure_table.h"
#include "app/sizing/sizing_panel.h"

#include "core/paperwork/coolant_mix.h"
#include "core/paperwork/electrical_load.h"
#include "core/paperwork/sizing.h"

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTabBar>

using namespace siphonwright;
using siphonwright::test::patience_ms;

namespace {}

/// The panel as people use it, on the yard's samples.
class TestSizingPanel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void cleanup();
    void everyEntryIsKeptInTheSketchAsOneUndoStep_data();
    void everyEntryIsKeptInTheSketchAsOneUndoStep();
    void anAbsurdEntryIsRefusedWithASentence();
    void powerNeededFollowsTheTarget();
    void whatIsNotEnteredIsSaid();
    void theDrawnHeatersRowIsMarkedAndComesFromTheProof();
    void phasesConductorAndMetalAreChosen();
    void aConductorThatIsNotInTheTablesIsShownAsSuch();
    void theElectriciansSentenceStandsBesideTheFigures();
    void coolantIsPlannedAndWaterJudged();
    void aSeasonIsTypedTriedAndTakenBack();
    void aFigureLeadsToWhatItComesFrom();
    void figuresReadInTheChosenUnits();
    void anEmptyDrawingSaysWhatIsMissing();
    void aNarrowPanelPutsEntriesOverResults();

private:
    void openSample(const char* name)
    {
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
    }
    panels::QuantityEdit* line(const QString& label) const
    {
        return panel_->findChild<panels::QuantityEdit*>(label);
    }
    void type(const QString& label, const QString& text)
    {
        panels::QuantityEdit* edit = line(label);
        QVERIFY2(edit, qPrintable(label));
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
    }
    void choose(const QString& label, int index)
    {
        auto* box = panel_->findChild<QComboBox*>(label);
        QVERIFY2(box, qPrintable(label));
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
    }
    QTableWidget* table(const char* name) const
    {
        return panel_->findChild<QTableWidget*>(QString::fromLatin1(name));
    }
    /// The figure beside a label; empty when there is no such row.
    QString figure(const char* name, const QString& label, int column = 1) const
    {
        const QTableWidget* in = table(name);
        for (int row = 0; row < in->rowCount(); ++row)
            if (in->item(row, 0)->text().trimmed().startsWith(label))
                return in->item(row, column)->text();
        return {};
    }
    QString said(const char* name) const
    {
        return panel_->findChild<QLabel*>(QString::fromLatin1(name))->text();
    }
    QString printed(double value, Unit unit) const
    {
        return QString::fromStdString(format(value, unit, panels::unitsOf(document_->sketch())));
    }

    std::unique_ptr<Document> document_;
    std::unique_ptr<Selection> selection_;
    std::unique_ptr<sizing::SizingPanel> panel_;
};

void TestSizingPanel::init()
{
    document_ = std::make_unique<Document>();
    selection_ = std::make_unique<Selection>();
    panel_ = std::make_unique<sizing::SizingPanel>(*document_, *selection_);
    panel_->resize(950, 320);
    panel_->show();
    openSample("sound-bus");
}

void TestSizingPanel::cleanup()
{
    panel_.reset();
    document_.reset();
}

void TestSizingPanel::everyEntryIsKeptInTheSketchAsOneUndoStep_data()
{
    QTest::addColumn<QString>("label");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<double>("stored");
    QTest::addColumn<int>("which");
    int which = 0;
    const auto row = [&which](const char* label, const char* typed, double stored) {
        QTest::newRow(label) << QString::fromLatin1(label) << QString::fromUtf8(typed) << stored << which++;
    };
    row("Target", "90 F", 290.0 / 9);
    row("Usual ambient", "-4 F", -20);
    row("Coldest ambient", "-31", -31);
    row("Wind", "18 km/h", 5);
    row("Time allowed", "90 min", 1.5);
    row("Plugged in a night", "9.5 h", 9.5);
    row("Price of a kWh", "0.31", 0.31);
    row("Voltage at the bay", "208 V", 208);
    row("Length, one way", "100 ft", 30.48);
    row("Share wanted", "55 %", 55);
    row("Whole system holds", "10 gal", 37.85411784);
    row("Runs out at once", "12 l", 12);
    row("Chloride", "30 mg/l", 30);
    row("Sulphate", "31", 31);
    row("Hardness", "32 ppm", 32);
    row("Total solids", "33", 33);
    row("pH", "7.5", 7.5);
}

void TestSizingPanel::everyEntryIsKeptInTheSketchAsOneUndoStep()
{
    QFETCH(QString, label);
    QFETCH(QString, typed);
    QFETCH(double, stored);
    QFETCH(int, which);
    const auto value = [which](const Sketch& s) -> std::optional<double> {
        const WaterQuality& water = s.coolant_plan.water;
        const std::optional<double> all[] = {s.plan.target_degC,
                                             s.site.ambient_degC.value,
                                             s.site.coldest_ambient_degC.value,
                                             s.site.wind_m_per_s.value,
                                             s.supply.reach_h,
                                             s.supply.hours_per_night,
                                             s.supply.tariff_per_kWh,
                                             s.supply.volts_V,
                                             s.supply.one_way_m,
                                             s.coolant_plan.wanted_percent,
                                             s.coolant_plan.system_l,
                                             s.coolant_plan.drainable_l,
                                             water.chloride_ppm,
                                             water.sulphate_ppm,
                                             water.hardness_ppm,
                                             water.solids_ppm,
                                             water.pH};
        return all[which];
    };
    const Sketch before = document_->sketch();
    type(label, typed);
    VERIFY_NEAR(value(document_->sketch()).value_or(-999), stored, 1e-9);
    QCOMPARE(document_->undoStack().count(), 1);
    const auto written = writeSketch(document_->sketch());
    QVERIFY(std::holds_alternative<std::string>(written));
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
    QVERIFY(line(label)->value() == value(before));
}

void TestSizingPanel::anAbsurdEntryIsRefusedWithASentence()
{
    for (const auto& [label, typed] :
         {std::pair{"Voltage at the bay", "5 kV"}, std::pair{"Length, one way", "2 km"},
          std::pair{"Plugged in a night", "25 h"}, std::pair{"pH", "15"}, std::pair{"Time allowed", "0"}}) {
        const Sketch before = document_->sketch();
        type(QString::fromLatin1(label), QString::fromLatin1(typed));
        QCOMPARE(document_->sketch(), before);
        QVERIFY2(!line(QString::fromLatin1(label))->problem().isEmpty(), label);
        QTest::keyClick(line(QString::fromLatin1(label)), Qt::Key_Escape);
    }
    QCOMPARE(document_->undoStack().count(), 0);
}

void TestSizingPanel::powerNeededFollowsTheTarget()
{
    type(QStringLiteral("Time allowed"), QStringLiteral("5"));
    for (const char* target : {"10", "32"}) {
        type(QStringLiteral("Target"), QString::fromLatin1(target));
        const Sketch& sketch = document_->sketch();
        const Sizing sizing = sizingOf(sketch, document_->analysis().layout, Assumptions(sketch));
        QCOMPARE(figure("sizing-needs", QStringLiteral("To hold")), printed(sizing.usual.hold_W, Unit::watt));
        QCOMPARE(figure("sizing-needs", QStringLiteral("To hold"), 2),
                 printed(sizing.coldest->hold_W, Unit::watt));
        QCOMPARE(figure("sizing-needs", QStringLiteral("To reach it in 5 h")),
                 printed(*sizing.usual.reach_W, Unit::watt));
    }
    // 1500 W hold 32 degC in -12 but not in -28 degC: said by sign and word.
    QVERIFY(figure("sizing-needs", QStringLiteral("– margin to hold"), 2).startsWith(QStringLiteral("▲")));
    QVERIFY(
        figure("sizing-needs", QStringLiteral("– margin to hold"), 2).contains(QStringLiteral("too little")));
}

void TestSizingPanel::whatIsNotEnteredIsSaid()
{
    QCOMPARE(figure("sizing-needs", QStringLiteral("To reach it")),
             QStringLiteral("time allowed: not entered"));
    QVERIFY(said("sizing-load-warnings").contains(QStringLiteral("The supply's voltage is not entered")));
    QCOMPARE(figure("sizing-load", QStringLiteral("Voltage drop")), QStringLiteral("not computed"));
    QVERIFY(said("sizing-mix-notes").contains(QStringLiteral("No share is wanted yet")));
    QCOMPARE(figure("sizing-water", QStringLiteral("chloride"), 3), QStringLiteral("not judged"));
}

void TestSizingPanel::theDrawnHeatersRowIsMarkedAndComesFromTheProof()
{
    type(QStringLiteral("Plugged in a night"), QStringLiteral("10"));
    type(QStringLiteral("Price of a kWh"), QStringLiteral("0.5"));
    document_->startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && document_->proof()->powers_in, patience_ms);
    const std::vector<PowerRow>& rows = document_->proof()->by_power;
    QTableWidget* powers = table("sizing-powers");
    QTRY_COMPARE(powers->rowCount(), static_cast<int>(rows.size()));
    int marked = 0;
    for (int row = 0; row < powers->rowCount(); ++row) {
        const PowerRow& is = rows[static_cast<std::size_t>(row)];
        QCOMPARE(powers->item(row, 0)->text().startsWith(QStringLiteral("●")), is.drawn);
        QVERIFY(powers->item(row, 0)->text().contains(printed(is.each_W, Unit::watt)));
        QCOMPARE(powers->item(row, 2)->text(), printed(is.final_degC, Unit::degC));
        QCOMPARE(powers->item(row, 5)->text(),
                 QStringLiteral("%1, %2").arg(printed(is.night->kWh, Unit::kWh),
                                              QString::number(0.5 * is.night->kWh, 'f', 2)));
        marked += is.drawn ? 1 : 0;
    }
    QCOMPARE(marked, 1);
    QVERIFY(said("sizing-powers-notes").contains(QStringLiteral("● is what is drawn")));
    QVERIFY(!said("sizing-powers-notes").contains(QStringLiteral("Costs in"))); // no currency is entered
    // A change makes it a table of the drawing as it was, until it is computed again.
    type(QStringLiteral("Target"), QStringLiteral("40"));
    QVERIFY(!powers->isEnabled());
    QVERIFY(panel_->findChild<QLabel*>(QStringLiteral("sizing-powers-state"))
                ->text()
                .contains(QStringLiteral("as it was")));
    QTRY_VERIFY_WITH_TIMEOUT(powers->isEnabled(), patience_ms);
}

void TestSizingPanel::phasesConductorAndMetalAreChosen()
{
    choose(QStringLiteral("Phases"), 2);
    QCOMPARE(document_->sketch().supply.phases, std::optional(3));
    choose(QStringLiteral("Phases"), 1);
    QCOMPARE(document_->sketch().supply.phases, std::optional(1));
    auto* conductor = panel_->findChild<QComboBox*>(QStringLiteral("Conductor"));
    choose(QStringLiteral("Conductor"), conductor->findText(QStringLiteral("10 AWG")));
    QCOMPARE(document_->sketch().supply.conductor, std::string("10 AWG"));
    type(QStringLiteral("Voltage at the bay"), QStringLiteral("120"));
    type(QStringLiteral("Length, one way"), QStringLiteral("30 m"));
    const ElectricalLoad load = electricalLoadOf(document_->sketch());
    QVERIFY(load.drop.has_value());
    QCOMPARE(figure("sizing-load", QStringLiteral("Voltage drop")),
             QStringLiteral("%1, %2").arg(printed(load.drop->drop_V, Unit::volt),
                                          printed(load.drop->percent, Unit::percent)));
    QCOMPARE(figure("sizing-load", QStringLiteral("Continuous load")),
             printed(*load.continuous_A, Unit::ampere));
    const double copper_V = load.drop->drop_V;
    choose(QStringLiteral("Metal"), 1);
    QVERIFY(document_->sketch().supply.material == ConductorMaterial::aluminium);
    QVERIFY(electricalLoadOf(document_->sketch()).drop->drop_V > copper_V);
    choose(QStringLiteral("Conductor"), 0);
    QVERIFY(document_->sketch().supply.conductor.empty());
    choose(QStringLiteral("Phases"), 0);
    QVERIFY(!document_->sketch().supply.phases);
}

void TestSizingPanel::aConductorThatIsNotInTheTablesIsShownAsSuch()
{
    document_->apply(QStringLiteral("size"), [](Sketch& s) { s.supply.conductor = "13 AWG"; });
    auto* conductor = panel_->findChild<QComboBox*>(QStringLiteral("Conductor"));
    QCOMPARE(conductor->currentText(), QStringLiteral("13 AWG – not in the tables"));
    QVERIFY(said("sizing-load-warnings").contains(QStringLiteral("13 AWG is not a size of the tables")));
    QCOMPARE(figure("sizing-load", QStringLiteral("Voltage drop")), QStringLiteral("not computed"));
}

void TestSizingPanel::theElectriciansSentenceStandsBesideTheFigures()
{
    const QString caution = said("sizing-electrical-caution");
    QVERIFY(caution.contains(QStringLiteral("licensed electrician")));
    QVERIFY(caution.contains(QStringLiteral("local electrical code")));
    QVERIFY(said("sizing-coolant-caution").contains(QStringLiteral("poisonous")));
    document_->apply(QStringLiteral("volts"), [](Sketch& s) { s.supply.volts_V = 480; });
    QVERIFY(said("sizing-load-warnings").contains(QStringLiteral("do not connect it")));
}

void TestSizingPanel::coolantIsPlannedAndWaterJudged()
{
    type(QStringLiteral("Share wanted"), QStringLiteral("58"));
    type(QStringLiteral("Runs out at once"), QStringLiteral("3"));
    const Sketch& sketch = document_->sketch();
    const CoolantMix mix = coolantMixOf(sketch, document_->analysis().layout, Assumptions(sketch));
    QVERIFY(mix.plan && mix.plan->outcome == MixOutcome::rounds);
    QCOMPARE(figure("sizing-mix", QStringLiteral("Antifreeze to buy")),
             printed(mix.plan->antifreeze_l, Unit::litre));
    QVERIFY(!figure("sizing-mix", QStringLiteral("Round 2")).isEmpty());
    QVERIFY(said("sizing-mix-notes").contains(QStringLiteral("not enough")));
    type(QStringLiteral("Share wanted"), QStringLiteral("70"));
    QVERIFY(said("sizing-mix-warnings").contains(QStringLiteral("over 60 %")));
    QVERIFY(figure("sizing-mix", QStringLiteral("Antifreeze to buy")).isEmpty());
    type(QStringLiteral("Chloride"), QStringLiteral("41"));
    QVERIFY(figure("sizing-water", QStringLiteral("chloride"), 3).startsWith(QStringLiteral("▲")));
    type(QStringLiteral("Chloride"), QStringLiteral("40"));
    QCOMPARE(figure("sizing-water", QStringLiteral("chloride"), 3), QStringLiteral("good"));
}

void TestSizingPanel::aSeasonIsTypedTriedAndTakenBack()
{
    auto* add = panel_->findChild<QPushButton*>(QStringLiteral("season-add"));
    QTest::mouseClick(add, Qt::LeftButton);
    QTest::mouseClick(add, Qt::LeftButton);
    QCOMPARE(document_->sketch().supply.season.size(), std::size_t{2});
    type(QStringLiteral("season-ambient-2"), QStringLiteral("-13 F"));
    type(QStringLiteral("season-nights-2"), QStringLiteral("7"));
    QVERIFY((document_->sketch().supply.season[1] == ColdNights{-25, 7}));
    QCOMPARE(document_->undoStack().count(), 4);
    QTest::mouseClick(panel_->findChild<QPushButton*>(QStringLiteral("season-remove-1")), Qt::LeftButton);
    QVERIFY((document_->sketch().supply.season == std::vector<ColdNights>{{-25, 7}}));
    auto* sample = panel_->findChild<QPushButton*>(QStringLiteral("season-sample"));
    QVERIFY(sample->text().contains(QStringLiteral("invented")));
    QTest::mouseClick(sample, Qt::LeftButton);
    QVERIFY(document_->sketch().supply.season == inventedSeason());
    QVERIFY(said("season-total").startsWith(QStringLiteral("150 nights")));
    while (document_->undoStack().canUndo())
        document_->undoStack().undo();
    QVERIFY(document_->sketch().supply.season.empty());
    QCOMPARE(said("season-total"), QStringLiteral("none entered"));
}

void TestSizingPanel::aFigureLeadsToWhatItComesFrom()
{
    const auto click = [this](const char* name, const QString& label) {
        QTableWidget* in = table(name);
        for (int row = 0; row < in->rowCount(); ++row)
            if (in->item(row, 0)->text().trimmed().startsWith(label)) {
                QTest::mouseClick(in->viewport(), Qt::LeftButton, {},
                                  in->visualItemRect(in->item(row, 0)).center());
                return;
            }
    };
    click("sizing-needs", QStringLiteral("– of it the engine"));
    QVERIFY((selection_->part() == PartRef{PartKind::engine, {}, 0}));
    click("sizing-needs", QStringLiteral("Heaters as drawn"));
    QVERIFY(selection_->part().kind == PartKind::heater);
    QCOMPARE(selection_->part().id, document_->sketch().heaters.front().id);
    selection_->select({});
    click("sizing-needs", QStringLiteral("To hold")); // of no single part
    QVERIFY(selection_->part().kind == PartKind::nothing);
    panel_->findChild<QTabBar*>(QStringLiteral("sizing-subjects"))->setCurrentIndex(1);
    QTableWidget* load = table("sizing-load");
    load->setCurrentCell(0, 0);
    load->setFocus();
    QTest::keyClick(load, Qt::Key_Return);
    QCOMPARE(selection_->part().id, document_->sketch().heaters.front().id);
}

void TestSizingPanel::figuresReadInTheChosenUnits()
{
    QVERIFY(table("sizing-needs")->horizontalHeaderItem(1)->text().contains(QStringLiteral("°C")));
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::inch; });
    QVERIFY(table("sizing-needs")->horizontalHeaderItem(1)->text().contains(QStringLiteral("°F")));
    QVERIFY(figure("sizing-mix", QStringLiteral("In it now")).contains(QStringLiteral("qt")));
    QVERIFY(line(QStringLiteral("Target"))->text().contains(QStringLiteral("°F")));
}

void TestSizingPanel::anEmptyDrawingSaysWhatIsMissing()
{
    document_->reset({});
    QVERIFY(said("sizing-needs-warnings").contains(QStringLiteral("There is no engine yet")));
    QCOMPARE(table("sizing-needs")->rowCount(), 0);
    QVERIFY(said("sizing-load-warnings").contains(QStringLiteral("No heater is drawn")));
    QVERIFY(said("sizing-mix-warnings").contains(QStringLiteral("nor that of the engine is entered")));
    // The water can be judged without a drawing.
    type(QStringLiteral("pH"), QStringLiteral("5"));
    QVERIFY(figure("sizing-water", QStringLiteral("pH"), 3).startsWith(QStringLiteral("▲")));
}

void TestSizingPanel::aNarrowPanelPutsEntriesOverResults()
{
    const auto below = [this] {
        const QWidget* edit = line(QStringLiteral("Target"));
        const QWidget* results = table("sizing-needs");
        return results->mapTo(panel_.get(), QPoint()).y() > edit->mapTo(panel_.get(), QPoint()).y() + 40 &&
               results->mapTo(panel_.get(), QPoint()).x() < 100;
    };
    QVERIFY(!below());
    for (const int width_px : {600, 330}) { // as a drag makes it narrower
        panel_->resize(width_px, 600);
        QTRY_VERIFY(below());
        QTRY_VERIFY(table("sizing-needs")->width() <= width_px);
    }
    QCOMPARE(panel_->width(), 330);
}

QTEST_MAIN(TestSizingPanel)
#include "test_sizing_panel.moc"
