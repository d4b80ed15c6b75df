#include "tests/document/hanging_disk.h"
#include "tests/patience.h"
#include "tests/random_runs.h"
#include "tests/window/slow_place.h"

#include "app/paper/prices_page.h"
#include "app/warming/warm_up_panel.h"
#include "app/window/actions.h"
#include "app/window/checklist_commands.h"
#include "app/window/demonstration_commands.h"
#include "app/window/file_commands.h"
#include "app/window/main_window.h"
#include "app/window/paper_commands.h"
#include "app/window/photo_commands.h"
#include "app/window/print_dialogs.h"
#include "app/window/settings.h"
#include "app/window/sheet_commands.h"
#include "app/window/survey_commands.h"

#include <QBuffer>
#include <QDir>
#include <QElapsedTimer>
#include <QFileDialog>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <memory>
#include <vector>

using namespace siphonwright;
using siphonwright::test::bytesOf;
using siphonwright::test::HangingDisk;
using siphonwright::test::patience_ms;
using siphonwright::test::pipeIn;
using siphonwright::test::pressInBox;
using siphonwright::test::slowBox;
using siphonwright::test::whenBoxSays;
using siphonwright::test::writeInto;

namespace {

QString sampleFile(const char* name)
{
    return QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/") + QLatin1String(name);
}

QByteArray redPng()
{
    QImage red(64, 48, QImage::Format_RGB32);
    red.fill(Qt::red);
    QBuffer out;
    out.open(QIODevice::WriteOnly);
    red.save(&out, "PNG");
    return out.data();
}

} // namespace

/// Files besides the drawing's own, that somebody has chosen in a place that does not answer: what is read
/// into the drawing, and what is made of it.
class TestSlowFiles : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void aPhotoWaitsBesideTheWindow();
    void whoStopsWaitingForAPhotoKeepsTheDrawing();
    void aPriceListWaitsBesideTheWindow();
    void whoStopsWaitingForAPriceListKeepsThePrices();
    void aSecondDrawingWaitsBesideTheWindow();
    void whoStopsWaitingForASecondDrawingKeepsTheOneBeside();
    void aLogoWaitsBesideTheWindow();
    void whoStopsWaitingForALogoGetsTheSheetWithoutIt();
    void whatIsMadeOfTheDrawingIsWrittenWhenItsPlaceAnswers_data();
    void whatIsMadeOfTheDrawingIsWrittenWhenItsPlaceAnswers();
    void whoStopsWaitingForAWriteKeepsWhatStoodThere_data();
    void whoStopsWaitingForAWriteKeepsWhatStoodThere();
    void aPrintIntoAFileWaitsBesideTheWindow();
    void saveAsBeginsInTheFolderOfTheDrawing();
    void aDrawingIsRecoveredWhoseOwnPlaceDoesNotAnswer();

private:
    QString slow() const { return folder_->filePath(QStringLiteral("slow")); }
    paper::PricesPage& prices()
    {
        window_->paper().show(paper::PaperWindow::Tab::prices);
        return window_->paper().paperWindow()->prices();
    }
    SheetCommands& sheets() const { return *window_->findChild<SheetCommands*>(); }
    void exportWarmUp(const QString& path)
    {
        window_->actions()[QStringLiteral("export-warm-up")]->trigger();
        Q_EMIT window_->findChild<QFileDialog*>()->fileSelected(path);
    }
    /// One of the files that are made, by its name.
    void write(const QString& path)
    {
        const QString name = path.section(QLatin1Char('/'), -1);
        if (name.startsWith(QLatin1String("sheet")))
            sheets().exportTo(path);
        else if (name.startsWith(QLatin1String("estimate")))
            window_->paper().writePdf(paper::Kind::for_customer, path);
        else if (name.startsWith(QLatin1String("parts")))
            window_->paper().writeCsv(path);
        else if (name.startsWith(QLatin1String("wanted")))
            Q_EMIT prices().wantedChosen(path);
        else if (name.startsWith(QLatin1String("form")))
            window_->survey().exportFormTo(path);
        else if (name.startsWith(QLatin1String("handout")))
            window_->demonstration().exportHandoutTo(path);
        else if (name.startsWith(QLatin1String("moment")))
            window_->demonstration().exportMomentTo(path);
        else if (name.startsWith(QLatin1String("checklist")))
            window_->findChild<ChecklistCommands*>()->exportTo(path);
        else if (name.startsWith(QLatin1String("warm-up")))
            exportWarmUp(path);
        else
            QFAIL(qPrintable(name));
    }
    /// All of them, or where few are wanted every so manieth.
    static void rowsOfFiles(int every = 1);
    /// What the file is made of is there.
    void makeReady(const QString& name)
    {
        const auto* warm_up = window_->findChild<warming::WarmUpPanel*>();
        if (name.startsWith(QLatin1String("warm-up")))
            QTRY_VERIFY_WITH_TIMEOUT(warm_up->hasResult(), patience_ms);
        if (name.startsWith(QLatin1String("moment")) || name.startsWith(QLatin1String("handout")))
            window_->demonstration().begin();
    }

    std::unique_ptr<QTemporaryDir> folder_;
    HangingDisk& disk_ = HangingDisk::one();
    std::unique_ptr<MainWindow> window_;
};

