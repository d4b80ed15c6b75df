#include "tests/document/failing_disk.h"
#include "tests/sound_loop.h"

#include "app/document/document.h"
#include "app/document/open_lock.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

#include <memory>
#include <stop_token>
#include <sys/stat.h>
#include <utility>

using namespace siphonwright;
using siphonwright::test::FailingDisk;
using Kind = WriteFailure::Kind;
using Step = FailingDisk::Step;

namespace {

QByteArray bytesOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
}

void overwrite(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    QCOMPARE(file.write(bytes), bytes.size());
}

void note(Document& document, const char* text)
{
    document.apply(QStringLiteral("Note"), [text](Sketch& sketch) { sketch.notes = text; });
}

} // namespace

class TestSafeSaving : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init();
    void aFailedStepLeavesTheOldFileWholeAndTheDrawingUnsaved_data();
    void aFailedStepLeavesTheOldFileWholeAndTheDrawingUnsaved();
    void afterAFailedFlushOfTheFolderTheNextSaveIsNoConflict();
    void aDiskThatWritesInSmallPiecesIsEnough();
    void afterAFailureTheNextSaveSucceeds();
    void aFileThatAnotherProgramChangedIsNotOverwritten();
    void bothVersionsAreKeptWhenThatIsChosen();
    void aFileThatIsGoneIsWrittenAnew();
    void aFolderThatIsGoneIsUnreachable();
    void theEmptyFolderOfADriveThatIsGoneIsNotSavedIn();
    void aFolderThatWasMovedToAnotherDiskWithItsFileIsSavedIn();
    void aWriteThatIsGivenUpLeavesTheFileAsItWas();
    void twoWritesAtOnceDoNotShareTheirUnfinishedFile();
    void aReadOnlyFileIsForbidden();
    void whatIsNoFileIsNotReplaced();
    void aSymbolicLinkStaysOne();
    void permissionsOfTheFileStay();
    void aSecondWindowIsToldWhoHasTheFile();
    void aDrawingThatLeftItsFileDoesNotWriteThere();

private:
    QString path() const { return folder_->filePath(QStringLiteral("bus.siphon")); }

    std::unique_ptr<QTemporaryDir> folder_;
    FailingDisk disk_;
    std::unique_ptr<Document> document_;
};

void TestSafeSaving::init()
{
    folder_ = std::make_unique<QTemporaryDir>();
    disk_.step = Step::none;
    disk_.error = EIO;
    disk_.other_device = false;
    document_ = std::make_unique<Document>();
    document_->setDisk(disk_);
    document_->reset(test::soundLoop());
    QCOMPARE(document_->save(path()), QStringList());
}

void TestSafeSaving::aFailedStepLeavesTheOldFileWholeAndTheDrawingUnsaved_data()
{
    QTest::addColumn<Step>("step");
    QTest::addColumn<int>("error");
    QTest::addColumn<Kind>("kind");
    QTest::newRow("no room for a new file") << Step::create << ENOSPC << Kind::full;
    QTest::newRow("folder may only be read") << Step::create << EROFS << Kind::forbidden;
    QTest::newRow("no right to make a file") << Step::create << EACCES << Kind::forbidden;
    QTest::newRow("network drive is gone") << Step::create << ESTALE << Kind::unreachable;
    QTest::newRow("no room at the first byte") << Step::write << ENOSPC << Kind::full;
    QTest::newRow("no room midway") << Step::write_midway << ENOSPC << Kind::full;
    QTest::newRow("over quota midway") << Step::write_midway << EDQUOT << Kind::full;
    QTest::newRow("disk error midway") << Step::write_midway << EIO << Kind::broken;
    QTest::newRow("network drive goes midway") << Step::write_midway << EHOSTDOWN << Kind::unreachable;
    QTest::newRow("disk error at the flush") << Step::flush << EIO << Kind::broken;
    QTest::newRow("no room at the flush") << Step::flush << ENOSPC << Kind::full;
    QTest::newRow("rename is refused") << Step::replace << EPERM << Kind::forbidden;
    QTest::newRow("disk error at the rename") << Step::replace << EIO << Kind::broken;
    QTest::newRow("network drive goes before the rename") << Step::replace << ENOTCONN << Kind::unreachable;
}

