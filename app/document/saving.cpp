#include "app/document/saving.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <system_error>

namespace siphonwright {
namespace {

/// Write what stands at a path under the first free name beside it.
std::optional<WriteFailure> keepBeside(const QString& path, const Disk& disk)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return WriteFailure{WriteFailure::Kind::broken, path, file.errorString()};
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return WriteFailure{WriteFailure::Kind::broken, path, file.errorString()};
    const QFileInfo info(path);
    QString beside;
    for (int number = 1; beside.isEmpty() || QFileInfo::exists(beside); ++number)
        beside = info.dir().filePath(
            QStringLiteral("%1-other-%2.%3").arg(info.completeBaseName()).arg(number).arg(info.suffix()));
    return replaceFile(beside, bytes, disk);
}

bool isOnAnotherDisk(const FileMark& mark, const Disk& disk)
{
    const QFileInfo file(mark.path);
    const auto now = disk.device(file.absolutePath());
    return mark.device && now && *now != *mark.device && !file.exists();
}

} // namespace

OnDisk onDiskNow(const FileMark& mark)
{
    if (mark.path.isEmpty() || mark.fingerprint.isEmpty())
        return OnDisk::none;
    const std::optional<QByteArray> now = fingerprint(mark.path);
    if (!now)
        return OnDisk::gone;
    return *now == mark.fingerprint ? OnDisk::same : OnDisk::changed;
}

SaveOutcome carryOut(const SaveJob& job, const std::stop_token& stop)
{
    SaveOutcome out;
    const Disk& disk = *job.disk;
    const QFileInfo info(job.path);
    // Under another name somebody has just agreed to what is lost there.
    std::optional<QByteArray> expected;
    const bool is_own = info.absoluteFilePath() == job.mark.path && !job.mark.fingerprint.isEmpty();
    if (is_own)
        expected = job.mark.fingerprint;
    if (is_own && isOnAnotherDisk(job.mark, disk)) {
        out.failure = WriteFailure{WriteFailure::Kind::unreachable, job.path,
                                   QString::fromStdString(std::generic_category().message(ENODEV))};
        return out;
    }
    if (job.theirs == Theirs::kept_beside && onDiskNow(job.mark) == OnDisk::changed) {
        expected = fingerprint(job.mark.path);
        if ((out.failure = keepBeside(job.mark.path, disk)))
            return out;
    }
    out.failure = replaceFile(job.path, job.bytes, disk, expected, stop);
    // Where the last flush alone failed, what stands there is ours already and no other program's.
    out.stands = !out.failure || (is_own && fingerprint(job.path) == fingerprintOf(job.bytes));
    out.device = disk.device(info.absolutePath());
    return out;
}

} // namespace siphonwright
