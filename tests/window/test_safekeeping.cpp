#include "tests/document/failing_disk.h"

#include "app/document/recovery.h"
#include "app/window/file_commands.h"
#include "app/window/file_strip.h"
#include "app/window/main_window.h"
#include "app/window/recovery_offer.h"

#include <QAbstractButton>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QTreeWidget>

#include <memory>

using namespace siphonwright;
using siphonwright::test::FailingDisk;

/// What the window says and offers when a file or its disk is not what it was.
class TestSafekeeping : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void init();
    void cleanup();
    void namesAndTextsOfFilesAreNoMarkup();
    void aFailedSaveLeavesWaysOn();
    void aReadOnlyPlaceLeavesSaveAs();
    void aChangedFileIsSaidAndBothVersionsCanBeKept();
    void theirsOpensAndMineCanBeRecovered();
    void aFileOpenInAnotherWindowOpensAsACopy();
    void whatACrashLeftIsOfferedAndOpened();
    void whatIsKeptForLaterIsOfferedAgain();
    void throwingAwayIsAskedFor();

private:
    QString path() const { return folder_->filePath(QStringLiteral("bay.siphon")); }
    QString recovery() const { return folder_->filePath(QStringLiteral("recovery")); }
    void note(const char* text)
    {
        window_->document().apply(QStringLiteral("note"), [text](Sketch& s) { s.notes = text; });
    }
    void overwriteAsAnother()
    {
        Document other;
        QCOMPARE(other.open(path()), QStringList());
        other.apply(QStringLiteral("note"), [](Sketch& s) { s.notes = "theirs"; });
        QCOMPARE(other.save(path()), QStringList());
    }
    /// As a program leaves it that was killed.
    void leaveARecovery()
    {
        Document killed;
        Recovery kept(killed, recovery());
        killed.apply(QStringLiteral("note"), [](Sketch& s) { s.notes = "from before the crash"; });
        QVERIFY(!kept.setAside());
    }
    QMessageBox* box(QWidget* parent) const { return parent->findChild<QMessageBox*>(); }
    static QAbstractButton* buttonOf(const QMessageBox& box, const char* words)
    {
        for (QAbstractButton* button : box.buttons()) {
            if (button->text().remove(QLatin1Char('&')).startsWith(QLatin1String(words)))
                return button;
        }
        return nullptr;
    }
    void press(QWidget* parent, const char* words)
    {
        QTRY_VERIFY(box(parent));
        QAbstractButton* button = buttonOf(*box(parent), words);
        QVERIFY2(button, words);
        QTest::mouseClick(button, Qt::LeftButton);
        QTRY_VERIFY(!box(parent));
    }
    RecoveryOffer* offer() const { return window_->findChild<RecoveryOffer*>(); }

    std::unique_ptr<QTemporaryDir> folder_;
    FailingDisk disk_;
    std::unique_ptr<MainWindow> window_;
};

void TestSafekeeping::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("Siphonwright"));
    QCoreApplication::setApplicationName(QStringLiteral("test-safekeeping"));
}

void TestSafekeeping::init()
{
    folder_ = std::make_unique<QTemporaryDir>();
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, folder_->path());
    disk_.step = FailingDisk::Step::none;
    window_ = std::make_unique<MainWindow>();
    window_->document().setDisk(disk_);
    window_->show();
    QVERIFY(QTest::qWaitForWindowExposed(window_.get()));
    note("first");
    QCOMPARE(window_->document().save(path()), QStringList());
}

void TestSafekeeping::cleanup()
{
    window_.reset();
}

void TestSafekeeping::namesAndTextsOfFilesAreNoMarkup()
{
    const QString name = QStringLiteral("<b>bus</b><img src='x'>.siphon");
    window_->files().tell(name, {QStringLiteral("<u>line 3</u>: not a number")});
    QTRY_VERIFY(box(window_.get()));
    int words = 0;
    for (const QLabel* label : box(window_.get())->findChildren<QLabel*>()) {
        QCOMPARE(label->textFormat(), Qt::PlainText);
        words += label->text().contains(QLatin1Char('<')) ? 1 : 0;
    }
    QCOMPARE(words, 2);
    press(window_.get(), "OK");
}

void TestSafekeeping::aFailedSaveLeavesWaysOn()
{
    note("second");
    disk_.step = FailingDisk::Step::write_midway;
    disk_.error = ENOSPC;
    bool closed = false;
    window_->files().save([&closed] { closed = true; });
    QTRY_VERIFY(box(window_.get()));
    QVERIFY(box(window_.get())->informativeText().contains(QDir::toNativeSeparators(path())));
    QVERIFY(buttonOf(*box(window_.get()), "Save as"));
    disk_.step = FailingDisk::Step::none;
    press(window_.get(), "Try again");
    QVERIFY(closed);
    QVERIFY(!window_->document().isModified());
}