void TestSafeSaving::aFailedStepLeavesTheOldFileWholeAndTheDrawingUnsaved()
{
    QFETCH(Step, step);
    QFETCH(int, error);
    QFETCH(Kind, kind);
    const QByteArray before = bytesOf(path());
    note(*document_, "an edit");
    disk_.step = step;
    disk_.error = error;
    const auto failure = document_->write(path());
    QVERIFY(failure);
    QCOMPARE(failure->kind, kind);
    QVERIFY2(failure->text().contains(QDir::toNativeSeparators(path())), qPrintable(failure->text()));
    QVERIFY(document_->isModified());
    QCOMPARE(document_->path(), path());
    QCOMPARE(bytesOf(path()), before);
    const QDir dir(folder_->path());
    QCOMPARE(dir.entryList(QDir::Files | QDir::Hidden), QStringList{QStringLiteral("bus.siphon")});
}

void TestSafeSaving::afterAFailedFlushOfTheFolderTheNextSaveIsNoConflict()
{
    note(*document_, "an edit");
    disk_.step = Step::flush_folder;
    const auto failure = document_->write(path());
    QVERIFY(failure);
    QVERIFY(document_->isModified());
    Document other;
    QCOMPARE(other.open(path()), QStringList()); // old or new, it is whole
    disk_.step = Step::none;
    QVERIFY(!document_->write(path()));
    QVERIFY(!document_->isModified());
}

void TestSafeSaving::aDiskThatWritesInSmallPiecesIsEnough()
{
    note(*document_, "in pieces");
    disk_.step = Step::short_writes;
    QVERIFY(!document_->write(path()));
    Document other;
    QCOMPARE(other.open(path()), QStringList());
    QCOMPARE(other.sketch(), document_->sketch());
}

void TestSafeSaving::afterAFailureTheNextSaveSucceeds()
{
    note(*document_, "kept");
    disk_.step = Step::write_midway;
    disk_.error = ENOSPC;
    QVERIFY(document_->write(path()));
    disk_.step = Step::none;
    QVERIFY(!document_->write(path()));
    QVERIFY(!document_->isModified());
    Document other;
    QCOMPARE(other.open(path()), QStringList());
    QCOMPARE(other.sketch().notes, std::string("kept"));
}

void TestSafeSaving::aFileThatAnotherProgramChangedIsNotOverwritten()
{
    overwrite(path(), "theirs");
    QCOMPARE(document_->onDisk(), OnDisk::changed);
    note(*document_, "mine");
    const auto failure = document_->write(path());
    QVERIFY(failure);
    QCOMPARE(failure->kind, Kind::changed);
    QCOMPARE(bytesOf(path()), QByteArray("theirs"));
    QVERIFY(document_->isModified());
}

void TestSafeSaving::bothVersionsAreKeptWhenThatIsChosen()
{
    for (const char* theirs : {"theirs", "theirs again"}) {
        overwrite(path(), theirs);
        note(*document_, theirs);
        QVERIFY(!document_->write(path(), Theirs::kept_beside));
        QVERIFY(!document_->isModified());
    }
    QCOMPARE(bytesOf(folder_->filePath(QStringLiteral("bus-other-1.siphon"))), QByteArray("theirs"));
    QCOMPARE(bytesOf(folder_->filePath(QStringLiteral("bus-other-2.siphon"))), QByteArray("theirs again"));
    Document other;
    QCOMPARE(other.open(path()), QStringList());
    QCOMPARE(other.sketch(), document_->sketch());
}

void TestSafeSaving::aFileThatIsGoneIsWrittenAnew()
{
    QVERIFY(QFile::remove(path()));
    QCOMPARE(document_->onDisk(), OnDisk::gone);
    QVERIFY(!document_->write(path()));
    QCOMPARE(document_->onDisk(), OnDisk::same);
}

void TestSafeSaving::aFolderThatIsGoneIsUnreachable()
{
    note(*document_, "mine");
    QVERIFY(QDir(folder_->path()).removeRecursively());
    const auto failure = document_->write(path());
    QVERIFY(failure);
    QCOMPARE(failure->kind, Kind::unreachable);
    QVERIFY(document_->isModified());
}

void TestSafeSaving::theEmptyFolderOfADriveThatIsGoneIsNotSavedIn()
{
    // A drive that is taken away leaves the folder it was shown in, on another disk.
    note(*document_, "mine");
    QVERIFY(QFile::remove(path()));
    disk_.other_device = true;
    const auto failure = document_->write(path());
    QVERIFY(failure);
    QCOMPARE(failure->kind, Kind::unreachable);
    QVERIFY(document_->isModified());
    QVERIFY(!QFileInfo::exists(path()));
    const QString elsewhere = folder_->filePath(QStringLiteral("elsewhere.siphon"));
    QVERIFY(!document_->write(elsewhere));
    QCOMPARE(document_->path(), elsewhere);
    QVERIFY(QFile::remove(elsewhere)); // now it is at home on the other disk, and written anew there
    QVERIFY(!document_->write(elsewhere));
}

