#pragma once

#include <QByteArray>
#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include <cstdint>
#include <functional>
#include <optional>
#include <stop_token>

class QFile;

namespace siphonwright {

/// The steps by which a file comes onto a disk, one call of the system each, so that tests can let each fail.
/// Each answers 0, or the system's error number (`errno`).
class Disk {
public:
    Disk() = default;
    virtual ~Disk() = default;
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;

    /// Make a file that is not there yet.
    virtual int create(QFile& file) const;
    /// Write some of the bytes, at least one. \param written how many
    virtual int write(QFile& file, const char* bytes, qint64 count, qint64& written) const;
    /// Down to the medium. Nothing where the system cannot.
    virtual int flush(QFile& file) const;
    /// Put a file in the place of another, at one stroke.
    virtual int replace(const QString& from, const QString& to) const;
    /// The entries of a folder, down to the medium: without it a new name may be gone after a power cut.
    virtual int flushFolder(const QString& folder) const;
    /// Number of the device that a folder is on; nothing where the system does not tell.
    virtual std::optional<std::uint64_t> device(const QString& folder) const;

    static const Disk& real();
};

/// Why a file was not written.
struct WriteFailure {
    Q_DECLARE_TR_FUNCTIONS(WriteFailure)
public:
    enum class Kind {
        refused,     ///< the sketch itself cannot be written
        changed,     ///< another program has written the file since it was opened or saved
        full,        ///< no room on the disk
        forbidden,   ///< a place that may only be read
        unreachable, ///< folder or drive is not there
        broken,      ///< the disk reports an error, or whatever else
    };
    Kind kind = Kind::broken;
    QString path;
    QString reason; ///< in the system's words, or what the sketch lacks
    /// Where it happened, and what to do.
    QString text() const;
};

/// Put bytes in the place of a file so that at every moment, whatever ends the program or the power, the old
/// file or the new one stands there whole; when this returns without failure the new one is on the medium.
/// On failure the file is as it was, but for a failed last flush of the folder, when the new one may already
/// stand there. A symbolic link stays one: the file it leads to is replaced. Nothing takes the place of what
/// is no file, as a pipe or device. \param expected fingerprint of what must stand there (see fingerprint());
/// a file that is gone is no obstacle \param stop asked before the file is replaced: from then on it stays as
/// it was
std::optional<WriteFailure> replaceFile(const QString& path, const QByteArray& bytes, const Disk& disk,
                                        const std::optional<QByteArray>& expected = std::nullopt,
                                        const std::stop_token& stop = {});

/// Puts a finished file in its place. \return sentences of what went wrong; empty: done
using PutFile = std::function<QStringList(const QString& path, const QByteArray& bytes)>;
/// At once, while who calls waits: replaceFile().
QStringList putFile(const QString& path, const QByteArray& bytes);

struct FileBytes {
    QByteArray bytes;
    QString error; ///< in the system's words; empty: read
};
/// \param most bytes that are read
FileBytes readFile(const QString& path, qint64 most);

/// SHA-256 of a file's bytes; nothing if it cannot be read.
std::optional<QByteArray> fingerprint(const QString& path);
QByteArray fingerprintOf(const QByteArray& bytes);

} // namespace siphonwright
