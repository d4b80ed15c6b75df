#pragma once

#include <QLockFile>
#include <QString>

#include <chrono>
#include <memory>

namespace siphonwright {

/// Says to other windows, on this machine and over the network, that a file is open here: a hidden lock file
/// beside it. Where the folder may not be written in there is none, and nobody can save there either; nor is
/// there one in a place that does not answer.
class OpenLock {
public:
    OpenLock() = default;
    ~OpenLock();
    OpenLock(const OpenLock&) = delete;
    OpenLock& operator=(const OpenLock&) = delete;

    enum class Taken { yes, impossible, by_another };
    /// Hold the lock of a file instead of the one before; of none for an empty path. \param patience with a
    /// drive that may be gone
    Taken take(const QString& path, std::chrono::milliseconds patience = usual_patience);
    /// What holds the file, in a few words: program, machine.
    QString holder() const { return holder_; }

private:
    static constexpr std::chrono::milliseconds usual_patience{500};
    struct Tried {
        Taken taken = Taken::impossible;
        std::unique_ptr<QLockFile> lock;
        QString holder;
    };
    static Tried tryFor(const QString& path);
    void letGo();

    std::unique_ptr<QLockFile> lock_;
    QString path_;
    QString holder_;
};

} // namespace siphonwright
