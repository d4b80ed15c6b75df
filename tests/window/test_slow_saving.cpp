#include "tests/document/hanging_disk.h"
#include "tests/patience.h"
#include "tests/window/slow_place.h"

#include "app/window/file_commands.h"
#include "app/window/file_strip.h"
#include "app/window/main_window.h"

#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QMessageBox>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <memory>
#include <sys/stat.h>

using namespace siphonwright;
using siphonwright::test::bytesOf;
using siphonwright::test::HangingDisk;
using siphonwright::test::patience_ms;
using siphonwright::test::pipeIn;
using siphonwright::test::pressInBox;
using siphonwright::test::slowBox;
using siphonwright::test::whenBoxSays;
using siphonwright::test::writeInto;

/// A drive that does not answer, as one of a network that is gone.
class TestSlowSaving : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void theWindowLivesWhileASaveHangsAndIsSavedWhenTheDiskAnswers();
    void aPlaceThatDoesNotAnswerIsSaidAndAnotherCanBeTaken();
    void whoStopsWaitingKeepsDrawingAndFile();
    void aFileWhosePlaceDoesNotAnswerDoesNotStopTheWindow();
    void whoStopsWaitingForAFileToOpenKeepsTheDrawing();
    void aFileIsOpenedWhenItsPlaceAnswersAfterAll();

private:
    QString slow() const { return folder_->filePath(QStringLiteral("slow")); }
    QString path() const { return slow() + QStringLiteral("/bay.siphon"); }
    void note(const char* text)
    {
        window_->document().apply(QStringLiteral("note"), [text](Sketch& s) { s.notes = text; });
    }
    QMessageBox* box() const { return slowBox(*window_); }
    void waitUntilTheHangingWriteHasEnded(int came_back)
    {
        disk_.letGo();
        QTRY_COMPARE_WITH_TIMEOUT(disk_.cameBack(), came_back, patience_ms);
        const auto parts = [this] {
            return QDir(slow()).entryList({QStringLiteral("*.part")}, QDir::Files | QDir::Hidden);
        };
        QTRY_COMPARE_WITH_TIMEOUT(parts(), QStringList(), patience_ms);
    }

    std::unique_ptr<QTemporaryDir> folder_;
    HangingDisk& disk_ = HangingDisk::one();
    std::unique_ptr<MainWindow> window_;
};

void TestSlowSaving::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test-slow-saving"));
}

void TestSlowSaving::init()
{
    folder_ = std::make_unique<QTemporaryDir>();
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_->path());
    QVERIFY(QDir().mkpath(slow()));
    window_ = std::make_unique<MainWindow>();
    window_->document().setDisk(disk_);
    window_->files().setPatience({std::chrono::milliseconds{20}, std::chrono::milliseconds{200}});
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    note("first");
    QCOMPARE(window_->document().save(path()), QStringList());
    note("second");
    disk_.hangIn(slow());
}

void TestSlowSaving::cleanup()
{
    disk_.letGo();
    window_.reset();
}

void TestSlowSaving::theWindowLivesWhileASaveHangsAndIsSavedWhenTheDiskAnswers()
{
    bool lived = false;
    bool closed = false;
    whenBoxSays(*window_, "is being saved", [&] {
        lived = true;
        QVERIFY(window_->document().isModified());
        disk_.letGo();
    });
    window_->files().save([&closed] { closed = true; });
    QVERIFY(lived);
    QVERIFY(closed);
    QVERIFY(!window_->document().isModified());
    QVERIFY(bytesOf(path()).contains("second"));
    QVERIFY(!box());
}

