#include "tests/patience.h"

#include "app/commissioning/commissioning_panel.h"
#include "app/commissioning/page.h"
#include "app/commissioning/words.h"

#include "core/commissioning/checklist.h"

#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QTableWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>

#include <memory>

using namespace siphonwright;
using commissioning::CommissioningPanel;
using siphonwright::test::patience_ms;

namespace {
constexpr int gloved_px = 44;
} // namespace

/// The panel as people use it.
class TestCommissioningPanel : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void cleanup();
    void doneTicksTheStepAndGoesOn();
    void aStepThatMustWaitSaysWhyAndCannotBeDone();
    void aReasonDoesItAllTheSameAndIsKept();
    void takingBackSaysWhatRestsOnIt();
    void everyTickCanBeUndone();
    void theListOpensAStep();
    void buttonsAreLargeEnoughForGloves();
    void aReadingIsAddedAtTheClocksTimeAndEdited();
    void whatIsNotUnderstoodChangesNothing();
    void aTimeAloneIsOnTheReadingsDay();
    void turningOnAndOffIsKept();
    void verdictsStandBesideTheReadings();
    void theFaultIsNamedAndShownOnTheDrawing();
    void aLimitBrokenIsSaidAndNothingIsCalledSound();
    void theChecklistIsWrittenAsPages();
    void nothingOnAPageLeavesIt();