void TestSlowFiles::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test-slow-files"));
}

void TestSlowFiles::init()
{
    folder_ = std::make_unique<QTemporaryDir>();
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_->path());
    QSettings().clear();
    QVERIFY(QDir().mkpath(slow()));
    window_ = std::make_unique<MainWindow>();
    window_->document().setDisk(disk_);
    window_->files().setPatience({std::chrono::milliseconds{20}, std::chrono::milliseconds{200}});
    QCOMPARE(window_->document().open(sampleFile("sound-bus.siphon")), QStringList());
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
}

void TestSlowFiles::cleanup()
{
    disk_.letGo();
    window_.reset();
}

void TestSlowFiles::aPhotoWaitsBesideTheWindow()
{
    const QString pipe = pipeIn(*folder_, "bay.png");
    bool lived = false;
    whenBoxSays(*window_, "is being opened", [&] {
        lived = true;
        QVERIFY(!window_->document().sketch().photo);
        writeInto(pipe, redPng());
    });
    window_->photo().insertFile(pipe);
    QVERIFY(lived);
    QVERIFY(window_->document().sketch().photo);
    QVERIFY(!slowBox(*window_));
}

void TestSlowFiles::whoStopsWaitingForAPhotoKeepsTheDrawing()
{
    const QString pipe = pipeIn(*folder_, "bay.png");
    whenBoxSays(*window_, "is not open yet", [&] { pressInBox(*window_, "Stop waiting"); });
    window_->photo().insertFile(pipe);
    QVERIFY(!window_->document().isModified());
    writeInto(pipe, redPng());
    QTest::qWait(100);
    QVERIFY(!window_->document().sketch().photo);
}

void TestSlowFiles::aPriceListWaitsBesideTheWindow()
{
    const QString pipe = pipeIn(*folder_, "invented.csv");
    bool lived = false;
    whenBoxSays(*window_, "is being opened", [&] {
        lived = true;
        writeInto(pipe, bytesOf(sampleFile("prices-invented.csv")));
    });
    Q_EMIT prices().listChosen(pipe);
    QVERIFY(lived);
    QCOMPARE(quoteOf(window_->document().sketch()).prices.name, std::string("invented"));
}

void TestSlowFiles::whoStopsWaitingForAPriceListKeepsThePrices()
{
    const QString pipe = pipeIn(*folder_, "invented.csv");
    whenBoxSays(*window_, "does not answer", [&] { pressInBox(*window_, "Stop waiting"); });
    Q_EMIT prices().listChosen(pipe);
    QVERIFY(!window_->document().isModified());
    writeInto(pipe, bytesOf(sampleFile("prices-invented.csv")));
    QTest::qWait(100);
    QVERIFY(!window_->document().isModified());
}

void TestSlowFiles::aSecondDrawingWaitsBesideTheWindow()
{
    const QString pipe = pipeIn(*folder_, "fixed.siphon");
    bool lived = false;
    whenBoxSays(*window_, "is being opened", [&] {
        lived = true;
        writeInto(pipe, bytesOf(sampleFile("supply-hump.siphon")));
    });
    window_->demonstration().openBeside(pipe);
    QVERIFY(lived);
    QVERIFY(window_->demonstration().beside());
    QVERIFY(window_->demonstration().beside()->moment());
}

void TestSlowFiles::whoStopsWaitingForASecondDrawingKeepsTheOneBeside()
{
    window_->demonstration().openBeside(sampleFile("supply-hump.siphon"));
    const demonstration::Beside* before = window_->demonstration().beside();
    QVERIFY(before);
    const QString pipe = pipeIn(*folder_, "fixed.siphon");
    whenBoxSays(*window_, "does not answer", [&] { pressInBox(*window_, "Stop waiting"); });
    window_->demonstration().openBeside(pipe);
    QCOMPARE(window_->demonstration().beside(), before);
    writeInto(pipe, bytesOf(sampleFile("supply-hump.siphon")));
}

void TestSlowFiles::aLogoWaitsBesideTheWindow()
{
    const QString without = folder_->filePath(QStringLiteral("without.svg"));
    sheets().exportTo(without);
    const QString pipe = pipeIn(*folder_, "logo.png");
    settings::logo.set(pipe);
    bool lived = false;
    whenBoxSays(*window_, "is being opened", [&] {
        lived = true;
        writeInto(pipe, redPng());
    });
    const QString with = folder_->filePath(QStringLiteral("with.svg"));
    sheets().exportTo(with);
    QVERIFY(lived);
    QCOMPARE(bytesOf(with).count("<image"), bytesOf(without).count("<image") + 1);
}