void TestSafeSaving::aFolderThatWasMovedToAnotherDiskWithItsFileIsSavedIn()
{
    note(*document_, "mine");
    disk_.other_device = true;
    QVERIFY(!document_->write(path()));
}

void TestSafeSaving::aWriteThatIsGivenUpLeavesTheFileAsItWas()
{
    const QByteArray before = bytesOf(path());
    std::stop_source stop;
    stop.request_stop();
    QVERIFY(replaceFile(path(), "new", disk_, std::nullopt, stop.get_token()));
    QCOMPARE(bytesOf(path()), before);
    const QDir dir(folder_->path());
    QCOMPARE(dir.entryList(QDir::Files | QDir::Hidden), QStringList{QStringLiteral("bus.siphon")});
}

void TestSafeSaving::twoWritesAtOnceDoNotShareTheirUnfinishedFile()
{
    // The second comes while the first hangs in its flush.
    class Nested : public Disk {
    public:
        explicit Nested(QString to) : to_(std::move(to)) {}
        int flush(QFile& file) const override
        {
            if (!std::exchange(second_, true) && replaceFile(to_, "the second", Disk::real()))
                return EIO;
            return Disk::flush(file);
        }

    private:
        QString to_;
        mutable bool second_ = false;
    };
    const Nested disk(path());
    const auto failure = replaceFile(path(), "the first", disk, fingerprint(path()));
    QVERIFY(failure);
    QCOMPARE(failure->kind, Kind::changed);
    QCOMPARE(bytesOf(path()), QByteArray("the second"));
}

void TestSafeSaving::whatIsNoFileIsNotReplaced()
{
    // By its name a pipe here, a device with other rights: /dev/null would become a file.
    const QString pipe = folder_->filePath(QStringLiteral("pipe"));
    QCOMPARE(::mkfifo(QFile::encodeName(pipe).constData(), 0600), 0);
    const auto failure = replaceFile(pipe, "bytes", Disk::real());
    QVERIFY(failure);
    QCOMPARE(failure->kind, Kind::broken);
    struct stat told {};
    QCOMPARE(::stat(QFile::encodeName(pipe).constData(), &told), 0);
    QVERIFY(S_ISFIFO(told.st_mode));
    QVERIFY(!putFile(folder_->path(), "bytes").isEmpty());
}

void TestSafeSaving::aReadOnlyFileIsForbidden()
{
    QVERIFY(QFile::setPermissions(path(), QFile::ReadOwner));
    if (QFileInfo(path()).isWritable())
        QSKIP("this user may write everywhere");
    note(*document_, "mine");
    const auto failure = document_->write(path());
    QVERIFY(failure);
    QCOMPARE(failure->kind, Kind::forbidden);
}

void TestSafeSaving::aSymbolicLinkStaysOne()
{
    const QString link = folder_->filePath(QStringLiteral("link.siphon"));
    QVERIFY(QFile::link(path(), link));
    note(*document_, "through the link");
    QVERIFY(!document_->write(link));
    QVERIFY(QFileInfo(link).isSymLink());
    QCOMPARE(bytesOf(path()), bytesOf(link));
    QVERIFY(bytesOf(path()).contains("through the link"));
}

void TestSafeSaving::permissionsOfTheFileStay()
{
    const auto shared = QFile::ReadOwner | QFile::WriteOwner | QFile::ReadGroup | QFile::WriteGroup;
    QVERIFY(QFile::setPermissions(path(), shared));
    const auto before = QFile::permissions(path());
    note(*document_, "mine");
    QVERIFY(!document_->write(path()));
    QCOMPARE(QFile::permissions(path()), before);
}

void TestSafeSaving::aSecondWindowIsToldWhoHasTheFile()
{
    OpenLock first;
    QCOMPARE(first.take(path()), OpenLock::Taken::yes);
    OpenLock second;
    QCOMPARE(second.take(path()), OpenLock::Taken::by_another);
    QVERIFY(second.holder().contains(QSysInfo::machineHostName()));
    const QString link = folder_->filePath(QStringLiteral("link.siphon"));
    QVERIFY(QFile::link(path(), link));
    QCOMPARE(second.take(link), OpenLock::Taken::by_another);
    QCOMPARE(first.take({}), OpenLock::Taken::yes);
    QCOMPARE(second.take(path()), OpenLock::Taken::yes);
}

void TestSafeSaving::aDrawingThatLeftItsFileDoesNotWriteThere()
{
    document_->leaveFile();
    QVERIFY(document_->path().isEmpty());
    QCOMPARE(document_->onDisk(), OnDisk::none);
}

QTEST_GUILESS_MAIN(TestSafeSaving)
#include "test_safe_saving.moc"
