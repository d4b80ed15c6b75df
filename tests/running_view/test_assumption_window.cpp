#include "tests/near.h"
#include "tests/running_view/warm_loop.h"

#include "app/assumptions/assumption_choices.h"
#include "app/assumptions/assumption_list.h"
#include "app/assumptions/assumption_window.h"
#include "app/panels/quantity_edit.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QTreeView>

using namespace siphonwright;
using namespace siphonwright::assumptions;

class TestAssumptionWindow : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void cleanup();
    void everyAssumptionIsListedWithItsBasis();
    void aChangeIsOneStepWithItsReason();
    void aChangeWithoutAReasonIsNotKept();
    void aFigureWithoutMeaningIsRefused();
    void theBooksValueComesBack();
    void aSecondChangeTakesTheFirstOnesPlace();
    void theSearchFindsWordsOfTitleAndBasis();
    void theTableFollowsUndoAndUnits();
    void itSaysWhatAnAssumptionDrivesHere();

private:
    template <class T>
    T* part(const char* name) const
    {
        // The form of the row before is let go only when control is back in the loop.
        T* found = nullptr;
        for (T* one : window_->findChildren<T*>(QLatin1String(name)))
            if (one->isVisible())
                found = one;
        return found;
    }
    QAbstractItemModel& rows() const { return *part<QTreeView>("assumption-list")->model(); }
    QString cell(int row, int column) const { return rows().index(row, column).data().toString(); }
    int rowOf(Assumed which) const { return static_cast<int>(which); }
    void type(QLineEdit* into, const QString& text)
    {
        into->setFocus();
        into->selectAll();
        QTest::keyClicks(into, text);
    }
    void keep(const char* id, const QString& value, const QString& reason)
    {
        window_->showAssumption(QLatin1String(id));
        type(part<QLineEdit>("assumption-value"), value);
        type(part<QLineEdit>("assumption-reason"), reason);
        part<QPushButton>("keep-assumption")->click();
    }

    std::unique_ptr<Document> document_;
    std::unique_ptr<AssumptionWindow> window_;
};

void TestAssumptionWindow::init()
{
    document_ = std::make_unique<Document>();
    document_->reset(test::warmLoop());
    window_ = std::make_unique<AssumptionWindow>(*document_);
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
}

void TestAssumptionWindow::cleanup()
{
    window_.reset();
    document_.reset();
}

void TestAssumptionWindow::everyAssumptionIsListedWithItsBasis()
{
    QCOMPARE(rows().rowCount(), int(assumed_count));
    for (int row = 0; row < rows().rowCount(); ++row)
        for (const int column :
             {AssumptionList::title, AssumptionList::in_force, AssumptionList::range, AssumptionList::basis})
            QVERIFY(!cell(row, column).isEmpty());
    QCOMPARE(cell(rowOf(Assumed::roughness), AssumptionList::in_force), QStringLiteral("0.005 mm"));
    QCOMPARE(cell(rowOf(Assumed::block_conduction), AssumptionList::range),
             QStringLiteral("7 W/K to 30 W/K"));
}

void TestAssumptionWindow::aChangeIsOneStepWithItsReason()
{
    const double flow = document_->analysis().running.loops.at(0).circulation.flow_kg_per_s;
    keep("hose-end-loss", QStringLiteral("1.3"), QStringLiteral("barbs measured on a bench"));
    QCOMPARE(document_->undoStack().count(), 1);
    QCOMPARE(document_->sketch().assumptions,
             (std::vector<AssumptionChange>{{"hose-end-loss", 1.3, "barbs measured on a bench"}}));
    QCOMPARE(cell(rowOf(Assumed::hose_end_loss), AssumptionList::in_force), QStringLiteral("1.3"));
    QCOMPARE(cell(rowOf(Assumed::hose_end_loss), AssumptionList::changed), QStringLiteral("changed"));
    QCOMPARE(cell(rowOf(Assumed::hose_end_loss), AssumptionList::range), QStringLiteral("held"));
    // More loss, less flow: it is in force at once.
    QVERIFY(document_->analysis().running.loops.at(0).circulation.flow_kg_per_s < flow * 0.999);
}