void TestSafekeeping::aReadOnlyPlaceLeavesSaveAs()
{
    note("second");
    disk_.step = FailingDisk::Step::create;
    disk_.error = EROFS;
    window_->files().save();
    QTRY_VERIFY(box(window_.get()));
    QVERIFY(buttonOf(*box(window_.get()), "Save as"));
    QVERIFY(!buttonOf(*box(window_.get()), "Try again"));
    press(window_.get(), "Cancel");
    QVERIFY(window_->document().isModified());
}

void TestSafekeeping::aChangedFileIsSaidAndBothVersionsCanBeKept()
{
    note("mine");
    overwriteAsAnother();
    auto* strip = window_->findChild<FileStrip*>();
    QTRY_VERIFY_WITH_TIMEOUT(strip->isVisible(), 30000); // the system tells of it
    window_->files().save();
    press(window_.get(), "Save mine");
    QVERIFY(!window_->document().isModified());
    QTRY_VERIFY(!strip->isVisible());
    Document theirs;
    QCOMPARE(theirs.open(folder_->filePath(QStringLiteral("bay-other-1.siphon"))), QStringList());
    QCOMPARE(theirs.sketch().notes, std::string("theirs"));
    Document mine;
    QCOMPARE(mine.open(path()), QStringList());
    QCOMPARE(mine.sketch().notes, std::string("mine"));
}

void TestSafekeeping::theirsOpensAndMineCanBeRecovered()
{
    window_->keepSafe(recovery());
    note("mine");
    overwriteAsAnother();
    window_->files().save();
    press(window_.get(), "Open theirs");
    QCOMPARE(window_->document().sketch().notes, std::string("theirs"));
    const QList<RecoveryEntry> entries = recoverable(recovery());
    QCOMPARE(entries.size(), 1);
    QCOMPARE(readRecovery(entries[0])->notes, std::string("mine"));
}

void TestSafekeeping::aFileOpenInAnotherWindowOpensAsACopy()
{
    MainWindow second;
    second.show();
    second.files().open(path());
    press(&second, "Cancel");
    QVERIFY(second.document().path().isEmpty());
    second.files().open(path());
    press(&second, "Open a copy");
    QVERIFY(second.document().path().isEmpty());
    QCOMPARE(second.document().sketch(), window_->document().sketch());
    window_->files().startNew(); // and lets the file go
    second.files().open(path());
    QCOMPARE(second.document().path(), path());
}

void TestSafekeeping::whatACrashLeftIsOfferedAndOpened()
{
    leaveARecovery();
    window_->keepSafe(recovery());
    QTRY_VERIFY(offer());
    QCOMPARE(offer()->findChild<QTreeWidget*>()->topLevelItemCount(), 1);
    QTest::mouseClick(offer()->findChild<QPushButton*>(QStringLiteral("recovery-open")), Qt::LeftButton);
    QTRY_COMPARE(window_->document().sketch().notes, std::string("from before the crash"));
    QVERIFY(window_->document().isModified());
    QTRY_VERIFY(!offer());
    QCOMPARE(recoverable(recovery()).size(), 0); // it is on the table, and still in its file
    QCOMPARE(QDir(recovery()).entryList({QStringLiteral("*.recovery")}).size(), 1);
}

void TestSafekeeping::whatIsKeptForLaterIsOfferedAgain()
{
    leaveARecovery();
    window_->keepSafe(recovery());
    QTRY_VERIFY(offer());
    QTest::mouseClick(offer()->findChild<QPushButton*>(QStringLiteral("recovery-later")), Qt::LeftButton);
    QTRY_VERIFY(!offer());
    QCOMPARE(recoverable(recovery()).size(), 1);
    window_->actions()[QStringLiteral("recover")]->trigger();
    QTRY_VERIFY(offer());
    QCOMPARE(offer()->findChild<QTreeWidget*>()->topLevelItemCount(), 1);
}

void TestSafekeeping::throwingAwayIsAskedFor()
{
    leaveARecovery();
    window_->keepSafe(recovery());
    QTRY_VERIFY(offer());
    auto* discard = offer()->findChild<QPushButton*>(QStringLiteral("recovery-discard"));
    QTest::mouseClick(discard, Qt::LeftButton);
    press(offer(), "Cancel");
    QCOMPARE(recoverable(recovery()).size(), 1);
    QTest::mouseClick(discard, Qt::LeftButton);
    press(offer(), "Throw away");
    QCOMPARE(recoverable(recovery()).size(), 0);
    QTRY_VERIFY(!discard->isEnabled());
}

QTEST_MAIN(TestSafekeeping)
#include "test_safekeeping.moc"
