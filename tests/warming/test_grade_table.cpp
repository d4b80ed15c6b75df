#include "tests/patience.h"

#include "app/document/document.h"
#include "app/warming/grade_table.h"

#include "core/running/loop_figures.h"

#include <QLabel>
#include <QTableWidget>
#include <QTest>

#include <algorithm>
#include <memory>

using namespace siphonwright;
using siphonwright::test::patience_ms;

namespace {}

/// The table of the ends of the grade envelope as people use it.
class TestGradeTable : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void everyEndOfTheEnvelopeHasItsRowUnderTheLevel();
    void aReturnThatFallsNoseUpFlowsLessThere();
    void doubleClickParksTheDrawingThere();
    void withoutALoopItSaysSo();

private:
    void openSample(const char* name)
    {
        document_ = std::make_unique<Document>();
        widget_ = std::make_unique<warming::GradeTable>(*document_);
        widget_->resize(900, 300);
        widget_->show();
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
        document_->startProving();
        QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && document_->proof()->graded &&
                                     table()->rowCount() > 0,
                                 patience_ms);
    }
    QTableWidget* table() const { return widget_->findChild<QTableWidget*>(); }
    QString cell(int row, int column) const { return table()->item(row, column)->text(); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<warming::GradeTable> widget_;
};

void TestGradeTable::everyEndOfTheEnvelopeHasItsRowUnderTheLevel()
{
    openSample("sound-bus");
    const Site& site = document_->sketch().site;
    QCOMPARE(site.envelope_along_percent, 3.0);
    QCOMPARE(site.envelope_across_percent, 2.0);
    QCOMPARE(table()->rowCount(), 5);
    QCOMPARE(cell(0, 0), QStringLiteral("Level"));
    QCOMPARE(cell(1, 0), QStringLiteral("Nose down 3 %"));
    QCOMPARE(cell(2, 0), QStringLiteral("Nose up 3 %"));
    QCOMPARE(cell(3, 0), QStringLiteral("Left side up 2 %"));
    QCOMPARE(cell(4, 0), QStringLiteral("Right side up 2 %"));
}

/// Driving head is the height between the two ports' warm and cold columns: the grade that lifts the return
/// port over the heater drives more, and the other one less.
void TestGradeTable::aReturnThatFallsNoseUpFlowsLessThere()
{
    openSample("sound-bus");
    const std::vector<GradeRun>& ends = document_->proof()->at_ends;
    const auto drive = [](const Running& running) { return running.loops[0].circulation.drive_Pa; };
    const double level = drive(document_->proof()->running);
    const double down = drive(ends[0].running);
    const double up = drive(ends[1].running);
    QVERIFY((down - level) * (up - level) < 0);
    for (const int row : {1, 2})
        QCOMPARE(
            cell(row, 1),
            QString::fromStdString(format(
                flowByVolume_l_per_min(ends[static_cast<std::size_t>(row) - 1].running.loops[0].circulation),
                Unit::l_per_min, UnitSystem::metric)));
    QVERIFY(!document_->proof()->warm_up.result.series.empty());
    QVERIFY(ends[0].warm_up.result.target_s.has_value());
    QVERIFY(cell(1, 5).startsWith(QStringLiteral("after ")));
}

void TestGradeTable::doubleClickParksTheDrawingThere()
{
    openSample("sound-bus");
    Q_EMIT table()->cellActivated(2, 0);
    QCOMPARE(document_->analysis().grade, (Grade{3, 0}));
    Q_EMIT table()->cellActivated(0, 0);
    QCOMPARE(document_->analysis().grade, Grade{});
}

void TestGradeTable::withoutALoopItSaysSo()
{
    document_ = std::make_unique<Document>();
    widget_ = std::make_unique<warming::GradeTable>(*document_);
    QCOMPARE(table()->rowCount(), 0);
    QVERIFY(widget_->findChild<QLabel*>()->text().contains(QStringLiteral("when a warm-up")));
}

QTEST_MAIN(TestGradeTable)
#include "test_grade_table.moc"
