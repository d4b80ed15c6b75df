#include "tests/near.h"

#include "app/panels/details_panel.h"
#include "app/panels/findings_model.h"
#include "app/panels/grade_slider.h"
#include "app/panels/grade_strip.h"

#include <QLabel>
#include <QTest>
#include <QToolButton>

using namespace siphonwright;

/// The grade control, the margins in the details and the rows for what is not confirmed, on a sample.
class TestGradeStrip : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void keysAndMouseParkTheVehicleAndTheButtonLevelsIt();
    void theSoundGradesAreAlwaysSaid();
    void nothingIsCalledSoundBeforeItIsALoop();
    void aHosesDetailsSayHowFarItMaySag();
    void whatIsNotConfirmedIsListedUntilItIsMeasured();

private:
    std::unique_ptr<Document> document_;
};

void TestGradeStrip::init()
{
    document_ = std::make_unique<Document>();
    QCOMPARE(document_->open(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon")),
             QStringList());
}

void TestGradeStrip::keysAndMouseParkTheVehicleAndTheButtonLevelsIt()
{
    panels::GradeStrip strip(*document_);
    strip.resize(900, 40);
    strip.show();
    auto* along = strip.findChild<panels::GradeSlider*>(QStringLiteral("grade-along"));
    along->setFocus();
    QTest::keyClick(along, Qt::Key_PageDown);
    QTest::keyClick(along, Qt::Key_Left);
    VERIFY_NEAR(document_->grade().along_percent, -1.1, 1e-9);
    QCOMPARE(strip.findChild<QLabel*>(QStringLiteral("grade-stands"))->text(),
             QStringLiteral("1.1 % nose-down"));
    QTest::mouseClick(along, Qt::LeftButton, {}, QPoint(along->width() - 3, 12));
    VERIFY_NEAR(document_->grade().along_percent, 15, 1e-9);
    QVERIFY(!document_->isModified());
    QTest::mouseClick(strip.findChild<QToolButton*>(), Qt::LeftButton);
    QVERIFY(document_->grade() == Grade{});
    QCOMPARE(along->value(), 0);
}

void TestGradeStrip::theSoundGradesAreAlwaysSaid()
{
    panels::GradeStrip strip(*document_);
    document_->startProving();
    QTRY_VERIFY_WITH_TIMEOUT(strip.verdict().startsWith(QStringLiteral("Free of traps from")), 60'000);
    document_->setGrade({-2, 0});
    QVERIFY(strip.verdict().startsWith(QStringLiteral("Free of traps from")));
}

void TestGradeStrip::nothingIsCalledSoundBeforeItIsALoop()
{
    panels::GradeStrip strip(*document_);
    document_->apply(QStringLiteral("Take the return hose away"),
                     [](Sketch& sketch) { sketch.hoses.pop_back(); });
    document_->startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && document_->proof()->graded, 60'000);
    QVERIFY(strip.verdict().isEmpty());
    QVERIFY(!document_->proof()->sound);
}

void TestGradeStrip::aHosesDetailsSayHowFarItMaySag()
{
    Selection selection;
    panels::DetailsPanel details(*document_, selection);
    document_->startProving();
    QTRY_VERIFY_WITH_TIMEOUT(document_->proofIsCurrent() && document_->proof()->graded, 60'000);
    selection.select({PartKind::hose, "hose-1", 0});
    const auto* margins = details.findChild<QLabel*>(QStringLiteral("details-margins"));
    QVERIFY(margins->text().contains(QStringLiteral("may sag")));
    selection.select({PartKind::heater, "heater-1", 0});
    QVERIFY(margins->text().contains(QStringLiteral("left")));
}

void TestGradeStrip::whatIsNotConfirmedIsListedUntilItIsMeasured()
{
    panels::FindingsModel model(*document_);
    const auto kinds = [&model](panels::FindingsModel::Kind kind) {
        int count = 0;
        for (int row = 0; row < model.rowCount(); ++row)
            count += model.index(row).data(panels::FindingsModel::kind_role).toInt() == int(kind) ? 1 : 0;
        return count;
    };
    const int before = kinds(panels::FindingsModel::Kind::unconfirmed);
    document_->apply(QStringLiteral("Guess"), [](Sketch& s) { s.engine->jacket_source = Source::typical; });
    QCOMPARE(kinds(panels::FindingsModel::Kind::unconfirmed), before + 1);
    document_->apply(QStringLiteral("Measure"),
                     [](Sketch& s) { s.engine->jacket_source = Source::measured; });
    QCOMPARE(kinds(panels::FindingsModel::Kind::unconfirmed), before);
}

QTEST_MAIN(TestGradeStrip)
#include "test_grade_strip.moc"
