#include "app/window/file_strip.h"

#include "app/document/document.h"
#include "app/window/file_commands.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <chrono>

namespace siphonwright {

FileStrip::FileStrip(Document& document, FileCommands& files, QWidget* parent)
    : QFrame(parent),
      document_(document),
      files_(files),
      sentence_(new QLabel(this)),
      theirs_(new QPushButton(tr("Open &theirs"), this)),
      mine_(new QPushButton(tr("&Go on with mine"), this))
{
    setObjectName(QStringLiteral("file-strip"));
    sentence_->setObjectName(QStringLiteral("file-strip-sentence"));
    sentence_->setWordWrap(true);
    theirs_->setObjectName(QStringLiteral("file-strip-theirs"));
    theirs_->setToolTip(tr("Unsaved work is put aside and can be recovered from the File menu"));
    mine_->setObjectName(QStringLiteral("file-strip-mine"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(10, 3, 6, 3);
    row->setSpacing(10);
    row->addWidget(sentence_, 1);
    row->addWidget(theirs_);
    row->addWidget(mine_);
    hide();
    constexpr int settled_ms = 300;
    settled_.setSingleShot(true);
    settled_.setInterval(settled_ms);
    connect(&settled_, &QTimer::timeout, this, &FileStrip::look);
    connect(&watcher_, &QFileSystemWatcher::fileChanged, this, [this] {
        left_ = false;
        settled_.start();
    });
    connect(&document_, &Document::fileChanged, this, [this] {
        if (path_ == document_.path() && fingerprint_ == document_.fileFingerprint())
            return; // only the unsaved mark is another
        path_ = document_.path();
        fingerprint_ = document_.fileFingerprint();
        left_ = false;
        look();
    });
    // Changes made elsewhere on a network are not reported to us: look when the window is come back to.
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive)
            look();
    });
    connect(theirs_, &QPushButton::clicked, &files_, &FileCommands::openTheirs);
    connect(mine_, &QPushButton::clicked, this, [this] {
        left_ = true;
        warning_.clear();
        hide();
    });
}

void FileStrip::watch(bool is_there)
{
    if (!watcher_.files().isEmpty())
        watcher_.removePaths(watcher_.files());
    if (is_there)
        watcher_.addPath(document_.path());
}

std::optional<OnDisk> FileStrip::ask()
{
    constexpr std::chrono::milliseconds patience{500};
    constexpr std::chrono::milliseconds none{0};
    const FileMark& mark = document_.fileMark();
    const bool is_waiting = asked_ && !asked_->isDone();
    const bool is_same = asked_for_.path == mark.path && asked_for_.fingerprint == mark.fingerprint;
    // One thread waits for a place, however often it is looked at.
    if (!is_waiting || !is_same) {
        asked_for_ = mark;
        asked_.emplace([mark] { return onDiskNow(mark); });
    }
    if (!asked_->isDone(is_waiting && is_same ? none : patience))
        return std::nullopt;
    const OnDisk answer = asked_->take();
    asked_.reset();
    return answer;
}

void FileStrip::look()
{
    const QString name = QFileInfo(document_.path()).fileName();
    const std::optional<OnDisk> answer = ask();
    if (!answer) {
        say(tr("The place of %1 does not answer. Saving waits for it, or goes to another place.").arg(name),
            false);
        constexpr int again_ms = 1000;
        QTimer::singleShot(again_ms, this, &FileStrip::look);
        return;
    }
    const OnDisk now = *answer;
    watch(now == OnDisk::same ||
          now == OnDisk::changed); // a file that was replaced is another for the system
    if (now == OnDisk::changed && !left_)
        say(tr("%1 was changed on the disk by another program. Saving here asks first, and loses neither "
               "version.")
                .arg(name),
            true);
    else if (now == OnDisk::gone && !left_)
        say(tr("%1 is no longer in its place, or cannot be reached. Saving writes it anew.").arg(name),
            false);
    else if (!warning_.isEmpty())
        say(warning_, false);
    else
        hide();
}

void FileStrip::warn(const QString& reason)
{
    warning_ =
        reason.isEmpty() ? QString() : tr("Unsaved work is not kept for recovery just now. %1").arg(reason);
    look();
}

void FileStrip::say(const QString& sentence, bool theirs)
{
    sentence_->setText(sentence);
    theirs_->setVisible(theirs);
    setVisible(true);
}

} // namespace siphonwright