private:
    void openSample(const char* name)
    {
        QCOMPARE(document_->open(
                     QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/%1.siphon").arg(QLatin1String(name))),
                 QStringList());
    }
    template <class T>
    T* find(const char* name) const
    {
        return panel_->findChild<T*>(QString::fromLatin1(name));
    }
    void press(const char* name) const
    {
        auto* button = find<QPushButton>(name);
        QVERIFY2(button, name);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    const Checklist& list() const { return document_->sketch().checklist; }
    QString said(const char* name) const { return find<QLabel>(name)->text(); }
    QTableWidget* table() const { return find<QTableWidget>("readings"); }

    std::unique_ptr<Document> document_;
    std::unique_ptr<Selection> selection_;
    std::unique_ptr<CommissioningPanel> panel_;
};

void TestCommissioningPanel::init()
{
    document_ = std::make_unique<Document>();
    selection_ = std::make_unique<Selection>();
    openSample("sound-bus");
    panel_ = std::make_unique<CommissioningPanel>(*document_, *selection_);
    panel_->resize(420, 700);
    panel_->show();
}

void TestCommissioningPanel::cleanup()
{
    panel_.reset();
    selection_.reset();
    document_.reset();
}

void TestCommissioningPanel::doneTicksTheStepAndGoesOn()
{
    find<QLineEdit>("step-by")->setText(QStringLiteral("Apprentice"));
    const QString first = said("step-title");
    press("step-done");
    QCOMPARE(list().ticks.size(), std::size_t(1));
    QCOMPARE(list().ticks.front().step, std::string(checklistSteps().front().id));
    QCOMPARE(list().ticks.front().by, std::string("Apprentice"));
    QVERIFY(QDateTime::fromString(QString::fromStdString(list().ticks.front().time), Qt::ISODate).isValid());
    QVERIFY(said("step-title") != first);
    press("step-back");
    QCOMPARE(said("step-title"), first);
    QVERIFY(said("step-state").contains(QStringLiteral("by Apprentice")));
    QVERIFY(!find<QPushButton>("step-done")->isEnabled());
}

void TestCommissioningPanel::aStepThatMustWaitSaysWhyAndCannotBeDone()
{
    for (int i = 0; i < 6; ++i)
        press("step-next");
    QCOMPARE(said("step-title"), QStringLiteral("Drain and flush"));
    QVERIFY(!find<QPushButton>("step-done")->isEnabled());
    QVERIFY(said("step-state").contains(QStringLiteral("Lock out the heater's power")));
    QVERIFY(find<QPushButton>("step-all-the-same")->isVisible());
    QVERIFY(!find<QPushButton>("step-all-the-same")->isEnabled()); // without a reason
    QVERIFY(said("step-caution").contains(QStringLiteral("poisonous")));
}

void TestCommissioningPanel::aReasonDoesItAllTheSameAndIsKept()
{
    for (int i = 0; i < 6; ++i)
        press("step-next");
    QTest::keyClicks(find<QLineEdit>("step-reason"), QStringLiteral("Drained elsewhere"));
    press("step-all-the-same");
    QCOMPARE(list().ticks.size(), std::size_t(1));
    QCOMPARE(list().ticks.front().override_reason, std::string("Drained elsewhere"));
    press("step-back");
    QVERIFY(said("step-state").contains(QStringLiteral("Drained elsewhere")));
}

void TestCommissioningPanel::takingBackSaysWhatRestsOnIt()
{
    document_->apply(QStringLiteral("all"), [](Sketch& sketch) {
        for (const WorkStep& step : checklistSteps())
            sketch.checklist.ticks.push_back({std::string(step.id), "2026-11-25T06:00:00Z", "", "", ""});
    });
    panel_->findChild<QListWidget*>(QStringLiteral("step-list"));
    for (int i = 0; i < static_cast<int>(checklistSteps().size()); ++i)
        if (said("step-title") != QStringLiteral("Fill slowly"))
            press("step-next");
    QCOMPARE(said("step-title"), QStringLiteral("Fill slowly"));
    press("step-untick");
    QVERIFY(!tickOf(list(), "fill"));
    QVERIFY(said("step-state").contains(QStringLiteral("Energise the heater")));
}

void TestCommissioningPanel::everyTickCanBeUndone()
{
    const Sketch before = document_->sketch();
    press("step-done");
    QVERIFY(!(document_->sketch() == before));
    document_->undoStack().undo();
    QCOMPARE(document_->sketch(), before);
}

void TestCommissioningPanel::theListOpensAStep()
{
    panel_->open(CommissioningPanel::Page::steps);
    auto* steps = find<QListWidget>("step-list");
    QCOMPARE(steps->count(), static_cast<int>(checklistSteps().size()));
    steps->scrollToItem(steps->item(3));
    QTest::mouseClick(steps->viewport(), Qt::LeftButton, {}, steps->visualItemRect(steps->item(3)).center());
    QCOMPARE(said("step-title"), commissioning::text(checklistSteps()[3].title));
    QVERIFY(find<QLabel>("step-title")->isVisible());
}

void TestCommissioningPanel::buttonsAreLargeEnoughForGloves()
{
    for (const auto page : {CommissioningPanel::Page::step, CommissioningPanel::Page::steps,
                            CommissioningPanel::Page::readings}) {
        panel_->open(page);
        QTest::qWait(1);
        for (const QPushButton* button : panel_->findChildren<QPushButton*>())
            if (button->isVisible())
                QVERIFY2(button->height() >= gloved_px, qPrintable(button->text()));
        for (const QToolButton* tab : panel_->findChildren<QToolButton*>())
            if (tab->isVisible() && tab->isCheckable())
                QVERIFY2(tab->height() >= gloved_px, qPrintable(tab->text()));
    }
}

void TestCommissioningPanel::aReadingIsAddedAtTheClocksTimeAndEdited()
{
    panel_->open(CommissioningPanel::Page::readings);
    press("reading-add");
    QCOMPARE(document_->sketch().readings.size(), std::size_t(1));
    const QDateTime taken =
        QDateTime::fromString(QString::fromStdString(document_->sketch().readings.front().time), Qt::ISODate);
    QVERIFY(std::abs(taken.secsTo(QDateTime::currentDateTime())) < 120);
    QCOMPARE(table()->columnCount(), 1);
    table()->item(3, 0)->setText(QStringLiteral("104 F")); // outlet
    QCOMPARE(document_->sketch().readings.front().outlet_degC, std::optional<double>(40.0));
    table()->item(3, 0)->setText(QString());
    QCOMPARE(document_->sketch().readings.front().outlet_degC, std::optional<double>());
    press("reading-remove");
    QVERIFY(document_->sketch().readings.empty());
    document_->undoStack().undo();
    QCOMPARE(document_->sketch().readings.size(), std::size_t(1));
}

void TestCommissioningPanel::whatIsNotUnderstoodChangesNothing()
{
    panel_->open(CommissioningPanel::Page::readings);
    press("reading-add");
    const Sketch before = document_->sketch();
    table()->item(3, 0)->setText(QStringLiteral("hot"));
    QCOMPARE(document_->sketch(), before);
    QVERIFY(said("reading-words").contains(QStringLiteral("hot")));
    QVERIFY(table()->item(3, 0)->text().isEmpty());
}

void TestCommissioningPanel::aTimeAloneIsOnTheReadingsDay()
{
    panel_->open(CommissioningPanel::Page::readings);
    press("reading-add");
    document_->apply(QStringLiteral("Another day"),
                     [](Sketch& sketch) { sketch.readings.front().time = "2026-02-03T12:00:00Z"; });
    table()->item(0, 0)->setText(QStringLiteral("7:36"));
    const QDateTime kept =
        QDateTime::fromString(QString::fromStdString(document_->sketch().readings.front().time), Qt::ISODate);
    QCOMPARE(kept.toLocalTime(), QDateTime(QDate(2026, 2, 3), QTime(7, 36)));
}

void TestCommissioningPanel::turningOnAndOffIsKept()
{
    panel_->open(CommissioningPanel::Page::readings);
    QVERIFY(said("switched").contains(QStringLiteral("not entered")));
    press("turned-on");
    press("turned-off");
    QCOMPARE(list().switched.size(), std::size_t(2));
    QVERIFY(list().switched[0].on && !list().switched[1].on);
    QVERIFY(said("switched").contains(QStringLiteral("off")));
}

void TestCommissioningPanel::verdictsStandBesideTheReadings()
{
    openSample("generator-first-start");
    panel_->open(CommissioningPanel::Page::readings);
    QTRY_VERIFY_WITH_TIMEOUT(said("reading-words").contains(QStringLiteral("Outlet")), patience_ms);
    bool low = false;
    for (int column = 0; column < table()->columnCount(); ++column)
        low = low || table()->item(3, column)->text().startsWith(QStringLiteral("▲"));
    QVERIFY(low); // the outlet is colder than the drawing gives
}

void TestCommissioningPanel::theFaultIsNamedAndShownOnTheDrawing()
{
    openSample("generator-first-start");
    panel_->open(CommissioningPanel::Page::diagnosis);
    QTRY_VERIFY_WITH_TIMEOUT(find<QPushButton>("show:phase-missing"), patience_ms);
    QVERIFY(find<QLabel>("diagnosis-next")->isVisible());
    press("show:phase-missing");
    QCOMPARE(selection_->part().kind, PartKind::heater);
    QCOMPARE(selection_->part().id, std::string("heater-1"));
}

void TestCommissioningPanel::aLimitBrokenIsSaidAndNothingIsCalledSound()
{
    Reading hot;
    hot.time = "2026-11-25T06:00:00Z";
    hot.heater = "heater-1";
    hot.outlet_degC = 88;
    document_->apply(QStringLiteral("Hot at once"), [&](Sketch& sketch) {
        sketch.checklist.switched = {{hot.time, hot.heater, true}};
        sketch.readings = {hot};
    });
    panel_->open(CommissioningPanel::Page::diagnosis);
    QTRY_VERIFY_WITH_TIMEOUT(said("diagnosis-state").contains(QStringLiteral("None of the faults")),
                             patience_ms);
    QVERIFY(said("diagnosis-limits").contains(QStringLiteral("88")));
    QVERIFY(!find<QLabel>("share"));
    for (const QLabel* label : panel_->findChildren<QLabel*>())
        QVERIFY2(!label->text().contains(QStringLiteral("Nothing")), qPrintable(label->text()));
}

void TestCommissioningPanel::theChecklistIsWrittenAsPages()
{
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("checklist.pdf"));
    const Analysis analysis = proved(document_->sketch());
    const sheet::Options options = commissioning::pageOptions(sheet::Paper::a4);
    QCOMPARE(commissioning::exportTo(path, document_->sketch(), analysis, options), QStringList());
    QFile file(path);
    QVERIFY(file.open(QIODevice::ReadOnly));
    const QByteArray written = file.readAll();
    QVERIFY(written.startsWith("%PDF"));
    QCOMPARE(written.count("/Type /Page\n"),
             commissioning::pageCount(document_->sketch(), analysis, options));
    QVERIFY(!written.contains("/Subtype /Image")); // lines and letters alone
}

