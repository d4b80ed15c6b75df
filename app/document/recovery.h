#pragma once

#include "app/document/disk.h"
#include "app/document/worker.h"

#include "core/sketch/sketch.h"

#include <QByteArray>
#include <QDateTime>
#include <QList>
#include <QLockFile>
#include <QObject>
#include <QString>
#include <QStringList>
#include <QTimer>

#include <memory>
#include <optional>

namespace siphonwright {

class Document;

/// An unsaved edit is in the recovery file at the latest so many seconds after it was made.
constexpr int recovery_promise_s = 5;
/// When writing begins: what is left of the promise is for the disk.
constexpr int recovery_delay_ms = 1000;

/// Where the recovery files of this user are: a folder of the program's own, readable by the user alone.
QString recoveryFolder();

/// One drawing that can be recovered.
struct RecoveryEntry {
    QString file;           ///< the recovery file
    QString original;       ///< the drawing's file; empty if it had none
    QByteArray fingerprint; ///< of that file when the drawing was edited
    QDateTime edited;       ///< when it was written
};

/// Drawings whose program is no longer running, the latest first.
QList<RecoveryEntry> recoverable(const QString& folder);
/// The drawing in a recovery file; nothing if it cannot be read.
std::optional<Sketch> readRecovery(const RecoveryEntry& entry);
/// Throw a recovery file away, unless a program has it again.
void discardRecovery(const RecoveryEntry& entry);
/// Crash reports that nobody was told of yet, under the names they keep from now on. The folder keeps the
/// latest ten.
QStringList newCrashReports(const QString& folder);

/// Keeps a document's unsaved edits in a file of its own, written beside the window, each time as a whole.
/// The file goes when the document is saved, undone to what was saved, or its window closed on purpose; it
/// stays when the program ends otherwise.
/// A disk that does not answer within the promise is said to have failed, and heard when it answers later.
class Recovery : public QObject {
    Q_OBJECT
public:
    Recovery(Document& document, const QString& folder, const Disk& disk = Disk::real());
    ~Recovery() override;

    /// The recovery file, whether or not it is there now.
    QString file() const { return base_ + QStringLiteral(".recovery"); }
    /// Where a crash report of this run goes.
    QString reportFile() const { return base_ + QStringLiteral(".crash"); }
    /// Go on in the file of an entry, whose drawing is put on the table next.
    /// @return false where another program has it.
    bool takeOver(const RecoveryEntry& entry);
    /// Write what is on the table now, leave that file to be offered, and go on in another.
    std::optional<WriteFailure> setAside();

Q_SIGNALS:
    void failed(const WriteFailure& failure); ///< an edit is not kept: the recovery file cannot be written
    void kept();                              ///< the recovery file has been written
    void named();                             ///< reportFile() is another

private:
    struct Job {
        QString file;
        std::optional<Sketch> sketch; ///< nothing: the file is to go
        QByteArray head;
    };
    using Answer = std::optional<WriteFailure>;

    bool begin(const QString& base);
    void beginAnew();
    void startWorker();
    void follow();
    void ask();
    void sayLate();
    Job job() const;
    void hear();
    static Answer carryOut(const Job& job, const Disk& disk);

    Document& document_;
    const QString folder_;
    const Disk& disk_;
    QString base_;
    std::unique_ptr<QLockFile> lock_; ///< says that the file's program runs
    QTimer timer_;
    QTimer late_; ///< runs while an answer of the disk is waited for
    std::unique_ptr<Worker<Job, Answer>> worker_;
};

} // namespace siphonwright
