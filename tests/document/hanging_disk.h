#pragma once

#include "app/document/disk.h"

#include <QFile>
#include <QString>

#include <condition_variable>
#include <mutex>

namespace siphonwright::test {

/// A disk whose flushes in one folder do not come back until they are let go. It lives as long as the
/// program, as threads that hang in it do.
class HangingDisk : public Disk {
public:
    static HangingDisk& one()
    {
        static auto* const disk = new HangingDisk;
        return *disk;
    }
    void hangIn(const QString& folder)
    {
        const std::lock_guard lock(mutex_);
        folder_ = folder;
    }
    void letGo()
    {
        hangIn({});
        changed_.notify_all();
    }
    /// How many have hung and come back since the program began.
    int cameBack() const
    {
        const std::lock_guard lock(mutex_);
        return came_back_;
    }

    int flush(QFile& file) const override
    {
        std::unique_lock lock(mutex_);
        if (!folder_.isEmpty() && file.fileName().startsWith(folder_)) {
            changed_.wait(lock, [this] { return folder_.isEmpty(); });
            ++came_back_;
        }
        lock.unlock();
        return Disk::flush(file);
    }

private:
    mutable std::mutex mutex_;
    mutable std::condition_variable changed_;
    QString folder_;
    mutable int came_back_ = 0;
};

} // namespace siphonwright::test