void TestCommissioningPanel::nothingOnAPageLeavesIt()
{
    openSample("generator-first-start");
    const Analysis analysis = proved(document_->sketch());
    for (const sheet::Paper paper : {sheet::Paper::a4, sheet::Paper::letter}) {
        const sheet::Options options = commissioning::pageOptions(paper);
        const QSizeF size = sheet::pageSize(options);
        constexpr double per_mm = 4;
        for (int page = 0; page < commissioning::pageCount(document_->sketch(), analysis, options); ++page) {
            QImage image(QSize(int(size.width() * per_mm), int(size.height() * per_mm)),
                         QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            painter.scale(per_mm, per_mm);
            commissioning::paintPage(painter, document_->sketch(), analysis, options, page);
            painter.end();
            constexpr int edge = int(10 * per_mm); // the margin is 12 mm
            bool ink = false;
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x) {
                    const bool in_margin =
                        x < edge || y < edge || x >= image.width() - edge || y >= image.height() - edge;
                    if (qGray(image.pixel(x, y)) < 200) {
                        QVERIFY2(!in_margin, "ink in the margin");
                        ink = true;
                    }
                }
            QVERIFY(ink);
        }
    }
}

QTEST_MAIN(TestCommissioningPanel)
#include "test_commissioning_panel.moc"
