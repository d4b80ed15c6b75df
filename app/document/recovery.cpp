#include "app/document/recovery.h"

#include "app/document/document.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonDocument>
#include <QJsonObject>
#include <QStandardPaths>
#include <QUuid>

#include <algorithm>
#include <utility>
#include <variant>

namespace siphonwright {
namespace {

const QLatin1String head_key("siphonwright_recovery");

/// A path and a fingerprint; what is longer is not of this program.
constexpr qint64 most_of_first_line = 100'000;

QString without(const QString& file, const char* ending)
{
    return file.chopped(QLatin1String(ending).size());
}

std::unique_ptr<QLockFile> lockFor(const QString& base)
{
    auto lock = std::make_unique<QLockFile>(base + QStringLiteral(".lock"));
    lock->setStaleLockTime(0); // only a dead program's lock is stale, however old
    return lock;
}

/// A line of JSON, so that the sketch follows as it would stand in a file of its own.
QByteArray headOf(const Document& document)
{
    return QJsonDocument(
               QJsonObject{
                   {head_key, 1},
                   {QStringLiteral("original"), document.path()},
                   {QStringLiteral("sha256"), QString::fromLatin1(document.fileFingerprint().toHex())},
                   {QStringLiteral("edited"), QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs)},
               })
               .toJson(QJsonDocument::Compact) +
           '\n';
}

} // namespace

QString recoveryFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/recovery");
}

QList<RecoveryEntry> recoverable(const QString& folder)
{
    QList<RecoveryEntry> out;
    const QFileInfoList files = QDir(folder).entryInfoList({QStringLiteral("*.recovery")}, QDir::Files);
    for (const QFileInfo& info : files) {
        const QString base = without(info.absoluteFilePath(), ".recovery");
        if (!lockFor(base)->tryLock(0)) // let go at once: this only asks
            continue;
        QFile file(info.absoluteFilePath());
        if (!file.open(QIODevice::ReadOnly))
            continue;
        const QJsonObject head = QJsonDocument::fromJson(file.readLine(most_of_first_line)).object();
        RecoveryEntry entry;
        entry.file = info.absoluteFilePath();
        entry.original = head.value(QStringLiteral("original")).toString();
        entry.fingerprint = QByteArray::fromHex(head.value(QStringLiteral("sha256")).toString().toLatin1());
        entry.edited =
            QDateTime::fromString(head.value(QStringLiteral("edited")).toString(), Qt::ISODateWithMs);
        if (!entry.edited.isValid())
            entry.edited = info.lastModified();
        out.append(entry);
    }
    const QFileInfoList locks = QDir(folder).entryInfoList({QStringLiteral("*.lock")}, QDir::Files);
    for (const QFileInfo& info : locks)
        lockFor(without(info.absoluteFilePath(), ".lock"))->tryLock(0); // removes a dead program's
    std::sort(out.begin(), out.end(), [](const RecoveryEntry& a, const RecoveryEntry& b) {
        return std::pair(a.edited, a.file) > std::pair(b.edited, b.file);
    });
    return out;
}

