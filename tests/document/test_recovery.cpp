#include "tests/document/failing_disk.h"
#include "tests/document/hanging_disk.h"
#include "tests/patience.h"
#include "tests/sound_loop.h"

#include "app/document/document.h"
#include "app/document/recovery.h"

#include <QFileInfo>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

using namespace siphonwright;
using siphonwright::test::FailingDisk;
using siphonwright::test::patience_ms;

namespace {

void noteDown(Document& document, const char* text)
{
    document.apply(QStringLiteral("Note"), [text](Sketch& sketch) { sketch.notes = text; });
}

} // namespace

class TestRecovery : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void cleanup();
    void anEditIsKeptWithTheDrawingsFileAndItsFingerprint();
    void aRunningProgramsDrawingIsNotOffered();
    void savingTakesTheRecoveryFileAway();
    void undoingToWhatWasSavedTakesItAway();
    void closingOnPurposeTakesItAway();
    void whatIsPutAsideIsOfferedAtOnce();
    void aRecoveredDrawingIsUnsavedAndKeepsItsFile();
    void aRecoveryIsTakenOverByOneWindowAlone();
    void discardingTakesOneAway();
    void aFullDiskIsSaidAndTriedAgain();
    void aDiskThatDoesNotAnswerIsSaidAndHeardWhenItDoes();

private:
    QString recoveryFolderHere() const { return folder_->filePath(QStringLiteral("recovery")); }
    QString path() const { return folder_->filePath(QStringLiteral("bus.siphon")); }
    void editAndWait(const char* text)
    {
        QSignalSpy kept(recovery_.get(), &Recovery::kept);
        noteDown(*document_, text);
        QTRY_VERIFY_WITH_TIMEOUT(QFileInfo::exists(recovery_->file()), patience_ms);
    }

    std::unique_ptr<QTemporaryDir> folder_;
    FailingDisk disk_;
    std::unique_ptr<Document> document_;
    std::unique_ptr<Recovery> recovery_;
};

void TestRecovery::init()
{
    folder_ = std::make_unique<QTemporaryDir>();
    disk_.step = FailingDisk::Step::none;
    document_ = std::make_unique<Document>();
    document_->reset(test::soundLoop());
    QCOMPARE(document_->save(path()), QStringList());
    recovery_ = std::make_unique<Recovery>(*document_, recoveryFolderHere(), disk_);
}

void TestRecovery::cleanup()
{
    recovery_.reset();
    document_.reset();
}

void TestRecovery::anEditIsKeptWithTheDrawingsFileAndItsFingerprint()
{
    noteDown(*document_, "aside");
    QVERIFY(!recovery_->setAside());
    const QList<RecoveryEntry> entries = recoverable(recoveryFolderHere());
    QCOMPARE(entries.size(), 1);
    QCOMPARE(entries[0].original, path());
    QCOMPARE(entries[0].fingerprint, *fingerprint(path()));
    QVERIFY(entries[0].edited.isValid());
    QCOMPARE(readRecovery(entries[0])->notes, std::string("aside"));
}

void TestRecovery::aRunningProgramsDrawingIsNotOffered()
{
    editAndWait("running");
    QCOMPARE(recoverable(recoveryFolderHere()).size(), 0);
}

void TestRecovery::savingTakesTheRecoveryFileAway()
{
    editAndWait("to be saved");
    QVERIFY(document_->isModified());
    QCOMPARE(document_->save(path()), QStringList());
    QTRY_VERIFY_WITH_TIMEOUT(!QFileInfo::exists(recovery_->file()), patience_ms);
}

void TestRecovery::undoingToWhatWasSavedTakesItAway()
{
    editAndWait("to be undone");
    document_->undoStack().undo();
    QTRY_VERIFY_WITH_TIMEOUT(!QFileInfo::exists(recovery_->file()), patience_ms);
}

void TestRecovery::closingOnPurposeTakesItAway()
{
    editAndWait("thrown away");
    const QString file = recovery_->file();
    recovery_.reset();
    QVERIFY(!QFileInfo::exists(file));
    QCOMPARE(recoverable(recoveryFolderHere()).size(), 0);
}

