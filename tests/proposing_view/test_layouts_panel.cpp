#include "tests/patience.h"
#include "tests/sound_loop.h"

#include "app/proposing/layouts_panel.h"

#include "core/layout/layout.h"
#include "core/paperwork/price_list.h"

#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>

#include <algorithm>
#include <memory>

using namespace siphonwright;
using siphonwright::test::patience_ms;

namespace {

/// The sound loop before any hose is drawn.
Sketch withoutHoses()
{
    Sketch sketch = test::soundLoop();
    sketch.hoses.clear();
    return sketch;
}

/// A wall right through the drawing's depth, between heater and engine.
Sketch walledOff()
{
    Sketch sketch = withoutHoses();
    Area area;
    area.id = "area-9";
    area.name = "Bulkhead";
    area.what = Hazard::other;
    area.outline = {{-2000, 270}, {3000, 270}, {3000, 330}, {-2000, 330}};
    area.y_from_mm = -3000;
    area.y_to_mm = 3000;
    sketch.areas.push_back(Shared<Area>(area));
    return sketch;
}

/// Stops and cautions of a whole proof that a layout could mend.
QStringList broken(const Sketch& sketch)
{
    QStringList out;
    for (const Finding& finding : proved(sketch).findings)
        if (finding.severity > Severity::advice && !beyondLayout(finding.rule))
            out << QString::fromStdString(finding.rule);
    return out;
}

void giveInventedPrices(Sketch& sketch)
{
    QFile file(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/prices-invented.csv"));
    QVERIFY(file.open(QIODevice::ReadOnly));
    const auto read = readPriceList(file.readAll().toStdString());
    const auto* list = std::get_if<PriceListFile>(&read);
    QVERIFY(list);
    QCOMPARE(takePrices(sketch, *list, "Invented"), std::string());
}

} // namespace

/// Whole layouts as people ask for them and take them.
class TestLayoutsPanel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void proposalsAppearAndOneIsTakenWithOnePressAndOneUndo();
    void theKeyboardAloneProposesAndTakes();
    void theChosenOneIsAGhostWhileThePanelIsInSight();
    void whereNothingIsPossibleTheRulesInTheWayAreNamed();
    void whatHoldsOnTheLevelAloneIsNotCalledSound();
    void aListForAnEarlierDrawingCannotBeTakenUntilItIsRenewed();
    void otherChoicesMakeTheListStale();
    void otherUnitsAreNoOtherDrawing();
    void boresFollowTheDrawingUntilSomebodyChooses();
    void aSearchIsStoppedAndTheDrawingStays();
    void theHeaterMovesOnlyWhereItMayHang();
    void withoutPricesALayoutIsNotPriced();
    void withAPriceListTheLowestPriceComesFirst();
    void whatLacksIsSaid();
    void everyControlHasAName();

private:
    void open(const Sketch& sketch)
    {
        panel_.reset();
        document_ = std::make_unique<Document>();
        selection_ = std::make_unique<Selection>();
        document_->reset(sketch);
        panel_ = std::make_unique<proposing::LayoutsPanel>(*document_, *selection_);
        panel_->resize(320, 560);
        panel_->show();
        QVERIFY(QTest::qWaitForWindowExposed(panel_.get()));
    }
    template <class Widget>
    Widget* find(const char* name) const
    {
        return panel_->findChild<Widget*>(QLatin1String(name));
    }
    QListWidget* list() const { return find<QListWidget>("layout-list"); }
    QPushButton* take() const { return find<QPushButton>("layout-take"); }
    QString state() const { return find<QLabel>("layout-state")->text(); }
    QString details() const { return find<QLabel>("layout-details")->text(); }
    void press(const char* name) const { QTest::mouseClick(find<QPushButton>(name), Qt::LeftButton); }
    void propose() const
    {
        press("layout-propose");
        QVERIFY(panel_->busy());
        QTRY_VERIFY_WITH_TIMEOUT(!panel_->busy(), patience_ms);
    }
    QString row(int index) const { return list()->item(index)->text(); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<Selection> selection_;
    std::unique_ptr<proposing::LayoutsPanel> panel_;
};

void TestLayoutsPanel::proposalsAppearAndOneIsTakenWithOnePressAndOneUndo()
{
    const Sketch before = withoutHoses();
    open(before);
    QVERIFY(!take()->isVisible());
    propose();
    QVERIFY(list()->count() >= 1);
    QVERIFY2(row(0).contains(QStringLiteral("Bore")), qPrintable(row(0)));
    QVERIFY2(row(0).contains(QStringLiteral(" left: ")), qPrintable(row(0)));
    QVERIFY2(details().contains(QStringLiteral("Free of traps from")), qPrintable(details()));
    QVERIFY2(details().contains(QStringLiteral("Ground:")), qPrintable(details()));
    QVERIFY2(details().contains(QStringLiteral("Clips:")), qPrintable(details()));
    QVERIFY2(details().contains(QStringLiteral("Slack")), qPrintable(details()));
    QVERIFY(document_->sketch() == before); // looking changes nothing
    QTest::mouseClick(take(), Qt::LeftButton);
    QCOMPARE(document_->sketch().hoses.size(), std::size_t{2});
    QCOMPARE(broken(document_->sketch()), QStringList());
    QCOMPARE(document_->undoStack().count(), 1);
    QVERIFY2(state().contains(QStringLiteral("was taken")), qPrintable(state()));
    QVERIFY(!take()->isEnabled());
    document_->undoStack().undo();
    QVERIFY(document_->sketch() == before);
    QVERIFY(take()->isEnabled()); // the drawing it was proposed for is back
}

void TestLayoutsPanel::theKeyboardAloneProposesAndTakes()
{
    open(withoutHoses());
    panel_->activateWindow();
    panel_->begin();
    QTRY_VERIFY_WITH_TIMEOUT(!panel_->busy(), patience_ms);
    QVERIFY(list()->count() >= 2);
    panel_->begin(); // there is a list: the focus goes to it
    QTest::keyClick(list(), Qt::Key_Down);
    QCOMPARE(list()->currentRow(), 1);
    QTest::keyClick(list(), Qt::Key_Return);
    QCOMPARE(document_->sketch().hoses.size(), std::size_t{2});
}

void TestLayoutsPanel::theChosenOneIsAGhostWhileThePanelIsInSight()
{
    open(withoutHoses());
    std::shared_ptr<const drawing::Ghost> ghost;
    connect(panel_.get(), &proposing::LayoutsPanel::ghostChanged, this,
            [&](const auto& now) { ghost = now; });
    propose();
    QVERIFY(ghost);
    QCOMPARE(ghost->sketch.hoses.size(), std::size_t{2});
    QCOMPARE(ghost->sketch.heaters.size(), std::size_t{1});
    QVERIFY(!ghost->sketch.engine); // the elevation shows it
    const double first_mm = ghost->sketch.hoses[0]->bore_mm.value.value_or(0);
    list()->setCurrentRow(list()->count() - 1);
    QVERIFY(ghost);
    QVERIFY(first_mm > 0);
    panel_->hide();
    QVERIFY(!ghost);
    panel_->show();
    QVERIFY(ghost);
    document_->apply(QStringLiteral("edit"), [](Sketch& sketch) { sketch.ground_z_mm = -350; });
    QVERIFY(!ghost); // it is for an earlier drawing
    panel_->disconnect(this);
}

void TestLayoutsPanel::whereNothingIsPossibleTheRulesInTheWayAreNamed()
{
    open(walledOff());
    propose();
    QVERIFY2(state().startsWith(QStringLiteral("Every layout breaks a rule")), qPrintable(state()));
    QVERIFY(list()->count() >= 1);
    QVERIFY2(row(0).contains(QStringLiteral("Too near something hot or moving")), qPrintable(row(0)));
    QVERIFY2(row(0).contains(QStringLiteral("Bulkhead")), qPrintable(row(0)));
    QVERIFY(!take()->isVisible());
    QSignalSpy rule(panel_.get(), &proposing::LayoutsPanel::ruleWanted);
    list()->setCurrentRow(0);
    QTest::keyClick(list(), Qt::Key_Return);
    QCOMPARE(rule.count(), 1);
    QCOMPARE(rule.first().first().toString(), QStringLiteral("keep-clear"));
    QCOMPARE(document_->undoStack().count(), 0);
}

void TestLayoutsPanel::whatHoldsOnTheLevelAloneIsNotCalledSound()
{
    // Its top 155 mm under the jacket on the level, nearer than the rule's 152 mm nose-down, and it stays
    // there.
    Sketch sketch = withoutHoses();
    const double top_mm = resolve(sketch, plumbOf(sketch)).heaters.front().body_top_mm;
    sketch.heaters.front().position.z += 400 - 155 - top_mm;
    open(sketch);
    propose();
    QVERIFY2(state().startsWith(QStringLiteral("▲ No layout holds on every grade")), qPrintable(state()));
    QVERIFY2(row(0).contains(QStringLiteral("▲ Not sound on every grade")), qPrintable(row(0)));
}

void TestLayoutsPanel::aListForAnEarlierDrawingCannotBeTakenUntilItIsRenewed()
{
    open(withoutHoses());
    propose();
    document_->apply(QStringLiteral("lower the ground"), [](Sketch& sketch) { sketch.ground_z_mm = -400; });
    QVERIFY2(state().contains(QStringLiteral("earlier drawing")), qPrintable(state()));
    QVERIFY(!take()->isEnabled());
    const Sketch edited = document_->sketch();
    list()->setCurrentRow(0);
    QTest::keyClick(list(), Qt::Key_Return);
    QVERIFY(document_->sketch() == edited);
    propose();
    QVERIFY(take()->isEnabled());
    QTest::mouseClick(take(), Qt::LeftButton);
    QCOMPARE(document_->sketch().hoses.size(), std::size_t{2});
    QCOMPARE(document_->sketch().ground_z_mm.value_or(0), -400.0);
}

void TestLayoutsPanel::otherChoicesMakeTheListStale()
{
    open(withoutHoses());
    propose();
    QVERIFY(take()->isEnabled());
    find<QComboBox>("layout-rank")->setCurrentIndex(1);
    QVERIFY(!take()->isEnabled());
    QVERIFY2(state().contains(QStringLiteral("other choices")), qPrintable(state()));
    propose();
    QVERIFY(take()->isEnabled());
}

void TestLayoutsPanel::otherUnitsAreNoOtherDrawing()
{
    open(withoutHoses());
    propose();
    QVERIFY2(row(0).contains(QStringLiteral(" mm")), qPrintable(row(0)));
    document_->apply(QStringLiteral("units"), [](Sketch& sketch) { sketch.units = UnitChoice::inch; });
    QVERIFY2(!row(0).contains(QStringLiteral(" mm")), qPrintable(row(0)));
    QVERIFY(take()->isEnabled());
    QTest::mouseClick(take(), Qt::LeftButton);
    QCOMPARE(document_->sketch().units, UnitChoice::inch);
    QCOMPARE(document_->sketch().hoses.size(), std::size_t{2});
}

void TestLayoutsPanel::aSearchIsStoppedAndTheDrawingStays()
{
    const Sketch before = withoutHoses();
    open(before);
    find<QComboBox>("layout-place")->setCurrentIndex(1);
    press("layout-propose");
    QVERIFY(panel_->busy());
    QVERIFY(find<QPushButton>("layout-stop")->isVisible());
    QTest::keyClick(panel_.get(), Qt::Key_Escape);
    QVERIFY(!panel_->busy());
    QVERIFY2(state().startsWith(QStringLiteral("Stopped")), qPrintable(state()));
    QTest::qWait(200);
    QCOMPARE(list()->count(), 0); // what was left comes no more
    QVERIFY(document_->sketch() == before);
}

void TestLayoutsPanel::theHeaterMovesOnlyWhereItMayHang()
{
    open(withoutHoses());
    QSignalSpy wanted(panel_.get(), &proposing::LayoutsPanel::areaWanted);
    QVERIFY(!find<QPushButton>("layout-draw-area")->isVisible());
    auto* place = find<QComboBox>("layout-place");
    place->setCurrentIndex(2);
    QVERIFY(!find<QPushButton>("layout-propose")->isEnabled()); // no area yet
    press("layout-draw-area");
    QCOMPARE(wanted.count(), 1);
    panel_->setArea({940, 20}, {1100, 60});
    QTRY_VERIFY_WITH_TIMEOUT(!panel_->busy(), patience_ms);
    QVERIFY(take()->isEnabled());
    QTest::mouseClick(take(), Qt::LeftButton);
    const Vec3 at = document_->sketch().heaters.front().position;
    QVERIFY(at.x >= 940 && at.x <= 1100);
    QVERIFY(at.z >= 20 && at.z <= 60);
    QCOMPARE(broken(document_->sketch()), QStringList());
}

void TestLayoutsPanel::withoutPricesALayoutIsNotPriced()
{
    open(withoutHoses());
    propose();
    QVERIFY2(row(0).contains(QStringLiteral("not priced")), qPrintable(row(0)));
}

void TestLayoutsPanel::withAPriceListTheLowestPriceComesFirst()
{
    Sketch sketch = withoutHoses();
    giveInventedPrices(sketch);
    open(sketch);
    find<QComboBox>("layout-rank")->setCurrentIndex(3);
    propose();
    QVERIFY2(row(0).contains(QStringLiteral("USD")), qPrintable(row(0)));
    // The threads of its ports are not entered, so that nobody knows which adapters to price.
    QVERIFY2(row(0).contains(QStringLiteral("not priced: Adapter")), qPrintable(row(0)));
    // Only smaller hose is cheaper by the metre in this list, so that the smallest bore comes first.
    QVERIFY2(row(0).contains(QStringLiteral("15.9 mm")), qPrintable(row(0)));
}

/// The panel may be there before the drawing is opened.
void TestLayoutsPanel::boresFollowTheDrawingUntilSomebodyChooses()
{
    const auto largest = [this] {
        return panel_->findChildren<QToolButton*>(QStringLiteral("layout-bore")).last();
    };
    Sketch large = test::soundLoop();
    for (Shared<Hose>& hose : large.hoses)
        hose.edit([](Hose& one) { one.bore_mm = {31.75, Source::measured}; });
    open(withoutHoses());
    QVERIFY(!largest()->isChecked()); // stock, but not usual
    document_->reset(large);
    QVERIFY2(largest()->isChecked(), qPrintable(largest()->text()));
    largest()->setChecked(false);
    document_->reset(withoutHoses());
    document_->reset(large);
    QVERIFY(!largest()->isChecked());
}

void TestLayoutsPanel::whatLacksIsSaid()
{
    Sketch sketch = withoutHoses();
    sketch.heaters.clear();
    open(sketch);
    QVERIFY(!find<QPushButton>("layout-propose")->isEnabled());
    QVERIFY2(state().contains(QStringLiteral("heater")), qPrintable(state()));
    sketch = withoutHoses();
    sketch.ports.clear();
    open(sketch);
    propose();
    QVERIFY2(state().contains(QStringLiteral("port")), qPrintable(state()));
    for (QToolButton* bore : panel_->findChildren<QToolButton*>())
        bore->setChecked(false);
    QVERIFY(!find<QPushButton>("layout-propose")->isEnabled());
}

void TestLayoutsPanel::everyControlHasAName()
{
    open(withoutHoses());
    for (const QWidget* widget : panel_->findChildren<QWidget*>())
        if (widget->focusPolicy() & Qt::TabFocus && qobject_cast<const QAbstractButton*>(widget) == nullptr &&
            !widget->objectName().startsWith(QStringLiteral("qt_")) && !widget->objectName().isEmpty())
            QVERIFY2(!widget->accessibleName().isEmpty(), qPrintable(widget->objectName()));
}

QTEST_MAIN(TestLayoutsPanel)
#include "test_layouts_panel.moc"