void TestAssumptionWindow::aChangeWithoutAReasonIsNotKept()
{
    keep("viscosity", QStringLiteral("1.2"), QString());
    QVERIFY(document_->sketch().assumptions.empty());
    QVERIFY(part<QLabel>("assumption-remark"));
}

void TestAssumptionWindow::aFigureWithoutMeaningIsRefused()
{
    for (const char* typed : {"-1", "0", "soft", "1e6"}) {
        keep("viscosity", QLatin1String(typed), QStringLiteral("a guess"));
        QVERIFY2(document_->sketch().assumptions.empty(), typed);
    }
    keep("swept-share", QStringLiteral("0.9"), QStringLiteral("a thermal picture"));
    QCOMPARE(document_->sketch().assumptions.size(), std::size_t(1));
}

void TestAssumptionWindow::theBooksValueComesBack()
{
    keep("viscosity", QStringLiteral("1.2"), QStringLiteral("old coolant"));
    part<QPushButton>("book-assumption")->click();
    QVERIFY(document_->sketch().assumptions.empty());
    QCOMPARE(part<QLineEdit>("assumption-value")->text(), QStringLiteral("1"));
    QVERIFY(!part<QPushButton>("book-assumption")->isEnabled());
    document_->undoStack().undo();
    QCOMPARE(document_->sketch().assumptions.size(), std::size_t(1));
    QCOMPARE(part<QLineEdit>("assumption-value")->text(), QStringLiteral("1.2"));
}

void TestAssumptionWindow::aSecondChangeTakesTheFirstOnesPlace()
{
    keep("viscosity", QStringLiteral("1.2"), QStringLiteral("old coolant"));
    keep("viscosity", QStringLiteral("1.1"), QStringLiteral("new coolant"));
    QCOMPARE(document_->sketch().assumptions,
             (std::vector<AssumptionChange>{{"viscosity", 1.1, "new coolant"}}));
}

void TestAssumptionWindow::theSearchFindsWordsOfTitleAndBasis()
{
    auto* sought = part<QLineEdit>("assumption-search");
    sought->setText(QStringLiteral("hooper loss"));
    QCOMPARE(rows().rowCount(), 2);
    sought->setText(QStringLiteral("no such words"));
    QCOMPARE(rows().rowCount(), 0);
    window_->showAssumption(QStringLiteral("viscosity"));
    QCOMPARE(rows().rowCount(), int(assumed_count));
}

void TestAssumptionWindow::theTableFollowsUndoAndUnits()
{
    keep("thermostat-on", QStringLiteral("100 F"), QStringLiteral("the heater's manual"));
    VERIFY_NEAR(document_->sketch().assumptions.at(0).value, 340.0 / 9, 1e-9); // 100 degF
    document_->undoStack().undo();
    QCOMPARE(cell(rowOf(Assumed::thermostat_on), AssumptionList::in_force), QStringLiteral("38 °C"));
    document_->apply(QStringLiteral("units"), [](Sketch& s) { s.units = UnitChoice::inch; });
    QCOMPARE(cell(rowOf(Assumed::thermostat_on), AssumptionList::in_force), QStringLiteral("100.4 °F"));
}

void TestAssumptionWindow::itSaysWhatAnAssumptionDrivesHere()
{
    Analysis analysis = document_->analysis();
    QVERIFY(drivenBy(analysis, Assumed::hose_end_loss).isEmpty());
    HeaterBands bands;
    ResultBand flow;
    flow.drivers = {Assumed::viscosity, Assumed::hose_end_loss};
    ResultBand peak;
    peak.drivers = {Assumed::hose_end_loss};
    bands.results[std::size_t(Banded::flow_kg_per_s)] = flow;
    bands.results[std::size_t(Banded::peak_outlet_degC)] = peak;
    analysis.proof.emplace().bands = {bands};
    QCOMPARE(drivenBy(analysis, Assumed::hose_end_loss),
             (QStringList{QStringLiteral("peak outlet"), QStringLiteral("flow")}));
    QCOMPARE(drivenBy(analysis, Assumed::viscosity), QStringList{QStringLiteral("flow")});
    QVERIFY(drivenBy(analysis, Assumed::iron_heat).isEmpty());
}

QTEST_MAIN(TestAssumptionWindow)
#include "test_assumption_window.moc"