void TestRecovery::whatIsPutAsideIsOfferedAtOnce()
{
    noteDown(*document_, "first");
    const QString first = recovery_->file();
    QVERIFY(!recovery_->setAside());
    QVERIFY(recovery_->file() != first);
    noteDown(*document_, "second");
    QVERIFY(!recovery_->setAside());
    const QList<RecoveryEntry> entries = recoverable(recoveryFolderHere());
    QCOMPARE(entries.size(), 2);
    QVERIFY(readRecovery(entries[0])->notes != readRecovery(entries[1])->notes);
}

void TestRecovery::aRecoveredDrawingIsUnsavedAndKeepsItsFile()
{
    noteDown(*document_, "mine");
    QVERIFY(!recovery_->setAside());
    const RecoveryEntry entry = recoverable(recoveryFolderHere()).front();
    Document again;
    Recovery keeping(again, recoveryFolderHere());
    QVERIFY(keeping.takeOver(entry));
    again.recover(*readRecovery(entry), entry.original, entry.fingerprint);
    QVERIFY(again.isModified());
    QCOMPARE(again.path(), path());
    QCOMPARE(keeping.file(), entry.file);
    // The file is as it was then, so saving is no conflict; and it ends the recovery.
    QVERIFY(!again.write(path()));
    QTRY_VERIFY_WITH_TIMEOUT(!QFileInfo::exists(entry.file), patience_ms);
}

void TestRecovery::aRecoveryIsTakenOverByOneWindowAlone()
{
    noteDown(*document_, "one");
    QVERIFY(!recovery_->setAside());
    const RecoveryEntry entry = recoverable(recoveryFolderHere()).front();
    Document first;
    Recovery of_first(first, recoveryFolderHere());
    Document second;
    Recovery of_second(second, recoveryFolderHere());
    QVERIFY(of_first.takeOver(entry));
    QVERIFY(!of_second.takeOver(entry));
    discardRecovery(entry); // and nobody else may throw it away
    QVERIFY(QFileInfo::exists(entry.file));
}

void TestRecovery::discardingTakesOneAway()
{
    noteDown(*document_, "doomed");
    QVERIFY(!recovery_->setAside());
    discardRecovery(recoverable(recoveryFolderHere()).front());
    QCOMPARE(recoverable(recoveryFolderHere()).size(), 0);
}

void TestRecovery::aFullDiskIsSaidAndTriedAgain()
{
    QSignalSpy failed(recovery_.get(), &Recovery::failed);
    disk_.error = ENOSPC;
    disk_.step = FailingDisk::Step::write;
    noteDown(*document_, "no room");
    QTRY_VERIFY_WITH_TIMEOUT(!failed.isEmpty(), patience_ms);
    disk_.step = FailingDisk::Step::none;
    QTRY_VERIFY_WITH_TIMEOUT(QFileInfo::exists(recovery_->file()), patience_ms);
}

void TestRecovery::aDiskThatDoesNotAnswerIsSaidAndHeardWhenItDoes()
{
    test::HangingDisk hanging;
    recovery_.reset();
    recovery_ = std::make_unique<Recovery>(*document_, recoveryFolderHere(), hanging);
    QSignalSpy failed(recovery_.get(), &Recovery::failed);
    QSignalSpy kept(recovery_.get(), &Recovery::kept);
    hanging.hangIn(recoveryFolderHere());
    noteDown(*document_, "an edit");
    QTRY_COMPARE_WITH_TIMEOUT(failed.count(), 1, patience_ms);
    QCOMPARE(failed.front().front().value<WriteFailure>().kind, WriteFailure::Kind::unreachable);
    kept.clear(); // that the file of a saved drawing went
    hanging.letGo();
    QTRY_COMPARE_WITH_TIMEOUT(kept.count(), 1, patience_ms);
    QVERIFY(QFileInfo::exists(recovery_->file()));
    recovery_.reset(); // while its disk lives
}

QTEST_GUILESS_MAIN(TestRecovery)
#include "test_recovery.moc"
