#pragma once

#include <QLockFile>
#include <QString>

#include <memory>

namespace siphonwright {

/// Says to other windows, on this machine and over the network, that a file is open here: a hidden lock file
/// beside it. Where the folder may not be written in there is none, and nobody can save there either.
class OpenLock {
public:
    OpenLock() = default;
    ~OpenLock();
    OpenLock(const OpenLock&) = delete;
    OpenLock& operator=(const OpenLock&) = delete;

    enum class Taken { yes, impossible, by_another };
    /// Hold the lock of a file instead of the one before; of none for an empty path.
    Taken take(const QString& path);
    /// What holds the file, in a few words: program, machine.
    QString holder() const { return holder_; }

private:
    void letGo();

    std::unique_ptr<QLockFile> lock_;
    QString path_;
    QString holder_;
};

} // namespace siphonwright
