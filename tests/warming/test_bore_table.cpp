#include "tests/near.h"
#include "tests/patience.h"

#include "app/document/document.h"
#include "app/panels/field.h"
#include "app/warming/bore_table.h"

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

using namespace siphonwright;
using siphonwright::test::patience_ms;

namespace {}

/// The table by bore as people use it.
class TestBoreTable : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void cleanup();
    void everyStockBoreHasItsRowAndTheDrawnOneIsMarked();
    void aFigureOverItsLimitSaysSoByWord();
    void theButtonPutsEveryHoseOnTheBoreAsOneStep();
    void enterAndDoubleClickUseARow();
    void withoutALoopItSaysSo();

private:
    void openSample(const char* name)
    {
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
    }
    const std::vector<BoreRow>& rows() const { return document_->proof()->by_bore; }
    QTableWidget* table() const { return widget_->findChild<QTableWidget*>(); }
    QPushButton* use() const { return widget_->findChild<QPushButton*>(); }
    QString cell(int row, int column) const { return table()->item(row, column)->text(); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<warming::BoreTable> widget_;
};

void TestBoreTable::init()
{
    document_ = std::make_unique<Document>();
    widget_ = std::make_unique<warming::BoreTable>(*document_);
    widget_->resize(800, 300);
    widget_->show();
    openSample("hose-too-small");
    document_->startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && !rows().empty() && table()->isEnabled(),
                             patience_ms);
}

void TestBoreTable::cleanup()
{
    widget_.reset();
    document_.reset();
}

void TestBoreTable::everyStockBoreHasItsRowAndTheDrawnOneIsMarked()
{
    QCOMPARE(table()->rowCount(), static_cast<int>(rows().size()));
    int drawn = 0;
    for (int row = 0; row < table()->rowCount(); ++row) {
        const BoreRow& bore = rows()[static_cast<std::size_t>(row)];
        QVERIFY(cell(row, 0).contains(
            QString::fromStdString(format(bore.bore_mm, Unit::mm, panels::unitsOf(document_->sketch())))));
        QCOMPARE(cell(row, 0).endsWith(QStringLiteral("as drawn")), bore.drawn);
        drawn += bore.drawn ? 1 : 0;
        QVERIFY(cell(row, 2).contains(QString::fromStdString(
            format(bore.steady_outlet_degC, Unit::degC, panels::unitsOf(document_->sketch())))));
    }
    QCOMPARE(drawn, 1);
}

void TestBoreTable::aFigureOverItsLimitSaysSoByWord()
{
    // A limit under every figure breaks them all, one over every figure none.
    for (const double limit_degC : {1.0, 400.0}) {
        document_->apply(QStringLiteral("limit"), [limit_degC](Sketch& sketch) {
            LimitChange change;
            change.rule = "outlet-over-limit";
            change.stop = limit_degC;
            change.reason = "test";
            sketch.limits = {change};
        });
        QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && !rows().empty(), patience_ms);
        for (int row = 0; row < table()->rowCount(); ++row)
            QCOMPARE(cell(row, 3).startsWith(QStringLiteral("▲")) &&
                         cell(row, 3).contains(QStringLiteral("over")),
                     limit_degC < 2 && rows()[static_cast<std::size_t>(row)].peak_outlet_degC.has_value());
    }
}

void TestBoreTable::theButtonPutsEveryHoseOnTheBoreAsOneStep()
{
    QVERIFY(!use()->isEnabled());
    const Sketch before = document_->sketch();
    const int last = table()->rowCount() - 1;
    const double bore_mm = rows().back().bore_mm;
    table()->selectRow(last);
    QVERIFY(use()->isEnabled());
    QTest::mouseClick(use(), Qt::LeftButton);
    for (std::size_t i = 0; i < before.hoses.size(); ++i) {
        const Hose& was = *before.hoses[i];
        const Hose& is = *document_->sketch().hoses[i];
        const double scale = bore_mm / *was.bore_mm.value;
        QCOMPARE(*is.bore_mm.value, bore_mm);
        VERIFY_NEAR(is.from.bore_mm, was.from.bore_mm * scale, 1e-9);
        VERIFY_NEAR(is.to.bore_mm, was.to.bore_mm * scale, 1e-9);
        for (std::size_t k = 0; k < was.parts.size(); ++k)
            VERIFY_NEAR(is.parts[k].bore_mm, was.parts[k].bore_mm * scale, 1e-9);
    }
    QCOMPARE(document_->undoStack().count(), 1);
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && !rows().empty() && rows().back().drawn,
                             patience_ms);
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
}

void TestBoreTable::enterAndDoubleClickUseARow()
{
    table()->setCurrentCell(table()->rowCount() - 2, 0);
    table()->setFocus();
    QTest::keyClick(table(), Qt::Key_Return);
    QCOMPARE(*document_->sketch().hoses[0]->bore_mm.value, rows()[rows().size() - 2].bore_mm);
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && !rows().empty() && table()->isEnabled(),
                             patience_ms);
    const QPoint at = table()->visualItemRect(table()->item(0, 1)).center();
    QTest::mouseClick(table()->viewport(), Qt::LeftButton, {}, at);
    QTest::mouseDClick(table()->viewport(), Qt::LeftButton, {}, at);
    QCOMPARE(*document_->sketch().hoses[0]->bore_mm.value, rows().front().bore_mm);
}

void TestBoreTable::withoutALoopItSaysSo()
{
    document_->reset({});
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent(), patience_ms);
    QCOMPARE(table()->rowCount(), 0);
    QVERIFY(!use()->isEnabled());
    QVERIFY(widget_->findChild<QLabel*>(QStringLiteral("bore-remark"))
                ->text()
                .contains(QStringLiteral("when a loop can be computed")));
}

QTEST_MAIN(TestBoreTable)
#include "test_bore_table.moc"