std::optional<Sketch> readRecovery(const RecoveryEntry& entry)
{
    QFile file(entry.file);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    file.readLine(most_of_first_line);
    // One byte more than a sketch may have is refused by its reader; the rest need not be read.
    const QByteArray bytes = file.read(static_cast<qint64>(largest_file_bytes) + 1);
    auto read = readSketch(std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
    if (auto* sketch = std::get_if<Sketch>(&read))
        return std::move(*sketch);
    return std::nullopt;
}

void discardRecovery(const RecoveryEntry& entry)
{
    const QString base = without(entry.file, ".recovery");
    const auto lock = lockFor(base);
    if (!lock->tryLock(0)) // a program has it again
        return;
    QFile::remove(entry.file);
}

QStringList newCrashReports(const QString& folder)
{
    constexpr qsizetype most_reports = 10;
    QStringList out;
    const QDir dir(folder);
    const QFileInfoList fresh = dir.entryInfoList({QStringLiteral("*.crash")}, QDir::Files);
    for (const QFileInfo& info : fresh) {
        const QString name = QStringLiteral("crash-%1-%2.txt")
                                 .arg(info.lastModified().toString(QStringLiteral("yyyy-MM-dd-hhmmss")),
                                      info.completeBaseName().left(8));
        if (QFile::rename(info.absoluteFilePath(), dir.filePath(name)))
            out.append(dir.absoluteFilePath(name));
    }
    const QStringList all = dir.entryList({QStringLiteral("crash-*.txt")}, QDir::Files, QDir::Name);
    for (qsizetype i = 0; i < all.size() - most_reports; ++i)
        QFile::remove(dir.filePath(all[i]));
    return out;
}

Recovery::Recovery(Document& document, const QString& folder, const Disk& disk)
    : document_(document), folder_(folder), disk_(disk)
{
    QDir().mkpath(folder_);
    QFile::setPermissions(folder_, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
    beginAnew();
    timer_.setSingleShot(true);
    timer_.setInterval(recovery_delay_ms);
    connect(&timer_, &QTimer::timeout, this, &Recovery::ask);
    late_.setSingleShot(true);
    late_.setInterval(recovery_promise_s * 1000);
    connect(&late_, &QTimer::timeout, this, &Recovery::sayLate);
    connect(&document_, &Document::changed, this, &Recovery::follow);
    connect(&document_, &Document::fileChanged, this, &Recovery::follow);
    startWorker();
    follow();
}

Recovery::~Recovery()
{
    worker_.reset(); // what it is writing is finished before the file goes
    QFile::remove(file());
}

void Recovery::startWorker()
{
    worker_ = std::make_unique<Worker<Job, Answer>>(
        [this](const Job& job, const Worker<Job, Answer>::Tell& tell, const std::stop_token&) {
            tell(carryOut(job, disk_));
        },
        [this] { QMetaObject::invokeMethod(this, &Recovery::hear, Qt::QueuedConnection); });
}

bool Recovery::begin(const QString& base)
{
    auto lock = lockFor(base);
    if (!lock->tryLock(0) && lock->error() == QLockFile::LockFailedError)
        return false;
    lock_ = std::move(lock);
    base_ = base;
    Q_EMIT named();
    return true;
}

void Recovery::beginAnew()
{
    begin(folder_ + QLatin1Char('/') + QUuid::createUuid().toString(QUuid::WithoutBraces));
}

/// Not begun anew by each edit: the first one that is not kept has waited longest.
void Recovery::follow()
{
    if (document_.isModified()) {
        if (!timer_.isActive())
            timer_.start();
        return;
    }
    timer_.stop();
    worker_->ask({file(), std::nullopt, {}});
}

void Recovery::ask()
{
    worker_->ask(job());
    if (!late_.isActive())
        late_.start();
}

void Recovery::sayLate()
{
    Q_EMIT failed({WriteFailure::Kind::unreachable, file(), tr("it does not answer")});
}

Recovery::Job Recovery::job() const
{
    return {file(), document_.sketch(), headOf(document_)};
}

Recovery::Answer Recovery::carryOut(const Job& job, const Disk& disk)
{
    if (!job.sketch) {
        QFile::remove(job.file);
        return std::nullopt;
    }
    const auto written = writeSketch(*job.sketch);
    const auto* text = std::get_if<std::string>(&written);
    if (!text)
        return WriteFailure{WriteFailure::Kind::refused, job.file, {}};
    return replaceFile(job.file, job.head + QByteArray::fromStdString(*text), disk);
}

void Recovery::hear()
{
    const std::optional<Answer> answer = worker_->take();
    if (!answer)
        return;
    late_.stop();
    if (*answer) {
        Q_EMIT failed(**answer);
        if (document_.isModified())
            timer_.start(); // the disk may have room again
        return;
    }
    Q_EMIT kept();
}

bool Recovery::takeOver(const RecoveryEntry& entry)
{
    worker_.reset();
    QFile::remove(file());
    const bool taken = begin(without(entry.file, ".recovery"));
    startWorker();
    return taken;
}

std::optional<WriteFailure> Recovery::setAside()
{
    worker_.reset(); // it may be writing the same file
    std::optional<WriteFailure> failure = carryOut(job(), disk_);
    startWorker();
    if (failure)
        return failure;
    timer_.stop();
    beginAnew();
    return std::nullopt;
}

} // namespace siphonwright
