#include "app/document/disk.h"

#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>

#include <cerrno>
#include <filesystem>
#include <system_error>

#ifdef Q_OS_UNIX
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>
#endif

namespace siphonwright {
namespace {

/// Some file systems, of networks above all, cannot flush what they are asked to: that is no failure.
int unlessImpossible(int error)
{
    return error == EINVAL || error == ENOTSUP || error == ENOSYS ? 0 : error;
}

WriteFailure::Kind kindOf(int error)
{
    switch (error) {
    case ENOSPC:
    case EDQUOT:
    case EFBIG:
        return WriteFailure::Kind::full;
    case EACCES:
    case EPERM:
    case EROFS:
        return WriteFailure::Kind::forbidden;
    case ENOENT:
    case ENOTDIR:
    case ENODEV:
    case ENXIO:
    case ESTALE:
    case ENOTCONN:
    case EHOSTDOWN:
    case EHOSTUNREACH:
    case ENETUNREACH:
    case ETIMEDOUT:
        return WriteFailure::Kind::unreachable;
    default:
        return WriteFailure::Kind::broken;
    }
}

WriteFailure failureOf(const QString& path, int error)
{
    return {kindOf(error), path, QString::fromStdString(std::generic_category().message(error))};
}

int writeAll(QFile& file, const QByteArray& bytes, const Disk& disk)
{
    for (qint64 done = 0; done < bytes.size();) {
        qint64 written = 0;
        if (const int error = disk.write(file, bytes.constData() + done, bytes.size() - done, written))
            return error;
        if (written <= 0)
            return EIO;
        done += written;
    }
    return disk.flush(file);
}

/// What a killed program has left of an unfinished file, once it is surely dead.
void clearLeftovers(const QFileInfo& target)
{
    constexpr int surely_dead_s = 3600;
    const QDateTime old = QDateTime::currentDateTime().addSecs(-surely_dead_s);
    const QString pattern = QStringLiteral(".%1.*.part").arg(target.fileName());
    const QFileInfoList found =
        target.dir().entryInfoList({pattern}, QDir::Files | QDir::Hidden | QDir::NoSymLinks);
    for (const QFileInfo& part : found) {
        if (part.lastModified() < old)
            QFile::remove(part.filePath());
    }
}

/// A name for the unfinished file that is free: another write of this program may hang in one.
QString partFor(const QFileInfo& target)
{
    QString name;
    for (int number = 1; name.isEmpty() || QFileInfo::exists(name); ++number)
        name = QStringLiteral("%1/.%2.%3-%4.part")
                   .arg(target.absolutePath(), target.fileName())
                   .arg(QCoreApplication::applicationPid())
                   .arg(number);
    return name;
}

} // namespace

int Disk::create(QFile& file) const
{
    errno = 0;
    if (file.open(QIODevice::WriteOnly | QIODevice::NewOnly | QIODevice::Unbuffered))
        return 0;
    return errno != 0 ? errno : EIO;
}

int Disk::write(QFile& file, const char* bytes, qint64 count, qint64& written) const
{
#ifdef Q_OS_UNIX
    do {
        written = ::write(file.handle(), bytes, static_cast<std::size_t>(count));
    } while (written < 0 && errno == EINTR);
    return written < 0 ? errno : 0;
#else
    written = file.write(bytes, count);
    return written >= 0 ? 0 : file.error() == QFileDevice::ResourceError ? ENOSPC : EIO;
#endif
}

int Disk::flush(QFile& file) const
{
#ifdef Q_OS_UNIX
    return ::fsync(file.handle()) == 0 ? 0 : unlessImpossible(errno);
#else
    return file.flush() ? 0 : EIO;
#endif
}

int Disk::replace(const QString& from, const QString& to) const
{
    std::error_code error;
    std::filesystem::rename(QFileInfo(from).filesystemFilePath(), QFileInfo(to).filesystemFilePath(), error);
    return error.value();
}

int Disk::flushFolder(const QString& folder) const
{
#ifdef Q_OS_UNIX
    const int handle = ::open(QFile::encodeName(folder).constData(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (handle < 0) // a folder that may be written in but not listed
        return errno == EACCES ? 0 : errno;
    const int error = ::fsync(handle) == 0 ? 0 : unlessImpossible(errno);
    ::close(handle);
    return error;
#else
    Q_UNUSED(folder);
    return 0;
#endif
}

std::optional<std::uint64_t> Disk::device(const QString& folder) const
{
#ifdef Q_OS_UNIX
    struct stat told {};
    if (::stat(QFile::encodeName(folder).constData(), &told) == 0)
        return told.st_dev;
#else
    Q_UNUSED(folder);
#endif
    return std::nullopt;
}

const Disk& Disk::real()
{
    // Never destroyed: a write that hangs may outlast the window.
    static const Disk& disk = *new Disk;
    return disk;
}

QString WriteFailure::text() const
{
    const QString where = QDir::toNativeSeparators(path);
    switch (kind) {
    case Kind::refused:
        return reason;
    case Kind::changed:
        return tr("Another program has changed %1 since it was opened here. Neither version is lost: choose "
                  "what is to be done with them.")
            .arg(where);
    case Kind::full:
        return tr("There is no room left on the disk for %1. Make room and try again, or save in another "
                  "place. (%2)")
            .arg(where, reason);
    case Kind::forbidden:
        return tr("%1 is in a place that may only be read. Save in another place. (%2)").arg(where, reason);
    case Kind::unreachable:
        return tr("The folder of %1 cannot be reached. Connect the drive again and try again, or save in "
                  "another place. (%2)")
            .arg(where, reason);
    case Kind::broken:
        break;
    }
    return tr("%1 cannot be written: the disk reports an error. Try again, or save in another place. (%2)")
        .arg(where, reason);
}

std::optional<WriteFailure> replaceFile(const QString& path, const QByteArray& bytes, const Disk& disk,
                                        const std::optional<QByteArray>& expected,
                                        const std::stop_token& stop)
{
    const QFileInfo named(path);
    const QFileInfo target(named.isSymLink() && named.exists() ? named.canonicalFilePath()
                                                               : named.absoluteFilePath());
    const QString to = target.absoluteFilePath();
    const QString folder = target.absolutePath();
    if (target.exists() && !target.isFile())
        return failureOf(path, target.isDir() ? EISDIR : EINVAL);
    if (target.exists() && !target.isWritable())
        return failureOf(path, EACCES);
    clearLeftovers(target);
    QFile part(partFor(target));
    const auto failed = [&](int error) {
        part.close();
        part.remove();
        return failureOf(path, error);
    };
    if (const int error = disk.create(part))
        return failureOf(path, error);
    if (target.exists())
        part.setPermissions(target.permissions());
    if (const int error = writeAll(part, bytes, disk))
        return failed(error);
    part.close();
    if (expected && target.exists() && fingerprint(to) != expected) {
        part.remove();
        return WriteFailure{WriteFailure::Kind::changed, path, {}};
    }
    if (stop.stop_requested())
        return failed(ECANCELED);
    if (const int error = disk.replace(part.fileName(), to))
        return failed(error);
    if (const int error = disk.flushFolder(folder))
        return failureOf(path, error);
    return std::nullopt;
}

QStringList putFile(const QString& path, const QByteArray& bytes)
{
    const auto failure = replaceFile(path, bytes, Disk::real());
    return failure ? QStringList(failure->text()) : QStringList();
}

FileBytes readFile(const QString& path, qint64 most)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return {{}, file.errorString()};
    FileBytes out{file.read(most), {}};
    if (file.error() != QFileDevice::NoError)
        out.error = file.errorString();
    return out;
}

std::optional<QByteArray> fingerprint(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return std::nullopt;
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!hash.addData(&file) || file.error() != QFileDevice::NoError)
        return std::nullopt;
    return hash.result();
}

QByteArray fingerprintOf(const QByteArray& bytes)
{
    return QCryptographicHash::hash(bytes, QCryptographicHash::Sha256);
}

} // namespace siphonwright