void TestSlowSaving::aPlaceThatDoesNotAnswerIsSaidAndAnotherCanBeTaken()
{
    const QString elsewhere = folder_->filePath(QStringLiteral("elsewhere.siphon"));
    const int hung = disk_.cameBack();
    bool closed = false;
    whenBoxSays(*window_, "does not answer", [&] { pressInBox(*window_, "Save as"); });
    window_->files().save([&closed] { closed = true; });
    QVERIFY(!closed);
    QVERIFY(window_->document().isModified());
    auto* where = window_->findChild<QFileDialog*>();
    QVERIFY(where);
    QVERIFY(where->directory() != QDir(slow())); // listing that folder would hang in turn
    QCOMPARE(where->selectedFiles().value(0).section(QLatin1Char('/'), -1), QStringLiteral("bay.siphon"));
    Q_EMIT where->fileSelected(elsewhere);
    QVERIFY(closed);
    QVERIFY(!window_->document().isModified());
    QCOMPARE(window_->document().path(), elsewhere);
    QVERIFY(bytesOf(elsewhere).contains("second"));
    // The write that was given up comes back, and leaves what is there as it was.
    waitUntilTheHangingWriteHasEnded(hung + 1);
    QVERIFY(bytesOf(path()).contains("first"));
    QVERIFY(!bytesOf(path()).contains("second"));
}

void TestSlowSaving::whoStopsWaitingKeepsDrawingAndFile()
{
    const int hung = disk_.cameBack();
    whenBoxSays(*window_, "does not answer", [&] { pressInBox(*window_, "Stop waiting"); });
    window_->files().save();
    QVERIFY(window_->document().isModified());
    QCOMPARE(window_->document().sketch().notes, std::string("second"));
    waitUntilTheHangingWriteHasEnded(hung + 1);
    QVERIFY(bytesOf(path()).contains("first"));
    window_->files().save();
    QVERIFY(!window_->document().isModified());
    QVERIFY(bytesOf(path()).contains("second"));
}

void TestSlowSaving::aFileWhosePlaceDoesNotAnswerDoesNotStopTheWindow()
{
    // Who opens a pipe waits for its other end.
    QVERIFY(QFile::remove(path()));
    QCOMPARE(::mkfifo(QFile::encodeName(path()).constData(), 0600), 0);
    auto* strip = window_->findChild<FileStrip*>();
    strip->look();
    QVERIFY(strip->isVisible());
    const auto* sentence = strip->findChild<QLabel*>(QStringLiteral("file-strip-sentence"));
    QVERIFY2(sentence->text().contains(QStringLiteral("does not answer")), qPrintable(sentence->text()));
    QFile other_end(path());
    QVERIFY(other_end.open(QIODevice::WriteOnly));
    other_end.close();
    QVERIFY(QFile::remove(path()));
    QTRY_VERIFY_WITH_TIMEOUT(sentence->text().contains(QStringLiteral("no longer in its place")),
                             patience_ms);
}

void TestSlowSaving::whoStopsWaitingForAFileToOpenKeepsTheDrawing()
{
    const QString pipe = pipeIn(*folder_, "pipe.siphon");
    window_->document().undoStack().setClean();
    whenBoxSays(*window_, "is not open yet", [&] { pressInBox(*window_, "Stop waiting"); });
    window_->files().open(pipe);
    QCOMPARE(window_->document().path(), path());
    QCOMPARE(window_->document().sketch().notes, std::string("second"));
    // What is read after all is not put on the table any more.
    writeInto(pipe, bytesOf(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon")));
    QTest::qWait(100);
    QCOMPARE(window_->document().path(), path());
}

void TestSlowSaving::aFileIsOpenedWhenItsPlaceAnswersAfterAll()
{
    const QString pipe = pipeIn(*folder_, "pipe.siphon");
    window_->document().undoStack().setClean();
    bool lived = false;
    whenBoxSays(*window_, "is being opened", [&] {
        lived = true;
        writeInto(pipe, bytesOf(QStringLiteral(SIPHONWRIGHT_SOURCE_DIR "/samples/sound-bus.siphon")));
    });
    window_->files().open(pipe);
    QVERIFY(lived);
    QCOMPARE(window_->document().path(), pipe);
    QVERIFY(!window_->document().sketch().hoses.empty());
}

QTEST_MAIN(TestSlowSaving)
#include "test_slow_saving.moc"