void TestSlowFiles::whoStopsWaitingForALogoGetsTheSheetWithoutIt()
{
    const QString pipe = pipeIn(*folder_, "logo.png");
    settings::logo.set(pipe);
    whenBoxSays(*window_, "does not answer", [&] {
        QVERIFY(slowBox(*window_)->informativeText().contains(QStringLiteral("sheet is made without it")));
        pressInBox(*window_, "Stop waiting");
    });
    const QString to = folder_->filePath(QStringLiteral("sheet.svg"));
    sheets().exportTo(to);
    QVERIFY(bytesOf(to).contains("</svg>"));
    QVERIFY(!bytesOf(to).contains("<image"));
    QCOMPARE(settings::logo.get(), pipe); // for the next time
    writeInto(pipe, redPng());
}

void TestSlowFiles::rowsOfFiles(int every)
{
    QTest::addColumn<QString>("name");
    const std::vector names = {"sheet.pdf",  "sheet.svg",   "sheet.png",     "estimate.pdf",
                               "parts.csv",  "wanted.csv",  "form.pdf",      "moment.png",
                               "moment.svg", "handout.pdf", "checklist.pdf", "warm-up.csv"};
    for (const char* name : siphonwright::test::someOf(names, every))
        QTest::newRow(name) << QString::fromLatin1(name);
}

void TestSlowFiles::whatIsMadeOfTheDrawingIsWrittenWhenItsPlaceAnswers_data()
{
    rowsOfFiles();
}

void TestSlowFiles::whatIsMadeOfTheDrawingIsWrittenWhenItsPlaceAnswers()
{
    QFETCH(QString, name);
    makeReady(name);
    const QString path = slow() + QLatin1Char('/') + name;
    bool lived = false;
    disk_.hangIn(slow());
    whenBoxSays(*window_, "is being written", [&] {
        lived = true;
        QVERIFY(!QFile::exists(path));
        disk_.letGo();
    });
    write(path);
    QVERIFY(lived);
    QVERIFY(QFile::exists(path));
    QVERIFY(!window_->findChild<QMessageBox*>());
}

void TestSlowFiles::whoStopsWaitingForAWriteKeepsWhatStoodThere_data()
{
    rowsOfFiles(4); // each has been written beside the window in the test before
}

void TestSlowFiles::whoStopsWaitingForAWriteKeepsWhatStoodThere()
{
    QFETCH(QString, name);
    makeReady(name);
    const QString path = slow() + QLatin1Char('/') + name;
    QFile old(path);
    QVERIFY(old.open(QIODevice::WriteOnly));
    old.write("of yesterday");
    old.close();
    const int hung = disk_.cameBack();
    disk_.hangIn(slow());
    whenBoxSays(*window_, "is not written yet", [&] { pressInBox(*window_, "Stop waiting"); });
    write(path);
    disk_.letGo();
    QTRY_COMPARE_WITH_TIMEOUT(disk_.cameBack(), hung + 1, patience_ms);
    const auto left = [this] { return QDir(slow()).entryList(QDir::Files | QDir::Hidden); };
    QTRY_COMPARE_WITH_TIMEOUT(left(), QStringList{name}, patience_ms);
    QCOMPARE(bytesOf(path), QByteArray("of yesterday"));
}

void TestSlowFiles::aPrintIntoAFileWaitsBesideTheWindow()
{
    const QString path = slow() + QStringLiteral("/print.pdf");
    QPrinter printer;
    printer.setOutputFileName(path);
    bool lived = false;
    disk_.hangIn(slow());
    whenBoxSays(*window_, "is being written", [&] {
        lived = true;
        QVERIFY(!QFile::exists(path));
        disk_.letGo();
    });
    const auto paint = [](QPrinter& on) { QPainter(&on).drawRect(10, 10, 50, 50); };
    QCOMPARE(printing::paintOn(printer, paint, window_->files().put()), QStringList());
    QVERIFY(lived);
    QVERIFY(bytesOf(path).startsWith("%PDF-"));
    QCOMPARE(printer.outputFileName(), path);
}

void TestSlowFiles::saveAsBeginsInTheFolderOfTheDrawing()
{
    const QString path = slow() + QStringLiteral("/bay.siphon");
    QCOMPARE(window_->document().save(path), QStringList());
    settings::folder.set(folder_->path());
    window_->files().saveAs();
    const auto* where = window_->findChild<QFileDialog*>();
    QVERIFY(where);
    QCOMPARE(where->directory(), QDir(slow()));
    QCOMPARE(where->selectedFiles(), QStringList{path});
}

void TestSlowFiles::aDrawingIsRecoveredWhoseOwnPlaceDoesNotAnswer()
{
    // Who asks for a lock reads the one that is there.
    const QString pipe = pipeIn(*folder_, ".bay.siphon.lock");
    QElapsedTimer time;
    time.start();
    Sketch kept = window_->document().sketch();
    kept.notes = "from before the crash";
    window_->document().recover(kept, folder_->filePath(QStringLiteral("bay.siphon")), "fingerprint");
    QVERIFY2(time.elapsed() < patience_ms, qPrintable(QString::number(time.elapsed())));
    QCOMPARE(window_->document().sketch().notes, kept.notes);
    QVERIFY(window_->document().isModified());
    writeInto(pipe, "1\n");
}

QTEST_MAIN(TestSlowFiles)
#include "test_slow_files.moc"
